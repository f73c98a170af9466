//! What the papers for students have in common: their words, what they are asked about, and how they are written.

use std::path::{Path, PathBuf};

use clap::Args;
use serde_json::json;

use crate::cli::Ended;
use crate::cli::args::{Cache, Overlay};
use crate::cli::check::{keeping, refused, workshop};
use crate::cli::terminal::Terminal;
use crate::content::{Basis, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::ids::{ConditionId, OrthosisId, PhaseId};
use crate::language::LanguageTag;
use crate::output::store;
use crate::pipeline::Workshop;
use crate::units::Misread;
use crate::words::Speaker;
use crate::words::lint::FIRST;

#[derive(Args, Debug)]
pub struct Where {
    /// The folder that files are written to.
    #[arg(long, value_name = "DIR", default_value = "dist")]
    pub out: PathBuf,
    #[command(flatten)]
    pub overlay: Overlay,
}

/// Says the words for students, in the first language.
pub struct Teacher<'w> {
    pub workshop: &'w Workshop,
    speaker: Speaker<'w>,
}

impl<'w> Teacher<'w> {
    /// # Errors
    /// When the words of the first language cannot be read.
    pub fn new(workshop: &'w Workshop) -> Result<Self, Findings> {
        let tag: LanguageTag = FIRST.parse().map_err(|misread: Misread| none(&misread.wrong))?;
        let language = workshop.languages.find(&tag).ok_or_else(|| none("the first language is missing"))?;
        Ok(Self { workshop, speaker: workshop.words.speaker(&language)? })
    }

    /// # Errors
    /// When a message is missing.
    pub fn say(&self, message: &Message) -> Result<String, Diagnostic> {
        self.speaker.say(message, &[("side", Arg::Keyword("right"))])
    }

    /// # Errors
    /// As [`Self::say`].
    pub fn word(&self, key: impl Into<std::sync::Arc<str>>) -> Result<String, Diagnostic> {
        self.say(&Message::new(key))
    }

    /// A condition by the name that students learn.
    ///
    /// # Errors
    /// As [`Self::say`].
    pub fn condition(&self, id: &ConditionId) -> Result<String, Diagnostic> {
        self.word(format!("condition-{id}-term"))
    }

    /// # Errors
    /// As [`Self::say`].
    pub fn orthosis(&self, id: &OrthosisId) -> Result<String, Diagnostic> {
        self.word(format!("orthosis-{id}-short"))
    }

    /// A phase, by its id without hyphens.
    pub fn phase(id: &PhaseId) -> String {
        id.as_str().replace('-', " ")
    }

    /// Sources as a record shows them, each once.
    pub fn cite<'a>(&self, sources: impl IntoIterator<Item = &'a Basis>) -> String {
        let mut all: Vec<String> = Vec::new();
        for source in sources {
            let cited = self.workshop.library.cite(source);
            if !all.contains(&cited) {
                all.push(cited);
            }
        }
        all.join("; ")
    }
}

fn none(why: &str) -> Findings {
    Diagnostic::outside(Code::WORDS_MISSING, why.to_owned()).into()
}

/// An id of a map of the content.
///
/// # Errors
/// When there is none of that name: with the nearest one.
pub fn known<I, T>(what: &str, text: &str, map: &std::collections::BTreeMap<I, T>) -> Result<I, Diagnostic>
where
    I: Ord + std::fmt::Display + std::str::FromStr<Err = Misread>,
{
    text.parse::<I>().ok().filter(|id| map.contains_key(id)).ok_or_else(|| {
        let names: Vec<String> = map.keys().map(ToString::to_string).collect();
        let (message, help) = unknown(what, text, names.iter().map(String::as_str));
        Diagnostic::outside(Code::ID_UNKNOWN, message).help(help)
    })
}

/// All of a list of ids.
///
/// # Errors
/// Every name that leads nowhere.
pub fn all_known<I, T>(what: &str, texts: &[String], map: &std::collections::BTreeMap<I, T>) -> Result<Vec<I>, Findings>
where
    I: Ord + std::fmt::Display + std::str::FromStr<Err = Misread>,
{
    let mut findings = Findings::default();
    let mut found = Vec::new();
    for text in texts {
        match known(what, text, map) {
            Ok(id) => found.push(id),
            Err(fault) => findings.push(fault),
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(found) }
}

/// Loads the content, makes files and writes them: all, or none.
pub fn teach(
    at: &Where,
    cache: Cache,
    terminal: &Terminal,
    make: impl FnOnce(&Teacher<'_>) -> Result<Vec<(String, Vec<u8>)>, Findings>,
) -> Ended {
    let workshop = match workshop(&at.overlay, terminal) {
        Ok(workshop) => keeping(workshop, cache),
        Err(ended) => return ended,
    };
    match Teacher::new(&workshop).and_then(|teacher| make(&teacher)).and_then(|files| written(&at.out, &files)) {
        Ok(files) if terminal.is_json() => terminal.say_json(&json!({"files": files})),
        Ok(files) => files.iter().for_each(|file| terminal.say(file)),
        Err(findings) => return refused(&findings, terminal),
    }
    Ended::Well
}

fn written(folder: &Path, files: &[(String, Vec<u8>)]) -> Result<Vec<String>, Findings> {
    let paths = store::write_all(folder, files)?;
    Ok(paths.iter().map(|path| path.display().to_string()).collect())
}
