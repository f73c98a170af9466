//! Everything of a language that goes to a translator.

use std::collections::BTreeMap;

use super::branches::{Branch, Choices, Piece, branches, choices, skeleton};
use crate::language::WordState;
use crate::words::signoff::{self, Ledger};
use crate::words::{Catalogue, Formats};

/// Where a message is heard, for the translator.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Hint {
    /// The sheets that say it.
    pub sheets: Vec<String>,
    /// One English sentence as it was said, with real values.
    pub sample: Option<String>,
}

/// A sentence to translate.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unit {
    /// The message, and which of its choices: `guide-title:side.left`.
    pub id: String,
    /// The English of it.
    pub source: Vec<Piece>,
    /// None when the language has no such message yet.
    pub target: Option<Vec<Piece>>,
}

/// A message with all of its sentences.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Packed {
    pub id: String,
    pub state: WordState,
    pub choices: Choices,
    pub units: Vec<Unit>,
    pub hint: Hint,
    /// The most characters that fit where it stands, for what stands in a narrow place.
    pub room: Option<usize>,
}

/// A language's messages by area: the name of their file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Package {
    /// The tag of the language that is translated from.
    pub from: String,
    /// The tag of the language.
    pub language: String,
    pub areas: BTreeMap<String, Vec<Packed>>,
}

impl Package {
    pub fn messages(&self) -> impl Iterator<Item = &Packed> {
        self.areas.values().flatten()
    }
}

/// Packs the messages of a language; those that only clinicians and students read stay at home.
///
/// A message that the language lacks is packed with the choices of the English one, in the language's own plurals.
pub fn package(
    first: &Catalogue,
    own: &Catalogue,
    ledger: &Ledger,
    formats: &Formats,
    hints: &BTreeMap<String, Hint>,
    rooms: &BTreeMap<String, usize>,
) -> Package {
    let mut areas: BTreeMap<String, Vec<Packed>> = BTreeMap::new();
    for (id, info) in first.messages().filter(|(_, info)| !info.staff) {
        let translated = own.message(id);
        let choices = match translated {
            Some(translated) => choices(&translated.entry),
            None => skeleton(&choices(&info.entry), &formats.plural_categories()),
        };
        let english = branches(&info.entry, &choices);
        let targets: Vec<Option<Branch>> = match translated {
            Some(translated) => branches(&translated.entry, &choices).into_iter().map(Some).collect(),
            None => english.iter().map(|_| None).collect(),
        };
        let units = english
            .into_iter()
            .zip(targets)
            .map(|(english, target)| Unit {
                id: unit_id(id, &english),
                source: english.pieces,
                target: target.map(|target| target.pieces),
            })
            .collect();
        areas.entry(area(&info.place)).or_default().push(Packed {
            id: id.to_owned(),
            state: signoff::state(id, own, first, ledger),
            choices,
            units,
            hint: hints.get(id).cloned().unwrap_or_default(),
            room: rooms.get(id).copied(),
        });
    }
    Package { from: first.tag.clone(), language: own.tag.clone(), areas }
}

/// How a unit is called: its message, and after a colon which of its choices.
pub fn unit_id(message: &str, branch: &Branch) -> String {
    match branch.path() {
        path if path.is_empty() => message.to_owned(),
        path => format!("{message}:{path}"),
    }
}

/// The area of a message: the name of its file without folder and ending.
pub fn area(place: &crate::source::Place) -> String {
    place.source.name().rsplit('/').next().unwrap_or_default().trim_end_matches(".ftl").to_owned()
}
