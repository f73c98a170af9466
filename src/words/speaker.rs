//! Says a message of the document in a language.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::Arc;

use fluent_bundle::{FluentArgs, FluentValue};

use super::catalogue::{Catalogue, number};
use super::format::Formats;
use super::plural::category_of;
use crate::diag::Diagnostic;
use crate::document::{Arg, Cause, Message};
use crate::units::Minutes;

/// A language's messages and formats together.
pub struct Speaker<'w> {
    pub catalogue: &'w Catalogue,
    pub formats: Formats,
    /// The messages that were said, and how each was said first.
    used: RefCell<BTreeMap<Arc<str>, String>>,
    /// Everything that is said, in order, when somebody listens.
    heard: Option<RefCell<Listening>>,
}

/// A message as it was said in its place.
#[derive(Clone, Debug)]
pub struct Heard {
    pub key: Arc<str>,
    pub text: String,
    /// What led to it; nothing where the words of the sheet itself say it.
    pub causes: Vec<Cause>,
}

/// What is heard so far.
#[derive(Default)]
struct Listening {
    /// Messages inside others are no sentences.
    depth: usize,
    said: Vec<Heard>,
}

/// What a message may use: the sheet's own arguments, then its own.
pub type SheetArgs = [(&'static str, Arg)];

impl<'w> Speaker<'w> {
    pub fn new(catalogue: &'w Catalogue, formats: Formats) -> Self {
        Self { catalogue, formats, used: RefCell::default(), heard: None }
    }

    /// The same, and everything that is said is kept.
    #[must_use]
    pub fn listening(self) -> Self {
        Self { heard: Some(RefCell::default()), ..self }
    }

    /// What was heard since this was asked last.
    pub fn take_heard(&self) -> Vec<Heard> {
        self.heard.as_ref().map(|heard| std::mem::take(&mut heard.borrow_mut().said)).unwrap_or_default()
    }

    /// Says a message; its own arguments win over the sheet's.
    ///
    /// # Errors
    /// When a message or a variable is missing.
    pub fn say(&self, message: &Message, sheet: &SheetArgs) -> Result<String, Diagnostic> {
        let Some(heard) = &self.heard else { return self.speak(message, sheet) };
        heard.borrow_mut().depth += 1;
        let text = self.speak(message, sheet);
        let mut heard = heard.borrow_mut();
        heard.depth -= 1;
        if let (Ok(text), 0) = (&text, heard.depth) {
            let said = Heard { key: message.key.clone(), text: text.clone(), causes: message.causes.clone() };
            heard.said.push(said);
        }
        text
    }

    fn speak(&self, message: &Message, sheet: &SheetArgs) -> Result<String, Diagnostic> {
        let mut args = FluentArgs::new();
        for (name, value) in sheet.iter().chain(&message.args) {
            if let Arg::Number(count) = value {
                args.set(category_of(name), FluentValue::from(self.formats.plural(*count)));
            }
            args.set(*name, self.value(value, sheet)?);
        }
        let text = self.catalogue.speak(&message.key, &args)?;
        let text = if message.args.iter().chain(sheet).any(|(_, arg)| matches!(arg, Arg::Literal(_))) {
            // A person's text keeps its own digits: only what the program counted is in the language's.
            text
        } else {
            self.formats.in_digits(&text)
        };
        let mut used = self.used.borrow_mut();
        if !used.contains_key(&message.key) {
            used.insert(message.key.clone(), text.clone());
        }
        Ok(text)
    }

    /// Says a message that takes nothing but the sheet's arguments.
    ///
    /// # Errors
    /// As [`Self::say`].
    pub fn plain(&self, key: &str, sheet: &SheetArgs) -> Result<String, Diagnostic> {
        self.say(&Message::new(key.to_owned()), sheet)
    }

    fn value(&self, arg: &Arg, sheet: &SheetArgs) -> Result<FluentValue<'static>, Diagnostic> {
        Ok(match arg {
            Arg::Number(value) => number(*value),
            Arg::Keyword(word) => FluentValue::from(*word),
            Arg::Literal(text) => FluentValue::from(text.clone()),
            Arg::Date(date) => FluentValue::from(self.formats.date(*date)),
            Arg::ShortDate(date) => FluentValue::from(self.formats.short(*date)),
            Arg::Time(time) => FluentValue::from(self.formats.time(*time)),
            Arg::Length(minutes) => FluentValue::from(self.length(*minutes)?),
            Arg::Hold(seconds) => FluentValue::from(self.hold(i64::from(seconds.get()))?),
            Arg::Message(message) => FluentValue::from(self.say(message, sheet)?),
            Arg::List(messages) => {
                let said: Result<Vec<String>, Diagnostic> =
                    messages.iter().map(|message| self.say(message, sheet)).collect();
                FluentValue::from(self.formats.list(&said?))
            }
        })
    }

    /// The messages that were said so far, and how each was said first.
    pub fn used(&self) -> BTreeMap<Arc<str>, String> {
        self.used.borrow().clone()
    }

    /// "45 minutes", "2 hours", "1 hour 30 minutes".
    ///
    /// # Errors
    /// When the messages of lengths are missing.
    pub fn length(&self, minutes: Minutes) -> Result<String, Diagnostic> {
        let (hours, rest) = (i64::from(minutes.get() / 60), i64::from(minutes.get() % 60));
        match (hours, rest) {
            (0, rest) => self.counted("length-minutes", rest),
            (hours, 0) => self.counted("length-hours", hours),
            (hours, rest) => {
                let message = Message::new("length-hours-minutes")
                    .with("hours", Arg::Literal(self.counted("length-hours", hours)?))
                    .with("minutes", Arg::Literal(self.counted("length-minutes", rest)?));
                self.say(&message, &[])
            }
        }
    }

    /// "5 seconds"; from two minutes on, whole minutes are said as minutes.
    fn hold(&self, seconds: i64) -> Result<String, Diagnostic> {
        if seconds >= 120 && seconds % 60 == 0 {
            self.counted("length-minutes", seconds / 60)
        } else {
            self.counted("length-seconds", seconds)
        }
    }

    fn counted(&self, key: &str, count: i64) -> Result<String, Diagnostic> {
        self.say(&Message::new(key.to_owned()).with("count", count), &[])
    }
}
