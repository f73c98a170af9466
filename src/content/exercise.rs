//! Exercises: what they move, how hard, and what they stress.

use super::basis::Basis;
use crate::body::{Direction, Finger, JointName};
use crate::ids::StructureId;
use crate::source::{choice, record};
use crate::units::{Repetitions, Seconds, TimesPerDay};

choice! {
    /// How hard an exercise works the tissue, from least to most.
    pub enum LoadClass ("load class") {
        /// Positions, elevation, joints away from the hand.
        Position = "position",
        /// Inside the orthosis or a set arc.
        Protected = "protected",
        /// Free active movement, nothing added.
        FreeActive = "free-active",
        /// To the end of the range, or concentrated on one joint.
        EndRange = "end-range",
        /// Pushing without moving, or light resistance.
        LightResistance = "light-resistance",
        Strengthening = "strengthening",
        /// Body weight, catching, hitting.
        Impact = "impact",
    }
}

choice! {
    /// What an exercise is for.
    pub enum ExerciseAim ("aim of an exercise") {
        /// Keeps free joints from stiffening.
        KeepMoving = "keep-moving",
        /// Lets tendons slide.
        Glide = "glide",
        /// Regains movement of joints that were held.
        Regain = "regain-movement",
        /// Teaches the muscles to steady a joint.
        Steady = "steady",
        Strengthen = "strengthen",
        /// Brings swelling down.
        Swelling = "swelling",
        /// Lengthens what is tight.
        Stretch = "stretch",
        /// Softens a scar.
        Scar = "scar",
        /// Gets skin used to touch, or teaches it to feel again.
        Sensation = "sensation",
        /// Lets a nerve slide.
        NerveGlide = "nerve-glide",
        /// Opens a hand with raised tone.
        Tone = "tone",
    }
}

choice! {
    /// Whether the orthosis is on during an exercise.
    pub enum Worn ("`on`, `off` or `either`") {
        On = "on",
        Off = "off",
        Either = "either",
    }
}

record! {
    /// A joint and the directions it moves in.
    pub struct Movement ("a movement") {
        pub joint: JointName,
        pub directions: Vec<Direction>,
    }
}

record! {
    /// How much of an exercise.
    pub struct Dose ("a dose") {
        pub repetitions: Repetitions,
        /// How long each position is held; `0 s` when it is not.
        pub hold: Seconds,
        pub times_a_day: TimesPerDay,
        /// Repetitions after the first week, when it goes well.
        pub up_to: Option<Repetitions>,
    }
}

record! {
    /// An exercise. Messages: `exercise-ID-name`, `exercise-ID-start`, `exercise-ID-step-1` and so on.
    pub struct Exercise ("an exercise") {
        pub moves: Vec<Movement>,
        pub load: LoadClass,
        /// Structures that it stresses.
        pub stresses: Vec<StructureId>,
        pub aims: Vec<ExerciseAim>,
        /// How many step messages it has, 1 to 9.
        pub steps: Repetitions,
        pub dose: Dose,
        pub orthosis: Worn,
        /// Done only when the clinician orders it; no programme chooses it by itself.
        pub by_order: bool,
        pub source: Basis,
    }
}

impl Exercise {
    /// Whether what it moves depends on which finger is affected.
    pub fn needs_finger(&self) -> bool {
        self.moves.iter().any(|movement| movement.joint.needs_finger())
    }

    /// The same exercise with the affected finger known.
    #[must_use]
    pub fn for_finger(&self, finger: Finger) -> Self {
        let moves = self
            .moves
            .iter()
            .map(|movement| Movement { joint: movement.joint.for_finger(finger), ..movement.clone() })
            .collect();
        Self { moves, ..self.clone() }
    }
}
