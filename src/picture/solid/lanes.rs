//! Four numbers at once, in the widest registers that a processor has. Lanes never mix and no step is rounded otherwise, so
//! the results are the same to the last bit everywhere.

use fearless_simd::{Select as _, Simd, SimdBase as _, SimdFrom as _, SimdMask as _, f64x4};

use crate::picture::space::{Points, Vector};

/// Four numbers.
pub type Lanes<S> = f64x4<S>;

/// How many there are.
pub const LANES: usize = 4;

/// The same number four times.
#[inline(always)]
pub fn all<S: Simd>(simd: S, value: f64) -> Lanes<S> {
    Lanes::splat(simd, value)
}

/// The lesser of each two.
#[inline(always)]
pub fn least<S: Simd>(a: Lanes<S>, b: Lanes<S>) -> Lanes<S> {
    b.simd_lt(a).select(b, a)
}

/// [`super::smooth_min`] of each two.
#[inline(always)]
pub fn smooth_mins<S: Simd>(a: Lanes<S>, b: Lanes<S>, width: f64) -> Lanes<S> {
    let simd = a.simd;
    let (found, zero) = (least(a, b), all(simd, 0.0));
    let short = all(simd, width) - simd.abs_f64x4(a - b);
    let meets = short.simd_gt(zero);
    if meets.to_bitmask() == 0 {
        return found;
    }
    let h = meets.select(short, zero) / width;
    found - h * h * h * width / 6.0
}

/// Four points, coordinate by coordinate.
#[derive(Clone, Copy)]
pub struct Places<S: Simd> {
    pub x: Lanes<S>,
    pub y: Lanes<S>,
    pub z: Lanes<S>,
}

impl<S: Simd> Places<S> {
    /// Some points from the one with a number on; the last one is repeated where there are no more.
    #[inline(always)]
    pub fn of<const N: usize>(simd: S, points: &Points<N>, first: usize) -> Self {
        let lanes = |of: &[f64; N]| {
            Lanes::simd_from(simd, std::array::from_fn::<f64, LANES, _>(|i| of[(first + i).min(N - 1)]))
        };
        Self { x: lanes(&points.x), y: lanes(&points.y), z: lanes(&points.z) }
    }

    /// The ways to them from a point.
    #[inline(always)]
    pub fn from(&self, p: Vector) -> Self {
        Self { x: self.x - p.x, y: self.y - p.y, z: self.z - p.z }
    }

    #[inline(always)]
    pub fn dot(&self, other: &Self) -> Lanes<S> {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    #[inline(always)]
    pub fn along(&self, v: Vector) -> Lanes<S> {
        self.x * v.x + self.y * v.y + self.z * v.z
    }
}
