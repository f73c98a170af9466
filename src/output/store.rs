//! The only place that writes files: whole, or not at all.

use std::collections::BTreeMap;
use std::fs::{self, File, Permissions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use tempfile::{Builder, NamedTempFile};

use crate::diag::{Code, Diagnostic};

/// A file that is not finished is called `.palmleaf-XXXXXX.part`: no word of the case is in that name.
pub(super) const PREFIX: &str = ".palmleaf-";
pub(super) const SUFFIX: &str = ".part";

/// Folders that this run has written to, with who may read a finished file there.
static SETTLED: Mutex<BTreeMap<PathBuf, Option<Permissions>>> = Mutex::new(BTreeMap::new());

/// A file written in full under a temporary name in its own folder.
struct Pending {
    temporary: NamedTempFile,
    target: PathBuf,
}

/// Writes a set of files into a folder. Each is written in full under a temporary name first; only when all are on disk
/// do they take their names, so an existing file is replaced by a finished one and no half file is ever seen. Until
/// then nobody else on the machine can read them.
///
/// # Errors
/// When the folder cannot be made or written, or the disk is full; then nothing of the set is left behind. When a name
/// is lost between two files of the set, those that have theirs stay, and the error names them.
pub fn write_all(folder: &Path, files: &[(String, Vec<u8>)]) -> Result<Vec<PathBuf>, Diagnostic> {
    write_through(folder, folder, files)
}

/// The same with the temporary names in another folder of the same disk.
///
/// # Errors
/// As [`write_all`].
pub fn write_through(room: &Path, folder: &Path, files: &[(String, Vec<u8>)]) -> Result<Vec<PathBuf>, Diagnostic> {
    fs::create_dir_all(folder).map_err(|why| unwritable(folder, &why))?;
    let allowed = settle(folder).map_err(|why| unwritable(folder, &why))?;
    let mut pending = Vec::new();
    for (name, bytes) in files {
        let target = folder.join(name);
        if target.is_dir() {
            return Err(unwritable(&target, &"it is a folder"));
        }
        pending.push(prepare(room, target.clone(), bytes).map_err(|why| unwritable(&target, &why))?);
    }
    let mut written: Vec<PathBuf> = Vec::new();
    for file in pending {
        let target = file.target.clone();
        if let Err(why) = finish(file, allowed.as_ref()) {
            let fault = unwritable(&target, &why);
            return Err(match written.is_empty() {
                true => fault,
                false => fault.help(format!("build this case again; of its files only these were written: {}", listed(&written))),
            });
        }
        written.push(target);
    }
    sync(folder);
    Ok(written)
}

fn listed(files: &[PathBuf]) -> String {
    files.iter().map(|file| file.display().to_string()).collect::<Vec<_>>().join(", ")
}

/// Writes one file by its path, as [`write_all`] does.
///
/// # Errors
/// When the path names no file, or as [`write_all`].
pub fn write_one(path: &Path, bytes: Vec<u8>) -> Result<PathBuf, Diagnostic> {
    let name = file_name(path)?;
    let folder = folder_of(path);
    let written = folder.join(&name);
    write_all(folder, &[(name, bytes)])?;
    Ok(written)
}

/// Writes one file as [`write_all`] does, and calls `note` when it is on disk in full and about to take its name.
///
/// # Errors
/// As [`write_all`], or what `note` says.
pub fn write_noted(path: &Path, bytes: &[u8], note: impl FnOnce() -> io::Result<()>) -> Result<(), Diagnostic> {
    let fault = |why: &dyn std::fmt::Display| {
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be written: {why}", path.display()))
            .help("look at the folder's permissions and the room on the disk; finished files stayed as they were")
    };
    let folder = folder_of(path);
    fs::create_dir_all(folder).map_err(|why| fault(&why))?;
    let allowed = settle(folder).map_err(|why| fault(&why))?;
    let pending = prepare(folder, path.to_path_buf(), bytes).map_err(|why| fault(&why))?;
    note().map_err(|why| fault(&why))?;
    finish(pending, allowed.as_ref()).map_err(|why| fault(&why))?;
    sync(folder);
    Ok(())
}

/// The folder that a path lies in.
pub(super) fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

pub(super) fn file_name(path: &Path) -> Result<String, Diagnostic> {
    path.file_name().map(|name| name.to_string_lossy().into_owned()).ok_or_else(|| {
        let message = format!("{} names no file", path.display());
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, message).help("give the name of a file")
    })
}

pub(super) fn unwritable(what: &Path, why: &dyn std::fmt::Display) -> Diagnostic {
    Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be written: {why}", what.display()))
        .help("give another folder with `--out`; nothing of this case was written")
}

/// Once a run for each folder: clears what a run that was cut off has left, and learns who may read a finished file.
pub(super) fn settle(folder: &Path) -> io::Result<Option<Permissions>> {
    let mut settled = SETTLED.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(allowed) = settled.get(folder) {
        return Ok(allowed.clone());
    }
    sweep(folder);
    let allowed = usual(folder)?;
    settled.insert(folder.to_path_buf(), allowed.clone());
    Ok(allowed)
}

/// Removes unfinished files of runs that are no more. One that is still at work holds its own locked; where the file
/// system knows no locks nothing is removed.
fn sweep(folder: &Path) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let name = name.to_string_lossy();
        let ours = name.starts_with(PREFIX)
            && name.ends_with(SUFFIX)
            && entry.file_type().is_ok_and(|kind| kind.is_file());
        if ours && File::open(entry.path()).is_ok_and(|file| file.try_lock().is_ok()) {
            let _gone = fs::remove_file(entry.path());
        }
    }
}

/// What the person's umask and the folder give a new file, so that colleagues can read a shared folder: learned from an
/// empty one. Nothing where the system has no such thing.
fn usual(folder: &Path) -> io::Result<Option<Permissions>> {
    let mut builder = Builder::new();
    builder.prefix(PREFIX).suffix(SUFFIX);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        builder.permissions(Permissions::from_mode(0o666));
        let empty = builder.tempfile_in(folder)?;
        Ok(Some(empty.as_file().metadata()?.permissions()))
    }
    #[cfg(not(unix))]
    builder.tempfile_in(folder).map(|_| None)
}

/// An unfinished file that only its owner can read, locked as long as this run is at work.
fn open(folder: &Path) -> io::Result<NamedTempFile> {
    loop {
        let temporary = Builder::new().prefix(PREFIX).suffix(SUFFIX).tempfile_in(folder)?;
        // No lock is no fault: then nobody clears away either.
        let _unlocked = temporary.as_file().lock();
        // Another run may have taken it for a leftover before it was locked.
        if temporary.path().exists() {
            return Ok(temporary);
        }
    }
}

fn prepare(folder: &Path, target: PathBuf, bytes: &[u8]) -> io::Result<Pending> {
    let mut temporary = open(folder)?;
    temporary.write_all(bytes)?;
    temporary.as_file().sync_all()?;
    Ok(Pending { temporary, target })
}

/// Gives a file its name, and others the right to read it that they have to any file there.
fn finish(file: Pending, allowed: Option<&Permissions>) -> io::Result<()> {
    if let Some(allowed) = allowed {
        // A mount that knows no such rights keeps its own.
        let _own = file.temporary.as_file().set_permissions(allowed.clone());
    }
    file.temporary.persist(&file.target).map_err(|why| why.error)?;
    Ok(())
}

/// Makes the new names durable where the system can; a file system that cannot is no reason to fail.
fn sync(folder: &Path) {
    if let Ok(open) = File::open(folder) {
        drop(open.sync_all());
    }
}
