//! The papers that one case becomes.

use crate::source::choice;

choice! {
    /// A paper of a case.
    pub enum SheetKind ("sheet") {
        /// The whole wear guide.
        Guide = "guide",
        /// The same guide as one page for a telephone.
        Phone = "phone",
        /// One small side for the fridge.
        Card = "card",
        /// Days to tick until the visit.
        Diary = "diary",
        /// The home programme by itself.
        Exercises = "exercises",
        /// For somebody who helps, teaches or employs the person.
        Letter = "letter",
    }
}

impl SheetKind {
    /// Whether it is the whole guide, on paper or on a screen.
    pub const fn is_guide(self) -> bool {
        matches!(self, Self::Guide | Self::Phone)
    }
}
