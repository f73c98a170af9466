//! The file of confirmations, written anew with what was confirmed now.

use std::collections::BTreeMap;

use crate::content::Confirmation;
use crate::units::Date;

/// The text of `confirmed.yaml`: what was known, and the new ones in their place.
pub fn file(known: &[Confirmation], new: impl IntoIterator<Item = (String, String)>, by: &str, on: Date) -> String {
    let mut all: BTreeMap<String, (String, Date, String)> =
        known.iter().map(|one| (one.item.clone(), (one.by.clone(), one.on, one.hash.clone()))).collect();
    all.extend(new.into_iter().map(|(item, hash)| (item, (by.to_owned(), on, hash))));
    let mut text = "# Who has confirmed which file, and the hash of what was confirmed.\n".to_owned();
    for (item, (by, on, hash)) in all {
        // A JSON string is a YAML string, whatever a person typed.
        let by = serde_json::Value::String(by);
        text.push_str(&format!("- {{ item: {item}, by: {by}, on: {on}, hash: \"{hash}\" }}\n"));
    }
    text
}
