//! From the solid to lines: the camera, what each spot of the picture shows, and the lines a draughtsman would draw.

mod camera;
mod dot;
mod isoline;
mod outline;
mod raster;

pub use crate::body::View;
pub use camera::Camera;
pub use dot::Dot;
pub use isoline::{Chain, isolines};
pub use outline::{contours, outlines};
pub use raster::{Frame2, Raster};
