//! Exercises, and movements to leave out.

use super::cause::{self, Cause};
use super::component::{Component, DoseRow, ExerciseRow};
use super::figures::Figures;
use super::message::{Arg, Message};
use super::section::{Section, advice, filled, sentences};
use crate::case::Case;
use crate::content::{Banned, SheetArea};
use crate::ids::ExerciseId;
use crate::plan::{Plan, Programme};
use crate::source::Step;

pub fn section(case: &Case<'_>, plan: &Plan, figures: &Figures<'_>) -> Option<Section> {
    let first = plan.programmes.first()?;
    let changed = plan.programmes.iter().zip(&plan.phases).skip(1).find(|(programme, _)| *programme != first);
    let next = changed.map(|(programme, phase)| {
        let names: Vec<Message> =
            programme.exercises.iter().map(|exercise| Message::new(format!("exercise-{}-name", exercise.id))).collect();
        let said = Message::new("moves-later").with("date", phase.first).with("exercises", Arg::List(names));
        said.because(cause::phase(case, phase, "exercises"))
    });
    let later = next.or_else(|| (!plan.later.is_empty()).then(|| Message::new("moves-after-review")));
    let mut more = advice(case, SheetArea::Move);
    more.extend(later);
    let rows = exercises(case, plan, first, figures).because(cause::first(case, plan, "exercises"));
    let section = filled("move", vec![("exercises", Some(rows)), ("advice", sentences(more))]);
    section.map(|section| section.because(plan.later.iter().map(|phase| cause::condition(case, phase.of.as_str()))))
}

fn exercises(case: &Case<'_>, plan: &Plan, programme: &Programme, figures: &Figures<'_>) -> Component {
    let rows = programme
        .exercises
        .iter()
        .map(|planned| {
            let steps = case.library.exercises.get(&planned.id).map_or(0, |exercise| exercise.steps.get());
            let hold = planned.dose.hold;
            let dose = vec![
                DoseRow {
                    number: i64::from(planned.dose.repetitions.get()),
                    say: counted("dose-times", i64::from(planned.dose.repetitions.get())),
                },
                DoseRow {
                    number: i64::from(planned.dose.times_a_day.get()),
                    say: counted("dose-a-day", i64::from(planned.dose.times_a_day.get())),
                },
            ];
            let up_to = planned.dose.up_to.filter(|most| *most > planned.dose.repetitions);
            let causes = exercise(case, plan, &planned.id);
            let row = ExerciseRow {
                later: up_to.map(|most| counted("move-up-to", i64::from(most.get()))),
                name: Message::new(format!("exercise-{}-name", planned.id)),
                start: Message::new(format!("exercise-{}-start", planned.id)),
                steps: (1..=steps)
                    .map(|step| {
                        Message::new(format!("exercise-{}-step-{step}", planned.id)).with("hold", Arg::Hold(hold))
                    })
                    .collect(),
                place: Message::new(if planned.worn { "move-splint-on" } else { "move-splint-off" }),
                dose,
                figures: figures.exercise(&planned.id, planned.worn),
            };
            row.because(&causes)
        })
        .collect();
    Component::Exercises { rows, avoid: avoid(plan), stop: Message::new("move-stop") }
}

/// What led to an exercise: its own file, what the phase allows, and what the therapist set.
fn exercise(case: &Case<'_>, plan: &Plan, id: &ExerciseId) -> Vec<Cause> {
    let mut causes = vec![Cause::rule("exercises", id.as_str(), &[Step::field("steps")])];
    causes.extend(cause::first(case, plan, "exercises"));
    if case.overrides.iter().any(|entry| entry.subject.is_about(id)) {
        causes.push(Cause::item("overrides", id.as_str()));
    }
    causes
}

fn counted(key: &str, count: i64) -> Message {
    Message::new(key.to_owned()).with("count", count)
}

/// Movements that the first phase bans, as sentences.
pub fn avoid(plan: &Plan) -> Vec<Message> {
    let Some(phase) = plan.phases.first() else { return Vec::new() };
    let mut list = Vec::new();
    for key in phase.rules.exercises.bans.iter().flat_map(avoid_keys) {
        let message = Message::new(key);
        if !list.contains(&message) {
            list.push(message);
        }
    }
    list
}

/// The messages of a ban. A ban on heavy exercise only is the programme's business and has none: a patient would read
/// it as "never move this".
pub fn avoid_keys(banned: &Banned) -> Vec<String> {
    if banned.from_load.is_some() {
        return Vec::new();
    }
    if banned.directions.is_empty() {
        return vec![format!("avoid-{}-any", banned.joint)];
    }
    banned.directions.iter().map(|direction| format!("avoid-{}-{direction}", banned.joint)).collect()
}
