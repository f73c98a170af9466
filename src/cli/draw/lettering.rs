//! The names of structures as labels of a picture.

use crate::document::Message;
use crate::ids::StructureId;
use crate::language::Language;
use crate::picture::lettering::{Lettering, Letters};
use crate::pipeline::Workshop;
use crate::words::Speaker;

/// The name of a structure: the plain one, then what students call it when that is another one.
pub fn structure(workshop: &Workshop, language: &Language, speaker: &Speaker<'_>, id: &StructureId) -> Lettering {
    let spoken = |key: String| speaker.say(&Message::new(key), &[]).ok();
    let plain = spoken(format!("structure-{id}")).unwrap_or_else(|| id.to_string());
    let term = spoken(format!("structure-{id}-term")).filter(|term| *term != plain).unwrap_or_default();
    set(workshop, language, &plain, &term)
}

/// Other words about a picture.
pub fn plain(workshop: &Workshop, language: &Language, speaker: &Speaker<'_>, key: &str) -> Lettering {
    set(workshop, language, "", &speaker.plain(key, &[]).unwrap_or_else(|_| key.to_owned()))
}

fn set(workshop: &Workshop, language: &Language, plain: &str, term: &str) -> Lettering {
    Lettering::set(Letters::PICTURE, &|text, bold| workshop.width(text, language, bold), plain, term)
}
