//! `palmleaf teach facts`.

use std::path::PathBuf;

use clap::Args;
use clap::builder::TypedValueParser as _;

use crate::body::{Finger, Side};
use crate::case::Paper;
use crate::cli::Ended;
use crate::cli::args::{Cache, Overlay, words};
use crate::cli::check::{refused, workshop};
use crate::cli::terminal::Terminal;
use crate::content::{Library, PrintSize, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::ConditionId;

#[derive(Args, Debug)]
pub struct FactsArgs {
    /// The conditions; ids that `palmleaf list conditions` shows.
    #[arg(value_name = "CONDITION", required_unless_present = "all", conflicts_with = "all")]
    pub conditions: Vec<String>,
    /// A sheet for every condition.
    #[arg(long)]
    pub all: bool,
    /// The folder that sheets are written to.
    #[arg(long, value_name = "DIR", default_value = "dist")]
    pub out: PathBuf,
    /// The language; several divided by commas make a sheet each.
    #[arg(long, value_name = "TAG", value_delimiter = ',', default_value = "en")]
    pub language: Vec<String>,
    /// The print size: 12, 18 or 24 point.
    #[arg(long, value_parser = words!(PrintSize), default_value = "standard")]
    pub print: PrintSize,
    #[arg(long, value_parser = words!(Paper), default_value = "a4")]
    pub paper: Paper,
    /// The hand that is shown.
    #[arg(long, value_parser = words!(Side), default_value = "right")]
    pub side: Side,
    /// The finger that is shown, for what concerns one finger.
    #[arg(long, value_parser = words!(Finger), default_value = "index")]
    pub finger: Finger,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub overlay: Overlay,
}

pub fn run(args: &FactsArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) if args.cache.no_cache => workshop,
        Ok(workshop) => workshop.keep_pictures(),
        Err(ended) => return ended,
    };
    match conditions(&workshop.library, args) {
        Ok(_) => Ended::Well,
        Err(findings) => refused(&findings, terminal),
    }
}

/// The conditions asked for; all unknown names at once.
fn conditions(library: &Library, args: &FactsArgs) -> Result<Vec<ConditionId>, Findings> {
    if args.all {
        return Ok(library.conditions.keys().cloned().collect());
    }
    let mut findings = Findings::default();
    let mut found = Vec::new();
    for text in &args.conditions {
        match text.parse().ok().filter(|id| library.conditions.contains_key(id)) {
            Some(id) => found.push(id),
            None => {
                let names: Vec<&str> = library.conditions.keys().map(ConditionId::as_str).collect();
                let (message, help) = unknown("condition", text, names);
                findings.push(Diagnostic::outside(Code::ID_UNKNOWN, message).help(help));
            }
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(found) }
}
