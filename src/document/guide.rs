//! The patient's guide as a tree.

use super::component::Component;
use super::figures::{Figure, Figures};
use super::message::{Arg, Message};
use super::section::{Section, orthosis_name, side};
use super::{calls, daily, dates, glance, handling, moves};
use crate::body::Side;
use crate::case::{Case, Paper};
use crate::checks::Admitted;
use crate::content::{PrintSize, Washing};
use crate::language::Language;
use crate::plan::Plan;
use crate::units::Date;

/// What the whole sheet has in common.
#[derive(Clone, Debug)]
pub struct Meta {
    pub paper: Paper,
    pub print: PrintSize,
    /// The day of the fitting: the date of the document, so that no clock is read.
    pub date: Date,
    pub description: Message,
}

/// What stands round the text of every page.
#[derive(Clone, Debug)]
pub struct Furniture {
    pub clinic: Option<String>,
    pub person: Option<String>,
    pub caution: Message,
}

/// The guide for one hand.
#[derive(Clone, Debug)]
pub struct Part {
    pub side: Side,
    pub title: Message,
    /// Whose guide it is and for which hand.
    pub line: Message,
    pub sections: Vec<Section>,
    /// Arguments that every message of this part may use.
    pub args: Vec<(&'static str, Arg)>,
}

/// A sheet, language-free.
#[derive(Clone, Debug)]
pub struct Document {
    pub meta: Meta,
    pub furniture: Furniture,
    pub main: Part,
    /// The other hand, when both are treated.
    pub others: Vec<Part>,
    /// The language asked for; carried, never looked at.
    pub language: Language,
}

impl Document {
    /// All parts, in print order.
    pub fn parts(&self) -> impl Iterator<Item = &Part> {
        std::iter::once(&self.main).chain(&self.others)
    }
}

impl Document {
    /// Every picture in it.
    pub fn figures(&self) -> impl Iterator<Item = &Figure> {
        self.parts().flat_map(|part| &part.sections).flat_map(|section| section.components.values()).flat_map(
            |component| -> Vec<&Figure> {
                match component {
                    Component::Hand { figures, .. } | Component::Spots { figures, .. } => figures.iter().collect(),
                    Component::Steps { items, .. } => items.iter().filter_map(|item| item.figure.as_ref()).collect(),
                    Component::Exercises { rows, .. } => rows.iter().flat_map(|row| &row.figures).collect(),
                    _ => Vec::new(),
                }
            },
        )
    }
}

/// Lays out the guide of an admitted case: a part for each hand.
pub fn guide((admitted, plan): &(Admitted<'_>, Plan), others: &[(Admitted<'_>, Plan)]) -> Document {
    let case = admitted.case();
    Document {
        meta: Meta {
            paper: case.paper(),
            print: case.print(),
            date: case.file.fitted.value,
            description: Message::new(format!("condition-{}-aim", case.file.condition.value)),
        },
        furniture: Furniture {
            clinic: case.clinic(|clinic| clinic.name.as_ref()),
            person: person(case),
            caution: Message::new("guide-caution"),
        },
        main: part(case, plan),
        others: others.iter().map(|(admitted, plan)| part(admitted.case(), plan)).collect(),
        language: case.language.clone(),
    }
}

fn part(case: &Case<'_>, plan: &Plan) -> Part {
    let figures = Figures::of(case);
    let sections = vec![
        glance::section(case, plan, &figures),
        dates::section(case, plan),
        handling::on_off(case, plan, &figures),
        handling::skin(case, plan, &figures),
        moves::section(case, plan, &figures),
        daily::section(case, plan),
        handling::care(case, plan),
        calls::note(case),
        calls::section(case, plan),
    ];
    Part {
        side: case.file.hand,
        title: Message::new("guide-title").with("orthosis", orthosis_name(case)).with("side", side(case.file.hand)),
        line: line(case),
        sections: sections.into_iter().flatten().collect(),
        args: args(case, plan),
    }
}

fn person(case: &Case<'_>) -> Option<String> {
    case.file.person.as_ref().and_then(|person| person.name.as_ref()).map(|name| name.as_str().to_owned())
}

fn line(case: &Case<'_>) -> Message {
    let line = match person(case) {
        Some(name) => Message::new("guide-made-for").with("name", Arg::Literal(name)),
        None => Message::new("guide-made-for-nobody"),
    };
    line.with("side", side(case.file.hand))
}

/// The affected finger, for sentences that name it; `none` where the guide is about no single finger.
fn finger(case: &Case<'_>) -> Arg {
    Arg::Keyword(case.finger.map_or("none", |finger| finger.word()))
}

/// How it comes off in the first phase, for sentences that depend on it.
fn washing(plan: &Plan) -> &'static str {
    match plan.washing() {
        Washing::Freely => "freely",
        Washing::Supported => "supported",
        Washing::Never => "never",
    }
}

fn args(case: &Case<'_>, plan: &Plan) -> Vec<(&'static str, Arg)> {
    vec![
        ("side", side(case.file.hand)),
        ("limit", plan.skin.mark_limit.value.into()),
        ("loosen", plan.skin.loosen_limit.into()),
        ("checks", Arg::Number(i64::from(plan.skin.checks.get()))),
        ("celsius", Arg::Number(i64::from(case.library.general.wash_celsius.get()))),
        ("fitted", plan.phases.first().map_or(case.file.fitted.value, |phase| phase.first).into()),
        ("review", plan.review.into()),
        ("washing", Arg::Keyword(washing(plan))),
        ("finger", finger(case)),
        ("straps", Arg::Keyword(if case.orthosis.straps.is_empty() { "without" } else { "with" })),
    ]
}
