//! Words go out to translators and come back: unchanged to the byte, changed whole, refused by name.

use std::collections::BTreeMap;

use palmleaf::diag::Findings;
use palmleaf::exchange::{Imported, Package, csv, from_csv, from_xliff, import, package, xliff};
use palmleaf::language::Language;
use palmleaf::source::SourceText;

use crate::support::{WORKSHOP, text};

fn language(tag: &str) -> Language {
    WORKSHOP.languages.find(&tag.parse().expect("a tag")).expect("a language")
}

fn packed(tag: &str) -> Package {
    let words = &WORKSHOP.words;
    let (own, first) = (words.catalogue(tag).expect("words"), words.catalogue("en").expect("words"));
    let ledger = words.ledger(tag).expect("a language").as_ref().expect("a ledger");
    let formats = words.speaker(&language(tag)).expect("a speaker").formats;
    package(first, own, ledger, &formats, &BTreeMap::new(), &words.rooms)
}

fn returned(tag: &str, file: &str) -> Result<Imported, Findings> {
    let source = SourceText::new("back.xlf", file);
    let returns = if file.starts_with('<') { from_xliff(&source)? } else { from_csv(&source, tag)? };
    let letters = WORKSHOP.words.letters(tag).expect("letters");
    Ok(import(&returns, &packed(tag), &WORKSHOP.assets, &letters))
}

fn back(tag: &str, file: &str) -> Imported {
    returned(tag, file).unwrap_or_else(|findings| panic!("{}", text(&findings)))
}

/// A file with one piece of it edited.
fn edited(file: &str, from: &str, to: &str) -> String {
    assert_eq!(file.matches(from).count(), 1, "`{from}` stands once");
    file.replacen(from, to, 1)
}

/// The Spanish sentence of `nights` that these tests edit, in both kinds of file.
fn files() -> (String, String) {
    let package = packed("es");
    (xliff(&package), csv(&package))
}

#[test]
fn what_comes_back_unchanged_changes_no_byte() {
    for tag in ["es", "ar"] {
        let package = packed(tag);
        for file in [xliff(&package), csv(&package)] {
            let imported = back(tag, &file);
            assert!(imported.files.is_empty() && imported.changed.is_empty(), "{tag}: {:?}", imported.changed);
            assert!(imported.refused.is_empty(), "{}", text(&imported.refused));
        }
    }
}

/// Only the edited message differs, and it reads as it was sent.
#[test]
fn an_edited_sentence_goes_in_and_nothing_else_moves() {
    let (xlf, table) = files();
    let (old, new) = ("Mano derecha", "Mano diestra");
    let in_xlf = edited(&xlf, &format!("<target>{old}</target>"), &format!("<target>{new}</target>"));
    let in_table = edited(&table, &format!("hand-right,Right hand,{old},"), &format!("hand-right,Right hand,{new},"));
    for file in [in_xlf, in_table] {
        let imported = back("es", &file);
        assert_eq!(imported.changed, ["hand-right"]);
        assert!(imported.refused.is_empty(), "{}", text(&imported.refused));
        let (path, now) = imported.files.iter().next().expect("a file");
        let before = WORKSHOP.assets.text(&format!("locales/{path}")).expect("the file").text().to_owned();
        assert_eq!(*now, edited(&before, &format!("hand-right = {old}"), &format!("hand-right = {new}")));
    }
}

/// A message with choices is put together again so that every choice says what its unit says.
#[test]
fn a_branch_goes_back_to_its_choice() {
    let (xlf, _) = files();
    let at = xlf.find("<unit id=\"hand-alt:side.left\">").expect("the unit");
    let target = xlf[at..].find("<target>").expect("a target") + at + "<target>".len();
    let end = xlf[target..].find("</target>").expect("its end") + target;
    let file = format!("{}Se lleva en la zurda.{}", &xlf[..target], &xlf[end..]);
    let imported = back("es", &file);
    assert_eq!(imported.changed, ["hand-alt"]);
    let mut assets = WORKSHOP.assets.clone();
    for (path, text) in imported.files {
        assets = assets.with(format!("locales/{path}"), text);
    }
    let after = palmleaf::pipeline::Workshop::from_assets(assets).expect("words");
    let said = |side: &'static str, workshop: &palmleaf::pipeline::Workshop| {
        let speaker = workshop.words.speaker(&language("es")).expect("a speaker");
        speaker.plain("hand-alt", &[("side", palmleaf::document::Arg::Keyword(side))]).expect("words")
    };
    assert_eq!(said("left", &after), "Se lleva en la zurda.");
    assert_eq!(said("right", &after), said("right", &WORKSHOP), "the other branch says what it said");
}

/// Each of these refuses its own message, names it, and lets the rest in.
#[test]
fn a_message_that_lost_something_is_refused_by_name() {
    let (xlf, table) = files();
    let unit = |id: &str| {
        let from = xlf.find(&format!("<unit id=\"{id}\">")).unwrap_or_else(|| panic!("no unit {id}"));
        let end = xlf[from..].find("</unit>").expect("its end") + from + "</unit>".len();
        xlf[from..end].to_owned()
    };
    let with_target = |id: &str, new: &dyn Fn(&str) -> String| {
        let old = unit(id);
        let from = old.find("<target>").expect("a target") + "<target>".len();
        let end = old.find("</target>").expect("its end");
        let changed = format!("{}{}{}", &old[..from], new(&old[from..end]), &old[end..]);
        edited(&xlf, &old, &changed)
    };
    let other = "skin-intro:checks.other:washing.freely";
    let without_code = |target: &str| {
        let from = target.find("<ph").expect("a code");
        let end = target[from..].find("/>").expect("its end") + from + 2;
        format!("{}{}", &target[..from], &target[end..])
    };
    let lost_branch = edited(
        &with_target(other, &|target| format!("{target} Ya.")),
        &unit("skin-intro:checks.one:washing.never"),
        "",
    );
    let cases = [
        ("a variable", with_target(other, &without_code), "skin-intro", "lost the variable `checks`"),
        ("a branch", lost_branch, "skin-intro", "is missing"),
        ("a figure", with_target("hand-right", &|_| "Mano 2".to_owned()), "hand-right", "a figure is typed"),
        ("an Arabic figure", with_target("hand-right", &|_| "Mano ٢".to_owned()), "hand-right", "a figure is typed"),
        ("other letters", with_target("hand-right", &|_| "Mаno derecha".to_owned()), "hand-right", "two alphabets"),
        (
            "a hidden mark",
            with_target("hand-right", &|_| "Mano\u{202E} derecha".to_owned()),
            "hand-right",
            "nobody can see",
        ),
        ("nothing", with_target("hand-right", &|_| " ".to_owned()), "hand-right", "says nothing"),
        (
            "other English",
            edited(&xlf, "<source>Right hand</source>", "<source>Good hand</source>"),
            "hand-right",
            "another one",
        ),
        (
            "a variable that is none",
            with_target("hand-right", &|target| format!("{target}<ph id=\"9\" equiv=\"nobody\"/>")),
            "hand-right",
            "no variable `nobody`",
        ),
        (
            "a message that is none",
            edited(&xlf, "<unit id=\"hand-right\">", "<unit id=\"hand-rigth\">"),
            "hand-rigth",
            "no message",
        ),
        ("a row twice", format!("{table}hand-right,Right hand,Mano diestra,drafted,,,\n"), "hand-right", "second time"),
    ];
    for (what, file, id, why) in cases {
        // Another message of the same file is edited too: it goes in.
        let file = if file.starts_with('<') {
            edited(&file, "<target>Mano izquierda</target>", "<target>Mano zurda</target>")
        } else {
            file
        };
        let imported = back("es", &file);
        let said = text(&imported.refused);
        assert!(said.contains(id) && said.contains(why) && said.contains("back.xlf:"), "{what}: {said}");
        assert!(!imported.changed.iter().any(|changed| changed == id), "{what}");
        assert_eq!(imported.changed.contains(&"hand-left".to_owned()), file.starts_with('<'), "{what}");
    }
}

#[test]
fn a_file_that_is_none_is_refused_with_its_place() {
    let bomb = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><xliff version=\"2.1\" trgLang=\"es\">&b;</xliff>";
    let outside =
        "<?xml version=\"1.0\"?><!DOCTYPE x SYSTEM \"file:///etc/passwd\"><xliff version=\"2.1\" trgLang=\"es\"/>";
    let deep = format!("{}{}", "<a>".repeat(60_000), "</a>".repeat(60_000));
    let wrong = [
        bomb,
        outside,
        "<xliff version=\"1.2\" trgLang=\"es\"></xliff>",
        "<xliff version=\"2.1\"></xliff>",
        "<tmx/>",
        "<xliff version=\"2.1\" trgLang=\"es\"><unit>",
        deep.as_str(),
        "id;english;text;state\nhand-right;Right hand;Mano;drafted\n",
        "id,english,text\nhand-right,Right hand,Mano\n",
        "id,english,text,state\nhand-right,Right hand\n",
        "id,english,text,state\nhand-right,Right hand,Mano { $side,drafted\n",
    ];
    for file in wrong {
        let shown: String = file.chars().take(60).collect();
        let findings = returned("es", file).map(|_| ()).expect_err(&shown);
        assert!(
            text(&findings).contains("exchange/broken") && text(&findings).contains("back.xlf:"),
            "{shown}: {}",
            text(&findings)
        );
    }
}

/// A language that has no words yet goes out with its own plural branches, and comes back as files that can be read.
#[test]
fn a_new_language_goes_out_in_its_own_plurals() {
    use palmleaf::exchange::{choices, skeleton};
    let first = WORKSHOP.words.catalogue("en").expect("words");
    let skin = choices(&first.message("skin-intro").expect("a message").entry);
    let polish = skeleton(&skin, &["one", "few", "many", "other"]);
    assert_eq!(polish[0].keys, ["one", "few", "many", "other"]);
    assert_eq!(polish[1], skin[1], "a choice by anything else stays");
}

/// Every message of every language survives being taken apart and put together: each choice says the same.
#[test]
fn taking_apart_and_putting_together_keeps_every_sentence() {
    use palmleaf::exchange::{branches, choices, whole};
    let mut with_choices = 0;
    for (tag, catalogue) in WORKSHOP.words.catalogues() {
        for (id, info) in catalogue.messages() {
            let made = choices(&info.entry);
            let before = branches(&info.entry, &made);
            let again = whole(&made, &before);
            assert_eq!(branches(&again, &choices(&again)).len(), before.len(), "{tag} {id}");
            assert_eq!(branches(&again, &made), before, "{tag} {id}");
            with_choices += usize::from(!made.is_empty());
        }
    }
    assert!(with_choices > 100, "{with_choices} messages with choices were seen");
}
