//! YAML text to a tree that keeps the place of every key and value.

use std::fmt;

use serde::Deserialize;
use serde::de::{MapAccess, SeqAccess, Visitor};
use serde_yaml::Spanned;

use super::{Place, SourceText, Span};
use crate::diag::{Code, Diagnostic};

/// What a file may cost to read. Beyond it the file is refused: a case file is twenty lines, not a gigabyte.
#[derive(Clone, Copy, Debug)]
pub struct Limits {
    /// Bytes of text.
    pub bytes: usize,
    /// Scalars, lists and mappings together.
    pub nodes: usize,
}

impl Limits {
    /// For one case file.
    pub const CASE: Self = Self { bytes: 256 * 1024, nodes: 5_000 };
    /// For one content file.
    pub const CONTENT: Self = Self { bytes: 512 * 1024, nodes: 20_000 };
}

/// One YAML node and where it stands.
#[derive(Clone, Debug)]
pub struct Node {
    pub kind: NodeKind,
    pub span: Span,
}

/// What stands there. Scalars keep their spelling: "07:30" is not a number in disguise, `012` not twelve.
#[derive(Clone, Debug)]
pub enum NodeKind {
    Null,
    Scalar(String),
    List(Vec<Node>),
    Mapping(Vec<Entry>),
}

/// One `key: value` of a mapping.
#[derive(Clone, Debug)]
pub struct Entry {
    pub key: String,
    pub key_span: Span,
    pub value: Node,
}

impl Node {
    /// What it is, for a message.
    pub fn describe(&self) -> &'static str {
        match self.kind {
            NodeKind::Null => "nothing",
            NodeKind::Scalar(_) => "a single value",
            NodeKind::List(_) => "a list",
            NodeKind::Mapping(_) => "a mapping",
        }
    }
}

/// Reads the single document of a file.
///
/// # Errors
/// One diagnostic: empty, not YAML, two documents, over the limits, a duplicate key, an unknown tag.
pub fn parse(source: &SourceText, limits: Limits) -> Result<Node, Diagnostic> {
    guard(source, limits)?;
    let node = serde_yaml::from_str_with_options::<Spanned<Raw>>(source.text(), options(limits))
        .map_err(|error| broken(source, &error))?;
    let node = settle(source, node);
    if matches!(node.kind, NodeKind::Null) {
        return Err(empty(source));
    }
    Ok(node)
}

fn guard(source: &SourceText, limits: Limits) -> Result<(), Diagnostic> {
    let at_start = || Place { source: source.clone(), span: Span::new(0..0) };
    if source.text().len() > limits.bytes {
        return Err(Diagnostic::error(
            Code::YAML_TOO_LARGE,
            at_start(),
            format!("the file has {} KiB, more than any such file needs", source.text().len() / 1024),
        )
        .help(format!("give a file of at most {} KiB", limits.bytes / 1024)));
    }
    if source.text().trim().is_empty() {
        return Err(empty(source));
    }
    if let Some((at, found)) =
        source.text().char_indices().find(|(_, c)| c.is_control() && !matches!(c, '\n' | '\r' | '\t'))
    {
        let span = Span::new(at..at + found.len_utf8());
        return Err(Diagnostic::error(
            Code::YAML_NOT_TEXT,
            Place { source: source.clone(), span },
            format!("a control character (U+{:04X}) that has no place in a text file", u32::from(found)),
        )
        .help("save the file as plain text in UTF-8"));
    }
    Ok(())
}

fn empty(source: &SourceText) -> Diagnostic {
    Diagnostic::error(
        Code::YAML_EMPTY,
        Place { source: source.clone(), span: Span::new(0..0) },
        "the file holds nothing",
    )
    .help("start from the example that `palmleaf schema --example` prints")
}

fn options(limits: Limits) -> serde_yaml::Options {
    serde_yaml::options! {
        strict_booleans: true,
        reject_unsupported_tags: true,
        with_snippet: false,
        budget: serde_yaml::budget! {
            max_nodes: limits.nodes,
            max_depth: 24,
            max_aliases: 20,
        },
    }
}

/// Translates the parser's error into the one way this program speaks of faults.
fn broken(source: &SourceText, error: &serde_yaml::Error) -> Diagnostic {
    let span = error.location().map_or(Span::new(0..0), |location| char_span(source, &location));
    let text = error.without_snippet().to_string();
    let lower = text.to_lowercase();
    let place = Place { source: source.clone(), span };
    if lower.contains("budget") || lower.contains("alias") || lower.contains("recursion") {
        return Diagnostic::error(Code::YAML_TOO_LARGE, place, "the file is nested or repeated beyond reason")
            .help("write the values out, without anchors and aliases");
    }
    if lower.contains("duplicate") {
        return Diagnostic::error(Code::YAML_DUPLICATE_KEY, place, "this key stands here a second time")
            .help("keep one of the two");
    }
    if lower.contains("multiple") && lower.contains("document") {
        return Diagnostic::error(Code::YAML_TWO_DOCUMENTS, place, "the file holds a second document after `---`")
            .help("write one case to a file");
    }
    if lower.contains("non-finite") {
        return Diagnostic::error(Code::FIELD_VALUE, place, "infinity is no value that a file can hold")
            .help("write a plain figure with its unit, such as `8 h`");
    }
    let first = text.lines().next().unwrap_or_default();
    let first = first.split(" at line").next().unwrap_or(first).trim_end_matches('.');
    Diagnostic::error(Code::YAML_BROKEN, place, format!("this is not YAML: {first}"))
        .help("check indentation, quotes and the space after each colon")
}

fn char_span(source: &SourceText, location: &serde_yaml::Location) -> Span {
    let text = source.text();
    let line = usize::try_from(location.line()).unwrap_or(1).max(1);
    let column = usize::try_from(location.column()).unwrap_or(1).max(1);
    let line_start: usize = text.split_inclusive('\n').take(line - 1).map(str::len).sum();
    let rest = &text[line_start.min(text.len())..];
    let start = line_start + rest.chars().take(column - 1).map(char::len_utf8).sum::<usize>();
    let word = text[start.min(text.len())..].split(['\n', '\r']).next().unwrap_or_default().trim_end().len();
    Span::new(start.min(text.len())..(start + word).min(text.len()))
}

/// The parser's tree, before scalars get their spelling back from the text.
enum Raw {
    Null,
    Text(String),
    /// A boolean or number: its spelling is taken from the source.
    Other(String),
    List(Vec<Spanned<Raw>>),
    Mapping(Vec<(Spanned<String>, Spanned<Raw>)>),
}

impl<'de> Deserialize<'de> for Raw {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Any;
        impl<'de> Visitor<'de> for Any {
            type Value = Raw;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a value, a list or a mapping")
            }
            fn visit_unit<E>(self) -> Result<Raw, E> {
                Ok(Raw::Null)
            }
            fn visit_none<E>(self) -> Result<Raw, E> {
                Ok(Raw::Null)
            }
            fn visit_some<D: serde::Deserializer<'de>>(self, deserializer: D) -> Result<Raw, D::Error> {
                Raw::deserialize(deserializer)
            }
            fn visit_bool<E>(self, value: bool) -> Result<Raw, E> {
                Ok(Raw::Other(value.to_string()))
            }
            fn visit_i64<E>(self, value: i64) -> Result<Raw, E> {
                Ok(Raw::Other(value.to_string()))
            }
            fn visit_u64<E>(self, value: u64) -> Result<Raw, E> {
                Ok(Raw::Other(value.to_string()))
            }
            fn visit_i128<E>(self, value: i128) -> Result<Raw, E> {
                Ok(Raw::Other(value.to_string()))
            }
            fn visit_u128<E>(self, value: u128) -> Result<Raw, E> {
                Ok(Raw::Other(value.to_string()))
            }
            fn visit_f64<E>(self, value: f64) -> Result<Raw, E> {
                Ok(Raw::Other(value.to_string()))
            }
            fn visit_str<E>(self, value: &str) -> Result<Raw, E> {
                Ok(Raw::Text(value.to_owned()))
            }
            fn visit_string<E>(self, value: String) -> Result<Raw, E> {
                Ok(Raw::Text(value))
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Raw, A::Error> {
                let mut items = Vec::new();
                while let Some(item) = seq.next_element::<Spanned<Raw>>()? {
                    items.push(item);
                }
                Ok(Raw::List(items))
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Raw, A::Error> {
                let mut entries = Vec::new();
                while let Some(entry) = map.next_entry::<Spanned<String>, Spanned<Raw>>()? {
                    entries.push(entry);
                }
                Ok(Raw::Mapping(entries))
            }
        }
        deserializer.deserialize_any(Any)
    }
}

fn settle(source: &SourceText, raw: Spanned<Raw>) -> Node {
    let mut span = span_of(source, &raw.referenced);
    let kind = match raw.value {
        Raw::Null => NodeKind::Null,
        Raw::Text(text) => NodeKind::Scalar(text),
        Raw::Other(value) => {
            let spelt = source.text().get(span.start..span.end).unwrap_or("").trim();
            let plain = !spelt.is_empty() && !spelt.starts_with('*') && !spelt.contains('\n');
            NodeKind::Scalar(if plain { spelt.to_owned() } else { value })
        }
        Raw::List(items) => NodeKind::List(items.into_iter().map(|item| settle(source, item)).collect()),
        Raw::Mapping(entries) => NodeKind::Mapping(
            entries
                .into_iter()
                .map(|(key, value)| Entry {
                    key_span: span_of(source, &key.referenced),
                    key: key.value,
                    value: settle(source, value),
                })
                .collect(),
        ),
    };
    if let NodeKind::Scalar(_) = kind {
        let covered = source.text().get(span.start..span.end).unwrap_or("");
        span.end = span.start + covered.trim_end().len();
    }
    Node { kind, span }
}

fn span_of(source: &SourceText, location: &serde_yaml::Location) -> Span {
    let bytes = location.span().byte_offset().zip(location.span().byte_len());
    match bytes.and_then(|(start, len)| Some((usize::try_from(start).ok()?, usize::try_from(len).ok()?))) {
        Some((start, len)) if source.text().get(start..start + len).is_some() => Span::new(start..start + len),
        _ => char_span(source, location),
    }
}
