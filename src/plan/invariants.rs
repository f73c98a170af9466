//! What must be true of every plan. Checked on every plan that is made, and by the tests on many random cases.

use super::programme::keeps_still;
use super::{ActivityVerdict, Plan, WearState};
use crate::case::{Case, Subject};
use crate::checks::{Question, in_force};
use crate::content::{BreakInStep, Regime, WeaningStep};
use crate::units::TimeOfDay;

/// The broken invariants in words; empty for a sound plan.
pub fn broken(case: &Case<'_>, plan: &Plan) -> Vec<String> {
    let mut faults = Vec::new();
    phases_tile(case, plan, &mut faults);
    days_tile(case, plan, &mut faults);
    break_in_grows(plan, &mut faults);
    weaning_shrinks(plan, &mut faults);
    never_off(plan, &mut faults);
    exercises_keep_still(case, plan, &mut faults);
    sessions_in_place(plan, &mut faults);
    review_before_word(plan, &mut faults);
    activities_respect_limits(case, plan, &mut faults);
    faults
}

fn phases_tile(case: &Case<'_>, plan: &Plan, faults: &mut Vec<String>) {
    match plan.phases.first() {
        None => faults.push("it has no phase".to_owned()),
        Some(first) if first.first != case.file.fitted.value => {
            faults.push("it does not begin on the day of the fitting".to_owned())
        }
        Some(_) => {}
    }
    for phase in &plan.phases {
        if phase.last < phase.first {
            faults.push(format!("phase `{}` ends before it begins", phase.id));
        }
    }
    for pair in plan.phases.windows(2) {
        if pair[0].last.offset(1) != pair[1].first {
            faults.push(format!("there is a gap or overlap between `{}` and `{}`", pair[0].id, pair[1].id));
        }
    }
}

fn days_tile(case: &Case<'_>, plan: &Plan, faults: &mut Vec<String>) {
    let fitted = case.file.fitted.value;
    let count = plan.end().days_since(fitted) + 1;
    if usize::try_from(count).ok() != Some(plan.days.len()) {
        faults.push(format!("{} days are laid out where {count} are wanted", plan.days.len()));
    }
    for (offset, day) in plan.days.iter().enumerate() {
        if day.date.days_since(fitted) != i32::try_from(offset).unwrap_or(i32::MAX) {
            faults.push(format!("{} stands in the wrong place", day.date));
        }
        let mut at = 0;
        for segment in &day.segments {
            if segment.span.from() != at {
                faults.push(format!("on {} a minute is in no state or in two", day.date));
            }
            at = segment.span.to();
        }
        if at != TimeOfDay::DAY {
            faults.push(format!("{} does not reach midnight", day.date));
        }
        let after_fitting = |segment: &super::Segment| offset > 0 || segment.span.from() >= case.fitted_at().minutes();
        if day.segments.iter().any(|segment| segment.state == WearState::Before && after_fitting(segment)) {
            faults.push(format!("{} has a minute before the fitting", day.date));
        }
    }
}

fn break_in_grows(plan: &Plan, faults: &mut Vec<String>) {
    if BreakInStep::shrink(&plan.break_in.steps) {
        faults.push("breaking in shrinks".to_owned());
    }
    // The day of the fitting is cut short, so worn minutes are compared from the second day on.
    let worn: Vec<u16> = plan
        .days
        .iter()
        .skip(1)
        .take_while(|day| day.kind == super::DayKind::Build)
        .map(super::DayPlan::worn_minutes)
        .collect();
    if worn.windows(2).any(|pair| pair[1] < pair[0]) {
        faults.push("breaking in wears less from one day to the next".to_owned());
    }
}

fn weaning_shrinks(plan: &Plan, faults: &mut Vec<String>) {
    for phase in &plan.phases {
        if WeaningStep::grow(&phase.weaning) {
            faults.push(format!("weaning in `{}` grows", phase.id));
        }
    }
}

fn never_off(plan: &Plan, faults: &mut Vec<String>) {
    for day in &plan.days {
        let phase = &plan.phases[day.phase];
        // Only segments after getting up on the first day of a phase belong to it for certain.
        let settled = day.date > phase.first && day.kind != super::DayKind::Build;
        let off = |state: WearState| match phase.wear.value {
            Regime::NeverRemove => !state.is_worn(),
            Regime::OffToWash => !(state.is_worn() || state == WearState::OffWash),
            Regime::OffToExercise => matches!(state, WearState::Off | WearState::Needed | WearState::Before),
            _ => false,
        };
        let just_built =
            plan.break_in.days() > 0 && day.date.days_since(plan.days[0].date) == i32::from(plan.break_in.days());
        if settled && phase.weaning.is_empty() && !just_built && day.segments.iter().any(|segment| off(segment.state)) {
            faults.push(format!("on {} the splint is off although phase `{}` forbids it", day.date, phase.id));
        }
    }
}

fn exercises_keep_still(case: &Case<'_>, plan: &Plan, faults: &mut Vec<String>) {
    let findings = case.measured();
    let question = Question { orthosis: &case.orthosis, findings: &findings, factors: &[] };
    for (phase, programme) in plan.phases.iter().zip(&plan.programmes) {
        let in_force = in_force(question, &phase.rules);
        for planned in &programme.exercises {
            let ordered = phase.rules.exercises.on_order.contains(&planned.id);
            let accepted = ordered
                || case
                    .overrides
                    .iter()
                    .any(|entry| entry.accept_risk && entry.subject == Subject::AddExercise(planned.id.clone()));
            let Some(exercise) = case.exercises.get(&planned.id) else { continue };
            for movement in &exercise.moves {
                for joint in movement.joint.joints() {
                    for &direction in &movement.directions {
                        let held = in_force.iter().any(|requirement| keeps_still(requirement, joint, direction));
                        if held && !accepted {
                            faults.push(format!("`{}` moves {joint}, which phase `{}` holds", planned.id, phase.id));
                        }
                    }
                }
            }
        }
    }
}

fn sessions_in_place(plan: &Plan, faults: &mut Vec<String>) {
    for day in &plan.days {
        let mut free_from = 0;
        for (at, session) in &day.sessions {
            if at.minutes() < free_from {
                faults.push(format!("on {} two sessions overlap", day.date));
            }
            free_from = at.minutes() + session.length();
            for &index in &session.exercises {
                let Some(planned) =
                    plan.programmes.get(session.phase).and_then(|programme| programme.exercises.get(index))
                else {
                    faults.push(format!("on {} a session has an exercise that is not in its programme", day.date));
                    continue;
                };
                let worn = planned.worn;
                if (worn && session.worn == 0) || (!worn && session.off == 0) {
                    faults.push(format!("on {} an exercise has no time", day.date));
                }
            }
        }
    }
}

fn review_before_word(plan: &Plan, faults: &mut Vec<String>) {
    if !plan.later.is_empty() && plan.end() < plan.review {
        faults.push("the hours end before the review that is to decide what follows".to_owned());
    }
}

fn activities_respect_limits(case: &Case<'_>, plan: &Plan, faults: &mut Vec<String>) {
    for advice in &plan.activities {
        let Some(activity) = case.library.activities.get(&advice.id) else { continue };
        for (phase, given) in plan.phases.iter().zip(&advice.phases) {
            if given.verdict == ActivityVerdict::Keep && activity.mass > phase.rules.activities.mass {
                faults
                    .push(format!("`{}` is kept although it weighs more than phase `{}` allows", advice.id, phase.id));
            }
        }
    }
}
