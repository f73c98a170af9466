//! What can still be checked in a case whose fields are not all readable, so that one fault does not hide another.

use std::collections::BTreeMap;
use std::str::FromStr;

use crate::content::{Library, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::language::{LanguageTag, Languages};
use crate::source::{Limits, Node, NodeKind, Place, SourceText, parse};

/// Names in a broken case that lead to nothing.
pub fn known_ids(source: &SourceText, library: &Library, languages: &Languages) -> Findings {
    let mut findings = Findings::default();
    let Ok(Node { kind: NodeKind::Mapping(entries), .. }) = parse(source, Limits::CASE) else { return findings };
    for entry in &entries {
        let names: Vec<&Node> = match &entry.value.kind {
            NodeKind::List(items) => items.iter().collect(),
            _ => vec![&entry.value],
        };
        for node in names {
            let NodeKind::Scalar(name) = &node.kind else { continue };
            let fault = match entry.key.as_str() {
                "condition" => missing("condition", name, &library.conditions),
                "orthosis" => missing("orthosis", name, &library.orthoses),
                "activities" => missing("activity", name, &library.activities),
                "factors" => missing("factor", name, &library.factors),
                "language" => name
                    .parse::<LanguageTag>()
                    .ok()
                    .filter(|tag| languages.find(tag).is_none())
                    .map(|_| unknown("language", name, languages.tags())),
                _ => None,
            };
            if let Some((message, help)) = fault {
                let place = Place { source: source.clone(), span: node.span.clone() };
                findings.push(Diagnostic::error(Code::ID_UNKNOWN, place, message).help(help));
            }
        }
    }
    findings
}

/// The fault when a well-formed id names nothing; a badly formed one is reported where it is read.
fn missing<I: FromStr + Ord + std::fmt::Display, T>(
    what: &str,
    name: &str,
    known: &BTreeMap<I, T>,
) -> Option<(String, String)> {
    let id = name.parse::<I>().ok()?;
    if known.contains_key(&id) {
        return None;
    }
    let names: Vec<String> = known.keys().map(ToString::to_string).collect();
    Some(unknown(what, name, names.iter().map(String::as_str)))
}
