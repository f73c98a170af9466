//! A file that grows while it is made, larger than memory should hold.

use std::fs::{File, OpenOptions, Permissions};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use super::store::{PREFIX, SUFFIX, file_name, folder_of, settle, unwritable};
use crate::diag::Diagnostic;

/// A file that grows until it is whole, and only then takes its name. Until then it stands beside its place under a
/// name that the next run uses again: what a run that was cut off has left is written over.
pub struct Growing {
    out: BufWriter<File>,
    temporary: PathBuf,
    target: PathBuf,
    /// Who may read the finished file.
    allowed: Option<Permissions>,
}

impl Growing {
    /// Begins a file.
    ///
    /// # Errors
    /// When the path names no file, or as [`super::store::write_all`].
    pub fn begin(target: &Path) -> Result<Self, Diagnostic> {
        let name = file_name(target)?;
        let folder = folder_of(target);
        let temporary = folder.join(format!("{PREFIX}{name}{SUFFIX}"));
        let open = || {
            std::fs::create_dir_all(folder)?;
            let allowed = settle(folder)?;
            let file = private().create(true).write(true).truncate(false).open(&temporary)?;
            // Locked as long as this run is at work, so that no other one takes it for a leftover. No lock is no fault:
            // then nobody clears away either.
            let _unlocked = file.lock();
            file.set_len(0)?;
            Ok((file, allowed))
        };
        let (file, allowed) = open().map_err(|why: std::io::Error| unwritable(target, &why))?;
        Ok(Self { out: BufWriter::with_capacity(1 << 20, file), temporary, target: target.to_owned(), allowed })
    }

    /// Gives the finished file its name.
    ///
    /// # Errors
    /// As [`super::store::write_all`].
    pub fn finish(mut self) -> Result<PathBuf, Diagnostic> {
        let done = self
            .out
            .flush()
            .and_then(|()| self.out.get_ref().sync_all())
            .map(|()| {
                if let Some(allowed) = &self.allowed {
                    // A mount that knows no such rights keeps its own.
                    let _own = self.out.get_ref().set_permissions(allowed.clone());
                }
            })
            .and_then(|()| std::fs::rename(&self.temporary, &self.target));
        done.map_err(|why| unwritable(&self.target, &why))?;
        Ok(self.target.clone())
    }
}

/// Nobody else on the machine reads a file that is not finished.
fn private() -> OpenOptions {
    #[allow(unused_mut, reason = "only some systems know such rights")]
    let mut options = File::options();
    #[cfg(unix)]
    {
        use std::os::unix::fs::OpenOptionsExt;
        options.mode(0o600);
    }
    options
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
