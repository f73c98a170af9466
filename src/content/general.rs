//! Rules that hold for everybody, signs to watch for, and names of structures.

use super::basis::Basis;
use super::exercise::Movement;
use super::scene::Extent;
use crate::body::View;
use crate::ids::{MessageId, StructureId, WearPatternId};
use crate::source::{choice, record};
use crate::units::{Celsius, Date, Minutes, TimesPerDay};

choice! {
    /// How soon to seek help.
    pub enum TriageLevel ("level of urgency") {
        Emergency = "emergency",
        /// Telephone the clinic today.
        Today = "today",
        /// Tell at the next visit.
        Visit = "visit",
    }
}

record! {
    /// A sign to watch for. Message: `sign-ID`.
    pub struct Sign ("a sign") {
        pub id: MessageId,
        pub level: TriageLevel,
        /// Printed on every sheet; otherwise only where a condition names it.
        pub always: bool,
        /// Stands in the stop box of the first page.
        pub first_page: bool,
        pub source: Basis,
    }
}

record! {
    /// A tendon, ligament, nerve, bone or skin. English name, for the clinician.
    ///
    /// Messages: `structure-ID`, its plain name, and `structure-ID-term`, the one that students learn.
    pub struct Structure ("a structure") {
        pub id: StructureId,
        pub name: String,
        /// From where it shows best.
        pub view: View,
        /// How much of the limb it takes to see where it runs.
        pub shows: Extent,
        /// Movements that load it whenever a person makes them unguarded: an exercise that makes one says so.
        pub stressed_by: Vec<Movement>,
    }
}

record! {
    /// A clinician's confirmation of one file of content as it stood that day.
    pub struct Confirmation ("a confirmation") {
        /// Kind and id: `orthoses/ID`.
        pub item: String,
        /// Role, initials or registration, as the clinic wishes.
        pub by: String,
        pub on: Date,
        /// Of the file and its English words.
        pub hash: String,
    }
}

record! {
    /// Numbers that hold unless a condition, factor or therapist says otherwise.
    pub struct General ("the general rules") {
        /// How long a mark on the skin may stay.
        pub mark_limit: Minutes,
        /// Skin checks a day once breaking in is over.
        pub skin_checks: TimesPerDay,
        /// Time to take the orthosis off.
        pub doffing: Minutes,
        /// Time to put it on.
        pub donning: Minutes,
        /// Time for washing the hand and the skin check.
        pub washing: Minutes,
        /// Time for one exercise in a session.
        pub exercise: Minutes,
        /// Most exercises at a time.
        pub exercises: TimesPerDay,
        /// Most minutes of exercise a day.
        pub exercise_day: Minutes,
        /// Minutes after getting up, and before bed, in which nothing is asked.
        pub settling: Minutes,
        /// How long loosening may take to bring feeling or colour back.
        pub loosen_limit: Minutes,
        /// The highest water temperature for washing a thermoplastic, in degrees Celsius.
        pub wash_celsius: Celsius,
        /// Used when a condition names no pattern.
        pub break_in: WearPatternId,
        pub source: Basis,
    }
}
