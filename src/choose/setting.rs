//! The angles a therapist would set an orthosis to for a phase.

use std::fmt;

use crate::body::{JointName, MotionRange, Position};
use crate::checks::{Grade, Question, in_force, judge_phase};
use crate::content::{Factor, Hold, Measured, Orthosis, Phase, Requirement};
use crate::ids::FactorId;
use crate::units::Degrees;

/// An angle that differs from the usual one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SetAngle {
    pub joint: JointName,
    pub at: Position,
}

impl fmt::Display for SetAngle {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} at {}", self.joint, self.at)
    }
}

/// The orthosis set as well as it can be for a phase, and the angles that had to change. An angle changes only when the
/// verdict gets better by it.
pub fn best_setting(
    orthosis: &Orthosis,
    phase: &Phase,
    findings: &[Measured],
    factors: &[(FactorId, &Factor)],
) -> (Orthosis, Vec<SetAngle>) {
    let mut best = orthosis.clone();
    let mut set = Vec::new();
    let names: Vec<JointName> = orthosis.joints.keys().copied().collect();
    for name in names {
        let question = Question { orthosis: &best, findings, factors };
        let wanted: Vec<Requirement> = in_force(question, phase)
            .into_iter()
            .chain(phase.one_of.iter().flat_map(|one| &one.ways).flat_map(|way| &way.requires))
            .filter(|requirement| requirement.need.asks())
            .filter(|requirement| requirement.joint.joints().iter().any(|joint| name.joints().contains(joint)))
            .cloned()
            .collect();
        for requirement in &wanted {
            for at in candidates(best.joints.get(&name), requirement) {
                let mut changed = best.clone();
                if let Some(hold) = changed.joints.get_mut(&name) {
                    hold.set(at);
                }
                if faults(&changed, phase, findings, factors) < faults(&best, phase, findings, factors) {
                    set.retain(|known: &SetAngle| known.joint != name || known.at.axis() != at.axis());
                    set.push(SetAngle { joint: name, at });
                    best = changed;
                }
            }
        }
    }
    (best, set)
}

/// How bad a setting is: unsafe lines, misfits, remarks.
fn faults(
    orthosis: &Orthosis,
    phase: &Phase,
    findings: &[Measured],
    factors: &[(FactorId, &Factor)],
) -> (usize, usize, usize) {
    let verdict = judge_phase(Question { orthosis, findings, factors }, phase);
    (verdict.count(Grade::Unsafe), verdict.count(Grade::Misfit), verdict.count(Grade::Remark))
}

/// The angles worth trying: in the middle of what is wanted, as far as the joint can be set there.
fn candidates(hold: Option<&Hold>, requirement: &Requirement) -> Vec<Position> {
    let Some(adjustable) = hold.and_then(Hold::adjustable) else { return Vec::new() };
    let wanted =
        requirement.within.iter().copied().chain(requirement.stops.iter().map(|stop| MotionRange::at(stop.at)));
    wanted
        .filter_map(|range| {
            let can = adjustable.iter().find(|can| can.axis() == range.axis())?;
            let (from, to) = (range.from().max(can.from()), range.to().min(can.to()));
            // Where the two do not meet, the nearest end of what can be set.
            let middle = if from <= to { middle(from, to) } else { range.from().clamp(can.from(), can.to()) };
            Some(Position::signed(range.axis(), middle))
        })
        .collect()
}

/// Between two angles, on five degrees where there is room.
fn middle(from: Degrees, to: Degrees) -> Degrees {
    let half = from.tenths() + (to.tenths() - from.tenths()) / 2;
    Degrees::whole((half / 50) * 5).clamp(from, to)
}
