//! `palmleaf batch`.

mod join;
mod merged;
mod report;
mod survey;
mod work;

use std::path::PathBuf;
use std::str::FromStr;

use clap::{Args, Subcommand};
use serde_json::json;

use self::report::{Report, State};
use super::Ended;
use super::args::{Cache, Overlay, OwnClinic};
use super::check::{keeping, refused, workshop_of};
use super::papers::Papers;
use super::terminal::{Terminal, ended};
use crate::batch::List;
use crate::diag::Findings;

#[derive(Args, Debug)]
#[command(args_conflicts_with_subcommands = true, subcommand_negates_reqs = true)]
pub struct BatchArgs {
    #[command(subcommand)]
    pub command: Option<BatchCommand>,
    #[command(flatten)]
    pub make: MakeArgs,
}

#[derive(Subcommand, Debug)]
pub enum BatchCommand {
    /// Join the reports of shards: says what is missing and what was built twice.
    Merge(MergeArgs),
}

#[derive(Args, Debug)]
pub struct MakeArgs {
    /// The list: a folder of case files, a file of YAML documents with `---` between them, a CSV or an XLSX.
    #[arg(required = true, value_name = "LIST")]
    pub list: Option<PathBuf>,
    /// Which column of a table feeds which field of the case: a YAML file.
    #[arg(long, value_name = "FILE")]
    pub mapping: Option<PathBuf>,
    /// The folder that guides and the report are written to.
    #[arg(long, value_name = "DIR", default_value = "dist")]
    pub out: PathBuf,
    #[command(flatten)]
    pub papers: Papers,
    /// Go on after a run that was cut off: what was made from the same case, content and options, and is whole, is kept.
    #[arg(long)]
    pub resume: bool,
    /// Make only this part of the list, such as `3/16`. The id of a row decides in which part it is.
    #[arg(long, value_name = "K/N")]
    pub shard: Option<Shard>,
    /// Also join the papers on pages into one PDF for a printer of both sides: each begins on a right-hand page.
    #[arg(long, value_name = "FILE")]
    pub merged: Option<PathBuf>,
    /// How many cases are made at the same time; all processors when not said.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u8).range(1..=64))]
    pub threads: Option<u8>,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub clinic: OwnClinic,
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(Args, Debug)]
pub struct MergeArgs {
    /// Reports of the shards of one list.
    #[arg(required = true, value_name = "REPORT")]
    pub reports: Vec<PathBuf>,
    /// The folder that the report of the whole list is written to.
    #[arg(long, value_name = "DIR", default_value = "dist")]
    pub out: PathBuf,
    /// Also join the papers on pages into one PDF, from the folders that the reports stand in.
    #[arg(long, value_name = "FILE")]
    pub merged: Option<PathBuf>,
}

/// A part of a list: the `number`th of `of`.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Shard {
    number: u16,
    of: u16,
}

impl FromStr for Shard {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let wrong =
            || format!("`{text}` is no part of a list; write `3/16` for the third of sixteen, at most `1000/1000`");
        let (number, of) = text.split_once('/').ok_or_else(wrong)?;
        let (number, of) = (number.parse().map_err(|_| wrong())?, of.parse().map_err(|_| wrong())?);
        if (1..=of).contains(&number) && of <= 1000 { Ok(Self { number, of }) } else { Err(wrong()) }
    }
}

impl std::fmt::Display for Shard {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}/{}", self.number, self.of)
    }
}

impl Shard {
    /// Whether the row of an id belongs to it: by a hash of the id, so that a row stays in its part when others come and go.
    fn holds(self, id: &str) -> bool {
        let mut bytes = [0; 8];
        bytes.copy_from_slice(&blake3::hash(id.as_bytes()).as_bytes()[..8]);
        u64::from_be_bytes(bytes) % u64::from(self.of) == u64::from(self.number) - 1
    }
}

/// What the report of a run is called, without its ending.
fn name(shard: Option<Shard>) -> String {
    match shard {
        Some(Shard { number, of }) => format!("batch-{number:0width$}-of-{of}", width = of.to_string().len()),
        None => "batch".to_owned(),
    }
}

pub fn run(args: &BatchArgs, terminal: &Terminal) -> Ended {
    match (&args.command, &args.make.list) {
        (Some(BatchCommand::Merge(args)), _) => join::run(args, terminal),
        (None, Some(list)) => make(&args.make, list, terminal),
        // The command line asks for one of the two.
        (None, None) => Ended::Misused,
    }
}

fn make(args: &MakeArgs, list: &std::path::Path, terminal: &Terminal) -> Ended {
    // Read before the content: a list that cannot be read is told at once.
    let list = match List::open(list, args.mapping.as_deref()) {
        Ok(list) => list,
        Err(findings) => return refused(&findings, terminal),
    };
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    let done = work::work(&workshop, &list, args, terminal);
    match done {
        Ok((report, files)) => told(&report, &files, terminal),
        Err(findings) => refused(&findings, terminal),
    }
}

/// Says how it went, and ends as the worst row did.
fn told(report: &Report, files: &[PathBuf], terminal: &Terminal) -> Ended {
    let count = |state: State| report.count(state);
    let files: Vec<String> = files.iter().map(|file| file.display().to_string()).collect();
    if terminal.is_json() {
        terminal.say_json(&json!({
            "built": count(State::Built),
            "refused": count(State::Refused),
            "failed": count(State::Failed),
            "files": files,
            "findings": [],
        }));
    } else {
        terminal.say(report.summary(20).trim_end());
        files.iter().for_each(|file| terminal.say(file));
    }
    match (count(State::Failed), count(State::Refused)) {
        (0, 0) => Ended::Well,
        (0, _) => Ended::Refused,
        _ => report.worst(),
    }
}

/// The state of a row that ended with these findings.
fn state(findings: &Findings) -> State {
    match ended(findings) {
        Ended::Well => State::Built,
        Ended::Outside | Ended::Fault => State::Failed,
        Ended::Refused | Ended::Misused => State::Refused,
    }
}
