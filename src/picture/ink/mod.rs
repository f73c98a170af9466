//! The drawing hand: smoothing, curves, strokes that taper, and the written picture.

mod fit;
mod line;
mod mirror;
mod path;
mod stroke;

pub use line::{length, opened, resample, smooth};
pub use path::PathText;
pub use stroke::{Taper, ribbon};
