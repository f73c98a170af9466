//! Every case in every language and size becomes pages.

use serde_json::Value;

use crate::support::{WORKSHOP, examples, file, planned, sheet};

/// An example with another language, print size and paper.
pub fn variant(case: &str, language: &str, print: &str, paper: &str) -> String {
    let kept: String = case
        .lines()
        .filter(|line| !["language:", "print:", "paper:"].iter().any(|key| line.starts_with(key)))
        .map(|line| format!("{line}\n"))
        .collect();
    format!("{kept}language: {language}\nprint: {print}\npaper: {paper}\n")
}

#[test]
fn every_example_sets_in_every_language_size_and_paper() {
    for (example, path) in examples().into_iter().enumerate() {
        let case = std::fs::read_to_string(&path).expect("an example");
        for (number, language) in WORKSHOP.languages.tags().into_iter().enumerate() {
            for (kind, (print, paper, most)) in
                [("standard", "a4", 9), ("standard", "letter", 9), ("large", "a4", 18), ("giant", "a4", 29)]
                    .into_iter()
                    .enumerate()
            {
                // Three languages in all sizes of all examples; each of the others in one size of each.
                if number > 2 && (number + example) % 4 != kind {
                    continue;
                }
                let sheet = sheet(&variant(&case, language, print, paper));
                // A factor may ask for larger print, and a second hand for as many pages again.
                let size = sheet.data["meta"]["size"].as_str().expect("a size");
                let most = if size == print { most } else { 2 * most };
                let most = most * sheet.data["parts"].as_array().map_or(1, Vec::len);
                let pages = WORKSHOP
                    .typesetter
                    .set(&sheet, &WORKSHOP.album)
                    .unwrap_or_else(|fault| panic!("{} {language} {print}: {fault:?}", path.display()));
                assert!(
                    (3..=most).contains(&pages.count()),
                    "{} {language} {print} {paper}: {} pages",
                    path.display(),
                    pages.count()
                );
                pages.pdf().unwrap_or_else(|fault| panic!("{} {language} {print}: {fault:?}", path.display()));
            }
        }
    }
}

pub fn gather(value: &Value, key: &str, found: &mut Vec<Value>) {
    match value {
        // Weeks begin on other days in other countries: calendars are compared day by day instead.
        Value::Object(fields) if key != "calendar day" && fields.get("t").is_some_and(|kind| kind == "calendar") => {}
        Value::Object(fields) => {
            if key == "calendar day"
                && fields.contains_key("n")
                && fields.contains_key("flag")
                && fields["state"] != "none"
            {
                found.push(value.clone());
            }
            for (name, field) in fields {
                if name == key {
                    found.push(field.clone());
                }
                gather(field, key, found);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| gather(item, key, found)),
        _ => {}
    }
}

#[test]
fn a_translation_that_nobody_signed_off_says_so_on_the_page() {
    let case = file("examples/right-thumb.yaml");
    assert!(sheet(&variant(&case, "ar", "standard", "a4")).data["furniture"]["state"].is_string());
    assert!(sheet(&variant(&case, "es", "standard", "a4")).data["furniture"]["state"].is_string());
    assert!(sheet(&variant(&case, "en", "standard", "a4")).data["furniture"]["state"].is_null());
}

#[test]
fn the_side_stands_on_the_first_page_and_the_foot_of_every_page() {
    let case = file("examples/right-thumb.yaml");
    for (side, word) in [("right", "Right"), ("left", "Left")] {
        let sheet = sheet(&variant(&case.replace("hand: right", &format!("hand: {side}")), "en", "standard", "a4"));
        let part = &sheet.data["parts"][0];
        assert_eq!(part["sections"][0]["blocks"][0]["side"], side);
        assert!(part["for"].as_str().is_some_and(|line| line.contains(&format!("{word} hand"))));
        let opposite = if word == "Right" { "Left hand" } else { "Right hand" };
        assert!(!part["for"].to_string().contains(opposite));
    }
}

#[test]
fn without_name_and_clinic_there_are_lines_to_write_on() {
    let sheet = sheet(crate::support::CASE);
    assert!(sheet.data["furniture"]["person"].is_null());
    let mut telephones = Vec::new();
    gather(&sheet.data, "telephone", &mut telephones);
    assert_eq!(telephones, [Value::Null]);
    let mut levels = Vec::new();
    gather(&sheet.data, "levels", &mut levels);
    assert_eq!(levels[0][1]["kind"], "write");
    WORKSHOP.typesetter.set(&sheet, &WORKSHOP.album).unwrap_or_else(|fault| panic!("{fault:?}"));
}

#[test]
fn a_review_a_day_after_the_fitting_and_one_two_years_later_both_print() {
    for review in ["2027-03-02", "2029-02-26"] {
        let case = crate::support::CASE.replace("2027-03-29", review);
        let pages = WORKSHOP
            .typesetter
            .set(&sheet(&case), &WORKSHOP.album)
            .unwrap_or_else(|fault| panic!("{review}: {fault:?}"));
        assert!(pages.count() <= 8, "{review}: {} pages", pages.count());
    }
}

#[test]
fn somebody_up_past_midnight_is_told_the_whole_wear_of_each_waking_day() {
    let case = format!("{}day: {{up: \"15:00\", bed: \"07:00\"}}\n", crate::support::CASE);
    let (_, plan) = planned(&case);
    let sheet = sheet(&case);
    let schedule = &sheet.data["parts"][0]["sections"][1]["blocks"][0];
    assert_eq!(schedule["t"], "schedule");
    let rows = schedule["rows"].as_array().expect("rows");
    let told: Vec<(&str, &str)> = rows
        .iter()
        .filter_map(|row| Some((row["amount"]["big"].as_str()?, row["amount"]["times"].as_str()?)))
        .collect();
    assert_eq!(told.len(), plan.break_in.steps.len());
    assert!(told.iter().all(|(_, times)| *times == "2 times"), "{told:?}");
    assert_eq!(told[0].0, "30");
    assert!(schedule["note"].to_string().contains("after midnight"));
}

#[test]
fn a_picture_of_a_page_is_a_picture() {
    let pages = WORKSHOP
        .typesetter
        .set(&sheet(crate::support::CASE), &WORKSHOP.album)
        .unwrap_or_else(|fault| panic!("{fault:?}"));
    let png = pages.png(0, 1.0).unwrap_or_else(|fault| panic!("{fault:?}"));
    assert!(png.starts_with(b"\x89PNG"));
    assert!(pages.png(99, 1.0).is_err());
}

/// A wrong finger is as bad as a wrong side: it stands in the tile of the hand and at the foot of every page.
#[test]
fn the_finger_stands_beside_the_hand_and_at_the_foot() {
    for (finger, word) in [("index", "Index finger"), ("little", "Little finger")] {
        let case = crate::support::case_for("mallet-tendon", "tip-shell-custom");
        let sheet = sheet(&case.replace("finger: ring", &format!("finger: {finger}")));
        let part = &sheet.data["parts"][0];
        let hand = &part["sections"][0]["blocks"][0];
        assert!(hand["finger"].as_str().is_some_and(|text| text.starts_with(word)), "{hand}");
        assert!(hand["alt"].as_str().is_some_and(|text| text.contains(word)), "{hand}");
        assert!(part["for"].as_str().is_some_and(|line| line.contains(&word.to_lowercase())), "{}", part["for"]);
    }
    let none = sheet(crate::support::CASE);
    assert!(none.data["parts"][0]["sections"][0]["blocks"][0]["finger"].is_null());
}

/// A part for each hand, each with its side in the tile and at the foot.
#[test]
fn both_hands_have_a_part_each() {
    let sheet = sheet(&file("examples/both-hands.yaml"));
    let parts = sheet.data["parts"].as_array().expect("parts");
    assert_eq!(parts.len(), 2);
    for (part, (side, word)) in parts.iter().zip([("right", "Right hand"), ("left", "Left hand")]) {
        assert_eq!(part["sections"][0]["blocks"][0]["side"], side);
        assert!(part["for"].as_str().is_some_and(|line| line.contains(word)), "{}", part["for"]);
    }
}
