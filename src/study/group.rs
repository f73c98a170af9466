//! Groups of conditions by the part of the limb, worked out from joints and structures.

use std::collections::BTreeSet;

use crate::body::{Joint, SegmentName};
use crate::content::{Condition, Extent, Library, Need, Orthosis, Phase, Structure};
use crate::source::choice;

choice! {
    /// A part of the limb that conditions are taught by.
    pub enum Group ("group") {
        Elbow = "elbow",
        /// The wrist, and the turning of the forearm.
        Wrist = "wrist",
        Thumb = "thumb",
        Finger = "finger",
    }
}

impl Group {
    const fn of(joint: Joint) -> Self {
        match joint {
            Joint::Elbow => Self::Elbow,
            Joint::Forearm | Joint::Wrist => Self::Wrist,
            Joint::ThumbCmc | Joint::ThumbMcp | Joint::ThumbIp => Self::Thumb,
            Joint::Mcp(_) | Joint::Pip(_) | Joint::Dip(_) => Self::Finger,
        }
    }

    /// Whether an orthosis acts on a joint of this part.
    pub fn acts(self, orthosis: &Orthosis) -> bool {
        let acted = orthosis.joints.iter().filter(|(_, hold)| hold.acts());
        acted.flat_map(|(name, _)| name.joints()).any(|joint| Self::of(joint) == self)
    }
}

/// The groups of a condition: where some phase says that a joint must be held, and where a structure lies that runs
/// through no other part. One condition may belong to several.
pub fn groups(library: &Library, condition: &Condition) -> BTreeSet<Group> {
    let held = condition
        .phases
        .iter()
        .flat_map(Phase::all_requirements)
        .filter(|requirement| requirement.need == Need::Must && requirement.hold.is_some())
        .flat_map(|requirement| requirement.joint.joints())
        .map(Group::of);
    let structures = condition.structures.iter().filter_map(|id| library.structures.get(id));
    held.chain(structures.filter_map(|structure| lies(library, structure))).collect()
}

/// The part that a structure lies in, when it lies in one alone.
fn lies(library: &Library, structure: &Structure) -> Option<Group> {
    match structure.shows {
        Extent::Elbow => Some(Group::Elbow),
        Extent::Finger => Some(Group::Finger),
        Extent::Hand | Extent::Forearm => {
            let on_thumb = |name: &SegmentName| matches!(name, SegmentName::One(segment) if segment.is_thumb());
            let mut points = library
                .courses
                .iter()
                .filter(|course| course.id == structure.id)
                .flat_map(|course| &course.through)
                .map(|point| point.on)
                .peekable();
            (points.peek().is_some() && points.all(|name| on_thumb(&name))).then_some(Group::Thumb)
        }
    }
}
