//! A point of the picture plane.

use std::ops::{Add, Mul, Sub};

/// A point of the picture plane in millimetres of the limb: x to the right, y up.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Dot {
    pub x: f64,
    pub y: f64,
}

impl Dot {
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// How far `other` turns to the left of this direction, times both lengths.
    pub fn turn(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    pub fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    #[must_use]
    pub fn unit(self) -> Self {
        let length = self.length();
        if length < 1e-12 { self } else { self * (1.0 / length) }
    }

    /// A quarter turn to the left.
    #[must_use]
    pub fn left(self) -> Self {
        Self::new(-self.y, self.x)
    }

    #[must_use]
    pub fn towards(self, other: Self, share: f64) -> Self {
        self + (other - self) * share
    }

    pub fn distance(self, other: Self) -> f64 {
        (self - other).length()
    }

    /// How far it is from the straight way between two others.
    pub fn off(self, from: Self, to: Self) -> f64 {
        let whole = to - from;
        let long = whole.length().max(1e-6);
        let share = ((self - from).dot(whole) / (long * long)).clamp(0.0, 1.0);
        self.distance(from.towards(to, share))
    }
}

impl Add for Dot {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Dot {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }
}

impl Mul<f64> for Dot {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by)
    }
}
