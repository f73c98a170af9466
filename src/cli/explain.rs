//! `palmleaf explain`.

use serde_json::json;

use super::Ended;
use super::args::ExplainArgs;
use super::check::refused;
use super::terminal::{Terminal, ended};
use crate::case;
use crate::diag::render;
use crate::output::reasoning;
use crate::pipeline::Workshop;

pub fn run(args: &ExplainArgs, terminal: &Terminal) -> Ended {
    let workshop = match Workshop::load(args.overlay.folder.as_deref()) {
        Ok(workshop) => workshop,
        Err(findings) => return refused(&findings, terminal),
    };
    let judged = match case::read(&args.case).and_then(|(file, source)| workshop.judge(file, source)) {
        Ok(judged) => judged,
        Err(findings) => return refused(&findings, terminal),
    };
    let (plan, findings) = match &judged.planned {
        Ok((_, plan)) => (Some(plan), crate::diag::Findings::default()),
        Err(findings) => (None, findings.clone()),
    };
    if terminal.is_json() {
        let library = &workshop.library;
        terminal.say_json(&json!({
            "case": args.case.display().to_string(),
            "verdict": reasoning::verdict(library, &judged.verdict),
            "plan": plan.map(|plan| reasoning::plan(library, plan)),
            "from-memory": plan.map(|plan| reasoning::from_memory(library, &judged.verdict, plan)),
            "findings": render::json(&findings),
        }));
    } else {
        terminal.say(&reasoning::text(&judged.case, &judged.verdict, plan));
        terminal.findings(&findings);
    }
    ended(&findings)
}
