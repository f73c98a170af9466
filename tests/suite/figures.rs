//! Pictures in the guide: which there are, whose hand they show, and what is said of them.

use std::collections::BTreeSet;

use serde_json::Value;

use palmleaf::body::{Side, View};
use palmleaf::document::{Arg, Component, Document, Message};
use palmleaf::picture::scene::{Request, Subject};

use crate::support::{CASE, WORKSHOP, case_for, examples, file, guide, hands, sheet};

fn document(case: &str) -> Document {
    guide(&hands(case))
}

fn requests(case: &str) -> Vec<Request> {
    document(case).figures().map(|figure| figure.request.clone()).collect()
}

/// Everything on a sheet that names a picture.
fn named(value: &Value, found: &mut Vec<Value>) {
    if value.get("picture").is_some_and(Value::is_string) {
        found.push(value.clone());
    }
    match value {
        Value::Array(items) => items.iter().for_each(|item| named(item, found)),
        Value::Object(fields) => fields.values().for_each(|field| named(field, found)),
        _ => {}
    }
}

fn spoken(case: &str, language: &str) -> String {
    let kept: String =
        case.lines().filter(|line| !line.starts_with("language:")).map(|line| format!("{line}\n")).collect();
    format!("{kept}language: {language}\n")
}

/// Words of a side in a language: its own, and those of the other side.
fn words(language: &str, side: Side) -> (&'static [&'static str], &'static [&'static str]) {
    let (left, right) = crate::languages::sides(language);
    if side == Side::Left { (left, right) } else { (right, left) }
}

#[test]
fn a_splint_with_a_look_is_shown_at_a_glance_in_its_steps_and_in_the_skin_check() {
    let mut seen = 0;
    for path in examples() {
        for part in document(&std::fs::read_to_string(&path).expect("an example")).parts() {
            for component in part.sections.iter().flat_map(|section| section.components.values()) {
                match component {
                    Component::Hand { figures, .. } => {
                        assert_eq!(figures.len(), 2, "{}", path.display());
                        assert_ne!(figures[0].request.view, figures[1].request.view);
                    }
                    Component::Spots { items, figures } => {
                        assert!((1..=3).contains(&figures.len()), "{}", path.display());
                        let mut shown: Vec<usize> = figures
                            .iter()
                            .flat_map(|figure| match &figure.request.subject {
                                Subject::Spots { places, .. } => places.iter().map(|(number, _)| *number).collect(),
                                _ => Vec::new(),
                            })
                            .collect();
                        shown.sort_unstable();
                        shown.dedup();
                        assert!(shown.iter().all(|number| *number < items.len()), "a letter that no line explains");
                    }
                    Component::Steps { items, .. } => {
                        for item in items {
                            let key = item.say.key.strip_prefix("step-").expect("a step");
                            let row = WORKSHOP.library.handling.contains_key(&key.parse().expect("an id"));
                            assert_eq!(item.figure.is_some(), row, "{}: {key}", path.display());
                            seen += usize::from(row);
                        }
                    }
                    _ => {}
                }
            }
        }
    }
    assert!(seen > 20, "{seen}");
}

/// The angles of a case stand over those of the content: in the pictures, too.
#[test]
fn the_splint_in_the_pictures_is_the_one_of_the_case() {
    for path in examples() {
        let hands = hands(&std::fs::read_to_string(path).expect("an example"));
        for (admitted, plan) in &hands {
            let case = admitted.case();
            let finger = case.finger.unwrap_or(palmleaf::body::Finger::Index);
            let own = case.orthosis.for_finger(finger);
            let document = guide(&[(admitted.clone(), plan.clone())]);
            for figure in document.figures() {
                let worn = match &figure.request.subject {
                    Subject::Worn(worn) | Subject::Step { worn, .. } | Subject::Spots { worn, .. } => Some(worn),
                    Subject::Exercise { worn, .. } => worn.as_ref(),
                    _ => None,
                };
                if let Some(worn) = worn {
                    assert_eq!(worn.orthosis, own);
                }
                assert_eq!(figure.request.side, case.file.hand);
                assert!(case.finger.is_none_or(|finger| figure.request.finger == finger));
            }
        }
    }
}

#[test]
fn every_picture_is_described_and_by_the_side_of_the_case() {
    for path in examples() {
        let text = std::fs::read_to_string(&path).expect("an example");
        for language in WORKSHOP.languages.tags() {
            let sheet = sheet(&spoken(&text, language));
            for part in sheet.data["parts"].as_array().expect("parts") {
                let side = part["sections"][0]["blocks"][0]["side"].as_str().expect("a side");
                let (own, other) = words(language, if side == "left" { Side::Left } else { Side::Right });
                let mut found = Vec::new();
                named(part, &mut found);
                assert!(!found.is_empty(), "{}", path.display());
                for picture in found {
                    let key = picture["picture"].as_str().expect("a name");
                    assert!(sheet.pictures.contains_key(key));
                    assert_eq!(sheet.pictures[key].side, if side == "left" { Side::Left } else { Side::Right });
                    let alt = picture["alt"].as_str().expect("a description");
                    let first = alt.split(['.', '。', '۔', '।']).next().unwrap_or_default().to_lowercase();
                    assert!(own.iter().any(|word| first.contains(word)), "{language}: {alt}");
                    assert!(!other.iter().any(|word| first.contains(word)), "{language}: {alt}");
                    assert!(alt.len() > first.len() + 8, "only the view is said: {alt}");
                }
            }
        }
    }
}

/// A finger is as easily mistaken as a side.
#[test]
fn a_close_picture_names_its_finger() {
    for (finger, word) in [("index", "index finger"), ("ring", "ring finger"), ("little", "little finger")] {
        let case = case_for("mallet-tendon", "tip-shell-custom").replace("finger: ring", &format!("finger: {finger}"));
        let mut found = Vec::new();
        named(&sheet(&case).data, &mut found);
        let close: Vec<String> = found
            .iter()
            .filter_map(|picture| picture["alt"].as_str())
            .map(str::to_lowercase)
            .filter(|alt| alt.contains("finger of the right hand,"))
            .collect();
        assert!(close.len() > 3);
        assert!(close.iter().all(|alt| alt.starts_with(word)), "{close:?}");
    }
}

/// The drawings of two mirrored requests are held against each other where drawings are.
#[test]
fn a_left_hand_is_shown_as_a_right_one_is_with_nothing_changed_but_the_side() {
    for case in [CASE.to_owned(), file("examples/mallet-ring-finger.yaml"), file("examples/thumb-base.yaml")] {
        let as_side = |side: &str| {
            let kept: String =
                case.lines().filter(|line| !line.starts_with("hand:")).map(|line| format!("{line}\n")).collect();
            requests(&format!("{kept}hand: {side}\n"))
        };
        let (left, right) = (as_side("left"), as_side("right"));
        assert!(left.len() > 8);
        let turned: Vec<Request> = right.into_iter().map(|request| Request { side: Side::Left, ..request }).collect();
        assert_eq!(left, turned);
    }
}

#[test]
fn equal_pictures_are_asked_for_once() {
    let document = document(CASE);
    let sheet = sheet(CASE);
    let mut keys: Vec<String> = document.figures().map(|figure| figure.request.key()).collect();
    keys.sort();
    keys.dedup();
    assert_eq!(keys, sheet.pictures.keys().cloned().collect::<Vec<_>>());
}

/// Large print shows pictures larger than they were asked for, so that lines and letters grow with the words.
#[test]
fn no_print_size_asks_for_larger_pictures_than_standard_print() {
    let standard = requests(CASE);
    for print in ["large", "giant"] {
        let large = requests(&format!("{CASE}print: {print}\n"));
        assert_eq!(standard.len(), large.len());
        assert!(standard.iter().zip(&large).all(|(one, other)| other.height <= one.height));
    }
}

/// Every orthosis of the content in the guide of a condition that it fits: its pictures are asked for and described.
#[test]
fn a_picture_says_from_where_it_is_seen_in_every_language() {
    for entry in WORKSHOP.languages.iter() {
        let language = WORKSHOP.languages.find(&entry.tag).expect("a language of the list");
        let speaker = WORKSHOP.words.speaker(&language).expect("a speaker");
        let said = |view: View| {
            let of = [("side", "right"), ("what", "hand"), ("finger", "index"), ("view", view.word())];
            let message = of
                .into_iter()
                .fold(Message::new("picture-seen"), |message, (name, word)| message.with(name, Arg::Keyword(word)));
            speaker.say(&message, &[]).expect("words")
        };
        let sentences: BTreeSet<String> = View::ALL.iter().map(|view| said(*view)).collect();
        assert_eq!(sentences.len(), View::ALL.len(), "{}: {sentences:?}", entry.tag);
    }
}

#[test]
fn every_orthosis_with_a_look_has_pictures_in_a_guide() {
    let library = &WORKSHOP.library;
    let mut without = Vec::new();
    let mut shown = 0;
    for id in library.shapes.keys() {
        let fits = library.conditions.keys().find_map(|condition| {
            let case = case_for(&condition.to_string(), &id.to_string());
            crate::support::judge(&case).ok().and_then(|judged| judged.plans().ok()).map(|_| case)
        });
        let Some(case) = fits else {
            without.push(id.to_string());
            continue;
        };
        shown += 1;
        let sheet = sheet(&case);
        let hand = &sheet.data["parts"][0]["sections"][0]["blocks"][0];
        assert_eq!(hand["pictures"].as_array().map(Vec::len), Some(2), "{id}");
        assert!(
            hand["pictures"][0]["alt"].as_str().is_some_and(|alt| alt.starts_with("Right hand, seen from the back."))
        );
    }
    assert!(shown > 40, "{shown}; no condition for {without:?}");
}
