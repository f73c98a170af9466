//! CSV: its letters, its delimiter, its rows with the place of every cell (RFC 4180).

use std::ops::Range;

use csv::{ReaderBuilder, StringRecord};
use encoding_rs::Encoding;

use super::cell::{Cell, Kind};
use super::mapping::{Delimiter, Words};
use super::table::{Heads, Line, MOST_ROWS};
use crate::diag::{Code, Diagnostic};
use crate::source::{At, Place, SourceText, Span};

/// The rows of a CSV.
pub struct Delimited {
    name: String,
    text: String,
    delimiter: u8,
    rows: Vec<(usize, Range<usize>)>,
}

impl Delimited {
    /// Takes a text apart. Of the delimiters that nobody stated, the one is taken under which the heads are found.
    ///
    /// # Errors
    /// A text without rows, or one that is no CSV.
    pub fn open(
        name: &str,
        text: String,
        delimiter: Option<Delimiter>,
        header_row: usize,
        wanted: &[&str],
    ) -> Result<(Self, Heads), Diagnostic> {
        let candidates = delimiter.as_ref().map_or(Delimiter::ALL, std::slice::from_ref);
        let missing = |delimiter: &Delimiter| {
            let first =
                rows(&text, delimiter.byte()).find(|row| row.as_ref().is_ok_and(|(line, _)| *line >= header_row));
            let cells =
                first.and_then(Result::ok).map(|(_, range)| cells(&text[range], delimiter.byte())).unwrap_or_default();
            wanted.iter().filter(|head| !cells.iter().any(|cell| cell.text.trim() == **head)).count()
        };
        // The first of those that miss least.
        let Some(delimiter) = candidates.iter().copied().min_by_key(missing) else { return Err(empty(name)) };
        let delimiter = delimiter.byte();
        let mut found = Vec::new();
        for row in rows(&text, delimiter) {
            let (line, range) = row.map_err(|why| {
                Diagnostic::outside(Code::BATCH_LIST, format!("{name} is no CSV: {why}"))
                    .help("save it as CSV in UTF-8")
            })?;
            if line >= header_row {
                found.push((line, range));
            }
            if found.len() > MOST_ROWS {
                return Err(Diagnostic::outside(Code::BATCH_LIST, format!("{name} has more than {MOST_ROWS} rows"))
                    .help("divide it into several lists"));
            }
        }
        if found.is_empty() {
            return Err(empty(name));
        }
        let (line, range) = found.remove(0);
        let mut list = Self { name: name.to_owned(), text, delimiter, rows: found };
        let heads = list.line(line, &range);
        let (text, byte) = (std::mem::take(&mut list.text), list.delimiter);
        list.rows.retain(|(_, range)| cells(&text[range.clone()], byte).iter().any(|cell| !cell.is_empty()));
        list.text = text;
        Ok((list, Heads { line: heads }))
    }

    pub fn len(&self) -> usize {
        self.rows.len()
    }

    pub fn row(&self, index: usize) -> Option<Line> {
        self.rows.get(index).map(|(line, range)| self.line(*line, range))
    }

    fn line(&self, line: usize, range: &Range<usize>) -> Line {
        let raw = &self.text[range.clone()];
        Line {
            source: SourceText::part(self.name.as_str(), raw, line),
            cells: cells(raw, self.delimiter),
            number: line,
            letters: false,
        }
    }
}

fn empty(name: &str) -> Diagnostic {
    Diagnostic::outside(Code::BATCH_LIST, format!("{name} holds no heads of columns"))
        .help("give a table whose first row names its columns")
}

/// The lines that rows begin on, and their bytes without the end of the line.
fn rows(text: &str, delimiter: u8) -> impl Iterator<Item = Result<(usize, Range<usize>), String>> {
    let mut reader =
        ReaderBuilder::new().has_headers(false).flexible(true).delimiter(delimiter).from_reader(text.as_bytes());
    let mut record = StringRecord::new();
    std::iter::from_fn(move || match reader.read_record(&mut record) {
        Ok(true) => {
            let (from, line) = record.position().map_or((0, 1), |at| (at.byte(), at.line()));
            let bytes = |at: u64| usize::try_from(at).unwrap_or(text.len()).min(text.len());
            let (mut from, to) = (bytes(from), bytes(reader.position().byte()));
            let mut line = usize::try_from(line).unwrap_or(1);
            // The reader counts empty lines before a row to the row.
            while let Some(c @ ('\n' | '\r')) = text[from..to].chars().next() {
                from += 1;
                line += usize::from(c == '\n');
            }
            let to = from + text[from..to].trim_end_matches(['\n', '\r']).len();
            Some(Ok((line, from..to)))
        }
        Ok(false) => None,
        Err(why) => Some(Err(why.to_string())),
    })
}

/// The cells of one row, each with its place.
fn cells(raw: &str, delimiter: u8) -> Vec<Cell> {
    let mut reader =
        ReaderBuilder::new().has_headers(false).flexible(true).delimiter(delimiter).from_reader(raw.as_bytes());
    let mut record = StringRecord::new();
    if !matches!(reader.read_record(&mut record), Ok(true)) {
        return Vec::new();
    }
    let spans = spans(raw.as_bytes(), delimiter);
    let whole = spans.len() == record.len();
    let at = |number: usize| if whole { spans[number].clone() } else { 0..raw.len() };
    let cell =
        |(number, text): (usize, &str)| Cell { kind: Kind::Text, text: text.to_owned(), span: Span::new(at(number)) };
    record.iter().enumerate().map(cell).collect()
}

/// Where the cells of a row stand, quotes and all.
fn spans(raw: &[u8], delimiter: u8) -> Vec<Range<usize>> {
    let mut found = Vec::new();
    let (mut start, mut quoted) = (0, false);
    for (at, &byte) in raw.iter().enumerate() {
        match byte {
            // Two quotes in a quoted cell are one of its letters: closed and opened again, which comes to the same.
            b'"' if quoted || at == start || raw[start] == b'"' => quoted = !quoted,
            _ if byte == delimiter && !quoted => {
                found.push(start..at);
                start = at + 1;
            }
            _ => {}
        }
    }
    found.push(start..raw.len());
    found
}

/// The text of a CSV. A byte order mark says what it is; without one it is UTF-8, or what the mapping states.
///
/// # Errors
/// Letters that are stored in another way than stated.
pub fn decoded(
    name: &str,
    bytes: &[u8],
    stated: Option<&At<Words>>,
    mapping: &SourceText,
) -> Result<String, Diagnostic> {
    let at = |span: &Span| Place { source: mapping.clone(), span: span.clone() };
    let stated = match stated {
        None => None,
        Some(words) => {
            let Some(encoding) = Encoding::for_label(words.value.as_str().as_bytes()) else {
                let message = format!("`{}` is no way to store letters that is known here", words.value.as_str());
                return Err(Diagnostic::error(Code::BATCH_MAPPING, at(&words.span), message)
                    .help("use a label of the Encoding Standard, such as `windows-1252`, `iso-8859-2`, `windows-1256` or `utf-8`"));
            };
            Some((encoding, words))
        }
    };
    if let Some((encoding, _)) = Encoding::for_bom(bytes) {
        let (text, _, broken) = encoding.decode(bytes);
        return if broken { Err(not_utf8(name, bytes)) } else { Ok(text.into_owned()) };
    }
    match stated {
        Some((encoding, words)) if encoding != encoding_rs::UTF_8 => {
            // Letters beyond ASCII that happen to be valid UTF-8 are UTF-8: read otherwise, every name would be spoilt.
            if encoding.is_ascii_compatible() && !bytes.is_ascii() && std::str::from_utf8(bytes).is_ok() {
                let message = format!("{name} is UTF-8, not {}", encoding.name());
                return Err(Diagnostic::error(Code::BATCH_MAPPING, at(&words.span), message).help("take this line out"));
            }
            let (text, broken) = encoding.decode_without_bom_handling(bytes);
            if broken {
                let message = format!("{name} is not stored as {}", encoding.name());
                return Err(Diagnostic::error(Code::BATCH_MAPPING, at(&words.span), message)
                    .help("save the list as UTF-8 and take this line out"));
            }
            Ok(text.into_owned())
        }
        _ => match std::str::from_utf8(bytes) {
            Ok(text) => Ok(text.to_owned()),
            Err(_) => Err(not_utf8(name, bytes)),
        },
    }
}

fn not_utf8(name: &str, bytes: &[u8]) -> Diagnostic {
    let good = std::str::from_utf8(bytes).err().map_or(bytes.len(), |error| error.valid_up_to());
    let before = &bytes[..good];
    let line = before.iter().filter(|byte| **byte == b'\n').count() + 1;
    let column =
        before.rsplit(|byte| *byte == b'\n').next().map_or(0, |last| String::from_utf8_lossy(last).chars().count()) + 1;
    Diagnostic::outside(Code::FILE_NOT_UTF8, format!("{name}:{line}:{column}: the letters are not stored as UTF-8"))
        .help("save the list as CSV in UTF-8, or say in the mapping how it is stored, such as `encoding: windows-1252`")
}
