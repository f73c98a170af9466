//! The only place that prints.

use std::io::{IsTerminal, Write};

use indicatif::{ProgressBar, ProgressStyle};
use serde_json::Value;

use super::args::Format;
use super::{Ended, args};
use crate::diag::render::{self, Style};
use crate::diag::{Code, Findings};

/// Standard output and standard error, with the form that was asked for.
pub struct Terminal {
    format: Format,
    colour: bool,
}

impl Terminal {
    pub fn new(format: args::Format) -> Self {
        // https://no-color.org: any value that is not empty turns colour off.
        let no_colour = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
        Self { format, colour: std::io::stderr().is_terminal() && !no_colour }
    }

    pub fn is_json(&self) -> bool {
        self.format == Format::Json
    }

    /// Whether what a person sees may be in colour.
    pub fn is_coloured(&self) -> bool {
        self.colour
    }

    /// Whether a person sits at a terminal whose cursor can be moved.
    pub fn is_lively() -> bool {
        let dumb = std::env::var_os("TERM").is_some_and(|kind| kind == "dumb");
        std::io::stdin().is_terminal() && std::io::stderr().is_terminal() && !dumb
    }

    /// Whether somebody types at a terminal.
    pub fn is_person() -> bool {
        std::io::stdin().is_terminal()
    }

    /// A result: standard output.
    pub fn say(&self, text: &str) {
        let mut out = std::io::stdout().lock();
        // A reader that went away is no reason to fail.
        let _closed = writeln!(out, "{}", text.trim_end_matches('\n'));
    }

    pub fn say_json(&self, value: &Value) {
        let text = serde_json::to_string_pretty(value).unwrap_or_default();
        self.say(&text);
    }

    /// A remark about what goes on, for the person who looks on: standard error.
    pub fn aside(&self, text: &str) {
        if !self.is_json() {
            let mut err = std::io::stderr().lock();
            let _closed = writeln!(err, "{}", render::visible(text));
        }
    }

    /// Findings: standard error for people, standard output for programs when nothing else goes there.
    pub fn findings(&self, findings: &Findings) {
        if findings.is_empty() || self.is_json() {
            return;
        }
        let style = match self.format {
            Format::Short => Style::Short,
            Format::Full | Format::Json => Style::Full { colour: self.colour },
        };
        let mut err = std::io::stderr().lock();
        let _closed = writeln!(err, "{}", render::text(findings, style).trim_end_matches('\n'));
    }

    /// A word to whoever waits: standard error, and nothing for programs.
    pub fn note(&self, text: &str) {
        if !self.is_json() {
            let _closed = writeln!(std::io::stderr().lock(), "{text}");
        }
    }

    /// A bar for long work, silent when standard error is no terminal, and for programs.
    pub fn progress(&self, count: usize) -> ProgressBar {
        if count < 2 || self.is_json() || !std::io::stderr().is_terminal() {
            return ProgressBar::hidden();
        }
        let bar = ProgressBar::new(count as u64);
        if let Ok(style) = ProgressStyle::with_template("{pos} of {len} guides, {per_sec}, {eta} left") {
            bar.set_style(style);
        }
        bar
    }
}

/// How a run with these findings ended.
pub fn ended(findings: &Findings) -> Ended {
    let of = |code: &'static str| {
        let own =
            [Code::PLAN_INVARIANT, Code::TYPESET_FAILED, Code::WORDS_MISSING, Code::WORDS_BROKEN, Code::WORDS_TEMPLATE];
        let outside = [Code::FILE_UNREADABLE, Code::OUTPUT_UNWRITABLE, Code::SHELF_BUSY];
        if own.iter().any(|known| known.name() == code) {
            Ended::Fault
        } else if outside.iter().any(|known| known.name() == code) {
            Ended::Outside
        } else {
            Ended::Refused
        }
    };
    if findings.has_errors() {
        findings.codes().into_iter().map(of).max().unwrap_or(Ended::Refused)
    } else {
        Ended::Well
    }
}
