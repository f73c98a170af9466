//! Hours of the day as strips: midnight to midnight, solid while the orthosis is on.

use std::fmt::Write as _;

use serde_json::Value;

use super::html::{element, escape, heading, inline, list, say, word};
use super::signs;

/// Minutes of a day: the width of every strip, in its own units.
const DAY: i64 = 1440;
/// Width of a stripe of a strip that may be worn or not, and of the gap after it, minutes.
const STRIPE: i64 = 14;
/// Height of a strip, in its own units.
const HIGH: usize = 100;

/// The days of one phase: one strip, or several as thin rows of one frame. Right-to-left days run right to left.
fn strip(days: &[&Value], alt: &Value) -> String {
    let several = days.len() > 1;
    let height = if several { (0.5 * days.len() as f64).max(2.2) } else { 1.6 };
    let mut out = format!(
        "<svg class=\"strip\" viewBox=\"0 0 {DAY} {}\" height=\"{height}em\" preserveAspectRatio=\"none\" role=\"img\" aria-label=\"{}\">",
        HIGH * days.len(),
        escape(word(alt))
    );
    for (number, day) in days.iter().enumerate() {
        one(day, number * HIGH, !several, &mut out);
    }
    out.push_str("</svg>");
    out
}

fn one(day: &Value, top: usize, notches: bool, out: &mut String) {
    let mut frame: Option<(i64, i64)> = None;
    let mut marks = String::new();
    for stretch in list(day) {
        let (from, to) = (stretch["from"].as_i64().unwrap_or(0), stretch["to"].as_i64().unwrap_or(0));
        let state = word(&stretch["state"]);
        if state == "before" {
            // Not fitted yet: a dotted line, no frame.
            let middle = top + HIGH / 2;
            let _ = write!(marks, "<path class=\"before\" d=\"M{from} {middle}H{to}\"/>");
            continue;
        }
        frame = Some((frame.map_or(from, |(first, _)| first), to));
        match state {
            "on" => {
                let _ = write!(marks, "<path class=\"on\" d=\"M{from} {top}H{to}v{HIGH}H{from}z\"/>");
            }
            "needed" => {
                let mut stripes = String::new();
                let mut at = from;
                while at < to {
                    let end = (at + STRIPE).min(to);
                    let _ = write!(stripes, "M{at} {top}H{end}v{HIGH}H{at}z");
                    at += STRIPE * 2;
                }
                let _ = write!(marks, "<path class=\"on\" d=\"{stripes}\"/>");
            }
            _ => {}
        }
    }
    out.push_str(&marks);
    if let Some((from, to)) = frame {
        let _ = write!(out, "<path class=\"frame\" d=\"M{from} {top}H{to}v{HIGH}H{from}z\"/>");
    }
    if notches {
        // Short, so that they are never read as a time off.
        let notches: String = (1..4)
            .map(|quarter| DAY / 4 * quarter)
            .map(|x| format!("M{x} {top}v24M{x} {}v24", top + HIGH - 24))
            .collect();
        let _ = write!(out, "<path class=\"notch\" d=\"{notches}\"/>");
    }
}

/// The hours over a strip. The strip says its own times to those who do not see it.
fn axis(words: &Value) -> String {
    let mut out = "<div class=\"axis\" aria-hidden=\"true\">".to_owned();
    for (number, hour) in list(words).iter().enumerate() {
        let orb = match number {
            0 | 4 => signs::sign("moon"),
            2 => signs::sign("sun"),
            _ => String::new(),
        };
        let _ = write!(out, "<span class=\"hour-{number}\">{orb}{}</span>", say(hour));
    }
    out.push_str("</div>");
    out
}

/// The phases of wearing, a strip each.
pub fn strips(data: &Value, level: u8) -> String {
    let mut out = "<ul class=\"key\">".to_owned();
    for entry in list(&data["key"]) {
        let _ = write!(out, "<li>{}<span>{}</span></li>", swatch(word(&entry["state"])), say(&entry["say"]));
    }
    out.push_str("</ul>");
    for row in list(&data["rows"]) {
        let days: Vec<&Value> = list(&row["days"]).iter().collect();
        let title = format!("{} <span class=\"dates\">{}</span>", say(&row["label"]), say(&row["dates"]));
        let _ = write!(
            out,
            "<div class=\"phase\">{}{}{}<p>{}</p></div>",
            heading(level, "", &title),
            axis(&data["axis"]),
            strip(&days, &row["alt"]),
            inline(&row["say"])
        );
    }
    out
}

/// What a state of a strip looks like.
fn swatch(state: &str) -> String {
    let inside = match state {
        "on" => "<path class=\"on\" d=\"M0 0H60V30H0z\"/>",
        "needed" => {
            "<path class=\"on\" d=\"M0 0H6V30H0zM12 0H18V30H12zM24 0H30V30H24zM36 0H42V30H36zM48 0H54V30H48z\"/>"
        }
        _ => "",
    };
    format!(
        "<svg class=\"swatch\" viewBox=\"0 0 60 30\" aria-hidden=\"true\" focusable=\"false\">{inside}<path class=\"frame\" d=\"M0 0H60V30H0z\"/></svg>"
    )
}

/// The first days one by one: the day, how long, and its hours on a strip.
pub fn schedule(data: &Value) -> String {
    let mut rows = String::new();
    for row in list(&data["rows"]) {
        let amount = &row["amount"];
        let said = if let Some(all) = row["all"].as_str() {
            format!("<p class=\"all\">{}</p>", escape(all))
        } else if amount.is_object() {
            format!(
                "<p class=\"amount\"><span class=\"big\">{}</span> <span>{} <strong>{}</strong></span></p>",
                say(&amount["big"]),
                say(&amount["unit"]),
                say(&amount["times"])
            )
        } else {
            String::new()
        };
        let _ = write!(
            rows,
            "<tr><th scope=\"row\"><span class=\"day\"><span class=\"tile open\">{}</span> <span>{} <span class=\"dates\">{}</span></span></span></th><td>{said}{}</td></tr>",
            say(&row["n"]),
            element("strong", "", &row["weekday"]),
            say(&row["date"]),
            strip(&[&row["segments"]], &row["alt"])
        );
    }
    format!(
        "<table class=\"schedule\"><thead><tr><th scope=\"col\">{}</th><th scope=\"col\">{} <span class=\"heard\">{}</span>{}</th></tr></thead><tbody>{rows}</tbody></table>{}",
        say(&data["head"]["day"]),
        say(&data["head"]["long"]),
        say(&data["head"]["clock"]),
        axis(&data["axis"]),
        note(&data["note"])
    )
}

fn note(runs: &Value) -> String {
    let said = inline(runs);
    if said.is_empty() { said } else { format!("<p class=\"small\">{said}</p>") }
}
