//! `palmleaf shelf`.

mod described;
mod folder;
mod make;
mod order;

use std::path::PathBuf;
use std::time::Duration;

use clap::Args;
use serde_json::{Value, json};

use super::Ended;
use super::args::{Cache, Overlay};
use super::check::{keeping, refused, workshop};
use super::terminal::{Terminal, ended};
use crate::clinic::Clinic;
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::output::kept::{self, Lock};
use crate::pipeline::Workshop;
use crate::shelf::{Due, ItemName, Loaded, overdue};
use crate::units::Date;
use folder::Folder;
use make::{Outcome, Shelf};

/// The typesetter nests deeply; a worker's stack has room for it.
const STACK: usize = 16 * 1024 * 1024;
/// Items that are due and are named on a terminal.
const NAMED: usize = 12;
/// How often a run that waits looks again.
const LOOK_AGAIN: Duration = Duration::from_millis(100);

#[derive(Args, Debug)]
pub struct ShelfArgs {
    /// The folder with the `shelf.yaml`.
    #[arg(value_name = "DIR")]
    pub shelf: PathBuf,
    /// Say what would be made, removed or is due, and write nothing; status 1 when the shelf is not current.
    #[arg(long)]
    pub check: bool,
    /// The day that reviews are counted by; the day of the clock (UTC) when not said.
    #[arg(long, value_name = "DATE", value_parser = date)]
    pub today: Option<Date>,
    /// How many seconds to wait for another run on the same folder.
    #[arg(long, value_name = "SECONDS", default_value_t = 60, value_parser = clap::value_parser!(u16).range(0..=3600))]
    pub wait: u16,
    /// How many handouts are made at the same time; all processors when not said.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u8).range(1..=64))]
    pub threads: Option<u8>,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub overlay: Overlay,
}

fn date(text: &str) -> Result<Date, String> {
    text.parse().map_err(|misread: crate::units::Misread| misread.to_string())
}

pub fn run(args: &ShelfArgs, terminal: &Terminal) -> Ended {
    let pool =
        rayon::ThreadPoolBuilder::new().num_threads(args.threads.map_or(0, usize::from)).stack_size(STACK).build();
    let keep = || keep(args, terminal);
    let done = match pool {
        Ok(pool) => pool.install(keep),
        Err(_) => keep(),
    };
    match done {
        Ok(ended) => ended,
        Err(findings) => refused(&findings, terminal),
    }
}

fn keep(args: &ShelfArgs, terminal: &Terminal) -> Result<Ended, Findings> {
    let loaded = Loaded::of(&args.shelf)?;
    let clinic = loaded.clinic.as_ref().map(|path| Clinic::load(path)).transpose()?;
    let stamp = stamp(args, &loaded, clinic.as_ref())?;
    let out = loaded.out();
    within(&loaded, &out)?;
    let _held = if args.check { None } else { Some(lock(args, terminal, &out)?) };
    let folder = Folder::open(&out)?;
    let mut report = Report { args, terminal, loaded: &loaded, out: out.display().to_string() };
    if folder.old.stamp == stamp && folder.is_untouched()? {
        let names = folder.old.items.keys().filter_map(|name| name.parse().ok()).collect();
        let handouts = folder.old.files.values().filter(|kept| !kept.item.is_empty()).count();
        return Ok(report.say(&Outcome { kept: handouts, ..Outcome::default() }, names));
    }
    let mut workshop = keeping(workshop(&args.overlay, terminal).map_err(|_| Findings::default())?, args.cache);
    if let Some(clinic) = clinic {
        workshop = workshop.for_clinic(clinic)?;
    }
    let (languages, items) = match (loaded.languages(&workshop.languages), loaded.items(&workshop.library)) {
        (Ok(languages), Ok(items)) => (languages, items),
        (Err(mut findings), Err(more)) => {
            findings.extend(more);
            return Err(findings);
        }
        (Err(findings), _) | (_, Err(findings)) => return Err(findings),
    };
    for language in &languages {
        within(&loaded, &out.join(language.tag.as_str()))?;
    }
    let shelf = Shelf { workshop: &workshop, loaded: &loaded, items: &items, languages: &languages, stamp };
    let outcome = if args.check {
        shelf.check(&folder)?
    } else {
        let bar = terminal.progress(items.len().max(2));
        let made = shelf.build(folder, &bar);
        bar.finish_and_clear();
        made?
    };
    Ok(report.say(&outcome, items.into_iter().map(|item| item.name).collect()))
}

/// A hash of the program, the content, the shelf's files and the clinic's.
fn stamp(args: &ShelfArgs, loaded: &Loaded, clinic: Option<&Clinic>) -> Result<String, Findings> {
    let (program, content) = rayon::join(kept::program, || Workshop::fingerprint_of(args.overlay.folder.as_deref()));
    let content = content?;
    let clinic = clinic.map(|clinic| clinic.hash.as_str()).unwrap_or_default();
    let mut hash = blake3::Hasher::new();
    for part in [&program, &content, &loaded.hash, clinic] {
        hash.update(&(part.len() as u64).to_le_bytes()).update(part.as_bytes());
    }
    Ok(hash.finalize().to_hex().to_string())
}

/// # Errors
/// A folder that a link leads out of the shelf.
fn within(loaded: &Loaded, folder: &std::path::Path) -> Result<(), Findings> {
    if kept::lies_in(folder, &loaded.folder) {
        return Ok(());
    }
    let message = format!("{} leads out of the folder of the shelf", folder.display());
    Err(Diagnostic::outside(Code::SHELF_FILE, message).help("put a folder there instead of the link").into())
}

fn lock(args: &ShelfArgs, terminal: &Terminal, out: &std::path::Path) -> Result<Lock, Findings> {
    let tries = Duration::from_secs(u64::from(args.wait)).as_millis() / LOOK_AGAIN.as_millis();
    for number in 0..=tries {
        if let Some(lock) = Lock::take(out)? {
            return Ok(lock);
        }
        if number == 0 && tries > 0 {
            terminal.note(&format!("another run is at work in {}: waiting up to {} s", out.display(), args.wait));
        }
        if number < tries {
            std::thread::sleep(LOOK_AGAIN);
        }
    }
    let message = format!("another run is at work in {} and was not done in {} s", out.display(), args.wait);
    Err(Diagnostic::outside(Code::SHELF_BUSY, message)
        .help("run again when it is done, or with a longer `--wait`")
        .into())
}

/// Says what was done.
struct Report<'r> {
    args: &'r ShelfArgs,
    terminal: &'r Terminal,
    loaded: &'r Loaded,
    out: String,
}

impl Report<'_> {
    fn say(&mut self, outcome: &Outcome, mut names: Vec<ItemName>) -> Ended {
        names.sort();
        names.dedup();
        let today = self.args.today.or_else(today);
        let items = names.iter().map(|name| (name, self.loaded.review(name)));
        let due = today.map(|today| overdue(items, self.loaded.file.review_every, today)).unwrap_or_default();
        let stale = self.args.check && !(outcome.made.is_empty() && outcome.removed.is_empty());
        let mut findings = outcome.findings.clone();
        if stale {
            let message = format!("the shelf {} is not current", self.args.shelf.display());
            let help = format!("run `palmleaf shelf {}`", self.args.shelf.display());
            findings.push(Diagnostic::outside(Code::SHELF_STALE, message).help(help));
        }
        if self.terminal.is_json() {
            let due: Vec<Value> =
                due.iter().map(|(due, name)| json!({"item": name.to_string(), "since": since(*due)})).collect();
            self.terminal.say_json(&json!({
                "out": self.out,
                "checked": self.args.check,
                "made": outcome.made,
                "kept": outcome.kept,
                "removed": outcome.removed,
                "changes": outcome.changes,
                "lines": outcome.lines,
                "due": due,
                "findings": render::json(&findings),
            }));
        } else {
            self.lines(outcome, &due);
            self.terminal.findings(&findings);
        }
        ended(&findings)
    }

    fn lines(&self, outcome: &Outcome, due: &[(Due, &ItemName)]) {
        let (made, removed) = (outcome.made.len(), outcome.removed.len());
        if self.args.check {
            outcome.made.iter().for_each(|path| self.terminal.say(&format!("to make: {path}")));
            outcome.removed.iter().for_each(|path| self.terminal.say(&format!("to remove: {path}")));
            self.terminal.say(&format!("{}: {made} to make, {removed} to remove, {} current", self.out, outcome.kept));
        } else {
            self.terminal.say(&format!("{}: {made} made, {removed} removed, {} kept", self.out, outcome.kept));
        }
        outcome.lines.iter().for_each(|line| self.terminal.say(&format!("changed: {}", render::visible(line))));
        for (due, name) in due.iter().take(NAMED) {
            self.terminal.say(&match since(*due) {
                Some(date) => format!("due for review: {name}, since {date}"),
                None => format!("due for review: {name}, no review written down"),
            });
        }
        if due.len() > NAMED {
            self.terminal.say(&format!("due for review: {} more", due.len() - NAMED));
        }
    }
}

fn since(due: Due) -> Option<String> {
    match due {
        Due::Never => None,
        Due::Since(date) | Due::On(date) => Some(date.to_string()),
    }
}

/// The day of the clock. Only what is told on the terminal depends on it.
fn today() -> Option<Date> {
    let now = jiff::tz::Offset::UTC.to_datetime(jiff::Timestamp::now()).date();
    Date::new(now.year(), now.month(), now.day())
}
