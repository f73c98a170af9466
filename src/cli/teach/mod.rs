//! `palmleaf teach`: papers for the class room and for whoever asks, made from the content without a case.
//!
//! A paper is a subcommand in a file of its own, with its own arguments.

mod booklet;
mod cards;
mod chart;
mod facts;
mod pictured;
mod questions;
mod teacher;

use clap::{Args, Subcommand};

use super::Ended;
use super::terminal::Terminal;
use booklet::BookletArgs;
pub use chart::page as chart_page;
pub use pictured::{Pictured, Shown, capital, pictured};
pub use teacher::Teacher;

use cards::CardsArgs;
use chart::ChartArgs;
use facts::FactsArgs;
use questions::QuestionsArgs;

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
    /// A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint.
    Chart(ChartArgs),
    /// Study cards to print on both sides and cut, and the same for a card program.
    Cards(CardsArgs),
    /// Invented cases with four orthoses to choose from, and the key with reasons.
    Questions(QuestionsArgs),
}

pub fn run(args: &TeachArgs, terminal: &Terminal) -> Ended {
    match &args.command {
        TeachCommand::Facts(args) => facts::run(args, terminal),
        TeachCommand::Booklet(args) => booklet::run(args, terminal),
        TeachCommand::Chart(args) => chart::run(args, terminal),
        TeachCommand::Cards(args) => cards::run(args, terminal),
        TeachCommand::Questions(args) => questions::run(args, terminal),
    }
}
