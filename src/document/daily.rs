//! Activities: keep, change, leave for now.

use super::cause::{self, Cause};
use super::component::{ActivityRow, Component};
use super::message::{Arg, Message};
use super::section::{Section, advice, filled, sentences};
use crate::case::Case;
use crate::content::SheetArea;
use crate::ids::MessageId;
use crate::plan::{ActivityAdvice, ActivityVerdict, Hands, PhaseAdvice, Plan};
use crate::source::Step;

pub fn section(case: &Case<'_>, plan: &Plan) -> Option<Section> {
    let more = advice(case, SheetArea::Daily);
    let rows = table(activities(case, plan));
    let limits = std::iter::once(Cause::case("activities")).chain(cause::first(case, plan, "activities"));
    let rows = rows.map(|rows| rows.because(limits));
    filled("daily", vec![("activities", rows), ("advice", sentences(more))])
}

/// What the person does all day: keep, change or leave.
pub fn activities(case: &Case<'_>, plan: &Plan) -> Vec<ActivityRow> {
    let mut rows: Vec<ActivityRow> = plan.activities.iter().filter_map(|advice| row(case, plan, advice)).collect();
    // What to leave comes first: it is what can do harm.
    rows.sort_by_key(|row| std::cmp::Reverse(row.verdict));
    rows
}

/// The rows as a table, where there are any.
pub fn table(rows: Vec<ActivityRow>) -> Option<Component> {
    (!rows.is_empty()).then_some(Component::Activities(rows))
}

fn row(case: &Case<'_>, plan: &Plan, advice: &ActivityAdvice) -> Option<ActivityRow> {
    let now = advice.phases.first()?;
    let mut how: Vec<Message> = now.ways.iter().map(|way| way_of(case, plan, advice, way)).collect();
    if now.verdict == ActivityVerdict::Leave {
        if advice.unavoidable && how.is_empty() {
            let alone = Hands::of(case) == Hands::OneOnly;
            how.push(Message::new(if alone { "daily-helper" } else { "daily-other-hand" }));
        }
        how.push(Message::new("daily-ask"));
    }
    if now.pauses {
        how.push(Message::new("daily-pauses"));
    }
    if now.keep_dry {
        how.push(Message::new("daily-keep-dry"));
    }
    if advice.driving {
        how.push(Message::new("daily-driving"));
    }
    if now.verdict == ActivityVerdict::Keep && how.is_empty() {
        how.push(Message::new("daily-keep"));
    }
    let eased = plan.phases.iter().zip(&advice.phases).skip(1).find(|(_, later)| later.verdict < now.verdict);
    if let Some((phase, later)) = eased {
        how.push(Message::new(format!("daily-from-{}", later.verdict)).with("date", Arg::ShortDate(phase.first)));
    }
    // A driver is never told that driving is fine as it is.
    let verdict = if advice.driving { now.verdict.max(ActivityVerdict::Change) } else { now.verdict };
    let named = Cause::item("activities", advice.id.as_str());
    let limits = || std::iter::once(named.clone()).chain(cause::first(case, plan, "activities"));
    let asked = Cause::rule("activities", advice.id.as_str(), &[Step::field("demands")]);
    Some(ActivityRow {
        name: Message::new(format!("activity-{}-name", advice.id)).because([named.clone(), asked.clone()]),
        verdict,
        how,
        why: why(now).map(|why| why.because(limits().chain([asked.clone()]))),
    })
}

/// A way to do it, with the limits that ask for one.
fn way_of(case: &Case<'_>, plan: &Plan, advice: &ActivityAdvice, way: &MessageId) -> Message {
    let id = advice.id.as_str();
    let own = Cause::rule("activities", id, &[Step::field("adaptations"), Step::item(way.as_str())]);
    let causes = [Cause::item("activities", id), own].into_iter().chain(cause::first(case, plan, "activities"));
    Message::new(format!("activity-{id}-{way}")).because(causes)
}

fn why(advice: &PhaseAdvice) -> Option<Message> {
    if advice.verdict == ActivityVerdict::Keep {
        return None;
    }
    if let Some(gate) = advice.waits {
        return Some(Message::new(format!("why-{gate}")));
    }
    if let Some(worst) = advice.over.first() {
        return Some(Message::new(format!("why-{worst}")));
    }
    if advice.too_heavy {
        return Some(Message::new("why-heavy"));
    }
    advice.in_the_way.then(|| Message::new("why-in-the-way"))
}
