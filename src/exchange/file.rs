//! The file that a translator sent back.

use std::path::Path;

use crate::diag::{Code, Diagnostic};
use crate::source::SourceText;

/// A file from a translator larger than this is refused.
const MOST_BYTES: u64 = 32 * 1024 * 1024;

/// Reads a file from a translator; its byte order mark is gone.
///
/// # Errors
/// When it cannot be read, is no UTF-8 text, or is larger than all words of a language.
pub fn load(path: &Path) -> Result<SourceText, Diagnostic> {
    let unreadable = |why: &dyn std::fmt::Display| {
        Diagnostic::outside(Code::FILE_UNREADABLE, format!("{} cannot be read: {why}", path.display()))
            .help("give the file that the translator sent back")
    };
    let size = std::fs::metadata(path).map_err(|why| unreadable(&why))?.len();
    if size > MOST_BYTES {
        return Err(unreadable(&format!("it has {size} bytes, more than all words of a language")));
    }
    let bytes = std::fs::read(path).map_err(|why| unreadable(&why))?;
    let text = String::from_utf8(bytes).map_err(|_| {
        Diagnostic::outside(Code::FILE_NOT_UTF8, format!("{} is not UTF-8 text", path.display()))
            .help("save it as UTF-8")
    })?;
    Ok(SourceText::new(path.display().to_string(), text.trim_start_matches('\u{FEFF}')))
}
