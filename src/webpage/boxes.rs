//! Framed pieces: fine or not fine, do and never, stop signs, whom to call.

use std::fmt::Write as _;

use serde_json::Value;

use super::html::{bullets, element, heading, inline, list, say, word};
use super::signs;
use super::telephone;

/// A line to write on.
const LINE: &str = "<span class=\"line\" aria-hidden=\"true\"></span>";

/// A heading with a sign before it.
fn headed(level: u8, sign: &str, title: &Value) -> String {
    heading(level, "signed", &format!("{}<span>{}</span>", signs::sign(sign), say(title)))
}

/// Fine, or not fine: thin and round against thick and square.
pub fn checks(data: &Value, level: u8) -> String {
    let (fine, not) = (&data["fine"], &data["not"]);
    format!(
        "<div class=\"checks\"><div class=\"fine\">{}{}</div><div class=\"wrong\">{}{}{}</div></div>",
        headed(level, "keep", &fine["title"]),
        bullets(&fine["items"]),
        headed(level, "leave", &not["title"]),
        bullets(&not["items"]),
        element("p", "act", &not["do"])
    )
}

/// What may not be done yet; nothing when all may.
pub fn refused(data: &Value, level: u8) -> String {
    if !data.is_object() {
        return String::new();
    }
    format!("<div class=\"boxed\">{}{}</div>", headed(level, "leave", &data["title"]), bullets(&data["items"]))
}

/// Do and never.
pub fn care(data: &Value) -> String {
    let column = |wanted: bool| -> String {
        let items: String = list(&data["items"])
            .iter()
            .filter(|item| (word(&item["mark"]) == "do") == wanted)
            .map(|item| {
                let sign = if wanted { "keep" } else { "leave" };
                format!("<li>{}<span>{}</span></li>", signs::sign(sign), inline(&item["say"]))
            })
            .collect();
        if items.is_empty() { items } else { format!("<ul>{items}</ul>") }
    };
    format!("<div class=\"care\">{}{}</div>", column(true), column(false))
}

/// The stop sign: when to call, whom, and what cannot wait for a call.
pub fn warning(data: &Value, level: u8) -> String {
    let urgent = &data["emergency"];
    let number = match data["telephone"].as_str() {
        Some(number) => telephone::number(number),
        None => LINE.to_owned(),
    };
    let solid = data["telephone"].is_string() && !urgent.is_object();
    let mut out = format!(
        "<div class=\"warning\"><div class=\"in\">{}{}</div><div class=\"call{}\">{}<p class=\"number\"><span>{}</span> {number}</p><p><strong>{}</strong> {}</p></div>",
        headed(level, "warning", &data["title"]),
        bullets(&data["signs"]),
        if solid { " solid" } else { "" },
        signs::sign("telephone"),
        say(&data["telephone-label"]),
        say(&data["do"]),
        element("strong", "", &data["hours"])
    );
    if urgent.is_object() {
        let items = match list(&urgent["items"]) {
            [one] => format!("<p>{}</p>", say(one)),
            _ => bullets(&urgent["items"]),
        };
        let _ = write!(out, "<div class=\"urgent\">{}{items}</div>", headed(level, "warning", &urgent["title"]));
    }
    out.push_str("</div>");
    out
}

/// Whom to call, most urgent first.
pub fn ladder(data: &Value, level: u8) -> String {
    let mut out = String::new();
    for rung in list(&data["levels"]) {
        let urgency = word(&rung["level"]);
        let sign = match urgency {
            "emergency" => "warning",
            "today" => "telephone",
            _ => "review",
        };
        let big = match (word(&rung["kind"]), rung["big"].as_str()) {
            ("telephone", Some(number)) => format!("<p class=\"big\">{}</p>", telephone::number(number)),
            (_, Some(_)) => element("p", "date", &rung["big"]),
            (_, None) => format!("<p>{LINE}</p>"),
        };
        let _ = write!(
            out,
            "<div class=\"rung {urgency}\"><div class=\"rung-head\">{}{big}</div>{}{}</div>",
            headed(level, sign, &rung["title"]),
            element("p", "place", &rung["place"]),
            bullets(&rung["items"])
        );
    }
    out
}

/// Lines to sign on, for a page that is printed.
pub fn initial(data: &Value) -> String {
    let labels: String = list(&data["labels"])
        .iter()
        .map(|label| format!("<span class=\"blank\"><span>{}</span>{LINE}</span>", say(label)))
        .collect();
    format!("<p class=\"initial\"><strong>{}</strong> {labels}</p>", say(&data["say"]))
}
