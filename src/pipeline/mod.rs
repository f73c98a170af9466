//! The whole job: a case file in, a guide and its record out.

mod beside;
mod bound;
mod charted;
mod origins;
mod printed;

pub use origins::{Led, Origin, SectionOrigins, Sentence};
pub use printed::{Calendar, Form, Made, Printed};

use std::path::Path;

use serde_json::Value;

use crate::assets::Assets;
use crate::case::{self, Case, CaseFile};
use crate::checks::{self, Admitted, Verdict};
use crate::clinic::{Clinic, OwnSheet};
use crate::content::Library;
use crate::diag::Findings;
use crate::document::{self, Document, DocumentKind, SheetKind};
use crate::language::{Language, Languages};
use crate::picture::album::Album;
use crate::plan::{self, Plan};
use crate::readability::{self, Readability, Yardsticks};
use crate::source::SourceText;
use crate::standing::{self, Item, Standing};
use crate::typeset::{Pages, Typesetter};
use crate::words::{self, Sheet, Words};

/// Everything that is loaded once and serves every case.
pub struct Workshop {
    pub assets: Assets,
    pub library: Library,
    pub languages: Languages,
    pub words: Words,
    /// What each language is measured by when it is read.
    pub yardsticks: Yardsticks,
    pub typesetter: Typesetter,
    /// Warnings about the content.
    pub warnings: Findings,
    /// What clinicians have confirmed of it.
    pub standing: Standing,
    /// The pictures that were drawn; in memory only until [`Self::keep_pictures`].
    pub album: Album,
    /// A clinic's own look and words; it held against this content.
    clinic: Option<Clinic>,
    fingerprint: String,
}

/// How far one hand of a case came: judged, and planned when it fits.
pub struct Judged<'a> {
    pub case: Case<'a>,
    /// One for each condition.
    pub verdicts: Vec<Verdict>,
    pub planned: Result<(Admitted<'a>, Plan), Findings>,
    /// The other hand, when both are treated.
    pub other: Option<Box<Judged<'a>>>,
}

/// A hand with its plan.
pub type Planned<'a> = (Admitted<'a>, Plan);

impl<'a> Judged<'a> {
    /// This hand and the other one.
    pub fn hands(&self) -> impl Iterator<Item = &Judged<'a>> {
        std::iter::once(self).chain(self.other.as_deref())
    }

    /// The plans of all hands.
    ///
    /// # Errors
    /// Whatever keeps any hand from having one.
    pub fn plans(self) -> Result<Vec<Planned<'a>>, Findings> {
        let mut findings = Findings::default();
        let mut plans = Vec::new();
        let other = self.other.map(|other| other.planned);
        for planned in std::iter::once(self.planned).chain(other) {
            match planned {
                Ok(planned) => plans.push(planned),
                Err(faults) => findings.extend(faults),
            }
        }
        if findings.has_errors() { Err(findings) } else { Ok(plans) }
    }

    /// Everything that keeps this case from becoming a guide.
    pub fn faults(&self) -> Findings {
        let mut findings = Findings::default();
        self.hands().filter_map(|hand| hand.planned.as_ref().err()).for_each(|faults| findings.extend(faults.clone()));
        findings
    }
}

impl Workshop {
    /// The hash of all content and words that [`Self::load`] would load, without loading it.
    ///
    /// # Errors
    /// When the folder or one of its files cannot be read.
    pub fn fingerprint_of(overlay: Option<&Path>) -> Result<String, Findings> {
        let assets = Assets::embedded();
        Ok(match overlay {
            Some(folder) => assets.overlaid(folder)?,
            None => assets,
        }
        .fingerprint())
    }

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

    /// Loads the embedded content with a folder of words over it, one folder for each language.
    ///
    /// # Errors
    /// All faults of the content.
    pub fn with_locales(folder: &Path) -> Result<Self, Findings> {
        Self::from_assets(Assets::embedded().with_locales(folder)?)
    }

    /// The same from assets already gathered.
    ///
    /// # Errors
    /// All faults of the content.
    pub fn from_assets(assets: Assets) -> Result<Self, Findings> {
        let (library, warnings) = Library::load(&assets)?;
        let languages = Languages::load(&assets)?;
        let words = Words::load(&assets, &languages)?;
        let yardsticks = Yardsticks::load(&assets)?;
        let typesetter = Typesetter::load(&assets)?;
        let standing = Standing::of(&library, &assets, || words.catalogue(words::lint::FIRST));
        let fingerprint = assets.fingerprint();
        let album = Album::default();
        Ok(Self {
            assets,
            library,
            languages,
            words,
            yardsticks,
            typesetter,
            warnings,
            standing,
            album,
            clinic: None,
            fingerprint,
        })
    }

    /// The same with a clinic's own look and words.
    ///
    /// # Errors
    /// What of the clinic does not suit this content: languages and sections that it names.
    pub fn for_clinic(self, clinic: Clinic) -> Result<Self, Findings> {
        clinic.suits(&self.languages, |sheet| {
            let kind = match sheet {
                OwnSheet::Guide => SheetKind::Guide,
                OwnSheet::Exercises => SheetKind::Exercises,
                OwnSheet::Letter => SheetKind::Letter,
            };
            self.words.sheets.get(&DocumentKind::Sheet(kind)).cloned().unwrap_or_default()
        })?;
        Ok(Self { clinic: Some(clinic), ..self })
    }

    /// What everything made here depends on beside the case: the program, the content and the clinic's file.
    pub fn identity(&self) -> String {
        let clinic = self.clinic.as_ref().map_or("", |clinic| clinic.hash.as_str());
        let parts = [env!("CARGO_PKG_VERSION"), &self.fingerprint, clinic];
        blake3::hash(parts.join("\n").as_bytes()).to_hex().to_string()
    }

    /// Pictures are kept on disk for the next run, where this platform keeps such things.
    #[must_use]
    pub fn keep_pictures(self) -> Self {
        Self { album: Album::new(Album::usual_folder()), ..self }
    }

    /// The same with pictures that were drawn before.
    #[must_use]
    pub fn with_pictures(self, album: Album) -> Self {
        Self { album, ..self }
    }

    /// Reads a case file.
    ///
    /// # Errors
    /// All faults of the file at once, names that lead to nothing among them.
    pub fn read(&self, path: &Path) -> Result<(CaseFile, SourceText), Findings> {
        self.read_source(case::load(path)?)
    }

    /// Reads a case from text already in memory.
    ///
    /// # Errors
    /// As [`Self::read`].
    pub fn read_source(&self, source: SourceText) -> Result<(CaseFile, SourceText), Findings> {
        match case::read_text(&source) {
            Ok(file) => Ok((file, source)),
            Err(mut findings) => {
                findings.extend(case::known_ids(&source, &self.library, &self.languages));
                Err(findings)
            }
        }
    }

    /// Judges a case, hand by hand, and plans it when it fits. What it does not say of its clinic, the clinic's file says.
    ///
    /// # Errors
    /// All faults of the file itself, and what the clinic has not written in the language of the case.
    pub fn judge(&self, mut file: CaseFile, source: SourceText) -> Result<Judged<'_>, Findings> {
        // A language that nobody speaks is a fault of the case alone.
        let spoken = self.languages.find(&file.language).is_some();
        let lent = match self.clinic.as_ref().filter(|_| spoken) {
            Some(clinic) => clinic.lend(&mut file),
            None => Ok(()),
        };
        let judged = self.judge_lent(file, source);
        match (judged, lent) {
            (Ok(judged), Ok(())) => Ok(judged),
            (Err(mut findings), Err(more)) => {
                findings.extend(more);
                Err(findings)
            }
            (Err(findings), _) | (_, Err(findings)) => Err(findings),
        }
    }

    fn judge_lent(&self, file: CaseFile, source: SourceText) -> Result<Judged<'_>, Findings> {
        let other = file.of_other_hand();
        let main = case::resolve(file, source.clone(), &self.library, &self.languages);
        let other = other.map(|file| case::resolve(file, source, &self.library, &self.languages)).transpose();
        match (main, other) {
            (Ok(main), Ok(other)) => {
                let other = other.map(|case| Box::new(judge(Case { both_hands: true, ..case })));
                Ok(Judged { other, ..judge(main) })
            }
            (Err(mut findings), Err(more)) => {
                findings.extend(more);
                Err(findings)
            }
            (Err(findings), _) | (_, Err(findings)) => Err(findings),
        }
    }

    /// A comparison chart: pages, English.
    ///
    /// # Errors
    /// When the pages cannot be set.
    pub fn chart(&self, chart: Value) -> Result<Pages, Findings> {
        Ok(self.typesetter.set_chart(&self.in_english(chart))?)
    }

    /// Study cards: pages, English.
    ///
    /// # Errors
    /// As [`Self::chart`]; also when a text is too long for its card.
    pub fn deck(&self, deck: Value) -> Result<Pages, Findings> {
        Ok(self.typesetter.set_deck(&self.in_english(deck))?)
    }

    /// Questions on cases or the key to them: pages, English.
    ///
    /// # Errors
    /// As [`Self::chart`].
    pub fn quiz(&self, quiz: Value) -> Result<Pages, Findings> {
        Ok(self.typesetter.set_quiz(&self.in_english(quiz))?)
    }

    /// What the look of a page for clinicians and students is given besides.
    fn in_english(&self, mut data: Value) -> Value {
        let first = words::lint::FIRST;
        let fonts = self.languages.iter().find(|entry| entry.tag.as_str() == first).map(|entry| entry.fonts.clone());
        data["meta"] = serde_json::json!({"language": first, "font": fonts});
        data
    }

    /// Pictures by themselves: pages of their own sizes, or sheets with captions.
    ///
    /// # Errors
    /// When a page cannot be set.
    pub fn pictures(&self, mut pictures: Value, language: &Language) -> Result<Pages, Findings> {
        pictures["meta"] = serde_json::json!({
            "language": language.tag.as_str(),
            "font": language.entry.fonts,
            "direction": language.entry.direction.word(),
        });
        Ok(self.typesetter.set_pictures(&pictures)?)
    }

    /// The clinic whose look the sheets have.
    pub const fn clinic(&self) -> Option<&Clinic> {
        self.clinic.as_ref()
    }

    /// A hash of all content and words.
    pub fn fingerprint(&self) -> &str {
        &self.fingerprint
    }

    /// How wide a line is in the fonts of a language, of the size of its letters.
    pub fn width(&self, text: &str, language: &Language, bold: bool) -> f64 {
        self.typesetter.width(text, &language.entry.fonts, bold)
    }

    /// Everything of the content that these plans rest on.
    pub fn used(hands: &[Planned<'_>]) -> Vec<Item> {
        standing::used(hands.iter().map(|(admitted, plan)| (admitted.case(), plan)))
    }

    /// One sheet of the plans in its language, before it is set. Nothing when the case has nothing for this sheet.
    ///
    /// # Errors
    /// When something in it cannot be said.
    pub fn say(&self, kind: SheetKind, hands: &[Planned<'_>]) -> Result<Option<Sheet>, Findings> {
        self.document(kind, hands).map(|document| words::localise(&self.words, &document)).transpose()
    }

    /// One sheet of the plans as a tree, with the clinic's own look.
    fn document(&self, kind: SheetKind, hands: &[Planned<'_>]) -> Option<Document> {
        let (first, others) = hands.split_first()?;
        let document = document::sheet(kind, first, others)?;
        Some(match &self.clinic {
            Some(clinic) => document.dressed(clinic),
            None => document,
        })
    }

    /// How a sheet reads; nothing when nothing says how its language is measured.
    pub fn readability(&self, sheet: &Sheet) -> Option<Readability> {
        readability::of(sheet, &self.yardsticks)
    }
}

fn judge(case: Case<'_>) -> Judged<'_> {
    let (verdicts, planned) = match checks::admit(case.clone()) {
        Ok(admitted) => {
            let verdicts = admitted.verdicts().to_vec();
            (verdicts, plan::make(&admitted).map(|plan| (admitted, plan)))
        }
        Err((findings, verdicts)) => (verdicts, Err(findings)),
    };
    Judged { case, verdicts, planned, other: None }
}
