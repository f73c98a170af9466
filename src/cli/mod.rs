//! The command line: reads arguments, runs the library, prints, and says how it ended.

pub mod args;
mod batch;
mod beside;
mod build;
mod check;
mod choose;
mod content;
mod describe;
mod draw;
mod explain;
pub mod fault;
mod licences;
mod list;
mod locales;
mod new;
mod papers;
mod read;
mod shelf;
mod specimen;
mod teach;
mod terminal;
mod watch;

use std::process::ExitCode;

use clap::Parser;

pub use args::Cli;
use args::Command;
pub use describe::{case_schema, clinic_schema, completion_script, manual, mapping_schema, shelf_schema};
use terminal::Terminal;

/// How a run ended. The numbers are part of the interface.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Ended {
    /// Done.
    Well = 0,
    /// The person's files were refused; nothing of a refused case was written.
    Refused = 1,
    /// The command line was wrong.
    Misused = 2,
    /// The outside failed: disk, permission.
    Outside = 3,
    /// A fault in Palmleaf or its embedded content.
    Fault = 4,
}

impl From<Ended> for ExitCode {
    fn from(ended: Ended) -> Self {
        Self::from(ended as u8)
    }
}

/// Runs the command line of this process.
pub fn run() -> ExitCode {
    fault::say_no_case();
    // Said by then; what is left is the number.
    std::panic::catch_unwind(command).unwrap_or(Ended::Fault.into())
}

fn command() -> ExitCode {
    let cli = match Cli::try_parse() {
        Ok(cli) => cli,
        Err(error) => {
            let wrong = error.use_stderr();
            // A closed pipe is no reason to fail.
            let _closed = error.print();
            return if wrong { Ended::Misused.into() } else { Ended::Well.into() };
        }
    };
    let terminal = Terminal::new(cli.format);
    let ended = match &cli.command {
        Command::Check(args) => check::run(args, &terminal),
        Command::Build(args) => build::run(args, &terminal),
        Command::Batch(args) => batch::run(args, &terminal),
        Command::Watch(args) => watch::run(args, &terminal),
        Command::New(args) => new::run(args, &terminal),
        Command::Read(args) => read::run(args, &terminal),
        Command::List(args) => list::run(args, &terminal),
        Command::Choose(args) => choose::run(args, &terminal),
        Command::Explain(args) => explain::run(args, &terminal),
        Command::Draw(args) => draw::run(args, &terminal),
        Command::Teach(args) => teach::run(args, &terminal),
        Command::Shelf(args) => shelf::run(args, &terminal),
        Command::Specimen(args) => specimen::run(args, &terminal),
        Command::Content(args) => content::run(args, &terminal),
        Command::Locales(args) => locales::run(args, &terminal),
        Command::Schema(args) => describe::schema(args, &terminal),
        Command::Completions(args) => describe::completions(args, &terminal),
        Command::Man => describe::man(&terminal),
        Command::Licences => licences::run(&terminal),
    };
    ended.into()
}
