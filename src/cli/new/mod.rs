//! `palmleaf new`: asks for a case question by question and writes it as a commented file.

mod arrows;
mod ask;
mod draft;
mod fitting;
mod interview;
mod names;
mod page;
mod plain;

use std::io::{BufRead, Cursor, stdin};
use std::path::{Path, PathBuf};

use clap::Args;

use self::arrows::Arrows;
use self::ask::{Ask, Stop};
use self::interview::Interview;
use self::names::Names;
use self::plain::Plain;
use super::Ended;
use super::args::{Overlay, OwnClinic};
use super::check::{check, clinic_of, workshop_of};
use super::terminal::{Terminal, ended};
use crate::case;
use crate::diag::Findings;
use crate::output::store;
use crate::pipeline::Workshop;
use crate::units::{Date, Misread};

#[derive(Args, Debug)]
pub struct NewArgs {
    /// The file to write; asked for when not said.
    #[arg(value_name = "FILE")]
    pub file: Option<PathBuf>,
    /// Plain numbered questions instead of lists to move in; so it is by itself where there is no terminal.
    #[arg(long)]
    pub plain: bool,
    /// A file with an answer on each line; a line that begins with `#` is a remark, an empty one takes what is offered.
    #[arg(long, value_name = "FILE")]
    pub answers: Option<PathBuf>,
    /// The day that the fitting is taken to be on; today when not said.
    #[arg(long, value_name = "DATE", value_parser = |text: &str| text.parse::<Date>().map_err(|misread: Misread| misread.to_string()))]
    pub today: Option<Date>,
    #[command(flatten)]
    pub clinic: OwnClinic,
    #[command(flatten)]
    pub overlay: Overlay,
}

pub fn run(args: &NewArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let written = asker(args, terminal).and_then(|mut ask| write(args, &workshop, ask.as_mut()));
    match written {
        Ok(path) => {
            terminal.aside(&format!("{} is written", path.display()));
            check(&workshop, &[path], terminal)
        }
        Err(findings) => {
            terminal.findings(&findings);
            ended(&findings)
        }
    }
}

/// Who asks: lists where a person sits at a terminal, plain lines elsewhere.
fn asker<'a>(args: &NewArgs, terminal: &'a Terminal) -> Result<Box<dyn Ask + 'a>, Findings> {
    if let Some(path) = &args.answers {
        let text = case::load_text(path, "give a file with an answer on each line")?;
        let lines: Box<dyn BufRead> = Box::new(Cursor::new(text.text().to_owned()));
        return Ok(Box::new(Plain::new(terminal, lines, false)));
    }
    if Terminal::is_lively() && !args.plain {
        return Ok(Box::new(Arrows::new(terminal)));
    }
    Ok(Box::new(Plain::new(terminal, Box::new(stdin().lock()), Terminal::is_person())))
}

fn write(args: &NewArgs, workshop: &Workshop, ask: &mut dyn Ask) -> Result<PathBuf, Findings> {
    let stopped = |stop: Stop| Findings::from(stop.diagnostic());
    let path = args.file.clone();
    // Before anybody has answered thirty questions for nothing.
    let over = path.as_ref().is_some_and(|path| path.exists());
    if let Some(path) = path.as_ref().filter(|_| over) {
        agreed(ask, path).map_err(stopped)?;
    }
    let draft = Interview {
        ask: &mut *ask,
        workshop,
        names: Names::load(workshop),
        today: args.today.unwrap_or_else(today),
        lent: clinic_of(&args.overlay, &args.clinic).map(|file| file.display().to_string()),
    }
    .run()
    .map_err(stopped)?;
    let text = page::page(&draft, workshop, &Names::load(workshop));
    let target = target(ask, path, over).map_err(stopped)?;
    store::write_one(&target, text.into_bytes())?;
    Ok(target)
}

/// Where to write. A file that came while one was asked is written over only when the person agrees.
fn target(ask: &mut dyn Ask, named: Option<PathBuf>, over: bool) -> Result<PathBuf, Stop> {
    if let Some(path) = named {
        if !over && path.exists() {
            agreed(ask, &path)?;
        }
        return Ok(path);
    }
    let given = |typed: &str| if typed.is_empty() { Err("a file needs a name".to_owned()) } else { ask::line(typed) };
    loop {
        let path = PathBuf::from(ask.text("Write it to which file?", "case.yaml", &given)?);
        if !path.exists() || ask.agree(&there(&path), false)? {
            return Ok(path);
        }
    }
}

fn there(path: &Path) -> String {
    format!("{} is there already. Write over it?", path.display())
}

/// Asks before anything is written over.
fn agreed(ask: &mut dyn Ask, path: &Path) -> Result<(), Stop> {
    if ask.agree(&there(path), false)? { Ok(()) } else { Err(Stop::Wish) }
}

/// Today where the clinic is. Only offered: what the person answers is what counts.
fn today() -> Date {
    let today = jiff::ZonedDateTime::now().date();
    Date::new(today.year(), today.month(), today.day()).unwrap_or(Date::EARLIEST)
}
