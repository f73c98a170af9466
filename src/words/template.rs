//! Section templates: Tera over Markdown.
//!
//! A template decides the order of text and components in a section. Everything it prints is escaped, so that no text
//! of a case can become markup; it reaches no file, clock or environment.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use tera::{Context, Kwargs, State, Tera, TeraResult};

use super::speaker::{SheetArgs, Speaker};
use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{DocumentKind, FactsFor, Message, SheetKind};
use crate::ids::MessageId;
use crate::markdown::escape;
use crate::source::{At, FromNode, Limits, Place, Reader, SourceText, Span, parse, record};

/// Output longer than this is a runaway loop.
const MOST_BYTES: usize = 1024 * 1024;

record! {
    /// The order of sections.
    pub struct SheetOrder ("the order of sections") {
        /// Names of templates in `content/sections`, in print order.
        pub guide: Vec<At<MessageId>>,
        pub card: Vec<At<MessageId>>,
        pub diary: Vec<At<MessageId>>,
        pub exercises: Vec<At<MessageId>>,
        pub letter: Vec<At<MessageId>>,
        /// The fact sheets for patients and for students.
        pub facts: Vec<At<MessageId>>,
        pub students: Vec<At<MessageId>>,
    }
}

/// Reads which sections each sheet has and in which order.
pub fn order(assets: &Assets) -> Result<BTreeMap<DocumentKind, Vec<String>>, Diagnostic> {
    let source = assets.text("content/sheets.yaml")?;
    let node = parse(&source, Limits::CONTENT)?;
    let mut reader = Reader::new(&source);
    let order = SheetOrder::from_node(&node, &mut reader);
    let findings = reader.finish();
    if let Some(first) = findings.sorted().first() {
        return Err((*first).clone());
    }
    let Some(order) = order else { return Ok(BTreeMap::new()) };
    let mut sheets = BTreeMap::new();
    for kind in DocumentKind::all() {
        let names = match kind {
            DocumentKind::Sheet(SheetKind::Guide | SheetKind::Phone) => &order.guide,
            DocumentKind::Sheet(SheetKind::Card) => &order.card,
            DocumentKind::Sheet(SheetKind::Diary) => &order.diary,
            DocumentKind::Sheet(SheetKind::Exercises) => &order.exercises,
            DocumentKind::Sheet(SheetKind::Letter) => &order.letter,
            DocumentKind::Facts(FactsFor::Patients) => &order.facts,
            DocumentKind::Facts(FactsFor::Students) => &order.students,
        };
        if let Some(name) = names.iter().find(|name| assets.bytes(&template(&name.value)).is_none()) {
            let place = Place { source, span: name.span.clone() };
            let path = template(&name.value);
            return Err(Diagnostic::error(Code::ID_UNKNOWN, place, format!("there is no section template {path}")));
        }
        sheets.insert(kind, names.iter().map(|name| name.value.to_string()).collect());
    }
    Ok(sheets)
}

fn template(name: &MessageId) -> String {
    format!("content/sections/{name}.md")
}

/// All section templates, checked when loaded.
pub struct Templates {
    sources: BTreeMap<String, SourceText>,
}

impl Templates {
    /// Loads and checks `content/sections`.
    ///
    /// # Errors
    /// Every template that does not parse or reaches for what it may not use.
    pub fn load(assets: &Assets) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let mut sources = BTreeMap::new();
        for path in assets.below("content/sections/").filter(|path| path.ends_with(".md")) {
            match assets.text(path) {
                Ok(source) => {
                    for forbidden in ["__tera_context", "| safe", "|safe", "range("] {
                        if let Some(at) = source.text().find(forbidden) {
                            let place = Place { source: source.clone(), span: Span::new(at..at + forbidden.len()) };
                            findings.push(Diagnostic::error(
                                Code::WORDS_TEMPLATE,
                                place,
                                format!("`{forbidden}` may not stand in a section"),
                            ));
                        }
                    }
                    let name = path.trim_start_matches("content/sections/").trim_end_matches(".md").to_owned();
                    sources.insert(name, source);
                }
                Err(diagnostic) => findings.push(diagnostic),
            }
        }
        let templates = Self { sources };
        for (name, source) in &templates.sources {
            let mut tera = engine(Arc::new(|_: &str| Ok(String::new())), Arc::default());
            if let Err(error) = tera.add_raw_template(&file(name), source.text()) {
                findings.push(fault(source, &error));
                continue;
            }
            // `{% if nope %}` would be silently false: a section knows `has` and nothing else.
            let used = tera.get_template_variables(&file(name)).unwrap_or_default();
            if let Some(unknown) = used.into_iter().find(|variable| *variable != "has") {
                let place = Place { source: source.clone(), span: Span::new(0..0) };
                findings.push(
                    Diagnostic::error(Code::WORDS_TEMPLATE, place, format!("a section has no variable `{unknown}`"))
                        .help("use `has`, as in `{% if has.schedule %}`"),
                );
            }
        }
        if findings.has_errors() { Err(findings) } else { Ok(templates) }
    }

    /// The template of a section.
    pub fn source(&self, name: &str) -> Option<&SourceText> {
        self.sources.get(name)
    }

    /// The messages that templates say themselves.
    pub fn says(&self) -> impl Iterator<Item = String> {
        self.sources.values().flat_map(|source| keys(source.text()))
    }

    /// Renders a section to Markdown. `has` names the components that the section holds.
    ///
    /// # Errors
    /// When a message cannot be said, or the template itself fails.
    pub fn render(
        &self,
        name: &str,
        speaker: &Speaker<'_>,
        args: &SheetArgs,
        has: &[&str],
    ) -> Result<(String, SourceText), Diagnostic> {
        let source = self.sources.get(name).ok_or_else(|| {
            Diagnostic::outside(Code::WORDS_TEMPLATE, format!("there is no section template `{name}`"))
        })?;
        // What the template asks for is said before it runs: a Tera function must own what it uses.
        let mut said = BTreeMap::new();
        for key in keys(source.text()) {
            let text = speaker.say(&Message::new(key.clone()), args)?;
            said.insert(key, text);
        }
        let missing: Arc<Mutex<Option<String>>> = Arc::default();
        let say = Arc::new(move |key: &str| said.get(key).cloned().ok_or(()));
        let mut tera = engine(say, missing.clone());
        tera.add_raw_template(&file(name), source.text()).map_err(|error| fault(source, &error))?;
        let mut context = Context::new();
        let present: BTreeMap<&str, bool> = has.iter().map(|name| (*name, true)).collect();
        context.insert("has", &present);
        let rendered = tera.render(&file(name), &context).map_err(|error| fault(source, &error))?;
        let asked = missing.lock().unwrap_or_else(PoisonError::into_inner).take();
        if let Some(key) = asked {
            return Err(Diagnostic::outside(
                Code::WORDS_TEMPLATE,
                format!("section `{name}` says `{key}`, which is computed; write the key out"),
            ));
        }
        if rendered.len() > MOST_BYTES {
            return Err(Diagnostic::outside(
                Code::WORDS_TEMPLATE,
                format!("section `{name}` prints more than any sheet holds"),
            ));
        }
        Ok((rendered, source.clone()))
    }
}

fn file(name: &str) -> String {
    format!("{name}.md")
}

type Say = Arc<dyn Fn(&str) -> Result<String, ()> + Send + Sync>;

fn engine(say: Say, missing: Arc<Mutex<Option<String>>>) -> Tera {
    let mut tera = Tera::new();
    tera.autoescape_on([".md"]);
    tera.set_escape_fn(|text, out| out.write_all(escape(text).as_bytes()));
    tera.register_function("say", move |kwargs: Kwargs, _: &State| -> TeraResult<String> {
        let key: String = kwargs.must_get("id")?;
        match say(&key) {
            Ok(text) => Ok(text),
            Err(()) => {
                *missing.lock().unwrap_or_else(PoisonError::into_inner) = Some(key);
                Ok(String::new())
            }
        }
    });
    tera
}

/// The message keys that a template says: `say(id="…")`.
pub fn keys(template: &str) -> Vec<String> {
    template
        .match_indices("say(id=\"")
        .filter_map(|(at, found)| template[at + found.len()..].split('"').next().map(str::to_owned))
        .collect()
}

fn fault(source: &SourceText, error: &tera::Error) -> Diagnostic {
    let text = error.to_string();
    let first = text.lines().next().unwrap_or("the template fails").to_owned();
    Diagnostic::error(
        Code::WORDS_TEMPLATE,
        Place { source: source.clone(), span: Span::new(0..0) },
        format!("this template fails: {first}"),
    )
    .note(text)
}
