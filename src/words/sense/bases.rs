//! The term base of a language, and its words for no: `locales/TAG/terms.yaml` and `locales/TAG/negations.yaml`.

use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::MessageId;
use crate::source::{FromNode, Limits, Reader, parse, record};

record! {
    /// One thing and what it is called.
    pub struct Term ("a term") {
        /// What the first language calls it, in all its forms.
        pub english: Vec<String>,
        /// What this language calls it, in all the forms that sentences use; the first is the term.
        pub say: Vec<String>,
        /// What it is, in plain words of the language.
        pub gloss: String,
        /// Messages in which the English word means something else.
        pub apart: Vec<MessageId>,
    }
}

/// The term base of a language.
#[derive(Clone, Debug, Default)]
pub struct Terms(Vec<Term>);

impl Terms {
    /// Reads it.
    ///
    /// # Errors
    /// When there is none, or it cannot be read.
    pub fn load(assets: &Assets, tag: &str) -> Result<Self, Findings> {
        Ok(Self(read(assets, &format!("locales/{tag}/terms.yaml"))?))
    }

    /// The terms that an English text names, the longest words first: «little finger» is no «finger».
    pub fn named(&self, english: &str) -> Vec<&Term> {
        let mut text = english.to_lowercase();
        let mut all: Vec<(&String, &Term)> =
            self.0.iter().flat_map(|term| term.english.iter().map(move |word| (word, term))).collect();
        all.sort_by_key(|(word, _)| std::cmp::Reverse(word.chars().count()));
        let mut found: Vec<&Term> = Vec::new();
        for (word, term) in all {
            let word = word.to_lowercase();
            while let Some(at) = place(&text, &word, true) {
                text.replace_range(at..at + word.len(), "|");
                if !found.iter().any(|one| std::ptr::eq(*one, term)) {
                    found.push(term);
                }
            }
        }
        found
    }
}

record! {
    /// The words by which a language says no.
    pub struct Negations ("words for no") {
        /// In small letters, in all their forms.
        pub not: Vec<String>,
        /// Messages that say the same without one, or whose «no» forbids nothing.
        pub apart: Vec<MessageId>,
    }
}

impl Negations {
    /// Reads them.
    ///
    /// # Errors
    /// When there are none, or they cannot be read.
    pub fn load(assets: &Assets, tag: &str) -> Result<Self, Findings> {
        let path = format!("locales/{tag}/negations.yaml");
        let negations: Self = read(assets, &path)?;
        if negations.not.is_empty() {
            let message = format!("{path} has no word for no");
            return Err(Diagnostic::outside(Code::WORDS_NOT_LOST, message).help("write them under `not`").into());
        }
        Ok(negations)
    }
}

fn read<T: FromNode>(assets: &Assets, path: &str) -> Result<T, Findings> {
    let source = assets.text(path)?;
    let node = parse(&source, Limits::CONTENT)?;
    let mut reader = Reader::new(&source);
    let read = T::from_node(&node, &mut reader);
    let findings = reader.finish();
    match read {
        Some(read) if !findings.has_errors() => Ok(read),
        _ => Err(findings),
    }
}

/// Whether a word or phrase stands in a text; as a whole word where words have spaces between them.
pub fn stands(text: &str, word: &str, whole: bool) -> bool {
    place(&text.to_lowercase(), &word.to_lowercase(), whole).is_some()
}

/// Where it stands. Both are in small letters.
fn place(text: &str, word: &str, whole: bool) -> Option<usize> {
    let joins = |c: Option<char>| c.is_some_and(char::is_alphabetic);
    text.match_indices(word)
        .map(|(at, _)| at)
        .find(|&at| !whole || !(joins(text[..at].chars().next_back()) || joins(text[at + word.len()..].chars().next())))
}

impl Negations {
    /// Whether a message is one of those that are left out.
    pub fn leaves_out(&self, id: &str) -> bool {
        self.apart.iter().any(|apart| apart.as_str() == id)
    }
}
