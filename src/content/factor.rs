//! Factors: what is particular about this person, and what it changes.

use std::collections::BTreeMap;

use super::activity::{Cap, Demand, Gate};
use super::basis::Basis;
use super::orthosis::Substance;
use crate::body::Build;
use crate::ids::{MessageId, WearPatternId};
use crate::source::{choice, record};
use crate::units::{Minutes, TimesPerDay};

choice! {
    /// The part of the sheet that a piece of advice stands in.
    pub enum SheetArea ("part of the sheet") {
        Skin = "skin",
        OnOff = "on-off",
        Daily = "daily",
        Move = "move",
        Care = "care",
        Wear = "wear",
    }
}

choice! {
    /// How large the print is.
    pub enum PrintSize ("print size") {
        /// 12 point.
        Standard = "standard",
        /// 18 point.
        Large = "large",
        /// 24 point.
        Giant = "giant",
    }
}

record! {
    /// Something about the person that changes numbers or text. Of several, the stricter wins.
    pub struct Factor ("a factor") {
        /// A gentler pattern of breaking in.
        pub break_in: Option<WearPatternId>,
        /// How long a mark may stay.
        pub mark_limit: Option<Minutes>,
        /// Skin checks a day.
        pub skin_checks: Option<TimesPerDay>,
        /// Most exercises at a time.
        pub exercises: Option<TimesPerDay>,
        /// Limits of demand in every phase.
        pub limits: BTreeMap<Demand, Cap>,
        /// Substances that must not touch this person.
        pub excludes: Vec<Substance>,
        /// Nobody helps with putting it on: the one-handed way is printed.
        pub one_handed: bool,
        /// There is no other hand to do things with.
        pub no_other_hand: bool,
        /// Somebody lives with them who can lend a hand.
        pub helper: bool,
        /// The print is at least this large.
        pub print: Option<PrintSize>,
        /// How the hand is drawn.
        pub build: Option<Build>,
        /// Phases last to the late end of their window.
        pub late_end: bool,
        /// Gates that stay shut in every phase.
        pub waits: Vec<Gate>,
        /// Sentences for the sheet, by part. Messages: `factor-ID`.
        pub advice: BTreeMap<SheetArea, MessageId>,
        pub because: String,
        pub source: Basis,
    }
}
