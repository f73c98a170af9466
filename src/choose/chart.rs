//! The best orthoses of a ranking side by side, joint by joint, as the tree that a page is made from.

use serde_json::{Value, json};

use super::Ranked;
use crate::body::{Joint, norms};
use crate::checks::{Grade, VerdictLine};
use crate::content::Hold;

/// Orthoses on one page.
const COLUMNS: usize = 5;

/// The chart of a ranking. English, for the clinician and the class room.
pub fn chart(title: &str, about: &str, ranked: &[Ranked]) -> Value {
    let shown = &ranked[..ranked.len().min(COLUMNS)];
    let joints: Vec<Joint> = Joint::all()
        .filter(|joint| {
            let asked = shown.iter().flat_map(|one| &one.verdict.lines).any(|line| line.joint == Some(*joint));
            asked || shown.iter().any(|one| one.orthosis.hold_of(*joint).acts())
        })
        .collect();
    let columns: Vec<Value> = shown
        .iter()
        .enumerate()
        .map(|(place, one)| {
            let set: Vec<String> = one.set.iter().map(ToString::to_string).collect();
            json!({
                "place": (place + 1).to_string(),
                "id": one.id.as_str(),
                "fit": one.verdict.fit.word(),
                "name": one.name.to_string(),
                "set": set.join(", "),
                "better": one.better.first(),
            })
        })
        .collect();
    let rows: Vec<Value> = joints
        .iter()
        .map(|joint| {
            let wanted = shown.iter().flat_map(|one| lines(one, *joint)).map(|line| line.wanted.clone()).next();
            let cells: Vec<Value> = shown.iter().map(|one| cell(one, *joint)).collect();
            let axis = norms::axes(*joint).next().map(|axis| axis.word());
            json!({"joint": joint.to_string(), "axis": axis, "wanted": wanted, "cells": cells})
        })
        .collect();
    json!({
        "title": title,
        "about": about,
        "columns": columns,
        "rows": rows,
        "caution": "Not medical advice: the treating clinician decides, and local protocol wins. No clinician has confirmed this content.",
    })
}

fn lines(one: &Ranked, joint: Joint) -> impl Iterator<Item = &VerdictLine> {
    one.verdict.lines.iter().filter(move |line| line.joint == Some(joint) && line.wanted != "nothing asked")
}

fn cell(one: &Ranked, joint: Joint) -> Value {
    let worst = one.verdict.lines.iter().filter(|line| line.joint == Some(joint)).map(|line| line.result).max();
    let offered = match one.orthosis.hold_of(joint) {
        Hold::Free => "free".to_owned(),
        hold => one
            .verdict
            .lines
            .iter()
            .find(|line| line.joint == Some(joint) && !line.offered.contains(", "))
            .map_or_else(|| crate::checks::offered(hold), |line| line.offered.clone()),
    };
    json!({"result": worst.unwrap_or(Grade::Met).word(), "offered": offered})
}
