//! Files in `dist/` that are made from the program are current. `PALMLEAF_REWRITE=1` writes them anew; look before you
//! commit.

use std::path::Path;

use clap_complete::Shell;
use palmleaf::body::{Finger, Side};
use palmleaf::case::Paper;
use palmleaf::cli::{case_schema, clinic_schema, completion_script, manual, mapping_schema, shelf_schema};
use palmleaf::content::PrintSize;
use palmleaf::document::{FactsAsk, FactsFor, SheetKind};
use palmleaf::pipeline::Form;

use crate::support::{WORKSHOP, examples, file, files, path, planned, text};

pub fn current(inside: &str, bytes: &[u8]) {
    let target = path(inside);
    if std::env::var_os("PALMLEAF_REWRITE").is_some() && std::env::var_os("CI").is_none() {
        std::fs::create_dir_all(target.parent().unwrap_or(Path::new("."))).expect("a folder");
        std::fs::write(&target, bytes).expect("a file");
    }
    let held = std::fs::read(&target).unwrap_or_default();
    assert!(held == bytes, "{inside} is not current: run PALMLEAF_REWRITE=1 tests/run --rust and look at it");
}

#[test]
fn schema_completions_and_manual_are_current() {
    let schema = serde_json::to_string_pretty(&case_schema()).expect("JSON") + "\n";
    current("dist/schema/case.schema.json", schema.as_bytes());
    let schema = serde_json::to_string_pretty(&clinic_schema()).expect("JSON") + "\n";
    current("dist/schema/clinic.schema.json", schema.as_bytes());
    let schema = serde_json::to_string_pretty(&shelf_schema()).expect("JSON") + "\n";
    current("dist/schema/shelf.schema.json", schema.as_bytes());
    let schema = serde_json::to_string_pretty(&mapping_schema()).expect("JSON") + "\n";
    current("dist/schema/mapping.schema.json", schema.as_bytes());
    for (shell, name) in [
        (Shell::Bash, "palmleaf.bash"),
        (Shell::Zsh, "_palmleaf"),
        (Shell::Fish, "palmleaf.fish"),
        (Shell::PowerShell, "palmleaf.ps1"),
    ] {
        current(&format!("dist/completions/{name}"), completion_script(shell).as_bytes());
    }
    current("dist/man/palmleaf.1", manual().as_bytes());
}

/// The samples are what the program makes of the examples today.
#[test]
fn samples_are_current() {
    for (example, language, print) in [
        ("right-thumb", "ar", "standard"),
        ("right-thumb", "en", "standard"),
        ("left-thumb-ligament", "es", "standard"),
        ("thumb-base", "en", "large"),
    ] {
        let case = file(&format!("examples/{example}.yaml"));
        let kept: String = case
            .lines()
            .filter(|line| !line.starts_with("language:") && !line.starts_with("print:"))
            .map(|line| format!("{line}\n"))
            .collect();
        let (admitted, plan) = planned(&format!("{kept}language: {language}\nprint: {print}\n"));
        let made = WORKSHOP.guide(&[(admitted, plan)]).unwrap_or_else(|findings| panic!("{}", text(&findings)));
        current(&format!("dist/samples/{example}-{language}.pdf"), &made.pdf);
        if print == "standard" {
            current(&format!("dist/samples/{example}-{language}-page-1.png"), &made.pages.png(0, 1.0).expect("a page"));
        }
    }
    let hand = [planned(&file("examples/right-thumb.yaml").replace("language: ar", "language: en"))];
    for kind in [SheetKind::Card, SheetKind::Diary] {
        let printed = WORKSHOP.print(kind, &hand).unwrap_or_else(|findings| panic!("{}", text(&findings)));
        let Some(Form::Pages(pages)) = printed.map(|printed| printed.form) else { panic!("{kind} has no pages") };
        current(&format!("dist/samples/right-thumb-{kind}-page-1.png"), &pages.png(0, 1.0).expect("a page"));
    }
    let id = "carpal-tunnel".parse().expect("an id");
    let ask = FactsAsk {
        library: &WORKSHOP.library,
        id: &id,
        condition: &WORKSHOP.library.conditions[&id],
        reader: FactsFor::Patients,
        language: WORKSHOP.languages.find(&"en".parse().expect("a tag")).expect("a language"),
        side: Side::Left,
        finger: Finger::Index,
        paper: Paper::A4,
        print: PrintSize::Standard,
    };
    let facts = WORKSHOP.facts(ask).unwrap_or_else(|findings| panic!("{}", text(&findings)));
    current("dist/samples/carpal-tunnel-facts-page-1.png", &facts.png(0, 1.0).expect("a page"));
    assert!(files("dist/samples", "").len() <= 16, "a sample that nobody makes");
}

#[test]
fn every_example_obeys_the_schema() {
    let schema = case_schema();
    let validator = jsonschema::validator_for(&schema).expect("a valid schema");
    for path in examples() {
        let text = std::fs::read_to_string(&path).expect("an example");
        let value: serde_json::Value = serde_yaml::from_str(&text).expect("YAML");
        let faults: Vec<String> =
            validator.iter_errors(&value).map(|fault| format!("{} at {}", fault, fault.instance_path())).collect();
        assert!(faults.is_empty(), "{}: {faults:?}", path.display());
    }
    // And the schema refuses what the program refuses.
    let wrong: serde_json::Value = serde_yaml::from_str("palmleaf: 1\nhand: both\nfitted: 30\n").expect("YAML");
    assert!(!validator.is_valid(&wrong));
}

#[test]
fn every_field_of_a_case_is_documented() {
    fn undocumented(value: &serde_json::Value, at: &str, found: &mut Vec<String>) {
        if let Some(properties) = value.get("properties").and_then(|value| value.as_object()) {
            for (name, property) in properties {
                let here = format!("{at}/{name}");
                let text = property.to_string();
                if !text.contains("description") && !text.contains("$ref") && !text.contains("type\":\"boolean") {
                    found.push(here.clone());
                }
                undocumented(property, &here, found);
            }
        }
        for (_, inner) in value.get("$defs").and_then(|value| value.as_object()).into_iter().flatten() {
            undocumented(inner, at, found);
        }
    }
    let mut found = Vec::new();
    undocumented(&case_schema(), "", &mut found);
    assert!(found.is_empty(), "{found:?}");
}
