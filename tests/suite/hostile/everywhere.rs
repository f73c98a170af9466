//! Five hundred hostile strings in every text field of a case and of a clinic's file: printed as they stand, or refused.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use palmleaf::clinic::Clinic;
use palmleaf::document::SheetKind;
use palmleaf::pipeline::Form;
use rayon::prelude::*;
use serde_json::{Value, json};

use super::{fields, strings};
use crate::generated::current;
use crate::support::{WORKSHOP, judge, path, read, run, source, text};
use crate::webpage::reader::{Element, Page, squeezed};

/// Two good cases that have every free text field between them. A field that is new has to come in here.
static CASES: LazyLock<[Value; 2]> = LazyLock::new(|| {
    let clinic = json!({"name": "C", "address": "A", "telephone": "1", "hours": "H", "emergency": "9"});
    [
        json!({
            "palmleaf": 1, "hand": "right", "condition": "de-quervain", "orthosis": "forearm-thumb-spica",
            "fitted": "2027-03-01", "review": "2027-03-29", "language": "en",
            "person": {"name": "N", "reference": "R"}, "clinic": clinic, "note": "T",
            "reminders": {"detail": "full"}, "letter": {"to": "carer", "detail": "full"},
            "overrides": [{"phase": "irritable", "lasts": "3 weeks", "because": "B"}],
            "other_hand": {
                "condition": "de-quervain", "orthosis": "forearm-thumb-spica",
                "overrides": [{"phase": "irritable", "lasts": "3 weeks", "because": "B"}],
            },
        }),
        json!({
            "palmleaf": 1, "hand": "right", "finger": "index", "condition": "flexor-zone-two-repair",
            "orthosis": "dorsal-block-long", "fitted": "2027-03-01", "review": "2027-03-29", "language": "en",
            "protocol": {
                "name": "P", "lengths": [{"phase": "heal", "lasts": "5 weeks"}, {"phase": "guard", "lasts": "2 weeks"}],
                "angles": [{"joint": "wrist", "at": "flexion 20 deg"}, {"joint": "fingers-mcp", "at": "flexion 50 deg"}],
            },
        }),
    ]
});

/// Free text that stands in the record alone, and in a part of a case that the two above have once already.
const ALIKE: &[&str] =
    &["other_conditions/0/protocol/name", "other_hand/protocol/name", "other_hand/other_conditions/0/protocol/name"];

fn yaml(case: &Value) -> String {
    // JSON is YAML.
    case.to_string()
}

#[test]
fn there_are_five_hundred_and_others_have_the_same() {
    let all = strings::all();
    assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), strings::COUNT);
    let kept = serde_json::to_string_pretty(&all).expect("JSON") + "\n";
    current("tests/outside/hostile.json", kept.as_bytes());
}

#[test]
fn the_good_cases_have_every_free_text_field() {
    for case in &*CASES {
        let judged = judge(&yaml(case)).unwrap_or_else(|findings| panic!("{}", text(&findings)));
        assert!(judged.faults().is_empty(), "{}", text(&judged.faults()));
    }
    let found = fields::of(&palmleaf::cli::case_schema());
    assert!(found.len() > 60, "{}", found.len());
    for field in found.iter().filter(|field| field.is_free) {
        let covered = CASES.iter().any(|case| fields::at(case, &field.way).is_some());
        let name = field.way.join("/");
        assert!(covered || ALIKE.contains(&name.as_str()), "{name}: put it into the good cases");
    }
}

/// Nothing but words come of any string in any place: a case that is read, or findings.
#[test]
fn no_string_in_any_place_of_a_case_is_more_than_text() {
    let strings = strings::all();
    let found = fields::of(&palmleaf::cli::case_schema());
    found.par_iter().for_each(|field| {
        let base = CASES.iter().find(|case| fields::at(case, &field.way).is_some()).unwrap_or(&CASES[0]);
        for string in &strings {
            let case = yaml(&fields::with(base, &field.way, string));
            match read(&case) {
                Err(findings) => assert!(!findings.is_empty()),
                // A free text changes no decision, so only the others have to be judged.
                Ok(file) if !field.is_free => drop(WORKSHOP.judge(file, source(&case))),
                Ok(_) => {}
            }
        }
    });
}

/// Every string that is taken stands on the page for a telephone, in the calendar and in the record as it was typed.
#[test]
fn what_is_taken_is_printed_as_it_stands() {
    let plain = page(&dressed("Ana Lima"));
    let taken = strings::all().par_iter().filter(|string| printed(string, &plain)).count();
    assert!(taken > 150 && taken < 400, "{taken} are taken: the rule for text, or the strings, have lost their point");
}

fn page(case: &Value) -> Page {
    let hands = crate::support::hands(&yaml(case));
    let Some(printed) = WORKSHOP.print(SheetKind::Phone, &hands).unwrap_or_else(|why| panic!("{}", text(&why))) else {
        panic!("no page")
    };
    let Form::Page(html) = printed.form else { panic!("no page") };
    Page::read(&html)
}

/// The first case with a text in the places that a page, a calendar or the record shows.
fn dressed(string: &str) -> Value {
    let mut case = CASES[0].clone();
    for place in ["name", "address", "hours"] {
        case["clinic"][place] = json!(string);
    }
    case["person"]["name"] = json!(string);
    case["overrides"][0]["because"] = json!(string);
    case
}

fn printed(string: &str, plain: &Page) -> bool {
    let case = dressed(string);
    if read(&yaml(&case)).is_err() {
        return false;
    }
    let page = page(&case);
    assert!(page.errors.is_empty(), "{string:?}: {:?}", page.errors);
    let names = |page: &Page| page.elements.iter().map(|one| one.name.clone()).collect::<Vec<_>>();
    // A script or a tag more would be an element more.
    assert_eq!(names(&page), names(plain), "{string:?}");
    for (one, other) in page.elements.iter().zip(&plain.elements) {
        let keys = |element: &Element| element.attributes.iter().map(|(key, _)| key.clone()).collect::<Vec<_>>();
        assert_eq!(keys(one), keys(other), "{string:?}: {}", one.name);
    }
    assert!(page.said().contains(&squeezed(string)), "{string:?} is not on the page");
    let hands = crate::support::hands(&yaml(&case));
    let calendar = WORKSHOP.reminders(&hands).unwrap_or_else(|why| panic!("{}", text(&why))).text;
    let lines = |start: &str| calendar.lines().filter(|line| line.starts_with(start)).count();
    assert_eq!((lines("BEGIN:"), lines("BEGIN:VEVENT")), (lines("END:"), lines("UID:")), "{string:?}");
    assert!(unescaped(&calendar).contains(string.trim()), "{string:?} is not in the calendar");
    let state = palmleaf::language::WordState::Original;
    let record = WORKSHOP.record(&hands, Default::default(), state).unwrap_or_else(|why| panic!("{}", text(&why)));
    let record = serde_json::to_value(&record).expect("JSON");
    assert_eq!(record["person"], string.trim());
    true
}

/// The text of a calendar with lines joined and marks taken off (RFC 5545, 3.1 and 3.3.11).
fn unescaped(calendar: &str) -> String {
    let joined = calendar.replace("\r\n ", "");
    let mut letters = joined.chars();
    let mut text = String::new();
    while let Some(letter) = letters.next() {
        text.extend(match letter {
            '\\' => letters.next().map(|marked| if matches!(marked, 'n' | 'N') { '\n' } else { marked }),
            other => Some(other),
        });
    }
    text
}

/// A file of a clinic is read whatever stands in it, and nothing outside its folder is.
#[test]
fn no_string_in_any_place_of_a_clinics_file_is_more_than_text() {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("secret.svg"), "no picture").expect("a file");
    let inside = folder.path().join("clinic");
    std::fs::create_dir(&inside).expect("a folder");
    let base = json!({
        "name": "C", "address": "A", "telephone": "1", "hours": {"en": "H"}, "emergency": "9", "accent": "#1f5f7a",
    });
    let found = fields::of(&palmleaf::cli::clinic_schema());
    assert!(found.len() >= 10, "{}", found.len());
    let mut strings = strings::all();
    strings.push("../secret.svg".to_owned());
    found.par_iter().enumerate().for_each(|(number, field)| {
        let file = inside.join(format!("clinic-{number}.yaml"));
        for string in &strings {
            std::fs::write(&file, yaml(&fields::with(&base, &field.way, string))).expect("a file");
            let loaded = Clinic::load(&file);
            if !field.is_free {
                let accepted = loaded.is_ok();
                assert!(!accepted, "{}: {string:?} is taken", field.way.join("/"));
            }
        }
    });
}

/// The real program: nothing outside the output folder, whatever a reference or a file name holds.
#[test]
fn no_string_leads_out_of_the_output_folder() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut files = Vec::new();
    for (number, string) in strings::all().iter().enumerate() {
        let mut case = CASES[0].clone();
        case["person"]["reference"] = json!(string);
        // One that is read gets as far as its name; the condition stops it before it is drawn.
        case["orthosis"] = json!("wrist-only");
        let file = folder.path().join(format!("{number}.yaml"));
        std::fs::write(&file, yaml(&case)).expect("a case");
        files.push(file.to_string_lossy().into_owned());
        if let Ok(file) = read(&yaml(&fields::with(&CASES[0], &["person".into(), "reference".into()], string))) {
            let case = palmleaf::case::resolve(file, source(string), &WORKSHOP.library, &WORKSHOP.languages);
            let case = case.unwrap_or_else(|why| panic!("{}", text(&why)));
            let stem = palmleaf::output::naming::stem(&case, palmleaf::output::naming::NameBy::Reference, string);
            let plain = |c: char| c.is_ascii_alphanumeric() || c == '-';
            assert!(stem.chars().all(plain) && stem.len() < 100 && !stem.starts_with('-'), "{string:?}: {stem}");
        }
    }
    let out = folder.path().join("out");
    let mut args = vec!["check"];
    args.extend(files.iter().map(String::as_str));
    let done = run(&args);
    assert_eq!(done.status.code(), Some(1), "{}", crate::support::stderr(&done));
    let error = crate::support::stderr(&done);
    assert!(!error.contains("panicked") && !error.contains("fault of palmleaf"), "{error}");
    assert!(!error.contains(['\u{1b}', '\u{202e}', '\u{7}']), "a control reaches the terminal");
    assert!(!out.exists());
    assert!(!path("x").exists());
}
