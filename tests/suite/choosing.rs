//! Choosing an orthosis: the order, the reasons, the needs, the other way round.

use palmleaf::body::{Direction, Finger, Joint};
use palmleaf::checks::Fit;
use palmleaf::choose::{Ask, Ranked, conditions_for, contradiction, rank};
use palmleaf::content::{Material, Measured, NeedRule, Water};
use palmleaf::ids::NeedId;
use palmleaf::units::Degrees;

use crate::support::{WORKSHOP, run, stderr, stdout};

fn ranked(condition: &str, finger: Option<Finger>, measured: &[Measured], needs: &[&str]) -> Vec<Ranked> {
    let library = &WORKSHOP.library;
    let whole = &library.conditions[&condition.parse().expect("an id")];
    let whole = finger.map_or_else(|| whole.clone(), |finger| whole.for_finger(finger));
    let needs: Vec<(NeedId, &NeedRule)> = needs
        .iter()
        .map(|id| {
            let id: NeedId = id.parse().expect("an id");
            let rule = &library.needs[&id];
            (id, rule)
        })
        .collect();
    rank(library, Ask { phase: &whole.phases[0], finger, findings: measured, factors: &[], needs: &needs })
}

fn place(ranked: &[Ranked], id: &str) -> usize {
    ranked.iter().position(|one| one.id.as_str() == id).unwrap_or_else(|| panic!("{id} is not in the list"))
}

fn bends_back(degrees: i16) -> Measured {
    Measured { joint: Joint::ThumbMcp, motion: Direction::Extension, angle: Degrees::whole(degrees) }
}

#[test]
fn safety_comes_before_fit_and_fit_before_needs() {
    for (id, condition) in &WORKSHOP.library.conditions {
        let finger = condition.needs_finger().then_some(Finger::Ring);
        let list = ranked(id.as_str(), finger, &[], &["soft", "low-bulk", "one-handed"]);
        let safety: Vec<Fit> = list.iter().map(|one| one.order.safety).collect();
        assert!(safety.is_sorted(), "{id}: what fits, what does not, what is unsafe");
        let fitting: Vec<&Ranked> = list.iter().filter(|one| one.order.safety == Fit::Fits).collect();
        let remarks: Vec<usize> = fitting.iter().map(|one| one.order.remarks).collect();
        assert!(remarks.is_sorted(), "{id}: no need outweighs a joint");
        for pair in fitting.windows(2).filter(|pair| pair[0].order.remarks == pair[1].order.remarks) {
            assert!(pair[0].order.against <= pair[1].order.against, "{id}: needs decide among equals");
        }
    }
}

/// Common practice, no source: the first choices that hand therapists are taught.
#[test]
fn the_first_choices_are_the_ones_that_are_taught() {
    let first = |condition: &str, finger: Option<Finger>, measured: &[Measured], among: &[&str]| {
        let list = ranked(condition, finger, measured, &[]);
        assert!(among.contains(&list[0].id.as_str()), "{condition}: {} leads", list[0].id);
    };
    first("de-quervain", None, &[], &["forearm-thumb-spica"]);
    first("mallet-tendon", Some(Finger::Middle), &[], &["tip-shell-custom", "tip-shell-ready", "tip-cast"]);
    first("boutonniere-acute", Some(Finger::Ring), &[], &["finger-gutter-middle-joint"]);
    first("swan-neck", Some(Finger::Index), &[], &["ring-stops-bending-back"]);
    first("carpal-tunnel", None, &[], &["wrist-neutral", "wrist-soft-stay", "wrist-all-round", "wrist-dorsal-shell"]);
    first("thumb-cmc-osteoarthritis", None, &[bends_back(35)], &["short-cmc-mcp-block", "hand-thumb-spica"]);
    first("lateral-elbow", None, &[], &["counterforce-band"]);
    first("cubital-tunnel", None, &[], &["elbow-night-shell"]);
}

#[test]
fn what_would_make_it_better_is_said() {
    let list = ranked("thumb-cmc-osteoarthritis", None, &[bends_back(35)], &[]);
    let short = &list[place(&list, "short-cmc")];
    assert!(short.order.safety >= Fit::DoesNotFit);
    assert!(short.better.iter().any(|text| text.contains("add a block at thumb-mcp")), "{:?}", short.better);
    let list = ranked("de-quervain", None, &[], &[]);
    let hand = &list[place(&list, "hand-thumb-spica")];
    assert!(hand.better.iter().any(|text| text.contains("hold wrist still")), "{:?}", hand.better);
}

/// A bar that is delivered bent is set straight for a pressed nerve: the choice says to which angle.
#[test]
fn an_angle_that_has_to_be_set_is_said() {
    let list = ranked("carpal-tunnel", None, &[], &[]);
    let bar = &list[place(&list, "wrist-soft-stay")];
    assert!(bar.verdict.fit <= Fit::FitsWithRemarks, "{:?}", bar.why);
    let set = bar.set.iter().find(|set| set.at.axis() == palmleaf::body::Axis::Flexion).expect("the wrist is set");
    assert!(set.at.angle().tenths().abs() <= 50, "{}", set.at);
}

#[test]
fn a_need_moves_what_answers_it_up_among_equals() {
    let plain = ranked("thumb-cmc-osteoarthritis", None, &[], &[]);
    let soft = ranked("thumb-cmc-osteoarthritis", None, &[], &["soft"]);
    assert!(place(&soft, "soft-thumb-wrap") < place(&soft, "short-cmc"));
    let wet = ranked("thumb-cmc-osteoarthritis", None, &[], &["gets-wet"]);
    let first = &wet[0].orthosis;
    assert_eq!(first.water, Water::Yes, "{}", wet[0].id);
    let hard = ranked("thumb-cmc-osteoarthritis", None, &[], &["hard"]);
    assert_ne!(hard[0].orthosis.material, Material::Soft);
    assert_eq!(plain.len(), soft.len());
}

#[test]
fn needs_that_pull_apart_are_told() {
    let needs = &WORKSHOP.library.needs;
    let pair = |one: &str, other: &str| {
        let list: Vec<(NeedId, &NeedRule)> = [one, other]
            .iter()
            .map(|id| {
                let id: NeedId = id.parse().expect("an id");
                let rule = &needs[&id];
                (id, rule)
            })
            .collect();
        contradiction(&list).is_some()
    };
    assert!(pair("hard", "soft"));
    assert!(!pair("hard", "gets-wet") && !pair("soft", "low-bulk"));
    let output = run(&["choose", "de-quervain", "--need", "hard,soft"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("contradict"), "{}", stderr(&output));
}

#[test]
fn the_other_way_round_says_which_conditions_and_why_not() {
    let library = &WORKSHOP.library;
    let all = conditions_for(library, &library.orthoses[&"tip-shell-custom".parse().expect("an id")], None);
    let fits: Vec<&str> =
        all.iter().filter(|one| one.verdict.fit <= Fit::FitsWithRemarks).map(|one| one.condition.as_str()).collect();
    assert!(fits.contains(&"mallet-tendon") && fits.contains(&"dip-osteoarthritis"), "{fits:?}");
    assert!(!fits.contains(&"de-quervain"));
    for one in all.iter().filter(|one| one.verdict.fit >= Fit::DoesNotFit) {
        assert!(one.verdict.deciding().next().is_some(), "{}: a refusal has a reason", one.condition);
    }
}

#[test]
fn a_question_that_makes_no_sense_is_explained() {
    for (args, wanted) in [
        (vec!["choose", "de-quervian"], "de-quervain"),
        (vec!["choose", "mallet-tendon"], "one finger"),
        (vec!["choose", "de-quervain", "--finding", "thumb-mcp extension 200 deg"], "more than any joint"),
        (vec!["choose", "de-quervain", "--finding", "thumb-ip pronation 20 deg"], "does not move"),
        (vec!["choose", "de-quervain", "--phase", "iritable"], "irritable"),
        (vec!["choose", "--orthosis", "wrist-onyl"], "wrist-only"),
        (vec!["choose", "de-quervain", "--need", "harrd"], "hard"),
    ] {
        let output = run(&args);
        assert_eq!(output.status.code(), Some(1), "{args:?}");
        assert!(stderr(&output).contains(wanted), "{args:?}: {}", stderr(&output));
    }
}

#[test]
fn the_chart_is_a_page_and_the_table_is_data() {
    let folder = tempfile::tempdir().expect("a folder");
    let chart = folder.path().join("chart.pdf");
    let chart = chart.to_str().expect("a path");
    let output = run(&["choose", "swan-neck", "--finger", "ring", "--chart", chart, "--format", "json"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let data: serde_json::Value = serde_json::from_str(&stdout(&output)).expect("JSON");
    let orthoses = data["orthoses"].as_array().expect("a list");
    assert!(orthoses.len() > 40);
    assert!(orthoses.iter().all(|one| one["why"].as_array().is_some_and(|why| !why.is_empty())));
    assert!(std::fs::read(chart).expect("the chart").starts_with(b"%PDF-"));
}
