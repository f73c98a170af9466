//! The record: its page says what its JSON says and no more; the questions are those of the case, the worst first.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use palmleaf::document::{Message, SheetKind, TeachBack, TeachTopic, teach_back};
use palmleaf::language::WordState;
use palmleaf::output::record::{GivenFacts, Record};
use palmleaf::pipeline::Planned;

use crate::support::{CASE, WORKSHOP, case_for, command, hands, judge};

/// Every example in every language, with its name.
fn examples() -> Vec<(String, String)> {
    let mut all = Vec::new();
    for path in crate::support::examples() {
        let case = std::fs::read_to_string(&path).expect("an example");
        for tag in WORKSHOP.languages.tags() {
            let kept: Vec<&str> = case.lines().filter(|line| !line.starts_with("language:")).collect();
            let name = format!("{} {tag}", path.file_stem().expect("a name").to_string_lossy());
            all.push((name, format!("{}\nlanguage: {tag}\n", kept.join("\n"))));
        }
    }
    all
}

const OVERRIDDEN: &str = "\
overrides:
  - {mark_limit: 40 min, because: skin marks easily and fades well, accept_risk: true}
";

fn made(hands: &[Planned<'_>]) -> (Record, Value) {
    let sheets = BTreeMap::from([
        ("guide", GivenFacts::of_pages(5, b"a guide")),
        ("reminders", GivenFacts::of_events(7, b"a calendar")),
    ]);
    let record = WORKSHOP.record(hands, sheets, WordState::Drafted).expect("a record");
    let page = WORKSHOP.record_tree(&record, hands).expect("a page");
    (record, page)
}

/// Every text and number of a tree, with the names of the fields that it stands under.
fn leaves(value: &Value, under: &str, visit: &mut impl FnMut(&str, String)) {
    match value {
        Value::String(text) => visit(under, text.clone()),
        Value::Number(number) => visit(under, number.to_string()),
        Value::Array(items) => items.iter().for_each(|item| leaves(item, under, visit)),
        Value::Object(fields) => {
            for (name, field) in fields {
                // Names of sheets and of content are facts as well; names of fields are not.
                if ["/sheets", "/not-confirmed"].iter().any(|end| under.ends_with(end)) {
                    visit(under, name.clone());
                }
                leaves(field, &format!("{under}/{name}"), visit);
            }
        }
        Value::Null | Value::Bool(_) => {}
    }
}

/// The texts of a page, without what only the typesetter reads.
fn printed(page: &Value) -> Vec<String> {
    let mut texts = Vec::new();
    for part in ["blocks", "line", "furniture"] {
        leaves(&page[part], "", &mut |under, text| {
            if !["/t", "/level", "/widths", "/mark"].iter().any(|end| under.ends_with(end)) {
                texts.push(text);
            }
        });
    }
    texts
}

/// The facts of the JSON that the page does not say.
fn unsaid(json: &Value, page: &Value) -> Vec<String> {
    let texts = printed(page).join("\n");
    let mut lost = Vec::new();
    leaves(json, "", &mut |under, fact| {
        // A result is said in the words of its mark, a word that chooses a sentence by that sentence, days that are
        // alike by the first and the last of them; a question's topic stands in its sentence.
        let elsewhere = ["/result", "/translation", "/hands/hand", "/days/date", "/topic", "/decided-by"];
        // In one language a question stands once, and is read out of the same words.
        if elsewhere.iter().any(|end| under.ends_with(end)) || texts.contains(&fact) {
            return;
        }
        lost.push(format!("{under}: {fact}"));
    });
    lost
}

fn words(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).map(str::to_lowercase)
}

/// Words of the page that neither the JSON nor the messages have.
fn invented(json: &Value, page: &Value) -> BTreeSet<String> {
    let mut known: BTreeSet<String> = ["to", "palmleaf", "blake3", "icd", "cm"].map(str::to_owned).into();
    leaves(json, "", &mut |_, fact| known.extend(words(&fact)));
    for (tag, catalogue) in WORKSHOP.words.catalogues() {
        for (_, text) in ["record-", "teach-", "guide-page"].iter().flat_map(|prefix| catalogue.texts(prefix)) {
            known.extend(words(&text));
        }
        known.insert(tag.to_owned());
    }
    known.extend(WORKSHOP.languages.iter().flat_map(|entry| words(&entry.english).collect::<Vec<_>>()));
    // Numbers of the list of sources.
    known.extend((1..60).map(|number: u8| number.to_string()));
    printed(page).iter().flat_map(|text| words(text)).filter(|word| !known.contains(word)).collect()
}

#[test]
fn the_page_says_every_fact_of_the_json_and_no_other() {
    let mut cases = examples();
    cases.push(("overridden".to_owned(), format!("{CASE}{OVERRIDDEN}")));
    for (name, case) in cases {
        let hands = hands(&case);
        let (record, page) = made(&hands);
        let json = serde_json::to_value(&record).expect("JSON");
        assert_eq!(unsaid(&json, &page), Vec::<String>::new(), "{name}: lost on the page");
        assert_eq!(invented(&json, &page), BTreeSet::new(), "{name}: only on the page");
    }
}

#[test]
fn a_fact_that_is_lost_or_invented_is_found() {
    let hands = hands(CASE);
    let (mut record, page) = made(&hands);
    let json = serde_json::to_value(&record).expect("JSON");
    let mut poorer = page.clone();
    let blocks = poorer["blocks"].as_array_mut().expect("blocks");
    blocks.retain(|block| block["t"] != "asks");
    assert!(!unsaid(&json, &poorer).is_empty());
    record.hands[0].plan.review = "2031-12-24".to_owned();
    let other = WORKSHOP.record_tree(&record, &hands).expect("a page");
    assert!(invented(&json, &other).contains("2031"));
}

#[test]
fn a_result_is_told_by_its_word_and_its_mark() {
    let (record, page) = made(&hands(CASE));
    let mut marks = BTreeSet::new();
    leaves(&page["blocks"], "", &mut |under, text| {
        if under.ends_with("/mark") {
            marks.insert(text);
        }
    });
    let results = record.hands[0].verdict.iter().flat_map(|phase| &phase.lines).map(|line| line.result.to_owned());
    assert_eq!(marks, results.collect());
}

#[test]
fn the_record_has_the_reason_of_an_override_and_the_risk() {
    let (record, page) = made(&hands(&format!("{CASE}{OVERRIDDEN}")));
    let texts = printed(&page);
    let set: Vec<_> = record.hands[0].plan.rules.iter().filter(|rule| rule.because.is_some()).collect();
    assert_eq!(set.len(), 1);
    assert!(set[0].risk_accepted);
    assert!(texts.contains(&"skin marks easily and fades well".to_owned()));
    assert!(texts.contains(&"RISK ACCEPTED".to_owned()));
    // And a case without one says so, and shows no risk.
    let (_, page) = made(&hands(CASE));
    assert!(!printed(&page).contains(&"RISK ACCEPTED".to_owned()));
}

#[test]
fn the_record_names_nobody_whom_the_case_does_not_name() {
    let (record, page) = made(&hands(CASE));
    assert!(record.person.is_none() && record.reference.is_none() && record.clinic.is_none());
    assert_eq!(printed(&page).iter().filter(|text| *text == "not named in the case").count(), 3);
}

#[test]
fn the_hash_is_of_the_bytes() {
    let given = GivenFacts::of_pages(1, b"");
    // The hash of nothing, as the published test vectors of BLAKE3 have it.
    assert_eq!(given.blake3, "af1349b9f5f9a1a6a0404dea36dcc9499bcb25c9adc112b7cc9a93cae41f3262");
    assert_ne!(given.blake3, GivenFacts::of_pages(1, b"abd").blake3);
}

// ---- the questions ----

fn points(hand: &TeachBack, topic: TeachTopic) -> Vec<&Message> {
    hand.questions.iter().filter(|question| question.topic == topic).flat_map(|question| &question.points).collect()
}

/// Steps that a list of points names.
fn steps(points: &[&Message]) -> BTreeSet<String> {
    points.iter().filter_map(|point| point.key.strip_prefix("step-")).map(str::to_owned).collect()
}

/// A case of every condition with the first orthosis that fits it.
fn every_condition() -> Vec<String> {
    let library = &WORKSHOP.library;
    let fitting = |condition: &str| {
        library
            .orthoses
            .keys()
            .map(|orthosis| case_for(condition, orthosis.as_str()))
            .find(|case| judge(case).is_ok_and(|judged| judged.planned.is_ok()))
    };
    library.conditions.keys().filter_map(|condition| fitting(condition.as_str())).collect()
}

#[test]
fn the_questions_hold_every_vital_step_and_no_step_of_another_case() {
    let mut vital = 0;
    let cases = every_condition();
    assert!(cases.len() > 40);
    for case in cases {
        let hands = hands(&case);
        let (list, plan) = (teach_back(&hands), &hands[0].1);
        for (topic, own) in [(TeachTopic::On, &plan.donning.value), (TeachTopic::Off, &plan.doffing.value)] {
            let asked = steps(&points(&list[0], topic));
            let known: BTreeSet<String> = own.iter().map(ToString::to_string).collect();
            assert!(asked.is_subset(&known), "{topic}: {asked:?} of {known:?}\n{case}");
            if plan.washing() == palmleaf::content::Washing::Never {
                assert!(asked.is_empty() && !points(&list[0], TeachTopic::KeepOn).is_empty(), "{case}");
                continue;
            }
            for step in own.iter().filter(|step| WORKSHOP.library.steps.is_vital(step)) {
                vital += 1;
                assert!(asked.contains(step.as_str()), "{topic} lacks {step}\n{case}");
            }
        }
    }
    assert!(vital > 20, "only {vital} vital steps were looked for");
}

#[test]
fn what_harms_most_is_asked_first() {
    for case in every_condition() {
        let hands = hands(&case);
        let (list, plan) = (teach_back(&hands), &hands[0].1);
        let topics: Vec<TeachTopic> = list[0].questions.iter().map(|question| question.topic).collect();
        assert_eq!(topics[0], TeachTopic::Emergency, "{case}");
        let at = |topic| topics.iter().position(|known| *known == topic);
        let guarded = plan.phases[0].rules.protective;
        for step in [TeachTopic::KeepOn, TeachTopic::On, TeachTopic::Bans] {
            if let Some(step) = at(step) {
                assert!(!guarded || Some(step) < at(TeachTopic::Skin), "{topics:?}\n{case}");
            }
        }
        assert!(
            at(TeachTopic::Hours) > at(TeachTopic::Skin)
                && at(TeachTopic::Exercises).is_none_or(|last| last == topics.len() - 1)
        );
    }
}

#[test]
fn both_hands_are_told_apart_first_and_nothing_is_asked_twice() {
    let case = std::fs::read_to_string(crate::support::path("examples/both-hands.yaml")).expect("an example");
    let (record, _) = made(&hands(&case));
    let [first, second] = record.hands.as_slice() else { panic!("two hands") };
    assert_eq!(first.teach_back[0].topic, TeachTopic::Hands.word());
    assert_eq!(first.teach_back[0].points.len(), 2);
    for topic in [TeachTopic::On, TeachTopic::Off, TeachTopic::Hours] {
        assert!(second.teach_back.iter().any(|question| question.topic == topic.word()), "{topic}");
    }
    let once = |hand: &palmleaf::output::record::HandFacts| {
        hand.teach_back.iter().any(|question| question.topic == TeachTopic::Emergency.word())
    };
    assert!(once(first) && !once(second));
}

#[test]
fn questions_are_asked_in_the_language_of_the_person() {
    for (tag, ask) in [("en", "Whom do you call?"), ("es", "¿A quién llama?"), ("ar", "بمن تتصل؟")] {
        let (record, page) = made(&hands(&CASE.replace("language: en", &format!("language: {tag}"))));
        let call = record.hands[0].teach_back.iter().find(|question| question.topic == TeachTopic::Call.word());
        let call = call.expect("a question about the telephone");
        assert!(call.asked.ends_with(ask) && call.ask.ends_with("Whom do you call?"));
        assert!(printed(&page).contains(&call.asked));
    }
}

// ---- a sheet that has nothing ----

#[test]
fn a_sheet_asked_for_by_name_that_has_nothing_says_so_and_ends_well() {
    let given = |case: &str| -> Vec<String> {
        hands(case)[0].1.programmes[0].exercises.iter().map(|exercise| exercise.id.to_string()).collect()
    };
    // Others take the place of those that are left out, until none is left.
    let mut case = format!("{CASE}overrides:\n");
    let mut next = given(CASE);
    while !next.is_empty() {
        for id in &next {
            case.push_str(&format!("  - {{exercise: {id}, use: leave-out, because: a wound is open}}\n"));
        }
        next = given(&case);
    }
    assert!(palmleaf::document::sheet(SheetKind::Exercises, &hands(&case)[0], &[]).is_none());
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("case.yaml");
    std::fs::write(&file, case).expect("written");
    let (file, out) = (file.to_string_lossy().into_owned(), folder.path().to_string_lossy().into_owned());
    let run = |sheets: &str| {
        command(&["build", &file, "--sheets", sheets, "--out", &out, "--format", "json"]).output().expect("it runs")
    };
    let named = run("exercises");
    assert!(named.status.success());
    assert!(String::from_utf8_lossy(&named.stdout).contains("output/nothing-on-it"));
    let all = run("all");
    assert!(all.status.success());
    let all = String::from_utf8_lossy(&all.stdout).into_owned();
    assert!(!all.contains("output/nothing-on-it") && all.contains("record-") && all.contains(".pdf"));
}
