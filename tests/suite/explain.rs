//! Every sentence of a guide leads back to lines of the case and rules of the content.

use std::collections::BTreeSet;

use palmleaf::document::SheetKind;
use palmleaf::pipeline::{Led, SectionOrigins};
use serde_json::Value;

use crate::support::{CASE, WORKSHOP, examples, file, guide, hands, run, stderr, stdout};

fn origins(text: &str) -> Vec<SectionOrigins> {
    WORKSHOP.origins(&hands(text)).unwrap_or_else(|faults| panic!("{}", crate::support::text(&faults)))
}

/// Every example, in a language of each direction.
fn texts() -> Vec<(String, String)> {
    let mut all = Vec::new();
    for path in examples() {
        let text = std::fs::read_to_string(&path).expect("an example");
        let language = text.lines().find(|line| line.starts_with("language: ")).expect("a language").to_owned();
        for tag in ["en", "ar"] {
            let name = format!("{} in {tag}", path.display());
            all.push((name, text.replace(&language, &format!("language: {tag}"))));
        }
    }
    all
}

/// The fields of the tree that hold words; dates, numbers and hours of the axis are figures, and have no message.
const WORDS: [&str; 20] = [
    "s", "say", "title", "label", "value", "more", "dates", "do", "word", "why", "name", "start", "where", "w",
    "later", "place", "all", "unit", "times", "intro",
];

fn words(value: &Value, here: bool, found: &mut Vec<String>) {
    match value {
        Value::String(text) if here => found.push(text.clone()),
        Value::Array(items) => items.iter().for_each(|item| words(item, here, found)),
        Value::Object(fields) => {
            // A clinic's or therapist's own words have no message.
            if fields.get("t").is_some_and(|kind| kind == "note" || kind == "own") {
                return;
            }
            let lists = ["signs", "items"];
            for (name, field) in fields {
                words(field, WORDS.contains(&name.as_str()) || lists.contains(&name.as_str()), found);
            }
        }
        _ => {}
    }
}

#[test]
fn every_sentence_of_every_example_has_an_origin() {
    for (name, text) in texts() {
        let plans = hands(&text);
        let sheet = WORKSHOP.say(SheetKind::Guide, &plans).expect("it can be said").expect("a guide");
        let all = WORKSHOP.origins(&plans).unwrap_or_else(|faults| panic!("{}", crate::support::text(&faults)));
        let known: BTreeSet<&str> =
            all.iter().flat_map(|section| &section.sentences).map(|sentence| sentence.text.as_str()).collect();
        let mut printed = Vec::new();
        for part in sheet.data["parts"].as_array().expect("parts") {
            words(&part["sections"], false, &mut printed);
        }
        assert!(printed.len() > 60, "{name}");
        for words in printed {
            // A paragraph of a template may have bold in it, a letter of a list is no sentence.
            let told = known.contains(words.as_str()) || known.iter().any(|text| text.contains(words.trim()));
            assert!(told, "{name}: nothing says where this comes from: {words}");
        }
        for (section, sentence) in all.iter().flat_map(|own| own.sentences.iter().map(move |one| (own, one))) {
            assert!(!sentence.origins.is_empty(), "{name}, {}: {}", section.section, sentence.text);
        }
    }
}

/// What the document says was said for a reason: only the words of a sheet itself may have none.
#[test]
fn every_message_of_a_guide_carries_its_cause() {
    for (name, text) in texts() {
        let document = guide(&hands(&text));
        for part in std::iter::once(document.main).chain(document.others) {
            assert!(!part.title.causes.is_empty() && !part.line.causes.is_empty(), "{name}");
            for section in part.sections {
                for (place, mut component) in section.components {
                    component.each_message(&mut |message| {
                        assert!(!message.causes.is_empty(), "{name}, {} {place}: {}", section.id, message.key);
                    });
                }
            }
        }
    }
}

/// A rule that is named is there: the whole way to it leads somewhere.
#[test]
fn every_place_is_a_line_of_a_file() {
    for (name, text) in texts() {
        for sentence in origins(&text).iter().flat_map(|section| &section.sentences) {
            for origin in &sentence.origins {
                let mut parts = origin.place.rsplitn(3, ':');
                let (column, line) = (parts.next().expect("a column"), parts.next().expect("a line"));
                let path = parts.next().expect("a file");
                let (line, column): (usize, usize) = (line.parse().expect("a line"), column.parse().expect("a column"));
                let whole = if path.starts_with("content/") { file(path) } else { text.clone() };
                let there = whole.lines().nth(line - 1).unwrap_or_else(|| panic!("{name}: {}", origin.place));
                assert!(column >= 1 && column <= there.chars().count() + 1, "{name}: {}", origin.place);
                let end = origin.what.rsplit(" > ").next().expect("an end");
                // A way that leads nowhere stays at the top of its file.
                assert!(
                    origin.kind != Led::Rule || !origin.what.is_empty() || path == "content/signs.yaml" || line == 1,
                    "{name}: {}",
                    origin.place
                );
                if matches!(origin.kind, Led::Rule | Led::Case) && !origin.what.is_empty() {
                    assert!(there.contains(end), "{name}: {} is no line about {}: {there}", origin.place, origin.what);
                }
            }
        }
    }
}

#[test]
fn a_sentence_names_the_line_the_rule_and_its_source() {
    let text = format!("{CASE}activities: [open-jar]\nfactors: [new-mother]\n");
    let all = origins(&text);
    let find = |message: &str| {
        let mut every = all.iter().flat_map(|section| &section.sentences);
        every.find(|one| one.message.as_deref() == Some(message)).unwrap_or_else(|| panic!("{message} is not said"))
    };
    let hand = &find("hand-alt").origins;
    assert!(hand.iter().any(|one| one.kind == Led::Case && one.place == "case.yaml:2:1"), "{hand:?}");
    let wear = &find("wear-off-to-exercise").origins;
    assert!(wear.iter().any(|one| one.place == "case.yaml:3:1" && one.what == "condition"), "{wear:?}");
    let rule = wear.iter().find(|one| one.what.ends_with("> wear")).expect("the rule of wear");
    assert!(rule.place.starts_with("content/conditions/de-quervain.yaml:"), "{rule:?}");
    assert_eq!(rule.source.as_deref(), Some("common practice"));
    let job = &find("activity-open-jar-name").origins;
    assert!(job.iter().any(|one| one.place.starts_with("case.yaml:8:")), "{job:?}");
    let sign = all.iter().find(|section| section.section == "call").expect("whom to call");
    assert!(sign.sentences.iter().any(|one| one.origins.iter().any(|one| one.place.starts_with("content/signs.yaml"))));
}

#[test]
fn what_the_therapist_set_leads_to_the_override() {
    let text = format!("{CASE}overrides:\n  - {{phase: irritable, wear: never-remove, because: a wound under it}}\n");
    let all = origins(&text);
    let led = all.iter().flat_map(|section| &section.sentences).flat_map(|one| &one.origins);
    let places: BTreeSet<&str> = led.map(|one| one.place.as_str()).collect();
    assert!(places.contains("case.yaml:9:5"), "{places:?}");
}

#[test]
fn the_command_prints_them_and_gives_them_as_data() {
    let output = run(&["explain", "examples/both-hands.yaml", "--sentences", "--language", "en"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let said = stdout(&output);
    for part in
        ["Guide, right hand, glance", "Guide, left hand, glance", "examples/both-hands.yaml:", "rule   content/"]
    {
        assert!(said.contains(part), "{part} is missing:\n{said}");
    }
    let output = run(&["explain", "examples/both-hands.yaml", "--sentences", "--format", "json"]);
    let data: Value = serde_json::from_str(&stdout(&output)).expect("JSON");
    let first = &data[0]["sentences"][0];
    assert!(first["section"].is_string() && first["sentences"][0]["origins"][0]["place"].is_string(), "{first}");
    // The other hand's own lines stand below `other_hand`.
    assert!(stdout(&output).contains("other_hand > condition"));
    let without = run(&["explain", "examples/both-hands.yaml", "--format", "json"]);
    let data: Value = serde_json::from_str(&stdout(&without)).expect("JSON");
    assert!(data[0].get("sentences").is_none());
}
