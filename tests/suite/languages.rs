//! Every language says the same: numbers, dates, hours, sides, and as many steps and warnings.
//!
//! A sheet in two languages is one tree with other words in it. So each sentence is held against the English one at the
//! same place: first its dates and clock times are read back by CLDR's formats of its language, then the numbers that
//! are left are compared, and the sides that are named.

use std::collections::BTreeMap;

use palmleaf::assets::Assets;
use palmleaf::language::Language;
use palmleaf::pipeline::Workshop;
use palmleaf::units::{Date, TimeOfDay};
use palmleaf::words::{self, Formats};
use serde_json::Value;

use crate::pages::{gather, variant};
use crate::support::{WORKSHOP, examples, file, guide, hands, text};

/// Words of both sides in a language, in small letters: left, then right.
pub fn sides(language: &str) -> (&'static [&'static str], &'static [&'static str]) {
    match language {
        "en" => (&["left"], &["right"]),
        "es" => (&["izquierd"], &["derech"]),
        "ar" => (&["يسر"], &["يمن"]),
        "fr" => (&["gauche"], &["droite"]),
        "de" => (&["linke", "links"], &["rechte", "rechts"]),
        "pt-BR" => (&["esquerd"], &["direit"]),
        "pl" => (&["lewa", "lewą", "lewej", "lewy"], &["prawa", "prawą", "prawej", "prawy"]),
        "ru" => (&["лева", "лево", "левы", "леву"], &["права", "право", "правы", "праву"]),
        "zh-Hans" => (&["左"], &["右"]),
        "vi" => (&["trái"], &["tay phải", "bên phải"]),
        "fil" => (&["kaliwa"], &["kanan"]),
        "hi" => (&["बाय", "बाएँ", "बाईं"], &["दाय", "दाएँ", "दाईं"]),
        "ur" => (&["بای", "بائیں"], &["دای", "دائیں"]),
        other => panic!("say the sides of {other} here"),
    }
}

/// What a translation cannot change: hours, states, dates, counts of steps, signs, exercises and activities.
fn facts(sheet: &Value) -> Vec<(String, Value)> {
    let mut all = Vec::new();
    for key in ["from", "to", "state", "verdict", "side", "mark", "level", "flag", "big", "kind"] {
        let mut found = Vec::new();
        gather(&sheet["parts"], key, &mut found);
        // Digits follow the language; words such as an emergency's name do too.
        if key == "big" {
            found.retain(|value| value.as_str().is_some_and(|text| text.chars().all(|c| c.is_ascii_digit())));
        }
        all.push((key.to_owned(), Value::Array(found)));
    }
    let mut days = Vec::new();
    gather(&sheet["parts"], "calendar day", &mut days);
    assert!(days.len() > 20);
    all.push(("calendar days".to_owned(), Value::Array(days)));
    for key in ["items", "steps", "signs", "rows", "how", "days"] {
        let mut found = Vec::new();
        gather(&sheet["parts"], key, &mut found);
        let counts: Vec<Value> = found.iter().filter_map(Value::as_array).map(|list| list.len().into()).collect();
        all.push((format!("count of {key}"), Value::Array(counts)));
    }
    all
}

/// How a language writes dates and times, to read them back.
struct Written {
    tag: String,
    /// What is written and what it means, the longest first.
    forms: Vec<(String, String)>,
    digits: [char; 10],
}

impl Written {
    /// Dates of a year from this day on, and every clock time in steps of five minutes.
    fn of(language: &Language, first: Date) -> Self {
        let formats = Formats::new(language).expect("formats");
        let mut forms = BTreeMap::new();
        for day in (-30..400).map(|days| first.offset(days)) {
            let meaning = format!("⟨{:02}-{:02}⟩", day.month(), day.day());
            for form in [formats.date(day), formats.day(day), formats.short(day)] {
                forms.insert(form, meaning.clone());
            }
            // Some languages count the days of the week.
            let weekday = formats.weekday(day);
            if weekday.contains(char::is_numeric) {
                forms.insert(weekday, String::new());
            }
        }
        for minute in (0..24 * 60).step_by(5) {
            let time: TimeOfDay = format!("{:02}:{:02}", minute / 60, minute % 60).parse().expect("a time");
            let meaning = format!("⟨{time}⟩");
            forms.insert(formats.time(time), meaning.clone());
            if minute % 60 == 0 {
                forms.insert(formats.hour(time), meaning);
            }
        }
        let mut forms: Vec<(String, String)> = forms.into_iter().collect();
        forms.sort_by_key(|(form, _)| std::cmp::Reverse(form.chars().count()));
        Self { tag: language.entry.tag.to_string(), forms, digits: *formats.digits() }
    }

    /// The dates, times and numbers of a sentence in order of their meaning.
    fn numbers(&self, sentence: &str) -> Vec<String> {
        let western =
            |c: char| self.digits.iter().position(|&digit| digit == c).map_or(c, |value| (b'0' + value as u8) as char);
        if !sentence.chars().map(western).any(|c| c.is_ascii_digit()) {
            return Vec::new();
        }
        let mut rest = sentence.to_owned();
        let mut found = Vec::new();
        for (form, meaning) in &self.forms {
            while let Some(at) = whole(&rest, form) {
                rest.replace_range(at..at + form.len(), "|");
                found.push(meaning.clone());
            }
        }
        let plain: String = rest.chars().map(western).collect();
        let runs = plain.split(|c: char| !c.is_ascii_digit()).filter(|run| !run.is_empty());
        // A plural may say one or two without the figure.
        found.extend(runs.filter(|run| !["1", "2"].contains(run)).map(str::to_owned));
        found.retain(|meaning| !meaning.is_empty());
        found.sort();
        found
    }
}

/// Where a form stands with no digit beside it: 9:15 is none of 19:15.
fn whole(text: &str, form: &str) -> Option<usize> {
    let digit = |c: Option<char>| c.is_some_and(char::is_numeric);
    text.match_indices(form).map(|(at, _)| at).find(|&at| {
        !(digit(text[..at].chars().next_back()) && form.starts_with(char::is_numeric)
            || digit(text[at + form.len()..].chars().next()) && form.ends_with(char::is_numeric))
    })
}

/// Where two sheets of one case say other numbers, dates, times or sides, or one says nothing.
fn differences(
    english: &Value,
    own: &Value,
    (first, other): (&Written, &Written),
    path: &str,
    found: &mut Vec<String>,
) {
    match (english, own) {
        (Value::String(a), Value::String(b)) => {
            let (wanted, got) = (first.numbers(a), other.numbers(b));
            if wanted != got {
                found.push(format!("{path}: «{a}» has {wanted:?}, «{b}» has {got:?}"));
            }
            if a.trim().is_empty() != b.trim().is_empty() {
                found.push(format!("{path}: «{a}» and «{b}»"));
            }
            let small = b.to_lowercase();
            let (lefts, rights) = sides(&other.tag);
            let names = |words: &[&str]| words.iter().any(|word| small.contains(word));
            let said = a.to_lowercase();
            for (word, here, there) in [("left hand", lefts, rights), ("right hand", rights, lefts)] {
                let alone = !said.contains(if word == "left hand" { "right hand" } else { "left hand" });
                if said.contains(word) && alone && (!names(here) || names(there)) {
                    found.push(format!("{path}: «{a}» names a side, «{b}» another or none"));
                }
            }
        }
        (Value::Array(a), Value::Array(b)) => {
            if a.len() != b.len() {
                found.push(format!("{path}: {} and {} entries", a.len(), b.len()));
            }
            for (number, (a, b)) in a.iter().zip(b).enumerate() {
                differences(a, b, (first, other), &format!("{path}/{number}"), found);
            }
        }
        // Weeks begin on other days in other countries: calendars are compared day by day instead.
        (Value::Object(a), Value::Object(_)) if a.get("t").is_some_and(|kind| kind == "calendar") => {}
        (Value::Object(a), Value::Object(b)) => {
            for (name, a) in a {
                match b.get(name) {
                    Some(b) => differences(a, b, (first, other), &format!("{path}/{name}"), found),
                    None => found.push(format!("{path}/{name} is missing")),
                }
            }
        }
        _ => {}
    }
}

/// A guide in a language as it goes to the typesetter. Running words, bold ones and links are joined to sentences.
fn said(workshop: &Workshop, case: &str, tag: &str) -> Value {
    let case = variant(case, tag, "standard", "a4");
    let sheet = words::localise(&workshop.words, &guide(&hands(&case))).unwrap_or_else(|fault| panic!("{fault:?}"));
    joined(&sheet.data["parts"])
}

/// The tree with every run of inline pieces as one text.
fn joined(value: &Value) -> Value {
    fn inline(piece: &Value) -> Option<String> {
        match piece {
            Value::Object(fields) if fields.len() == 1 => {
                let (name, inner) = fields.iter().next()?;
                match name.as_str() {
                    "s" => inner.as_str().map(str::to_owned),
                    "b" => pieces(inner),
                    "a" => pieces(&inner["inl"]),
                    _ => None,
                }
            }
            _ => None,
        }
    }
    fn pieces(value: &Value) -> Option<String> {
        match value {
            Value::String(text) => Some(text.clone()),
            Value::Array(all) if !all.is_empty() => all.iter().map(inline).collect(),
            _ => None,
        }
    }
    match value {
        Value::Array(all) => match pieces(value) {
            Some(text) => Value::String(text),
            None => Value::Array(all.iter().map(joined).collect()),
        },
        Value::Object(fields) => {
            Value::Object(fields.iter().map(|(name, field)| (name.clone(), joined(field))).collect())
        }
        other => other.clone(),
    }
}

fn language(tag: &str) -> Language {
    WORKSHOP.languages.find(&tag.parse().expect("a tag")).expect("a language")
}

fn fitted(case: &str) -> Date {
    let line = case.lines().find_map(|line| line.strip_prefix("fitted: ")).expect("a date of fitting");
    line.trim().parse().expect("a date")
}

fn compared(workshop: &Workshop, case: &str, tag: &str) -> Vec<String> {
    let first = Written::of(&language("en"), fitted(case));
    let other = Written::of(&language(tag), fitted(case));
    let mut found = Vec::new();
    differences(&said(&WORKSHOP, case, "en"), &said(workshop, case, tag), (&first, &other), "", &mut found);
    found
}

#[test]
fn every_language_says_the_same_facts() {
    for path in examples() {
        let case = std::fs::read_to_string(&path).expect("an example");
        let sheet = |tag: &str| serde_json::json!({"parts": said(&WORKSHOP, &case, tag)});
        let english = facts(&sheet("en"));
        for tag in WORKSHOP.languages.tags() {
            assert_eq!(english, facts(&sheet(tag)), "{} {tag}", path.display());
        }
    }
}

#[test]
fn every_sentence_has_the_numbers_dates_hours_and_sides_of_the_english_one() {
    let mut wrong = Vec::new();
    for path in examples() {
        let case = std::fs::read_to_string(&path).expect("an example");
        for tag in WORKSHOP.languages.tags() {
            let found = compared(&WORKSHOP, &case, tag);
            wrong.extend(found.into_iter().map(|line| format!("{} {tag} {line}", path.display())));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The words with a piece of one file replaced.
fn planted(path: &str, from: &str, to: &str) -> Workshop {
    let assets = Assets::embedded();
    let old = assets.text(path).expect("the file").text().to_owned();
    assert!(old.contains(from), "{path} has no {from}");
    let assets = assets.with(path.to_owned(), old.replace(from, to).into_bytes());
    Workshop::from_assets(assets).unwrap_or_else(|findings| panic!("{}", text(&findings)))
}

#[test]
fn planted_errors_are_found() {
    let case = file("examples/right-thumb.yaml");
    assert!(compared(&WORKSHOP, &case, "de").is_empty());
    let swapped = planted("locales/de/guide.ftl", "Rechte Hand", "Linke Hand");
    assert!(compared(&swapped, &case, "de").iter().any(|line| line.contains("names a side")));
    let dropped = planted("locales/de/guide.ftl", "{ $date }", "{ $date }{ $date }");
    assert!(!compared(&dropped, &case, "de").is_empty());
}

#[test]
fn a_lost_no_a_lost_choice_and_a_typed_hour_are_found() {
    let told = |path: &str, from: &str, to: &str, code: &str| {
        let workshop = planted(path, from, to);
        let report = palmleaf::lint::check(&workshop);
        let found = text(&report.findings);
        assert!(found.contains(code), "{code}: {found}");
    };
    assert!(!text(&palmleaf::lint::check(&WORKSHOP).findings).contains("words/"));
    told("locales/de/avoid.ftl", "nicht", "sehr", "words/not-lost");
    told("locales/de/guide.ftl", "Handgelenk", "Fußgelenk", "words/term");
    told("locales/de/guide.ftl", "{ $date }", "1. März", "words/figure");
}
