//! The upper limb as the trade measures it: joints, axes, directions, ranges of motion.

mod build;
mod joint;
mod motion;
pub mod norms;
mod segment;
mod side;
mod view;

pub use build::Build;
pub use joint::{Finger, Joint, JointName, Knuckle};
pub use motion::{Axis, Direction, MotionRange, Position, Stop};
pub use segment::{Row, Segment, SegmentName};
pub use side::Side;
pub use view::View;
