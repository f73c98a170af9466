//! The diary: a page a week, a row a day, to tick until the next visit.

use super::component::{Component, DiaryDay};
use super::glance::{regime_message, wean_message};
use super::message::{Arg, Message};
use super::section::{Section, filled, sentences, telephone};
use crate::case::Case;
use crate::content::{Regime, Washing};
use crate::plan::{DayKind, DayPlan, Plan};
use crate::units::Date;

const WEEK: usize = 7;
/// Weeks that a diary has at most: nobody keeps a year of pages tidy, and a clinic can print more (common practice, no source).
const MOST_WEEKS: usize = 12;
/// The numeric rating scale for pain has eleven steps, from 0 to 10 (common practice, no source).
const MOST_PAIN: i64 = 10;

/// One section a week, from the day of the fitting to the day before the visit, or as many weeks as a diary has.
pub fn sections(case: &Case<'_>, plan: &Plan) -> Vec<Option<Section>> {
    let first = case.file.fitted.value;
    let count = plan.review.days_since(first).max(1);
    let days: Vec<DiaryDay> = (0..count).map(|offset| day(plan, first.offset(offset), offset)).collect();
    let weeks: Vec<&[DiaryDay]> = days.chunks(WEEK).take(MOST_WEEKS).collect();
    let cut = days.len() > MOST_WEEKS * WEEK;
    weeks
        .iter()
        .enumerate()
        .map(|(number, week)| {
            let last = number + 1 == weeks.len();
            let mut section = filled(
                "diary",
                vec![
                    ("diary", Some(Component::Diary { days: week.to_vec(), most: MOST_PAIN })),
                    ("advice", sentences(reminders(case, plan, last, cut))),
                ],
            )?;
            section.args = vec![
                ("week", Arg::Number(i64::try_from(number + 1).unwrap_or(i64::MAX))),
                ("from", Arg::ShortDate(week.first()?.date)),
                ("to", Arg::ShortDate(week.last()?.date)),
                ("least", Arg::Number(0)),
                ("most", Arg::Number(MOST_PAIN)),
            ];
            Some(section)
        })
        .collect()
}

/// What stands under the rows of each week.
fn reminders(case: &Case<'_>, plan: &Plan, last: bool, cut: bool) -> Vec<Message> {
    let stop = match case.clinic(|clinic| clinic.telephone.as_ref()) {
        Some(number) => Message::new("diary-stop").with("number", telephone(&number)),
        None => Message::new("diary-stop-no-number"),
    };
    let visit = match case.file.review_at {
        Some(at) => Message::new("diary-visit-time").with("date", plan.review).with("time", Arg::Time(at)),
        None => Message::new("diary-visit").with("date", plan.review),
    };
    let mut list = vec![stop];
    if last && cut {
        list.push(Message::new("diary-more"));
    }
    if last {
        list.push(visit);
    }
    list
}

fn day(plan: &Plan, date: Date, offset: i32) -> DiaryDay {
    let planned = plan.days.iter().find(|day| day.date == date);
    let checks = usize::from(plan.skin.checks.get());
    DiaryDay {
        date,
        number: i64::from(offset) + 1,
        wear: planned.map(|day| wear(plan, day)),
        wears: planned.and_then(|day| day.wears).map(|(times, _)| usize::from(times)),
        hours: planned.is_some_and(|day| writes_hours(plan, day)),
        checks,
        sessions: planned
            .map_or(0, |day| day.sessions.iter().filter(|(_, session)| !session.exercises.is_empty()).count()),
    }
}

/// What the plan says of a day.
fn wear(plan: &Plan, day: &DayPlan) -> Message {
    let phase = &plan.phases[day.phase];
    if let Some((times, each)) = day.wears {
        return Message::new("diary-wears").with("bouts", i64::from(times)).with("each", each);
    }
    if let Some(rule) = day.weaning.and_then(|step| phase.weaning.get(step)) {
        return wean_message(rule);
    }
    // The first day of a phase still carries the night before: the next one is whole.
    let whole =
        plan.days.iter().find(|later| later.date > day.date && later.phase == day.phase && later.kind == day.kind);
    regime_message(phase, whole.unwrap_or(day))
}

/// Hours are written where they may differ from day to day: not where it never comes off, and not where it is off.
fn writes_hours(plan: &Plan, day: &DayPlan) -> bool {
    let fixed = plan.washing() == Washing::Never || plan.phases[day.phase].wear.value == Regime::NeverRemove;
    day.wears.is_none() && !fixed && day.kind != DayKind::Off
}
