//! What is worn: fills and edges, and the signs of their material.

use crate::picture::ink::{PathText, resample, smooth};
use crate::picture::view::{Dot, outlines};

use super::drawing::{Style, Tone};
use super::lines::{Line, levels, levels_inside, turns};
use super::press::{ERROR, Press, soft_ring};
use super::surfaces::{Kind, Surface};

impl Press<'_> {
    /// Splints and straps: fill, edge, and the signs of their material.
    pub fn worn(&mut self) {
        let surfaces = self.plate.surfaces;
        let mut edges: Vec<(String, PathText, f64)> = Vec::new();
        for (id, surface) in surfaces.iter().enumerate().filter(|(_, s)| s.kind.is_thing()) {
            let mask = self.raster.mask(|seen| usize::from(seen) == id);
            let mut path = PathText::default();
            for ring in
                outlines(&self.raster, &mask, if matches!(surface.kind, Kind::Wire | Kind::Cord) { 0.5 } else { 4.0 })
            {
                let ring = soft_ring(&ring, 0.9);
                path.curve(&self.paper.places(&ring), true, ERROR);
                self.drawn.add(&ring);
            }
            let tone = match surface.kind {
                Kind::Shell | Kind::Held => Tone::Shell,
                Kind::Strap => Tone::Strap,
                Kind::StrapNow | Kind::Patch => Tone::Dark,
                Kind::Wire => Tone::Paper,
                Kind::Cord => Tone::Ink,
                Kind::Wrap | Kind::Cast | Kind::Skin | Kind::Helper => Tone::Paper,
            };
            self.drawing.add(&surface.name, Style::Fill(tone), path.clone());
            let width = if matches!(surface.kind, Kind::Patch | Kind::Wire | Kind::Cord) {
                self.pen.fine
            } else {
                self.pen.inner
            };
            edges.push((surface.name.clone(), path, width));
        }
        for (name, path, width) in edges {
            self.drawing.add(&format!("{name}-edge"), self.ink(width), path);
        }
        for surface in surfaces.iter().filter(|s| s.kind.is_thing()) {
            self.material(surface);
            let lines = turns(&self.plate.camera, &self.raster, surface);
            // A short turn in the midst of a sheet is a speck.
            let least = if matches!(surface.kind, Kind::Shell | Kind::Wrap | Kind::Cast) { 4.5 } else { 2.0 };
            self.inner(&format!("{}-turn", surface.name), lines, self.pen.inner, least);
        }
    }

    /// The second line of an edge, stitches, weave and bandage turns.
    fn material(&mut self, surface: &Surface) {
        let camera = &self.plate.camera;
        let fine = self.pen.fine;
        let beside = |inset: f64| -> Vec<f64> { surface.edge.iter().map(|e| e + inset).collect() };
        let (inset, dash) = match surface.kind {
            Kind::Shell => (1.5, None),
            Kind::Strap | Kind::StrapNow => (2.0, Some((fine * 4.5, fine * 3.5))),
            Kind::Wrap => (2.4, Some((fine * 5.0, fine * 4.0))),
            Kind::Cast | Kind::Patch | Kind::Wire | Kind::Cord | Kind::Held | Kind::Skin | Kind::Helper => (0.0, None),
        };
        let mut path = PathText::default();
        if inset > 0.0 {
            for line in levels(camera, &self.raster, surface, &beside(inset), 4.0) {
                path.curve(&self.paper.places(&softened(&line, 1.0)), line.closed, ERROR);
            }
        }
        let tone = if surface.kind == Kind::StrapNow { Tone::Paper } else { Tone::Ink };
        let style = Style::Stroke { tone, width: fine * 0.8, dash };
        self.drawing.add(&format!("{}-seam", surface.name), style, path);
        if matches!(surface.kind, Kind::Wrap | Kind::Cast) {
            let spacing = if surface.kind == Kind::Cast { 11.0 } else { 3.6 };
            let dash = (surface.kind == Kind::Wrap).then_some((0.1, fine * 7.0));
            let mut path = PathText::default();
            let (low, high) =
                surface.along.iter().fold((f64::MAX, f64::MIN), |(low, high), a| (low.min(*a), high.max(*a)));
            let mut at = low + spacing * 0.5;
            while at < high && at - low < 4000.0 {
                let value: Vec<f64> = surface.along.iter().map(|a| a - at).collect();
                for line in levels_inside(camera, &self.raster, surface, &value, 4.0) {
                    path.curve(&self.paper.places(&softened(&line, 1.0)), line.closed, ERROR);
                }
                at += spacing;
            }
            let width = if surface.kind == Kind::Cast { fine * 0.7 } else { fine * 1.1 };
            self.drawing.add(&format!("{}-weave", surface.name), Style::Stroke { tone: Tone::Soft, width, dash }, path);
        }
    }
}

fn softened(line: &Line, over: f64) -> Vec<Dot> {
    smooth(&resample(&line.dots, 0.5), over / 0.5, line.closed)
}
