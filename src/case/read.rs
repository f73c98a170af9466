//! Bytes of a case file to its fields.

use std::path::Path;

use super::file::CaseFile;
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::{FromNode, Limits, Reader, SourceText, decode, parse};

/// Reads the text of a case file from disk.
///
/// # Errors
/// When it cannot be read, is too large, or is not UTF-8 text.
pub fn load(path: &Path) -> Result<SourceText, Findings> {
    load_text(path, "give the path of a case file, such as `examples/right-thumb.yaml`")
}

/// Reads a file of text that is named on the command line. `help` says what to name instead when it cannot be read.
///
/// # Errors
/// As [`load`].
pub fn load_text(path: &Path, help: &str) -> Result<SourceText, Findings> {
    let name = path.display().to_string();
    let unreadable = |why: &dyn std::fmt::Display| {
        Findings::from(Diagnostic::outside(Code::FILE_UNREADABLE, format!("{name} cannot be read: {why}")).help(help))
    };
    let meta = std::fs::metadata(path).map_err(|why| unreadable(&why))?;
    if !meta.is_file() {
        return Err(unreadable(&"it is not a file"));
    }
    if meta.len() > Limits::CASE.bytes as u64 {
        return Err(Diagnostic::outside(
            Code::YAML_TOO_LARGE,
            format!("{name} has {} KiB, more than any case needs", meta.len() / 1024),
        )
        .help(format!("give a file of at most {} KiB", Limits::CASE.bytes / 1024))
        .into());
    }
    let bytes = std::fs::read(path).map_err(|why| unreadable(&why))?;
    Ok(decode(&name, bytes)?)
}

/// Reads a case from text already in memory.
///
/// # Errors
/// All faults of the text at once.
pub fn read_text(source: &SourceText) -> Result<CaseFile, Findings> {
    let node = parse(source, Limits::CASE)?;
    let mut reader = Reader::new(source);
    let case = CaseFile::from_node(&node, &mut reader);
    let findings = reader.finish();
    match case {
        Some(case) if !findings.has_errors() => Ok(case),
        _ => Err(findings),
    }
}
