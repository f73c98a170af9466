//! What a translator sends back, read with suspicion.

use std::collections::BTreeMap;

use roxmltree::{Document, Node, ParsingOptions};

use super::branches::Piece;
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::{Place, SourceText, Span};

/// Nodes of such a file.
const MOST_NODES: u32 = 2_000_000;

/// A unit as it came back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Returned {
    pub id: String,
    /// The English it was translated from, when the file tells it.
    pub source: Option<Vec<Piece>>,
    /// None when nothing was translated.
    pub target: Option<Vec<Piece>>,
    /// Whether the file calls it checked for good.
    pub is_final: bool,
    pub place: Place,
}

/// All units of a file, and the language it says it is in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Returns {
    pub language: String,
    pub units: Vec<Returned>,
}

/// Reads XLIFF 2.0, 2.1 or 2.2. Nothing outside the file is looked at, and a document type is refused: entities have no
/// place in it.
///
/// # Errors
/// When it is no such file; units that cannot be read are named, all at once.
pub fn from_xliff(source: &SourceText) -> Result<Returns, Findings> {
    let options = ParsingOptions { allow_dtd: false, nodes_limit: MOST_NODES, ..ParsingOptions::default() };
    let document = Document::parse_with_options(source.text(), options).map_err(|why| {
        let at = why.pos();
        let line: usize =
            source.text().split_inclusive('\n').take(at.row.saturating_sub(1) as usize).map(str::len).sum();
        let place = Place { source: source.clone(), span: Span::new(line..line) };
        Diagnostic::error(Code::EXCHANGE_BROKEN, place, format!("this is no XLIFF that can be read: {why}"))
            .help("export the words again, and give that file to the translator's tool")
    })?;
    let root = document.root_element();
    let place = |node: Node<'_, '_>| {
        let start = node.range().start;
        let end = source.text()[start..].find(['>', '\n']).map_or(start, |length| start + length + 1);
        Place { source: source.clone(), span: Span::new(start..end) }
    };
    let good =
        root.tag_name().name() == "xliff" && root.attribute("version").is_some_and(|version| version.starts_with("2."));
    let Some(language) = root.attribute("trgLang").filter(|_| good) else {
        let message = "this is no XLIFF 2 with a target language";
        let help = "its first element is `xliff` with `version=\"2.1\"` and `trgLang`";
        return Err(Diagnostic::error(Code::EXCHANGE_BROKEN, place(root), message).help(help).into());
    };
    let mut findings = Findings::default();
    let mut units = Vec::new();
    for node in
        root.descendants().filter(|node| node.has_tag_name((root.tag_name().namespace().unwrap_or_default(), "unit")))
    {
        match unit(node, &place(node)) {
            Ok(unit) => units.push(unit),
            Err(message) => findings.push(Diagnostic::error(Code::EXCHANGE_BROKEN, place(node), message)),
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(Returns { language: language.to_owned(), units }) }
}

fn unit(node: Node<'_, '_>, place: &Place) -> Result<Returned, String> {
    let id = node.attribute("id").ok_or("a unit has no `id`")?.to_owned();
    let data: BTreeMap<&str, &str> = node
        .descendants()
        .filter(|node| node.tag_name().name() == "data")
        .filter_map(|node| Some((node.attribute("id")?, node.text().unwrap_or_default())))
        .collect();
    let (mut source, mut target, mut is_final, mut translated) = (Vec::new(), Vec::new(), true, true);
    // A tool may have cut a unit into segments; what stands between them is said as it is.
    for segment in node.children().filter(|node| matches!(node.tag_name().name(), "segment" | "ignorable")) {
        let part = |name: &str| segment.children().find(|node| node.tag_name().name() == name);
        let own = part("source");
        own.map_or(Ok(()), |node| pieces(node, &data, &id, &mut source))?;
        match part("target") {
            Some(node) => pieces(node, &data, &id, &mut target)?,
            None if segment.tag_name().name() == "ignorable" => {
                own.map_or(Ok(()), |node| pieces(node, &data, &id, &mut target))?;
            }
            None => translated = false,
        }
        if segment.tag_name().name() == "segment" {
            is_final &= segment.attribute("state") == Some("final");
        }
    }
    let target = translated.then_some(target);
    Ok(Returned { id, source: Some(source), target, is_final, place: place.clone() })
}

fn pieces(node: Node<'_, '_>, data: &BTreeMap<&str, &str>, id: &str, out: &mut Vec<Piece>) -> Result<(), String> {
    for child in node.children() {
        if child.is_text() {
            push(out, child.text().unwrap_or_default());
            continue;
        }
        if !child.is_element() {
            continue;
        }
        match child.tag_name().name() {
            "ph" => {
                let from_data = child.attribute("dataRef").and_then(|data_id| data.get(data_id)).copied();
                let variable = from_data.and_then(variable).or_else(|| child.attribute("equiv").map(str::to_owned));
                out.push(Piece::Code(variable.ok_or_else(|| format!("a code of `{id}` names no variable"))?));
            }
            // A mark is the translator's: what it marks is said.
            "mrk" => pieces(child, data, id, out)?,
            "sm" | "em" => {}
            other => return Err(format!("`{id}` holds `<{other}>`, which was not in the file that went out")),
        }
    }
    Ok(())
}

fn push(out: &mut Vec<Piece>, text: &str) {
    if text.is_empty() {
        return;
    }
    match out.last_mut() {
        Some(Piece::Text(before)) => before.push_str(text),
        _ => out.push(Piece::Text(text.to_owned())),
    }
}

/// The variable of `{ $name }`.
pub fn variable(text: &str) -> Option<String> {
    let name = text.trim().strip_prefix('{')?.strip_suffix('}')?.trim().strip_prefix('$')?;
    let good = !name.is_empty() && name.bytes().all(|b| b.is_ascii_alphanumeric() || matches!(b, b'-' | b'_'));
    good.then(|| name.to_owned())
}
