//! Where structures of the limb run, in `content/courses.yaml`, so that a picture can show them.

use super::shape::{SkinPoint, Span};
use crate::body::BoneName;
use crate::ids::StructureId;
use crate::source::{choice, record};

choice! {
    /// What a structure is drawn as.
    pub enum CourseKind ("kind of structure") {
        Tendon = "tendon",
        Ligament = "ligament",
        /// A pulley or sheath: a band across a tendon.
        Pulley = "pulley",
        Nerve = "nerve",
        Muscle = "muscle",
        /// The surfaces of a joint: a line across it.
        Joint = "joint",
        /// A patch of skin: its border, all the way round.
        Skin = "skin",
        /// A bone or a stretch of it; it has no course.
        Bone = "bone",
    }
}

record! {
    /// One line of a structure, or one bone; a structure may have several.
    pub struct Course ("the course of a structure") {
        pub id: StructureId,
        pub kind: CourseKind,
        /// From the body to the fingertips. On arm and hand `out -5 mm` lies below the skin; on thumb and fingers it is
        /// measured from the bone, and below 0 % of `finger-proximal` it lies on the metacarpal, with its base at -100 %.
        pub through: Vec<SkinPoint>,
        pub bone: Option<BoneName>,
        /// How much of the bone; all of it when it is not said.
        pub span: Option<Span>,
        /// Whether this is how the structure runs in the thumb, when it is one that fingers have too.
        pub thumb: bool,
    }
}
