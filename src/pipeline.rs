//! The whole job: a case file in, a guide and its record out.

use std::path::Path;

use serde_json::Value;

use crate::assets::Assets;
use crate::case::{self, Case, CaseFile};
use crate::checks::{self, Admitted, Verdict};
use crate::content::Library;
use crate::diag::Findings;
use crate::document::{self, SheetKind};
use crate::language::{Language, Languages, WordState};
use crate::output::record::{self, Given};
use crate::picture::album::Album;
use crate::plan::{self, Plan};
use crate::readability::{self, Readability, Yardsticks};
use crate::reminders::{self, REMINDERS};
use crate::source::SourceText;
use crate::standing::{self, Item, Standing};
use crate::typeset::{Pages, Typesetter};
use crate::webpage;
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
    fingerprint: String,
}

/// A guide and its record.
pub struct Made {
    pub pdf: Vec<u8>,
    pub pages: Pages,
    pub record: Value,
}

/// What a sheet is given on.
pub enum Form {
    Pages(Pages),
    /// One page of HTML.
    Page(String),
}

/// One sheet of a case, set.
pub struct Printed {
    pub kind: SheetKind,
    pub form: Form,
    /// Whether its words have been signed off.
    pub state: WordState,
}

/// Reminders for a calendar.
pub struct Calendar {
    /// iCalendar.
    pub text: String,
    /// How many events it has; one that repeats is one.
    pub events: usize,
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
        let yardsticks = Yardsticks::load(&assets)?;
        let typesetter = Typesetter::load(&assets)?;
        let standing = Standing::of(&library, &assets, || words.catalogue(words::lint::FIRST));
        let fingerprint = assets.fingerprint();
        let album = Album::default();
        Ok(Self { assets, library, languages, words, yardsticks, typesetter, warnings, standing, album, fingerprint })
    }

    /// Pictures are kept on disk for the next run, where this platform keeps such things.
    #[must_use]
    pub fn keep_pictures(self) -> Self {
        Self { album: Album::new(Album::usual_folder()), ..self }
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

    /// Judges a case, hand by hand, and plans it when it fits.
    ///
    /// # Errors
    /// All faults of the file itself.
    pub fn judge(&self, file: CaseFile, source: SourceText) -> Result<Judged<'_>, Findings> {
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

    /// A chart of a choice: pages, English.
    ///
    /// # Errors
    /// When the page cannot be set.
    pub fn chart(&self, mut chart: Value) -> Result<Pages, Findings> {
        let first = words::lint::FIRST;
        let fonts = self.languages.iter().find(|entry| entry.tag.as_str() == first).map(|entry| entry.fonts.clone());
        chart["meta"] = serde_json::json!({"language": first, "font": fonts});
        Ok(self.typesetter.set_chart(&chart)?)
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

    /// How wide a line is in the fonts of a language, of the size of its letters.
    pub fn width(&self, text: &str, language: &Language, bold: bool) -> f64 {
        self.typesetter.width(text, &language.entry.fonts, bold)
    }

    /// Everything of the content that these plans rest on.
    pub fn used(hands: &[Planned<'_>]) -> Vec<Item> {
        standing::used(hands.iter().map(|(admitted, plan)| (admitted.case(), plan)))
    }

    /// One sheet of the plans: document, words, pages. One plan for each hand of a case. Nothing when the case has
    /// nothing for this sheet.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn print(&self, kind: SheetKind, hands: &[Planned<'_>]) -> Result<Option<Printed>, Findings> {
        let Some(sheet) = self.say(kind, hands)? else { return Ok(None) };
        let form = match kind {
            SheetKind::Phone => Form::Page(webpage::page(&sheet, &self.album)?),
            _ => Form::Pages(self.typesetter.set(&sheet, &self.album)?),
        };
        Ok(Some(Printed { kind, form, state: sheet.state }))
    }

    /// One sheet of the plans in its language, before it is set. Nothing when the case has nothing for this sheet.
    ///
    /// # Errors
    /// When something in it cannot be said.
    pub fn say(&self, kind: SheetKind, hands: &[Planned<'_>]) -> Result<Option<Sheet>, Findings> {
        let document = hands.split_first().and_then(|(first, others)| document::sheet(kind, first, others));
        Ok(document.map(|document| words::localise(&self.words, &document)).transpose()?)
    }

    /// How a sheet reads; nothing when nothing says how its language is measured.
    pub fn readability(&self, sheet: &Sheet) -> Option<Readability> {
        readability::of(sheet, &self.yardsticks)
    }

    /// The record of what was given.
    pub fn record(&self, hands: &[Planned<'_>], printed: &[Printed], calendar: Option<&Calendar>) -> Value {
        let sheets = printed.iter().map(|sheet| Given {
            sheet: sheet.kind.word(),
            counted: "pages",
            count: match &sheet.form {
                Form::Pages(pages) => pages.count(),
                Form::Page(_) => 1,
            },
        });
        let calendar = calendar.map(|calendar| Given { sheet: REMINDERS, counted: "events", count: calendar.events });
        let given: Vec<Given> = sheets.chain(calendar).collect();
        let state = hands.first().map_or(WordState::Drafted, |(first, _)| first.case().language.entry.state);
        record::record(hands, &self.standing, &self.fingerprint, &given, state)
    }

    /// The guide of the plans, as a file, with its record.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn guide(&self, hands: &[Planned<'_>]) -> Result<Made, Findings> {
        let Some(printed) = self.print(SheetKind::Guide, hands)? else { return Err(Findings::default()) };
        let record = self.record(hands, std::slice::from_ref(&printed), None);
        let Form::Pages(pages) = printed.form else { return Err(Findings::default()) };
        Ok(Made { pdf: pages.pdf()?, pages, record })
    }

    /// The reminders of the plans, for a calendar.
    ///
    /// # Errors
    /// When something in them cannot be said.
    pub fn reminders(&self, hands: &[Planned<'_>]) -> Result<Calendar, Findings> {
        let Some((first, others)) = hands.split_first() else { return Err(Findings::default()) };
        let said = words::remind(&self.words, &document::reminders(first, others))?;
        Ok(Calendar { text: reminders::file(&said), events: said.events.len() })
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
