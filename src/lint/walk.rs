//! Walks all combinations and looks for contradictions.

use crate::checks::{Fit, Question, judge_phase};
use crate::content::{Condition, Factor, Library, Orthosis, Phase, Regime};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{ConditionId, FactorId};
use crate::pipeline::Workshop;
use crate::plan::{self, ActivityVerdict};

/// Characters of any message that the language's fonts cannot draw.
pub fn glyphs(workshop: &Workshop) -> Findings {
    let mut findings = Findings::default();
    for language in workshop.languages.iter() {
        let Some(catalogue) = workshop.words.catalogue(language.tag.as_str()) else { continue };
        for (id, info) in catalogue.messages() {
            let text = crate::words::lint::shape(&info.entry).text;
            if let Some(c) = workshop.typesetter.undrawn(&text, &language.fonts) {
                findings.push(
                    Diagnostic::error(
                        Code::TYPESET_GLYPH,
                        info.place.clone(),
                        format!(
                            "none of the fonts for `{}` can draw U+{:04X} «{c}» in `{id}`",
                            language.tag,
                            u32::from(c)
                        ),
                    )
                    .help("write it another way, or add a font"),
                );
            }
        }
    }
    findings
}

/// Proves that every condition in every phase that wants an orthosis has one that fits, and that with each of them the
/// programme and the activities hold no contradiction. Returns how many combinations were walked.
pub fn combinations(library: &Library, findings: &mut Findings) -> usize {
    let mut walked = 0;
    for (id, condition) in &library.conditions {
        for phase in condition.phases.iter().filter(|phase| phase.wear != Regime::Off) {
            let fitting: Vec<&Orthosis> = library
                .orthoses
                .values()
                .filter(|orthosis| {
                    let question = Question { condition, orthosis, findings: &[], factors: &[] };
                    judge_phase(question, phase).fit <= Fit::FitsWithRemarks
                })
                .collect();
            walked += library.orthoses.len();
            if fitting.is_empty() {
                report(library, findings, id, phase, "no orthosis fits this phase");
            }
            exercises(library, findings, id, phase, &fitting, &mut walked);
            for orthosis in fitting {
                activities(library, findings, (id, condition, phase), orthosis, &mut walked);
            }
        }
    }
    walked
}

fn report(library: &Library, findings: &mut Findings, condition: &ConditionId, phase: &Phase, message: &str) {
    let place = library.place(&format!("content/conditions/{condition}.yaml"), phase.id.as_str());
    findings.push(Diagnostic::error(Code::CONTENT_CONTRADICTION, place, format!("phase `{}`: {message}", phase.id)));
}

fn exercises(
    library: &Library,
    findings: &mut Findings,
    condition: &ConditionId,
    phase: &Phase,
    fitting: &[&Orthosis],
    walked: &mut usize,
) {
    let mut any = fitting.is_empty();
    for orthosis in fitting {
        for exercise in library.exercises.values() {
            *walked += 1;
            let allowed = plan::allowed(exercise, phase, phase.wear, orthosis, &[]).is_ok();
            any |= allowed && plan::rank(exercise, phase).is_some();
            if allowed && exercise.stresses.iter().any(|structure| phase.exercises.protects.contains(structure)) {
                report(library, findings, condition, phase, "an exercise stresses what the phase protects");
            }
        }
    }
    if !any {
        report(library, findings, condition, phase, "no exercise is left for this phase");
    }
}

fn activities(
    library: &Library,
    findings: &mut Findings,
    (id, condition, phase): (&ConditionId, &Condition, &Phase),
    orthosis: &Orthosis,
    walked: &mut usize,
) {
    let single: Vec<Vec<(FactorId, &Factor)>> = std::iter::once(Vec::new())
        .chain(library.factors.iter().map(|(id, factor)| vec![(id.clone(), factor)]))
        .collect();
    let protective = condition.phases.iter().any(|other| other.id == phase.id && other.protective);
    for (name, activity) in &library.activities {
        let bare = plan::advise(activity, phase, phase.wear, orthosis, &[]);
        for factors in &single {
            *walked += 1;
            let with = plan::advise(activity, phase, phase.wear, orthosis, factors);
            if with.verdict < bare.verdict {
                report(library, findings, id, phase, &format!("a factor loosens the advice on `{name}`"));
            }
            if with.verdict == ActivityVerdict::Keep && activity.mass > phase.activities.mass {
                report(library, findings, id, phase, &format!("`{name}` is kept although it is too heavy"));
            }
            if with.verdict == ActivityVerdict::Change && with.ways.is_empty() && !with.pauses && !with.keep_dry {
                report(library, findings, id, phase, &format!("`{name}` is to be changed, but no way is given"));
            }
            if protective && with.verdict == ActivityVerdict::Keep && with.in_the_way {
                report(library, findings, id, phase, &format!("`{name}` is kept although the orthosis is in the way"));
            }
        }
    }
}
