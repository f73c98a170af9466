//! What the trade knows, as data: conditions, orthoses, activities, exercises, factors, and where each rule comes from.
//!
//! Nothing here knows a particular condition. A file in `content/` becomes a value of one of these types, with every
//! fault reported at its line.

mod activity;
mod basis;
mod condition;
mod course;
mod exercise;
mod factor;
mod general;
mod hold;
mod library;
pub mod lint;
mod load;
mod need;
mod orthosis;
mod requirement;
mod scene;
mod shape;
mod step;
mod wear;

pub use activity::{Activity, ActivityGroup, Adaptation, AdaptationKind, Cap, Demand, Gate, MassChange};
pub use basis::{Basis, Source};
pub use condition::{
    ActivityLimits, Aim, Banned, Begins, Codes, Condition, Decider, ExerciseRules, Phase, ProtocolAngle,
    ProtocolLength, ProtocolNeeds, SideCodes,
};
pub use course::{Course, CourseKind};
pub use exercise::{Dose, Exercise, ExerciseAim, LoadClass, Movement, Worn};
pub use factor::{Factor, PrintSize, SheetArea};
pub use general::{Confirmation, General, Sign, Structure, TriageLevel};
pub use hold::{Hold, JointHold, Traction};
pub use library::{Library, unknown};
pub use need::{NeedRule, Trait};
pub use orthosis::{Action, Base, Glove, Made, Material, Orthosis, Segment, Substance, Surface, Water};
pub use requirement::{
    FindingTest, Forbidden, JointPosition, Measured, Need, OneOf, Otherwise, Requirement, Wanted, Way,
};
pub use scene::{
    Away, Extent, Facet, Fault, Flank, Grip, Handling, Held, Helper, Lie, Meeting, Motion, Spot, Stand, Straps, Table,
};
pub use shape::{
    Arc, Band, Cover, Look, Millimetres, Percent, Round, Shape, Sheet, SkinPoint, Span, Strand, Tab, Wire,
};
pub use step::StepWeights;
pub use wear::{BreakInStep, Regime, StretchDose, Washing, WeaningStep, WearPattern};
