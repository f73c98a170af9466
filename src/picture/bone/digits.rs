//! Metacarpals and phalanges.

use crate::body::{BoneName, Finger, Row, Segment};
use crate::picture::limb::{METACARPAL_BASE, METACARPAL_HEAD, Skeleton};
use crate::picture::space::{Frame, Vector};

use super::Bone;

/// Girth of the bones of each finger against those of the middle one.
const GIRTH: [f64; 4] = [0.98, 1.0, 0.95, 0.85];

/// The gap at a joint, mm: cartilage shows as paper.
const GAP: f64 = 1.1;

/// Half breadths of a small long bone.
struct Profile {
    base: f64,
    shaft: f64,
    head: f64,
    /// How far the two knobs of its head stand apart; 0 for a round head.
    knobs: f64,
}

/// A small long bone along y of a frame, from its base to its head.
fn small(bone: Bone, frame: &Frame, from: f64, to: f64, size: f64, profile: &Profile) -> Bone {
    let Profile { base, shaft, head, knobs } = *profile;
    let (base, shaft, head, knobs) = (base * size, shaft * size, head * size, knobs * size);
    let z = 0.6;
    let at = |share: f64| from + (to - from) * share;
    let rim = base * 0.62;
    let bone = bone
        .tube(
            frame,
            &[
                [0.0, from + base * 0.72, z, base * 0.9],
                [0.0, at(0.28), z, shaft * 1.16],
                [0.0, at(0.5), z, shaft],
                [0.0, at(0.72), z, shaft * 1.08],
                [0.0, to - head * 0.95, z, head * 0.95],
            ],
        )
        // A broad shallow base.
        .tube(frame, &[[-base + rim * 0.9, from + rim, z, rim], [base - rim * 0.9, from + rim, z, rim]]);
    let knob = if knobs > 0.0 { head * 0.72 } else { head };
    let side = if knobs > 0.0 { knobs } else { 0.02 };
    bone.tube(frame, &[[-side, to - knob, z, knob], [side, to - knob, z, knob]])
}

/// The last bone of a digit: a tuft instead of a head.
fn last(bone: Bone, frame: &Frame, from: f64, to: f64, size: f64, base: f64, shaft: f64) -> Bone {
    let (base, shaft) = (base * size, shaft * size);
    let (z, rim, tuft) = (0.6, base * 0.62, shaft * 0.95);
    bone.tube(
        frame,
        &[
            [0.0, from + base * 0.72, z, base * 0.86],
            [0.0, from + (to - from) * 0.5, z - 0.2, shaft],
            [0.0, to - tuft * 1.5, z - 0.4, shaft * 1.1],
        ],
    )
    .tube(frame, &[[-base + rim * 0.9, from + rim, z, rim], [base - rim * 0.9, from + rim, z, rim]])
    .tube(frame, &[[-shaft * 0.75, to - tuft, z - 0.4, tuft], [shaft * 0.75, to - tuft, z - 0.4, tuft]])
}

/// The bones of thumb and fingers.
pub fn bones(skeleton: &Skeleton) -> Vec<Bone> {
    let mut found = Vec::new();
    let hand = skeleton.frame(Segment::Hand);
    let make = |name, finger, segment, frame: &Frame, from: f64, to: f64| {
        Bone::new(name, finger, segment, (frame.point(0.0, from, 0.0), frame.point(0.0, to, 0.0)))
    };
    for finger in Finger::ALL.iter().copied() {
        let i = finger as usize;
        let size = GIRTH[i];
        let lift = Vector::new(0.0, 0.0, 0.6);
        let place = |v: Vector| hand.point(v.x, v.y, v.z);
        let (base, head) = (place(METACARPAL_BASE[i] + lift), place(METACARPAL_HEAD[i] + lift));
        let frame = super::between(base, head, hand.axes.z);
        let length = (head - base).length();
        let bone = make(BoneName::FingerMetacarpal, Some(finger), Segment::Hand, &frame, -0.5, length - 1.5);
        let profile = Profile { base: 5.7, shaft: 3.7, head: 6.1, knobs: 0.0 };
        found.push(small(bone, &frame, -0.5, length - 0.2 + GAP, size, &profile));
        let rows = [
            (BoneName::FingerProximal, Profile { base: 6.0, shaft: 3.7, head: 4.9, knobs: 2.0 }),
            (BoneName::FingerMiddle, Profile { base: 5.2, shaft: 3.1, head: 4.1, knobs: 1.7 }),
        ];
        for (row, (name, profile)) in [Row::Proximal, Row::Middle].into_iter().zip(rows) {
            let segment = Segment::Finger(finger, row);
            let frame = skeleton.frame(segment);
            let length = skeleton.length(segment);
            let from = if row == Row::Proximal { 3.6 } else { 2.6 };
            let to = length + 1.4;
            found.push(small(make(name, Some(finger), segment, frame, from, to), frame, from, to, size, &profile));
        }
        let segment = Segment::Finger(finger, Row::Distal);
        let frame = skeleton.frame(segment);
        let to = skeleton.lengths.finger(finger)[2];
        found.push(last(
            make(BoneName::FingerDistal, Some(finger), segment, frame, 2.4, to),
            frame,
            2.4,
            to,
            size,
            4.4,
            2.5,
        ));
    }
    let parts = [
        (
            BoneName::ThumbMetacarpal,
            Segment::ThumbMetacarpal,
            7.4,
            Profile { base: 7.0, shaft: 4.9, head: 6.5, knobs: 0.0 },
        ),
        (
            BoneName::ThumbProximal,
            Segment::ThumbProximal,
            3.8,
            Profile { base: 6.6, shaft: 4.3, head: 5.4, knobs: 2.3 },
        ),
    ];
    for (name, segment, from, profile) in parts {
        let frame = skeleton.frame(segment);
        let to = skeleton.length(segment) + if segment == Segment::ThumbMetacarpal { 1.0 } else { 1.5 };
        found.push(small(make(name, None, segment, frame, from, to), frame, from, to, 1.0, &profile));
    }
    let frame = skeleton.frame(Segment::ThumbDistal);
    let to = skeleton.lengths.thumb[2];
    let bone = make(BoneName::ThumbDistal, None, Segment::ThumbDistal, frame, 2.8, to);
    found.push(last(bone, frame, 2.8, to, 1.0, 5.6, 3.5));
    found
}
