//! The whole wear guide.

use super::figures::Figures;
use super::section::Section;
use super::{calls, daily, dates, glance, handling, moves};
use crate::case::Case;
use crate::plan::Plan;

pub fn sections(case: &Case<'_>, plan: &Plan, figures: &Figures<'_>) -> Vec<Option<Section>> {
    vec![
        glance::section(case, plan, figures),
        dates::section(case, plan),
        handling::on_off(case, plan, figures),
        handling::skin(case, plan, figures),
        moves::section(case, plan, figures),
        daily::section(case, plan),
        handling::care(case, plan),
        calls::note(case),
        calls::section(case, plan),
    ]
}
