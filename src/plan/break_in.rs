//! Getting the skin used to the orthosis.

use super::day::REST;
use super::phases::PlannedPhase;
use super::rules::Rules;
use crate::case::{Case, Subject};
use crate::content::{BreakInStep, Regime, WearPattern};
use crate::ids::WearPatternId;
use crate::units::TimeOfDay;

/// The steps of breaking in, one a day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BreakIn {
    pub pattern: WearPatternId,
    /// Empty when it is worn in full at once.
    pub steps: Vec<BreakInStep>,
    /// 0 when the first step is on the day of the fitting, 1 when that day is too short for it.
    pub starts_on: u16,
}

impl BreakIn {
    /// Days until full wear begins.
    pub fn days(&self) -> u16 {
        if self.steps.is_empty() { 0 } else { self.starts_on + u16::try_from(self.steps.len()).unwrap_or(u16::MAX) }
    }

    /// The step of a day of the plan (0 is the fitting); None before the first and after the last.
    pub fn step(&self, day: u16) -> Option<(usize, BreakInStep)> {
        let index = usize::from(day.checked_sub(self.starts_on)?);
        self.steps.get(index).map(|step| (index, step.clone()))
    }
}

/// Chooses the gentlest pattern that applies. Where the first phase protects healing tissue, protection wins: a piece
/// that must be worn at once is not broken in by hours, whatever the skin; more skin checks take their place.
pub fn plan(case: &Case<'_>, phases: &[PlannedPhase], rules: &mut Rules<'_, '_>) -> BreakIn {
    let library = case.library;
    let first = phases.first();
    let protective = first.is_some_and(|phase| phase.rules.protective);
    let gentle = |id: &WearPatternId| library.patterns.get(id).map_or(0, |pattern| pattern.gentleness.get());
    let at_once = |id: &WearPatternId| library.patterns.get(id).is_some_and(|pattern| pattern.at_once);
    let own: Vec<&WearPatternId> = case
        .conditions
        .iter()
        .map(|treated| treated.condition.break_in.as_ref().unwrap_or(&library.general.break_in))
        .collect();
    // Protection comes before skin; otherwise the gentlest of the conditions' patterns.
    let guarding = own.iter().copied().find(|id| protective && at_once(id));
    let gentlest = own.iter().copied().rev().max_by_key(|id| gentle(id));
    let usual = guarding.or(gentlest).unwrap_or(&library.general.break_in);
    let mut ruled = usual.clone();
    if !(protective && at_once(usual)) {
        for (_, factor) in &case.factors {
            if let Some(pattern) = factor.break_in.as_ref().filter(|pattern| gentle(pattern) > gentle(&ruled)) {
                ruled = pattern.clone();
            }
        }
    }
    let empty = WearPattern {
        break_in: Vec::new(),
        weaning: Vec::new(),
        at_once: true,
        gentleness: crate::units::TimesPerDay::clamped(1),
        source: crate::content::Basis::CommonPractice,
    };
    let basis = library.patterns.get(&ruled).unwrap_or(&empty).source.clone();
    let danger = |id: &WearPatternId| {
        if protective && at_once(&ruled) && !at_once(id) {
            Some(format!("`{id}` leaves healing tissue without its splint for hours"))
        } else if gentle(id) < gentle(&ruled) {
            Some(format!("`{id}` is quicker than `{ruled}`, which this skin needs"))
        } else {
            None
        }
    };
    let pick = |subject: &Subject| match subject {
        Subject::BreakIn(id) => Some(id.clone()),
        _ => None,
    };
    let chosen = rules.choose("pattern of breaking in", ruled.clone(), &basis, pick, danger).value;
    let pattern = library.patterns.get(&chosen).unwrap_or(&empty).clone();
    let quicker = |wears: &Wears| {
        let longer = wears.0.iter().enumerate().any(|(day, step)| {
            // Past the last step of the pattern everything is allowed, since full wear begins there.
            pattern.break_in.get(day).is_some_and(|usual| step.minutes() > usual.minutes())
        });
        if protective && pattern.at_once {
            Some("these days leave healing tissue without its splint for hours".to_owned())
        } else {
            (longer || wears.0.len() < pattern.break_in.len())
                .then(|| format!("these days are quicker than `{chosen}`, which this skin needs"))
        }
    };
    let pick = |subject: &Subject| match subject {
        Subject::Wears(wears) => Some(Wears(wears.clone())),
        _ => None,
    };
    let steps =
        rules.choose("days of breaking in", Wears(pattern.break_in.clone()), &pattern.source, pick, quicker).value.0;
    // Pieces worn only at night or for tasks are broken in by day all the same: never a first long wear asleep.
    let worn = first.is_some_and(|phase| phase.wear.value != Regime::Off);
    let mut steps = if worn { steps } else { Vec::new() };
    // A piece that stretches is never broken in beyond its own dose.
    if let Some(dose) = first.and_then(|phase| phase.rules.stretch.as_ref()) {
        for step in &mut steps {
            step.times = step.times.min(dose.bouts);
            step.each = step.each.min(dose.each);
        }
        while steps.len() > 1 && steps[steps.len() - 2].minutes() >= dose.minutes() {
            steps.pop();
        }
    }
    let starts_on = steps.first().map_or(0, |step| u16::from(!fits_today(case, step)));
    BreakIn { pattern: chosen, steps, starts_on }
}

/// The days of breaking in, for the record.
struct Wears(Vec<BreakInStep>);

impl std::fmt::Display for Wears {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if self.0.is_empty() {
            return f.write_str("none: worn in full at once");
        }
        let days: Vec<String> = self.0.iter().map(|step| format!("{} x {}", step.times, step.each)).collect();
        f.write_str(&days.join(", "))
    }
}

/// Whether what is left of the fitting day has room for the first step, with half an hour of rest around each wear.
fn fits_today(case: &Case<'_>, step: &BreakInStep) -> bool {
    let day = case.day();
    let awake = day.up.until(day.bed);
    let since_up = day.up.until(case.fitted_at());
    let settling = case.library.general.settling.get();
    let needed = u16::from(step.times.get()) * (step.each.get() + REST) + settling;
    since_up < awake && awake - since_up >= needed.min(TimeOfDay::DAY)
}
