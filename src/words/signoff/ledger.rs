//! The files that hold states: a line for each message.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use super::{DRAFTED, SIGNED_OFF};
use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::{Place, SourceText, Span};
use crate::units::Date;

/// Who signed a message off.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SignOff {
    pub on: Date,
    /// Role, initials or registration, as the clinic wishes.
    pub by: String,
}

/// What is known of one message: hashes of the English and of the text itself as they stood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    pub english: String,
    pub text: String,
    /// None while it is only drafted.
    pub signed: Option<SignOff>,
}

/// What is known of every message of a language, by its id.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Ledger {
    entries: BTreeMap<String, Entry>,
}

/// Digits of a hash in these files: chance never gives two texts of one message the same.
pub const HASH_DIGITS: usize = 10;

impl Ledger {
    /// Reads both files of a language. A sign-off wins over a draft.
    ///
    /// # Errors
    /// Every line that cannot be read, with its place.
    pub fn load(assets: &Assets, tag: &str) -> Result<Self, Findings> {
        let mut findings = Findings::default();
        let mut ledger = Self::default();
        for (name, signed) in [(DRAFTED, false), (SIGNED_OFF, true)] {
            let path = format!("locales/{tag}/{name}");
            if assets.bytes(&path).is_none() {
                continue;
            }
            match assets.text(&path) {
                Ok(source) => ledger.read(&source, signed, &mut findings),
                Err(diagnostic) => findings.push(diagnostic),
            }
        }
        if findings.has_errors() { Err(findings) } else { Ok(ledger) }
    }

    fn read(&mut self, source: &SourceText, signed: bool, findings: &mut Findings) {
        let mut at = 0;
        for line in source.text().split_inclusive('\n') {
            let text = line.trim();
            let span = Span::new(at..at + line.trim_end().len());
            at += line.len();
            if text.is_empty() || text.starts_with('#') {
                continue;
            }
            match entry(text, signed) {
                Some((id, entry)) => {
                    self.entries.insert(id.to_owned(), entry);
                }
                None => {
                    let place = Place { source: source.clone(), span };
                    let wanted = if signed {
                        "message, two hashes of ten digits, the day and who, such as \
                         `guide-title 0123456789 abcdef0123 2027-02-01 medical translator, AB`"
                    } else {
                        "message and two hashes of ten digits, such as `guide-title 0123456789 abcdef0123`"
                    };
                    let message = "this line says nothing of a message";
                    findings.push(Diagnostic::error(Code::WORDS_STATE, place, message).help(format!("write {wanted}")));
                }
            }
        }
    }

    pub fn entry(&self, id: &str) -> Option<&Entry> {
        self.entries.get(id)
    }

    pub fn entries(&self) -> impl Iterator<Item = (&str, &Entry)> {
        self.entries.iter().map(|(id, entry)| (id.as_str(), entry))
    }

    /// Writes something down of a message, in place of what was known.
    pub fn set(&mut self, id: &str, entry: Entry) {
        self.entries.insert(id.to_owned(), entry);
    }

    /// Forgets messages that are no more.
    pub fn keep(&mut self, wanted: impl Fn(&str) -> bool) {
        self.entries.retain(|id, _| wanted(id));
    }

    /// The text of `drafted.txt` or of `signed-off.txt`.
    pub fn file(&self, signed: bool) -> String {
        let mut text = if signed {
            "# Message, hash of the English it was checked against, hash of its own text, the day, and who checked it.\n"
        } else {
            "# Message, hash of the English it was written from, hash of its own text. `palmleaf locales draft` writes it.\n"
        }
        .to_owned();
        for (id, entry) in self.entries.iter().filter(|(_, entry)| entry.signed.is_some() == signed) {
            let _never_fails = write!(text, "{id} {} {}", entry.english, entry.text);
            if let Some(sign_off) = &entry.signed {
                let _never_fails = write!(text, " {} {}", sign_off.on, sign_off.by);
            }
            text.push('\n');
        }
        text
    }
}

fn entry(line: &str, signed: bool) -> Option<(&str, Entry)> {
    let mut words = line.splitn(if signed { 5 } else { 4 }, ' ');
    let id = words.next()?;
    let hash = |word: &str| {
        let good = word.len() == HASH_DIGITS && word.bytes().all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b));
        good.then(|| word.to_owned())
    };
    let english = hash(words.next()?)?;
    let text = hash(words.next()?)?;
    let signed = if signed {
        let on = words.next()?.parse().ok()?;
        let by = words.next()?.trim();
        Some(SignOff { on, by: (!by.is_empty()).then(|| by.to_owned())? })
    } else {
        if words.next().is_some() {
            return None;
        }
        None
    };
    Some((id, Entry { english, text, signed }))
}
