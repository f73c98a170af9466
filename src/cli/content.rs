//! `palmleaf content`.

use serde_json::json;

use super::Ended;
use super::args::{ContentArgs, ContentCommand};
use super::check::workshop;
use super::terminal::{Terminal, ended};
use crate::diag::render;
use crate::lint;

pub fn run(args: &ContentArgs, terminal: &Terminal) -> Ended {
    let ContentCommand::Check(args) = &args.command;
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let report = lint::check(&workshop);
    if terminal.is_json() {
        terminal.say_json(
            &json!({"counts": report.counts, "walked": report.walked, "findings": render::json(&report.findings)}),
        );
    } else {
        terminal.findings(&report.findings);
        for (what, count) in &report.counts {
            terminal.say(&format!("{count:>6} {what}"));
        }
        terminal.say(&format!("{:>6} combinations walked", report.walked));
    }
    ended(&report.findings)
}
