//! Reading typed values out of a tree, going on after each fault.

use schemars::{JsonSchema, Schema, SchemaGenerator};
use std::borrow::Cow;
use std::collections::BTreeMap;

use super::{Entry, Node, NodeKind, Place, SourceText, Span};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::nearest;
use crate::units::Misread;

/// A value and the place it was written at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct At<T> {
    pub value: T,
    pub span: Span,
}

impl<T> std::ops::Deref for At<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.value
    }
}

impl<T: JsonSchema> JsonSchema for At<T> {
    fn inline_schema() -> bool {
        T::inline_schema()
    }
    fn schema_name() -> Cow<'static, str> {
        T::schema_name()
    }
    fn schema_id() -> Cow<'static, str> {
        T::schema_id()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        T::json_schema(generator)
    }
}

/// Reads one file's tree and gathers what is wrong with it.
pub struct Reader<'a> {
    source: &'a SourceText,
    findings: Findings,
}

impl<'a> Reader<'a> {
    pub fn new(source: &'a SourceText) -> Self {
        Self { source, findings: Findings::default() }
    }

    pub fn finish(self) -> Findings {
        self.findings
    }

    pub fn place(&self, span: &Span) -> Place {
        Place { source: self.source.clone(), span: span.clone() }
    }

    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.findings.push(diagnostic);
    }

    /// Reports a node of the wrong shape.
    pub fn shape(&mut self, node: &Node, wanted: &str) {
        let diagnostic = Diagnostic::error(
            Code::FIELD_SHAPE,
            self.place(&node.span),
            format!("{} stands here where {wanted} is wanted", node.describe()),
        );
        self.push(diagnostic);
    }

    /// Reports a value that could not be read.
    pub fn misread(&mut self, node: &Node, misread: &Misread) {
        let mut diagnostic = Diagnostic::error(Code::FIELD_VALUE, self.place(&node.span), misread.wrong.clone());
        diagnostic.help = misread.help();
        self.push(diagnostic);
    }

    /// The text of a scalar.
    pub fn scalar<'n>(&mut self, node: &'n Node, wanted: &str) -> Option<&'n str> {
        match &node.kind {
            NodeKind::Scalar(text) => Some(text),
            _ => {
                self.shape(node, wanted);
                None
            }
        }
    }

    /// A scalar read by its text grammar.
    pub fn parsed<T: std::str::FromStr<Err = Misread>>(&mut self, node: &Node, wanted: &str) -> Option<T> {
        let text = self.scalar(node, wanted)?;
        text.parse().map_err(|misread| self.misread(node, &misread)).ok()
    }

    /// The entries of a mapping, after complaining about keys that no field has.
    pub fn entries<'n>(&mut self, node: &'n Node, what: &str, fields: &[&str]) -> Option<&'n [Entry]> {
        let NodeKind::Mapping(entries) = &node.kind else {
            self.shape(node, &format!("{what} (a mapping of `key: value` lines)"));
            return None;
        };
        for entry in entries {
            if !fields.contains(&entry.key.as_str()) {
                let mut diagnostic = Diagnostic::error(
                    Code::FIELD_UNKNOWN,
                    self.place(&entry.key_span),
                    format!("{what} has no field `{}`", entry.key),
                );
                diagnostic = match nearest(&entry.key, fields.iter().copied()) {
                    Some(near) => diagnostic.help(format!("write `{near}`")),
                    None => diagnostic.help(format!("use one of: {}", fields.join(", "))),
                };
                self.push(diagnostic);
            }
        }
        Some(entries)
    }

    /// Reports a field that must be there and is not.
    pub fn missing(&mut self, node: &Node, what: &str, field: &str) {
        let first = match &node.kind {
            NodeKind::Mapping(entries) => entries.first().map_or(node.span.clone(), |entry| entry.key_span.clone()),
            _ => node.span.clone(),
        };
        // No rule exists without a basis: that lack has a name of its own.
        let (code, help) = if field == "source" {
            (
                Code::CONTENT_NO_BASIS,
                "add `source: KEY` of sources.yaml, `source: common practice` or `source: from memory`".to_owned(),
            )
        } else {
            (Code::FIELD_MISSING, format!("add a line `{field}: …`"))
        };
        let diagnostic = Diagnostic::error(code, self.place(&first), format!("{what} lacks `{field}`"))
            .label(format!("{what} begins here"))
            .help(help);
        self.push(diagnostic);
    }
}

/// A type that can be read from a node. A fault is reported to the reader and gives `None`.
pub trait FromNode: Sized {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self>;

    /// What an absent field stands for; `None` when the field is required.
    fn absent() -> Option<Self> {
        None
    }
}

impl<T: FromNode> FromNode for At<T> {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        T::from_node(node, reader).map(|value| Self { value, span: node.span.clone() })
    }
}

impl<T: FromNode> FromNode for Option<T> {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        if matches!(node.kind, NodeKind::Null) { Some(None) } else { T::from_node(node, reader).map(Some) }
    }
    fn absent() -> Option<Self> {
        Some(None)
    }
}

impl<T: FromNode> FromNode for Vec<T> {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        match &node.kind {
            NodeKind::Null => Some(Vec::new()),
            NodeKind::List(items) => {
                let read: Vec<Option<T>> = items.iter().map(|item| T::from_node(item, reader)).collect();
                read.into_iter().collect()
            }
            _ => {
                reader.shape(node, "a list (lines that begin with `- `)");
                None
            }
        }
    }
    fn absent() -> Option<Self> {
        Some(Vec::new())
    }
}

impl<K: std::str::FromStr<Err = Misread> + Ord, V: FromNode> FromNode for BTreeMap<K, V> {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        let NodeKind::Mapping(entries) = &node.kind else {
            reader.shape(node, "a mapping of `key: value` lines");
            return None;
        };
        let mut map = Some(Self::new());
        for entry in entries {
            let value = V::from_node(&entry.value, reader);
            let key = match entry.key.parse::<K>() {
                Ok(key) => Some(key),
                Err(misread) => {
                    let key = Node { kind: NodeKind::Null, span: entry.key_span.clone() };
                    reader.misread(&key, &misread);
                    None
                }
            };
            match (key, value, &mut map) {
                (Some(key), Some(value), Some(map)) => {
                    map.insert(key, value);
                }
                _ => map = None,
            }
        }
        map
    }
    fn absent() -> Option<Self> {
        Some(Self::new())
    }
}

impl FromNode for bool {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        match reader.scalar(node, "`true` or `false`")? {
            "true" => Some(true),
            "false" => Some(false),
            other => {
                let wrong = format!("`{other}` is neither true nor false");
                reader.misread(node, &Misread::new(wrong, "`true` or `false`"));
                None
            }
        }
    }
    fn absent() -> Option<Self> {
        Some(false)
    }
}

impl FromNode for String {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        reader.scalar(node, "text").map(str::to_owned)
    }
}
