//! What the trade knows, as data: conditions, orthoses, activities, exercises, factors, and where each rule comes from.
//!
//! Nothing here knows a particular condition. A file in `content/` becomes a value of one of these types, with every
//! fault reported at its line.

mod activity;
mod basis;
mod condition;
mod exercise;
mod factor;
mod general;
mod hold;
mod library;
pub mod lint;
mod load;
mod orthosis;
mod wear;

pub use activity::{Activity, ActivityGroup, Adaptation, AdaptationKind, Cap, Demand, MassChange};
pub use basis::{Basis, Source};
pub use condition::{
    ActivityLimits, Aim, Banned, Begins, Codes, Condition, Decider, ExerciseRules, FindingTest, Forbidden,
    JointPosition, Measured, Need, Otherwise, Phase, Requirement, Wanted,
};
pub use exercise::{Dose, Exercise, ExerciseAim, LoadClass, Movement, Worn};
pub use factor::{Factor, SheetArea};
pub use general::{General, Sign, Structure, TriageLevel};
pub use hold::{Hold, JointHold};
pub use library::{Library, unknown};
pub use orthosis::{Base, Made, Material, Orthosis, Surface, Water};
pub use wear::{BreakInStep, Regime, Washing, WeaningStep, WearPattern};
