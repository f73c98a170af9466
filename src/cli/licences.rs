//! `palmleaf licences`: what the program is made of, from its bill of materials.

use serde_json::Value;

use super::Ended;
use super::terminal::Terminal;
use crate::assets::carried;

/// CycloneDX 1.6, made from the dependency tree and the fonts; `tests/suite/supply.rs` keeps it current.
const MATERIALS: &str = "dist/palmleaf.cdx.json";

pub fn run(terminal: &Terminal) -> Ended {
    let Ok(materials) = serde_json::from_str::<Value>(carried::text(MATERIALS)) else { return Ended::Fault };
    if terminal.is_json() {
        terminal.say_json(&materials);
        return Ended::Well;
    }
    let all = materials["components"].as_array().map(Vec::as_slice).unwrap_or_default();
    // What only builds the program is in no copy of it.
    let carried = || all.iter().filter(|part| part["scope"] == "required");
    let fonts: Vec<&Value> = carried().filter(|part| part["type"] == "file").collect();
    let crates: Vec<&Value> = carried().filter(|part| part["type"] == "library").collect();
    let wide = carried().map(|part| named(part).chars().count()).max().unwrap_or(0);
    let row = |part: &&Value| format!("  {:wide$}  {}", named(part), licence(part));
    let own = &materials["metadata"]["component"];
    terminal.say(&format!("{}: {}", named(own), licence(own)));
    for (what, parts) in [("Fonts", fonts), ("Crates", crates)] {
        terminal.say(&format!("\n{what} ({})", parts.len()));
        parts.iter().map(row).for_each(|line| terminal.say(&line));
    }
    Ended::Well
}

fn named(part: &Value) -> String {
    format!("{} {}", part["name"].as_str().unwrap_or_default(), part["version"].as_str().unwrap_or_default())
}

fn licence(part: &Value) -> &str {
    let licence = &part["licenses"][0];
    licence["expression"].as_str().or_else(|| licence["license"]["id"].as_str()).unwrap_or("none named")
}
