//! The papers of a case as trees: what all of them have in common.

use std::sync::Arc;

use super::cause::{self, Cause};
use super::component::Component;
use super::figures::{Figure, Figures};
use super::kind::{DocumentKind, SheetKind};
use super::message::{Arg, Message};
use super::section::{Section, orthosis_name, side};
use super::{card, diary, exercises, guide, letter};
use crate::body::{Finger, Side};
use crate::case::{Case, Paper};
use crate::checks::Admitted;
use crate::clinic::{Accent, Clinic, Logo, OwnSection, OwnSheet};
use crate::content::{PrintSize, Washing};
use crate::language::Language;
use crate::plan::Plan;
use crate::source::Step;
use crate::units::Date;

/// What the whole sheet has in common.
#[derive(Clone, Debug)]
pub struct Meta {
    pub paper: Paper,
    /// Printed on half of that paper.
    pub half: bool,
    pub print: PrintSize,
    /// The day of the fitting: the date of the document, so that no clock is read. A fact sheet has none.
    pub date: Option<Date>,
    pub description: Message,
}

/// What stands round the text of every page.
#[derive(Clone, Debug)]
pub struct Furniture {
    pub clinic: Option<String>,
    /// Where the clinic is; only on sheets that say it at the top.
    pub address: Option<String>,
    /// The clinic's logo, on sheets with room for one.
    pub logo: Option<Arc<Logo>>,
    /// The clinic's colour.
    pub accent: Option<Accent>,
    pub person: Option<String>,
    pub caution: Message,
}

/// A hand with its plan.
pub type Hand<'a> = (Admitted<'a>, Plan);

/// What a sheet says of one hand.
#[derive(Clone, Debug)]
pub struct Part {
    pub side: Side,
    pub title: Message,
    /// Whose sheet it is and for which hand.
    pub line: Message,
    pub sections: Vec<Section>,
    /// Arguments that every message of this part may use.
    pub args: Vec<(&'static str, Arg)>,
}

/// A sheet, language-free.
#[derive(Clone, Debug)]
pub struct Document {
    pub kind: DocumentKind,
    pub meta: Meta,
    pub furniture: Furniture,
    pub main: Part,
    /// The other hand, when both are treated.
    pub others: Vec<Part>,
    /// Sections of the clinic's own. They are about no hand, so the first part has them.
    pub own: Vec<OwnSection>,
    /// The language asked for; carried, never looked at.
    pub language: Language,
}

impl Document {
    /// The same with a clinic's own look and sections.
    #[must_use]
    pub fn dressed(mut self, clinic: &Clinic) -> Self {
        let sheet = match self.kind {
            DocumentKind::Sheet(SheetKind::Guide | SheetKind::Phone) => Some(OwnSheet::Guide),
            DocumentKind::Sheet(SheetKind::Exercises) => Some(OwnSheet::Exercises),
            DocumentKind::Sheet(SheetKind::Letter) => Some(OwnSheet::Letter),
            DocumentKind::Sheet(SheetKind::Card | SheetKind::Diary) | DocumentKind::Facts(_) => None,
        };
        // A card has one small side: no room is taken from its steps.
        self.furniture.logo = clinic.logo.clone().filter(|_| self.kind != DocumentKind::Sheet(SheetKind::Card));
        self.furniture.accent = clinic.accent();
        self.own = clinic.sections.iter().filter(|section| Some(section.sheet) == sheet).cloned().collect();
        self
    }

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
                    Component::Plates(plates) => plates.iter().map(|plate| &plate.figure).collect(),
                    Component::Steps { items, .. } => items.iter().filter_map(|item| item.figure.as_ref()).collect(),
                    Component::Exercises { rows, .. } => rows.iter().flat_map(|row| &row.figures).collect(),
                    _ => Vec::new(),
                }
            },
        )
    }
}

/// Lays out a sheet of an admitted case: a part for each hand. Nothing when the case has nothing for it, such as exercises
/// where none are allowed.
pub fn sheet(kind: SheetKind, (admitted, plan): &Hand<'_>, others: &[Hand<'_>]) -> Option<Document> {
    let case = admitted.case();
    let mut parts = std::iter::once((case, plan))
        .chain(others.iter().map(|(admitted, plan)| (admitted.case(), plan)))
        .map(|(case, plan)| part(kind, case, plan))
        .filter(|part| !part.sections.is_empty());
    Some(Document {
        kind: DocumentKind::Sheet(kind),
        meta: Meta {
            paper: case.paper(),
            half: kind == SheetKind::Card && case.print() == PrintSize::Standard,
            print: case.print(),
            date: Some(case.file.fitted.value),
            description: description(kind, case),
        },
        furniture: Furniture {
            clinic: case.clinic(|clinic| clinic.name.as_ref()),
            address: matches!(kind, SheetKind::Letter | SheetKind::Phone)
                .then(|| case.clinic(|clinic| clinic.address.as_ref()))
                .flatten(),
            logo: None,
            accent: None,
            person: person(case),
            caution: Message::new(match kind {
                SheetKind::Guide | SheetKind::Phone => "guide-caution",
                SheetKind::Card => "card-caution",
                _ => "sheet-caution",
            }),
        },
        main: parts.next()?,
        others: parts.collect(),
        own: Vec::new(),
        language: case.language.clone(),
    })
}

/// What the file says of itself. Only the guide names what the splint is for: other papers hang on a wall or go to
/// somebody else.
fn description(kind: SheetKind, case: &Case<'_>) -> Message {
    match kind {
        SheetKind::Guide | SheetKind::Phone => Message::new(format!("condition-{}-aim", case.file.condition.value)),
        kind => Message::new(format!("{kind}-description")),
    }
}

fn part(kind: SheetKind, case: &Case<'_>, plan: &Plan) -> Part {
    let figures = Figures::of(case);
    let sections = match kind {
        SheetKind::Guide | SheetKind::Phone => guide::sections(case, plan, &figures),
        SheetKind::Card => vec![card::section(case, plan)],
        SheetKind::Diary => diary::sections(case, plan),
        SheetKind::Exercises => vec![exercises::section(case, plan, &figures)],
        SheetKind::Letter => vec![letter::section(case, plan)],
    };
    let title = match kind {
        SheetKind::Guide | SheetKind::Phone => Message::new("guide-title").with("orthosis", orthosis_name(case)),
        SheetKind::Letter => Message::new("letter-title").with("to", Arg::Keyword(case.letter().to.word())),
        kind => Message::new(format!("{kind}-title")),
    };
    Part {
        side: case.file.hand,
        title: title
            .with("side", side(case.file.hand))
            .because([Cause::case("hand")].into_iter().chain(cause::orthosis(case, &[]))),
        line: if kind == SheetKind::Letter { letter::line(case, person(case)) } else { line(case) },
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
    let name = Cause::Case(vec![Step::field("person"), Step::field("name")]);
    line.with("side", side(case.file.hand)).because([name, Cause::case("hand")])
}

/// The affected finger, for sentences that name it; `none` where the guide is about no single finger.
pub(super) fn finger(finger: Option<Finger>) -> Arg {
    Arg::Keyword(finger.map_or("none", |finger| finger.word()))
}

/// How it comes off in the first phase, for sentences that depend on it.
pub(super) fn washing(washing: Washing) -> &'static str {
    match washing {
        Washing::Freely => "freely",
        Washing::Supported => "supported",
        Washing::Never => "never",
    }
}

/// What every message of a hand may use.
pub fn args(case: &Case<'_>, plan: &Plan) -> Vec<(&'static str, Arg)> {
    vec![
        ("side", side(case.file.hand)),
        ("limit", plan.skin.mark_limit.value.into()),
        ("loosen", plan.skin.loosen_limit.into()),
        ("checks", Arg::Number(i64::from(plan.skin.checks.get()))),
        ("celsius", Arg::Number(i64::from(case.library.general.wash_celsius.get()))),
        ("fitted", plan.phases.first().map_or(case.file.fitted.value, |phase| phase.first).into()),
        ("review", plan.review.into()),
        ("washing", Arg::Keyword(washing(plan.washing()))),
        ("finger", finger(case.finger)),
        ("straps", Arg::Keyword(if case.orthosis.straps.is_empty() { "without" } else { "with" })),
    ]
}
