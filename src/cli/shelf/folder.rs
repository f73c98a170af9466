//! What lies in the folder of the handouts, held against what the shelf knows to have made.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use crate::clinic::FileName;
use crate::diag::{Code, Diagnostic, Findings};
use crate::output::kept::{self, Journal, Noted};
use crate::output::store;
use crate::shelf::state::{Kept, STATE, State};

/// The folder with what was known of it when the run began.
pub struct Folder {
    pub path: PathBuf,
    pub old: State,
    pub journal: Journal,
    /// For each file the hashes of what the shelf is known to have made, each with its key.
    known: BTreeMap<String, BTreeMap<String, String>>,
    /// Whether a run was cut off.
    pub cut_off: bool,
}

/// How a file of the folder stands to what is to be there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Found {
    /// It is what it should be.
    Good { blake3: String },
    /// It is missing, or the shelf made it from something else.
    Make,
    /// It is there, and it is not as the shelf made it.
    Foreign,
}

impl Folder {
    /// Reads what is known of a folder.
    ///
    /// # Errors
    /// A state file that is damaged, or files that cannot be read.
    pub fn open(path: &Path) -> Result<Self, Findings> {
        let file = path.join(STATE);
        let damaged = |why: &str| {
            Findings::from(
                Diagnostic::outside(Code::SHELF_STATE, format!("{} is damaged: {why}", file.display())).help(
                    "delete it and run again: every file that is as the shelf would make it is taken over, none is overwritten",
                ),
            )
        };
        let old = match kept::text_of(&file)? {
            Some(text) => State::read(&text).map_err(|why| damaged(&why))?,
            None => State::default(),
        };
        let (journal, noted) = Journal::of(path)?;
        let mut known: BTreeMap<String, BTreeMap<String, String>> = BTreeMap::new();
        let of_state = old.files.iter().map(|(path, kept)| (path, &kept.blake3, &kept.key));
        let noted_files = noted.iter().map(|noted| (&noted.path, &noted.blake3, &noted.key));
        for (path, blake3, key) in of_state.chain(noted_files) {
            // What a file says is only a file of this folder.
            if path.parse::<FileName>().is_err() {
                return Err(damaged(&format!("`{}` is no file of this folder", path.escape_default())));
            }
            known.entry(path.clone()).or_default().insert(blake3.clone(), key.clone());
        }
        for (path, blake3) in &old.left {
            if path.parse::<FileName>().is_err() {
                return Err(damaged(&format!("`{}` is no file of this folder", path.escape_default())));
            }
            known.entry(path.clone()).or_default().entry(blake3.clone()).or_default();
        }
        Ok(Self { path: path.to_path_buf(), old, journal, known, cut_off: !noted.is_empty() })
    }

    /// Whether all of it is as the last run left it.
    ///
    /// # Errors
    /// A file that cannot be read.
    pub fn is_untouched(&self) -> Result<bool, Diagnostic> {
        if self.cut_off || !self.old.left.is_empty() {
            return Ok(false);
        }
        let same =
            |(path, kept): (&String, &Kept)| Ok(kept::hash_of(&self.path.join(path))?.as_ref() == Some(&kept.blake3));
        let all: Result<Vec<bool>, Diagnostic> = self.old.files.par_iter().map(same).collect();
        Ok(all?.into_iter().all(|same| same))
    }

    /// How the file of a path stands to what is to be made from a key.
    ///
    /// # Errors
    /// When it cannot be read.
    pub fn found(&self, path: &str, key: &str) -> Result<Found, Diagnostic> {
        let Some(blake3) = kept::hash_of(&self.path.join(path))? else { return Ok(Found::Make) };
        Ok(match self.known.get(path).and_then(|known| known.get(&blake3)) {
            Some(made_from) if made_from == key => Found::Good { blake3 },
            Some(_) => Found::Make,
            None => Found::Foreign,
        })
    }

    /// Writes a file unless somebody else's lies there. One with the same bytes is taken over.
    ///
    /// # Errors
    /// A file that the shelf did not make, by its name, or when it cannot be written.
    pub fn write(&self, path: &str, key: &str, bytes: &[u8]) -> Result<String, Diagnostic> {
        let target = self.path.join(path);
        let blake3 = blake3::hash(bytes).to_hex().to_string();
        let there = kept::hash_of(&target)?;
        if there.as_ref() == Some(&blake3) {
            return Ok(blake3);
        }
        if let Some(there) = there
            && self.known.get(path).is_none_or(|known| !known.contains_key(&there))
        {
            return Err(self.refused(path, "overwritten"));
        }
        let noted = Noted { path: path.to_owned(), key: key.to_owned(), blake3: blake3.clone() };
        store::write_noted(&target, bytes, || self.journal.note(&noted))?;
        Ok(blake3)
    }

    /// That a file is not as the shelf made it.
    pub fn refused(&self, path: &str, done: &str) -> Diagnostic {
        let shown = self.path.join(path);
        let message = if self.known.contains_key(path) {
            format!("{} was changed by hand: it was not {done}", shown.display())
        } else {
            format!("{} was there before and is not the shelf's: it was not {done}", shown.display())
        };
        Diagnostic::outside(Code::SHELF_CHANGED, message)
            .help("keep it somewhere else under another name, or delete it; then run again")
    }

    /// Files that the shelf once made and that are no longer wanted: those to remove, and those that somebody changed.
    ///
    /// # Errors
    /// A file that cannot be read.
    pub fn stale(&self, wanted: &BTreeSet<&str>) -> Result<(Vec<String>, Vec<String>), Diagnostic> {
        let (mut remove, mut changed) = (Vec::new(), Vec::new());
        for (path, known) in self.known.iter().filter(|(path, _)| !wanted.contains(path.as_str())) {
            match kept::hash_of(&self.path.join(path))? {
                Some(blake3) if known.contains_key(&blake3) => remove.push(path.clone()),
                Some(_) => changed.push(path.clone()),
                None => {}
            }
        }
        Ok((remove, changed))
    }

    /// The hash of what the shelf last made of a file.
    pub fn made(&self, path: &str) -> String {
        let of_state = self.old.files.get(path).map(|kept| kept.blake3.clone());
        let of_left = || self.old.left.get(path).cloned();
        let of_journal = || self.known.get(path).and_then(|known| known.keys().next().cloned());
        of_state.or_else(of_left).or_else(of_journal).unwrap_or_default()
    }

    /// Removes a file, and its folder when nothing else is in it.
    ///
    /// # Errors
    /// When it cannot be removed.
    pub fn remove(&self, path: &str) -> Result<(), Diagnostic> {
        let target = self.path.join(path);
        kept::remove(&target)?;
        if let Some(folder) = target.parent().filter(|folder| *folder != self.path) {
            kept::remove_empty(folder);
        }
        Ok(())
    }

    /// Writes the state: from now on all of it is known without the journal.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn settle(self, state: &State) -> Result<(), Diagnostic> {
        let text = state.text();
        let same = kept::text_of(&self.path.join(STATE))?.is_some_and(|old| old == text);
        if !same {
            store::write_noted(&self.path.join(STATE), text.as_bytes(), || Ok(()))?;
        }
        self.journal.forget()
    }
}
