//! What a joint can still reach inside an orthosis.

use super::Question;
use crate::body::{Axis, Joint, MotionRange, norms};
use crate::content::{Hold, Measured, Traction};
use crate::units::Degrees;

/// The stretch of an axis that a joint can still reach.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reach {
    pub range: MotionRange,
    /// Whether something firm keeps it there. A soft support eases movement but prevents none.
    pub firm: bool,
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
    let still = |at: &[MotionRange]| {
        // An axis that is not named is held where the limb rests: straight, or the nearest the joint comes to it.
        let rest = Degrees::ZERO.clamp(bare.from(), bare.to());
        let range = at.iter().find(|range| range.axis() == axis).copied();
        Reach { range: range.unwrap_or(MotionRange::between(axis, rest, rest)), firm: true }
    };
    Some(match question.orthosis.hold_of(joint) {
        Hold::Immobilised { at, .. } => still(at),
        Hold::Mobilised { by, at, .. } if *by != Traction::Elastic && !at.is_empty() => still(at),
        Hold::Limited(ranges) => {
            ranges.iter().find(|range| range.axis() == axis).map_or(free, |&range| Reach { range, firm: true })
        }
        Hold::Blocked { stops, .. } => {
            let stops: Vec<_> = stops.iter().filter(|stop| stop.at.axis() == axis).collect();
            let range = stops.iter().fold(bare, |range, stop| range.stopped_by(**stop));
            Reach { range, firm: !stops.is_empty() }
        }
        Hold::Relative { at, .. } => {
            at.iter().find(|range| range.axis() == axis).map_or(free, |by| Reach { range: lags(bare, *by), firm: true })
        }
        // A neighbour gives way a little before it stops a sideways push.
        Hold::Coupled if axis == Axis::Deviation => {
            let play = Degrees::whole(5);
            let range = MotionRange::between(axis, bare.from().max(play.reversed()), bare.to().min(play));
            Reach { range, firm: true }
        }
        Hold::Coupled | Hold::Mobilised { .. } | Hold::Supported | Hold::Free => free,
    })
}

/// What is left to a joint that stays straighter than its neighbours by so much: they stop bending fully before it does.
/// The other way round for one that stays more bent.
fn lags(bare: MotionRange, by: MotionRange) -> MotionRange {
    let straighter = by.to() <= Degrees::ZERO;
    if straighter {
        MotionRange::between(bare.axis(), bare.from(), bare.to().plus(by.to()))
    } else {
        MotionRange::between(bare.axis(), bare.from().plus(by.from()), bare.to())
    }
}
