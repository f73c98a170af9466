//! How a hand stands in its orthosis.

use crate::body::{Axis, Finger, JointName, MotionRange, Position};
use crate::content::Hold;
use crate::picture::limb::Posture;
use crate::units::Degrees;

use super::Worn;

/// The posture of a hand that wears an orthosis: what its joint table sets, and what its look adds for free joints.
pub fn worn_posture(worn: &Worn, finger: Finger) -> Posture {
    let mut posture = Posture::flat();
    lay(&mut posture, &worn.shape.posture, finger);
    for (name, hold) in JointName::general_first(&worn.orthosis.joints) {
        let name = name.for_finger(finger);
        let ranges: &[MotionRange] = match hold {
            Hold::Immobilised { at, .. }
            | Hold::Limited(at)
            | Hold::Mobilised { at, .. }
            | Hold::Relative { at, .. } => at,
            Hold::Blocked { .. } | Hold::Coupled | Hold::Supported | Hold::Free => &[],
        };
        let relative = matches!(hold, Hold::Relative { .. });
        for range in ranges {
            let middle = Degrees::whole((range.from().tenths() + range.to().tenths()) / 20);
            for joint in name.joints() {
                // A joint that is held against its neighbours stands so far off them.
                let base = if relative { neighbour_angle(&posture, joint, range.axis()) } else { Degrees::ZERO };
                posture.turn(joint, range.axis(), base.plus(middle));
            }
        }
        if let Hold::Blocked { stops, .. } = hold {
            for stop in stops {
                posture.set(name, stop.at);
            }
        }
    }
    posture
}

fn neighbour_angle(posture: &Posture, joint: crate::body::Joint, axis: Axis) -> Degrees {
    let crate::body::Joint::Mcp(finger) = joint else { return Degrees::ZERO };
    let beside = crate::body::Joint::Mcp(finger.beside());
    posture.angle(beside, axis).unwrap_or(Degrees::ZERO)
}

/// Lays the joints of a map over a posture.
pub fn lay<'a>(
    posture: &mut Posture,
    joints: impl IntoIterator<Item = (&'a JointName, &'a Vec<Position>)>,
    finger: Finger,
) {
    for (name, positions) in JointName::general_first(joints) {
        for position in positions {
            posture.set(name.for_finger(finger), *position);
        }
    }
}
