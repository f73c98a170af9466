//! A picture as an SVG file that stands by itself, with its words.

use std::fmt::Write as _;

use super::plate::{Drawing, escape};
use super::scene::{LabelText, Picture};

/// Height of the letters of labels, mm.
const LETTER: f64 = 3.5;

/// A picture as an SVG file: title and description for those who cannot see it, labels as text.
pub fn svg(picture: &Picture, language: &str, title: &str, about: &str, label: impl Fn(LabelText) -> String) -> String {
    let plain = picture.drawing.svg(title);
    // A file by itself says its language, and describes itself after its title.
    let plain = plain.replacen("<svg ", &format!("<svg xml:lang=\"{}\" ", escape(language)), 1);
    let plain = plain.replacen("</title>", &format!("</title><desc>{}</desc>", escape(about)), 1);
    lettered(picture, &plain, "sans-serif", LETTER * Drawing::UNIT, label) + "\n"
}

/// The SVG of a picture with its labels as text, in fonts and with letters of a height in units of the picture.
pub fn lettered(picture: &Picture, svg: &str, fonts: &str, size: f64, label: impl Fn(LabelText) -> String) -> String {
    let mut text = svg.trim_end_matches("</svg>").to_owned();
    for one in &picture.labels {
        let (x, y) = (libm::round(one.at.x), libm::round(one.at.y + size * 0.36));
        let _ = write!(
            text,
            "<text x=\"{x}\" y=\"{y}\" font-family=\"{}\" font-size=\"{size}\" font-weight=\"bold\" text-anchor=\"middle\" fill=\"#111\">{}</text>",
            escape(fonts),
            escape(&label(one.text))
        );
    }
    text.push_str("</svg>");
    text
}
