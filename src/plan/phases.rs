//! Phases with dates, and phases that wait for the therapist's word.

use super::chosen::Chosen;
use super::overlay;
use super::rules::Rules;
use crate::case::{Case, Subject, Treated};
use crate::checks::{Admitted, Fit, Verdict};
use crate::content::{Basis, Begins, Decider, Phase, Regime, Washing, WeaningStep};
use crate::diag::{Code, Diagnostic};
use crate::ids::{ConditionId, PhaseId};
use crate::units::{Date, DayCount};

/// A phase with its first and last day.
#[derive(Clone, Debug)]
pub struct PlannedPhase {
    pub id: PhaseId,
    /// The phases of conditions that it is made of: one, or two that are laid over each other.
    pub of: Vec<(ConditionId, PhaseId)>,
    /// Its place among the dated phases of its condition.
    pub index: usize,
    pub rules: Phase,
    pub first: Date,
    /// The last day, included.
    pub last: Date,
    pub wear: Chosen<Regime>,
    /// Weaning steps, laid out over the phase.
    pub weaning: Vec<WeaningStep>,
    /// Ends with the therapist's word at the review, not by itself.
    pub until_review: bool,
}

impl PlannedPhase {
    /// Days from first to last, both included.
    pub fn days(&self) -> i32 {
        self.last.days_since(self.first) + 1
    }

    pub fn holds(&self, date: Date) -> bool {
        (self.first..=self.last).contains(&date)
    }
}

/// A phase without dates.
#[derive(Clone, Debug)]
pub struct LaterPhase {
    pub id: PhaseId,
    /// The condition that it is a phase of.
    pub of: ConditionId,
    pub wear: Regime,
    pub decided_by: Decider,
    pub lasts: Option<DayCount>,
    pub weans: bool,
    /// Guards healing tissue.
    pub protective: bool,
    /// Whether the orthosis of the case suits it; another one may be needed.
    pub suits: bool,
}

/// Dates the phases of all conditions, laid over each other.
pub fn plan(admitted: &Admitted<'_>, rules: &mut Rules<'_, '_>) -> (Vec<PlannedPhase>, Vec<LaterPhase>) {
    let case = admitted.case();
    let courses: Vec<(Vec<PlannedPhase>, Vec<LaterPhase>)> = case
        .conditions
        .iter()
        .zip(admitted.verdicts())
        .map(|(treated, verdict)| course(case, treated, verdict, rules))
        .collect();
    overlay::lay_over(courses, rules)
}

/// Dates the phases of one condition. A phase that waits for the therapist's word never begins by itself: the one before
/// it goes on until the review, so protection is never cut short by a late appointment.
fn course(
    case: &Case<'_>,
    treated: &Treated,
    verdict: &Verdict,
    rules: &mut Rules<'_, '_>,
) -> (Vec<PlannedPhase>, Vec<LaterPhase>) {
    let all = &treated.condition.phases;
    let review = case.file.review.value;
    let mut planned: Vec<PlannedPhase> = Vec::new();
    let mut start = case.file.fitted.value;
    let mut next = all.len();
    for (index, phase) in all.iter().enumerate() {
        if phase.begins == Begins::AfterReview && index > 0 {
            let Some(begun) = treated.begun(&phase.id) else {
                next = index;
                break;
            };
            // The phase before lasts until the day this one began, whatever its usual length.
            if let Some(before) = planned.last_mut() {
                if begun <= before.first {
                    rules.fault(
                        Diagnostic::error(
                            Code::PLAN_UNREACHABLE,
                            case.place(&case.file.fitted.span),
                            format!(
                                "phase `{}` is said to begin on {begun}, but `{}` begins only on {}",
                                phase.id, before.id, before.first
                            ),
                        )
                        .help("give a later date under `begun`"),
                    );
                }
                before.last = begun.offset(-1);
                before.until_review = false;
            }
            start = begun;
        }
        let length = length(case, treated, phase, rules);
        let waits = all
            .get(index + 1)
            .is_some_and(|after| after.begins == Begins::AfterReview && treated.begun(&after.id).is_none());
        let natural = length.map(|days| start.offset(i32::from(days.days()) - 1));
        let last = match natural {
            Some(end) if waits => end.max(review),
            Some(end) => end,
            None => review.max(start),
        };
        let mut wear = wear(phase, rules);
        let stays_on = !case.orthosis.comes_off();
        if stays_on && matches!(wear.value, Regime::OffToWash | Regime::OffToExercise) {
            wear.value = Regime::NeverRemove;
            rules.rule(format!("wear of a cast in phase `{}`", phase.id), wear.value, &Basis::CommonPractice);
        }
        if stays_on && !matches!(wear.value, Regime::NeverRemove | Regime::Off) {
            let message =
                format!("in phase `{}` the orthosis comes off, and only the clinic takes a cast off", phase.id);
            rules.fault(
                Diagnostic::error(Code::PLAN_UNREACHABLE, case.place(&case.file.orthosis.span), message).help(format!(
                    "add `- {{phase: {}, wear: never-remove, because: …}}` to `overrides`, or fit a piece that comes off",
                    phase.id
                )),
            );
        }
        let weaning = phase.weaning.as_ref().and_then(|id| case.library.patterns.get(id));
        planned.push(PlannedPhase {
            id: phase.id.clone(),
            of: vec![(treated.id.clone(), phase.id.clone())],
            index,
            first: start,
            last,
            wear,
            weaning: weaning.map(|pattern| pattern.weaning.clone()).unwrap_or_default(),
            until_review: waits || natural.is_none(),
            rules: if stays_on { Phase { washing: Washing::Never, ..phase.clone() } } else { phase.clone() },
        });
        start = last.offset(1);
    }
    let later = all[next..]
        .iter()
        .map(|phase| LaterPhase {
            id: phase.id.clone(),
            of: treated.id.clone(),
            wear: phase.wear,
            decided_by: phase.decided_by,
            lasts: phase.lasts,
            weans: phase.weaning.is_some(),
            protective: phase.protective,
            // A phase in which nothing is worn has no verdict.
            suits: verdict.phase(&phase.id).is_none_or(|verdict| verdict.fit <= Fit::FitsWithRemarks),
        })
        .collect();
    (planned, later)
}

fn length(case: &Case<'_>, treated: &Treated, phase: &Phase, rules: &mut Rules<'_, '_>) -> Option<DayCount> {
    let weaned = phase
        .weaning
        .as_ref()
        .and_then(|id| case.library.patterns.get(id))
        .map(|pattern| DayCount::new(pattern.weaning.iter().map(|step| step.lasts.days()).sum()));
    let slow = case.any_factor(|factor| factor.late_end);
    let usual = phase.lasts_up_to.filter(|_| slow).or(phase.lasts).or(weaned);
    let by = match &treated.protocol {
        Some((name, set)) if set.contains(&phase.id) => format!(" (set by the protocol {name})"),
        _ if slow && phase.lasts_up_to.is_some() => " (late end of the window: heals slowly)".to_owned(),
        _ => String::new(),
    };
    let id = phase.id.clone();
    let pick = |subject: &Subject| match subject {
        Subject::Lasts(wanted, days) if *wanted == id => Some(Length(Some(*days))),
        _ => None,
    };
    let danger = |length: &Length| match (length.0, usual) {
        (Some(new), Some(old)) if phase.protective && new < old => {
            Some(format!("this shortens `{id}`, which protects healing tissue, from {old} to {new}"))
        }
        (Some(new), None) if phase.protective => {
            Some(format!("this ends `{id}`, which protects healing tissue, after {new}"))
        }
        _ => None,
    };
    rules.choose(format!("length of phase `{id}`{by}"), Length(usual), &phase.source, pick, danger).value.0
}

fn wear(phase: &Phase, rules: &mut Rules<'_, '_>) -> Chosen<Regime> {
    let id = phase.id.clone();
    let pick = |subject: &Subject| match subject {
        Subject::Wear(wanted, regime) if *wanted == id => Some(*regime),
        _ => None,
    };
    let danger = |regime: &Regime| {
        (phase.protective && *regime > phase.wear).then(|| {
            format!(
                "this takes the splint off in `{id}`, which protects healing tissue: {} instead of {}",
                regime, phase.wear
            )
        })
    };
    rules.choose(format!("wear in phase `{id}`"), phase.wear, &phase.source, pick, danger)
}

/// A length that may be open.
struct Length(Option<DayCount>);

impl std::fmt::Display for Length {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self.0 {
            Some(days) => days.fmt(f),
            None => f.write_str("open-ended"),
        }
    }
}
