//! The names of things in every language there is, to be found by.

use crate::document::{Arg, Message};
use crate::pipeline::Workshop;
use crate::words::Speaker;
use crate::words::lint::FIRST;

pub struct Names<'w> {
    /// The first language first.
    speakers: Vec<Speaker<'w>>,
}

impl<'w> Names<'w> {
    pub fn load(workshop: &'w Workshop) -> Self {
        let mut entries: Vec<_> = workshop.languages.iter().collect();
        entries.sort_by_key(|entry| entry.tag.as_str() != FIRST);
        let languages = entries.into_iter().filter_map(|entry| workshop.languages.find(&entry.tag));
        // A language that cannot be read is none to search in.
        let speakers: Vec<Speaker<'w>> =
            languages.filter_map(|language| workshop.words.speaker(&language).ok()).collect();
        Self { speakers }
    }

    /// What the first language says; nothing where it has no such message.
    pub fn plain(&self, key: &str) -> String {
        self.speakers.first().and_then(|speaker| say(speaker, key)).unwrap_or_default()
    }

    /// What every language says.
    pub fn all(&self, key: &str) -> Vec<String> {
        self.speakers.iter().filter_map(|speaker| say(speaker, key)).collect()
    }
}

/// Nothing where a message is missing, or needs more than a name should.
fn say(speaker: &Speaker<'_>, key: &str) -> Option<String> {
    let args = [("side", Arg::Keyword("right")), ("finger", Arg::Keyword("none"))];
    speaker.say(&Message::new(key.to_owned()), &args).ok()
}
