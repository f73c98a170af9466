//! The case file as its author writes it.

use super::text::{Note, Reason, Text};
use crate::body::{Direction, Finger, Joint, JointName, Position, Side};
use crate::content::{BreakInStep, PrintSize, Regime};
use crate::ids::{ActivityId, ConditionId, ExerciseId, FactorId, OrthosisId, PhaseId, StepId, WearPatternId};
use crate::language::LanguageTag;
use crate::source::{At, FromNode, Node, Reader, choice, record};
use crate::units::{Date, DayCount, Degrees, Minutes, Misread, Repetitions, Revision, Seconds, TimeOfDay, TimesPerDay};

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
    /// The paper.
    pub enum Paper ("paper size") {
        A4 = "a4",
        /// US Letter.
        Letter = "letter",
    }
}

impl Paper {
    /// What everybody calls it (ISO 216 and ANSI Y14.1), the same in all languages.
    pub fn name(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
        }
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
        pub joint: JointName,
        /// Such as `extension 10 deg`; where a joint is blocked, the angle at which it is stopped.
        pub at: Position,
    }
}

record! {
    /// A phase that begins only on the therapist's word, and has begun. One that begins on the day of the fitting is the
    /// first of the case: a second orthosis, fitted for a later phase.
    pub struct Begun ("a phase that has begun") {
        pub phase: At<PhaseId>,
        pub on: At<Date>,
    }
}

record! {
    /// How long a phase lasts by the surgeon's protocol.
    pub struct PhaseLength ("the length of a phase") {
        pub phase: At<PhaseId>,
        pub lasts: At<DayCount>,
    }
}

record! {
    /// The surgeon's written protocol that this case follows, with its numbers.
    pub struct Protocol ("the protocol") {
        /// What it is called, or whose written orders it is. For the record.
        pub name: Text,
        pub lengths: Vec<PhaseLength>,
        pub angles: Vec<At<JointAngle>>,
    }
}

record! {
    /// A second condition of the same hand, treated with the same orthosis.
    pub struct OtherCondition ("another condition") {
        pub condition: At<ConditionId>,
        pub protocol: Option<At<Protocol>>,
        pub begun: Vec<Begun>,
    }
}

record! {
    /// The other hand, when both are treated: fitted and reviewed on the same days.
    pub struct OtherHand ("the other hand") {
        pub condition: At<ConditionId>,
        pub finger: Option<At<Finger>>,
        pub protocol: Option<At<Protocol>>,
        pub other_conditions: Vec<OtherCondition>,
        pub orthosis: At<OrthosisId>,
        pub angles: Vec<At<JointAngle>>,
        pub begun: Vec<Begun>,
        pub findings: Vec<At<Finding>>,
        pub overrides: Vec<At<Override>>,
    }
}

record! {
    /// Whom to call.
    pub struct Clinic ("the clinic") {
        pub name: Option<Text>,
        /// Where it is, on one line.
        pub address: Option<Text>,
        pub telephone: Option<Text>,
        /// When the telephone is answered, in the patient's language.
        pub hours: Option<Text>,
        /// The emergency number where the patient lives.
        pub emergency: Option<Text>,
    }
}

impl Clinic {
    /// Line by line what it says itself, and else what `other` says.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        Self {
            name: self.name.or(other.name),
            address: self.address.or(other.address),
            telephone: self.telephone.or(other.telephone),
            hours: self.hours.or(other.hours),
            emergency: self.emergency.or(other.emergency),
        }
    }
}

choice! {
    /// How much a reminder says.
    pub enum ReminderDetail ("detail of the reminders") {
        /// Nothing of what is treated, what with, or whose hand it is: others can read a locked screen.
        None = "none",
        /// The orthosis, the hand, the hours, the exercises with their doses, and the person's name.
        Full = "full",
    }
}

record! {
    /// The reminders that go into the calendar of a telephone.
    pub struct ReminderWishes ("the reminders") {
        /// `none` when not said.
        pub detail: Option<ReminderDetail>,
        /// 0 for the first file that is handed out; one more each time a changed one follows it, so that calendars take
        /// it for the newer one.
        pub revision: Option<Revision>,
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

choice! {
    /// Who reads the letter.
    pub enum LetterReader ("reader of the letter") {
        Carer = "carer",
        Teacher = "teacher",
        Employer = "employer",
    }
}

choice! {
    /// How much of the person's health the letter tells.
    pub enum LetterDetail ("amount of detail") {
        /// Dates, and what this hand may do.
        None = "none",
        /// Also the hours it is worn.
        Plan = "plan",
        /// Also what it is for, and why a job has to wait.
        Full = "full",
    }
}

record! {
    /// A letter for somebody who helps, teaches or employs the person.
    pub struct Letter ("the letter") {
        /// Who reads it: a carer when not said.
        pub to: Option<LetterReader>,
        /// How much it tells of the person's health: nothing when not said.
        pub detail: Option<LetterDetail>,
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
        /// The affected finger, for conditions and orthoses of one finger.
        pub finger: Option<At<Finger>>,
        /// The surgeon's protocol, for conditions that it rules.
        pub protocol: Option<At<Protocol>>,
        /// Further conditions of the same hand under the same orthosis.
        pub other_conditions: Vec<OtherCondition>,
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
        /// How the reminders are made, where any are asked for.
        pub reminders: Option<ReminderWishes>,
        /// The therapist's own words in Markdown: bold, lists and links.
        pub note: Option<At<Note>>,
        /// The letter to a helper that `--sheets letter` makes.
        pub letter: Option<Letter>,
        /// Values set otherwise than the plan would, each with its reason.
        pub overrides: Vec<At<Override>>,
        /// The other hand, when both are treated.
        pub other_hand: Option<At<OtherHand>>,
    }
}

impl CaseFile {
    /// Angles of "the affected finger" become angles of the finger that the case names.
    pub fn name_finger(&mut self) {
        let Some(finger) = self.finger.as_ref().map(|finger| finger.value) else { return };
        let protocols = self
            .protocol
            .iter_mut()
            .chain(self.other_conditions.iter_mut().filter_map(|other| other.protocol.as_mut()));
        let angles = protocols.flat_map(|protocol| &mut protocol.value.angles).chain(&mut self.angles);
        angles.for_each(|angle| angle.value.joint = angle.value.joint.for_finger(finger));
    }

    /// The case of the other hand: what it says itself, and what both hands share.
    pub fn of_other_hand(&self) -> Option<Self> {
        let other = self.other_hand.as_ref()?.value.clone();
        Some(Self {
            hand: self.hand.other(),
            condition: other.condition,
            finger: other.finger,
            protocol: other.protocol,
            other_conditions: other.other_conditions,
            orthosis: other.orthosis,
            angles: other.angles,
            begun: other.begun,
            findings: other.findings,
            overrides: other.overrides,
            other_hand: None,
            ..self.clone()
        })
    }
}
