//! The sheet of an orthosis: in its place, step by step, and where to look at the skin.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde_json::{Value, json};

use crate::body::{Build, Finger, Side};
use crate::case::Paper;
use crate::cli::draw::{self, Group};
use crate::content::PrintSize;
use crate::diag::{Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::ids::OrthosisId;
use crate::language::Language;
use crate::picture::asks::{Sitter, Way};
use crate::pipeline::Workshop;
use crate::units::Date;
use crate::words::{self, About, Said};

/// How wide a picture is on a sheet of them, mm, by the size of print: three or two side by side.
const COLUMNS: (u16, u16) = (56, 84);

/// Which orthosis is shown, and how.
pub struct Shown<'s> {
    pub id: &'s OrthosisId,
    pub side: Side,
    pub finger: Finger,
    pub paper: Paper,
    pub print: PrintSize,
    pub date: Option<Date>,
    /// Who made it.
    pub author: Option<&'s str>,
    /// Whether the pictures are drawn, or told by their requests: enough to know whether it would be another sheet.
    pub drawn: bool,
}

/// The sheet before it is set.
pub struct Pictured {
    /// For the look of a gallery.
    pub data: Value,
    pub title: String,
    /// The messages of this orthosis, and how far each has been checked.
    pub said: Said,
}

/// Makes the sheet of an orthosis.
///
/// # Errors
/// An orthosis that is not known, has no look or cannot be drawn, and words that are missing.
pub fn pictured(workshop: &Workshop, language: &Language, shown: &Shown<'_>) -> Result<Pictured, Findings> {
    let width = if shown.print == PrintSize::Standard { COLUMNS.0 } else { COLUMNS.1 };
    let Shown { id, side, finger, .. } = *shown;
    let sitter = Sitter { side, finger, build: Build::Adult, width, height: width };
    let speaker = workshop.words.speaker(language)?;
    let args = [("side", Arg::Keyword(side.word()))];
    let title = capital(&speaker.say(&Message::new(format!("orthosis-{id}-name")), &args)?);
    let about = About {
        sheet: "booklet",
        half: false,
        title: &title,
        author: shown.author,
        description: &title,
        paper: shown.paper,
        print: shown.print,
        date: shown.date,
    };
    let mut data = words::bare(&workshop.words, language, &about, "sheet-caution")?;
    data["line"] = speaker.plain(if side == Side::Left { "hand-left" } else { "hand-right" }, &args)?.into();
    let groups = draw::gallery(workshop, language, sitter, id, shown.drawn)?.into_iter().map(|(group, pictures)| {
        let heading = match group {
            Group::Worn => None,
            Group::Steps(Way::On) => Some("steps-on"),
            Group::Steps(Way::OneHanded) => Some("booklet-one-handed"),
            Group::Steps(Way::Off) => Some("steps-off"),
            Group::Spots => Some("skin-title"),
        };
        let heading = heading.map(|key| speaker.plain(key, &args)).transpose()?;
        Ok(json!({"title": heading, "pictures": pictures}))
    });
    data["groups"] = groups.collect::<Result<Vec<Value>, Diagnostic>>()?.into();
    let mut used = speaker.used();
    used.extend(of_orthosis(workshop, id));
    let said = workshop.words.said(language.entry.tag.as_str(), &used)?;
    Ok(Pictured { data, title, said })
}

/// The messages that the pictures of an orthosis are explained with.
fn of_orthosis(workshop: &Workshop, id: &OrthosisId) -> BTreeMap<Arc<str>, String> {
    let Some(orthosis) = workshop.library.orthoses.get(id) else { return BTreeMap::new() };
    let steps = orthosis.donning.iter().chain(&orthosis.doffing).chain(&orthosis.one_handed);
    let steps = steps.map(|step| format!("step-{step}"));
    let spots = orthosis.pressure_spots.iter().map(|spot| format!("spot-{spot}"));
    let straps = orthosis.straps.iter().map(|strap| format!("strap-{strap}"));
    let all = steps.chain(spots).chain(straps).chain(["sheet-caution".to_owned(), "guide-page".to_owned()]);
    all.map(|id| (Arc::from(id), String::new())).collect()
}

/// A name as a title: its first letter is a capital one, where the script has such.
pub fn capital(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
