//! Setting the joints of an orthosis to the angles that the case gives.

use super::file::JointAngle;
use crate::body::{MotionRange, Stop};
use crate::content::{Hold, Orthosis};

/// Sets a joint of the orthosis to an angle.
///
/// # Errors
/// What is wrong and what to write, when this orthosis cannot be set so.
pub fn set_angle(orthosis: &mut Orthosis, angle: &JointAngle) -> Result<(), (String, String)> {
    let wanted = angle.joint.joints();
    let name = orthosis.joints.keys().copied().find(|name| {
        let own = name.joints();
        *name == angle.joint || wanted.iter().all(|joint| own.contains(joint))
    });
    let range = MotionRange::at(angle.at);
    let out = || "take the line out".to_owned();
    let Some(hold) = name.and_then(|name| orthosis.joints.get_mut(&name)) else {
        return Err((format!("this orthosis does not hold {}", angle.joint), out()));
    };
    let adjustable = match hold {
        Hold::Immobilised { adjustable, .. } | Hold::Blocked { adjustable, .. } | Hold::Relative { adjustable, .. } => {
            adjustable
        }
        _ => return Err((format!("this orthosis does not hold {} at an angle", angle.joint), out())),
    };
    match adjustable.iter().find(|can| can.axis() == angle.at.axis()) {
        Some(can) if can.contains(range) => {}
        Some(can) => {
            return Err((
                format!("{} cannot be set to {} in this orthosis", angle.joint, angle.at),
                format!("give an angle within {can}"),
            ));
        }
        None => return Err((format!("this orthosis sets no {} at {}", angle.at.axis(), angle.joint), out())),
    }
    match hold {
        Hold::Immobilised { at, .. } | Hold::Relative { at, .. } => {
            at.retain(|old| old.axis() != range.axis());
            at.push(range);
        }
        Hold::Blocked { stops, .. } => {
            for stop in stops.iter_mut().filter(|stop| stop.at.axis() == angle.at.axis()) {
                *stop = Stop { direction: stop.direction, at: angle.at };
            }
        }
        _ => {}
    }
    Ok(())
}
