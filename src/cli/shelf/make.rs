//! From the items of a shelf to its files: what each says, which of them have to be made, and what changed.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::atomic::{AtomicBool, Ordering};

use indicatif::ProgressBar;
use rayon::prelude::*;
use serde_json::json;

use super::described::{self, Described};
use super::folder::{Folder, Found};
use super::order::{Order, SheetOf, orders};
use crate::case::Paper;
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic, Findings};
use crate::language::Language;
use crate::output::kept;
use crate::pipeline::Workshop;
use crate::shelf::catalogue::{self, Catalogue, Entry, ShownFile, ShownItem};
use crate::shelf::changes::Changes;
use crate::shelf::state::{ItemState, Kept, State};
use crate::shelf::{Clerk, Item, Loaded, page};
use crate::words::Said;
use crate::words::lint::FIRST;

/// Files of the shelf as a whole.
const CATALOGUE: &str = "catalogue.html";
const CHANGES_PAGE: &str = "changes.pdf";
const CHANGES_DATA: &str = "changes.json";

/// A shelf with everything that it is made from.
pub struct Shelf<'s> {
    pub workshop: &'s Workshop,
    pub loaded: &'s Loaded,
    pub items: &'s [Item],
    pub languages: &'s [Language],
    /// A hash of all that went in.
    pub stamp: String,
}

/// An order with what it says.
struct Read<'s> {
    order: Order<'s>,
    key: String,
    title: String,
    said: Said,
}

/// What a run did, or would do.
#[derive(Default)]
pub struct Outcome {
    pub made: Vec<String>,
    pub kept: usize,
    pub removed: Vec<String>,
    pub changes: Changes,
    /// The changes in words.
    pub lines: Vec<String>,
    pub findings: Findings,
}

impl<'s> Shelf<'s> {
    fn papers(&self) -> Vec<Paper> {
        let file = &self.loaded.file;
        if file.paper.is_empty() { vec![Paper::A4] } else { file.paper.clone() }
    }

    fn sizes(&self) -> Vec<PrintSize> {
        let file = &self.loaded.file;
        if file.print.is_empty() { vec![PrintSize::Standard] } else { file.print.clone() }
    }

    /// Works out what every file says. Nothing is set and nothing is written.
    fn read(&self, findings: &mut Findings) -> Result<Vec<Read<'s>>, Findings> {
        let engine = self.workshop.typesetter.engine();
        let all = orders(self.workshop, self.items, self.languages, (&self.sizes(), &self.papers()))?;
        let one = |order: Order<'s>| -> Result<Result<Read<'s>, Diagnostic>, Findings> {
            let Some(tree) = order.tree(self.workshop, false)? else { return Ok(Err(order.nothing())) };
            let key = tree.key(&engine);
            Ok(Ok(Read { key, title: tree.title().to_owned(), said: tree.said().clone(), order }))
        };
        let read: Vec<Result<Result<Read<'s>, Diagnostic>, Findings>> = all.into_par_iter().map(one).collect();
        let (mut good, mut faults) = (Vec::new(), Findings::default());
        for one in read {
            match one {
                Ok(Ok(one)) => good.push(one),
                Ok(Err(nothing)) => findings.push(nothing),
                Err(more) => faults.extend(more),
            }
        }
        if faults.has_errors() { Err(faults) } else { Ok(good) }
    }

    fn describe(&self) -> Result<Vec<Described>, Findings> {
        let mut faults = Findings::default();
        let mut described = Vec::new();
        for item in self.items {
            match described::describe(self.workshop, item, self.languages) {
                Ok(one) => described.push(one),
                Err(more) => faults.extend(more),
            }
        }
        if faults.has_errors() {
            return Err(faults);
        }
        described::relate(self.items, &mut described);
        Ok(described)
    }

    /// What would be made and removed. Nothing is written.
    ///
    /// # Errors
    /// The faults of the items, or files that cannot be read.
    pub fn check(&self, folder: &Folder) -> Result<Outcome, Findings> {
        let mut outcome = Outcome::default();
        let read = self.read(&mut outcome.findings)?;
        let found = read.par_iter().map(|one| folder.found(&one.order.path, &one.key));
        let found = found.collect::<Result<Vec<Found>, Diagnostic>>()?;
        for (one, found) in read.iter().zip(found) {
            match found {
                Found::Good { .. } => outcome.kept += 1,
                Found::Make => outcome.made.push(one.order.path.clone()),
                Found::Foreign => outcome.findings.push(folder.refused(&one.order.path, "overwritten")),
            }
        }
        for path in [CATALOGUE, CHANGES_DATA, CHANGES_PAGE] {
            let known = folder.old.files.get(path).map(|kept| &kept.blake3);
            match (known, kept::hash_of(&folder.path.join(path))?) {
                (Some(made), Some(there)) if *made == there => {}
                (_, Some(_)) => outcome.findings.push(folder.refused(path, "overwritten")),
                (_, None) => outcome.made.push(path.to_owned()),
            }
        }
        let (remove, changed) = folder.stale(&wanted(&read))?;
        outcome.removed = remove;
        changed.iter().for_each(|path| outcome.findings.push(folder.refused(path, "removed")));
        let new = self.state(&read, &self.describe()?, BTreeMap::new());
        let clerk = self.clerk()?;
        let files = read.iter().map(|one| (one.order.path.clone(), kept_of(one, String::new())));
        let new = State { files: files.collect(), ..new };
        outcome.changes = Changes::between(&folder.old, &new);
        outcome.lines = clerk.lines(&outcome.changes)?;
        Ok(outcome)
    }

    /// Makes what has to be made, removes what is stale, and writes catalogue, changes and state.
    ///
    /// # Errors
    /// The faults of the items before anything is written; or the first file that cannot be made or written: what was
    /// finished stays, and the next run goes on from there.
    pub fn build(&self, folder: Folder, bar: &ProgressBar) -> Result<Outcome, Findings> {
        let mut outcome = Outcome::default();
        let read = self.read(&mut outcome.findings)?;
        let mut described = self.describe()?;
        self.sweep(&folder);
        bar.set_length(read.len() as u64);
        let mut files: BTreeMap<String, Kept> = BTreeMap::new();
        for (one, result) in read.iter().zip(self.files(&folder, &read, bar)) {
            let path = &one.order.path;
            match result {
                Ok((blake3, fresh)) => {
                    files.insert(path.clone(), kept_of(one, blake3));
                    if fresh {
                        outcome.made.push(path.clone());
                    } else {
                        outcome.kept += 1;
                    }
                }
                Err(faults) if faults.codes() == [Code::SHELF_CHANGED.name()] => {
                    outcome.findings.extend(faults);
                    files.extend(folder.old.files.get(path).map(|kept| (path.clone(), kept.clone())));
                }
                Err(faults) => return Err(faults),
            }
        }
        let (remove, changed) = folder.stale(&wanted(&read))?;
        for path in &remove {
            folder.remove(path)?;
        }
        outcome.removed = remove;
        let mut new = self.state(&read, &described, files);
        for path in changed {
            outcome.findings.push(folder.refused(&path, "removed"));
            new.left.insert(path.clone(), folder.made(&path));
        }
        outcome.changes = Changes::between(&folder.old, &new);
        let clerk = self.clerk()?;
        outcome.lines = clerk.lines(&outcome.changes)?;
        let conditions = described::conditions(self.workshop, &described);
        let page = self.catalogue(&clerk, &read, &mut described, &conditions)?;
        self.own(&folder, &mut new, &mut outcome.findings, CATALOGUE, page.as_bytes())?;
        self.changes(&folder, &clerk, &mut new, &mut outcome)?;
        if outcome.findings.has_errors() {
            new.stamp = String::new();
        }
        folder.settle(&new)?;
        Ok(outcome)
    }

    /// Removes half-written files of a run that was cut off.
    fn sweep(&self, folder: &Folder) {
        kept::sweep(&folder.path);
        self.languages.iter().for_each(|language| kept::sweep(&folder.path.join(language.tag.as_str())));
    }

    /// Makes every file that is not there as it should be; each with its hash and whether it was made now.
    fn files(&self, folder: &Folder, read: &[Read<'_>], bar: &ProgressBar) -> Vec<Result<(String, bool), Findings>> {
        let stop = AtomicBool::new(false);
        let one = |one: &Read<'_>| {
            let path = &one.order.path;
            let made = (|| {
                if let Found::Good { blake3 } = folder.found(path, &one.key)? {
                    return Ok((blake3, false));
                }
                if stop.load(Ordering::Relaxed) {
                    return Ok((String::new(), false));
                }
                // Said once more: to keep what all of them say would fill memory.
                let Some(tree) = one.order.tree(self.workshop, true)? else { return Ok((String::new(), false)) };
                let bytes = tree.bytes(self.workshop)?;
                Ok((folder.write(path, &one.key, &bytes)?, true))
            })();
            bar.inc(1);
            // A file of somebody else's is told and left; a disk that is full ends the run.
            if let Err(faults) = &made
                && Findings::codes(faults) != [Code::SHELF_CHANGED.name()]
            {
                stop.store(true, Ordering::Relaxed);
            }
            made
        };
        read.par_iter().map(one).collect()
    }

    /// The state after this run, without the files of the shelf as a whole.
    fn state(&self, read: &[Read<'_>], described: &[Described], files: BTreeMap<String, Kept>) -> State {
        let mut words: BTreeMap<String, BTreeMap<String, String>> = BTreeMap::new();
        for one in read {
            let entry = &one.order.language.entry;
            let Some(catalogue) = self.workshop.words.catalogue(entry.tag.as_str()) else { continue };
            let of_language = words.entry(one.order.language.tag.to_string()).or_default();
            for id in one.said.messages.keys() {
                if !of_language.contains_key(id)
                    && let Some(hash) = catalogue.hash(id)
                {
                    of_language.insert(id.clone(), hash);
                }
            }
        }
        let mut items: BTreeMap<String, ItemState> = BTreeMap::new();
        for (item, one) in self.items.iter().zip(described) {
            let state = items.entry(item.name.to_string()).or_default();
            state.title.clone_from(&one.title);
            state.facts.extend(one.facts.clone());
        }
        State {
            palmleaf: env!("CARGO_PKG_VERSION").to_owned(),
            stamp: self.stamp.clone(),
            clinic: self.workshop.clinic().map(|clinic| clinic.hash.clone()).unwrap_or_default(),
            files,
            left: BTreeMap::new(),
            items,
            words,
        }
    }

    /// Writes a file of the shelf as a whole.
    fn own(
        &self,
        folder: &Folder,
        new: &mut State,
        findings: &mut Findings,
        path: &str,
        bytes: &[u8],
    ) -> Result<(), Findings> {
        let key = blake3::hash(bytes).to_hex().to_string();
        match folder.write(path, &key, bytes) {
            Ok(blake3) => {
                let kept = Kept { item: String::new(), language: String::new(), key, blake3 };
                new.files.insert(path.to_owned(), kept);
            }
            Err(fault) if fault.code == Code::SHELF_CHANGED => {
                findings.push(fault);
                new.files.extend(folder.old.files.get(path).map(|kept| (path.to_owned(), kept.clone())));
            }
            Err(fault) => return Err(fault.into()),
        }
        Ok(())
    }

    /// The page and the data of what changed. They tell of the last run that changed something.
    fn changes(
        &self,
        folder: &Folder,
        clerk: &Clerk<'_>,
        new: &mut State,
        outcome: &mut Outcome,
    ) -> Result<(), Findings> {
        let both = [CHANGES_DATA, CHANGES_PAGE];
        let there = |path: &&str| folder.path.join(path).is_file() && folder.old.files.contains_key(*path);
        if outcome.changes.is_empty() && both.iter().all(there) {
            for path in both {
                let found = kept::hash_of(&folder.path.join(path))?;
                let Some(kept) = folder.old.files.get(path) else { continue };
                if found.as_ref() != Some(&kept.blake3) {
                    outcome.findings.push(folder.refused(path, "overwritten"));
                }
                new.files.insert(path.to_owned(), kept.clone());
            }
            return Ok(());
        }
        let title = self.loaded.file.title.as_str();
        let data = json!({"shelf": title, "lines": outcome.lines, "changes": outcome.changes});
        let data = serde_json::to_string_pretty(&data).unwrap_or_default() + "\n";
        self.own(folder, new, &mut outcome.findings, CHANGES_DATA, data.as_bytes())?;
        let clinic = self.workshop.clinic().and_then(|clinic| clinic.name());
        let paper = self.papers().first().copied().unwrap_or(Paper::A4);
        let tree = page(clerk, &outcome.changes, (title, clinic), new.items.len(), paper)?;
        let pdf = self.workshop.typesetter.set_record(&tree)?.undated_pdf()?;
        self.own(folder, new, &mut outcome.findings, CHANGES_PAGE, &pdf)
    }

    fn clerk(&self) -> Result<Clerk<'s>, Findings> {
        let none = || Diagnostic::outside(Code::WORDS_MISSING, format!("there are no words for `{FIRST}`"));
        let entry = self.workshop.languages.iter().find(|entry| entry.tag.as_str() == FIRST).ok_or_else(none)?;
        let language = self.workshop.languages.find(&entry.tag).ok_or_else(none)?;
        Ok(Clerk { speaker: self.workshop.words.speaker(&language)?, entry })
    }

    fn catalogue(
        &self,
        clerk: &Clerk<'_>,
        read: &[Read<'_>],
        described: &mut [Described],
        conditions: &[(String, String)],
    ) -> Result<String, Findings> {
        let mut shown: Vec<ShownItem> = Vec::new();
        for (item, one) in self.items.iter().zip(described) {
            let mut entries: Vec<Entry> = Vec::new();
            let mut last: Option<(SheetOf, &Language)> = None;
            for own in read.iter().filter(|own| std::ptr::eq(own.order.item, item)) {
                let order = &own.order;
                let file = ShownFile {
                    path: order.path.clone(),
                    pages: order.has_pages().then_some((order.print, order.paper)),
                };
                if last == Some((order.sheet, order.language))
                    && let Some(entry) = entries.last_mut()
                {
                    entry.files.push(file);
                    continue;
                }
                last = Some((order.sheet, order.language));
                entries.push(Entry {
                    sheet: order.sheet.word(),
                    language: order.language.entry.clone(),
                    title: own.title.clone(),
                    state: own.said.state(),
                    files: vec![file],
                });
            }
            shown.push(ShownItem {
                name: item.name.clone(),
                title: one.title.clone(),
                names: std::mem::take(&mut one.names),
                conditions: one.conditions.clone(),
                review: self.loaded.review(&item.name).cloned(),
                standing: one.standing,
                entries,
            });
        }
        shown.sort_by(|one, other| (one.name.kind, &one.title).cmp(&(other.name.kind, &other.title)));
        let catalogue = Catalogue {
            title: self.loaded.file.title.as_str(),
            clinic: self.workshop.clinic(),
            items: &shown,
            conditions,
            review_every: self.loaded.file.review_every,
        };
        Ok(catalogue::page(clerk, &catalogue)?)
    }
}

fn kept_of(one: &Read<'_>, blake3: String) -> Kept {
    Kept {
        item: one.order.item.name.to_string(),
        language: one.order.language.tag.to_string(),
        key: one.key.clone(),
        blake3,
    }
}

/// The paths of all files that are to be there.
fn wanted<'r>(read: &'r [Read<'_>]) -> BTreeSet<&'r str> {
    let own = [CATALOGUE, CHANGES_DATA, CHANGES_PAGE];
    read.iter().map(|one| one.order.path.as_str()).chain(own).collect()
}
