//! Papers for students: what they say is what the checks say.

use std::collections::BTreeSet;

use palmleaf::body::{Build, Finger, Side};
use palmleaf::checks::{Fit, Grade, Question, judge_phase};
use palmleaf::choose::{Ask, rank};
use palmleaf::content::{NeedRule, Regime};
use palmleaf::ids::NeedId;
use palmleaf::picture::asks::Sitter;
use palmleaf::study::{
    CHOICES, Group, Head, Picked, Place, QuizQuestion, Standing, cards, groups, of_group, of_ranking, quiz, standing,
};

use crate::support::{WORKSHOP, run, stderr};

const SITTER: Sitter = Sitter { side: Side::Right, finger: Finger::Index, build: Build::Adult, width: 70, height: 38 };

/// What is wrong with a question, judged from the content alone: each choice is set as its angles say and judged anew by
/// the checks; needs are looked at trait by trait.
fn ambiguous(asked: &QuizQuestion) -> Option<String> {
    let library = &WORKSHOP.library;
    let needs: Vec<&NeedRule> = asked.needs.iter().map(|id| &library.needs[id]).collect();
    let mut keys = Vec::new();
    for one in &asked.choices {
        let content = &library.orthoses[&one.id];
        let mut worn = asked.finger.map_or_else(|| content.clone(), |finger| content.for_finger(finger));
        for set in &one.set {
            worn.joints.get_mut(&set.joint).expect("a joint of the orthosis").set(set.at);
        }
        let verdict = judge_phase(Question { orthosis: &worn, findings: &asked.findings, factors: &[] }, &asked.phase);
        if verdict != one.verdict {
            return Some(format!("{} is judged otherwise a second time", one.id));
        }
        let against = needs.iter().filter(|need| need.avoids.iter().any(|trait_| trait_.holds(&worn))).count();
        let met = needs
            .iter()
            .filter(|need| !need.avoids.iter().any(|trait_| trait_.holds(&worn)))
            .filter(|need| need.prefers.iter().any(|trait_| trait_.holds(&worn)))
            .count();
        let safety = if verdict.fit <= Fit::FitsWithRemarks { Fit::Fits } else { verdict.fit };
        let remarks = verdict.lines.iter().filter(|line| line.result == Grade::Remark).count();
        keys.push((safety, remarks, against, needs.len() - against - met, worn.bulk.get()));
    }
    let best = keys[asked.right];
    if best.0 != Fit::Fits {
        return Some("the right answer does not fit".to_owned());
    }
    if let Some(number) = (0..keys.len()).find(|number| *number != asked.right && keys[*number] <= best) {
        return Some(format!("{} is as good as the right answer", asked.choices[number].id));
    }
    let of = &asked.choices[asked.right];
    for (number, (one, key)) in asked.choices.iter().zip(&keys).enumerate() {
        let said = match standing(of, one) {
            Standing::Best => number == asked.right,
            Standing::DoesNotFit => key.0 == Fit::DoesNotFit,
            Standing::Unsafe => key.0 == Fit::Unsafe,
            Standing::MoreRemarks => key.0 == Fit::Fits && key.1 > best.1,
            Standing::AgainstNeed => key.1 == best.1 && key.2 > best.2,
            Standing::UnmetNeed => (key.1, key.2) == (best.1, best.2) && key.3 > best.3,
            Standing::Bulkier => (key.1, key.2, key.3) == (best.1, best.2, best.3) && key.4 > best.4,
        };
        if !said {
            return Some(format!("{}: the reason is another one", one.id));
        }
    }
    let different: BTreeSet<_> = asked.choices.iter().map(|one| &one.id).collect();
    (different.len() != CHOICES).then(|| "a choice stands there twice".to_owned())
}

#[test]
fn over_five_hundred_seeds_exactly_one_choice_is_best_and_the_checks_say_why_the_others_are_not() {
    let mut letters = [0usize; CHOICES];
    let mut near = 0;
    for seed in 0..500 {
        let asked = quiz(&WORKSHOP.library, None, seed, 4);
        assert_eq!(asked.len(), 4, "seed {seed}");
        for one in &asked {
            assert_eq!(ambiguous(one), None, "seed {seed}, {}", one.condition);
            letters[one.right] += 1;
            near += one.choices.iter().filter(|choice| choice.order.safety == Fit::Fits).count() - 1;
        }
    }
    // Four questions a sheet: each letter is right once on each.
    assert_eq!(letters, [500; CHOICES]);
    assert!(near > 500, "{near}: some of the others fit, and are only worse");
    // The check finds a planted fault: another answer called right, another finding than the one judged.
    let mut planted = quiz(&WORKSHOP.library, None, 1, 1).remove(0);
    planted.right = (planted.right + 1) % CHOICES;
    assert!(ambiguous(&planted).is_some());
    let mut planted = quiz(&WORKSHOP.library, None, 1, 1).remove(0);
    planted.choices[0].verdict.lines.clear();
    assert!(ambiguous(&planted).is_some());
}

#[test]
fn letters_of_right_answers_are_spread_evenly_on_one_sheet() {
    for (seed, count) in [(1, 8), (2, 10), (3, 13)] {
        let asked = quiz(&WORKSHOP.library, None, seed, count);
        let mut letters = [0usize; CHOICES];
        asked.iter().for_each(|one| letters[one.right] += 1);
        assert!(letters.iter().max().unwrap() - letters.iter().min().unwrap() <= 1, "{letters:?}");
    }
}

#[test]
fn the_best_choice_is_the_first_that_choose_names() {
    let library = &WORKSHOP.library;
    for one in quiz(library, Some(Group::Thumb), 7, 6) {
        let needs: Vec<(NeedId, &NeedRule)> = one.needs.iter().map(|id| (id.clone(), &library.needs[id])).collect();
        let ask = Ask { phase: &one.phase, finger: one.finger, findings: &one.findings, factors: &[], needs: &needs };
        assert_eq!(rank(library, ask)[0].id, one.choices[one.right].id);
        assert!(groups(library, &library.conditions[&one.condition]).contains(&Group::Thumb));
        assert!(library.conditions[&one.condition].protocol.is_none(), "a protocol decides there");
    }
}

#[test]
fn groups_follow_from_joints_and_structures() {
    let library = &WORKSHOP.library;
    let of = |id: &str| groups(library, &library.conditions[&id.parse().expect("an id")]);
    assert_eq!(of("de-quervain"), [Group::Wrist, Group::Thumb].into());
    assert_eq!(of("thumb-cmc-osteoarthritis"), [Group::Thumb].into());
    assert_eq!(of("carpal-tunnel"), [Group::Wrist].into());
    assert_eq!(of("mallet-tendon"), [Group::Finger].into());
    assert!(of("cubital-tunnel").contains(&Group::Elbow) && of("lateral-elbow").contains(&Group::Elbow));
    for (id, condition) in &library.conditions {
        assert!(!groups(library, condition).is_empty(), "{id} is in no group");
    }
}

#[test]
fn a_chart_says_what_the_checks_say() {
    let library = &WORKSHOP.library;
    let conditions: Vec<_> =
        library.conditions.iter().filter(|(_, condition)| groups(library, condition).contains(&Group::Thumb)).collect();
    let (chart, none) = of_group(library, &conditions, Finger::Index);
    assert_eq!(chart.rows.len(), conditions.len());
    assert!(none > 0);
    for row in &chart.rows {
        let Head::Phase { condition, phase, .. } = &row.head else { panic!("rows are conditions") };
        let own = library.conditions[condition].for_finger(Finger::Index);
        let phase = own.phases.iter().find(|own| own.id == *phase).expect("the phase");
        assert!(phase.wear != Regime::Off);
        let ranked = rank(library, Ask { phase, finger: Some(Finger::Index), findings: &[], factors: &[], needs: &[] });
        for (column, cell) in chart.columns.iter().zip(&row.cells) {
            let Head::Orthosis { id, .. } = column else { panic!("columns are orthoses") };
            let one = ranked.iter().find(|one| one.id == *id).expect("ranked");
            assert_eq!(cell.fit, Some(one.verdict.fit), "{condition} {id}");
            let worst = one.verdict.lines.iter().map(|line| line.result).max();
            assert_eq!(cell.marks.iter().map(|(_, grade)| *grade).max(), worst, "{condition} {id}");
        }
        let chart = of_ranking(phase, &ranked);
        for (row, one) in chart.rows.iter().zip(&ranked) {
            let worst = one.verdict.lines.iter().map(|line| line.result).max().unwrap_or(Grade::Met);
            assert_eq!(row.cells.iter().flat_map(|cell| &cell.marks).map(|(_, grade)| *grade).max(), Some(worst));
        }
    }
    let letters: BTreeSet<char> = Place::ALL.iter().map(|place| place.letter()).collect();
    assert_eq!(letters.len(), Place::ALL.len(), "no letter stands for two places");
}

#[test]
fn cards_have_ids_of_their_own_and_follow_what_is_picked() {
    let library = &WORKSHOP.library;
    let all = cards(library, &Picked::of(library, None, &[], &[], Finger::Index), &SITTER);
    let ids: BTreeSet<&str> = all.iter().map(|card| card.id.as_str()).collect();
    assert_eq!(ids.len(), all.len());
    assert!(all.iter().all(|card| !card.answer.is_empty() && !card.sources.is_empty()));
    let one = ["de-quervain".parse().expect("an id")];
    let few = cards(library, &Picked::of(library, None, &one, &[], Finger::Index), &SITTER);
    assert!(few.len() < all.len() && few.iter().all(|card| ids.contains(card.id.as_str())));
    assert!(few.iter().any(|card| card.id == "hold/de-quervain"));
    assert!(few.iter().any(|card| card.id == "structure/apl"));
    assert!(few.iter().all(|card| card.id != "hold/carpal-tunnel"));
}

#[test]
fn every_condition_has_the_name_that_students_learn() {
    let english = WORKSHOP.words.catalogue("en").expect("English");
    for id in WORKSHOP.library.conditions.keys() {
        assert!(english.message(&format!("condition-{id}-term")).is_some(), "{id}");
    }
}

#[test]
fn the_same_seed_gives_the_same_bytes_and_another_one_others() {
    let folder = tempfile::tempdir().expect("a folder");
    let made = |out: &str, seed: &str| {
        let out = folder.path().join(out);
        let text = out.to_str().expect("a path");
        let output = run(&["teach", "questions", "--count", "3", "--seed", seed, "--out", text]);
        assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
        ["questions", "answers"].map(|name| std::fs::read(out.join(format!("{name}-{seed}.pdf"))).expect("a file"))
    };
    let (first, again, other) = (made("a", "5"), made("b", "5"), made("c", "6"));
    assert_eq!(first, again);
    assert_ne!(first, other);
}

#[test]
fn what_is_asked_wrongly_is_explained() {
    for (args, status, wanted) in [
        (vec!["teach", "chart", "--condition", "de-quervian"], 1, "de-quervain"),
        (vec!["teach", "chart", "--condition", "de-quervain", "--phase", "iritable"], 1, "irritable"),
        (vec!["teach", "chart"], 2, "--group"),
        (vec!["teach", "cards", "--orthosis", "wrist-onyl"], 1, "wrist-only"),
        (vec!["teach", "questions", "--count", "0"], 2, "count"),
    ] {
        let output = run(&args);
        assert_eq!(output.status.code(), Some(status), "{args:?}");
        assert!(stderr(&output).contains(wanted), "{args:?}: {}", stderr(&output));
    }
}
