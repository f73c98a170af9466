//! Drafted, confirmed, outdated: what a clinician has confirmed, and what changed since.

use std::path::Path;
use std::process::Output;

use crate::support::{path, run, stderr, stdout};

fn status(folder: &Path) -> Vec<serde_json::Value> {
    let output = run(&["content", "status", "--content", folder.to_str().expect("a path"), "--format", "json"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    serde_json::from_str(&stdout(&output)).expect("JSON")
}

fn state(folder: &Path, item: &str) -> String {
    let rows = status(folder);
    let row = rows.iter().find(|row| row["item"] == item).unwrap_or_else(|| panic!("no {item}"));
    row["state"].as_str().expect("a state").to_owned()
}

fn confirm(folder: &Path, items: &[&str]) -> Output {
    let folder = folder.to_str().expect("a path");
    let mut args = vec!["content", "confirm"];
    args.extend(items);
    args.extend(["--by", "hand therapist, \"KP\"", "--on", "2027-02-01", "--content", folder]);
    run(&args)
}

#[test]
fn what_ships_is_confirmed_by_nobody() {
    let folder = tempfile::tempdir().expect("a folder");
    let rows = status(folder.path());
    assert!(rows.len() > 200, "{} items", rows.len());
    assert!(rows.iter().all(|row| row["state"] == "drafted"));
}

#[test]
fn a_confirmation_lasts_until_the_file_or_its_words_change() {
    let folder = tempfile::tempdir().expect("a folder");
    let output = confirm(folder.path(), &["orthoses/wrist-only", "activities/open-jar"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert_eq!(state(folder.path(), "orthoses/wrist-only"), "confirmed");
    assert_eq!(state(folder.path(), "orthoses/short-cmc"), "drafted");
    // A second confirmation keeps the first.
    assert_eq!(confirm(folder.path(), &["short-cmc"]).status.code(), Some(0));
    assert_eq!(state(folder.path(), "orthoses/wrist-only"), "confirmed");
    assert_eq!(state(folder.path(), "orthoses/short-cmc"), "confirmed");
    // The clinic changes a number of the file.
    let own = std::fs::read_to_string(path("content/orthoses/wrist-only.yaml")).expect("the file");
    std::fs::create_dir_all(folder.path().join("orthoses")).expect("a folder");
    std::fs::write(folder.path().join("orthoses/wrist-only.yaml"), own.replace("bulk: 2", "bulk: 3")).expect("written");
    assert_eq!(state(folder.path(), "orthoses/wrist-only"), "outdated");
    // The clinic changes a word.
    let words = std::fs::read_to_string(path("locales/en/activities.ftl")).expect("the words");
    std::fs::create_dir_all(folder.path().join("locales/en")).expect("a folder");
    let changed = words.replace("activity-open-jar-name = Open a jar", "activity-open-jar-name = Open a tight jar");
    assert_ne!(words, changed);
    std::fs::write(folder.path().join("locales/en/activities.ftl"), changed).expect("written");
    assert_eq!(state(folder.path(), "activities/open-jar"), "outdated");
}

#[test]
fn nothing_unknown_and_nobody_nameless_confirms() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path().to_str().expect("a path");
    let output = confirm(folder.path(), &["orthoses/wrist-onyl"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("wrist-only"), "{}", stderr(&output));
    let output = run(&["content", "confirm", "wrist-only", "--by", " ", "--on", "2027-13-01", "--content", at]);
    assert_eq!(output.status.code(), Some(1));
    assert!(!folder.path().join("confirmed.yaml").exists(), "nothing is written");
}

#[test]
fn a_clinic_can_refuse_what_is_not_confirmed() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("out");
    let (own, out) = (folder.path().to_str().expect("a path"), out.to_str().expect("a path"));
    let case = path("examples/right-thumb.yaml");
    let case = case.to_str().expect("a path");
    let build = || run(&["build", case, "--require", "confirmed", "--content", own, "--out", out]);
    let refused = build();
    assert_eq!(refused.status.code(), Some(1));
    let text = stderr(&refused);
    assert!(text.contains("content/not-confirmed") && text.contains("orthoses/") && text.contains("drafted"), "{text}");
    assert!(!std::path::Path::new(out).exists(), "nothing is written");
    // Everything that the refusal names is confirmed; then the guide is made, and its record has nothing open.
    let all: Vec<String> =
        status(folder.path()).iter().map(|row| row["item"].as_str().expect("an item").to_owned()).collect();
    let all: Vec<&str> = all.iter().map(String::as_str).collect();
    assert_eq!(confirm(folder.path(), &all).status.code(), Some(0));
    let made = build();
    assert_eq!(made.status.code(), Some(0), "{}", stderr(&made));
    let record = std::fs::read_dir(out)
        .expect("the folder")
        .filter_map(Result::ok)
        .find(|entry| entry.file_name().to_string_lossy().starts_with("record-"))
        .expect("a record");
    let record: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(record.path()).expect("the record")).expect("JSON");
    assert_eq!(record["hands"][0]["not-confirmed"], serde_json::json!({}));
    assert!(!record["hands"][0]["from-memory"].as_array().expect("a list").is_empty());
}
