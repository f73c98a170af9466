//! The inside of the limb in pictures, and pairs of right and wrong.

use palmleaf::body::{Axis, Finger, Joint, JointName, Position, Side, View};
use palmleaf::content::Extent;
use palmleaf::picture::limb::{Build, Posture};
use palmleaf::picture::plate::Part;
use palmleaf::picture::scene::{Named, Picture, Request, Studio, Subject, Worn, bones};
use palmleaf::units::Degrees;

use crate::support::WORKSHOP;

/// Size of every name in these tests, units of a picture.
pub const NAME: (u16, u16) = (420, 72);

fn postures() -> [Posture; 3] {
    let mut fist = Posture::rest();
    for finger in Finger::ALL.iter().copied() {
        fist = fist.finger(finger, 60, 70, 30);
    }
    let turn = |posture: &mut Posture, joint, axis, angle| posture.turn(joint, axis, Degrees::whole(angle));
    turn(&mut fist, Joint::Wrist, Axis::Flexion, -30);
    turn(&mut fist, Joint::Elbow, Axis::Flexion, 90);
    let mut turned = Posture::flat();
    turn(&mut turned, Joint::Forearm, Axis::Rotation, 70);
    turn(&mut turned, Joint::Elbow, Axis::Flexion, 40);
    turn(&mut turned, Joint::ThumbCmc, Axis::PalmarAbduction, 40);
    [Posture::flat(), fist, turned]
}

pub fn request(subject: Subject, view: View, extent: Extent) -> Request {
    let (side, finger) = (Side::Right, Finger::Ring);
    Request { subject, side, finger, view, extent, build: Build::Adult, width: 150, height: 220 }
}

/// Every structure that has a course.
fn everything(thumb: bool) -> Vec<Named> {
    let library = &WORKSHOP.library;
    let named = |(number, id)| Named { number, courses: library.courses_of(id, thumb), wide: NAME.0, high: NAME.1 };
    library.structures.keys().enumerate().map(named).filter(|named| !named.courses.is_empty()).collect()
}

pub fn anatomy(posture: Posture, structures: Vec<Named>, held: Vec<Joint>) -> Subject {
    Subject::Anatomy { posture, structures, held, fingers: Vec::new(), legend: None }
}

/// The points of a path at which its curves and lines end.
pub fn points(part: &Part) -> Vec<(f64, f64)> {
    let spaced: String = part
        .path
        .text()
        .chars()
        .flat_map(|c| {
            if c.is_ascii_alphabetic() {
                vec![' ', c, ' ']
            } else if c == '-' {
                vec![' ', c]
            } else {
                vec![c]
            }
        })
        .collect();
    let (mut found, mut at, mut letter, mut numbers) = (Vec::new(), (0.0, 0.0), 'M', Vec::new());
    for word in spaced.split_whitespace() {
        let Ok(number) = word.parse::<f64>() else {
            letter = word.chars().next().expect("a letter");
            numbers.clear();
            continue;
        };
        numbers.push(number);
        if letter == 'M' && numbers.len() == 2 {
            at = (numbers[0], numbers[1]);
            found.push(at);
        } else if letter != 'M' && numbers.len() == if letter == 'c' { 6 } else { 2 } {
            // Every point of a curve is given from where the curve begins.
            let [.., x, y] = numbers[..] else { panic!("two numbers") };
            at = (at.0 + x, at.1 + y);
            found.push(at);
            numbers.clear();
        }
    }
    found
}

pub fn named<'a>(picture: &'a Picture, name: &'a str) -> impl Iterator<Item = &'a Part> {
    picture.drawing.parts.iter().filter(move |part| part.name == name)
}

#[test]
fn every_course_is_found_on_the_limb_in_any_posture() {
    let studio = Studio::default();
    let structures = everything(false);
    assert!(structures.len() > 30, "{} structures have a course", structures.len());
    for posture in postures() {
        for view in [View::Dorsal, View::Palmar, View::Radial, View::Ulnar] {
            let subject = anatomy(posture.clone(), structures.clone(), Vec::new());
            let picture = studio.draw(&request(subject, view, Extent::Elbow)).expect("a picture");
            for structure in &structures {
                let name = format!("structure-{}", structure.number);
                assert!(named(&picture, &name).next().is_some(), "{name} is not drawn: {:?}", structure.courses);
            }
            assert_eq!(picture.labels.len(), structures.len());
        }
    }
}

#[test]
fn a_pulley_of_the_thumb_is_not_one_of_a_finger() {
    let both: Vec<_> = WORKSHOP
        .library
        .structures
        .keys()
        .filter(|id| WORKSHOP.library.courses_of(id, true) != WORKSHOP.library.courses_of(id, false))
        .collect();
    assert!(!both.is_empty());
    for id in both {
        let words = |thumb| {
            WORKSHOP
                .library
                .courses_of(id, thumb)
                .iter()
                .flat_map(|course| course.through.clone())
                .map(|point| point.on.to_string())
                .collect::<Vec<_>>()
        };
        assert!(words(true).iter().all(|word| word.starts_with("thumb")), "{id}");
        assert!(words(false).iter().all(|word| word.starts_with("finger")), "{id}");
    }
}

#[test]
fn a_held_joint_is_marked_where_the_skeleton_has_it() {
    let held = vec![
        Joint::Elbow,
        Joint::Wrist,
        Joint::ThumbCmc,
        Joint::ThumbMcp,
        Joint::ThumbIp,
        Joint::Mcp(Finger::Index),
        Joint::Pip(Finger::Ring),
        Joint::Dip(Finger::Little),
    ];
    let studio = Studio::default();
    for posture in postures() {
        for view in [View::Dorsal, View::Radial, View::Turned] {
            for side in [Side::Right, Side::Left] {
                let mut asked = request(anatomy(posture.clone(), Vec::new(), held.clone()), view, Extent::Elbow);
                asked.side = side;
                let picture = studio.draw(&asked).expect("a picture");
                let (_, bones) = bones(&asked).expect("a picture").expect("bones");
                for joint in &held {
                    let moved = |bone: &&palmleaf::picture::scene::Bone| {
                        palmleaf::picture::limb::Skeleton::joint(bone.segment) == *joint
                    };
                    let centre = bones.iter().find(moved).expect("a bone").from;
                    let name = format!("held-{joint}");
                    let ring: Vec<(f64, f64)> = named(&picture, &name).flat_map(points).collect();
                    let within = |pick: fn(&(f64, f64)) -> f64, value: f64| {
                        let (low, high) =
                            ring.iter().map(pick).fold((f64::MAX, f64::MIN), |(l, h), v| (l.min(v), h.max(v)));
                        low < value && value < high
                    };
                    assert!(
                        within(|p| p.0, centre.x) && within(|p| p.1, centre.y),
                        "{name} {view} {side} {centre:?} {ring:?}"
                    );
                }
                assert_eq!(
                    picture.drawing.parts.iter().filter(|part| part.name.starts_with("held-")).count(),
                    held.len() * 3
                );
            }
        }
    }
}

#[test]
fn names_stand_apart_from_lines_and_from_each_other() {
    let studio = Studio::default();
    for (posture, view) in postures().into_iter().zip([View::Palmar, View::Radial, View::Dorsal]) {
        for count in [3, 7] {
            let structures: Vec<Named> = everything(true).into_iter().step_by(4).take(count).collect();
            let picture = studio
                .draw(&request(anatomy(posture.clone(), structures, vec![Joint::Wrist]), view, Extent::Forearm))
                .expect("a picture");
            let half = (f64::from(NAME.0) / 2.0 - 1.0, f64::from(NAME.1) / 2.0 - 1.0);
            assert!(!picture.labels.is_empty());
            for (i, label) in picture.labels.iter().enumerate() {
                let inside = |x: f64, y: f64| (x - label.at.x).abs() < half.0 && (y - label.at.y).abs() < half.1;
                for part in &picture.drawing.parts {
                    assert!(points(part).iter().all(|(x, y)| !inside(*x, *y)), "{} runs through {label:?}", part.name);
                }
                for other in &picture.labels[i + 1..] {
                    let apart = (label.at.x - other.at.x).abs() >= 2.0 * half.0
                        || (label.at.y - other.at.y).abs() >= 2.0 * half.1;
                    assert!(apart, "{label:?} {other:?}");
                }
                let (w, h) = (picture.drawing.width, picture.drawing.height);
                assert!(
                    label.at.x - half.0 > -4.0
                        && label.at.x + half.0 < w + 4.0
                        && label.at.y > half.1
                        && label.at.y + half.1 < h,
                    "{label:?} {w} {h}"
                );
            }
        }
    }
}

#[test]
fn the_inside_of_a_limb_is_drawn_the_same_twice() {
    let asked = request(anatomy(Posture::rest(), everything(false), vec![Joint::Wrist]), View::Turned, Extent::Forearm);
    let draw = || Studio::default().draw(&asked).expect("a picture");
    let (one, other) = (draw(), draw());
    assert_eq!(one.drawing.svg("x"), other.drawing.svg("x"));
    assert_eq!(one.labels, other.labels);
}

/// The far side of a limb shows a course in dots, the near side in full.
#[test]
fn a_course_on_the_far_side_is_dotted() {
    let library = &WORKSHOP.library;
    let mut posture = Posture::flat();
    posture.set(JointName::One(Joint::Wrist), Position::signed(Axis::Flexion, Degrees::whole(0)));
    let studio = Studio::default();
    let dotted = |id: &str, view: View| {
        let id = library.structures.keys().find(|key| key.as_str() == id).expect("a structure");
        let courses = library.courses_of(id, false);
        let structures = vec![Named { number: 0, courses, wide: NAME.0, high: NAME.1 }];
        let picture = studio
            .draw(&request(anatomy(posture.clone(), structures, Vec::new()), view, Extent::Hand))
            .expect("a picture");
        let dots = named(&picture, "structure-0").filter(|part| matches!(part.style, palmleaf::picture::plate::Style::Stroke { dash: Some((on, _)), .. } if on < 1.0)).count();
        dots * 2 == named(&picture, "structure-0").count()
    };
    for (id, near, far) in [
        ("finger-flexors", View::Palmar, View::Dorsal),
        ("a1-pulley", View::Palmar, View::Dorsal),
        ("palmar-fascia", View::Palmar, View::Dorsal),
        ("central-slip", View::Dorsal, View::Palmar),
        ("terminal-tendon", View::Dorsal, View::Palmar),
    ] {
        assert!(dotted(id, far) && !dotted(id, near), "{id}");
    }
}

#[test]
fn a_wrong_picture_has_the_frame_of_the_right_one_and_another_sign() {
    let library = &WORKSHOP.library;
    let studio = Studio::default();
    let mut seen = 0;
    for (id, shape) in &library.shapes {
        for fault in &shape.faults {
            let worn = Worn { orthosis: library.orthoses[id].for_finger(Finger::Index), shape: shape.clone() };
            let pictures = [false, true].map(|wrong| {
                let subject = Subject::Pair { worn: Box::new(worn.clone()), fault: fault.clone(), wrong };
                studio.draw(&request(subject, fault.view.unwrap_or(View::Turned), Extent::Forearm)).expect("a picture")
            });
            let [right, wrong] = &pictures;
            assert_eq!((right.drawing.width, right.drawing.height), (wrong.drawing.width, wrong.drawing.height));
            assert!(named(right, "sign-right").next().is_some() && named(right, "sign-wrong").next().is_none());
            assert!(named(wrong, "sign-wrong").next().is_some() && named(wrong, "sign-right").next().is_none());
            assert_ne!(right.drawing.svg(""), wrong.drawing.svg(""));
            seen += 1;
        }
    }
    assert!(seen > 0);
}
