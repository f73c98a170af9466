//! Words going to translators and back: XLIFF 2.1, or CSV for those without a tool.
//!
//! What a translator sees are whole sentences. A message that chooses between wordings is taken apart into one unit for
//! each choice, with its variables as codes that cannot be edited; on the way back the message is put together again.
//! Nothing that comes back is believed: a unit that lost a variable, a branch that is missing or a typed figure refuses
//! its message by name, and all others go in.

mod branches;
mod codes;
mod csv;
mod file;
mod import;
mod package;
mod read;
mod write;

pub use branches::{Branch, Choice, Choices, Piece, branches, choices, skeleton, whole};
pub use csv::{csv, from_csv};
pub use file::load;
pub use import::{Imported, import};
pub use package::{Hint, Package, Packed, Unit, area, package};
pub use read::from_xliff;
pub use write::xliff;
