//! Activities: what they ask of a hand, and the ways to do them differently.

use std::collections::BTreeMap;
use std::fmt;
use std::str::FromStr;

use super::basis::Basis;
use crate::ids::MessageId;
use crate::source::{choice, record, text_value};
use crate::units::{Level, Mass, Misread};

choice! {
    /// A kind of demand on the hand.
    pub enum Demand ("kind of demand") {
        /// Thumb pad against the side of the index finger, as with a key.
        LateralPinch = "lateral-pinch",
        /// Thumb tip against fingertip.
        TipPinch = "tip-pinch",
        /// A strong fist round something.
        PowerGrip = "power-grip",
        /// Holding on for a while.
        SustainedGrip = "sustained-grip",
        /// Bending the wrist sideways.
        WristDeviation = "wrist-deviation",
        /// Bending the wrist.
        WristFlexion = "wrist-flexion",
        /// Load through a wrist that is bent back.
        WristLoad = "wrist-load",
        /// Load on the thumb, whatever the grip.
        ThumbLoad = "thumb-load",
        /// Turning the forearm.
        ForearmRotation = "forearm-rotation",
        /// Bending the fingers.
        FingerFlexion = "finger-flexion",
        /// Keeping the elbow bent.
        ElbowFlexion = "elbow-flexion",
        /// Knocks and catches.
        Impact = "impact",
        Vibration = "vibration",
        /// Getting wet.
        Wet = "wet",
        Heat = "heat",
        /// The same movement over and over.
        Repetition = "repetition",
    }
}

impl Demand {
    /// Demands whose excess asks for pauses or drying, not for giving the task up.
    pub const fn is_soft(self) -> bool {
        matches!(self, Self::Repetition | Self::SustainedGrip | Self::Wet)
    }
}

choice! {
    /// Where an activity belongs.
    pub enum ActivityGroup ("group of activities") {
        SelfCare = "self-care",
        Home = "home",
        Kitchen = "kitchen",
        Screen = "phone-and-computer",
        Work = "work",
        ChildCare = "child-care",
        Garden = "garden",
        Travel = "travel",
        Sport = "sport",
        Music = "music-and-craft",
        Sleep = "sleep",
    }
}

choice! {
    /// What an adaptation changes.
    pub enum AdaptationKind ("kind of adaptation") {
        /// Another tool or thing.
        Object = "object",
        /// Another way of doing it.
        Way = "way",
        /// Less of it at a time.
        Amount = "amount",
        /// Somebody else or the other hand.
        Help = "help",
    }
}

choice! {
    /// What an adaptation does to the mass in the hand.
    pub enum MassChange ("change of mass") {
        Same = "same",
        Half = "half",
        None = "none",
    }
}

choice! {
    /// What an activity waits for besides its demands.
    pub enum Gate ("gate") {
        /// A slip or a sudden jerk would harm healing tissue, whatever the figures.
        Risky = "risky",
        /// Steering a vehicle: clinician, insurer and law decide.
        Driving = "driving",
        /// Under water.
        Swimming = "swimming",
    }
}

record! {
    /// One way to ask less of the hand. Message: `activity-ACTIVITY-ID`.
    pub struct Adaptation ("an adaptation") {
        pub id: MessageId,
        pub kind: AdaptationKind,
        /// By how much it lowers each demand.
        pub lowers: BTreeMap<Demand, Level>,
        /// What happens to the mass; the same when not said.
        pub mass: Option<MassChange>,
        /// Needs the other hand: never offered to a person who has none to spare.
        pub other_hand: bool,
        /// Whether it takes the orthosis off; such a way is never offered while it must stay on.
        pub takes_off: bool,
    }
}

impl Adaptation {
    /// Whether the task can be done this way where the orthosis does not let the hand do the thing: it is taken off, the
    /// other hand does it, or the thing is asked for less.
    pub fn goes_round(&self, demand: Demand) -> bool {
        self.takes_off || self.other_hand || self.lowers.contains_key(&demand)
    }
}

record! {
    /// Something a person does all day. Message: `activity-ID-name`.
    pub struct Activity ("an activity") {
        pub group: ActivityGroup,
        /// The usual way of doing it, without an orthosis. A kind that is not named is 0.
        pub demands: BTreeMap<Demand, Level>,
        /// Typical mass on that hand.
        pub mass: Mass,
        /// Cannot be left for weeks: the sheet offers the other hand or a helper instead of a bare "leave it".
        pub unavoidable: bool,
        /// What it waits for in phases that say so.
        pub gates: Vec<Gate>,
        pub adaptations: Vec<Adaptation>,
        pub source: Basis,
    }
}

/// The most of one kind of demand that a phase allows: `2`, or `0 strict` when no excess may be excused.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Cap {
    pub level: Level,
    pub strict: bool,
}

impl fmt::Display for Cap {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}", self.level, if self.strict { " strict" } else { "" })
    }
}

impl FromStr for Cap {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        let (level, strict) = match text.strip_suffix("strict") {
            Some(level) => (level, true),
            None => (text, false),
        };
        Ok(Self { level: level.parse()?, strict })
    }
}

text_value!(
    Cap,
    "a limit of demand",
    "The highest level allowed, 0 to 3; `strict` when no excess may be excused.",
    r"^[0-3]( strict)?$",
    "2",
    "0 strict"
);
