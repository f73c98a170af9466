//! Whose hand it is: size and shape.

use crate::source::choice;

choice! {
    /// The build of a hand. Bones keep their proportions; girth, size and joints differ.
    pub enum Build ("build of a hand") {
        Adult = "adult",
        Slim = "slim",
        Broad = "broad",
        /// About six years old.
        Child = "child",
        /// Wider joints at the fingers' ends, leaner in between.
        Older = "older",
    }
}

impl Build {
    /// Length of everything against an adult's.
    pub const fn size(self) -> f64 {
        match self {
            Self::Adult | Self::Broad | Self::Older => 1.0,
            Self::Slim => 0.97,
            Self::Child => 0.72,
        }
    }

    /// Girth of everything against its length.
    pub const fn girth(self) -> f64 {
        match self {
            Self::Adult => 1.0,
            Self::Slim => 0.9,
            Self::Broad => 1.1,
            Self::Child => 1.07,
            Self::Older => 0.96,
        }
    }

    /// Girth at the middle and end joints of the fingers against the bones between them.
    pub const fn joints(self) -> f64 {
        match self {
            Self::Older => 1.13,
            Self::Child => 0.96,
            Self::Adult | Self::Slim | Self::Broad => 1.0,
        }
    }
}
