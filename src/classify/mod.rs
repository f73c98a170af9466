//! The systematic name of an orthosis, worked out from its joint table and its purpose.
//!
//! Source: American Society of Hand Therapists, *Splint Classification System*, 1992, in the expanded form of Fess,
//! Gettle, Philips, Janson, *Hand and Upper Extremity Splinting*, 3rd edition, 2005, whose rules are recalled here: say
//! the joints the purpose is about, the direction, the purpose; then `type` with the number of levels of secondary
//! joints, and in brackets the number of all joints. The name follows the purpose: one piece has two right names when it
//! serves two. Colleagues differ on the thumb's middle joint; the angle decides here, as for every other joint.

mod words;

use std::collections::BTreeSet;

use crate::body::{Axis, Direction, Finger, Joint, Knuckle, MotionRange, norms};
use crate::content::{Hold, Need, Orthosis, Requirement, Segment};
use crate::source::choice;
use crate::units::Degrees;

choice! {
    /// What an orthosis does to a joint.
    pub enum Purpose ("purpose of an orthosis") {
        Immobilization = "immobilization",
        Mobilization = "mobilization",
        Restriction = "restriction",
        TorqueTransmission = "torque transmission",
    }
}

/// One primary joint: what is done to it, in which direction.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Primary {
    pub joint: Joint,
    pub purpose: Purpose,
    /// `extension`, `palmar abduction`, `neutral`, `circumduction`.
    pub direction: String,
}

/// A systematic name in its parts. `Display` writes it out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SystematicName {
    /// Acts on a segment and on no joint.
    Nonarticular(Segment),
    Articular {
        primary: Vec<Primary>,
        /// How many levels of joints it crosses for control only.
        kind: usize,
        /// All joints it acts on.
        total: usize,
        /// The case has named the finger; otherwise the name speaks of "finger".
        named: bool,
    },
}

/// The name of an orthosis for its usual purpose.
pub fn name(orthosis: &Orthosis, finger: Option<Finger>) -> SystematicName {
    let whole = orthosis.for_finger(finger.unwrap_or(Finger::Index));
    let purpose: Vec<Joint> = whole.primary.iter().flat_map(|name| name.joints()).collect();
    named(&whole, &purpose, finger.is_some() || !orthosis.needs_finger())
}

/// The name of an orthosis that serves a phase: the joints that the phase wants held are its purpose.
pub fn name_for(orthosis: &Orthosis, finger: Option<Finger>, in_force: &[&Requirement]) -> SystematicName {
    let whole = orthosis.for_finger(finger.unwrap_or(Finger::Index));
    let must = in_force.iter().filter(|requirement| requirement.need == Need::Must && requirement.hold.is_some());
    let purpose: Vec<Joint> = must.flat_map(|requirement| requirement.joint.joints()).collect();
    named(&whole, &purpose, finger.is_some() || !orthosis.needs_finger())
}

fn named(orthosis: &Orthosis, purpose: &[Joint], named: bool) -> SystematicName {
    let acted: Vec<(Joint, &Hold)> =
        Joint::all().map(|joint| (joint, orthosis.hold_of(joint))).filter(|(_, hold)| hold.acts()).collect();
    if let (true, Some(segment)) = (acted.is_empty(), orthosis.acts_on) {
        return SystematicName::Nonarticular(segment);
    }
    let about = acted.iter().any(|(joint, _)| purpose.contains(joint));
    // A purpose that the piece does not serve names nothing: then all its joints are primary.
    let is_primary = |joint: &Joint| !about || purpose.contains(joint);
    let primary =
        acted.iter().filter(|(joint, _)| is_primary(joint)).map(|(joint, hold)| primary(*joint, hold)).collect();
    let levels: BTreeSet<&'static str> =
        acted.iter().filter(|(joint, _)| !is_primary(joint)).map(|(joint, _)| level(*joint)).collect();
    SystematicName::Articular { primary, kind: levels.len(), total: acted.len(), named }
}

/// The joints of a level count as one level: all knuckles of the fingers together are one.
const fn level(joint: Joint) -> &'static str {
    match joint {
        Joint::Elbow => "elbow",
        Joint::Forearm => "forearm",
        Joint::Wrist => "wrist",
        Joint::ThumbCmc => "thumb CMC",
        Joint::ThumbMcp => "thumb MP",
        Joint::ThumbIp => "thumb IP",
        Joint::Mcp(_) => "MP",
        Joint::Pip(_) => "PIP",
        Joint::Dip(_) => "DIP",
    }
}

fn primary(joint: Joint, hold: &Hold) -> Primary {
    let (purpose, direction) = match hold {
        Hold::Immobilised { at, .. } => (Purpose::Immobilization, position(joint, at)),
        Hold::Limited(ranges) => (Purpose::Restriction, cut(joint, ranges)),
        Hold::Blocked { stops, .. } => {
            let directions: BTreeSet<String> = stops.iter().map(|stop| spoken(stop.direction)).collect();
            (Purpose::Restriction, directions.into_iter().collect::<Vec<_>>().join("/"))
        }
        // Held straighter than its neighbours it cannot bend fully, and the other way round.
        Hold::Relative { at, .. } => {
            let straighter = at.iter().all(|by| by.to() <= Degrees::ZERO);
            (Purpose::Restriction, if straighter { "flexion" } else { "extension" }.to_owned())
        }
        Hold::Coupled => (Purpose::TorqueTransmission, "flexion/extension".to_owned()),
        Hold::Mobilised { towards, .. } => (Purpose::Mobilization, spoken(*towards)),
        Hold::Supported | Hold::Free => (Purpose::Restriction, "circumduction".to_owned()),
    };
    Primary { joint, purpose, direction }
}

fn spoken(direction: Direction) -> String {
    direction.word().replace('-', " ")
}

/// The position a joint is held in, in one word: straight is "neutral" at the wrist and forearm and "extension" elsewhere.
fn position(joint: Joint, at: &[MotionRange]) -> String {
    let usual = match joint {
        Joint::ThumbCmc => [Axis::PalmarAbduction, Axis::RadialAbduction, Axis::Flexion],
        Joint::Forearm => [Axis::Rotation; 3],
        _ => [Axis::Flexion, Axis::Deviation, Axis::Deviation],
    };
    let Some(range) = usual.iter().find_map(|axis| at.iter().find(|range| range.axis() == *axis)) else {
        return "neutral".to_owned();
    };
    let far = if range.from().size() > range.to().size() { range.from() } else { range.to() };
    if far == Degrees::ZERO {
        let neutral = matches!(joint, Joint::Wrist | Joint::Forearm);
        return if neutral { "neutral" } else { "extension" }.to_owned();
    }
    spoken(Direction::of(range.axis(), far > Degrees::ZERO))
}

/// The direction of which a limit takes most. Where both ends lose about as much, it is named by the direction that
/// deformity takes: bending, and drift to the little-finger side.
fn cut(joint: Joint, ranges: &[MotionRange]) -> String {
    let cuts = ranges.iter().filter_map(|range| {
        let norm = norms::range(joint, range.axis())?;
        let (low, high) = (range.from().tenths() - norm.from().tenths(), norm.to().tenths() - range.to().tenths());
        Some((low.max(high), Direction::of(range.axis(), high + 100 >= low)))
    });
    cuts.max_by_key(|(size, _)| *size).map_or_else(|| "circumduction".to_owned(), |(_, direction)| spoken(direction))
}

/// The knuckle and finger of a finger joint.
const fn of_finger(joint: Joint) -> Option<(Knuckle, Finger)> {
    match joint {
        Joint::Mcp(finger) => Some((Knuckle::Mcp, finger)),
        Joint::Pip(finger) => Some((Knuckle::Pip, finger)),
        Joint::Dip(finger) => Some((Knuckle::Dip, finger)),
        _ => None,
    }
}
