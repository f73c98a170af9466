//! Flesh as tubes: a smooth curve through balls of changing radius.

use crate::picture::space::Vector;

use super::Segment;

/// A ball: a point inside the limb and the distance from it to the skin.
#[derive(Clone, Copy, Debug)]
pub struct Ball {
    pub at: Vector,
    pub radius: f64,
}

/// A tube through balls, part of one segment.
#[derive(Clone, Debug)]
pub struct Tube {
    pub segment: Segment,
    pub balls: Vec<Ball>,
}

/// How far apart the balls of a finished tube are, mm: closer ones cost time, wider ones show as beads.
const STEP: f64 = 4.5;

/// A tube through balls that are given sparsely: a natural cubic spline through places and radii.
pub fn through(segment: Segment, sparse: &[Ball]) -> Tube {
    if sparse.len() < 3 {
        return Tube { segment, balls: sparse.to_vec() };
    }
    let mut along = vec![0.0];
    for pair in sparse.windows(2) {
        let last = along.last().copied().unwrap_or_default();
        along.push(last + (pair[1].at - pair[0].at).length().max(1e-3));
    }
    let coordinate = |pick: fn(&Ball) -> f64| Spline::new(&along, sparse.iter().map(pick).collect());
    let (x, y) = (coordinate(|b| b.at.x), coordinate(|b| b.at.y));
    let (z, radius) = (coordinate(|b| b.at.z), coordinate(|b| b.radius));
    let total = along.last().copied().unwrap_or_default();
    let count = (total / STEP + 0.5).floor().max(1.0) as usize;
    let balls = (0..=count)
        .map(|i| {
            let u = total * i as f64 / count as f64;
            Ball { at: Vector::new(x.at(u), y.at(u), z.at(u)), radius: radius.at(u).max(0.3) }
        })
        .collect();
    Tube { segment, balls }
}

/// A natural cubic spline through values at growing places.
pub struct Spline {
    places: Vec<f64>,
    values: Vec<f64>,
    bends: Vec<f64>,
}

impl Spline {
    pub fn new(places: &[f64], values: Vec<f64>) -> Self {
        let n = places.len();
        let mut bends = vec![0.0; n];
        if n > 2 {
            let step = |i: usize| places[i + 1] - places[i];
            let slope = |i: usize| (values[i + 1] - values[i]) / step(i);
            let (mut upper, mut right) = (vec![0.0; n], vec![0.0; n]);
            for i in 1..n - 1 {
                let low = step(i - 1);
                let diagonal = 2.0 * (low + step(i)) - low * upper[i - 1];
                upper[i] = step(i) / diagonal;
                right[i] = (6.0 * (slope(i) - slope(i - 1)) - low * right[i - 1]) / diagonal;
            }
            for i in (1..n - 1).rev() {
                bends[i] = right[i] - upper[i] * bends[i + 1];
            }
        }
        Self { places: places.to_vec(), values, bends }
    }

    pub fn at(&self, place: f64) -> f64 {
        let n = self.places.len();
        let i = self.places[1..n - 1].iter().take_while(|p| **p <= place).count();
        let h = self.places[i + 1] - self.places[i];
        let (a, b) = ((self.places[i + 1] - place) / h, (place - self.places[i]) / h);
        let cubic = |t: f64| t * t * t - t;
        a * self.values[i]
            + b * self.values[i + 1]
            + (cubic(a) * self.bends[i] + cubic(b) * self.bends[i + 1]) * h * h / 6.0
    }
}
