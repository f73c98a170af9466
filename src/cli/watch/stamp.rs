//! What files look like from outside: enough to see that one was saved, without reading it.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use jiff::Timestamp;

/// A file as it stands.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Stamp {
    bytes: u64,
    saved: Option<Timestamp>,
    /// Which file has the name: an editor that saves by renaming puts another one in its place.
    number: u64,
}

/// The files that are watched, each with its stamp; none for one that is not there.
#[derive(Clone, Default, PartialEq, Eq, Debug)]
pub struct Stamps(BTreeMap<PathBuf, Option<Stamp>>);

impl Stamps {
    /// Looks at the files, and at all that lie below the folders.
    pub fn of<'p>(files: impl IntoIterator<Item = &'p Path>, folders: &[&Path]) -> Self {
        let mut all: BTreeMap<PathBuf, Option<Stamp>> =
            files.into_iter().map(|file| (file.to_path_buf(), stamp(file))).collect();
        let mut pending: Vec<PathBuf> = folders.iter().map(|folder| folder.to_path_buf()).collect();
        while let Some(folder) = pending.pop() {
            // A folder that cannot be read is told when its files are wanted.
            for entry in folder.read_dir().into_iter().flatten().flatten() {
                let path = entry.path();
                if entry.file_name().to_string_lossy().starts_with('.') {
                    continue;
                }
                match entry.file_type() {
                    Ok(kind) if kind.is_dir() => pending.push(path),
                    _ => drop(all.insert(path.clone(), stamp(&path))),
                }
            }
        }
        Self(all)
    }

    /// The files that are not as they were, those that came and those that went.
    pub fn changed<'s>(&'s self, before: &'s Self) -> BTreeSet<&'s Path> {
        let names: BTreeSet<&PathBuf> = self.0.keys().chain(before.0.keys()).collect();
        let changed = names.into_iter().filter(|name| self.get(name) != before.get(name));
        changed.map(PathBuf::as_path).collect()
    }

    /// Whether a file is not there, or holds nothing: between two steps of a save it may be either.
    pub fn is_open(&self, file: &Path) -> bool {
        self.get(file).is_none_or(|stamp| stamp.bytes == 0)
    }

    fn get(&self, file: &Path) -> Option<&Stamp> {
        self.0.get(file).and_then(Option::as_ref)
    }
}

fn stamp(file: &Path) -> Option<Stamp> {
    let meta = file.metadata().ok().filter(std::fs::Metadata::is_file)?;
    let saved = meta.modified().ok().and_then(|saved| Timestamp::try_from(saved).ok());
    #[cfg(unix)]
    let number = std::os::unix::fs::MetadataExt::ino(&meta);
    #[cfg(not(unix))]
    let number = 0;
    Some(Stamp { bytes: meta.len(), saved, number })
}
