//! Flesh that meets flesh: curled fingers stop at the palm, a thumb meets the finger that it is led to.

use crate::body::norms::range;
use crate::body::{Axis, Finger, Joint, Knuckle};
use crate::content::Facet;
use crate::picture::solid::{Blends, Field};
use crate::picture::space::Vector;
use crate::units::Degrees;

use super::{Build, Posture, Row, Segment, Skeleton, flesh};

/// How far soft tissue gives way, mm.
const GIVE: f64 = 1.6;

/// The same posture with fingers that would sink into the palm or into themselves opened until they only press on it.
#[must_use]
pub fn pressed(posture: &Posture, build: Build) -> Posture {
    let bent = |finger: Finger| {
        Knuckle::ALL.iter().map(|knuckle| posture.degrees(knuckle.of(finger), Axis::Flexion)).sum::<f64>()
    };
    if Finger::ALL.iter().all(|finger| bent(*finger) < 150.0) {
        return posture.clone();
    }
    let skeleton = Skeleton::new(posture.clone());
    let palm = Field::new(&flesh(&skeleton, build), Blends::SKIN, |segment| {
        matches!(segment, Segment::Hand | Segment::ThumbMetacarpal)
    });
    let mut found = posture.clone();
    for finger in Finger::ALL.iter().copied().filter(|finger| bent(*finger) >= 150.0) {
        let at = |share: f64| opened(posture, finger, share);
        if sinks(&Skeleton::new(at(1.0)), &palm, finger) {
            let (mut low, mut high) = (0.45, 1.0);
            for _ in 0..9 {
                let middle = f64::midpoint(low, high);
                if sinks(&Skeleton::new(at(middle)), &palm, finger) { high = middle } else { low = middle }
            }
            let stopped = at(low);
            for knuckle in [Knuckle::Pip, Knuckle::Dip] {
                let joint = knuckle.of(finger);
                if let Some(angle) = stopped.angle(joint, Axis::Flexion) {
                    found.turn(joint, Axis::Flexion, angle);
                }
            }
        }
    }
    found
}

/// A posture with the middle and end joint of one finger bent only so far.
fn opened(posture: &Posture, finger: Finger, share: f64) -> Posture {
    let mut found = posture.clone();
    for (knuckle, weight) in [(Knuckle::Pip, 0.6), (Knuckle::Dip, 1.0)] {
        let joint = knuckle.of(finger);
        let degrees = posture.degrees(joint, Axis::Flexion);
        found.turn(joint, Axis::Flexion, tenths(degrees * (1.0 - (1.0 - share) * weight)));
    }
    found
}

/// A signed angle to the tenth of a degree.
fn tenths(degrees: f64) -> Degrees {
    Degrees::tenth(libm::round(degrees * 10.0) as i16)
}

/// Whether the end bone of a finger lies deeper in the palm, or in the finger's own first bone, than flesh gives way.
fn sinks(skeleton: &Skeleton, palm: &Field, finger: Finger) -> bool {
    let distal = skeleton.frame(Segment::Finger(finger, Row::Distal));
    let proximal = skeleton.frame(Segment::Finger(finger, Row::Proximal));
    let length = skeleton.length(Segment::Finger(finger, Row::Distal));
    let first = skeleton.length(Segment::Finger(finger, Row::Proximal));
    [0.35, 0.6, 0.78].iter().any(|share| {
        let radius = 7.4 - 1.8 * share;
        let point = distal.point(0.0, length * share, -1.0);
        let own = proximal.local(point);
        let along = own.y.clamp(0.0, first);
        let beside = Vector::new(own.x, own.y - along, own.z + 1.5).length() - 8.6;
        palm.near(point, 1.0).distance(point) - radius < -GIVE || beside - radius < -GIVE
    })
}

/// The joints that bring the thumb to a finger.
const THUMB: [(Joint, Axis); 5] = [
    (Joint::ThumbCmc, Axis::PalmarAbduction),
    (Joint::ThumbCmc, Axis::RadialAbduction),
    (Joint::ThumbCmc, Axis::Flexion),
    (Joint::ThumbMcp, Axis::Flexion),
    (Joint::ThumbIp, Axis::Flexion),
];

/// The same posture with the pad of the thumb brought on to a segment of a finger: its pad, the side that faces
/// the thumb, or its back; `gap` millimetres stay between them for what is held. Joints move as little from the given angles as they can, and stay inside healthy ranges.
#[must_use]
pub fn met(posture: &Posture, segment: Segment, facet: Facet, gap: f64) -> Posture {
    let mut joints: Vec<(Joint, Axis)> = THUMB.to_vec();
    // A finger comes to meet the thumb with its pad; in a fist or a key pinch it waits.
    if let (Some(finger), Facet::Pad) = (segment.finger(), facet) {
        joints.extend(Knuckle::ALL.map(|knuckle| (knuckle.of(finger), Axis::Flexion)));
    }
    let start: Vec<f64> = joints.iter().map(|(joint, axis)| posture.stands(*joint, *axis)).collect();
    let with = |angles: &[f64]| {
        let mut found = posture.clone();
        for ((joint, axis), angle) in joints.iter().zip(angles) {
            found.turn(*joint, *axis, tenths(*angle));
        }
        found
    };
    let cost = |angles: &[f64]| {
        let skeleton = Skeleton::new(with(angles));
        let strain: f64 = angles.iter().zip(&start).map(|(a, b)| (a - b) * (a - b)).sum();
        apart(&skeleton, segment, facet, gap) + strain * 0.004
    };
    let mut angles = start.clone();
    let mut best = cost(&angles);
    for step in [8.0, 4.0, 2.0, 1.0, 0.5] {
        for _ in 0..14 {
            let before = best;
            for i in 0..angles.len() {
                for way in [step, -step] {
                    let (joint, axis) = joints[i];
                    let mut tried = angles.clone();
                    tried[i] += way;
                    let inside = range(joint, axis).is_none_or(|range| {
                        (range.from().degrees() - 8.0..=range.to().degrees() + 8.0).contains(&tried[i])
                    });
                    let now = if inside { cost(&tried) } else { f64::INFINITY };
                    if now < best {
                        best = now;
                        angles = tried;
                    }
                }
            }
            if before - best < 1e-6 {
                break;
            }
        }
    }
    with(&angles)
}

/// How badly the pad of the thumb misses its place, in square millimetres, with a share for pads that do not face each
/// other.
fn apart(skeleton: &Skeleton, segment: Segment, facet: Facet, gap: f64) -> f64 {
    let thumb = skeleton.frame(Segment::ThumbDistal);
    let length = skeleton.length(Segment::ThumbDistal);
    let own = thumb.point(0.0, length * 0.62, -10.2 - gap);
    let frame = skeleton.frame(segment);
    let depth = if matches!(segment, Segment::Finger(_, Row::Distal)) { 7.6 } else { 9.0 };
    let length = skeleton.length(segment);
    let (point, out) = match facet {
        Facet::Pad => (frame.point(0.0, length * 0.58, -depth), -frame.axes.z),
        Facet::Side => (frame.point(-depth, length * 0.4, 1.5), frame.axes.apply(Vector::new(-1.0, 0.0, 0.2))),
        Facet::Back => (frame.point(0.0, length * 0.5, depth - 0.6), frame.axes.z),
    };
    let miss = (own - point).length();
    let facing = 1.0 + (-thumb.axes.z).dot(out);
    miss * miss + 40.0 * facing * facing + 6.0 * overlap(skeleton)
}

/// How deep the thumb lies in the fingers, as a sum of squares, square millimetres.
fn overlap(skeleton: &Skeleton) -> f64 {
    let thumb =
        |segment, share: f64, depth: f64| skeleton.frame(segment).point(0.0, skeleton.length(segment) * share, depth);
    let points = [
        (thumb(Segment::ThumbMetacarpal, 0.9, 0.0), 11.0),
        (thumb(Segment::ThumbProximal, 0.5, -1.0), 9.8),
        (thumb(Segment::ThumbProximal, 1.0, 0.0), 9.8),
        (thumb(Segment::ThumbDistal, 0.35, -1.0), 9.2),
        (thumb(Segment::ThumbDistal, 0.7, -1.0), 8.0),
    ];
    let mut sum = 0.0;
    for finger in Finger::ALL.iter().copied() {
        for row in Row::ALL {
            let segment = Segment::Finger(finger, row);
            let (frame, length) = (skeleton.frame(segment), skeleton.length(segment));
            for (point, radius) in points {
                let own = frame.local(point);
                let off = Vector::new(own.x, own.y - own.y.clamp(0.0, length), own.z).length();
                let deep = (radius + 8.6 - GIVE - off).max(0.0);
                sum += deep * deep;
            }
        }
    }
    sum
}
