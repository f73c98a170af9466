//! The dated plan: phases, breaking in, worn and off hours of every day, exercises, activities, skin checks.
//!
//! A plan is made of an admitted case and nothing else; it never sees a language, and it counts in the patient's own
//! calendar days and clock.

mod activities;
mod break_in;
mod chosen;
mod day;
pub mod invariants;
mod overlay;
mod phases;
mod programme;
mod rules;
mod sessions;
mod skin;

pub use activities::{ActivityAdvice, ActivityVerdict, Hands, PhaseAdvice, advise};
pub use break_in::BreakIn;
pub use chosen::{Chosen, RuleLine};
pub use day::{DayKind, DayPlan, Segment, WearState};
pub use overlay::stricter;
pub use phases::{LaterPhase, PlannedPhase};
pub use programme::{Bounds, PlannedExercise, Programme, Rank, rank};
pub use sessions::Session;
pub use skin::{Signs, SkinRules, signs_of};

use crate::checks::Admitted;
use crate::content::Washing;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::StepId;
use crate::units::Date;

/// Everything worked out for one person.
#[derive(Clone, Debug)]
pub struct Plan {
    /// Phases with dates, in order; they tile the days of the plan.
    pub phases: Vec<PlannedPhase>,
    /// Phases that wait for the therapist's word.
    pub later: Vec<LaterPhase>,
    pub break_in: BreakIn,
    /// One for every date from the fitting to the end.
    pub days: Vec<DayPlan>,
    /// One for each dated phase.
    pub programmes: Vec<Programme>,
    pub activities: Vec<ActivityAdvice>,
    pub skin: SkinRules,
    pub signs: Signs,
    pub donning: Chosen<Vec<StepId>>,
    pub doffing: Chosen<Vec<StepId>>,
    pub review: Date,
    /// Every rule that shaped the plan, with its source and what was overridden.
    pub rules: Vec<RuleLine>,
}

impl Plan {
    /// How the orthosis comes off to wash in the first phase.
    pub fn washing(&self) -> Washing {
        self.phases.first().map_or(Washing::Freely, |phase| phase.rules.washing)
    }

    /// The last day with hours.
    pub fn end(&self) -> Date {
        self.phases.last().map_or(self.review, |phase| phase.last)
    }
}

/// Works out the plan of an admitted case.
///
/// # Errors
/// Overrides that break a rule of safety without `accept_risk`, and phases that the dates cannot reach.
pub fn make(admitted: &Admitted<'_>) -> Result<Plan, Findings> {
    let case = admitted.case();
    let mut rules = rules::Rules::new(case);
    let (phases, later) = phases::plan(admitted, &mut rules);
    let break_in = break_in::plan(case, &phases, &mut rules);
    let programmes: Vec<Programme> = phases.iter().map(|phase| programme::plan(case, phase, &mut rules)).collect();
    let days = day::plan(case, &phases, &break_in, &programmes);
    let activities = activities::plan(case, &phases);
    let skin = skin::plan(case, &mut rules);
    let signs = skin::signs(case);
    let (donning, doffing) = rules.steps();
    let (lines, findings) = rules.finish();
    if findings.has_errors() {
        return Err(findings);
    }
    let review = case.file.review.value;
    let plan = Plan {
        phases,
        later,
        break_in,
        days,
        programmes,
        activities,
        skin,
        signs,
        donning,
        doffing,
        review,
        rules: lines,
    };
    let broken = invariants::broken(case, &plan);
    if broken.is_empty() {
        return Ok(plan);
    }
    let mut findings = Findings::default();
    for fault in broken {
        findings.push(
            Diagnostic::outside(Code::PLAN_INVARIANT, format!("the plan contradicts itself: {fault}"))
                .help("report this case; nothing was written"),
        );
    }
    Err(findings)
}
