//! The home programme as a sheet of its own, to follow with both hands busy.

use super::figures::Figures;
use super::section::Section;
use super::{glance, moves};
use crate::case::Case;
use crate::plan::Plan;

/// Nothing when no exercise is due.
pub fn section(case: &Case<'_>, plan: &Plan, figures: &Figures<'_>) -> Option<Section> {
    plan.programmes.first().filter(|programme| !programme.exercises.is_empty())?;
    let mut section = moves::section(case, plan, figures)?;
    section.id = "exercises";
    section.components.insert("hand", glance::hand(case, Vec::new()));
    section.components.insert("warning", glance::warning(case, plan));
    Some(section)
}
