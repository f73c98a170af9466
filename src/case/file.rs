//! The case file as its author writes it.

use super::text::{Note, Reason, Text};
use crate::body::{Direction, Joint, Position, Side};
use crate::content::{BreakInStep, Regime};
use crate::ids::{ActivityId, ConditionId, ExerciseId, FactorId, OrthosisId, PhaseId, StepId, WearPatternId};
use crate::language::LanguageTag;
use crate::source::{At, FromNode, Node, Reader, choice, record};
use crate::units::{Date, DayCount, Degrees, Minutes, Misread, Repetitions, Seconds, TimeOfDay, TimesPerDay};

/// The version of the case format. This program reads version 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FormatVersion {
    One,
}

impl FromNode for FormatVersion {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        match reader.scalar(node, "a version of the case format")? {
            "1" => Some(Self::One),
            other => {
                let wrong = format!("`{other}` is no version of the case format that this program reads");
                reader.misread(node, &Misread::new(wrong, "`1`"));
                None
            }
        }
    }
}

impl schemars::JsonSchema for FormatVersion {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "FormatVersion".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "enum": [1, "1"] })
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

choice! {
    /// The paper.
    pub enum Paper ("paper size") {
        A4 = "a4",
        /// US Letter.
        Letter = "letter",
    }
}

choice! {
    /// Whether an exercise is added to the programme or left out of it.
    pub enum Use ("`add` or `leave-out`") {
        Add = "add",
        LeaveOut = "leave-out",
    }
}

record! {
    /// Who the guide is for. Both lines may be left out.
    pub struct Person ("the person") {
        /// Printed on the guide; never part of a file name.
        pub name: Option<Text>,
        /// The clinic's own number for the case; part of file names.
        pub reference: Option<Text>,
    }
}

record! {
    /// The person's day.
    pub struct DayTimes ("the person's day") {
        /// When they get up.
        pub up: TimeOfDay,
        /// When they go to bed for their main sleep. For somebody who works nights this may be in the morning.
        pub bed: TimeOfDay,
    }
}

record! {
    /// Something measured at a joint.
    pub struct Finding ("a finding") {
        pub joint: Joint,
        /// `extension` past straight is hyperextension.
        pub motion: Direction,
        /// How far it goes, in degrees.
        pub angle: Degrees,
    }
}

record! {
    /// The angle a joint is set to in this orthosis, where it differs from the usual one.
    pub struct JointAngle ("a set angle") {
        pub joint: Joint,
        /// Such as `extension 10 deg`.
        pub at: Position,
    }
}

record! {
    /// A phase that begins only on the therapist's word, and has begun.
    pub struct Begun ("a phase that has begun") {
        pub phase: At<PhaseId>,
        pub on: At<Date>,
    }
}

record! {
    /// Whom to call.
    pub struct Clinic ("the clinic") {
        pub name: Option<Text>,
        pub telephone: Option<Text>,
        /// When the telephone is answered, in the patient's language.
        pub hours: Option<Text>,
        /// The emergency number where the patient lives.
        pub emergency: Option<Text>,
    }
}

record! {
    /// One value that the therapist sets otherwise than the plan would. Name one subject: a phase, the breaking in (by
    /// pattern or day by day), an exercise, the steps or the mark limit.
    pub struct Override ("an override") {
        /// The phase that `lasts` or `wear` is about.
        pub phase: Option<At<PhaseId>>,
        /// How long that phase lasts.
        pub lasts: Option<DayCount>,
        /// When the orthosis is worn in that phase.
        pub wear: Option<Regime>,
        /// Another pattern of breaking in.
        pub break_in: Option<At<WearPatternId>>,
        /// The days of breaking in one by one: how many times, and how long each time.
        pub wears: Vec<BreakInStep>,
        /// The exercise that `use`, `repetitions`, `hold` or `times_a_day` is about.
        pub exercise: Option<At<ExerciseId>>,
        /// `add` it to the programme, or `leave-out`.
        pub r#use: Option<Use>,
        pub repetitions: Option<Repetitions>,
        /// How long each position is held.
        pub hold: Option<Seconds>,
        pub times_a_day: Option<TimesPerDay>,
        /// All steps of putting it on, in order.
        pub donning: Vec<At<StepId>>,
        /// All steps of taking it off, in order.
        pub doffing: Vec<At<StepId>>,
        /// How long a mark on the skin may stay.
        pub mark_limit: Option<Minutes>,
        /// Why. For the clinician's record; never on the patient's page.
        pub because: Reason,
        /// The therapist answers for breaking a rule of safety.
        pub accept_risk: bool,
    }
}

record! {
    /// One person, one hand, one orthosis: what a guide is made from.
    pub struct CaseFile ("a case") {
        /// The version of this format: 1.
        pub palmleaf: FormatVersion,
        pub person: Option<Person>,
        /// The hand that wears the orthosis.
        pub hand: Side,
        /// The hand the person writes with.
        pub dominant: Option<Side>,
        /// What the orthosis is for: an id that `palmleaf list conditions` shows.
        pub condition: At<ConditionId>,
        /// What was fitted: an id that `palmleaf list orthoses` shows.
        pub orthosis: At<OrthosisId>,
        /// Angles it was set to, where they differ from the usual ones.
        pub angles: Vec<At<JointAngle>>,
        /// The day it was fitted: day 1 of the plan.
        pub fitted: At<Date>,
        /// The time it was fitted; noon when not said.
        pub fitted_at: Option<TimeOfDay>,
        /// The day of the next visit.
        pub review: At<Date>,
        pub review_at: Option<TimeOfDay>,
        /// Phases that waited for the therapist's word and have begun.
        pub begun: Vec<Begun>,
        /// The patient's language: a tag that `palmleaf list languages` shows, with a region where dates need one.
        pub language: At<LanguageTag>,
        /// Print size; standard when not said.
        pub print: Option<PrintSize>,
        /// Paper; A4 when not said.
        pub paper: Option<Paper>,
        /// The person's day; up at 07:00 and to bed at 23:00 when not said.
        pub day: Option<At<DayTimes>>,
        /// What this person does all day: ids that `palmleaf list activities` shows.
        pub activities: Vec<At<ActivityId>>,
        /// What was measured.
        pub findings: Vec<At<Finding>>,
        /// What is particular about this person: ids that `palmleaf list factors` shows.
        pub factors: Vec<At<FactorId>>,
        pub clinic: Option<Clinic>,
        /// The therapist's own words in Markdown: bold, lists and links.
        pub note: Option<At<Note>>,
        /// Values set otherwise than the plan would, each with its reason.
        pub overrides: Vec<At<Override>>,
    }
}
