//! `palmleaf build`.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use rayon::prelude::*;
use serde_json::{Value, json};

use super::Ended;
use super::args::{BuildArgs, Require, Sheets};
use super::beside;
use super::check::{keeping, workshop_of};
use super::terminal::{Terminal, ended};
use crate::case::{self, Case, CaseFile};
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::document::SheetKind;
use crate::language::WordState;
use crate::output::naming::{self, NameBy};
use crate::output::record::{BesideFacts, GivenFacts, RECORD, Record};
use crate::output::store;
use crate::pipeline::{Form, Workshop};
use crate::reminders::REMINDERS;
use crate::source::SourceText;
use crate::typeset::Pages;
use crate::words::Said;

/// Pixels for each point of a page picture: 110 dots to the inch.
const PICTURE: f64 = 110.0 / 72.0;
/// The typesetter nests deeply; a worker's stack has room for it.
const STACK: usize = 16 * 1024 * 1024;

pub fn run(args: &BuildArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    let languages: Vec<Option<&str>> = if args.language.is_empty() {
        vec![None]
    } else {
        args.language.iter().map(|tag| Some(tag.as_str())).collect()
    };
    let jobs: Vec<(&Path, Option<&str>)> =
        args.cases.iter().flat_map(|case| languages.iter().map(move |language| (case.as_path(), *language))).collect();
    let bar = terminal.progress(jobs.len());
    let threads = args.threads.map_or(0, usize::from);
    let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).stack_size(STACK).build();
    let taken = taken(&workshop, args, &jobs);
    let one = |(number, (path, language)): (usize, &(&Path, Option<&str>))| {
        let result = match &taken[number] {
            Some(findings) => Err(findings.clone()),
            None => job(&workshop, args, path, *language),
        };
        bar.inc(1);
        result
    };
    let results: Vec<Result<Written, Findings>> = match pool {
        Ok(pool) => pool.install(|| jobs.par_iter().enumerate().map(one).collect()),
        Err(_) => jobs.iter().enumerate().map(one).collect(),
    };
    bar.finish_and_clear();
    report(&jobs, &results, terminal)
}

fn report(jobs: &[(&Path, Option<&str>)], results: &[Result<Written, Findings>], terminal: &Terminal) -> Ended {
    let mut worst = Ended::Well;
    let mut all: Vec<Value> = Vec::new();
    for ((path, _), result) in jobs.iter().zip(results) {
        match result {
            Ok((files, findings)) => {
                terminal.findings(findings);
                let files: Vec<String> = files.iter().map(|file| file.display().to_string()).collect();
                if terminal.is_json() {
                    all.push(
                        json!({"case": path.display().to_string(), "files": files, "findings": render::json(findings)}),
                    );
                } else {
                    files.iter().for_each(|file| terminal.say(file));
                }
            }
            Err(findings) => {
                worst = worst.max(ended(findings));
                terminal.findings(findings);
                if terminal.is_json() {
                    all.push(
                        json!({"case": path.display().to_string(), "files": [], "findings": render::json(findings)}),
                    );
                }
            }
        }
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    worst
}

/// For each job the fault that an earlier one writes files of the same name, whichever would be finished first.
fn taken(workshop: &Workshop, args: &BuildArgs, jobs: &[(&Path, Option<&str>)]) -> Vec<Option<Findings>> {
    // A single guide shares its name with none: its case is not read twice.
    if jobs.len() < 2 {
        return vec![None; jobs.len()];
    }
    let mut first: BTreeMap<String, &Path> = BTreeMap::new();
    jobs.iter()
        .map(|(path, language)| {
            // A case that cannot be read is reported by its own job.
            let (file, source) = open(workshop, args, path, *language).ok()?;
            let case = case::resolve(file, source, &workshop.library, &workshop.languages).ok()?;
            let stem = stem(&case, args, path);
            let Some(before) = first.get(&stem) else {
                first.insert(stem, path);
                return None;
            };
            let message = format!(
                "{} would overwrite the guide of {}: both are called `{stem}`",
                path.display(),
                before.display()
            );
            let help = "give each person a `reference` of their own, or name files with `--name-by-case`";
            Some(Diagnostic::outside(Code::OUTPUT_SAME_NAME, message).help(help).into())
        })
        .collect()
}

pub(super) fn open(
    workshop: &Workshop,
    args: &BuildArgs,
    path: &Path,
    language: Option<&str>,
) -> Result<(CaseFile, SourceText), Findings> {
    let (mut file, source) = workshop.read(path)?;
    instead(&mut file, &source, args, language)?;
    Ok((file, source))
}

fn stem(case: &Case<'_>, args: &BuildArgs, path: &Path) -> String {
    let by = if args.name_by_case { NameBy::CaseFile } else { NameBy::Reference };
    let own = path.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
    naming::stem(case, by, &own)
}

/// The files of a job that were written, and what is to be said about them.
type Written = (Vec<PathBuf>, Findings);

fn job(workshop: &Workshop, args: &BuildArgs, path: &Path, language: Option<&str>) -> Result<Written, Findings> {
    let (file, source) = open(workshop, args, path, language)?;
    let judged = workshop.judge(file, source)?;
    let hands = judged.plans()?;
    if args.require.contains(&Require::Confirmed) {
        let open = workshop.standing.require_confirmed(&Workshop::used(&hands));
        if open.has_errors() {
            return Err(open);
        }
    }
    let mut printed = Vec::new();
    let mut findings = Findings::default();
    for kind in wanted(&args.sheets) {
        match workshop.print(kind, &hands)? {
            Some(sheet) => printed.push(sheet),
            // `all` takes what there is; a sheet asked for by name is missed.
            None if args.sheets.contains(&Sheets::One(kind)) => findings.push(nothing(kind, path)),
            None => {}
        }
    }
    let stem = hands.first().map(|(admitted, _)| stem(admitted.case(), args, path)).unwrap_or_default();
    let mut files = Vec::new();
    let mut given = BTreeMap::new();
    for sheet in &printed {
        let (kind, bytes) = (sheet.kind, sheet.bytes()?);
        given.insert(kind.word(), sheet.given(&bytes));
        match &sheet.form {
            Form::Page(_) => files.push((format!("{kind}-{stem}.html"), bytes)),
            Form::Pages(pages) => {
                files.push((format!("{kind}-{stem}.pdf"), bytes));
                files.extend(pictures(args, pages, kind.word(), &stem)?);
            }
        }
    }
    let beside = match &args.with {
        Some(tag) => {
            let (made, more) = beside::made(workshop, args, path, tag, &hands)?;
            findings.extend(more);
            let mut given = BTreeMap::new();
            for sheet in &made {
                let bytes = sheet.bytes()?;
                given.insert(sheet.kind.word(), sheet.given(&bytes));
                files.push((format!("{}-{stem}-{tag}.pdf", sheet.kind), bytes));
                if let Form::Pages(pages) = &sheet.form {
                    files.extend(pictures(args, pages, sheet.kind.word(), &format!("{stem}-{tag}"))?);
                }
            }
            let state = made.iter().map(|sheet| sheet.said.state()).max().unwrap_or(WordState::Original);
            Some((made, BesideFacts { with: tag.clone(), translation: state.word(), sheets: given }))
        }
        None => None,
    };
    let calendar = match is_wanted(&args.sheets, Sheets::Reminders) {
        true => Some(workshop.reminders(&hands)?),
        false => None,
    };
    let said: Vec<&Said> =
        printed.iter().map(|sheet| &sheet.said).chain(calendar.iter().map(|calendar| &calendar.said)).collect();
    if args.require.contains(&Require::SignedOff) {
        let beside = beside.iter().flat_map(|(made, _)| made.iter().map(|sheet| &sheet.said));
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
    if is_wanted(&args.sheets, Sheets::Record) {
        let pages = workshop.record_page(&record, &hands)?;
        files.push((format!("{RECORD}-{stem}.pdf"), pages.pdf()?));
        files.extend(pictures(args, &pages, RECORD, &stem)?);
    }
    let record = serde_json::to_string_pretty(&record).unwrap_or_default() + "\n";
    files.push((format!("{RECORD}-{stem}.json"), record.into_bytes()));
    Ok((store::write_all(&args.out, &files)?, findings))
}

/// The pages as pictures, when they are asked for.
fn pictures(args: &BuildArgs, pages: &Pages, sheet: &str, stem: &str) -> Result<Vec<(String, Vec<u8>)>, Diagnostic> {
    let drawn = if args.pictures { pages.count() } else { 0 };
    (0..drawn).map(|page| Ok((format!("{sheet}-{stem}-page-{}.png", page + 1), pages.png(page, PICTURE)?))).collect()
}

/// Says that a sheet was asked for by name and the case has nothing for it.
fn nothing(kind: SheetKind, path: &Path) -> Diagnostic {
    let message = format!("{} has nothing for the sheet `{kind}`: it was not made", path.display());
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
pub(super) fn wanted(sheets: &[Sheets]) -> impl Iterator<Item = SheetKind> {
    SheetKind::ALL.iter().copied().filter(|&kind| is_wanted(sheets, Sheets::One(kind)))
}

fn is_wanted(sheets: &[Sheets], one: Sheets) -> bool {
    sheets.contains(&Sheets::All) || sheets.contains(&one)
}

/// What the command line says instead of the case.
fn instead(file: &mut CaseFile, source: &SourceText, args: &BuildArgs, language: Option<&str>) -> Result<(), Findings> {
    if let Some(tag) = language {
        file.language.value = tag.parse().map_err(|misread: crate::units::Misread| {
            let place = crate::source::Place { source: source.clone(), span: file.language.span.clone() };
            let help = misread.help();
            let mut diagnostic =
                Diagnostic::error(Code::ID_UNKNOWN, place, misread.wrong).label("given on the command line instead");
            diagnostic.help = help;
            Findings::from(diagnostic)
        })?;
    }
    file.print = args.print.or(file.print);
    file.paper = args.paper.or(file.paper);
    Ok(())
}
