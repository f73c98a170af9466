//! The localised sheet: the document said in one language, as the tree that pages are made from.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use super::Words;
use super::components::component;
use super::meta::{About, drafted, meta, page_pieces};
use super::prose::{plain_text, prose, runs};
use super::speaker::Speaker;
use crate::diag::{Code, Diagnostic};
use crate::document::{Document, Message, Part};
use crate::language::WordState;
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
    let meta = meta(
        language,
        &speaker,
        &About {
            sheet: document.kind.word(),
            half: document.meta.half,
            title: &title,
            author: document.furniture.clinic.as_deref(),
            description: &say(&document.meta.description)?,
            paper: document.meta.paper,
            print: document.meta.print,
            date: Some(document.meta.date),
        },
    );
    let furniture = json!({
        "clinic": document.furniture.clinic,
        "person": document.furniture.person,
        "state": drafted(language, &speaker, args)?,
        "caution": say(&document.furniture.caution)?,
        "page": page_pieces(&speaker)?,
    });
    let data = json!({"meta": meta, "furniture": furniture, "parts": parts});
    let pictures = document.figures().map(|figure| (figure.key.clone(), figure.request.clone())).collect();
    let contents = speaker.plain("phone-contents", args)?;
    Ok(Sheet { data, pictures, title, contents, state: language.entry.state })
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
    let args: Vec<_> = part.args.iter().chain(built.into_iter().flat_map(|section| &section.args)).cloned().collect();
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
