//! The card for the fridge: which hand, when, the steps that count most, when to stop, whom to call.

use super::component::{StepItem, StepKind};
use super::message::{Arg, Message};
use super::section::{Section, filled, sentences};
use super::{glance, handling};
use crate::case::Case;
use crate::content::Washing;
use crate::ids::StepId;
use crate::plan::Plan;

/// Steps of each list on a card, where none more is vital.
const STEPS: usize = 3;

pub fn section(case: &Case<'_>, plan: &Plan) -> Option<Section> {
    let never_off = plan.washing() == Washing::Never;
    let steps = |kind: StepKind, ids: &[StepId]| {
        (!never_off).then(|| handling::component(kind, items(case, kind, ids))).flatten()
    };
    filled(
        "card",
        vec![
            ("hand", Some(glance::hand(case, Vec::new()))),
            ("strips", Some(glance::strips(case, plan))),
            ("on", steps(StepKind::On, &plan.donning.value)),
            ("off", steps(StepKind::Off, &plan.doffing.value)),
            ("advice", sentences(handling::cautions(plan))),
            ("warning", Some(glance::warning(case, plan))),
        ],
    )
}

/// The chosen steps. All straps together are one step, so that none is forgotten.
pub fn items(case: &Case<'_>, kind: StepKind, ids: &[StepId]) -> Vec<StepItem> {
    chosen(case, ids)
        .into_iter()
        .map(|step| {
            let straps = handling::straps(case, kind);
            let say = if is_strap(step) && straps.len() > 1 {
                Message::new(format!("card-straps-{kind}")).with("straps", Arg::List(straps))
            } else {
                handling::step(case, step, straps.into_iter().next())
            };
            StepItem { say, figure: None }
        })
        .collect()
}

/// The steps that count most, in their order: every vital one and the straps; then, until there are three, the one
/// that brings the orthosis to its place or away from it, the last check, and what is left from the top.
fn chosen<'s>(case: &Case<'_>, ids: &'s [StepId]) -> Vec<&'s StepId> {
    let weights = &case.library.steps;
    let strap = ids.iter().position(is_strap);
    // A strap is closed once on a card, however many there are.
    let once = |at: &usize| !is_strap(&ids[*at]) || Some(*at) == strap;
    let needed = |at: &usize| weights.is_vital(&ids[*at]) || Some(*at) == strap;
    let mut kept: Vec<usize> = (0..ids.len()).filter(needed).collect();
    let places = ids.iter().position(|step| weights.places(step));
    let checks = ids.iter().rposition(|step| weights.checks(step));
    let rest = (0..ids.len()).filter(once);
    for at in places.into_iter().chain(checks).chain(rest) {
        if kept.len() < STEPS && !kept.contains(&at) {
            kept.push(at);
        }
    }
    kept.sort_unstable();
    kept.into_iter().map(|at| &ids[at]).collect()
}

fn is_strap(step: &StepId) -> bool {
    matches!(step.as_str(), handling::CLOSE | handling::UNDO)
}
