//! Diagnostics as data: what is wrong, where, what to write instead, and what the rule rests on.
//!
//! Drawing them is in [`render`]; nothing else in the library prints.

mod code;
pub mod render;

pub use code::Code;

use crate::source::Place;

/// How bad it is. An error refuses the file; a warning goes into the record and onto the terminal.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Severity {
    Error,
    Warning,
}

/// A place with a word about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Label {
    pub place: Place,
    pub text: String,
}

/// One fault.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Diagnostic {
    pub severity: Severity,
    pub code: Code,
    /// The fault in the file's own words, lower case, no full stop.
    pub message: String,
    /// Where it is; None for faults of the outside (a folder that cannot be written).
    pub primary: Option<Label>,
    pub more: Vec<Label>,
    pub notes: Vec<String>,
    /// Begins with a verb and gives text to paste.
    pub help: Option<String>,
}

impl Diagnostic {
    /// An error at a place in a file.
    pub fn error(code: Code, place: Place, message: impl Into<String>) -> Self {
        Self {
            severity: Severity::Error,
            code,
            message: message.into(),
            primary: Some(Label { place, text: String::new() }),
            more: Vec::new(),
            notes: Vec::new(),
            help: None,
        }
    }

    /// An error of the outside, with no place in a file.
    pub fn outside(code: Code, message: impl Into<String>) -> Self {
        Self {
            severity: Severity::Error,
            code,
            message: message.into(),
            primary: None,
            more: Vec::new(),
            notes: Vec::new(),
            help: None,
        }
    }

    /// A picture that a sheet needs and that cannot be drawn.
    pub fn undrawn(why: &dyn std::fmt::Display) -> Self {
        Self::outside(Code::TYPESET_FAILED, format!("a picture cannot be drawn: {why}"))
            .help("mend the look of the orthosis or exercise in `content/shapes` or `content/motions`")
    }

    /// The same as a warning.
    #[must_use]
    pub fn as_warning(mut self) -> Self {
        self.severity = Severity::Warning;
        self
    }

    /// A word at the primary place.
    #[must_use]
    pub fn label(mut self, text: impl Into<String>) -> Self {
        if let Some(primary) = &mut self.primary {
            primary.text = text.into();
        }
        self
    }

    /// A second place that the fault has to do with.
    #[must_use]
    pub fn also(mut self, place: Place, text: impl Into<String>) -> Self {
        self.more.push(Label { place, text: text.into() });
        self
    }

    #[must_use]
    pub fn note(mut self, text: impl Into<String>) -> Self {
        self.notes.push(text.into());
        self
    }

    #[must_use]
    pub fn help(mut self, text: impl Into<String>) -> Self {
        self.help = Some(text.into());
        self
    }

    fn order(&self) -> (Severity, String, usize, &'static str) {
        let (file, at) = self
            .primary
            .as_ref()
            .map_or((String::new(), 0), |label| (label.place.source.name().to_owned(), label.place.span.start));
        (self.severity, file, at, self.code.name())
    }
}

/// All that was found wrong with a file, in the order of its lines.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Findings {
    list: Vec<Diagnostic>,
}

impl Findings {
    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.list.push(diagnostic);
    }

    pub fn extend(&mut self, other: Self) {
        self.list.extend(other.list);
    }

    /// All but those of a kind.
    #[must_use]
    pub fn without(mut self, code: Code) -> Self {
        self.list.retain(|diagnostic| diagnostic.code != code);
        self
    }

    /// The same findings, each changed.
    #[must_use]
    pub fn map(self, change: impl FnMut(Diagnostic) -> Diagnostic) -> Self {
        Self { list: self.list.into_iter().map(change).collect() }
    }

    pub fn has_errors(&self) -> bool {
        self.list.iter().any(|diagnostic| diagnostic.severity == Severity::Error)
    }

    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// Errors first, then by file and position; never by hash order. Exact repeats are dropped.
    pub fn sorted(&self) -> Vec<&Diagnostic> {
        let mut list: Vec<&Diagnostic> = self.list.iter().collect();
        list.sort_by_key(|diagnostic| diagnostic.order());
        list.dedup();
        list
    }

    /// The codes raised, in order.
    pub fn codes(&self) -> Vec<&'static str> {
        self.sorted().iter().map(|diagnostic| diagnostic.code.name()).collect()
    }
}

impl From<Diagnostic> for Findings {
    fn from(diagnostic: Diagnostic) -> Self {
        Self { list: vec![diagnostic] }
    }
}

/// A value with the warnings met on the way, or all the errors.
pub type Outcome<T> = Result<(T, Findings), Findings>;
