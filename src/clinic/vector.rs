//! A logo drawn as SVG: only shapes, and nothing that runs, moves or reaches out of the file.
//!
//! What is let through is read by `usvg` into plain paths and written anew from them, so that no page ever holds the
//! file as it came. SVG 1.1 and 2 name the elements; the list below holds those that a still picture needs.

use std::collections::{BTreeMap, BTreeSet};

use usvg::roxmltree::{Document, Node, NodeType, ParsingOptions};
use usvg::{ImageHrefResolver, Indent, Options, Tree, WriteOptions};

use super::logo::Unfit;

const SVG: &str = "http://www.w3.org/2000/svg";
/// Elements that may stand in a logo.
const MOST_NODES: u32 = 20_000;
/// Elements in elements.
const DEEPEST: usize = 64;
/// Elements that `use` may bring in, all together.
const MOST_USED: usize = 20_000;
/// Bytes of the logo when it is written anew.
const MOST_WRITTEN: usize = 4 * 1024 * 1024;

/// Elements of a still picture.
const STILL: &[&str] = &[
    "svg",
    "g",
    "defs",
    "symbol",
    "use",
    "path",
    "rect",
    "circle",
    "ellipse",
    "line",
    "polyline",
    "polygon",
    "linearGradient",
    "radialGradient",
    "stop",
    "clipPath",
    "mask",
    "style",
    "title",
    "desc",
    "metadata",
];
/// Elements that are refused with a word of their own, and what to do instead.
const REFUSED: &[(&[&str], &str, &str)] = &[
    (&["script", "handler", "listener"], "a script", "save it without scripts"),
    (
        &["foreignObject", "iframe", "embed", "object", "video", "audio", "canvas"],
        "something that is no drawing",
        "save it as plain shapes",
    ),
    (&["image", "feImage"], "a picture inside the picture", "save it with shapes only, or save the whole logo as PNG"),
    (
        &["text", "tspan", "textPath", "tref", "font", "font-face", "altGlyph"],
        "letters, which need a font",
        "turn the letters into outlines (paths) before saving",
    ),
    (
        &["animate", "animateTransform", "animateMotion", "animateColor", "set", "discard", "mpath"],
        "something that moves",
        "save it without animation",
    ),
    (&["a"], "a link", "save it without links"),
    (&["filter"], "a filter (shadow or blur)", "save it without effects, or save the whole logo as PNG"),
    (&["pattern", "marker"], "a pattern or marker", "turn patterns and markers into plain shapes before saving"),
];

/// Reads a logo and writes it anew: its text, and how wide and high it is.
///
/// # Errors
/// What is wrong with it, and what to do instead.
pub fn read(text: &str) -> Result<(String, f64, f64), Unfit> {
    let fault = |what: &str, instead: &str| Err(Unfit::new(format!("it holds {what}"), instead));
    if text.contains("<!DOCTYPE") || text.contains("<!ENTITY") {
        return fault("a document type or entities", "save it as plain SVG, without `<!DOCTYPE`");
    }
    let options = ParsingOptions { nodes_limit: MOST_NODES, ..ParsingOptions::default() };
    let document = Document::parse_with_options(text, options).map_err(|why| {
        Unfit::new(format!("it is broken or too large to be a logo: {why}"), "save it again as plain SVG")
    })?;
    if !document.root_element().has_tag_name((SVG, "svg")) {
        return Err(Unfit::new("it is XML, but no SVG", "save it as SVG or PNG"));
    }
    for node in document.descendants() {
        if let Some((what, instead)) = offence(node) {
            return fault(&what, &instead);
        }
    }
    expansion(&document)?;
    // No file is looked for, whatever is written.
    let images = ImageHrefResolver { resolve_data: Box::new(|_, _, _| None), resolve_string: Box::new(|_, _| None) };
    let tree = Tree::from_xmltree(&document, &Options { image_href_resolver: images, ..Options::default() })
        .map_err(|why| Unfit::new(format!("it cannot be read: {why}"), "save it again as plain SVG"))?;
    if !tree.root().has_children() {
        return Err(Unfit::new("it draws nothing", "save it with shapes that have a fill or a line"));
    }
    let written = tree.to_string(&WriteOptions { indent: Indent::None, ..WriteOptions::default() });
    if written.len() > MOST_WRITTEN {
        return Err(Unfit::new("it is too large once it is drawn", "save a simpler drawing"));
    }
    Ok((written, f64::from(tree.size().width()), f64::from(tree.size().height())))
}

/// What may not stand in a logo, with what to do instead.
fn offence(node: Node<'_, '_>) -> Option<(String, String)> {
    let told = |what: &str, instead: &str| Some((what.to_owned(), instead.to_owned()));
    match node.node_type() {
        NodeType::PI => return told("a processing instruction `<?…?>`", "save it as plain SVG"),
        NodeType::Element => {}
        NodeType::Root | NodeType::Comment | NodeType::Text => return None,
    }
    let name = node.tag_name().name();
    if let Some((_, what, instead)) = REFUSED.iter().find(|(names, _, _)| names.contains(&name)) {
        return told(&format!("{what} (`<{name}>`)"), instead);
    }
    let drawn = node.tag_name().namespace() == Some(SVG);
    // Editors keep notes of their own in the file, in names of their own; these are never drawn.
    if drawn && !STILL.contains(&name) {
        return told(&format!("`<{name}>`, which no logo needs"), "save it as plain SVG");
    }
    if node.ancestors().count() > DEEPEST {
        return told("shapes nested too deeply", "take groups apart before saving");
    }
    if name == "style" {
        let rules: String = node.descendants().filter_map(|inner| inner.text()).collect();
        return style(&rules, true)
            .and_then(|what| told(&what, "save it with presentation attributes instead of styles"));
    }
    for attribute in node.attributes() {
        let (key, value) = (attribute.name(), attribute.value());
        if key.len() > 2 && key.get(..2).is_some_and(|first| first.eq_ignore_ascii_case("on")) {
            return told(&format!("a script (`{key}`)"), "save it without scripts");
        }
        if key == "href" && !value.trim_start().starts_with('#') {
            return told(
                &format!("a reference to something outside it (`{}`)", short(value)),
                "save it with everything inside",
            );
        }
        if matches!(key, "filter" | "marker" | "marker-start" | "marker-mid" | "marker-end") && value.trim() != "none" {
            return told(&format!("a filter or marker (`{key}`)"), "save it without effects");
        }
        if let Some(what) = style(value, false) {
            return told(&what, "save it with plain colours and everything inside");
        }
        let clips = matches!(key, "clip-path" | "mask")
            || key == "style" && (value.contains("clip-path") || value.contains("mask"));
        let within = |one: &Node<'_, '_>| matches!(one.tag_name().name(), "clipPath" | "mask");
        if clips && node.ancestors().any(|one| within(&one)) {
            return told("a clip or mask inside another one", "merge clips and masks before saving");
        }
    }
    None
}

/// What may not stand in a style or in the value of an attribute.
fn style(value: &str, sheet: bool) -> Option<String> {
    let lower = value.to_ascii_lowercase();
    if lower.contains("icc-color") || lower.contains("device-cmyk") || lower.contains("cmyk") {
        return Some("colours for a printing press (CMYK)".to_owned());
    }
    for (at, _) in lower.match_indices("url(") {
        let inside = lower[at + 4..].trim_start().trim_start_matches(['"', '\'']);
        if !inside.starts_with('#') {
            return Some(format!(
                "a reference to something outside it (`{}`)",
                short(value.get(at..).unwrap_or_default())
            ));
        }
    }
    if sheet {
        let odd = ['@', '\\'].into_iter().find(|c| lower.contains(*c));
        if let Some(c) = odd {
            return Some(format!("a style with `{c}`"));
        }
        if let Some(what) =
            ["clip-path", "mask", "filter", "marker", "animation"].into_iter().find(|word| lower.contains(word))
        {
            return Some(format!("a style with `{what}`"));
        }
    }
    None
}

/// Refuses what grows when it is drawn: a `use` of a `use`, or of too much.
fn expansion(document: &Document<'_>) -> Result<(), Unfit> {
    let mut sizes: BTreeMap<&str, (usize, bool)> = BTreeMap::new();
    let is_use = |node: &Node<'_, '_>| node.tag_name().name() == "use";
    let href = |node: &Node<'_, '_>| -> Option<String> {
        node.attributes()
            .find(|attribute| attribute.name() == "href")
            .map(|attribute| attribute.value().trim().trim_start_matches('#').to_owned())
    };
    let used: Vec<String> = document.descendants().filter(is_use).filter_map(|node| href(&node)).collect();
    let wanted: BTreeSet<&str> = used.iter().map(String::as_str).collect();
    for node in document.descendants() {
        if let Some(id) = node.attribute("id").filter(|id| wanted.contains(id)) {
            sizes.insert(id, (node.descendants().count(), node.descendants().any(|inner| is_use(&inner))));
        }
    }
    let mut sum = 0usize;
    for id in &used {
        let (size, again) = sizes.get(id.as_str()).copied().unwrap_or_default();
        sum = sum.saturating_add(size);
        if again {
            return Err(Unfit::new(
                "it holds a `use` of something that holds a `use`",
                "turn copies into plain shapes before saving",
            ));
        }
    }
    if sum > MOST_USED {
        return Err(Unfit::new("it holds too many copies (`use`)", "save a simpler drawing"));
    }
    Ok(())
}

fn short(value: &str) -> String {
    value.trim().chars().take(40).collect::<String>().escape_debug().to_string()
}
