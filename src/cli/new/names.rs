//! The names of things in every language there is, to be found by.

use crate::diag::Findings;
use crate::document::{Arg, Message};
use crate::pipeline::Workshop;
use crate::words::Speaker;
use crate::words::lint::FIRST;

pub struct Names<'w> {
    /// The first language first.
    speakers: Vec<Speaker<'w>>,
}

impl<'w> Names<'w> {
    /// # Errors
    /// When the words of a language cannot be read.
    pub fn load(workshop: &'w Workshop) -> Result<Self, Findings> {
        let mut entries: Vec<_> = workshop.languages.iter().collect();
        entries.sort_by_key(|entry| entry.tag.as_str() != FIRST);
        let languages = entries.into_iter().filter_map(|entry| workshop.languages.find(&entry.tag));
        let speakers: Result<Vec<Speaker<'w>>, _> =
            languages.map(|language| workshop.words.speaker(&language)).collect();
        Ok(Self { speakers: speakers? })
    }

    /// What the first language says; nothing where it has no such message.
    pub fn plain(&self, key: &str) -> String {
        self.speakers.first().and_then(|speaker| say(speaker, key)).unwrap_or_default()
    }

    /// What every language says.
    pub fn all(&self, key: &str) -> String {
        self.speakers.iter().filter_map(|speaker| say(speaker, key)).collect::<Vec<_>>().join(" ")
    }
}

/// Nothing where a message is missing, or needs more than a name should.
fn say(speaker: &Speaker<'_>, key: &str) -> Option<String> {
    let args = [("side", Arg::Keyword("right")), ("finger", Arg::Keyword("none"))];
    speaker.say(&Message::new(key.to_owned()), &args).ok()
}
