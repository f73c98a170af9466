//! The courses of two conditions in one hand, laid over each other: wherever both hold, the stricter rule wins.

use std::collections::{BTreeMap, BTreeSet};

use super::chosen::Chosen;
use super::phases::{LaterPhase, PlannedPhase};
use super::rules::Rules;
use crate::content::{ActivityLimits, Basis, Begins, Cap, Decider, Demand, ExerciseRules, Phase, Regime, WeaningStep};
use crate::units::Date;

/// Lays courses over each other. A single course stays as it is.
pub fn lay_over(
    courses: Vec<(Vec<PlannedPhase>, Vec<LaterPhase>)>,
    rules: &mut Rules<'_, '_>,
) -> (Vec<PlannedPhase>, Vec<LaterPhase>) {
    let mut courses = courses.into_iter();
    let Some(mut whole) = courses.next() else { return (Vec::new(), Vec::new()) };
    for (phases, later) in courses {
        whole.0 = both(&whole.0, &phases, rules);
        whole.1.extend(later);
    }
    whole
}

/// Two courses cut at every day on which either changes.
fn both(one: &[PlannedPhase], other: &[PlannedPhase], rules: &mut Rules<'_, '_>) -> Vec<PlannedPhase> {
    let starts: BTreeSet<Date> =
        one.iter().chain(other).flat_map(|phase| [phase.first, phase.last.offset(1)]).collect();
    let starts: Vec<Date> = starts.into_iter().collect();
    let mut all: Vec<PlannedPhase> = Vec::new();
    for pair in starts.windows(2) {
        let (first, last) = (pair[0], pair[1].offset(-1));
        let here = |phases: &[PlannedPhase]| phases.iter().find(|phase| phase.holds(first)).cloned();
        let mut phase = match (here(one), here(other)) {
            (Some(one), Some(other)) => {
                let merged = merge(&one, &other);
                rules.rule(
                    format!("wear while `{}` and `{}` both hold", one.id, other.id),
                    merged.wear.value,
                    &Basis::CommonPractice,
                );
                merged
            }
            (Some(phase), None) | (None, Some(phase)) => phase,
            (None, None) => continue,
        };
        phase.index = all.len();
        phase.first = first;
        phase.last = last;
        all.push(phase);
    }
    all
}

fn merge(one: &PlannedPhase, other: &PlannedPhase) -> PlannedPhase {
    let (wear, weaning) = wear(one, other);
    let id = format!("{}-with-{}", one.id, other.id).parse().unwrap_or_else(|_| one.id.clone());
    let mut rules = rules(&one.rules, &other.rules);
    rules.wear = wear;
    PlannedPhase {
        id,
        of: [one.of.as_slice(), &other.of].concat(),
        rules,
        wear: Chosen { value: wear, because: one.wear.because.clone().or(other.wear.because.clone()) },
        weaning,
        until_review: one.until_review || other.until_review,
        ..one.clone()
    }
}

/// Wear and weaning steps that give both what they ask for. Where fixed hours of one meet needs of the other that no
/// regime joins, the splint stays on: too much wear stiffens, too little undoes what heals.
fn wear(one: &PlannedPhase, other: &PlannedPhase) -> (Regime, Vec<WeaningStep>) {
    let strict = stricter(one.wear.value, other.wear.value);
    let beside = |steps: &[WeaningStep], besides: Regime| match besides {
        Regime::Off => Some(steps.to_vec()),
        Regime::Night if steps.iter().all(|step| step.night) => Some(steps.to_vec()),
        _ => None,
    };
    let steps = match (one.weaning.as_slice(), other.weaning.as_slice()) {
        ([], []) => return (strict, Vec::new()),
        (steps, []) => beside(steps, other.wear.value),
        ([], steps) => beside(steps, one.wear.value),
        (first, second) if gives(first, second) => Some(first.to_vec()),
        (first, second) => gives(second, first).then(|| second.to_vec()),
    };
    match steps {
        Some(steps) => (strict, steps),
        None => (strict.min(Regime::OffToExercise), Vec::new()),
    }
}

/// Whether a weaning gives on every day at least what another gives.
fn gives(more: &[WeaningStep], less: &[WeaningStep]) -> bool {
    let length = |steps: &[WeaningStep]| steps.iter().map(|step| i32::from(step.lasts.days())).sum::<i32>();
    (0..length(more).max(length(less))).all(|day| {
        let steps = WeaningStep::on_day(more, day).zip(WeaningStep::on_day(less, day));
        steps.is_some_and(|((_, much), (_, little))| much.awake >= little.awake && (much.night || !little.night))
    })
}

/// The least wear that gives both what they ask for.
pub fn stricter(one: Regime, other: Regime) -> Regime {
    let (strict, lenient) = (one.min(other), one.max(other));
    match (strict, lenient) {
        (Regime::Day, Regime::Night) | (Regime::NightAndTasks | Regime::NightAndRest, Regime::Day) => {
            Regime::OffToExercise
        }
        (Regime::Night, Regime::Tasks) | (Regime::NightAndTasks, Regime::NightAndRest) => Regime::NightAndTasks,
        (Regime::NightAndRest, Regime::Tasks) => Regime::NightAndTasks,
        // Bouts by day beside nights or tasks: no regime names the two together.
        (Regime::NightAndTasks | Regime::NightAndRest | Regime::Night, Regime::Stretch)
        | (Regime::Stretch, Regime::Tasks) => Regime::OffToExercise,
        (strict, _) => strict,
    }
}

fn rules(one: &Phase, other: &Phase) -> Phase {
    let strict = if one.washing >= other.washing { one } else { other };
    let decided_by = [one.decided_by, other.decided_by].into_iter().max().unwrap_or(Decider::Therapist);
    let waits = one.begins == Begins::AfterReview && other.begins == Begins::AfterReview;
    Phase {
        begins: if waits { Begins::AfterReview } else { Begins::ByDate },
        decided_by,
        weaning: None,
        stretch: [&one.stretch, &other.stretch].into_iter().flatten().max_by_key(|dose| dose.minutes()).cloned(),
        washing: strict.washing,
        support: strict.support.clone(),
        protective: one.protective || other.protective,
        requires: joined(&one.requires, &other.requires),
        one_of: joined(&one.one_of, &other.one_of),
        never: joined(&one.never, &other.never),
        exercises: exercises(&one.exercises, &other.exercises),
        activities: activities(&one.activities, &other.activities),
        ..one.clone()
    }
}

fn joined<T: Clone + PartialEq>(one: &[T], other: &[T]) -> Vec<T> {
    let mut all = one.to_vec();
    all.extend(other.iter().filter(|item| !one.contains(item)).cloned());
    all
}

fn exercises(one: &ExerciseRules, other: &ExerciseRules) -> ExerciseRules {
    ExerciseRules {
        most: one.most.min(other.most),
        protects: joined(&one.protects, &other.protects),
        bans: joined(&one.bans, &other.bans),
        // What one condition may have ordered the other may not bear.
        on_order: one.on_order.iter().filter(|id| other.on_order.contains(id)).cloned().collect(),
        aims: joined(&one.aims, &other.aims),
        joints: joined(&one.joints, &other.joints),
        source: one.source.clone(),
    }
}

fn activities(one: &ActivityLimits, other: &ActivityLimits) -> ActivityLimits {
    let mut demands = one.demands.clone();
    Cap::tighten(&mut demands, &other.demands);
    ActivityLimits {
        demands,
        mass: one.mass.min(other.mass),
        waits: joined(&one.waits, &other.waits),
        source: one.source.clone(),
    }
}

impl Cap {
    /// Of two limits the lower, and strict when either is.
    #[must_use]
    pub fn stricter(self, other: Self) -> Self {
        Self { level: self.level.min(other.level), strict: self.strict || other.strict }
    }

    /// Lays more limits over some: of two for the same demand the stricter wins.
    pub fn tighten<'c>(limits: &mut BTreeMap<Demand, Self>, more: impl IntoIterator<Item = (&'c Demand, &'c Self)>) {
        for (&demand, &cap) in more {
            limits.entry(demand).and_modify(|old| *old = old.stricter(cap)).or_insert(cap);
        }
    }
}
