//! The other hand, where it helps.

use crate::body::{Axis, Finger, Joint, Segment};
use crate::content::{Facet, Grip, Helper};
use crate::picture::detail::marks;
use crate::picture::limb::{Posture, Row, Skeleton, flesh, met};
use crate::picture::plate::{End, Kind, Surface};
use crate::picture::solid::{Blends, EVERYWHERE, Field, surface};
use crate::picture::space::{Rotation, Vector, turn};
use crate::picture::view::Camera;
use crate::picture::wear::{Limb, Place, resolve};
use crate::units::Degrees;

use super::request::Request;
use super::stage::Cast;

/// The posture of the helping hand.
fn posture(grip: Grip) -> Posture {
    let mut posture = Posture::default();
    let fingers: [(Finger, [i16; 3]); 4] = match grip {
        Grip::Pinch => [
            (Finger::Index, [34, 12, 6]),
            (Finger::Middle, [48, 40, 20]),
            (Finger::Ring, [60, 56, 30]),
            (Finger::Little, [66, 62, 32]),
        ],
        Grip::Fingertip => [
            (Finger::Index, [22, 14, 8]),
            (Finger::Middle, [62, 80, 40]),
            (Finger::Ring, [68, 84, 44]),
            (Finger::Little, [70, 84, 44]),
        ],
        Grip::Palm | Grip::Together => [
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
            (Joint::ThumbCmc, Axis::PalmarAbduction, 42),
            (Joint::ThumbCmc, Axis::RadialAbduction, 4),
            (Joint::ThumbMcp, Axis::Flexion, 2),
            (Joint::ThumbIp, Axis::Flexion, 4),
        ],
        Grip::Fingertip => &[
            (Joint::ThumbCmc, Axis::PalmarAbduction, 30),
            (Joint::ThumbMcp, Axis::Flexion, 25),
            (Joint::ThumbIp, Axis::Flexion, 35),
        ],
        Grip::Palm | Grip::Together => &[(Joint::ThumbCmc, Axis::RadialAbduction, 30)],
    };
    for (joint, axis, angle) in thumb {
        posture.turn(*joint, *axis, Degrees::whole(*angle));
    }
    if grip == Grip::Together {
        // The forearms lie apart, as the elbows do.
        posture.turn(Joint::Wrist, Axis::Flexion, Degrees::whole(-60));
    }
    if grip == Grip::Pinch {
        // Wide enough for a finger.
        posture = met(&posture, Segment::Finger(Finger::Index, Row::Distal), Facet::Pad, 15.0);
    }
    posture
}

/// Where the helping hand touches, in its own space, and the direction in which it touches.
fn contact(skeleton: &Skeleton, grip: Grip) -> (Vector, Vector) {
    let tip = skeleton.frame(Segment::Finger(Finger::Index, Row::Distal));
    match grip {
        Grip::Pinch => {
            let thumb = skeleton.frame(Segment::ThumbDistal);
            let (a, b) = (tip.point(0.0, 12.0, -7.0), thumb.point(0.0, 17.0, -9.5));
            (a.towards(b, 0.5), (a - b).unit())
        }
        Grip::Fingertip => (tip.point(0.0, 15.0, -6.5), -tip.axes.z),
        Grip::Palm | Grip::Together => {
            let hand = skeleton.frame(Segment::Hand);
            (hand.point(0.0, 78.0, -17.0), -hand.axes.z)
        }
    }
}

/// Brings the helping hand to a place on the limb. Its arm comes from the right side of the picture of a right hand, or
/// from the left where the back of the hand is there: it does not reach through the palm.
pub fn lend(cast: &mut Cast, request: &Request, grip: Grip, place: &Place, camera: &Camera) {
    let skeleton = Skeleton::new(posture(grip));
    let helper = flesh(&skeleton, request.build);
    let field = Field::new(&helper, Blends::SKIN, |segment| segment != Segment::UpperArm);
    let end = -34.0;
    let mut mesh = surface(&field, (Vector { y: end - 6.0, ..EVERYWHERE.0 }, EVERYWHERE.1), 1.6);
    let cut: Vec<f64> = mesh.points.iter().map(|p| end - p.y).collect();
    let (touch, press) = contact(&skeleton, grip);
    let hand = &cast.body.skeleton.frame(Segment::Hand).axes;
    let forearm = match grip {
        Grip::Together => skeleton.frame(Segment::Hand).axes.y,
        Grip::Pinch | Grip::Fingertip | Grip::Palm => Vector::new(0.0, 1.0, 0.0),
    };
    let (to, from) = aim(grip, place, (camera, hand), (press, forearm));
    let seat = Seat { from, to, touch, at: place.at, grip };
    for (point, normal) in mesh.points.iter_mut().zip(mesh.normals.iter_mut()) {
        *point = seat.carry(*point);
        *normal = seat.turn(*normal);
    }
    // A mirrored surface has its faces the other way round.
    for face in &mut mesh.faces {
        face.swap(1, 2);
    }
    cast.marks = marks(&skeleton, &field, |segment| segment != Segment::UpperArm);
    for mark in &mut cast.marks {
        mark.points.iter_mut().for_each(|point| *point = seat.carry(*point));
        mark.normals.iter_mut().for_each(|normal| *normal = seat.turn(*normal));
    }
    cast.surfaces.push(std::sync::Arc::new(Surface {
        end: Some(End {
            at: seat.carry(Vector::new(0.0, end, 0.0)),
            out: seat.turn(Vector::new(0.0, -1.0, 0.0)),
            reach: 90.0,
            keeps: None,
        }),
        ..Surface::new(Kind::Helper, "helper", mesh, cut)
    }));
}

/// The way of the helping hand over the skin: along it, or round the place. Nothing when it stays.
pub fn stroke(limb: &Limb<'_>, help: &Helper, place: &Place) -> Vec<Vector> {
    /// Radius of a circle, mm, and how far round it goes, degrees: the finger stays in view in the rest.
    const ROUND: (f64, f64) = (17.0, 290.0);
    if help.circles {
        let along = limb.skeleton.frame(place.segment).axes.y;
        let up = (along - place.out * along.dot(place.out)).unit();
        let right = up.cross(place.out);
        let at = |i: i32| {
            let (s, c) = turn(f64::from(i) / 40.0 * ROUND.1 - 150.0);
            place.at + place.out * 4.0 + (right * s + up * c) * ROUND.0
        };
        return (0..=40).map(at).collect();
    }
    let end = help.strokes.as_ref().and_then(|to| resolve(limb, to).first().copied());
    end.map_or_else(Vec::new, |end| (0..=10).map(|i| place.at.towards(end.at, f64::from(i) / 10.0)).collect())
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
/// touch and y along the forearm as far as that goes, or along the hand where it lies palm to palm. `hand` is the treated
/// one.
fn aim(
    grip: Grip,
    place: &Place,
    (camera, hand): (&Camera, &Rotation),
    (press, forearm): (Vector, Vector),
) -> (Rotation, Rotation) {
    let basis = |z: Vector, along: Vector| {
        let y = (along - z * along.dot(z)).unit();
        Rotation { x: y.cross(z), y, z }
    };
    let press = mirror(press);
    let own = basis(-press, mirror(forearm));
    // Fingers of the helping hand point up and across the picture.
    let arm = camera.flat(Vector::new(0.0, 1.0, 0.0));
    let level = arm.x.abs() > 2.0 * arm.y.abs();
    // Beside a forearm that lies level both arms come from the body, and one reaches over the hand to its far side.
    let left = grip != Grip::Pinch && if level { arm.x > 0.0 } else { hand.z.dot(camera.right) < -0.5 };
    let far = level && place.out.dot(camera.right) * arm.x.signum() > 0.4;
    let nod = if far { -0.34 } else { 0.34 };
    let across = (camera.right * if left { 0.94 } else { -0.94 } + camera.up * nod).unit();
    let out = match grip {
        // A pinch closes on two sides of a digit, its thumb nearer to the eye.
        Grip::Pinch => camera.eye,
        Grip::Fingertip | Grip::Palm => place.out,
        Grip::Together => -hand.z,
    };
    let along = match grip {
        Grip::Together => hand.y,
        _ if across.dot(out).abs() > 0.93 => camera.up,
        _ => across,
    };
    (basis(out, along), own)
}
