//! Anything that has a distance, with what matters near a place.

use crate::picture::space::{Points, Vector};

/// How far outside a ball the distances are asked for that give the direction of a surface in it, mm.
pub const BESIDE: f64 = 1.0;

/// A solid by its distance: at most 1 mm of change for each mm of way, so that a ball of the distance's size is empty.
pub trait Solid {
    /// The same solid with only what matters within a ball.
    type Near: NearSolid;

    /// The box that holds it.
    fn bounds(&self) -> (Vector, Vector);

    /// What matters within a ball.
    fn near(&self, centre: Vector, radius: f64) -> Self::Near;

    /// Whether any part of its surface inside a ball is drawn.
    fn is_wanted(&self, _centre: Vector, _radius: f64) -> bool {
        true
    }
}

/// A solid near a place.
pub trait NearSolid: Sized {
    /// The distances to the surface, negative inside, mm.
    fn distances<const N: usize>(&self, points: &Points<N>) -> [f64; N];

    /// The distance to the surface, negative inside, mm.
    fn distance(&self, p: Vector) -> f64 {
        let [distance] = self.distances(&Points::of([p]));
        distance
    }

    /// What matters within a smaller ball.
    #[must_use]
    fn nearer(&self, centre: Vector, radius: f64) -> Self;
}

/// The direction in which a distance grows fastest at a point, by its change over a step to either side, mm.
pub fn outwards(distances: impl Fn(&Points<6>) -> [f64; 6], at: Vector, step: f64) -> Vector {
    let (x, y, z) = (Vector::new(step, 0.0, 0.0), Vector::new(0.0, step, 0.0), Vector::new(0.0, 0.0, step));
    let [right, left, up, down, over, under] = distances(&Points::of([at + x, at - x, at + y, at - y, at + z, at - z]));
    Vector::new(right - left, up - down, over - under).unit()
}

/// Distances from several points by the distance from one.
pub fn each<const N: usize>(distance: impl Fn(Vector) -> f64) -> impl Fn(&Points<N>) -> [f64; N] {
    move |points| std::array::from_fn(|i| distance(points.at(i)))
}

/// A point lifted out of the skin until a ground, in which the skin is, is `over` mm below it or nearly so.
pub fn lifted(
    mut point: Vector,
    over: f64,
    nearly: f64,
    skin: impl Fn(Vector) -> f64,
    ground: impl Fn(Vector) -> f64,
) -> Vector {
    for _ in 0..9 {
        let lacking = over - ground(point);
        if lacking <= nearly {
            break;
        }
        point = point + outwards(each(&skin), point, 0.5) * lacking;
    }
    point
}

impl Solid for super::Field {
    type Near = super::Near;
    fn bounds(&self) -> (Vector, Vector) {
        Self::bounds(self)
    }
    fn near(&self, centre: Vector, radius: f64) -> super::Near {
        Self::near(self, centre, radius)
    }
}

impl NearSolid for super::Near {
    fn distances<const N: usize>(&self, points: &Points<N>) -> [f64; N] {
        Self::distances(self, points)
    }
    fn nearer(&self, centre: Vector, radius: f64) -> Self {
        self.near(centre, radius)
    }
}
