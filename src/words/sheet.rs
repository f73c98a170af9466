//! The localised sheet: the document said in one language, as the tree that pages are made from.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use super::Words;
use super::components::component;
use super::prose::{plain_text, prose, runs};
use super::speaker::Speaker;
use crate::case::Paper;
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic};
use crate::document::{Arg, Document, Message, Part};
use crate::language::{ReadingDirection, WordState};
use crate::markdown::{self, Block, Dialect};
use crate::picture::scene::Request;
use crate::source::{Place, Span};

/// A sheet in one language.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// What the pages are made from.
    pub data: Value,
    /// The pictures it names, by their keys.
    pub pictures: BTreeMap<String, Request>,
    pub title: String,
    /// What stands over the contents, where a sheet has any.
    pub contents: String,
    /// Whether the words have been signed off.
    pub state: WordState,
}

/// Says a document.
///
/// # Errors
/// When anything in it cannot be said.
pub fn localise(words: &Words, document: &Document) -> Result<Sheet, Diagnostic> {
    let language = &document.language;
    let speaker = words.speaker(language)?;
    let args = &document.main.args;
    let say = |message: &Message| speaker.say(message, args);
    let title = say(&document.main.title)?;
    let mut parts = Vec::new();
    for part in document.parts() {
        let mut sections = Vec::new();
        for name in words.sheets.get(&document.kind).into_iter().flatten() {
            let mut built = part.sections.iter().filter(|section| section.id == name).peekable();
            if built.peek().is_none() {
                sections.extend(section(words, &speaker, part, name, None)?);
            }
            for built in built {
                sections.extend(section(words, &speaker, part, name, Some(built))?);
            }
        }
        parts.push(json!({
            "title": speaker.say(&part.title, &part.args)?,
            "for": speaker.say(&part.line, &part.args)?,
            "side": part.side.word(),
            "sections": sections,
        }));
    }
    let (paper, size) = (document.meta.paper, document.meta.print);
    let direction = language.entry.direction;
    let meta = json!({
        "sheet": document.kind.word(),
        "half": document.meta.half,
        "title": title,
        "author": document.furniture.clinic.clone().unwrap_or_else(|| "Palmleaf".to_owned()),
        "description": say(&document.meta.description)?,
        "language": language.entry.tag.primary(),
        "region": language.tag.region(),
        "dir": if direction == ReadingDirection::RightToLeft { "rtl" } else { "ltr" },
        "font": language.entry.fonts,
        "paper": match paper { Paper::A4 => "a4", Paper::Letter => "letter" },
        "size": match size { PrintSize::Standard => "standard", PrintSize::Large => "large", PrintSize::Giant => "giant" },
        "date": document.meta.date.map(|date| [date.year(), i16::from(date.month()), i16::from(date.day())]),
        "digits": speaker.formats.digits().map(String::from),
    });
    let furniture = json!({
        "clinic": document.furniture.clinic,
        "person": document.furniture.person,
        "state": match language.entry.state {
            WordState::Drafted => Some(speaker.plain("guide-drafted", args)?),
            WordState::Original | WordState::SignedOff => None,
        },
        "caution": say(&document.furniture.caution)?,
        "page": page_pieces(&speaker)?,
    });
    let data = json!({"meta": meta, "furniture": furniture, "parts": parts});
    let pictures = document.figures().map(|figure| (figure.key.clone(), figure.request.clone())).collect();
    let contents = speaker.plain("phone-contents", args)?;
    Ok(Sheet { data, pictures, title, contents, state: language.entry.state })
}

/// "Page 1 of 4" in pieces, since only the typesetter knows the numbers.
fn page_pieces(speaker: &Speaker<'_>) -> Result<Vec<Value>, Diagnostic> {
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

/// A section through its template; None when the document has nothing for it.
fn section(
    words: &Words,
    speaker: &Speaker<'_>,
    part: &Part,
    name: &str,
    built: Option<&crate::document::Section>,
) -> Result<Option<Value>, Diagnostic> {
    let has: Vec<&str> = built.map(|section| section.components.keys().copied().collect()).unwrap_or_default();
    let mut args = part.args.clone();
    for (arg, value) in built.into_iter().flat_map(|section| &section.args) {
        // A message is said now: what a template may use cannot itself use everything that the template may.
        let value = match value {
            Arg::Message(message) => Arg::Literal(speaker.say(message, &part.args)?),
            value => value.clone(),
        };
        args.push((arg, value));
    }
    let (markdown, source) = words.templates().render(name, speaker, &args, &has)?;
    let fault = |message: String| {
        let place = Place { source: source.clone(), span: Span::new(0..0) };
        Diagnostic::error(Code::WORDS_TEMPLATE, place, message)
    };
    let blocks = markdown::parse(&markdown, Dialect::Section)
        .map_err(|faults| fault(faults.first().map(|fault| fault.message.clone()).unwrap_or_default()))?;
    let mut title = None;
    let mut intro = None;
    let mut out: Vec<Value> = Vec::new();
    let mut placed = Vec::new();
    let mut text = false;
    for block in blocks {
        match block {
            Block::Heading(1, inlines) if title.is_none() => title = Some(plain_text(&inlines)),
            Block::Heading(1, _) => return Err(fault("a section has one title".to_owned())),
            Block::Paragraph(inlines) if out.is_empty() && intro.is_none() && title.is_some() => {
                intro = Some(runs(&inlines))
            }
            Block::Fence(info, body) if info == "component" => {
                let wanted = body.trim().to_owned();
                match built.and_then(|section| section.components.get(wanted.as_str())) {
                    Some(own) => {
                        out.push(component(speaker, part, own)?);
                        placed.push(wanted);
                    }
                    // What this case does not have closes up.
                    None => placed.push(wanted),
                }
            }
            Block::Fence(info, _) => return Err(fault(format!("a fenced block is ```component, not ```{info}"))),
            block => {
                text = true;
                out.push(prose(&block));
            }
        }
    }
    if let Some(forgotten) = has.iter().find(|name| !placed.iter().any(|placed| placed == *name)) {
        return Err(fault(format!("the section does not place its component `{forgotten}`")));
    }
    if out.is_empty() || (built.is_none() && !text) {
        return Ok(None);
    }
    Ok(Some(json!({"id": name, "title": title, "intro": intro, "blocks": out})))
}
