//! What a language is measured by: a row of data for each, `content/readability/TAG.yaml`, and its plain words,
//! `content/plain-words/TAG.yaml`.

use std::collections::BTreeMap;

use super::plain::PlainWords;
use super::score::Score;
use super::syllables::{Counter, SyllableRule};
use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::{FromNode, Limits, Reader, choice, parse, record};
use crate::units::Limit;

record! {
    /// How a language is measured.
    pub struct Row ("how a language is measured") {
        /// The score that decides. Without one, the lengths of sentences do, and the sheet says so.
        pub target: Option<Target>,
        /// Scores that are reported beside it.
        pub also: Vec<Score>,
        pub sentences: SentenceLengths,
        /// From here on a word counts as long in formulas and shares; six letters where this says nothing.
        pub long: Option<LongWord>,
        /// From here on a word is shown as hard to read.
        pub hard: Option<HardLook>,
        /// Letters that belong to no word in print, such as vowel marks: left out before letters are counted.
        pub unwritten: Option<String>,
        /// Words by which a sentence speaks to the reader.
        pub address: Vec<String>,
        /// Forms of `be` in front of a participle, and how participles end or are: only English is looked at so.
        pub passive: Option<Passive>,
        pub syllables: Option<SyllableRule>,
    }
}

record! {
    /// The score that decides and the value that it has to reach.
    pub struct Target ("a target") {
        pub score: Score,
        /// At most this, or at least this where higher is easier.
        pub limit: Limit,
        /// Where the limit is from.
        pub from: String,
    }
}

choice! {
    /// What the length of a sentence is counted in.
    pub enum LengthUnit ("unit of length") {
        Words = "words",
        /// For scripts without spaces.
        Characters = "characters",
    }
}

record! {
    /// How long sentences may be. A rule of thumb, from memory.
    pub struct SentenceLengths ("lengths of sentences") {
        pub unit: LengthUnit,
        pub mean: Limit,
        pub longest: Limit,
    }
}

record! {
    /// What makes a word long: more letters than this.
    pub struct LongWord ("a long word") {
        pub letters: Limit,
    }
}

record! {
    /// What makes a word look hard: this many syllables or letters, or more. A rule of thumb, from memory.
    pub struct HardLook ("the look of a hard word") {
        pub syllables: Option<Limit>,
        pub letters: Option<Limit>,
    }
}

record! {
    /// How a passive is known by its form.
    pub struct Passive ("a passive") {
        pub before: Vec<String>,
        pub endings: Vec<String>,
        pub participles: Vec<String>,
        /// Words that end so and are no participle, or stand as an adjective.
        pub not: Vec<String>,
    }
}

/// Everything a language is measured by.
#[derive(Clone, Debug)]
pub struct Yardstick {
    pub row: Row,
    pub plain: PlainWords,
    pub counter: Option<Counter>,
}

/// The yardsticks of all languages that have one.
#[derive(Clone, Debug, Default)]
pub struct Yardsticks {
    by_tag: BTreeMap<String, Yardstick>,
}

impl Yardsticks {
    /// Loads `content/readability` and `content/plain-words`.
    ///
    /// # Errors
    /// All faults of all files.
    pub fn load(assets: &Assets) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let rows: BTreeMap<String, Row> = folder(assets, "content/readability/", &mut findings);
        let mut plain: BTreeMap<String, PlainWords> = folder(assets, "content/plain-words/", &mut findings);
        for (tag, row) in rows.iter().filter(|(_, row)| row.syllables.is_none()) {
            let scores = row.target.iter().map(|target| target.score).chain(row.also.iter().copied());
            for score in scores.filter(|score| !score.spares_syllables()) {
                // Without syllables every text would be easy.
                let message =
                    format!("content/readability/{tag}.yaml: `{score}` is made of syllables, which it cannot count");
                findings.push(Diagnostic::outside(Code::CONTENT_RULE, message).help("add `syllables:`"));
            }
        }
        if findings.has_errors() {
            return Err(findings);
        }
        let by_tag = rows
            .into_iter()
            .map(|(tag, row)| {
                let counter = row.syllables.as_ref().map(Counter::new);
                let plain = plain.remove(&tag).unwrap_or_default();
                (tag, Yardstick { row, plain, counter })
            })
            .collect();
        Ok(Self { by_tag })
    }

    /// The yardstick of a language: the one of its tag, or the first of the same language in another region or script.
    pub fn find(&self, tag: &str) -> Option<&Yardstick> {
        let primary = |tag: &str| tag.split('-').next().unwrap_or_default().to_owned();
        let alike = || self.iter().find(|(known, _)| primary(known) == primary(tag)).map(|(_, yardstick)| yardstick);
        self.by_tag.get(tag).or_else(alike)
    }

    pub fn iter(&self) -> impl Iterator<Item = (&str, &Yardstick)> {
        self.by_tag.iter().map(|(tag, yardstick)| (tag.as_str(), yardstick))
    }
}

/// Reads one file of content.
fn read<T: FromNode>(assets: &Assets, path: &str) -> Result<T, Findings> {
    let source = assets.text(path)?;
    let node = parse(&source, Limits::CONTENT)?;
    let mut reader = Reader::new(&source);
    let value = T::from_node(&node, &mut reader);
    let findings = reader.finish();
    match value {
        Some(value) if !findings.has_errors() => Ok(value),
        _ => Err(findings),
    }
}

/// Reads a folder of content by the names of its files.
pub(super) fn folder<T: FromNode>(assets: &Assets, folder: &str, findings: &mut Findings) -> BTreeMap<String, T> {
    let mut all = BTreeMap::new();
    for path in assets.below(folder) {
        let tag = path.trim_start_matches(folder).trim_end_matches(".yaml").to_owned();
        match read(assets, path) {
            Ok(value) => {
                all.insert(tag, value);
            }
            Err(more) => findings.extend(more),
        }
    }
    all
}
