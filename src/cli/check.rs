//! `palmleaf check`.

use std::path::PathBuf;

use serde_json::{Value, json};

use super::Ended;
use super::args::{Cache, CheckArgs, Overlay, OwnClinic};
use super::terminal::{Terminal, ended};
use crate::clinic::{self, Clinic};
use crate::diag::{Findings, render};
use crate::pipeline::Workshop;

pub fn run(args: &CheckArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    check(&workshop, &args.cases, terminal)
}

/// Reads and judges cases, and says how each came out.
pub fn check(workshop: &Workshop, cases: &[PathBuf], terminal: &Terminal) -> Ended {
    let mut worst = Ended::Well;
    let mut all: Vec<Value> = Vec::new();
    for path in cases {
        let judged = workshop.read(path).and_then(|(file, source)| workshop.judge(file, source));
        let (findings, verdict) = match judged {
            Ok(judged) => {
                let phases = judged.hands().flat_map(|hand| &hand.verdicts).flat_map(|verdict| &verdict.phases);
                let fits = phases.map(|phase| (phase.phase.to_string(), phase.fit.word())).collect::<Vec<_>>();
                (judged.faults(), Some(fits))
            }
            Err(findings) => (findings, None),
        };
        worst = worst.max(ended(&findings));
        terminal.findings(&findings);
        if terminal.is_json() {
            let verdict = verdict.map(|phases| {
                phases.into_iter().map(|(phase, fit)| json!({"phase": phase, "fit": fit})).collect::<Vec<_>>()
            });
            all.push(
                json!({"case": path.display().to_string(), "verdict": verdict, "findings": render::json(&findings)}),
            );
        } else if !findings.has_errors() {
            let fits: Vec<String> =
                verdict.unwrap_or_default().into_iter().map(|(phase, fit)| format!("{phase} {fit}")).collect();
            terminal.say(&format!("{}: good ({})", path.display(), fits.join(", ")));
        }
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    worst
}

/// Loads the content; what is wrong with it is reported and ends the run.
pub fn workshop(overlay: &Overlay, terminal: &Terminal) -> Result<Workshop, Ended> {
    Workshop::load(overlay.folder.as_deref()).map_err(|findings| refused(&findings, terminal))
}

/// The clinic's own file, when there is one.
pub fn clinic_of(overlay: &Overlay, own: &OwnClinic) -> Option<PathBuf> {
    let beside = overlay.folder.as_ref().map(|folder| folder.join(clinic::FILE)).filter(|file| file.is_file());
    own.file.clone().or(beside)
}

/// The same with the clinic's own file: the one that is named, else that of the content folder.
pub fn workshop_of(overlay: &Overlay, own: &OwnClinic, terminal: &Terminal) -> Result<Workshop, Ended> {
    // Read before the content: a logo that is too large for a logo is told as one.
    let clinic = clinic_of(overlay, own).map(|file| Clinic::load(&file)).transpose();
    let clinic = clinic.map_err(|findings| refused(&findings, terminal))?;
    let workshop = workshop(overlay, terminal)?;
    match clinic {
        Some(clinic) => workshop.for_clinic(clinic).map_err(|findings| refused(&findings, terminal)),
        None => Ok(workshop),
    }
}

/// Pictures are kept for the next run unless the command line says otherwise.
pub fn keeping(workshop: Workshop, cache: Cache) -> Workshop {
    if cache.no_cache { workshop } else { workshop.keep_pictures() }
}

/// Reports why nothing could be begun.
pub fn refused(findings: &Findings, terminal: &Terminal) -> Ended {
    if terminal.is_json() {
        terminal.say_json(&json!([{"findings": render::json(findings)}]));
    }
    terminal.findings(findings);
    ended(findings)
}
