//! Ranges of motion of a healthy adult's joints, and the outer limits of any body.
//!
//! Source of the flexion, deviation and rotation ranges: American Academy of Orthopaedic Surgeons, *Joint Motion:
//! Method of Measuring and Recording*, 1965, where the table gives one; the thumb's abduction ranges differ between
//! handbooks by their zero points, and the values here are common practice. Sideways play of the thumb's
//! knuckle and of the fingers' middle joints, and ten degrees past straight at the thumb's knuckle and at the fingers'
//! middle and end joints, which many healthy hands reach with help, are common practice, no source.

use super::{Axis, Direction, Joint, MotionRange, Position};
use crate::units::{Degrees, Misread};

/// What a healthy joint can reach on an axis; None when it does not move on that axis.
pub fn range(joint: Joint, axis: Axis) -> Option<MotionRange> {
    let (low, high) = match (joint, axis) {
        (Joint::Elbow, Axis::Flexion) => (0, 150),
        (Joint::Forearm, Axis::Rotation) => (-80, 80),
        (Joint::Wrist, Axis::Flexion) => (-70, 80),
        (Joint::Wrist, Axis::Deviation) => (-20, 30),
        (Joint::ThumbCmc, Axis::Flexion) => (-20, 15),
        (Joint::ThumbCmc, Axis::PalmarAbduction) => (0, 45),
        (Joint::ThumbCmc, Axis::RadialAbduction) => (0, 50),
        (Joint::ThumbMcp, Axis::Flexion) => (-10, 50),
        (Joint::ThumbMcp, Axis::Deviation) => (-10, 10),
        (Joint::ThumbIp, Axis::Flexion) => (-20, 80),
        (Joint::Mcp(_), Axis::Flexion) => (-45, 90),
        (Joint::Mcp(_), Axis::Deviation) => (-20, 20),
        (Joint::Pip(_), Axis::Flexion) => (-10, 100),
        (Joint::Pip(_), Axis::Deviation) => (-10, 10),
        (Joint::Dip(_), Axis::Flexion) => (-10, 90),
        _ => return None,
    };
    Some(MotionRange::between(axis, Degrees::whole(low), Degrees::whole(high)))
}

/// The axes a joint moves on.
pub fn axes(joint: Joint) -> impl Iterator<Item = Axis> {
    Axis::ALL.iter().copied().filter(move |&axis| range(joint, axis).is_some())
}

/// How far past the healthy range a picture may show a joint: lax joints are drawn too.
const SLACK: Degrees = Degrees::whole(30);

/// Whether no joint stands so, not even a lax one.
pub fn is_beyond(joint: Joint, position: Position) -> bool {
    range(joint, position.axis()).is_none_or(|range| {
        let within = range.from().plus(SLACK.reversed())..=range.to().plus(SLACK);
        !within.contains(&position.angle())
    })
}

/// Why no joint stands so, in words; nothing when one does.
pub fn beyond(joint: Joint, position: Position) -> Option<String> {
    is_beyond(joint, position).then(|| match range(joint, position.axis()) {
        Some(range) => format!("the joint {joint} cannot stand at {position}, it reaches {range}"),
        None => format!("the joint {joint} does not move in {}", position.direction()),
    })
}

/// The most a finding may report in a direction: 60 degrees past the healthy range, which covers the laxest joints
/// described, and never more than 150. Beyond it a figure is a slip of the pen.
pub fn most_possible(joint: Joint, direction: Direction) -> Option<Degrees> {
    let range = range(joint, direction.axis())?;
    let healthy = if direction.is_positive() { range.to() } else { range.from().reversed() };
    let most = healthy.tenths().max(0).saturating_add(600).min(1500);
    Some(Degrees::whole(most / 10))
}

/// Whether a body can have this finding.
///
/// # Errors
/// When the joint does not move that way, or not so far.
pub fn check(joint: Joint, direction: Direction, angle: Degrees) -> Result<(), Misread> {
    match most_possible(joint, direction) {
        None => {
            let ways: Vec<&str> = Direction::ALL
                .iter()
                .filter(|direction| range(joint, direction.axis()).is_some())
                .map(|direction| direction.word())
                .collect();
            Err(Misread::new(
                format!("the joint {joint} does not move in {direction}"),
                format!("one of: {}", ways.join(", ")),
            ))
        }
        Some(most) if angle > most => Err(Misread::new(
            format!("{direction} of {angle} at {joint} is more than any joint does"),
            format!("at most `{most}`"),
        )),
        Some(_) => Ok(()),
    }
}
