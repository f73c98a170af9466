//! The words about a picture.

use crate::body::Side;
use crate::content::Extent;
use crate::document::{Arg, Message};
use crate::picture::scene::{LabelText, Request};
use crate::picture::standalone::Line;
use crate::words::Speaker;

use super::lettering::Lettering;

/// Height of the letters of labels that are a letter or a number, mm.
const LETTER: f64 = 3.5;

/// What a label says, line by line.
pub fn label(text: LabelText, names: &[Lettering]) -> Vec<Line> {
    let said = match text {
        LabelText::Letter(number) => {
            let letter =
                u8::try_from(number).ok().filter(|number| *number < 26).map(|number| char::from(b'A' + number));
            letter.map_or_else(|| (number + 1).to_string(), String::from)
        }
        LabelText::Structure(number) => match names.get(number) {
            Some(name) => return name.lines.clone(),
            None => number.to_string(),
        },
        LabelText::Number(number) => number.to_string(),
    };
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
    let what = match request.extent {
        Extent::Finger => "finger",
        Extent::Thumb => "thumb",
        Extent::Hand | Extent::Forearm | Extent::Elbow => "hand",
    };
    let message = Message::new("picture-seen")
        .with("view", Arg::Keyword(request.view.word()))
        .with("what", Arg::Keyword(what))
        .with("finger", Arg::Keyword(request.finger.word()));
    spoken(speaker, message, request.side, request.side.word())
}
