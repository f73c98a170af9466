//! The whole list looked over before anything is made: what each row is called, and which two are called the same.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::{MakeArgs, Shard};
use crate::batch::{Draft, List};
use crate::diag::{Code, Diagnostic, Findings};
use crate::output::naming;
use crate::pipeline::Workshop;
use crate::source::Place;

/// A row before it is made.
pub struct Row {
    /// In the list, from 0.
    pub index: usize,
    /// What names it in file names.
    pub id: String,
    /// File and line.
    pub place: String,
    /// A hash of everything its files are made from.
    pub input: String,
    /// What is wrong with its id.
    pub faults: Findings,
}

/// Every row of the list.
pub struct Survey {
    pub rows: Vec<Row>,
    /// A hash over all of them.
    pub input: String,
}

impl Survey {
    pub fn of(workshop: &Workshop, list: &List, args: &MakeArgs) -> Self {
        let options = format!("{}\n{:?}", workshop.identity(), args.papers);
        let looked: Vec<(Row, Option<Place>)> =
            (0..list.len()).into_par_iter().map(|index| look(list, index, &options)).collect();
        let mut rows: Vec<Row> = Vec::with_capacity(looked.len());
        let mut first: BTreeMap<String, (usize, Option<Place>)> = BTreeMap::new();
        for (row, place) in looked {
            rows.push(row);
            let number = rows.len() - 1;
            let id = rows[number].id.clone();
            match first.get(&id).cloned() {
                None => {
                    first.insert(id, (number, place));
                }
                Some((before, other)) => {
                    // Which of the two is right nobody can tell: neither is made.
                    let faults = [
                        twice(&id, place.as_ref(), &rows[before].place),
                        twice(&id, other.as_ref(), &rows[number].place),
                    ];
                    for (row, fault) in [number, before].into_iter().zip(faults) {
                        rows[row].faults.push(fault);
                    }
                }
            }
        }
        let mut hash = blake3::Hasher::new();
        for row in &rows {
            hash.update(row.input.as_bytes()).update(b"\n");
        }
        let input = hash.finalize().to_hex()[..32].to_owned();
        Self { rows, input }
    }

    /// The rows of a part of the list.
    pub fn part(&self, shard: Option<Shard>) -> Vec<&Row> {
        self.rows.iter().filter(|row| shard.is_none_or(|shard| shard.holds(&row.id))).collect()
    }
}

fn twice(id: &str, place: Option<&Place>, other: &str) -> Diagnostic {
    let message = format!("the id `{id}` stands here and in {other}");
    let diagnostic = match place {
        Some(place) => Diagnostic::error(Code::BATCH_ID, place.clone(), message),
        None => Diagnostic::outside(Code::BATCH_ID, message),
    };
    diagnostic
        .note("neither of the two was made")
        .help("give each row an id of its own; capitals and marks make no difference")
}

fn look(list: &List, index: usize, options: &str) -> (Row, Option<Place>) {
    let draft = match list.draft(index) {
        Ok(draft) => draft,
        Err(faults) => {
            let (id, place) = (format!("row-{}", index + 1), format!("row {}", index + 1));
            return (Row { index, id, place, input: String::new(), faults }, None);
        }
    };
    let mut faults = Findings::default();
    let (id, place) = named(&draft, &mut faults);
    let (line, _) = draft.place.line_and_column();
    let mut hash = blake3::Hasher::new();
    hash.update(options.as_bytes())
        .update(b"\n")
        .update(id.as_bytes())
        .update(b"\n")
        .update(draft.source.text().as_bytes());
    let input = hash.finalize().to_hex()[..32].to_owned();
    let at = format!("{}:{line}", draft.place.source.name());
    (Row { index, id, place: at, input, faults }, Some(place))
}

/// What a row is called: what it says, or a hash of its case.
fn named(draft: &Draft, faults: &mut Findings) -> (String, Place) {
    let hash = || blake3::hash(draft.source.text().as_bytes()).to_hex()[..16].to_owned();
    match &draft.id {
        None => (hash(), draft.place.clone()),
        Some((id, place)) => {
            let id = naming::of_row(id).unwrap_or_else(|misread| {
                let help = misread.help();
                let mut diagnostic = Diagnostic::error(Code::BATCH_ID, place.clone(), misread.wrong);
                diagnostic.help = help;
                faults.push(diagnostic);
                hash()
            });
            (id, place.clone())
        }
    }
}
