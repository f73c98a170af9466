//! How far each message of a language has been checked, and against which English.
//!
//! Two plain files in the folder of a language say it. `drafted.txt` ships with the words: what each was written from.
//! `signed-off.txt` is a clinic's: who qualified has checked which, and when. A state is never typed in: it follows from
//! the hashes, so that a later change of either text undoes what was signed.

mod draft;
mod ledger;

pub use draft::{Drafted, draft, sign};
pub use ledger::{Entry, HASH_DIGITS, Ledger, SignOff};

use std::collections::BTreeMap;

use super::Catalogue;
use crate::language::WordState;

/// The file that tells from which English each message was written.
pub const DRAFTED: &str = "drafted.txt";
/// The file that tells who has checked which message.
pub const SIGNED_OFF: &str = "signed-off.txt";

/// What a sheet's words are worth: the messages it says, by how far each has been checked.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Said {
    pub messages: BTreeMap<String, WordState>,
}

impl Said {
    /// The state of the whole: that of its worst message.
    pub fn state(&self) -> WordState {
        self.messages.values().copied().max().unwrap_or(WordState::Original)
    }

    /// What two sheets say together: a message is worth what it is worth where it is worth less.
    #[must_use]
    pub fn and(mut self, other: Self) -> Self {
        for (id, state) in other.messages {
            let worst = self.messages.entry(id).or_insert(state);
            *worst = (*worst).max(state);
        }
        self
    }

    /// The messages that nobody qualified has signed off as they stand.
    pub fn open(&self) -> impl Iterator<Item = (&str, WordState)> {
        self.messages.iter().filter(|(_, state)| !state.is_signed()).map(|(id, state)| (id.as_str(), *state))
    }
}

/// The state of one message.
///
/// A message whose English was changed after it was written or signed is outdated. One whose own text was changed after
/// it was signed is drafted again. One that no file knows is drafted: a clinic's own word.
pub fn state(id: &str, catalogue: &Catalogue, first: &Catalogue, ledger: &Ledger) -> WordState {
    if catalogue.tag == first.tag {
        return WordState::Original;
    }
    let (Some(english), Some(own)) = (first.hash(id), catalogue.hash(id)) else { return WordState::Drafted };
    match ledger.entry(id) {
        Some(Entry { signed: Some(_), english: from, text }) if *text == own => {
            if *from == english {
                WordState::SignedOff
            } else {
                WordState::Outdated
            }
        }
        Some(Entry { english: from, .. }) if *from != english => WordState::Outdated,
        _ => WordState::Drafted,
    }
}
