//! Activity changes by matching what a task asks of the hand with what the phase allows.
//!
//! Demand less what the orthosis takes off, against the phase's limit, kind by kind; what is over picks the
//! adaptations. No text is chosen by the name of a condition.

use std::collections::BTreeMap;

use super::phases::PlannedPhase;
use crate::case::Case;
use crate::content::{
    Activity, Adaptation, AdaptationKind, Cap, Demand, Factor, Gate, MassChange, Orthosis, Phase, Regime, Water,
};
use crate::ids::{ActivityId, FactorId, MessageId};
use crate::source::choice;
use crate::units::{Level, Mass};

choice! {
    /// What to do about an activity.
    pub enum ActivityVerdict ("activity verdict") {
        Keep = "keep",
        /// Change it like this.
        Change = "change",
        /// Leave it for now.
        Leave = "leave",
    }
}

choice! {
    /// Whether there is another hand to do things with.
    pub enum Hands ("hands to use") {
        OtherFree = "other-free",
        /// Both are treated, or there is only one.
        OneOnly = "one-only",
    }
}

impl Hands {
    /// What a case says.
    pub fn of(case: &Case<'_>) -> Self {
        if case.both_hands || case.any_factor(|factor| factor.no_other_hand) { Self::OneOnly } else { Self::OtherFree }
    }
}

/// The advice on one activity in one phase.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PhaseAdvice {
    pub verdict: ActivityVerdict,
    /// Ways to do it, first the one that helps most. With `Leave` these are what others or the other hand can do.
    pub ways: Vec<MessageId>,
    /// The kinds of demand that are over the limit: first those that pauses do not excuse, each group worst first.
    pub over: Vec<Demand>,
    /// More mass than the hand may hold.
    pub too_heavy: bool,
    /// The orthosis is in the way of doing it as usual.
    pub in_the_way: bool,
    /// A gate that stays shut in this phase, whatever the figures.
    pub waits: Option<Gate>,
    /// Short bouts with pauses.
    pub pauses: bool,
    /// Keep the orthosis dry, or dry it at once.
    pub keep_dry: bool,
}

/// One activity over all dated phases.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ActivityAdvice {
    pub id: ActivityId,
    pub driving: bool,
    pub unavoidable: bool,
    pub phases: Vec<PhaseAdvice>,
}

/// Matches every activity of the case with every dated phase.
pub fn plan(case: &Case<'_>, phases: &[PlannedPhase]) -> Vec<ActivityAdvice> {
    case.file
        .activities
        .iter()
        .filter_map(|id| case.library.activities.get(&id.value).map(|activity| (id.value.clone(), activity)))
        .map(|(id, activity)| ActivityAdvice {
            phases: phases
                .iter()
                .map(|phase| {
                    advise(activity, &phase.rules, phase.wear.value, &case.orthosis, &case.factors, Hands::of(case))
                })
                .collect(),
            id,
            driving: activity.gates.contains(&Gate::Driving),
            unavoidable: activity.unavoidable,
        })
        .collect()
}

/// The limits of a phase with those of the factors: of two the lower wins, and strict wins over lenient.
fn limits(phase: &Phase, factors: &[(FactorId, &Factor)]) -> BTreeMap<Demand, Cap> {
    let mut all = phase.activities.demands.clone();
    factors.iter().for_each(|(_, factor)| Cap::tighten(&mut all, &factor.limits));
    all
}

/// How wet an orthosis may get while it is worn.
fn dry(orthosis: &Orthosis) -> Option<Cap> {
    match orthosis.water {
        Water::Yes => None,
        Water::DryThrough => Some(Cap { level: Level::clamped(1), strict: false }),
        Water::No => Some(Cap { level: Level::clamped(0), strict: true }),
    }
}

/// The first gate of an activity that a phase or a factor keeps shut. Nobody swims in what may not come off.
fn shut(activity: &Activity, phase: &Phase, wear: Regime, factors: &[(FactorId, &Factor)]) -> Option<Gate> {
    activity.gates.iter().copied().find(|gate| {
        phase.activities.waits.contains(gate)
            || factors.iter().any(|(_, factor)| factor.waits.contains(gate))
            || (*gate == Gate::Swimming && wear.is_full_time())
    })
}

/// What an activity comes to in one phase.
pub fn advise(
    activity: &Activity,
    phase: &Phase,
    wear: Regime,
    orthosis: &Orthosis,
    factors: &[(FactorId, &Factor)],
    hands: Hands,
) -> PhaseAdvice {
    let worn = wear.is_worn_in_use();
    let mut limits = limits(phase, factors);
    let skin_cap = limits.get(&Demand::Wet).map(|cap| i16::from(cap.level.get()));
    Cap::tighten(&mut limits, dry(orthosis).filter(|_| worn).as_ref().map(|cap| (&Demand::Wet, cap)));
    let level = |map: &BTreeMap<Demand, Level>, demand| map.get(&demand).map_or(0, |level| i16::from(level.get()));
    let shield = |demand| if worn { level(&orthosis.shields, demand) } else { 0 };
    let mut excess: BTreeMap<Demand, i16> = limits
        .iter()
        .map(|(&demand, cap)| (demand, level(&activity.demands, demand) - shield(demand) - i16::from(cap.level.get())))
        .filter(|(_, over)| *over > 0)
        .collect();
    // What the orthosis does not let the hand do, and the task asks of it.
    let mut barred: Vec<Demand> = orthosis.blocks.clone();
    barred.retain(|&demand| worn && level(&activity.demands, demand) >= 2);
    let spares_orthosis = skin_cap.is_none_or(|most| level(&activity.demands, Demand::Wet) <= most);
    let in_the_way = !barred.is_empty();
    let waits = shut(activity, phase, wear, factors);
    let mut mass = activity.mass;
    let most = phase.activities.mass;
    let mut over: Vec<Demand> = excess.keys().copied().collect();
    let excused = |demand: &Demand| demand.is_soft() && !limits.get(demand).is_some_and(|cap| cap.strict);
    over.sort_by_key(|demand| (excused(demand), -excess[demand], *demand));
    let too_heavy = mass > most;
    let mut advice = PhaseAdvice {
        verdict: ActivityVerdict::Keep,
        ways: Vec::new(),
        over,
        too_heavy,
        in_the_way,
        waits,
        pauses: false,
        keep_dry: false,
    };
    let offered = || activity.adaptations.iter().filter(|way| !(way.other_hand && hands == Hands::OneOnly));
    let help: Vec<MessageId> =
        offered().filter(|way| way.kind == AdaptationKind::Help).map(|way| way.id.clone()).collect();
    if waits.is_some() {
        advice.verdict = ActivityVerdict::Leave;
        advice.ways = help;
        return advice;
    }
    if excess.is_empty() && !too_heavy && !in_the_way {
        return advice;
    }
    // The way that lowers most of what is over comes first; equal ones in the order of the file.
    let mut open: Vec<&Adaptation> =
        offered().filter(|way| way.kind != AdaptationKind::Help && !(way.takes_off && wear.is_full_time())).collect();
    loop {
        let solved = hard(&excess, &limits).is_empty() && mass <= most && barred.is_empty();
        if solved && excess.is_empty() || advice.ways.len() == 3 {
            break;
        }
        // Where only the orthosis minds the water, taking it off is better than keeping the hand dry.
        let off = |way: &Adaptation| way.takes_off && spares_orthosis && excess.contains_key(&Demand::Wet);
        let frees = |way: &Adaptation| barred.iter().any(|demand| way.goes_round(*demand));
        let gain = |way: &Adaptation| gain(way, &excess, mass, most) + i16::from(frees(way)) + i16::from(off(way));
        let Some(at) = (0..open.len()).rev().max_by_key(|&at| gain(open[at])).filter(|&at| gain(open[at]) > 0) else {
            break;
        };
        let way = open.remove(at);
        advice.ways.push(way.id.clone());
        barred.retain(|demand| !way.goes_round(*demand));
        for (demand, lowers) in &way.lowers {
            if let Some(over) = excess.get_mut(demand) {
                *over -= i16::from(lowers.get());
            }
        }
        excess.retain(|_, over| *over > 0);
        mass = changed(mass, way.mass);
    }
    let left = hard(&excess, &limits);
    if left.is_empty() && mass <= most && barred.is_empty() {
        advice.verdict = ActivityVerdict::Change;
        advice.pauses = excess.contains_key(&Demand::Repetition) || excess.contains_key(&Demand::SustainedGrip);
        advice.keep_dry = excess.contains_key(&Demand::Wet);
    } else {
        advice.verdict = ActivityVerdict::Leave;
        advice.ways = help;
    }
    advice
}

/// What is over a limit and cannot be excused by pauses or drying.
fn hard(excess: &BTreeMap<Demand, i16>, limits: &BTreeMap<Demand, Cap>) -> Vec<Demand> {
    excess
        .keys()
        .copied()
        .filter(|demand| !demand.is_soft() || limits.get(demand).is_some_and(|cap| cap.strict))
        .collect()
}

fn gain(way: &Adaptation, excess: &BTreeMap<Demand, i16>, mass: Mass, most: Mass) -> i16 {
    let lowered: i16 = way
        .lowers
        .iter()
        .map(|(demand, lowers)| excess.get(demand).map_or(0, |over| (*over).min(i16::from(lowers.get()))))
        .sum();
    let lighter = mass > most && changed(mass, way.mass) < mass;
    lowered + if lighter { 2 } else { 0 }
}

fn changed(mass: Mass, change: Option<MassChange>) -> Mass {
    match change.unwrap_or(MassChange::Same) {
        MassChange::Same => mass,
        MassChange::Half => mass.half(),
        MassChange::None => Mass::ZERO,
    }
}
