//! What each spot of the picture shows: which surface is nearest, and how near.

use crate::picture::solid::Mesh;
use crate::picture::space::Vector;

use super::{Camera, Dot};

/// The part of the picture plane that is drawn, and how finely it is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame2 {
    pub low: Dot,
    pub high: Dot,
    /// Spots for each millimetre.
    pub fine: f64,
}

/// Which surface is nearest at each spot.
#[derive(Clone, Debug)]
pub struct Raster {
    pub frame: Frame2,
    pub width: usize,
    pub height: usize,
    depth: Vec<f32>,
    surface: Vec<u8>,
}

/// No surface.
pub const NOTHING: u8 = u8::MAX;

impl Raster {
    pub fn new(frame: Frame2) -> Self {
        let width = ((frame.high.x - frame.low.x) * frame.fine).ceil().max(1.0) as usize;
        let height = ((frame.high.y - frame.low.y) * frame.fine).ceil().max(1.0) as usize;
        Self {
            frame,
            width,
            height,
            depth: vec![f32::NEG_INFINITY; width * height],
            surface: vec![NOTHING; width * height],
        }
    }

    /// Draws a surface where `cut` (one value a point) is below zero.
    pub fn draw(&mut self, camera: &Camera, mesh: &Mesh, cut: &[f64], id: u8) {
        let flat: Vec<(Dot, f64)> = mesh.points.iter().map(|&p| (self.spot(camera.flat(p)), camera.depth(p))).collect();
        for face in &mesh.faces {
            let corner = |i: usize| face[i] as usize;
            let cuts = [cut[corner(0)], cut[corner(1)], cut[corner(2)]];
            if cuts.iter().all(|c| *c >= 0.0) {
                continue;
            }
            let [a, b, c] = [flat[corner(0)], flat[corner(1)], flat[corner(2)]];
            self.face([a.0, b.0, c.0], [a.1, b.1, c.1], cuts, id);
        }
    }

    fn face(&mut self, at: [Dot; 3], depth: [f64; 3], cut: [f64; 3], id: u8) {
        let [a, b, c] = at;
        let area = (b - a).turn(c - a);
        if area.abs() < 1e-9 {
            return;
        }
        // What is surely outside needs no division; what is surely inside its edge, no weighing of it.
        let outside = -2e-9 * area.abs();
        let whole = cut.iter().all(|c| (-1e4..-1e-3).contains(c));
        let low = |x: f64, y: f64, z: f64| x.min(y).min(z).floor().max(0.0) as usize;
        let high = |x: f64, y: f64, z: f64, end: usize| (x.max(y).max(z).ceil().max(0.0) as usize).min(end);
        for j in low(a.y, b.y, c.y)..high(a.y, b.y, c.y, self.height) {
            for i in low(a.x, b.x, c.x)..high(a.x, b.x, c.x, self.width) {
                let p = Dot::new(i as f64 + 0.5, j as f64 + 0.5);
                let turns = [(c - b).turn(p - b), (a - c).turn(p - c), (b - a).turn(p - a)];
                if turns.iter().any(|turn| turn * area.signum() < outside) {
                    continue;
                }
                let weight = turns.map(|turn| turn / area);
                if weight.iter().any(|w| *w < -1e-9) {
                    continue;
                }
                let mix = |v: [f64; 3]| v[0] * weight[0] + v[1] * weight[1] + v[2] * weight[2];
                if !whole && mix(cut) >= 0.0 {
                    continue;
                }
                let near = mix(depth) as f32;
                let spot = j * self.width + i;
                if near > self.depth[spot] {
                    self.depth[spot] = near;
                    self.surface[spot] = id;
                }
            }
        }
    }

    /// The place of a point in spots.
    pub fn spot(&self, p: Dot) -> Dot {
        (p - self.frame.low) * self.frame.fine
    }

    /// The point of the middle of a spot.
    pub fn point(&self, i: f64, j: f64) -> Dot {
        self.frame.low + Dot::new(i, j) * (1.0 / self.frame.fine)
    }

    fn index(&self, p: Dot) -> Option<usize> {
        let spot = self.spot(p);
        let inside = spot.x >= 0.0 && spot.y >= 0.0 && spot.x < self.width as f64 && spot.y < self.height as f64;
        inside.then(|| spot.y as usize * self.width + spot.x as usize)
    }

    /// The surface at a point.
    pub fn surface_at(&self, p: Dot) -> Option<u8> {
        self.index(p).map(|i| self.surface[i]).filter(|id| *id != NOTHING)
    }

    /// How near the nearest surface at a point is.
    pub fn depth_at(&self, p: Dot) -> Option<f64> {
        self.index(p).filter(|i| self.surface[*i] != NOTHING).map(|i| f64::from(self.depth[i]))
    }

    /// Whether nothing stands before a point of a surface with this direction out of it.
    pub fn sees(&self, camera: &Camera, p: Vector, out: Vector) -> bool {
        let lifted = p + out * 0.4;
        let (flat, depth) = (camera.flat(lifted), camera.depth(lifted) + 0.35);
        let step = 0.75 / self.frame.fine;
        [(0.0, 0.0), (step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step)]
            .into_iter()
            .any(|(x, y)| self.depth_at(flat + Dot::new(x, y)).is_none_or(|near| near <= depth))
    }

    /// How far behind an edge the next surface lies; None when there is nothing behind it.
    pub fn drop_behind(&self, camera: &Camera, p: Vector, out: Vector) -> Option<f64> {
        let beside = p + out * 0.9;
        self.depth_at(camera.flat(beside)).map(|depth| camera.depth(p) - depth)
    }

    /// The spots that show one of the surfaces that `which` takes.
    pub fn mask(&self, which: impl Fn(u8) -> bool) -> Vec<bool> {
        self.surface.iter().map(|id| *id != NOTHING && which(*id)).collect()
    }
}
