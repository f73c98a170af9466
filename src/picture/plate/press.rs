//! Draws a plate: fills, lines and marks, back to front.

use crate::body::Segment;
use crate::picture::detail::{Mark, MarkKind};
use crate::picture::ink::{PathText, Taper, length, opened, resample, ribbon, smooth};
use crate::picture::solid::Field;
use crate::picture::view::{Camera, Chain, Dot, Frame2, Raster, outlines};

use super::drawing::{Drawing, Style, Tone};
use super::lines::{Line, contacts, levels, runs, turns};
use super::pen::{Paper, Pen};
use super::surfaces::{End, Kind, Surface};
use super::tidy::Drawn;

/// Everything that one picture shows.
pub struct Plate<'a> {
    pub camera: Camera,
    pub frame: Frame2,
    pub surfaces: &'a [std::sync::Arc<Surface>],
    /// Surfaces of which only the edges are drawn, lightly.
    pub edges: &'a [std::sync::Arc<Surface>],
    /// How far the joint of a segment is bent, degrees.
    pub bent: &'a dyn Fn(Segment) -> f64,
    pub field: &'a Field,
    pub marks: &'a [&'a Mark],
    pub manner: Manner,
}

/// How a plate is drawn.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Manner {
    Full,
    /// Light outlines only: where something was before.
    Ghost,
    /// As if the skin were glass: a light full outline, for what lies under it to be drawn over.
    Glass,
}

/// What a press has seen and drawn, for what is laid over the picture.
#[derive(Default)]
pub struct Pressed {
    raster: Option<Raster>,
    drawn: Drawn,
}

impl Pressed {
    /// Whether no line comes within so many millimetres of a dot.
    pub fn is_clear(&self, dot: Dot, within: f64) -> bool {
        self.drawn.nearest(dot, within * 1.25).is_none()
    }

    /// Whether nothing of the limb is at a dot.
    pub fn is_bare(&self, dot: Dot) -> bool {
        self.raster.as_ref().is_none_or(|raster| raster.surface_at(dot).is_none())
    }
}

/// How far a fitted curve may be from its points, units of the picture.
pub(super) const ERROR: f64 = 1.1;

/// A piece of an open outline that is no longer than this is none, mm.
const CRUMB: f64 = 7.0;

pub(super) struct Press<'a> {
    pub plate: &'a Plate<'a>,
    pub raster: Raster,
    pub paper: Paper,
    pub pen: Pen,
    pub drawing: Drawing,
    pub drawn: Drawn,
    /// The outer outlines alone.
    silhouette: Drawn,
}

/// Draws a plate on paper.
pub fn press(plate: &Plate<'_>, paper: Paper) -> (Drawing, Pressed) {
    let mut raster = Raster::new(plate.frame);
    for (id, surface) in plate.surfaces.iter().enumerate() {
        raster.draw(&plate.camera, &surface.mesh, &surface.cut, id as u8);
    }
    let drawing = Drawing { width: paper.width, height: paper.height, parts: Vec::new() };
    let mut press = Press {
        plate,
        raster,
        paper,
        pen: Pen::new(&paper),
        drawing,
        drawn: Drawn::default(),
        silhouette: Drawn::default(),
    };
    match plate.manner {
        Manner::Full => {
            let silhouettes = press.silhouette();
            press.worn();
            press.skin();
            press.marks();
            press.edges();
            press.outline(&silhouettes);
        }
        Manner::Ghost => {
            let dash = Some((press.pen.fine * 5.0, press.pen.fine * 4.0));
            press.light("before", Style::Stroke { tone: Tone::Faint, width: press.pen.inner * 0.8, dash });
        }
        Manner::Glass => {
            press.light("skin", Style::Stroke { tone: Tone::Faint, width: press.pen.inner * 0.9, dash: None });
        }
    }
    (press.drawing, Pressed { raster: Some(press.raster), drawn: press.drawn })
}

impl Press<'_> {
    pub fn ink(&self, width: f64) -> Style {
        Style::Stroke { tone: Tone::Ink, width, dash: None }
    }

    /// The ground of the whole, and its outlines.
    fn silhouette(&mut self) -> Vec<Vec<Dot>> {
        let mask = self.raster.mask(|_| true);
        let rings: Vec<Vec<Dot>> =
            outlines(&self.raster, &mask, 9.0).into_iter().map(|ring| soft_ring(&ring, 1.5)).collect();
        let mut path = PathText::default();
        for ring in &rings {
            path.curve(&self.paper.places(ring), true, ERROR);
            self.drawn.add(ring);
            self.silhouette.add(ring);
        }
        self.drawing.add("ground", Style::Fill(Tone::Paper), path);
        rings
    }

    /// Light outlines of everything.
    fn light(&mut self, name: &str, style: Style) {
        let mask = self.raster.mask(|_| true);
        let mut path = PathText::default();
        for ring in outlines(&self.raster, &mask, 9.0) {
            let ring = soft_ring(&ring, 1.5);
            self.drawn.add(&ring);
            self.silhouette.add(&ring);
            let runs = opened(&ring, |dot| self.leaves(dot), 6);
            for run in runs.map_or_else(|| vec![ring], |runs| runs.into_iter().filter(|r| length(r) > CRUMB).collect())
            {
                path.curve(&self.paper.places(&run), false, ERROR);
            }
        }
        let mut lines = Vec::new();
        for surface in self.plate.surfaces {
            lines.extend(turns(&self.plate.camera, &self.raster, surface));
        }
        for line in lines {
            for run in self.drawn.fresh(&line.dots, 5.0) {
                if self.is_sliver(&run) {
                    continue;
                }
                let dots = smooth(&resample(&run, 0.5), 3.0, false);
                path.curve(&self.paper.places(&dots), false, ERROR);
            }
        }
        self.drawing.add(name, style, path);
    }

    /// The outline of the whole, open where the limb leaves the picture.
    fn outline(&mut self, rings: &[Vec<Dot>]) {
        let mut closed = PathText::default();
        let mut open = PathText::default();
        for ring in rings {
            match opened(ring, |dot| self.leaves(dot), 6) {
                None => closed.curve(&self.paper.places(ring), true, ERROR),
                Some(runs) => {
                    let over = self.pen.outline * 14.0;
                    let taper = Taper { width: self.pen.outline, start: over, end: over };
                    // Where the end of the picture bows, crumbs of it are left between two gaps.
                    let whole = runs.iter().filter(|run| length(run) > CRUMB);
                    whole.for_each(|run| ribbon(&mut open, &self.paper.places(run), taper, ERROR));
                }
            }
        }
        self.drawing.add("outline", self.ink(self.pen.outline), closed);
        self.drawing.add("outline-open", Style::Fill(Tone::Ink), open);
    }

    /// Whether the outline at a dot is only the end of the picture.
    fn leaves(&self, dot: Dot) -> bool {
        let step = 1.6 / self.raster.frame.fine;
        let inside = [(0.0, 0.0), (step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step)]
            .into_iter()
            .map(|(x, y)| dot + Dot::new(x, y))
            .find_map(|p| Some((p, self.raster.depth_at(p)?, self.raster.surface_at(p)?)));
        let edge = self.raster.frame;
        let at_edge = dot.x < edge.low.x + 0.6
            || dot.x > edge.high.x - 0.6
            || dot.y < edge.low.y + 0.6
            || dot.y > edge.high.y - 0.6;
        at_edge
            || inside.is_some_and(|(p, depth, id)| {
                let camera = &self.plate.camera;
                let point = camera.right * p.x + camera.up * p.y + camera.eye * depth;
                // An end that faces the eye, or away from it, is a round edge like any other.
                self.end_of(id).is_some_and(|end| end.out.dot(camera.eye).abs() < 0.8 && end.beyond(point) > -1.2)
            })
    }

    fn end_of(&self, id: u8) -> Option<End> {
        self.plate.surfaces.get(usize::from(id)).and_then(|surface| surface.end)
    }

    /// Lines of the skin inside the outline.
    fn skin(&mut self) {
        let surfaces = self.plate.surfaces;
        for (id, _) in surfaces.iter().enumerate().filter(|(_, s)| s.kind == Kind::Helper) {
            // Where one hand lies before the other there is an edge, however near they are.
            let mask = self.raster.mask(|seen| usize::from(seen) == id);
            let mut lines = Vec::new();
            for ring in outlines(&self.raster, &mask, 9.0) {
                let ring = soft_ring(&ring, 1.2);
                let runs = opened(&ring, |dot| self.leaves(dot), 6).unwrap_or_else(|| vec![ring]);
                lines.extend(runs.into_iter().map(|dots| Line { dots, closed: false }));
            }
            self.inner("helper-edge", lines, self.pen.inner, 3.0);
        }
        for surface in surfaces.iter().filter(|s| !s.kind.is_thing()) {
            let lines = turns(&self.plate.camera, &self.raster, surface);
            self.inner("skin-turn", lines, self.pen.inner, 5.0);
        }
        if let Some(skin) = self.plate.surfaces.iter().find(|s| s.kind == Kind::Skin) {
            let lines = contacts(&self.plate.camera, &self.raster, skin, self.plate.field, self.plate.bent);
            self.inner("skin-fold", lines, self.pen.inner * 0.9, 5.0);
        }
    }

    /// Lines inside the outline: those that repeat another line are left out, free ends taper.
    pub fn inner(&mut self, name: &str, mut lines: Vec<Line>, width: f64, least: f64) {
        lines.sort_by(|a, b| length(&b.dots).total_cmp(&length(&a.dots)));
        let mut path = PathText::default();
        for line in lines {
            for run in self.drawn.fresh(&line.dots, least) {
                if self.is_sliver(&run) {
                    continue;
                }
                let ends = [run[0], run[run.len() - 1]].map(|end| self.drawn.nearest(end, 1.6).is_some());
                self.drawn.add(&run);
                let smoothed = smooth(&resample(&run, 0.5), 3.0, line.closed && run[0] == run[run.len() - 1]);
                let over = |joined: bool| if joined { 0.0 } else { width * 12.0 };
                let taper = Taper { width, start: over(ends[0]), end: over(ends[1]) };
                ribbon(&mut path, &self.paper.places(&smoothed), taper, ERROR * 0.7);
            }
        }
        self.drawing.add(name, Style::Fill(Tone::Ink), path);
    }

    /// Whether a line only repeats the outline a little further in: no draughtsman draws such slivers.
    fn is_sliver(&self, run: &[Dot]) -> bool {
        let long = length(run);
        let within = if long < 42.0 { 4.6 } else { 2.2 };
        let last = run.len() - 1;
        let beside = run.iter().enumerate().filter(|(i, dot)| {
            let way = (run[(i + 1).min(last)] - run[i.saturating_sub(1)]).unit();
            self.silhouette.beside(**dot, way, within).is_some()
        });
        beside.count() * 10 > run.len() * 8
    }

    /// Nails and creases.
    fn marks(&mut self) {
        let camera = self.plate.camera;
        let mut nails = PathText::default();
        let mut creases = PathText::default();
        for mark in self.plate.marks {
            if !self.pen.relief && matches!(mark.kind, MarkKind::Relief | MarkKind::Moon) {
                continue;
            }
            let shows: Vec<bool> = mark
                .points
                .iter()
                .zip(&mark.normals)
                .map(|(p, n)| {
                    n.dot(camera.eye) > mark.facing
                        && self.raster.sees(&camera, *p, *n)
                        && self.raster.surface_at(camera.flat(*p)).is_some_and(|id| {
                            self.is_bare(id) && self.end_of(id).is_none_or(|end| end.beyond(*p) < 0.0)
                        })
                })
                .collect();
            let chain = Chain { points: mark.points.clone(), normals: mark.normals.clone(), closed: mark.closed };
            for line in runs(&camera, &chain, &shows, 1.6) {
                let dots = smooth(&resample(&line.dots, 0.3), 2.0, line.closed);
                let placed = self.paper.places(&dots);
                match mark.kind {
                    MarkKind::Nail if line.closed => nails.curve(&placed, true, ERROR * 0.8),
                    MarkKind::Nail => {
                        let over = self.pen.fine * 6.0;
                        ribbon(
                            &mut creases,
                            &placed,
                            Taper { width: self.pen.fine, start: over, end: over },
                            ERROR * 0.8,
                        );
                    }
                    _ => {
                        let over = length(&placed) * 0.5;
                        let wide = if mark.kind == MarkKind::PalmLine { 1.2 } else { 1.0 };
                        let taper = Taper { width: self.pen.fine * wide, start: over, end: over };
                        ribbon(&mut creases, &placed, taper, ERROR * 0.8);
                    }
                }
            }
        }
        self.drawing.add("nails", self.ink(self.pen.fine), nails);
        self.drawing.add("creases", Style::Fill(Tone::Soft), creases);
    }

    /// Edges of what is not there, on what is.
    fn edges(&mut self) {
        let mut path = PathText::default();
        for surface in self.plate.edges {
            for line in levels(&self.plate.camera, &self.raster, surface, &surface.edge, 4.0) {
                let dots = smooth(&resample(&line.dots, 0.5), 3.0, line.closed);
                path.curve(&self.paper.places(&dots), line.closed, ERROR);
                self.drawn.add(&dots);
            }
        }
        let dash = Some((self.pen.fine * 5.0, self.pen.fine * 4.0));
        self.drawing.add(
            "edge-of-orthosis",
            Style::Stroke { tone: Tone::Faint, width: self.pen.inner * 0.8, dash },
            path,
        );
    }

    fn is_bare(&self, id: u8) -> bool {
        self.plate.surfaces.get(usize::from(id)).is_some_and(|surface| !surface.kind.is_thing())
    }
}

/// A closed outline without the steps of single spots, smoothed over so many millimetres.
pub(super) fn soft_ring(ring: &[Dot], over: f64) -> Vec<Dot> {
    let step = 0.35;
    let even = resample(ring, step);
    smooth(&even, over / step, true)
}
