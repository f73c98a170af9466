//! The calendar: real dates, a row a week, every state with a texture of its own.

use std::fmt::Write as _;

use serde_json::Value;

use super::html::{heard, list, say, word};
use super::signs;

/// Days of a week.
const WEEK: usize = 7;

/// The calendar. What to do in a week stands under it, and each month over its first week.
pub fn calendar(data: &Value) -> String {
    let key = list(&data["key"]);
    let said = |field: &str, wanted: &str| {
        key.iter().find(|entry| entry[field] == wanted).map(|entry| say(&entry["say"])).unwrap_or_default()
    };
    let mut out = format!(
        "<table class=\"calendar\"><caption class=\"heard\">{}. {}</caption><thead><tr>",
        say(&data["head"]["week"]),
        say(&data["head"]["what"])
    );
    for weekday in list(&data["weekdays"]) {
        let _ = write!(out, "<th scope=\"col\">{}</th>", say(weekday));
    }
    out.push_str("</tr></thead>");
    let mut open = false;
    for week in list(&data["rows"]) {
        // A month is a group of rows, and its name stands over it.
        let named = !word(&week["month"]).is_empty();
        if open && named {
            out.push_str("</tbody>");
        }
        if named || !open {
            out.push_str("<tbody>");
        }
        open = true;
        if named {
            let _ = write!(
                out,
                "<tr><th class=\"month\" scope=\"rowgroup\" colspan=\"{WEEK}\">{}</th></tr>",
                say(&week["month"])
            );
        }
        out.push_str("<tr>");
        for day in list(&week["days"]) {
            let state = word(&day["state"]);
            if state == "none" {
                out.push_str("<td class=\"d-none\"></td>");
                continue;
            }
            let flag = word(&day["flag"]);
            let flag_said = said("flag", flag);
            // A flag is shown only where the key explains it.
            let mark = if flag_said.is_empty() { String::new() } else { signs::sign(flag_sign(flag)) };
            let stair = if state == "build" { signs::sign("build") } else { String::new() };
            let states = said("state", state);
            let told: Vec<&str> =
                [states.as_str(), flag_said.as_str()].into_iter().filter(|said| !said.is_empty()).collect();
            let _ = write!(
                out,
                "<td class=\"d-{state}\">{stair}<span class=\"n\">{}{mark}</span>{}</td>",
                say(&day["n"]),
                heard(&format!(" {}", told.join(" ")))
            );
        }
        out.push_str("</tr>");
        if !word(&week["what"]).is_empty() {
            let _ = write!(out, "<tr><td class=\"what\" colspan=\"{WEEK}\">{}</td></tr>", say(&week["what"]));
        }
    }
    if open {
        out.push_str("</tbody>");
    }
    out.push_str("</table><ul class=\"key\">");
    for entry in key {
        let sign = match entry["flag"].as_str() {
            Some(flag) => signs::sign(flag_sign(flag)),
            None => {
                let state = word(&entry["state"]);
                let stair = if state == "build" { signs::sign("build") } else { String::new() };
                format!("<span class=\"chip d-{state}\" aria-hidden=\"true\">{stair}</span>")
            }
        };
        let _ = write!(out, "<li>{sign}<span>{}</span></li>", say(&entry["say"]));
    }
    out.push_str("</ul>");
    out
}

fn flag_sign(flag: &str) -> &'static str {
    match flag {
        "review" => "review",
        "change" => "turn",
        _ => "fitting",
    }
}
