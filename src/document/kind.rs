//! The papers that one case becomes, and those that need none.

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

choice! {
    /// Whom a fact sheet is for.
    pub enum FactsFor ("reader of a fact sheet") {
        /// Plain names, in every language.
        Patients = "patients",
        /// Learned names, reasons and sources, in English.
        Students = "students",
    }
}

/// What a document is: a paper of a case, or a fact sheet, which has no case.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum DocumentKind {
    Sheet(SheetKind),
    Facts(FactsFor),
}

impl DocumentKind {
    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        let facts = FactsFor::ALL.iter().map(|&reader| Self::Facts(reader));
        SheetKind::ALL.iter().map(|&kind| Self::Sheet(kind)).chain(facts)
    }

    /// The word in names of files and in the data of pages.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Sheet(kind) => kind.word(),
            Self::Facts(FactsFor::Patients) => "facts",
            Self::Facts(FactsFor::Students) => "students",
        }
    }
}

impl SheetKind {
    /// Whether it is the whole guide, on paper or on a screen.
    pub const fn is_guide(self) -> bool {
        matches!(self, Self::Guide | Self::Phone)
    }

    /// Whether it can stand in two languages beside each other: on paper, with words to point at.
    pub const fn goes_beside(self) -> bool {
        matches!(self, Self::Guide | Self::Card | Self::Exercises | Self::Letter)
    }
}
