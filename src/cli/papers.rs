//! The papers of a case: which were asked for, and their bytes. What `build` and `batch` have in common.

use std::collections::BTreeMap;

use clap::builder::TypedValueParser as _;
use clap::{Args, ValueEnum};

use super::args::words;
use super::beside;
use crate::case::{Case, CaseFile, Paper};
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::SheetKind;
use crate::language::WordState;
use crate::output::record::{BesideFacts, GivenFacts, RECORD, Record};
use crate::pipeline::{Form, Printed, Workshop};
use crate::reminders::REMINDERS;
use crate::source::SourceText;
use crate::typeset::Pages;
use crate::words::Said;

/// Pixels for each point of a page picture: 110 dots to the inch.
const PICTURE: f64 = 110.0 / 72.0;

/// Which papers of a case to make, and how.
#[derive(Args, Debug)]
pub struct Papers {
    /// The language, instead of the case's own; several divided by commas make a guide each.
    #[arg(long, value_name = "TAG", value_delimiter = ',')]
    pub language: Vec<String>,
    /// Also make each sheet in its language and this one beside each other, to point at.
    #[arg(long, value_name = "TAG")]
    pub with: Option<String>,
    /// The print size, instead of the case's own: 12, 18 or 24 point.
    #[arg(long, value_parser = words!(PrintSize))]
    pub print: Option<PrintSize>,
    /// The paper, instead of the case's own; `letter` is US Letter.
    #[arg(long, value_parser = words!(Paper))]
    pub paper: Option<Paper>,
    /// What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone,
    /// `record` a page for the chart.
    #[arg(long, value_name = "SHEETS", value_delimiter = ',', default_value = "guide", value_enum)]
    pub sheets: Vec<Sheets>,
    /// Leave the person's name out of every file, and leave a line to write it by hand.
    #[arg(long)]
    pub without_name: bool,
    /// Also write each page as a picture.
    #[arg(long)]
    pub pictures: bool,
    /// Refuse to build on content or words that are less than this.
    #[arg(long, value_enum, value_name = "STATE", value_delimiter = ',')]
    pub require: Vec<Require>,
}

/// How far the content that a guide rests on, and its words, have to be confirmed.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Require {
    /// Every condition, orthosis, exercise and activity used is confirmed by a clinician as it stands.
    Confirmed,
    /// Every message that a sheet says is signed off by a qualified translator as it stands.
    SignedOff,
}

/// Which papers to make, and whether a calendar.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Sheets {
    All,
    One(SheetKind),
    Reminders,
    Record,
}

impl clap::ValueEnum for Sheets {
    fn value_variants<'a>() -> &'a [Self] {
        static ALL: std::sync::LazyLock<Vec<Sheets>> = std::sync::LazyLock::new(|| {
            SheetKind::ALL
                .iter()
                .map(|&kind| Sheets::One(kind))
                .chain([Sheets::Reminders, Sheets::Record, Sheets::All])
                .collect()
        });
        &ALL
    }

    fn to_possible_value(&self) -> Option<clap::builder::PossibleValue> {
        Some(clap::builder::PossibleValue::new(match self {
            Self::All => "all",
            Self::One(kind) => kind.word(),
            Self::Reminders => REMINDERS,
            Self::Record => RECORD,
        }))
    }
}

/// Files by name, in the order in which they are handed out, and what is to be said about them.
pub type Made = (Vec<(String, Vec<u8>)>, Findings);

impl Papers {
    /// The languages to make: the case's own when none was asked for.
    pub fn languages(&self) -> Vec<Option<&str>> {
        if self.language.is_empty() { vec![None] } else { self.language.iter().map(|tag| Some(tag.as_str())).collect() }
    }

    /// All papers of a case that were asked for, and its record; `stem` says what their names end in.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn made(
        &self,
        workshop: &Workshop,
        file: CaseFile,
        source: SourceText,
        name: &str,
        stem: impl Fn(&Case<'_>) -> String,
    ) -> Result<Made, Findings> {
        let other = self.with.as_deref().map(|tag| self.other(tag, &file, &source)).transpose()?;
        let judged = workshop.judge(file, source.clone())?;
        let hands = judged.plans()?;
        if self.require.contains(&Require::Confirmed) {
            let open = workshop.standing.require_confirmed(&Workshop::used(&hands));
            if open.has_errors() {
                return Err(open);
            }
        }
        let mut printed = Vec::new();
        let mut findings = Findings::default();
        for kind in wanted(&self.sheets) {
            match workshop.print(kind, &hands)? {
                Some(sheet) => printed.push(sheet),
                // `all` takes what there is; a sheet asked for by name is missed.
                None if self.sheets.contains(&Sheets::One(kind)) => findings.push(nothing(kind, name)),
                None => {}
            }
        }
        let stem = hands.first().map(|(admitted, _)| stem(admitted.case())).unwrap_or_default();
        let mut files = Vec::new();
        let mut given = BTreeMap::new();
        for sheet in &printed {
            let (kind, bytes) = (sheet.kind, sheet.bytes()?);
            given.insert(kind.word(), sheet.given(&bytes));
            match &sheet.form {
                Form::Page(_) => files.push((format!("{kind}-{stem}.html"), bytes)),
                Form::Pages(pages) => {
                    files.push((format!("{kind}-{stem}.pdf"), bytes));
                    files.extend(self.pictures(pages, kind.word(), &stem)?);
                }
            }
        }
        let beside = match other {
            Some(file) => {
                let (made, more) = beside::made(workshop, self, file, source, &hands)?;
                findings.extend(more);
                Some(self.beside(&stem, made, &mut files)?)
            }
            None => None,
        };
        let calendar = match is_wanted(&self.sheets, Sheets::Reminders) {
            true => Some(workshop.reminders(&hands)?),
            false => None,
        };
        let said: Vec<&Said> =
            printed.iter().map(|sheet| &sheet.said).chain(calendar.iter().map(|calendar| &calendar.said)).collect();
        if self.require.contains(&Require::SignedOff) {
            let beside = beside.iter().flat_map(|(said, _)| said);
            signed_off(&said.iter().copied().chain(beside).collect::<Vec<_>>())?;
        }
        let state = said.iter().map(|said| said.state()).max().unwrap_or(WordState::Original);
        if let Some(calendar) = calendar {
            let bytes = calendar.text.into_bytes();
            given.insert(REMINDERS, GivenFacts::of_events(calendar.events, &bytes));
            files.push((format!("{REMINDERS}-{stem}.ics"), bytes));
        }
        let beside = beside.map(|(_, facts)| facts).filter(|facts| !facts.sheets.is_empty());
        let record = Record { beside, ..workshop.record(&hands, given, state)? };
        if is_wanted(&self.sheets, Sheets::Record) {
            let pages = workshop.record_page(&record, &hands)?;
            files.push((format!("{RECORD}-{stem}.pdf"), pages.pdf()?));
            files.extend(self.pictures(&pages, RECORD, &stem)?);
        }
        let record = serde_json::to_string_pretty(&record).unwrap_or_default() + "\n";
        files.push((format!("{RECORD}-{stem}.json"), record.into_bytes()));
        Ok((files, findings))
    }

    /// The case in the language that its sheets are to stand beside.
    fn other(&self, tag: &str, file: &CaseFile, source: &SourceText) -> Result<CaseFile, Findings> {
        let mut other = file.clone();
        self.instead(&mut other, source, Some(tag))?;
        Ok(other)
    }

    /// The files of sheets beside another language, what they say, and what the record says of them.
    fn beside(
        &self,
        stem: &str,
        made: Vec<Printed>,
        files: &mut Vec<(String, Vec<u8>)>,
    ) -> Result<(Vec<Said>, BesideFacts), Diagnostic> {
        let with = self.with.clone().unwrap_or_default();
        let mut sheets = BTreeMap::new();
        for sheet in &made {
            let (kind, bytes) = (sheet.kind, sheet.bytes()?);
            sheets.insert(kind.word(), sheet.given(&bytes));
            files.push((format!("{kind}-{stem}-{with}.pdf"), bytes));
            if let Form::Pages(pages) = &sheet.form {
                files.extend(self.pictures(pages, kind.word(), &format!("{stem}-{with}"))?);
            }
        }
        let said: Vec<Said> = made.into_iter().map(|sheet| sheet.said).collect();
        let state = said.iter().map(Said::state).max().unwrap_or(WordState::Original);
        Ok((said, BesideFacts { with, translation: state.word(), sheets }))
    }

    /// The pages as pictures, when they are asked for.
    fn pictures(&self, pages: &Pages, sheet: &str, stem: &str) -> Result<Vec<(String, Vec<u8>)>, Diagnostic> {
        let drawn = if self.pictures { pages.count() } else { 0 };
        (0..drawn)
            .map(|page| Ok((format!("{sheet}-{stem}-page-{}.png", page + 1), pages.png(page, PICTURE)?)))
            .collect()
    }

    /// Puts what the command line says in the place of what the case says.
    ///
    /// # Errors
    /// When the language is none.
    pub fn instead(&self, file: &mut CaseFile, source: &SourceText, language: Option<&str>) -> Result<(), Findings> {
        if let Some(tag) = language {
            file.language.value = tag.parse().map_err(|misread: crate::units::Misread| {
                let place = crate::source::Place { source: source.clone(), span: file.language.span.clone() };
                let help = misread.help();
                let mut diagnostic = Diagnostic::error(Code::ID_UNKNOWN, place, misread.wrong)
                    .label("given on the command line instead");
                diagnostic.help = help;
                Findings::from(diagnostic)
            })?;
        }
        if let Some(person) = file.person.as_mut().filter(|_| self.without_name) {
            person.name = None;
        }
        file.print = self.print.or(file.print);
        file.paper = self.paper.or(file.paper);
        Ok(())
    }
}

/// Says that a sheet was asked for by name and the case has nothing for it.
fn nothing(kind: SheetKind, name: &str) -> Diagnostic {
    let message = format!("{} has nothing for the sheet `{kind}`: it was not made", name);
    let note = match kind {
        SheetKind::Exercises => "the plan allows no exercise in its first phase",
        _ => "the plan has nothing that stands on it",
    };
    Diagnostic::outside(Code::OUTPUT_NOTHING, message).note(note).as_warning()
}

/// Refuses sheets that say anything which nobody qualified has signed off.
fn signed_off(said: &[&Said]) -> Result<(), Findings> {
    let open: BTreeMap<&str, WordState> = said.iter().flat_map(|said| said.open()).collect();
    if open.is_empty() {
        return Ok(());
    }
    let message = format!("{} of the messages on these sheets are not signed off", open.len());
    let help =
        "have them read by a qualified translator, then `palmleaf locales sign-off --language TAG --by … --on DATE`";
    let mut diagnostic = Diagnostic::outside(Code::WORDS_NOT_SIGNED_OFF, message).help(help);
    for (id, state) in open {
        diagnostic = diagnostic.note(format!("{id}: {state}"));
    }
    Err(diagnostic.note("nothing was written").into())
}

/// The sheets asked for, each once, in their own order.
pub fn wanted(sheets: &[Sheets]) -> impl Iterator<Item = SheetKind> {
    SheetKind::ALL.iter().copied().filter(|&kind| is_wanted(sheets, Sheets::One(kind)))
}

fn is_wanted(sheets: &[Sheets], one: Sheets) -> bool {
    sheets.contains(&Sheets::All) || sheets.contains(&one)
}
