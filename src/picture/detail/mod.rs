//! What makes a shape a hand: nails, knuckles, creases.

mod marks;
mod palm;

pub use marks::{Mark, MarkKind, marks};
