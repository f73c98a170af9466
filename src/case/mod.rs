//! The case: what the therapist says about one person, one hand, one orthosis.

mod file;
mod overrides;
mod partial;
mod read;
mod resolve;
mod text;

pub use file::{
    Begun, CaseFile, Clinic, DayTimes, Finding, FormatVersion, JointAngle, Override, Paper, Person, PrintSize, Use,
};
pub use overrides::Subject;
pub use partial::known_ids;
pub use read::{load, read_text};
pub use resolve::{Case, resolve};
pub use text::{Note, Reason, Text};
