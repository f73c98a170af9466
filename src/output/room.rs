//! The place where a long run works: a folder of its own inside the output folder, with what it has done so far. A run
//! that is cut off leaves it, and the next one goes on from there.

use std::fs::{File, TryLockError};
use std::io::{Read as _, Seek as _, Write as _};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use super::store;
use crate::diag::{Code, Diagnostic};

const JOURNAL: &str = "journal.jsonl";

/// A folder that one process at a time works in. The lock is the system's own: it ends with the process that held it,
/// however that ends.
pub struct Room {
    folder: PathBuf,
    out: PathBuf,
    journal: Mutex<File>,
}

impl Room {
    /// Enters the room of a run, and gives the lines that an earlier one has written there. `again` keeps them for this
    /// run.
    ///
    /// # Errors
    /// When another run is at work there, or the folder cannot be written.
    pub fn enter(out: &Path, name: &str, again: bool) -> Result<(Self, String), Diagnostic> {
        let folder = out.join(format!(".palmleaf-{name}"));
        let fault = |why: &dyn std::fmt::Display| {
            Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be written: {why}", folder.display()))
                .help("give another folder with `--out`")
        };
        let mut file = loop {
            std::fs::create_dir_all(&folder).map_err(|why| fault(&why))?;
            let path = folder.join(JOURNAL);
            let file = File::options().create(true).read(true).append(true).open(&path).map_err(|why| fault(&why))?;
            match file.try_lock() {
                Ok(()) => {}
                Err(TryLockError::WouldBlock) => {
                    let message = format!("another run is at work in {}", out.display());
                    return Err(Diagnostic::outside(Code::BATCH_BUSY, message)
                        .help("wait until it has ended, or give another folder with `--out`"));
                }
                Err(TryLockError::Error(why)) => return Err(fault(&why)),
            }
            // A run that ended just now has taken its room away, and with it the file that was locked here.
            if path.exists() {
                break file;
            }
        };
        private(&folder);
        let mut text = Vec::new();
        file.read_to_end(&mut text).map_err(|why| fault(&why))?;
        // What a process that was cut off has left half written.
        for entry in std::fs::read_dir(&folder).map_err(|why| fault(&why))?.flatten() {
            if entry.file_name().to_string_lossy().ends_with(".part") {
                std::fs::remove_file(entry.path()).map_err(|why| fault(&why))?;
            }
        }
        let mut text = String::from_utf8_lossy(&text).into_owned();
        let whole = text.rfind('\n').map_or(0, |at| at + 1);
        text.truncate(whole);
        // A last line that was cut off goes, so that the next one begins a line.
        file.set_len(if again { whole as u64 } else { 0 }).and_then(|()| file.rewind()).map_err(|why| fault(&why))?;
        if !again {
            text.clear();
        }
        Ok((Self { folder, out: out.to_owned(), journal: Mutex::new(file) }, text))
    }

    /// Writes a set of files into the output folder, each whole.
    ///
    /// # Errors
    /// As [`store::write_all`].
    pub fn write_all(&self, files: &[(String, Vec<u8>)]) -> Result<Vec<PathBuf>, Diagnostic> {
        store::write_through(&self.folder, &self.out, files)
    }

    /// Notes what has been done, in one line.
    ///
    /// # Errors
    /// When the disk is full or gone.
    pub fn note(&self, line: &str) -> Result<(), Diagnostic> {
        let mut journal = self.journal.lock().unwrap_or_else(PoisonError::into_inner);
        journal.write_all(format!("{line}\n").as_bytes()).map_err(|why| {
            Diagnostic::outside(
                Code::OUTPUT_UNWRITABLE,
                format!("{} cannot be written: {why}", self.folder.join(JOURNAL).display()),
            )
            .help("make room on the disk, then go on with `--resume`")
        })
    }

    /// Leaves the room for good: everything is done.
    pub fn leave(self) {
        let _stays = std::fs::remove_dir_all(&self.folder);
    }
}

#[cfg(unix)]
fn private(folder: &Path) {
    use std::os::unix::fs::PermissionsExt;
    // Half written papers are nobody else's business.
    let _unchanged = std::fs::set_permissions(folder, std::fs::Permissions::from_mode(0o700));
}

#[cfg(not(unix))]
fn private(_: &Path) {}
