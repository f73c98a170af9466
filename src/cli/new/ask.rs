//! Questions, and whoever puts them: lists to move in, or plain numbered lines.

use std::fmt;

use unicode_width::{UnicodeWidthChar, UnicodeWidthStr};

use crate::case::hidden;
use crate::diag::{Code, Diagnostic, render};

/// Columns of a line, so that a list keeps its shape on a terminal of 80.
pub const COLUMNS: usize = 72;

/// One entry of a list.
#[derive(Clone, Debug)]
pub struct Choice {
    /// What the case file says for it.
    pub id: String,
    /// What the list shows: one line, cut to the width of a terminal.
    pub label: String,
    /// What it is found by besides: names in every language, terms of the trade.
    pub find: Vec<String>,
}

impl Choice {
    /// The score of who is called so.
    pub const EXACT: i64 = 4;

    /// An entry that shows its id and something about it.
    pub fn new(id: impl Into<String>, about: &str, find: Vec<String>) -> Self {
        let id = id.into();
        let label = if about.is_empty() { id.clone() } else { format!("{id}  {about}") };
        Self { label: one_line(&label, COLUMNS), id, find }
    }

    /// How well it answers what was typed: every word has to be found. More is better.
    pub fn score(&self, typed: &str) -> Option<i64> {
        let typed = typed.trim().to_lowercase();
        let names: Vec<String> = self.find.iter().map(|name| name.to_lowercase()).collect();
        let all = format!("{} {} {}", self.id, self.label, names.join(" ")).to_lowercase();
        let found = typed.split_whitespace().all(|word| all.contains(word));
        let id = self.id.to_lowercase();
        found.then(|| match () {
            () if id == typed || names.contains(&typed) => Self::EXACT,
            () if id.starts_with(&typed) || self.label.to_lowercase().starts_with(&typed) => 3,
            () if id.contains(&typed) => 2,
            () if all.split_whitespace().any(|word| word.starts_with(&typed)) => 1,
            () => 0,
        })
    }
}

impl fmt::Display for Choice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.label)
    }
}

/// Why an interview ended before its end.
#[derive(Debug)]
pub enum Stop {
    /// Ctrl-C or Esc.
    Wish,
    /// The lines of answers end before the questions do.
    NoAnswer { asked: String },
    /// A line of answers is none.
    Wrong { line: usize, asked: String, why: String },
    /// The terminal or the pipe failed.
    Outside(String),
}

impl Stop {
    /// As a finding.
    pub fn diagnostic(self) -> Diagnostic {
        let (code, message, help) = match self {
            Self::Wish => (Code::NEW_STOPPED, "stopped; nothing was written".to_owned(), None),
            Self::NoAnswer { asked } => (
                Code::NEW_ANSWER,
                format!("the answers end before the question: {asked}"),
                Some("add a line for it; an empty line takes what is offered"),
            ),
            Self::Wrong { line, asked, why } => (
                Code::NEW_ANSWER,
                format!("line {line} of the answers does not answer the question: {asked} {why}"),
                Some("give a number, an id, or words that one entry alone holds"),
            ),
            Self::Outside(why) => (Code::FILE_UNREADABLE, format!("the answers cannot be read: {why}"), None),
        };
        let mut diagnostic = Diagnostic::outside(code, message);
        diagnostic.help = help.map(str::to_owned);
        diagnostic
    }
}

/// Whether a text answers a question; if not, why.
pub type Judge<'a> = &'a dyn Fn(&str) -> Result<(), String>;

/// Puts questions.
pub trait Ask {
    /// One entry of a list, by its place. What would do harm if it were taken unread, such as a hand, is not offered.
    fn one(&mut self, question: &str, choices: &[Choice], usual: Option<usize>) -> Result<usize, Stop>;
    /// Any number of entries of a list.
    fn several(&mut self, question: &str, choices: &[Choice]) -> Result<Vec<usize>, Stop>;
    /// A line; empty where nothing is typed and nothing is offered.
    fn text(&mut self, question: &str, usual: &str, judge: Judge<'_>) -> Result<String, Stop>;
    /// Something the person should know before the next question.
    fn tell(&mut self, text: &str);

    /// Yes or no.
    fn agree(&mut self, question: &str, usual: bool) -> Result<bool, Stop> {
        let choices = [Choice::new("yes", "", Vec::new()), Choice::new("no", "", Vec::new())];
        Ok(self.one(question, &choices, Some(usize::from(!usual)))? == 0)
    }
}

/// A line that a case file takes: not too long, nothing hidden in it, no control of a terminal.
pub fn line(text: &str) -> Result<(), String> {
    if text.chars().count() > 120 {
        return Err("it has more than 120 characters".to_owned());
    }
    match hidden(text, false) {
        Some((_, why)) => Err(why),
        None => Ok(()),
    }
}

/// Text in lines of a terminal, parted between words; the first space of each line is kept as its indent.
pub fn wrapped(text: &str) -> String {
    let indent: String = text.chars().take_while(|c| *c == ' ').collect();
    let mut lines = vec![indent.clone()];
    for word in render::visible(text).split_whitespace() {
        let room = lines.last().map_or(0, |line| line.width()) + word.width() < COLUMNS;
        match lines.last_mut() {
            Some(line) if room || line.trim().is_empty() => {
                if !line.trim().is_empty() {
                    line.push(' ');
                }
                line.push_str(word);
            }
            _ => lines.push(format!("{indent}{word}")),
        }
    }
    lines.join("\n")
}

/// Text on one line of so many columns, with wide characters counted as two, nothing in it that moves a cursor.
pub fn one_line(text: &str, columns: usize) -> String {
    let text = render::visible(text).split_whitespace().collect::<Vec<_>>().join(" ").replace("\u{a0}", " ");
    if text.width() <= columns {
        return text;
    }
    let mut kept = String::new();
    let mut wide = 1;
    for c in text.chars() {
        wide += c.width().unwrap_or(0);
        if wide > columns {
            break;
        }
        kept.push(c);
    }
    format!("{}…", kept.trim_end())
}
