//! A clinic's own look and words: `clinic.yaml` with its logo, its colour and its sections.
//!
//! It is read and checked once and serves every case. What it says of the clinic is lent to a case that does not say it
//! itself; logo, colour and sections go into the document.

mod colour;
mod file;
pub mod folder;
mod logo;
mod raster;
mod section;
mod vector;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;

pub use colour::{Accent, Colour, LEAST};
pub use file::{ClinicFile, FileName, OwnSheet, SectionFile};
pub use logo::{Logo, LogoKind, Unfit};
pub use section::OwnWords;

use crate::case::{CaseFile, Clinic as Lines, Text};
use crate::diag::{Code, Diagnostic, Findings};
use crate::language::{LanguageTag, Languages};
use crate::source::{At, FromNode, Limits, Place, Reader, SourceText, Span, decode, parse, read_bytes};

/// What the file is called in a clinic's content folder.
pub const FILE: &str = "clinic.yaml";
/// Sections that a clinic may have.
const MOST_SECTIONS: usize = 12;
/// Bytes of a section's Markdown file.
const MOST_MARKDOWN: u64 = 64 * 1024;

/// Before a section or after it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beside {
    Before,
    After,
}

/// A section of the clinic's own, in every language that it has.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OwnSection {
    pub sheet: OwnSheet,
    pub beside: Beside,
    /// The section of the content that it stands beside.
    pub of: String,
    /// By language, each with the name of its file.
    words: BTreeMap<LanguageTag, Arc<OwnWords>>,
    /// Where the clinic's file says which languages it has.
    place: Place,
}

impl OwnSection {
    /// The words for a language: those of its region first.
    pub fn words(&self, language: &LanguageTag) -> Option<&OwnWords> {
        by_language(&self.words, language).map(Arc::as_ref)
    }
}

/// A clinic's file and everything it names.
#[derive(Clone, Debug)]
pub struct Clinic {
    file: ClinicFile,
    source: SourceText,
    pub logo: Option<Arc<Logo>>,
    pub sections: Vec<OwnSection>,
    /// A hash of the file and of all that it names.
    pub hash: String,
}

impl Clinic {
    /// Reads a clinic's file, its logo and its sections.
    ///
    /// # Errors
    /// All faults of all of these at once.
    pub fn load(path: &Path) -> Result<Self, Findings> {
        let name = path.display().to_string();
        let unreadable = |why: &dyn std::fmt::Display| {
            Findings::from(
                Diagnostic::outside(Code::FILE_UNREADABLE, format!("{name} {why}"))
                    .help("give the path of a clinic's file, such as `examples/harbour-row/clinic.yaml`"),
            )
        };
        let bytes = read_bytes(path, Limits::CASE.bytes as u64).map_err(|why| unreadable(&why))?;
        let folder = folder::Folder::of(path).map_err(|why| unreadable(&format!("cannot be read: {why}")))?;
        let mut hasher = Hash::default();
        hasher.add(FILE, &bytes);
        let source = decode(&name, bytes)?;
        let node = parse(&source, Limits::CASE)?;
        let mut reader = Reader::new(&source);
        let file = ClinicFile::from_node(&node, &mut reader);
        let mut findings = reader.finish();
        let Some(file) = file.filter(|_| !findings.has_errors()) else { return Err(findings) };
        let mut load = Loading { source: &source, folder: &folder, hasher, findings: &mut findings };
        let logo = load.logo(&file);
        let sections = load.sections(&file);
        let hash = load.hasher.finish();
        if findings.has_errors() {
            return Err(findings);
        }
        Ok(Self { file, source, logo: logo.map(Arc::new), sections, hash })
    }

    /// The clinic's file and the files that it names, as far as it can be read: what has to be watched.
    pub fn files(path: &Path) -> Vec<PathBuf> {
        let bytes = read_bytes(path, Limits::CASE.bytes as u64).unwrap_or_default();
        let read = |source: SourceText| {
            let node = parse(&source, Limits::CASE).ok()?;
            ClinicFile::from_node(&node, &mut Reader::new(&source))
        };
        let file = decode(&path.display().to_string(), bytes).ok().and_then(read);
        let named = file.iter().flat_map(|file| {
            let texts = file.sections.iter().flat_map(|section| section.text.value.values());
            file.logo.iter().chain(texts).map(|name| path.with_file_name(name.as_str()))
        });
        std::iter::once(path.to_path_buf()).chain(named).collect()
    }

    /// The text of the file.
    pub fn source(&self) -> &SourceText {
        &self.source
    }

    /// What the file is called, without its folder.
    pub fn file_name(&self) -> String {
        Path::new(self.source.name()).file_name().unwrap_or_default().to_string_lossy().into_owned()
    }

    /// What it is called on sheets.
    pub fn name(&self) -> Option<&str> {
        self.file.name.as_ref().map(Text::as_str)
    }

    pub fn address(&self) -> Option<&str> {
        self.file.address.as_ref().map(Text::as_str)
    }

    /// The number to call, with the digits of a keypad.
    pub fn telephone(&self) -> Option<Text> {
        self.file.telephone.as_ref().map(Text::on_keypad)
    }

    /// The number for what cannot wait, with the digits of a keypad.
    pub fn emergency(&self) -> Option<Text> {
        self.file.emergency.as_ref().map(Text::on_keypad)
    }

    /// When the telephone is answered, where the clinic says it in a language.
    pub fn hours(&self, language: &LanguageTag) -> Option<&str> {
        by_language(&self.file.hours.as_ref()?.value, language).map(Text::as_str)
    }

    pub fn accent(&self) -> Option<Accent> {
        self.file.accent.as_ref().map(|accent| accent.value)
    }

    /// Holds it against the languages there are and the sections of each sheet.
    ///
    /// # Errors
    /// Languages that nobody speaks, sections that no sheet has, and anything before the first section of a sheet.
    pub fn suits(&self, languages: &Languages, order: impl Fn(OwnSheet) -> Vec<String>) -> Result<(), Findings> {
        let mut findings = Findings::default();
        let place = |span: &Span| Place { source: self.source.clone(), span: span.clone() };
        let hours = self.file.hours.iter().flat_map(|hours| hours.value.keys().map(|tag| (tag, &hours.span)));
        let texts = self
            .file
            .sections
            .iter()
            .flat_map(|section| section.text.value.keys().map(|tag| (tag, &section.text.span)));
        for (tag, span) in hours.chain(texts) {
            if languages.find(tag).is_none() {
                let (message, help) = crate::content::unknown("language", tag.as_str(), languages.tags());
                findings.push(Diagnostic::error(Code::ID_UNKNOWN, place(span), message).help(help));
            }
        }
        for section in &self.file.sections {
            let order = order(section.sheet.value);
            let Some((anchor, before)) = anchor(section) else { continue };
            if !order.iter().any(|name| name == anchor.as_str()) {
                let what = format!("section of the sheet `{}`", section.sheet.value);
                let (message, help) = crate::content::unknown(&what, anchor.as_str(), order.iter().map(String::as_str));
                findings.push(Diagnostic::error(Code::ID_UNKNOWN, place(&anchor.span), message).help(help));
            } else if before && order.first().is_some_and(|first| first == anchor.as_str()) {
                let message = format!(
                    "nothing may stand before `{}`: it comes first, with the hours and whom to call",
                    anchor.value
                );
                let help = format!("write `after: {}`", anchor.value);
                findings.push(Diagnostic::error(Code::CLINIC_SECTION, place(&anchor.span), message).help(help));
            }
        }
        if findings.has_errors() { Err(findings) } else { Ok(()) }
    }

    /// Lends a case every line about the clinic that it does not say itself.
    ///
    /// # Errors
    /// What the clinic has not written in the case's language: hours, or a section.
    pub fn lend(&self, case: &mut CaseFile) -> Result<(), Findings> {
        let language = &case.language.value;
        let mut findings = Findings::default();
        let mut lacks = |what: &str, place: Place| {
            let message = format!("{} has no {what} in `{language}`", self.source.name());
            let help = format!("add a line `{}: …`, or build in another language", language.primary());
            let help = if what == "hours" { format!("{help}, or give `hours` in the case") } else { help };
            findings.push(Diagnostic::error(Code::CLINIC_LANGUAGE, place, message).help(help));
        };
        let own = case.clinic.take();
        let said = own.as_ref().is_some_and(|own| own.hours.is_some());
        let mut hours = None;
        if let Some(all) = self.file.hours.as_ref().filter(|_| !said) {
            hours = by_language(&all.value, language).cloned();
            if hours.is_none() {
                lacks("hours", Place { source: self.source.clone(), span: all.span.clone() });
            }
        }
        for section in self.sections.iter().filter(|section| section.words(language).is_none()) {
            let beside = if section.beside == Beside::Before { "before" } else { "after" };
            lacks(
                &format!("text of the section {beside} `{}` of the sheet `{}`", section.of, section.sheet),
                section.place.clone(),
            );
        }
        let ours = Lines {
            name: self.file.name.clone(),
            address: self.file.address.clone(),
            telephone: self.telephone(),
            hours,
            emergency: self.emergency(),
        };
        case.clinic = Some(match own {
            Some(own) => own.or(ours),
            None => ours,
        });
        if findings.has_errors() { Err(findings) } else { Ok(()) }
    }
}

/// What is written for a language: for its region first, then for the language.
fn by_language<'m, T>(map: &'m BTreeMap<LanguageTag, T>, language: &LanguageTag) -> Option<&'m T> {
    map.get(language).or_else(|| map.iter().find(|(tag, _)| tag.is_akin(language)).map(|(_, value)| value))
}

/// The section that an own one stands beside, and whether before it; nothing when the file names none or two.
fn anchor(section: &SectionFile) -> Option<(&At<crate::ids::MessageId>, bool)> {
    match (&section.after, &section.before) {
        (Some(after), None) => Some((after, false)),
        (None, Some(before)) => Some((before, true)),
        _ => None,
    }
}

/// A clinic's file while the files it names are read.
struct Loading<'l> {
    source: &'l SourceText,
    folder: &'l folder::Folder,
    hasher: Hash,
    findings: &'l mut Findings,
}

impl Loading<'_> {
    fn fault(&mut self, code: Code, span: &Span, message: String, help: &str) {
        let place = Place { source: self.source.clone(), span: span.clone() };
        self.findings.push(Diagnostic::error(code, place, message).help(help));
    }

    fn bytes(&mut self, code: Code, name: &At<FileName>, most: u64, help: &str) -> Option<Vec<u8>> {
        match self.folder.read(&name.value, most) {
            Ok(bytes) => {
                self.hasher.add(name.as_str(), &bytes);
                Some(bytes)
            }
            Err(why) => {
                self.fault(code, &name.span, format!("`{}` {why}", name.as_str()), help);
                None
            }
        }
    }

    fn logo(&mut self, file: &ClinicFile) -> Option<Logo> {
        let name = file.logo.as_ref()?;
        if file.name.is_none() {
            let message = "the logo has no words for somebody who cannot see it".to_owned();
            self.fault(Code::CLINIC_LOGO, &name.span, message, "add a line `name: …` with the name of the clinic");
        }
        let small = "give an SVG or PNG of at most 1 MB, in the folder of this file";
        let bytes = self.bytes(Code::CLINIC_LOGO, name, logo::MOST_BYTES, small)?;
        match Logo::read(&bytes) {
            Ok(logo) => Some(logo),
            Err(unfit) => {
                let message = format!("`{}` cannot be the logo: {}", name.as_str(), unfit.why);
                self.fault(Code::CLINIC_LOGO, &name.span, message, &unfit.instead);
                None
            }
        }
    }

    fn sections(&mut self, file: &ClinicFile) -> Vec<OwnSection> {
        if let Some(extra) = file.sections.get(MOST_SECTIONS) {
            let message = format!("these are {} sections, more than anybody reads", file.sections.len());
            self.fault(Code::CLINIC_SECTION, &extra.span, message, &format!("keep at most {MOST_SECTIONS}"));
        }
        file.sections.iter().take(MOST_SECTIONS).filter_map(|section| self.section(section)).collect()
    }

    fn section(&mut self, section: &At<SectionFile>) -> Option<OwnSection> {
        let mut words = BTreeMap::new();
        for (tag, name) in &section.text.value {
            let help = "give a Markdown file in the folder of this file, such as `parking.en.md`";
            let Some(bytes) = self.bytes(Code::CLINIC_SECTION, name, MOST_MARKDOWN, help) else { continue };
            // Said under the name that the clinic's file is said under, so that an editor finds it.
            let shown = Path::new(self.source.name()).with_file_name(name.as_str()).display().to_string();
            let read = decode(&shown, bytes).map_err(Findings::from).and_then(|source| section::read(&source));
            match read {
                Ok(read) => drop(words.insert(tag.clone(), Arc::new(read))),
                Err(findings) => self.findings.extend(findings),
            }
        }
        let Some((of, before)) = anchor(section) else {
            let message = "a section needs one place: `after` or `before`".to_owned();
            self.fault(Code::CLINIC_SECTION, &section.span, message, "write one of the two, such as `after: care`");
            return None;
        };
        let place = Place { source: self.source.clone(), span: section.text.span.clone() };
        let beside = if before { Beside::Before } else { Beside::After };
        Some(OwnSection { sheet: section.sheet.value, beside, of: of.to_string(), words, place })
    }
}

/// A hash of files: names and bytes, each with its length.
#[derive(Default)]
struct Hash(blake3::Hasher);

impl Hash {
    fn add(&mut self, name: &str, bytes: &[u8]) {
        for part in [name.as_bytes(), bytes] {
            self.0.update(&(part.len() as u64).to_le_bytes());
            self.0.update(part);
        }
    }

    fn finish(&self) -> String {
        self.0.finalize().to_hex()[..16].to_owned()
    }
}
