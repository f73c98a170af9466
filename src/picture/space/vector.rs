//! A point or a direction.

use std::ops::{Add, Mul, Neg, Sub};

/// A point in millimetres, or a direction.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Vector {
    pub x: f64,
    pub y: f64,
    pub z: f64,
}

impl Vector {
    pub const ZERO: Self = Self::new(0.0, 0.0, 0.0);

    #[inline(always)]
    pub const fn new(x: f64, y: f64, z: f64) -> Self {
        Self { x, y, z }
    }

    #[inline(always)]
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    #[must_use]
    #[inline(always)]
    pub fn cross(self, other: Self) -> Self {
        Self::new(
            self.y * other.z - self.z * other.y,
            self.z * other.x - self.x * other.z,
            self.x * other.y - self.y * other.x,
        )
    }

    #[inline(always)]
    pub fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// The same direction with length 1; a vector without length stays as it is.
    #[must_use]
    #[inline(always)]
    pub fn unit(self) -> Self {
        let length = self.length();
        if length < 1e-12 { self } else { self * (1.0 / length) }
    }

    /// The point so far along the way to another: 0 here, 1 there.
    #[must_use]
    #[inline(always)]
    pub fn towards(self, other: Self, share: f64) -> Self {
        self + (other - self) * share
    }

    /// How far it is from the straight way between two others.
    pub fn off(self, from: Self, to: Self) -> f64 {
        let whole = to - from;
        let share = ((self - from).dot(whole) / whole.dot(whole)).clamp(0.0, 1.0);
        (self - from.towards(to, share)).length()
    }

    #[must_use]
    #[inline(always)]
    pub fn min(self, other: Self) -> Self {
        Self::new(self.x.min(other.x), self.y.min(other.y), self.z.min(other.z))
    }

    #[must_use]
    #[inline(always)]
    pub fn max(self, other: Self) -> Self {
        Self::new(self.x.max(other.x), self.y.max(other.y), self.z.max(other.z))
    }
}

impl Add for Vector {
    type Output = Self;
    #[inline(always)]
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y, self.z + other.z)
    }
}

impl Sub for Vector {
    type Output = Self;
    #[inline(always)]
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y, self.z - other.z)
    }
}

impl Mul<f64> for Vector {
    type Output = Self;
    #[inline(always)]
    fn mul(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by, self.z * by)
    }
}

impl Neg for Vector {
    type Output = Self;
    #[inline(always)]
    fn neg(self) -> Self {
        Self::new(-self.x, -self.y, -self.z)
    }
}
