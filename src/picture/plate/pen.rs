//! Widths of lines, and the way from the limb to paper.

use crate::picture::view::{Dot, Frame2};

use super::drawing::Drawing;

/// Where on paper a point of the picture plane goes.
#[derive(Clone, Copy, Debug)]
pub struct Paper {
    frame: Frame2,
    /// Units for each millimetre of the limb.
    pub scale: f64,
    /// A whole number of units, so that a picture and its mirror image are on the same paper.
    pub width: f64,
    pub height: f64,
}

impl Paper {
    /// A picture that is `width` millimetres wide on paper.
    pub fn new(frame: Frame2, width: f64) -> Self {
        let scale = width * Drawing::UNIT / (frame.high.x - frame.low.x);
        let height = (frame.high.y - frame.low.y) * scale;
        Self { frame, scale, width: libm::ceil(width * Drawing::UNIT), height }
    }

    pub fn place(&self, p: Dot) -> Dot {
        Dot::new((p.x - self.frame.low.x) * self.scale, (self.frame.high.y - p.y) * self.scale)
    }

    pub fn places(&self, line: &[Dot]) -> Vec<Dot> {
        line.iter().map(|p| self.place(*p)).collect()
    }
}

/// Widths of lines in units of the picture. Three weights that stay apart on 40 mm of paper and do not grow coarse on
/// 160 mm: they grow with the root of the scale, inside limits.
#[derive(Clone, Copy, Debug)]
pub struct Pen {
    /// The outer outline.
    pub outline: f64,
    /// Edges inside it.
    pub inner: f64,
    /// Creases, nails, stitches.
    pub fine: f64,
    /// Whether the finest details are drawn at all.
    pub relief: bool,
}

impl Pen {
    pub fn new(paper: &Paper) -> Self {
        // A hand drawn at life size has an outline of 0.8 mm.
        let life = paper.scale / Drawing::UNIT;
        let outline = (0.80 * life.sqrt()).clamp(0.32, 1.0);
        let unit = outline * Drawing::UNIT;
        Self { outline: unit, inner: unit * 0.7, fine: unit * 0.44, relief: life > 0.24 }
    }
}
