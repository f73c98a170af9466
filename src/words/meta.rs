//! What a sheet says of itself and of its pages, and sheets that are no case's.

use serde_json::{Value, json};

use super::Words;
use super::letters::Letters;
use super::speaker::Speaker;
use crate::case::Paper;
use crate::content::PrintSize;
use crate::diag::{Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::language::{Language, LineShape, ReadingDirection, WordState};
use crate::units::Date;

/// What is known of a sheet besides its words.
pub struct About<'a> {
    /// Which kind of sheet it is, for the look.
    pub sheet: &'a str,
    /// Printed on half of the paper.
    pub half: bool,
    pub title: &'a str,
    /// Who gives it out; the program itself when nobody is named.
    pub author: Option<&'a str>,
    pub description: &'a str,
    pub paper: Paper,
    pub print: PrintSize,
    /// The date of the file; none when nothing in it has one, since no clock is read.
    pub date: Option<Date>,
}

/// The data of a sheet about itself.
pub fn meta(language: &Language, speaker: &Speaker<'_>, about: &About<'_>) -> Value {
    json!({
        "sheet": about.sheet,
        "half": about.half,
        "title": about.title,
        "author": about.author.unwrap_or("Palmleaf"),
        "description": about.description,
        "language": language.entry.tag.primary(),
        "region": language.region(),
        "dir": if language.entry.direction == ReadingDirection::RightToLeft { "rtl" } else { "ltr" },
        "font": language.entry.fonts,
        "line": language.entry.line.as_ref().map(line),
        "hyphenate": language.entry.hyphenate,
        "unspaced": Letters::of(&language.entry).are_unspaced(),
        "paper": match about.paper { Paper::A4 => "a4", Paper::Letter => "letter" },
        "size": match about.print { PrintSize::Standard => "standard", PrintSize::Large => "large", PrintSize::Giant => "giant" },
        "date": about.date.map(|date| [date.year(), i16::from(date.month()), i16::from(date.day())]),
        "digits": speaker.formats.digits().map(String::from),
    })
}

/// How letters stand on a line, in hundredths of the type size.
fn line(line: &LineShape) -> Value {
    let LineShape { over, under, between, tight } = line;
    json!({"over": over.get(), "under": under.get(), "between": between.get(), "tight": tight.get()})
}

/// A sheet that is no case's: itself and what stands round its text. Its caller adds the text.
///
/// # Errors
/// When something in it cannot be said.
pub fn bare(words: &Words, language: &Language, about: &About<'_>, caution: &str) -> Result<Value, Findings> {
    let speaker = words.speaker(language)?;
    let (caution, page) = (speaker.plain(caution, &[])?, page_pieces(&speaker, "guide-page")?);
    let said = words.said(language.entry.tag.as_str(), &speaker.used())?;
    let furniture = json!({
        "clinic": about.author,
        "person": null,
        "state": state_line(said.state()).map(|key| speaker.plain(key, &[])).transpose()?,
        "caution": caution,
        "page": page,
    });
    Ok(json!({"meta": meta(language, &speaker, about), "furniture": furniture}))
}

/// The line that a sheet carries when its words are not all signed off.
pub const fn state_line(state: WordState) -> Option<&'static str> {
    match state {
        WordState::Drafted => Some("guide-drafted"),
        WordState::Outdated => Some("guide-outdated"),
        WordState::Original | WordState::SignedOff => None,
    }
}

/// "Page 1 of 4" in pieces, since only the typesetter knows the numbers.
///
/// # Errors
/// When it cannot be said.
pub fn page_pieces(speaker: &Speaker<'_>, key: &'static str) -> Result<Vec<Value>, Diagnostic> {
    const PAGE: &str = "\u{1}";
    const PAGES: &str = "\u{2}";
    let message =
        Message::new(key).with("page", Arg::Literal(PAGE.to_owned())).with("pages", Arg::Literal(PAGES.to_owned()));
    let text = speaker.say(&message, &[])?;
    let mut pieces = Vec::new();
    let mut plain = String::new();
    for c in text.chars() {
        let mark = match c {
            '\u{1}' => Some(json!({"page": 1})),
            '\u{2}' => Some(json!({"pages": 1})),
            _ => None,
        };
        match mark {
            Some(mark) => {
                if !plain.is_empty() {
                    pieces.push(Value::String(std::mem::take(&mut plain)));
                }
                pieces.push(mark);
            }
            None => plain.push(c),
        }
    }
    if !plain.is_empty() {
        pieces.push(Value::String(plain));
    }
    Ok(pieces)
}
