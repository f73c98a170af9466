//! What only fact sheets have, said in a language: joints, and pictures with names.

use serde_json::json;

use super::components::{Said, Voice};
use crate::document::{JointRow, Plate, StructureName};

impl Voice<'_> {
    pub(super) fn structure(&self, name: &StructureName) -> Said {
        Ok(json!({"plain": self.say(&name.plain)?, "term": self.optional(name.term.as_ref())?}))
    }

    pub(super) fn plate(&self, plate: &Plate) -> Said {
        Ok(json!({
            "shown": self.figure(&plate.figure)?,
            "name": self.optional(plate.name.as_ref())?,
            "say": self.texts(&plate.say)?,
        }))
    }

    pub(super) fn joint(&self, row: &JointRow) -> Said {
        Ok(json!({
            "state": row.state.word(),
            "word": self.say(&row.word)?,
            "joints": self.say(&row.joints)?,
            "why": self.texts(&row.why)?,
        }))
    }
}
