//! Humerus, radius and ulna. The lower two turn round each other with the forearm.

use crate::body::{Axis, BoneName, Joint, Segment};
use crate::picture::limb::{Ball, Skeleton, through};
use crate::picture::space::{Rotation, Vector};

use super::Bone;

/// The elbow's hinge as the forearm sees it: x to the outer side of the arm, y to the hand, z to the side that it bends
/// to.
pub fn hinge(skeleton: &Skeleton) -> (Vector, Rotation) {
    let turned = skeleton.posture.degrees(Joint::Forearm, Axis::Rotation);
    (Vector::new(0.0, -skeleton.lengths.forearm, 0.0), Rotation::about_y(-90.0 - turned))
}

/// A long bone through points of space.
fn long(name: BoneName, balls: &[(Vector, f64)]) -> Bone {
    let balls: Vec<Ball> = balls.iter().map(|(at, radius)| Ball { at: *at, radius: *radius }).collect();
    let axis = (balls[0].at, balls[balls.len() - 1].at);
    let mut bone = Bone::new(name, None, Segment::Forearm, axis);
    bone.tubes.push(through(Segment::Forearm, &balls));
    bone
}

/// The three bones.
pub fn bones(skeleton: &Skeleton) -> Vec<Bone> {
    let (elbow, turn) = hinge(skeleton);
    let at = |x: f64, y: f64, z: f64| elbow + turn.apply(Vector::new(x, y, z));
    let wrist = |x: f64, y: f64, z: f64| Vector::new(x, y, z);
    let plain = skeleton.frame(Segment::Forearm);

    let (top, bottom) = (at(12.0, 26.0, 1.0), wrist(-8.5, -36.0, 0.0));
    let bow = Vector::new(-4.5, 0.0, 0.0);
    let radius = long(
        BoneName::Radius,
        &[
            (at(12.0, 14.5, 0.0), 8.0),
            (at(12.0, 18.0, 0.0), 8.2),
            (top, 5.9),
            (at(11.0, 40.0, 1.0), 6.6),
            (top.towards(bottom, 0.4) + bow, 5.9),
            (top.towards(bottom, 0.7) + bow * 0.7, 5.8),
            (bottom, 6.6),
            (wrist(-9.0, -20.0, 0.0), 8.4),
            (wrist(-9.5, -11.5, 0.0), 9.0),
        ],
    );
    let radius = radius
        .tube(
            plain,
            &[[-11.0, -20.0, 0.0, 6.5], [-15.0, -11.0, 0.0, 5.0], [-17.2, -4.0, 0.0, 3.2], [-17.8, -0.5, 0.0, 2.3]],
        )
        .tube(plain, &[[-7.0, -20.0, 0.0, 6.5], [-3.4, -9.0, 0.0, 5.2]])
        .tube(plain, &[[-14.0, -7.5, 0.0, 4.6], [-3.6, -7.6, 0.0, 4.8]]);

    let (top, bottom) = (at(-7.0, 30.0, -5.0), wrist(11.5, -40.0, 0.0));
    let ulna = long(
        BoneName::Ulna,
        &[
            (at(-7.0, -11.0, -11.5), 8.0),
            (at(-7.0, -2.0, -14.0), 7.6),
            (at(-7.0, 10.0, -12.5), 7.4),
            (top, 7.2),
            (top.towards(bottom, 0.35), 6.0),
            (top.towards(bottom, 0.7), 5.0),
            (bottom, 4.6),
            (wrist(11.5, -22.0, 0.6), 5.2),
            (wrist(11.5, -12.5, 0.8), 6.6),
        ],
    );
    let mut ulna = ulna.tube(plain, &[[14.0, -14.0, 1.0, 4.0], [16.4, -8.0, 1.0, 2.2], [16.8, -5.5, 1.0, 1.9]]);
    let beak = [(at(-7.0, 16.0, -6.0), 7.0), (at(-7.0, 13.5, 4.0), 5.0)];
    ulna.tubes.push(through(Segment::Forearm, &beak.map(|(at, radius)| Ball { at, radius })));

    let upper = skeleton.frame(Segment::UpperArm);
    let end = skeleton.lengths.upper_arm;
    let axis = (upper.point(0.0, end, 0.0), upper.origin);
    let humerus = Bone::new(BoneName::Humerus, None, Segment::UpperArm, axis)
        .tube(
            upper,
            &[[0.0, end, -2.0, 11.5], [0.0, 70.0, -2.0, 10.0], [0.0, 38.0, -1.0, 10.0], [0.0, 22.0, 0.0, 11.0]],
        )
        .tube(
            upper,
            &[[-3.0, 34.0, 0.0, 8.0], [-12.0, 20.0, 1.0, 6.5], [-21.0, 10.0, 3.0, 5.6], [-24.5, 8.0, 4.0, 4.6]],
        )
        .tube(upper, &[[3.0, 34.0, 0.0, 8.0], [12.0, 18.0, 0.0, 6.5], [19.5, 9.0, 0.0, 5.0]])
        .tube(upper, &[[-14.5, 0.5, 0.0, 9.5], [-7.0, 1.0, 0.0, 8.2], [2.0, 1.0, 0.0, 8.4], [12.0, 0.5, -2.0, 9.0]])
        .tube(upper, &[[0.0, 22.0, 0.0, 9.0], [-8.0, 10.0, 0.0, 8.0]])
        .tube(upper, &[[0.0, 22.0, 0.0, 9.0], [9.0, 9.0, 0.0, 8.0]]);
    vec![humerus, ulna, radius]
}
