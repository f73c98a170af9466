//! A way from the top of a YAML file to one line of it.

use super::{Entry, Node, NodeKind, Span};

/// One step of the way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Step {
    /// The value of a key.
    Field(String),
    /// The item of a list that is this word, or whose `id`, `phase`, `condition` or `exercise` is.
    Item(String),
}

impl Step {
    pub fn field(name: impl Into<String>) -> Self {
        Self::Field(name.into())
    }

    pub fn item(id: impl Into<String>) -> Self {
        Self::Item(id.into())
    }
}

/// Keys that name an item of a list.
const NAMES: [&str; 4] = ["id", "phase", "condition", "exercise"];

/// How far a way leads.
pub struct Reached {
    /// Where it ends: the key of a field, an item of a list.
    pub span: Span,
    /// Steps that led somewhere.
    pub steps: usize,
    /// The nearest `source` on the way: what the rule at its end rests on.
    pub source: Option<String>,
}

impl Node {
    /// Walks as far as the steps lead.
    pub fn reach(&self, way: &[Step]) -> Reached {
        let mut reached = Reached { span: Span::new(self.span.start..self.span.start), steps: 0, source: None };
        let mut here = self;
        loop {
            if let Some(source) = here.entry("source").and_then(|entry| entry.value.word()) {
                reached.source = Some(source.to_owned());
            }
            let Some(step) = way.get(reached.steps) else { return reached };
            match step {
                Step::Field(name) => {
                    let Some(entry) = here.entry(name) else { return reached };
                    reached.span = entry.key_span.clone();
                    here = &entry.value;
                }
                Step::Item(id) => {
                    let NodeKind::List(items) = &here.kind else { return reached };
                    let Some(item) = items.iter().find(|item| item.is_called(id)) else { return reached };
                    reached.span = item.span.clone();
                    here = item;
                }
            }
            reached.steps += 1;
        }
    }

    fn entry(&self, key: &str) -> Option<&Entry> {
        match &self.kind {
            NodeKind::Mapping(entries) => entries.iter().find(|entry| entry.key == key),
            _ => None,
        }
    }

    fn word(&self) -> Option<&str> {
        match &self.kind {
            NodeKind::Scalar(text) => Some(text),
            _ => None,
        }
    }

    fn is_called(&self, id: &str) -> bool {
        let named = |name: &&str| self.entry(name).and_then(|entry| entry.value.word()) == Some(id);
        self.word() == Some(id) || NAMES.iter().any(named)
    }
}
