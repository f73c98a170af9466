//! Dates, times, weeks and plurals against CLDR, through the table that Babel made (`tests/outside/test_cldr.py` keeps
//! that table equal to Babel).

use palmleaf::units::{Date, TimeOfDay};
use palmleaf::words::Formats;
use serde_json::Value;

use crate::support::{WORKSHOP, file};

fn table() -> Value {
    serde_json::from_str(&file("tests/outside/cldr.json")).expect("a table")
}

/// Spaces that CLDR narrows are no-break spaces on paper; everything else is equal by code point.
fn spaces(text: &str) -> String {
    text.replace(['\u{202F}', '\u{2009}'], "\u{A0}")
}

#[test]
fn dates_and_times_are_those_of_cldr() {
    let table = table();
    let mut compared = 0;
    for entry in WORKSHOP.languages.iter() {
        let tag = entry.tag.as_str();
        let row = &table[tag];
        assert!(row.is_object(), "the table has no {tag}");
        let language = WORKSHOP.languages.find(&entry.tag).expect("a language of the list");
        let formats = Formats::new(&language).expect("formats");
        assert_eq!(
            format!("{:?}", formats.first_weekday()).to_lowercase(),
            row["first_weekday"].as_str().expect("a weekday"),
            "{tag}"
        );
        for (day, wanted) in row["dates"].as_object().expect("dates") {
            let date: Date = day.parse().expect("a date");
            for (name, got) in [
                ("full", formats.date(date)),
                ("short", formats.short(date)),
                ("month", formats.month(date)),
                ("weekday", formats.weekday(date)),
            ] {
                let wanted = spaces(wanted[name].as_str().unwrap_or_else(|| panic!("{tag} {day} {name}")));
                assert_eq!(got, wanted, "{tag} {day} {name}");
                compared += 1;
            }
        }
        for (clock, wanted) in row["times"].as_object().expect("times") {
            let time: TimeOfDay = clock.parse().expect("a time");
            assert_eq!(formats.time(time), spaces(wanted.as_str().expect("a text")), "{tag} {clock}");
            compared += 1;
        }
    }
    assert!(compared > 400, "{compared}");
}

#[test]
fn plurals_are_those_of_cldr() {
    let table = table();
    for entry in WORKSHOP.languages.iter() {
        let tag = entry.tag.as_str();
        let wanted = table[tag]["plurals"].as_array().expect("plurals");
        let formats = Formats::new(&WORKSHOP.languages.find(&entry.tag).expect("a language")).expect("formats");
        // Newer data of CLDR than the table's may tell numbers apart in Vietnamese; its words have one form for all.
        if tag == "vi" {
            let words = WORKSHOP.words.catalogue(tag).expect("words");
            let shapes = words.messages().map(|(_, info)| palmleaf::words::lint::shape(&info.entry));
            assert!(shapes.into_iter().all(|shape| !shape.chosen_by.contains("count")), "a plural in {tag}");
            continue;
        }
        for (count, category) in wanted.iter().enumerate() {
            let count = i64::try_from(count).expect("a small number");
            assert_eq!(formats.plural(count), category.as_str().expect("a word"), "{tag} {count}");
        }
        assert!(wanted.len() > 200);
    }
}

/// Arabic 103 is said like 3, not like 100: the branch is chosen by CLDR's rule with its modulus.
#[test]
fn a_message_takes_the_branch_of_its_plural_category() {
    let arabic = WORKSHOP.languages.find(&"ar".parse().expect("a tag")).expect("a language");
    let speaker = WORKSHOP.words.speaker(&arabic).expect("a speaker");
    let said = |count: i64| {
        let message = palmleaf::document::Message::new("length-minutes").with("count", count);
        speaker.say(&message, &[]).expect("said").replace(&count.to_string(), "#")
    };
    assert_eq!(said(3), said(103));
    assert_ne!(said(3), said(100));
    assert_ne!(said(3), said(11));
}

/// What patients and the telephone keypad use: western digits unless a region asks for others.
#[test]
fn a_region_changes_formats_and_not_words() {
    let find = |tag: &str| WORKSHOP.languages.find(&tag.parse().expect("a tag")).expect("a language");
    let date = Date::new(2027, 3, 1).expect("a date");
    let american = Formats::new(&find("en-US")).expect("formats");
    assert_eq!(american.date(date), "Monday, March 1, 2027");
    let plain = Formats::new(&find("ar")).expect("formats");
    assert!(plain.date(date).contains("2027"));
    let egypt = Formats::new(&find("ar-EG")).expect("formats");
    assert!(egypt.date(date).contains("٢٠٢٧"), "{}", egypt.date(date));
    assert_eq!(find("en-US").entry.tag.as_str(), "en");
}
