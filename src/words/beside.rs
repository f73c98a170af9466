//! A page around two columns: what stands on it besides the same sheet in two languages.

use serde_json::{Value, json};

use super::lint::FIRST;
use super::sheet::Sheet;
use super::{Speaker, Words};
use crate::diag::{Code, Diagnostic};
use crate::language::Language;

/// The data of the page around a sheet and the same one in another language. The page is in the language of the first.
///
/// # Errors
/// When what it says to the clinician cannot be said.
pub fn beside(words: &Words, first: &Sheet, second: &Sheet) -> Result<Value, Diagnostic> {
    let mut meta = first.data["meta"].clone();
    meta["title"] = json!(format!("{} · {}", first.title, second.title));
    Ok(json!({
        "meta": meta,
        "furniture": first.data["furniture"],
        "note": clerk(words)?.plain("beside-note", &[])?,
    }))
}

/// A speaker of the clinician's language.
fn clerk(words: &Words) -> Result<Speaker<'_>, Diagnostic> {
    let none = || Diagnostic::outside(Code::WORDS_MISSING, format!("there are no words for `{FIRST}`"));
    let (entry, _) = words.catalogues.get(FIRST).ok_or_else(none)?;
    words.speaker(&Language { tag: entry.tag.clone(), entry: entry.clone() })
}
