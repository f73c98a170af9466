//! Fact sheets say of a condition what the content says, each reader in their own words.

use std::collections::{BTreeMap, BTreeSet};

use palmleaf::body::{Finger, Side};
use palmleaf::case::Paper;
use palmleaf::content::{Condition, Need, PrintSize, Regime, Wanted};
use palmleaf::document::{Arg, Component, Document, FactsAsk, FactsFor, JointRow, JointState, SheetKind, facts};
use palmleaf::ids::ConditionId;
use palmleaf::language::Language;
use palmleaf::picture::scene::Subject;
use serde_json::Value;

use crate::support::{WORKSHOP, said, text};

fn language(tag: &str) -> Language {
    WORKSHOP.languages.find(&tag.parse().expect("a tag")).expect("a language of the content")
}

fn ask<'l>(id: &'l ConditionId, condition: &'l Condition, reader: FactsFor, tag: &str) -> FactsAsk<'l> {
    FactsAsk {
        library: &WORKSHOP.library,
        id,
        condition,
        reader,
        language: language(tag),
        side: Side::Right,
        finger: Finger::Index,
        paper: Paper::A4,
        print: PrintSize::Standard,
    }
}

fn for_patients(id: &ConditionId, condition: &Condition) -> Document {
    facts(ask(id, condition, FactsFor::Patients, "en"))
}

fn components(document: &Document) -> impl Iterator<Item = &Component> {
    document.parts().flat_map(|part| &part.sections).flat_map(|section| section.components.values())
}

fn rows(document: &Document) -> Vec<&JointRow> {
    components(document)
        .filter_map(|component| match component {
            Component::Joints(rows) => Some(rows),
            _ => None,
        })
        .flatten()
        .collect()
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

fn whole(document: &Document) -> String {
    let mut found = Vec::new();
    texts(&said(document).data, &mut found);
    found.join("\n")
}

/// What the sheet prints: the state of each joint, by its name in the content.
fn printed(document: &Document) -> BTreeMap<String, JointState> {
    let mut found = BTreeMap::new();
    for row in rows(document) {
        let Some((_, Arg::List(joints))) = row.joints.args.first() else { panic!("joints are a list") };
        for joint in joints {
            let name = joint.key.trim_start_matches("joint-").to_owned();
            assert!(found.insert(name.clone(), row.state).is_none(), "{name} stands in two rows");
        }
    }
    found
}

/// What the requirements of the first phase with an orthosis ask for, read a second time.
fn required(condition: &Condition) -> BTreeMap<String, JointState> {
    let finger = condition.finger.or_else(|| condition.needs_finger().then_some(Finger::Index));
    let condition = finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
    let phase = condition.phases.iter().find(|phase| phase.wear != Regime::Off).expect("an orthosis is worn");
    let mut found = BTreeMap::new();
    let everybody = || phase.requires.iter().filter(|one| one.when.is_none());
    for one in everybody().filter(|one| matches!(one.need, Need::MustBeFree | Need::ShouldBeFree)) {
        found.insert(one.joint.to_string(), JointState::Free);
    }
    let some = phase.requires.iter().filter(|one| one.when.is_some());
    let ways = phase.one_of.iter().flat_map(|one| &one.ways).flat_map(|way| &way.requires);
    for one in some.chain(ways).filter(|one| matches!(one.need, Need::Must | Need::Should)) {
        found.insert(one.joint.to_string(), JointState::Varies);
    }
    // Of two demands on one joint, the first of the file is the one that is said.
    for one in everybody().collect::<Vec<_>>().into_iter().rev() {
        if let (Need::Must | Need::Should, Some(hold)) = (one.need, one.hold) {
            let state = match hold {
                Wanted::Still => JointState::Still,
                Wanted::Steady => JointState::Steady,
                Wanted::Stopped => JointState::Stopped,
                Wanted::Relative => JointState::Relative,
                Wanted::Coupled => JointState::Coupled,
                Wanted::Mobilised => JointState::Mobilised,
            };
            found.insert(one.joint.to_string(), state);
        }
    }
    found
}

#[test]
fn every_condition_has_a_sheet_for_every_reader_in_every_language_and_size() {
    for (id, condition) in &WORKSHOP.library.conditions {
        for tag in WORKSHOP.languages.tags() {
            for &reader in FactsFor::ALL.iter().filter(|&&reader| reader == FactsFor::Patients || tag == "en") {
                for &print in PrintSize::ALL {
                    let sheet = said(&facts(FactsAsk { print, ..ask(id, condition, reader, tag) }));
                    let sections = sheet.data["parts"][0]["sections"].as_array().map_or(0, Vec::len);
                    assert!(sections >= 5, "{id} {reader} {tag} has {sections} sections");
                }
            }
        }
    }
}

#[test]
fn joints_on_paper_are_those_of_the_condition() {
    for (id, condition) in &WORKSHOP.library.conditions {
        assert_eq!(printed(&for_patients(id, condition)), required(condition), "{id}");
    }
}

#[test]
fn a_joint_that_is_held_otherwise_is_found() {
    for (id, condition) in &WORKSHOP.library.conditions {
        let mut lying = condition.clone();
        let phase = lying.phases.iter_mut().find(|phase| phase.wear != Regime::Off).expect("an orthosis is worn");
        let held = |one: &&mut palmleaf::content::Requirement| {
            one.when.is_none() && one.need == Need::Must && one.hold.is_some()
        };
        let Some(one) = phase.requires.iter_mut().find(held) else { continue };
        one.hold = Some(if one.hold == Some(Wanted::Mobilised) { Wanted::Still } else { Wanted::Mobilised });
        assert_ne!(printed(&for_patients(id, &lying)), required(condition), "{id}");
    }
}

#[test]
fn every_sheet_shows_the_structures_by_name() {
    for (id, condition) in &WORKSHOP.library.conditions {
        for &reader in FactsFor::ALL {
            let document = facts(ask(id, condition, reader, "en"));
            let figures: Vec<_> =
                document.figures().filter(|figure| matches!(figure.request.subject, Subject::Anatomy { .. })).collect();
            let named: BTreeSet<String> =
                figures.iter().flat_map(|figure| &figure.names).map(|name| name.plain.key.to_string()).collect();
            for structure in &condition.structures {
                assert!(named.contains(&format!("structure-{structure}")), "{id}: {structure} has no name");
            }
            let learned = figures.iter().flat_map(|figure| &figure.names).any(|name| name.term.is_some());
            assert_eq!(learned, reader == FactsFor::Students, "{id}");
        }
    }
}

#[test]
fn every_sheet_shows_an_orthosis_that_fits() {
    for (id, condition) in &WORKSHOP.library.conditions {
        let document = for_patients(id, condition);
        let shown = document.figures().filter(|figure| matches!(figure.request.subject, Subject::Worn(_))).count();
        assert!((1..=3).contains(&shown), "{id} shows {shown} orthoses");
    }
}

#[test]
fn patients_read_no_learned_term() {
    let english = WORKSHOP.words.catalogue("en").expect("English");
    let plain = |key: &str| {
        let mut text = String::new();
        for element in &english.message(key).expect("a structure's name").entry.elements {
            if let fluent_syntax::ast::PatternElement::TextElement { value } = element {
                text.push_str(value);
            }
        }
        text.to_lowercase()
    };
    for (id, condition) in &WORKSHOP.library.conditions {
        let sheet = whole(&for_patients(id, condition)).to_lowercase();
        let students = whole(&facts(ask(id, condition, FactsFor::Students, "en"))).to_lowercase();
        for structure in &condition.structures {
            let (own, term) = (plain(&format!("structure-{structure}")), plain(&format!("structure-{structure}-term")));
            assert!(sheet.contains(&own), "{id}: {own}");
            assert!(students.contains(&term), "{id}: {term}");
            assert!(own == term || !sheet.contains(&term), "{id}: patients read `{term}`");
        }
    }
}

#[test]
fn the_course_has_a_step_for_each_phase_and_the_lengths_of_the_content() {
    for (id, condition) in &WORKSHOP.library.conditions {
        let sheet = whole(&for_patients(id, condition));
        for (number, phase) in condition.phases.iter().enumerate() {
            let line = sheet.lines().find(|line| line.starts_with(&format!("Step {}, ", number + 1)));
            let line = line.unwrap_or_else(|| panic!("{id}: no step {}", number + 1));
            let set = condition.protocol.iter().flat_map(|set| &set.lengths).find(|set| set.phase == phase.id);
            let (from, to) = match set {
                Some(set) => (Some(set.at_least), Some(set.at_most)),
                None => (phase.lasts, phase.lasts_up_to.or(phase.lasts)),
            };
            match (from, to) {
                (Some(from), Some(to)) => {
                    // In weeks where both ends are whole ones, otherwise in days.
                    let (first, last) = match (from.whole_weeks(), to.whole_weeks()) {
                        (Some(from), Some(to)) => (from.to_string(), format!("{to} week")),
                        _ => (from.days().to_string(), format!("{} day", to.days())),
                    };
                    assert!(line.contains(&first) && line.contains(&last), "{id}: {line}");
                }
                _ => assert!(line.contains("no fixed time"), "{id}: {line}"),
            }
        }
    }
}

#[test]
fn a_sheet_of_nobody_has_no_day_and_no_hour() {
    for (id, condition) in &WORKSHOP.library.conditions {
        let document = for_patients(id, condition);
        assert!(document.meta.date.is_none() && document.furniture.person.is_none());
        let timed = |component: &Component| {
            matches!(component, Component::Strips { .. } | Component::Schedule { .. } | Component::Calendar { .. })
        };
        assert!(!components(&document).any(timed), "{id}");
        assert!(whole(&document).contains("Your own guide says when to wear your splint"), "{id}");
    }
}

#[test]
fn the_papers_of_a_case_are_not_joined_by_fact_sheets() {
    assert!(SheetKind::ALL.iter().all(|kind| !["facts", "students"].contains(&kind.word())));
}

#[test]
fn sheets_for_patients_take_two_pages_and_all_keep_the_standard() {
    let ids = ["de-quervain", "flexor-zone-two-repair", "trigger-finger", "dorsal-hand-burn", "lateral-elbow"];
    // Every language once: names in a picture have to be words that a reader of the file can take.
    for (number, tag) in WORKSHOP.languages.tags().into_iter().enumerate() {
        let id = ids[number % ids.len()];
        let id: ConditionId = id.parse().expect("an id");
        let condition = &WORKSHOP.library.conditions[&id];
        let side = Side::ALL[number % 2];
        let set = |ask| WORKSHOP.facts(ask).unwrap_or_else(|findings| panic!("{id}: {}", text(&findings)));
        let standard = set(FactsAsk { side, ..ask(&id, condition, FactsFor::Patients, tag) });
        assert!(standard.count() <= 3, "{id} in {tag} has {} pages", standard.count());
        let print = PrintSize::ALL[number % 3];
        let students = set(FactsAsk { print, paper: Paper::Letter, ..ask(&id, condition, FactsFor::Students, "en") });
        for pages in [&standard, &students] {
            let pdf = pages.undated_pdf().expect("a PDF that keeps PDF/UA-1");
            assert_eq!(pdf, pages.undated_pdf().expect("the same again"));
        }
    }
}
