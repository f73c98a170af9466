//! What a picture is asked to show, and the picture that answers.

mod anatomy;
mod anchor;
mod arrow;
mod caption;
mod clear;
mod course;
mod exercise;
mod explain;
mod fit;
mod grasp;
mod handling;
mod held;
mod helper;
mod known;
mod mirror;
mod pair;
mod pose;
mod request;
mod sight;
mod spots;
mod stage;
mod studio;
mod table;

pub use explain::{Bone, bones};
pub use fit::Fitted;
pub use handling::strap_states;
pub use pose::worn_posture;
pub use request::{Even, Label, LabelText, Named, Picture, Request, Subject, Worn};
pub use sight::{strap_shares, strap_view};
pub use spots::spot_views;
pub use studio::Studio;

use crate::body::Side;
use crate::picture::limb::Posture;
use crate::picture::wear::StrapState;
use stage::{Cast, Stage};

/// Draws what is asked for.
///
/// # Errors
/// Names what cannot be drawn and why: an orthosis that touches no segment, a joint angle that no joint reaches.
pub fn draw(request: &Request) -> Result<Picture, Undrawable> {
    Studio::default().draw(request)
}

impl Studio {
    /// Draws what is asked for; what earlier pictures have worked out is taken from them.
    ///
    /// # Errors
    /// Names what cannot be drawn and why: an orthosis that touches no segment, a joint angle that no joint reaches.
    pub fn draw(&self, request: &Request) -> Result<Picture, Undrawable> {
        let right = self.draw_right(request)?;
        Ok(if request.side == Side::Left { right.mirrored() } else { right })
    }

    fn draw_right(&self, request: &Request) -> Result<Picture, Undrawable> {
        let picture = match &request.subject {
            Subject::Bare(posture) => {
                let cast = Cast::new(self, request, posture, None, &[])?;
                Stage::new(request, vec![cast]).picture()
            }
            Subject::Worn(worn) => {
                let posture = worn_posture(worn, request.finger);
                let states = vec![StrapState::Closed; worn.orthosis.straps.len()];
                let cast = Cast::new(self, request, &posture, Some(worn), &states)?;
                Stage::new(request, vec![cast]).picture()
            }
            Subject::Step { worn, handling, straps, off } => {
                handling::draw(self, request, worn, handling, straps, *off)?
            }
            Subject::Spots { worn, places } => spots::draw(self, request, worn, places)?,
            Subject::Pair { worn, fault, wrong } => pair::draw(self, request, worn, fault, *wrong)?,
            Subject::Anatomy { posture, structures, held, fingers, legend } => {
                let inside = anatomy::Shown { structures, held, fingers, legend: *legend };
                anatomy::draw(self, request, posture, &inside)?
            }
            Subject::Exercise { motion, step, worn } => exercise::draw(self, request, motion, *step, worn.as_deref())?,
        };
        if picture.drawing.parts.len() < 2 {
            return Err(Undrawable::Empty);
        }
        Ok(picture)
    }
}

/// Why there is no picture.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub enum Undrawable {
    #[error("the joint {joint} cannot stand at {angle}: {write}")]
    Beyond { joint: crate::body::Joint, angle: String, write: String },
    #[error("the orthosis touches no part of the limb: its shape has no sheet, band or wire there")]
    Untouched,
    #[error("there is nothing to draw in this part of the limb")]
    Empty,
}

/// Checks that every angle of a posture is one that a joint can reach.
fn possible(posture: &Posture) -> Result<(), Undrawable> {
    match posture.beyond() {
        None => Ok(()),
        Some((joint, position)) => {
            let write = match crate::body::norms::range(joint, position.axis()) {
                Some(range) => format!("it reaches {range}"),
                None => format!("it does not move in {}", position.direction()),
            };
            Err(Undrawable::Beyond { joint, angle: position.to_string(), write })
        }
    }
}
