//! Pictures as SVG inside the page. Tones are classes, so that light and dark show the same lines; a path that stands in
//! several pictures is written once.

use std::collections::{BTreeMap, HashMap};
use std::fmt::Write as _;
use std::sync::Arc;

use serde_json::Value;

use super::html::{escape, list, word};
use crate::diag::Diagnostic;
use crate::picture::album::Album;
use crate::picture::plate::{Drawing, Part, Style, Tone};
use crate::picture::scene::Picture;
use crate::words::Sheet;

/// Height of a label's letters, units of a picture.
const LETTER: f64 = 3.6 * Drawing::UNIT;
/// How wide a millimetre of a picture is shown, in widths of an em: labels are then as high as the words.
const EM: f64 = 0.28;
/// A path shorter than this costs less than a reference to it.
const SHORT: usize = 40;

/// The pictures of a sheet, drawn.
pub struct Plates {
    pictures: BTreeMap<String, Arc<Picture>>,
    /// The paths that are written once, and their names.
    shared: HashMap<String, String>,
    /// The same in the order of their names.
    store: Vec<String>,
}

impl Plates {
    /// Draws the pictures that a sheet names.
    ///
    /// # Errors
    /// A picture that cannot be drawn, by what is wrong with it.
    pub fn draw(sheet: &Sheet, album: &Album) -> Result<Self, Diagnostic> {
        let pictures = album.all(&sheet.pictures).map_err(|why| Diagnostic::undrawn(&why))?;
        let mut uses: BTreeMap<&str, usize> = BTreeMap::new();
        for key in named(&sheet.data) {
            for part in pictures.get(key).map_or(&[][..], |picture| &picture.drawing.parts) {
                *uses.entry(part.path.text()).or_default() += 1;
            }
        }
        let often = uses.into_iter().filter(|(path, uses)| *uses > 1 && path.len() > SHORT).map(|(path, _)| path);
        let store: Vec<String> = often.map(str::to_owned).collect();
        let shared = store.iter().enumerate().map(|(number, path)| (path.clone(), format!("k{number}"))).collect();
        Ok(Self { pictures, shared, store })
    }

    /// The paths that are written once, for the head of the page.
    pub fn store(&self) -> String {
        if self.store.is_empty() {
            return String::new();
        }
        let mut out = "<svg class=\"store\" aria-hidden=\"true\" focusable=\"false\"><defs>".to_owned();
        for (number, path) in self.store.iter().enumerate() {
            let _ = write!(out, "<path id=\"k{number}\" d=\"{}\"/>", compact(path));
        }
        out.push_str("</defs></svg>");
        out
    }

    /// A picture with its words; nothing when there is none. `id` is unique on the page.
    pub fn one(&self, named: &Value, id: &str) -> String {
        let Some(picture) = named["picture"].as_str().and_then(|key| self.pictures.get(key)) else {
            return String::new();
        };
        let drawing = &picture.drawing;
        let (wide, high) = (libm::ceil(drawing.width), libm::ceil(drawing.height));
        let width = libm::round(wide / Drawing::UNIT * EM * 100.0) / 100.0;
        let (title, about) = divided(word(&named["alt"]));
        let (both, about) = match about {
            Some(about) => (format!("{id}-t {id}-d"), format!("<desc id=\"{id}-d\">{}</desc>", escape(about))),
            None => (format!("{id}-t"), String::new()),
        };
        let mut out = format!(
            "<svg class=\"plate\" viewBox=\"0 0 {wide} {high}\" width=\"{width}em\" role=\"img\" aria-labelledby=\"{both}\"><title id=\"{id}-t\">{}</title>{about}",
            escape(title)
        );
        let mut style: Option<Style> = None;
        for part in &drawing.parts {
            if style != Some(part.style) {
                if style.is_some() {
                    out.push_str("</g>");
                }
                out.push_str(&opened(part.style));
                style = Some(part.style);
            }
            self.part(part, &mut out);
        }
        if style.is_some() {
            out.push_str("</g>");
        }
        for label in &picture.labels {
            let said = label.text.said(|number| list(&named["letters"]).get(number)?.as_str().map(str::to_owned));
            let (x, y) = (libm::round(label.at.x), libm::round(label.at.y + LETTER * 0.36));
            let _ = write!(out, "<text x=\"{x}\" y=\"{y}\" aria-hidden=\"true\">{}</text>", escape(&said));
        }
        out.push_str("</svg>");
        out
    }

    fn part(&self, part: &Part, out: &mut String) {
        let path = part.path.text();
        let _ = match self.shared.get(path) {
            Some(name) => write!(out, "<use href=\"#{name}\"/>"),
            None => write!(out, "<path d=\"{}\"/>", compact(path)),
        };
    }

    /// Pictures side by side where there is room. Their order never turns with the script.
    pub fn row(&self, named: &Value, id: &str) -> String {
        let all: String = list(named)
            .iter()
            .enumerate()
            .map(|(number, one)| self.one(one, &format!("{id}-{}", number + 1)))
            .collect();
        if all.is_empty() { all } else { format!("<div class=\"plates\" dir=\"ltr\">{all}</div>") }
    }
}

/// The keys of the pictures that a tree names, as often as it does.
fn named(value: &Value) -> Vec<&str> {
    match value {
        Value::Array(items) => items.iter().flat_map(named).collect(),
        Value::Object(fields) => match fields.get("picture").and_then(Value::as_str) {
            Some(key) => vec![key],
            None => fields.values().flat_map(named).collect(),
        },
        _ => Vec::new(),
    }
}

/// A description as a title, its first sentence, and the rest.
fn divided(alt: &str) -> (&str, Option<&str>) {
    match alt.split_once(". ") {
        Some((first, rest)) if !rest.is_empty() => (&alt[..=first.len()], Some(rest)),
        _ => (alt, None),
    }
}

/// A path without the letters of steps that repeat the one before: SVG lets them be left out.
fn compact(path: &str) -> String {
    let mut out = String::with_capacity(path.len());
    let mut last = None;
    let mut letters = path.chars().peekable();
    while let Some(c) = letters.next() {
        if !c.is_ascii_alphabetic() {
            out.push(c);
            continue;
        }
        if last == Some(c) && matches!(c, 'c' | 'l') {
            if letters.peek() != Some(&'-') {
                out.push(' ');
            }
        } else {
            out.push(c);
        }
        last = Some(c);
    }
    out
}

fn tone(tone: Tone) -> &'static str {
    match tone {
        Tone::Paper => "paper",
        Tone::Shell => "shell",
        Tone::Strap => "strap",
        Tone::Dark => "dark",
        Tone::Faint => "faint",
        Tone::Soft => "soft",
        Tone::Ink => "ink",
    }
}

/// A group that paints what stands in it.
fn opened(style: Style) -> String {
    match style {
        Style::Fill(colour) => format!("<g class=\"f-{}\">", tone(colour)),
        Style::Stroke { tone: colour, width, dash } => {
            let mut out =
                format!("<g class=\"s-{}\" stroke-width=\"{}\"", tone(colour), libm::round(width * 10.0) / 10.0);
            if let Some((on, off)) = dash {
                let _ = write!(out, " stroke-dasharray=\"{} {}\"", libm::round(on), libm::round(off));
            }
            out.push('>');
            out
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{compact, divided};

    #[test]
    fn a_path_keeps_every_number() {
        assert_eq!(
            compact("M1 2c-3 4 5 6 7 8c9 1 2 3 4 5c-1 0 0 0 0 0l1 2l-3 4z"),
            "M1 2c-3 4 5 6 7 8 9 1 2 3 4 5-1 0 0 0 0 0l1 2-3 4z"
        );
        assert_eq!(compact("M1 2zM3 4z"), "M1 2zM3 4z");
    }

    #[test]
    fn a_description_loses_nothing_when_it_is_divided() {
        assert_eq!(divided("Right hand. Seen from above."), ("Right hand.", Some("Seen from above.")));
        assert_eq!(divided("Right hand."), ("Right hand.", None));
        assert_eq!(divided(""), ("", None));
    }
}
