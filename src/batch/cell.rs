//! One cell of a table.

use super::mapping::{DateForm, date};
use super::shape::Takes;
use crate::source::Span;
use crate::units::Misread;

/// What a table holds in a cell. Only a workbook knows more than text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    Text,
    Number,
    /// A real date, as text in the form of a case.
    Date,
    /// A time of day, in the same way.
    Time,
    /// A date with a time of day.
    Moment,
    /// Nothing that can be read; the text says why.
    Fault,
}

/// A cell, and where it stands in the text of its row.
#[derive(Clone, Debug)]
pub struct Cell {
    pub kind: Kind,
    pub text: String,
    pub span: Span,
}

impl Cell {
    pub fn is_empty(&self) -> bool {
        self.kind != Kind::Fault && self.text.trim().is_empty()
    }

    /// What the case says for it.
    ///
    /// # Errors
    /// What the cell holds in the place of what is wanted.
    pub fn value(&self, takes: Takes, dates: Option<DateForm>) -> Result<String, Misread> {
        let text = self.text.trim();
        match (self.kind, takes) {
            (Kind::Fault, _) => Err(Misread::plain(text)),
            (Kind::Text, Takes::Date) => date(text, dates),
            (Kind::Text | Kind::Number, Takes::Text | Takes::Time | Takes::List)
            | (Kind::Date, Takes::Date)
            | (Kind::Time, Takes::Time) => Ok(text.to_owned()),
            (Kind::Number, Takes::Date) => Err(Misread::new(
                format!("`{text}` is a number where a date is wanted"),
                "a date into the cell, or give the column the form of a date",
            )),
            (Kind::Moment, _) => {
                Err(Misread::new(format!("`{text}` is a date and a time at once"), "one of the two into the cell"))
            }
            (Kind::Date | Kind::Time, _) => {
                let what = if self.kind == Kind::Date { "a date" } else { "a time of day" };
                Err(Misread::new(
                    format!("the workbook holds {what} here (`{text}`), and something else is wanted"),
                    "what was meant into the cell, after giving the column the form of text",
                ))
            }
        }
    }
}
