//! A row as the text of a case, and the way back from that text to where each value came from.

use std::ops::Range;

use super::shape::Step;
use crate::diag::{Code, Diagnostic, Findings, Label};
use crate::source::{Entry, Limits, Node, NodeKind, Place, SourceText, Span, parse};

/// Where a value came from.
#[derive(Clone, Debug)]
pub struct Origin {
    pub place: Place,
    /// Which column, in words.
    pub column: Option<String>,
}

/// A case as text.
pub struct Draft {
    pub source: SourceText,
    /// What names the row, when something does, and where it stands.
    pub id: Option<(String, Place)>,
    /// The row itself.
    pub place: Place,
    /// What is wrong with cells before they are read as a case.
    pub faults: Findings,
    back: Vec<(Range<usize>, Origin)>,
    is_table: bool,
}

impl Draft {
    /// A case that somebody wrote as one: faults stay where they are.
    pub fn written(source: SourceText) -> Self {
        let reference = parse(&source, Limits::CASE).ok().and_then(|node| {
            let person = entry(&node, "person")?;
            let found = entry(person, "reference")?;
            match &found.kind {
                NodeKind::Scalar(text) => {
                    Some((text.clone(), Place { source: source.clone(), span: found.span.clone() }))
                }
                _ => None,
            }
        });
        let place = Place { source: source.clone(), span: Span::new(0..0) };
        Self { source, id: reference, place, faults: Findings::default(), back: Vec::new(), is_table: false }
    }

    /// The same findings at the cells and defaults that they are about. A field whose cell cannot be read is not missing.
    pub fn at_origin(&self, findings: Findings) -> Findings {
        let findings = if self.faults.has_errors() { findings.without(Code::FIELD_MISSING) } else { findings };
        if self.is_table { findings.map(|diagnostic| self.led_back(diagnostic)) } else { findings }
    }

    fn led_back(&self, mut diagnostic: Diagnostic) -> Diagnostic {
        let absent = diagnostic.code == Code::FIELD_MISSING;
        if absent && let Some(help) = &diagnostic.help {
            let field = help.split('`').nth(1).unwrap_or_default().trim_end_matches([':', ' ', '…']);
            diagnostic.help = Some(format!(
                "name a column that feeds `{field}`, fill its cell, or give it under `defaults:` of the mapping"
            ));
        }
        let mut columns = Vec::new();
        let labels = diagnostic.primary.iter_mut().chain(&mut diagnostic.more);
        for Label { place, .. } in labels.filter(|label| label.place.source == self.source) {
            let at = place.span.start;
            let found = self.back.iter().find(|(range, _)| at < range.end).filter(|_| !absent);
            *place = match found {
                Some((_, origin)) => {
                    columns.extend(origin.column.clone());
                    origin.place.clone()
                }
                None => self.place.clone(),
            };
        }
        columns.dedup();
        columns.into_iter().fold(diagnostic, |diagnostic, column| diagnostic.note(column))
    }
}

fn entry<'n>(node: &'n Node, key: &str) -> Option<&'n Node> {
    match &node.kind {
        NodeKind::Mapping(entries) => entries.iter().find(|entry| entry.key == key).map(|entry| &entry.value),
        _ => None,
    }
}

/// A case that is put together value by value.
#[derive(Clone, Debug, Default)]
pub struct Composer {
    top: Vec<(String, Branch)>,
}

#[derive(Clone, Debug)]
enum Branch {
    Leaf(String, Origin),
    List(Vec<Branch>),
    Fields(Vec<(String, Branch)>),
    /// An item of a list before those that have a value.
    Hole,
}

impl Composer {
    /// A part of a case as the mapping gives it.
    pub fn defaults(node: Option<&Node>, source: &SourceText) -> Self {
        let top = match node.map(|node| branch(node, source)) {
            Some(Branch::Fields(fields)) => fields,
            _ => Vec::new(),
        };
        Self { top }
    }

    /// Puts values at a field, instead of what stands there.
    pub fn put(&mut self, steps: &[Step], value: Value) {
        let mut whole = Branch::Fields(std::mem::take(&mut self.top));
        set(&mut whole, steps, value);
        if let Branch::Fields(fields) = whole {
            self.top = fields;
        }
    }

    /// The text of the case. `name` is what it is called where it is not led back.
    pub fn draft(mut self, name: &str, place: Place, id: Option<(String, Place)>) -> Draft {
        if !self.top.iter().any(|(key, _)| key == "palmleaf") {
            let version = Branch::Leaf("1".to_owned(), Origin { place: place.clone(), column: None });
            self.top.insert(0, ("palmleaf".to_owned(), version));
        }
        let mut text = String::new();
        let mut back = Vec::new();
        for (key, branch) in &self.top {
            if matches!(branch, Branch::Hole) {
                continue;
            }
            quoted(key, &mut text);
            text.push_str(": ");
            write(branch, &mut text, &mut back);
            text.push('\n');
        }
        Draft { source: SourceText::new(name, text), id, place, faults: Findings::default(), back, is_table: true }
    }
}

/// What is put at a field.
pub enum Value {
    One(String, Origin),
    Several(Vec<String>, Origin),
}

fn branch(node: &Node, source: &SourceText) -> Branch {
    let origin = |span: &Span| Origin { place: Place { source: source.clone(), span: span.clone() }, column: None };
    match &node.kind {
        NodeKind::Null => Branch::Hole,
        NodeKind::Scalar(text) => Branch::Leaf(text.clone(), origin(&node.span)),
        NodeKind::List(items) => Branch::List(items.iter().map(|item| branch(item, source)).collect()),
        NodeKind::Mapping(entries) => Branch::Fields(
            entries.iter().map(|Entry { key, value, .. }| (key.clone(), branch(value, source))).collect(),
        ),
    }
}

fn set(branch: &mut Branch, steps: &[Step], value: Value) {
    match steps.split_first() {
        None => {
            *branch = match value {
                Value::One(text, origin) => Branch::Leaf(text, origin),
                Value::Several(texts, origin) => {
                    Branch::List(texts.into_iter().map(|text| Branch::Leaf(text, origin.clone())).collect())
                }
            };
        }
        Some((Step::Field(name), rest)) => {
            if !matches!(branch, Branch::Fields(_)) {
                *branch = Branch::Fields(Vec::new());
            }
            let Branch::Fields(fields) = branch else { return };
            let at = fields.iter().position(|(key, _)| key == name).unwrap_or_else(|| {
                fields.push((name.clone(), Branch::Hole));
                fields.len() - 1
            });
            set(&mut fields[at].1, rest, value);
        }
        Some((Step::Item(number), rest)) => {
            if !matches!(branch, Branch::List(_)) {
                *branch = Branch::List(Vec::new());
            }
            let Branch::List(items) = branch else { return };
            while items.len() <= *number {
                items.push(Branch::Hole);
            }
            set(&mut items[*number], rest, value);
        }
    }
}

/// YAML in which every value stands in quotes, so that none is taken for anything but text.
fn write(branch: &Branch, text: &mut String, back: &mut Vec<(Range<usize>, Origin)>) {
    match branch {
        Branch::Leaf(value, origin) => {
            let start = text.len();
            quoted(value, text);
            back.push((start..text.len(), origin.clone()));
        }
        Branch::List(items) => {
            text.push('[');
            for (number, item) in items.iter().filter(|item| !matches!(item, Branch::Hole)).enumerate() {
                text.push_str(if number > 0 { ", " } else { "" });
                write(item, text, back);
            }
            text.push(']');
        }
        Branch::Fields(fields) => {
            text.push('{');
            for (number, (key, value)) in fields.iter().filter(|(_, value)| !matches!(value, Branch::Hole)).enumerate()
            {
                text.push_str(if number > 0 { ", " } else { "" });
                quoted(key, text);
                text.push_str(": ");
                write(value, text, back);
            }
            text.push('}');
        }
        Branch::Hole => text.push_str("null"),
    }
}

/// A scalar in double quotes (YAML 1.2, 5.7): nothing in it is markup, and no line ends in it.
fn quoted(value: &str, text: &mut String) {
    text.push('"');
    for c in value.chars() {
        match c {
            '"' | '\\' => text.extend(['\\', c]),
            '\n' => text.push_str("\\n"),
            c if c.is_control() || matches!(c, '\u{2028}' | '\u{2029}' | '\u{FEFF}') => {
                text.push_str(&format!("\\u{:04X}", u32::from(c)));
            }
            c => text.push(c),
        }
    }
    text.push('"');
}
