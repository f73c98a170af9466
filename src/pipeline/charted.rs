//! The record of what was given, for the person's chart.

use std::collections::BTreeMap;

use serde_json::Value;

use super::{Planned, Workshop};
use crate::diag::Findings;
use crate::document;
use crate::language::{Language, WordState};
use crate::output::record::{self, ClinicFile, GivenFacts, Record, Sources, page};
use crate::typeset::Pages;
use crate::words;

impl Workshop {
    /// The record of what was given, sheet by sheet, in words that have been checked so far.
    ///
    /// # Errors
    /// When its questions cannot be said.
    pub fn record(
        &self,
        hands: &[Planned<'_>],
        sheets: BTreeMap<&'static str, GivenFacts>,
        state: WordState,
    ) -> Result<Record, Findings> {
        let (Some((first, _)), Some(clinician)) = (hands.first(), self.clinician()) else {
            return Err(Findings::default());
        };
        let language = &first.case().language;
        let asked = words::ask_back(&self.words, &clinician, language, &document::teach_back(hands))?;
        let said = (state, asked.as_slice());
        let clinic =
            self.clinic.as_ref().map(|clinic| ClinicFile { file: clinic.file_name(), hash: clinic.hash.clone() });
        let sources = Sources { standing: &self.standing, content: &self.fingerprint, clinic };
        record::record(hands, sources, sheets, said).ok_or_else(Findings::default)
    }

    /// The record as a page for the chart.
    ///
    /// # Errors
    /// When the page cannot be said or set.
    pub fn record_page(&self, record: &Record, hands: &[Planned<'_>]) -> Result<Pages, Findings> {
        Ok(self.typesetter.set_record(&self.record_tree(record, hands)?)?)
    }

    /// The record's page before it is set.
    ///
    /// # Errors
    /// When it cannot be said.
    pub fn record_tree(&self, record: &Record, hands: &[Planned<'_>]) -> Result<Value, Findings> {
        let (Some((first, _)), Some(clinician)) = (hands.first(), self.clinician()) else {
            return Err(Findings::default());
        };
        let case = first.case();
        let setting = page::Setting {
            person: &case.language,
            clinician: &clinician,
            paper: case.paper(),
            date: case.file.fitted.value,
        };
        let (own, theirs) = (self.words.speaker(&clinician)?, self.words.speaker(&case.language)?);
        Ok(page::page(record, own, &theirs, &setting)?)
    }

    /// The language that clinicians read.
    fn clinician(&self) -> Option<Language> {
        let entry = self.languages.iter().find(|entry| entry.tag.as_str() == words::lint::FIRST)?;
        Some(Language { tag: entry.tag.clone(), entry: entry.clone() })
    }
}
