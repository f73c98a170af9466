//! Two conditions in one hand whose needs no orthosis can meet together.

use super::{Question, dated, in_force};
use crate::body::{Joint, MotionRange};
use crate::case::{Case, Treated};
use crate::content::{Need, Phase, Requirement, Wanted};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::ConditionId;

/// Every joint at which one dated phase of a condition wants what one of another condition forbids.
pub fn find(case: &Case<'_>, question: Question<'_>) -> Findings {
    let mut findings = Findings::default();
    for (index, one) in case.conditions.iter().enumerate() {
        for other in &case.conditions[index + 1..] {
            for first in phases(one) {
                for second in phases(other) {
                    for clash in clashes(question, first, second) {
                        findings.push(report(case, (&one.id, first), (&other.id, second), &clash));
                    }
                }
            }
        }
    }
    findings
}

fn phases(treated: &Treated) -> impl Iterator<Item = &Phase> {
    treated.condition.phases.iter().filter(|phase| dated(treated, &phase.id))
}

/// One joint, and the two requirements that cannot both be met.
struct Clash<'p> {
    joint: Joint,
    one: &'p Requirement,
    other: &'p Requirement,
}

fn clashes<'p>(question: Question<'_>, first: &'p Phase, second: &'p Phase) -> Vec<Clash<'p>> {
    let (first, second) = (in_force(question, first), in_force(question, second));
    let mut all = Vec::new();
    for one in first {
        for other in &second {
            let joints = other.joint.joints();
            let shared = one.joint.joints().into_iter().find(|joint| joints.contains(joint));
            if let Some(joint) = shared.filter(|_| contradict(one, other) || contradict(other, one)) {
                all.push(Clash { joint, one, other });
            }
        }
    }
    all
}

/// Held still here and free there, or held still at angles that do not meet.
fn contradict(one: &Requirement, other: &Requirement) -> bool {
    let still = |requirement: &Requirement| requirement.need == Need::Must && requirement.hold == Some(Wanted::Still);
    if !still(one) {
        return false;
    }
    let apart =
        |range: &MotionRange| other.within.iter().any(|wanted| wanted.axis() == range.axis() && !wanted.meets(*range));
    other.need == Need::MustBeFree || (still(other) && one.within.iter().any(apart))
}

fn report(
    case: &Case<'_>,
    (one, first): (&ConditionId, &Phase),
    (other, second): (&ConditionId, &Phase),
    clash: &Clash<'_>,
) -> Diagnostic {
    let second_place = case.file.other_conditions.iter().find(|entry| entry.condition.value == *other);
    let mut diagnostic = Diagnostic::error(
        Code::CASE_CONTRADICTION,
        case.place(&case.file.condition.span),
        format!("`{one}` and `{other}` want opposite things of {}", clash.joint),
    );
    if let Some(entry) = second_place {
        diagnostic = diagnostic.also(case.place(&entry.condition.span), "the other condition");
    }
    let cite = |requirement: &Requirement| case.library.cite(&requirement.source);
    diagnostic
        .note(format!("`{one}`, phase `{}`: {} [{}]", first.id, clash.one.because, cite(clash.one)))
        .note(format!("`{other}`, phase `{}`: {} [{}]", second.id, clash.other.because, cite(clash.other)))
        .help("decide which one comes first and make a case of it; the other waits")
}
