//! The table that a limb rests on, seen from its edge.

use crate::content::{Lie, Table};
use crate::picture::ink::PathText;
use crate::picture::plate::{Drawing, Paper, Part, Pen, Style, Tone};
use crate::picture::view::{Camera, Dot};

use super::stage::Cast;

/// How thick a table is drawn, mm.
const THICK: f64 = 7.0;

/// How far a table reaches past what lies on it, mm.
const PAST: f64 = 10.0;

/// Up to which share of the forearm a table reaches that a hand hangs over.
const EDGE: f64 = 0.9;

/// From which slope on a limb lies on no table: it is seen from above, or along itself.
const UPRIGHT: f64 = 0.4;

/// The corners of a table under a limb: along its top, then back along its underside. Nothing when there is none.
pub fn corners(cast: &Cast, camera: &Camera, lie: &Lie) -> Vec<Dot> {
    let Some(table) = lie.table else { return Vec::new() };
    let Some(segment) = lie.on.segments(cast.finger).first().copied() else { return Vec::new() };
    let skeleton = &cast.body.skeleton;
    let frame = skeleton.frame(segment);
    let way = camera.flat(frame.axes.y);
    if way.y.abs() > way.x.abs() * UPRIGHT {
        return Vec::new();
    }
    let out = way.x.signum();
    // Along the table, with the hand towards growing figures.
    let skin = cast.surfaces.first();
    let drawn = skin.into_iter().flat_map(|surface| surface.mesh.points.iter().zip(&surface.cut));
    let dots: Vec<Dot> = drawn.filter(|(_, cut)| **cut < 0.0).map(|(point, _)| camera.flat(*point)).collect();
    let along = |dot: &Dot| dot.x * out;
    let near = dots.iter().map(along).fold(f64::INFINITY, f64::min) - PAST;
    let far = match table {
        Table::Edge => along(&camera.flat(frame.point(0.0, skeleton.along(segment, EDGE), 0.0))),
        Table::Whole => dots.iter().map(along).fold(f64::NEG_INFINITY, f64::max) + PAST,
    };
    let top = dots.iter().filter(|dot| along(dot) < far).map(|dot| dot.y).fold(f64::INFINITY, f64::min) - 0.6;
    let at = |along: f64, y: f64| Dot::new(along * out, y);
    vec![at(near, top), at(far, top), at(far, top - THICK), at(near, top - THICK)]
}

/// Lays a table under everything that is drawn.
pub fn lay_under(drawing: &mut Drawing, paper: &Paper, corners: &[Dot]) {
    if corners.is_empty() {
        return;
    }
    let pen = Pen::new(paper);
    let mut path = PathText::default();
    path.polyline(&paper.places(corners));
    let style = Style::Stroke { tone: Tone::Soft, width: pen.inner * 0.9, dash: None };
    drawing.parts.insert(0, Part { name: "table".to_owned(), style, path });
}
