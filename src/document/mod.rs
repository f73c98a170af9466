//! Sheets as trees: sections, components, messages with typed arguments. It never sees a language.

mod calls;
mod card;
mod cause;
mod component;
mod daily;
mod dates;
mod diary;
mod exercises;
mod facts;
mod figures;
mod glance;
mod guide;
mod handling;
mod kind;
mod letter;
mod message;
mod moments;
mod moves;
mod reminders;
mod section;
mod sheets;
mod teach_back;

pub use cause::Cause;
pub use component::{
    ActivityRow, Amount, CalendarDay, CalendarFlag, CalendarKey, CalendarState, CareItem, Component, DiaryDay, DoseRow,
    ExerciseRow, FactRow, JointRow, JointState, LadderLevel, LaterItem, Plate, ScheduleRow, StepItem, StepKind, Strip,
    StripKey, StripRow, StripState,
};
pub use facts::{FactsAsk, clinic_facts, facts, inside};
pub use figures::{Figure, StructureName, seen};
pub use kind::{DocumentKind, FactsFor, SheetKind};
pub use message::{Arg, Message};
pub use moments::MomentKind;
pub use moves::avoid_keys;
pub use reminders::{Alarm, Event, ReminderHand, Reminders, When, reminders};
pub use section::Section;
pub use sheets::{Document, Furniture, Hand, Meta, Part, sheet};
pub use teach_back::{Question, TeachBack, TeachTopic, teach_back};
