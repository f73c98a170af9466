//! One picture: surfaces in space, seen by a camera, drawn with a pen.

mod drawing;
mod lines;
mod pen;
mod press;
mod surfaces;
mod tidy;
mod worn;

pub use drawing::{Drawing, Part, Style, Tone, escape};
pub use pen::{Paper, Pen};
pub use press::{Manner, Plate, Pressed, press};
pub use surfaces::{End, Kind, Surface};
