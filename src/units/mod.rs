//! Quantities as people write them: "30 deg", "45 min", "2 weeks", "07:30", "2027-03-12".
//!
//! `FromStr` and `Display` are the one grammar of a value, used by case files, content files and output alike.
//! A bare number where a unit matters is an error that shows the right spelling.

mod angle;
mod calendar;
mod clock;
mod count;
mod files;
mod interval;
mod load;

pub use angle::Degrees;
pub use calendar::{Date, DayCount, Weekday};
pub use clock::{ClockSpan, Minutes, Seconds, TimeOfDay};
pub use count::{Celsius, Characters, Hundredths, Level, Limit, Repetitions, Revision, TimesPerDay};
pub use interval::Interval;
pub use load::Mass;

/// A value that could not be read: what is wrong with it, and what to write instead.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misread {
    /// The fault, in lower case, without a full stop.
    pub wrong: String,
    /// A correct spelling to paste, when one can be offered.
    pub write: Option<String>,
}

impl Misread {
    /// A fault with a spelling to paste.
    pub fn new(wrong: impl Into<String>, write: impl Into<String>) -> Self {
        Self { wrong: wrong.into(), write: Some(write.into()) }
    }

    /// A fault with nothing to offer.
    pub fn plain(wrong: impl Into<String>) -> Self {
        Self { wrong: wrong.into(), write: None }
    }

    /// What to write instead, as the help of a message.
    pub fn help(&self) -> Option<String> {
        self.write.as_ref().map(|write| format!("write {write}"))
    }
}

impl std::fmt::Display for Misread {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match &self.write {
            Some(write) => write!(f, "{}; write {write}", self.wrong),
            None => f.write_str(&self.wrong),
        }
    }
}

impl std::error::Error for Misread {}

/// Splits "45 min" into number and unit. The number must be plain digits with at most one decimal point:
/// `.inf`, `1e3`, `+5` and `-1` are no quantities a therapist writes.
pub(crate) fn number_and_unit(text: &str) -> Option<(&str, &str)> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(text.len());
    let (number, unit) = text.split_at(end);
    let plain = !number.is_empty()
        && number.len() <= 9
        && number.matches('.').count() <= 1
        && !number.starts_with('.')
        && !number.ends_with('.');
    plain.then_some((number, unit.trim()))
}

/// Reads a decimal number with at most one digit after the point, as tenths, without going through floating point.
pub(crate) fn tenths(number: &str) -> Option<u32> {
    let (whole, fraction) = number.split_once('.').unwrap_or((number, "0"));
    if fraction.len() != 1 {
        return None;
    }
    whole.parse::<u32>().ok()?.checked_mul(10)?.checked_add(fraction.parse().ok()?)
}
