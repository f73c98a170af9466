//! What a sheet says of itself and of its pages, and sheets that are no case's.

use serde_json::{Value, json};

use super::Words;
use super::speaker::{SheetArgs, Speaker};
use crate::case::Paper;
use crate::content::PrintSize;
use crate::diag::Diagnostic;
use crate::document::{Arg, Message};
use crate::language::{Language, ReadingDirection, WordState};
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
        "region": language.tag.region(),
        "dir": if language.entry.direction == ReadingDirection::RightToLeft { "rtl" } else { "ltr" },
        "font": language.entry.fonts,
        "paper": match about.paper { Paper::A4 => "a4", Paper::Letter => "letter" },
        "size": match about.print { PrintSize::Standard => "standard", PrintSize::Large => "large", PrintSize::Giant => "giant" },
        "date": about.date.map(|date| [date.year(), i16::from(date.month()), i16::from(date.day())]),
        "digits": speaker.formats.digits().map(String::from),
    })
}

/// A sheet that is no case's: itself and what stands round its text. Its caller adds the text.
///
/// # Errors
/// When something in it cannot be said.
pub fn bare(words: &Words, language: &Language, about: &About<'_>, caution: &str) -> Result<Value, Diagnostic> {
    let speaker = words.speaker(language)?;
    let furniture = json!({
        "clinic": about.author,
        "person": null,
        "state": drafted(language, &speaker, &[])?,
        "caution": speaker.plain(caution, &[])?,
        "page": page_pieces(&speaker)?,
    });
    Ok(json!({"meta": meta(language, &speaker, about), "furniture": furniture}))
}

/// That nobody qualified has checked the words, when nobody has.
///
/// # Errors
/// When it cannot be said.
pub fn drafted(language: &Language, speaker: &Speaker<'_>, args: &SheetArgs) -> Result<Option<String>, Diagnostic> {
    Ok(match language.entry.state {
        WordState::Drafted => Some(speaker.plain("guide-drafted", args)?),
        WordState::Original | WordState::SignedOff => None,
    })
}

/// "Page 1 of 4" in pieces, since only the typesetter knows the numbers.
///
/// # Errors
/// When it cannot be said.
pub fn page_pieces(speaker: &Speaker<'_>) -> Result<Vec<Value>, Diagnostic> {
    const PAGE: &str = "\u{1}";
    const PAGES: &str = "\u{2}";
    let message = Message::new("guide-page")
        .with("page", Arg::Literal(PAGE.to_owned()))
        .with("pages", Arg::Literal(PAGES.to_owned()));
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
