//! One requirement against one orthosis.

use super::reach::{hold_of, reach};
use super::{Grade, Question, VerdictLine};
use crate::body::{Joint, MotionRange};
use crate::content::{Basis, Hold, Need, Otherwise, Phase, Requirement, Wanted};

/// A line for each joint the requirement names; none when a finding it depends on was not made.
pub fn judge(question: Question<'_>, requirement: &Requirement) -> Vec<VerdictLine> {
    if requirement.when.as_ref().is_some_and(|test| !test.holds(question.findings)) {
        return Vec::new();
    }
    requirement.joint.joints().into_iter().filter_map(|joint| line(question, requirement, joint)).collect()
}

fn line(question: Question<'_>, requirement: &Requirement, joint: Joint) -> Option<VerdictLine> {
    let hold = hold_of(question.orthosis, joint);
    let result = match requirement.need {
        Need::Must => {
            if satisfied(question, requirement, joint) {
                Grade::Met
            } else {
                failure(requirement)
            }
        }
        Need::Should => {
            if satisfied(question, requirement, joint) {
                Grade::Met
            } else {
                Grade::Remark
            }
        }
        Need::May => {
            let covered = matches!(hold, Hold::Immobilised { .. } | Hold::Limited(_));
            if !covered {
                return None;
            }
            if satisfied(question, requirement, joint) { Grade::Met } else { Grade::Remark }
        }
        Need::ShouldBeFree => match hold {
            Hold::Immobilised { .. } | Hold::Limited(_) => Grade::Remark,
            Hold::Blocked(_) | Hold::Supported | Hold::Free => Grade::Met,
        },
        Need::MustBeFree => match hold {
            Hold::Immobilised { .. } | Hold::Limited(_) => failure(requirement),
            Hold::Blocked(_) | Hold::Supported => Grade::Remark,
            Hold::Free => Grade::Met,
        },
    };
    Some(VerdictLine {
        joint: Some(joint),
        wanted: wanted(requirement),
        offered: offered(hold),
        result,
        because: requirement.because.clone(),
        structures: requirement.structures.clone(),
        basis: requirement.source.clone(),
    })
}

fn failure(requirement: &Requirement) -> Grade {
    match requirement.consequence() {
        Otherwise::Misfit => Grade::Misfit,
        Otherwise::Unsafe => Grade::Unsafe,
    }
}

/// Whether the joint is held in the way and in the range that is asked for.
fn satisfied(question: Question<'_>, requirement: &Requirement, joint: Joint) -> bool {
    let hold = hold_of(question.orthosis, joint);
    let inside = |range: &MotionRange| {
        reach(question, joint, range.axis()).is_some_and(|reach| reach.firm && range.contains(reach.range))
    };
    let stopped = requirement.stops.iter().all(|stop| {
        reach(question, joint, stop.at.axis()).is_some_and(|reach| {
            reach.firm
                && if stop.direction.is_positive() {
                    reach.range.to() <= stop.at.angle()
                } else {
                    reach.range.from() >= stop.at.angle()
                }
        })
    });
    let held = match requirement.hold {
        Some(Wanted::Still) => match hold {
            Hold::Immobilised { .. } => requirement.within.iter().all(inside),
            Hold::Limited(_) => !requirement.within.is_empty() && requirement.within.iter().all(inside),
            Hold::Blocked(_) | Hold::Supported | Hold::Free => false,
        },
        Some(Wanted::Steady) => match hold {
            Hold::Immobilised { .. } | Hold::Limited(_) => requirement.within.iter().all(inside),
            Hold::Supported => true,
            Hold::Blocked(_) | Hold::Free => false,
        },
        Some(Wanted::Stopped) | None => true,
    };
    held && stopped
}

fn wanted(requirement: &Requirement) -> String {
    let strength = match requirement.need {
        Need::Must => "must be",
        Need::Should => "should be",
        Need::May => "may be",
        Need::ShouldBeFree => return "should be free".to_owned(),
        Need::MustBeFree => return "must be free".to_owned(),
    };
    let mut text = match requirement.hold {
        Some(Wanted::Still) => format!("{strength} held still"),
        Some(Wanted::Steady) => format!("{strength} steadied"),
        Some(Wanted::Stopped) | None => format!("{strength} kept"),
    };
    if !requirement.within.is_empty() {
        text.push_str(&format!(" within {}", join(&requirement.within)));
    }
    if !requirement.stops.is_empty() {
        text.push_str(&format!(" from {}", join(&requirement.stops)));
    }
    text
}

/// How a hold reads in the table.
pub fn offered(hold: &Hold) -> String {
    match hold {
        Hold::Immobilised { at, .. } => format!("immobilised at {}", join(at)),
        Hold::Limited(ranges) => format!("limited to {}", join(ranges)),
        Hold::Blocked(stops) => format!("blocked: {}", join(stops)),
        Hold::Supported => "supported, gives way".to_owned(),
        Hold::Free => "free".to_owned(),
    }
}

fn join<T: std::fmt::Display>(items: &[T]) -> String {
    items.iter().map(ToString::to_string).collect::<Vec<_>>().join(", ")
}

/// Remarks for joints that are held although nobody asked for it.
pub fn not_asked_for(question: Question<'_>, phase: &Phase) -> Vec<VerdictLine> {
    let mut lines = Vec::new();
    for (name, hold) in &question.orthosis.joints {
        if !matches!(hold, Hold::Immobilised { .. } | Hold::Limited(_)) {
            continue;
        }
        for joint in name.joints() {
            let asked = phase.requires.iter().any(|requirement| requirement.joint.joints().contains(&joint));
            if !asked {
                lines.push(VerdictLine {
                    joint: Some(joint),
                    wanted: "nothing asked".to_owned(),
                    offered: offered(hold),
                    result: Grade::Remark,
                    because: "a joint held without need gets stiff and hinders the hand".to_owned(),
                    structures: Vec::new(),
                    basis: Basis::CommonPractice,
                });
            }
        }
    }
    lines
}

/// A misfit for each factor that rules the material out.
pub fn materials(question: Question<'_>) -> Vec<VerdictLine> {
    let material = question.orthosis.material;
    question
        .factors
        .iter()
        .filter(|(_, factor)| factor.excludes.contains(&material))
        .map(|(id, factor)| VerdictLine {
            joint: None,
            wanted: format!("no {material} material ({id})"),
            offered: material.to_string(),
            result: Grade::Misfit,
            because: factor.because.clone(),
            structures: Vec::new(),
            basis: factor.source.clone(),
        })
        .collect()
}
