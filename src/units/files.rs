//! The quantities as values of files.

use super::{
    Celsius, Characters, Date, DayCount, Degrees, Hundredths, Interval, Level, Limit, Mass, Minutes, Repetitions,
    Revision,
    Seconds, TimeOfDay, TimesPerDay,
};
use crate::source::{read_by_grammar, text_value};

text_value!(
    Degrees,
    "an angle",
    "Size of a joint angle in degrees, with the unit.",
    r"^\d{1,3}(\.\d)? ?(deg|°|degrees?)$",
    "30 deg"
);
text_value!(Date, "a date", "A day: year, month, day.", r"^\d{4}-\d{2}-\d{2}$", "2027-03-12");
text_value!(
    Interval,
    "a time between two reviews",
    "A number of months or years, with the unit.",
    r"^\d+ ?(months?|years?)$",
    "6 months",
    "1 year"
);
text_value!(
    DayCount,
    "a number of days",
    "A number of days or weeks, with the unit.",
    r"^\d+ ?(d|days?|wk|weeks?)$",
    "3 days",
    "6 weeks"
);
text_value!(TimeOfDay, "a time of day", "A time on the patient's own clock, in quotes.", r"^\d{1,2}:\d{2}$", "07:30");
text_value!(
    Minutes,
    "a length of time",
    "A length of time in hours and minutes, with units.",
    r"^\d+ ?(min|minutes?|h|hours?)( \d+ ?(min|minutes?))?$",
    "45 min",
    "1 h 30 min"
);
text_value!(Seconds, "a holding time", "A holding time in seconds, with the unit.", r"^\d+ ?(s|sec|seconds?)$", "5 s");
text_value!(Mass, "a mass", "A mass in kilograms, with the unit.", r"^\d{1,3}(\.\d)? ?kg$", "0.5 kg");

/// Counts have no unit, so a file may hold them as bare numbers.
macro_rules! count_value {
    ($type:ty, $what:literal, $describe:literal) => {
        read_by_grammar!($type, $what);

        impl schemars::JsonSchema for $type {
            fn inline_schema() -> bool {
                true
            }
            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($type).into()
            }
            fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
                schemars::json_schema!({
                    "type": "integer",
                    "minimum": <$type>::LEAST,
                    "maximum": <$type>::MOST,
                    "description": $describe,
                })
            }
        }
    };
}

count_value!(
    Level,
    "a level of demand",
    "0 none, 1 light or brief, 2 moderate or frequent, 3 the hallmark of the task."
);
count_value!(Repetitions, "a number of repetitions", "Repetitions in one session, 1 to 50.");
count_value!(TimesPerDay, "a number of times a day", "Sessions a day, 1 to 12.");
count_value!(Celsius, "a temperature", "A temperature in whole degrees Celsius.");
count_value!(Revision, "a number of a revision", "How often it has been changed since it was first handed out.");
count_value!(Characters, "a number of characters", "The most characters that fit there.");
count_value!(Hundredths, "a part of the type size", "Hundredths of the type size, 0 to 250.");
count_value!(Limit, "a limit of reading", "A score, words in a sentence or letters in a word, 0 to 200.");
