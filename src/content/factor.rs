//! Factors: what is particular about this person, and what it changes.

use std::collections::BTreeMap;

use super::activity::{Cap, Demand};
use super::basis::Basis;
use super::orthosis::Material;
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
        /// Materials that must not touch this person.
        pub excludes: Vec<Material>,
        /// Sentences for the sheet, by part. Messages: `factor-ID`.
        pub advice: BTreeMap<SheetArea, MessageId>,
        pub because: String,
        pub source: Basis,
    }
}
