//! The upper limb as the trade measures it: joints, axes, directions, ranges of motion.

mod joint;
mod motion;
pub mod norms;
mod side;

pub use joint::{Finger, Joint, JointName, Knuckle};
pub use motion::{Axis, Direction, MotionRange, Position, Stop};
pub use side::Side;
