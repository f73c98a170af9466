//! The eight bones of the wrist, in two rows.

use crate::body::{BoneName, Segment};
use crate::picture::limb::Skeleton;
use crate::picture::space::Vector;

use super::Bone;

/// Each as balls (x, y, z, radius) in the frame of the hand.
const PIECES: [(BoneName, &[[f64; 4]]); 8] = [
    (BoneName::Scaphoid, &[[-7.0, 4.2, 1.5, 5.0], [-10.0, 8.0, 0.0, 4.6], [-13.2, 12.6, -3.0, 4.4]]),
    (BoneName::Lunate, &[[2.0, 4.4, 0.5, 5.2], [4.6, 5.4, 0.5, 5.0]]),
    (BoneName::Triquetrum, &[[13.6, 6.6, 0.0, 4.6], [15.6, 10.6, -0.5, 4.4]]),
    (BoneName::Pisiform, &[[15.6, 8.6, -8.6, 4.6]]),
    (BoneName::Trapezium, &[[-15.4, 19.8, -5.6, 4.6], [-18.6, 22.6, -6.6, 4.2]]),
    (BoneName::Trapezoid, &[[-9.6, 22.6, 0.5, 4.8], [-10.8, 25.6, 0.5, 4.3]]),
    (BoneName::Capitate, &[[-0.4, 14.6, 0.5, 4.9], [-0.8, 20.0, 0.8, 4.6], [-0.8, 26.0, 0.8, 5.4]]),
    (BoneName::Hamate, &[[8.2, 16.6, 0.0, 4.0], [10.4, 20.6, 0.0, 5.2], [13.4, 21.8, 0.0, 4.8]]),
];

/// The bones of both rows.
pub fn bones(skeleton: &Skeleton) -> Vec<Bone> {
    let hand = skeleton.frame(Segment::Hand);
    let point = |ball: &[f64; 4]| -> Vector { hand.point(ball[0], ball[1], ball[2]) };
    PIECES
        .iter()
        .map(|(name, balls)| {
            let axis = (point(&balls[0]), point(&balls[balls.len() - 1]));
            let bone = Bone::new(*name, None, Segment::Hand, axis).tube(hand, balls);
            match name {
                // The hook that roofs the passage of the ulnar nerve.
                BoneName::Hamate => bone.tube(hand, &[[11.0, 21.5, -3.0, 3.4], [10.4, 22.5, -9.0, 2.7]]),
                _ => bone,
            }
        })
        .collect()
}
