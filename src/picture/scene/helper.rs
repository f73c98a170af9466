//! The other hand, where it helps.

use crate::body::{Axis, Finger, Joint, Segment};
use crate::content::Grip;
use crate::picture::limb::{Posture, Row, Skeleton, flesh};
use crate::picture::plate::{Kind, Surface};
use crate::picture::solid::{Blends, Field, surface};
use crate::picture::space::{Frame, Rotation, Vector};
use crate::picture::view::Camera;
use crate::picture::wear::Place;
use crate::units::Degrees;

use super::request::Request;
use super::stage::Cast;

/// The posture of the helping hand.
fn posture(grip: Grip) -> Posture {
    let mut posture = Posture::default();
    let fingers: [(Finger, [i16; 3]); 4] = match grip {
        Grip::Pinch => [
            (Finger::Index, [44, 42, 22]),
            (Finger::Middle, [58, 60, 30]),
            (Finger::Ring, [66, 70, 36]),
            (Finger::Little, [70, 72, 38]),
        ],
        Grip::Fingertip => [
            (Finger::Index, [22, 14, 8]),
            (Finger::Middle, [62, 80, 40]),
            (Finger::Ring, [68, 84, 44]),
            (Finger::Little, [70, 84, 44]),
        ],
        Grip::Palm => [
            (Finger::Index, [6, 8, 4]),
            (Finger::Middle, [6, 8, 4]),
            (Finger::Ring, [7, 9, 4]),
            (Finger::Little, [8, 9, 4]),
        ],
    };
    for (finger, [mcp, pip, dip]) in fingers {
        posture = posture.finger(finger, mcp, pip, dip);
    }
    let thumb: &[(Joint, Axis, i16)] = match grip {
        Grip::Pinch => &[
            (Joint::ThumbCmc, Axis::PalmarAbduction, 38),
            (Joint::ThumbCmc, Axis::RadialAbduction, 16),
            (Joint::ThumbMcp, Axis::Flexion, 18),
            (Joint::ThumbIp, Axis::Flexion, 20),
        ],
        Grip::Fingertip => &[
            (Joint::ThumbCmc, Axis::PalmarAbduction, 30),
            (Joint::ThumbMcp, Axis::Flexion, 25),
            (Joint::ThumbIp, Axis::Flexion, 35),
        ],
        Grip::Palm => &[(Joint::ThumbCmc, Axis::RadialAbduction, 30)],
    };
    for (joint, axis, angle) in thumb {
        posture.turn(*joint, *axis, Degrees::whole(*angle));
    }
    posture
}

/// Where the helping hand touches, in its own space, and the direction in which it touches.
fn contact(skeleton: &Skeleton, grip: Grip) -> (Vector, Vector) {
    let tip = skeleton.frame(Segment::Finger(Finger::Index, Row::Distal));
    match grip {
        Grip::Pinch => {
            let thumb = skeleton.frame(Segment::ThumbDistal);
            let (a, b) = (tip.point(0.0, 12.0, -6.0), thumb.point(0.0, 18.0, -7.0));
            (a.towards(b, 0.5), (b - a).unit())
        }
        Grip::Fingertip => (tip.point(0.0, 15.0, -6.5), -tip.axes.z),
        Grip::Palm => {
            let hand = skeleton.frame(Segment::Hand);
            (hand.point(0.0, 78.0, -17.0), -hand.axes.z)
        }
    }
}

/// Brings the helping hand to a place on the limb. It comes from the side of the picture where there is room.
pub fn lend(cast: &mut Cast, request: &Request, grip: Grip, place: &Place, camera: &Camera) {
    let skeleton = Skeleton::new(posture(grip));
    let helper = flesh(&skeleton, request.build);
    let field = Field::new(&helper, Blends::SKIN, |segment| segment != Segment::UpperArm);
    let far = 1e4;
    let end = -70.0;
    let mut mesh = surface(&field, (Vector::new(-far, end - 6.0, -far), Vector::new(far, far, far)), 1.6);
    let cut: Vec<f64> = mesh.points.iter().map(|p| end - p.y).collect();
    let (touch, press) = contact(&skeleton, grip);
    // The arm of the helping hand comes from the little-finger side of the treated one, from below.
    let (to, from) = aim(grip, place, camera, press);
    let seat = Seat { from, to, touch, at: place.at, grip };
    for (point, normal) in mesh.points.iter_mut().zip(mesh.normals.iter_mut()) {
        *point = seat.carry(*point);
        *normal = seat.turn(*normal);
    }
    // A mirrored surface has its faces the other way round.
    for face in &mut mesh.faces {
        face.swap(1, 2);
    }
    cast.surfaces.push(std::sync::Arc::new(Surface {
        kind: Kind::Helper,
        name: "helper".to_owned(),
        edge: cut.clone(),
        cut,
        along: Vec::new(),
        mesh,
    }));
}

/// How the helping hand, mirrored, is turned and moved.
struct Seat {
    from: Rotation,
    to: Rotation,
    touch: Vector,
    at: Vector,
    grip: Grip,
}

const fn mirror(v: Vector) -> Vector {
    Vector::new(-v.x, v.y, v.z)
}

impl Seat {
    fn turn(&self, v: Vector) -> Vector {
        self.to.apply(self.from.undo(mirror(v)))
    }

    fn carry(&self, p: Vector) -> Vector {
        let gap = if self.grip == Grip::Pinch { 0.0 } else { 0.5 };
        self.turn(p - self.touch) + self.at + self.to.z * gap
    }
}

/// Two rotations: the axes of the touch in the mirrored helping hand, and where they are to point. Each has z against the
/// touch and y along the forearm as far as that goes.
fn aim(grip: Grip, place: &Place, camera: &Camera, press: Vector) -> (Rotation, Rotation) {
    let basis = |z: Vector, along: Vector| {
        let y = (along - z * along.dot(z)).unit();
        Rotation { x: y.cross(z), y, z }
    };
    let press = mirror(press);
    let forearm = Vector::new(0.0, 1.0, 0.0);
    let own = basis(-press, forearm);
    // Fingers of the helping hand point up and across the picture.
    let across = (camera.right * -0.75 + camera.up * 0.66).unit();
    let out = match grip {
        // A pinch closes on two sides of a digit: across the picture's depth.
        Grip::Pinch => (camera.eye * 0.9 + camera.right * 0.2).unit(),
        Grip::Fingertip | Grip::Palm => place.out,
    };
    let along = if across.dot(out).abs() > 0.93 { camera.up } else { across };
    let _ = Frame::WORLD;
    (basis(out, along), own)
}
