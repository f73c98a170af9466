//! Names of files. A name never holds a person's name unless it is asked for.

use crate::case::Case;
use crate::content::PrintSize;
use crate::units::Misread;

/// How the files of a case are named.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum NameBy {
    /// The clinic's reference, or part of the case's fingerprint.
    Reference,
    /// The name of the case file: asked for, since it may hold a person's name.
    CaseFile,
    /// What names a row of a list, already in the letters of file names: [`of_row`].
    Row,
}

/// The most letters that a name gives to file names.
const MOST: usize = 40;

/// What names a row of a list, in the letters of file names.
///
/// # Errors
/// When nothing of it can stand there, or it is longer than a file name shows.
pub fn of_row(id: &str) -> Result<String, Misread> {
    let own = plain(id);
    if own.is_empty() {
        return Err(Misread::new(
            format!("`{id}` cannot be part of a file name"),
            "letters from a to z, digits and hyphens",
        ));
    }
    if id.trim().chars().count() > MOST {
        return Err(Misread::new(format!("`{id}` is too long for a file name"), format!("at most {MOST} characters")));
    }
    Ok(own)
}

/// What the names of all files of a case end in: `8f3a61c2-right-ar-large`; before it stands which file it is.
pub fn stem(case: &Case<'_>, by: NameBy, case_file: &str) -> String {
    let reference = case.file.person.as_ref().and_then(|person| person.reference.as_ref());
    let given = match (by, reference) {
        (NameBy::CaseFile, _) => plain(case_file),
        (NameBy::Row, _) => case_file.to_owned(),
        (NameBy::Reference, Some(reference)) => plain(reference.as_str()),
        (NameBy::Reference, None) => String::new(),
    };
    let own = if given.is_empty() { fingerprint(case)[..8].to_owned() } else { given };
    let size = match case.print() {
        PrintSize::Standard => "",
        PrintSize::Large => "-large",
        PrintSize::Giant => "-giant",
    };
    format!("{own}-{}-{}{size}", case.file.hand, case.language.tag)
}

/// A hash of the case's text.
pub fn fingerprint(case: &Case<'_>) -> String {
    blake3::hash(case.source.text().as_bytes()).to_hex()[..16].to_owned()
}

/// Letters, digits and hyphens only: no separator, no dot, nothing a shell or file system takes for more.
fn plain(text: &str) -> String {
    let kept: String =
        text.chars().take(MOST).map(|c| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { '-' }).collect();
    kept.split('-').filter(|part| !part.is_empty()).collect::<Vec<_>>().join("-")
}
