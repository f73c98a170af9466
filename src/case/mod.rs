//! The case: what the therapist says about one person, one hand, one orthosis.

mod angles;
mod file;
mod overridden;
mod overrides;
mod partial;
mod read;
mod resolve;
mod text;
mod treated;

pub use file::{
    Begun, CaseFile, Clinic, DayTimes, Finding, FormatVersion, JointAngle, Letter, LetterDetail, LetterReader,
    OtherCondition, OtherHand, Override, Paper, Person, PhaseLength, Protocol, ReminderDetail, ReminderWishes, Use,
};
pub use overrides::Subject;
pub use partial::known_ids;
pub use read::{load, load_text, read_text};
pub use resolve::{Case, LetterChoice, resolve};
pub use text::{Note, Reason, Text, hidden};
pub use treated::Treated;
