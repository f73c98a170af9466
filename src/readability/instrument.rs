//! Published instruments for patient material, filled in as far as a program can. What it cannot see is left open.

use std::collections::BTreeMap;

use super::checks::{Answer, Check, Looker};
use super::yardstick::{Yardstick, folder};
use super::{Readability, Yardsticks};
use crate::assets::Assets;
use crate::diag::Findings;
use crate::source::record;
use crate::units::Limit;
use crate::words::Sheet;

record! {
    /// An instrument: its items by part.
    pub struct Instrument ("an instrument") {
        pub name: String,
        pub source: String,
        /// How its points are read.
        pub reading: String,
        pub parts: Vec<InstrumentPart>,
    }
}

record! {
    /// Items that are scored together.
    pub struct InstrumentPart ("a part of an instrument") {
        pub name: String,
        pub items: Vec<InstrumentItem>,
    }
}

record! {
    /// An item in our own short words, with its number in the instrument.
    pub struct InstrumentItem ("an item of an instrument") {
        pub number: Limit,
        pub asks: String,
        /// Answered by the program.
        pub check: Option<Check>,
        /// Left to a person; what the program sees of it stands beside it.
        pub hint: Option<Check>,
    }
}

/// The instruments by the name of their files.
pub type Instruments = BTreeMap<String, Instrument>;

/// Loads `content/instruments`.
///
/// # Errors
/// All faults of all files.
pub fn instruments(assets: &Assets) -> Result<Instruments, Findings> {
    let mut findings = Findings::default();
    let all = folder(assets, "content/instruments/", &mut findings);
    if findings.has_errors() { Err(findings) } else { Ok(all) }
}

/// One item answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FilledItem {
    pub number: u8,
    pub asks: String,
    pub answer: Answer,
    /// What the answer rests on, or where a person may look.
    pub seen: String,
}

/// A part filled in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FilledPart {
    pub name: String,
    pub items: Vec<FilledItem>,
}

impl FilledPart {
    pub fn count(&self, answer: Answer) -> usize {
        self.items.iter().filter(|item| item.answer == answer).count()
    }
}

impl Instrument {
    /// Fills the instrument in for a sheet. Nothing when no yardstick is known for its language.
    pub fn fill(&self, sheet: &Sheet, reading: &Readability, yardsticks: &Yardsticks) -> Option<Vec<FilledPart>> {
        let yardstick: &Yardstick = yardsticks.find(&reading.language)?;
        let looker = Looker::new(sheet, reading, yardstick);
        let item = |item: &InstrumentItem| {
            let (answer, seen) = match (item.check, item.hint) {
                (Some(check), _) => looker.answer(check),
                (None, Some(hint)) => (Answer::Open, looker.answer(hint).1),
                (None, None) => (Answer::Open, String::new()),
            };
            FilledItem { number: item.number.get(), asks: item.asks.clone(), answer, seen }
        };
        let part = |part: &InstrumentPart| FilledPart {
            name: part.name.clone(),
            items: part.items.iter().map(item).collect(),
        };
        Some(self.parts.iter().map(part).collect())
    }
}
