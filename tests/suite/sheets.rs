//! The papers beside the guide: card, diary, exercises, letter.

use std::collections::BTreeSet;

use serde_json::Value;

use palmleaf::document::{Component, Document, SheetKind};

use palmleaf::pipeline::Form;

use crate::support::{CASE, WORKSHOP, case_for, examples, hands, judge, said};

/// A case with another language and print size.
fn variant(case: &str, language: &str, print: &str) -> String {
    let kept: String = case
        .lines()
        .filter(|line| !["language:", "print:"].iter().any(|key| line.starts_with(key)))
        .map(|line| format!("{line}\n"))
        .collect();
    format!("{kept}language: {language}\nprint: {print}\n")
}

fn document(kind: SheetKind, case: &str) -> Option<Document> {
    let hands = hands(case);
    palmleaf::document::sheet(kind, &hands[0], &hands[1..])
}

fn components(document: &Document) -> impl Iterator<Item = &Component> {
    document.parts().flat_map(|part| &part.sections).flat_map(|section| section.components.values())
}

/// Every text of a sheet.
fn texts(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.clone()),
        Value::Array(items) => items.iter().for_each(|item| texts(item, found)),
        Value::Object(fields) => fields.values().for_each(|field| texts(field, found)),
        _ => {}
    }
}

fn spoken(document: &Document) -> String {
    let sheet = said(document);
    let mut found = Vec::new();
    texts(&sheet.data["parts"], &mut found);
    found.push(sheet.data["meta"]["description"].to_string());
    found.join("\n")
}

fn message(id: &str) -> String {
    let english = WORKSHOP.languages.find(&"en".parse().expect("a tag")).expect("English");
    let speaker = WORKSHOP.words.speaker(&english).expect("English is spoken");
    speaker.say(&palmleaf::document::Message::new(id.to_owned()), &[]).expect("a message")
}

#[test]
fn every_sheet_of_every_example_sets_in_every_language_and_size() {
    for path in examples() {
        let case = std::fs::read_to_string(&path).expect("an example");
        for language in WORKSHOP.languages.tags() {
            for print in ["standard", "large", "giant"] {
                let hands = hands(&variant(&case, language, print));
                let asked_for = hands[0].0.case().print().word() == print;
                for &kind in SheetKind::ALL.iter().filter(|&&kind| kind != SheetKind::Guide) {
                    let printed = WORKSHOP
                        .print(kind, &hands)
                        .unwrap_or_else(|faults| panic!("{} {language} {print} {kind}: {faults:?}", path.display()));
                    let Some(Form::Pages(set)) = printed.map(|printed| printed.form) else { continue };
                    set.pdf().unwrap_or_else(|fault| panic!("{} {language} {kind}: {fault:?}", path.display()));
                    let pages = set.count();
                    // A factor may ask for larger print.
                    if print == "standard" && asked_for && kind == SheetKind::Card {
                        assert_eq!(pages, hands.len(), "{} {language}: one side for each hand", path.display());
                    }
                    if print == "standard" && asked_for && kind == SheetKind::Diary {
                        let days = hands[0].1.review.days_since(hands[0].1.days[0].date);
                        let weeks = usize::try_from(days).expect("a count").div_ceil(7);
                        assert_eq!(pages, weeks * hands.len(), "{} {language}: a page a week", path.display());
                    }
                }
            }
        }
    }
}

/// A card may be short, but never of what keeps healing tissue safe.
#[test]
fn a_card_leaves_out_no_vital_step_and_no_strap() {
    let mut cards = 0;
    for condition in WORKSHOP.library.conditions.keys() {
        for orthosis in WORKSHOP.library.orthoses.keys() {
            let Ok(plans) = judge(&case_for(condition.as_str(), orthosis.as_str())).and_then(|judged| judged.plans())
            else {
                continue;
            };
            let (admitted, plan) = &plans[0];
            let card = palmleaf::document::sheet(SheetKind::Card, &plans[0], &[]).expect("a card");
            cards += 1;
            for component in components(&card) {
                let Component::Steps { kind, items, .. } = component else { continue };
                let steps = if kind.word() == "on" { &plan.donning.value } else { &plan.doffing.value };
                let kept: Vec<String> = items.iter().map(|item| item.say.key.to_string()).collect();
                for step in steps.iter().filter(|step| WORKSHOP.library.steps.is_vital(step)) {
                    assert!(
                        kept.contains(&format!("step-{step}")),
                        "{condition} {orthosis}: {step} is not on the card"
                    );
                }
                let straps = steps.iter().filter(|step| matches!(step.as_str(), "close-strap" | "undo-strap")).count();
                let all = kept.iter().any(|key| key.starts_with("card-straps-"));
                let one = kept.iter().any(|key| matches!(key.as_str(), "step-close-strap" | "step-undo-strap"));
                assert_eq!(all || one, straps > 0, "{condition} {orthosis}: straps are closed and undone");
                let several = admitted.case().orthosis.straps.len() > 1;
                assert!(!(one && several), "{condition} {orthosis}: one strap stands for all");
                assert!(kept.len() <= steps.len() && (kept.len() >= 3 || kept.len() == steps.len() || straps > 1));
            }
        }
    }
    assert!(cards > 100, "{cards} cards");
}

#[test]
fn a_diary_has_a_row_for_each_day_until_the_visit_and_boxes_for_what_the_plan_has() {
    for path in examples() {
        let case = std::fs::read_to_string(&path).expect("an example");
        let hands = hands(&case);
        let diary = palmleaf::document::sheet(SheetKind::Diary, &hands[0], &[]).expect("a diary");
        let days: Vec<_> = components(&diary)
            .filter_map(|component| match component {
                Component::Diary { days, .. } => Some(days.clone()),
                _ => None,
            })
            .flatten()
            .collect();
        let plan = &hands[0].1;
        let first = plan.days[0].date;
        assert_eq!(days.len(), usize::try_from(plan.review.days_since(first)).expect("a count").max(1));
        for (offset, row) in days.iter().enumerate() {
            assert_eq!(row.date, first.offset(i32::try_from(offset).expect("a count")));
            assert_eq!(row.number, i64::try_from(offset).expect("a count") + 1);
            assert_eq!(row.checks, usize::from(plan.skin.checks.get()));
            let Some(planned) = plan.days.iter().find(|day| day.date == row.date) else {
                assert!(row.wear.is_none() && row.wears.is_none() && row.sessions == 0);
                continue;
            };
            assert!(row.wear.is_some(), "{} {}", path.display(), row.date);
            assert_eq!(row.wears, planned.wears.map(|(times, _)| usize::from(times)));
            let sessions = planned.sessions.iter().filter(|(_, session)| !session.exercises.is_empty()).count();
            assert_eq!(row.sessions, sessions);
            assert!(!(row.hours && row.wears.is_some()), "hours are written or wears are ticked, not both");
        }
    }
}

#[test]
fn a_visit_on_the_day_of_the_fitting_and_one_in_two_years_have_a_diary() {
    let rows = |review: &str| {
        let diary = document(SheetKind::Diary, &CASE.replace("2027-03-29", review)).expect("a diary");
        (components(&diary).filter(|component| matches!(component, Component::Diary { .. })).count(), diary)
    };
    assert_eq!(rows("2027-03-02").0, 1);
    let (weeks, long) = rows("2029-02-28");
    assert_eq!(weeks, 12, "a diary ends, however late the visit is");
    assert!(spoken(&long).contains("Week 12") && !spoken(&long).contains("Week 13"));
}

/// What a helper, a teacher or an employer reads is the case's choice, and nothing by itself.
#[test]
fn a_letter_tells_nothing_of_health_unless_the_case_says_so() {
    let told = |detail: &str| {
        let case = format!("{CASE}activities: [lift-baby, open-jar]\nletter: {{to: employer, detail: {detail}}}\n");
        spoken(&document(SheetKind::Letter, &case).expect("a letter"))
    };
    let health = [
        message("condition-de-quervain-name"),
        message("condition-de-quervain-what"),
        message("condition-de-quervain-aim"),
        message("orthosis-forearm-thumb-spica-name"),
    ];
    for (detail, hours) in [("none", false), ("plan", true)] {
        let text = told(detail);
        for line in &health {
            assert!(!text.contains(line.as_str()), "{detail}: {line}");
        }
        assert!(!text.contains("strains your hand"), "{detail}: why a job has to wait says what ails the hand");
        assert_eq!(text.contains("Splint on"), hours, "{detail}");
    }
    let text = told("full");
    assert!(text.contains(&health[0]) && text.contains(&health[3]) && text.contains("strains your hand"));
    assert!(text.contains("employer") && text.contains("right hand") && text.contains("29 March 2027"), "{text}");
    // A case that does not ask for a letter in particular tells nothing either.
    let silent = spoken(&document(SheetKind::Letter, CASE).expect("a letter"));
    assert!(health.iter().all(|line| !silent.contains(line.as_str())));
}

/// Only the guide says what the splint is for: the other papers hang on a wall or travel.
#[test]
fn card_and_diary_and_exercises_do_not_name_the_condition() {
    for kind in [SheetKind::Card, SheetKind::Diary, SheetKind::Exercises] {
        let text = spoken(&document(kind, CASE).expect("a sheet"));
        for line in ["condition-de-quervain-name", "condition-de-quervain-aim"] {
            assert!(!text.contains(&message(line)), "{kind}: {line}");
        }
        assert!(text.contains("ight hand"), "{kind} says which hand");
    }
}

/// A sheet of exercises exists where the programme has some, and not where the therapist left all out.
#[test]
fn a_case_without_exercises_has_no_sheet_of_them() {
    let given = |case: &str| -> BTreeSet<String> {
        hands(case)[0].1.programmes.iter().flat_map(|one| &one.exercises).map(|one| one.id.to_string()).collect()
    };
    let mut case = format!("{CASE}overrides:\n");
    let mut left_out = 0;
    assert!(document(SheetKind::Exercises, CASE).is_some());
    // Others take the place of those that are left out, until none is left.
    for _ in 0..20 {
        let next = if left_out == 0 { given(CASE) } else { given(&case) };
        for id in &next {
            case.push_str(&format!("  - {{exercise: {id}, use: leave-out, because: a wound is open}}\n"));
        }
        left_out += next.len();
        if next.is_empty() {
            break;
        }
    }
    assert!(left_out > 3 && given(&case).is_empty());
    assert!(document(SheetKind::Exercises, &case).is_none());
}
