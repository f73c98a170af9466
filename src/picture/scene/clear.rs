//! Room for an arrow: beside the limb, not over its lines.

use crate::picture::ink::{length, resample};
use crate::picture::view::{Camera, Dot, Frame2, Raster};

use super::stage::Cast;

/// Spots of a millimetre of the limb: an arrow needs no finer place.
const FINE: f64 = 0.5;

/// How far round the limb the picture plane is looked at, mm.
const ROUND: f64 = 64.0;

/// How far an arrow keeps off the limb, as a share of the longer side of what is drawn.
const CLEAR: f64 = 0.026;

/// Ways to the side of its own that an arrow may take, as shares of the longer side of what is drawn.
const ASIDE: [f64; 13] = [0.0, 0.015, 0.03, 0.045, 0.06, 0.08, 0.10, 0.12, 0.145, 0.17, 0.20, 0.23, 0.26];

/// Shares of an arrow that may be left out at its start and at its end.
const LEFT_OUT: [f64; 6] = [0.0, 0.08, 0.16, 0.25, 0.35, 0.45];

/// The shortest arrow that is still seen, as a share of the longer side of what is drawn.
const SHORTEST: f64 = 0.085;

/// An arrow of which more than this share would still be over the limb keeps its own way.
const LOST: f64 = 0.1;

/// How far from a limb every spot of the picture plane is.
struct Room {
    raster: Raster,
    /// Distances in millimetres, row by row; 0 on the limb.
    off: Vec<f64>,
    longest: f64,
}

impl Room {
    fn new(cast: &Cast, camera: &Camera) -> Self {
        let (low, high) = cast.extent(camera);
        let longest = (high.x - low.x).max(high.y - low.y);
        let round = Dot::new(ROUND, ROUND);
        let mut raster = Raster::new(Frame2 { low: low - round, high: high + round, fine: FINE });
        for surface in &cast.surfaces {
            raster.draw(camera, &surface.mesh, &surface.cut, 0);
        }
        let off = distances(&raster.mask(|_| true), raster.width, 1.0 / FINE);
        Self { raster, off, longest }
    }

    /// How far a dot is from the limb, mm; far when it lies outside of all that was looked at.
    fn at(&self, dot: Dot) -> f64 {
        let spot = self.raster.spot(dot);
        let inside =
            spot.x >= 0.0 && spot.y >= 0.0 && spot.x < self.raster.width as f64 && spot.y < self.raster.height as f64;
        if inside { self.off[spot.y as usize * self.raster.width + spot.x as usize] } else { ROUND }
    }

    /// The share of a line that lies on the limb.
    fn over(&self, line: &[Dot]) -> f64 {
        line.iter().filter(|dot| self.at(**dot) < 0.5 / FINE).count() as f64 / line.len() as f64
    }

    /// What a line is worth avoiding for: the parts of it that lie on the limb, and those too near to it.
    fn crowding(&self, line: &[Dot]) -> f64 {
        let clear = self.longest * CLEAR;
        let count = line.len() as f64;
        let near: f64 = line
            .iter()
            .map(|dot| {
                let lack = (1.0 - self.at(*dot) / clear).max(0.0);
                lack * lack
            })
            .sum();
        // The head is what is read first, and it is broad.
        let head = (1.0 - self.at(line[line.len() - 1]) / (clear * 1.15)).max(0.0);
        self.over(line) * 60.0 + near / count * 9.0 + head * head * 3.0
    }
}

/// Distances to the nearest spot that is taken, by two walks over all spots.
fn distances(taken: &[bool], width: usize, step: f64) -> Vec<f64> {
    let slant = step * std::f64::consts::SQRT_2;
    let height = taken.len() / width.max(1);
    let mut off: Vec<f64> = taken.iter().map(|taken| if *taken { 0.0 } else { f64::MAX / 4.0 }).collect();
    let mut walk = |j: usize, i: usize, back: bool| {
        let at = j * width + i;
        let mut best = off[at];
        let mut from = |row: isize, column: isize, way: f64| {
            let (y, x) = (j as isize + row, i as isize + column);
            if y >= 0 && x >= 0 && (y as usize) < height && (x as usize) < width {
                best = best.min(off[y as usize * width + x as usize] + way);
            }
        };
        let sign = if back { 1 } else { -1 };
        from(0, sign, step);
        from(sign, 0, step);
        from(sign, 1, slant);
        from(sign, -1, slant);
        off[at] = best;
    };
    for j in 0..height {
        (0..width).for_each(|i| walk(j, i, false));
    }
    for j in (0..height).rev() {
        (0..width).rev().for_each(|i| walk(j, i, true));
    }
    off
}

/// A line moved to its left by so many millimetres, or to its right when that is below zero.
fn beside(line: &[Dot], aside: f64) -> Vec<Dot> {
    let last = line.len() - 1;
    (0..=last)
        .map(|i| {
            // A wide reach keeps a sharp bow from folding over itself.
            let way = line[(i + 3).min(last)] - line[i.saturating_sub(3)];
            line[i] + way.unit().left() * aside
        })
        .collect()
}

/// To which side a line bows out: 1 for its left, -1 for its right, 0 when it is as good as straight.
fn bow(line: &[Dot]) -> f64 {
    let (first, last) = (line[0], line[line.len() - 1]);
    let chord = last - first;
    let area: f64 = line.iter().map(|dot| chord.unit().turn(*dot - first)).sum::<f64>() / line.len() as f64;
    if area.abs() < 0.03 * chord.length() { 0.0 } else { area.signum() }
}

/// A line that is too short to be seen, made longer at both ends along its own way.
fn seen(line: Vec<Dot>, least: f64) -> Vec<Dot> {
    let lack = least - length(&line);
    let last = line.len() - 1;
    if lack <= 0.0 || last < 1 {
        return line;
    }
    let way = (line[last] - line[0]).unit() * (lack / 2.0);
    let ends = [line[0] - way, line[last] + way];
    [&ends[..1], &line, &ends[1..]].concat()
}

/// The way of a movement as an arrow beside what moves: moved out and shortened as little as keeps it off the limb. As it
/// is when it has no length.
pub fn cleared(line: &[Dot], cast: &Cast, camera: &Camera) -> Vec<Dot> {
    if line.len() < 2 || length(line) < 1.0 {
        return line.to_vec();
    }
    let room = Room::new(cast, camera);
    let least = room.longest * SHORTEST;
    // The bow of a short way would only be a hook.
    let (first, last) = (line[0], line[line.len() - 1]);
    let short = length(line) < least * 1.6 && first.distance(last) > 1.0;
    let line = if short { vec![first, first.towards(last, 0.5), last] } else { line.to_vec() };
    let line = resample(&line, (length(&line) / 40.0).max(0.5));
    let outer = bow(&line);
    let mut best = (f64::INFINITY, line.clone());
    for side in [1.0, -1.0] {
        for aside in ASIDE {
            let moved = beside(&line, aside * side * room.longest);
            let last = moved.len() - 1;
            for start in LEFT_OUT {
                for end in LEFT_OUT {
                    let from = libm::round(start * last as f64) as usize;
                    let to = last - libm::round(end * last as f64) as usize;
                    let shorter = start + end > 0.0;
                    if to < from + 2 || shorter && length(&moved[from..=to]) < least * 1.4 {
                        continue;
                    }
                    let tried = seen(moved[from..=to].to_vec(), least);
                    // Inside of its bow an arrow shows another turn than the one that is made.
                    let inner = if outer * side < 0.0 { 1.5 } else { 0.0 };
                    let cost = room.crowding(&tried) + aside * (7.0 + inner * 8.0) + start * 1.2 + end * 1.6;
                    if cost < best.0 - 1e-9 {
                        best = (cost, tried);
                    }
                }
            }
        }
    }
    // What moves before the limb has its arrow there: beside some other part of the limb it would say nothing.
    if room.over(&best.1) > LOST { seen(line, least) } else { best.1 }
}
