//! Messages and their arguments.

use std::sync::Arc;

use super::cause::Cause;
use crate::units::{Date, Minutes, Seconds, TimeOfDay};

/// A sentence to be said: the key of a message and what goes into it.
#[derive(Clone, Debug)]
pub struct Message {
    pub key: Arc<str>,
    pub args: Vec<(&'static str, Arg)>,
    /// What led to it; never said.
    pub causes: Vec<Cause>,
}

impl PartialEq for Message {
    /// They say the same, whatever led to them.
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key && self.args == other.args
    }
}

impl Eq for Message {}

impl Message {
    pub fn new(key: impl Into<Arc<str>>) -> Self {
        Self { key: key.into(), args: Vec::new(), causes: Vec::new() }
    }

    /// The same with what led to it.
    #[must_use]
    pub fn because(mut self, causes: impl IntoIterator<Item = Cause>) -> Self {
        self.causes.extend(causes);
        self
    }

    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Arg>) -> Self {
        self.args.push((name, value.into()));
        self
    }
}

/// What goes into a sentence. Numbers stay numbers, so that plurals follow; text of a person stays literal.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Arg {
    Number(i64),
    /// A word that a message selects by, such as `left`; never printed.
    Keyword(&'static str),
    /// Typed by somebody: printed, never parsed.
    Literal(String),
    /// A date with its weekday.
    Date(Date),
    /// A date without its weekday.
    ShortDate(Date),
    Time(TimeOfDay),
    Length(Minutes),
    Hold(Seconds),
    Message(Box<Message>),
    /// A list joined as the language joins lists.
    List(Vec<Message>),
}

impl From<i64> for Arg {
    fn from(number: i64) -> Self {
        Self::Number(number)
    }
}

impl From<Message> for Arg {
    fn from(message: Message) -> Self {
        Self::Message(Box::new(message))
    }
}

impl From<Minutes> for Arg {
    fn from(minutes: Minutes) -> Self {
        Self::Length(minutes)
    }
}

impl From<Date> for Arg {
    fn from(date: Date) -> Self {
        Self::Date(date)
    }
}
