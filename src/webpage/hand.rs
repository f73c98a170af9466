//! First answers: which hand, and the facts.

use std::fmt::Write as _;

use serde_json::Value;

use super::html::{element, escape, inline, list, say, word};
use super::plates::Plates;
use super::signs;

/// Two tiles placed as one's own hands lie. They keep their sides in every script; the words inside follow the language.
pub fn hand(data: &Value, plates: &Plates, id: &str, direction: &str) -> String {
    let side = word(&data["side"]);
    let face = |own: &str| {
        let treated = own == side;
        let finger = if treated { element("span", "finger", &data["finger"]) } else { String::new() };
        format!(
            "<div class=\"face {own}{}\">{}<span class=\"face-words\" dir=\"{direction}\">{}{finger}</span></div>",
            if treated { " treated" } else { "" },
            signs::hand(own),
            element("span", "face-word", &data[own]),
        )
    };
    format!(
        "<div class=\"hands\" dir=\"ltr\" role=\"img\" aria-label=\"{}\">{}{}</div>{}",
        escape(word(&data["alt"])),
        face("left"),
        face("right"),
        plates.row(&data["pictures"], id)
    )
}

/// Labels with what they stand for.
pub fn facts(data: &Value) -> String {
    let mut out = "<dl class=\"facts\">".to_owned();
    for row in list(&data["rows"]) {
        let _ = write!(
            out,
            "<div><dt>{}</dt><dd class=\"value\">{}</dd>{}</div>",
            say(&row["label"]),
            say(&row["value"]),
            element("dd", "", &row["more"])
        );
    }
    out.push_str("</dl>");
    out
}

/// What comes later, each with its label.
pub fn later(data: &Value) -> String {
    list(&data["items"])
        .iter()
        .map(|item| format!("<p class=\"later\"><strong>{}</strong> {}</p>", say(&item["label"]), inline(&item["say"])))
        .collect()
}
