//! Positions that must be impossible in the orthosis.

use super::reach::{hold_of, reach};
use super::requirement::offered;
use super::{Grade, Question, VerdictLine};
use crate::content::{Forbidden, Otherwise};

/// One line: the position is impossible (met), or it can be reached. It is impossible as soon as one of its joints
/// cannot come there.
pub fn judge(question: Question<'_>, forbidden: &Forbidden) -> Vec<VerdictLine> {
    let Some(first) = forbidden.positions.first() else { return Vec::new() };
    let blocking = forbidden.positions.iter().find(|position| {
        reach(question, position.joint, position.range.axis()).is_none_or(|reach| !reach.range.meets(position.range))
    });
    let shown: Vec<String> =
        forbidden.positions.iter().map(|position| format!("{} in {}", position.joint, position.range)).collect();
    let (joint, offered, result) = match blocking {
        Some(position) => (
            position.joint,
            format!("{} {}", position.joint, offered(hold_of(question.orthosis, position.joint))),
            Grade::Met,
        ),
        None => {
            let free: Vec<String> = forbidden
                .positions
                .iter()
                .map(|position| format!("{} {}", position.joint, offered(hold_of(question.orthosis, position.joint))))
                .collect();
            let result = match forbidden.otherwise.unwrap_or(Otherwise::Misfit) {
                Otherwise::Misfit => Grade::Misfit,
                Otherwise::Unsafe => Grade::Unsafe,
            };
            (first.joint, free.join(", "), result)
        }
    };
    vec![VerdictLine {
        joint: Some(joint),
        wanted: format!("must be impossible: {}", shown.join(" with ")),
        offered,
        result,
        because: forbidden.because.clone(),
        structures: forbidden.structures.clone(),
        basis: forbidden.source.clone(),
    }]
}
