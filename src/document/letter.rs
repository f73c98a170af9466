//! A letter for somebody who helps, teaches or employs the person: what this hand may do, until when.

use super::component::{Component, FactRow};
use super::message::{Arg, Message};
use super::section::{Section, filled, orthosis_name, sentences, side, telephone};
use super::{daily, glance};
use crate::case::{Case, LetterDetail, LetterReader};
use crate::content::Washing;
use crate::plan::Plan;

/// Says no more of the person's health than the case chooses.
pub fn section(case: &Case<'_>, plan: &Plan) -> Option<Section> {
    let letter = case.letter();
    let hours = letter.detail != LetterDetail::None;
    let mut section = filled(
        "letter",
        vec![
            ("hand", Some(hand(case))),
            ("facts", Some(Component::Facts(facts(case, plan, letter.detail)))),
            ("strips", hours.then(|| glance::strips(case, plan))),
            ("activities", activities(case, plan, letter.detail)),
            ("advice", sentences(rules(case, plan, letter.to))),
        ],
    )?;
    section.args = vec![("to", Arg::Keyword(letter.to.word()))];
    Some(section)
}

/// Whose hand it is, at the foot of the page.
pub fn line(case: &Case<'_>, name: Option<String>) -> Message {
    let line = match name {
        Some(name) => Message::new("letter-about").with("name", Arg::Literal(name)),
        None => Message::new("letter-about-nobody"),
    };
    line.with("side", side(case.file.hand))
}

/// Which hand: which finger is more than a helper has to know.
fn hand(case: &Case<'_>) -> Component {
    let alt = Message::new("letter-hand").with("side", side(case.file.hand));
    Component::Hand { side: case.file.hand, finger: None, alt, figures: Vec::new() }
}

fn facts(case: &Case<'_>, plan: &Plan, detail: LetterDetail) -> Vec<FactRow> {
    let fact = |label: &str, value: Message| FactRow { label: Message::new(label.to_owned()), value, more: None };
    let mut rows = vec![
        fact("letter-from", Message::new("say-date").with("date", case.file.fitted.value)),
        fact("letter-until", Message::new("say-date").with("date", plan.review)),
    ];
    if detail == LetterDetail::Full {
        let named = case
            .conditions
            .iter()
            .map(|treated| fact("letter-for", Message::new(format!("condition-{}-name", treated.id))));
        rows.push(fact("fact-splint", orthosis_name(case)));
        rows.extend(named);
    }
    rows
}

/// The jobs that the case lists. Why a job is left says what ails the hand: only a full letter does.
fn activities(case: &Case<'_>, plan: &Plan, detail: LetterDetail) -> Option<Component> {
    let mut rows = daily::activities(case, plan);
    if detail != LetterDetail::Full {
        rows.iter_mut().for_each(|row| row.why = None);
    }
    daily::table(rows)
}

fn rules(case: &Case<'_>, plan: &Plan, to: LetterReader) -> Vec<Message> {
    let off = if plan.washing() == Washing::Never { "letter-never-off" } else { "letter-leave-on" };
    let urgent = match case.clinic(|clinic| clinic.telephone.as_ref()) {
        Some(number) => Message::new("letter-urgent").with("number", telephone(&number)),
        None => Message::new("letter-urgent-no-number"),
    };
    vec![Message::new(off), Message::new("letter-other-jobs"), Message::new(format!("letter-help-{to}")), urgent]
}
