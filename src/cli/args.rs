//! The arguments.

use std::path::PathBuf;

use clap::builder::TypedValueParser as _;
use clap::{Args, Parser, Subcommand, ValueEnum};

use super::batch::BatchArgs;
use super::locales::LocalesArgs;
use super::papers::Papers;
use super::shelf::ShelfArgs;
use super::specimen::SpecimenArgs;
use super::teach::TeachArgs;
use crate::body::{Finger, Side, View};
use crate::picture::limb::Build;

/// The words of a type as the values of an argument.
macro_rules! words {
    ($type:ty) => {
        clap::builder::PossibleValuesParser::new(<$type>::ALL.iter().map(|word| word.word()))
            .try_map(|text| text.parse::<$type>().map_err(|misread| misread.wrong))
    };
}
pub(super) use words;

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
    /// Make the guides of many cases from a list: YAML documents, a folder of case files, CSV or XLSX.
    Batch(BatchArgs),
    /// Ask for a case question by question, and write it as a commented file.
    New(super::new::NewArgs),
    /// Build again on every save, and show what is wrong in its place.
    Watch(super::watch::WatchArgs),
    /// Show how plainly a sheet reads: the score of each section, its longest sentences, its hardest words.
    Read(super::read::ReadArgs),
    /// List what the content holds.
    List(ListArgs),
    /// Rank the orthoses for a condition, or the conditions for an orthosis, and say why.
    Choose(ChooseArgs),
    /// Show the whole reasoning of a case: verdict table, plan rules with sources, overrides.
    Explain(super::explain::ExplainArgs),
    /// Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition
    /// concerns, without a case.
    Draw(DrawArgs),
    /// Make papers to teach with, from the content alone: no case is needed.
    Teach(TeachArgs),
    /// Keep a folder of handouts current: only what a change touches is made anew.
    Shelf(ShelfArgs),
    /// Set a page of every component of the sheets, with what each is for: for contributors and translators.
    Specimen(SpecimenArgs),
    /// Look after the content itself.
    Content(ContentArgs),
    /// Look after the words of each language: what has been checked by whom, and against which English.
    Locales(LocalesArgs),
    /// Print the JSON Schema of case files, for an editor to complete and check.
    Schema(SchemaArgs),
    /// Print a completion script for a shell.
    Completions(CompletionArgs),
    /// Print the manual page.
    Man,
    /// List the fonts and crates that this program carries, with their licences; `--format json` prints the bill of
    /// materials (CycloneDX).
    Licences,
}

/// Where content comes from.
#[derive(Args, Debug, Clone, Default)]
pub struct Overlay {
    /// A folder laid over the embedded content: its files replace and add.
    #[arg(long = "content", value_name = "DIR")]
    pub folder: Option<PathBuf>,
}

/// Where a clinic's own look and words come from.
#[derive(Args, Debug, Clone, Default)]
pub struct OwnClinic {
    /// The clinic's own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any.
    #[arg(id = "clinic", long = "clinic", value_name = "FILE")]
    pub file: Option<PathBuf>,
}

#[derive(Args, Debug)]
pub struct CheckArgs {
    /// Case files.
    #[arg(required = true, value_name = "CASE")]
    pub cases: Vec<PathBuf>,
    #[command(flatten)]
    pub clinic: OwnClinic,
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
    #[command(flatten)]
    pub papers: Papers,
    /// Name files after the case file, which may hold a person's name.
    #[arg(long)]
    pub name_by_case: bool,
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

/// Where drawn pictures are kept for the next run.
#[derive(Args, Debug, Clone, Copy)]
pub struct Cache {
    /// Draw every picture anew, and keep none for the next run.
    #[arg(long)]
    pub no_cache: bool,
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
    /// The schema of a clinic's own file instead.
    #[arg(long, conflicts_with = "example")]
    pub clinic: bool,
    /// The schema of a shelf instead.
    #[arg(long, conflicts_with_all = ["example", "clinic"])]
    pub shelf: bool,
    /// The schema of the mapping of a list instead.
    #[arg(long, conflicts_with_all = ["example", "clinic", "shelf"])]
    pub mapping: bool,
}

#[derive(Args, Debug)]
pub struct CompletionArgs {
    #[arg(value_enum)]
    pub shell: clap_complete::Shell,
}

#[derive(Args, Debug)]
#[group(id = "what", required = true, multiple = false, args = ["orthosis", "exercise", "posture", "steps", "spots", "condition", "faults", "sheet"])]
pub struct DrawArgs {
    /// An orthosis in its place.
    #[arg(long, value_name = "ORTHOSIS")]
    pub orthosis: Option<String>,
    /// An exercise, a picture for each movement.
    #[arg(long, value_name = "EXERCISE")]
    pub exercise: Option<String>,
    /// A bare hand in a posture: a YAML file with the positions of its joints.
    #[arg(long, value_name = "FILE")]
    pub posture: Option<PathBuf>,
    /// The steps of putting an orthosis on and taking it off.
    #[arg(long, value_name = "ORTHOSIS")]
    pub steps: Option<String>,
    /// The spots of the skin check of an orthosis.
    #[arg(long, value_name = "ORTHOSIS")]
    pub spots: Option<String>,
    /// What a condition concerns: its structures on the bones, and the joints that it needs held.
    #[arg(long, value_name = "CONDITION")]
    pub condition: Option<String>,
    /// How an orthosis sits, beside each typical way in which it does not.
    #[arg(long, value_name = "ORTHOSIS")]
    pub faults: Option<String>,
    /// Everything of a kind, with captions, on pages.
    #[arg(long, value_enum, value_name = "KIND")]
    pub sheet: Option<Contact>,
    /// The orthosis that is worn during the exercise.
    #[arg(long, value_name = "ORTHOSIS", requires = "exercise")]
    pub wearing: Option<String>,
    /// The affected finger, for what concerns one finger.
    #[arg(long, value_parser = words!(Finger), default_value = "index")]
    pub finger: Finger,
    #[arg(long, value_parser = words!(Side), default_value = "right")]
    pub side: Side,
    /// From where it is seen; when not said, from where it is seen best.
    #[arg(long, value_parser = words!(View))]
    pub view: Option<View>,
    #[arg(long, value_parser = words!(Build), default_value = "adult")]
    pub build: Build,
    /// How wide a picture is, millimetres; on a sheet as wide as its column when not said.
    #[arg(long, value_name = "MM", value_parser = clap::value_parser!(u16).range(10..=400))]
    pub width: Option<u16>,
    /// The language of the words about the pictures.
    #[arg(long, value_name = "TAG", default_value = "en")]
    pub language: String,
    /// The file to write; its ending says what it is: `.svg`, `.pdf` or `.png`. Several pictures get numbers, or a sheet
    /// in a PDF. With `--format json` it may be left out.
    #[arg(long, short, value_name = "FILE")]
    pub out: Option<PathBuf>,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub overlay: Overlay,
}

/// What a sheet of pictures holds.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Contact {
    /// Each orthosis in its place.
    Orthoses,
    /// Each movement of each joint at both ends of its healthy range.
    Postures,
    Exercises,
    /// The steps of every orthosis.
    Steps,
    /// The skin check of every orthosis.
    Spots,
    /// The structures and held joints of every condition.
    Conditions,
    /// Right and wrong pairs of orthoses.
    Faults,
    All,
}
