//! Joint angles.

use std::fmt;
use std::str::FromStr;

use super::{Misread, number_and_unit, tenths};

/// A joint angle in tenths of a degree, from -180 to 180: integers print the same on every machine.
///
/// The sign has a meaning only together with an axis; people write a size and a direction
/// ("extension 15 deg"), so the text form is never negative.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Degrees(i16);

impl Degrees {
    /// Straight.
    pub const ZERO: Self = Self(0);

    /// Whole degrees, clamped to the limit.
    pub const fn whole(degrees: i16) -> Self {
        Self::tenth(degrees.saturating_mul(10))
    }

    /// Tenths of a degree, clamped to the limit.
    pub const fn tenth(tenths: i16) -> Self {
        Self(if tenths > 1800 {
            1800
        } else if tenths < -1800 {
            -1800
        } else {
            tenths
        })
    }

    /// The angle in tenths of a degree.
    pub const fn tenths(self) -> i16 {
        self.0
    }

    /// The signed angle in degrees, for geometry.
    pub fn degrees(self) -> f64 {
        f64::from(self.0) / 10.0
    }

    /// The same size in the other direction.
    pub const fn reversed(self) -> Self {
        Self(-self.0)
    }

    /// The sum of two signed angles, clamped to the limit.
    #[must_use]
    pub const fn plus(self, other: Self) -> Self {
        Self::tenth(self.0.saturating_add(other.0))
    }

    /// The size without direction.
    pub const fn size(self) -> Self {
        Self(self.0.abs())
    }

    /// The size as a number for a sentence: "15" or "12.5".
    pub fn figure(self) -> String {
        let size = self.0.abs();
        if size % 10 == 0 { format!("{}", size / 10) } else { format!("{}.{}", size / 10, size % 10) }
    }
}

impl fmt::Display for Degrees {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} deg", self.figure())
    }
}

impl FromStr for Degrees {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let Some((number, unit)) = number_and_unit(text) else {
            return Err(Misread::new(format!("`{}` is no angle", text.trim()), "a size such as `30 deg`"));
        };
        match unit {
            "deg" | "°" | "degree" | "degrees" => {}
            "" => return Err(Misread::new(format!("`{number}` needs a unit"), format!("`{number} deg`"))),
            _ => return Err(Misread::new(format!("`{unit}` is no unit of angle"), format!("`{number} deg`"))),
        }
        match tenths(number) {
            Some(tenths) if tenths <= 1800 => Ok(Self(tenths as i16)),
            Some(_) => Err(Misread::new(format!("{number} deg is more than any joint moves"), "at most `180 deg`")),
            None => Err(Misread::new(
                format!("`{number}` is finer than a joint can be measured"),
                "at most one digit after the point, such as `12.5 deg`",
            )),
        }
    }
}
