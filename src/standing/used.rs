//! What a case uses of the content.

use super::{Item, Kind};
use crate::case::Case;
use crate::plan::Plan;

/// The conditions, the orthosis, the exercises and the activities that the plans of some hands rest on, in order and
/// each once.
pub fn used<'a>(hands: impl IntoIterator<Item = (&'a Case<'a>, &'a Plan)>) -> Vec<Item> {
    let mut items: Vec<Item> = Vec::new();
    let mut add = |kind: Kind, id: String| {
        let item = Item { kind, id };
        if !items.contains(&item) {
            items.push(item);
        }
    };
    for (case, plan) in hands {
        for treated in &case.conditions {
            add(Kind::Conditions, treated.id.to_string());
        }
        add(Kind::Orthoses, case.file.orthosis.value.to_string());
        for exercise in plan.programmes.iter().flat_map(|programme| &programme.exercises) {
            add(Kind::Exercises, exercise.id.to_string());
        }
        for activity in &plan.activities {
            add(Kind::Activities, activity.id.to_string());
        }
    }
    items
}
