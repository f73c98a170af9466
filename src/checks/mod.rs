//! Does the orthosis hold what the condition needs held, and leave free what should move?
//!
//! The verdict is computed joint by joint from the two joint tables; nothing here knows a particular condition.

mod admit;
mod forbidden;
mod reach;
mod requirement;
mod verdict;

pub use admit::{Admitted, admit, table};
pub use reach::{Reach, reach};
pub use verdict::{Fit, Grade, PhaseVerdict, Verdict, VerdictLine};

use crate::content::{Condition, Factor, Measured, Orthosis, Phase};
use crate::ids::FactorId;

/// What is judged.
#[derive(Clone, Copy)]
pub struct Question<'a> {
    pub condition: &'a Condition,
    pub orthosis: &'a Orthosis,
    pub findings: &'a [Measured],
    pub factors: &'a [(FactorId, &'a Factor)],
}

/// The verdict on one phase.
pub fn judge_phase(question: Question<'_>, phase: &Phase) -> PhaseVerdict {
    let mut lines = Vec::new();
    for requirement in &phase.requires {
        lines.extend(requirement::judge(question, requirement));
    }
    for forbidden in &phase.never {
        lines.extend(forbidden::judge(question, forbidden));
    }
    lines.extend(requirement::not_asked_for(question, phase));
    lines.extend(requirement::materials(question));
    PhaseVerdict::new(phase.id.clone(), lines)
}

/// The verdict on all phases in which the orthosis is worn.
pub fn judge(question: Question<'_>) -> Verdict {
    let worn = |phase: &&Phase| phase.wear != crate::content::Regime::Off;
    Verdict {
        phases: question.condition.phases.iter().filter(worn).map(|phase| judge_phase(question, phase)).collect(),
    }
}
