//! The files of a shelf as their author writes them.

use std::collections::BTreeMap;
use std::fmt;
use std::str::FromStr;

use crate::body::{Finger, Side};
use crate::case::{Paper, Text};
use crate::clinic::FileName;
use crate::content::PrintSize;
use crate::document::SheetKind;
use crate::ids::{ConditionId, OrthosisId, ShelfName, is_id};
use crate::language::LanguageTag;
use crate::source::{At, FromNode, Node, NodeKind, Reader, choice, record, text_value};
use crate::units::{Date, Interval, Misread};

choice! {
    /// What a handout is about.
    pub enum ItemKind ("kind of item") {
        Conditions = "conditions",
        Orthoses = "orthoses",
        Cases = "cases",
    }
}

/// A thing on a shelf: `conditions/swan-neck`.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct ItemName {
    pub kind: ItemKind,
    pub id: String,
}

impl fmt::Display for ItemName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.kind, self.id)
    }
}

impl FromStr for ItemName {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let shape = || {
            let write = "kind and name, such as `conditions/ID`, `orthoses/ID` or `cases/NAME`";
            Misread::new(format!("`{}` names nothing on a shelf", text.escape_default()), write)
        };
        let (kind, id) = text.split_once('/').ok_or_else(shape)?;
        if !is_id(id) {
            return Err(shape());
        }
        Ok(Self { kind: kind.parse()?, id: id.to_owned() })
    }
}

text_value!(
    ItemName,
    "an item of the shelf",
    "Kind and name of an item.",
    r"^(conditions|orthoses|cases)/[a-z][a-z0-9]*(-[a-z0-9]+)*$",
    "cases/wrist-at-night"
);

/// All there are, or these.
#[derive(Clone, Debug, PartialEq, Eq, schemars::JsonSchema)]
#[schemars(untagged)]
pub enum Which<T> {
    All(AllWord),
    These(Vec<At<T>>),
}

choice! {
    /// All there are.
    pub enum AllWord ("`all`") {
        All = "all",
    }
}

impl<T: FromNode> FromNode for Which<T> {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        match node.kind {
            NodeKind::Scalar(_) => AllWord::from_node(node, reader).map(Self::All),
            _ => Vec::from_node(node, reader).map(Self::These),
        }
    }
}

record! {
    /// A condition with the hand and finger that its sheet shows.
    pub struct ConditionShown ("a condition of the shelf") {
        pub condition: At<ConditionId>,
        /// The right one when not said.
        pub side: Option<Side>,
        /// For what concerns one finger; the index finger when not said.
        pub finger: Option<Finger>,
    }
}

record! {
    /// An orthosis with the hand and finger that its sheet shows.
    pub struct OrthosisShown ("an orthosis of the shelf") {
        pub orthosis: At<OrthosisId>,
        /// The right one when not said.
        pub side: Option<Side>,
        /// For what concerns one finger; the index finger when not said.
        pub finger: Option<Finger>,
    }
}

/// A condition by its name alone, or with the hand and finger that are shown.
#[derive(Clone, Debug, PartialEq, Eq, schemars::JsonSchema)]
#[schemars(untagged)]
pub enum ConditionItem {
    Plain(ConditionId),
    Shown(ConditionShown),
}

/// An orthosis by its name alone, or with the hand and finger that are shown.
#[derive(Clone, Debug, PartialEq, Eq, schemars::JsonSchema)]
#[schemars(untagged)]
pub enum OrthosisItem {
    Plain(OrthosisId),
    Shown(OrthosisShown),
}

/// Reads a bare name or a mapping.
macro_rules! plain_or_shown {
    ($type:ty, $id:ty, $shown:ty) => {
        impl FromNode for $type {
            fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
                match node.kind {
                    NodeKind::Mapping(_) => <$shown>::from_node(node, reader).map(Self::Shown),
                    _ => <$id>::from_node(node, reader).map(Self::Plain),
                }
            }
        }
    };
}
plain_or_shown!(ConditionItem, ConditionId, ConditionShown);
plain_or_shown!(OrthosisItem, OrthosisId, OrthosisShown);

impl ConditionItem {
    /// What it is, and the hand and finger that are said.
    pub const fn parts(&self) -> (&ConditionId, Option<Side>, Option<Finger>) {
        match self {
            Self::Plain(id) => (id, None, None),
            Self::Shown(shown) => (&shown.condition.value, shown.side, shown.finger),
        }
    }
}

impl OrthosisItem {
    /// What it is, and the hand and finger that are said.
    pub const fn parts(&self) -> (&OrthosisId, Option<Side>, Option<Finger>) {
        match self {
            Self::Plain(id) => (id, None, None),
            Self::Shown(shown) => (&shown.orthosis.value, shown.side, shown.finger),
        }
    }
}

record! {
    /// A case file whose sheets stand on the shelf.
    pub struct CaseItem ("a case of the shelf") {
        /// What its files and its line of the catalogue are called. Never a person's name.
        pub name: At<ShelfName>,
        /// The case file: in the folder of this file, or below it.
        pub case: At<FileName>,
        /// Which of its papers; the shelf's `sheets` when not said, and the guide when the shelf says none.
        pub sheets: Vec<At<SheetKind>>,
    }
}

record! {
    /// That somebody has looked at an item and found it right.
    pub struct Review ("a review") {
        pub date: Date,
        /// Their role, such as `hand therapist`.
        pub by: Text,
    }
}

record! {
    /// A shelf: which handouts a clinic keeps, and in what languages and sizes.
    pub struct ShelfFile ("a shelf") {
        /// Over the catalogue.
        pub title: Text,
        /// The clinic's own file, whose look all handouts have: in this folder, or below it.
        pub clinic: Option<At<FileName>>,
        /// The folder that handouts and catalogue are written to, below this one; `handouts` when not said.
        pub out: Option<At<FileName>>,
        /// All that there are words for when not said.
        pub languages: Vec<At<LanguageTag>>,
        /// Sizes of print; `standard` when not said.
        pub print: Vec<PrintSize>,
        /// Papers; `a4` when not said.
        pub paper: Vec<Paper>,
        /// Sheets of each case that does not say its own; `guide` when not said.
        pub sheets: Vec<At<SheetKind>>,
        /// After how long a review is due again. Without it nothing is due.
        pub review_every: Option<Interval>,
        /// Fact sheets for patients: `all`, or a list.
        pub conditions: Option<Which<ConditionItem>>,
        /// Sheets of pictures: how each is put on, taken off and looked after. `all`, or a list.
        pub orthoses: Option<Which<OrthosisItem>>,
        pub cases: Vec<At<CaseItem>>,
        /// Further lists of items: files in this folder or below it.
        pub include: Vec<At<FileName>>,
        /// When each item was last looked at, and by whom.
        pub reviewed: Option<BTreeMap<ItemName, At<Review>>>,
    }
}

record! {
    /// A further list of items, which a shelf includes.
    pub struct ListFile ("a list of items") {
        pub conditions: Option<Which<ConditionItem>>,
        pub orthoses: Option<Which<OrthosisItem>>,
        pub cases: Vec<At<CaseItem>>,
        pub include: Vec<At<FileName>>,
        pub reviewed: Option<BTreeMap<ItemName, At<Review>>>,
    }
}
