//! The sign for a joint that is held: a bold ring, hatched across.

use crate::picture::ink::PathText;
use crate::picture::plate::{Drawing, Paper, Pen, Style, Tone};
use crate::picture::space::turn;
use crate::picture::view::Dot;

/// Marks a joint by its middle and its two half axes on the picture plane.
pub fn mark(drawing: &mut Drawing, paper: &Paper, name: &str, (at, across, along): (Dot, Dot, Dot)) {
    let pen = Pen::new(paper);
    let point = |x: f64, y: f64| paper.place(at + across * x + along * y);
    let ring: Vec<Dot> = (0..=48)
        .map(|i| {
            let (s, c) = turn(f64::from(i) * 7.5);
            point(c, s)
        })
        .collect();
    let mut edge = PathText::default();
    edge.curve(&ring, true, 0.8);
    // Hatches run obliquely, so that they are no joint line and no shaft.
    let (half, high) = (across.length() * paper.scale, along.length() * paper.scale);
    // So wide apart that the joint is seen between them.
    let spacing = (pen.fine * 7.5).max(26.0);
    let lean = 0.8 * high / half.max(1.0);
    let count = libm::floor((half * (1.0 + lean)) / spacing) as i32;
    let mut hatch = PathText::default();
    for i in -count..=count {
        // The line x = x0 + lean y inside the circle of radius 1.
        let x0 = f64::from(i) * spacing / half;
        let (a, b, c) = (1.0 + lean * lean, 2.0 * x0 * lean, x0 * x0 - 1.0);
        let inside = b * b - 4.0 * a * c;
        if inside <= 0.0 {
            continue;
        }
        let root = inside.sqrt();
        let ends = [(-b - root) / (2.0 * a), (-b + root) / (2.0 * a)].map(|y| point(x0 + lean * y, y));
        if ends[0].distance(ends[1]) > spacing * 0.8 {
            hatch.polyline(&ends);
        }
    }
    let stroke = |tone, width| Style::Stroke { tone, width, dash: None };
    drawing.add(name, stroke(Tone::Paper, pen.outline * 2.6), edge.clone());
    drawing.add(name, stroke(Tone::Soft, pen.fine * 0.8), hatch);
    drawing.add(name, stroke(Tone::Ink, pen.outline * 1.2), edge);
}
