//! The Fluent messages of one language.

use std::collections::{BTreeMap, HashMap};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast;
use unic_langid::LanguageIdentifier;

use super::escapes;
use super::lint::FIRST;
use super::plural::by_category;
use super::pseudo;
use super::signoff::HASH_DIGITS;
use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings};
use crate::language::LanguageEntry;
use crate::source::{Place, SourceText, Span};

/// All messages of one language.
pub struct Catalogue {
    pub tag: String,
    bundle: FluentBundle<FluentResource>,
    /// Where each message stands, and the text of its file.
    messages: BTreeMap<String, MessageInfo>,
}

/// What is known of one message without speaking it.
#[derive(Clone, Debug)]
pub struct MessageInfo {
    pub place: Place,
    pub entry: ast::Pattern<String>,
    /// Said only to clinicians and students: it stands in a `staff` folder, and no other language owes it.
    pub staff: bool,
}

impl Catalogue {
    /// Loads every `.ftl` file of a language; those in its folder `staff` are words for clinicians and students. The
    /// pseudo language is made of the files of the first one.
    ///
    /// # Errors
    /// Every broken or repeated message, with its place.
    pub fn load(assets: &Assets, language: &LanguageEntry) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let tag = language.tag.to_string();
        let identifier: LanguageIdentifier = tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![identifier]);
        bundle.set_use_isolating(false);
        let mut messages: BTreeMap<String, MessageInfo> = BTreeMap::new();
        let pseudo = language.tag.is_pseudo();
        let folder = format!("locales/{}/", if pseudo { FIRST } else { tag.as_str() });
        let staff_folder = format!("{folder}staff/");
        for path in assets.below(&folder).filter(|path| path.ends_with(".ftl")) {
            let source = match assets.text(path) {
                Ok(source) => source,
                Err(diagnostic) => {
                    findings.push(diagnostic);
                    continue;
                }
            };
            if pseudo && path.starts_with(&staff_folder) {
                continue;
            }
            if let Some(range) = escapes::cut_short(source.text()) {
                let place = Place { source: source.clone(), span: Span::new(range) };
                findings.push(
                    Diagnostic::error(Code::WORDS_BROKEN, place, "this escape has too few digits")
                        .help("write four hexadecimal digits after `\\u`, six after `\\U`, or the letter itself"),
                );
                continue;
            }
            let mut resource = match fluent_syntax::parser::parse(source.text().to_owned()) {
                Ok(resource) => resource,
                Err((resource, errors)) => {
                    for error in errors {
                        let span = Span::new(error.pos.clone());
                        findings.push(Diagnostic::error(
                            Code::WORDS_BROKEN,
                            Place { source: source.clone(), span },
                            format!("this is no Fluent message: {}", error.kind),
                        ));
                    }
                    resource
                }
            };
            if pseudo {
                pseudo::disguise(&mut resource);
            }
            let places = places(&source);
            let chosen = fluent_syntax::serializer::serialize(&by_category(resource.clone()));
            for entry in resource.body {
                let ast::Entry::Message(message) = entry else { continue };
                let Some(value) = message.value else { continue };
                let at = places.get(message.id.name.as_str()).copied().unwrap_or(0);
                let span = Span::new(at..at + message.id.name.len().min(source.text().len() - at));
                let place = Place { source: source.clone(), span };
                let info = MessageInfo { place: place.clone(), entry: value, staff: path.starts_with(&staff_folder) };
                if let Some(first) = messages.insert(message.id.name.clone(), info) {
                    findings.push(
                        Diagnostic::error(
                            Code::WORDS_BROKEN,
                            place,
                            format!("the message `{}` stands here a second time", message.id.name),
                        )
                        .also(first.place, "the first one"),
                    );
                }
            }
            match FluentResource::try_new(chosen) {
                Ok(resource) => {
                    let _repeats_are_reported_above = bundle.add_resource(resource);
                }
                Err(_) => continue,
            }
        }
        if messages.is_empty() && findings.is_empty() {
            findings.push(
                Diagnostic::outside(Code::WORDS_MISSING, format!("there are no messages for `{tag}`"))
                    .help(format!("add files to locales/{tag}/")),
            );
        }
        if findings.has_errors() { Err(findings) } else { Ok(Self { tag, bundle, messages }) }
    }

    pub fn messages(&self) -> impl Iterator<Item = (&str, &MessageInfo)> {
        self.messages.iter().map(|(id, info)| (id.as_str(), info))
    }

    /// Each message whose id begins so, as its file has it, in the order of ids.
    pub fn texts<'a>(&'a self, prefix: &'a str) -> impl Iterator<Item = (&'a str, String)> {
        let wanted = self.messages.iter().filter(move |(id, _)| id.starts_with(prefix));
        wanted.map(|(id, info)| (id.as_str(), fluent_text(id, &info.entry)))
    }

    /// A hash of a message as its file has it.
    pub fn hash(&self, id: &str) -> Option<String> {
        let info = self.messages.get(id)?;
        let text = fluent_text(id, &info.entry);
        Some(blake3::hash(text.as_bytes()).to_hex()[..HASH_DIGITS].to_owned())
    }

    pub fn message(&self, id: &str) -> Option<&MessageInfo> {
        self.messages.get(id)
    }

    /// Speaks a message.
    ///
    /// # Errors
    /// When the message or one of its variables is missing: nothing is printed with a hole in it.
    pub fn speak(&self, id: &str, args: &FluentArgs<'_>) -> Result<String, Diagnostic> {
        let missing = || {
            Diagnostic::outside(Code::WORDS_MISSING, format!("`{}` has no message `{id}`", self.tag))
                .help(format!("add `{id} = …` to a file in locales/{}/", self.tag))
        };
        let pattern = self.bundle.get_message(id).and_then(|message| message.value()).ok_or_else(missing)?;
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(args), &mut errors).into_owned();
        match errors.first() {
            None => Ok(text),
            Some(error) => {
                let place = self.messages.get(id).map(|info| info.place.clone());
                let message = format!("the message `{id}` of `{}` cannot be said: {error}", self.tag);
                Err(match place {
                    Some(place) => Diagnostic::error(Code::WORDS_BROKEN, place, message),
                    None => Diagnostic::outside(Code::WORDS_BROKEN, message),
                })
            }
        }
    }
}

/// A message as a file has it.
fn fluent_text(id: &str, pattern: &ast::Pattern<String>) -> String {
    let message = ast::Message {
        id: ast::Identifier { name: id.to_owned() },
        value: Some(pattern.clone()),
        attributes: Vec::new(),
        comment: None,
    };
    fluent_syntax::serializer::serialize(&ast::Resource { body: vec![ast::Entry::Message(message)] })
}

/// A number for a message: plurals follow it, and it prints in plain digits.
pub fn number(value: i64) -> FluentValue<'static> {
    FluentValue::from(value)
}

/// Where each message of a file begins.
fn places(source: &SourceText) -> HashMap<&str, usize> {
    let mut all = HashMap::new();
    let mut at = 0;
    for line in source.text().split_inclusive('\n') {
        if let Some((id, _)) = line.split_once('=')
            && !line.starts_with([' ', '#'])
        {
            all.entry(id.trim_end()).or_insert(at);
        }
        at += line.len();
    }
    all
}
