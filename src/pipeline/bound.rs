//! Sheets about a condition, and sheets that are bound with others.

use super::{Planned, Workshop};
use crate::diag::{Diagnostic, Findings};
use crate::document::{self, FactsAsk, SheetKind};
use crate::typeset::{Leaf, Pages};
use crate::webpage;
use crate::words::{self, Sheet};

impl Workshop {
    /// The fact sheet of a condition: document, words, pages.
    ///
    /// # Errors
    /// As [`Self::print`].
    pub fn facts(&self, ask: FactsAsk<'_>) -> Result<Pages, Findings> {
        Ok(self.set(&self.say_facts(ask)?)?)
    }

    /// The fact sheet of a condition in its language, as the clinic gives it out where there is one, before it is set.
    ///
    /// # Errors
    /// When something in it cannot be said.
    pub fn say_facts(&self, ask: FactsAsk<'_>) -> Result<Sheet, Findings> {
        let document = match self.clinic() {
            Some(clinic) => document::clinic_facts(ask, clinic),
            None => document::facts(ask),
        };
        words::localise(&self.words, &document)
    }

    /// Sets a sheet that has been said.
    ///
    /// # Errors
    /// A character without a glyph, a picture that cannot be drawn, or any fault of the typesetter.
    pub fn set(&self, sheet: &Sheet) -> Result<Pages, Diagnostic> {
        self.typesetter.set(sheet, &self.album)
    }

    /// A sheet that has been said, as a page for a telephone.
    ///
    /// # Errors
    /// A block that has no form there, or a picture that cannot be drawn.
    pub fn set_phone(&self, sheet: &Sheet) -> Result<String, Diagnostic> {
        webpage::page(sheet, &self.album)
    }

    /// The fact sheet of a condition, ready to be bound with others.
    ///
    /// # Errors
    /// As [`Self::print`].
    pub fn facts_leaf(&self, ask: FactsAsk<'_>) -> Result<Leaf, Findings> {
        Ok(self.typesetter.leaf(&self.say_facts(ask)?, &self.album)?)
    }

    /// One sheet of the plans, ready to be bound with others. Nothing when the case has nothing for it.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn leaf(&self, kind: SheetKind, hands: &[Planned<'_>]) -> Result<Option<Leaf>, Findings> {
        let Some(sheet) = self.say(kind, hands)? else { return Ok(None) };
        Ok(Some(self.typesetter.leaf(&sheet, &self.album)?))
    }
}
