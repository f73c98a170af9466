//! Conditions seen through the skin, and orthoses that sit right and wrong.

use std::collections::BTreeMap;

use crate::body::{Finger, Joint, Knuckle};
use crate::content::{Condition, Fault};
use crate::diag::{Code, Diagnostic};
use crate::document::{Arg, Message};
use crate::ids::{ConditionId, OrthosisId, StructureId};
use crate::picture::asks::{self, Sitter};
use crate::picture::inside::{self, Inside};
use crate::picture::scene::Worn;

use super::caption::spoken;
use super::lettering::Lettering;
use super::wanted::Asker;

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
            .map(|id| (id, Lettering::of(self.workshop, self.language, &self.speaker, id)))
            .collect();
        let size = |id: &StructureId| names.get(id).map_or((1, 1), Lettering::size);
        let held = Lettering::plain(self.workshop, self.language, &self.speaker, "picture-held-mark");
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
        let mut said = vec![Message::new("picture-inside")];
        let structures = one.structures.iter().map(|id| Message::new(format!("structure-{id}"))).collect();
        said.push(Message::new("picture-structures").with("structures", Arg::List(structures)));
        if !one.held.is_empty() {
            said.push(Message::new("picture-held-joints").with("joints", Arg::List(named(&one.held))));
        }
        let said: Vec<String> =
            said.into_iter().map(|message| spoken(&self.speaker, message, self.sitter.side, "")).collect();
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

/// Joints by name: a row of knuckles in one word, a single one with its finger.
fn named(held: &[Joint]) -> Vec<Message> {
    let mut found: Vec<Message> = Vec::new();
    for joint in held {
        let row =
            Knuckle::ALL.into_iter().find(|knuckle| Finger::ALL.iter().any(|finger| knuckle.of(*finger) == *joint));
        let count = |row: Knuckle| Finger::ALL.iter().filter(|finger| held.contains(&row.of(**finger))).count();
        let key = match row {
            Some(row) if count(row) == Finger::ALL.len() => match row {
                Knuckle::Mcp => "held-knuckles".to_owned(),
                Knuckle::Pip => "held-middle-joints".to_owned(),
                Knuckle::Dip => "held-end-joints".to_owned(),
            },
            _ => format!("joint-{joint}"),
        };
        if found.iter().all(|message| *message.key != key) {
            found.push(Message::new(key));
        }
    }
    found
}
