//! Cases at the edge of what may be: the shortest and the longest plan, names wider than a page, nothing about the clinic.

use palmleaf::document::{Component, SheetKind};
use palmleaf::pipeline::Form;

use crate::support::{CASE, WORKSHOP, codes, hands, text};

/// Pages of each paper of a case.
fn pages(case: &str) -> Vec<(SheetKind, usize)> {
    let hands = hands(case);
    SheetKind::ALL
        .iter()
        .filter_map(|&kind| {
            let printed = WORKSHOP.print(kind, &hands).unwrap_or_else(|faults| panic!("{kind}: {}", text(&faults)))?;
            match printed.form {
                Form::Pages(pages) => {
                    pages.pdf().unwrap_or_else(|fault| panic!("{kind}: {fault:?}"));
                    Some((kind, pages.count()))
                }
                Form::Page(_) => None,
            }
        })
        .collect()
}

fn of(pages: &[(SheetKind, usize)], kind: SheetKind) -> usize {
    pages.iter().find(|(one, _)| *one == kind).map_or(0, |(_, count)| *count)
}

#[test]
fn a_plan_of_one_day_has_every_sheet() {
    for language in ["en", "ar"] {
        let case = CASE.replace("2027-03-29", "2027-03-02").replace("language: en", &format!("language: {language}"));
        let pages = pages(&case);
        assert_eq!(of(&pages, SheetKind::Diary), 1, "{pages:?}");
        assert_eq!(of(&pages, SheetKind::Card), 1, "{pages:?}");
        assert!(of(&pages, SheetKind::Guide) >= 3, "{pages:?}");
    }
}

/// Nobody keeps two years of a diary, and nobody prints it: it ends after twelve weeks and says so.
#[test]
fn a_plan_of_two_years_has_every_sheet_and_a_diary_of_twelve_weeks() {
    let case = CASE.replace("2027-03-29", "2029-02-27");
    let pages = pages(&case);
    assert_eq!(of(&pages, SheetKind::Diary), 12, "{pages:?}");
    assert!(of(&pages, SheetKind::Guide) <= 12, "{pages:?}");
    let hands = hands(&case);
    let diary = palmleaf::document::sheet(SheetKind::Diary, &hands[0], &[]).expect("a diary");
    let says = |section: &palmleaf::document::Section| match section.components.get("advice") {
        Some(Component::Advice(list)) => list.iter().any(|message| &*message.key == "diary-more"),
        _ => false,
    };
    let said: Vec<bool> = diary.parts().flat_map(|part| &part.sections).map(says).collect();
    assert_eq!(said.iter().filter(|said| **said).count(), 1);
    assert_eq!(said.last(), Some(&true));
    assert_eq!(codes(&CASE.replace("2027-03-29", "2029-03-05")), ["case/dates-out-of-order"], "more than two years");
}

#[test]
fn the_longest_names_leave_every_sheet_its_pages() {
    let words = "Maximiliana Bartholomea ".repeat(5);
    for name in ["W".repeat(120), words.trim().to_owned()] {
        for print in ["standard", "giant"] {
            let case = format!(
                "{CASE}print: {print}\nperson: {{name: {name}}}\nclinic: {{name: {name}, telephone: 01632 960 142, emergency: \"999\"}}\n"
            );
            let (own, usual) = (pages(&case), pages(&format!("{CASE}print: {print}\n")));
            for (kind, count) in &usual {
                assert!((1..=count * 2).contains(&of(&own, *kind)), "{kind} {print}: {own:?}, else {usual:?}");
            }
        }
    }
}

#[test]
fn a_clinic_without_telephone_and_a_case_without_clinic_have_every_sheet() {
    for clinic in ["", "clinic: {name: Harbour Row Hand Clinic}\n", "clinic: {emergency: \"999\"}\n"] {
        let pages = pages(&format!("{CASE}{clinic}"));
        assert_eq!(pages.len(), 5, "{clinic}: {pages:?}");
    }
}

#[test]
fn a_case_without_a_review_is_told_to_have_one() {
    let case = CASE.replace("review: 2027-03-29\n", "");
    assert_eq!(codes(&case), ["field/missing"]);
}
