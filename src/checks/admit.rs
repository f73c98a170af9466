//! The gate: only a case whose orthosis fits goes on to a plan.

use super::{Fit, Grade, PhaseVerdict, Question, Verdict, contradiction, judge};
use crate::case::{Case, Treated};
use crate::content::Begins;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::PhaseId;

/// A case that passed. Only [`admit`] builds one and a plan is made of nothing else, so a misfit cannot reach paper.
#[derive(Clone, Debug)]
pub struct Admitted<'a> {
    case: Case<'a>,
    verdicts: Vec<Verdict>,
}

impl<'a> Admitted<'a> {
    pub fn case(&self) -> &Case<'a> {
        &self.case
    }

    /// One for each condition of the case, in its order.
    pub fn verdicts(&self) -> &[Verdict] {
        &self.verdicts
    }
}

/// Judges a case. Phases with a date decide; a phase that waits for the therapist's word may want another orthosis.
///
/// # Errors
/// When two conditions contradict each other, and when the orthosis does not fit or is unsafe: the table stands in the
/// notes.
pub fn admit(case: Case<'_>) -> Result<Admitted<'_>, (Findings, Vec<Verdict>)> {
    let findings = case.measured();
    let question = Question { orthosis: &case.orthosis, findings: &findings, factors: &case.factors };
    let verdicts: Vec<Verdict> =
        case.conditions.iter().map(|treated| judge(question, &treated.id, &treated.condition)).collect();
    let contradictions = contradiction::find(&case, question);
    if contradictions.has_errors() {
        return Err((contradictions, verdicts));
    }
    let mut refused = Findings::default();
    for (treated, verdict) in case.conditions.iter().zip(&verdicts) {
        let worst = verdict.phases.iter().filter(|phase| dated(treated, &phase.phase)).max_by_key(|phase| phase.fit);
        if let Some(phase) = worst.filter(|phase| phase.fit >= Fit::DoesNotFit) {
            refused.push(refusal(&case, treated, phase));
        }
    }
    if refused.has_errors() { Err((refused, verdicts)) } else { Ok(Admitted { case, verdicts }) }
}

/// Whether a phase has a date: it begins by itself, or is said to have begun.
pub fn dated(treated: &Treated, phase: &PhaseId) -> bool {
    let known = treated.condition.phases.iter().find(|known| known.id == *phase);
    known.is_some_and(|known| known.begins == Begins::ByDate || treated.begun(&known.id).is_some())
}

fn refusal(case: &Case<'_>, treated: &Treated, phase: &PhaseVerdict) -> Diagnostic {
    let orthosis = &case.file.orthosis;
    let deciding: Vec<String> = phase
        .deciding()
        .map(|line| line.joint.map_or_else(|| "the orthosis as a whole".to_owned(), |joint| joint.to_string()))
        .collect();
    let (code, fault) =
        if phase.fit == Fit::Unsafe { (Code::UNSAFE, "is unsafe for") } else { (Code::DOES_NOT_FIT, "does not fit") };
    let message = format!("`{}` {fault} `{}` in phase `{}`", orthosis.value, treated.id, phase.phase);
    let mut diagnostic = Diagnostic::error(code, case.place(&orthosis.span), message)
        .label(format!("decided at {}", deciding.join(", ")))
        .also(case.place(&case.file.condition.span), "what this needs is not met");
    for line in table(phase) {
        diagnostic = diagnostic.note(line);
    }
    let fitting: Vec<String> = fitting(case, treated, phase);
    diagnostic = match fitting.split_first() {
        Some(_) => diagnostic.help(format!("use an orthosis that fits: {}", fitting.join(", "))),
        None => diagnostic.help("check the condition, or add an orthosis to the content"),
    };
    diagnostic.note("nothing was written")
}

/// Orthoses that fit the phase with the same findings and factors, best first.
fn fitting(case: &Case<'_>, treated: &Treated, phase: &PhaseVerdict) -> Vec<String> {
    let findings = case.measured();
    let Some(rules) = treated.condition.phases.iter().find(|known| known.id == phase.phase) else { return Vec::new() };
    let mut list: Vec<(Fit, usize, String)> = case
        .library
        .orthoses_for(case.finger)
        .filter(|(_, orthosis)| !orthosis.by_order)
        .map(|(id, orthosis)| {
            let question = Question { orthosis: &orthosis, findings: &findings, factors: &case.factors };
            let verdict = super::judge_phase(question, rules);
            (verdict.fit, verdict.count(Grade::Remark), format!("`{id}`"))
        })
        .filter(|(fit, ..)| *fit <= Fit::FitsWithRemarks)
        .collect();
    list.sort();
    list.into_iter().map(|(_, _, name)| name).take(8).collect()
}

/// The table of a phase as lines of text: joint, wanted, offered, result, reason, source.
pub fn table(phase: &PhaseVerdict) -> Vec<String> {
    phase
        .lines
        .iter()
        .map(|line| {
            let joint = line.joint.map_or_else(|| "orthosis".to_owned(), |joint| joint.to_string());
            format!(
                "{joint}: {}; offered {}; {}: {} [{}]",
                line.wanted, line.offered, line.result, line.because, line.basis
            )
        })
        .collect()
}
