//! The localised sheet: the document said in one language, as the tree that pages are made from.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde_json::{Value, json};

use super::components::component;
use super::meta::{About, meta, page_pieces, state_line};
use super::prose::{plain_text, prose, runs};
use super::speaker::{Heard, Speaker};
use super::{Said, Words};
use crate::clinic::{Accent, Beside, Logo};
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{Arg, Document, DocumentKind, Message, Part, SheetKind};
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
    /// The clinic's logo, where the sheet shows it.
    pub logo: Option<Arc<Logo>>,
    pub title: String,
    /// What stands over the contents, where a sheet has any.
    pub contents: String,
    /// The messages it says, and how far each has been checked.
    pub said: Said,
    /// How each of them was said first.
    pub heard: BTreeMap<Arc<str>, String>,
}

/// Says a document.
///
/// # Errors
/// When anything in it cannot be said.
pub fn localise(words: &Words, document: &Document) -> Result<Sheet, Findings> {
    let speaker = words.speaker(&document.language)?;
    said_by(&speaker, words, document, &mut |_, _| {})
}

/// A stretch of a sheet, and all that was said in it.
#[derive(Clone, Debug)]
pub struct Spoken {
    /// Which part of the document: 0, or 1 for the other hand.
    pub part: usize,
    /// The section; nothing for what stands round the sections.
    pub section: Option<String>,
    pub heard: Vec<Heard>,
}

/// Says a document and keeps every message with what led to it, section by section.
///
/// # Errors
/// As [`localise`].
pub fn overhear(words: &Words, document: &Document) -> Result<(Sheet, Vec<Spoken>), Findings> {
    let speaker = words.speaker(&document.language)?.listening();
    let mut all: Vec<Spoken> = Vec::new();
    let sheet = said_by(&speaker, words, document, &mut |part, section| {
        let heard = speaker.take_heard();
        all.push(Spoken { part, section: section.map(str::to_owned), heard });
    })?;
    all.push(Spoken { part: 0, section: None, heard: speaker.take_heard() });
    Ok((sheet, all))
}

/// `done` is told where a section ends, and where what stands round the sections of a part does.
fn said_by(
    speaker: &Speaker<'_>,
    words: &Words,
    document: &Document,
    done: &mut dyn FnMut(usize, Option<&str>),
) -> Result<Sheet, Findings> {
    let language = &document.language;
    let args = &document.main.args;
    let say = |message: &Message| speaker.say(message, args);
    let title = say(&document.main.title)?;
    let mut parts = Vec::new();
    for (number, part) in document.parts().enumerate() {
        done(number, None);
        let mut sections = Vec::new();
        let first = parts.is_empty();
        for name in words.sheets.get(&document.kind).into_iter().flatten() {
            if first {
                sections.extend(own(document, Beside::Before, name)?);
            }
            let mut built = part.sections.iter().filter(|section| section.id == name).peekable();
            if built.peek().is_none() {
                sections.extend(section(words, speaker, part, name, None)?);
            }
            for built in built {
                sections.extend(section(words, speaker, part, name, Some(built))?);
            }
            done(number, Some(name.as_str()));
            if first {
                sections.extend(own(document, Beside::After, name)?);
            }
        }
        parts.push(json!({
            "title": speaker.say(&part.title, &part.args)?,
            "for": speaker.say(&part.line, &part.args)?,
            "side": part.side.word(),
            "hand": speaker.plain(if part.side == crate::body::Side::Left { "hand-left" } else { "hand-right" }, &part.args)?,
            "sections": sections,
        }));
        done(number, None);
    }
    let mut meta = meta(
        language,
        speaker,
        &About {
            sheet: document.kind.word(),
            half: document.meta.half,
            title: &title,
            author: document.furniture.clinic.as_deref(),
            description: &say(&document.meta.description)?,
            paper: document.meta.paper,
            print: document.meta.print,
            date: document.meta.date,
        },
    );
    let caution = say(&document.furniture.caution)?;
    let (page, contents_page) = (page_pieces(speaker, "guide-page")?, page_pieces(speaker, "contents-page")?);
    let contents = speaker.plain("phone-contents", args)?;
    // How far the words have been checked is known when all of them have been said.
    let heard = speaker.used();
    let said = words.said(language.entry.tag.as_str(), &heard)?;
    let mut furniture = json!({
        "clinic": document.furniture.clinic,
        "person": document.furniture.person,
        "state": state_line(said.state()).map(|key| speaker.plain(key, args)).transpose()?,
        "caution": caution,
        "page": page,
    });
    if document.kind == DocumentKind::Sheet(SheetKind::Guide) {
        furniture["contents"] = json!(contents_page);
    }
    dress(&mut meta, &mut furniture, document);
    let data = json!({"meta": meta, "furniture": furniture, "parts": parts});
    let pictures = document.figures().map(|figure| (figure.key.clone(), figure.request.clone())).collect();
    let logo = document.furniture.logo.clone();
    Ok(Sheet { data, pictures, logo, title, contents, said, heard })
}

/// What a clinic's own look adds; nothing where there is none.
fn dress(meta: &mut Value, furniture: &mut Value, document: &Document) {
    let own = &document.furniture;
    wear(meta, furniture, own.accent, own.address.as_deref(), own.logo.as_deref().zip(own.clinic.as_deref()));
}

/// Lays a clinic's colour, address and logo, with the name that is read aloud for it, over what is round a sheet's text.
pub fn wear(
    meta: &mut Value,
    furniture: &mut Value,
    accent: Option<Accent>,
    address: Option<&str>,
    logo: Option<(&Logo, &str)>,
) {
    if let Some(accent) = accent {
        meta["accent"] = json!(accent.by_day().to_string());
        meta["accent-by-night"] = json!(accent.by_night().to_string());
    }
    if let Some(address) = address {
        furniture["address"] = json!(address);
    }
    if let Some((logo, name)) = logo {
        // The typesetter and the page for a telephone hold the picture itself.
        furniture["logo"] = json!({"alt": name, "kind": logo.kind.word(), "shape": logo.shape});
    }
}

/// The clinic's own sections beside one of the content.
fn own(document: &Document, beside: Beside, of: &str) -> Result<Vec<Value>, Diagnostic> {
    let mut said = Vec::new();
    for (number, section) in document.own.iter().enumerate() {
        if section.beside != beside || section.of != of {
            continue;
        }
        let Some(words) = section.words(&document.language.tag) else {
            let message = format!("the clinic's section beside `{of}` has no words in `{}`", document.language.tag);
            return Err(Diagnostic::outside(Code::CLINIC_LANGUAGE, message));
        };
        let blocks: Vec<Value> = words.blocks.iter().map(prose).collect();
        said.push(json!({
            "id": format!("own-{}", number + 1),
            "title": words.title,
            "intro": null,
            "blocks": [{"t": "own", "blocks": blocks}],
        }));
    }
    Ok(said)
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
