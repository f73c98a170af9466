//! Text that a person typed: printed as it stands, never read as markup.

use std::ops::Range;

use icu::properties::CodePointMapData;
use icu::properties::props::GeneralCategory;
use schemars::JsonSchema;

use crate::markdown::{self, Block, Dialect};
use crate::source::{FromNode, Node, Reader};
use crate::units::Misread;

/// One line of text, at most 120 characters, without controls or direction marks.
#[derive(Clone, PartialEq, Eq, Debug, JsonSchema)]
#[schemars(inline, extend("maxLength" = 120))]
pub struct Text(String);

/// A reason for the clinician's record, at most 600 characters.
#[derive(Clone, PartialEq, Eq, Debug, JsonSchema)]
#[schemars(inline, extend("maxLength" = 600))]
pub struct Reason(String);

/// The therapist's note: Markdown with bold, lists and links, at most 4,000 characters.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Note(Vec<Block>);

impl Text {
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The same with the digits of any script as those of a keypad: a telephone number for sheets in every language.
    #[must_use]
    pub fn on_keypad(&self) -> Self {
        Self(self.0.chars().map(keypad).collect())
    }
}

impl Reason {
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl Note {
    pub fn blocks(&self) -> &[Block] {
        &self.0
    }
}

impl JsonSchema for Note {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Note".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string", "maxLength": 4000 })
    }
}

/// A decimal digit of any script as 0 to 9. Such digits stand in runs from nought to nine (Unicode Standard, 4.6).
fn keypad(c: char) -> char {
    let categories = CodePointMapData::<GeneralCategory>::new();
    let is_digit = |code: u32| categories.get32(code) == GeneralCategory::DecimalNumber;
    let code = u32::from(c);
    if !is_digit(code) {
        return c;
    }
    let first = (0..=code).rev().take_while(|code| is_digit(*code)).last().unwrap_or(code);
    char::from_digit((code - first) % 10, 10).unwrap_or(c)
}

/// The text without surrounding space, when nothing in it can hide or turn what is printed.
fn clean(text: &str, most: usize, lines: bool) -> Result<String, Misread> {
    let text = text.trim();
    let count = text.chars().count();
    if count == 0 {
        return Err(Misread::new("the text is empty", "the text, or leave the line out"));
    }
    if count > most {
        return Err(Misread::new(format!("the text has {count} characters"), format!("at most {most}")));
    }
    match hidden(text, lines) {
        Some((_, wrong)) => Err(Misread::new(wrong, "the text without it")),
        None => Ok(text.to_owned()),
    }
}

/// The first thing in a text that hides or turns what is printed, with the bytes it takes.
pub fn hidden(text: &str, lines: bool) -> Option<(Range<usize>, String)> {
    let mut marks = 0;
    for (at, c) in text.char_indices() {
        let turns =
            matches!(c, '\u{200E}' | '\u{200F}' | '\u{061C}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}');
        let control = c.is_control() && !(lines && matches!(c, '\n' | '\r'));
        let nothing = matches!(c, '\u{200B}' | '\u{2060}' | '\u{FEFF}' | '\u{FFF9}'..='\u{FFFB}' | '\u{E000}'..='\u{F8FF}')
            || (u32::from(c) & 0xFFFE) == 0xFFFE
            || u32::from(c) >= 0xE0000;
        let range = at..at + c.len_utf8();
        if turns || control || nothing {
            let what = if turns { "turns the direction of the text" } else { "prints nothing that can be seen" };
            return Some((range, format!("U+{:04X} {what}", u32::from(c))));
        }
        // A letter with a heap of marks over it prints over its neighbours.
        let over = matches!(c, '\u{0300}'..='\u{036F}' | '\u{1AB0}'..='\u{1AFF}' | '\u{1DC0}'..='\u{1DFF}' | '\u{20D0}'..='\u{20FF}');
        marks = if over { marks + 1 } else { 0 };
        if marks > 3 {
            return Some((range, "one letter carries more than three marks".to_owned()));
        }
    }
    None
}

impl FromNode for Text {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        let text = reader.scalar(node, "text")?;
        clean(text, 120, false).map(Self).map_err(|misread| reader.misread(node, &misread)).ok()
    }
}

impl FromNode for Reason {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        let text = reader.scalar(node, "a reason")?;
        clean(text, 600, true).map(Self).map_err(|misread| reader.misread(node, &misread)).ok()
    }
}

impl FromNode for Note {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        let text = reader.scalar(node, "a note")?;
        let text = clean(text, 4000, true).map_err(|misread| reader.misread(node, &misread)).ok()?;
        match markdown::parse(&text, Dialect::Note) {
            Ok(blocks) => Some(Self(blocks)),
            Err(faults) => {
                for fault in faults {
                    // Its line and not its words: a message may go to a log.
                    let line = 1 + text[..fault.range.start].matches('\n').count();
                    let wrong = format!("{} in line {line} of the note", fault.message);
                    reader.misread(node, &Misread::new(wrong, "the note with **bold**, lists and links only; put a backslash before a mark that is meant as it stands"));
                }
                None
            }
        }
    }
}
