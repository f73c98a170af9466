//! `palmleaf content`.

use std::time::Instant;

use serde_json::{Value, json};

use super::Ended;
use super::args::{ContentArgs, ContentCheckArgs, ContentCommand, ContentConfirmArgs, ContentStatusArgs, OwnClinic};
use super::check::{refused, workshop, workshop_of};
use super::terminal::{Terminal, ended};
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::lint;
use crate::output::{confirmed, store};
use crate::pipeline::Workshop;
use crate::standing::{Item, Kind, State, hash};
use crate::units::{Date, Misread};
use crate::words::lint::FIRST;

pub fn run(args: &ContentArgs, terminal: &Terminal) -> Ended {
    match &args.command {
        ContentCommand::Check(args) => check(args, terminal),
        ContentCommand::Status(args) => status(args, terminal),
        ContentCommand::Confirm(args) => confirm(args, terminal),
    }
}

fn check(args: &ContentCheckArgs, terminal: &Terminal) -> Ended {
    // Said to the person who waits; nothing on paper depends on it.
    #[expect(clippy::disallowed_methods, reason = "a report of how long the walk took")]
    let begun = Instant::now();
    let workshop = match workshop_of(&args.overlay, &OwnClinic::default(), terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let report = lint::check(&workshop);
    let seconds = begun.elapsed().as_secs_f64();
    if terminal.is_json() {
        terminal.say_json(&json!({
            "counts": report.counts,
            "walked": report.walked,
            "seconds": seconds,
            "findings": render::json(&report.findings),
        }));
    } else {
        terminal.findings(&report.findings);
        for (what, count) in &report.counts {
            terminal.say(&format!("{count:>8} {what}"));
        }
        terminal.say(&format!("{:>8} combinations walked in {seconds:.1} s", report.walked));
    }
    ended(&report.findings)
}

fn status(args: &ContentStatusArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let all: Vec<(&Item, &State)> = workshop.standing.all().collect();
    let library = &workshop.library;
    let bare: Vec<String> =
        library.orthoses.keys().filter(|id| !library.shapes.contains_key(id)).map(ToString::to_string).collect();
    if terminal.is_json() {
        let looks = |item: &Item| (item.kind == Kind::Orthoses).then(|| !bare.contains(&item.id));
        let rows: Vec<Value> = all.iter().map(|(item, state)| row(item, state, looks(item))).collect();
        terminal.say_json(&json!(rows));
        return Ended::Well;
    }
    let width = all.iter().map(|(item, _)| item.to_string().len()).max().unwrap_or(0);
    for (item, state) in &all {
        terminal.say(&format!("{:<width$}  {state}", item.to_string()));
    }
    terminal.say("");
    terminal.say(&format!("{:<12} {:>9} {:>9} {:>9}", "", "confirmed", "outdated", "drafted"));
    for kind in Kind::ALL {
        let count = |word: &str| all.iter().filter(|(item, state)| item.kind == *kind && state.word() == word).count();
        let (confirmed, outdated, drafted) = (count("confirmed"), count("outdated"), count("drafted"));
        terminal.say(&format!("{:<12} {confirmed:>9} {outdated:>9} {drafted:>9}", kind.word()));
    }
    if !bare.is_empty() {
        terminal.say("");
        terminal.say(&format!("without a look, so that no sheet shows them: {}", bare.join(", ")));
    }
    Ended::Well
}

fn row(item: &Item, state: &State, look: Option<bool>) -> Value {
    let (by, on) = match state {
        State::Drafted => (None, None),
        State::Confirmed { by, on } | State::Outdated { by, on } => (Some(by), Some(on.to_string())),
    };
    let mut row = json!({"item": item.to_string(), "state": state.word(), "by": by, "on": on});
    if let Some(look) = look {
        row["look"] = json!(look);
    }
    row
}

fn confirm(args: &ContentConfirmArgs, terminal: &Terminal) -> Ended {
    match confirmed_files(args) {
        Ok(lines) => {
            lines.iter().for_each(|line| terminal.say(line));
            Ended::Well
        }
        Err(findings) => refused(&findings, terminal),
    }
}

fn confirmed_files(args: &ContentConfirmArgs) -> Result<Vec<String>, Findings> {
    // A folder that is not there yet is a clinic's first.
    let overlay = args.folder.is_dir().then_some(args.folder.as_path());
    let workshop = Workshop::load(overlay)?;
    let fault = |misread: Misread| {
        let help = misread.help();
        let mut diagnostic = Diagnostic::outside(Code::ID_UNKNOWN, misread.wrong);
        diagnostic.help = help;
        diagnostic
    };
    let mut findings = Findings::default();
    let on: Option<Date> = args.on.parse().map_err(|misread| findings.push(fault(misread))).ok();
    if args.by.trim().is_empty() || args.by.chars().any(char::is_control) {
        let message = "nobody is named who confirms";
        findings.push(
            Diagnostic::outside(Code::ID_UNKNOWN, message).help("give a role, initials or a registration after `--by`"),
        );
    }
    let mut items = Vec::new();
    for text in &args.items {
        match workshop.standing.find(text) {
            Ok(item) => items.push(item),
            Err(misread) => findings.push(fault(misread)),
        }
    }
    let Some(on) = on.filter(|_| !findings.has_errors()) else { return Err(findings) };
    let words = workshop.words.catalogue(FIRST);
    let new = items.iter().map(|item| (item.to_string(), hash(item, &workshop.assets, words)));
    let text = confirmed::file(&workshop.library.confirmed, new, args.by.trim(), on);
    store::write_all(&args.folder, &[("confirmed.yaml".to_owned(), text.into_bytes())])?;
    Ok(items.iter().map(|item| format!("{item}: confirmed by {} on {on}", args.by.trim())).collect())
}
