//! The only place that writes files: whole, or not at all.

use std::fs::File;
use std::io::{BufWriter, Write};
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
    write_through(folder, folder, files)
}

/// The same with the temporary names in another folder of the same disk.
///
/// # Errors
/// As [`write_all`].
pub fn write_through(room: &Path, folder: &Path, files: &[(String, Vec<u8>)]) -> Result<Vec<PathBuf>, Diagnostic> {
    std::fs::create_dir_all(folder).map_err(|why| unwritable(folder, &why))?;
    let mut pending = Vec::new();
    for (name, bytes) in files {
        let target = folder.join(name);
        pending.push(prepare(room, target.clone(), bytes).map_err(|why| unwritable(&target, &why))?);
    }
    let mut written = Vec::new();
    for file in pending {
        let target = file.target;
        file.temporary.persist(&target).map_err(|why| unwritable(&target, &why.error))?;
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
    let name = file_name(path)?;
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
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

/// A file that grows until it is whole, and only then takes its name. Until then it stands beside its place under a
/// name that the next run uses again: what a run that was cut off has left is written over.
pub struct Growing {
    out: BufWriter<File>,
    temporary: PathBuf,
    target: PathBuf,
}

impl Growing {
    /// Begins a file.
    ///
    /// # Errors
    /// When the path names no file, or as [`write_all`].
    pub fn begin(target: &Path) -> Result<Self, Diagnostic> {
        let name = file_name(target)?;
        let folder = target.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        let temporary = folder.join(format!(".palmleaf-{name}.part"));
        let open = || {
            std::fs::create_dir_all(folder)?;
            File::options().create(true).write(true).truncate(true).open(&temporary)
        };
        let file = open().map_err(|why| unwritable(target, &why))?;
        Ok(Self { out: BufWriter::with_capacity(1 << 20, file), temporary, target: target.to_owned() })
    }

    /// Gives the finished file its name.
    ///
    /// # Errors
    /// As [`write_all`].
    pub fn finish(mut self) -> Result<PathBuf, Diagnostic> {
        let done = self
            .out
            .flush()
            .and_then(|()| self.out.get_ref().sync_all())
            .and_then(|()| std::fs::rename(&self.temporary, &self.target));
        done.map_err(|why| unwritable(&self.target, &why))?;
        Ok(self.target.clone())
    }
}

impl Drop for Growing {
    fn drop(&mut self) {
        // Gone already when the file is whole.
        let _gone = std::fs::remove_file(&self.temporary);
    }
}

impl Write for Growing {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.out.write(bytes)
    }
    fn flush(&mut self) -> std::io::Result<()> {
        self.out.flush()
    }
}

fn file_name(path: &Path) -> Result<String, Diagnostic> {
    path.file_name().map(|name| name.to_string_lossy().into_owned()).ok_or_else(|| {
        let message = format!("{} names no file", path.display());
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, message).help("give the name of a file")
    })
}

fn unwritable(what: &Path, why: &dyn std::fmt::Display) -> Diagnostic {
    Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{} cannot be written: {why}", what.display()))
        .help("give another folder with `--out`; nothing of this case was written")
}

fn prepare(folder: &Path, target: PathBuf, bytes: &[u8]) -> std::io::Result<Pending> {
    let mut temporary = temporary(folder)?;
    temporary.write_all(bytes)?;
    temporary.as_file().sync_all()?;
    Ok(Pending { temporary, target })
}

fn temporary(folder: &Path) -> std::io::Result<NamedTempFile> {
    let mut builder = Builder::new();
    builder.prefix(".palmleaf-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // What the person's umask allows, so that colleagues can read a shared folder.
        builder.permissions(std::fs::Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder)
}

/// Makes the new names durable where the system can; a file system that cannot is no reason to fail.
fn sync(folder: &Path) {
    if let Ok(open) = File::open(folder) {
        drop(open.sync_all());
    }
}
