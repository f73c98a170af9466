//! `palmleaf teach`: papers for the class room and for whoever asks, made from the content without a case.
//!
//! A paper is a subcommand in a file of its own, with its own arguments.

mod booklet;
mod facts;

use clap::{Args, Subcommand};

use super::Ended;
use super::terminal::Terminal;
use booklet::BookletArgs;
use facts::FactsArgs;

#[derive(Args, Debug)]
pub struct TeachArgs {
    #[command(subcommand)]
    pub command: TeachCommand,
}

#[derive(Subcommand, Debug)]
pub enum TeachCommand {
    /// A fact sheet for each condition, for patients or for students.
    Facts(FactsArgs),
    /// Bind sheets into one file with a page of contents.
    Booklet(BookletArgs),
}

pub fn run(args: &TeachArgs, terminal: &Terminal) -> Ended {
    match &args.command {
        TeachCommand::Facts(args) => facts::run(args, terminal),
        TeachCommand::Booklet(args) => booklet::run(args, terminal),
    }
}
