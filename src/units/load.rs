//! Mass handled by the hand.

use std::fmt;
use std::str::FromStr;

use super::{Misread, number_and_unit, tenths};

/// A mass in tenths of a kilogram, at most 100 kg: "0.5 kg", "6 kg".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Mass(u16);

impl Mass {
    pub const ZERO: Self = Self(0);

    /// Tenths of a kilogram.
    pub const fn tenths(self) -> u16 {
        self.0
    }

    /// Half of it, rounded up, so that halving never understates.
    pub const fn half(self) -> Self {
        Self(self.0.div_ceil(2))
    }

    /// The figure for a sentence: "6" or "0.5".
    pub fn figure(self) -> String {
        if self.0.is_multiple_of(10) { format!("{}", self.0 / 10) } else { format!("{}.{}", self.0 / 10, self.0 % 10) }
    }
}

impl fmt::Display for Mass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} kg", self.figure())
    }
}

impl FromStr for Mass {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let Some((number, unit)) = number_and_unit(text) else {
            return Err(Misread::new(format!("`{}` is no mass", text.trim()), "such as `0.5 kg`"));
        };
        match (unit, tenths(number)) {
            ("", _) => Err(Misread::new(format!("`{number}` needs a unit"), format!("`{number} kg`"))),
            ("kg", Some(tenths @ 0..=1000)) => Ok(Self(tenths as u16)),
            ("kg", _) => Err(Misread::new(
                format!("`{}` is out of range", text.trim()),
                "from `0 kg` to `100 kg`, one digit after the point",
            )),
            _ => Err(Misread::new(format!("`{unit}` is no unit of mass"), format!("`{number} kg`"))),
        }
    }
}
