//! What is printed of a case: one sheet set, a guide with its record, reminders for a calendar.

use std::collections::BTreeMap;

use super::{Planned, Workshop};
use crate::diag::{Diagnostic, Findings};
use crate::document::{self, SheetKind};
use crate::output::record::{self, GivenFacts, Record};
use crate::reminders;
use crate::typeset::Pages;
use crate::webpage;
use crate::words::{self, Said};

/// A guide and its record.
pub struct Made {
    pub pdf: Vec<u8>,
    pub pages: Pages,
    pub record: Record,
}

/// What a sheet is given on.
pub enum Form {
    Pages(Pages),
    /// One page of HTML.
    Page(String),
}

/// One sheet of a case, set.
pub struct Printed {
    pub kind: SheetKind,
    pub form: Form,
    /// The messages it says, and how far each has been checked.
    pub said: Said,
    /// How easily its words read, where its language has a measure.
    pub read: Option<record::Readability>,
}

impl Printed {
    /// The file.
    ///
    /// # Errors
    /// When the pages break a standard that they claim.
    pub fn bytes(&self) -> Result<Vec<u8>, Diagnostic> {
        match &self.form {
            Form::Pages(pages) => pages.pdf(),
            Form::Page(page) => Ok(page.clone().into_bytes()),
        }
    }

    /// What the record says of it.
    pub fn given(&self, bytes: &[u8]) -> GivenFacts {
        let pages = match &self.form {
            Form::Pages(pages) => pages.count(),
            Form::Page(_) => 1,
        };
        GivenFacts { readability: self.read.clone(), ..GivenFacts::of_pages(pages, bytes) }
    }
}

/// Reminders for a calendar.
pub struct Calendar {
    /// iCalendar.
    pub text: String,
    /// How many events it has; one that repeats is one.
    pub events: usize,
    /// The messages they say, and how far each has been checked.
    pub said: Said,
}

impl Workshop {
    /// One sheet of the plans: document, words, pages. One plan for each hand of a case. Nothing when the case has
    /// nothing for this sheet.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn print(&self, kind: SheetKind, hands: &[Planned<'_>]) -> Result<Option<Printed>, Findings> {
        let Some(sheet) = self.say(kind, hands)? else { return Ok(None) };
        let form = match kind {
            SheetKind::Phone => Form::Page(webpage::page(&sheet, &self.album)?),
            _ => Form::Pages(self.typesetter.set(&sheet, &self.album)?),
        };
        let read = self.readability(&sheet).and_then(|read| {
            let score = format!("{:.1}", read.grade?);
            Some(record::Readability { formula: format!("{}, {}", read.gate.name(), read.gate.limit()), score })
        });
        Ok(Some(Printed { kind, form, said: sheet.said, read }))
    }

    /// The guide of the plans, as a file, with its record.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn guide(&self, hands: &[Planned<'_>]) -> Result<Made, Findings> {
        let Some(printed) = self.print(SheetKind::Guide, hands)? else { return Err(Findings::default()) };
        let pdf = printed.bytes()?;
        let sheets = BTreeMap::from([(printed.kind.word(), printed.given(&pdf))]);
        let record = self.record(hands, sheets, printed.said.state())?;
        let Form::Pages(pages) = printed.form else { return Err(Findings::default()) };
        Ok(Made { pdf, pages, record })
    }

    /// The reminders of the plans, for a calendar.
    ///
    /// # Errors
    /// When something in them cannot be said.
    pub fn reminders(&self, hands: &[Planned<'_>]) -> Result<Calendar, Findings> {
        let Some((first, others)) = hands.split_first() else { return Err(Findings::default()) };
        let said = words::remind(&self.words, &document::reminders(first, others))?;
        Ok(Calendar { text: reminders::file(&said), events: said.events.len(), said: said.said })
    }
}
