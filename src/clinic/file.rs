//! The clinic's file as its author writes it.

use std::collections::BTreeMap;
use std::str::FromStr;

use super::colour::Accent;
use crate::case::Text;
use crate::ids::MessageId;
use crate::language::LanguageTag;
use crate::source::{At, choice, record, text_value};
use crate::units::Misread;

/// A file beside the clinic's file or in a folder below it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileName(String);

impl FileName {
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl FromStr for FileName {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let good = |part: &str| {
            !part.is_empty()
                && part != "."
                && part != ".."
                && !part.chars().any(|c| c.is_control() || c == ':' || c == '\\')
        };
        if text.len() <= 200 && text.split('/').all(good) {
            Ok(Self(text.to_owned()))
        } else {
            let wrong = format!("`{}` is no file of this folder or below it", text.escape_default());
            Err(Misread::new(
                wrong,
                "a path from the folder of this file that stays in it, such as `logo.svg` or `words/parking.en.md`",
            ))
        }
    }
}

text_value!(
    FileName,
    "a file name",
    "A file in the folder of this file, or in a folder below it, with `/` between.",
    r"^[^/\\:]+(/[^/\\:]+)*$",
    "logo.svg"
);

choice! {
    /// A sheet that takes sections of a clinic. The card is one side, and a page of the diary one week.
    pub enum OwnSheet ("sheet that takes sections of a clinic") {
        /// The wear guide, on paper and for a telephone.
        Guide = "guide",
        Exercises = "exercises",
        Letter = "letter",
    }
}

record! {
    /// A section of the clinic's own. Its number follows from where it stands.
    pub struct SectionFile ("a section of the clinic") {
        pub sheet: At<OwnSheet>,
        /// The section it follows: a name that `content/sheets.yaml` lists for that sheet.
        pub after: Option<At<MessageId>>,
        /// Or the section it stands before. Nothing stands before the first: page one belongs to hours and stop signs.
        pub before: Option<At<MessageId>>,
        /// A Markdown file for each language. Its first line is its title: `# Parking`. Bold and lists may follow.
        pub text: At<BTreeMap<LanguageTag, At<FileName>>>,
    }
}

record! {
    /// What the sheets of one clinic share. What a case says of its clinic wins, line by line.
    pub struct ClinicFile ("the clinic's file") {
        pub name: Option<Text>,
        /// Where the clinic is, on one line.
        pub address: Option<Text>,
        /// Printed with the digits of a keypad, whichever script it is written in.
        pub telephone: Option<Text>,
        /// When the telephone is answered, in each language that is printed.
        pub hours: Option<At<BTreeMap<LanguageTag, Text>>>,
        /// The emergency number where the patients live.
        pub emergency: Option<Text>,
        /// A picture of at most 1 MB, SVG or PNG; it needs a `name`, which is read aloud in its place.
        pub logo: Option<At<FileName>>,
        /// Used for rules, number tiles and the name of the clinic; never for a warning.
        pub accent: Option<At<Accent>>,
        pub sections: Vec<At<SectionFile>>,
    }
}
