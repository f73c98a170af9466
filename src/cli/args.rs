//! The arguments.

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand, ValueEnum};

/// Compiles a short case description into the wear guide a hand-therapy patient takes home.
#[derive(Parser, Debug)]
#[command(name = "palmleaf", version, propagate_version = true, after_help = EXITS)]
pub struct Cli {
    /// How findings and lists are printed.
    #[arg(long, global = true, value_enum, default_value_t = Format::Full)]
    pub format: Format,
    #[command(subcommand)]
    pub command: Command,
}

const EXITS: &str = "Exit status:
  0  done
  1  a file was refused; nothing of a refused case was written
  2  the command line was wrong
  3  the outside failed: a file or folder that cannot be read or written
  4  a fault in palmleaf or its content

The guides are no medical advice: the treating clinician decides, and local protocol wins.";

/// How things are printed.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Format {
    /// For people, with the faulty line underlined.
    Full,
    /// One line each; quotes no line of a case.
    Short,
    /// For programs.
    Json,
}

#[derive(Subcommand, Debug)]
pub enum Command {
    /// Check cases without writing anything.
    Check(CheckArgs),
    /// Make the guide of each case, with its record beside it.
    Build(BuildArgs),
    /// List what the content holds.
    List(ListArgs),
    /// Rank the orthoses for a condition, or the conditions for an orthosis, and say why.
    Choose(ChooseArgs),
    /// Show the whole reasoning of a case: verdict table, plan rules with sources, overrides.
    Explain(ExplainArgs),
    /// Look after the content itself.
    Content(ContentArgs),
    /// Print the JSON Schema of case files, for an editor to complete and check.
    Schema(SchemaArgs),
    /// Print a completion script for a shell.
    Completions(CompletionArgs),
    /// Print the manual page.
    Man,
}

/// Where content comes from.
#[derive(Args, Debug, Clone, Default)]
pub struct Overlay {
    /// A folder laid over the embedded content: its files replace and add.
    #[arg(long = "content", value_name = "DIR")]
    pub folder: Option<PathBuf>,
}

#[derive(Args, Debug)]
pub struct CheckArgs {
    /// Case files.
    #[arg(required = true, value_name = "CASE")]
    pub cases: Vec<PathBuf>,
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(Args, Debug)]
pub struct BuildArgs {
    /// Case files.
    #[arg(required = true, value_name = "CASE")]
    pub cases: Vec<PathBuf>,
    /// The folder that guides are written to.
    #[arg(long, value_name = "DIR", default_value = "dist")]
    pub out: PathBuf,
    /// The language, instead of the case's own; several divided by commas make a guide each.
    #[arg(long, value_name = "TAG", value_delimiter = ',')]
    pub language: Vec<String>,
    /// The print size, instead of the case's own.
    #[arg(long, value_enum)]
    pub print: Option<Print>,
    /// The paper, instead of the case's own.
    #[arg(long, value_enum)]
    pub paper: Option<PaperSize>,
    /// Also write each page as a picture.
    #[arg(long)]
    pub pictures: bool,
    /// Name files after the case file, which may hold a person's name.
    #[arg(long)]
    pub name_by_case: bool,
    /// Refuse to build on content that is less than this.
    #[arg(long, value_enum, value_name = "STATE")]
    pub require: Option<Require>,
    /// How many cases are made at the same time; all processors when not said.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u8).range(1..=64))]
    pub threads: Option<u8>,
    #[command(flatten)]
    pub overlay: Overlay,
}

/// How far the content that a guide rests on has to be confirmed.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Require {
    /// Every condition, orthosis, exercise and activity used is confirmed by a clinician as it stands.
    Confirmed,
}

#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Print {
    /// 12 point.
    Standard,
    /// 18 point.
    Large,
    /// 24 point.
    Giant,
}

#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum PaperSize {
    A4,
    /// US Letter.
    Letter,
}

#[derive(Args, Debug)]
pub struct ListArgs {
    #[arg(value_enum)]
    pub kind: Kind,
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Kind {
    Conditions,
    Orthoses,
    Activities,
    Exercises,
    Factors,
    Needs,
    Languages,
}

#[derive(Args, Debug)]
pub struct ExplainArgs {
    /// Case files.
    #[arg(required = true, value_name = "CASE")]
    pub cases: Vec<PathBuf>,
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(Args, Debug)]
pub struct ContentArgs {
    #[command(subcommand)]
    pub command: ContentCommand,
}

#[derive(Subcommand, Debug)]
pub enum ContentCommand {
    /// Prove that the content is whole: ids, sources, contradictions, words of every language.
    Check(ContentCheckArgs),
    /// Show which files a clinician has confirmed, which are drafted and which have changed since.
    Status(ContentStatusArgs),
    /// Write down that a clinician has confirmed files as they stand.
    Confirm(ContentConfirmArgs),
}

#[derive(Args, Debug)]
pub struct ContentStatusArgs {
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(Args, Debug)]
pub struct ContentConfirmArgs {
    /// What is confirmed: ids that `palmleaf content status` shows, such as `orthoses/ID`.
    #[arg(required = true, value_name = "ITEM")]
    pub items: Vec<String>,
    /// Who confirms: role, initials or registration, as the clinic wishes.
    #[arg(long, value_name = "WHO")]
    pub by: String,
    /// The day of the confirmation.
    #[arg(long, value_name = "DATE")]
    pub on: String,
    /// The clinic's own folder: the confirmation is written there, as `confirmed.yaml`.
    #[arg(long = "content", value_name = "DIR")]
    pub folder: PathBuf,
}

#[derive(Args, Debug)]
pub struct ChooseArgs {
    /// The condition to choose for.
    #[arg(value_name = "CONDITION", required_unless_present = "orthosis", conflicts_with = "orthosis")]
    pub condition: Option<String>,
    /// The other way round: the conditions that this orthosis suits, and why not the others.
    #[arg(long, value_name = "ORTHOSIS", conflicts_with_all = ["phase", "finding", "need", "factor", "chart"])]
    pub orthosis: Option<String>,
    /// The phase of the condition; the first when not said.
    #[arg(long, value_name = "PHASE")]
    pub phase: Option<String>,
    /// The affected finger, for what concerns one finger.
    #[arg(long, value_name = "FINGER")]
    pub finger: Option<String>,
    /// What was measured, such as "thumb-mcp extension 25 deg"; may be given again.
    #[arg(long, value_name = "FINDING")]
    pub finding: Vec<String>,
    /// What the person needs: ids that `palmleaf list needs` shows, divided by commas.
    #[arg(long, value_name = "NEED", value_delimiter = ',')]
    pub need: Vec<String>,
    /// What is particular about the person: ids that `palmleaf list factors` shows, divided by commas.
    #[arg(long, value_name = "FACTOR", value_delimiter = ',')]
    pub factor: Vec<String>,
    /// Show all of them, also those that do not fit.
    #[arg(long)]
    pub all: bool,
    /// Also draw the best side by side, joint by joint, on a page.
    #[arg(long, value_name = "FILE")]
    pub chart: Option<PathBuf>,
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(Args, Debug)]
pub struct ContentCheckArgs {
    #[command(flatten)]
    pub overlay: Overlay,
}

#[derive(Args, Debug)]
pub struct SchemaArgs {
    /// Print an example case instead of the schema.
    #[arg(long)]
    pub example: bool,
}

#[derive(Args, Debug)]
pub struct CompletionArgs {
    #[arg(value_enum)]
    pub shell: clap_complete::Shell,
}
