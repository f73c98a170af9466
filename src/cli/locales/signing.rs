//! `palmleaf locales draft` and `palmleaf locales sign-off`.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use clap::Args;

use super::{area, known, languages, misread, texts, workshop};
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::output::store;
use crate::units::Date;
use crate::words::Ledger;
use crate::words::signoff::{self, DRAFTED, SIGNED_OFF, SignOff};

#[derive(Args, Debug)]
pub struct DraftArgs {
    /// Outdated messages that are still right as they stand.
    #[arg(value_name = "MESSAGE")]
    pub still_right: Vec<String>,
    /// The languages, divided by commas; all that are translated when not said.
    #[arg(long, value_name = "TAG", value_delimiter = ',')]
    pub language: Vec<String>,
    /// The folder of words that holds a folder for each language; the states are written there.
    #[arg(long = "locales", value_name = "DIR")]
    pub folder: PathBuf,
}

#[derive(Args, Debug)]
#[group(id = "which", required = true, multiple = true, args = ["messages", "area", "all"])]
pub struct SignOffArgs {
    /// Messages that were checked.
    #[arg(value_name = "MESSAGE")]
    pub messages: Vec<String>,
    /// Areas that were checked as a whole, divided by commas: names of files, as `locales status` shows them.
    #[arg(long, value_name = "AREA", value_delimiter = ',')]
    pub area: Vec<String>,
    /// Every message of the language was checked.
    #[arg(long)]
    pub all: bool,
    #[arg(long, value_name = "TAG")]
    pub language: String,
    /// Who checked: role, initials or registration, as the clinic wishes.
    #[arg(long, value_name = "WHO")]
    pub by: String,
    /// The day it was checked.
    #[arg(long, value_name = "DATE")]
    pub on: String,
    /// The clinic's folder of words; the sign-off is written there.
    #[arg(long = "locales", value_name = "DIR")]
    pub folder: PathBuf,
}

/// Writes `drafted.txt` of each language anew.
pub fn draft(args: &DraftArgs, terminal: &Terminal) -> Result<(), Findings> {
    let workshop = workshop(Some(&args.folder))?;
    let mut files = Vec::new();
    for language in languages(&workshop, &args.language)? {
        let tag = language.entry.tag.as_str();
        let (own, first, ledger) = texts(&workshop, tag)?;
        let right: BTreeSet<String> = known(own, &args.still_right)?.into_iter().collect();
        let mut ledger = ledger.clone();
        let done = signoff::draft(&mut ledger, own, first, &right);
        files.push((tag.to_owned(), ledger));
        terminal.say(&format!("{tag}: {} written down, {} outdated", done.written.len(), done.outdated.len()));
        done.outdated.iter().for_each(|id| terminal.say(&format!("  outdated {id}")));
    }
    for (tag, ledger) in &files {
        write(&args.folder, tag, ledger, &[false, true])?;
    }
    Ok(())
}

/// Writes `signed-off.txt` of a language anew.
pub fn sign_off(args: &SignOffArgs, terminal: &Terminal) -> Result<(), Findings> {
    let workshop = workshop(Some(&args.folder))?;
    let mut findings = Findings::default();
    let on: Option<Date> = args.on.parse().map_err(|fault| findings.push(misread(fault))).ok();
    let by = who(&args.by).map_err(|fault| findings.push(fault)).unwrap_or_default();
    let language = languages(&workshop, std::slice::from_ref(&args.language)).map_err(|more| findings.extend(more));
    let (Some(on), Ok(language), false) = (on, language, findings.has_errors()) else { return Err(findings) };
    let Some(language) = language.first() else { return Err(findings) };
    let tag = language.entry.tag.as_str();
    let (own, first, ledger) = texts(&workshop, tag)?;
    let mut wanted: BTreeSet<String> = known(own, &args.messages)?.into_iter().collect();
    let areas: BTreeSet<String> = own.messages().map(|(id, _)| area(own, id)).collect();
    for name in args.area.iter().filter(|name| !areas.contains(*name)) {
        let list: Vec<&str> = areas.iter().map(String::as_str).collect();
        let help = format!("use one of {}", list.join(", "));
        findings.push(Diagnostic::outside(Code::ID_UNKNOWN, format!("`{tag}` has no area `{name}`")).help(help));
    }
    if findings.has_errors() {
        return Err(findings);
    }
    let within = |id: &str| args.all || args.area.contains(&area(own, id));
    wanted.extend(own.messages().map(|(id, _)| id).filter(|id| within(id)).map(str::to_owned));
    let count = wanted.len();
    let mut ledger = ledger.clone();
    signoff::sign(&mut ledger, own, first, wanted, &SignOff { on, by: by.clone() });
    write(&args.folder, tag, &ledger, &[true])?;
    terminal.say(&format!("{tag}: {count} messages signed off by {by} on {on}"));
    Ok(())
}

/// Who checked, as a line of a file can hold it.
pub fn who(text: &str) -> Result<String, Diagnostic> {
    let by = text.trim();
    if by.is_empty() || by.chars().any(char::is_control) {
        let help = "give a role, initials or a registration after `--by`";
        return Err(Diagnostic::outside(Code::FIELD_VALUE, "nobody is named who checked").help(help));
    }
    Ok(by.to_owned())
}

/// Writes the files of states; one with nothing in it is written only over one that is there.
pub fn write(folder: &Path, tag: &str, ledger: &Ledger, signed: &[bool]) -> Result<(), Diagnostic> {
    let folder = folder.join(tag);
    let mut files = Vec::new();
    for &signed in signed {
        let name = if signed { SIGNED_OFF } else { DRAFTED };
        let filled = ledger.entries().any(|(_, entry)| entry.signed.is_some() == signed);
        if filled || folder.join(name).exists() {
            files.push((name.to_owned(), ledger.file(signed).into_bytes()));
        }
    }
    store::write_all(&folder, &files).map(drop)
}
