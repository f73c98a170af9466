//! What changed between two builds of a shelf, grouped so that a clinical lead can read and sign it.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::facts::FactKind;
use super::state::State;

/// A fact that another value took the place of, for every item of which the same is true.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct FactChange {
    /// What it is about: a word of [`FactKind`].
    pub kind: &'static str,
    /// Such as the phase, the joint or the exercise.
    pub of: Vec<String>,
    /// The items, by their names on the shelf.
    pub items: Vec<String>,
    /// Their English names.
    pub titles: Vec<String>,
    /// None when the fact is new.
    pub old: Option<String>,
    /// None when it is no more.
    pub new: Option<String>,
    /// The languages of the handouts that say it.
    pub languages: Vec<String>,
}

impl FactChange {
    pub fn kind(&self) -> Option<FactKind> {
        self.kind.parse().ok()
    }
}

/// Messages whose words changed in the same languages.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct WordChange {
    pub languages: Vec<String>,
    pub messages: Vec<String>,
}

/// An item that came to the shelf or left it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Moved {
    pub item: String,
    pub title: String,
    pub languages: Vec<String>,
}

/// Everything that changed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Changes {
    /// There was no build before this one.
    pub first: bool,
    pub added: Vec<Moved>,
    pub removed: Vec<Moved>,
    pub facts: Vec<FactChange>,
    pub words: Vec<WordChange>,
    /// The version of the program before, when it is another one now.
    pub program: Option<(String, String)>,
    /// The clinic's file, its logo or its sections changed.
    pub clinic: bool,
    /// Files that hold something else than before, or that are new.
    pub made: usize,
    /// Files that are no longer there.
    pub gone: usize,
}

impl Changes {
    /// Whether a reader would find anything different.
    pub const fn is_empty(&self) -> bool {
        self.added.is_empty()
            && self.removed.is_empty()
            && self.facts.is_empty()
            && self.words.is_empty()
            && !self.clinic
            && self.program.is_none()
            && self.made == 0
            && self.gone == 0
    }

    /// Compares what was made last with what is made now.
    pub fn between(old: &State, new: &State) -> Self {
        let first = old.palmleaf.is_empty();
        let moved = |state: &State, item: &str| Moved {
            item: item.to_owned(),
            title: state.items.get(item).map(|known| known.title.clone()).unwrap_or_default(),
            languages: state.languages_of(item).into_iter().map(str::to_owned).collect(),
        };
        let added = new.items.keys().filter(|item| !old.items.contains_key(*item)).map(|item| moved(new, item));
        let removed = old.items.keys().filter(|item| !new.items.contains_key(*item)).map(|item| moved(old, item));
        let of_items = |state: &State| -> BTreeMap<String, String> {
            let of_items = state.files.iter().filter(|(_, kept)| !kept.item.is_empty());
            of_items.map(|(path, kept)| (path.clone(), kept.key.clone())).collect()
        };
        let (before, now) = (of_items(old), of_items(new));
        Self {
            first,
            added: added.collect(),
            removed: removed.collect(),
            facts: facts(old, new),
            words: if first { Vec::new() } else { words(old, new) },
            program: (!first && old.palmleaf != new.palmleaf).then(|| (old.palmleaf.clone(), new.palmleaf.clone())),
            clinic: !first && old.clinic != new.clinic,
            made: now.iter().filter(|(path, key)| before.get(*path) != Some(key)).count(),
            gone: before.keys().filter(|path| !now.contains_key(*path)).count(),
        }
    }
}

/// A changed fact, by kind and what it is of, what it was and what it is.
type Changed<'s> = (FactKind, Vec<&'s str>, Option<&'s str>, Option<&'s str>);

fn facts(old: &State, new: &State) -> Vec<FactChange> {
    let mut groups: BTreeMap<Changed<'_>, Vec<&str>> = BTreeMap::new();
    for (item, now) in &new.items {
        let Some(before) = old.items.get(item) else { continue };
        let keys: BTreeSet<&String> = before.facts.keys().chain(now.facts.keys()).collect();
        for key in keys {
            let (was, is) = (before.facts.get(key).map(String::as_str), now.facts.get(key).map(String::as_str));
            let mut parts = key.split('/');
            let Some(kind) = parts.next().and_then(|kind| kind.parse().ok()) else { continue };
            if was != is {
                groups.entry((kind, parts.collect(), was, is)).or_default().push(item);
            }
        }
    }
    let change = |((kind, of, old_value, new_value), items): (Changed<'_>, Vec<&str>)| {
        let languages: BTreeSet<&str> = items.iter().flat_map(|item| new.languages_of(item)).collect();
        FactChange {
            kind: kind.word(),
            of: of.into_iter().map(str::to_owned).collect(),
            titles: items.iter().filter_map(|item| Some(new.items.get(*item)?.title.clone())).collect(),
            items: items.into_iter().map(str::to_owned).collect(),
            old: old_value.map(str::to_owned),
            new: new_value.map(str::to_owned),
            languages: languages.into_iter().map(str::to_owned).collect(),
        }
    };
    groups.into_iter().map(change).collect()
}

/// Messages that some handout says now and said before, with other words.
fn words(old: &State, new: &State) -> Vec<WordChange> {
    let mut by_message: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for (language, messages) in &new.words {
        let Some(before) = old.words.get(language) else { continue };
        for (id, hash) in messages {
            if before.get(id).is_some_and(|known| known != hash) {
                by_message.entry(id).or_default().push(language);
            }
        }
    }
    let mut groups: BTreeMap<Vec<&str>, Vec<String>> = BTreeMap::new();
    for (id, languages) in by_message {
        groups.entry(languages).or_default().push(id.to_owned());
    }
    let change = |(languages, messages): (Vec<&str>, Vec<String>)| WordChange {
        languages: languages.into_iter().map(str::to_owned).collect(),
        messages,
    };
    groups.into_iter().map(change).collect()
}
