//! Path text: whole numbers, relative, so that a picture stays small.

use std::fmt::Write as _;

use crate::picture::view::Dot;

use super::fit::{Cubic, fit};

/// The text of a path, in the units of the finished picture.
#[derive(Clone, Debug, Default)]
pub struct PathText {
    text: String,
    at: (i64, i64),
    /// Curves and lines written so far.
    pub nodes: usize,
}

impl PathText {
    /// A path that was written before, with the number of its curves and lines.
    pub fn known(text: &str, nodes: usize) -> Self {
        Self { text: text.to_owned(), at: (0, 0), nodes }
    }

    pub fn is_empty(&self) -> bool {
        self.text.is_empty()
    }

    pub fn text(&self) -> &str {
        &self.text
    }

    /// Adds an open or closed line as curves that stay within `error` of it.
    pub fn curve(&mut self, line: &[Dot], closed: bool, error: f64) {
        let curves = fit(line, error);
        let Some(first) = curves.first() else { return };
        self.start(first[0]);
        self.curves(&curves);
        if closed {
            self.text.push('z');
        }
    }

    /// Adds a closed shape between two lines.
    pub fn between(&mut self, there: &[Dot], back: &[Dot], error: f64) {
        let (there, back) = (fit(there, error), fit(back, error));
        let (Some(first), Some(turn)) = (there.first(), back.first()) else { return };
        self.start(first[0]);
        self.curves(&there);
        self.step('l', &[turn[0]]);
        self.curves(&back);
        self.text.push('z');
    }

    /// Adds a closed polygon.
    pub fn polygon(&mut self, corners: &[Dot]) {
        let Some((first, rest)) = corners.split_first() else { return };
        self.start(*first);
        for corner in rest {
            self.step('l', &[*corner]);
        }
        self.text.push('z');
    }

    /// Adds an open line of straight parts.
    pub fn polyline(&mut self, points: &[Dot]) {
        let Some((first, rest)) = points.split_first() else { return };
        self.start(*first);
        for point in rest {
            self.step('l', &[*point]);
        }
    }

    fn start(&mut self, at: Dot) {
        let (x, y) = round(at);
        let _ = write!(self.text, "M{x} {y}");
        self.at = (x, y);
    }

    fn curves(&mut self, curves: &[Cubic]) {
        for curve in curves {
            self.step('c', &curve[1..]);
        }
    }

    fn step(&mut self, letter: char, points: &[Dot]) {
        self.text.push(letter);
        self.nodes += 1;
        let from = self.at;
        for (i, point) in points.iter().enumerate() {
            let (x, y) = round(*point);
            for (k, value) in [x - from.0, y - from.1].into_iter().enumerate() {
                if value >= 0 && (i > 0 || k > 0) {
                    self.text.push(' ');
                }
                let _ = write!(self.text, "{value}");
            }
            self.at = (x, y);
        }
    }
}

fn round(p: Dot) -> (i64, i64) {
    (libm::round(p.x) as i64, libm::round(p.y) as i64)
}
