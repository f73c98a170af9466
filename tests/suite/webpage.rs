//! The guide as one page for a telephone: every fact of the sheet, sound HTML, nothing fetched, nothing run.

pub mod reader;

use std::collections::{BTreeMap, BTreeSet};

use palmleaf::diag::Diagnostic;
use palmleaf::words::Sheet;
use serde_json::Value;

use crate::support::{CASE, WORKSHOP, examples, file, sheet};
use reader::{Page, squeezed};

const LANGUAGES: [&str; 3] = ["en", "es", "ar"];
/// What a page may weigh, bytes.
const MOST: usize = 300_000;

fn page(sheet: &Sheet) -> String {
    made(sheet).unwrap_or_else(|fault| panic!("{fault:?}"))
}

fn made(sheet: &Sheet) -> Result<String, Diagnostic> {
    palmleaf::webpage::page(sheet, &WORKSHOP.album)
}

/// Every example in every language, by name.
fn sheets() -> Vec<(String, Sheet)> {
    let mut all = Vec::new();
    for path in examples() {
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let text = file(&format!("examples/{name}.yaml"));
        for language in LANGUAGES {
            let lines = text.lines().filter(|line| !line.starts_with("language:"));
            let text = lines.map(|line| format!("{line}\n")).collect::<String>() + &format!("language: {language}\n");
            all.push((format!("{name} {language}"), sheet(&text)));
        }
    }
    all
}

/// Fields that the code decides by, and those that name columns or numbers of pages that a telephone has none of.
const NO_WORDS: &[&str] =
    &["t", "id", "side", "state", "verdict", "mark", "kind", "level", "flag", "picture", "letters", "page", "contents"];

fn facts(value: &Value, within: &str, found: &mut BTreeMap<String, usize>) {
    match value {
        Value::String(text) if !text.trim().is_empty() => *found.entry(squeezed(text)).or_default() += 1,
        Value::Array(items) => items.iter().for_each(|item| facts(item, within, found)),
        // A day outside the plan stays empty.
        Value::Object(fields) if fields.get("state").is_some_and(|state| state == "none") => {}
        Value::Object(fields) => {
            let kind = fields.get("t").and_then(Value::as_str).unwrap_or(within);
            for (name, field) in fields {
                // In furniture `state` is a sentence.
                let word = NO_WORDS.contains(&name.as_str()) && !(name == "state" && fields.contains_key("caution"));
                if !(word || kind == "activities" && name == "head") {
                    facts(field, kind, found);
                }
            }
        }
        _ => {}
    }
}

fn facts_of(sheet: &Sheet) -> BTreeMap<String, usize> {
    let mut found = BTreeMap::new();
    facts(&sheet.data["parts"], "", &mut found);
    facts(&sheet.data["furniture"], "", &mut found);
    for name in ["title", "author", "description"] {
        facts(&sheet.data["meta"][name], "", &mut found);
    }
    found
}

fn holds_every_fact(name: &str, sheet: &Sheet, page: &Page) {
    let said = page.said();
    for (fact, times) in facts_of(sheet) {
        let found = said.matches(&fact).count();
        assert!(found >= times, "{name}: «{fact}» stands {found} times, not {times}");
    }
}

#[test]
fn every_fact_of_the_sheet_is_on_the_page() {
    for (name, sheet) in sheets() {
        holds_every_fact(&name, &sheet, &Page::read(&page(&sheet)));
    }
}

#[test]
fn the_page_is_sound_small_and_closed() {
    for (name, sheet) in sheets() {
        let html = page(&sheet);
        assert!(html.len() < MOST, "{name}: {} bytes", html.len());
        for never in ["<script", "://", "url(", "@import", "src=", "<link", "<img", "<iframe", "<form", "javascript"] {
            assert!(!html.contains(never), "{name}: {never}");
        }
        let page = Page::read(&html);
        assert_eq!(page.errors, Vec::<String>::new(), "{name}");
        let policy = page.all("meta").find(|meta| meta.is("http-equiv", "Content-Security-Policy")).expect("a policy");
        assert!(policy.get("content").is_some_and(|text| text.starts_with("default-src 'none';")), "{name}");
        let ids: Vec<&str> = page.elements.iter().filter_map(|one| one.get("id")).collect();
        let set: BTreeSet<&str> = ids.iter().copied().collect();
        assert_eq!(ids.len(), set.len(), "{name}: an id stands twice");
        for one in &page.elements {
            for (attribute, value) in &one.attributes {
                assert!(!attribute.starts_with("on"), "{name}: {attribute}");
                match attribute.as_str() {
                    "href" => match value.strip_prefix('#') {
                        Some(id) => assert!(set.contains(id), "{name}: nothing is called {id}"),
                        None => assert!(value.starts_with("tel:"), "{name}: {value}"),
                    },
                    "aria-labelledby" => {
                        assert!(value.split(' ').all(|id| set.contains(id)), "{name}: {value}");
                    }
                    _ => {}
                }
            }
        }
    }
}

#[test]
fn headings_tables_and_pictures_are_told_to_who_cannot_see_them() {
    for (name, sheet) in sheets() {
        let page = Page::read(&page(&sheet));
        let html = page.all("html").next().expect("a root");
        assert!(html.is("dir", if name.ends_with("ar") { "rtl" } else { "ltr" }), "{name}");
        assert!(html.get("lang").is_some_and(|lang| lang.starts_with(name.rsplit(' ').next().unwrap_or_default())));
        for landmark in ["header", "nav", "main", "footer", "title"] {
            assert_eq!(page.all(landmark).filter(|one| one.parent != "svg").count(), 1, "{name}: {landmark}");
        }
        let levels: Vec<u32> = page
            .elements
            .iter()
            .filter_map(|one| one.name.strip_prefix('h').filter(|rest| rest.len() == 1)?.parse().ok())
            .collect();
        assert_eq!(levels.iter().filter(|level| **level == 1).count(), 1, "{name}");
        assert_eq!(levels[0], 1, "{name}");
        assert!(levels.windows(2).all(|pair| pair[1] <= pair[0] + 1), "{name}: {levels:?}");
        for head in page.all("th") {
            assert!(head.get("scope").is_some(), "{name}");
        }
        let mut drawn = 0;
        for svg in page.all("svg") {
            let told = svg.is("role", "img") && (svg.get("aria-label").or(svg.get("aria-labelledby"))).is_some();
            assert!(told || svg.is("aria-hidden", "true"), "{name}: a picture without words");
            drawn += usize::from(svg.is("class", "plate"));
        }
        assert!(drawn >= sheet.pictures.len(), "{name}: {drawn} of {} pictures", sheet.pictures.len());
    }
}

#[test]
fn sides_are_physical_in_every_script() {
    let look = file("src/webpage/look.css");
    let mirrored: Vec<&str> = look.lines().filter(|line| line.contains("scaleX(-1)")).collect();
    assert_eq!(mirrored.len(), 2, "{mirrored:?}");
    assert!(
        mirrored[0].starts_with("[dir=rtl] .turns{") && mirrored[1].starts_with("[dir=rtl] .strip{"),
        "{mirrored:?}"
    );
    for (name, sheet) in sheets() {
        let page = Page::read(&page(&sheet));
        let faces: Vec<&str> = page
            .elements
            .iter()
            .filter_map(|one| one.get("class"))
            .filter(|class| class.starts_with("face "))
            .collect();
        let parts = sheet.data["parts"].as_array().expect("parts");
        assert_eq!(faces.len(), parts.len() * 2, "{name}");
        for (part, pair) in parts.iter().zip(faces.chunks(2)) {
            let wanted = match part["side"].as_str() {
                Some("left") => ["face left treated", "face right"],
                _ => ["face left", "face right treated"],
            };
            assert_eq!(pair, wanted, "{name}");
        }
        for one in page.elements.iter().filter(|one| one.is("class", "hands") || one.is("class", "plates")) {
            assert!(one.is("dir", "ltr"), "{name}");
        }
        assert!(!page.all("svg").any(|svg| svg.is("class", "plate") && svg.get("transform").is_some()), "{name}");
    }
}

/// Puts marks that a page could trip over before every text.
fn spoil(value: &mut Value) {
    match value {
        Value::String(text) if !text.is_empty() => {
            *text = format!("</title></p><script>a()</script><!-- \"'> & &lt; {text}");
        }
        Value::Array(items) => items.iter_mut().for_each(spoil),
        Value::Object(fields) => {
            let furniture = fields.contains_key("caution");
            for (name, field) in fields.iter_mut() {
                let word = NO_WORDS.contains(&name.as_str()) && !(name == "state" && furniture);
                if !word && !matches!(name.as_str(), "href" | "digits" | "dir" | "language" | "region" | "font") {
                    spoil(field);
                }
            }
        }
        _ => {}
    }
}

#[test]
fn hostile_words_print_as_they_stand() {
    for (name, sheet) in sheets().into_iter().step_by(4) {
        let plain = Page::read(&page(&sheet));
        let mut hostile = sheet.clone();
        spoil(&mut hostile.data);
        let html = page(&hostile);
        assert!(!html.contains("<script"), "{name}");
        let page = Page::read(&html);
        assert_eq!(page.errors, Vec::<String>::new(), "{name}");
        holds_every_fact(&name, &hostile, &page);
        // A number with words in it is no longer dialled; apart from these links nothing has come or gone.
        let count = |page: &Page| page.elements.iter().filter(|one| one.name != "a" && one.name != "desc").count();
        assert_eq!(count(&plain), count(&page), "{name}");
        assert_eq!(page.all("script").count(), 0, "{name}");
    }
}

#[test]
fn a_link_of_the_therapist_is_followed_only_when_touched() {
    let note = "note: |\n  See [our page](https://clinic.example/a?b=1&c=2), or [call](tel:+44 1632 960142).\n";
    let page = Page::read(&page(&sheet(&format!("{CASE}{}", note.replace("+44 1632 960142", "+441632960142")))));
    let out = page.all("a").find(|a| a.is("href", "https://clinic.example/a?b=1&c=2")).expect("the link");
    assert!(out.is("rel", "noreferrer"));
    assert!(page.all("a").any(|a| a.is("href", "tel:+441632960142")));
    assert_eq!(page.errors, Vec::<String>::new());
}

#[test]
fn a_block_without_a_form_fails_the_page() {
    let mut sheet = sheet(CASE);
    sheet.data["parts"][0]["sections"][0]["blocks"][0] = serde_json::json!({"t": "riddle"});
    assert!(made(&sheet).is_err());
}

/// "9:15 AM" among Urdu words: without its own direction the half of the day would stand before the hour.
#[test]
fn an_hour_with_its_latin_half_of_the_day_reads_from_left_to_right() {
    let html = page(&sheet(&CASE.replace("language: en", "language: ur")));
    let mut rest = html.as_str();
    let mut hours = 0;
    // Text between marks; attributes are read aloud and have no order on the page.
    while let Some((_, from)) = rest.split_once('>') {
        let (text, after) = from.split_once('<').unwrap_or((from, ""));
        for (at, _) in ["AM", "PM"].iter().flat_map(|half| text.match_indices(half)) {
            if let Some(hour) = text[..at].strip_suffix([' ', '\u{a0}', '\u{202f}']) {
                hours += 1;
                assert!(!hour.is_empty() && hour.chars().all(|c| c.is_ascii_digit() || c == ':'), "«{text}»");
                assert!(after.starts_with("/bdi>"), "«{text}» is not by itself");
            }
        }
        rest = after;
    }
    assert!(hours >= 6, "{hours} hours: two on each strip of the day");
}
