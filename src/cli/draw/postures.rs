//! Bare hands and arms: each joint at both ends of its movements, and what a posture shows.

use crate::body::{Axis, Finger, Joint, Position, View, norms};
use crate::content::Extent;
use crate::picture::asks;
use crate::picture::limb::Posture;
use crate::units::Degrees;

use super::caption::hand;
use super::wanted::Asker;

/// Whether a posture says how the arm stands.
pub fn moves_arm(posture: &Posture) -> bool {
    posture.angles().any(|(joint, ..)| matches!(joint, Joint::Elbow | Joint::Forearm))
}

impl Asker<'_> {
    /// Each joint at both ends of each of its movements, seen from where the movement lies in the picture plane.
    pub fn postures(&mut self) {
        let finger = self.sitter.finger;
        let joints = Joint::all().filter(|joint| match joint {
            Joint::Mcp(own) | Joint::Pip(own) | Joint::Dip(own) => *own == finger,
            _ => true,
        });
        for joint in joints {
            for axis in norms::axes(joint) {
                let Some(range) = norms::range(joint, axis) else { continue };
                for angle in [range.from(), range.to()] {
                    let position = Position::signed(axis, angle);
                    let mut posture = Posture::flat();
                    posture.turn(joint, axis, angle);
                    make_room(&mut posture, joint, axis, angle);
                    let view = self.view.unwrap_or_else(|| plane(joint, axis, finger));
                    let extent = match joint {
                        Joint::Elbow | Joint::Forearm => Extent::Elbow,
                        _ => Extent::Hand,
                    };
                    let request = asks::posture(&self.sitter, posture, view, extent);
                    let title = hand(&self.speaker, self.sitter.side);
                    let what = format!("{joint} {position}");
                    self.add(what.clone(), title, &what, request);
                }
            }
        }
    }
}

/// What moves along with a joint, or has to stand elsewhere for its movement to be seen.
fn make_room(posture: &mut Posture, joint: Joint, axis: Axis, angle: Degrees) {
    match (joint, axis) {
        // A straight arm does not tell how the forearm is turned.
        (Joint::Forearm, _) => posture.turn(Joint::Elbow, Axis::Flexion, Degrees::whole(90)),
        // A finger that goes sideways pushes its neighbours along.
        (Joint::Mcp(finger), Axis::Deviation) => {
            let pushed = |other: &Finger| if angle.degrees() > 0.0 { *other > finger } else { *other < finger };
            for other in Finger::ALL.iter().copied().filter(pushed) {
                posture.turn(Joint::Mcp(other), axis, angle);
            }
        }
        _ => {}
    }
}

/// From where a movement is seen best.
const fn plane(joint: Joint, axis: Axis, finger: Finger) -> View {
    match (joint, axis) {
        (Joint::ThumbCmc, Axis::PalmarAbduction) => View::Radial,
        (Joint::ThumbCmc | Joint::ThumbMcp | Joint::ThumbIp, _) => View::Palmar,
        (Joint::Forearm, _) => View::Radial,
        (Joint::Elbow, _) | (_, Axis::Deviation) => View::Dorsal,
        // The little finger and its neighbour are hidden by the others from the thumb side.
        _ => match finger {
            Finger::Index | Finger::Middle => View::Radial,
            Finger::Ring | Finger::Little => View::Ulnar,
        },
    }
}
