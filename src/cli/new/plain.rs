//! Plain questions with numbered answers: for screen readers, pipes and files of answers.

use std::io::BufRead;

use super::ask::{Ask, Choice, Judge, Stop, wrapped};
use crate::cli::terminal::Terminal;
use crate::diag::render::visible;

/// Lists up to this length are read out whole; of longer ones the first few, and the rest when asked for.
const SHORT: usize = 12;

/// Reads a line for each question.
pub struct Plain<'a> {
    terminal: &'a Terminal,
    lines: Box<dyn BufRead + 'a>,
    number: usize,
    /// Somebody is there to be asked again.
    person: bool,
}

impl<'a> Plain<'a> {
    pub fn new(terminal: &'a Terminal, lines: Box<dyn BufRead + 'a>, person: bool) -> Self {
        Self { terminal, lines, number: 0, person }
    }

    /// The next line. In lines that nobody types, those that begin with `#` are remarks.
    fn line(&mut self, asked: &str) -> Result<String, Stop> {
        loop {
            let mut text = String::new();
            self.number += 1;
            match self.lines.read_line(&mut text) {
                Ok(0) if self.person => return Err(Stop::Wish),
                Ok(0) => return Err(Stop::NoAnswer { asked: asked.to_owned() }),
                Ok(_) if !self.person && text.starts_with('#') => {}
                Ok(_) => return Ok(text.trim().to_owned()),
                Err(why) => return Err(Stop::Outside(why.to_string())),
            }
        }
    }

    /// A person is asked again; a line of a file is refused.
    fn wrong(&self, asked: &str, why: String) -> Result<(), Stop> {
        if self.person {
            self.terminal.aside(&why);
            return Ok(());
        }
        Err(Stop::Wrong { line: self.number, asked: asked.to_owned(), why })
    }

    fn read_out(&self, choices: &[Choice], places: impl Iterator<Item = usize>) {
        for place in places {
            self.terminal.aside(&format!("  {}. {}", place + 1, choices[place].label));
        }
    }

    fn offer(&self, question: &str, choices: &[Choice], how: &str) {
        self.terminal.aside(&format!("\n{}", wrapped(question)));
        self.read_out(choices, 0..choices.len().min(SHORT));
        if choices.len() > SHORT {
            let more = choices.len() - SHORT;
            self.terminal
                .aside(&format!("  and {more} more: type part of a name in any language, or ? to hear them all"));
        }
        self.terminal.aside(how);
    }

    /// The entry that is meant; several that could be are read out.
    fn meant(&self, choices: &[Choice], typed: &str) -> Result<usize, String> {
        if let Some(place) = typed.parse::<usize>().ok().filter(|place| (1..=choices.len()).contains(place)) {
            return Ok(place - 1);
        }
        if typed == "?" {
            self.read_out(choices, 0..choices.len());
            return Err("Which one?".to_owned());
        }
        let mut found: Vec<(i64, usize)> =
            choices.iter().enumerate().filter_map(|(place, one)| Some((one.score(typed)?, place))).collect();
        found.sort_by_key(|(score, place)| (-score, *place));
        match found.as_slice() {
            [] => Err(format!("Nothing here is called `{}`.", visible(typed))),
            [(_, only)] => Ok(*only),
            [(Choice::EXACT, exact), (next, _), ..] if *next < Choice::EXACT => Ok(*exact),
            several => {
                self.read_out(choices, several.iter().map(|(_, place)| *place));
                Err(format!("`{}` may be {} of these.", visible(typed), several.len()))
            }
        }
    }
}

impl Ask for Plain<'_> {
    fn one(&mut self, question: &str, choices: &[Choice], usual: Option<usize>) -> Result<usize, Stop> {
        let offered = usual
            .and_then(|usual| choices.get(usual))
            .map_or_else(String::new, |choice| format!("; Enter for {}", choice.id));
        self.offer(question, choices, &format!("Number, id or part of a name{offered}:"));
        loop {
            let typed = self.line(question)?;
            if let Some(usual) = usual.filter(|_| typed.is_empty()) {
                return Ok(usual);
            }
            if typed.is_empty() {
                self.wrong(question, "This has to be answered.".to_owned())?;
                continue;
            }
            match self.meant(choices, &typed) {
                Ok(place) => return Ok(place),
                Err(why) => self.wrong(question, why)?,
            }
        }
    }

    fn several(&mut self, question: &str, choices: &[Choice]) -> Result<Vec<usize>, Stop> {
        self.offer(question, choices, "Several, with commas between; Enter for none:");
        loop {
            let typed = self.line(question)?;
            let meant: Result<Vec<usize>, String> = typed
                .split([',', '،', '，', '、'])
                .map(str::trim)
                .filter(|part| !part.is_empty())
                .map(|part| self.meant(choices, part))
                .collect();
            match meant {
                Ok(mut places) => {
                    let mut seen = std::collections::BTreeSet::new();
                    places.retain(|place| seen.insert(*place));
                    return Ok(places);
                }
                Err(why) => self.wrong(question, why)?,
            }
        }
    }

    fn text(&mut self, question: &str, usual: &str, judge: Judge<'_>) -> Result<String, Stop> {
        let offered = if usual.is_empty() { String::new() } else { format!(" (Enter for {usual})") };
        self.terminal.aside(&format!("\n{}", wrapped(&format!("{question}{offered}"))));
        loop {
            let typed = self.line(question)?;
            let text = if typed.is_empty() { usual.to_owned() } else { typed };
            match judge(&text) {
                Ok(()) => return Ok(text),
                Err(why) => self.wrong(question, format!("That cannot be: {why}."))?,
            }
        }
    }

    fn tell(&mut self, text: &str) {
        self.terminal.aside(&wrapped(text));
    }
}
