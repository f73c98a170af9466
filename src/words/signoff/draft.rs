//! Writing down from which English each message was written.

use std::collections::BTreeSet;

use super::{Entry, Ledger, SignOff};
use crate::words::Catalogue;

/// What came of writing drafts down.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drafted {
    /// Messages that are new, or whose text was changed: written from the English of today.
    pub written: Vec<String>,
    /// Messages whose English was changed and whose own text was not: still outdated.
    pub outdated: Vec<String>,
}

/// Writes down every message of a language that is new or was changed. One that was not changed although its English was
/// stays outdated, unless it is among `still_right`.
pub fn draft(ledger: &mut Ledger, own: &Catalogue, first: &Catalogue, still_right: &BTreeSet<String>) -> Drafted {
    let mut drafted = Drafted::default();
    ledger.keep(|id| own.message(id).is_some());
    for (id, _) in own.messages() {
        let (Some(english), Some(text)) = (first.hash(id), own.hash(id)) else { continue };
        let known = ledger.entry(id).cloned();
        match known {
            Some(known) if known.text == text && known.english == english => {}
            Some(known) if known.text == text && !still_right.contains(id) => drafted.outdated.push(id.to_owned()),
            _ => {
                ledger.set(id, Entry { english, text, signed: None });
                drafted.written.push(id.to_owned());
            }
        }
    }
    drafted
}

/// Writes down that somebody qualified has checked these messages as they stand.
pub fn sign(
    ledger: &mut Ledger,
    own: &Catalogue,
    first: &Catalogue,
    messages: impl IntoIterator<Item = String>,
    by: &SignOff,
) {
    for id in messages {
        if let (Some(english), Some(text)) = (first.hash(&id), own.hash(&id)) {
            ledger.set(&id, Entry { english, text, signed: Some(by.clone()) });
        }
    }
}
