//! Whether a clinician has confirmed what the content says.
//!
//! Each condition, orthosis, exercise and activity is drafted until somebody qualified confirms it. What is confirmed is
//! kept as a hash of the file and its English words, so that any later change makes the confirmation outdated.

mod used;

pub use used::used;

use std::collections::BTreeMap;
use std::fmt;
use std::str::FromStr;

use crate::assets::Assets;
use crate::content::{Confirmation, Library};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{is_id, nearest};
use crate::source::choice;
use crate::units::{Date, Misread};
use crate::words::Catalogue;

choice! {
    /// What can be confirmed.
    pub enum Kind ("kind of content") {
        Conditions = "conditions",
        Orthoses = "orthoses",
        Exercises = "exercises",
        Activities = "activities",
    }
}

impl Kind {
    /// How the messages of this kind begin.
    const fn word_of_messages(self) -> &'static str {
        match self {
            Self::Conditions => "condition",
            Self::Orthoses => "orthosis",
            Self::Exercises => "exercise",
            Self::Activities => "activity",
        }
    }
}

/// One file of content: `conditions/swan-neck`.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Item {
    pub kind: Kind,
    pub id: String,
}

impl fmt::Display for Item {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.kind, self.id)
    }
}

impl FromStr for Item {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let shape = || {
            Misread::new(format!("`{text}` names no file of content"), "kind and id, such as `orthoses/wrist-splint`")
        };
        let (kind, id) = text.split_once('/').ok_or_else(shape)?;
        if !is_id(id) {
            return Err(shape());
        }
        Ok(Self { kind: kind.parse()?, id: id.to_owned() })
    }
}

/// How far an item has been confirmed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum State {
    /// Nobody qualified has looked at it.
    Drafted,
    /// Confirmed as it stands.
    Confirmed { by: String, on: Date },
    /// Confirmed once, and changed since.
    Outdated { by: String, on: Date },
}

impl State {
    pub const fn word(&self) -> &'static str {
        match self {
            Self::Drafted => "drafted",
            Self::Confirmed { .. } => "confirmed",
            Self::Outdated { .. } => "outdated",
        }
    }

    pub const fn is_confirmed(&self) -> bool {
        matches!(self, Self::Confirmed { .. })
    }
}

impl fmt::Display for State {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Drafted => f.write_str("drafted"),
            Self::Confirmed { by, on } => write!(f, "confirmed by {by} on {on}"),
            Self::Outdated { by, on } => write!(f, "outdated: changed since {by} confirmed it on {on}"),
        }
    }
}

/// The state of every item.
#[derive(Clone, Debug)]
pub struct Standing {
    states: BTreeMap<Item, State>,
}

impl Standing {
    /// Works out the states of a content. `words` gives those of the language that the content is
    /// written in; they are read only when something has been confirmed.
    pub fn of<'w>(library: &Library, assets: &Assets, words: impl Fn() -> Option<&'w Catalogue>) -> Self {
        let last: BTreeMap<&str, &Confirmation> =
            library.confirmed.iter().map(|confirmation| (confirmation.item.as_str(), confirmation)).collect();
        let states = items(library)
            .map(|item| {
                let state = match last.get(item.to_string().as_str()) {
                    None => State::Drafted,
                    Some(known) if known.hash == hash(&item, assets, words()) => {
                        State::Confirmed { by: known.by.clone(), on: known.on }
                    }
                    Some(known) => State::Outdated { by: known.by.clone(), on: known.on },
                };
                (item, state)
            })
            .collect();
        Self { states }
    }

    pub fn all(&self) -> impl Iterator<Item = (&Item, &State)> {
        self.states.iter()
    }

    pub fn state(&self, item: &Item) -> &State {
        self.states.get(item).unwrap_or(&State::Drafted)
    }

    /// The item a person means: `orthoses/ID`, or the bare id where only one kind has it.
    ///
    /// # Errors
    /// When nothing, or more than one thing, is called so.
    pub fn find(&self, text: &str) -> Result<Item, Misread> {
        if let Ok(item) = text.parse::<Item>()
            && self.states.contains_key(&item)
        {
            return Ok(item);
        }
        let called: Vec<&Item> = self.states.keys().filter(|item| item.id == text).collect();
        match called.as_slice() {
            [one] => Ok((*one).clone()),
            [] => {
                let names: Vec<String> = self.states.keys().map(ToString::to_string).collect();
                let near = nearest(
                    text,
                    names.iter().map(String::as_str).chain(self.states.keys().map(|item| item.id.as_str())),
                );
                let write = near.map_or_else(
                    || "an item that `palmleaf content status` shows".to_owned(),
                    |near| format!("`{near}`"),
                );
                Err(Misread::new(format!("nothing in the content is called `{text}`"), write))
            }
            several => {
                let names: Vec<String> = several.iter().map(|item| format!("`{item}`")).collect();
                Err(Misread::new(
                    format!("`{text}` is the name of several things"),
                    format!("one of: {}", names.join(", ")),
                ))
            }
        }
    }

    /// A fault that names every one of these items that is not confirmed.
    pub fn require_confirmed(&self, items: &[Item]) -> Findings {
        let open: Vec<String> = items
            .iter()
            .filter(|item| !self.state(item).is_confirmed())
            .map(|item| format!("{item}: {}", self.state(item)))
            .collect();
        if open.is_empty() {
            return Findings::default();
        }
        let message = format!("{} of the {} files this case uses are not confirmed", open.len(), items.len());
        let mut diagnostic = Diagnostic::outside(Code::NOT_CONFIRMED, message).help(
            "have them read by a clinician, then `palmleaf content confirm ITEM… --by … --on DATE --content DIR`",
        );
        for line in open {
            diagnostic = diagnostic.note(line);
        }
        diagnostic.note("nothing was written").into()
    }
}

/// All items, by kind and id.
pub fn items(library: &Library) -> impl Iterator<Item = Item> {
    let of = |kind: Kind, ids: Vec<String>| ids.into_iter().map(move |id| Item { kind, id });
    of(Kind::Conditions, library.conditions.keys().map(ToString::to_string).collect())
        .chain(of(Kind::Orthoses, library.orthoses.keys().map(ToString::to_string).collect()))
        .chain(of(Kind::Exercises, library.exercises.keys().map(ToString::to_string).collect()))
        .chain(of(Kind::Activities, library.activities.keys().map(ToString::to_string).collect()))
}

/// A hash of the file and of its own English words.
pub fn hash(item: &Item, assets: &Assets, words: Option<&Catalogue>) -> String {
    let mut hasher = blake3::Hasher::new();
    if let Some(bytes) = assets.bytes(&format!("content/{item}.yaml")) {
        hasher.update(&bytes);
    }
    let prefix = format!("{}-{}-", item.kind.word_of_messages(), item.id);
    for (id, text) in words.into_iter().flat_map(|words| words.texts(&prefix)) {
        for part in [id.as_bytes(), text.as_bytes()] {
            hasher.update(&(part.len() as u64).to_le_bytes());
            hasher.update(part);
        }
    }
    hasher.finalize().to_hex()[..16].to_owned()
}
