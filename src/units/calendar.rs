//! Civil dates and counts of days. No time zone and no clock: a plan is counted in the patient's own days.

use std::fmt;
use std::str::FromStr;

use jiff::ToSpan;
use jiff::civil;

use super::{Misread, number_and_unit};

/// A day of the calendar between 2000 and 2199, written `2027-03-12`.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Date(civil::Date);

/// A day of the week.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Weekday {
    Monday,
    Tuesday,
    Wednesday,
    Thursday,
    Friday,
    Saturday,
    Sunday,
}

impl Weekday {
    /// All seven, Monday first.
    pub const ALL: [Self; 7] =
        [Self::Monday, Self::Tuesday, Self::Wednesday, Self::Thursday, Self::Friday, Self::Saturday, Self::Sunday];

    /// 0 for Monday to 6 for Sunday.
    pub fn index(self) -> usize {
        self as usize
    }
}

impl Date {
    /// The first day that can be written.
    pub const EARLIEST: Self = Self(civil::date(2000, 1, 1));

    /// The date of these numbers, when it exists and lies between 2000 and 2199.
    pub fn new(year: i16, month: i8, day: i8) -> Option<Self> {
        civil::Date::new(year, month, day).ok().filter(|date| (2000..=2199).contains(&date.year())).map(Self)
    }

    pub fn year(self) -> i16 {
        self.0.year()
    }

    /// 1 to 12.
    pub fn month(self) -> i8 {
        self.0.month()
    }

    /// 1 to 31.
    pub fn day(self) -> i8 {
        self.0.day()
    }

    pub fn weekday(self) -> Weekday {
        Weekday::ALL[self.0.weekday().to_monday_zero_offset() as usize]
    }

    /// The date so many days later (or earlier, for a negative count); stays at the last day that can be written.
    pub fn offset(self, days: i32) -> Self {
        let moved =
            self.0.checked_add(days.days()).unwrap_or(if days < 0 { civil::Date::MIN } else { civil::Date::MAX });
        Self(moved.clamp(civil::date(2000, 1, 1), civil::date(2199, 12, 31)))
    }

    /// Days from `earlier` to this date; negative when this date is the earlier one.
    pub fn days_since(self, earlier: Self) -> i32 {
        (self.0 - earlier.0).get_days()
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.0)
    }
}

impl FromStr for Date {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        let parts: Vec<&str> = text.split('-').collect();
        let shaped = matches!(parts.as_slice(), [y, m, d] if y.len() == 4 && m.len() == 2 && d.len() == 2)
            && text.bytes().all(|byte| byte.is_ascii_digit() || byte == b'-');
        if !shaped {
            return Err(Misread::new(format!("`{text}` is no date"), "year, month and day as `2027-03-12`"));
        }
        let numbers: Vec<i16> = parts.iter().filter_map(|part| part.parse().ok()).collect();
        let [year, month, day] = numbers[..] else { return Err(Misread::plain(format!("`{text}` is no date"))) };
        if !(2000..=2199).contains(&year) {
            return Err(Misread::new(format!("the year {year} is out of reach"), "a year from 2000 to 2199"));
        }
        Self::new(year, month as i8, day as i8).ok_or_else(|| match civil::Date::new(year, month as i8, 1) {
            Ok(first) => Misread::new(
                format!("{text} does not exist: that month has {} days", first.days_in_month()),
                format!("`{}` or an earlier day", first.last_of_month()),
            ),
            Err(_) => Misread::new(format!("there is no month {month}"), "a month from `01` to `12`"),
        })
    }
}

/// A number of days, at most ten years: "3 days", "1 day", "6 weeks".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct DayCount(u16);

impl DayCount {
    const MOST: u32 = 3653;

    /// So many days, at most ten years.
    pub const fn new(days: u16) -> Self {
        Self(if days as u32 > Self::MOST { Self::MOST as u16 } else { days })
    }

    pub const fn days(self) -> u16 {
        self.0
    }

    /// The count in whole weeks, when it is one.
    pub const fn whole_weeks(self) -> Option<u16> {
        if self.0.is_multiple_of(7) && self.0 > 0 { Some(self.0 / 7) } else { None }
    }
}

impl fmt::Display for DayCount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.whole_weeks(), self.0) {
            (Some(1), _) => f.write_str("1 week"),
            (Some(weeks), _) => write!(f, "{weeks} weeks"),
            (None, 1) => f.write_str("1 day"),
            (None, days) => write!(f, "{days} days"),
        }
    }
}

impl FromStr for DayCount {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let Some((number, unit)) = number_and_unit(text) else {
            return Err(Misread::new(
                format!("`{}` is no length of time", text.trim()),
                "such as `3 days` or `2 weeks`",
            ));
        };
        let scale = match unit {
            "day" | "days" | "d" => 1,
            "week" | "weeks" | "wk" => 7,
            "" => {
                return Err(Misread::new(
                    format!("`{number}` needs a unit"),
                    format!("`{number} days` or `{number} weeks`"),
                ));
            }
            _ => {
                return Err(Misread::new(
                    format!("`{unit}` is no unit of days"),
                    format!("`{number} days` or `{number} weeks`"),
                ));
            }
        };
        let count: u32 = number.parse().map_err(|_| {
            Misread::new(format!("`{number} {unit}` is no whole number"), "whole days, such as `10 days`")
        })?;
        match count.checked_mul(scale) {
            Some(days @ 1..=Self::MOST) => Ok(Self(days as u16)),
            Some(0) => Err(Misread::new("no days at all", "at least `1 day`")),
            _ => Err(Misread::new(format!("{number} {unit} is more than ten years"), "at most `520 weeks`")),
        }
    }
}
