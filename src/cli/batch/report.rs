//! The report: one line of JSON about the list, and one about each row.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::{Ended, Shard};
use crate::diag::render::visible;
use crate::diag::{Code, Diagnostic};
use crate::output::record::GivenFacts;
use crate::source::read_bytes;

/// Bytes of a report; one of 100,000 rows has a tenth of it.
const MOST_BYTES: u64 = 1024 * 1024 * 1024;

/// How a row ended.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// All its files are there.
    Built,
    /// Something in its case is wrong.
    Refused,
    /// Its file could not be read, or the program or its content is at fault.
    Failed,
}

/// A file of a row.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct FileFacts {
    pub name: String,
    pub bytes: u64,
    pub blake3: String,
}

impl FileFacts {
    pub fn of(name: &str, bytes: &[u8]) -> Self {
        let facts = GivenFacts::of_pages(0, bytes);
        Self { name: name.to_owned(), bytes: bytes.len() as u64, blake3: facts.blake3 }
    }

    /// The bytes of the file in a folder, when they are still those that were made.
    pub fn held(&self, folder: &Path) -> Option<Vec<u8>> {
        let bytes = read_bytes(&folder.join(&self.name), self.bytes).ok()?;
        (Self::of(&self.name, &bytes) == *self).then_some(bytes)
    }
}

/// What became of a row.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Entry {
    /// In the list, from 1.
    pub row: usize,
    /// What names it in file names.
    pub id: String,
    /// File and line.
    pub place: String,
    pub state: State,
    /// A hash of everything its files are made from.
    pub input: String,
    pub files: Vec<FileFacts>,
    /// As every command gives them with `--format json`.
    pub findings: Value,
}

/// What all rows of a list share.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct Head {
    /// The version of the program.
    pub palmleaf: String,
    pub list: String,
    /// Rows of the whole list.
    pub rows: usize,
    /// A hash of what all rows of the list are made from.
    pub input: String,
    /// Which part of the list this is.
    pub shard: Option<String>,
}

/// A report.
pub struct Report {
    pub head: Head,
    pub entries: BTreeMap<usize, Entry>,
}

impl Report {
    /// Reads a report.
    ///
    /// # Errors
    /// When it is none, or cannot be read.
    pub fn load(path: &Path) -> Result<Self, Diagnostic> {
        let name = path.display().to_string();
        let help = "give reports that `palmleaf batch` has written: files that end in .jsonl";
        let bytes = read_bytes(path, MOST_BYTES)
            .map_err(|why| Diagnostic::outside(Code::FILE_UNREADABLE, format!("{name} {why}")).help(help))?;
        let fault = |line: usize| {
            Diagnostic::outside(Code::BATCH_REPORT, format!("{name}:{line}:1: this is no line of a report")).help(help)
        };
        let text = String::from_utf8(bytes).map_err(|_| fault(1))?;
        let mut lines = text.lines().enumerate();
        let head =
            lines.next().and_then(|(_, line)| serde_json::from_str::<Head>(line).ok()).ok_or_else(|| fault(1))?;
        let mut entries = BTreeMap::new();
        for (number, line) in lines {
            let entry: Entry = serde_json::from_str(line).map_err(|_| fault(number + 1))?;
            entries.insert(entry.row, entry);
        }
        Ok(Self { head, entries })
    }

    /// The report as it is written.
    pub fn lines(&self) -> String {
        let mut text = serde_json::to_string(&self.head).unwrap_or_default() + "\n";
        for entry in self.entries.values() {
            text.push_str(&line(entry));
            text.push('\n');
        }
        text
    }

    pub fn count(&self, state: State) -> usize {
        self.entries.values().filter(|entry| entry.state == state).count()
    }

    /// How a run ends that has rows which failed.
    pub fn worst(&self) -> Ended {
        let failed = self.entries.values().filter(|entry| entry.state == State::Failed);
        let mut codes =
            failed.flat_map(|entry| entry.findings.as_array().into_iter().flatten()).map(|finding| &finding["code"]);
        if codes.all(|code| code == Code::FILE_UNREADABLE.name()) { Ended::Outside } else { Ended::Fault }
    }

    /// The same for people, with at most so many rows that were not built.
    pub fn summary(&self, most: usize) -> String {
        let part = self
            .head
            .shard
            .as_ref()
            .map(|shard| format!(" (part {shard} of {} rows)", self.head.rows))
            .unwrap_or_default();
        let mut text = format!(
            "{}{part}: {} built, {} refused, {} failed\n",
            visible(&self.head.list),
            self.count(State::Built),
            self.count(State::Refused),
            self.count(State::Failed),
        );
        let unbuilt: Vec<&Entry> = self.entries.values().filter(|entry| entry.state != State::Built).collect();
        for entry in unbuilt.iter().take(most) {
            // Writing to memory does not fail.
            let _ = writeln!(text, "\nrow {}, id {}, {}", entry.row, entry.id, visible(&entry.place));
            for finding in entry.findings.as_array().into_iter().flatten() {
                let _ = writeln!(text, "  {}", said(finding));
            }
        }
        if unbuilt.len() > most {
            let _ = writeln!(text, "\nand {} rows more, in the report", unbuilt.len() - most);
        }
        text
    }
}

/// A row as one line.
pub fn line(entry: &Entry) -> String {
    serde_json::to_string(entry).unwrap_or_default()
}

/// Of the part of a list that a shard is.
pub fn part(shard: Option<Shard>) -> Option<String> {
    shard.map(|shard| shard.to_string())
}

/// A finding on one line.
fn said(finding: &Value) -> String {
    let text = |value: &Value| visible(value.as_str().unwrap_or_default());
    let mut line = String::new();
    if let Some(place) = finding.get("place").filter(|place| place.is_object()) {
        line = format!("{}:{}:{}: ", text(&place["file"]), place["line"], place["column"]);
    }
    let _ = write!(line, "{}[{}]: {}", text(&finding["severity"]), text(&finding["code"]), text(&finding["message"]));
    for note in finding["notes"].as_array().into_iter().flatten() {
        let _ = write!(line, "; {}", text(note));
    }
    if finding["help"].is_string() {
        let _ = write!(line, "; {}", text(&finding["help"]));
    }
    line.replace('\n', " ")
}
