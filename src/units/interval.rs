//! How often something is looked at again.

use std::fmt;
use std::str::FromStr;

use super::{Date, Misread, number_and_unit};

/// A span of the calendar between two reviews, one month to ten years: "6 months", "1 year", "2 years".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Interval(u16);

impl Interval {
    const MOST: u16 = 120;

    /// Calendar months.
    pub const fn months(self) -> u16 {
        self.0
    }
}

impl Date {
    /// The same day so many months later, or the last day of that month where it is shorter; stays at the last day that
    /// can be written.
    pub fn later(self, interval: Interval) -> Self {
        let months = i32::from(self.year()) * 12 + i32::from(self.month()) - 1 + i32::from(interval.0);
        let (year, month) = (months / 12, months % 12 + 1);
        let of = |day: i8| Self::new(i16::try_from(year).ok()?, i8::try_from(month).ok()?, day);
        (1..=self.day()).rev().find_map(of).unwrap_or_else(|| self.offset(73_200))
    }
}

impl fmt::Display for Interval {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.0, self.0 % 12) {
            (1, _) => f.write_str("1 month"),
            (12, _) => f.write_str("1 year"),
            (months, 0) => write!(f, "{} years", months / 12),
            (months, _) => write!(f, "{months} months"),
        }
    }
}

impl FromStr for Interval {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let shown = "such as `6 months` or `1 year`";
        let wrong = || Misread::new(format!("`{}` is no time between two reviews", text.trim()), shown);
        let (number, unit) = number_and_unit(text).ok_or_else(wrong)?;
        let scale = match unit {
            "month" | "months" => 1,
            "year" | "years" => 12,
            _ => return Err(wrong()),
        };
        let count: u16 = number.parse().map_err(|_| wrong())?;
        match count.checked_mul(scale) {
            Some(months @ 1..=Self::MOST) => Ok(Self(months)),
            Some(0) => Err(Misread::new("no time at all", "at least `1 month`")),
            _ => Err(Misread::new(format!("{number} {unit} is more than ten years"), "at most `10 years`")),
        }
    }
}
