//! The words about a picture.

use crate::body::Side;
use crate::document::{self, Arg, Message};
use crate::picture::scene::{LabelText, Request};
use crate::picture::standalone::Line;
use crate::words::Speaker;

use crate::picture::lettering::Lettering;

/// Height of the letters of labels that are a letter or a number, mm.
const LETTER: f64 = 3.5;

/// What a label says, line by line.
pub fn label(text: LabelText, names: &[Lettering]) -> Vec<Line> {
    if let LabelText::Structure(number) = text
        && let Some(name) = names.get(number)
    {
        return name.lines.clone();
    }
    let said = text.said(|number| {
        u8::try_from(number).ok().filter(|number| *number < 26).map(|number| char::from(b'A' + number).to_string())
    });
    vec![Line { text: said, size: LETTER, bold: true }]
}

/// A message in the language of the words, or what stands for it where there is none: ids are better than nothing.
pub fn spoken(speaker: &Speaker<'_>, message: Message, side: Side, instead: &str) -> String {
    speaker.say(&message, &[("side", Arg::Keyword(side.word()))]).unwrap_or_else(|_| instead.to_owned())
}

/// The same of a message that needs nothing but the side.
pub fn say(speaker: &Speaker<'_>, key: &str, side: Side, instead: &str) -> String {
    spoken(speaker, Message::new(key.to_owned()), side, instead)
}

/// Which hand it is.
pub fn hand(speaker: &Speaker<'_>, side: Side) -> String {
    say(speaker, &format!("hand-{side}"), side, side.word())
}

/// Which hand it is, and from where it is seen.
pub fn seen(speaker: &Speaker<'_>, request: &Request) -> String {
    spoken(speaker, document::seen(request), request.side, request.side.word())
}
