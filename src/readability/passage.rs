//! The texts of a sheet that a patient reads, cut into sentences and words.
//!
//! The rule: a heading, a list item and a table cell end where they end, with or without a mark; inside them sentences
//! end as Unicode Standard Annex 29 says. A sentence with its mark counts from three words on. Without a mark it counts
//! from four words besides figures on: what is shorter is a label, such as "Next visit" or a date. Words are those of
//! Annex 29, for Chinese those of a dictionary; words joined by a hyphen are one word, and so is a figure with the marks
//! inside it (`9:15`, `8–10`). Texts that only a screen reader speaks, and what stands on every page, are not read here.

use icu::segmenter::options::{SentenceBreakInvariantOptions, WordBreakInvariantOptions};
use icu::segmenter::{SentenceSegmenter, SentenceSegmenterBorrowed, WordSegmenter, WordSegmenterBorrowed};
use serde_json::Value;

/// Fields of the tree that hold no running text: pictures and what they say to a screen reader, words that choose a
/// drawing, figures set large, telephone numbers, axes and days of a calendar.
const NOT_READ: &[&str] = &[
    "alt",
    "axis",
    "big",
    "date",
    "days",
    "digits",
    "dose",
    "flag",
    "hours",
    "href",
    "id",
    "kind",
    "letter",
    "letters",
    "level",
    "mark",
    "month",
    "n",
    "picture",
    "pictures",
    "scale",
    "segments",
    "side",
    "state",
    "t",
    "telephone",
    "times",
    "unit",
    "verdict",
    "weekday",
    "weekdays",
];
/// Sentences of fewer words are labels.
const LEAST_WITH_MARK: usize = 3;
const LEAST_WITHOUT_MARK: usize = 4;

/// A sentence with its words, in lower case.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sentence {
    pub text: String,
    pub words: Vec<String>,
    /// Of these the ones in brackets: terms that the text around them explains.
    pub taught: Vec<String>,
    /// Too short for a sentence: it is not scored.
    pub label: bool,
}

/// Cuts texts into sentences and words.
pub struct Cutter {
    sentences: SentenceSegmenterBorrowed<'static>,
    words: WordSegmenterBorrowed<'static>,
}

impl Default for Cutter {
    fn default() -> Self {
        Self {
            sentences: SentenceSegmenter::new(SentenceBreakInvariantOptions::default()),
            words: WordSegmenter::new_auto(WordBreakInvariantOptions::default()),
        }
    }
}

impl Cutter {
    /// The sentences of a text that stands by itself.
    pub fn sentences(&self, text: &str) -> Vec<Sentence> {
        let text: String =
            text.chars().filter(|c| !is_control(*c)).map(|c| if c == '\u{A0}' { ' ' } else { c }).collect();
        let ends: Vec<usize> = self.sentences.segment_str(&text).collect();
        ends.windows(2)
            .map(|pair| text[pair[0]..pair[1]].trim())
            .filter(|piece| !piece.is_empty())
            .map(|piece| {
                let words = self.words(piece);
                let ended = piece
                    .trim_end_matches(['"', '”', '»', ')', '’'])
                    .ends_with(['.', '!', '?', '…', ':', '。', '！', '？', '：', '؟', '۔', '।']);
                let spelt = words.iter().filter(|word| !is_figure(word)).count();
                let label = if ended { words.len() < LEAST_WITH_MARK } else { spelt < LEAST_WITHOUT_MARK };
                Sentence { text: piece.to_owned(), taught: self.words(&bracketed(piece)), words, label }
            })
            .collect()
    }

    /// The words of a text, in lower case.
    pub fn words(&self, text: &str) -> Vec<String> {
        let mut words: Vec<String> = Vec::new();
        // Where the last word ends, and whether a mark that joins stands behind it.
        let (mut end, mut joins) = (None, false);
        let breaks: Vec<usize> = self.words.segment_str(text).collect();
        for pair in breaks.windows(2) {
            let (from, to) = (pair[0], pair[1]);
            let piece = &text[from..to];
            // Not by the kind that the segmenter gives: it takes a word that ends in a vowel mark for none.
            if piece.contains(char::is_alphanumeric) {
                let word = piece.to_lowercase();
                match (words.last_mut(), end) {
                    (Some(before), Some(end)) if joins => {
                        before.push_str(&text[end..from]);
                        before.push_str(&word);
                    }
                    _ => words.push(word),
                }
                end = Some(to);
                joins = false;
            } else {
                // A mark joins only when it stands alone between two words.
                let figures = words.last().is_some_and(|word| is_figure(word))
                    && text[to..].starts_with(|c: char| c.is_numeric());
                let mark =
                    matches!(piece, "-" | "\u{2010}" | "\u{2011}") || (figures && matches!(piece, ":" | "–" | "/"));
                joins = end == Some(from) && mark;
            }
        }
        words
    }
}

/// Whether a word is a figure.
pub fn is_figure(word: &str) -> bool {
    word.chars().any(char::is_numeric)
}

/// What stands in brackets.
fn bracketed(text: &str) -> String {
    let inside = text.split(['(', '（']).skip(1);
    inside.filter_map(|rest| rest.split([')', '）']).next()).collect::<Vec<_>>().join(" ")
}

/// Marks that direct the writing and print nothing.
fn is_control(c: char) -> bool {
    matches!(c, '\u{200E}' | '\u{200F}' | '\u{061C}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{AD}')
}

/// The texts of a value of the tree, each by itself, in reading order.
pub fn texts(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.clone()),
        Value::Array(items) if !items.is_empty() && items.iter().all(is_run) => {
            found.push(items.iter().map(run).collect());
        }
        Value::Array(items) => items.iter().for_each(|item| texts(item, found)),
        Value::Object(fields) => fields
            .iter()
            .filter(|(name, _)| !NOT_READ.contains(&name.as_str()))
            .for_each(|(_, field)| texts(field, found)),
        _ => {}
    }
}

/// Whether a value is a run of text inside a line.
fn is_run(value: &Value) -> bool {
    let Some(fields) = value.as_object() else { return false };
    fields.len() == 1 && ["s", "b", "a"].iter().any(|name| fields.contains_key(*name))
}

fn run(value: &Value) -> String {
    let inner = |value: &Value| value.as_array().map(|items| items.iter().map(run).collect::<String>());
    match (&value["s"], &value["b"], &value["a"]) {
        (Value::String(text), ..) => text.clone(),
        (_, bold @ Value::Array(_), _) => inner(bold).unwrap_or_default(),
        (.., link) => inner(&link["inl"]).unwrap_or_default(),
    }
}
