//! What a case uses of the content.

use super::{Item, Kind};
use crate::case::Case;
use crate::plan::Plan;

/// The conditions, the orthosis, the exercises and the activities that a plan rests on, in order.
pub fn used(case: &Case<'_>, plan: &Plan) -> Vec<Item> {
    let mut items: Vec<Item> = Vec::new();
    let mut add = |kind: Kind, id: String| {
        let item = Item { kind, id };
        if !items.contains(&item) {
            items.push(item);
        }
    };
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
    items
}
