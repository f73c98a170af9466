//! Running text as values of the tree.

use serde_json::{Map, Value, json};

use crate::markdown::{Block, Inline};

/// A block of running text.
pub fn prose(block: &Block) -> Value {
    match block {
        Block::Paragraph(inlines) => json!({"t": "p", "inl": runs(inlines)}),
        Block::Heading(level, inlines) => json!({"t": "h", "level": (*level).max(3), "inl": runs(inlines)}),
        Block::List { ordered, items } => {
            let items: Vec<Vec<Value>> = items.iter().map(|item| item.iter().map(prose).collect()).collect();
            json!({"t": if *ordered { "ol" } else { "ul" }, "items": items})
        }
        Block::Fence(_, text) => json!({"t": "p", "inl": [{"s": text}]}),
    }
}

/// Inline runs.
pub fn runs(inlines: &[Inline]) -> Vec<Value> {
    inlines
        .iter()
        .map(|inline| match inline {
            Inline::Text(text) => json!({"s": text}),
            Inline::Strong(inner) => json!({"b": runs(inner)}),
            Inline::Link { href, content } => json!({"a": {"href": href, "inl": runs(content)}}),
        })
        .collect()
}

/// The text alone.
pub fn plain_text(inlines: &[Inline]) -> String {
    inlines
        .iter()
        .map(|inline| match inline {
            Inline::Text(text) => text.clone(),
            Inline::Strong(inner) | Inline::Link { content: inner, .. } => plain_text(inner),
        })
        .collect()
}

/// An object with its kind first.
pub fn object(kind: &str, fields: Vec<(&str, Value)>) -> Value {
    let mut map = Map::new();
    map.insert("t".to_owned(), Value::String(kind.to_owned()));
    for (name, value) in fields {
        map.insert(name.to_owned(), value);
    }
    Value::Object(map)
}
