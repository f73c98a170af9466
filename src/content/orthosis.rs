//! Orthoses: generic types, each described by how it holds each joint.

use std::collections::BTreeMap;

use super::activity::Demand;
use super::basis::Basis;
use super::hold::Hold;
use crate::body::JointName;
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

record! {
    /// A generic type of orthosis. Messages: `orthosis-ID-name`, `orthosis-ID-short`.
    pub struct Orthosis ("an orthosis") {
        pub base: Base,
        pub surface: Surface,
        pub material: Material,
        pub made: Made,
        pub water: Water,
        /// 0 none to 3.
        pub bulk: Level,
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
        /// What the clinician should know. English, for the record.
        pub remark: Option<String>,
        pub source: Basis,
    }
}
