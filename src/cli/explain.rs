//! `palmleaf explain`.

use std::path::{Path, PathBuf};

use clap::Args;
use serde_json::{Value, json};

use super::Ended;
use super::args::{Overlay, OwnClinic};
use super::check::workshop_of;
use super::terminal::{Terminal, ended};
use crate::case::CaseFile;
use crate::diag::{Findings, render};
use crate::language::LanguageTag;
use crate::output::reasoning;
use crate::pipeline::{Judged, Led, Origin, SectionOrigins, Workshop};
use crate::source::SourceText;
use crate::units::Misread;

#[derive(Args, Debug)]
pub struct ExplainArgs {
    /// Case files.
    #[arg(required = true, value_name = "CASE")]
    pub cases: Vec<PathBuf>,
    /// Also go through the guide sentence by sentence: its message, the lines of the case that led to it, the rules of
    /// the content with their places and sources.
    #[arg(long)]
    pub sentences: bool,
    /// The language of these sentences, instead of the case's own.
    #[arg(long, value_name = "TAG", requires = "sentences", value_parser = |text: &str| text.parse::<LanguageTag>().map_err(|misread: Misread| misread.to_string()))]
    pub language: Option<LanguageTag>,
    #[command(flatten)]
    pub clinic: OwnClinic,
    #[command(flatten)]
    pub overlay: Overlay,
}

pub fn run(args: &ExplainArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let mut worst = Ended::Well;
    let mut all: Vec<Value> = Vec::new();
    for path in &args.cases {
        let (value, findings) = one(&workshop, args, path, terminal);
        worst = worst.max(ended(&findings));
        all.push(value);
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    worst
}

fn read(workshop: &Workshop, args: &ExplainArgs, path: &Path) -> Result<(CaseFile, SourceText), Findings> {
    let (mut file, source) = workshop.read(path)?;
    if let Some(language) = &args.language {
        file.language.value = language.clone();
    }
    Ok((file, source))
}

fn one(workshop: &Workshop, args: &ExplainArgs, path: &Path, terminal: &Terminal) -> (Value, Findings) {
    let name = path.display().to_string();
    let judged = match read(workshop, args, path).and_then(|(file, source)| workshop.judge(file, source)) {
        Ok(judged) => judged,
        Err(findings) => {
            terminal.findings(&findings);
            return (json!({"case": name, "findings": render::json(&findings)}), findings);
        }
    };
    let mut findings = judged.faults();
    let library = &workshop.library;
    let mut hands: Vec<Value> = Vec::new();
    for hand in judged.hands() {
        let plan = hand.planned.as_ref().ok().map(|(_, plan)| plan);
        if !terminal.is_json() {
            terminal.say(&reasoning::text(&hand.case, &hand.verdicts, plan));
        }
        hands.push(json!({
            "hand": hand.case.file.hand.word(),
            "verdict": reasoning::verdicts(library, &hand.verdicts),
            "plan": plan.map(|plan| reasoning::plan(library, plan)),
            "from-memory": plan.map(|plan| reasoning::from_memory(library, &hand.verdicts, plan)),
        }));
    }
    let mut value = json!({"case": name, "hands": hands});
    if args.sentences && !findings.has_errors() {
        match sentences(workshop, judged) {
            Ok(sections) if terminal.is_json() => value["sentences"] = json!(sections),
            Ok(sections) => sections.iter().for_each(|section| terminal.say(&text(section))),
            Err(faults) => findings.extend(faults),
        }
    }
    if !terminal.is_json() {
        terminal.findings(&findings);
    }
    value["findings"] = render::json(&findings);
    (value, findings)
}

fn sentences(workshop: &Workshop, judged: Judged<'_>) -> Result<Vec<SectionOrigins>, Findings> {
    workshop.origins(&judged.plans()?)
}

fn text(section: &SectionOrigins) -> String {
    let mut out = format!("\nGuide, {} hand, {}", section.hand, section.section);
    for sentence in &section.sentences {
        let message = sentence.message.as_deref().unwrap_or("typed in the case");
        // Isolates keep words of two directions apart on paper; a terminal shows them as signs.
        let said = sentence.text.replace(['\u{2066}', '\u{2067}', '\u{2068}', '\u{2069}'], "").replace('\n', " ");
        out.push_str(&format!("\n  {said} [{message}]"));
        for origin in &sentence.origins {
            out.push_str(&format!("\n      {}", line(origin)));
        }
    }
    render::visible(&out)
}

fn line(origin: &Origin) -> String {
    let Origin { kind, place, what, source } = origin;
    let source = source.as_ref().map(|source| format!(" [{source}]")).unwrap_or_default();
    match kind {
        Led::Case => format!("case   {place} {what}"),
        Led::Clinic => format!("clinic {place} {what}"),
        Led::Unsaid => format!("case   {place} does not say {what}: what is usual"),
        Led::Rule => format!("rule   {place} {what}{source}"),
        Led::Sheet => format!("sheet  {place} {what}"),
    }
}
