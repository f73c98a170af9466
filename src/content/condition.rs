//! Conditions: what must be held in which phase, and what is never safe.

use std::collections::BTreeMap;

use super::activity::{Cap, Demand};
use super::basis::Basis;
use super::exercise::{ExerciseAim, LoadClass, Movement};
use super::wear::{Regime, Washing};
use crate::body::{Direction, Joint, JointName, MotionRange, Stop};
use crate::ids::{MessageId, PhaseId, SourceKey, StructureId, WearPatternId};
use crate::source::{choice, record};
use crate::units::{DayCount, Degrees, Mass};

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
    /// How strongly a joint's holding is asked for.
    pub enum Need ("need") {
        Must = "must",
        Should = "should",
        /// May be covered at little cost.
        May = "may",
        ShouldBeFree = "should-be-free",
        MustBeFree = "must-be-free",
    }
}

choice! {
    /// In which way the joint is to be held.
    pub enum Wanted ("way of holding") {
        /// Does not move, or only inside the range given.
        Still = "still",
        /// Steadied; a soft support is enough.
        Steady = "steady",
        /// Free to move, save that the stops given hold.
        Stopped = "stopped",
    }
}

choice! {
    /// What an unmet need means.
    pub enum Otherwise ("`misfit` or `unsafe`") {
        Misfit = "misfit",
        Unsafe = "unsafe",
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
    /// A finding that a requirement depends on: it holds from this angle up, and below the other one.
    pub struct FindingTest ("a test of a finding") {
        pub joint: Joint,
        pub motion: Direction,
        pub at_least: Degrees,
        /// Not from here on.
        pub below: Option<Degrees>,
    }
}

record! {
    /// What one joint needs in a phase.
    pub struct Requirement ("a requirement") {
        pub joint: JointName,
        pub need: Need,
        /// In which way; not given for joints that should be free.
        pub hold: Option<Wanted>,
        /// The ranges it may be held in.
        pub within: Vec<MotionRange>,
        /// Directions that must be stopped, and where.
        pub stops: Vec<Stop>,
        /// Only when a finding says so.
        pub when: Option<FindingTest>,
        /// What it means when the need is not met; `misfit` when not said.
        pub otherwise: Option<Otherwise>,
        /// Directions that an exercise may move a held joint in, with the orthosis off.
        pub moved_in_exercise: Vec<Direction>,
        pub structures: Vec<StructureId>,
        /// Why, for the clinician. English.
        pub because: String,
        pub source: Basis,
    }
}

record! {
    /// A joint in a range.
    pub struct JointPosition ("a joint's position") {
        pub joint: Joint,
        pub range: MotionRange,
    }
}

record! {
    /// Positions that must be impossible in the orthosis: all of them at the same time.
    pub struct Forbidden ("a forbidden position") {
        pub positions: Vec<JointPosition>,
        pub otherwise: Option<Otherwise>,
        pub structures: Vec<StructureId>,
        pub because: String,
        pub source: Basis,
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
        /// Whether risky activities wait until this phase is over.
        pub no_risk: bool,
        pub source: Basis,
    }
}

record! {
    /// One phase of a condition.
    pub struct Phase ("a phase") {
        pub id: PhaseId,
        /// How long; open-ended when not said.
        pub lasts: Option<DayCount>,
        pub begins: Begins,
        pub decided_by: Decider,
        pub wear: Regime,
        /// The pattern of weaning, when this phase is one.
        pub weaning: Option<WearPatternId>,
        pub washing: Washing,
        /// Protects healing tissue: shortening it or loosening its wear is a matter of safety.
        pub protective: bool,
        pub requires: Vec<Requirement>,
        pub never: Vec<Forbidden>,
        pub exercises: ExerciseRules,
        pub activities: ActivityLimits,
        pub source: Basis,
    }
}

record! {
    /// ICD-10-CM codes by side.
    pub struct Codes ("the codes of a condition") {
        pub right: String,
        pub left: String,
        /// For the fact sheet, where no side is meant.
        pub unspecified: String,
    }
}

record! {
    /// A condition. Messages: `condition-ID-name`, `condition-ID-what`, `condition-ID-aim`.
    pub struct Condition ("a condition") {
        pub icd10cm: Codes,
        pub aim: Aim,
        pub structures: Vec<StructureId>,
        /// The pattern of breaking in; the general one when not said.
        pub break_in: Option<WearPatternId>,
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

/// Measured at a joint: how far it goes in a direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Measured {
    pub joint: Joint,
    pub motion: Direction,
    pub angle: Degrees,
}

impl FindingTest {
    /// Whether one of the findings meets the test.
    pub fn holds(&self, findings: &[Measured]) -> bool {
        findings.iter().any(|finding| {
            finding.joint == self.joint
                && finding.motion == self.motion
                && finding.angle >= self.at_least
                && self.below.is_none_or(|below| finding.angle < below)
        })
    }
}

impl Requirement {
    /// What an unmet need means.
    pub fn consequence(&self) -> Otherwise {
        self.otherwise.unwrap_or(Otherwise::Misfit)
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
