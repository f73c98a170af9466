//! Papers to learn from, worked out from the content without a case: which orthosis holds what for which condition,
//! cards to ask one another, and invented cases with four orthoses to choose from.
//!
//! Nothing here is typed in: every answer is a row of a joint table, a requirement with its reason, or a verdict.

mod cards;
mod chart;
mod dice;
mod group;
mod place;
mod quiz;
mod readable;

pub use cards::{Card, Picked, Topic, cards};
pub use chart::{Cell, Chart, Head, Row, of_group, of_ranking};
pub use group::{Group, groups};
pub use place::{Place, by_place};
pub use quiz::{CHOICES, QuizQuestion, Standing, quiz, standing};
pub use readable::readable;
