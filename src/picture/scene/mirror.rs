//! A left hand: the picture of the right one in a mirror. Signs and labels stay upright where their place goes to.

use crate::body::Side;
use crate::picture::plate::{Drawing, Part};
use crate::picture::view::Dot;

use super::pair::is_sign;
use super::request::{Even, Label, Picture, Request};

impl Request {
    /// The same of a right hand.
    #[must_use]
    pub fn right(&self) -> Self {
        Self { side: Side::Right, ..self.clone() }
    }
}

impl Picture {
    /// The same of the other hand, exactly: every coordinate is the breadth of the picture less what it was.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let Drawing { width, height, parts } = &self.drawing;
        // The paper is a whole number of units wide.
        let breadth = *width as i64;
        let part = |part: &Part| {
            let path = if is_sign(&part.name) { part.path.moved(breadth) } else { part.path.mirrored(breadth) };
            Part { path, ..part.clone() }
        };
        let label = |label: &Label| Label {
            at: Dot::new(width - label.at.x, label.at.y),
            even: match label.even {
                Even::Neither => Even::Neither,
                Even::Left => Even::Right,
                Even::Right => Even::Left,
            },
            ..*label
        };
        let drawing = Drawing { width: *width, height: *height, parts: parts.iter().map(part).collect() };
        Self { drawing, labels: self.labels.iter().map(label).collect() }
    }
}
