//! A round cone: the hull of two balls.

use crate::picture::limb::Ball;
use crate::picture::space::Vector;

/// The hull of two balls, with what its distance needs worked out once.
#[derive(Clone, Copy, Debug)]
pub struct Cone {
    a: Vector,
    along: Vector,
    radius_a: f64,
    radius_b: f64,
    /// Square of the length, its inverse, difference of the radii, and square of the length of the straight flank.
    square: f64,
    /// Radius of a ball round its middle that holds all of it.
    bound: f64,
    inverse: f64,
    taper: f64,
    flank: f64,
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
            bound: square.sqrt() / 2.0 + a.radius.max(b.radius),
            inverse: 1.0 / square,
            taper,
            flank: square - taper * taper,
        }
    }

    /// The distance from a point to the surface, negative inside.
    ///
    /// The exact distance to the hull of two balls, by the side of the two cutting planes that the point lies on.
    pub fn distance(&self, p: Vector) -> f64 {
        let from_a = p - self.a;
        if self.flank <= 1e-9 {
            let (at, radius) =
                if self.taper > 0.0 { (from_a, self.radius_a) } else { (from_a - self.along, self.radius_b) };
            return at.length() - radius;
        }
        let y = from_a.dot(self.along);
        let z = y - self.square;
        let q = from_a * self.square - self.along * y;
        let across = q.dot(q);
        let (y_square, z_square) = (y * y * self.square, z * z * self.square);
        let sign = |value: f64| {
            if value > 0.0 {
                1.0
            } else if value < 0.0 {
                -1.0
            } else {
                0.0
            }
        };
        let k = sign(self.taper) * self.taper * self.taper * across;
        if sign(z) * self.flank * z_square > k {
            (across + z_square).sqrt() * self.inverse - self.radius_b
        } else if sign(y) * self.flank * y_square < k {
            (across + y_square).sqrt() * self.inverse - self.radius_a
        } else {
            ((across * self.flank * self.inverse).sqrt() + y * self.taper) * self.inverse - self.radius_a
        }
    }

    /// Whether its distance can be below a limit; no root is drawn for it.
    pub fn is_nearer(&self, p: Vector, limit: f64) -> bool {
        let reach = limit + self.bound;
        let off = p - self.a - self.along * 0.5;
        reach > 0.0 && off.dot(off) < reach * reach
    }

    pub fn corners(&self) -> (Vector, Vector) {
        let ball = |at: Vector, r: f64| (at - Vector::new(r, r, r), at + Vector::new(r, r, r));
        let (low_a, high_a) = ball(self.a, self.radius_a);
        let (low_b, high_b) = ball(self.a + self.along, self.radius_b);
        (low_a.min(low_b), high_a.max(high_b))
    }
}
