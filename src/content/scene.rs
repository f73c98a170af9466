//! What the pictures of a guide show: exercises as movements, steps as acts with the orthosis.

use std::collections::BTreeMap;

use super::shape::{Millimetres, SkinPoint};
use crate::body::{JointName, Position, SegmentName, View};
use crate::ids::{MessageId, StepId};
use crate::source::{choice, record};

choice! {
    /// How much of the limb a picture shows.
    pub enum Extent ("extent of a picture") {
        /// One finger by itself: the affected one.
        Finger = "finger",
        /// The hand and the wrist.
        Hand = "hand",
        /// The hand and most of the forearm.
        Forearm = "forearm",
        /// The hand, the forearm and the elbow.
        Elbow = "elbow",
    }
}

choice! {
    /// What the other hand does.
    pub enum Grip ("way the other hand helps") {
        /// Holds between thumb and index finger.
        Pinch = "pinch",
        /// Lays a finger on.
        Fingertip = "fingertip",
        /// Lies flat against.
        Palm = "palm",
        /// Lies palm to palm with the treated hand, fingers along fingers.
        Together = "together",
    }
}

record! {
    /// The other hand.
    pub struct Helper ("the other hand") {
        pub grip: Grip,
        /// Where on the treated limb.
        pub at: SkinPoint,
        /// Where it strokes to from there, along the skin.
        pub strokes: Option<SkinPoint>,
        /// Whether it moves the skin in circles.
        pub circles: bool,
    }
}

choice! {
    /// What the pad of the thumb touches.
    pub enum Facet ("side of a finger") {
        Pad = "pad",
        /// The side that faces the thumb, as in a key pinch.
        Side = "side",
        /// The back, as in a fist.
        Back = "back",
    }
}

record! {
    /// Where the pad of the thumb comes to lie.
    pub struct Meeting ("a place that the thumb touches") {
        pub on: SegmentName,
        pub at: Facet,
        /// How far it stays away, for what is held between them.
        pub apart: Option<Millimetres>,
    }
}

record! {
    /// A posture by its joints; what is not named rests.
    pub struct Stand ("a posture") {
        pub joints: BTreeMap<JointName, Vec<Position>>,
        /// Where the pad of the thumb comes to lie; the angles of both are fitted so that they meet.
        pub meets: Option<Meeting>,
    }
}

record! {
    /// Something that the hand holds: a ball, or a roll from one place to another.
    pub struct Held ("something in the hand") {
        /// The middle of the ball, or of one end of the roll.
        pub from: SkinPoint,
        pub to: Option<SkinPoint>,
        /// How thick it is.
        pub across: Millimetres,
        /// How far a roll goes on past each of its ends.
        pub beyond: Option<Millimetres>,
    }
}

choice! {
    /// A side of a segment as a person calls it.
    pub enum Flank ("side of a limb") {
        Palm = "palm",
        Back = "back",
        ThumbSide = "thumb-side",
        LittleFingerSide = "little-finger-side",
    }
}

choice! {
    /// How far a table reaches under a limb.
    pub enum Table ("table under a limb") {
        /// Almost to the wrist: the hand is over its edge.
        Edge = "edge",
        /// Under all of it.
        Whole = "whole",
    }
}

record! {
    /// A segment that lies level in the picture.
    pub struct Lie ("how a limb lies") {
        pub on: SegmentName,
        /// Its side that is below.
        pub below: Flank,
        /// The table that it rests on, if there is one.
        pub table: Option<Table>,
    }
}

record! {
    /// How an exercise looks, in `content/motions`, by the exercise's name.
    pub struct Motion ("the look of an exercise") {
        pub view: View,
        pub shows: Extent,
        /// Where it begins.
        pub start: BTreeMap<JointName, Vec<Position>>,
        /// Where it goes, one picture each; an exercise that only holds a posture has none.
        pub then: Vec<Stand>,
        /// Whether each movement begins at the start again, and not where the one before it ended.
        pub afresh: bool,
        /// How far the hand sinks as a whole, pointing where it points at the end; its forearm follows.
        pub sinks: Option<Millimetres>,
        /// The segment whose end draws the arrow; the one that travels furthest when it is not said.
        pub traced: Option<SegmentName>,
        /// The segment that points up in the picture; the forearm when it is not said.
        pub up: Option<SegmentName>,
        /// The segment that lies level instead, at the end of the movement.
        pub lies: Option<Lie>,
        /// What the hand holds at the end of a movement.
        pub holds: Option<Held>,
        pub helper: Option<Helper>,
        /// Where a scar runs, for what is done to one.
        pub scar: Vec<SkinPoint>,
    }
}

choice! {
    /// Whether the straps are open in a step.
    pub enum Straps ("state of the straps") {
        /// As the steps before have left them.
        AsTheyAre = "as-they-are",
        Open = "open",
        Closed = "closed",
    }
}

record! {
    /// Where the orthosis is while it goes on or comes off.
    pub struct Away ("the way of an orthosis") {
        /// The segment along which it slides.
        pub along: SegmentName,
        /// How far towards the fingertips.
        pub by: Millimetres,
        /// How far off the limb.
        pub lift: Option<Millimetres>,
        /// To which side it is lifted: an angle round that segment, 0 at the back. The side that the orthosis covers when
        /// it is not said.
        pub towards: Option<super::shape::Round>,
    }
}

record! {
    /// How a step of putting on or taking off looks, in `content/handling.yaml`.
    pub struct Handling ("the look of a step") {
        pub id: StepId,
        /// Whether the orthosis is in the picture.
        pub worn: bool,
        pub straps: Option<Straps>,
        /// Where the orthosis was before the step, or goes in it when the step takes it off.
        pub away: Option<Away>,
        /// Places that are pressed or looked at.
        pub touch: Vec<SkinPoint>,
        /// How the joints stand, over what the orthosis says.
        pub joints: BTreeMap<JointName, Vec<Position>>,
        /// How they stood before, when the step moves them.
        pub before: BTreeMap<JointName, Vec<Position>>,
        pub view: Option<View>,
    }
}

record! {
    /// Where a spot of the skin check lies, in `content/spots.yaml`.
    pub struct Spot ("a spot of the skin check") {
        pub id: MessageId,
        pub at: Vec<SkinPoint>,
    }
}

record! {
    /// A typical way in which an orthosis sits wrongly, under `faults` of its shape. Either it lies elsewhere, with other
    /// sheets or straps than its shape has, or it stays where it was moulded and the limb stands differently in it.
    /// Message: `fault-ID`.
    pub struct Fault ("a fault of fit") {
        pub id: MessageId,
        /// Where its sheets lie instead; as they should when none is said.
        pub sheets: Vec<super::shape::Sheet>,
        /// Where straps lie instead; those that are not named lie as they should.
        pub straps: BTreeMap<MessageId, super::shape::Band>,
        /// How the joints stand in it.
        pub joints: BTreeMap<JointName, Vec<Position>>,
        pub view: Option<View>,
    }
}
