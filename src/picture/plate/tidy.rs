//! Leaves out lines that say what another line says already.

use std::collections::HashMap;

use crate::picture::ink::{length, resample};
use crate::picture::view::Dot;

/// How near and how parallel a line must be to an earlier one to be left out, mm and cosine.
const NEAR: f64 = 0.95;
const PARALLEL: f64 = 0.88;

/// Lines that were drawn, found by place.
#[derive(Default)]
pub struct Drawn {
    cells: HashMap<(i32, i32), Vec<(Dot, Dot)>>,
}

const STEP: f64 = 0.5;

fn cell(p: Dot) -> (i32, i32) {
    (libm::floor(p.x) as i32, libm::floor(p.y) as i32)
}

impl Drawn {
    /// Takes note of a line.
    pub fn add(&mut self, line: &[Dot]) {
        let line = resample(line, STEP);
        for pair in line.windows(2) {
            self.cells.entry(cell(pair[0])).or_default().push((pair[0], (pair[1] - pair[0]).unit()));
        }
    }

    /// The distance to the nearest noted line that runs along `direction`; None when there is none near.
    pub fn beside(&self, p: Dot, direction: Dot, within: f64) -> Option<f64> {
        let reach = libm::ceil(within) as i32;
        let (x, y) = cell(p);
        let mut best: Option<f64> = None;
        for i in x - reach..=x + reach {
            for j in y - reach..=y + reach {
                for (q, d) in self.cells.get(&(i, j)).into_iter().flatten() {
                    let distance = q.distance(p);
                    if distance < within && d.dot(direction).abs() > PARALLEL && best.is_none_or(|b| distance < b) {
                        best = Some(distance);
                    }
                }
            }
        }
        best
    }

    /// The distance to the nearest noted line; None when there is none near.
    pub fn nearest(&self, p: Dot, within: f64) -> Option<f64> {
        let reach = libm::ceil(within) as i32;
        let (x, y) = cell(p);
        let near = (x - reach..=x + reach)
            .flat_map(|i| (y - reach..=y + reach).map(move |j| (i, j)))
            .filter_map(|at| self.cells.get(&at))
            .flatten()
            .map(|(q, _)| q.distance(p))
            .fold(f64::INFINITY, f64::min);
        (near < within).then_some(near)
    }

    /// The runs of a line that are not beside a noted one, each at least `least` long.
    pub fn fresh(&self, line: &[Dot], least: f64) -> Vec<Vec<Dot>> {
        if line.len() < 2 {
            return Vec::new();
        }
        let line = resample(line, STEP);
        let last = line.len() - 1;
        let keep: Vec<bool> = (0..line.len())
            .map(|i| {
                let direction = (line[(i + 1).min(last)] - line[i.saturating_sub(1)]).unit();
                self.beside(line[i], direction, NEAR).is_none()
            })
            .collect();
        if keep.iter().all(|k| *k) {
            return if length(&line) >= least { vec![line] } else { Vec::new() };
        }
        let mut runs = Vec::new();
        let mut at = 0;
        while at < line.len() {
            let start = at;
            while at < line.len() && keep[at] {
                at += 1;
            }
            if at > start + 2 && length(&line[start..at]) >= least {
                runs.push(line[start..at].to_vec());
            }
            at += 1;
        }
        runs
    }
}
