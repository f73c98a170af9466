//! The flesh round the bones, as tubes.
//!
//! Radii are those of an adult hand of middle size, drawn by eye; a build changes girth and size.

use crate::body::{Axis, Finger, Joint};
use crate::picture::space::{Frame, Rotation, Vector};

use super::skeleton::{METACARPAL_BASE, METACARPAL_HEAD};
use super::tube::through;
use super::{Ball, Build, Row, Segment, Skeleton, Tube};

/// The tubes of a limb, in the order of their segments.
#[derive(Clone, Debug)]
pub struct Flesh {
    pub tubes: Vec<Tube>,
}

/// Radii of a finger: base, middle of the first bone, middle joint, end joint, tip.
const FINGER: [[f64; 5]; 4] = [
    [10.2, 8.9, 8.75, 7.35, 6.0],
    [10.3, 9.1, 8.95, 7.55, 6.2],
    [9.9, 8.6, 8.45, 7.15, 5.9],
    [8.9, 7.6, 7.4, 6.35, 5.2],
];

struct Maker<'a> {
    skeleton: &'a Skeleton,
    build: Build,
    tubes: Vec<Tube>,
}

/// The flesh of a limb in a posture.
pub fn flesh(skeleton: &Skeleton, build: Build) -> Flesh {
    let mut maker = Maker { skeleton, build, tubes: Vec::new() };
    maker.upper_arm();
    maker.forearm();
    maker.palm();
    for finger in Finger::ALL.iter().copied() {
        maker.finger(finger);
    }
    maker.webs();
    maker.thumb();
    maker.thumb_web();
    maker.tubes.sort_by_key(|tube| tube.segment);
    Flesh { tubes: maker.tubes }
}

impl Maker<'_> {
    /// A tube through (x, y, z, radius) in a frame.
    fn tube(&mut self, segment: Segment, frame: &Frame, balls: &[[f64; 4]]) {
        let balls: Vec<Ball> =
            balls.iter().map(|[x, y, z, r]| Ball { at: frame.point(*x, *y, *z), radius: *r }).collect();
        self.world(segment, &balls);
    }

    fn world(&mut self, segment: Segment, balls: &[Ball]) {
        let girth = self.build.girth();
        let balls: Vec<Ball> = balls.iter().map(|ball| Ball { radius: ball.radius * girth, ..*ball }).collect();
        self.tubes.push(through(segment, &balls));
    }

    /// How far a turned forearm has carried its two bones round each other at a place along it.
    fn twist(&self, y: f64) -> Rotation {
        let turned = self.skeleton.posture.degrees(Joint::Forearm, Axis::Rotation);
        let share = (-y / self.skeleton.lengths.forearm).clamp(0.0, 1.0);
        // Flesh at the wrist goes with the hand, at the elbow it stays with the arm.
        Rotation::about_y(-turned * share * share)
    }

    fn forearm(&mut self) {
        let (thumb_side, little_side, belly, head) = (
            [
                [-10.5, 6.0, 0.0, 15.0],
                [-11.0, -8.0, 0.0, 15.6],
                [-11.0, -30.0, 0.0, 16.0],
                [-12.0, -60.0, 0.0, 18.0],
                [-15.0, -100.0, 0.0, 22.0],
                [-18.0, -150.0, 0.0, 26.5],
                [-18.0, -200.0, 0.0, 28.0],
                [-14.0, -240.0, 0.0, 28.0],
            ],
            [
                [10.5, 6.0, 0.0, 14.0],
                [11.0, -8.0, 0.0, 14.6],
                [11.0, -30.0, 0.0, 15.0],
                [11.5, -60.0, 0.0, 17.0],
                [14.0, -100.0, 0.0, 20.5],
                [16.0, -150.0, 0.0, 24.5],
                [16.0, -200.0, 0.0, 25.5],
                [13.0, -240.0, 0.0, 25.0],
            ],
            [
                [0.0, -50.0, -3.0, 13.0],
                [0.0, -90.0, -5.0, 19.0],
                [0.0, -140.0, -7.0, 26.0],
                [0.0, -190.0, -6.0, 29.0],
                [0.0, -225.0, -3.0, 29.0],
            ],
            [[19.0, -9.0, 6.0, 6.0], [18.5, -15.0, 6.5, 7.5], [17.0, -24.0, 5.0, 7.0]],
        );
        for tube in [&thumb_side[..], &little_side, &belly, &head] {
            let balls: Vec<Ball> = tube
                .iter()
                .map(|[x, y, z, r]| Ball { at: self.twist(*y).apply(Vector::new(*x, *y, *z)), radius: *r })
                .collect();
            self.world(Segment::Forearm, &balls);
        }
    }

    fn upper_arm(&mut self) {
        let frame = *self.skeleton.frame(Segment::UpperArm);
        let length = self.skeleton.lengths.upper_arm;
        self.tube(
            Segment::UpperArm,
            &frame,
            &[[-9.0, -6.0, 0.0, 24.0], [-8.0, 25.0, 0.0, 26.0], [-8.0, 70.0, 0.0, 31.0], [-8.0, length, 0.0, 36.0]],
        );
        self.tube(
            Segment::UpperArm,
            &frame,
            &[[9.0, -6.0, 0.0, 24.0], [8.0, 25.0, 0.0, 26.0], [8.0, 70.0, 0.0, 31.0], [8.0, length, 0.0, 36.0]],
        );
        // The point of the elbow.
        self.tube(Segment::UpperArm, &frame, &[[0.0, -10.0, 12.0, 14.0], [0.0, 2.0, 13.0, 14.0]]);
    }

    fn palm(&mut self) {
        let hand = *self.skeleton.frame(Segment::Hand);
        let palm = Segment::Hand;
        self.tube(
            palm,
            &hand,
            &[[-11.0, -6.0, 0.0, 15.0], [-11.5, 6.0, -0.5, 14.8], [-12.0, 20.0, -1.0, 14.0], [-12.0, 34.0, -1.0, 13.0]],
        );
        self.tube(
            palm,
            &hand,
            &[[11.0, -6.0, 0.0, 14.0], [12.0, 6.0, -1.0, 13.8], [14.0, 20.0, -1.5, 13.0], [16.0, 34.0, -2.0, 12.5]],
        );
        let (bases, middles, heads) = ([12.3, 12.3, 11.8, 11.0], [11.2, 11.3, 10.9, 10.2], [11.0, 11.3, 10.7, 9.8]);
        for i in 0..4 {
            let (base, head) = (METACARPAL_BASE[i], METACARPAL_HEAD[i]);
            let at = |share: f64, radius: f64| {
                let p = base.towards(head, share);
                [p.x, p.y, p.z, radius]
            };
            self.tube(palm, &hand, &[at(0.0, bases[i]), at(0.5, middles[i]), at(0.85, heads[i]), at(1.0, heads[i])]);
        }
        // The ball of the little finger, and the pads below the fingers.
        self.tube(
            palm,
            &hand,
            &[
                [14.5, -4.0, -4.0, 8.5],
                [19.5, 14.0, -6.5, 10.0],
                [24.5, 36.0, -8.5, 11.6],
                [28.3, 58.0, -7.5, 10.8],
                [29.0, 74.0, -6.5, 9.0],
            ],
        );
        self.tube(
            palm,
            &hand,
            &[[-21.0, 85.0, -5.5, 8.5], [-4.0, 86.0, -5.5, 8.6], [12.0, 82.0, -6.0, 8.5], [27.0, 74.0, -6.5, 8.0]],
        );
    }

    fn finger(&mut self, finger: Finger) {
        let [base, shaft, middle_joint, end_joint, tip] = FINGER[finger as usize];
        let (middle_joint, end_joint) = (middle_joint * self.build.joints(), end_joint * self.build.joints());
        let [first, second, _] = self.skeleton.lengths.finger(finger);
        let last = self.skeleton.lengths.tip(finger);
        let bent = |joint| self.skeleton.posture.degrees(joint, Axis::Flexion);
        // A curled finger folds its pads outwards and fills the hollow of the hand.
        let squash = ((bent(Joint::Pip(finger)) - 45.0) / 45.0).clamp(0.0, 1.0);
        // The last of the curl presses them together.
        let pressed = ((bent(Joint::Pip(finger)) - 75.0) / 25.0).clamp(0.0, 1.0)
            * ((bent(Joint::Mcp(finger)) - 40.0) / 40.0).clamp(0.0, 1.0);
        let pad = 1.0 + 0.16 * squash + 0.06 * pressed;
        let out = 1.6 * squash + 2.6 * pressed;
        let frame = |row| *self.skeleton.frame(Segment::Finger(finger, row));
        let (proximal, middle, distal) = (frame(Row::Proximal), frame(Row::Middle), frame(Row::Distal));
        let segment = Segment::Finger(finger, Row::Proximal);
        self.tube(
            segment,
            &proximal,
            &[
                [0.0, 0.0, 0.0, base],
                [0.0, first * 0.3, 0.0, base * 0.5 + shaft * 0.5],
                [0.0, first * 0.6, 0.0, shaft - 0.15],
                [0.0, first * 0.88, 0.0, middle_joint + 0.1],
                [0.0, first, 0.0, middle_joint + 0.25],
            ],
        );
        self.tube(
            segment,
            &proximal,
            &[
                [0.0, first * 0.3, -2.2 - out, shaft * 0.86 * pad],
                [0.0, first * 0.55, -2.6 - out, shaft * 0.84 * pad],
                [0.0, first * 0.8, -1.6 - out * 0.5, shaft * 0.84],
            ],
        );
        if pressed > 0.0 {
            // The fold of the palm at the root of a bent finger.
            self.tube(
                segment,
                &proximal,
                &[
                    [0.0, first * 0.12, -3.0 - 2.0 * pressed, base * (0.8 + 0.1 * pressed)],
                    [0.0, first * 0.4, -2.0 - out, shaft * 0.9 * pad],
                ],
            );
        }
        let segment = Segment::Finger(finger, Row::Middle);
        self.tube(
            segment,
            &middle,
            &[
                [0.0, 0.0, 0.0, middle_joint + 0.25],
                [0.0, second * 0.18, 0.0, middle_joint],
                [0.0, second * 0.5, 0.0, (middle_joint + end_joint) / 2.0 * 0.97 / self.build.joints()],
                [0.0, second * 0.85, 0.0, end_joint + 0.05],
                [0.0, second, 0.0, end_joint + 0.1],
            ],
        );
        self.tube(
            segment,
            &middle,
            &[
                [0.0, second * 0.25, -1.7 - out * 0.5, end_joint * 0.95 * pad],
                [0.0, second * 0.5, -2.1 - out, end_joint * 0.94 * pad],
                [0.0, second * 0.75, -1.5 - out, end_joint * 0.9 * pad],
            ],
        );
        let segment = Segment::Finger(finger, Row::Distal);
        self.tube(
            segment,
            &distal,
            &[
                [0.0, 0.0, 0.0, end_joint],
                [0.0, last * 0.2, -0.1, end_joint * 0.985],
                [0.0, last * 0.5, -0.5, end_joint * 0.95],
                [0.0, last - tip, -0.7, tip],
            ],
        );
        self.tube(
            segment,
            &distal,
            &[
                [0.0, last * 0.3, -1.5 - out * 0.4, end_joint * 0.85 * pad],
                [0.0, last * 0.5, -2.0 - out * 0.6, end_joint * 0.84 * pad],
                [0.0, last - tip * 1.25, -1.6, tip * 0.92],
            ],
        );
    }

    /// The skin between the fingers.
    fn webs(&mut self) {
        for pair in Finger::ALL.windows(2) {
            let near = |finger: Finger, x: f64| {
                let frame = self.skeleton.frame(Segment::Finger(finger, Row::Proximal));
                Ball { at: frame.point(x, self.skeleton.lengths.finger(finger)[0] * 0.14, -2.5), radius: 5.5 }
            };
            let balls = [near(pair[0], 3.0), near(pair[1], -3.0)];
            self.world(Segment::Hand, &balls);
        }
    }

    fn thumb(&mut self) {
        let hand = *self.skeleton.frame(Segment::Hand);
        let [metacarpal, proximal, _] = self.skeleton.lengths.thumb;
        let last = self.skeleton.lengths.thumb_tip();
        let frame = |segment| *self.skeleton.frame(segment);
        let (one, two, three) =
            (frame(Segment::ThumbMetacarpal), frame(Segment::ThumbProximal), frame(Segment::ThumbDistal));
        self.tube(
            Segment::ThumbMetacarpal,
            &one,
            &[
                [0.0, -10.0, 0.0, 9.5],
                [0.0, 2.0, 0.0, 11.6],
                [0.0, 16.0, 0.0, 11.6],
                [0.0, 32.0, 0.0, 11.2],
                [0.0, metacarpal, 0.0, 11.4],
            ],
        );
        // The ball of the thumb.
        let heel = hand.point(-12.0, 24.0, -14.0).towards(one.point(0.0, 14.0, -5.0), 0.4);
        self.world(
            Segment::ThumbMetacarpal,
            &[
                Ball { at: hand.point(-7.0, 12.0, -10.0), radius: 9.0 },
                Ball { at: heel, radius: 12.0 },
                Ball { at: one.point(1.0, 26.0, -5.0), radius: 12.2 },
                Ball { at: one.point(0.0, 40.0, -3.0), radius: 10.0 },
            ],
        );
        self.world(
            Segment::ThumbMetacarpal,
            &[
                Ball { at: hand.point(-5.0, 32.0, -10.0), radius: 8.0 },
                Ball { at: one.point(3.0, 26.0, -4.0), radius: 11.0 },
            ],
        );
        self.tube(
            Segment::ThumbProximal,
            &two,
            &[
                [0.0, 0.0, 0.0, 11.2],
                [0.0, proximal * 0.3, 0.0, 10.2],
                [0.0, proximal * 0.6, 0.0, 9.5],
                [0.0, proximal * 0.88, 0.0, 9.9],
                [0.0, proximal, 0.0, 9.8],
            ],
        );
        self.tube(
            Segment::ThumbProximal,
            &two,
            &[[0.0, proximal * 0.2, -2.0, 9.0], [0.0, proximal * 0.5, -2.5, 8.6], [0.0, proximal * 0.8, -1.6, 8.6]],
        );
        for x in [-1.7, 1.7] {
            self.tube(
                Segment::ThumbDistal,
                &three,
                &[
                    [x * 0.4, 0.0, 0.0, 9.5],
                    [x * 0.8, last * 0.25, -0.2, 9.0],
                    [x, last * 0.5, -0.6, 8.7],
                    [x * 0.9, last - 7.4, -1.0, 7.4],
                ],
            );
        }
        self.tube(
            Segment::ThumbDistal,
            &three,
            &[[0.0, last * 0.3, -2.2, 8.2], [0.0, last * 0.5, -2.8, 8.2], [0.0, last * 0.7, -2.4, 7.4]],
        );
    }

    /// The fold of skin between thumb and index finger: a sheet with a free edge that sags.
    fn thumb_web(&mut self) {
        let hand = *self.skeleton.frame(Segment::Hand);
        let one = *self.skeleton.frame(Segment::ThumbMetacarpal);
        let two = *self.skeleton.frame(Segment::ThumbProximal);
        let length = self.skeleton.lengths.thumb[0];
        let (start, end) = (two.point(3.0, 9.0, -1.0), hand.point(-26.0, 95.0, -2.0));
        let root = one.point(0.0, 20.0, 0.0);
        let straight = start.towards(end, 0.5);
        let sag = straight.towards(root, 0.2);
        let ease = (root - sag) * 0.02;
        self.world(
            Segment::ThumbMetacarpal,
            &[
                Ball { at: start, radius: 6.0 },
                Ball { at: start.towards(sag, 0.7) + ease, radius: 6.4 },
                Ball { at: end.towards(sag, 0.7) + ease, radius: 6.6 },
                Ball { at: end, radius: 7.0 },
            ],
        );
        for share in [0.22, 0.45, 0.7] {
            let near = one.point(2.0, length * (1.0 - share * 0.8), -2.0);
            let far = hand.point(-24.0 + 6.0 * share, 86.0 - 40.0 * share, -3.0);
            self.world(
                Segment::ThumbMetacarpal,
                &[
                    Ball { at: near, radius: 7.0 },
                    Ball { at: near.towards(far, 0.5), radius: 6.3 + 1.5 * share },
                    Ball { at: far, radius: 8.0 },
                ],
            );
        }
    }
}
