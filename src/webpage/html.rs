//! Text and values of the tree as HTML. Nothing reaches the page without passing through here.

use std::fmt::Write as _;
use std::ops::Range;

use serde_json::Value;

use super::telephone;

/// Text with every character escaped that HTML could take for a mark, in text and in quoted attributes.
pub fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            // Control characters have no place in HTML; line ends and tabs are white space.
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    out
}

/// Text between marks: escaped, and an hour with its Latin half of the day reads from left to right whatever stands
/// before it (among Arabic letters "9:15 AM" would else turn into "AM 9:15": Unicode Standard Annex 9, rule W2).
pub fn told(text: &str) -> String {
    let text = escape(text);
    let mut out = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some(hour) = hour(rest) {
        let _ = write!(out, "{}<bdi dir=\"ltr\">{}</bdi>", &rest[..hour.start], &rest[hour.clone()]);
        rest = &rest[hour.end..];
    }
    out.push_str(rest);
    out
}

/// Where the first hour with AM or PM stands.
fn hour(text: &str) -> Option<Range<usize>> {
    ["AM", "PM"]
        .iter()
        .flat_map(|half| text.match_indices(half))
        .filter_map(|(at, half)| {
            let end = at + half.len();
            let before = text[..at].strip_suffix([' ', '\u{a0}', '\u{202f}'])?;
            let start = before.trim_end_matches(|c: char| c.is_ascii_digit() || c == ':').len();
            let whole = start < before.len() && !text[end..].starts_with(char::is_alphanumeric);
            whole.then_some(start..end)
        })
        .min_by_key(|hour| hour.start)
}

/// A text of the tree between marks; empty when there is none.
pub fn say(value: &Value) -> String {
    told(word(value))
}

/// A text of the tree in the quotes of an attribute or in the title, where no marks are read.
pub fn quoted(value: &Value) -> String {
    escape(word(value))
}

/// A word that the code decides by; empty when there is none.
pub fn word(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}

/// The items of a list; none when there is no list.
pub fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

/// An element round a text of the tree, or nothing when there is no text.
pub fn element(tag: &str, class: &str, text: &Value) -> String {
    match text.as_str() {
        Some(text) if !text.is_empty() => format!("<{tag}{}>{}</{tag}>", classed(class), told(text)),
        _ => String::new(),
    }
}

/// A class attribute with the space before it, or nothing.
pub fn classed(class: &str) -> String {
    if class.is_empty() { String::new() } else { format!(" class=\"{class}\"") }
}

/// Inline runs: text, bold, links. A run may also be one plain text.
pub fn inline(runs: &Value) -> String {
    if let Some(text) = runs.as_str() {
        return told(text);
    }
    let mut out = String::new();
    for run in list(runs) {
        if let Some(text) = run["s"].as_str() {
            out.push_str(&told(text));
        } else if run.get("b").is_some() {
            let _ = write!(out, "<strong>{}</strong>", inline(&run["b"]));
        } else if let Some(href) = run["a"]["href"].as_str() {
            out.push_str(&link(href, &inline(&run["a"]["inl"])));
        }
    }
    out
}

/// A link of a therapist's note. It is followed only when it is touched, and says nothing of where it was touched.
fn link(href: &str, said: &str) -> String {
    match href.strip_prefix("tel:") {
        Some(number) => telephone::link(number, said),
        None if ["https://", "http://", "mailto:"].iter().any(|scheme| href.starts_with(scheme)) => {
            format!("<a href=\"{}\" rel=\"noreferrer\">{said}</a>", escape(href))
        }
        None => said.to_owned(),
    }
}

/// A plain list of texts or runs.
pub fn bullets(items: &Value) -> String {
    let items: String = list(items).iter().map(|item| format!("<li>{}</li>", inline(item))).collect();
    if items.is_empty() { items } else { format!("<ul>{items}</ul>") }
}

/// A heading; the deepest is 6.
pub fn heading(level: u8, class: &str, said: &str) -> String {
    let level = level.min(6);
    format!("<h{level}{}>{said}</h{level}>", classed(class))
}

/// What only those hear who do not see the page.
pub fn heard(said: &str) -> String {
    if said.is_empty() { String::new() } else { format!("<span class=\"heard\">{said}</span>") }
}
