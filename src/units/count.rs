//! Bare counts: things that have no unit.

use std::fmt;
use std::str::FromStr;

use super::Misread;

macro_rules! count {
    ($(#[$meta:meta])* $name:ident, $what:literal, $least:literal ..= $most:literal) => {
        $(#[$meta])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        pub struct $name(u8);

        impl $name {
            pub const LEAST: u8 = $least;
            pub const MOST: u8 = $most;

            /// The count, moved into its range.
            pub fn clamped(count: u8) -> Self {
                Self(count.clamp($least, $most))
            }

            pub const fn get(self) -> u8 {
                self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{}", self.0)
            }
        }

        impl FromStr for $name {
            type Err = Misread;

            fn from_str(text: &str) -> Result<Self, Misread> {
                match text.trim().parse::<u8>() {
                    Ok(count @ $least..=$most) => Ok(Self(count)),
                    _ => Err(Misread::new(
                        format!("`{}` is no {}", text.trim(), $what),
                        format!("a whole number from {} to {}", $least, $most),
                    )),
                }
            }
        }
    };
}

count!(
    /// How often a movement is repeated in one session, 1 to 50.
    Repetitions, "number of repetitions", 1..=50
);
count!(
    /// How many sessions a day, 1 to 12.
    TimesPerDay, "number of times a day", 1..=12
);
count!(
    /// A level of demand on the hand: 0 none, 1 light or brief, 2 moderate or frequent, 3 the hallmark of the task.
    Level, "level of demand", 0..=3
);
count!(
    /// A temperature of water in whole degrees Celsius, 0 to 100.
    Celsius, "temperature of water", 0..=100
);
count!(
    /// How often a thing that was handed out has been changed since, 0 to 99.
    Revision, "number of a revision", 0..=99
);
count!(
    /// The most characters that fit somewhere, 1 to 200.
    Characters, "number of characters", 1..=200
);
count!(
    /// A part of the type size in hundredths, 0 to 250.
    Hundredths, "part of the type size", 0..=250
);
count!(
    /// A limit of how a text reads: a score, words in a sentence, letters in a word; 0 to 200.
    Limit, "limit of reading", 0..=200
);
