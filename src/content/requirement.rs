//! What joints need: held, free, one way of several, and what is never safe.

use super::basis::Basis;
use super::orthosis::Segment;
use crate::body::{Direction, Joint, JointName, MotionRange, Stop};
use crate::ids::StructureId;
use crate::source::{choice, record};
use crate::units::Degrees;

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

impl Need {
    /// Whether a joint is asked to be held.
    pub const fn asks(self) -> bool {
        matches!(self, Self::Must | Self::Should)
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
        /// Moves with its neighbours, but so much straighter or more bent than they are.
        Relative = "relative",
        /// Moves together with a neighbour, or through another joint.
        Coupled = "coupled",
        /// Pulled towards more movement.
        Mobilised = "mobilised",
    }
}

choice! {
    /// What an unmet need means.
    pub enum Otherwise ("`misfit` or `unsafe`") {
        Misfit = "misfit",
        Unsafe = "unsafe",
    }
}

record! {
    /// A finding that a requirement depends on: it holds from this angle up, and below the other one.
    pub struct FindingTest ("a test of a finding") {
        pub joint: JointName,
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
        /// The ranges it may be held in; with `relative`, by how much it may differ from its neighbours.
        pub within: Vec<MotionRange>,
        /// Directions that must be stopped, and where.
        pub stops: Vec<Stop>,
        /// With `mobilised`: the direction that is to be gained.
        pub towards: Option<Direction>,
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
    /// One way to meet a need that several ways meet: all of its requirements together.
    pub struct Way ("one of several ways") {
        pub requires: Vec<Requirement>,
        /// A piece that acts on this segment and holds no joint.
        pub presses: Option<Segment>,
    }
}

record! {
    /// A need that is met in one of several ways.
    pub struct OneOf ("a choice of ways") {
        pub ways: Vec<Way>,
        /// What it means when none is met; `misfit` when not said.
        pub otherwise: Option<Otherwise>,
        /// Why, for the clinician. English.
        pub because: String,
        pub source: Basis,
    }
}

record! {
    /// A joint in a range; of several joints, any.
    pub struct JointPosition ("a joint's position") {
        pub joint: JointName,
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
            self.joint.joints().contains(&finding.joint)
                && finding.motion == self.motion
                && finding.angle >= self.at_least
                && self.below.is_none_or(|below| finding.angle < below)
        })
    }
}

impl Requirement {
    /// Whether it is made of a person with these findings.
    pub fn applies(&self, findings: &[Measured]) -> bool {
        self.when.as_ref().is_none_or(|test| test.holds(findings))
    }

    /// What an unmet need means.
    pub fn consequence(&self) -> Otherwise {
        self.otherwise.unwrap_or(Otherwise::Misfit)
    }
}
