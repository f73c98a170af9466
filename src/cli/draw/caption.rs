//! The words about a picture.

use crate::body::{Side, View};
use crate::document::{Arg, Message};
use crate::picture::scene::LabelText;
use crate::words::Speaker;

/// What a label says.
pub fn label(text: LabelText) -> String {
    match text {
        LabelText::Letter(number) => {
            let letter =
                u8::try_from(number).ok().filter(|number| *number < 26).map(|number| char::from(b'A' + number));
            letter.map_or_else(|| (number + 1).to_string(), String::from)
        }
        LabelText::Number(number) | LabelText::Structure(number) => number.to_string(),
    }
}

/// A message in the language of the words, or what stands for it where there is none: ids are better than nothing.
pub fn say(speaker: &Speaker<'_>, message: &Message, side: Side, instead: &str) -> String {
    speaker.say(message, &[("side", Arg::Keyword(side.word()))]).unwrap_or_else(|_| instead.to_owned())
}

/// Which hand it is.
pub fn hand(speaker: &Speaker<'_>, side: Side) -> String {
    say(speaker, &Message::new(format!("hand-{side}")), side, side.word())
}

/// From where the hand is seen; English, as nothing on a patient's sheet says it.
pub const fn seen(view: View) -> &'static str {
    match view {
        View::Dorsal => "back of the hand",
        View::Palmar => "palm",
        View::Radial => "thumb side",
        View::Ulnar => "little-finger side",
        View::Turned => "back and thumb side",
        View::Own => "as the wearer sees it",
    }
}
