//! `palmleaf watch`: builds a case again on every save, and shows what is wrong with it in its place.
//!
//! Files are looked at, not listened to: shared folders, where the cases of a clinic lie, pass on no events of the file
//! system. A look at a handful of files costs some microseconds.

mod stamp;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use clap::Args;
use serde_json::json;

use self::stamp::Stamps;
use super::Ended;
use super::args::BuildArgs;
use super::build::{self, Made};
use super::check::{keeping, workshop_of};
use super::terminal::Terminal;
use crate::clinic::Clinic;
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::output::store;
use crate::picture::album::Album;
use crate::pipeline::Workshop;

/// Between two looks.
const LOOK: Duration = Duration::from_millis(5);
/// A look takes at most this part of the time, however many files there are.
const SHARE: u32 = 20;
/// Nothing is shown of what has not lain still for so long: what is being written is half a file.
const QUIET: Duration = Duration::from_millis(30);
/// A file that is gone or empty may be between two steps of a save: so long it is waited for.
const OPEN: Duration = Duration::from_millis(400);

#[derive(Args, Debug)]
pub struct WatchArgs {
    #[command(flatten)]
    pub build: BuildArgs,
}

pub fn run(args: &WatchArgs, terminal: &Terminal) -> Ended {
    let stop = Arc::new(AtomicBool::new(false));
    let stopping = stop.clone();
    if let Err(why) = ctrlc::set_handler(move || stopping.store(true, Ordering::SeqCst)) {
        let message = format!("Ctrl-C cannot be waited for: {why}");
        terminal.findings(&Diagnostic::outside(Code::FILE_UNREADABLE, message).into());
        return Ended::Outside;
    }
    let pool = build::pool(args.build.threads);
    let watch = || Watch { args: &args.build, terminal, stop: &stop, workshop: None, album: None }.run();
    match pool {
        Ok(pool) => pool.install(watch),
        Err(_) => watch(),
    }
    Ended::Well
}

struct Watch<'a> {
    args: &'a BuildArgs,
    terminal: &'a Terminal,
    stop: &'a AtomicBool,
    /// Loaded once; nothing while the content itself is wrong.
    workshop: Option<Workshop>,
    /// The pictures, while the content is wrong.
    album: Option<Album>,
}

impl Watch<'_> {
    fn run(mut self) {
        let mut seen = self.look();
        self.load();
        self.publish(self.make(&self.all()));
        self.terminal.aside("watching; Ctrl-C ends it");
        while let Some((now, since)) = self.change(&seen) {
            let changed = now.changed(&seen);
            let mut cases = self.all();
            cases.retain(|case| changed.contains(case.as_path()));
            // What is no case is content or the clinic's: it concerns every case.
            let shared = changed.len() > cases.len();
            if shared {
                if !self.is_still(&now, since) {
                    continue;
                }
                self.load();
                cases = self.all();
            }
            for case in cases.iter().filter(|case| now.is_open(case)) {
                let state = if case.exists() { "is empty" } else { "is gone" };
                self.terminal.aside(&format!("{} {state}; waiting for it", case.display()));
            }
            cases.retain(|case| !now.is_open(case));
            let made = self.make(&cases);
            // Made on trust while the file had to lie still: if it did not, nobody sees this one.
            if !self.is_still(&now, since) {
                continue;
            }
            self.publish(made);
            if !cases.is_empty() {
                self.terminal.aside(&format!("{} ms after the save", since.elapsed().as_millis()));
            }
            seen = now;
        }
    }

    fn all(&self) -> BTreeSet<PathBuf> {
        self.args.cases.iter().cloned().collect()
    }

    /// Waits until something is not as it was; since when it is so. Nothing when it is to end.
    fn change(&self, seen: &Stamps) -> Option<(Stamps, Instant)> {
        let mut last = seen.clone();
        let mut since = now();
        while !self.stop.load(Ordering::SeqCst) {
            let began = now();
            let stamps = self.look();
            let took = began.elapsed();
            if stamps != last {
                since = began;
                last = stamps;
            }
            let open = last.changed(seen).iter().any(|file| last.is_open(file));
            if last != *seen && (!open || since.elapsed() >= OPEN) {
                return Some((last, since));
            }
            std::thread::sleep(LOOK.max(took * SHARE));
        }
        None
    }

    /// Whether everything has lain as it is for long enough; begins to look again when it has not.
    fn is_still(&self, now: &Stamps, since: Instant) -> bool {
        loop {
            if self.look() != *now {
                return false;
            }
            if since.elapsed() >= QUIET || self.stop.load(Ordering::SeqCst) {
                return true;
            }
            std::thread::sleep(LOOK);
        }
    }

    /// The cases, the clinic's file with what it names, and the content folder.
    fn look(&self) -> Stamps {
        let clinic = self.args.clinic.file.as_deref().map(Clinic::files).unwrap_or_default();
        let files = self.args.cases.iter().chain(&clinic).map(PathBuf::as_path);
        let folders: Vec<&Path> = self.args.overlay.folder.as_deref().into_iter().collect();
        Stamps::of(files, &folders)
    }

    /// Loads content and clinic anew. Pictures are kept: a picture is known by what it shows.
    fn load(&mut self) {
        if let Some(old) = self.workshop.take() {
            self.album = Some(old.album);
        }
        if let Ok(new) = workshop_of(&self.args.overlay, &self.args.clinic, self.terminal) {
            self.workshop = Some(match self.album.take() {
                Some(album) => new.with_pictures(album),
                None => keeping(new, self.args.cache),
            });
        }
    }

    fn make(&self, cases: &BTreeSet<PathBuf>) -> Vec<(PathBuf, Result<Made, Findings>)> {
        let Some(workshop) = &self.workshop else { return Vec::new() };
        let jobs = build::jobs(self.args);
        let taken = build::taken(workshop, self.args, &jobs);
        let wanted = jobs.into_iter().zip(taken).filter(|((path, _), _)| cases.contains(*path));
        let one = |((path, language), taken): ((&Path, Option<&str>), Option<Findings>)| {
            let made = match taken {
                Some(findings) => Err(findings),
                None => build::make(workshop, self.args, path, language),
            };
            (path.to_path_buf(), made)
        };
        wanted.map(one).collect()
    }

    /// Writes what was made, and says what is wrong with what was not.
    fn publish(&self, all: Vec<(PathBuf, Result<Made, Findings>)>) {
        for (path, made) in all {
            let written = made.and_then(|(files, findings)| Ok((store::write_all(&self.args.out, &files)?, findings)));
            let (files, findings) = written.unwrap_or_else(|findings| (Vec::new(), findings));
            let files: Vec<String> = files.iter().map(|file| file.display().to_string()).collect();
            self.terminal.findings(&findings);
            if self.terminal.is_json() {
                let value =
                    json!({"case": path.display().to_string(), "files": files, "findings": render::json(&findings)});
                // One line for each build, so that a program can follow.
                self.terminal.say(&value.to_string());
            } else if files.is_empty() {
                self.terminal.aside(&format!("{}: not built; waiting for the next save", path.display()));
            } else {
                files.iter().for_each(|file| self.terminal.say(file));
            }
        }
    }
}

#[expect(clippy::disallowed_methods, reason = "how long a file has lain still; nothing of it reaches a page")]
fn now() -> Instant {
    Instant::now()
}
