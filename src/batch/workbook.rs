//! A workbook (XLSX, ECMA-376): one sheet of it, as rows.

use std::collections::BTreeMap;
use std::io::{Cursor, Read as _};

use calamine::{DataRef, ExcelDateTime, Reader as _, SheetVisible, Xlsx};

use super::cell::{Cell, Kind};
use super::mapping::Words;
use super::table::{Heads, Line, MOST_COLUMNS, MOST_ROWS};
use crate::diag::{Code, Diagnostic};
use crate::source::{At, Place, SourceText, Span};

/// Bytes of everything that is packed in a workbook. A list of 10,000 rows has a tenth of it.
const MOST_UNPACKED: u64 = 192 * 1024 * 1024;
/// Parts of a workbook; one of many sheets has some hundred.
const MOST_PARTS: usize = 5_000;

type Cells = BTreeMap<u32, (Kind, String)>;

/// The rows of a sheet.
pub struct Workbook {
    name: String,
    rows: Vec<(u32, Cells)>,
    width: u32,
}

impl Workbook {
    /// Reads one sheet.
    ///
    /// # Errors
    /// A file that is no workbook, that unpacks to more than any list has, or a sheet that is not a plain table.
    pub fn open(
        name: &str,
        bytes: Vec<u8>,
        wanted: Option<&At<Words>>,
        header_row: usize,
        mapping: &SourceText,
    ) -> Result<(Self, Heads), Diagnostic> {
        let fault = |message: String, help: &str| Diagnostic::outside(Code::BATCH_LIST, message).help(help.to_owned());
        let broken = |why: &dyn std::fmt::Display| {
            fault(format!("{name} cannot be read as a workbook: {why}"), "save it as .xlsx, or as CSV in UTF-8")
        };
        unpacked(name, &bytes)?;
        let mut book: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).map_err(|why| broken(&why))?;
        let sheets: Vec<(String, bool)> = book
            .sheets_metadata()
            .iter()
            .map(|sheet| (sheet.name.clone(), sheet.visible == SheetVisible::Visible))
            .collect();
        let sheet = chosen(name, &sheets, wanted, mapping)?;
        let header_row = u32::try_from(header_row).unwrap_or(1) - 1;
        let merged = book.merge_cells_by_sheet_name(&sheet).map_err(|why| broken(&why))?;
        if let Some(merged) = merged.iter().find(|merged| merged.end.0 >= header_row) {
            let (from, to) = (cell_name(merged.start.0, merged.start.1), cell_name(merged.end.0, merged.end.1));
            return Err(fault(
                format!("{name}, sheet `{sheet}`: the cells {from} to {to} are merged into one"),
                "undo the merging and fill each cell",
            ));
        }
        let mut reader = book.worksheet_cells_reader(&sheet).map_err(|why| broken(&why))?;
        let mut rows: BTreeMap<u32, Cells> = BTreeMap::new();
        while let Some(record) = reader.next_cell_with_formula_metadata().map_err(|why| broken(&why))? {
            let (row, column) = record.pos;
            let (kind, text) = held(&record.value, record.formula.is_some());
            if row < header_row || (kind != Kind::Fault && text.trim().is_empty()) {
                continue;
            }
            if column >= MOST_COLUMNS {
                return Err(fault(
                    format!(
                        "{name}, sheet `{sheet}`: {} has a value; more than {MOST_COLUMNS} columns are not read",
                        cell_name(row, column)
                    ),
                    "take the columns out that are not needed",
                ));
            }
            rows.entry(row).or_default().insert(column, (kind, text));
            if rows.len() > MOST_ROWS + 1 {
                return Err(fault(
                    format!("{name}, sheet `{sheet}` has more than {MOST_ROWS} rows"),
                    "divide it into several lists",
                ));
            }
        }
        let Some((first, heads)) = rows.pop_first().filter(|(row, _)| *row == header_row) else {
            return Err(fault(
                format!("{name}, sheet `{sheet}`: row {} holds no heads of columns", header_row + 1),
                "name the columns there, or say in the mapping which row does: `header_row: 3`",
            ));
        };
        let width =
            rows.values().chain([&heads]).filter_map(|cells| cells.keys().next_back()).max().map_or(0, |last| last + 1);
        let book = Self { name: name.to_owned(), rows: rows.into_iter().collect(), width };
        let line = book.line(first, &heads);
        Ok((book, Heads { line }))
    }

    pub fn len(&self) -> usize {
        self.rows.len()
    }

    pub fn row(&self, index: usize) -> Option<Line> {
        self.rows.get(index).map(|(row, cells)| self.line(*row, cells))
    }

    /// A row as a line of text, so that a fault can be shown in it.
    fn line(&self, row: u32, held: &Cells) -> Line {
        let mut text = String::new();
        let mut cells = Vec::new();
        for column in 0..self.width {
            let (kind, value) = held.get(&column).cloned().unwrap_or((Kind::Text, String::new()));
            text.push_str(if column > 0 { " | " } else { "" });
            let start = text.len();
            if kind != Kind::Fault {
                text.extend(value.chars().map(|c| if c.is_control() { ' ' } else { c }));
            }
            cells.push(Cell { kind, text: value, span: Span::new(start..text.len()) });
        }
        let number = row as usize + 1;
        Line { source: SourceText::part(self.name.as_str(), text, number), cells, number, letters: true }
    }
}

/// The letters and the row of a cell, as spreadsheets name it; both are counted from 0.
pub fn cell_name(row: u32, column: u32) -> String {
    let mut letters = Vec::new();
    let mut rest = column + 1;
    while rest > 0 {
        letters.push(char::from(b'A' + u8::try_from((rest - 1) % 26).unwrap_or(0)));
        rest = (rest - 1) / 26;
    }
    format!("{}{}", letters.iter().rev().collect::<String>(), row + 1)
}

/// Unpacks everything once without keeping it, and stops where it becomes too much: what a file says of its own sizes
/// is not believed.
fn unpacked(name: &str, bytes: &[u8]) -> Result<(), Diagnostic> {
    let broken = |why: &dyn std::fmt::Display| {
        Diagnostic::outside(Code::BATCH_LIST, format!("{name} cannot be read as a workbook: {why}"))
            .help("save it as .xlsx without a password, or as CSV in UTF-8")
    };
    let too_much = || {
        Diagnostic::outside(
            Code::BATCH_LIST,
            format!("{name} unpacks to more than {} MB, more than any list has", MOST_UNPACKED / 1024 / 1024),
        )
        .help("save the sheet by itself, or as CSV in UTF-8")
    };
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).map_err(|why| broken(&why))?;
    if archive.len() > MOST_PARTS {
        return Err(too_much());
    }
    let mut left = MOST_UNPACKED;
    for number in 0..archive.len() {
        let part = archive.by_index(number).map_err(|why| broken(&why))?;
        let read = std::io::copy(&mut part.take(left + 1), &mut std::io::sink()).map_err(|why| broken(&why))?;
        left = left.checked_sub(read).ok_or_else(too_much)?;
    }
    Ok(())
}

/// The sheet that is named, or the only one that can be seen.
fn chosen(
    name: &str,
    sheets: &[(String, bool)],
    wanted: Option<&At<Words>>,
    mapping: &SourceText,
) -> Result<String, Diagnostic> {
    let names = || sheets.iter().map(|(name, _)| name.as_str()).collect::<Vec<_>>();
    if let Some(wanted) = wanted {
        let text = wanted.value.as_str();
        if names().contains(&text) {
            return Ok(text.to_owned());
        }
        let place = Place { source: mapping.clone(), span: wanted.span.clone() };
        let help = match crate::ids::nearest(text, names()) {
            Some(near) => format!("write `{near}`"),
            None => format!("use one of: {}", names().join(", ")),
        };
        return Err(Diagnostic::error(Code::BATCH_MAPPING, place, format!("{name} has no sheet `{text}`")).help(help));
    }
    let seen: Vec<&str> = sheets.iter().filter(|(_, visible)| *visible).map(|(name, _)| name.as_str()).collect();
    match seen.as_slice() {
        [one] => Ok((*one).to_owned()),
        [] => {
            Err(Diagnostic::outside(Code::BATCH_LIST, format!("{name} has no sheet that can be seen")).help(format!(
                "say in the mapping which is meant, such as `sheet: {}`",
                names().first().copied().unwrap_or("Cases")
            )))
        }
        _ => Err(Diagnostic::outside(Code::BATCH_LIST, format!("{name} has several sheets: {}", seen.join(", ")))
            .help(format!("say in the mapping which is meant, such as `sheet: {}`", seen[0]))),
    }
}

/// What a cell holds. The value that a spreadsheet worked out for a formula is taken; one without is refused.
fn held(value: &DataRef<'_>, formula: bool) -> (Kind, String) {
    match value {
        DataRef::Empty if formula => (Kind::Fault, "the cell holds a formula whose value was not saved; open the workbook in the program that made it, save it, or paste the values".to_owned()),
        DataRef::Empty => (Kind::Text, String::new()),
        DataRef::String(text) => (Kind::Text, text.clone()),
        DataRef::SharedString(text) => (Kind::Text, (*text).to_owned()),
        DataRef::Int(number) => (Kind::Number, number.to_string()),
        // A whole number has no point in its shortest form.
        DataRef::Float(number) => (Kind::Number, number.to_string()),
        DataRef::Bool(value) => (Kind::Text, value.to_string()),
        DataRef::DateTime(moment) => moment_of(*moment),
        DataRef::DateTimeIso(text) => match text.split_once('T') {
            Some((date, time)) if time.starts_with("00:00:00") => (Kind::Date, date.to_owned()),
            Some(_) => (Kind::Moment, text.clone()),
            None => (Kind::Date, text.clone()),
        },
        DataRef::DurationIso(text) => (Kind::Text, text.clone()),
        DataRef::Error(error) => (Kind::Fault, format!("the cell holds the error {error} of the spreadsheet")),
    }
}

fn moment_of(moment: ExcelDateTime) -> (Kind, String) {
    let (year, month, day, hour, minute, second, _) = moment.to_ymd_hms_milli();
    let time = format!("{hour:02}:{minute:02}");
    let date = format!("{year:04}-{month:02}-{day:02}");
    if (0.0..1.0).contains(&moment.as_f64()) {
        (Kind::Time, time)
    } else if moment.is_duration() {
        (Kind::Moment, format!("{} days", moment.as_f64()))
    } else if (hour, minute, second) == (0, 0, 0) {
        (Kind::Date, date)
    } else {
        (Kind::Moment, format!("{date} {time}"))
    }
}
