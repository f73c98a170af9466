//! Anything that has a distance, with what matters near a place.

use crate::picture::space::Vector;

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
    /// The distance to the surface, negative inside, mm.
    fn distance(&self, p: Vector) -> f64;

    /// What matters within a smaller ball.
    #[must_use]
    fn nearer(&self, centre: Vector, radius: f64) -> Self;
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
    fn distance(&self, p: Vector) -> f64 {
        Self::distance(self, p)
    }
    fn nearer(&self, centre: Vector, radius: f64) -> Self {
        self.near(centre, radius)
    }
}
