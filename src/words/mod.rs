//! Messages, templates and formats: the tree in the patient's language.
//!
//! `words` sees a document and a language, never a case or a plan. What cannot be said (a missing message, a missing
//! variable, a template error) fails the sheet; nothing is dropped quietly.

mod beside;
mod calendar;
mod catalogue;
mod components;
pub mod escapes;
mod facts;
mod format;
mod letters;
pub mod lint;
mod meta;
mod narrow;
mod plural;
mod prose;
mod pseudo;
mod reminders;
pub mod sense;
mod sheet;
pub mod signoff;
mod speaker;
mod teach_back;
mod template;

pub use beside::beside;
pub use catalogue::{Catalogue, MessageInfo};
pub use format::Formats;
pub use letters::Letters;
pub use meta::{About, bare, page_pieces};
pub use reminders::{SaidEvent, SaidReminders, remind};
pub use sheet::{Sheet, Spoken, localise, overhear, wear};
pub use signoff::{Ledger, Said};
pub use speaker::{Heard, Speaker};
pub use teach_back::{SaidQuestion, SaidTeachBack, ask_back};
pub use template::Templates;

use std::collections::BTreeMap;
use std::sync::{Arc, OnceLock};

use crate::assets::Assets;
use crate::diag::{Diagnostic, Findings};
use crate::document::DocumentKind;
use crate::language::{Language, LanguageEntry, Languages, PSEUDO, WordState};

/// A language, and its messages once they are read.
type Read = (LanguageEntry, OnceLock<Result<Catalogue, Findings>>);

/// The words of all languages. Made once and shared by all threads; a language is read when it is first spoken.
pub struct Words {
    assets: Assets,
    catalogues: BTreeMap<String, Read>,
    /// The pseudo language, which is none of the list.
    pseudo: Option<Read>,
    ledgers: BTreeMap<String, OnceLock<Result<Ledger, Findings>>>,
    templates: Templates,
    /// The most characters of messages that stand in narrow places.
    pub rooms: BTreeMap<String, usize>,
    /// The sections of each sheet, in print order.
    pub sheets: BTreeMap<DocumentKind, Vec<String>>,
}

impl Words {
    /// Whether a folder laid over the content brings words of a language.
    pub(crate) fn is_laid_over(&self, tag: &str) -> bool {
        self.assets.laid_below(&format!("locales/{tag}/")).next().is_some()
    }

    /// Whether a file of words comes from a folder laid over the content.
    pub(crate) fn is_laid(&self, path: &str) -> bool {
        self.assets.is_laid(path)
    }

    /// Loads templates, and makes the languages ready to be read.
    ///
    /// # Errors
    /// All faults of all templates at once. Faults of a language come to light when it is spoken; [`Self::faults`] reads
    /// them all.
    pub fn load(assets: &Assets, languages: &Languages) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let catalogues =
            languages.iter().map(|entry| (entry.tag.to_string(), (entry.clone(), OnceLock::new()))).collect();
        let pseudo = PSEUDO.parse().ok().and_then(|tag| languages.find(&tag));
        let pseudo = pseudo.map(|language| (language.entry, OnceLock::new()));
        let ledgers = languages.iter().map(|entry| (entry.tag.to_string(), OnceLock::new())).collect();
        let templates = Templates::load(assets).map_err(|more| findings.extend(more)).ok();
        let sheets = template::order(assets).map_err(|diagnostic| findings.push(diagnostic)).ok();
        let rooms = narrow::load(assets).map_err(|more| findings.extend(more)).ok();
        match (templates, sheets, rooms) {
            (Some(templates), Some(sheets), Some(rooms)) if !findings.has_errors() => {
                Ok(Self { assets: assets.clone(), catalogues, pseudo, ledgers, templates, rooms, sheets })
            }
            _ => Err(findings),
        }
    }

    /// A speaker of a language.
    ///
    /// # Errors
    /// When its messages cannot be read, or its locale or region is not known to the formats.
    pub fn speaker(&self, language: &Language) -> Result<Speaker<'_>, Diagnostic> {
        let none = || {
            let message = format!("there are no words for `{}`", language.tag);
            Diagnostic::outside(crate::diag::Code::WORDS_MISSING, message)
        };
        match self.read(language.entry.tag.as_str()) {
            Some(Ok(catalogue)) => Ok(Speaker::new(catalogue, Formats::new(language)?)),
            Some(Err(findings)) => Err(findings.sorted().into_iter().next().cloned().unwrap_or_else(none)),
            None => Err(none()),
        }
    }

    fn read(&self, tag: &str) -> Option<&Result<Catalogue, Findings>> {
        let (entry, once) = if tag == PSEUDO { self.pseudo.as_ref()? } else { self.catalogues.get(tag)? };
        Some(once.get_or_init(|| Catalogue::load(&self.assets, entry)))
    }

    /// What is known of how far the messages of a language have been checked.
    pub fn ledger(&self, tag: &str) -> Option<&Result<Ledger, Findings>> {
        Some(self.ledgers.get(tag)?.get_or_init(|| Ledger::load(&self.assets, tag)))
    }

    /// How far these messages of a language have been checked.
    ///
    /// # Errors
    /// When the files that tell it, or the words they are held against, cannot be read.
    pub fn said(&self, tag: &str, messages: &BTreeMap<Arc<str>, String>) -> Result<Said, Findings> {
        let whole = match tag {
            lint::FIRST => Some(WordState::Original),
            PSEUDO => Some(WordState::Drafted),
            _ => None,
        };
        if let Some(state) = whole {
            return Ok(Said { messages: messages.keys().map(|id| (id.to_string(), state)).collect() });
        }
        let (Some(own), Some(first), Some(ledger)) = (self.read(tag), self.read(lint::FIRST), self.ledger(tag)) else {
            return Ok(Said::default());
        };
        let (own, first) = (own.as_ref().map_err(Clone::clone)?, first.as_ref().map_err(Clone::clone)?);
        let ledger = ledger.as_ref().map_err(Clone::clone)?;
        let messages = messages.keys().map(|id| (id.to_string(), signoff::state(id, own, first, ledger))).collect();
        Ok(Said { messages })
    }

    /// How far all messages of a language have been checked, those for clinicians and students left out.
    ///
    /// # Errors
    /// As [`Self::said`].
    pub fn whole(&self, tag: &str) -> Result<Said, Findings> {
        let ids = self.catalogue(tag).into_iter().flat_map(Catalogue::messages);
        self.said(tag, &ids.filter(|(_, info)| !info.staff).map(|(id, _)| (Arc::from(id), String::new())).collect())
    }

    /// Every fault of every language's files.
    pub fn faults(&self) -> Findings {
        let mut findings = Findings::default();
        for tag in self.catalogues.keys() {
            if let Some(Err(more)) = self.read(tag) {
                findings.extend(more.clone());
            }
            if let Some(Err(more)) = self.ledger(tag) {
                findings.extend(more.clone());
            }
        }
        findings
    }

    pub fn templates(&self) -> &Templates {
        &self.templates
    }

    /// The letters that a language is written in.
    pub fn letters(&self, tag: &str) -> Option<Letters> {
        self.catalogues.get(tag).map(|(entry, _)| Letters::of(entry))
    }

    /// The messages of a language, when they can be read.
    pub fn catalogue(&self, tag: &str) -> Option<&Catalogue> {
        self.read(tag)?.as_ref().ok()
    }

    /// The messages of every language that can be read.
    pub fn catalogues(&self) -> impl Iterator<Item = (&str, &Catalogue)> {
        self.catalogues.keys().filter_map(|tag| Some((tag.as_str(), self.catalogue(tag)?)))
    }
}
