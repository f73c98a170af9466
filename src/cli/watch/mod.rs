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
use super::build;
use super::check::{keeping, workshop_of};
use super::terminal::Terminal;
use crate::clinic::Clinic;
use crate::diag::{Code, Diagnostic, render};
use crate::picture::album::Album;
use crate::pipeline::Workshop;

/// Between two looks.
const LOOK: Duration = Duration::from_millis(5);
/// A look takes at most this part of the time, however many files there are.
const SHARE: u32 = 20;
/// Nothing is read before it has lain still for so long: what is being written is half a file.
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
        self.build(&self.args.cases.iter().map(PathBuf::as_path).collect());
        self.terminal.aside("watching; Ctrl-C ends it");
        while let Some((now, since)) = self.change(&seen) {
            let changed = now.changed(&seen);
            let mut cases: BTreeSet<&Path> =
                self.args.cases.iter().map(PathBuf::as_path).filter(|case| changed.contains(case)).collect();
            // What is no case is content or the clinic's: it concerns every case.
            if changed.len() > cases.len() {
                self.load();
                cases = self.args.cases.iter().map(PathBuf::as_path).collect();
            }
            for &case in cases.iter().filter(|case| now.is_open(case)) {
                let state = if case.exists() { "is empty" } else { "is gone" };
                self.terminal.aside(&format!("{} {state}; waiting for it", case.display()));
            }
            cases.retain(|case| !now.is_open(case));
            self.build(&cases);
            let after = since.elapsed().as_millis();
            if !cases.is_empty() {
                self.terminal.aside(&format!("{after} ms after the save"));
            }
            seen = now;
        }
    }

    /// Waits until something is not as it was and has lain still. Nothing when it is to end.
    fn change(&self, seen: &Stamps) -> Option<(Stamps, Instant)> {
        let mut since: Option<Instant> = None;
        let mut last = seen.clone();
        let mut still = now();
        while !self.stop.load(Ordering::SeqCst) {
            let began = now();
            let stamps = self.look();
            let took = began.elapsed();
            if stamps != last {
                since = since.or(Some(began));
                still = began;
                last = stamps;
            }
            if let Some(first) = since {
                let open = last.changed(seen).iter().any(|file| last.is_open(file));
                if last == *seen {
                    // It came back as it was.
                    since = None;
                } else if still.elapsed() >= if open { OPEN } else { QUIET } {
                    return Some((last, first));
                }
            }
            std::thread::sleep(LOOK.max(took * SHARE));
        }
        None
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
            let new = new.remembering();
            self.workshop = Some(match self.album.take() {
                Some(album) => new.with_pictures(album),
                None => keeping(new, self.args.cache),
            });
        }
    }

    fn build(&self, cases: &BTreeSet<&Path>) {
        let Some(workshop) = &self.workshop else { return };
        let jobs = build::jobs(self.args);
        let taken = build::taken(workshop, self.args, &jobs);
        for ((path, language), taken) in jobs.iter().zip(taken).filter(|((path, _), _)| cases.contains(path)) {
            let result = match taken {
                Some(findings) => Err(findings),
                None => build::job(workshop, self.args, path, *language),
            };
            let (files, findings) = match result {
                Ok((files, findings)) => (files, findings),
                Err(findings) => (Vec::new(), findings),
            };
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
