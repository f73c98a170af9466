//! Properties of every picture: any hand in any posture in any shell is drawn whole.

use std::collections::BTreeMap;

use palmleaf::body::{Axis, Finger, Joint, Position, Segment, Side, View, norms};
use palmleaf::content::{Extent, Hold, Orthosis, Shape};
use palmleaf::picture::asks::{self, Sitter};
use palmleaf::picture::limb::{Build, Posture};
use palmleaf::picture::plate::{Drawing, Style};
use palmleaf::picture::scene::{Fitted, Picture, Request, Subject, Undrawable, Worn, bones, draw};
use palmleaf::picture::space::Vector;
use palmleaf::picture::wear::Place;
use palmleaf::source::{FromNode, Limits, Reader, SourceText, parse};
use palmleaf::units::Degrees;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use rayon::prelude::*;

use crate::support::{WORKSHOP, text};

/// The points of a path, subpath by subpath, and whether each is closed.
pub fn subpaths(text: &str) -> Vec<(Vec<(i64, i64)>, bool)> {
    let mut found: Vec<(Vec<(i64, i64)>, bool)> = Vec::new();
    let mut rest = text;
    let mut at = (0, 0);
    while let Some(letter) = rest.chars().next() {
        let end = rest[1..].find(|c: char| c.is_ascii_alphabetic()).map_or(rest.len(), |end| end + 1);
        let spaced = rest[1..end].replace('-', " -");
        let numbers: Vec<i64> = spaced.split_whitespace().map(|n| n.parse().expect("a whole number")).collect();
        match letter {
            'M' => {
                at = (numbers[0], numbers[1]);
                found.push((vec![at], false));
            }
            'l' | 'c' => {
                let from = at;
                assert!(numbers.len() == if letter == 'l' { 2 } else { 6 }, "{letter} with {numbers:?}");
                for pair in numbers.chunks(2) {
                    at = (from.0 + pair[0], from.1 + pair[1]);
                    found.last_mut().expect("a start").0.push(at);
                }
            }
            'z' => {
                let last = found.last_mut().expect("a start");
                last.1 = true;
                at = last.0[0];
            }
            _ => panic!("`{letter}` in a path"),
        }
        rest = &rest[end..];
    }
    found
}

#[test]
fn the_reader_of_paths_reads_what_is_written() {
    let read = subpaths("M10 5l-3 2c1-2-3 4 5 6zM1-2l3 4");
    assert_eq!(read[0], (vec![(10, 5), (7, 7), (8, 5), (4, 11), (12, 13)], true));
    assert_eq!(read[1], (vec![(1, -2), (4, 2)], false));
}

/// How far a line may leave the picture, units: a tenth of a millimetre.
const OUT: f64 = 2.0;

/// Places along the curves of a path, not their handles.
fn along(text: &str) -> Vec<(f64, f64)> {
    let text = format!("{text}z");
    let mut found = Vec::new();
    let mut at = (0.0, 0.0);
    for piece in text.split_inclusive(|c: char| c.is_ascii_alphabetic()).collect::<Vec<_>>().windows(2) {
        let letter = piece[0].chars().last().unwrap_or(' ');
        let spaced = piece[1].trim_end_matches(|c: char| c.is_ascii_alphabetic()).replace('-', " -");
        let n: Vec<f64> = spaced.split_whitespace().map(|n| n.parse().expect("a number")).collect();
        match letter {
            'M' => at = (n[0], n[1]),
            'l' => at = (at.0 + n[0], at.1 + n[1]),
            'c' => {
                for i in 1..8 {
                    let t = f64::from(i) / 8.0;
                    let u = 1.0 - t;
                    let (a, b, c) = (3.0 * u * u * t, 3.0 * u * t * t, t * t * t);
                    found.push((at.0 + a * n[0] + b * n[2] + c * n[4], at.1 + a * n[1] + b * n[3] + c * n[5]));
                }
                at = (at.0 + n[4], at.1 + n[5]);
            }
            _ => continue,
        }
        found.push(at);
    }
    found
}

/// What is wrong with a picture by itself.
fn faults(picture: &Picture) -> Vec<String> {
    let mut found = Vec::new();
    let Drawing { width, height, parts } = &picture.drawing;
    if !parts.iter().any(|part| part.name == "ground") {
        found.push("there is no limb".to_owned());
    }
    if !parts.iter().any(|part| part.name.starts_with("outline")) {
        found.push("the limb has no outline".to_owned());
    }
    for part in parts {
        let all = subpaths(part.path.text());
        if all.is_empty() {
            found.push(format!("{} is empty", part.name));
        }
        if matches!(part.style, Style::Fill(_)) && !all.iter().all(|(_, closed)| *closed) {
            found.push(format!("{} is filled and not closed", part.name));
        }
        let out = |(x, y): &(f64, f64)| (-x).max(-y).max(x - width).max(y - height);
        let furthest = along(part.path.text()).iter().map(out).fold(0.0, f64::max);
        if furthest > OUT {
            found.push(format!(
                "{} goes {furthest:.0} units out of the picture of {width:.0} by {height:.0}",
                part.name
            ));
        }
    }
    for label in &picture.labels {
        if label.at.x < 0.0 || label.at.y < 0.0 || label.at.x > *width || label.at.y > *height {
            found.push(format!("the label {:?} stands outside", label.text));
        }
    }
    found
}

fn posture() -> impl Strategy<Value = Vec<(Joint, Axis, i16)>> {
    let all: Vec<_> = Joint::all()
        .flat_map(|joint| norms::axes(joint).map(move |axis| (joint, axis)))
        .map(|(joint, axis)| {
            let range = norms::range(joint, axis).expect("it moves so");
            (Just(joint), Just(axis), range.from().tenths() / 10..=range.to().tenths() / 10)
        })
        .collect();
    let count = all.len();
    (all, proptest::collection::vec(any::<bool>(), count))
        .prop_map(|(all, said)| all.into_iter().zip(said).filter(|(_, said)| *said).map(|(angle, _)| angle).collect())
}

fn segment() -> impl Strategy<Value = String> {
    let all: Vec<String> = palmleaf::body::SegmentName::all().map(|name| name.to_string()).collect();
    proptest::sample::select(all)
}

fn cover() -> impl Strategy<Value = String> {
    let span = proptest::option::of((-30_i16..90, 10_i16..90));
    let around = proptest::option::of((0_i16..360, 0_i16..360));
    (segment(), span, around, proptest::option::of(-20_i16..20), proptest::option::weighted(0.2, 5_i16..60)).prop_map(
        |(on, span, around, slant, reach)| {
            let mut text = format!("{{ on: {on}");
            if let Some((from, length)) = span {
                text += &format!(", span: {from} to {} %", from + length);
            }
            if let Some((from, to)) = around {
                text += &format!(", around: {from} to {to} deg");
            }
            if let Some(slant) = slant {
                text += &format!(", slant: {slant} mm");
            }
            if let Some(reach) = reach {
                text += &format!(", reach: {reach} mm");
            }
            text + " }"
        },
    )
}

fn band() -> impl Strategy<Value = String> {
    let around = proptest::option::of((0_i16..360, 0_i16..360));
    let tab = proptest::sample::select(vec!["start", "end", "none"]);
    (segment(), 0_i16..100, 4_i16..35, around, -15_i16..15, proptest::option::of(tab)).prop_map(
        |(on, at, width, around, slant, tab)| {
            let mut text = format!("{{ on: {on}, at: {at} %, width: {width} mm, slant: {slant} mm");
            if let Some((from, to)) = around {
                text += &format!(", around: {from} to {to} deg");
            }
            if let Some(tab) = tab {
                text += &format!(", tab: {tab}");
            }
            text + " }"
        },
    )
}

/// A shell of sheets, straps and wires, as its file says it.
fn shell() -> impl Strategy<Value = String> {
    let look = proptest::sample::select(vec!["firm", "fabric", "cast"]);
    let covers = proptest::collection::vec(cover(), 1..4);
    let leaves = proptest::collection::vec(cover(), 0..2);
    let sheet = (covers, leaves, look, 10_i16..60, 5_i16..200, any::<bool>()).prop_map(
        |(covers, leaves, look, thickness, corners, clings)| {
            format!(
                "  - covers: [{}]\n    leaves: [{}]\n    look: {look}\n    thickness: {}.{} mm\n    corners: {}.{} mm\n    clings: {clings}\n",
                covers.join(", "),
                leaves.join(", "),
                thickness / 10,
                thickness % 10,
                corners / 10,
                corners % 10,
            )
        },
    );
    let point = (segment(), -10_i16..110, 0_i16..360, 0_i16..30)
        .prop_map(|(on, at, round, out)| format!("{on} {at} % {round} deg out {out} mm"));
    let metal = proptest::sample::select(vec!["metal", "cord"]);
    let wire = (proptest::collection::vec(point, 2..6), 1_i16..5, metal, any::<bool>()).prop_map(
        |(through, width, kind, closed)| {
            format!("  - {{ width: {width} mm, kind: {kind}, closed: {closed}, through: [{}] }}\n", through.join(", "))
        },
    );
    let sheets = proptest::collection::vec(sheet, 0..3);
    let straps = proptest::collection::vec(band(), 0..4);
    (sheets, straps, proptest::collection::vec(wire, 0..2)).prop_map(|(sheets, straps, wires)| {
        let straps: Vec<String> =
            straps.into_iter().enumerate().map(|(i, band)| format!("  strap-{}: {band}\n", i + 1)).collect();
        let list = |name: &str, list: &[String], none: &str| match list {
            [] => format!("{name}: {none}\n"),
            list => format!("{name}:\n{}", list.concat()),
        };
        list("sheets", &sheets, "[]") + &list("straps", &straps, "{}") + &list("wires", &wires, "[]")
    })
}

fn request() -> impl Strategy<Value = (String, Request)> {
    let seen = (
        proptest::sample::select(View::ALL),
        proptest::sample::select(Extent::ALL),
        proptest::sample::select(Finger::ALL),
        proptest::sample::select(Side::ALL),
        proptest::sample::select(Build::ALL),
        20_u16..140,
        20_u16..140,
    );
    (posture(), proptest::option::weighted(0.8, shell()), seen).prop_map(|(angles, shell, seen)| {
        let (view, extent, finger, side, build, width, height) = seen;
        let subject = match &shell {
            None => {
                let mut posture = Posture::flat();
                angles.iter().for_each(|(joint, axis, angle)| posture.turn(*joint, *axis, Degrees::whole(*angle)));
                Subject::Bare(posture)
            }
            Some(shell) => Subject::Worn(Box::new(worn(shell, &angles))),
        };
        (shell.unwrap_or_default(), Request { subject, side, finger, view, extent, build, width, height })
    })
}

fn worn(shell: &str, angles: &[(Joint, Axis, i16)]) -> Worn {
    let source = SourceText::new("shell.yaml", shell);
    let node = parse(&source, Limits::CONTENT).unwrap_or_else(|why| panic!("{why:?}\n{shell}"));
    let mut reader = Reader::new(&source);
    let shape = Shape::from_node(&node, &mut reader);
    let findings = reader.finish();
    let mut shape = shape.unwrap_or_else(|| panic!("{}\n{shell}", text(&findings)));
    let mut posture: BTreeMap<_, Vec<Position>> = BTreeMap::new();
    for (joint, axis, angle) in angles {
        let position = Position::signed(*axis, Degrees::whole(*angle));
        posture.entry(palmleaf::body::JointName::One(*joint)).or_default().push(position);
    }
    shape.posture = posture;
    let any = WORKSHOP.library.orthoses.values().next().expect("an orthosis");
    let straps = shape.straps.keys().cloned().collect();
    Worn { orthosis: Orthosis { joints: BTreeMap::new(), straps, ..any.clone() }, shape }
}

/// Draws so many random requests and says what is wrong with them.
fn try_many(count: usize, seed: u8) -> Vec<String> {
    let rng = TestRng::from_seed(RngAlgorithm::ChaCha, &[seed; 32]);
    let mut runner = TestRunner::new_with_rng(Config::default(), rng);
    let strategy = request();
    let requests: Vec<_> = (0..count).map(|_| strategy.new_tree(&mut runner).expect("a request").current()).collect();
    requests
        .par_iter()
        .flat_map(|(shell, request)| {
            let told = |what: String| {
                let posture = match &request.subject {
                    Subject::Bare(posture) => format!("{posture:?}"),
                    Subject::Worn(worn) => format!("{:?}", worn.shape.posture),
                    _ => String::new(),
                };
                let Request { side, finger, view, extent, build, width, height, .. } = request;
                format!("{what}\n{shell}{side} {finger} {view} {extent} {build} {width} {height} {posture}")
            };
            let drawn = std::panic::catch_unwind(|| (draw(request), draw(request)));
            match drawn {
                Err(_) => vec![told("it panics".to_owned())],
                // A shell may miss what is shown of the limb.
                Ok((Err(Undrawable::Untouched | Undrawable::Empty), _)) => Vec::new(),
                Ok((Err(why), _)) => vec![told(why.to_string())],
                Ok((Ok(picture), again)) => {
                    let mut found: Vec<String> = faults(&picture).into_iter().take(3).map(told).collect();
                    if again.map(|again| again.drawing.svg("")).ok() != Some(picture.drawing.svg("")) {
                        found.push(told("it is drawn differently again".to_owned()));
                    }
                    found
                }
            }
        })
        .collect()
}

#[test]
fn any_hand_in_any_shell_is_drawn_whole() {
    let found = try_many(60, 1);
    assert!(found.is_empty(), "{} faults:\n{}", found.len(), found.join("\n\n"));
}

/// `PALMLEAF_DRAWINGS=10000 cargo test --release -- --ignored any_hand` takes as many as are asked for.
#[test]
#[ignore = "takes long"]
fn any_hand_in_any_shell_is_drawn_whole_ten_thousand_times() {
    let count = std::env::var("PALMLEAF_DRAWINGS").ok().and_then(|count| count.parse().ok()).unwrap_or(10_000);
    let mut found = Vec::new();
    for (seed, _) in (2_u8..=255).zip((0..count).step_by(200)) {
        found.extend(try_many(200.min(count), seed));
    }
    assert!(found.is_empty(), "{} faults:\n{}", found.len(), found.join("\n\n"));
}

pub const RIGHT: Sitter =
    Sitter { side: Side::Right, finger: Finger::Index, build: Build::Adult, width: 60, height: 600 };

/// A wrong side is the worst fault there is: the thumb of a right hand seen from its back is on the left.
#[test]
fn the_thumb_is_on_its_side() {
    for (side, view, left) in [
        (Side::Right, View::Dorsal, true),
        (Side::Right, View::Palmar, false),
        (Side::Left, View::Dorsal, false),
        (Side::Left, View::Palmar, true),
    ] {
        let sitter = Sitter { side, ..RIGHT };
        let request = asks::posture(&sitter, Posture::flat(), view, Extent::Hand);
        let (_, bones) = bones(&request).expect("drawn").expect("measured");
        let tip = |wanted: Segment| bones.iter().find(|bone| bone.segment == wanted).expect("a bone").to;
        let little = tip(Segment::Finger(Finger::Little, palmleaf::body::Row::Distal));
        assert_eq!(tip(Segment::ThumbDistal).x < little.x, left, "{side} {view}");
        assert!(tip(Segment::Finger(Finger::Middle, palmleaf::body::Row::Distal)).y < tip(Segment::Forearm).y);
    }
}

/// The segments on both sides of a joint: the near one and the far one.
fn beside(joint: Joint) -> Option<(Segment, Segment)> {
    use palmleaf::body::Row;
    Some(match joint {
        Joint::Elbow => (Segment::UpperArm, Segment::Forearm),
        Joint::Forearm => return None,
        Joint::Wrist => (Segment::Forearm, Segment::Hand),
        Joint::ThumbCmc => (Segment::Hand, Segment::ThumbMetacarpal),
        Joint::ThumbMcp => (Segment::ThumbMetacarpal, Segment::ThumbProximal),
        Joint::ThumbIp => (Segment::ThumbProximal, Segment::ThumbDistal),
        Joint::Mcp(finger) => (Segment::Hand, Segment::Finger(finger, Row::Proximal)),
        Joint::Pip(finger) => (Segment::Finger(finger, Row::Proximal), Segment::Finger(finger, Row::Middle)),
        Joint::Dip(finger) => (Segment::Finger(finger, Row::Middle), Segment::Finger(finger, Row::Distal)),
    })
}

/// How far from the joint something must lie that holds it, mm along the limb.
const NEAR: f64 = 25.0;

/// What is wrong with where an orthosis lies.
fn misplaced(worn: &Worn, finger: Finger) -> Vec<String> {
    let fitted = Fitted::new(worn, finger).unwrap_or_else(|why| panic!("{why}"));
    let over: Vec<Vector> = fitted
        .trimmings()
        .iter()
        .flat_map(|surface| surface.mesh.points.iter().zip(&surface.cut).filter(|(_, cut)| **cut < 0.0))
        .map(|(point, _)| *point)
        .collect();
    let covered =
        |place: &Place| fitted.is_under_sheet(place) || over.iter().any(|over| (*over - place.at).length() < 6.0);
    let mut found = Vec::new();
    for joint in Joint::all() {
        let Some((near, far)) = beside(joint) else { continue };
        let places = |segment: Segment, low: f64, high: f64| {
            let length = fitted.skeleton.length(segment);
            let percent = move |mm: f64| (mm / length * 100.0).round() as i16;
            (0..=10).flat_map(move |i| {
                let mm = low + (high - low) * f64::from(i) / 10.0;
                (0..12).map(move |turn| (segment, percent(mm), turn * 30))
            })
        };
        match worn.orthosis.hold_of(joint) {
            Hold::Immobilised { .. } | Hold::Limited(_) => {
                // The hand's far end is at its knuckles, each finger's own; the thumb leaves it near the wrist.
                let from_near = match (joint, near) {
                    (Joint::ThumbCmc, _) => places(near, 0.0, NEAR),
                    (Joint::Elbow, _) => places(near, 0.0, NEAR),
                    _ => {
                        let length = fitted.skeleton.length(near);
                        places(near, (length - NEAR).max(0.0), length)
                    }
                };
                let held = from_near.chain(places(far, 0.0, NEAR.min(fitted.skeleton.length(far)))).any(
                    |(segment, percent, round)| {
                        fitted.place(segment, percent, round).is_some_and(|place| covered(&place))
                    },
                );
                if !held {
                    found.push(format!("{joint} is held, and nothing lies over it"));
                }
            }
            Hold::Free => {
                let under = |round| fitted.place(far, 0, round).is_some_and(|place| fitted.is_under_sheet(&place));
                if under(0) && under(180) {
                    found.push(format!("{joint} is free, and a sheet covers its back and its palm"));
                }
            }
            _ => {}
        }
    }
    found
}

#[test]
fn what_holds_a_joint_lies_over_it_and_what_is_free_is_not_covered() {
    let library = &WORKSHOP.library;
    let found: Vec<String> = library
        .shapes
        .keys()
        .collect::<Vec<_>>()
        .par_iter()
        .flat_map(|id| {
            let fingers = if library.orthoses[*id].needs_finger() { Finger::ALL } else { &Finger::ALL[..1] };
            fingers
                .iter()
                .flat_map(|&finger| {
                    let worn = asks::worn(library, id, finger).expect("a look");
                    misplaced(&worn, finger).into_iter().map(move |wrong| format!("{id} ({finger}): {wrong}"))
                })
                .collect::<Vec<_>>()
        })
        .collect();
    assert!(found.is_empty(), "{} faults:\n{}", found.len(), found.join("\n"));
}
