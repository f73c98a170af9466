//! Structures lie where anatomy has them, on either side; conditions and faults of fit have their pictures and words.

use palmleaf::body::{Finger, Side, View};
use palmleaf::content::Extent;
use palmleaf::picture::limb::Posture;
use palmleaf::picture::scene::{Named, Picture, Studio};

use crate::anatomy::{NAME, anatomy, named, points, request};
use crate::support::{WORKSHOP, run, stderr, stdout};

/// One structure by itself on the bones of a hand that lies flat.
fn alone(id: &str, view: View, extent: Extent, side: Side) -> Picture {
    let library = &WORKSHOP.library;
    let id = library.structures.keys().find(|key| key.as_str() == id).expect("a structure");
    let structures = vec![Named { number: 0, courses: library.courses_of(id, false), wide: NAME.0, high: NAME.1 }];
    let mut asked = request(anatomy(Posture::flat(), structures, Vec::new()), view, extent);
    asked.side = side;
    asked.finger = Finger::Index;
    Studio::default().draw(&asked).expect("a picture")
}

/// All points of the parts of a picture with a name.
fn all(picture: &Picture, name: &str) -> Vec<(f64, f64)> {
    let found: Vec<_> = named(picture, name).flat_map(points).collect();
    assert!(!found.is_empty(), "{name} is not drawn");
    found
}

fn range(points: &[(f64, f64)], pick: fn(&(f64, f64)) -> f64) -> (f64, f64) {
    points.iter().map(pick).fold((f64::MAX, f64::MIN), |(low, high), value| (low.min(value), high.max(value)))
}

/// Where a line is at a height.
fn at_height(points: &[(f64, f64)], y: f64) -> f64 {
    points.iter().min_by(|a, b| (a.1 - y).abs().total_cmp(&(b.1 - y).abs())).expect("a point").0
}

/// Right of a right hand's picture is left of a left hand's.
fn sign(side: Side) -> f64 {
    if side == Side::Right { 1.0 } else { -1.0 }
}

#[test]
fn tendons_at_the_wrist_lie_in_the_order_of_their_compartments() {
    for side in [Side::Right, Side::Left] {
        // From the thumb side to the little-finger side over the end of the radius, seen from the back. Each picture is
        // measured against its own radius.
        let places: Vec<f64> = ["apl", "epb", "wrist-extensors", "epl", "finger-extensors", "ecu"]
            .into_iter()
            .map(|id| {
                let picture = alone(id, View::Dorsal, Extent::Forearm, side);
                let radius = all(&picture, "bone-radius-edge");
                let (top, _) = range(&radius, |p| p.1);
                let near: Vec<_> = radius.into_iter().filter(|p| p.1 < top + 300.0).collect();
                let (low, high) = range(&near, |p| p.0);
                let x = at_height(&all(&picture, "structure-0"), top + 60.0);
                (x - f64::midpoint(low, high)) * sign(side)
            })
            .collect();
        assert!(places.is_sorted(), "{side}: {places:?}");
        assert!(places[0] < 0.0 && places[5] > 0.0, "{side}: {places:?}");
    }
}

#[test]
fn the_bands_of_the_thumb_knuckle_are_on_their_sides() {
    for side in [Side::Right, Side::Left] {
        let off = |id: &str| {
            let picture = alone(id, View::Dorsal, Extent::Hand, side);
            let (band, bone) = (all(&picture, "structure-0"), all(&picture, "bone-thumb-proximal-edge"));
            let middle = |points: &[(f64, f64)]| points.iter().map(|p| p.0).sum::<f64>() / points.len() as f64;
            (middle(&band) - middle(&bone)) * sign(side)
        };
        // The fingers are to the right of a right thumb seen from the back.
        assert!(off("thumb-ucl") > off("thumb-rcl") + 20.0, "{side}");
    }
}

#[test]
fn nerves_run_where_they_are_pressed() {
    for side in [Side::Right, Side::Left] {
        // Through the middle of the wrist, between the bones of the thumb side and those of the little-finger side.
        let picture = alone("median-nerve-at-wrist", View::Palmar, Extent::Forearm, side);
        let nerve = all(&picture, "structure-0");
        let x = |name: &str| {
            all(&picture, name)
                .iter()
                .map(|p| p.0 * sign(side))
                .fold((f64::MAX, f64::MIN), |(l, h), v| (l.min(v), h.max(v)))
        };
        let y = range(&all(&picture, "bone-capitate-edge"), |p| p.1);
        let at = at_height(&nerve, f64::midpoint(y.0, y.1)) * sign(side);
        assert!(x("bone-hamate-edge").1 < at + 20.0 && at < x("bone-trapezium-edge").1, "{side}");
        // Behind the inner knob of the elbow: between the tip of the elbow and the edge of the knob.
        let picture = alone("ulnar-nerve-at-elbow", View::Ulnar, Extent::Elbow, side);
        let (nerve, ulna, arm) =
            (all(&picture, "structure-0"), all(&picture, "bone-ulna-edge"), all(&picture, "bone-humerus-edge"));
        let (_, tip) = range(&ulna, |p| p.1);
        let end: Vec<_> = ulna.into_iter().filter(|p| p.1 > tip - 150.0).map(|p| (p.0 * sign(side), p.1)).collect();
        let knob: Vec<_> = arm.into_iter().map(|p| (p.0 * sign(side), p.1)).collect();
        let at = at_height(&nerve, tip - 60.0) * sign(side);
        assert!(range(&end, |p| p.0).1 < at && at < range(&knob, |p| p.0).1, "{side}");
    }
}

#[test]
fn a_finger_has_its_cords_on_the_back_and_its_plate_on_the_palm() {
    for side in [Side::Right, Side::Left] {
        let off = |id: &str, bone: &str| {
            let picture = alone(id, View::Radial, Extent::Finger, side);
            let bone = all(&picture, bone);
            let (_, joint) = range(&bone, |p| p.1);
            let near: Vec<_> = bone.into_iter().filter(|p| p.1 > joint - 120.0).collect();
            let (low, high) = range(&near, |p| p.0);
            (at_height(&all(&picture, "structure-0"), joint) - f64::midpoint(low, high)) * sign(side)
        };
        // Seen from the thumb side, the back of a right finger is to the right.
        assert!(off("central-slip", "bone-index-middle-edge") > 0.0, "{side}");
        assert!(off("pip-volar-plate", "bone-index-middle-edge") < 0.0, "{side}");
        assert!(off("terminal-tendon", "bone-index-distal-edge") > 0.0, "{side}");
        // The mouth of the tunnel lies below the knuckle, over the head of the hand bone.
        let picture = alone("a1-pulley", View::Palmar, Extent::Hand, side);
        let (low, high) = range(&all(&picture, "structure-0"), |p| p.1);
        let (head, base) = range(&all(&picture, "bone-index-metacarpal-edge"), |p| p.1);
        let at = f64::midpoint(low, high);
        assert!(head < at && at < head + (base - head) * 0.3, "{side}: {head} {at} {base}");
    }
}

/// The pictures of a sheet, as `draw` tells of them.
fn sheet(kind: &str, tag: &str) -> Vec<serde_json::Value> {
    let output = run(&["draw", "--sheet", kind, "--language", tag, "--no-cache", "--format", "json"]);
    assert!(output.status.success(), "{}", stderr(&output));
    let said: serde_json::Value = serde_json::from_str(&stdout(&output)).expect("JSON");
    said["pictures"].as_array().expect("pictures").clone()
}

#[test]
fn every_condition_has_its_pictures_in_every_language() {
    for tag in ["en", "es", "ar"] {
        let pictures = sheet("conditions", tag);
        for id in WORKSHOP.library.conditions.keys() {
            let own =
                |picture: &&serde_json::Value| picture["id"].as_str().is_some_and(|name| name.starts_with(id.as_str()));
            assert!(pictures.iter().any(|picture| own(&picture)), "{id}");
        }
        for picture in &pictures {
            let about = picture["about"].as_str().expect("words");
            assert!(!about.contains("structure-") && !about.contains("joint-"), "{about}");
            let number = |label: &serde_json::Value, key: &str| label[key].as_f64().expect("a number");
            let labels = picture["labels"].as_array().expect("labels");
            assert!(!labels.is_empty(), "{about}");
            for (i, label) in labels.iter().enumerate() {
                assert!(number(label, "wide") > 0.0, "{about}");
                let half = number(label, "wide") / 2.0;
                assert!(
                    number(label, "x") - half > -2.0 && number(label, "x") + half < number(picture, "width") + 2.0,
                    "{label}"
                );
                for other in &labels[i + 1..] {
                    let near = |at: &str, size: &str| {
                        let both = (number(label, size) + number(other, size)) / 2.0;
                        (number(label, at) - number(other, at)).abs() < both - 2.0
                    };
                    assert!(!(near("x", "wide") && near("y", "high")), "{tag}: {label} {other}");
                }
            }
        }
    }
}

#[test]
fn a_pair_says_what_is_wrong_and_what_to_do() {
    let faulty = WORKSHOP.library.shapes.values().filter(|shape| !shape.faults.is_empty());
    assert!(faulty.clone().count() >= 12);
    let pictures = sheet("faults", "en");
    assert_eq!(pictures.len(), faulty.map(|shape| shape.faults.len() * 2).sum::<usize>());
    for pair in pictures.chunks(2) {
        let about = |i: usize| pair[i]["about"].as_str().expect("words").to_owned();
        assert!(about(0).contains("tick") && about(1).contains("cross"), "{} {}", about(0), about(1));
        // What is wrong, and at least one sentence more.
        assert!(about(1).matches(". ").count() >= 3, "{}", about(1));
    }
}

#[test]
fn what_has_no_picture_is_refused() {
    for (option, id, code) in [
        ("--faults", "buddy-straps", "draw/no-look"),
        ("--faults", "no-such", "id/unknown"),
        ("--condition", "no-such", "id/unknown"),
    ] {
        let output = run(&["draw", option, id, "--out", "nothing.svg"]);
        assert!(!output.status.success());
        assert!(stderr(&output).contains(code), "{}", stderr(&output));
    }
}
