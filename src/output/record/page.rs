//! The record as the tree that a page is made from: the same facts as the JSON file, with words round them.

use serde_json::{Value, json};

use super::{GivenFacts, Record};
use crate::case::Paper;
use crate::diag::Diagnostic;
use crate::document::{Arg, Message};
use crate::language::{Language, ReadingDirection};
use crate::units::Date;
use crate::words::{Speaker, page_pieces};

mod hand;

/// A clinician's words: English messages into texts.
pub struct Clerk<'w> {
    speaker: Speaker<'w>,
}

pub type Said = Result<Value, Diagnostic>;

impl Clerk<'_> {
    fn text(&self, message: &Message) -> Result<String, Diagnostic> {
        self.speaker.say(message, &[])
    }

    fn plain(&self, key: &str) -> Result<String, Diagnostic> {
        self.text(&Message::new(key.to_owned()))
    }

    /// A message with texts of the record in it.
    fn with(&self, key: &str, texts: &[(&'static str, &str)]) -> Result<String, Diagnostic> {
        let message = texts.iter().fold(Message::new(key.to_owned()), |message, (name, text)| {
            message.with(name, Arg::Literal((*text).to_owned()))
        });
        self.text(&message)
    }

    fn all(&self, keys: &[&str]) -> Result<Vec<String>, Diagnostic> {
        keys.iter().map(|key| self.plain(key)).collect()
    }

    /// A heading over blocks: a level, and its words.
    fn heading(&self, level: u8, key: &str) -> Said {
        Ok(json!({"t": "h", "level": level, "say": self.plain(key)?}))
    }

    /// A table with widths in parts of the line; 0 is as wide as its words.
    fn table(&self, head: &[&str], widths: &[u8], rows: Vec<Value>) -> Said {
        Ok(json!({"t": "table", "head": self.all(head)?, "widths": widths, "rows": rows}))
    }

    fn paragraph(&self, key: &str) -> Said {
        Ok(json!({"t": "p", "say": self.plain(key)?}))
    }

    /// A list, or a sentence where there is nothing to list.
    fn list(&self, items: &[String], none: &str) -> Said {
        if items.is_empty() { self.paragraph(none) } else { Ok(json!({"t": "list", "items": items})) }
    }
}

/// What a page needs besides the facts.
pub struct Setting<'a> {
    /// The language of the person, for what is read out.
    pub person: &'a Language,
    /// The clinician's.
    pub clinician: &'a Language,
    pub paper: Paper,
    /// The day of the fitting: the date of the document, so that no clock is read.
    pub date: Date,
}

/// The page as a tree.
///
/// # Errors
/// When a word is missing.
pub fn page(record: &Record, speaker: Speaker<'_>, person: &Speaker<'_>, setting: &Setting<'_>) -> Said {
    let clerk = Clerk { speaker };
    let mut blocks = vec![clerk.heading(2, "record-case")?, case(&clerk, record, setting)?];
    blocks.push(clerk.heading(2, "record-given")?);
    blocks.push(given(&clerk, record)?);
    let mut sources = hand::Sources::default();
    for hand in &record.hands {
        blocks.extend(hand::reasoning(&clerk, hand, &mut sources)?);
    }
    if !sources.is_empty() {
        blocks.push(clerk.heading(2, "record-sources")?);
        blocks.push(json!({"t": "sources", "items": sources.list()}));
    }
    blocks.push(json!({"t": "turn"}));
    blocks.push(clerk.heading(2, "record-teach")?);
    blocks.push(clerk.paragraph("record-teach-say")?);
    let intro = Message::new("teach-intro");
    // In one language what is read out stands once.
    let same = setting.person.entry.tag == setting.clinician.entry.tag;
    let asked = if same { None } else { Some(person.say(&intro, &[])?) };
    blocks.push(json!({"t": "say", "ask": clerk.text(&intro)?, "asked": asked}));
    for hand in &record.hands {
        blocks.extend(hand::teach_back(&clerk, record, hand, same)?);
    }
    blocks.push(json!({"t": "sign", "labels": clerk.all(&["record-sign", "record-sign-date"])?}));
    frame(&clerk, record, setting, blocks)
}

fn frame(clerk: &Clerk<'_>, record: &Record, setting: &Setting<'_>, blocks: Vec<Value>) -> Said {
    let (person, clinician) = (&setting.person.entry, &setting.clinician.entry);
    let mut fonts = clinician.fonts.clone();
    fonts.extend(person.fonts.iter().filter(|font| !clinician.fonts.contains(font)).cloned());
    let title = clerk.plain("record-title")?;
    Ok(json!({
        "meta": {
            "sheet": "record",
            "half": false,
            "title": title,
            "author": record.clinic.clone().unwrap_or_else(|| "Palmleaf".to_owned()),
            "description": clerk.plain("record-about")?,
            "language": clinician.tag.primary(),
            "region": setting.clinician.tag.region(),
            "dir": "ltr",
            "font": fonts,
            "paper": match setting.paper { Paper::A4 => "a4", Paper::Letter => "letter" },
            "size": "standard",
            "date": [setting.date.year(), i16::from(setting.date.month()), i16::from(setting.date.day())],
            "digits": clerk.speaker.formats.digits().map(String::from),
            "other": {
                "language": person.tag.primary(),
                "dir": if person.direction == ReadingDirection::RightToLeft { "rtl" } else { "ltr" },
                "font": person.fonts,
            },
        },
        "furniture": {
            "clinic": record.clinic,
            "person": record.person,
            "caution": clerk.plain("record-caution")?,
            "page": page_pieces(&clerk.speaker, "guide-page")?,
        },
        "line": clerk.with("record-line", &[("case", &record.case)])?,
        "blocks": blocks,
    }))
}

fn case(clerk: &Clerk<'_>, record: &Record, setting: &Setting<'_>) -> Said {
    let unnamed = clerk.plain("record-not-named")?;
    let or = |text: &Option<String>| text.clone().unwrap_or_else(|| unnamed.clone());
    let state = Message::new("record-language-is")
        .with("tag", Arg::Literal(record.language.clone()))
        .with("name", Arg::Literal(setting.person.entry.english.clone()))
        .with("state", Arg::Keyword(record.translation));
    let review = record.hands.first().map(|hand| hand.plan.review.clone());
    let rows = [
        ("record-person", or(&record.person)),
        ("record-reference", or(&record.reference)),
        ("record-clinic", or(&record.clinic)),
        ("record-fitted", record.fitted.clone()),
        ("record-review", review.unwrap_or_default()),
        ("record-language", clerk.text(&state)?),
        ("record-program", format!("Palmleaf {}", record.palmleaf)),
        ("record-content", record.content.clone()),
        ("record-fingerprint", record.case.clone()),
    ];
    facts(clerk, &rows)
}

fn facts(clerk: &Clerk<'_>, rows: &[(&str, String)]) -> Said {
    let rows: Result<Vec<Value>, Diagnostic> =
        rows.iter().map(|(label, value)| Ok(json!([clerk.plain(label)?, value]))).collect();
    Ok(json!({"t": "facts", "rows": rows?}))
}

fn given(clerk: &Clerk<'_>, record: &Record) -> Said {
    let given = || {
        let own = record.sheets.iter().map(|(sheet, facts)| ((*sheet).to_owned(), facts));
        let beside = record.beside.iter().flat_map(|beside| {
            let named = move |sheet: &str| format!("{sheet} ({}, {})", record.language, beside.with);
            beside.sheets.iter().map(move |(sheet, facts)| (named(sheet), facts))
        });
        own.chain(beside)
    };
    if given().next().is_none() {
        return clerk.paragraph("record-none-given");
    }
    let size = |facts: &GivenFacts| match (facts.pages, facts.events) {
        (Some(pages), _) => clerk.text(&counted("record-pages", "pages", pages)),
        (None, Some(events)) => clerk.text(&counted("record-events", "events", events)),
        (None, None) => Ok(String::new()),
    };
    let measured = record.sheets.values().any(|facts| facts.readability.is_some());
    let mut rows = Vec::new();
    for (sheet, facts) in given() {
        let mut row = vec![json!(sheet), json!(size(facts)?), json!({"by": "BLAKE3", "hash": facts.blake3})];
        if measured {
            row.push(json!(match &facts.readability {
                Some(ease) => format!("{}: {}", ease.formula, ease.score),
                None => clerk.plain("record-no-ease")?,
            }));
        }
        rows.push(Value::from(row));
    }
    if measured {
        clerk.table(&["record-sheet", "record-size", "record-hash", "record-ease"], &[0, 0, 4, 3], rows)
    } else {
        clerk.table(&["record-sheet", "record-size", "record-hash"], &[0, 0, 1], rows)
    }
}

fn counted(key: &'static str, name: &'static str, count: usize) -> Message {
    Message::new(key).with(name, i64::try_from(count).unwrap_or(i64::MAX))
}
