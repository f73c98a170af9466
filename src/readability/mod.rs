//! How plainly a sheet reads, by the formula established for its language.
//!
//! It reads what the patient reads: the localised tree, section by section. The formula of each language, its limit,
//! its syllables and its plain words are data (`content/readability`, `content/plain-words`); a language without an
//! established formula is held to the length of its sentences, and the reading says so.

mod checks;
mod counts;
mod instrument;
mod messages;
mod passage;
mod plain;
pub mod report;
mod score;
mod syllables;
mod yardstick;

use std::collections::BTreeMap;

use crate::units::Limit;
use crate::words::Sheet;

pub use checks::{Answer, Check};
pub use counts::Counts;
pub use instrument::{FilledItem, FilledPart, Instrument, InstrumentItem, InstrumentPart, Instruments, instruments};
pub use messages::{hard_words, messages};
pub use passage::{Cutter, Sentence};
pub use plain::{Instead, PlainWords};
pub use score::Score;
pub use syllables::{Counter, SyllableRule};
pub use yardstick::{LengthUnit, Row, Target, Yardstick, Yardsticks};

/// A section of fewer words is scored with low confidence (rule of thumb, from memory).
pub const FEW_WORDS: usize = 100;
/// How many of the longest sentences are shown for each section.
const LONGEST: usize = 3;

/// What decides whether a section reads plainly.
#[derive(Clone, Debug, PartialEq)]
pub enum Gate {
    /// A formula with its limit.
    Formula { score: Score, limit: f64, from: String },
    /// No formula is established for the language: the lengths of its sentences.
    Lengths { unit: LengthUnit, mean: f64, longest: usize },
}

impl Gate {
    /// What is measured, in a few words.
    pub const fn name(&self) -> &'static str {
        match self {
            Self::Formula { score, .. } => score.name(),
            Self::Lengths { unit: LengthUnit::Words, .. } => "words in a sentence (no formula is established)",
            Self::Lengths { unit: LengthUnit::Characters, .. } => {
                "characters in a sentence (no formula is established)"
            }
        }
    }

    /// Who published it.
    pub const fn source(&self) -> &'static str {
        match self {
            Self::Formula { score, .. } => score.source(),
            Self::Lengths { .. } => "rule of thumb, from memory",
        }
    }

    /// The limit as people read it: "at most 6".
    pub fn limit(&self) -> String {
        match self {
            Self::Formula { score, limit, .. } if score.higher_is_easier() => format!("at least {limit}"),
            Self::Formula { limit, .. } => format!("at most {limit}"),
            Self::Lengths { mean, longest, .. } => format!("at most {mean} on average and {longest} in the longest"),
        }
    }
}

/// A word that looks hard.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HardWord {
    pub word: String,
    pub times: usize,
    /// Zero where the language has no rule for syllables.
    pub syllables: usize,
    /// Plain words on offer; none for a word that is only long.
    pub instead: Vec<String>,
}

/// A sentence with its length in the unit of the language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LongSentence {
    pub text: String,
    pub length: usize,
}

/// How one section reads.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionReading {
    /// Which part of the sheet, from 0: a sheet for both hands has two.
    pub part: usize,
    pub id: String,
    /// Its heading; empty for a sheet without any.
    pub title: String,
    pub counts: Counts,
    /// The value of what decides; nothing where there is no sentence to score.
    pub grade: Option<f64>,
    /// Whether it keeps to the limit; a section without a sentence does.
    pub met: bool,
    pub scores: Vec<(Score, f64)>,
    /// The longest sentences first.
    pub longest: Vec<LongSentence>,
    /// Words that have plain ones on offer first, then by syllables and letters.
    pub hardest: Vec<HardWord>,
    /// All sentences and labels, in reading order.
    pub sentences: Vec<Sentence>,
}

impl SectionReading {
    /// Whether there is too little text for a formula to mean much.
    pub const fn low_confidence(&self) -> bool {
        self.counts.words < FEW_WORDS
    }
}

/// How a sheet reads.
#[derive(Clone, Debug, PartialEq)]
pub struct Readability {
    pub language: String,
    pub gate: Gate,
    pub sections: Vec<SectionReading>,
    /// All sections together.
    pub counts: Counts,
    /// The value of what decides, for all sections together.
    pub grade: Option<f64>,
}

impl Readability {
    /// Whether every section keeps to the limit.
    pub fn met(&self) -> bool {
        self.sections.iter().all(|section| section.met)
    }
}

/// Reads a sheet; nothing when no yardstick is known for its language.
pub fn of(sheet: &Sheet, yardsticks: &Yardsticks) -> Option<Readability> {
    let language = sheet.data["meta"]["language"].as_str().unwrap_or_default();
    let yardstick = yardsticks.find(language)?;
    let gate = yardstick.gate();
    let cutter = Cutter::default();
    let mut sections = Vec::new();
    let mut counts = Counts::default();
    for (part, data) in sheet.data["parts"].as_array().into_iter().flatten().enumerate() {
        for section in data["sections"].as_array().into_iter().flatten() {
            let mut texts = Vec::new();
            for field in ["title", "intro", "blocks"] {
                passage::texts(&section[field], &mut texts);
            }
            let text = |field: &str| section[field].as_str().unwrap_or_default();
            let read = yardstick.section(&cutter, (part, text("id"), text("title")), &texts);
            counts += read.counts;
            sections.push(read);
        }
    }
    let grade = gate.value(&counts);
    Some(Readability { language: language.to_owned(), gate, sections, counts, grade })
}

/// Reads a text by itself, each line for itself, as one section; nothing when no yardstick is known for the language.
pub fn of_text(text: &str, tag: &str, yardsticks: &Yardsticks) -> Option<Readability> {
    let yardstick = yardsticks.find(tag)?;
    let texts: Vec<String> = text.lines().map(str::to_owned).collect();
    let section = yardstick.section(&Cutter::default(), (0, "text", ""), &texts);
    let (counts, grade) = (section.counts, section.grade);
    Some(Readability { language: tag.to_owned(), gate: yardstick.gate(), sections: vec![section], counts, grade })
}

impl Gate {
    fn value(&self, counts: &Counts) -> Option<f64> {
        match self {
            Self::Formula { score, .. } => score.of(counts),
            Self::Lengths { .. } if counts.sentences == 0 => None,
            Self::Lengths { unit, .. } => {
                let length = match unit {
                    LengthUnit::Words => counts.words,
                    LengthUnit::Characters => counts.letters,
                };
                Some(score::number(length) / score::number(counts.sentences))
            }
        }
    }

    fn is_met(&self, grade: Option<f64>, longest: usize) -> bool {
        match (self, grade) {
            (_, None) => true,
            (Self::Formula { score, limit, .. }, Some(grade)) if score.higher_is_easier() => grade >= *limit,
            (Self::Formula { limit, .. }, Some(grade)) => grade <= *limit,
            (Self::Lengths { mean, longest: most, .. }, Some(grade)) => grade <= *mean && longest <= *most,
        }
    }
}

impl Yardstick {
    /// What decides in this language.
    pub fn gate(&self) -> Gate {
        let lengths = &self.row.sentences;
        match &self.row.target {
            Some(target) => {
                Gate::Formula { score: target.score, limit: f64::from(target.limit.get()), from: target.from.clone() }
            }
            None => Gate::Lengths {
                unit: lengths.unit,
                mean: f64::from(lengths.mean.get()),
                longest: usize::from(lengths.longest.get()),
            },
        }
    }

    /// Syllables of a word in lower case; none where the language has no rule for them.
    pub fn syllables(&self, word: &str) -> usize {
        self.counter.as_ref().map_or(0, |counter| counter.count(word))
    }

    /// The counts of a text whose sentences are known; labels do not count.
    pub fn counts<'s>(&self, sentences: impl IntoIterator<Item = &'s Sentence>) -> Counts {
        let mut counts = Counts::default();
        for sentence in sentences.into_iter().filter(|sentence| !sentence.label) {
            counts.sentences += 1;
            counts.characters += sentence.text.chars().filter(|c| !c.is_whitespace()).count();
            for word in &sentence.words {
                let (letters, syllables) = (self.letters(word), self.syllables(word));
                counts.words += 1;
                counts.letters += letters;
                counts.syllables += syllables;
                counts.one_syllable += usize::from(syllables == 1);
                counts.three_syllables += usize::from(syllables >= 3);
                counts.four_syllables += usize::from(syllables >= 4);
                counts.long += usize::from(letters > self.long());
                counts.hard += usize::from(self.plainer(sentence, word).is_some());
            }
        }
        counts
    }

    /// What can be said instead of a word of a sentence; a term that is explained stands.
    pub fn plainer(&self, sentence: &Sentence, word: &str) -> Option<&[String]> {
        if sentence.taught.iter().any(|term| term == word) { None } else { self.plain.instead(word) }
    }

    fn long(&self) -> usize {
        self.row.long.as_ref().map_or(6, |long| usize::from(long.letters.get()))
    }

    fn looks_hard(&self, word: &str) -> bool {
        let Some(look) = &self.row.hard else { return false };
        let from = |limit: &Limit, count: usize| count >= usize::from(limit.get());
        look.syllables.as_ref().is_some_and(|limit| from(limit, self.syllables(word)))
            || look.letters.as_ref().is_some_and(|limit| from(limit, self.letters(word)))
    }

    fn letters(&self, word: &str) -> usize {
        let unwritten = self.row.unwritten.as_deref().unwrap_or_default();
        word.chars().filter(|c| c.is_alphanumeric() && !unwritten.contains(*c)).count()
    }

    fn length(&self, sentence: &Sentence) -> usize {
        match self.row.sentences.unit {
            LengthUnit::Words => sentence.words.len(),
            LengthUnit::Characters => sentence.words.iter().map(|word| self.letters(word)).sum(),
        }
    }

    /// Reads texts that stand together: which part, id and heading they have, and what they say.
    fn section(&self, cutter: &Cutter, (part, id, title): (usize, &str, &str), texts: &[String]) -> SectionReading {
        let gate = self.gate();
        let sentences: Vec<Sentence> = texts.iter().flat_map(|text| cutter.sentences(text)).collect();
        let counts = self.counts(&sentences);
        let mut longest: Vec<LongSentence> = sentences
            .iter()
            .filter(|sentence| !sentence.label)
            .map(|sentence| LongSentence { text: sentence.text.clone(), length: self.length(sentence) })
            .collect();
        // A stable sort: of equal lengths the first on the page stays first.
        longest.sort_by_key(|sentence| std::cmp::Reverse(sentence.length));
        longest.dedup();
        let grade = gate.value(&counts);
        let met = gate.is_met(grade, longest.first().map_or(0, |sentence| sentence.length));
        longest.truncate(LONGEST);
        let score = |score: &Score| Some((*score, score.of(&counts)?));
        SectionReading {
            part,
            id: id.to_owned(),
            title: title.to_owned(),
            counts,
            grade,
            met,
            scores: self.row.also.iter().filter_map(score).collect(),
            longest,
            hardest: self.hardest(&sentences),
            sentences,
        }
    }

    /// The words that look hard, labels among them: a label is read too.
    fn hardest(&self, sentences: &[Sentence]) -> Vec<HardWord> {
        let mut times: BTreeMap<&String, (usize, Option<&[String]>)> = BTreeMap::new();
        for sentence in sentences {
            for word in sentence.words.iter().filter(|word| !sentence.taught.contains(*word)) {
                times.entry(word).or_insert_with(|| (0, self.plainer(sentence, word))).0 += 1;
            }
        }
        let mut hard: Vec<HardWord> = times
            .into_iter()
            .filter_map(|(word, (times, instead))| {
                let syllables = self.syllables(word);
                let looks = self.looks_hard(word) && !self.plain.keeps(word) && !passage::is_figure(word);
                let shown = instead.is_some() || looks;
                shown.then(|| HardWord {
                    word: word.to_owned(),
                    times,
                    syllables,
                    instead: instead.unwrap_or_default().to_vec(),
                })
            })
            .collect();
        hard.sort_by_key(|hard| {
            std::cmp::Reverse((!hard.instead.is_empty(), hard.syllables, hard.word.chars().count()))
        });
        hard
    }
}
