//! Things done in order: putting on, taking off, moving; and where to look.

use std::fmt::Write as _;

use serde_json::Value;

use super::boxes;
use super::html::{element, heading, inline, list, say, word};
use super::plates::Plates;
use super::signs;

/// Steps of putting on or taking off: on is a solid head, off an open one, as on the strips.
pub fn steps(data: &Value, plates: &Plates, id: &str, level: u8, number: &impl Fn(usize) -> String) -> String {
    let kind = if word(&data["kind"]) == "on" { "solid" } else { "open" };
    let mut out = format!("<div class=\"steps {kind}\">{}<ol>", heading(level, "bar", &say(&data["title"])));
    for (at, item) in list(&data["items"]).iter().enumerate() {
        let drawn = plates.one(&item["picture"], &format!("{id}-{}", at + 1));
        let class = if drawn.is_empty() { "" } else { " class=\"drawn\"" };
        let _ = write!(
            out,
            "<li{class}><span class=\"tile {kind}\" aria-hidden=\"true\">{}</span>{drawn}<p>{}</p></li>",
            number(at + 1),
            inline(&item["say"])
        );
    }
    out.push_str("</ol></div>");
    out
}

/// Where to look: pictures with letters, and what each letter stands for.
pub fn spots(data: &Value, plates: &Plates, id: &str) -> String {
    let items: String = list(&data["items"])
        .iter()
        .map(|item| {
            format!("<li><span class=\"disc\">{}</span> <span>{}</span></li>", say(&item["letter"]), say(&item["say"]))
        })
        .collect();
    format!("<div class=\"spots\">{}<ul>{items}</ul></div>", plates.row(&data["pictures"], id))
}

/// The moves, a card each; then `after`, what is still to come; last what not to do and when to stop.
pub fn exercises(
    data: &Value,
    after: &str,
    plates: &Plates,
    id: &str,
    level: u8,
    number: &impl Fn(usize) -> String,
) -> String {
    let mut out = String::new();
    for (at, row) in list(&data["rows"]).iter().enumerate() {
        let steps: String = list(&row["steps"])
            .iter()
            .enumerate()
            .map(|(at, step)| {
                format!(
                    "<li><span class=\"tile open\" aria-hidden=\"true\">{}</span><p>{}</p></li>",
                    number(at + 1),
                    inline(step)
                )
            })
            .collect();
        let dose: String = list(&row["dose"])
            .iter()
            .map(|entry| {
                // A number of the tree is a text in the digits of the language already.
                format!(
                    "<span><span class=\"big\">{}</span> <strong>{}</strong></span> ",
                    say(&entry["n"]),
                    say(&entry["w"])
                )
            })
            .collect();
        let _ = write!(
            out,
            "<article class=\"move\"><div class=\"move-head\">{}{}</div>{}{}<ol>{steps}</ol><p class=\"dose\">{dose}</p>{}</article>",
            heading(level, "", &say(&row["name"])),
            element("p", "where", &row["where"]),
            element("p", "", &row["start"]),
            plates.row(&row["pictures"], &format!("{id}-{}", at + 1)),
            element("p", "small", &row["later"])
        );
    }
    out.push_str(after);
    out.push_str(&boxes::refused(&data["not"], level));
    if !word(&data["stop"]).is_empty() {
        let _ = write!(
            out,
            "<p class=\"boxed stop\">{}<strong>{}</strong></p>",
            signs::sign("warning"),
            say(&data["stop"])
        );
    }
    out
}

/// Jobs in the day: the job and why it matters, the verdict by shape and word, how to do it.
pub fn activities(data: &Value, level: u8) -> String {
    let mut out = String::new();
    for row in list(&data["rows"]) {
        let how = list(&row["how"]);
        let how = match how {
            [one] => format!("<p>{}</p>", inline(one)),
            _ => super::html::bullets(&row["how"]),
        };
        let _ = write!(
            out,
            "<article class=\"job\">{}{}<p class=\"verdict\">{}<strong>{}</strong></p>{how}</article>",
            heading(level, "", &say(&row["name"])),
            element("p", "why", &row["why"]),
            signs::sign(word(&row["verdict"])),
            say(&row["word"])
        );
    }
    out
}
