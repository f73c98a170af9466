//! A file's text, and byte spans in it.

use std::ops::Range;
use std::sync::Arc;

use crate::diag::{Code, Diagnostic};

/// The text of one file, or of a part of it, with the name it is reported under. Cheap to clone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SourceText {
    name: Arc<str>,
    text: Arc<str>,
    /// The line of the file that the text begins on, from 1.
    first: usize,
}

impl SourceText {
    pub fn new(name: impl Into<Arc<str>>, text: impl Into<Arc<str>>) -> Self {
        Self::part(name, text, 1)
    }

    /// Whole lines out of a file, of which the first is this line of it, counted from 1.
    pub fn part(name: impl Into<Arc<str>>, text: impl Into<Arc<str>>, first: usize) -> Self {
        Self { name: name.into(), text: text.into(), first }
    }

    pub fn name(&self) -> &str {
        &self.name
    }

    pub fn text(&self) -> &str {
        &self.text
    }

    /// The line of the file that the text begins on, from 1.
    pub fn first_line(&self) -> usize {
        self.first
    }

    /// Line and column in the file, both from 1, the column in characters. Out of range means the end.
    pub fn line_and_column(&self, byte: usize) -> (usize, usize) {
        let mut byte = byte.min(self.text.len());
        while !self.text.is_char_boundary(byte) {
            byte -= 1;
        }
        let before = &self.text[..byte];
        let line_start = before.rfind('\n').map_or(0, |at| at + 1);
        (before.matches('\n').count() + self.first, before[line_start..].chars().count() + 1)
    }
}

/// A range of bytes in one file.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Span {
    pub start: usize,
    pub end: usize,
}

impl Span {
    pub fn new(range: Range<usize>) -> Self {
        Self { start: range.start, end: range.end.max(range.start) }
    }
}

/// A span together with the file it lies in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Place {
    pub source: SourceText,
    pub span: Span,
}

impl Place {
    pub fn line_and_column(&self) -> (usize, usize) {
        self.source.line_and_column(self.span.start)
    }
}

/// The text of a file's bytes, without a byte order mark.
///
/// # Errors
/// When they are not UTF-8.
pub fn decode(name: &str, bytes: Vec<u8>) -> Result<SourceText, Diagnostic> {
    let sixteen = bytes.starts_with(&[0xFF, 0xFE]) || bytes.starts_with(&[0xFE, 0xFF]);
    let text = match String::from_utf8(bytes) {
        Ok(text) => text,
        Err(error) => {
            let at = error.utf8_error().valid_up_to();
            let what = if sixteen { "UTF-16 text".to_owned() } else { format!("no UTF-8 text (byte {})", at + 1) };
            return Err(Diagnostic::outside(Code::FILE_NOT_UTF8, format!("{name} holds {what}"))
                .help("save it as UTF-8; editors offer that as an encoding"));
        }
    };
    Ok(SourceText::new(name, text.strip_prefix('\u{FEFF}').unwrap_or(&text)))
}
