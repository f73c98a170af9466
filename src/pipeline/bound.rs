//! Sheets about a condition, and sheets that are bound with others.

use super::{Planned, Workshop};
use crate::diag::Findings;
use crate::document::{self, FactsAsk, SheetKind};
use crate::typeset::{Leaf, Pages};
use crate::words;

impl Workshop {
    /// The fact sheet of a condition: document, words, pages.
    ///
    /// # Errors
    /// As [`Self::print`].
    pub fn facts(&self, ask: FactsAsk<'_>) -> Result<Pages, Findings> {
        let sheet = words::localise(&self.words, &document::facts(ask))?;
        Ok(self.typesetter.set(&sheet, &self.album)?)
    }

    /// The fact sheet of a condition, ready to be bound with others.
    ///
    /// # Errors
    /// As [`Self::print`].
    pub fn facts_leaf(&self, ask: FactsAsk<'_>) -> Result<Leaf, Findings> {
        let sheet = words::localise(&self.words, &document::facts(ask))?;
        Ok(self.typesetter.leaf(&sheet, &self.album)?)
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
