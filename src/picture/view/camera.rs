//! From where the limb is seen.

use crate::body::View;
use crate::picture::space::{Rotation, Vector, turn};

use super::Dot;

/// A camera far away: parallel lines stay parallel.
#[derive(Clone, Copy, Debug)]
pub struct Camera {
    pub right: Vector,
    pub up: Vector,
    /// Towards the eye.
    pub eye: Vector,
}

impl Camera {
    /// The camera of a view; the forearm points up.
    pub fn of(view: View) -> Self {
        let yawed = |degrees: f64, nod: f64| {
            // Positive yaw walks from the back of the hand to the thumb side, positive nod looks from the elbow.
            let turn = Rotation::about_y(-degrees).of(&Rotation::about_x(nod));
            Self { right: turn.x, up: turn.y, eye: turn.z }
        };
        match view {
            View::Dorsal => yawed(0.0, 0.0),
            View::Palmar => yawed(180.0, 0.0),
            View::Radial => yawed(90.0, 0.0),
            View::Ulnar => yawed(-90.0, 0.0),
            View::Turned => yawed(50.0, 0.0),
            View::PalmarRadial => yawed(132.0, 0.0),
            View::PalmarUlnar => yawed(226.0, 0.0),
            View::Own => yawed(12.0, 38.0),
        }
    }

    /// The same camera looking down by so many degrees more.
    pub fn nodded(&self, degrees: f64) -> Self {
        let (s, c) = turn(degrees);
        Self { right: self.right, up: self.up * c - self.eye * s, eye: self.eye * c + self.up * s }
    }

    /// The same camera with the picture turned so that a direction points up; as it is when that points at the eye.
    pub fn rolled(&self, top: Vector) -> Self {
        let flat = self.flat(top);
        let long = flat.length();
        if long < 0.1 {
            return *self;
        }
        let (x, y) = (flat.x / long, flat.y / long);
        Self { right: self.right * y - self.up * x, up: self.right * x + self.up * y, eye: self.eye }
    }

    /// Where a point stands in the picture.
    pub fn flat(&self, p: Vector) -> Dot {
        Dot::new(p.dot(self.right), p.dot(self.up))
    }

    /// How near a point is to the eye.
    pub fn depth(&self, p: Vector) -> f64 {
        p.dot(self.eye)
    }
}
