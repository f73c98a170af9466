//! Points side by side.

use super::Vector;

/// A few points, coordinate by coordinate: one step of a calculation works on all of them at once.
#[derive(Clone, Copy, Debug)]
pub struct Points<const N: usize> {
    pub x: [f64; N],
    pub y: [f64; N],
    pub z: [f64; N],
}

impl<const N: usize> Points<N> {
    #[inline(always)]
    pub fn of(points: [Vector; N]) -> Self {
        Self { x: points.map(|p| p.x), y: points.map(|p| p.y), z: points.map(|p| p.z) }
    }

    #[inline(always)]
    pub const fn at(&self, i: usize) -> Vector {
        Vector::new(self.x[i], self.y[i], self.z[i])
    }

    /// The distance of the one that is farthest from a point.
    #[inline(always)]
    pub fn farthest(&self, from: Vector) -> f64 {
        let mut square: f64 = 0.0;
        for i in 0..N {
            let off = self.at(i) - from;
            square = square.max(off.dot(off));
        }
        square.sqrt()
    }
}
