//! What the checks say, as a student reads it: names without hyphens, degrees by their sign.

use std::sync::LazyLock;

use crate::body::{Direction, JointName};

/// Names in data and as they are read, the longest first so that none is cut by a shorter one.
static NAMES: LazyLock<Vec<(String, String)>> = LazyLock::new(|| {
    let joint = |name: JointName| {
        let written = name.to_string();
        let read: Vec<String> = written
            .split('-')
            .map(|word| match word {
                "cmc" | "mcp" | "ip" | "pip" | "dip" => word.to_uppercase(),
                _ => word.to_owned(),
            })
            .collect();
        (written.clone(), read.join(" "))
    };
    let direction = |one: &Direction| (one.word().to_owned(), one.word().replace('-', " "));
    let mut all: Vec<(String, String)> =
        JointName::all().map(joint).chain(Direction::ALL.iter().map(direction)).collect();
    all.retain(|(written, read)| written != read);
    all.sort_by_key(|(written, _)| std::cmp::Reverse(written.len()));
    all
});

/// A text of the checks as it is read.
pub fn readable(text: &str) -> String {
    let mut text = text.replace(" deg", "°");
    for (written, read) in NAMES.iter() {
        if text.contains(written.as_str()) {
            text = text.replace(written.as_str(), read);
        }
    }
    text
}
