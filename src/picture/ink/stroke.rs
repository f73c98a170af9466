//! Strokes with a body: thick in the middle, thin where they end in nothing.

use crate::picture::view::Dot;

use super::length;
use super::path::PathText;

/// How a stroke swells and thins.
#[derive(Clone, Copy, Debug)]
pub struct Taper {
    /// Full width.
    pub width: f64,
    /// Length over which the start and the end thin out; 0 keeps full width.
    pub start: f64,
    pub end: f64,
}

/// The share of the width that is left at a tapered end.
const POINT: f64 = 0.22;

/// Adds a stroke along a line as a filled shape.
pub fn ribbon(path: &mut PathText, line: &[Dot], taper: Taper, error: f64) {
    if line.len() < 3 {
        return;
    }
    let total = length(line);
    if total < 1e-6 {
        return;
    }
    let last = line.len() - 1;
    let (mut left, mut right) = (Vec::with_capacity(line.len()), Vec::with_capacity(line.len()));
    let mut walked = 0.0;
    for (i, point) in line.iter().enumerate() {
        if i > 0 {
            walked += line[i - 1].distance(*point);
        }
        let side = (line[(i + 1).min(last)] - line[i.saturating_sub(1)]).unit().left();
        let rise = |distance: f64, over: f64| {
            let over = over.min(total / 2.0);
            if over <= 0.0 || distance >= over {
                return 1.0;
            }
            // A quarter of a sine, by its polynomial.
            let t = distance / over;
            POINT + (1.0 - POINT) * t * (1.5 - 0.5 * t * t)
        };
        let half = taper.width / 2.0 * rise(walked, taper.start).min(rise(total - walked, taper.end));
        left.push(*point + side * half);
        right.push(*point - side * half);
    }
    right.reverse();
    path.between(&left, &right, error);
}
