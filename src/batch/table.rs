//! Rows and columns: heads against the mapping, and a row as a case.

use super::cell::Cell;
use super::delimited::Delimited;
use super::draft::{Composer, Draft, Origin, Value};
use super::mapping::{Column, MappingFile};
use super::shape::Takes;
use super::workbook::{Workbook, cell_name};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::nearest;
use crate::source::{At, Place, SourceText, Span};

/// More rows than a list may have.
pub const MOST_ROWS: usize = 100_000;
/// More columns than are read.
pub const MOST_COLUMNS: u32 = 1_000;

/// One row of a table.
pub struct Line {
    pub source: SourceText,
    pub cells: Vec<Cell>,
    /// As the table counts, from 1.
    pub number: usize,
    /// Columns have letters, as those of a workbook.
    pub letters: bool,
}

impl Line {
    fn place(&self, column: usize) -> Place {
        let span = self.cells.get(column).map_or(Span::new(0..0), |cell| cell.span.clone());
        Place { source: self.source.clone(), span }
    }

    fn whole(&self) -> Place {
        Place { source: self.source.clone(), span: Span::new(0..self.source.text().len()) }
    }
}

/// The row that names the columns.
pub struct Heads {
    pub line: Line,
}

impl Heads {
    fn names(&self) -> Vec<&str> {
        self.line.cells.iter().map(|cell| cell.text.trim()).collect()
    }
}

pub enum Rows {
    Delimited(Delimited),
    Workbook(Workbook),
}

impl Rows {
    pub fn len(&self) -> usize {
        match self {
            Self::Delimited(rows) => rows.len(),
            Self::Workbook(rows) => rows.len(),
        }
    }

    fn row(&self, index: usize) -> Option<Line> {
        match self {
            Self::Delimited(rows) => rows.row(index),
            Self::Workbook(rows) => rows.row(index),
        }
    }
}

/// A table that its mapping suits.
pub struct Table {
    name: String,
    rows: Rows,
    mapping: MappingFile,
    heads: Vec<String>,
    /// The columns that feed a field, from the left.
    feeds: Vec<(usize, Column)>,
    id: Option<usize>,
    base: Composer,
}

impl Table {
    /// Holds heads and mapping against each other.
    ///
    /// # Errors
    /// Columns that are named and not there, or there twice; fields that are fed twice.
    pub fn new(
        name: &str,
        rows: Rows,
        heads: &Heads,
        mapping: MappingFile,
        source: &SourceText,
    ) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let names = heads.names();
        let mut fault = |span: &Span, message: String, help: String| {
            let place = Place { source: source.clone(), span: span.clone() };
            findings.push(Diagnostic::error(Code::BATCH_MAPPING, place, message).help(help));
        };
        let mut column = |head: &str, span: &Span| {
            let found: Vec<usize> = (0..names.len()).filter(|number| names[*number] == head).collect();
            match found.as_slice() {
                [one] => Some(*one),
                [] => {
                    let help = match nearest(head, names.iter().copied()) {
                        Some(near) => format!("write `{near}`"),
                        None => format!(
                            "use one of: {}",
                            names
                                .iter()
                                .filter(|name| !name.is_empty())
                                .take(40)
                                .copied()
                                .collect::<Vec<_>>()
                                .join(", ")
                        ),
                    };
                    fault(span, format!("{name} has no column `{head}`"), help);
                    None
                }
                [first, second, ..] => {
                    let message =
                        format!("{name} has the head `{head}` twice: columns {} and {}", first + 1, second + 1);
                    fault(span, message, "give each column a head of its own".to_owned());
                    None
                }
            }
        };
        let mut feeds: Vec<(usize, Column, Span)> = Vec::new();
        for (head, At { value, span }) in &mapping.columns.value {
            feeds.extend(column(head.as_str(), span).map(|at| (at, value.clone(), span.clone())));
        }
        let id = mapping.id.as_ref().and_then(|head| column(head.value.as_str(), &head.span));
        feeds.sort_by_key(|(at, ..)| *at);
        for (number, (_, feed, span)) in feeds.iter().enumerate() {
            if let Some((before, ..)) = feeds[..number].iter().find(|(_, other, _)| other.field() == feed.field()) {
                let field = feed.field().as_str();
                fault(
                    span,
                    format!("`{field}` is fed by two columns: `{}` is the other", names[*before]),
                    "take one of the two out".to_owned(),
                );
            }
        }
        if feeds.is_empty() && !findings.has_errors() {
            let place = Place { source: source.clone(), span: mapping.columns.span.clone() };
            findings.push(
                Diagnostic::error(Code::BATCH_MAPPING, place, "the mapping names no column")
                    .help("name at least one, such as `Hand: hand`"),
            );
        }
        if findings.has_errors() {
            return Err(findings);
        }
        let base = Composer::defaults(mapping.defaults.as_ref().map(|defaults| &defaults.0), source);
        let heads = names.into_iter().map(str::to_owned).collect();
        let feeds = feeds.into_iter().map(|(at, feed, _)| (at, feed)).collect();
        Ok(Self { name: name.to_owned(), rows, mapping, heads, feeds, id, base })
    }

    pub fn len(&self) -> usize {
        self.rows.len()
    }

    /// A row as a case.
    pub fn draft(&self, index: usize) -> Option<Draft> {
        let line = self.rows.row(index)?;
        let mut faults = self.misshapen(&line);
        let mut composer = self.base.clone();
        let mut reference = None;
        for (at, column) in &self.feeds {
            let Some(cell) = line.cells.get(*at).filter(|cell| !cell.is_empty()) else { continue };
            let origin = Origin { place: line.place(*at), column: Some(self.column(&line, *at)) };
            let field = column.field();
            let mapped = Cell { text: column.value(cell.text.trim()).to_owned(), ..cell.clone() };
            match mapped.value(field.takes, self.mapping.dates) {
                Ok(text) if field.takes == Takes::List => {
                    let items = text.split([',', ';', '\n']).map(str::trim).filter(|item| !item.is_empty());
                    let items = items.map(|item| column.value(item).to_owned()).collect();
                    composer.put(&field.steps, Value::Several(items, origin));
                }
                Ok(text) => {
                    if field.as_str() == "person.reference" {
                        reference = Some((text.clone(), line.place(*at)));
                    }
                    composer.put(&field.steps, Value::One(text, origin));
                }
                Err(misread) => {
                    let help = misread.help();
                    let mut diagnostic = Diagnostic::error(Code::BATCH_CELL, line.place(*at), misread.wrong)
                        .note(self.column(&line, *at));
                    diagnostic.help = help;
                    faults.push(diagnostic);
                }
            }
        }
        let id = match self.id {
            Some(at) => line.cells.get(at).and_then(|cell| self.named(&line, at, cell, &mut faults)),
            None => reference,
        };
        let mut draft = composer.draft(&format!("{} row {}", self.name, line.number), line.whole(), id);
        draft.faults = faults;
        Some(draft)
    }

    /// The id that a cell holds; a spreadsheet may have made a date or nothing of it.
    fn named(&self, line: &Line, at: usize, cell: &Cell, faults: &mut Findings) -> Option<(String, Place)> {
        if cell.is_empty() {
            faults.push(
                Diagnostic::error(Code::BATCH_ID, line.place(at), "the row has no id")
                    .note(self.column(line, at))
                    .help("fill the cell"),
            );
            return None;
        }
        match cell.value(Takes::Text, None) {
            Ok(text) => Some((text, line.place(at))),
            Err(misread) => {
                let help = misread.help();
                let mut diagnostic =
                    Diagnostic::error(Code::BATCH_CELL, line.place(at), misread.wrong).note(self.column(line, at));
                diagnostic.help = help;
                faults.push(diagnostic);
                None
            }
        }
    }

    /// A column in words.
    fn column(&self, line: &Line, at: usize) -> String {
        let head = self.heads.get(at).map_or("", String::as_str);
        if line.letters {
            let (row, column) = (u32::try_from(line.number - 1).unwrap_or(0), u32::try_from(at).unwrap_or(0));
            format!("column `{head}`, cell {}", cell_name(row, column))
        } else {
            format!("column `{head}`")
        }
    }

    /// What makes a row none of this table.
    fn misshapen(&self, line: &Line) -> Findings {
        let mut findings = Findings::default();
        let fault = |message: String, help: &str| {
            Diagnostic::error(Code::BATCH_LIST, line.whole(), message).help(help.to_owned())
        };
        if line.cells.iter().map(|cell| cell.text.trim()).eq(self.heads.iter().map(String::as_str)) {
            findings.push(fault("the heads of the columns stand here a second time".to_owned(), "take this row out"));
        }
        let surplus = line.cells.iter().skip(self.heads.len()).any(|cell| !cell.is_empty());
        if surplus || line.cells.len() < self.heads.len() {
            let message = format!("the row has {} cells, and there are {} heads", line.cells.len(), self.heads.len());
            findings.push(fault(message, "check quotes and delimiters of this row"));
        }
        findings
    }
}
