//! A place with three directions: the frame in which a segment is described.

use super::{Vector, turn};

/// A rotation, as the three directions that the axes turn into.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Rotation {
    pub x: Vector,
    pub y: Vector,
    pub z: Vector,
}

impl Rotation {
    pub const NONE: Self =
        Self { x: Vector::new(1.0, 0.0, 0.0), y: Vector::new(0.0, 1.0, 0.0), z: Vector::new(0.0, 0.0, 1.0) };

    /// About x: positive lifts y towards z.
    pub fn about_x(degrees: f64) -> Self {
        let (s, c) = turn(degrees);
        Self { x: Self::NONE.x, y: Vector::new(0.0, c, s), z: Vector::new(0.0, -s, c) }
    }

    /// About y: positive turns z towards x.
    pub fn about_y(degrees: f64) -> Self {
        let (s, c) = turn(degrees);
        Self { x: Vector::new(c, 0.0, -s), y: Self::NONE.y, z: Vector::new(s, 0.0, c) }
    }

    /// About z: positive turns x towards y.
    pub fn about_z(degrees: f64) -> Self {
        let (s, c) = turn(degrees);
        Self { x: Vector::new(c, s, 0.0), y: Vector::new(-s, c, 0.0), z: Self::NONE.z }
    }

    pub fn apply(&self, v: Vector) -> Vector {
        self.x * v.x + self.y * v.y + self.z * v.z
    }

    /// The way back.
    pub fn undo(&self, v: Vector) -> Vector {
        Vector::new(self.x.dot(v), self.y.dot(v), self.z.dot(v))
    }

    /// First `inner`, then this one.
    #[must_use]
    pub fn of(&self, inner: &Self) -> Self {
        Self { x: self.apply(inner.x), y: self.apply(inner.y), z: self.apply(inner.z) }
    }
}

/// A place and the directions there.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Frame {
    pub origin: Vector,
    pub axes: Rotation,
}

impl Frame {
    /// The frame of the whole picture.
    pub const WORLD: Self = Self { origin: Vector::ZERO, axes: Rotation::NONE };

    /// A point given in this frame.
    pub fn point(&self, x: f64, y: f64, z: f64) -> Vector {
        self.origin + self.axes.apply(Vector::new(x, y, z))
    }

    /// A point of space, seen from this frame.
    pub fn local(&self, point: Vector) -> Vector {
        self.axes.undo(point - self.origin)
    }

    /// A frame that sits in this one.
    #[must_use]
    pub fn child(&self, x: f64, y: f64, z: f64, turned: &Rotation) -> Self {
        Self { origin: self.point(x, y, z), axes: self.axes.of(turned) }
    }
}
