//! A list of cases, whatever it is stored in.

use std::ops::Range;
use std::path::{Path, PathBuf};

use super::delimited::{Delimited, decoded};
use super::draft::Draft;
use super::mapping::MappingFile;
use super::table::{MOST_ROWS, Rows, Table};
use super::workbook::Workbook;
use crate::case;
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::{FromNode, Limits, Reader, SourceText, decode, parse, read_bytes};

/// Bytes of a list.
const MOST_BYTES: u64 = 64 * 1024 * 1024;
/// YAML files of a folder of cases that are none.
const NO_CASES: [&str; 3] = ["clinic.yaml", "mapping.yaml", "shelf.yaml"];

enum Store {
    Folder(Vec<PathBuf>),
    /// YAML documents, each with the line it begins on.
    Stream {
        name: String,
        text: String,
        parts: Vec<(usize, Range<usize>)>,
    },
    Table(Box<Table>),
}

/// A list of cases. Rows are made when they are asked for.
pub struct List(Store);

impl List {
    /// Opens a list: a folder of case files, a file of YAML documents, a CSV or a workbook with its mapping.
    ///
    /// # Errors
    /// A list that cannot be read as one, or a mapping that does not suit it.
    pub fn open(path: &Path, mapping: Option<&Path>) -> Result<Self, Findings> {
        let name = path.display().to_string();
        let list = if path.is_dir() {
            folder(path)?
        } else {
            let bytes = read_bytes(path, MOST_BYTES).map_err(|why| unreadable(&name, &why))?;
            let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
            match (ending.as_str(), bytes.starts_with(b"PK\x03\x04")) {
                ("yaml" | "yml", _) => stream(&name, bytes)?,
                ("xlsx" | "xlsm", _) | (_, true) => table(&name, bytes, mapping, true)?,
                ("csv" | "tsv" | "txt", false) => table(&name, bytes, mapping, false)?,
                _ => {
                    let message = format!("{name} is no list that is read here");
                    return Err(Diagnostic::outside(Code::BATCH_LIST, message)
                        .help("give a folder of case files, or a file that ends in .yaml, .csv, .tsv or .xlsx")
                        .into());
                }
            }
        };
        if mapping.is_some() && !matches!(list, Store::Table(_)) {
            let message = format!("{name} holds whole cases: there is nothing to map");
            return Err(Diagnostic::outside(Code::BATCH_MAPPING, message).help("leave `--mapping` out").into());
        }
        let list = Self(list);
        match list.len() {
            0 => Err(Diagnostic::outside(Code::BATCH_LIST, format!("{name} holds no case"))
                .help("give a list with at least one case")
                .into()),
            1..=MOST_ROWS => Ok(list),
            more => Err(Diagnostic::outside(Code::BATCH_LIST, format!("{name} holds {more} cases"))
                .help(format!("divide it: at most {MOST_ROWS} are read"))
                .into()),
        }
    }

    pub fn len(&self) -> usize {
        match &self.0 {
            Store::Folder(files) => files.len(),
            Store::Stream { parts, .. } => parts.len(),
            Store::Table(table) => table.len(),
        }
    }

    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// A row as a case; rows are counted from 0.
    ///
    /// # Errors
    /// When its file cannot be read any more.
    pub fn draft(&self, index: usize) -> Result<Draft, Findings> {
        let draft = match &self.0 {
            Store::Folder(files) => files.get(index).map(|file| case::load(file)).transpose()?.map(Draft::written),
            Store::Stream { name, text, parts } => parts
                .get(index)
                .map(|(line, range)| Draft::written(SourceText::part(name.as_str(), &text[range.clone()], *line))),
            Store::Table(table) => table.draft(index),
        };
        draft.ok_or_else(Findings::default)
    }
}

fn unreadable(name: &str, why: &str) -> Findings {
    Diagnostic::outside(Code::FILE_UNREADABLE, format!("{name} {why}")).help("give the path of a list of cases").into()
}

fn folder(path: &Path) -> Result<Store, Findings> {
    let name = path.display().to_string();
    let entries = std::fs::read_dir(path).map_err(|why| unreadable(&name, &format!("cannot be read: {why}")))?;
    let mut files: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).filter(|file| is_case(file)).collect();
    files.sort();
    Ok(Store::Folder(files))
}

fn is_case(file: &Path) -> bool {
    let name = file.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let yaml = name.ends_with(".yaml") || name.ends_with(".yml");
    yaml && !name.starts_with('.') && !NO_CASES.contains(&name.as_str()) && file.is_file()
}

fn stream(name: &str, bytes: Vec<u8>) -> Result<Store, Findings> {
    let source = decode(name, bytes)?;
    let text = source.text().to_owned();
    let parts = documents(&text);
    Ok(Store::Stream { name: name.to_owned(), text, parts })
}

/// The documents of a stream with the lines they begin on. `---` at the beginning of a line divides them wherever it
/// stands (YAML 1.2, 9.1.2); a document of blank lines and comments is none.
fn documents(text: &str) -> Vec<(usize, Range<usize>)> {
    let mut parts = Vec::new();
    let (mut line, mut start, mut at) = (1, 0, 0);
    let mut first = 1;
    for one in text.split_inclusive('\n') {
        if let Some(rest) =
            one.strip_prefix("---").filter(|rest| rest.is_empty() || rest.starts_with(char::is_whitespace))
        {
            parts.push((first, start..at));
            let alone = rest.trim().is_empty() || rest.trim_start().starts_with('#');
            // What stands behind the dashes belongs to the document; the reader knows them.
            (start, first) = if alone { (at + one.len(), line + 1) } else { (at, line) };
        }
        at += one.len();
        line += 1;
    }
    parts.push((first, start..text.len()));
    let says_something = |range: &Range<usize>| {
        text[range.clone()]
            .lines()
            .any(|line| !line.trim().is_empty() && !line.trim_start().starts_with('#') && line.trim() != "...")
    };
    parts.retain(|(_, range)| says_something(range));
    parts
}

fn table(name: &str, bytes: Vec<u8>, mapping: Option<&Path>, workbook: bool) -> Result<Store, Findings> {
    let Some(mapping) = mapping else {
        let message = format!("{name} is a table, and nothing says what its columns are");
        return Err(Diagnostic::outside(Code::BATCH_MAPPING, message)
            .help("give a mapping with `--mapping mapping.yaml`")
            .into());
    };
    let source = case::load_text(mapping, "give the path of the mapping of this list")?;
    let node = parse(&source, Limits::CASE)?;
    let mut reader = Reader::new(&source);
    let read = MappingFile::from_node(&node, &mut reader);
    let findings = reader.finish();
    let Some(mapping) = read.filter(|_| !findings.has_errors()) else { return Err(findings) };
    let header_row = mapping.header_row.as_ref().map_or(1, |row| row.value.get());
    if bytes.is_empty() {
        return Err(Diagnostic::outside(Code::BATCH_LIST, format!("{name} is empty"))
            .help("give a table whose first row names its columns")
            .into());
    }
    let (rows, heads) = if workbook {
        let (rows, heads) = Workbook::open(name, bytes, mapping.sheet.as_ref(), header_row, &source)?;
        (Rows::Workbook(rows), heads)
    } else {
        let text = decoded(name, &bytes, mapping.encoding.as_ref(), &source)?;
        let wanted: Vec<&str> = mapping
            .columns
            .value
            .keys()
            .chain(mapping.id.as_ref().map(|id| &id.value))
            .map(|words| words.as_str())
            .collect();
        let (rows, heads) = Delimited::open(name, text, mapping.delimiter, header_row, &wanted)?;
        (Rows::Delimited(rows), heads)
    };
    Ok(Store::Table(Box::new(Table::new(name, rows, &heads, mapping, &source)?)))
}
