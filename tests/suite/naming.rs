//! Systematic names, worked out from the joint tables.

use palmleaf::body::Finger;
use palmleaf::checks::{Question, in_force};
use palmleaf::choose::best_setting;
use palmleaf::classify::{name, name_for};

use crate::support::WORKSHOP;

fn usual(id: &str, finger: Option<Finger>) -> String {
    name(&WORKSHOP.library.orthoses[&id.parse().expect("an id")], finger).to_string()
}

fn serving(id: &str, condition: &str, finger: Option<Finger>) -> String {
    let library = &WORKSHOP.library;
    let condition = &library.conditions[&condition.parse().expect("an id")];
    let condition = finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
    let orthosis = library.orthoses[&id.parse().expect("an id")].for_finger(finger.unwrap_or(Finger::Index));
    let (set, _) = best_setting(&orthosis, &condition.phases[0], &[], &[]);
    let question = Question { orthosis: &set, findings: &[], factors: &[] };
    name_for(&set, finger, &in_force(question, &condition.phases[0])).to_string()
}

/// By the rules of Fess, Gettle, Philips and Janson 2005 (*Hand and Upper Extremity Splinting*, 3rd edition, Elsevier Mosby), recalled: the forms of
/// whole names there are "wrist flexion restriction splint, type 0 (1)" and the like. The names below follow from the
/// rules, joint by joint; none is copied from a caption.
#[test]
fn names_follow_location_direction_purpose_type_and_total() {
    for (id, wanted) in [
        ("wrist-only", "wrist extension immobilization, type 0 (1)"),
        ("wrist-neutral", "wrist neutral immobilization, type 0 (1)"),
        ("short-cmc", "thumb CMC palmar abduction immobilization, type 0 (1)"),
        (
            "short-cmc-mcp-block",
            "thumb CMC palmar abduction immobilization, thumb MP extension restriction, type 0 (2)",
        ),
        ("thumb-mcp-ring", "thumb MP extension restriction, type 0 (1)"),
        ("thumb-tip-cap", "thumb IP extension immobilization, type 0 (1)"),
        ("tip-shell-custom", "finger DIP extension immobilization, type 0 (1)"),
        ("finger-gutter-middle-joint", "finger PIP extension immobilization, type 0 (1)"),
        ("finger-gutter-long", "finger PIP extension immobilization, type 1 (2)"),
        ("ring-stops-bending-back", "finger PIP extension restriction, type 0 (1)"),
        ("serial-finger-cast", "finger PIP extension mobilization, type 0 (1)"),
        ("knuckle-shell-ring-little", "ring–small finger MP flexion immobilization, type 0 (2)"),
        ("knuckle-extension-block", "ring–small finger MP extension restriction, type 0 (2)"),
        ("drift-strap", "index–small finger MP ulnar deviation restriction, type 0 (4)"),
        ("dynamic-knuckle-extension", "index–small finger MP extension mobilization, type 1 (5)"),
        ("elbow-night-shell", "elbow flexion immobilization, type 0 (1)"),
        ("long-arm-rotation", "forearm neutral, wrist neutral immobilization, type 1 (3)"),
        ("hand-thumb-spica", "thumb MP flexion immobilization, type 1 (2)"),
        ("forearm-thumb-spica-tip", "thumb CMC palmar abduction, MP flexion, IP extension immobilization, type 1 (4)"),
        ("thumb-raised-long", "thumb CMC radial abduction, MP–IP extension immobilization, type 1 (4)"),
        ("ring-keeps-straight", "finger PIP flexion restriction, type 0 (1)"),
        ("trigger-ring", "finger PIP flexion restriction, type 0 (1)"),
        ("knuckle-block", "finger MP flexion restriction, type 0 (1)"),
        ("dorsal-block-long", "index–small finger extension restriction, type 1 (13)"),
        ("ulnar-gutter", "ring–small finger MP flexion immobilization, type 3 (7)"),
        ("palm-shell-wrist-knuckles", "wrist extension, index–small finger MP flexion immobilization, type 0 (5)"),
        (
            "intrinsic-plus-shell",
            "index–small finger MP flexion, IP extension, thumb CMC palmar abduction immobilization, type 3 (16)",
        ),
        ("counterforce-band", "nonarticular proximal forearm"),
        ("metacarpal-sleeve", "nonarticular metacarpal"),
    ] {
        assert_eq!(usual(id, None), wanted, "{id}");
    }
    assert_eq!(usual("tip-shell-custom", Some(Finger::Middle)), "long finger DIP extension immobilization, type 0 (1)");
    assert_eq!(
        usual("tip-shell-custom", Some(Finger::Little)),
        "small finger DIP extension immobilization, type 0 (1)"
    );
}

/// The same rules: the number in brackets counts every joint, the type only the levels that are there for control.
#[test]
fn the_total_counts_all_joints_of_a_resting_hand() {
    let name = usual("resting-hand", None);
    assert!(name.ends_with("(16)"), "wrist, three thumb joints, twelve finger joints: {name}");
}

/// The same rules: one piece that serves two purposes has two right names.
#[test]
fn one_piece_has_two_names_under_two_purposes() {
    let for_wrist_tendons = serving("forearm-thumb-spica", "de-quervain", None);
    let for_thumb_base = serving("forearm-thumb-spica", "thumb-cmc-osteoarthritis", None);
    assert!(for_wrist_tendons.ends_with("type 0 (3)"), "{for_wrist_tendons}");
    assert!(for_thumb_base.ends_with("type 2 (3)"), "{for_thumb_base}");
    assert!(for_wrist_tendons.starts_with("wrist extension"), "{for_wrist_tendons}");
    assert!(for_thumb_base.starts_with("thumb CMC palmar abduction immobilization"), "{for_thumb_base}");
}

#[test]
fn every_orthosis_has_a_name_and_no_file_types_one_in() {
    for (id, orthosis) in &WORKSHOP.library.orthoses {
        let name = name(orthosis, None).to_string();
        assert!(name.contains("type ") || name.starts_with("nonarticular"), "{id}: {name}");
        assert!(name.len() > 12 && !name.contains("  "), "{id}: {name}");
    }
}
