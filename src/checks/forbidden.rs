//! Positions that must be impossible in the orthosis.

use super::reach::reach;
use super::requirement::{failure, offered};
use super::{Grade, Question, VerdictLine};
use crate::body::{Joint, MotionRange};
use crate::content::{Forbidden, JointPosition, Otherwise};

/// One line: the position is impossible (met), or it can be reached. It is impossible as soon as one of its joints
/// cannot come there; of several joints under one name, all of them.
pub fn judge(question: Question<'_>, forbidden: &Forbidden) -> Vec<VerdictLine> {
    let can = |joint: Joint, range: MotionRange| {
        reach(question, joint, range.axis()).is_some_and(|reach| reach.range.meets(range))
    };
    // The joint that gets furthest stands for its group.
    let of = |position: &JointPosition| {
        let joints = position.joint.joints();
        joints.iter().copied().find(|joint| can(*joint, position.range)).or(joints.first().copied())
    };
    let Some(first) = forbidden.positions.first().and_then(of) else { return Vec::new() };
    let blocking = forbidden
        .positions
        .iter()
        .filter_map(|position| Some((of(position)?, position.range)))
        .find(|(joint, range)| !can(*joint, *range));
    let shown: Vec<String> =
        forbidden.positions.iter().map(|position| format!("{} in {}", position.joint, position.range)).collect();
    let (joint, offered, result) = match blocking {
        Some((joint, _)) => (joint, format!("{joint} {}", offered(question.orthosis.hold_of(joint))), Grade::Met),
        None => {
            let free: Vec<String> = forbidden
                .positions
                .iter()
                .filter_map(of)
                .map(|joint| format!("{joint} {}", offered(question.orthosis.hold_of(joint))))
                .collect();
            let result = failure(forbidden.otherwise.unwrap_or(Otherwise::Misfit));
            (first, free.join(", "), result)
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
