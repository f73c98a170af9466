//! The booklet file: which sheets are bound into one, as its author writes it.

use std::path::Path;

use crate::body::{Finger, Side};
use crate::case::{self, Paper, Text};
use crate::content::PrintSize;
use crate::diag::Findings;
use crate::document::{FactsFor, SheetKind};
use crate::ids::{ConditionId, OrthosisId};
use crate::language::LanguageTag;
use crate::source::{At, FromNode, Limits, Node, NodeKind, Reader, SourceText, parse, record};
use crate::units::{Date, Misread};

/// The most items of a booklet: more than a folder holds, and few enough to set at once.
pub const MOST: usize = 60;

record! {
    /// Sheets of a case.
    pub struct CaseItem ("sheets of a case") {
        /// The case file, seen from the folder of the booklet.
        pub case: At<String>,
        /// Which of its papers, in this order; the guide when not said.
        pub sheets: Vec<At<SheetKind>>,
    }
}

record! {
    /// The pictures of an orthosis: in its place, step by step, and where to look at the skin.
    pub struct OrthosisItem ("pictures of an orthosis") {
        pub orthosis: At<OrthosisId>,
        /// The hand that is shown; the right one when not said.
        pub side: Option<Side>,
        /// The finger that is shown, for what concerns one finger; the index finger when not said.
        pub finger: Option<Finger>,
    }
}

record! {
    /// The fact sheet of a condition.
    pub struct FactsItem ("a fact sheet") {
        pub facts: At<ConditionId>,
        /// Whom it is for; patients when not said. Students' words are English.
        pub r#for: Option<At<FactsFor>>,
        /// The hand that is shown; the right one when not said.
        pub side: Option<Side>,
        /// The finger that is shown, for what concerns one finger; the index finger when not said.
        pub finger: Option<Finger>,
    }
}

/// One thing in a booklet.
#[derive(Clone, Debug, PartialEq, Eq, schemars::JsonSchema)]
#[schemars(untagged)]
pub enum Item {
    Case(CaseItem),
    Orthosis(OrthosisItem),
    Facts(FactsItem),
}

/// How an item is written.
const WAYS: &str = "`{case: FILE, sheets: [guide]}`, `{orthosis: ID}` or `{facts: CONDITION, for: students}`";

impl FromNode for Item {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        let NodeKind::Mapping(entries) = &node.kind else {
            reader.shape(node, "an item (`{case: FILE}`, `{orthosis: ID}` or `{facts: CONDITION}`)");
            return None;
        };
        let has = |key: &str| entries.iter().any(|entry| entry.key == key);
        match (has("case"), has("orthosis"), has("facts")) {
            (true, false, false) => CaseItem::from_node(node, reader).map(Self::Case),
            (false, true, false) => OrthosisItem::from_node(node, reader).map(Self::Orthosis),
            (false, false, true) => FactsItem::from_node(node, reader).map(Self::Facts),
            (false, false, false) => {
                reader.misread(node, &Misread::new("this item names nothing", WAYS));
                None
            }
            _ => {
                reader.misread(node, &Misread::new("an item is one thing, and this is more", WAYS));
                None
            }
        }
    }
}

record! {
    /// A list of sheets that are bound into one file.
    pub struct BookletFile ("a booklet") {
        /// On the cover, and the name of the file to those who cannot see it.
        pub title: Text,
        /// Who made it: on the cover.
        pub by: Option<Text>,
        /// The language of every sheet.
        pub language: At<LanguageTag>,
        pub print: Option<PrintSize>,
        pub paper: Option<Paper>,
        /// The date of the file; the latest fitting of its cases when not said.
        pub date: Option<Date>,
        pub items: At<Vec<Item>>,
    }
}

/// Reads a booklet file.
///
/// # Errors
/// When it cannot be read, or all faults of its text at once.
pub fn read(path: &Path) -> Result<(BookletFile, SourceText), Findings> {
    let source = case::load(path)?;
    Ok((read_text(&source)?, source))
}

/// The same from text already in memory.
///
/// # Errors
/// All faults of the text at once.
pub fn read_text(source: &SourceText) -> Result<BookletFile, Findings> {
    let node = parse(source, Limits::CASE)?;
    let mut reader = Reader::new(source);
    let file = BookletFile::from_node(&node, &mut reader);
    if let Some(file) = &file
        && !(1..=MOST).contains(&file.items.value.len())
    {
        let count = file.items.value.len();
        let at = Node { kind: NodeKind::Null, span: file.items.span.clone() };
        reader.misread(&at, &Misread::new(format!("a booklet of {count} items"), format!("from 1 to {MOST} items")));
    }
    let findings = reader.finish();
    match file {
        Some(file) if !findings.has_errors() => Ok(file),
        _ => Err(findings),
    }
}
