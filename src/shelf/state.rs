//! What a shelf has made: its state file. Plain and in order, so that two runs write the same bytes.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

/// The state file, in the folder of the handouts.
pub const STATE: &str = "shelf-state.json";

/// A file that the shelf made.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kept {
    /// Of the item that it is of; empty for what is of the shelf as a whole.
    pub item: String,
    /// The tag of its language; empty likewise.
    pub language: String,
    /// A hash of everything that it was made from.
    pub key: String,
    /// BLAKE3 of its bytes.
    pub blake3: String,
}

/// An item with what a clinician answers for: facts by kind and what they are of, such as `hours/night-wear`.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ItemState {
    /// Its English name.
    pub title: String,
    pub facts: BTreeMap<String, String>,
}

/// Everything that is known of the last build.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct State {
    /// The version of the program.
    pub palmleaf: String,
    /// A hash of all that went in. While it stays and no file was touched, nothing has to be made.
    pub stamp: String,
    /// A hash of the clinic's own file and what it names; empty where there is none.
    pub clinic: String,
    pub files: BTreeMap<String, Kept>,
    /// Files that are no longer wanted and that somebody changed, by the hash of what the shelf had made.
    pub left: BTreeMap<String, String>,
    pub items: BTreeMap<String, ItemState>,
    /// By language, a hash of each message that some handout says.
    pub words: BTreeMap<String, BTreeMap<String, String>>,
}

impl State {
    /// Reads a state file.
    ///
    /// # Errors
    /// When it is none.
    pub fn read(text: &str) -> Result<Self, String> {
        serde_json::from_str(text).map_err(|why| why.to_string())
    }

    /// The text of the state file.
    pub fn text(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default() + "\n"
    }

    /// The languages that an item has files in.
    pub fn languages_of<'s>(&'s self, item: &'s str) -> BTreeSet<&'s str> {
        let files = self.files.values().filter(|kept| kept.item == item && !kept.language.is_empty());
        files.map(|kept| kept.language.as_str()).collect()
    }
}
