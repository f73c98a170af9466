//! What was answered, before it is a file.

use crate::body::{Finger, JointName, Position, Side};
use crate::choose::SetAngle;
use crate::content::{Measured, PrintSize};
use crate::ids::{ActivityId, ConditionId, FactorId, OrthosisId, PhaseId};
use crate::language::LanguageTag;
use crate::units::{Date, DayCount};

/// The surgeon's protocol with its numbers.
#[derive(Clone, Debug)]
pub struct Protocol {
    pub name: String,
    pub lengths: Vec<(PhaseId, DayCount)>,
    pub angles: Vec<(JointName, Position)>,
}

/// Whom to call, where no clinic's file says it; an empty line was not answered.
#[derive(Clone, Debug, Default)]
pub struct Clinic {
    pub name: String,
    pub telephone: String,
    pub emergency: String,
}

/// A case as it was answered.
#[derive(Clone, Debug)]
pub struct Draft {
    pub condition: ConditionId,
    pub hand: Side,
    pub finger: Option<Finger>,
    /// The phase that begins with the fitting, when it is not the first.
    pub begun: Option<PhaseId>,
    pub findings: Vec<Measured>,
    pub orthosis: OrthosisId,
    /// Others that fit, best first.
    pub also_fit: Vec<OrthosisId>,
    pub angles: Vec<SetAngle>,
    pub protocol: Option<Protocol>,
    pub fitted: Date,
    pub review: Date,
    pub clinic: Option<Clinic>,
    pub activities: Vec<ActivityId>,
    pub factors: Vec<FactorId>,
    pub language: LanguageTag,
    pub print: PrintSize,
    /// May be empty.
    pub name: String,
    /// May be empty.
    pub reference: String,
}
