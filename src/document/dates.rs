//! Day by day and week by week.

use super::cause::{self, Cause};
use super::component::{
    Amount, CalendarDay, CalendarFlag, CalendarKey, CalendarState, Component, ScheduleRow, StripState,
};
use super::glance::{regime_message, said, strip};
use super::message::Message;
use super::section::{Section, filled};
use crate::case::Case;
use crate::plan::{DayKind, DayPlan, Plan};
use crate::units::{ClockSpan, Date};

pub fn section(case: &Case<'_>, plan: &Plan) -> Option<Section> {
    filled("dates", vec![("schedule", schedule(case, plan)), ("calendar", Some(calendar(case, plan)))])
}

fn schedule(case: &Case<'_>, plan: &Plan) -> Option<Component> {
    let build: Vec<&DayPlan> = plan.days.iter().filter(|day| day.kind == DayKind::Build).collect();
    let last = build.last()?;
    let number = |date: Date| plan.days.first().map_or(1, |first| i64::from(date.days_since(first.date)) + 1);
    let mut rows: Vec<ScheduleRow> = build
        .iter()
        .map(|day| ScheduleRow {
            number: number(day.date),
            date: day.date,
            strip: strip(day),
            amount: day.wears.map(|(times, minutes)| Amount { minutes, times: i64::from(times) }),
            all: day.wears.is_none().then(|| Message::new("schedule-not-yet")),
            worn: worn(day),
        })
        .collect();
    if let Some(day) = plan.days.iter().find(|day| day.date > last.date) {
        // The first full day still begins without the splint, before the person gets up: the next one is whole.
        let whole = plan.days.iter().find(|later| later.date > day.date && later.phase == day.phase).unwrap_or(day);
        rows.push(ScheduleRow {
            number: number(day.date),
            date: day.date,
            strip: strip(day),
            amount: None,
            all: Some(
                regime_message(&plan.phases[day.phase], whole).because(cause::hours(case, &plan.phases[day.phase])),
            ),
            worn: worn(day),
        });
    }
    // Up past midnight: what is worn after it stands on the strip of the next date.
    let late = case.day().bed < case.day().up;
    let note = Message::new(if late { "schedule-note-late" } else { "schedule-note" });
    Some(Component::Schedule { rows, note }.because(cause::breaking_in(case, plan)))
}

/// The stretches in which it is worn.
pub fn worn(day: &DayPlan) -> Vec<ClockSpan> {
    strip(day).into_iter().filter(|(_, state)| *state == StripState::On).map(|(span, _)| span).collect()
}

fn state(kind: DayKind) -> CalendarState {
    match kind {
        DayKind::Build => CalendarState::Build,
        DayKind::On => CalendarState::On,
        DayKind::Night => CalendarState::Night,
        DayKind::NightAndTasks | DayKind::Tasks | DayKind::Stretch | DayKind::Wean => CalendarState::Needed,
        DayKind::Off => CalendarState::Off,
    }
}

fn calendar(case: &Case<'_>, plan: &Plan) -> Component {
    let fitted = case.file.fitted.value;
    let until = plan.end().max(plan.review);
    let mut what: Vec<(Date, Message)> = Vec::new();
    let mut days = Vec::new();
    for offset in 0..=until.days_since(fitted) {
        let date = fitted.offset(offset);
        let day = usize::try_from(offset).ok().and_then(|at| plan.days.get(at));
        let before = usize::try_from(offset - 1).ok().and_then(|at| plan.days.get(at));
        let changes = matches!((before, day), (Some(before), Some(day)) if changed(before, day));
        let flag = if date == plan.review {
            Some(CalendarFlag::Review)
        } else if offset == 0 {
            Some(CalendarFlag::Fitting)
        } else if changes {
            Some(CalendarFlag::Change)
        } else {
            None
        };
        if let Some(day) = day
            && (offset == 0 || changes)
        {
            let causes = match day.kind {
                DayKind::Build => cause::breaking_in(case, plan),
                _ => cause::hours(case, &plan.phases[day.phase]),
            };
            what.push((date, describe(plan, day).because(causes)));
        }
        if date == plan.review {
            let review = Message::new("calendar-review").with("date", date);
            what.push((date, review.because([Cause::case("review")])));
        }
        days.push(CalendarDay { date, state: day.map_or(CalendarState::None, |day| state(day.kind)), flag });
    }
    let shown = |wanted: CalendarState| days.iter().any(|day| day.state == wanted);
    let flagged = |wanted: CalendarFlag| days.iter().any(|day| day.flag == Some(wanted));
    let mut key: Vec<CalendarKey> =
        [CalendarState::Build, CalendarState::On, CalendarState::Night, CalendarState::Needed, CalendarState::Off]
            .into_iter()
            .filter(|&wanted| shown(wanted))
            .map(|wanted| CalendarKey::State(wanted, state_message(plan, wanted)))
            .collect();
    if flagged(CalendarFlag::Review) {
        key.push(CalendarKey::Flag(
            CalendarFlag::Review,
            Message::new("calendar-key-review").with("date", plan.review).because([Cause::case("review")]),
        ));
    }
    Component::Calendar { days, what, key }.because(cause::all_hours(case, plan))
}

/// Whether other hours hold on a day than on the one before it.
pub fn changed(before: &DayPlan, day: &DayPlan) -> bool {
    before.phase != day.phase || before.kind != day.kind || before.weaning != day.weaning
}

fn describe(plan: &Plan, day: &DayPlan) -> Message {
    if day.kind == DayKind::Build {
        return Message::new("calendar-build");
    }
    if day.kind == DayKind::Wean {
        return Message::new("calendar-wean");
    }
    Message::new(format!("calendar-{}", said(&plan.phases[day.phase])))
}

/// The key's word for a state: the regime's own when all such days share one.
fn state_message(plan: &Plan, state_wanted: CalendarState) -> Message {
    let kinds: Vec<&DayPlan> = plan.days.iter().filter(|day| state(day.kind) == state_wanted).collect();
    match kinds.first() {
        Some(first) if kinds.iter().all(|day| describe(plan, day) == describe(plan, first)) => describe(plan, first),
        _ => Message::new(format!("calendar-key-{state_wanted}")),
    }
}
