//! The page round the sections: its head, what it may load (nothing), title, contents, parts and caution.

use std::fmt::Write as _;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use serde_json::Value;

use super::blocks::Around;
use super::html::{element, heading, inline, list, quoted, say, word};
use super::plates::Plates;
use super::signs;
use crate::diag::Diagnostic;
use crate::words::Sheet;

/// How the page looks.
const LOOK: &str = include_str!("look.css");

/// Nothing is fetched, run or sent: only the style that stands in the page counts.
const POLICY: &str = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/// A clinic's colour by day, by night and printed, and where it stands: rules over sections, number tiles, its name.
const ACCENT: &str = include_str!("accent.css");

/// The whole page.
///
/// # Errors
/// A block that has no form here.
pub fn frame(sheet: &Sheet, plates: &Plates) -> Result<String, Diagnostic> {
    let (meta, furniture) = (&sheet.data["meta"], &sheet.data["furniture"]);
    let direction = if word(&meta["dir"]) == "rtl" { "rtl" } else { "ltr" };
    let parts = list(&sheet.data["parts"]);
    let several = parts.len() > 1;
    // The title of a page with one part is the title of the part.
    let title = match parts {
        [one] => &one["title"],
        _ => &meta["title"],
    };
    let around = Around { plates, digits: list(&meta["digits"]), direction, level: if several { 4 } else { 3 } };
    let mut body = String::new();
    let mut contents = String::new();
    for (number, part) in parts.iter().enumerate() {
        let id = format!("p{}", number + 1);
        let mut links = String::new();
        let mut sections = String::new();
        for (at, section) in list(&part["sections"]).iter().enumerate() {
            let id = format!("{id}-{}", word(&section["id"]));
            let tile = around.number(at + 1);
            let _ = write!(
                links,
                "<li><a href=\"#{id}\"><span class=\"tile solid\" aria-hidden=\"true\">{tile}</span><span>{}</span></a></li>",
                say(&section["title"])
            );
            let head = format!(
                "<span class=\"tile solid\" aria-hidden=\"true\">{tile}</span><span>{}</span>",
                say(&section["title"])
            );
            let intro = inline(&section["intro"]);
            let intro = if intro.is_empty() { intro } else { format!("<p class=\"intro\">{intro}</p>") };
            let _ = write!(
                sections,
                "<section id=\"{id}\" class=\"section s-{}\">{}{intro}{}</section>",
                word(&section["id"]),
                heading(around.level - 1, "head", &head),
                around.blocks(section, &id)?
            );
        }
        if several {
            let _ = write!(
                contents,
                "<li><a class=\"to-part\" href=\"#{id}\"><strong>{}</strong> <span class=\"small\">{}</span></a><ol>{links}</ol></li>",
                say(&part["title"]),
                say(&part["for"])
            );
            let _ = write!(
                body,
                "<article id=\"{id}\" class=\"part\">{}{}{sections}</article>",
                heading(2, "part-title", &say(&part["title"])),
                element("p", "made-for", &part["for"])
            );
        } else {
            contents = links;
            body = sections;
        }
    }
    let made_for =
        if several { String::new() } else { parts.iter().map(|part| element("p", "made-for", &part["for"])).collect() };
    let language = match meta["region"].as_str() {
        Some(region) => format!("{}-{}", quoted(&meta["language"]), super::html::escape(region)),
        None => quoted(&meta["language"]),
    };
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"{language}\" dir=\"{direction}\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}{}\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<meta name=\"format-detection\" content=\"telephone=no\">\n<meta name=\"referrer\" content=\"no-referrer\">\n<meta name=\"robots\" content=\"noindex\">\n<meta name=\"author\" content=\"{}\">\n<meta name=\"description\" content=\"{}\">\n<title>{}</title>\n<style>\n{LOOK}{}</style>\n</head>\n<body>\n",
        if sheet.logo.is_some() { "; img-src data:" } else { "" },
        quoted(&meta["author"]),
        quoted(&meta["description"]),
        quoted(&meta["title"]),
        accent(meta)
    );
    out.push_str(signs::SYMBOLS);
    out.push_str(&plates.store());
    let _ = writeln!(
        out,
        "<header>{}{}{}{}{}{}{}</header>",
        logo(sheet, furniture),
        heading(1, "", &say(title)),
        named(&furniture["person"], "person"),
        named(&furniture["clinic"], "clinic"),
        named(&furniture["address"], "address"),
        made_for,
        element("p", "state", &furniture["state"])
    );
    let _ = write!(
        out,
        "<nav aria-labelledby=\"contents\"><p id=\"contents\">{}</p><ol>{contents}</ol></nav>\n<main>{body}</main>\n<footer>{}{}</footer>\n</body>\n</html>\n",
        super::html::escape(&sheet.contents),
        element("p", "caution", &furniture["caution"]),
        element("p", "state", &furniture["state"])
    );
    Ok(out)
}

/// The style of a clinic's colour; nothing where it has none.
fn accent(meta: &Value) -> String {
    match (meta["accent"].as_str(), meta["accent-by-night"].as_str()) {
        (Some(day), Some(night)) => ACCENT.replace("BY-DAY", day).replace("BY-NIGHT", night),
        _ => String::new(),
    }
}

/// The clinic's logo, in the page itself.
fn logo(sheet: &Sheet, furniture: &Value) -> String {
    let Some(logo) = &sheet.logo else { return String::new() };
    format!(
        "<img class=\"logo\" alt=\"{}\" src=\"data:{};base64,{}\">",
        quoted(&furniture["logo"]["alt"]),
        logo.kind.media_type(),
        BASE64_STANDARD.encode(&logo.bytes)
    )
}

/// A name keeps its own direction.
fn named(name: &Value, class: &str) -> String {
    match name.as_str() {
        Some(_) => format!("<p class=\"{class}\"><bdi>{}</bdi></p>", say(name)),
        None => String::new(),
    }
}
