//! `palmleaf explain`.

use std::path::Path;

use serde_json::{Value, json};

use super::Ended;
use super::args::ExplainArgs;
use super::check::workshop;
use super::terminal::{Terminal, ended};
use crate::diag::{Findings, render};
use crate::output::reasoning;
use crate::pipeline::Workshop;

pub fn run(args: &ExplainArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let mut worst = Ended::Well;
    let mut all: Vec<Value> = Vec::new();
    for path in &args.cases {
        let (value, findings) = one(&workshop, path, terminal);
        worst = worst.max(ended(&findings));
        all.push(value);
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    worst
}

fn one(workshop: &Workshop, path: &Path, terminal: &Terminal) -> (Value, Findings) {
    let name = path.display().to_string();
    let judged = match workshop.read(path).and_then(|(file, source)| workshop.judge(file, source)) {
        Ok(judged) => judged,
        Err(findings) => {
            terminal.findings(&findings);
            return (json!({"case": name, "findings": render::json(&findings)}), findings);
        }
    };
    let findings = judged.faults();
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
    if !terminal.is_json() {
        terminal.findings(&findings);
    }
    let value = json!({"case": name, "hands": hands, "findings": render::json(&findings)});
    (value, findings)
}
