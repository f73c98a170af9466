//! Setting the joints of an orthosis to the angles that the case gives.

use super::file::JointAngle;
use crate::body::MotionRange;
use crate::content::Orthosis;

/// Sets a joint of the orthosis to an angle.
///
/// # Errors
/// What is wrong and what to write, when this orthosis cannot be set so.
pub fn set_angle(orthosis: &mut Orthosis, angle: &JointAngle) -> Result<(), (String, String)> {
    let name = orthosis.joints.keys().copied().find(|name| angle.joint.is_within(*name));
    let range = MotionRange::at(angle.at);
    let out = || "take the line out".to_owned();
    let Some(hold) = name.and_then(|name| orthosis.joints.get_mut(&name)) else {
        return Err((format!("this orthosis does not hold {}", angle.joint), out()));
    };
    let Some(adjustable) = hold.adjustable() else {
        return Err((format!("this orthosis does not hold {} at an angle", angle.joint), out()));
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
    hold.set(angle.at);
    Ok(())
}
