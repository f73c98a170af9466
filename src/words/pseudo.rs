//! The pseudo language: English that nobody takes for English, to see what a sheet does with words that it has not been
//! made for.
//!
//! Letters get marks, so that text which is in no message shows by having none. Words get longer as those of most
//! translations do. A message stands in brackets, so that one that was cut off or put together of pieces shows too.
//! Variables, choices and Markdown stay what they are.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Resource};

/// Hundredths of a letter that each letter adds to the length of a sentence.
const LONGER: u32 = 40;
/// How often a vowel stands at most: more would be no word.
const MOST: u32 = 3;

/// Disguises every message of a file.
pub fn disguise(resource: &mut Resource<String>) {
    for entry in &mut resource.body {
        if let Entry::Message(message) = entry
            && let Some(pattern) = &mut message.value
            && has_word(pattern)
        {
            let mut owed = 0;
            disguised(pattern, &mut owed);
            // As strings, since a bracket at the beginning of a line of Fluent begins a branch.
            pattern.elements.insert(0, literal("["));
            pattern.elements.push(literal("]"));
        }
    }
}

/// The letters of a list are no words, and neither is what is put together of variables.
fn has_word(pattern: &Pattern<String>) -> bool {
    pattern.elements.iter().any(|element| match element {
        PatternElement::TextElement { value } => {
            value.split(|c: char| !c.is_alphabetic()).any(|word| word.chars().count() > 1)
        }
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            variants.iter().any(|variant| has_word(&variant.value))
        }
        PatternElement::Placeable { .. } => false,
    })
}

fn literal(text: &str) -> PatternElement<String> {
    let inline = InlineExpression::StringLiteral { value: text.to_owned() };
    PatternElement::Placeable { expression: Expression::Inline(inline) }
}

/// `owed` is what the text so far has still to grow, in hundredths of a letter.
fn disguised(pattern: &mut Pattern<String>, owed: &mut u32) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = longer(value, owed),
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                let before = *owed;
                let mut most = before;
                for variant in variants {
                    let mut own = before;
                    disguised(&mut variant.value, &mut own);
                    most = most.max(own);
                }
                *owed = most;
            }
            PatternElement::Placeable { .. } => {}
        }
    }
}

fn longer(text: &str, owed: &mut u32) -> String {
    let mut said = String::with_capacity(text.len() * 2);
    for letter in text.chars() {
        let marked = marked(letter);
        said.push(marked);
        if !letter.is_alphabetic() {
            continue;
        }
        *owed += LONGER;
        if matches!(letter, 'a' | 'e' | 'i' | 'o' | 'u' | 'y' | 'A' | 'E' | 'I' | 'O' | 'U') {
            let times = (*owed / 100).min(MOST - 1);
            *owed -= times * 100;
            said.extend(marked.to_lowercase().cycle().take(usize::try_from(times).unwrap_or(0)));
        }
    }
    said
}

/// The letter with a mark that every font of the sheets draws; letters that have none there stay as they are.
const fn marked(letter: char) -> char {
    match letter {
        'a' => 'å',
        'c' => 'ç',
        'd' => 'ð',
        'e' => 'é',
        'g' => 'ğ',
        'i' => 'î',
        'k' => 'ķ',
        'l' => 'ļ',
        'n' => 'ñ',
        'o' => 'ö',
        'r' => 'ŕ',
        's' => 'š',
        't' => 'ţ',
        'u' => 'û',
        'w' => 'ŵ',
        'y' => 'ý',
        'z' => 'ž',
        'A' => 'Å',
        'C' => 'Ç',
        'D' => 'Ð',
        'E' => 'É',
        'G' => 'Ğ',
        'I' => 'Î',
        'K' => 'Ķ',
        'L' => 'Ļ',
        'N' => 'Ñ',
        'O' => 'Ö',
        'R' => 'Ŕ',
        'S' => 'Š',
        'T' => 'Ţ',
        'U' => 'Û',
        'W' => 'Ŵ',
        'Y' => 'Ý',
        'Z' => 'Ž',
        other => other,
    }
}
