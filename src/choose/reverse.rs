//! The question an educator asks: which conditions does this orthosis suit, and why not the others.

use super::setting::{SetAngle, best_setting};
use crate::body::Finger;
use crate::checks::{PhaseVerdict, Question, judge_phase};
use crate::content::{Library, Orthosis, Regime};
use crate::ids::{ConditionId, PhaseId};

/// How an orthosis suits one phase of a condition.
#[derive(Clone, Debug)]
pub struct Suits {
    pub condition: ConditionId,
    pub phase: PhaseId,
    pub set: Vec<SetAngle>,
    pub verdict: PhaseVerdict,
    /// A surgeon's protocol rules this condition.
    pub protocol: bool,
}

/// Every phase of every condition in which an orthosis is worn, best first. Conditions of one finger are asked of the
/// finger given, or of the index finger as an example.
pub fn conditions_for(library: &Library, orthosis: &Orthosis, finger: Option<Finger>) -> Vec<Suits> {
    let example = finger.unwrap_or(Finger::Index);
    let orthosis = orthosis.for_finger(example);
    let mut all: Vec<Suits> = Vec::new();
    for (id, condition) in &library.conditions {
        let whole = condition.for_finger(example);
        for phase in whole.phases.iter().filter(|phase| phase.wear != Regime::Off) {
            let (set_up, set) = best_setting(&orthosis, phase, &[], &[]);
            let question = Question { orthosis: &set_up, findings: &[], factors: &[] };
            all.push(Suits {
                condition: id.clone(),
                phase: phase.id.clone(),
                set,
                verdict: judge_phase(question, phase),
                protocol: condition.protocol.is_some(),
            });
        }
    }
    all.sort_by_key(|one| one.verdict.fit);
    all
}
