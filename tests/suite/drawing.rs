//! `palmleaf draw` on the command line: files by their ending, faults by their name and place.

use std::fs;
use std::path::Path;

use crate::support::{WORKSHOP, run, stderr, stdout};

fn draw(folder: &Path, arguments: &[&str], out: &str) -> std::process::Output {
    let out = folder.join(out);
    let mut all = vec!["--format", "short", "draw", "--no-cache", "--out", out.to_str().expect("text")];
    all.extend(arguments);
    run(&all)
}

fn posture(folder: &Path, text: &str) -> String {
    let file = folder.join("posture.yaml");
    fs::write(&file, text).expect("written");
    file.to_str().expect("text").to_owned()
}

#[test]
fn the_ending_says_what_is_written() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = posture(folder.path(), "joints: { wrist: [extension 30 deg] }\n");
    for (name, start) in [("a.svg", &b"<svg "[..]), ("a.pdf", b"%PDF-1.7"), ("a.PNG", b"\x89PNG")] {
        let output = draw(folder.path(), &["--posture", &file, "--view", "radial", "--width", "40"], name);
        assert!(output.status.success(), "{}", stderr(&output));
        assert!(fs::read(folder.path().join(name)).expect("a file").starts_with(start), "{name}");
        assert!(stdout(&output).trim_end().ends_with(name));
    }
    for name in ["a.gif", "a", "svg"] {
        let output = draw(folder.path(), &["--posture", &file], name);
        assert_eq!(output.status.code(), Some(1));
        let said = stderr(&output);
        assert!(said.contains("draw/file-type") && said.contains(".svg"), "{said}");
        assert!(said.contains(".pdf") && said.contains(".png"), "{said}");
    }
}

#[test]
fn several_pictures_are_numbered_and_a_sheet_holds_them_all() {
    let folder = tempfile::tempdir().expect("a folder");
    let library = &WORKSHOP.library;
    let (id, motion) = library.motions.iter().max_by_key(|(_, motion)| motion.then.len()).expect("an exercise");
    let count = motion.then.len().max(1);
    let output = draw(folder.path(), &["--exercise", id.as_str(), "--width", "30"], "move.svg");
    assert!(output.status.success(), "{}", stderr(&output));
    assert_eq!(stdout(&output).lines().count(), count);
    let output = draw(folder.path(), &["--exercise", id.as_str(), "--width", "30"], "move.pdf");
    assert!(output.status.success() && stdout(&output).lines().count() == 1, "{}", stderr(&output));
}

#[test]
fn a_posture_is_refused_where_it_is_wrong() {
    let folder = tempfile::tempdir().expect("a folder");
    for (text, code, place, said) in [
        ("joints:\n  wrist: [extension 130 deg]\n", "draw/impossible", ":2:11", "it reaches extension 70 deg"),
        ("joints:\n  thumb-ip: [ulnar-deviation 9 deg]\n", "draw/impossible", ":2:14", "does not move in"),
        ("joints:\n  wrist: [flexion 3 deg, extension 4 deg]\n", "draw/impossible", ":2:", "said twice"),
        ("joints:\n  indx-mcp: [flexion 3 deg]\n", "field/wrong-value", ":2:3", "is no joint"),
        ("joints:\n  wrist: [bent 3 deg]\n", "field/wrong-value", ":2:11", ""),
        ("views: dorsal\n", "field/unknown", ":1:1", "views"),
    ] {
        let file = posture(folder.path(), text);
        let output = draw(folder.path(), &["--posture", &file], "a.svg");
        let told = stderr(&output);
        assert_eq!(output.status.code(), Some(1), "{text}{told}");
        assert!(told.contains(code) && told.contains(place) && told.contains(said), "{text}{told}");
        assert!(!folder.path().join("a.svg").exists());
    }
}

#[test]
fn what_is_not_known_is_said_with_what_is() {
    let folder = tempfile::tempdir().expect("a folder");
    let id = WORKSHOP.library.shapes.keys().next().expect("a look").to_string();
    for (arguments, code, said) in [
        (vec!["--orthosis", "wrist-neutrl"], 1, "id/unknown"),
        (vec!["--exercise", "nothing"], 1, "id/unknown"),
        (vec!["--orthosis", &id, "--language", "xx"], 1, "id/unknown"),
        (vec!["--orthosis", &id, "--view", "front"], 2, "dorsal"),
        (vec!["--orthosis", &id, "--side", "both"], 2, "left"),
        (vec!["--orthosis", &id, "--spots", &id], 2, "cannot be used with"),
        (vec!["--posture", "nowhere.yaml"], 3, "file/unreadable"),
    ] {
        let output = draw(folder.path(), &arguments, "a.svg");
        assert_eq!(output.status.code(), Some(code), "{arguments:?} {}", stderr(&output));
        assert!(stderr(&output).contains(said), "{arguments:?} {}", stderr(&output));
    }
}

#[test]
fn the_words_are_in_the_language_that_is_asked_for() {
    let folder = tempfile::tempdir().expect("a folder");
    let id = WORKSHOP.library.shapes.keys().next().expect("a look").to_string();
    let about = |language: &str, side: &str| {
        let arguments = ["--orthosis", &id, "--side", side, "--width", "30", "--language", language];
        let output = draw(folder.path(), &arguments, "a.svg");
        assert!(output.status.success(), "{}", stderr(&output));
        let text = fs::read_to_string(folder.path().join("a.svg")).expect("a file");
        text.split("<desc>").nth(1).and_then(|text| text.split("</desc>").next()).expect("a description").to_owned()
    };
    assert!(about("en", "right").starts_with("Right hand") && about("en", "left").starts_with("Left hand"));
    let (right, left) = (about("es", "right"), about("es", "left"));
    assert!(right.contains("derecha") && left.contains("izquierda"), "{right} {left}");
}
