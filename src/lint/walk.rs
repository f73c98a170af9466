//! Walks all combinations and looks for contradictions.

use std::collections::BTreeSet;

use crate::body::Finger;
use crate::checks::{Fit, Question, judge_phase};
use crate::content::{
    Condition, Demand, Exercise, Factor, Gate, Library, Orthosis, Phase, Regime, Washing, Water, WearPattern,
};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{ConditionId, ExerciseId, FactorId, OrthosisId};
use crate::pipeline::Workshop;
use crate::plan::{self, ActivityVerdict, Bounds, Hands, PhaseAdvice};

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

/// Walks every condition, phase, orthosis, factor, exercise and activity together. Proves that every phase that wants an
/// orthosis has one that fits, and that with each of them neither programme nor advice holds a contradiction. Returns how
/// many combinations were walked.
pub fn combinations(library: &Library, findings: &mut Findings) -> usize {
    let mut walk = Walk {
        library,
        findings,
        walked: 0,
        factors: std::iter::once(Vec::new())
            .chain(library.factors.iter().map(|(id, factor)| vec![(id.clone(), factor)]))
            .collect(),
        worn: BTreeSet::new(),
        done: BTreeSet::new(),
    };
    for (id, condition) in &library.conditions {
        if condition.needs_finger() {
            for &finger in Finger::ALL {
                walk.condition(id, &condition.for_finger(finger), Some(finger));
            }
        } else {
            walk.condition(id, condition, None);
        }
    }
    walk.unused();
    walk.walked
}

struct Walk<'a> {
    library: &'a Library,
    findings: &'a mut Findings,
    walked: usize,
    /// Nobody in particular, then each factor by itself.
    factors: Vec<Vec<(FactorId, &'a Factor)>>,
    /// Orthoses that fit some phase.
    worn: BTreeSet<OrthosisId>,
    /// Exercises that some phase allows.
    done: BTreeSet<ExerciseId>,
}

/// Where in the walk something was found.
#[derive(Clone, Copy)]
struct Here<'p> {
    id: &'p ConditionId,
    phase: &'p Phase,
}

impl Walk<'_> {
    fn condition(&mut self, id: &ConditionId, condition: &Condition, finger: Option<Finger>) {
        let orthoses: Vec<(&OrthosisId, Orthosis)> = self.library.orthoses_for(finger).collect();
        let exercises: Vec<(&ExerciseId, Exercise)> = self.library.exercises_for(finger).collect();
        for (index, phase) in condition.phases.iter().enumerate() {
            let here = Here { id, phase };
            self.phase(here, index == 0, condition);
            let mut fitting: Vec<&Orthosis> = Vec::new();
            for (name, orthosis) in &orthoses {
                self.walked += 1;
                let question = Question { orthosis, findings: &[], factors: &[] };
                if phase.wear == Regime::Off {
                    fitting.push(orthosis);
                } else if judge_phase(question, phase).fit <= Fit::FitsWithRemarks {
                    fitting.push(orthosis);
                    self.worn.insert((*name).clone());
                }
            }
            if fitting.is_empty() && phase.wear != Regime::Off && condition.protocol.is_none() {
                self.report(here, "no orthosis fits this phase");
            }
            self.programmes(here, &fitting, &exercises);
            for orthosis in fitting {
                self.activities(here, orthosis);
            }
        }
    }

    fn report(&mut self, here: Here<'_>, message: &str) {
        let place = self.library.place(&format!("content/conditions/{}.yaml", here.id), here.phase.id.as_str());
        let message = format!("phase `{}`: {message}", here.phase.id);
        self.findings.push(Diagnostic::error(Code::CONTENT_CONTRADICTION, place, message));
    }

    /// What a phase says about wearing and about taking off must go together.
    fn phase(&mut self, here: Here<'_>, first: bool, condition: &Condition) {
        let phase = here.phase;
        let at_once = |pattern: &WearPattern| pattern.at_once;
        let broken_in = condition.break_in.as_ref().unwrap_or(&self.library.general.break_in);
        let worn_at_once = self.library.patterns.get(broken_in).is_some_and(at_once);
        let faults = [
            (
                phase.wear == Regime::NeverRemove && phase.washing == Washing::Freely,
                "it is never to come off, and yet comes off freely to wash",
            ),
            (
                matches!(phase.wear, Regime::OffToWash | Regime::OffToExercise) && phase.washing == Washing::Never,
                "it comes off to wash, and yet is never to come off",
            ),
            (
                phase.wear == Regime::NeverRemove && phase.weaning.is_some(),
                "it is never to come off, and yet is weaned",
            ),
            (
                first && phase.protective && phase.wear.is_full_time() && !worn_at_once,
                "it protects healing tissue, and yet the orthosis is broken in by hours",
            ),
            (phase.wear == Regime::Stretch && phase.stretch.is_none(), "it is worn to stretch, and no dose is given"),
            (phase.wear != Regime::Stretch && phase.stretch.is_some(), "a stretch dose is given that nothing wears"),
            (
                (phase.washing == Washing::Supported) != phase.support.is_some(),
                "how the part is held while it is off goes together with `washing: remove-supported`",
            ),
        ];
        for (_, message) in faults.iter().filter(|(broken, _)| *broken) {
            self.report(here, message);
        }
    }

    fn programmes(&mut self, here: Here<'_>, fitting: &[&Orthosis], exercises: &[(&ExerciseId, Exercise)]) {
        let phase = here.phase;
        let mut any = fitting.is_empty();
        for orthosis in fitting {
            let bounds = Bounds::of(phase, phase.wear, orthosis, &[]);
            for (id, exercise) in exercises {
                self.walked += 1;
                if bounds.allow(id, exercise).is_err() {
                    continue;
                }
                let serves = plan::rank(exercise, phase).is_some();
                any |= serves && !exercise.by_order;
                if serves || exercise.by_order {
                    self.done.insert((*id).clone());
                }
                let ordered = phase.exercises.on_order.contains(id);
                if !ordered && exercise.stresses.iter().any(|structure| phase.exercises.protects.contains(structure)) {
                    self.report(here, &format!("`{id}` stresses what the phase protects"));
                }
            }
        }
        if !any {
            self.report(here, "no exercise is left for this phase");
        }
    }

    fn activities(&mut self, here: Here<'_>, orthosis: &Orthosis) {
        let phase = here.phase;
        let library = self.library;
        for (name, activity) in &library.activities {
            let bare = plan::advise(activity, phase, phase.wear, orthosis, &[], Hands::OtherFree);
            for index in 0..self.factors.len() {
                self.walked += 1;
                let with = plan::advise(activity, phase, phase.wear, orthosis, &self.factors[index], Hands::OtherFree);
                let kept = with.verdict == ActivityVerdict::Keep;
                let shut = |gate: &Gate| phase.activities.waits.contains(gate);
                let wet = activity.demands.get(&Demand::Wet).is_some_and(|level| level.get() >= 2);
                let faults = [
                    (with.verdict < bare.verdict, "a factor loosens the advice on"),
                    (kept && activity.mass > phase.activities.mass, "too heavy, and yet kept:"),
                    (empty(&with), "to be changed, and no way is given:"),
                    (phase.protective && kept && with.in_the_way, "the orthosis is in the way, and yet kept:"),
                    (kept && activity.gates.iter().any(shut), "to wait, and yet kept:"),
                    (
                        kept && phase.wear.is_worn_in_use() && wet && orthosis.water == Water::No,
                        "wet, and yet the orthosis stays dry:",
                    ),
                ];
                let found: Vec<&str> = faults.iter().filter(|(broken, _)| *broken).map(|(_, what)| *what).collect();
                for what in found {
                    self.report(here, &format!("{what} `{name}`"));
                }
            }
        }
    }

    /// Orthoses that fit nothing and exercises that nothing allows.
    fn unused(&mut self) {
        let library = self.library;
        let offered = library.orthoses.iter().filter(|(_, orthosis)| !orthosis.by_order).map(|(id, _)| id);
        let orthoses = offered.filter(|id| !self.worn.contains(*id));
        let orthoses = orthoses.map(|id| (format!("content/orthoses/{id}.yaml"), format!("`{id}` fits no condition")));
        let exercises = library.exercises.keys().filter(|id| !self.done.contains(*id));
        let exercises = exercises
            .map(|id| (format!("content/exercises/{id}.yaml"), format!("no phase of any condition allows `{id}`")));
        for (path, message) in orthoses.chain(exercises).collect::<Vec<_>>() {
            let place = library.place(&path, "source");
            self.findings.push(
                Diagnostic::error(Code::CONTENT_UNUSED, place, message)
                    .help("say which condition it is for, or take it out")
                    .as_warning(),
            );
        }
    }
}

/// An activity that is to be changed without a word on how.
fn empty(advice: &PhaseAdvice) -> bool {
    advice.verdict == ActivityVerdict::Change && advice.ways.is_empty() && !advice.pauses && !advice.keep_dry
}
