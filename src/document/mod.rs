//! The sheet as a tree: sections, components, messages with typed arguments. It never sees a language.

mod calls;
mod component;
mod daily;
mod dates;
mod figures;
mod glance;
mod guide;
mod handling;
mod message;
mod moves;
mod section;

pub use component::{
    ActivityRow, Amount, CalendarDay, CalendarFlag, CalendarKey, CalendarState, CareItem, Component, DoseRow,
    ExerciseRow, FactRow, LadderLevel, LaterItem, ScheduleRow, StepItem, StepKind, Strip, StripKey, StripRow,
    StripState,
};
pub use figures::{Figure, seen};
pub use guide::{Document, Furniture, Meta, Part, guide};
pub use message::{Arg, Message};
pub use moves::avoid_keys;
pub use section::Section;
