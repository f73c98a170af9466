//! Files beside the clinic's file, read from disk. Nothing outside its folder is read, whatever links lead there.

use std::path::{Path, PathBuf};

use super::file::FileName;
use crate::source::read_bytes;

/// A folder whose files may be read.
pub struct Folder(PathBuf);

impl Folder {
    /// The folder of a file.
    ///
    /// # Errors
    /// When there is no such folder.
    pub fn of(file: &Path) -> std::io::Result<Self> {
        let folder = file.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        Ok(Self(folder.canonicalize()?))
    }

    /// The bytes of a file in it.
    ///
    /// # Errors
    /// Why it cannot be read, as half a sentence: it lies elsewhere, is missing, is no file, has more than `most` bytes.
    pub fn read(&self, name: &FileName, most: u64) -> Result<Vec<u8>, String> {
        let path = self.0.join(name.as_str()).canonicalize().map_err(|why| format!("cannot be read: {why}"))?;
        if !path.starts_with(&self.0) {
            return Err("lies outside the folder of the clinic's file".to_owned());
        }
        read_bytes(&path, most)
    }
}
