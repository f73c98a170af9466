//! The real binary: exit codes, streams and files are the contract.

use crate::support::{command, run, stderr, stdout};

#[test]
fn check_says_good_and_ends_well() {
    let output = run(&["check", "examples/right-thumb.yaml"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(stdout(&output).contains("good") && stdout(&output).contains("irritable"), "{}", stdout(&output));
    assert!(stderr(&output).is_empty());
}

#[test]
fn a_refused_case_prints_the_table_and_writes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("out");
    let output = run(&["build", "tests/cases/does-not-fit.yaml", "--out", &out.to_string_lossy()]);
    assert_eq!(output.status.code(), Some(1));
    let error = stderr(&output);
    for part in [
        "checks/does-not-fit",
        "thumb-cmc",
        "must be held still",
        "offered free",
        "nothing was written",
        "forearm-thumb-spica",
        "tests/cases/does-not-fit.yaml:4:11",
    ] {
        assert!(error.contains(part), "{part} is missing:\n{error}");
    }
    assert!(!out.exists());
}

#[test]
fn build_writes_a_guide_and_a_record_without_the_name_in_their_names() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().to_string_lossy().into_owned();
    let output = run(&["build", "examples/right-thumb.yaml", "--language", "en,ar", "--out", &out]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let files: Vec<String> = stdout(&output).lines().map(str::to_owned).collect();
    assert_eq!(files.len(), 4, "{files:?}");
    assert!(files.iter().all(|file| !file.to_lowercase().contains("mara") && file.contains("right")));
    let pdf = std::fs::read(&files[0]).expect("the guide");
    assert!(pdf.starts_with(b"%PDF-1.7"));
    let record: serde_json::Value =
        serde_json::from_slice(&std::fs::read(&files[1]).expect("the record")).expect("JSON");
    assert_eq!(record["translation"], "original");
    assert_eq!(record["hands"][0]["plan"]["phases"][0]["first"], "2027-03-01");
    assert!(record["caution"].as_str().is_some_and(|text| text.contains("Not medical advice")));
    let arabic: serde_json::Value =
        serde_json::from_slice(&std::fs::read(&files[3]).expect("the record")).expect("JSON");
    assert_eq!(arabic["translation"], "drafted");
}

#[test]
fn good_cases_are_built_beside_refused_ones() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().to_string_lossy().into_owned();
    let output =
        run(&["build", "tests/cases/does-not-fit.yaml", "examples/thumb-base.yaml", "--out", &out, "--format", "json"]);
    assert_eq!(output.status.code(), Some(1));
    let report: serde_json::Value = serde_json::from_str(&stdout(&output)).expect("JSON");
    assert_eq!(report[0]["findings"][0]["code"], "checks/does-not-fit");
    assert_eq!(report[1]["files"].as_array().map(Vec::len), Some(2));
}

#[test]
fn two_cases_of_one_name_do_not_overwrite_each_other() {
    let folder = tempfile::tempdir().expect("a folder");
    let other = folder.path().join("other.yaml");
    std::fs::copy(crate::support::path("examples/right-thumb.yaml"), &other).expect("a copy");
    let out = folder.path().join("out").to_string_lossy().into_owned();
    let output = run(&["build", "examples/right-thumb.yaml", &other.to_string_lossy(), "--out", &out]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("output/same-name") && stderr(&output).contains("other.yaml"));
    assert_eq!(stdout(&output).lines().count(), 2, "the first is built");
    let named = run(&["build", "examples/right-thumb.yaml", &other.to_string_lossy(), "--name-by-case", "--out", &out]);
    assert_eq!(named.status.code(), Some(0), "{}", stderr(&named));
}

#[test]
fn a_wrong_command_line_ends_with_two() {
    assert_eq!(run(&["build"]).status.code(), Some(2));
    assert_eq!(run(&["biuld", "x.yaml"]).status.code(), Some(2));
    assert_eq!(run(&["build", "x.yaml", "--print", "tiny"]).status.code(), Some(2));
    assert_eq!(run(&["--help"]).status.code(), Some(0));
}

#[test]
fn a_missing_file_ends_with_three() {
    let output = run(&["check", "no-such-case.yaml"]);
    assert_eq!(output.status.code(), Some(3));
    assert!(stderr(&output).contains("file/unreadable"));
}

#[test]
fn lists_are_for_people_and_for_programs() {
    for kind in ["conditions", "orthoses", "activities", "exercises", "factors", "languages"] {
        let people = run(&["list", kind]);
        assert_eq!(people.status.code(), Some(0), "{kind}: {}", stderr(&people));
        let programs = run(&["list", kind, "--format", "json"]);
        let rows: serde_json::Value = serde_json::from_str(&stdout(&programs)).expect("JSON");
        let rows = rows.as_array().expect("a list");
        assert_eq!(rows.len(), stdout(&people).lines().count(), "{kind}");
        assert!(rows.iter().all(|row| row["id"].is_string() && row["name"].is_string()));
    }
}

#[test]
fn explain_gives_the_whole_reasoning() {
    let output = run(&["explain", "examples/thumb-base.yaml"]);
    let text = stdout(&output);
    for part in [
        "phase trial",
        "thumb-mcp",
        "common practice",
        "tires quickly after a long illness",
        "From memory, to be confirmed",
        "Rules",
    ] {
        assert!(text.contains(part), "{part} is missing");
    }
    let json: serde_json::Value =
        serde_json::from_str(&stdout(&run(&["explain", "examples/thumb-base.yaml", "--format", "json"])))
            .expect("JSON");
    assert!(
        json[0]["hands"][0]["plan"]["rules"]
            .as_array()
            .is_some_and(|rules| rules.iter().all(|rule| rule["source"].is_string()))
    );
}

#[test]
fn no_color_is_respected_and_short_lines_quote_nothing() {
    let output = command(&["check", "tests/cases/unknown-ids.yaml"]).env("NO_COLOR", "1").output().expect("it starts");
    assert!(!stderr(&output).contains('\u{1b}'));
    let short = stderr(&run(&["check", "tests/cases/note-with-markup.yaml", "--format", "short"]));
    for line in short.lines() {
        assert!(line.starts_with("tests/cases/note-with-markup.yaml:"), "{line}");
    }
    assert!(!short.contains('\u{202E}'), "a bidi control reaches the terminal");
}

#[test]
fn content_check_counts_and_ends_well() {
    let output = run(&["content", "check"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(stdout(&output).contains("combinations walked"));
}
