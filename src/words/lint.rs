//! Checks of the words: every language complete, the same variables everywhere, no figure typed in a sentence.

use std::collections::BTreeSet;

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement};

use super::{Catalogue, Words};
use crate::diag::{Code, Diagnostic, Findings};

/// The language that the others are held against.
pub const FIRST: &str = "en";

/// What one message holds besides its text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shape {
    /// Variables that are printed.
    pub printed: BTreeSet<String>,
    /// Variables that a choice is made by.
    pub chosen_by: BTreeSet<String>,
    /// All text outside variables.
    pub text: String,
}

/// Holds every language against the first one, and every message the content needs against the first one.
pub fn check(words: &Words, needed: &BTreeSet<String>) -> Findings {
    let mut findings = Findings::default();
    let Some(first) = words.catalogue(FIRST) else { return findings };
    for id in needed {
        if first.message(id).is_none() {
            findings.push(missing(FIRST, id));
        }
    }
    for (tag, catalogue) in words.catalogues() {
        let letters = words.letters(tag);
        for (id, info) in catalogue.messages() {
            let shape = shape(&info.entry);
            if shape.text.chars().any(char::is_numeric) {
                findings.push(
                    Diagnostic::error(
                        Code::WORDS_FIGURE,
                        info.place.clone(),
                        format!("a figure is typed in the message `{id}`"),
                    )
                    .help("take it from a variable, such as { $count }"),
                );
            }
            let original = first.message(id).map(|original| self::shape(&original.entry).text).unwrap_or_default();
            if let Some(fault) = letters.as_ref().and_then(|letters| letters.fault(&shape.text, &original)) {
                findings.push(
                    Diagnostic::error(Code::WORDS_LETTERS, info.place.clone(), format!("the message `{id}` {fault}"))
                        .help("write it in the letters of the language"),
                );
            }
            if tag == FIRST {
                continue;
            }
            match first.message(id) {
                None => findings.push(
                    Diagnostic::error(
                        Code::WORDS_SURPLUS,
                        info.place.clone(),
                        format!("`{FIRST}` has no message `{id}`"),
                    )
                    .help("take it out, or correct its name"),
                ),
                Some(original) => {
                    let wanted = self::shape(&original.entry);
                    let lost: Vec<&String> = wanted
                        .printed
                        .iter()
                        .filter(|name| !shape.printed.contains(*name) && !shape.chosen_by.contains(*name))
                        .collect();
                    let odd: Vec<&String> = shape
                        .printed
                        .iter()
                        .filter(|name| !wanted.printed.contains(*name) && !wanted.chosen_by.contains(*name))
                        .collect();
                    if !lost.is_empty() || !odd.is_empty() {
                        findings.push(
                            Diagnostic::error(
                                Code::WORDS_BROKEN,
                                info.place.clone(),
                                format!("the message `{id}` of `{tag}` prints other variables than `{FIRST}`"),
                            )
                            .help(format!("print {:?}", wanted.printed)),
                        );
                    }
                }
            }
        }
        for (id, room) in &words.rooms {
            let Some(info) = catalogue.message(id) else { continue };
            let length = shape(&info.entry).text.chars().count();
            if length > *room {
                let message = format!("the message `{id}` has {length} characters, and {room} fit where it stands");
                findings.push(
                    Diagnostic::error(Code::WORDS_LONG, info.place.clone(), message)
                        .help("say it in fewer words")
                        .as_warning(),
                );
            }
        }
        let absent = first.messages().filter(|(id, info)| !info.staff && catalogue.message(id).is_none());
        // Who adds content says it in the languages of the clinic; a sheet in any other is refused when it is asked for.
        let (elsewhere, wanted): (Vec<_>, Vec<_>) =
            absent.partition(|(_, info)| words.is_laid(info.place.source.name()) && !words.is_laid_over(tag));
        wanted.into_iter().for_each(|(id, _)| findings.push(missing(tag, id)));
        if let Some((one, _)) = elsewhere.first() {
            let message = format!("`{tag}` lacks {} messages that the folder adds, such as `{one}`", elsewhere.len());
            findings.push(
                Diagnostic::outside(Code::WORDS_MISSING, message)
                    .help(format!(
                        "add them to a file in locales/{tag}/, or give no sheet in this language that says them"
                    ))
                    .as_warning(),
            );
        }
    }
    findings
}

/// Warnings for messages of the first language that nothing can print. Words for clinicians and students are left to the
/// commands that say them.
pub fn unused(first: &Catalogue, needed: &BTreeSet<String>) -> Findings {
    let mut findings = Findings::default();
    for (id, info) in first.messages() {
        if !info.staff && !needed.contains(id) {
            findings.push(
                Diagnostic::error(Code::CONTENT_UNUSED, info.place.clone(), format!("nothing says the message `{id}`"))
                    .help("use it or take it out")
                    .as_warning(),
            );
        }
    }
    findings
}

fn missing(tag: &str, id: &str) -> Diagnostic {
    Diagnostic::outside(Code::WORDS_MISSING, format!("`{tag}` has no message `{id}`"))
        .help(format!("add `{id} = …` to a file in locales/{tag}/"))
}

/// The shape of a pattern.
pub fn shape(pattern: &Pattern<String>) -> Shape {
    let mut shape = Shape::default();
    walk(pattern, &mut shape);
    shape
}

fn walk(pattern: &Pattern<String>, shape: &mut Shape) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => shape.text.push_str(value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => inline_walk(inline, shape),
                Expression::Select { selector, variants } => {
                    if let InlineExpression::VariableReference { id } = selector {
                        shape.chosen_by.insert(id.name.clone());
                    }
                    for variant in variants {
                        walk(&variant.value, shape);
                    }
                }
            },
        }
    }
}

fn inline_walk(inline: &InlineExpression<String>, shape: &mut Shape) {
    match inline {
        InlineExpression::VariableReference { id } => {
            shape.printed.insert(id.name.clone());
        }
        InlineExpression::StringLiteral { value } => shape.text.push_str(value),
        InlineExpression::NumberLiteral { value } => shape.text.push_str(value),
        InlineExpression::Placeable { expression } => {
            if let Expression::Inline(inner) = expression.as_ref() {
                inline_walk(inner, shape);
            }
        }
        _ => {}
    }
}

/// Everything that a pattern can say, one text for each of its longest choice. A variable stands as a figure.
pub fn sayings(pattern: &Pattern<String>) -> Vec<String> {
    let most = choices(pattern).max(1);
    (0..most).map(|choice| saying(pattern, choice)).collect()
}

/// How many variants the longest choice of a pattern has.
fn choices(pattern: &Pattern<String>) -> usize {
    let of = |element: &PatternElement<String>| match element {
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            variants.iter().map(|variant| choices(&variant.value)).max().unwrap_or(0).max(variants.len())
        }
        _ => 0,
    };
    pattern.elements.iter().map(of).max().unwrap_or(0)
}

fn saying(pattern: &Pattern<String>, choice: usize) -> String {
    let mut text = String::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => text.push_str(value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Select { variants, .. } => {
                    if let Some(variant) = variants.get(choice).or_else(|| variants.last()) {
                        text.push_str(&saying(&variant.value, choice));
                    }
                }
                Expression::Inline(InlineExpression::StringLiteral { value }) => text.push_str(value),
                Expression::Inline(_) => text.push('1'),
            },
        }
    }
    text
}
