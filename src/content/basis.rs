//! Where a rule comes from; no rule exists without one.

use std::fmt;
use std::str::FromStr;

use crate::ids::SourceKey;
use crate::source::{record, text_value};
use crate::units::Misread;

/// What a rule rests on.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Basis {
    /// A publication of `content/sources.yaml`.
    Published(SourceKey),
    /// Widely taught; no single source is relied on.
    CommonPractice,
    /// Believed right and still to be confirmed; the clinician's record lists these.
    FromMemory,
}

impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Published(key) => key.fmt(f),
            Self::CommonPractice => f.write_str("common practice"),
            Self::FromMemory => f.write_str("from memory"),
        }
    }
}

impl FromStr for Basis {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        match text {
            "common practice" => Ok(Self::CommonPractice),
            "from memory" => Ok(Self::FromMemory),
            key => key.parse().map(Self::Published).map_err(|_: Misread| {
                Misread::new(
                    format!("`{key}` names no source"),
                    "a key of sources.yaml, `common practice` or `from memory`",
                )
            }),
        }
    }
}

text_value!(
    Basis,
    "a source",
    "A key of sources.yaml, `common practice`, or `from memory`.",
    r"^[a-z]",
    "common practice"
);

record! {
    /// A publication that rules rest on.
    pub struct Source ("a source") {
        /// The key that rules name.
        pub id: SourceKey,
        /// Authors as the publication prints them.
        pub authors: String,
        /// Year of publication.
        pub year: String,
        pub title: String,
        /// Journal, publisher or standard, with volume and pages.
        pub published: String,
        /// Whether the work itself was read for the rules that name it, or its figures are recalled.
        pub read: bool,
        /// What it is relied on for, when that needs a word.
        pub note: Option<String>,
    }
}
