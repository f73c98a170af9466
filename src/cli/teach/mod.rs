//! `palmleaf teach`: papers for those who teach.

mod booklet;

use clap::{Args, Subcommand};

use super::Ended;
use super::terminal::Terminal;
pub use booklet::BookletArgs;

#[derive(Args, Debug)]
pub struct TeachArgs {
    #[command(subcommand)]
    pub command: TeachCommand,
}

#[derive(Subcommand, Debug)]
pub enum TeachCommand {
    /// Bind sheets into one file with a page of contents.
    Booklet(BookletArgs),
}

pub fn run(args: &TeachArgs, terminal: &Terminal) -> Ended {
    match &args.command {
        TeachCommand::Booklet(args) => booklet::run(args, terminal),
    }
}
