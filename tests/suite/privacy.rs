//! A name stands on the sheets and nowhere else: not in logs, not in what a panic says. What runs inside reaches nothing
//! beyond what it is given.

use std::process::Command;

use palmleaf::assets::Assets;
use palmleaf::diag::Findings;
use palmleaf::diag::render::{self, Style};
use palmleaf::pipeline::Workshop;
use palmleaf::words::Templates;

use crate::support::{CASE, WORKSHOP, judge, run, stderr, text};

const NAME: &str = "Quillon";

/// What a log keeps of findings.
fn logged(findings: &Findings) -> [String; 2] {
    [render::text(findings, Style::Short), render::json(findings).to_string()]
}

/// Whatever is wrong with a line that holds the name.
#[test]
fn neither_a_line_for_a_log_nor_one_for_a_program_quotes_the_name() {
    let faulty = [
        format!("person: {{name: \"{NAME}\\u202E\"}}\n"),
        format!("person: {{name: [{NAME}]}}\n"),
        format!("person: {{name: {{is: {NAME}}}}}\n"),
        format!("person: {{name: {}}}\n", NAME.repeat(100)),
        format!("person: {{name: {NAME}, name: {NAME}}}\n"),
        format!("person: {{name: \"{NAME}}}\n"),
        format!("person: {{name: {NAME}\n"),
        format!("person: [{NAME}]\n"),
        format!("person: {NAME}\n"),
        format!("person: !name {NAME}\n"),
        format!("person: *{NAME}\n"),
        format!("note: \"<b>{NAME}</b> <{NAME}>\"\n"),
        format!("note: \"![{NAME}]({NAME}.png)\"\n"),
        format!("note: \"`{NAME}` and > {NAME}\"\n"),
        format!("note: \"# {NAME}\"\n"),
        format!("note: \"[x](file:///home/{NAME})\"\n"),
        format!("note: [{NAME}]\n"),
        format!("overrides: [{{because: \"{NAME} asks\"}}]\n"),
        format!("overrides: [{{lasts: 3 weeks, because: \"{NAME}\\u0007\"}}]\n"),
    ];
    for lines in faulty {
        let findings = match judge(&format!("{CASE}{lines}")) {
            Err(findings) => findings,
            Ok(judged) => panic!("{lines} passes: {}", text(&judged.faults())),
        };
        for line in logged(&findings) {
            assert!(!line.contains(NAME), "{lines}{line}");
        }
    }
}

/// A letter that cannot be drawn is found late; it is named, and the word around it is not.
#[test]
fn a_letter_without_a_font_is_named_without_the_name() {
    let hands = crate::support::hands(&format!("{CASE}person: {{name: \"{NAME} \u{10380}\"}}\n"));
    let Err(findings) = WORKSHOP.guide(&hands) else { panic!("it was drawn") };
    for line in logged(&findings) {
        assert!(line.contains("U+10380") && !line.contains(NAME), "{line}");
    }
}

/// Run by the test below in a process of its own.
#[test]
#[ignore = "panics on purpose"]
fn a_fault_of_its_own() {
    palmleaf::cli::fault::say_no_case();
    let text = format!("{NAME} Abernathy");
    let end = text.find("é").unwrap_or(text.len() + 1);
    // What an index out of a text says quotes the text.
    assert!(!text[..end].is_empty());
}

#[test]
fn a_panic_says_where_and_not_what() {
    let own = std::env::current_exe().expect("this test");
    let done = Command::new(own)
        .args(["--ignored", "--exact", "privacy::a_fault_of_its_own", "--nocapture"])
        .output()
        .expect("it starts");
    assert!(!done.status.success());
    let error = stderr(&done);
    assert!(error.contains("tests/suite/privacy.rs:"), "{error}");
    assert!(error.contains("nothing of this case was written"), "{error}");
    assert!(!error.contains(NAME) && !error.contains("Abernathy"), "{error}");
}

/// With `--without-name` the sheets are those of a case that names nobody, to the byte.
#[test]
fn without_the_name_the_sheets_are_those_of_a_case_that_names_nobody() {
    let folder = tempfile::tempdir().expect("a folder");
    let case = |name: &str, lines: &str| {
        let file = folder.path().join(name);
        std::fs::write(&file, format!("{CASE}{lines}reminders: {{detail: full}}\n")).expect("a case");
        file.to_string_lossy().into_owned()
    };
    let named = case("named.yaml", &format!("person: {{name: {NAME}, reference: K-7}}\n"));
    let nobody = case("nobody.yaml", "person: {reference: K-7}\n");
    let sheets = ["--sheets", "guide,card,diary,letter,phone,reminders,record"];
    let (one, other) = (folder.path().join("one"), folder.path().join("other"));
    for (case, out, more) in [(&named, &one, Some("--without-name")), (&nobody, &other, None)] {
        let mut args = vec!["build", case, "--out", out.to_str().expect("a path")];
        args.extend(sheets);
        args.extend(more);
        let done = run(&args);
        assert!(done.status.success(), "{}", stderr(&done));
    }
    let mut count = 0;
    for entry in std::fs::read_dir(&one).expect("a folder") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().expect("a name").to_string_lossy().into_owned();
        let bytes = std::fs::read(&path).expect("a file");
        assert!(!String::from_utf8_lossy(&bytes).contains(NAME), "{name}");
        // The record holds a hash of the case itself, which is another.
        if !name.starts_with("record") {
            assert!(bytes == std::fs::read(other.join(&name)).expect("the same file"), "{name} differs");
            count += 1;
        }
    }
    assert!(count >= 4, "{count}");
}

/// A clinic may bring templates of its own. They have the parts of a section and nothing else of the machine.
#[test]
fn a_template_reaches_no_file_no_environment_and_no_clock() {
    let path = "content/sections/care.md";
    let own = Assets::embedded().text(path).expect("a section").text().to_owned();
    for reach in [
        "{% include \"/etc/passwd\" %}",
        "{% include \"../../Cargo.toml\" %}",
        "{% import \"/etc/passwd\" as x %}",
        "{% extends \"/etc/passwd\" %}",
        "{{ get_env(name=\"HOME\") }}",
        "{{ now() }}",
        "{{ get_random(start=0, end=9) }}",
        "{{ load(path=\"/etc/passwd\") }}",
        "{{ read_file(path=\"/etc/passwd\") }}",
        "{{ \"x\" | date }}",
        "{{ __tera_context }}",
        "{{ env.HOME }}",
        "{{ has | safe }}",
        "{% for x in range(end=1000000000) %}a{% endfor %}",
    ] {
        let assets = Assets::embedded().with(path, format!("{own}\n{reach}\n"));
        let refused = match Templates::load(&assets) {
            Err(findings) => findings,
            // What only shows when it runs shows in the check of the content.
            Ok(_) => Workshop::from_assets(assets).map(|workshop| workshop.words.faults()).unwrap_or_else(|why| why),
        };
        assert!(refused.has_errors(), "{reach} is let in");
        assert!(!text(&refused).contains("root:"), "{reach}: {}", text(&refused));
    }
}
