//! Conditions seen through the skin, and orthoses that sit right and wrong.

use std::collections::BTreeMap;

use crate::content::{Condition, Fault};
use crate::diag::{Code, Diagnostic};
use crate::document::{self, Message};
use crate::ids::{ConditionId, OrthosisId, StructureId};
use crate::picture::asks::{self, Sitter};
use crate::picture::inside::{self, Inside};
use crate::picture::scene::Worn;

use super::caption::spoken;
use super::lettering;
use super::wanted::Asker;
use crate::picture::lettering::Lettering;

/// On a sheet names beside a limb need wider columns, and a pair fills a row, mm.
const COLUMN: (u16, u16) = (88, 112);

impl Asker<'_> {
    /// The same hand on wider paper.
    fn wide(&self) -> Sitter {
        let (width, height) = COLUMN;
        match self.on_columns {
            true => Sitter { width, height, ..self.sitter },
            false => self.sitter,
        }
    }

    /// The pictures of a condition.
    pub fn condition(&mut self, id: &ConditionId, condition: &Condition) {
        let title = self.name("condition", id);
        let names: BTreeMap<&StructureId, Lettering> = condition
            .structures
            .iter()
            .map(|id| (id, lettering::structure(self.workshop, self.language, &self.speaker, id)))
            .collect();
        let size = |id: &StructureId| names.get(id).map_or((1, 1), Lettering::size);
        let held = lettering::plain(self.workshop, self.language, &self.speaker, "picture-held-mark");
        let pictures = inside::condition(&self.wide(), self.library, condition, &size, held.size(), self.view);
        for one in pictures {
            let what = self.shown(&one);
            let view = one.request.view;
            let own = one.structures.iter().filter_map(|id| names.get(id));
            let names = own.chain([&held]).cloned().collect();
            self.add(format!("{id} {view}"), title.clone(), &what, one.request);
            self.name_last(names);
        }
    }

    /// What a picture of a condition shows, in sentences.
    fn shown(&self, one: &Inside) -> String {
        let said: Vec<String> = document::inside(one)
            .into_iter()
            .map(|message| spoken(&self.speaker, message, self.sitter.side, ""))
            .collect();
        said.join(" ")
    }

    /// The pairs of an orthosis, right and wrong; how many there are.
    ///
    /// # Errors
    /// When none is described.
    pub fn faults(&mut self, id: &OrthosisId, worn: &Worn) -> Result<usize, Diagnostic> {
        let title = self.name("orthosis", id);
        let faults: Vec<Fault> = worn.shape.faults.clone();
        let sitter = self.wide();
        for fault in &faults {
            for (wrong, request) in asks::pair(&sitter, worn, fault, self.view) {
                let mut message = Message::new("picture-right");
                if wrong {
                    message = Message::new("picture-wrong").with("fault", Message::new(format!("fault-{}", fault.id)));
                }
                let what = spoken(&self.speaker, message, self.sitter.side, "");
                let way = if wrong { "wrong" } else { "right" };
                self.add(format!("{id} {} {way}", fault.id), title.clone(), &what, request);
                self.caption_last(if wrong {
                    spoken(
                        &self.speaker,
                        Message::new(format!("fault-{}", fault.id)),
                        self.sitter.side,
                        fault.id.as_str(),
                    )
                } else {
                    title.clone()
                });
            }
        }
        if faults.is_empty() {
            let message = format!("no fault of fit of `{id}` is described");
            let help = format!("describe typical ones under `faults` in content/shapes/{id}.yaml");
            return Err(Diagnostic::outside(Code::DRAW_NO_LOOK, message).help(help));
        }
        Ok(faults.len())
    }
}
