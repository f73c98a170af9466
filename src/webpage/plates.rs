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
/// Units of a picture in a unit of its paths here: a telephone shows a unit as a fifth of a pixel.
const COARSE: i64 = 2;
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
            let _ = write!(out, "<path id=\"k{number}\" d=\"{}\"/>", compact(&coarse(path)));
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
        let _ = write!(out, "<g transform=\"scale({COARSE})\">");
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
        out.push_str("</g>");
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
            None => write!(out, "<path d=\"{}\"/>", compact(&coarse(path))),
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

/// A path in larger units: every point lies where it did, to the nearest of them. Errors do not add up along the path, and
/// what becomes no longer than a point is left out.
fn coarse(path: &str) -> String {
    let mut out = String::with_capacity(path.len());
    // Where the path is, in its own units and in what was written.
    let (mut at, mut there) = ((0, 0), (0, 0));
    let near = |(x, y): (i64, i64)| ((2 * x + COARSE).div_euclid(2 * COARSE), (2 * y + COARSE).div_euclid(2 * COARSE));
    for step in steps(path) {
        let points: Vec<(i64, i64)> = step.points.iter().map(|&(x, y)| (at.0 + x, at.1 + y)).collect();
        let Some(&end) = points.last() else {
            out.push(step.letter);
            continue;
        };
        if step.letter == 'M' {
            (at, there) = (step.points[0], near(step.points[0]));
            let _ = write!(out, "M{} {}", there.0, there.1);
            continue;
        }
        let moved: Vec<(i64, i64)> =
            points.iter().map(|&point| near(point)).map(|(x, y)| (x - there.0, y - there.1)).collect();
        if moved.iter().any(|&point| point != (0, 0)) {
            out.push(step.letter);
            for (place, number) in moved.iter().flat_map(|&(x, y)| [x, y]).enumerate() {
                // A sign divides two numbers by itself.
                let between = if place == 0 || number < 0 { "" } else { " " };
                let _ = write!(out, "{between}{number}");
            }
        }
        (at, there) = (end, near(end));
    }
    out
}

/// A letter of a path and the points that follow it.
struct Step {
    letter: char,
    points: Vec<(i64, i64)>,
}

/// The steps of a path: whole numbers, every letter written.
fn steps(path: &str) -> Vec<Step> {
    let mut found: Vec<Step> = Vec::new();
    for piece in path.split_inclusive(|c: char| c.is_ascii_alphabetic()) {
        // A piece is the numbers of the letter before and the next letter.
        let (numbers, letter) = match piece.char_indices().last() {
            Some((place, letter)) if letter.is_ascii_alphabetic() => (&piece[..place], Some(letter)),
            _ => (piece, None),
        };
        if let Some(step) = found.last_mut() {
            let numbers: Vec<i64> =
                numbers.replace('-', " -").split_whitespace().filter_map(|number| number.parse().ok()).collect();
            step.points = numbers.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect();
        }
        found.extend(letter.map(|letter| Step { letter, points: Vec::new() }));
    }
    found
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
            let mut out = format!(
                "<g class=\"s-{}\" stroke-width=\"{}\"",
                tone(colour),
                libm::round(width * 10.0 / COARSE as f64) / 10.0
            );
            if let Some((on, off)) = dash {
                let _ = write!(
                    out,
                    " stroke-dasharray=\"{} {}\"",
                    libm::round(on / COARSE as f64),
                    libm::round(off / COARSE as f64)
                );
            }
            out.push('>');
            out
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{coarse, compact, divided};

    #[test]
    fn a_path_keeps_every_number() {
        assert_eq!(
            compact("M1 2c-3 4 5 6 7 8c9 1 2 3 4 5c-1 0 0 0 0 0l1 2l-3 4z"),
            "M1 2c-3 4 5 6 7 8 9 1 2 3 4 5-1 0 0 0 0 0l1 2-3 4z"
        );
        assert_eq!(compact("M1 2zM3 4z"), "M1 2zM3 4z");
    }

    #[test]
    fn points_stay_where_they_are_however_long_a_path_is() {
        assert_eq!(coarse("M10 20c2 4-6 8 4-2l-3 5z"), "M5 10c1 2-3 4 2-1l-1 3z");
        assert_eq!(coarse("M0 0l1 0l1 0l1 0l1 0"), "M0 0l1 0l1 0");
        assert_eq!(coarse("M4 4c0 1 0 0 0 0z"), "M2 2c0 1 0 0 0 0z");
        assert_eq!(coarse("M4 4c0 0 0 0 0 0l6 6zM2 2l2 2z"), "M2 2l3 3zM1 1l1 1z");
    }

    #[test]
    fn a_description_loses_nothing_when_it_is_divided() {
        assert_eq!(divided("Right hand. Seen from above."), ("Right hand.", Some("Seen from above.")));
        assert_eq!(divided("Right hand."), ("Right hand.", None));
        assert_eq!(divided(""), ("", None));
    }
}
