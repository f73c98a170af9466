//! Times of the day and lengths of time, on the patient's own clock.

use std::fmt;
use std::str::FromStr;

use super::{Misread, number_and_unit};

/// A time on the patient's own clock, to the minute: no zone, no summer time. Written "07:30".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct TimeOfDay(u16);

impl TimeOfDay {
    /// Minutes in a day of the plan.
    pub const DAY: u16 = 1440;

    /// The time so many minutes after midnight, wrapped into the day.
    pub const fn from_minutes(minutes: u16) -> Self {
        Self(minutes % Self::DAY)
    }

    /// Minutes after midnight, 0 to 1439.
    pub const fn minutes(self) -> u16 {
        self.0
    }

    pub const fn hour(self) -> u8 {
        (self.0 / 60) as u8
    }

    pub const fn minute(self) -> u8 {
        (self.0 % 60) as u8
    }

    /// Minutes from this time forward to `later`, across midnight when need be.
    pub const fn until(self, later: Self) -> u16 {
        (later.0 + Self::DAY - self.0) % Self::DAY
    }
}

impl fmt::Display for TimeOfDay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.hour(), self.minute())
    }
}

impl FromStr for TimeOfDay {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        let bad = || {
            Misread::new(
                format!("`{text}` is no time of day"),
                "hours and minutes as \"07:30\", from \"00:00\" to \"23:59\"",
            )
        };
        let (hour, minute) = text.split_once(':').ok_or_else(bad)?;
        let digits = |part: &str, least: usize| {
            part.len() >= least && part.len() <= 2 && part.bytes().all(|b| b.is_ascii_digit())
        };
        if !digits(hour, 1) || !digits(minute, 2) {
            return Err(bad());
        }
        match (hour.parse::<u16>(), minute.parse::<u16>()) {
            (Ok(hour @ 0..=23), Ok(minute @ 0..=59)) => Ok(Self(hour * 60 + minute)),
            _ => Err(bad()),
        }
    }
}

/// A length of time in whole minutes, at most a day: "45 min", "2 h", "1 h 30 min".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Minutes(u16);

impl Minutes {
    /// So many minutes, at most a day.
    pub const fn new(minutes: u16) -> Self {
        Self(if minutes > TimeOfDay::DAY { TimeOfDay::DAY } else { minutes })
    }

    pub const fn get(self) -> u16 {
        self.0
    }
}

impl fmt::Display for Minutes {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.0 / 60, self.0 % 60) {
            (0, minutes) => write!(f, "{minutes} min"),
            (hours, 0) => write!(f, "{hours} h"),
            (hours, minutes) => write!(f, "{hours} h {minutes} min"),
        }
    }
}

impl FromStr for Minutes {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        let shown = "a length such as `45 min`, `2 h` or `1 h 30 min`";
        let (number, rest) =
            number_and_unit(text).ok_or_else(|| Misread::new(format!("`{text}` is no length of time"), shown))?;
        if rest.is_empty() {
            return Err(Misread::new(format!("`{number}` needs a unit"), format!("`{number} min` or `{number} h`")));
        }
        let (unit, tail) = rest.split_once(char::is_whitespace).unwrap_or((rest, ""));
        let scale = |unit: &str| match unit {
            "min" | "minute" | "minutes" => Some(1u32),
            "h" | "hour" | "hours" => Some(60),
            _ => None,
        };
        let unknown = || Misread::new(format!("`{text}` is no length of time"), shown);
        let whole = |number: &str| {
            number
                .parse::<u32>()
                .map_err(|_| Misread::new(format!("`{number}` is no whole number"), "a half hour as `30 min`"))
        };
        let mut total = whole(number)?.saturating_mul(scale(unit).ok_or_else(unknown)?);
        if !tail.is_empty() {
            let (more, unit) = number_and_unit(tail).ok_or_else(unknown)?;
            if scale(unit) != Some(1) {
                return Err(unknown());
            }
            total = total.saturating_add(whole(more)?);
        }
        if total > u32::from(TimeOfDay::DAY) {
            return Err(Misread::new(format!("{text} is longer than a day"), "at most `24 h`"));
        }
        Ok(Self(total as u16))
    }
}

/// A length of time in whole seconds, at most ten minutes: how long a position is held. "5 s".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Seconds(u16);

impl Seconds {
    pub const fn get(self) -> u16 {
        self.0
    }
}

impl fmt::Display for Seconds {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} s", self.0)
    }
}

impl FromStr for Seconds {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let Some((number, unit)) = number_and_unit(text) else {
            return Err(Misread::new(format!("`{}` is no length of time", text.trim()), "such as `5 s`"));
        };
        if unit.is_empty() {
            return Err(Misread::new(format!("`{number}` needs a unit"), format!("`{number} s`")));
        }
        match (unit, number.parse::<u16>()) {
            ("s" | "sec" | "second" | "seconds", Ok(seconds @ 0..=600)) => Ok(Self(seconds)),
            _ => Err(Misread::new(
                format!("`{}` is no holding time", text.trim()),
                "whole seconds from `0 s` to `600 s`",
            )),
        }
    }
}

/// A stretch of one day, half open, in minutes after midnight: `from` < `to` <= 1440.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct ClockSpan {
    from: u16,
    to: u16,
}

impl ClockSpan {
    /// None when the span is empty or leaves the day.
    pub fn new(from: u16, to: u16) -> Option<Self> {
        (from < to && to <= TimeOfDay::DAY).then_some(Self { from, to })
    }

    pub fn from(self) -> u16 {
        self.from
    }

    pub fn to(self) -> u16 {
        self.to
    }

    pub fn minutes(self) -> u16 {
        self.to - self.from
    }
}
