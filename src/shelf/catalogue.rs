//! The catalogue of a shelf: one HTML file that fetches nothing and works from a file share.

use std::fmt::Write as _;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use sha2::{Digest as _, Sha256};

use super::file::{ItemKind, ItemName, Review};
use super::page::Clerk;
use crate::case::Paper;
use crate::clinic::Clinic;
use crate::content::PrintSize;
use crate::diag::Diagnostic;
use crate::language::{LanguageEntry, ReadingDirection, WordState};
use crate::units::{Date, Interval};
use crate::webpage::escape;

const LOOK: &str = include_str!("catalogue.css");
const SCRIPT: &str = include_str!("catalogue.js");

/// A file of a handout.
#[derive(Clone, Debug)]
pub struct ShownFile {
    /// Seen from the catalogue.
    pub path: String,
    /// Nothing where it has no pages.
    pub pages: Option<(PrintSize, Paper)>,
}

/// A handout in one language.
#[derive(Clone, Debug)]
pub struct Entry {
    /// `facts`, `pictures` or a sheet of a case.
    pub sheet: &'static str,
    pub language: LanguageEntry,
    /// As the handout says it.
    pub title: String,
    pub state: WordState,
    pub files: Vec<ShownFile>,
}

/// An item with its handouts.
#[derive(Clone, Debug)]
pub struct ShownItem {
    pub name: ItemName,
    /// Its English name.
    pub title: String,
    /// What it is called in every language of the shelf, to be found by.
    pub names: Vec<String>,
    /// The conditions that it is about.
    pub conditions: Vec<String>,
    pub review: Option<Review>,
    /// How far clinicians have confirmed its content: `confirmed`, `outdated` or `drafted`.
    pub standing: &'static str,
    pub entries: Vec<Entry>,
}

/// Everything that the catalogue shows.
pub struct Catalogue<'c> {
    pub title: &'c str,
    pub clinic: Option<&'c Clinic>,
    pub items: &'c [ShownItem],
    /// The names of conditions by their ids.
    pub conditions: &'c [(String, String)],
    pub review_every: Option<Interval>,
}

type Text = Result<String, Diagnostic>;

/// The page.
///
/// # Errors
/// When a word is missing.
pub fn page(clerk: &Clerk<'_>, catalogue: &Catalogue<'_>) -> Text {
    let look = format!("{LOOK}{}", accent(catalogue.clinic));
    let policy = format!(
        "default-src 'none'; script-src 'sha256-{}'; style-src 'sha256-{}'; img-src data:; base-uri 'none'; form-action 'none'",
        digest(SCRIPT),
        digest(&look)
    );
    let title = escape(catalogue.title);
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<meta name=\"referrer\" content=\"no-referrer\">\n<meta name=\"robots\" content=\"noindex\">\n<meta name=\"description\" content=\"{}\">\n<title>{title}</title>\n<style>{look}</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#list\">{}</a>\n",
        said(clerk, "shelf-about")?,
        said(clerk, "shelf-skip")?,
    );
    let _ = write!(
        out,
        "<header><div>{}<h1>{title}</h1></div>{}</header>\n<main>\n",
        named(catalogue.clinic),
        logo(catalogue.clinic)
    );
    tools(&mut out, clerk, catalogue)?;
    let _ = writeln!(out, "<h2 class=\"heard\">{}</h2>\n<div id=\"list\" tabindex=\"-1\">", said(clerk, "shelf-list")?);
    for item in catalogue.items {
        shown(&mut out, clerk, catalogue, item)?;
    }
    let _ = write!(
        out,
        "</div>\n<button type=\"button\" id=\"more\" class=\"more\" hidden>{}</button>\n</main>\n<footer><p>{}</p></footer>\n<script>{SCRIPT}</script>\n</body>\n</html>\n",
        said(clerk, "shelf-more")?,
        said(clerk, "shelf-caution")?,
    );
    Ok(out)
}

fn digest(text: &str) -> String {
    BASE64_STANDARD.encode(Sha256::digest(text.as_bytes()))
}

fn said(clerk: &Clerk<'_>, key: &str) -> Text {
    Ok(escape(&clerk.plain(key)?))
}

fn accent(clinic: Option<&Clinic>) -> String {
    let Some(accent) = clinic.and_then(Clinic::accent) else { return String::new() };
    let (day, night) = (accent.by_day(), accent.by_night());
    format!(
        ":root{{--accent:{day}}}\n@media (prefers-color-scheme:dark){{:root{{--accent:{night}}}}}\n@media print{{:root{{--accent:{day}}}}}\n"
    )
}

fn named(clinic: Option<&Clinic>) -> String {
    let name = clinic.and_then(Clinic::name);
    name.map(|name| format!("<p class=\"clinic\"><bdi>{}</bdi></p>", escape(name))).unwrap_or_default()
}

fn logo(clinic: Option<&Clinic>) -> String {
    let Some(clinic) = clinic else { return String::new() };
    let Some(logo) = &clinic.logo else { return String::new() };
    let bytes = BASE64_STANDARD.encode(&logo.bytes);
    // The name stands beside it.
    format!("<img alt=\"\" src=\"data:{};base64,{bytes}\">", logo.kind.media_type())
}

/// Search and choices; without scripts they are not shown.
fn tools(out: &mut String, clerk: &Clerk<'_>, catalogue: &Catalogue<'_>) -> Result<(), Diagnostic> {
    let entries = || catalogue.items.iter().flat_map(|item| &item.entries);
    let mut languages: Vec<(String, String)> = entries()
        .map(|entry| (entry.language.tag.to_string(), format!("{} ({})", entry.language.english, entry.language.name)))
        .collect();
    languages.sort_by(|one, other| one.1.cmp(&other.1));
    languages.dedup();
    let of_words = |all: Vec<&'static str>| -> Result<Vec<(String, String)>, Diagnostic> {
        all.into_iter().map(|word| Ok((word.to_owned(), clerk.chosen("shelf-choice", "word", word)?))).collect()
    };
    let states = WordState::ALL.iter().copied().filter(|&state| entries().any(|entry| entry.state == state));
    let states = of_words(states.map(WordState::word).collect())?;
    let printed = |size: PrintSize| {
        entries().flat_map(|entry| &entry.files).any(|file| file.pages.is_some_and(|(print, _)| print == size))
    };
    let sizes = of_words(PrintSize::ALL.iter().copied().filter(|&size| printed(size)).map(PrintSize::word).collect())?;
    let _ = write!(
        out,
        "<noscript><p>{}</p></noscript>\n<div id=\"tools\" class=\"tools\" role=\"search\" hidden>\n<div><label for=\"q\">{}</label><input id=\"q\" type=\"search\" autocomplete=\"off\" spellcheck=\"false\" dir=\"auto\" aria-describedby=\"hint\"><p class=\"hint\" id=\"hint\">{}</p></div>\n<fieldset><legend>{}</legend>\n",
        said(clerk, "shelf-still")?,
        said(clerk, "shelf-search")?,
        said(clerk, "shelf-search-hint")?,
        said(clerk, "shelf-filters")?,
    );
    let mut all = vec![
        ("condition", "shelf-filter-condition", catalogue.conditions.to_vec()),
        ("language", "shelf-filter-language", languages),
        ("words", "shelf-filter-words", states),
        ("print", "shelf-filter-print", sizes),
    ];
    if catalogue.review_every.is_some() {
        all.push(("review", "shelf-filter-review", of_words(vec!["due", "soon", "fine"])?));
    }
    let any = said(clerk, "shelf-any")?;
    for (id, key, options) in all {
        let _ = write!(
            out,
            "<div><label for=\"{id}\">{}</label><select id=\"{id}\"><option value=\"\">{any}</option>",
            said(clerk, key)?
        );
        for (value, text) in options {
            let _ = write!(out, "<option value=\"{}\">{}</option>", escape(&value), escape(&text));
        }
        out.push_str("</select></div>\n");
    }
    let found = clerk.with("shelf-found", &[("items", "{items}"), ("files", "{files}")])?;
    let _ = write!(
        out,
        "<div><button type=\"button\" id=\"clear\">{}</button></div>\n</fieldset>\n</div>\n<p class=\"found\" id=\"found\" role=\"status\" data-text=\"{}\" data-due=\"{}\" data-soon=\"{}\"></p>\n<p id=\"none\" hidden>{}</p>\n",
        said(clerk, "shelf-clear")?,
        escape(&found),
        said(clerk, "shelf-overdue")?,
        said(clerk, "shelf-due-soon")?,
        said(clerk, "shelf-none")?,
    );
    Ok(())
}

/// When an item is looked at again; nothing where the shelf asks for no reviews or nobody has looked yet.
fn next(catalogue: &Catalogue<'_>, item: &ShownItem) -> Option<Date> {
    Some(item.review.as_ref()?.date.later(catalogue.review_every?))
}

fn reviewed(clerk: &Clerk<'_>, catalogue: &Catalogue<'_>, item: &ShownItem) -> Text {
    let mut lines = Vec::new();
    match &item.review {
        Some(review) => {
            let date = review.date.to_string();
            lines.push(escape(&clerk.with("shelf-reviewed", &[("date", &date), ("by", review.by.as_str())])?));
            if let Some(next) = next(catalogue, item) {
                lines.push(escape(&clerk.with("shelf-next", &[("date", &next.to_string())])?));
            }
        }
        None => lines.push(said(clerk, "shelf-never")?),
    }
    if item.name.kind != ItemKind::Cases || item.standing != "drafted" {
        lines.push(escape(&clerk.chosen("shelf-content", "state", item.standing)?));
    }
    Ok(lines.join(" "))
}

fn shown(out: &mut String, clerk: &Clerk<'_>, catalogue: &Catalogue<'_>, item: &ShownItem) -> Result<(), Diagnostic> {
    let due = match (catalogue.review_every, next(catalogue, item)) {
        (None, _) => String::new(),
        (Some(_), None) => " data-review=\"never\"".to_owned(),
        (Some(_), Some(next)) => format!(" data-review=\"{next}\""),
    };
    let _ = write!(
        out,
        "<article class=\"item\" data-conditions=\"{}\" data-names=\"{}\"{due}>\n<div><h3>{}<span class=\"kind\">{}</span></h3><p class=\"review\">{}</p></div>\n<ul class=\"sheets\">",
        escape(&item.conditions.join(" ")),
        escape(&item.names.join(" | ")),
        escape(&item.title),
        escape(&clerk.chosen("shelf-kind", "kind", item.name.kind.word())?),
        reviewed(clerk, catalogue, item)?,
    );
    for entry in &item.entries {
        let tag = &entry.language.tag;
        let direction = if entry.language.direction == ReadingDirection::RightToLeft { "rtl" } else { "ltr" };
        let _ = write!(
            out,
            "\n<li data-l=\"{tag}\" data-s=\"{}\"><b>{}</b><span class=\"t\" lang=\"{tag}\" dir=\"{direction}\">{}</span><i>{}</i><em>{}</em><span class=\"f\">",
            entry.state,
            escape(&entry.language.english),
            escape(&entry.title),
            escape(&clerk.chosen("shelf-sheet", "sheet", entry.sheet)?),
            escape(&clerk.chosen("shelf-state", "state", entry.state.word())?),
        );
        for file in &entry.files {
            let (size, label) = match file.pages {
                Some((print, paper)) => {
                    let said = clerk.chosen("shelf-print", "print", print.word())?;
                    (print.word(), format!("{said} {}", paper.name()))
                }
                None => ("", clerk.plain("shelf-open")?),
            };
            let (path, label) = (escape(&file.path), escape(&label));
            let _ = write!(out, "<a href=\"{path}\" hreflang=\"{tag}\" data-p=\"{size}\">{label}</a>");
        }
        out.push_str("</span></li>");
    }
    out.push_str("\n</ul>\n</article>\n");
    Ok(())
}
