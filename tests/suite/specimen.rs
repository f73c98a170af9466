//! The specimen shows every component there is.

use std::collections::BTreeSet;

use crate::support::{file, run, stderr, stdout};

/// Components of the look that no page of the specimen can show by a built-in case: prose and lists are its own words, and
/// a pair is two lists of steps without pictures, and a clinic's own words are prose too.
const SHOWN_OTHERWISE: [&str; 2] = ["own", "pair"];

#[test]
fn every_component_of_the_look_has_its_place_its_name_and_its_use() {
    let blocks = file("src/typeset/look/blocks.typ");
    let table =
        blocks.split("#let kinds = (").nth(1).expect("the table of kinds").split("\n)").next().expect("its end");
    let kinds: BTreeSet<&str> = table
        .split([',', '\n'])
        .filter_map(|part| part.split_once(": "))
        .filter(|(_, drawn)| !drawn.starts_with("true"))
        .map(|(kind, _)| kind.trim())
        .filter(|kind| kind.bytes().all(|b| b.is_ascii_lowercase()) && !SHOWN_OTHERWISE.contains(kind))
        .collect();
    assert!(kinds.len() > 14, "{kinds:?}");
    let words = file("locales/en/staff/specimen.ftl");
    let page = file("src/cli/specimen.rs");
    for kind in kinds {
        assert!(words.contains(&format!("\nspecimen-{kind}-name = ")), "{kind} has no name");
        assert!(words.contains(&format!("\nspecimen-{kind}-use = ")), "{kind} has no use");
        assert!(page.contains(&format!("\"{kind}\"")), "{kind} is not shown");
    }
}

/// A message that nothing says, or one that is missing, fails here: the page says each of them.
#[test]
fn the_page_says_every_word_that_is_written_for_it() {
    let page = file("src/cli/specimen.rs");
    for line in file("locales/en/staff/specimen.ftl").lines().filter(|line| line.starts_with("specimen-")) {
        let id = line.split(' ').next().expect("an id").trim_start_matches("specimen-");
        let named = [id, id.trim_end_matches("-use").trim_end_matches("-name")]
            .iter()
            .any(|name| page.contains(&format!("\"{name}\"")));
        assert!(named || id == "title" || id.starts_with("print-"), "nothing says {line}");
    }
}

#[test]
fn it_sets_in_a_language_of_each_direction() {
    let folder = tempfile::tempdir().expect("a folder");
    for language in ["es", "ar"] {
        let out = folder.path().join(format!("{language}.pdf"));
        let output = run(&["specimen", "--language", language, "-o", &out.to_string_lossy()]);
        assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
        assert!(stdout(&output).contains(language));
        assert!(std::fs::metadata(&out).expect("a file").len() > 50_000);
    }
    let output = run(&["specimen", "--language", "xx"]);
    assert_eq!(output.status.code(), Some(1), "{}", stderr(&output));
}
