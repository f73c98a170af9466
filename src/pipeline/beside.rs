//! A sheet in the person's language and another, beside each other.

use super::{Form, Planned, Printed, Workshop};
use crate::diag::Findings;
use crate::document::SheetKind;
use crate::words;

impl Workshop {
    /// One sheet of the plans beside the same sheet of the same plans made in another language. Nothing when the case has
    /// nothing for it. What it says is what both say.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn print_beside(
        &self,
        kind: SheetKind,
        hands: &[Planned<'_>],
        other: &[Planned<'_>],
    ) -> Result<Option<Printed>, Findings> {
        let (Some(first), Some(second)) = (self.say(kind, hands)?, self.say(kind, other)?) else { return Ok(None) };
        let page = words::beside(&self.words, &first, &second)?;
        let leaves = [self.typesetter.leaf(&first, &self.album)?, self.typesetter.leaf(&second, &self.album)?];
        let form = Form::Pages(self.typesetter.set_beside(page, leaves)?);
        Ok(Some(Printed { kind, form, said: first.said.and(second.said), read: None }))
    }
}
