//! What a joint can still reach inside an orthosis.

use super::Question;
use crate::body::{Axis, Joint, MotionRange, norms};
use crate::content::{Hold, Measured, Orthosis};
use crate::units::Degrees;

/// The stretch of an axis that a joint can still reach.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reach {
    pub range: MotionRange,
    /// Whether something firm keeps it there. A soft support eases movement but prevents none.
    pub firm: bool,
}

/// How the orthosis holds a joint; a joint it does not describe is free.
pub fn hold_of(orthosis: &Orthosis, joint: Joint) -> &Hold {
    orthosis.joints.iter().find(|(name, _)| name.joints().contains(&joint)).map_or(&Hold::Free, |(_, hold)| hold)
}

/// What the bare joint reaches: the healthy range, widened by what was measured.
fn bare(joint: Joint, axis: Axis, findings: &[Measured]) -> Option<MotionRange> {
    let mut range = norms::range(joint, axis)?;
    for finding in findings.iter().filter(|finding| finding.joint == joint && finding.motion.axis() == axis) {
        let angle = if finding.motion.is_positive() { finding.angle } else { finding.angle.reversed() };
        range = MotionRange::between(axis, range.from().min(angle), range.to().max(angle));
    }
    Some(range)
}

/// What a joint reaches on an axis inside the orthosis; None when it does not move on that axis at all.
pub fn reach(question: Question<'_>, joint: Joint, axis: Axis) -> Option<Reach> {
    let bare = bare(joint, axis, question.findings)?;
    let free = Reach { range: bare, firm: false };
    Some(match hold_of(question.orthosis, joint) {
        Hold::Immobilised { at, .. } => {
            // An axis that is not named is held where the limb rests: straight, or the nearest the joint comes to it.
            let rest = Degrees::ZERO.clamp(bare.from(), bare.to());
            let range = at.iter().find(|range| range.axis() == axis).copied();
            Reach { range: range.unwrap_or(MotionRange::between(axis, rest, rest)), firm: true }
        }
        Hold::Limited(ranges) => {
            ranges.iter().find(|range| range.axis() == axis).map_or(free, |&range| Reach { range, firm: true })
        }
        Hold::Blocked(stops) => {
            let stops: Vec<_> = stops.iter().filter(|stop| stop.at.axis() == axis).collect();
            let range = stops.iter().fold(bare, |range, stop| range.stopped_by(**stop));
            Reach { range, firm: !stops.is_empty() }
        }
        Hold::Supported | Hold::Free => free,
    })
}
