//! Syllables of a written word by the rule of a language: vowels that stand together, endings that are silent, and a
//! list of words that keep to neither. English can only be approached so; the list of its exceptions is held against a
//! pronouncing dictionary.

use std::collections::BTreeMap;

use crate::source::record;
use crate::units::Limit;

record! {
    /// How the syllables of written words are counted.
    pub struct SyllableRule ("a rule for syllables") {
        /// Every letter that can be the heart of a syllable.
        pub vowels: String,
        /// Letters that are read as a consonant although a vowel is among them, such as `qu`.
        pub consonants: Vec<String>,
        /// Vowels side by side are two syllables, unless `pairs` has them. Otherwise they are one, unless it has them.
        pub apart: bool,
        /// Pairs of vowels that do the other thing.
        pub pairs: Vec<String>,
        /// Endings that are not spoken as a syllable. The first that a word ends with decides.
        pub silent: Vec<SilentEnding>,
        /// Endings that hold one syllable fewer than they look, such as `ely`.
        pub fewer: Vec<String>,
        /// A word may have none, such as a preposition of one consonant.
        pub none: bool,
        /// Words that keep to no rule.
        pub exceptions: Vec<Exceptions>,
    }
}

record! {
    /// An ending that is not spoken.
    pub struct SilentEnding ("a silent ending") {
        pub ending: String,
        /// Spoken after these letters.
        pub not_after: Vec<String>,
    }
}

record! {
    /// Words with the number of their syllables.
    pub struct Exceptions ("words by their syllables") {
        pub count: Limit,
        pub words: Vec<String>,
    }
}

/// A rule made ready to count.
#[derive(Clone, Debug)]
pub struct Counter {
    rule: SyllableRule,
    known: BTreeMap<String, usize>,
}

impl Counter {
    pub fn new(rule: &SyllableRule) -> Self {
        let known = rule
            .exceptions
            .iter()
            .flat_map(|list| list.words.iter().map(|word| (word.clone(), usize::from(list.count.get()))))
            .collect();
        Self { rule: rule.clone(), known }
    }

    /// Syllables of a word in lower case. A word joined by hyphens has those of its pieces; a figure has one.
    pub fn count(&self, word: &str) -> usize {
        let pieces = word.split(['-', '\u{2010}', '\u{2011}']).filter(|piece| !piece.is_empty());
        pieces.map(|piece| self.piece(piece)).sum()
    }

    fn piece(&self, word: &str) -> usize {
        if let Some(count) = self.known.get(word) {
            return *count;
        }
        if let Some(owner) = word.strip_suffix("'s").or_else(|| word.strip_suffix("’s")) {
            return self.piece(owner);
        }
        if word.chars().any(char::is_numeric) {
            return 1;
        }
        let stem = self.spoken(word);
        let mut text = stem.to_owned();
        for consonant in &self.rule.consonants {
            text = text.replace(consonant, "\u{1}");
        }
        let mut count = 0;
        let mut last: Option<char> = None;
        for c in text.chars() {
            if !self.rule.vowels.contains(c) {
                last = None;
                continue;
            }
            let joined = last.is_some_and(|before| {
                let pair: String = [before, c].iter().collect();
                self.rule.pairs.contains(&pair) == self.rule.apart
            });
            count += usize::from(!joined);
            last = Some(c);
        }
        if self.rule.fewer.iter().any(|ending| word.ends_with(ending.as_str()) && word.len() > ending.len() + 1) {
            count = count.saturating_sub(1);
        }
        count.max(usize::from(!self.rule.none))
    }

    /// The word without its silent ending.
    fn spoken<'w>(&self, word: &'w str) -> &'w str {
        for silent in &self.rule.silent {
            if let Some(stem) = word.strip_suffix(silent.ending.as_str()) {
                let spoken = silent.not_after.iter().any(|letters| stem.ends_with(letters.as_str()));
                return if spoken { word } else { stem };
            }
        }
        word
    }
}
