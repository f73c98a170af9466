//! Reading the tables of `tests/verdicts`: rows of wanted facts, written without a look at the content.

use std::path::Path;

use palmleaf::body::{Direction, Finger, Joint, JointName, MotionRange, Position, Stop};
use palmleaf::content::{Condition, Hold, Measured, Orthosis, Phase};
use palmleaf::ids::{ConditionId, OrthosisId};
use palmleaf::source::{Limits, Node, NodeKind, SourceText, parse};
use palmleaf::units::Degrees;

use crate::support::WORKSHOP;

pub fn rows(path: &Path) -> (SourceText, Vec<Node>) {
    let name = path.file_name().expect("a name").to_string_lossy().into_owned();
    let text = std::fs::read_to_string(path).expect("a table");
    let source = SourceText::new(name.clone(), text);
    let node = parse(&source, Limits::CONTENT).unwrap_or_else(|fault| panic!("{fault:?}"));
    let NodeKind::List(list) = node.kind else { panic!("{name} is a list") };
    (source, list)
}

pub fn field<'n>(node: &'n Node, name: &str) -> Option<&'n Node> {
    match &node.kind {
        NodeKind::Mapping(entries) => entries.iter().find(|entry| entry.key == name).map(|entry| &entry.value),
        _ => None,
    }
}

pub fn scalar<'n>(node: &'n Node, name: &str) -> Option<&'n str> {
    match &field(node, name)?.kind {
        NodeKind::Scalar(text) => Some(text),
        _ => None,
    }
}

pub fn word<T: std::str::FromStr>(node: &Node, name: &str) -> Option<T> {
    scalar(node, name)?.parse().ok()
}

/// The items of a list of scalars; a single scalar is a list of one.
pub fn words<T: std::str::FromStr>(node: &Node, name: &str) -> Vec<T> {
    let read = |item: &Node| match &item.kind {
        NodeKind::Scalar(text) => text.parse().unwrap_or_else(|_| panic!("`{text}` in {name}")),
        _ => panic!("{name} is a list of words"),
    };
    match field(node, name) {
        Some(Node { kind: NodeKind::List(items), .. }) => items.iter().map(read).collect(),
        Some(Node { kind: NodeKind::Null, .. }) | None => Vec::new(),
        Some(one) => vec![read(one)],
    }
}

pub fn findings(node: &Node) -> Vec<Measured> {
    let Some(Node { kind: NodeKind::List(items), .. }) = field(node, "findings") else { return Vec::new() };
    let measured = |item: &Node| {
        Some(Measured {
            joint: word::<Joint>(item, "joint")?,
            motion: word::<Direction>(item, "motion")?,
            angle: word::<Degrees>(item, "angle")?,
        })
    };
    items.iter().map(|item| measured(item).expect("a finding has joint, motion and angle")).collect()
}

pub fn condition(row: &Node, finger: Option<Finger>, at: &str) -> (ConditionId, Condition) {
    let id: ConditionId = word(row, "condition").unwrap_or_else(|| panic!("{at}: condition"));
    let found = WORKSHOP.library.conditions.get(&id).unwrap_or_else(|| panic!("{at}: no condition {id}"));
    assert!(finger.is_some() || !found.needs_finger(), "{at}: {id} is about one finger");
    (id, finger.map_or_else(|| found.clone(), |finger| found.for_finger(finger)))
}

/// The orthosis of a row, set to the angles that it gives.
pub fn orthosis(row: &Node, finger: Option<Finger>, at: &str) -> (OrthosisId, Orthosis) {
    let id: OrthosisId = word(row, "orthosis").unwrap_or_else(|| panic!("{at}: orthosis"));
    let found = WORKSHOP.library.orthoses.get(&id).unwrap_or_else(|| panic!("{at}: no orthosis {id}"));
    let mut set = finger.map_or_else(|| found.clone(), |finger| found.for_finger(finger));
    let turned = turn_all(&mut set, row);
    assert!(turned, "{at}: the orthosis does not hold a joint that the row sets");
    (id, set)
}

/// Sets the joints of a row's `angles`, whether the orthosis can be set so or not; false when it does not hold one.
pub fn turn_all(orthosis: &mut Orthosis, row: &Node) -> bool {
    let Some(Node { kind: NodeKind::List(items), .. }) = field(row, "angles") else { return true };
    items.iter().all(|item| {
        let joint: JointName = word(item, "joint").expect("the joint of an angle");
        let angle: Position = word(item, "at").expect("an angle");
        turn(orthosis, joint, angle)
    })
}

fn turn(orthosis: &mut Orthosis, joint: JointName, angle: Position) -> bool {
    let wanted = joint.joints();
    let mut turned = false;
    for (name, hold) in &mut orthosis.joints {
        if !name.joints().iter().any(|joint| wanted.contains(joint)) {
            continue;
        }
        match hold {
            Hold::Immobilised { at: set, .. } | Hold::Relative { at: set, .. } | Hold::Limited(set) => {
                set.retain(|old| old.axis() != angle.axis());
                set.push(MotionRange::at(angle));
            }
            Hold::Blocked { stops, .. } => {
                for stop in stops.iter_mut().filter(|stop| stop.at.axis() == angle.axis()) {
                    *stop = Stop { direction: stop.direction, at: angle };
                }
            }
            Hold::Mobilised { at: set, .. } => *set = vec![MotionRange::at(angle)],
            _ => continue,
        }
        turned = true;
    }
    turned
}

pub fn phase<'c>(row: &Node, condition: &'c Condition, at: &str) -> &'c Phase {
    let name = scalar(row, "phase").unwrap_or("first");
    let by_number = name.parse::<usize>().ok().and_then(|number| condition.phases.get(number.checked_sub(1)?));
    condition
        .phases
        .iter()
        .find(|phase| name == "first" || phase.id.as_str() == name)
        .or(by_number)
        .unwrap_or_else(|| panic!("{at}: no phase {name}"))
}

/// Whether a table holds verdicts on orthoses, and not positions or joints.
pub fn is_verdicts(path: &Path) -> bool {
    let stem = path.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
    !stem.contains("positions") && !stem.contains("joints")
}
