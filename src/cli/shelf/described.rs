//! What is known of an item besides its files: facts that a clinician answers for, names to be found by, its standing.

use std::collections::BTreeMap;

use super::order::hands;
use crate::case::Paper;
use crate::cli::teach::capital;
use crate::content::PrintSize;
use crate::diag::Findings;
use crate::document::{Arg, Message};
use crate::language::Language;
use crate::pipeline::Workshop;
use crate::shelf::facts::{self, Facts};
use crate::shelf::{Item, What};
use crate::standing::{self, Kind};
use crate::words::lint::FIRST;

/// An item with what was worked out of it.
pub struct Described {
    /// Its English name.
    pub title: String,
    pub facts: Facts,
    /// What it is called in every language of the shelf.
    pub names: Vec<String>,
    /// The conditions that it is about, by id.
    pub conditions: Vec<String>,
    pub standing: &'static str,
}

/// Works all of it out.
///
/// # Errors
/// The faults of a case.
pub fn describe(workshop: &Workshop, item: &Item, languages: &[Language]) -> Result<Described, Findings> {
    let library = &workshop.library;
    match &item.what {
        What::Condition { id, finger, .. } => {
            let Some(condition) = library.conditions.get(id) else { return Err(Findings::default()) };
            let shown = if condition.needs_finger() { condition.for_finger(*finger) } else { condition.clone() };
            Ok(Described {
                title: english(workshop, &format!("condition-{id}-name")),
                facts: facts::of_condition(library, &shown),
                names: names(workshop, languages, &[format!("condition-{id}-name")]),
                conditions: vec![id.to_string()],
                standing: worst(workshop, &[standing::Item { kind: Kind::Conditions, id: id.to_string() }]),
            })
        }
        What::Orthosis { id, finger, .. } => {
            let Some(orthosis) = library.orthoses.get(id) else { return Err(Findings::default()) };
            let shown = if orthosis.needs_finger() { orthosis.for_finger(*finger) } else { orthosis.clone() };
            let keys = [format!("orthosis-{id}-name"), format!("orthosis-{id}-short")];
            Ok(Described {
                title: english(workshop, &keys[0]),
                facts: facts::of_orthosis(&shown),
                names: names(workshop, languages, &keys),
                conditions: Vec::new(),
                standing: worst(workshop, &[standing::Item { kind: Kind::Orthoses, id: id.to_string() }]),
            })
        }
        What::Case { source, .. } => {
            let Some(language) = languages.first() else { return Err(Findings::default()) };
            let hands = hands(workshop, source, language, (PrintSize::Standard, Paper::A4))?;
            let mut keys = Vec::new();
            let mut conditions = Vec::new();
            for (admitted, _) in &hands {
                let case = admitted.case();
                for treated in &case.conditions {
                    keys.push(format!("condition-{}-name", treated.id));
                    conditions.push(treated.id.to_string());
                }
                keys.push(format!("orthosis-{}-name", case.file.orthosis.value));
            }
            conditions.dedup();
            Ok(Described {
                title: capital(&item.name.id.replace('-', " ")),
                facts: facts::of_case(&hands),
                names: names(workshop, languages, &keys),
                conditions,
                standing: worst(workshop, &Workshop::used(&hands)),
            })
        }
    }
}

/// The English names of conditions by their ids, in the order of the names.
pub fn conditions(workshop: &Workshop, described: &[Described]) -> Vec<(String, String)> {
    let ids = described.iter().flat_map(|one| &one.conditions);
    let named: BTreeMap<String, String> =
        ids.map(|id| (id.clone(), english(workshop, &format!("condition-{id}-name")))).collect();
    let mut all: Vec<(String, String)> = named.into_iter().collect();
    all.sort_by(|one, other| one.1.cmp(&other.1));
    all
}

/// Orthoses are about the conditions of the shelf for which they come first.
pub fn relate(items: &[Item], described: &mut [Described]) {
    let fits: Vec<(String, String)> = described
        .iter()
        .filter_map(|one| Some((one.conditions.first()?.clone(), one.facts.get(facts::FactKind::Fits.word())?.clone())))
        .collect();
    for (item, own) in items.iter().zip(described) {
        let What::Orthosis { id, .. } = &item.what else { continue };
        let fitting = fits.iter().filter(|(_, fits)| fits.split(", ").any(|fit| fit == id.as_str()));
        own.conditions = fitting.map(|(condition, _)| condition.clone()).collect();
        own.conditions.dedup();
    }
}

/// How far clinicians have confirmed all of these: what the least of them is.
fn worst(workshop: &Workshop, items: &[standing::Item]) -> &'static str {
    let words: Vec<&'static str> = items.iter().map(|item| workshop.standing.state(item).word()).collect();
    ["drafted", "outdated", "confirmed"].into_iter().find(|word| words.contains(word)).unwrap_or("drafted")
}

fn say(workshop: &Workshop, language: &Language, key: &str) -> Option<String> {
    let args = [("side", Arg::Keyword("right")), ("finger", Arg::Keyword("none"))];
    workshop.words.speaker(language).ok()?.say(&Message::new(key.to_owned()), &args).ok()
}

fn english(workshop: &Workshop, key: &str) -> String {
    let first = workshop.languages.iter().find(|entry| entry.tag.as_str() == FIRST);
    let language = first.and_then(|entry| workshop.languages.find(&entry.tag));
    capital(&language.and_then(|language| say(workshop, &language, key)).unwrap_or_else(|| key.to_owned()))
}

fn names(workshop: &Workshop, languages: &[Language], keys: &[String]) -> Vec<String> {
    let mut names = Vec::new();
    for language in languages {
        for key in keys {
            if let Some(name) = say(workshop, language, key)
                && !names.contains(&name)
            {
                names.push(name);
            }
        }
    }
    names
}
