//! The whole job: a case file in, a guide and its record out.

use std::path::Path;

use serde_json::Value;

use crate::assets::Assets;
use crate::case::{self, Case, CaseFile};
use crate::checks::{self, Admitted, Verdict};
use crate::content::Library;
use crate::diag::Findings;
use crate::document;
use crate::language::Languages;
use crate::output::record;
use crate::plan::{self, Plan};
use crate::source::SourceText;
use crate::typeset::{Pages, Typesetter};
use crate::words::{self, Words};

/// Everything that is loaded once and serves every case.
pub struct Workshop {
    pub assets: Assets,
    pub library: Library,
    pub languages: Languages,
    pub words: Words,
    pub typesetter: Typesetter,
    /// Warnings about the content.
    pub warnings: Findings,
    fingerprint: String,
}

/// What a case became.
pub struct Made {
    pub pdf: Vec<u8>,
    pub pages: Pages,
    pub record: Value,
}

/// How far a case came: judged, and planned when it fits.
pub struct Judged<'a> {
    pub case: Case<'a>,
    pub verdict: Verdict,
    pub planned: Result<(Admitted<'a>, Plan), Findings>,
}

impl Workshop {
    /// Loads the embedded content, with a clinic's folder over it when one is given.
    ///
    /// # Errors
    /// All faults of the content.
    pub fn load(overlay: Option<&Path>) -> Result<Self, Findings> {
        let assets = Assets::embedded();
        Self::from_assets(match overlay {
            Some(folder) => assets.overlaid(folder)?,
            None => assets,
        })
    }

    /// The same from assets already gathered.
    ///
    /// # Errors
    /// All faults of the content.
    pub fn from_assets(assets: Assets) -> Result<Self, Findings> {
        let (library, warnings) = Library::load(&assets)?;
        let languages = Languages::load(&assets)?;
        let words = Words::load(&assets, &languages)?;
        let typesetter = Typesetter::load(&assets)?;
        let fingerprint = assets.fingerprint();
        Ok(Self { assets, library, languages, words, typesetter, warnings, fingerprint })
    }

    /// Reads a case file.
    ///
    /// # Errors
    /// All faults of the file at once, names that lead to nothing among them.
    pub fn read(&self, path: &Path) -> Result<(CaseFile, SourceText), Findings> {
        let source = case::load(path)?;
        match case::read_text(&source) {
            Ok(file) => Ok((file, source)),
            Err(mut findings) => {
                findings.extend(case::known_ids(&source, &self.library, &self.languages));
                Err(findings)
            }
        }
    }

    /// Judges a case, and plans it when it fits.
    ///
    /// # Errors
    /// All faults of the file itself.
    pub fn judge(&self, file: CaseFile, source: SourceText) -> Result<Judged<'_>, Findings> {
        let case = case::resolve(file, source, &self.library, &self.languages)?;
        let (verdict, planned) = match checks::admit(case.clone()) {
            Ok(admitted) => {
                let verdict = admitted.verdict().clone();
                (verdict, plan::make(&admitted).map(|plan| (admitted, plan)))
            }
            Err((findings, verdict)) => (verdict, Err(findings)),
        };
        Ok(Judged { case, verdict, planned })
    }

    /// Case to guide: checks, plan, document, words, pages, files.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn guide(&self, admitted: &Admitted<'_>, plan: &Plan) -> Result<Made, Findings> {
        let document = document::guide(admitted, plan);
        let sheet = words::localise(&self.words, &document)?;
        let pages = self.typesetter.set(&sheet)?;
        let pdf = pages.pdf()?;
        let record = record::record(admitted, plan, &self.fingerprint, pages.count(), sheet.state);
        Ok(Made { pdf, pages, record })
    }
}
