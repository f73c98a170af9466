//! Names of things in content, and the search for the one that was meant.

/// Declares an id: lower case words joined by hyphens, naming a file of content.
macro_rules! id {
    ($(#[$meta:meta])* $name:ident, $what:literal) => {
        $(#[$meta])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        pub struct $name(std::sync::Arc<str>);

        impl $name {
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(&self.0)
            }
        }

        impl std::str::FromStr for $name {
            type Err = crate::units::Misread;

            fn from_str(text: &str) -> Result<Self, crate::units::Misread> {
                if crate::ids::is_id(text) {
                    Ok(Self(text.into()))
                } else {
                    Err(crate::units::Misread::new(
                        format!("`{text}` cannot be the name of {}", $what),
                        "lower case letters, digits and hyphens",
                    ))
                }
            }
        }

        crate::source::text_value!($name, $what, $what, r"^[a-z][a-z0-9]*(-[a-z0-9]+)*$");
    };
}

id!(/** A condition of `content/conditions`. */ ConditionId, "a condition");
id!(/** An orthosis of `content/orthoses`. */ OrthosisId, "an orthosis");
id!(/** An activity of `content/activities`. */ ActivityId, "an activity");
id!(/** An exercise of `content/exercises`. */ ExerciseId, "an exercise");
id!(/** A factor of `content/factors`. */ FactorId, "a factor");
id!(/** A phase of a condition. */ PhaseId, "a phase");
id!(/** A tendon, ligament, nerve or bone of `content/structures.yaml`. */ StructureId, "a structure");
id!(/** A need of `content/needs.yaml`. */ NeedId, "a need");
id!(/** A source of `content/sources.yaml`. */ SourceKey, "a source");
id!(/** A pattern of `content/wear`. */ WearPatternId, "a wear pattern");
id!(/** One donning or doffing step, a message of the orthosis area. */ StepId, "a step");
id!(/** A message of the locale files. */ MessageId, "a message");
id!(/** A case on a shelf, by the name that its files have. */ ShelfName, "a case on a shelf");

/// Whether a text has the form of an id.
pub fn is_id(text: &str) -> bool {
    !text.is_empty()
        && text.len() <= 64
        && text
            .split('-')
            .all(|word| !word.is_empty() && word.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit()))
        && text.as_bytes()[0].is_ascii_lowercase()
}

/// The candidate that was most likely meant, when one is near enough: at most a third of its letters differ, or the
/// written word begins it. Ties go to the first in order.
pub fn nearest<'a>(written: &str, candidates: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let written: String = written.chars().take(64).flat_map(char::to_lowercase).collect();
    let mut best: Option<(usize, &str)> = None;
    for candidate in candidates {
        let lower = candidate.to_lowercase();
        let distance = if written.len() >= 4 && lower.starts_with(&written) { 1 } else { distance(&written, &lower) };
        if distance <= candidate.len().max(3) / 3 && best.is_none_or(|(least, _)| distance < least) {
            best = Some((distance, candidate));
        }
    }
    best.map(|(_, candidate)| candidate)
}

/// The one of several things whose name is written.
///
/// # Errors
/// Names `what` is meant, and the name that was most likely meant, or else `such` as an example.
pub fn one_of<T: std::fmt::Display>(
    text: &str,
    all: impl Iterator<Item = T>,
    what: &str,
    such: &str,
) -> Result<T, crate::units::Misread> {
    let mut names = Vec::new();
    for one in all {
        let name = one.to_string();
        if name == text {
            return Ok(one);
        }
        names.push(name);
    }
    let near = nearest(text, names.iter().map(String::as_str));
    let write = near.map_or_else(|| such.to_owned(), |near| format!("`{near}`"));
    Err(crate::units::Misread::new(format!("`{text}` is no {what}"), write))
}

/// Edits between two words: insertions, deletions, changes, and swaps of neighbours.
fn distance(a: &str, b: &str) -> usize {
    let (a, b): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
    let mut before: Vec<usize> = Vec::new();
    let mut above: Vec<usize> = (0..=b.len()).collect();
    for i in 1..=a.len() {
        let mut row = vec![i; b.len() + 1];
        for j in 1..=b.len() {
            let changed = usize::from(a[i - 1] != b[j - 1]);
            row[j] = (above[j] + 1).min(row[j - 1] + 1).min(above[j - 1] + changed);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                row[j] = row[j].min(before[j - 2] + 1);
            }
        }
        before = std::mem::replace(&mut above, row);
    }
    above[b.len()]
}
