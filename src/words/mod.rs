//! Messages, templates and formats: the tree in the patient's language.
//!
//! `words` sees a document and a language, never a case or a plan. What cannot be said (a missing message, a missing
//! variable, a template error) fails the sheet; nothing is dropped quietly.

mod calendar;
mod catalogue;
mod components;
mod format;
pub mod lint;
mod plural;
mod prose;
mod sheet;
mod speaker;
mod template;

pub use catalogue::Catalogue;
pub use format::Formats;
pub use sheet::{Sheet, localise};
pub use speaker::Speaker;
pub use template::Templates;

use std::collections::BTreeMap;

use crate::assets::Assets;
use crate::diag::{Diagnostic, Findings};
use crate::language::{Language, Languages};

/// The words of all languages, ready to speak. Made once and shared by all threads.
pub struct Words {
    catalogues: BTreeMap<String, Catalogue>,
    templates: Templates,
    /// The sections of a guide, in print order.
    pub guide: Vec<String>,
}

impl Words {
    /// Loads messages and templates.
    ///
    /// # Errors
    /// All faults of all files at once.
    pub fn load(assets: &Assets, languages: &Languages) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let mut catalogues = BTreeMap::new();
        for entry in languages.iter() {
            match Catalogue::load(assets, entry) {
                Ok(catalogue) => {
                    catalogues.insert(entry.tag.to_string(), catalogue);
                }
                Err(more) => findings.extend(more),
            }
        }
        let templates = Templates::load(assets).map_err(|more| findings.extend(more)).ok();
        let guide = template::order(assets).map_err(|diagnostic| findings.push(diagnostic)).ok();
        match (templates, guide) {
            (Some(templates), Some(guide)) if !findings.has_errors() => Ok(Self { catalogues, templates, guide }),
            _ => Err(findings),
        }
    }

    /// A speaker of a language.
    ///
    /// # Errors
    /// When the locale of the language or region is not known to the formats.
    pub fn speaker(&self, language: &Language) -> Result<Speaker<'_>, Diagnostic> {
        let catalogue = self.catalogues.get(language.entry.tag.as_str()).ok_or_else(|| {
            Diagnostic::outside(crate::diag::Code::WORDS_MISSING, format!("there are no words for `{}`", language.tag))
        })?;
        Ok(Speaker::new(catalogue, Formats::new(language)?))
    }

    pub fn templates(&self) -> &Templates {
        &self.templates
    }

    pub fn catalogue(&self, tag: &str) -> Option<&Catalogue> {
        self.catalogues.get(tag)
    }

    pub fn catalogues(&self) -> impl Iterator<Item = (&str, &Catalogue)> {
        self.catalogues.iter().map(|(tag, catalogue)| (tag.as_str(), catalogue))
    }
}
