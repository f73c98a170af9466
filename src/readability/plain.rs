//! Hard words, and plain ones on offer.

use std::collections::{BTreeMap, BTreeSet};

use crate::source::record;

record! {
    /// The plain words of a language.
    #[derive(Default)]
    pub struct PlainWords ("plain words") {
        /// Endings that a word of the list may take.
        pub endings: Vec<String>,
        pub instead: Vec<Instead>,
        /// Words that look hard and have to stand: the sheet shows or explains them, or everybody knows them.
        pub keep: Vec<String>,
    }
}

record! {
    /// A hard word and plain ones for it.
    pub struct Instead ("a hard word") {
        /// Its forms, in lower case.
        pub of: Vec<String>,
        /// What can be said instead.
        pub say: Vec<String>,
    }
}

impl PlainWords {
    /// What can be said instead of a word in lower case; nothing where the word is not in the list.
    pub fn instead(&self, word: &str) -> Option<&[String]> {
        let is = |form: &String| {
            form == word || self.endings.iter().any(|ending| word.strip_suffix(ending.as_str()) == Some(form))
        };
        self.instead.iter().find(|hard| hard.of.iter().any(is)).map(|hard| hard.say.as_slice())
    }

    /// Whether a word that looks hard may stand.
    pub fn keeps(&self, word: &str) -> bool {
        self.keep.iter().any(|kept| {
            kept == word || self.endings.iter().any(|ending| word.strip_suffix(ending.as_str()) == Some(kept))
        })
    }

    /// Hard words that the list has twice, or offers as plain ones.
    pub fn faults(&self) -> BTreeSet<String> {
        let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
        for form in self.instead.iter().flat_map(|hard| &hard.of) {
            *seen.entry(form).or_default() += 1;
        }
        let twice = seen.iter().filter(|(_, times)| **times > 1).map(|(word, _)| (*word).to_owned());
        let circular = self.instead.iter().flat_map(|hard| &hard.say);
        let circular = circular.filter(|plain| plain.split(' ').any(|word| seen.contains_key(word))).cloned();
        twice.chain(circular).collect()
    }
}
