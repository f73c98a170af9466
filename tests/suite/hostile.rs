//! Files nobody should write: each gets a clear error or prints literally, quickly, without panic, with nothing
//! half-written.

mod everywhere;
mod fields;
pub mod strings;

use std::path::Path;
use std::time::{Duration, Instant};

use crate::support::{CASE, WORKSHOP, codes, command, guide, planned, read, source, stderr, text};

/// Runs `build` on bytes and returns exit code, standard error and what lies in the output folder.
fn build(bytes: &[u8]) -> (i32, String, Vec<String>) {
    let folder = tempfile::tempdir().expect("a folder");
    let case = folder.path().join("case.yaml");
    std::fs::write(&case, bytes).expect("a case file");
    let out = folder.path().join("out");
    let started = Instant::now();
    let output =
        command(&["build", &case.to_string_lossy(), "--out", &out.to_string_lossy()]).output().expect("it starts");
    assert!(started.elapsed() < Duration::from_secs(2), "took {:?}", started.elapsed());
    let error = stderr(&output);
    assert!(!error.contains("panicked"), "{error}");
    (output.status.code().expect("no signal"), error, names(&out))
}

fn names(folder: &Path) -> Vec<String> {
    let Ok(entries) = std::fs::read_dir(folder) else { return Vec::new() };
    let mut names: Vec<String> =
        entries.map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

#[test]
fn files_that_are_no_case_are_refused_in_words() {
    let deep = format!("palmleaf: {}1{}\n", "[".repeat(10_000), "]".repeat(10_000));
    let mut bomb = "a: &a [x, x, x, x, x, x, x, x, x, x]\n".to_owned();
    for (one, other) in ["ab", "bc", "cd", "de", "ef", "fg", "gh"].iter().map(|pair| pair.split_at(1)) {
        bomb.push_str(&format!("{other}: &{other} [{}]\n", vec![format!("*{one}"); 10].join(", ")));
    }
    let utf16: Vec<u8> = [0xFF, 0xFE].into_iter().chain(CASE.encode_utf16().flat_map(u16::to_le_bytes)).collect();
    let two = format!("{CASE}---\n{CASE}");
    let huge = vec![b'#'; 60 * 1024 * 1024];
    let binary: Vec<u8> = (0..=255u8).cycle().take(4096).collect();
    let files: [(&str, Vec<u8>, &str); 10] = [
        ("empty", Vec::new(), "yaml/empty"),
        ("only spaces", b"  \n\n".to_vec(), "yaml/empty"),
        ("binary", binary, "file/not-utf-8"),
        ("controls", b"palmleaf: 1\x00\x07\n".to_vec(), "yaml/not-text"),
        ("UTF-16", utf16, "file/not-utf-8"),
        ("60 MB", huge, "yaml/too-large"),
        ("deeply nested", deep.into_bytes(), "yaml/"),
        ("alias bomb", bomb.into_bytes(), "yaml/"),
        ("two documents", two.into_bytes(), "yaml/two-documents"),
        ("no YAML", b"palmleaf: [1\nhand: right".to_vec(), "yaml/broken"),
    ];
    for (what, bytes, code) in files {
        let (exit, error, written) = build(&bytes);
        assert_eq!(exit, 1, "{what}: {error}");
        assert!(error.contains(code), "{what}: {error}");
        assert!(written.is_empty(), "{what} left {written:?}");
    }
}

#[test]
fn hours_and_days_that_do_not_exist_are_refused() {
    for (from, to) in [
        ("fitted: 2027-03-01", "fitted: 2027-02-30"),
        ("fitted: 2027-03-01", "fitted: .inf"),
        ("review: 2027-03-29", "review: 29 March"),
        ("hand: right", "hand: both"),
    ] {
        assert_eq!(codes(&CASE.replace(from, to)), ["field/wrong-value"], "{to}");
    }
    for up in [".inf", "-1", "25", "25:00", "'8'", "null"] {
        let case = format!("{CASE}day: {{up: {up}, bed: \"22:00\"}}\n");
        let found = codes(&case);
        assert!(!found.is_empty(), "{up} passes");
    }
    let both = read(&CASE.replace("hand: right", "hand: both")).expect_err("two hands are two guides");
    assert!(text(&both).contains("one hand"), "{}", text(&both));
}

/// Template, markup and format syntax prints as it stands.
#[test]
fn a_name_is_printed_and_never_read_as_markup() {
    let names = [
        "#set page(width: 1cm)",
        "{{ 7 * 7 }}",
        "{% for x in range(9) %}a{% endfor %}",
        "<script>alert(1)</script>",
        "*bold* _it_",
        "{ $side }",
        "$x^2$",
        "@label <x>",
        "\\u{41} \\n",
        "`code` [link](http://x.example)",
        "// comment",
        "/* c */",
        "%s %n {0}",
        "=HYPERLINK(1)",
        "../../etc/passwd",
        "'; DROP TABLE",
        "~ = - + / \\",
        "&amp; &#65;",
        "Zoë Ångström-Müller",
        "#eval(\"1\")",
    ];
    for name in names {
        let quoted = serde_json::to_string(name).expect("a string");
        let case = format!(
            "{CASE}person: {{name: {quoted}}}\nclinic: {{name: {quoted}, telephone: {quoted}, hours: {quoted}, emergency: {quoted}}}\n"
        );
        let (admitted, plan) = planned(&case);
        let sheet = palmleaf::words::localise(&WORKSHOP.words, &guide(&[(admitted, plan)])).expect("a sheet");
        assert_eq!(sheet.data["furniture"]["person"], name);
        assert!(
            sheet.data["parts"][0]["for"].as_str().is_some_and(|line| line.contains(name)),
            "{}",
            sheet.data["parts"][0]["for"]
        );
        let pages =
            WORKSHOP.typesetter.set(&sheet, &WORKSHOP.album).unwrap_or_else(|fault| panic!("{name}: {fault:?}"));
        assert!(pages.count() >= 3);
    }
}

#[test]
fn text_that_hides_or_turns_is_refused() {
    let long = "a".repeat(10_000);
    let flood = format!("a{}", "\u{301}".repeat(40));
    for name in [
        "right \u{202E}tfel",
        "zero\u{200B}width",
        "isolate \u{2066}x",
        "tag \u{E0041}",
        "\u{FEFF}mark",
        "private \u{E000}",
        &long,
        &flood,
        "",
    ] {
        let quoted = serde_json::to_string(name).expect("a string");
        let found = codes(&format!("{CASE}person: {{name: {quoted}}}\n"));
        assert_eq!(found, ["field/wrong-value"], "{quoted}");
    }
}

#[test]
fn a_note_is_bold_lists_and_links_and_nothing_else() {
    let good = format!("{CASE}note: |\n  Keep **it dry**. See [this](https://example.org).\n\n  - one\n  - two\n");
    planned(&good);
    for note in [
        "<b>x</b>",
        "# x",
        "![x](https://x.example/y.png)",
        "`x`",
        "> x",
        "***",
        "_x_",
        "[x](javascript:alert(1))",
        "[x](file:///etc/passwd)",
        "```\nx\n```",
    ] {
        let quoted = serde_json::to_string(note).expect("a string");
        let found = codes(&format!("{CASE}note: {quoted}\n"));
        assert!(!found.is_empty() && found.iter().all(|code| *code == "field/wrong-value"), "{note}: {found:?}");
    }
}

#[test]
fn a_character_no_font_can_draw_is_named() {
    let (admitted, plan) = planned(&format!("{CASE}person: {{name: \"Li 李\"}}\n"));
    let Err(findings) = WORKSHOP.guide(&[(admitted, plan)]) else { panic!("it was drawn") };
    assert_eq!(findings.codes(), ["typeset/no-glyph"]);
    assert!(text(&findings).contains("U+674E"), "{}", text(&findings));
}

#[test]
fn an_output_folder_that_cannot_be_written_is_named_and_nothing_is_left() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("file");
    std::fs::write(&file, "x").expect("a file");
    let inside = file.join("out");
    let output = command(&["build", "examples/right-thumb.yaml", "--out", &inside.to_string_lossy()])
        .output()
        .expect("it starts");
    assert_eq!(output.status.code(), Some(3), "{}", stderr(&output));
    assert!(stderr(&output).contains("output/unwritable"));
}

/// A full disk: `/dev/full` is no folder, so a small file system stands for it where the system lets us make one.
#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_leaves_no_torn_file() {
    let folder = tempfile::tempdir().expect("a folder");
    let mount = folder.path().join("small");
    std::fs::create_dir(&mount).expect("a folder");
    let mounted = std::process::Command::new("mount")
        .args(["-t", "tmpfs", "-o", "size=64k", "tmpfs", &mount.to_string_lossy()])
        .output()
        .is_ok_and(|done| done.status.success());
    if !mounted {
        // Without the right to mount, a limit on the size of files has the same effect on a write.
        let script = format!(
            "ulimit -f 8; exec '{}' build examples/right-thumb.yaml --out '{}'",
            env!("CARGO_BIN_EXE_palmleaf"),
            mount.display()
        );
        let output = std::process::Command::new("bash")
            .args(["-c", &format!("trap '' XFSZ; {script}")])
            .current_dir(crate::support::path(""))
            .output()
            .expect("it starts");
        assert_ne!(output.status.code(), Some(0));
        assert!(names(&mount).is_empty(), "{:?}", names(&mount));
        return;
    }
    let output = command(&["build", "examples/right-thumb.yaml", "--out", &mount.to_string_lossy()])
        .output()
        .expect("it starts");
    let left = names(&mount);
    let unmounted = std::process::Command::new("umount").arg(&mount).status().is_ok_and(|status| status.success());
    assert!(unmounted);
    assert_eq!(output.status.code(), Some(3), "{}", stderr(&output));
    assert!(stderr(&output).contains("output/unwritable"), "{}", stderr(&output));
    assert!(left.is_empty(), "left behind: {left:?}");
}

#[test]
fn a_reader_never_panics_on_broken_text() {
    // Cuts and swaps of a good case, by a fixed walk.
    let base = format!("{CASE}day: {{up: \"07:00\", bed: \"22:30\"}}\nactivities: [open-jar]\nnote: |\n  **x**\n");
    let bytes: Vec<char> = base.chars().collect();
    let mut step = 7usize;
    for round in 0..1500 {
        step = (step * 31 + 17) % 10_007;
        let mut text: Vec<char> = bytes.clone();
        let at = step % text.len();
        match round % 4 {
            0 => text.truncate(at),
            1 => {
                text[at] =
                    ['{', '}', '[', ']', ':', '-', '\t', '"', '\'', '&', '*', '!', '|', '>', '%', '\u{2028}'][step % 16]
            }
            2 => text.insert(at, ['\u{0}', '\u{7f}', '\u{feff}', 'é', '手', '\n'][step % 6]),
            _ => text.swap(at, (at * 3 + 1) % bytes.len()),
        }
        let text: String = text.into_iter().collect();
        let outcome = read(&text).and_then(|file| WORKSHOP.judge(file, source(&text)).map(|_| ()));
        if let Err(findings) = outcome {
            let shown = palmleaf::diag::render::text(&findings, palmleaf::diag::render::Style::Full { colour: false });
            assert!(!shown.is_empty());
        }
    }
}
