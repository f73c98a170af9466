//! A sheet in two languages beside each other, and the pseudo language.

use serde_json::Value;

use palmleaf::document::SheetKind;
use palmleaf::language::{PSEUDO, WordState};
use palmleaf::pipeline::Planned;

use crate::support::{CASE, WORKSHOP, examples, hands, run, stderr, stdout, text};

/// A case in a language and standard print.
fn in_language(case: &str, tag: &str) -> String {
    let kept = case.lines().filter(|line| !["language:", "print:"].iter().any(|key| line.starts_with(key)));
    let kept: String = kept.map(|line| format!("{line}\n")).collect();
    format!("{kept}language: {tag}\n")
}

const BESIDE: [SheetKind; 4] = [SheetKind::Guide, SheetKind::Card, SheetKind::Exercises, SheetKind::Letter];
/// Fields whose texts are for the look and not for a reader: they say what a thing is. The letters of spots are those of each
/// column's own picture.
const FIXED: [&str; 8] = ["t", "state", "side", "mark", "verdict", "kind", "level", "picture"];

/// Where two trees say different things: another shape, another number, another kind of thing. Words may differ.
fn apart(one: &Value, other: &Value, at: &str, found: &mut Vec<String>) {
    match (one, other) {
        (Value::Array(one), Value::Array(other)) if one.len() == other.len() => {
            for (number, (one, other)) in one.iter().zip(other).enumerate() {
                apart(one, other, &format!("{at}/{number}"), found);
            }
        }
        // Weeks begin where those of the language begin: the marked days come in one order, in other rows.
        (Value::Object(one), Value::Object(other)) if one.get("t") == Some(&Value::from("calendar")) => {
            let marked = |calendar: &Value| {
                let days = calendar["rows"].as_array().into_iter().flatten().filter_map(|row| row["days"].as_array());
                days.flatten().map(|day| day["flag"].clone()).filter(|flag| !flag.is_null()).collect::<Vec<_>>()
            };
            let (one, other) = (Value::Object(one.clone()), Value::Object(other.clone()));
            assert!(!marked(&one).is_empty(), "{at}: no day is marked");
            if marked(&one) != marked(&other) {
                found.push(format!("{at}: {:?} and {:?}", marked(&one), marked(&other)));
            }
            apart(&one["key"], &other["key"], &format!("{at}/key"), found);
        }
        (Value::Object(one), Value::Object(other)) if one.keys().eq(other.keys()) => {
            for (name, one) in one {
                let at = format!("{at}/{name}");
                match (one, &other[name]) {
                    (Value::String(one), Value::String(other)) if FIXED.contains(&name.as_str()) => {
                        if one != other {
                            found.push(format!("{at}: {one} and {other}"));
                        }
                    }
                    (one, other) => apart(one, other, &at, found),
                }
            }
        }
        (Value::String(_), Value::String(_)) => {}
        (one, other) if one == other => {}
        (one, other) => found.push(format!("{at}: {one} and {other}")),
    }
}

fn parts(kind: SheetKind, hands: &[Planned<'static>]) -> Option<Value> {
    let sheet = WORKSHOP.say(kind, hands).unwrap_or_else(|findings| panic!("{}", text(&findings)));
    sheet.map(|sheet| sheet.data["parts"].clone())
}

/// What is beside each other is one document said twice: the same blocks, rows and items in the same order, the same
/// numbers, minutes, sides and marks.
#[test]
fn both_columns_hold_the_same_facts() {
    for path in examples() {
        let case = std::fs::read_to_string(&path).expect("an example");
        let english = hands(&in_language(&case, "en"));
        for tag in WORKSHOP.languages.tags().into_iter().filter(|tag| *tag != "en").chain([PSEUDO]) {
            let own = hands(&in_language(&case, tag));
            for kind in BESIDE {
                let (Some(one), Some(other)) = (parts(kind, &own), parts(kind, &english)) else { continue };
                let mut found = Vec::new();
                apart(&one, &other, "", &mut found);
                assert!(found.is_empty(), "{} {kind} {tag}:\n{}", path.display(), found.join("\n"));
            }
        }
    }
}

/// The comparison sees what it is for.
#[test]
fn a_fact_that_one_column_lacks_is_seen() {
    let guide = parts(SheetKind::Guide, &hands(CASE)).expect("a guide");
    for (pointer, planted) in [
        ("/0/side", Value::from("left")),
        ("/0/sections/0/blocks", Value::Array(Vec::new())),
        ("/0/sections/0/title", Value::from(7)),
    ] {
        let mut other = guide.clone();
        *other.pointer_mut(pointer).expect("a place in the guide") = planted;
        let mut found = Vec::new();
        apart(&guide, &other, "", &mut found);
        assert!(found.iter().any(|fault| fault.starts_with(pointer)), "{pointer}: {found:?}");
    }
}

#[test]
fn a_sheet_beside_another_language_is_written_and_recorded() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().to_string_lossy().into_owned();
    let output = run(&[
        "build",
        "examples/right-thumb.yaml",
        "--language",
        "ur",
        "--with",
        "en",
        "--sheets",
        "guide,phone",
        "--out",
        &out,
    ]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(stdout(&output).contains("guide-hr-2041-right-ur-en.pdf"), "{}", stdout(&output));
    assert!(stderr(&output).contains("output/beside") && stderr(&output).contains("`phone`"), "{}", stderr(&output));
    let record = std::fs::read(folder.path().join("record-hr-2041-right-ur.json")).expect("the record");
    let record: Value = serde_json::from_slice(&record).expect("JSON");
    assert_eq!(record["beside"]["with"], "en");
    assert_eq!(record["beside"]["translation"], "drafted");
    let pdf = std::fs::read(folder.path().join("guide-hr-2041-right-ur-en.pdf")).expect("the sheet");
    assert_eq!(record["beside"]["sheets"]["guide"]["blake3"], blake3::hash(&pdf).to_hex().to_string());
}

#[test]
fn what_cannot_stand_beside_each_other_is_refused_with_its_place() {
    for (args, said) in [
        (["--with", "es", "--print", "large"], "large print"),
        (["--with", "ar", "--print", "standard"], "the same twice"),
        (["--with", "tlh", "--print", "standard"], "`tlh`"),
    ] {
        let folder = tempfile::tempdir().expect("a folder");
        let out = folder.path().join("out");
        let at = out.to_string_lossy().into_owned();
        let args: Vec<&str> = ["build", "examples/right-thumb.yaml", "--out", &at].into_iter().chain(args).collect();
        let output = run(&args);
        assert_eq!(output.status.code(), Some(1), "{}", stderr(&output));
        assert!(stderr(&output).contains(said), "{}", stderr(&output));
        assert!(stderr(&output).contains("examples/right-thumb.yaml:15:11"), "{}", stderr(&output));
        assert!(!out.exists());
    }
}

// ---- the pseudo language ----------------------------------------------------------------------------

#[test]
fn the_pseudo_language_is_drafted_and_in_no_list() {
    let tag = PSEUDO.parse().expect("a tag");
    let language = WORKSHOP.languages.find(&tag).expect("it is spoken");
    assert!(!WORKSHOP.languages.tags().contains(&PSEUDO));
    assert!(WORKSHOP.words.catalogues().all(|(tag, _)| tag != PSEUDO));
    assert_eq!(WORKSHOP.words.whole(PSEUDO).expect("a state").state(), WordState::Drafted);
    assert!(WORKSHOP.words.speaker(&language).is_ok());
}

/// Marked, in brackets, about four tenths longer; a variable and a branch of a plural are what they were.
#[test]
fn a_pseudo_message_is_english_in_disguise() {
    let say = |tag: &str, count: i64| {
        let language = WORKSHOP.languages.find(&tag.parse().expect("a tag")).expect("a language");
        let speaker = WORKSHOP.words.speaker(&language).expect("it is spoken");
        let message = palmleaf::document::Message::new("length-minutes").with("count", count);
        speaker.say(&message, &[]).expect("a message")
    };
    assert!(say(PSEUDO, 1).starts_with("[1 mî"), "{}", say(PSEUDO, 1));
    assert!(say(PSEUDO, 5).starts_with("[5 m") && say(PSEUDO, 5).ends_with("š]"), "{}", say(PSEUDO, 5));
    assert!(!say(PSEUDO, 1).contains('š'), "{}", say(PSEUDO, 1));
    let letters = |text: &str| text.chars().filter(|c| c.is_alphabetic()).count();
    let guide = |tag: &str| parts(SheetKind::Guide, &hands(&in_language(CASE, tag))).expect("a guide").to_string();
    let longer = letters(&guide(PSEUDO)) as f64 / letters(&guide("en")) as f64;
    assert!((1.2..1.45).contains(&longer), "{longer}");
}
