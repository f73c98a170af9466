//! The only place that writes files: whole, or not at all.

use std::io::Write;
use std::path::{Path, PathBuf};

use tempfile::{Builder, NamedTempFile};

use crate::diag::{Code, Diagnostic};

/// A file written in full under a temporary name in its own folder.
struct Pending {
    temporary: NamedTempFile,
    target: PathBuf,
}

/// Writes a set of files into a folder. Each is written in full under a temporary name first; only when all are on disk
/// do they take their names, so an existing file is replaced by a finished one and no half file is ever seen.
///
/// # Errors
/// When the folder cannot be made or written, or the disk is full; then nothing of the set is left behind.
pub fn write_all(folder: &Path, files: &[(String, Vec<u8>)]) -> Result<Vec<PathBuf>, Diagnostic> {
    let fault = |what: &Path, why: &dyn std::fmt::Display| {
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be written: {why}", what.display()))
            .help("give another folder with `--out`; nothing of this case was written")
    };
    std::fs::create_dir_all(folder).map_err(|why| fault(folder, &why))?;
    let mut pending = Vec::new();
    for (name, bytes) in files {
        let target = folder.join(name);
        pending.push(prepare(folder, target.clone(), bytes).map_err(|why| fault(&target, &why))?);
    }
    let mut written = Vec::new();
    for file in pending {
        let target = file.target;
        file.temporary.persist(&target).map_err(|why| fault(&target, &why.error))?;
        written.push(target);
    }
    sync(folder);
    Ok(written)
}

/// Writes one file by its path, as [`write_all`] does.
///
/// # Errors
/// When the path names no file, or as [`write_all`].
pub fn write_one(path: &Path, bytes: Vec<u8>) -> Result<PathBuf, Diagnostic> {
    let Some(name) = path.file_name() else {
        let message = format!("{} names no file", path.display());
        return Err(Diagnostic::outside(Code::OUTPUT_UNWRITABLE, message).help("give the name of a file"));
    };
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let name = name.to_string_lossy().into_owned();
    let written = folder.join(&name);
    write_all(folder, &[(name, bytes)])?;
    Ok(written)
}

/// Writes one file as [`write_all`] does, and calls `note` when it is on disk in full and about to take its name.
///
/// # Errors
/// As [`write_all`], or what `note` says.
pub fn write_noted(path: &Path, bytes: &[u8], note: impl FnOnce() -> std::io::Result<()>) -> Result<(), Diagnostic> {
    let fault = |why: &dyn std::fmt::Display| {
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be written: {why}", path.display()))
            .help("look at the folder's permissions and the room on the disk; finished files stayed as they were")
    };
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    std::fs::create_dir_all(folder).map_err(|why| fault(&why))?;
    let pending = prepare(folder, path.to_path_buf(), bytes).map_err(|why| fault(&why))?;
    note().map_err(|why| fault(&why))?;
    pending.temporary.persist(path).map_err(|why| fault(&why.error))?;
    sync(folder);
    Ok(())
}

fn prepare(folder: &Path, target: PathBuf, bytes: &[u8]) -> std::io::Result<Pending> {
    let mut builder = Builder::new();
    builder.prefix(".palmleaf-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // What the person's umask allows, so that colleagues can read a shared folder.
        builder.permissions(std::fs::Permissions::from_mode(0o666));
    }
    let mut temporary = builder.tempfile_in(folder)?;
    temporary.write_all(bytes)?;
    temporary.as_file().sync_all()?;
    Ok(Pending { temporary, target })
}

/// Makes the new names durable where the system can; a file system that cannot is no reason to fail.
fn sync(folder: &Path) {
    if let Ok(open) = std::fs::File::open(folder) {
        drop(open.sync_all());
    }
}
