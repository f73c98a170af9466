//! Rules of the house: what a module must not know cannot be seen in the code, so it is tested.

use std::collections::{BTreeMap, BTreeSet};

use crate::support::{WORKSHOP, file, files, path};

/// The stages and what each may see. A stage sees only what flows into it.
const MAY_SEE: &[(&str, &[&str])] = &[
    ("units", &["source"]),
    ("ids", &["source", "units"]),
    ("source", &["diag", "ids", "units"]),
    ("diag", &["source"]),
    ("assets", &["diag", "source"]),
    ("body", &["ids", "source", "units"]),
    ("markdown", &[]),
    ("language", &["assets", "diag", "source", "units"]),
    ("content", &["assets", "body", "diag", "ids", "source", "units"]),
    ("case", &["body", "content", "diag", "ids", "language", "markdown", "source", "units"]),
    // A clinic's own file comes beside the case: it may lend it lines, and sees no plan and no page.
    ("clinic", &["case", "content", "diag", "ids", "language", "markdown", "source", "units"]),
    // A list of cases becomes the text of each case; what it means is for the case to say.
    ("batch", &["case", "diag", "ids", "source", "units"]),
    ("booklet", &["body", "case", "content", "diag", "document", "ids", "language", "source", "units"]),
    ("checks", &["body", "case", "content", "diag", "ids", "source", "units"]),
    ("classify", &["body", "content", "source", "units"]),
    ("choose", &["body", "checks", "classify", "content", "ids", "units"]),
    ("picture", &["body", "content", "ids", "source", "units"]),
    ("study", &["body", "checks", "choose", "classify", "content", "document", "ids", "picture", "source", "units"]),
    ("plan", &["body", "case", "checks", "content", "diag", "ids", "source", "units"]),
    (
        "document",
        &[
            "body", "case", "checks", "choose", "clinic", "content", "ids", "language", "markdown", "picture", "plan",
            "source", "units",
        ],
    ),
    (
        "words",
        &[
            "assets", "body", "case", "clinic", "content", "diag", "document", "ids", "language", "markdown",
            "picture", "plan", "source", "units",
        ],
    ),
    ("exchange", &["assets", "diag", "language", "source", "words"]),
    ("reminders", &["document", "units", "words"]),
    ("typeset", &["assets", "diag", "picture", "words"]),
    ("webpage", &["diag", "picture", "words"]),
    // PDF files that are made already.
    ("printer", &[]),
    ("readability", &["assets", "diag", "source", "units", "words"]),
    ("standing", &["assets", "case", "content", "diag", "ids", "plan", "source", "units", "words"]),
    // What a clinic keeps: it sees plans only to tell two of them apart, and pages only to quote for HTML.
    (
        "shelf",
        &[
            "body", "case", "checks", "choose", "clinic", "content", "diag", "document", "ids", "language", "plan",
            "source", "units", "webpage", "words",
        ],
    ),
    (
        "output",
        &[
            "body", "case", "checks", "classify", "content", "diag", "document", "ids", "language", "plan", "standing",
            "units", "words",
        ],
    ),
    (
        "pipeline",
        &[
            "assets",
            "case",
            "checks",
            "clinic",
            "content",
            "diag",
            "document",
            "language",
            "output",
            "picture",
            "plan",
            "readability",
            "reminders",
            "source",
            "standing",
            "typeset",
            "webpage",
            "words",
        ],
    ),
    (
        "lint",
        &[
            "body",
            "case",
            "checks",
            "content",
            "diag",
            "document",
            "ids",
            "picture",
            "pipeline",
            "plan",
            "readability",
            "words",
        ],
    ),
    (
        "cli",
        &[
            "assets",
            "batch",
            "body",
            "booklet",
            "case",
            "checks",
            "choose",
            "classify",
            "clinic",
            "content",
            "diag",
            "document",
            "exchange",
            "ids",
            "language",
            "lint",
            "output",
            "picture",
            "pipeline",
            "plan",
            "printer",
            "readability",
            "reminders",
            "shelf",
            "source",
            "standing",
            "typeset",
            "study",
            "units",
            "webpage",
            "words",
        ],
    ),
];

/// Types that a later stage may name from an earlier one although it must not see the stage's values.
/// `words` names the verdict of an activity, the print size and the urgency of a sign: words on a page, no reasoning.
const WORDS_MAY_NAME: &[&str] = &["ActivityVerdict", "PrintSize", "Paper", "TriageLevel"];

fn stage(file: &std::path::Path) -> String {
    let inside = file.strip_prefix(path("src")).expect("below src");
    let first = inside.components().next().expect("a name").as_os_str().to_string_lossy().into_owned();
    first.trim_end_matches(".rs").to_owned()
}

/// The modules that a text names with `crate::`, also inside braces, macros and full paths.
fn seen(text: &str) -> BTreeSet<(usize, String)> {
    let mut found = BTreeSet::new();
    for (number, line) in text.lines().enumerate() {
        let code = line.split("//").next().unwrap_or_default();
        for (at, _) in code.match_indices("crate::") {
            if code[..at].ends_with("pub(") || code[..at].ends_with('$') {
                continue;
            }
            let rest = &code[at + "crate::".len()..];
            let names: Vec<String> = match rest.strip_prefix('{') {
                Some(list) => list
                    .split('}')
                    .next()
                    .unwrap_or_default()
                    .split(',')
                    .map(|name| name.trim().chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect())
                    .collect(),
                None => vec![rest.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect()],
            };
            found.extend(names.into_iter().filter(|name: &String| !name.is_empty()).map(|name| (number + 1, name)));
        }
    }
    found
}

#[test]
fn a_stage_sees_only_what_flows_into_it() {
    // First the check proves itself on a planted offence.
    assert!(seen("use crate::{plan, units::Date};").contains(&(1, "plan".to_owned())));
    let table: BTreeMap<&str, &[&str]> = MAY_SEE.iter().copied().collect();
    for file in files("src", ".rs") {
        let here = stage(&file);
        if ["lib", "main", "build"].contains(&here.as_str()) {
            continue;
        }
        let text = std::fs::read_to_string(&file).expect("a source file");
        let allowed = table.get(here.as_str()).unwrap_or_else(|| panic!("{here} is not in the table"));
        for (line, name) in seen(&text) {
            assert!(
                name == here || allowed.contains(&name.as_str()),
                "{}:{line}: `{here}` must not see `{name}`",
                file.display()
            );
        }
    }
}

#[test]
fn words_name_a_few_words_of_the_plan_and_none_of_its_values() {
    for file in files("src/words", ".rs") {
        let text = std::fs::read_to_string(&file).expect("a source file");
        for line in text.lines().filter(|line| {
            line.starts_with("use crate::plan")
                || line.starts_with("use crate::case")
                || line.starts_with("use crate::content")
        }) {
            let names = line.rsplit("::").next().unwrap_or_default().trim_end_matches(';').trim_matches(['{', '}']);
            for name in names.split(',').map(str::trim) {
                assert!(WORDS_MAY_NAME.contains(&name), "{}: {line}", file.display());
            }
        }
    }
}

#[test]
fn neither_checks_nor_plan_see_a_language() {
    for folder in ["src/checks", "src/plan"] {
        for file in files(folder, ".rs") {
            let text = std::fs::read_to_string(&file).expect("a source file");
            assert!(!text.contains("crate::language") && !text.contains("crate::words"), "{}", file.display());
        }
    }
}

/// Nothing about a particular condition, orthosis, activity or exercise is in Rust.
#[test]
fn no_id_of_the_content_stands_in_the_code() {
    let library = &WORKSHOP.library;
    let ids: Vec<String> = library
        .conditions
        .keys()
        .map(ToString::to_string)
        .chain(library.orthoses.keys().map(ToString::to_string))
        .chain(library.activities.keys().map(ToString::to_string))
        .chain(library.exercises.keys().map(ToString::to_string))
        .chain(library.factors.keys().map(ToString::to_string).filter(|id| id.contains('-')))
        .chain(
            library
                .patterns
                .keys()
                .map(ToString::to_string)
                .filter(|id| !["at-once", "by-day", "child"].contains(&id.as_str())),
        )
        .collect();
    assert!(ids.len() > 40);
    for file in files("src", ".rs") {
        let text = std::fs::read_to_string(&file).expect("a source file");
        for id in &ids {
            let quoted = format!("\"{id}\"");
            let ticked = format!("`{id}`");
            assert!(!text.contains(&quoted) && !text.contains(&ticked), "{} names {id}", file.display());
        }
    }
}

#[test]
fn a_file_has_one_subject_and_says_which() {
    for file in files("src", ".rs") {
        let text = std::fs::read_to_string(&file).expect("a source file");
        assert!(text.starts_with("//!"), "{} does not say what it is", file.display());
        assert!(text.lines().count() <= 420, "{} has {} lines", file.display(), text.lines().count());
    }
    for file in files("src/typeset/look", ".typ") {
        let text = std::fs::read_to_string(&file).expect("a look file");
        assert!(text.starts_with("//"), "{} does not say what it is", file.display());
        assert!(text.lines().count() <= 300, "{}", file.display());
    }
}

#[test]
fn nothing_panics_on_what_a_person_typed() {
    for file in files("src", ".rs") {
        let text = std::fs::read_to_string(&file).expect("a source file");
        for (number, line) in text.lines().enumerate() {
            let code = line.split("//").next().unwrap_or_default();
            for word in [".unwrap()", ".expect(", "panic!(", "todo!(", "unimplemented!("] {
                assert!(!code.contains(word), "{}:{}: {word}", file.display(), number + 1);
            }
        }
    }
}

/// Only the store and the shelf of pictures write, only the terminal prints, no page depends on a clock.
#[test]
fn the_outside_is_touched_in_one_place_each() {
    let rules: &[(&str, &[&str])] = &[
        ("std::fs::write", &[]),
        ("File::create", &[]),
        // How long a kept picture has lain unused, and nothing else.
        ("SystemTime", &["src/picture/album/shelf.rs"]),
        ("Zoned::now", &[]),
        // Which reviews are due, on the terminal, and nothing else.
        ("Timestamp::now", &["src/cli/shelf/mod.rs"]),
        // How long a check took, or a file has lain still, and nothing else.
        ("Instant::now", &["src/cli/content.rs", "src/cli/watch/mod.rs"]),
        // The day that a fitting is taken to be on until somebody answers.
        ("ZonedDateTime::now", &["src/cli/new/mod.rs"]),
        ("println!", &[]),
        ("eprintln!", &[]),
        ("env::var", &["src/cli/terminal.rs"]),
        ("tempfile_in", &["src/output/store.rs", "src/picture/album/shelf.rs"]),
        (
            "fs::read",
            &[
                "src/assets/mod.rs",
                "src/batch/list.rs",
                "src/case/read.rs",
                "src/exchange/file.rs",
                "src/output/kept.rs",
                "src/output/room.rs",
                "src/picture/album/shelf.rs",
            ],
        ),
        ("File::open", &["src/output/kept.rs", "src/output/store.rs", "src/source/disk.rs"]),
        ("TcpStream", &[]),
        ("std::process::Command", &[]),
    ];
    for file in files("src", ".rs") {
        let text = std::fs::read_to_string(&file).expect("a source file");
        let name = file.strip_prefix(path("")).expect("below the root").to_string_lossy().replace('\\', "/");
        // It runs before there is a program, and is no part of it.
        if name == "src/build.rs" {
            continue;
        }
        for (word, places) in rules {
            assert!(!text.contains(word) || places.contains(&name.as_str()), "{name} must not use {word}");
        }
    }
}

/// The list of messages that the code names one by one is the list it names.
#[test]
fn the_list_of_messages_is_what_the_code_says() {
    let mut said = BTreeSet::new();
    let mut drawn = BTreeSet::new();
    for folder in ["src/document", "src/words", "src/output/record", "src/shelf", "src/cli/draw", "src/cli/teach"] {
        // What is made without a case has words of their own, beside ids and codes.
        let said = if folder.starts_with("src/cli") { &mut drawn } else { &mut said };
        for file in files(folder, ".rs") {
            let text = std::fs::read_to_string(&file).expect("a source file");
            for part in text.split('"').skip(1).step_by(2) {
                let is_key = part.contains('-')
                    && part.split('-').all(|word| !word.is_empty() && word.bytes().all(|b| b.is_ascii_lowercase()));
                if is_key {
                    said.insert(part.to_owned());
                }
            }
        }
    }
    // Pieces of keys, names of sections and fields of the tree: not messages.
    let not_messages = [
        "on-off",
        "take-off",
        "keep-on",
        "kebab-case",
        "telephone-label",
        "accent-by-night",
        "close-strap",
        "undo-strap",
        "signed-off",
        "and-so-on",
        "night-and-tasks",
        "thumb-tip",
        "facts-course",
        "facts-help",
        "facts-types",
        "students-course",
        "students-evidence",
        "students-exercises",
        "students-fit",
        "students-joints",
        "students-varies",
        "students-what",
    ];
    let listed: BTreeSet<String> =
        palmleaf::lint::SHEET.iter().chain(palmleaf::lint::SHELF).map(|id| (*id).to_owned()).collect();
    let families = |id: &String| {
        // Regimes, kinds and states are listed as families.
        palmleaf::content::Regime::ALL
            .iter()
            .any(|regime| *id == format!("wear-{regime}") || *id == format!("calendar-{regime}"))
            || palmleaf::shelf::facts::FactKind::ALL.iter().any(|kind| id == kind.word())
            || id.starts_with("warning-")
            || id.starts_with("steps-")
    };
    let missing: Vec<&String> = said
        .iter()
        .filter(|id| !listed.contains(*id) && !not_messages.contains(&id.as_str()) && !families(id))
        .collect();
    assert!(missing.is_empty(), "the code says, the list does not: {missing:?}");
    let known = |id: &String| said.contains(id) || drawn.contains(id) || id.starts_with("warning-");
    let rotten: Vec<&String> = listed.iter().filter(|id| !known(id)).collect();
    assert!(rotten.is_empty(), "the list says, the code does not: {rotten:?}");
}

/// The top level of the repository is fixed.
#[test]
fn the_top_level_holds_what_it_should() {
    let allowed = [
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "src",
        "content",
        "locales",
        "tests",
        "examples",
        "dist",
        "target",
    ];
    for entry in std::fs::read_dir(path("")).expect("the root") {
        let name = entry.expect("an entry").file_name().to_string_lossy().into_owned();
        assert!(name.starts_with('.') || allowed.contains(&name.as_str()), "{name} does not belong at the top level");
    }
}

#[test]
fn every_code_of_a_fault_is_raised_somewhere() {
    let mut all = String::new();
    for entry in files("src", ".rs") {
        if !entry.ends_with("diag/code.rs") {
            all.push_str(&std::fs::read_to_string(&entry).expect("a source file"));
        }
    }
    let names = file("src/diag/code.rs");
    for line in names.lines().filter(|line| line.trim_end().ends_with("\";")) {
        let name = line.trim().split(' ').next().expect("a name");
        assert!(all.contains(&format!("Code::{name}")), "{name} is never raised");
    }
    assert!(palmleaf::diag::Code::ALL.len() > 25);
}
