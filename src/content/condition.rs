//! Conditions: what must be held in which phase, and what is never safe.

use std::collections::BTreeMap;

use super::activity::{Cap, Demand, Gate};
use super::basis::Basis;
use super::exercise::{ExerciseAim, LoadClass, Movement};
use super::requirement::{Forbidden, OneOf, Requirement};
use super::wear::{Regime, StretchDose, Washing};
use crate::body::{Direction, Finger, JointName, MotionRange, Side, View};
use crate::ids::{ExerciseId, MessageId, PhaseId, SourceKey, StructureId, WearPatternId};
use crate::source::{choice, record};
use crate::units::{DayCount, Mass};

choice! {
    /// What the orthosis is for.
    pub enum Aim ("aim") {
        Heal = "heal",
        Protect = "protect",
        Rest = "rest",
        Position = "position",
        Function = "function",
        Prevent = "prevent",
        /// Comfort and use; no cure is promised.
        Ease = "ease",
    }
}

choice! {
    /// How a phase begins.
    pub enum Begins ("beginning of a phase") {
        /// On the day after the phase before it ends.
        ByDate = "by-date",
        /// Only when the therapist says so; printed without a date.
        AfterReview = "after-review",
    }
}

choice! {
    /// Who decides that a phase is over.
    pub enum Decider ("who decides") {
        Time = "time",
        Person = "person",
        Therapist = "therapist",
        Surgeon = "surgeon",
    }
}

record! {
    /// A movement that no exercise may make.
    pub struct Banned ("a banned movement") {
        pub joint: JointName,
        /// All directions when none is named.
        pub directions: Vec<Direction>,
        /// Only exercises of this load class or more.
        pub from_load: Option<LoadClass>,
    }
}

record! {
    /// What exercises a phase allows.
    pub struct ExerciseRules ("the exercise rules of a phase") {
        /// The heaviest load class.
        pub most: LoadClass,
        /// Structures that no exercise may stress.
        pub protects: Vec<StructureId>,
        pub bans: Vec<Banned>,
        /// Exercises that load what the phase protects, and that the clinician may order all the same.
        pub on_order: Vec<ExerciseId>,
        /// What exercises are for in this phase, first the most important.
        pub aims: Vec<ExerciseAim>,
        /// Joints that matter most in this phase, first the most important; exercises that move them come first.
        pub joints: Vec<JointName>,
        pub source: Basis,
    }
}

record! {
    /// What activities a phase allows.
    pub struct ActivityLimits ("the activity limits of a phase") {
        /// The highest level of each kind; a kind that is not named is not limited.
        pub demands: BTreeMap<Demand, Cap>,
        /// The most mass in that hand.
        pub mass: Mass,
        /// Gates that stay shut until this phase is over.
        pub waits: Vec<Gate>,
        pub source: Basis,
    }
}

record! {
    /// One phase of a condition.
    pub struct Phase ("a phase") {
        pub id: PhaseId,
        /// How long; open-ended when not said.
        pub lasts: Option<DayCount>,
        /// The late end of the usual window, for those who heal slowly.
        pub lasts_up_to: Option<DayCount>,
        pub begins: Begins,
        pub decided_by: Decider,
        pub wear: Regime,
        /// The pattern of weaning, when this phase is one.
        pub weaning: Option<WearPatternId>,
        /// The bouts of wear, when it is worn to stretch.
        pub stretch: Option<StretchDose>,
        pub washing: Washing,
        /// How the part is held while the orthosis is off, where washing asks for it. Message: `support-ID`.
        pub support: Option<MessageId>,
        /// Protects healing tissue: shortening it or loosening its wear is a matter of safety.
        pub protective: bool,
        pub requires: Vec<Requirement>,
        /// Needs that are met in one of several ways.
        pub one_of: Vec<OneOf>,
        pub never: Vec<Forbidden>,
        pub exercises: ExerciseRules,
        pub activities: ActivityLimits,
        pub source: Basis,
    }
}

record! {
    /// ICD-10-CM codes by side.
    pub struct SideCodes ("the codes of a finger") {
        pub right: String,
        pub left: String,
    }
}

record! {
    /// ICD-10-CM codes by side, and by finger where codes count the finger.
    pub struct Codes ("the codes of a condition") {
        pub right: String,
        pub left: String,
        /// For the fact sheet, where no side is meant.
        pub unspecified: String,
        pub fingers: BTreeMap<Finger, SideCodes>,
    }
}

record! {
    /// A phase whose length the surgeon's protocol sets.
    pub struct ProtocolLength ("a length that the protocol sets") {
        pub phase: PhaseId,
        /// What protocols give: less or more than this is a slip of the pen.
        pub at_least: DayCount,
        pub at_most: DayCount,
    }
}

record! {
    /// A joint whose angle the surgeon's protocol sets.
    pub struct ProtocolAngle ("an angle that the protocol sets") {
        pub joint: JointName,
        /// What protocols give.
        pub within: Vec<MotionRange>,
    }
}

record! {
    /// Surgeons' protocols differ: no case is built without the name of the one that is followed, and its numbers.
    pub struct ProtocolNeeds ("what the protocol has to say") {
        pub lengths: Vec<ProtocolLength>,
        pub angles: Vec<ProtocolAngle>,
        pub because: String,
        pub source: Basis,
    }
}

record! {
    /// A condition. Messages: `condition-ID-name`, `condition-ID-what`, `condition-ID-aim`.
    pub struct Condition ("a condition") {
        pub icd10cm: Codes,
        pub aim: Aim,
        pub structures: Vec<StructureId>,
        /// The finger that it always concerns, when it is always the same.
        pub finger: Option<Finger>,
        /// From where its structures show best together; each from where it shows best by itself when not said.
        pub view: Option<View>,
        /// The pattern of breaking in; the general one when not said.
        pub break_in: Option<WearPatternId>,
        /// What a surgeon's written protocol has to say before a plan can be made.
        pub protocol: Option<ProtocolNeeds>,
        /// Signs to print besides those on every sheet.
        pub signs: Vec<MessageId>,
        pub phases: Vec<Phase>,
        /// How sure this file is, for the clinician. English.
        pub confidence: Option<String>,
        /// Strength of evidence that the orthosis itself helps. English.
        pub evidence: String,
        /// The publications that the evidence stands in.
        pub evidence_from: Vec<SourceKey>,
        pub source: Basis,
    }
}

impl Banned {
    /// Whether it forbids this movement at this load.
    pub fn forbids(&self, movement: &Movement, load: LoadClass) -> bool {
        let joints = self.joint.joints();
        load >= self.from_load.unwrap_or(LoadClass::Position)
            && movement.joint.joints().iter().any(|joint| joints.contains(joint))
            && (self.directions.is_empty()
                || movement.directions.iter().any(|direction| self.directions.contains(direction)))
    }
}

impl Codes {
    /// The code for one hand, and for one finger where codes count it.
    pub fn of(&self, side: Side, finger: Option<Finger>) -> &str {
        let own = finger.and_then(|finger| self.fingers.get(&finger));
        match (side, own) {
            (Side::Right, Some(codes)) => &codes.right,
            (Side::Left, Some(codes)) => &codes.left,
            (Side::Right, None) => &self.right,
            (Side::Left, None) => &self.left,
        }
    }
}

impl Phase {
    /// Every requirement of the phase, those of alternative ways among them.
    pub fn all_requirements(&self) -> impl Iterator<Item = &Requirement> {
        self.requires.iter().chain(self.one_of.iter().flat_map(|one| &one.ways).flat_map(|way| &way.requires))
    }
}

impl Condition {
    /// Whether it concerns one finger, which the case has to name.
    pub fn needs_finger(&self) -> bool {
        let mut needs = false;
        self.clone().each_name(&mut |name| needs |= name.needs_finger());
        needs
    }

    /// The same condition of a known finger.
    #[must_use]
    pub fn for_finger(&self, finger: Finger) -> Self {
        let mut own = self.clone();
        own.each_name(&mut |name| *name = name.for_finger(finger));
        own
    }

    fn each_name(&mut self, visit: &mut dyn FnMut(&mut JointName)) {
        for phase in &mut self.phases {
            let ways = phase.one_of.iter_mut().flat_map(|one| &mut one.ways);
            for requirement in phase.requires.iter_mut().chain(ways.flat_map(|way| &mut way.requires)) {
                visit(&mut requirement.joint);
                if let Some(test) = &mut requirement.when {
                    visit(&mut test.joint);
                }
            }
            phase
                .never
                .iter_mut()
                .flat_map(|never| &mut never.positions)
                .for_each(|position| visit(&mut position.joint));
            phase.exercises.bans.iter_mut().for_each(|banned| visit(&mut banned.joint));
            phase.exercises.joints.iter_mut().for_each(&mut *visit);
        }
        if let Some(protocol) = &mut self.protocol {
            protocol.angles.iter_mut().for_each(|angle| visit(&mut angle.joint));
        }
    }
}
