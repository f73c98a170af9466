//! Left and right.

use crate::source::choice;

choice! {
    /// One side of the body. There is no third value: two hands are two parts of a case, each with its side.
    pub enum Side ("hand (each guide is for one hand)") {
        /// The left hand.
        Left = "left",
        /// The right hand.
        Right = "right",
    }
}

impl Side {
    /// The other hand.
    pub const fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}
