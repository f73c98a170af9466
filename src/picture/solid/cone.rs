//! A round cone: the hull of two balls.

use fearless_simd::{Select as _, Simd, SimdBase as _, SimdFloat as _};

use crate::picture::limb::Ball;
use crate::picture::space::Vector;

use super::lanes::{Lanes, Places, all};

/// The hull of two balls, with what its distance needs worked out once.
#[derive(Clone, Copy, Debug)]
pub struct Cone {
    a: Vector,
    along: Vector,
    radius_a: f64,
    radius_b: f64,
    /// Square of the length, its inverse, difference of the radii, and square of the length of the straight flank.
    square: f64,
    inverse: f64,
    taper: f64,
    flank: f64,
    /// Square of the taper with its sign.
    bend: f64,
}

impl Cone {
    pub fn new(a: Ball, b: Ball) -> Self {
        let along = b.at - a.at;
        let square = along.dot(along).max(1e-12);
        let taper = a.radius - b.radius;
        Self {
            a: a.at,
            radius_a: a.radius,
            radius_b: b.radius,
            along,
            square,
            inverse: 1.0 / square,
            taper,
            bend: taper.abs() * taper,
            flank: square - taper * taper,
        }
    }

    /// The distance from a point to the surface, negative inside: the exact distance to the hull of two balls, by the side
    /// of the two cutting planes that a point lies on.
    #[inline]
    pub fn distance(&self, p: Vector) -> f64 {
        if self.flank <= 1e-9 {
            let (at, radius) = self.wider();
            return (p - at).length() - radius;
        }
        let from_a = p - self.a;
        let y = from_a.dot(self.along);
        let z = y - self.square;
        let q = from_a * self.square - self.along * y;
        let across = q.dot(q);
        let (y_square, z_square) = (y * y * self.square, z * z * self.square);
        let k = self.bend * across;
        let past = (self.flank * z_square).copysign(z) > k;
        let before = (self.flank * y_square).copysign(y) < k;
        let end = if past { z_square } else { y_square };
        let ends = past | before;
        let square = if ends { across + end } else { across * self.flank * self.inverse };
        let more = if ends { 0.0 } else { y * self.taper };
        let radius = if past { self.radius_b } else { self.radius_a };
        (square.sqrt() + more) * self.inverse - radius
    }

    /// The ball that holds the other one, when one does.
    #[inline(always)]
    fn wider(&self) -> (Vector, f64) {
        if self.taper > 0.0 { (self.a, self.radius_a) } else { (self.a + self.along, self.radius_b) }
    }

    /// [`Self::distance`] from four points.
    #[inline(always)]
    pub fn distances<S: Simd>(&self, places: &Places<S>) -> Lanes<S> {
        let simd = places.x.simd;
        if self.flank <= 1e-9 {
            let (at, radius) = self.wider();
            let to = places.from(at);
            return to.dot(&to).sqrt() - radius;
        }
        let from_a = places.from(self.a);
        let y = from_a.along(self.along);
        let z = y - self.square;
        let q = Places {
            x: from_a.x * self.square - y * self.along.x,
            y: from_a.y * self.square - y * self.along.y,
            z: from_a.z * self.square - y * self.along.z,
        };
        let across = q.dot(&q);
        let (y_square, z_square) = (y * y * self.square, z * z * self.square);
        let k = across * self.bend;
        let past = (z_square * self.flank).copysign(z).simd_gt(k);
        let before = (y_square * self.flank).copysign(y).simd_lt(k);
        let end = past.select(z_square, y_square);
        let ends = past | before;
        let square = ends.select(across + end, across * self.flank * self.inverse);
        let more = ends.select(all(simd, 0.0), y * self.taper);
        let radius = past.select(all(simd, self.radius_b), all(simd, self.radius_a));
        (square.sqrt() + more) * self.inverse - radius
    }

    /// The middle of its first ball, and how deep it lies in it.
    pub const fn first(&self) -> (Vector, f64) {
        (self.a, self.radius_a)
    }

    /// How far from a point its farthest point is at most.
    pub fn farthest(&self, p: Vector) -> f64 {
        let to = self.a - p;
        (to.length() + self.radius_a).max((to + self.along).length() + self.radius_b)
    }

    pub fn corners(&self) -> (Vector, Vector) {
        let ball = |at: Vector, r: f64| (at - Vector::new(r, r, r), at + Vector::new(r, r, r));
        let (low_a, high_a) = ball(self.a, self.radius_a);
        let (low_b, high_b) = ball(self.a + self.along, self.radius_b);
        (low_a.min(low_b), high_a.max(high_b))
    }
}
