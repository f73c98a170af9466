//! The patient's guide as a tree.

use super::message::{Arg, Message};
use super::section::{Section, orthosis_name, side};
use super::{calls, daily, dates, glance, handling, moves};
use crate::body::Side;
use crate::case::{Case, Paper, PrintSize};
use crate::checks::Admitted;
use crate::content::Washing;
use crate::language::Language;
use crate::plan::Plan;
use crate::units::Date;

/// What the whole sheet has in common.
#[derive(Clone, Debug)]
pub struct Meta {
    pub side: Side,
    pub paper: Paper,
    pub print: PrintSize,
    /// The day of the fitting: the date of the document, so that no clock is read.
    pub date: Date,
    pub title: Message,
    pub description: Message,
}

/// What stands round the text of every page.
#[derive(Clone, Debug)]
pub struct Furniture {
    pub clinic: Option<String>,
    pub person: Option<String>,
    /// Whose guide it is and for which hand.
    pub line: Message,
    pub caution: Message,
}

/// A sheet, language-free.
#[derive(Clone, Debug)]
pub struct Document {
    pub meta: Meta,
    pub furniture: Furniture,
    pub sections: Vec<Section>,
    /// Arguments that every message of the sheet may use.
    pub args: Vec<(&'static str, Arg)>,
    /// The language asked for; carried, never looked at.
    pub language: Language,
}

/// Lays out the guide of an admitted case.
pub fn guide(admitted: &Admitted<'_>, plan: &Plan) -> Document {
    let case = admitted.case();
    let sections = vec![
        glance::section(case, plan),
        dates::section(case, plan),
        handling::on_off(case, plan),
        handling::skin(case, plan),
        moves::section(case, plan),
        daily::section(case, plan),
        handling::care(case),
        calls::note(case),
        calls::section(case, plan),
    ];
    Document {
        meta: Meta {
            side: case.file.hand,
            paper: case.paper(),
            print: case.print(),
            date: case.file.fitted.value,
            title: Message::new("guide-title").with("orthosis", orthosis_name(case)).with("side", side(case.file.hand)),
            description: Message::new(format!("condition-{}-aim", case.file.condition.value)),
        },
        furniture: furniture(case),
        sections: sections.into_iter().flatten().collect(),
        args: args(case, plan),
        language: case.language.clone(),
    }
}

fn furniture(case: &Case<'_>) -> Furniture {
    let person = case.file.person.as_ref().and_then(|person| person.name.as_ref()).map(|name| name.as_str().to_owned());
    let line = match &person {
        Some(name) => Message::new("guide-made-for").with("name", Arg::Literal(name.clone())),
        None => Message::new("guide-made-for-nobody"),
    };
    Furniture {
        clinic: case.clinic(|clinic| clinic.name.as_ref()),
        person,
        line: line.with("side", side(case.file.hand)),
        caution: Message::new("guide-caution"),
    }
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
    ]
}
