//! Orthoses: generic types, each described by how it holds each joint.

use std::collections::BTreeMap;

use super::activity::Demand;
use super::basis::Basis;
use super::hold::{Hold, Traction};
use crate::body::{Finger, Joint, JointName};
use crate::ids::{MessageId, StepId};
use crate::source::{choice, record};
use crate::units::Level;

choice! {
    /// The longest segment it rests on.
    pub enum Base ("base of an orthosis") {
        Arm = "arm",
        Forearm = "forearm",
        Hand = "hand",
        Digit = "digit",
    }
}

choice! {
    /// The surface it covers.
    pub enum Surface ("surface") {
        Palmar = "palmar",
        Dorsal = "dorsal",
        Radial = "radial",
        Ulnar = "ulnar",
        AllRound = "all-round",
    }
}

choice! {
    /// The class of material.
    pub enum Material ("material") {
        /// Low-temperature thermoplastic.
        Rigid = "rigid",
        /// Thin thermoplastic that gives a little.
        Flexible = "flexible",
        /// Fabric or foam.
        Soft = "soft",
        /// Fabric with a metal or plastic stay.
        SoftWithStay = "soft-with-stay",
        Metal = "metal",
        Cast = "cast",
    }
}

choice! {
    /// What water does to it.
    pub enum Water ("way of getting wet") {
        /// May get wet; dry it.
        Yes = "yes",
        /// May get wet but must be dried through before it is worn.
        DryThrough = "dry-through",
        /// Must stay dry.
        No = "no",
    }
}

choice! {
    /// Who makes it.
    pub enum Made ("way of making") {
        Custom = "custom",
        Ready = "ready-made",
        Both = "both",
    }
}

choice! {
    /// How it acts on the joints it holds.
    pub enum Action ("action of an orthosis") {
        /// No moving parts; worn as made.
        Static = "static",
        /// Made anew by the clinic as the joint gains movement.
        SerialStatic = "serial-static",
        /// The person sets it further step by step.
        StaticProgressive = "static-progressive",
        /// Rubber or springs pull.
        Dynamic = "dynamic",
    }
}

choice! {
    /// A part of the limb that an orthosis can act on without holding a joint.
    pub enum Segment ("segment of the limb") {
        UpperArm = "upper-arm",
        ProximalForearm = "proximal-forearm",
        DistalForearm = "distal-forearm",
        Metacarpal = "metacarpal",
        ProximalPhalanx = "proximal-phalanx",
    }
}

choice! {
    /// Whether it goes inside a work glove.
    pub enum Glove ("way of fitting in a glove") {
        Yes = "yes",
        /// Only in a large or thin one.
        LooseOnly = "loose-only",
        No = "no",
    }
}

choice! {
    /// Something that touches the skin and that skin may not bear.
    pub enum Substance ("substance") {
        /// Foam rubber and the glues in it.
        Neoprene = "neoprene",
        Latex = "latex",
        Nickel = "nickel",
        /// Tape and sticky pads.
        Adhesive = "adhesive",
    }
}

record! {
    /// A generic type of orthosis. Messages: `orthosis-ID-name`, `orthosis-ID-short`.
    pub struct Orthosis ("an orthosis") {
        pub base: Base,
        pub surface: Surface,
        pub material: Material,
        pub made: Made,
        pub action: Action,
        pub water: Water,
        pub glove: Glove,
        /// 0 none to 3.
        pub bulk: Level,
        /// The joints that its usual purpose is about; the rest it holds only for control.
        pub primary: Vec<JointName>,
        /// The segment it acts on, when it holds no joint.
        pub acts_on: Option<Segment>,
        /// What touches the skin and may bring on a rash.
        pub contains: Vec<Substance>,
        /// How each joint it touches or comes near is held.
        pub joints: BTreeMap<JointName, Hold>,
        /// How much of a demand it takes off the hand while worn.
        pub shields: BTreeMap<Demand, Level>,
        /// Kinds of demand that cannot be met in the usual way while it is worn.
        pub blocks: Vec<Demand>,
        /// Straps in the order they are closed. Messages: `strap-ID`.
        pub straps: Vec<MessageId>,
        /// Places to look at in the skin check. Messages: `spot-ID`.
        pub pressure_spots: Vec<MessageId>,
        /// Steps of putting it on, one action each. Messages: `step-ID`; `close-strap` is repeated for each strap.
        pub donning: Vec<StepId>,
        /// Steps of taking it off.
        pub doffing: Vec<StepId>,
        /// Steps of putting it on with one hand, for a person who has no other to use.
        pub one_handed: Vec<StepId>,
        /// Fitted only when the clinician orders it: no list of choices offers it.
        pub by_order: bool,
        /// What is doubtful about this file. English.
        pub confidence: Option<String>,
        /// What the clinician should know. English, for the record.
        pub remark: Option<String>,
        pub source: Basis,
    }
}

impl Orthosis {
    /// Whether its joint table depends on which finger is affected.
    pub fn needs_finger(&self) -> bool {
        self.joints.keys().chain(&self.primary).any(|name| name.needs_finger())
    }

    /// The same orthosis on a known finger.
    #[must_use]
    pub fn for_finger(&self, finger: Finger) -> Self {
        let joints = self.joints.iter().map(|(name, hold)| (name.for_finger(finger), hold.clone())).collect();
        let primary = self.primary.iter().map(|name| name.for_finger(finger)).collect();
        Self { joints, primary, ..self.clone() }
    }

    /// Whether the person can take it off. A cast and a serial piece come off in the clinic.
    pub fn comes_off(&self) -> bool {
        let serial = |hold: &Hold| matches!(hold, Hold::Mobilised { by: Traction::Serial, .. });
        self.material != Material::Cast && !self.joints.values().any(serial)
    }

    /// How it holds a joint; a joint it does not describe is free.
    pub fn hold_of(&self, joint: Joint) -> &Hold {
        self.joints.iter().find(|(name, _)| name.joints().contains(&joint)).map_or(&Hold::Free, |(_, hold)| hold)
    }
}
