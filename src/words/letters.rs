//! Letters that are none of a language's: a lookalike from another alphabet, a mark that nobody sees.

use icu::properties::props::{GeneralCategory, Script};
use icu::properties::{CodePointMapData, PropertyParser};

use crate::language::LanguageEntry;

/// The letters a language is written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Letters {
    script: Script,
}

impl Letters {
    /// The script that most write this language in (CLDR, likely subtags); Latin where none is known.
    pub fn of(entry: &LanguageEntry) -> Self {
        let script = entry.tag.script().and_then(|script| match script.as_str() {
            // Both ways of writing Chinese use the script that Unicode calls Han.
            "Hans" | "Hant" => Some(Script::Han),
            name => PropertyParser::<Script>::new().get_strict(name),
        });
        Self { script: script.unwrap_or(Script::Latin) }
    }

    /// Whether words follow each other without a space, so that a line may break between most letters.
    pub fn are_unspaced(self) -> bool {
        [Script::Han, Script::Hiragana, Script::Katakana, Script::Thai, Script::Lao, Script::Khmer, Script::Myanmar]
            .contains(&self.script)
    }

    /// What is wrong with the letters of a text: a word in other letters that the original does not have, a word of two
    /// alphabets, or a mark that cannot be seen and changes what is read.
    pub fn fault(self, text: &str, original: &str) -> Option<String> {
        if let Some(hidden) = text.chars().find(|&c| self.is_hidden(c)) {
            return Some(format!("holds U+{:04X}, which nobody can see", u32::from(hidden)));
        }
        // Where words have no spaces between them, one in other letters stands close by its neighbours.
        let parts = |c: char| script(c).is_none_or(|script| script == Script::Common);
        let runs = text.split(parts).filter(|word| !word.is_empty());
        let words: Vec<&str> = match self.are_unspaced() {
            true => runs.flat_map(by_script).collect(),
            false => runs.collect(),
        };
        words.into_iter().find_map(|word| {
            let mut scripts: Vec<Script> =
                word.chars().filter_map(script).filter(|&script| script != Script::Inherited).collect();
            scripts.dedup();
            match scripts.as_slice() {
                [] => None,
                [only] if *only == self.script => None,
                [_] if original.contains(word) => None,
                [_] => Some(format!("has «{word}» in letters of another language")),
                _ => Some(format!("has «{word}», a word of two alphabets")),
            }
        })
    }

    /// Controls of direction and width. Joiners are seen in scripts whose letters join.
    fn is_hidden(self, c: char) -> bool {
        let joining = [Script::Arabic, Script::Devanagari].contains(&self.script);
        match c {
            '\u{200C}' | '\u{200D}' => !joining,
            '\u{200B}' | '\u{200E}' | '\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{206F}' | '\u{FEFF}' => {
                true
            }
            '\n' => false,
            c => c.is_control(),
        }
    }
}

/// A run of letters, cut where the alphabet changes.
fn by_script(run: &str) -> Vec<&str> {
    let mut parts = Vec::new();
    let (mut from, mut before) = (0, None);
    for (at, c) in run.char_indices() {
        let now = script(c).filter(|&script| script != Script::Inherited).or(before);
        if before.is_some() && now != before {
            parts.push(&run[from..at]);
            from = at;
        }
        before = now;
    }
    parts.push(&run[from..]);
    parts
}

/// The script of a letter or of a mark on one; none for what is neither.
fn script(c: char) -> Option<Script> {
    let category = CodePointMapData::<GeneralCategory>::new().get(c);
    let counts = matches!(
        category,
        GeneralCategory::UppercaseLetter
            | GeneralCategory::LowercaseLetter
            | GeneralCategory::TitlecaseLetter
            | GeneralCategory::ModifierLetter
            | GeneralCategory::OtherLetter
            | GeneralCategory::NonspacingMark
            | GeneralCategory::SpacingMark
    ) || matches!(c, '\u{200C}' | '\u{200D}');
    let script = CodePointMapData::<Script>::new().get(c);
    counts.then_some(if matches!(c, '\u{200C}' | '\u{200D}') { Script::Inherited } else { script })
}
