//! `palmleaf read`.

use std::path::{Path, PathBuf};

use clap::{Args, ValueEnum};
use serde_json::{Value, json};

use super::Ended;
use super::args::Overlay;
use super::check::{refused, workshop};
use super::papers::{Sheets, wanted};
use super::terminal::{Terminal, ended};
use crate::case;
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::ids::one_of;
use crate::pipeline::Workshop;
use crate::readability::{self, Instrument, Readability, report};
use crate::units::Misread;

#[derive(Args, Debug)]
pub struct ReadArgs {
    /// Case files.
    #[arg(value_name = "CASE", required_unless_present_any = ["all", "text"])]
    pub cases: Vec<PathBuf>,
    /// Read every message of the languages, file by file, instead of a case. A variable counts as a figure.
    #[arg(long, conflicts_with_all = ["cases", "text", "instrument"])]
    pub all: bool,
    /// Read a file of plain text, each line by itself.
    #[arg(long, value_name = "FILE", conflicts_with_all = ["cases", "instrument"])]
    pub text: Option<PathBuf>,
    /// The language, instead of the case's own; several divided by commas are read each.
    #[arg(long, value_name = "TAG", value_delimiter = ',')]
    pub language: Vec<String>,
    /// Which sheets to read, divided by commas, or `all`.
    #[arg(long, value_name = "SHEETS", value_delimiter = ',', default_value = "guide", value_enum)]
    pub sheets: Vec<Sheets>,
    /// Fill in this instrument for patient material instead, as far as a program can: `pemat` or `cdc`.
    #[arg(long, value_name = "NAME")]
    pub instrument: Option<String>,
    /// End with status 1 when a section misses this.
    #[arg(long, value_enum, value_name = "WHAT")]
    pub require: Option<ReadRequire>,
    #[command(flatten)]
    pub overlay: Overlay,
}

/// What every section has to reach.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum ReadRequire {
    /// The limit of the language's score.
    Grade,
}

/// One text that was read: what to print, and whether it keeps to its limit.
struct Read {
    text: String,
    json: Value,
    findings: Findings,
}

pub fn run(args: &ReadArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let instrument = match instrument(&workshop, args.instrument.as_deref()) {
        Ok(instrument) => instrument,
        Err(findings) => return refused(&findings, terminal),
    };
    let mut worst = Ended::Well;
    let mut all: Vec<Value> = Vec::new();
    let mut done = |read: Read| {
        if !terminal.is_json() && !read.text.is_empty() {
            terminal.say(&read.text);
        }
        terminal.findings(&read.findings);
        worst = worst.max(ended(&read.findings));
        let mut json = read.json;
        json["findings"] = render::json(&read.findings);
        all.push(json);
    };
    for path in &args.cases {
        match sheets(&workshop, args, path, instrument.as_ref()) {
            Ok(reads) => reads.into_iter().for_each(&mut done),
            Err(findings) => {
                done(Read { text: String::new(), json: json!({"case": path.display().to_string()}), findings })
            }
        }
    }
    if args.all {
        match messages(&workshop, args) {
            Ok(reads) => reads.into_iter().for_each(&mut done),
            Err(findings) => done(Read { text: String::new(), json: json!({}), findings }),
        }
    }
    if let Some(path) = &args.text {
        match text(&workshop, args, path) {
            Ok(reads) => reads.into_iter().for_each(&mut done),
            Err(findings) => {
                done(Read { text: String::new(), json: json!({"text": path.display().to_string()}), findings })
            }
        }
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    worst
}

/// The instrument that was asked for.
fn instrument(workshop: &Workshop, name: Option<&str>) -> Result<Option<Instrument>, Findings> {
    let Some(name) = name else { return Ok(None) };
    let mut all = readability::instruments(&workshop.assets)?;
    let known = one_of(name, all.keys(), "instrument", "one of `content/instruments`, such as `pemat`");
    let key = known.cloned().map_err(unknown)?;
    Ok(all.remove(&key))
}

/// A name on the command line that nothing has.
fn unknown(misread: Misread) -> Findings {
    let help = misread.help();
    let mut diagnostic = Diagnostic::outside(Code::ID_UNKNOWN, misread.wrong);
    diagnostic.help = help;
    diagnostic.into()
}

/// The sheets of a case, in each language asked for.
fn sheets(
    workshop: &Workshop,
    args: &ReadArgs,
    path: &Path,
    instrument: Option<&Instrument>,
) -> Result<Vec<Read>, Findings> {
    let mut reads = Vec::new();
    let languages: Vec<Option<&str>> = if args.language.is_empty() {
        vec![None]
    } else {
        args.language.iter().map(|tag| Some(tag.as_str())).collect()
    };
    for tag in languages {
        let (mut file, source) = workshop.read(path)?;
        if let Some(tag) = tag {
            file.language.value = tag.parse().map_err(unknown)?;
        }
        let hands = workshop.judge(file, source)?.plans()?;
        for kind in wanted(&args.sheets) {
            let Some(sheet) = workshop.say(kind, &hands)? else { continue };
            let language = sheet.data["meta"]["language"].as_str().unwrap_or_default();
            let reading = workshop.readability(&sheet).ok_or_else(|| unmeasured(language))?;
            let name = format!("{}, {kind}, {language}", path.display());
            let filled = instrument
                .and_then(|instrument| Some((instrument, instrument.fill(&sheet, &reading, &workshop.yardsticks)?)));
            let (text, mut json) = match &filled {
                Some((instrument, parts)) => {
                    (report::filled_text(&name, instrument, parts), report::filled_json(instrument, parts))
                }
                None => (report::text(&name, &reading), report::json(&reading)),
            };
            json["case"] = json!(path.display().to_string());
            json["sheet"] = json!(kind.word());
            reads.push(Read { text, json, findings: missed(args, &name, &reading) });
        }
    }
    Ok(reads)
}

/// Every message of each language asked for, or of all, file by file.
fn messages(workshop: &Workshop, args: &ReadArgs) -> Result<Vec<Read>, Findings> {
    let known = workshop.languages.tags();
    if let Some(tag) = args.language.iter().find(|tag| !known.contains(&tag.as_str())) {
        return Err(one_of(tag, known.iter(), "language with words", &format!("one of: {}", known.join(", ")))
            .map_or_else(unknown, |_| Findings::default()));
    }
    let mut reads = Vec::new();
    for (tag, catalogue) in workshop.words.catalogues() {
        if !args.language.is_empty() && !args.language.iter().any(|wanted| wanted == tag) {
            continue;
        }
        let Some(reading) = readability::messages(catalogue, &workshop.yardsticks) else { continue };
        let name = format!("every message, {tag}");
        let mut json = report::json(&reading);
        if let Some(yardstick) = workshop.yardsticks.find(tag) {
            json["syllables"] = json!(report::syllables(&reading, yardstick));
        }
        reads.push(Read { text: report::text(&name, &reading), json, findings: missed(args, &name, &reading) });
    }
    Ok(reads)
}

/// A text file, in each language asked for.
fn text(workshop: &Workshop, args: &ReadArgs, path: &Path) -> Result<Vec<Read>, Findings> {
    let source = case::load_text(path, "give the path of a file of plain text")?;
    let tags: Vec<&str> =
        if args.language.is_empty() { vec!["en"] } else { args.language.iter().map(String::as_str).collect() };
    let mut reads = Vec::new();
    for tag in tags {
        let reading = readability::of_text(source.text(), tag, &workshop.yardsticks).ok_or_else(|| unmeasured(tag))?;
        let name = format!("{}, {tag}", path.display());
        let mut json = report::json(&reading);
        json["text"] = json!(path.display().to_string());
        reads.push(Read { text: report::text(&name, &reading), json, findings: missed(args, &name, &reading) });
    }
    Ok(reads)
}

fn unmeasured(tag: &str) -> Findings {
    Diagnostic::outside(Code::ID_UNKNOWN, format!("nothing says how `{tag}` is measured"))
        .help(format!("add `content/readability/{tag}.yaml`"))
        .into()
}

/// The sections that miss their limit: errors when the limit is required, and nothing otherwise, since the reading
/// itself shows them.
fn missed(args: &ReadArgs, name: &str, reading: &Readability) -> Findings {
    let mut findings = Findings::default();
    if args.require != Some(ReadRequire::Grade) {
        return findings;
    }
    for section in reading.sections.iter().filter(|section| !section.met) {
        let grade = section.grade.unwrap_or_default();
        let message = format!(
            "{name}: the section `{}` reads at {grade:.1}; {} is wanted ({})",
            section.id,
            reading.gate.limit(),
            reading.gate.name()
        );
        let mut diagnostic = Diagnostic::outside(Code::READ_TOO_HARD, message);
        if let Some(longest) = section.longest.first() {
            diagnostic = diagnostic.help(format!("shorten «{}»", longest.text));
        }
        findings.push(diagnostic);
    }
    findings
}
