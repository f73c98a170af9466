//! A folder that the program keeps: what lies in it, what was written before a run was cut off, and who is at work.

use std::fs::{self, File};
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use serde::{Deserialize, Serialize};

use crate::diag::{Code, Diagnostic};

/// Where a run writes down what it is about to write.
const JOURNAL: &str = ".palmleaf-journal";
/// Held by the run that is at work in the folder.
const LOCK: &str = ".palmleaf-lock";
/// The most that a text file of the program's own may have, bytes.
const MOST: u64 = 256 * 1024 * 1024;

/// A file that a run has written, or was about to when it was cut off.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Noted {
    pub path: String,
    /// A hash of everything that it was made from.
    pub key: String,
    /// BLAKE3 of its bytes.
    pub blake3: String,
}

fn fault(what: &Path, done: &str, why: &dyn std::fmt::Display) -> Diagnostic {
    Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be {done}: {why}", what.display()))
        .help("look at the folder's permissions and the room on the disk; finished files stayed as they were")
}

/// The hash of a file; nothing where there is none.
///
/// # Errors
/// When it is there and cannot be read.
pub fn hash_of(path: &Path) -> Result<Option<String>, Diagnostic> {
    let mut hash = blake3::Hasher::new();
    match File::open(path).and_then(|file| hash.update_reader(file).map(|_| ())) {
        Ok(()) => Ok(Some(hash.finalize().to_hex().to_string())),
        Err(why) if why.kind() == std::io::ErrorKind::NotFound => Ok(None),
        Err(why) => {
            let message = format!("{} cannot be read: {why}", path.display());
            Err(Diagnostic::outside(Code::FILE_UNREADABLE, message).help("move it away, or let it be read"))
        }
    }
}

/// The text of a file of the program's own; nothing where there is none.
///
/// # Errors
/// When it is there and cannot be read, or is too large to be one.
pub fn text_of(path: &Path) -> Result<Option<String>, Diagnostic> {
    let large = fs::metadata(path).is_ok_and(|meta| meta.len() > MOST);
    let read = if large { Err(std::io::Error::other("it is too large")) } else { fs::read_to_string(path) };
    match read {
        Ok(text) => Ok(Some(text)),
        Err(why) if why.kind() == std::io::ErrorKind::NotFound => Ok(None),
        Err(why) => {
            let message = format!("{} cannot be read: {why}", path.display());
            Err(Diagnostic::outside(Code::FILE_UNREADABLE, message).help("delete it, or let it be read"))
        }
    }
}

/// Removes a file that is no longer wanted. One that has gone by itself is as good.
///
/// # Errors
/// When it cannot be removed.
pub fn remove(path: &Path) -> Result<(), Diagnostic> {
    match fs::remove_file(path) {
        Err(why) if why.kind() != std::io::ErrorKind::NotFound => Err(fault(path, "removed", &why)),
        _ => Ok(()),
    }
}

/// Removes a folder if nothing is left in it.
pub fn remove_empty(folder: &Path) {
    let _something_is_left = fs::remove_dir(folder);
}

/// Removes what runs that were cut off have left half written. Only who holds the lock may do this.
pub fn sweep(folder: &Path) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        if name.starts_with(".palmleaf-") && name.ends_with(".part") {
            let _gone = fs::remove_file(entry.path());
        }
    }
}

/// Whether a folder, where it is there, really lies in another one, whatever links lead to it.
pub fn lies_in(folder: &Path, within: &Path) -> bool {
    match (folder.canonicalize(), within.canonicalize()) {
        (Ok(folder), Ok(within)) => folder.starts_with(within),
        (Err(why), _) => why.kind() == std::io::ErrorKind::NotFound,
        (Ok(_), Err(_)) => false,
    }
}

/// A hash of the running program.
pub fn program() -> String {
    let path = std::env::current_exe().ok();
    path.and_then(|path| hash_of(&path).ok().flatten()).unwrap_or_else(|| env!("CARGO_PKG_VERSION").to_owned())
}

/// What is about to be written is written down first, so that a run that was cut off is known by the next one.
pub struct Journal {
    path: PathBuf,
    file: Mutex<Option<File>>,
}

impl Journal {
    /// The journal of a folder, and what a run that was cut off wrote down. A line that was cut short counts for
    /// nothing: what it was about was not written.
    ///
    /// # Errors
    /// When it is there and cannot be read.
    pub fn of(folder: &Path) -> Result<(Self, Vec<Noted>), Diagnostic> {
        let path = folder.join(JOURNAL);
        let text = text_of(&path)?.unwrap_or_default();
        let noted = text.lines().filter_map(|line| serde_json::from_str(line).ok()).collect();
        Ok((Self { path, file: Mutex::new(None) }, noted))
    }

    /// Writes down that a file is about to be written.
    ///
    /// # Errors
    /// When it cannot be written down.
    pub fn note(&self, noted: &Noted) -> std::io::Result<()> {
        let line = serde_json::to_string(noted).map_err(std::io::Error::other)?;
        let mut open = self.file.lock().unwrap_or_else(PoisonError::into_inner);
        if open.is_none() {
            if let Some(folder) = self.path.parent() {
                fs::create_dir_all(folder)?;
            }
            *open = Some(File::options().create(true).append(true).open(&self.path)?);
        }
        let Some(file) = open.as_mut() else { return Ok(()) };
        // A line of a run that was cut off may lack its end.
        file.write_all(format!("\n{line}\n").as_bytes())?;
        file.sync_data()
    }

    /// Forgets it: everything is in the state file.
    ///
    /// # Errors
    /// When it cannot be removed.
    pub fn forget(self) -> Result<(), Diagnostic> {
        remove(&self.path)
    }
}

/// Held while a run is at work in a folder; a run that died holds nothing.
pub struct Lock(#[expect(dead_code, reason = "it is held until it is closed")] File);

impl Lock {
    /// Takes the lock of a folder, or nothing when another run holds it.
    ///
    /// # Errors
    /// When the folder cannot be made, or no file in it.
    pub fn take(folder: &Path) -> Result<Option<Self>, Diagnostic> {
        let path = folder.join(LOCK);
        let open = fs::create_dir_all(folder)
            .and_then(|()| File::options().create(true).truncate(false).write(true).open(&path));
        let file = open.map_err(|why| fault(&path, "written", &why))?;
        match file.try_lock() {
            Ok(()) => Ok(Some(Self(file))),
            Err(fs::TryLockError::WouldBlock) => Ok(None),
            // A file system without locks is no reason to refuse; two runs at once are then the clinic's to avoid.
            Err(fs::TryLockError::Error(why)) if why.kind() == std::io::ErrorKind::Unsupported => Ok(Some(Self(file))),
            Err(fs::TryLockError::Error(why)) => Err(fault(&path, "locked", &why)),
        }
    }
}
