//! The gate: only a case whose orthosis fits goes on to a plan.

use super::{Fit, Grade, PhaseVerdict, Question, Verdict, judge};
use crate::case::Case;
use crate::content::Begins;
use crate::diag::{Code, Diagnostic, Findings};

/// A case that passed. Only [`admit`] builds one and a plan is made of nothing else, so a misfit cannot reach paper.
#[derive(Clone, Debug)]
pub struct Admitted<'a> {
    case: Case<'a>,
    verdict: Verdict,
}

impl<'a> Admitted<'a> {
    pub fn case(&self) -> &Case<'a> {
        &self.case
    }

    pub fn verdict(&self) -> &Verdict {
        &self.verdict
    }
}

/// Judges a case. Phases with a date decide; a phase that waits for the therapist's word may want another orthosis.
///
/// # Errors
/// When the orthosis does not fit or is unsafe: the table stands in the notes.
pub fn admit(case: Case<'_>) -> Result<Admitted<'_>, (Findings, Verdict)> {
    let verdict = verdict(&case);
    let dated = |phase: &&PhaseVerdict| {
        let known = case.condition.phases.iter().find(|known| known.id == phase.phase);
        known.is_some_and(|known| known.begins == Begins::ByDate || case.begun(&known.id).is_some())
    };
    let worst = verdict.phases.iter().filter(dated).max_by_key(|phase| phase.fit);
    match worst {
        Some(phase) if phase.fit >= Fit::DoesNotFit => {
            let diagnostic = refusal(&case, phase);
            Err((diagnostic.into(), verdict))
        }
        _ => Ok(Admitted { case, verdict }),
    }
}

/// The verdict on a case, whatever it is.
fn verdict(case: &Case<'_>) -> Verdict {
    let findings = case.measured();
    judge(Question { condition: case.condition, orthosis: &case.orthosis, findings: &findings, factors: &case.factors })
}

fn refusal(case: &Case<'_>, phase: &PhaseVerdict) -> Diagnostic {
    let (orthosis, condition) = (&case.file.orthosis, &case.file.condition);
    let deciding: Vec<String> = phase
        .deciding()
        .map(|line| line.joint.map_or_else(|| "the material".to_owned(), |joint| joint.to_string()))
        .collect();
    let (code, message) = if phase.fit == Fit::Unsafe {
        (Code::UNSAFE, format!("`{}` is unsafe for `{}` in phase `{}`", orthosis.value, condition.value, phase.phase))
    } else {
        (
            Code::DOES_NOT_FIT,
            format!("`{}` does not fit `{}` in phase `{}`", orthosis.value, condition.value, phase.phase),
        )
    };
    let mut diagnostic = Diagnostic::error(code, case.place(&orthosis.span), message)
        .label(format!("decided at {}", deciding.join(", ")))
        .also(case.place(&condition.span), "what this needs is not met");
    for line in table(phase) {
        diagnostic = diagnostic.note(line);
    }
    let fitting: Vec<String> = fitting(case, phase);
    diagnostic = match fitting.split_first() {
        Some(_) => diagnostic.help(format!("use an orthosis that fits: {}", fitting.join(", "))),
        None => diagnostic.help("check the condition, or add an orthosis to the content"),
    };
    diagnostic.note("nothing was written")
}

/// Orthoses that fit the phase with the same findings and factors, best first.
fn fitting(case: &Case<'_>, phase: &PhaseVerdict) -> Vec<String> {
    let findings = case.measured();
    let Some(rules) = case.condition.phases.iter().find(|known| known.id == phase.phase) else { return Vec::new() };
    let mut list: Vec<(Fit, usize, String)> = case
        .library
        .orthoses
        .iter()
        .map(|(id, orthosis)| {
            let question =
                Question { condition: case.condition, orthosis, findings: &findings, factors: &case.factors };
            let verdict = super::judge_phase(question, rules);
            let remarks = verdict.lines.iter().filter(|line| line.result == Grade::Remark).count();
            (verdict.fit, remarks, format!("`{id}`"))
        })
        .filter(|(fit, ..)| *fit <= Fit::FitsWithRemarks)
        .collect();
    list.sort();
    list.into_iter().map(|(_, _, name)| name).collect()
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
