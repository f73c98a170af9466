//! Does the orthosis hold what the condition needs held, and leave free what should move?
//!
//! The verdict is computed joint by joint from the two joint tables; nothing here knows a particular condition.

mod admit;
mod contradiction;
mod forbidden;
mod reach;
mod requirement;
mod verdict;

pub use admit::{Admitted, admit, dated, table};
pub use reach::{Reach, reach};
pub use requirement::{in_force, offered, wanted};
pub use verdict::{Fit, Grade, PhaseVerdict, Verdict, VerdictLine};

use crate::content::{Condition, Factor, Measured, Orthosis, Phase, Regime, Requirement};
use crate::ids::{ConditionId, FactorId};

/// What is judged.
#[derive(Clone, Copy)]
pub struct Question<'a> {
    pub orthosis: &'a Orthosis,
    pub findings: &'a [Measured],
    pub factors: &'a [(FactorId, &'a Factor)],
}

/// The verdict on one phase.
pub fn judge_phase(question: Question<'_>, phase: &Phase) -> PhaseVerdict {
    let mut lines = Vec::new();
    let asked: Vec<&Requirement> = phase.all_requirements().collect();
    for requirement in &phase.requires {
        lines.extend(requirement::judge(question, requirement, &asked));
    }
    let mut ways = Vec::new();
    for one in &phase.one_of {
        let (way, own) = requirement::judge_ways(question, one);
        ways.extend(way);
        lines.extend(own);
    }
    for forbidden in &phase.never {
        lines.extend(forbidden::judge(question, forbidden));
    }
    lines.extend(requirement::cast(question, phase));
    lines.extend(requirement::not_asked_for(question, &requirement::holding(question, phase, ways)));
    lines.extend(requirement::substances(question));
    PhaseVerdict::new(phase.id.clone(), lines)
}

/// The verdict on all phases of a condition in which the orthosis is worn.
pub fn judge(question: Question<'_>, id: &ConditionId, condition: &Condition) -> Verdict {
    let worn = |phase: &&Phase| phase.wear != Regime::Off;
    Verdict {
        condition: id.clone(),
        phases: condition.phases.iter().filter(worn).map(|phase| judge_phase(question, phase)).collect(),
    }
}
