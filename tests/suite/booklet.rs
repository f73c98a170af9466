//! Sheets bound into one file.

use palmleaf::booklet;
use palmleaf::document::SheetKind;
use palmleaf::source::SourceText;
use palmleaf::typeset::Leaf;
use palmleaf::words::{self, About};
use serde_json::Value;

use crate::support::{CASE, WORKSHOP, hands, run, stderr, stdout, text};

fn leaf(kind: SheetKind, case: &str) -> Leaf {
    WORKSHOP.leaf(kind, &hands(case)).unwrap_or_else(|faults| panic!("{}", text(&faults))).expect("such a sheet")
}

fn cover(language: &str) -> Value {
    let language = WORKSHOP.languages.find(&language.parse().expect("a tag")).expect("a language");
    let about = About {
        sheet: "booklet",
        half: false,
        title: "Sheets of a class",
        author: None,
        description: "Sheets of a class",
        paper: palmleaf::case::Paper::A4,
        print: palmleaf::content::PrintSize::Standard,
        date: Some("2027-03-01".parse().expect("a date")),
    };
    let mut cover = words::bare(&WORKSHOP.words, &language, &about, "booklet-caution").expect("a cover");
    cover["contents"] = "What is inside".into();
    cover
}

/// A sheet turns its pages in a booklet where it does by itself: it is as wide and as high, only moved from the spine.
#[test]
fn every_sheet_has_as_many_pages_as_by_itself() {
    for language in ["en", "ar"] {
        let case = CASE.replace("language: en", &format!("language: {language}"));
        let kinds = [SheetKind::Guide, SheetKind::Card, SheetKind::Diary, SheetKind::Exercises, SheetKind::Letter];
        let alone: usize = kinds
            .iter()
            .map(|&kind| {
                let sheet = palmleaf::document::sheet(kind, &hands(&case)[0], &[]).expect("such a sheet");
                let sheet = words::localise(&WORKSHOP.words, &sheet).expect("words");
                WORKSHOP.typesetter.set(&sheet, &WORKSHOP.album).expect("pages").count()
            })
            .sum();
        let leaves: Vec<Leaf> = kinds.iter().map(|&kind| leaf(kind, &case)).collect();
        let bound = WORKSHOP.typesetter.bind(cover(language), leaves.clone()).expect("a booklet");
        assert_eq!(bound.count(), alone + 1, "{language}: a page of contents before them");
        let again = WORKSHOP.typesetter.bind(cover(language), leaves).expect("a booklet");
        assert_eq!(bound.pdf().expect("a file"), again.pdf().expect("a file"), "the same bytes each time");
    }
}

fn faults(text: &str) -> Vec<&'static str> {
    booklet::read_text(&SourceText::new("booklet.yaml", text)).expect_err("faults").codes()
}

#[test]
fn all_faults_of_a_list_are_told_at_once() {
    let found = faults(
        "title: Sheets\nlanguage: en\ncolour: red\nitems:\n  - {case: a.yaml, sheets: [gide]}\n  - {case: a.yaml, orthosis: wrist-neutral}\n  - {sheets: [card]}\n",
    );
    assert_eq!(found.len(), 4, "{found:?}");
    assert!(found.contains(&"field/unknown"), "{found:?}");
    assert_eq!(faults("title: Sheets\nlanguage: en\nitems: []\n"), ["field/wrong-value"]);
    assert_eq!(faults("language: en\n").len(), 2, "neither title nor items");
    let many = "  - {case: a.yaml}\n".repeat(booklet::MOST + 1);
    assert_eq!(faults(&format!("title: Sheets\nlanguage: en\nitems:\n{many}")), ["field/wrong-value"]);
}

#[test]
fn all_faults_of_the_items_are_told_at_once_and_nothing_is_written() {
    let folder = tempfile::tempdir().expect("a folder");
    let list = folder.path().join("list.yaml");
    std::fs::write(
        &list,
        "title: Sheets\nlanguage: en\nitems:\n  - {case: none.yaml}\n  - {orthosis: wrist-neutrl}\n  - {case: case.yaml, sheets: [phone]}\n  - {facts: carpal-tunel}\n",
    )
    .expect("a list");
    std::fs::write(folder.path().join("case.yaml"), CASE).expect("a case");
    let out = folder.path().join("out.pdf");
    let output = run(&["teach", "booklet", &list.to_string_lossy(), "-o", &out.to_string_lossy()]);
    assert_eq!(output.status.code(), Some(3), "{}", stderr(&output));
    let told = stderr(&output);
    for part in [
        "none.yaml",
        "wrist-neutrl",
        "wrist-neutral",
        "list.yaml:5:",
        "list.yaml:6:",
        "telephone",
        "list.yaml:7:",
        "carpal-tunnel",
    ] {
        assert!(told.contains(part), "{part} is missing:\n{told}");
    }
    assert!(!out.exists());
}

#[test]
fn a_list_becomes_one_file() {
    let folder = tempfile::tempdir().expect("a folder");
    let list = folder.path().join("list.yaml");
    std::fs::write(folder.path().join("case.yaml"), CASE).expect("a case");
    let items = "title: Sheets\nby: North Quay School\nlanguage: es\nprint: large\nitems:\n  - {case: case.yaml, sheets: [card]}\n  - {orthosis: wrist-neutral, side: left}\n  - {facts: trigger-finger, finger: ring}\n";
    std::fs::write(&list, items).expect("a list");
    let out = folder.path().join("class/out.pdf");
    let output = run(&["teach", "booklet", &list.to_string_lossy(), "-o", &out.to_string_lossy()]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(stdout(&output).contains("out.pdf"));
    assert!(std::fs::read(&out).expect("a file").starts_with(b"%PDF-1.7"));
    // Students' words are English: in another language nothing is bound.
    std::fs::write(&list, items.replace("finger: ring", "for: students")).expect("a list");
    let output = run(&["teach", "booklet", &list.to_string_lossy(), "-o", &out.to_string_lossy()]);
    assert!(stderr(&output).contains("no words for students in `es`"), "{}", stderr(&output));
}
