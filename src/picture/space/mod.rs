//! Points, directions and frames in space.
//!
//! Millimetres. For a right hand, x points to the little-finger side, y to the fingertips, z out of the back of the
//! hand; the origin is the middle of the wrist. A left hand is drawn as a right one and mirrored on paper.
//!
//! Sines and roots come from one library in software, so that the same picture has the same bytes on every machine.

mod frame;
mod points;
mod vector;

pub use frame::{Frame, Rotation};
pub use points::Points;
pub use vector::Vector;

/// The length of one degree on the unit circle.
const RADIAN: f64 = std::f64::consts::PI / 180.0;

/// Sine and cosine of an angle in degrees.
pub fn turn(degrees: f64) -> (f64, f64) {
    (libm::sin(degrees * RADIAN), libm::cos(degrees * RADIAN))
}

/// The angle of a direction in degrees, from the first axis towards the second, -180 to 180.
pub fn bearing(first: f64, second: f64) -> f64 {
    libm::atan2(second, first) / RADIAN
}
