//! `palmleaf locales export` and `palmleaf locales import`.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use clap::Args;

use super::{Folder, languages, misread, signing, texts, workshop};
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::exchange::{self, Package};
use crate::language::Language;
use crate::output::store;
use crate::pipeline::Workshop;
use crate::units::Date;
use crate::words::signoff::{self, SignOff};

#[derive(Args, Debug)]
pub struct ExportArgs {
    #[arg(long, value_name = "TAG")]
    pub language: String,
    /// The file to write; its ending says what it is: `.xlf` or `.csv`.
    #[arg(long, short, value_name = "FILE")]
    pub out: PathBuf,
    #[command(flatten)]
    pub folder: Folder,
}

#[derive(Args, Debug)]
pub struct ImportArgs {
    /// What came back: `.xlf` or `.csv`.
    #[arg(value_name = "FILE")]
    pub file: PathBuf,
    #[arg(long, value_name = "TAG")]
    pub language: String,
    /// Sign off what the file calls final: who checked it.
    #[arg(long, value_name = "WHO", requires = "on")]
    pub by: Option<String>,
    /// The day it was checked.
    #[arg(long, value_name = "DATE", requires = "by")]
    pub on: Option<String>,
    /// The folder of words that holds a folder for each language; the words are written there.
    #[arg(long = "locales", value_name = "DIR")]
    pub folder: PathBuf,
}

/// The kinds of file that words travel in.
enum Kind {
    Xliff,
    Csv,
}

fn kind(path: &Path) -> Result<Kind, Diagnostic> {
    match path.extension().and_then(|ending| ending.to_str()) {
        Some("xlf" | "xliff") => Ok(Kind::Xliff),
        Some("csv") => Ok(Kind::Csv),
        _ => {
            let message = format!("{} is neither `.xlf` nor `.csv`", path.display());
            Err(Diagnostic::outside(Code::DRAW_FILE_TYPE, message).help("name a file that ends in `.xlf` or `.csv`"))
        }
    }
}

fn one(workshop: &Workshop, tag: &str) -> Result<Language, Findings> {
    languages(workshop, &[tag.to_owned()])?.into_iter().next().ok_or_else(Findings::default)
}

fn packed(workshop: &Workshop, language: &Language, with_hints: bool) -> Result<Package, Findings> {
    let (own, first, ledger) = texts(workshop, language.entry.tag.as_str())?;
    let formats = workshop.words.speaker(language)?.formats;
    let hints = if with_hints { super::hints::hints(workshop) } else { Default::default() };
    Ok(exchange::package(first, own, ledger, &formats, &hints, &workshop.words.rooms))
}

pub fn export(args: &ExportArgs, terminal: &Terminal) -> Result<(), Findings> {
    let kind = kind(&args.out)?;
    let workshop = workshop(args.folder.folder.as_ref())?;
    let package = packed(&workshop, &one(&workshop, &args.language)?, true)?;
    let text = match kind {
        Kind::Xliff => exchange::xliff(&package),
        Kind::Csv => exchange::csv(&package),
    };
    store::write_one(&args.out, text.into_bytes())?;
    let units: usize = package.messages().map(|message| message.units.len()).sum();
    terminal.say(&format!("{}: {} messages, {units} sentences", package.language, package.messages().count()));
    Ok(())
}

pub fn import(args: &ImportArgs, terminal: &Terminal) -> Result<(), Findings> {
    let signed = sign_off(args)?;
    let source = exchange::load(&args.file)?;
    let workshop = workshop(Some(&args.folder))?;
    let language = one(&workshop, &args.language)?;
    let tag = language.entry.tag.as_str();
    let returns = match kind(&args.file)? {
        Kind::Xliff => exchange::from_xliff(&source)?,
        Kind::Csv => exchange::from_csv(&source, tag)?,
    };
    if returns.language != tag {
        let message = format!("{} is in `{}`, not in `{tag}`", args.file.display(), returns.language);
        return Err(Diagnostic::outside(Code::EXCHANGE_BROKEN, message).help("give the language of the file").into());
    }
    let Some(letters) = workshop.words.letters(tag) else { return Err(Findings::default()) };
    let package = packed(&workshop, &language, false)?;
    let imported = exchange::import(&returns, &package, &workshop.assets, &letters);
    let files: Vec<(String, Vec<u8>)> = imported
        .files
        .iter()
        .map(|(path, text)| {
            let name = path.rsplit('/').next().unwrap_or(path).to_owned();
            (name, text.clone().into_bytes())
        })
        .collect();
    // What is written is whole before it is written: all words of the language are read again.
    let mut assets = workshop.assets.clone();
    for (path, text) in &imported.files {
        assets = assets.with(format!("locales/{path}"), text.clone().into_bytes());
    }
    let after = Workshop::from_assets(assets)?;
    let (own, first, ledger) = texts(&after, tag)?;
    let mut ledger = ledger.clone();
    let folder = args.folder.join(tag);
    if !files.is_empty() {
        store::write_all(&folder, &files)?;
        signoff::draft(&mut ledger, own, first, &BTreeSet::new());
        signing::write(&args.folder, tag, &ledger, &[false, true])?;
    }
    let count = imported.finals.len();
    terminal.say(&format!(
        "{tag}: {} messages changed, {} refused",
        imported.changed.len(),
        imported.refused.sorted().len()
    ));
    if let Some(by) = signed {
        signoff::sign(&mut ledger, own, first, imported.finals, &by);
        signing::write(&args.folder, tag, &ledger, &[true])?;
        terminal.say(&format!("{tag}: {count} messages signed off by {} on {}", by.by, by.on));
    }
    if imported.refused.has_errors() { Err(imported.refused) } else { Ok(()) }
}

fn sign_off(args: &ImportArgs) -> Result<Option<SignOff>, Findings> {
    let (Some(by), Some(on)) = (&args.by, &args.on) else { return Ok(None) };
    let on: Date = on.parse().map_err(misread)?;
    Ok(Some(SignOff { on, by: signing::who(by)? }))
}
