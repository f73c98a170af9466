//! `palmleaf teach facts`.

use std::path::PathBuf;

use clap::Args;
use clap::builder::TypedValueParser as _;
use rayon::prelude::*;
use serde_json::json;

use crate::body::{Finger, Side};
use crate::case::Paper;
use crate::cli::Ended;
use crate::cli::args::{Cache, Overlay, OwnClinic, words};
use crate::cli::check::{keeping, refused, workshop_of};
use crate::cli::draw;
use crate::cli::terminal::Terminal;
use crate::content::{Library, PrintSize, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{DocumentKind, FactsAsk, FactsFor};
use crate::ids::ConditionId;
use crate::language::Language;
use crate::output::store;
use crate::pipeline::Workshop;
use crate::words::lint::FIRST;

/// The typesetter nests deeply; a worker's stack has room for it.
const STACK: usize = 16 * 1024 * 1024;

#[derive(Args, Debug)]
pub struct FactsArgs {
    /// The conditions; ids that `palmleaf list conditions` shows.
    #[arg(value_name = "CONDITION", required_unless_present = "all", conflicts_with = "all")]
    pub conditions: Vec<String>,
    /// A sheet for every condition.
    #[arg(long)]
    pub all: bool,
    /// Whom it is for: patients get plain words, students the joints with reasons and sources, in English.
    #[arg(long = "for", value_name = "READER", value_parser = words!(FactsFor), default_value = "patients")]
    pub reader: FactsFor,
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
    pub clinic: OwnClinic,
    #[command(flatten)]
    pub overlay: Overlay,
}

pub fn run(args: &FactsArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    match make(&workshop, args, terminal) {
        Ok(files) => {
            let files: Vec<String> = files.iter().map(|file| file.display().to_string()).collect();
            if terminal.is_json() {
                terminal.say_json(&json!({"files": files}));
            } else {
                files.iter().for_each(|file| terminal.say(file));
            }
            Ended::Well
        }
        Err(findings) => refused(&findings, terminal),
    }
}

/// All sheets, or none when one of them cannot be made.
fn make(workshop: &Workshop, args: &FactsArgs, terminal: &Terminal) -> Result<Vec<PathBuf>, Findings> {
    let languages = languages(workshop, args)?;
    let ids = conditions(&workshop.library, args)?;
    let jobs: Vec<(&ConditionId, &Language)> =
        ids.iter().flat_map(|id| languages.iter().map(move |language| (id, language))).collect();
    let bar = terminal.progress(jobs.len());
    let one = |(id, language): &(&ConditionId, &Language)| {
        let ask = FactsAsk {
            library: &workshop.library,
            id,
            condition: &workshop.library.conditions[*id],
            reader: args.reader,
            language: (*language).clone(),
            side: args.side,
            finger: args.finger,
            paper: args.paper,
            print: args.print,
        };
        let pdf = workshop.facts(ask)?.undated_pdf()?;
        bar.inc(1);
        let kind = DocumentKind::Facts(args.reader);
        let size = if args.print == PrintSize::Standard { String::new() } else { format!("-{}", args.print) };
        Ok((format!("{}-{id}-{}{size}.pdf", kind.word(), language.tag), pdf))
    };
    let pool = rayon::ThreadPoolBuilder::new().stack_size(STACK).build();
    let made: Vec<Result<(String, Vec<u8>), Findings>> = match pool {
        Ok(pool) => pool.install(|| jobs.par_iter().map(one).collect()),
        Err(_) => jobs.iter().map(one).collect(),
    };
    bar.finish_and_clear();
    let mut findings = Findings::default();
    let mut files = Vec::new();
    for one in made {
        match one {
            Ok(file) => files.push(file),
            Err(faults) => findings.extend(faults),
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(store::write_all(&args.out, &files)?) }
}

/// The languages asked for, each once. Students' words are there in the first language only.
fn languages(workshop: &Workshop, args: &FactsArgs) -> Result<Vec<Language>, Findings> {
    let mut found: Vec<Language> = Vec::new();
    for tag in &args.language {
        let language = draw::language(workshop, tag)?;
        if args.reader == FactsFor::Students && language.entry.tag.as_str() != FIRST {
            let message = format!("the sheet for students has no words in `{tag}`");
            let help = format!("leave `--language` out, or write `--language {FIRST}`");
            return Err(Diagnostic::outside(Code::ID_UNKNOWN, message).help(help).into());
        }
        if found.iter().all(|known| known.tag != language.tag) {
            found.push(language);
        }
    }
    Ok(found)
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
            Some(id) if found.contains(&id) => {}
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
