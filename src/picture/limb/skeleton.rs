//! Where each segment is in a posture.

use crate::body::{Axis, Finger, Joint, Knuckle};
use crate::picture::space::{Frame, Rotation, Vector, turn};
use crate::units::Degrees;

use super::lengths::{ADULT, Lengths};
use super::{Posture, Row, Segment};

/// Where the metacarpals of the fingers begin, index to little, mm from the wrist.
pub const METACARPAL_BASE: [Vector; 4] = [
    Vector::new(-12.0, 33.0, 0.0),
    Vector::new(-1.0, 35.0, 1.0),
    Vector::new(9.0, 32.0, 0.0),
    Vector::new(17.0, 28.0, -3.0),
];

/// Where they end: the big knuckles.
pub const METACARPAL_HEAD: [Vector; 4] = [
    Vector::new(-26.0, 97.0, 0.0),
    Vector::new(-5.5, 100.0, 2.0),
    Vector::new(14.0, 93.0, 1.0),
    Vector::new(30.0, 84.0, -3.0),
];

/// How far the fingers fan out when nothing holds them, degrees of ulnar deviation.
const FAN: [f64; 4] = [-5.0, -0.5, 4.0, 9.0];

/// Where the thumb begins: its saddle joint.
pub const THUMB_BASE: Vector = Vector::new(-17.0, 17.0, -9.0);

/// The thumb at rest, when a posture says nothing: out of the palm and away from the index finger, degrees.
const THUMB_REST: (f64, f64) = (20.0, 28.0);

/// Direction of a thumb that lies beside the index finger: towards the thumb side, and towards the palm, degrees.
const THUMB_BESIDE: (f64, f64) = (11.0, 5.0);

/// Bend of the thumb's end joints at rest.
const THUMB_BENT: (f64, f64) = (8.0, 6.0);

/// The frames of all segments. Each has its origin at the proximal joint, y along the bone, z out of its back.
///
/// The forearm is fixed; what is nearer to the trunk moves instead.
#[derive(Clone, Debug)]
pub struct Skeleton {
    frames: [Frame; Segment::COUNT],
    pub lengths: Lengths,
    pub posture: Posture,
}

impl Skeleton {
    /// A limb in a posture.
    ///
    /// The axes of the thumb stand obliquely to the palm: it turns about its own length as it leaves the palm
    /// (pronation), 50 degrees at rest and up to 90 in opposition; common practice, no source.
    pub fn new(posture: Posture) -> Self {
        let lengths = ADULT;
        let mut frames = [Frame::WORLD; Segment::COUNT];
        let angle = |joint, axis| posture.degrees(joint, axis);
        let hand = Frame::WORLD.child(
            0.0,
            0.0,
            0.0,
            &Rotation::about_z(-angle(Joint::Wrist, Axis::Deviation))
                .of(&Rotation::about_x(-angle(Joint::Wrist, Axis::Flexion))),
        );
        frames[Segment::Hand.index()] = hand;
        for finger in Finger::ALL.iter().copied() {
            let i = finger as usize;
            let bend = |knuckle: Knuckle| Rotation::about_x(-angle(knuckle.of(finger), Axis::Flexion));
            let sideways = |knuckle: Knuckle| Rotation::about_z(-angle(knuckle.of(finger), Axis::Deviation));
            let head = METACARPAL_HEAD[i];
            let [first, second, _] = lengths.finger(finger);
            // A bent knuckle cannot fan out: its side ligaments are tight, and the fingers lie side by side.
            let (tight, _) = turn(angle(Joint::Mcp(finger), Axis::Flexion).clamp(0.0, 90.0));
            let fan = Rotation::about_z(-FAN[i] * (1.0 - 0.85 * tight)).of(&sideways(Knuckle::Mcp));
            let proximal = hand.child(head.x, head.y, head.z, &fan.of(&bend(Knuckle::Mcp)));
            let middle = proximal.child(0.0, first, 0.0, &sideways(Knuckle::Pip).of(&bend(Knuckle::Pip)));
            let distal = middle.child(0.0, second, 0.0, &bend(Knuckle::Dip));
            for (row, frame) in Row::ALL.into_iter().zip([proximal, middle, distal]) {
                frames[Segment::Finger(finger, row).index()] = frame;
            }
        }
        let palmar = posture.stands(Joint::ThumbCmc, Axis::PalmarAbduction);
        // A thumb that stands out of the palm swings towards the middle of it.
        let swing = (palmar - THUMB_REST.0).max(0.0) * 0.35;
        let radial =
            posture.angle(Joint::ThumbCmc, Axis::RadialAbduction).map_or(THUMB_REST.1 - swing, Degrees::degrees);
        let across = angle(Joint::ThumbCmc, Axis::Flexion);
        let pronation = 52.0 + 0.45 * palmar + 0.9 * across - 0.25 * (radial - THUMB_REST.1).max(0.0);
        let metacarpal = hand.child(
            THUMB_BASE.x,
            THUMB_BASE.y,
            THUMB_BASE.z,
            &Rotation::about_z(THUMB_BESIDE.0 + radial - 1.6 * across)
                .of(&Rotation::about_x(-THUMB_BESIDE.1 - palmar))
                .of(&Rotation::about_y(-pronation)),
        );
        let bend = |joint| Rotation::about_x(-posture.stands(joint, Axis::Flexion));
        let sideways = Rotation::about_z(-angle(Joint::ThumbMcp, Axis::Deviation));
        let proximal = metacarpal.child(0.0, lengths.thumb[0], 0.0, &sideways.of(&bend(Joint::ThumbMcp)));
        let distal = proximal.child(0.0, lengths.thumb[1], 0.0, &bend(Joint::ThumbIp));
        frames[Segment::ThumbMetacarpal.index()] = metacarpal;
        frames[Segment::ThumbProximal.index()] = proximal;
        frames[Segment::ThumbDistal.index()] = distal;
        frames[Segment::UpperArm.index()] = upper_arm(&lengths, &posture);
        Self { frames, lengths, posture }
    }

    /// The angle of a joint that a posture does not name, degrees.
    pub const fn rest_angle(joint: Joint, axis: Axis) -> f64 {
        match (joint, axis) {
            (Joint::ThumbCmc, Axis::PalmarAbduction) => THUMB_REST.0,
            (Joint::ThumbCmc, Axis::RadialAbduction) => THUMB_REST.1,
            (Joint::ThumbMcp, Axis::Flexion) => THUMB_BENT.0,
            (Joint::ThumbIp, Axis::Flexion) => THUMB_BENT.1,
            _ => 0.0,
        }
    }

    /// The frame of a segment.
    pub fn frame(&self, segment: Segment) -> &Frame {
        &self.frames[segment.index()]
    }

    /// Its length from the proximal joint to the distal one, or to the end of the pulp.
    pub fn length(&self, segment: Segment) -> f64 {
        let lengths = &self.lengths;
        match segment {
            Segment::UpperArm => lengths.upper_arm,
            Segment::Forearm => lengths.forearm,
            Segment::Hand => METACARPAL_HEAD[1].y,
            Segment::ThumbMetacarpal => lengths.thumb[0],
            Segment::ThumbProximal => lengths.thumb[1],
            Segment::ThumbDistal => lengths.thumb_tip(),
            Segment::Finger(finger, Row::Distal) => lengths.tip(finger),
            Segment::Finger(finger, row) => lengths.finger(finger)[row as usize],
        }
    }

    /// The y of a place in the frame of its segment: a share of its length, from its end nearer to the body.
    pub fn along(&self, segment: Segment, share: f64) -> f64 {
        let length = self.length(segment);
        // The forearm's y grows towards the hand, and its origin is the wrist.
        share * length - if segment == Segment::Forearm { length } else { 0.0 }
    }

    /// The joint that moves a segment.
    pub const fn joint(segment: Segment) -> Joint {
        match segment {
            Segment::UpperArm => Joint::Elbow,
            Segment::Forearm => Joint::Forearm,
            Segment::Hand => Joint::Wrist,
            Segment::ThumbMetacarpal => Joint::ThumbCmc,
            Segment::ThumbProximal => Joint::ThumbMcp,
            Segment::ThumbDistal => Joint::ThumbIp,
            Segment::Finger(finger, Row::Proximal) => Joint::Mcp(finger),
            Segment::Finger(finger, Row::Middle) => Joint::Pip(finger),
            Segment::Finger(finger, Row::Distal) => Joint::Dip(finger),
        }
    }

    /// The end of a segment that points to the fingertips.
    pub fn end(&self, segment: Segment) -> Vector {
        let frame = self.frame(segment);
        match segment {
            Segment::Forearm => frame.origin,
            _ => frame.point(0.0, self.length(segment), 0.0),
        }
    }
}

/// The upper arm: its y runs from the elbow towards the shoulder. When the elbow is bent it lies on the thumb side of a
/// forearm in mid-rotation, on the palm side of one turned palm up, and on the back of one turned palm down.
fn upper_arm(lengths: &Lengths, posture: &Posture) -> Frame {
    let bend = posture.degrees(Joint::Elbow, Axis::Flexion);
    let turned = posture.degrees(Joint::Forearm, Axis::Rotation);
    let hinge = Frame::WORLD.child(0.0, -lengths.forearm, 0.0, &Rotation::about_y(-90.0 - turned));
    hinge.child(0.0, 0.0, 0.0, &Rotation::about_x(180.0 - bend))
}
