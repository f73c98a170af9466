//! Dates, times, numbers and lists as the language writes them, by CLDR.

use icu::calendar::{Date as IcuDate, Gregorian, types::Weekday as IcuWeekday, week::WeekInformation};
use icu::datetime::fieldsets::{E, M, MD, MDE, T, YMDE};
use icu::datetime::options::TimePrecision;
use icu::datetime::{FixedCalendarDateTimeFormatter, NoCalendarFormatter};
use icu::decimal::DecimalFormatter;
use icu::decimal::input::Decimal;
use icu::list::ListFormatter;
use icu::list::options::ListFormatterOptions;
use icu::locale::Locale;
use icu::plurals::{PluralCategory, PluralRules};
use icu::time::Time;

use crate::diag::{Code, Diagnostic};
use crate::language::Language;
use crate::units::{Date, TimeOfDay, Weekday};

/// The plural categories of CLDR and how messages name them.
const PLURALS: [(PluralCategory, &str); 6] = [
    (PluralCategory::Zero, "zero"),
    (PluralCategory::One, "one"),
    (PluralCategory::Two, "two"),
    (PluralCategory::Few, "few"),
    (PluralCategory::Many, "many"),
    (PluralCategory::Other, "other"),
];

/// The formats of one language and region.
pub struct Formats {
    date: FixedCalendarDateTimeFormatter<Gregorian, YMDE>,
    day: FixedCalendarDateTimeFormatter<Gregorian, MDE>,
    short: FixedCalendarDateTimeFormatter<Gregorian, MD>,
    month: FixedCalendarDateTimeFormatter<Gregorian, M>,
    short_month: FixedCalendarDateTimeFormatter<Gregorian, M>,
    weekday: FixedCalendarDateTimeFormatter<Gregorian, E>,
    time: NoCalendarFormatter<T>,
    hour: NoCalendarFormatter<T>,
    decimal: DecimalFormatter,
    list: ListFormatter,
    plurals: PluralRules,
    first_weekday: Weekday,
    digits: [char; 10],
}

impl Formats {
    /// The formats for a language.
    ///
    /// # Errors
    /// When its locale is no locale.
    pub fn new(language: &Language) -> Result<Self, Diagnostic> {
        let name = language.locale();
        let fault = |what: &str| {
            Diagnostic::outside(Code::WORDS_BROKEN, format!("the locale `{name}` has no {what}"))
                .help("give a language with a region such as `en-US`, or none")
        };
        let locale: Locale = name.parse().map_err(|_| fault("meaning"))?;
        let decimal = DecimalFormatter::try_new((&locale).into(), Default::default()).map_err(|_| fault("numbers"))?;
        let mut digits = ['0'; 10];
        for (value, digit) in digits.iter_mut().enumerate() {
            let shown = decimal.format_to_string(&Decimal::from(value as u64));
            *digit = shown.chars().next().unwrap_or('0');
        }
        let week = WeekInformation::try_new((&locale).into()).map_err(|_| fault("week"))?;
        Ok(Self {
            date: FixedCalendarDateTimeFormatter::try_new((&locale).into(), YMDE::long())
                .map_err(|_| fault("dates"))?,
            day: FixedCalendarDateTimeFormatter::try_new((&locale).into(), MDE::long()).map_err(|_| fault("dates"))?,
            short: FixedCalendarDateTimeFormatter::try_new((&locale).into(), MD::long()).map_err(|_| fault("dates"))?,
            month: FixedCalendarDateTimeFormatter::try_new((&locale).into(), M::long()).map_err(|_| fault("months"))?,
            short_month: FixedCalendarDateTimeFormatter::try_new((&locale).into(), M::medium())
                .map_err(|_| fault("months"))?,
            weekday: FixedCalendarDateTimeFormatter::try_new((&locale).into(), E::medium())
                .map_err(|_| fault("weekdays"))?,
            time: NoCalendarFormatter::try_new((&locale).into(), T::hm()).map_err(|_| fault("times"))?,
            hour: NoCalendarFormatter::try_new(
                (&locale).into(),
                T::hm().with_time_precision(TimePrecision::MinuteOptional),
            )
            .map_err(|_| fault("times"))?,
            list: ListFormatter::try_new_and((&locale).into(), ListFormatterOptions::default())
                .map_err(|_| fault("lists"))?,
            plurals: PluralRules::try_new_cardinal((&locale).into()).map_err(|_| fault("plurals"))?,
            first_weekday: weekday(week.first_weekday),
            decimal,
            digits,
        })
    }

    /// "Monday, 1 March 2027".
    pub fn date(&self, date: Date) -> String {
        plain(self.date.format(&icu(date)).to_string())
    }

    /// "Monday, 1 March".
    pub fn day(&self, date: Date) -> String {
        plain(self.day.format(&icu(date)).to_string())
    }

    /// "1 March".
    pub fn short(&self, date: Date) -> String {
        plain(self.short.format(&icu(date)).to_string())
    }

    /// "March".
    pub fn month(&self, date: Date) -> String {
        plain(self.month.format(&icu(date)).to_string())
    }

    /// "Mar".
    pub fn short_month(&self, date: Date) -> String {
        plain(self.short_month.format(&icu(date)).to_string())
    }

    /// "Mon".
    pub fn weekday(&self, date: Date) -> String {
        plain(self.weekday.format(&icu(date)).to_string())
    }

    /// "7:30 am" or "07:30".
    pub fn time(&self, time: TimeOfDay) -> String {
        let time = Time::try_new(time.hour(), time.minute(), 0, 0);
        time.map(|time| plain(self.time.format(&time).to_string())).unwrap_or_default()
    }

    /// A full hour: "6 am" or "06:00".
    pub fn hour(&self, time: TimeOfDay) -> String {
        let time = Time::try_new(time.hour(), time.minute(), 0, 0);
        time.map(|time| plain(self.hour.format(&time).to_string())).unwrap_or_default()
    }

    /// "1,234".
    pub fn number(&self, number: i64) -> String {
        self.decimal.format_to_string(&Decimal::from(number))
    }

    /// The plural category of a count: zero, one, two, few, many or other.
    pub fn plural(&self, count: i64) -> &'static str {
        let category = self.plurals.category_for(count);
        PLURALS.iter().find(|(one, _)| *one == category).map_or("other", |(_, word)| word)
    }

    /// The plural categories that the language tells apart, in the order of CLDR.
    pub fn plural_categories(&self) -> Vec<&'static str> {
        PLURALS
            .into_iter()
            .filter(|(category, _)| self.plurals.categories().any(|own| own == *category))
            .map(|(_, word)| word)
            .collect()
    }

    /// "a, b and c".
    pub fn list(&self, items: &[String]) -> String {
        self.list.format_to_string(items.iter().map(String::as_str))
    }

    /// The day a week begins with.
    pub fn first_weekday(&self) -> Weekday {
        self.first_weekday
    }

    /// The digits from 0 to 9.
    pub fn digits(&self) -> &[char; 10] {
        &self.digits
    }

    /// Text with its western digits in the language's own.
    pub fn in_digits(&self, text: &str) -> String {
        if self.digits[0] == '0' {
            return text.to_owned();
        }
        text.chars().map(|c| c.to_digit(10).map_or(c, |value| self.digits[value as usize])).collect()
    }
}

fn icu(date: Date) -> IcuDate<Gregorian> {
    let read = |year, month, day| IcuDate::try_new_gregorian(year, month, day);
    let (month, day) = (date.month().unsigned_abs(), date.day().unsigned_abs());
    // A `Date` is a day of the Gregorian calendar between 2000 and 2199, so the first always succeeds.
    read(i32::from(date.year()), month, day).or_else(|_| read(2000, 1, 1)).unwrap_or_else(|_| unreachable_date())
}

fn unreachable_date() -> IcuDate<Gregorian> {
    IcuDate::from_rata_die(icu::calendar::types::RataDie::new(730_120), Gregorian)
}

fn weekday(weekday: IcuWeekday) -> Weekday {
    match weekday {
        IcuWeekday::Monday => Weekday::Monday,
        IcuWeekday::Tuesday => Weekday::Tuesday,
        IcuWeekday::Wednesday => Weekday::Wednesday,
        IcuWeekday::Thursday => Weekday::Thursday,
        IcuWeekday::Friday => Weekday::Friday,
        IcuWeekday::Saturday => Weekday::Saturday,
        IcuWeekday::Sunday => Weekday::Sunday,
    }
}

/// Narrow and thin spaces as no-break spaces: fonts have those, and a line must not break there either.
fn plain(text: String) -> String {
    text.replace(['\u{202F}', '\u{2009}'], "\u{A0}")
}
