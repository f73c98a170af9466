//! The reminders said in one language.

use super::meta::state_line;
use super::{Said, Words};
use crate::diag::{Diagnostic, Findings};
use crate::document::{Alarm, Arg, Message, Reminders, When};
use crate::language::ReadingDirection;
use crate::units::Date;

/// The reminders of a case in one language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SaidReminders {
    /// The tag of the language.
    pub language: String,
    /// The day of the fitting.
    pub date: Date,
    pub revision: u8,
    pub events: Vec<SaidEvent>,
    /// The messages they say, and how far each has been checked.
    pub said: Said,
}

/// One event in one language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SaidEvent {
    /// What it is, in no language.
    pub identity: String,
    pub when: When,
    pub title: String,
    /// Lines.
    pub note: String,
    pub alarm: Alarm,
    pub alarm_says: String,
}

/// Says reminders. Every note ends with whose word wins and whom to call, and says where its language has not been
/// checked.
///
/// # Errors
/// When anything in them cannot be said.
pub fn remind(words: &Words, reminders: &Reminders) -> Result<SaidReminders, Findings> {
    let language = &reminders.language;
    let speaker = words.speaker(language)?;
    let args = &reminders.args;
    let apart = language.entry.direction == ReadingDirection::RightToLeft;
    let say = |message: &Message| speaker.say(&set_apart(message, apart), args);
    let sentences = |list: &[Message]| -> Result<String, Diagnostic> {
        Ok(list.iter().map(say).collect::<Result<Vec<_>, _>>()?.join(" "))
    };
    let mut end = vec![say(&reminders.caution)?];
    end.extend(telephone(reminders, &say)?);
    let mut events = Vec::new();
    for event in &reminders.events {
        let title = sentences(&event.title)?;
        let mut note: Vec<String> = event.note.iter().map(say).collect::<Result<_, _>>()?;
        note.extend(end.iter().cloned());
        events.push(SaidEvent {
            identity: event.identity.clone(),
            when: event.when,
            alarm: event.alarm,
            alarm_says: if event.alarm_says.is_empty() { title.clone() } else { sentences(&event.alarm_says)? },
            title,
            note: note.join("\n"),
        });
    }
    let said = words.said(language.entry.tag.as_str(), &speaker.used())?;
    if let Some(key) = state_line(said.state()) {
        let line = speaker.plain(key, args)?;
        for event in &mut events {
            event.note = format!("{}\n{line}", event.note);
        }
    }
    let (language, date, revision) = (language.tag.to_string(), reminders.date, reminders.revision);
    Ok(SaidReminders { language, date, revision, events, said })
}

/// Whom to call, and when the telephone is answered.
fn telephone(
    reminders: &Reminders,
    say: &impl Fn(&Message) -> Result<String, Diagnostic>,
) -> Result<Option<String>, Diagnostic> {
    let Some(number) = &reminders.telephone else { return Ok(None) };
    let literal = |text: &String| Arg::Literal(text.clone());
    Ok(Some(match &reminders.hours {
        Some(hours) => {
            say(&Message::new("reminder-call-hours").with("telephone", literal(number)).with("hours", literal(hours)))?
        }
        None => say(&Message::new("reminder-call").with("telephone", literal(number)))?,
    }))
}

/// What a person typed, set apart from a text from right to left, so that a telephone number keeps the order of its
/// figures: a calendar has no page that could do it.
fn set_apart(message: &Message, apart: bool) -> Message {
    let mut message = message.clone();
    for (_, arg) in &mut message.args {
        if let (Arg::Literal(text), true) = (&mut *arg, apart) {
            *text = format!("\u{2068}{text}\u{2069}");
        }
    }
    message
}
