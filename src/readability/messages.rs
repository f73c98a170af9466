//! The messages of a language by themselves, before any sheet says them.

use std::collections::BTreeMap;

use super::{Counts, Cutter, Readability, SectionReading, Yardsticks};
use crate::source::Place;
use crate::words::lint::sayings;
use crate::words::{Catalogue, MessageInfo};

/// Reads every message that a patient may read, file by file. A variable counts as a figure. Nothing when no yardstick is
/// known for the language.
pub fn messages(catalogue: &Catalogue, yardsticks: &Yardsticks) -> Option<Readability> {
    let yardstick = yardsticks.find(&catalogue.tag)?;
    let mut files: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for (_, info) in catalogue.messages().filter(|(id, info)| is_read(id, info)) {
        files.entry(info.place.source.name().to_owned()).or_default().extend(sayings(&info.entry));
    }
    let cutter = Cutter::default();
    let sections: Vec<SectionReading> =
        files.iter().map(|(name, texts)| yardstick.section(&cutter, (0, name, ""), texts)).collect();
    let mut counts = Counts::default();
    sections.iter().for_each(|section| counts += section.counts);
    let gate = yardstick.gate();
    let grade = gate.value(&counts);
    Some(Readability { language: catalogue.tag.clone(), gate, sections, counts, grade })
}

/// Words of messages that have plainer ones on offer: the message, its place, the word, and what to say instead.
pub fn hard_words(catalogue: &Catalogue, yardsticks: &Yardsticks) -> Vec<(String, Place, String, Vec<String>)> {
    let Some(yardstick) = yardsticks.find(&catalogue.tag) else { return Vec::new() };
    let cutter = Cutter::default();
    let mut found = Vec::new();
    for (id, info) in catalogue.messages().filter(|(id, info)| is_read(id, info)) {
        let mut words: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for sentence in sayings(&info.entry).iter().flat_map(|text| cutter.sentences(text)) {
            for word in &sentence.words {
                if let Some(instead) = yardstick.plainer(&sentence, word) {
                    words.insert(word.clone(), instead.to_vec());
                }
            }
        }
        found.extend(words.into_iter().map(|(word, instead)| (id.to_owned(), info.place.clone(), word, instead)));
    }
    found
}

/// Whether patients read a message: words for clinicians are not theirs, and the learned name of a structure is there to
/// be learned.
fn is_read(id: &str, info: &MessageInfo) -> bool {
    !info.staff && !id.ends_with("-term")
}
