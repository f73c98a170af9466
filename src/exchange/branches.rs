//! A message taken apart into whole sentences, one for each choice it makes, and put together again.

use fluent_syntax::ast::{Expression, Identifier, InlineExpression, Pattern, PatternElement, Variant, VariantKey};
use fluent_syntax::unicode::unescape_unicode_to_string;

/// A piece of a sentence.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Piece {
    Text(String),
    /// A variable, by its name.
    Code(String),
}

/// A variable that a message chooses by, and what it tells apart.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    pub variable: String,
    pub keys: Vec<String>,
    /// Stands for every value that is not named.
    pub default: String,
}

/// The choices of a message in the order in which they stand.
pub type Choices = Vec<Choice>;

/// A whole sentence of a message.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Branch {
    /// Which choices lead to it: variable and key.
    pub keys: Vec<(String, String)>,
    pub pieces: Vec<Piece>,
}

impl Branch {
    /// What tells it from the other branches of its message: `count.one:side.left`; empty when there is one only.
    pub fn path(&self) -> String {
        self.keys.iter().map(|(variable, key)| format!("{variable}.{key}")).collect::<Vec<_>>().join(":")
    }

    /// The variables in it, sorted.
    pub fn codes(&self) -> Vec<&str> {
        codes(&self.pieces)
    }
}

/// The variables among pieces, sorted.
pub fn codes(pieces: &[Piece]) -> Vec<&str> {
    let mut codes: Vec<&str> = pieces
        .iter()
        .filter_map(|piece| match piece {
            Piece::Code(name) => Some(name.as_str()),
            Piece::Text(_) => None,
        })
        .collect();
    codes.sort_unstable();
    codes
}

/// Everything a message chooses by. A choice made twice by one variable is one choice.
pub fn choices(pattern: &Pattern<String>) -> Choices {
    let mut found = Vec::new();
    gather(pattern, &mut found);
    found
}

fn gather(pattern: &Pattern<String>, found: &mut Choices) {
    for element in &pattern.elements {
        let Some((variable, variants)) = select(element) else { continue };
        let default = variants.iter().find(|variant| variant.default).map(|variant| key(&variant.key));
        let at = match found.iter().position(|choice| choice.variable == variable) {
            Some(at) => at,
            None => {
                let default = default.unwrap_or_default();
                found.push(Choice { variable: variable.to_owned(), keys: Vec::new(), default });
                found.len() - 1
            }
        };
        for variant in variants {
            let key = key(&variant.key);
            if !found[at].keys.contains(&key) {
                found[at].keys.push(key);
            }
            gather(&variant.value, found);
        }
    }
}

/// The sentences of a message for these choices, which may be those of another language.
pub fn branches(pattern: &Pattern<String>, choices: &Choices) -> Vec<Branch> {
    let mut all = vec![Vec::new()];
    for choice in choices {
        all = all
            .into_iter()
            .flat_map(|keys: Vec<(String, String)>| {
                choice.keys.iter().map(move |key| {
                    let mut keys = keys.clone();
                    keys.push((choice.variable.clone(), key.clone()));
                    keys
                })
            })
            .collect();
    }
    all.into_iter()
        .map(|keys| {
            let mut pieces = Vec::new();
            sentence(pattern, &keys, &mut pieces);
            Branch { keys, pieces }
        })
        .collect()
}

fn sentence(pattern: &Pattern<String>, keys: &[(String, String)], pieces: &mut Vec<Piece>) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => text(value, pieces),
            PatternElement::Placeable { expression: Expression::Inline(inline) } => match inline {
                InlineExpression::StringLiteral { value } => text(&unescape_unicode_to_string(value), pieces),
                InlineExpression::NumberLiteral { value } => text(value, pieces),
                InlineExpression::VariableReference { id } => pieces.push(Piece::Code(id.name.clone())),
                // Messages use nothing else: the check of the words refuses the rest.
                _ => {}
            },
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                let wanted = select(element)
                    .and_then(|(variable, _)| keys.iter().find(|(name, _)| name == variable))
                    .and_then(|(_, wanted)| variants.iter().find(|variant| key(&variant.key) == *wanted));
                if let Some(variant) = wanted.or_else(|| variants.iter().find(|variant| variant.default)) {
                    sentence(&variant.value, keys, pieces);
                }
            }
        }
    }
}

/// Lines of a file are no lines on paper: a break is a space.
fn text(value: &str, pieces: &mut Vec<Piece>) {
    let mut lines = value.split('\n');
    let first = lines.next().unwrap_or_default().to_owned();
    let value = lines.fold(first, |whole, line| format!("{} {}", whole.trim_end(), line.trim_start()));
    if value.is_empty() {
        return;
    }
    match pieces.last_mut() {
        Some(Piece::Text(before)) => before.push_str(&value),
        _ => pieces.push(Piece::Text(value)),
    }
}

fn select(element: &PatternElement<String>) -> Option<(&str, &[Variant<String>])> {
    match element {
        PatternElement::Placeable {
            expression: Expression::Select { selector: InlineExpression::VariableReference { id }, variants },
        } => Some((id.name.as_str(), variants)),
        _ => None,
    }
}

fn key(key: &VariantKey<String>) -> String {
    match key {
        VariantKey::Identifier { name } => name.clone(),
        VariantKey::NumberLiteral { value } => value.clone(),
    }
}

/// The choices that a language makes where the first one makes these: a choice by number is made between the language's
/// own plural categories.
pub fn skeleton(choices: &Choices, categories: &[&str]) -> Choices {
    let plural = |key: &String| matches!(key.as_str(), "zero" | "one" | "two" | "few" | "many");
    choices
        .iter()
        .map(|choice| match choice.keys.iter().any(plural) {
            true => Choice {
                keys: categories.iter().map(|key| (*key).to_owned()).collect(),
                default: "other".to_owned(),
                ..choice.clone()
            },
            false => choice.clone(),
        })
        .collect()
}

/// A message of these branches, which are all that the choices make.
pub fn whole(choices: &[Choice], branches: &[Branch]) -> Pattern<String> {
    nested(choices, branches, &mut Vec::new())
}

fn nested(choices: &[Choice], branches: &[Branch], keys: &mut Vec<(String, String)>) -> Pattern<String> {
    let Some((choice, rest)) = choices.split_first() else {
        let pieces = branches.iter().find(|branch| branch.keys == *keys).map(|branch| branch.pieces.as_slice());
        return plain(pieces.unwrap_or_default());
    };
    let mut variants = Vec::new();
    // The one for all else stands last.
    let (last, named): (Vec<_>, Vec<_>) = choice.keys.iter().partition(|key| **key == choice.default);
    for name in named.into_iter().chain(last) {
        keys.push((choice.variable.clone(), name.clone()));
        let key = match name.starts_with(|c: char| c.is_ascii_digit()) {
            true => VariantKey::NumberLiteral { value: name.clone() },
            false => VariantKey::Identifier { name: name.clone() },
        };
        variants.push(Variant { key, value: nested(rest, branches, keys), default: *name == choice.default });
        keys.pop();
    }
    let selector = InlineExpression::VariableReference { id: Identifier { name: choice.variable.clone() } };
    let expression = Expression::Select { selector, variants };
    Pattern { elements: vec![PatternElement::Placeable { expression }] }
}

fn plain(pieces: &[Piece]) -> Pattern<String> {
    let literal = |value: String| PatternElement::Placeable {
        expression: Expression::Inline(InlineExpression::StringLiteral { value }),
    };
    let mut elements = Vec::new();
    for (at, piece) in pieces.iter().enumerate() {
        match piece {
            Piece::Code(name) => {
                let id = Identifier { name: name.clone() };
                let expression = Expression::Inline(InlineExpression::VariableReference { id });
                elements.push(PatternElement::Placeable { expression });
            }
            Piece::Text(value) => {
                // A space at either end of a message would be lost; a bracket would be read as a placeable.
                let (head, rest) = value.split_at(if at == 0 { value.len() - value.trim_start().len() } else { 0 });
                let tail = if at + 1 == pieces.len() { rest.len() - rest.trim_end().len() } else { 0 };
                let (body, tail) = rest.split_at(rest.len() - tail);
                if !head.is_empty() {
                    elements.push(literal(head.to_owned()));
                }
                let mut open = body;
                while let Some(brace) = open.find(['{', '}']) {
                    if brace > 0 {
                        elements.push(PatternElement::TextElement { value: open[..brace].to_owned() });
                    }
                    elements.push(literal(open[brace..=brace].to_owned()));
                    open = &open[brace + 1..];
                }
                if !open.is_empty() {
                    elements.push(PatternElement::TextElement { value: open.to_owned() });
                }
                if !tail.is_empty() {
                    elements.push(literal(tail.to_owned()));
                }
            }
        }
    }
    if elements.is_empty() {
        elements.push(literal(String::new()));
    }
    Pattern { elements }
}
