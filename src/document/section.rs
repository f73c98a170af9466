//! A section, and what the sections of a guide share.

use std::collections::BTreeMap;

use super::cause;
use super::component::Component;
use super::message::{Arg, Message};
use crate::body::Side;
use crate::case::Case;

/// One section: its template places the components it has.
#[derive(Clone, Debug)]
pub struct Section {
    /// The name of its template in `content/sections`.
    pub id: &'static str,
    pub components: BTreeMap<&'static str, Component>,
    /// Arguments that the template of this section may use besides those of its part.
    pub args: Vec<(&'static str, Arg)>,
}

/// The word messages select the side by.
pub fn side(side: Side) -> Arg {
    Arg::Keyword(side.word())
}

pub fn orthosis_name(case: &Case<'_>) -> Message {
    Message::new(format!("orthosis-{}-name", case.file.orthosis.value))
}

/// The advice of the person's factors for one part of the sheet.
pub fn advice(case: &Case<'_>, area: crate::content::SheetArea) -> Vec<Message> {
    case.factors
        .iter()
        .filter_map(|(own, factor)| Some((own, factor.advice.get(&area)?)))
        .map(|(own, id)| Message::new(format!("factor-{id}")).because(cause::advised(own.as_str(), area)))
        .collect()
}

/// A section with its components, or none when it would be empty.
pub fn filled(id: &'static str, components: Vec<(&'static str, Option<Component>)>) -> Option<Section> {
    let components: BTreeMap<&'static str, Component> =
        components.into_iter().filter_map(|(name, component)| Some((name, component?))).collect();
    (!components.is_empty()).then(|| Section { id, components, args: Vec::new() })
}

/// A telephone number inside a sentence: its groups never part at the end of a line, and keep their order in a sentence
/// from right to left (Unicode Standard Annex 9, isolates).
pub fn telephone(number: &str) -> Arg {
    let whole = number.split_whitespace().collect::<Vec<_>>().join("\u{A0}");
    Arg::Literal(format!("\u{2066}{whole}\u{2069}"))
}

/// Text of a person inside a sentence: it keeps its own direction (Unicode Standard Annex 9, isolates).
pub fn typed(text: &str) -> Arg {
    Arg::Literal(format!("\u{2068}{text}\u{2069}"))
}

/// A list of sentences, or nothing.
pub fn sentences(list: Vec<Message>) -> Option<Component> {
    (!list.is_empty()).then_some(Component::Advice(list))
}
