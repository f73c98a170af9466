//! Whose hand it is. All are drawn at one size: a picture fills its place whoever's hand it shows.

use crate::body::Build;

impl Build {
    /// Girth of everything against its length.
    pub const fn girth(self) -> f64 {
        match self {
            Self::Adult => 1.0,
            Self::Slim => 0.9,
            Self::Broad => 1.1,
            Self::Young => 1.13,
            Self::Older => 0.96,
        }
    }

    /// Girth at the middle and end joints of the fingers against the bones between them.
    pub const fn joints(self) -> f64 {
        match self {
            Self::Older => 1.13,
            Self::Young => 0.96,
            Self::Adult | Self::Slim | Self::Broad => 1.0,
        }
    }
}
