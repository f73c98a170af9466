//! One requirement against one orthosis.

use super::reach::reach;
use super::{Grade, Question, VerdictLine};
use crate::body::{Direction, Joint, MotionRange, Stop};
use crate::content::{Basis, Hold, Need, OneOf, Otherwise, Phase, Regime, Requirement, Traction, Wanted, Way};
use crate::units::Degrees;

/// A line for each joint the requirement names; none when a finding it depends on was not made.
///
/// `asked` are all requirements of the phase: whether a joint is free enough depends on what else is wanted of it.
pub fn judge(question: Question<'_>, requirement: &Requirement, asked: &[&Requirement]) -> Vec<VerdictLine> {
    if !requirement.applies(question.findings) {
        return Vec::new();
    }
    requirement.joint.joints().into_iter().filter_map(|joint| line(question, requirement, asked, joint)).collect()
}

/// Whether some requirement wants this joint stopped in this direction.
fn wanted_stop(asked: &[&Requirement], joint: Joint, direction: Direction) -> bool {
    asked.iter().any(|other| {
        other.joint.joints().contains(&joint)
            && matches!(other.need, Need::Must | Need::Should | Need::May)
            && other.stops.iter().any(|stop| stop.direction == direction)
    })
}

/// A block that stops a direction which no requirement wants stopped.
fn unasked_block(hold: &Hold, asked: &[&Requirement], joint: Joint) -> bool {
    match hold {
        Hold::Blocked { stops, .. } => !stops.iter().all(|stop| wanted_stop(asked, joint, stop.direction)),
        _ => false,
    }
}

/// A stop that keeps the joint from its straight position: more is lost than the end of the movement.
fn short_of_straight(stop: &Stop) -> bool {
    let angle = stop.at.angle();
    if stop.direction.is_positive() { angle < Degrees::ZERO } else { angle > Degrees::ZERO }
}

fn line(
    question: Question<'_>,
    requirement: &Requirement,
    asked: &[&Requirement],
    joint: Joint,
) -> Option<VerdictLine> {
    let hold = question.orthosis.hold_of(joint);
    let result = match requirement.need {
        Need::Must => {
            if satisfied(question, requirement, joint) {
                Grade::Met
            } else {
                failure(requirement.consequence())
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
            if !hold.covers() {
                return None;
            }
            if satisfied(question, requirement, joint) { Grade::Met } else { Grade::Remark }
        }
        Need::ShouldBeFree => {
            if hold.covers() || unasked_block(hold, asked, joint) {
                Grade::Remark
            } else {
                Grade::Met
            }
        }
        Need::MustBeFree => match hold {
            hold if hold.covers() => failure(requirement.consequence()),
            // A block that the phase itself asks for leaves the joint as free as it is wanted.
            Hold::Blocked { .. } if !unasked_block(hold, asked, joint) => Grade::Met,
            Hold::Blocked { stops, .. } if stops.iter().any(short_of_straight) => failure(requirement.consequence()),
            Hold::Blocked { .. } | Hold::Supported | Hold::Mobilised { .. } => Grade::Remark,
            _ => Grade::Met,
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

/// How an unmet need counts.
pub fn failure(otherwise: Otherwise) -> Grade {
    match otherwise {
        Otherwise::Misfit => Grade::Misfit,
        Otherwise::Unsafe => Grade::Unsafe,
    }
}

/// The best of several ways, and its lines. When none is met these are the lines of the nearest, counted as failures.
pub fn judge_ways<'p>(question: Question<'_>, one: &'p OneOf) -> (Option<&'p Way>, Vec<VerdictLine>) {
    let judged = one.ways.iter().map(|way| (way, way_lines(question, way)));
    let failing = |lines: &[VerdictLine]| lines.iter().filter(|line| line.result > Grade::Remark).count();
    let remarks = |lines: &[VerdictLine]| lines.iter().filter(|line| line.result == Grade::Remark).count();
    let Some((way, mut lines)) = judged.min_by_key(|(_, lines)| (failing(lines), remarks(lines))) else {
        return (None, Vec::new());
    };
    if failing(&lines) == 0 {
        return (Some(way), lines);
    }
    let grade = failure(one.otherwise.unwrap_or(Otherwise::Misfit));
    for line in lines.iter_mut().filter(|line| line.result > Grade::Remark) {
        line.result = grade;
        line.because = one.because.clone();
        line.wanted = format!("{}, or another of {} ways", line.wanted, one.ways.len());
    }
    (None, lines)
}

fn way_lines(question: Question<'_>, way: &Way) -> Vec<VerdictLine> {
    let asked: Vec<&Requirement> = way.requires.iter().collect();
    let mut lines: Vec<VerdictLine> =
        way.requires.iter().flat_map(|requirement| judge(question, requirement, &asked)).collect();
    if let Some(segment) = way.presses {
        let acts_on = question.orthosis.acts_on;
        lines.push(VerdictLine {
            joint: None,
            wanted: format!("acts on the {segment}"),
            offered: acts_on.map_or_else(|| "acts on joints".to_owned(), |acts_on| format!("acts on the {acts_on}")),
            result: if acts_on == Some(segment) { Grade::Met } else { Grade::Misfit },
            because: "a piece that acts on this segment needs to hold no joint".to_owned(),
            structures: Vec::new(),
            basis: Basis::CommonPractice,
        });
    }
    lines
}

/// The requirements that hold for this orthosis: those of the phase, and those of the way it takes.
pub fn in_force<'p>(question: Question<'_>, phase: &'p Phase) -> Vec<&'p Requirement> {
    holding(question, phase, phase.one_of.iter().filter_map(|one| judge_ways(question, one).0))
}

/// The same where the ways it takes are known.
pub fn holding<'p>(
    question: Question<'_>,
    phase: &'p Phase,
    ways: impl IntoIterator<Item = &'p Way>,
) -> Vec<&'p Requirement> {
    let all = phase.requires.iter().chain(ways.into_iter().flat_map(|way| &way.requires));
    all.filter(|requirement| requirement.applies(question.findings)).collect()
}

/// Whether the joint is held in the way and in the range that is asked for.
fn satisfied(question: Question<'_>, requirement: &Requirement, joint: Joint) -> bool {
    let hold = question.orthosis.hold_of(joint);
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
            Hold::Mobilised { by, at, .. } => {
                *by != Traction::Elastic && !at.is_empty() && requirement.within.iter().all(inside)
            }
            _ => false,
        },
        Some(Wanted::Steady) => match hold {
            Hold::Immobilised { .. } | Hold::Limited(_) => requirement.within.iter().all(inside),
            Hold::Supported => true,
            _ => false,
        },
        Some(Wanted::Relative) => match hold {
            Hold::Relative { at, .. } => requirement.within.iter().all(|can| at.iter().any(|set| can.contains(*set))),
            _ => false,
        },
        Some(Wanted::Coupled) => matches!(hold, Hold::Coupled),
        Some(Wanted::Mobilised) => match hold {
            Hold::Mobilised { towards, .. } => requirement.towards.is_none_or(|wanted| wanted == *towards),
            _ => false,
        },
        Some(Wanted::Stopped) | None => true,
    };
    held && stopped
}

/// How a requirement reads in the table.
pub fn wanted(requirement: &Requirement) -> String {
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
        Some(Wanted::Relative) => format!("{strength} held off its neighbours"),
        Some(Wanted::Coupled) => format!("{strength} coupled to a neighbour or another joint"),
        Some(Wanted::Mobilised) => match requirement.towards {
            Some(towards) => format!("{strength} pulled towards {towards}"),
            None => format!("{strength} pulled towards more movement"),
        },
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
        Hold::Blocked { stops, .. } => format!("blocked: {}", join(stops)),
        Hold::Relative { at, .. } => format!("held off its neighbours by {}", join(at)),
        Hold::Coupled => "coupled, guarded sideways".to_owned(),
        Hold::Mobilised { towards, by, at } if at.is_empty() => format!("pulled towards {towards} ({by})"),
        Hold::Mobilised { towards, by, at } => format!("pulled towards {towards} ({by}), at {}", join(at)),
        Hold::Supported => "supported, gives way".to_owned(),
        Hold::Free => "free".to_owned(),
    }
}

fn join<T: std::fmt::Display>(items: &[T]) -> String {
    items.iter().map(ToString::to_string).collect::<Vec<_>>().join(", ")
}

/// Remarks for joints that are held or stopped although nobody asked for it.
pub fn not_asked_for(question: Question<'_>, in_force: &[&Requirement]) -> Vec<VerdictLine> {
    let asked: Vec<Joint> = in_force.iter().flat_map(|requirement| requirement.joint.joints()).collect();
    let mut lines = Vec::new();
    let stands_in_the_way = |hold: &Hold| hold.covers() || matches!(hold, Hold::Blocked { .. });
    for (name, hold) in question.orthosis.joints.iter().filter(|(_, hold)| stands_in_the_way(hold)) {
        for joint in name.joints().into_iter().filter(|joint| !asked.contains(joint)) {
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
    lines
}

/// A misfit for each substance that this person must not have on the skin.
pub fn substances(question: Question<'_>) -> Vec<VerdictLine> {
    let mut lines = Vec::new();
    for (id, factor) in question.factors {
        for substance in factor.excludes.iter().filter(|substance| question.orthosis.contains.contains(substance)) {
            lines.push(VerdictLine {
                joint: None,
                wanted: format!("no {substance} on the skin ({id})"),
                offered: format!("contains {substance}"),
                result: Grade::Misfit,
                because: factor.because.clone(),
                structures: Vec::new(),
                basis: factor.source.clone(),
            });
        }
    }
    lines
}

/// What comes of a piece that only the clinic takes off. Where the phase wants it off for hours it is a misfit; where it
/// is worn in bouts a cast that stays on is another way to the same end, and the therapist may say so in the case.
pub fn cast(question: Question<'_>, phase: &Phase) -> Vec<VerdictLine> {
    if question.orthosis.comes_off() {
        return Vec::new();
    }
    let result = match phase.wear {
        // What comes off only to wash or exercise may as well stay on.
        Regime::NeverRemove | Regime::OffToWash | Regime::OffToExercise => return Vec::new(),
        Regime::Stretch => Grade::Remark,
        _ => Grade::Misfit,
    };
    vec![VerdictLine {
        joint: None,
        wanted: format!("worn {}", phase.wear),
        offered: "stays on until the clinic takes it off".to_owned(),
        result,
        because: "nobody takes a cast off at home; set `wear: never-remove` for this phase where it may stay on"
            .to_owned(),
        structures: Vec::new(),
        basis: Basis::CommonPractice,
    }]
}
