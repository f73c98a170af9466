//! A sheet says how far its words have been checked, and a later change of any of them undoes a signature.

use std::process::Command;

use palmleaf::assets::Assets;
use palmleaf::document::SheetKind;
use palmleaf::language::WordState;
use palmleaf::pipeline::Workshop;
use palmleaf::words::signoff::{self, Entry, SignOff};
use palmleaf::words::{self, Ledger};

use crate::support::{CASE, WORKSHOP, path, source, text};

const MESSAGE: &str = "card-caution";

fn day() -> palmleaf::units::Date {
    "2027-02-01".parse().expect("a day")
}

fn signed() -> SignOff {
    SignOff { on: day(), by: "medical translator, AB".to_owned() }
}

/// The embedded words with every Spanish message signed off.
fn all_signed() -> Assets {
    let words = &WORKSHOP.words;
    let (own, first) = (words.catalogue("es").expect("words"), words.catalogue("en").expect("words"));
    let mut ledger = Ledger::default();
    let ids = own.messages().map(|(id, _)| id.to_owned());
    signoff::sign(&mut ledger, own, first, ids, &signed());
    Assets::embedded().with("locales/es/signed-off.txt", ledger.file(true))
}

fn workshop(assets: Assets) -> Workshop {
    Workshop::from_assets(assets).unwrap_or_else(|findings| panic!("{}", text(&findings)))
}

/// The same with a piece of one file replaced.
fn changed(assets: Assets, path: &str, from: &str, to: &str) -> Assets {
    let old = assets.text(path).expect("the file").text().to_owned();
    assert!(old.contains(from), "{path} has no `{from}`");
    assets.with(path, old.replacen(from, to, 1))
}

/// State, and the line about it, of a Spanish sheet.
fn sheet(workshop: &Workshop, kind: SheetKind) -> (WordState, Option<String>) {
    let case = CASE.replace("language: en", "language: es");
    let file = palmleaf::case::read_text(&source(&case)).expect("a case");
    let hands = workshop.judge(file, source(&case)).expect("a case").plans().expect("a plan");
    let document = palmleaf::document::sheet(kind, &hands[0], &[]).expect("a sheet");
    let sheet = words::localise(&workshop.words, &document).unwrap_or_else(|findings| panic!("{}", text(&findings)));
    (sheet.said.state(), sheet.data["furniture"]["state"].as_str().map(str::to_owned))
}

/// What ships is written down message by message: none is newer or older than the file says.
#[test]
fn every_shipped_message_is_written_down() {
    let first = WORKSHOP.words.catalogue("en").expect("words");
    for (tag, own) in WORKSHOP.words.catalogues().filter(|(tag, _)| *tag != "en") {
        let ledger = WORKSHOP.words.ledger(tag).expect("a language").as_ref().expect("a ledger");
        let wrong: Vec<&str> = own
            .messages()
            .map(|(id, _)| id)
            .filter(|id| {
                let now = (first.hash(id), own.hash(id));
                ledger.entry(id).map(|entry| (Some(entry.english.clone()), Some(entry.text.clone()))) != Some(now)
            })
            .collect();
        assert!(wrong.is_empty(), "palmleaf locales draft --locales locales --language {tag}: {wrong:?}");
        assert!(ledger.entries().all(|(id, entry)| own.message(id).is_some() && entry.signed.is_none()), "{tag}");
    }
}

#[test]
fn a_sheet_is_worth_what_its_worst_message_is() {
    let drafted = sheet(&WORKSHOP, SheetKind::Guide);
    assert_eq!(drafted.0, WordState::Drafted);
    assert!(drafted.1.expect("a line").contains("traductor"));
    let whole = workshop(all_signed());
    assert_eq!(sheet(&whole, SheetKind::Guide), (WordState::SignedOff, None));
    assert_eq!(sheet(&whole, SheetKind::Card), (WordState::SignedOff, None));
}

/// Other English makes the translation outdated, on every sheet that says the message and on no other.
#[test]
fn a_change_of_the_english_undoes_a_signature() {
    let english = WORKSHOP.words.catalogue("en").expect("words").message(MESSAGE).expect("a message");
    let file = english.place.source.name().to_owned();
    let changed = workshop(changed(all_signed(), &file, &format!("{MESSAGE} = "), &format!("{MESSAGE} = Well: ")));
    let (state, line) = sheet(&changed, SheetKind::Card);
    assert_eq!(state, WordState::Outdated);
    assert!(line.expect("a line").contains("cambió"));
    assert_eq!(sheet(&changed, SheetKind::Diary), (WordState::SignedOff, None));
}

#[test]
fn a_change_of_the_translation_undoes_a_signature() {
    let own = WORKSHOP.words.catalogue("es").expect("words").message(MESSAGE).expect("a message");
    let file = own.place.source.name().to_owned();
    let changed = workshop(changed(all_signed(), &file, &format!("{MESSAGE} = "), &format!("{MESSAGE} = Bien: ")));
    assert_eq!(sheet(&changed, SheetKind::Card).0, WordState::Drafted);
    assert_eq!(sheet(&changed, SheetKind::Diary).0, WordState::SignedOff);
}

/// Writing drafts down again never hides that the English moved on: only naming the message does, or a new text.
#[test]
fn an_outdated_draft_stays_outdated_until_somebody_looks() {
    let words = &WORKSHOP.words;
    let (own, first) = (words.catalogue("es").expect("words"), words.catalogue("en").expect("words"));
    let mut ledger = words.ledger("es").expect("a language").as_ref().expect("a ledger").clone();
    let known = ledger.entry(MESSAGE).expect("written down").clone();
    ledger.set(MESSAGE, Entry { english: "0000000000".to_owned(), ..known.clone() });
    assert_eq!(signoff::state(MESSAGE, own, first, &ledger), WordState::Outdated);
    let again = signoff::draft(&mut ledger, own, first, &[].into());
    assert_eq!((again.written, again.outdated), (Vec::new(), vec![MESSAGE.to_owned()]));
    signoff::draft(&mut ledger, own, first, &[MESSAGE.to_owned()].into());
    assert_eq!(ledger.entry(MESSAGE), Some(&known));
    ledger.set(MESSAGE, Entry { english: "0000000000".to_owned(), text: "0000000000".to_owned(), signed: None });
    signoff::draft(&mut ledger, own, first, &[].into());
    assert_eq!(ledger.entry(MESSAGE), Some(&known), "a new text was written from the English of today");
}

#[test]
fn a_line_that_says_nothing_is_named_with_its_place() {
    for line in ["card-caution 48aab4c50e", "card-caution 48aab4c50e 494d3b8faX", "card-caution 1 2 3 4 5"] {
        let assets = Assets::embedded().with("locales/es/drafted.txt", format!("# states\n{line}\n"));
        let faults = workshop(assets).words.faults();
        assert!(text(&faults).contains("locales/es/drafted.txt:2:1"), "{}", text(&faults));
    }
    let unsigned = "card-caution 48aab4c50e 494d3b8fae 2027-02-01 ";
    let assets = Assets::embedded().with("locales/es/signed-off.txt", unsigned);
    assert!(text(&workshop(assets).words.faults()).contains("words/state"));
}

fn palmleaf(args: &[&str]) -> (bool, String) {
    let run = Command::new(env!("CARGO_BIN_EXE_palmleaf")).args(args).output().expect("palmleaf runs");
    (run.status.success(), String::from_utf8_lossy(&[run.stdout, run.stderr].concat()).into_owned())
}

/// A clinic signs off in its own folder, and only then are strict sheets made.
#[test]
fn a_clinic_signs_off_and_builds_what_is_signed() {
    let folder = tempfile::tempdir().expect("a folder");
    let (ours, out) = (folder.path().join("ours"), folder.path().join("out"));
    let locales = ours.join("locales");
    let (ours, out, locales) =
        (ours.to_str().expect("a path"), out.to_str().expect("a path"), locales.to_str().expect("a path"));
    let case = path("examples/right-thumb.yaml");
    let case = case.to_str().expect("a path");
    std::fs::create_dir_all(ours).expect("a folder");
    let build = [
        "build",
        case,
        "--language",
        "es",
        "--sheets",
        "card",
        "--require",
        "signed-off",
        "--content",
        ours,
        "--out",
        out,
    ];
    let (good, said) = palmleaf(&build);
    assert!(!good && said.contains("words/not-signed-off") && said.contains("card-caution: drafted"), "{said}");
    assert!(!std::path::Path::new(out).exists(), "nothing is written");
    let (good, said) = palmleaf(&[
        "locales",
        "sign-off",
        "--all",
        "--language",
        "es",
        "--by",
        "translator, AB",
        "--on",
        "2027-02-01",
        "--locales",
        locales,
    ]);
    assert!(good, "{said}");
    let (good, said) = palmleaf(&build);
    assert!(good, "{said}");
    let (_, said) = palmleaf(&["locales", "status", "--language", "es", "--locales", locales, "--format", "json"]);
    let rows: serde_json::Value = serde_json::from_str(&said).expect("JSON");
    assert_eq!(rows[0]["state"], "signed-off");
    for wrong in [
        ["--area", "nowhere", "--language", "es", "--by", "AB", "--on", "2027-02-01"],
        ["--area", "guide", "--language", "en", "--by", "AB", "--on", "2027-02-01"],
        ["--area", "guide", "--language", "es", "--by", " ", "--on", "2027-02-01"],
        ["--area", "guide", "--language", "es", "--by", "AB", "--on", "2027-02-31"],
    ] {
        let args = [["locales", "sign-off"].as_slice(), &wrong, &["--locales", locales]].concat();
        let (good, said) = palmleaf(&args);
        assert!(!good && said.contains("help"), "{wrong:?}: {said}");
    }
}
