//! Bytes of a file that is named by a person, with a limit.

use std::fs::File;
use std::io::Read as _;
use std::path::Path;

/// The bytes of a file.
///
/// # Errors
/// Why it cannot be read, as half a sentence: it is missing, is no file, has more than `most` bytes.
pub fn read_bytes(path: &Path, most: u64) -> Result<Vec<u8>, String> {
    let unreadable = |why: std::io::Error| format!("cannot be read: {why}");
    let meta = std::fs::metadata(path).map_err(unreadable)?;
    if !meta.is_file() {
        return Err("is no file".to_owned());
    }
    if meta.len() > most {
        return Err(format!("has {} KiB, more than {} KiB", meta.len().div_ceil(1024), most / 1024));
    }
    let mut bytes = Vec::new();
    // It may have grown since it was measured.
    File::open(path).and_then(|file| file.take(most).read_to_end(&mut bytes)).map_err(unreadable)?;
    Ok(bytes)
}
