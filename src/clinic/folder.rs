//! Files beside a file that names them, read from disk. Nothing outside its folder is read, whatever links lead there.

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

    /// Where a file in it really lies.
    ///
    /// # Errors
    /// Why it cannot be read, as half a sentence: it is missing, or a link leads elsewhere.
    pub fn path(&self, name: &FileName) -> Result<PathBuf, String> {
        let path = self.0.join(name.as_str()).canonicalize().map_err(|why| format!("cannot be read: {why}"))?;
        if !path.starts_with(&self.0) {
            return Err("lies outside the folder of the file that names it".to_owned());
        }
        Ok(path)
    }

    /// The bytes of a file in it.
    ///
    /// # Errors
    /// As [`Self::path`], and when it is no file or has more than `most` bytes.
    pub fn read(&self, name: &FileName, most: u64) -> Result<Vec<u8>, String> {
        read_bytes(&self.path(name)?, most)
    }
}
