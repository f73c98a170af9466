//! The limb as numbers: lengths, joints and their axes, postures, and the flesh round the bones.

mod build;
mod contact;
mod flesh;
mod lengths;
mod posture;
mod skeleton;
mod tube;

pub use crate::body::{Build, Row, Segment};
pub use contact::{met, pressed};
pub use flesh::{Flesh, flesh};
pub use lengths::Lengths;
pub use posture::Posture;
pub use skeleton::{METACARPAL_BASE, METACARPAL_HEAD, Skeleton};
pub use tube::{Ball, Spline, Tube};
