//! `palmleaf locales`.

mod exchange;
mod hints;
mod signing;
mod status;

use std::path::PathBuf;

use clap::{Args, Subcommand};

use super::Ended;
use super::check::refused;
use super::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::nearest;
use crate::language::{Language, LanguageTag};
use crate::pipeline::Workshop;
use crate::units::Misread;
use crate::words::lint::FIRST;
use crate::words::{Catalogue, Ledger};

#[derive(Args, Debug)]
pub struct LocalesArgs {
    #[command(subcommand)]
    pub command: LocalesCommand,
}

#[derive(Subcommand, Debug)]
pub enum LocalesCommand {
    /// Show how many messages of each language and area are signed off, drafted or outdated.
    Status(status::StatusArgs),
    /// Write down from which English each new or changed message was written.
    Draft(signing::DraftArgs),
    /// Write the words of a language for translators: XLIFF 2.1, or CSV.
    Export(exchange::ExportArgs),
    /// Put back what a translator returned. A message that lost something is refused by name; the rest goes in.
    Import(exchange::ImportArgs),
    /// Write down that somebody qualified has checked messages as they stand.
    SignOff(signing::SignOffArgs),
}

/// Where words come from.
#[derive(Args, Debug, Clone)]
pub struct Folder {
    /// A folder of words that holds a folder for each language, laid over the embedded ones; a clinic's is `locales` in
    /// its own content.
    #[arg(long = "locales", value_name = "DIR")]
    pub folder: Option<PathBuf>,
}

pub fn run(args: &LocalesArgs, terminal: &Terminal) -> Ended {
    let done = match &args.command {
        LocalesCommand::Status(args) => status::run(args, terminal),
        LocalesCommand::Draft(args) => signing::draft(args, terminal),
        LocalesCommand::Export(args) => exchange::export(args, terminal),
        LocalesCommand::Import(args) => exchange::import(args, terminal),
        LocalesCommand::SignOff(args) => signing::sign_off(args, terminal),
    };
    match done {
        Ok(()) => Ended::Well,
        Err(findings) => refused(&findings, terminal),
    }
}

/// The content with a folder of words over it; a folder that is not there yet is a clinic's first.
fn workshop(folder: Option<&PathBuf>) -> Result<Workshop, Findings> {
    match folder.filter(|folder| folder.is_dir()) {
        Some(folder) => Workshop::with_locales(folder),
        None => Workshop::load(None),
    }
}

/// The languages named, or all that are translated.
fn languages(workshop: &Workshop, named: &[String]) -> Result<Vec<Language>, Findings> {
    let mut findings = Findings::default();
    let mut found = Vec::new();
    let all = workshop.languages.tags();
    let wanted: Vec<&str> = match named.is_empty() {
        true => all.iter().copied().filter(|tag| *tag != FIRST).collect(),
        false => named.iter().map(String::as_str).collect(),
    };
    for name in wanted {
        let language = name.parse::<LanguageTag>().ok().and_then(|tag| workshop.languages.find(&tag));
        match language {
            Some(language) if language.entry.tag.is_pseudo() => {
                let message = format!("`{name}` is made of `{FIRST}` by the program: it has no files");
                findings.push(Diagnostic::outside(Code::ID_UNKNOWN, message).help("name a translated language"));
            }
            Some(language) if language.entry.tag.as_str() != FIRST => found.push(language),
            Some(_) => {
                let message = format!("`{FIRST}` is the language that the others are held against");
                findings.push(Diagnostic::outside(Code::ID_UNKNOWN, message).help("name a translated language"));
            }
            None => {
                let message = format!("there are no words for `{name}`");
                findings.push(
                    Diagnostic::outside(Code::ID_UNKNOWN, message).help(format!("use one of {}", all.join(", "))),
                );
            }
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(found) }
}

/// The words of a language, the first ones, and what is known of their checking.
fn texts<'w>(workshop: &'w Workshop, tag: &str) -> Result<(&'w Catalogue, &'w Catalogue, &'w Ledger), Findings> {
    let words = &workshop.words;
    match (words.catalogue(tag), words.catalogue(FIRST), words.ledger(tag)) {
        (Some(own), Some(first), Some(Ok(ledger))) => Ok((own, first, ledger)),
        _ => Err(words.faults()),
    }
}

/// The area of a message: the name of its file.
fn area(catalogue: &Catalogue, id: &str) -> String {
    catalogue.message(id).map(|info| crate::exchange::area(&info.place)).unwrap_or_default()
}

/// The messages named; all faults at once.
fn known(catalogue: &Catalogue, named: &[String]) -> Result<Vec<String>, Findings> {
    let mut findings = Findings::default();
    for id in named.iter().filter(|id| catalogue.message(id).is_none()) {
        let near = nearest(id, catalogue.messages().map(|(id, _)| id));
        let help = near.map_or_else(|| "name a message of the language".to_owned(), |near| format!("use `{near}`"));
        let message = format!("`{}` has no message `{id}`", catalogue.tag);
        findings.push(Diagnostic::outside(Code::WORDS_MISSING, message).help(help));
    }
    if findings.has_errors() { Err(findings) } else { Ok(named.to_vec()) }
}

/// A value of the command line that cannot be read.
fn misread(misread: Misread) -> Diagnostic {
    let help = misread.help();
    let mut diagnostic = Diagnostic::outside(Code::FIELD_VALUE, misread.wrong);
    diagnostic.help = help;
    diagnostic
}
