//! A picture as an SVG file that stands by itself, with its words.

use std::fmt::Write as _;

use super::plate::{Drawing, escape};
use super::scene::{Even, LabelText, Picture};

/// A line of a label.
#[derive(Clone, PartialEq, Debug)]
pub struct Line {
    pub text: String,
    /// Height of its letters, mm.
    pub size: f64,
    pub bold: bool,
}

/// From one line to the next, of the height of the letters.
pub const LEADING: f64 = 1.24;

/// What goes about a picture.
pub struct About<'a> {
    pub language: &'a str,
    /// The fonts that labels were measured in.
    pub families: &'a [String],
    pub title: &'a str,
    pub text: &'a str,
}

/// A picture as an SVG file: title and description for those who cannot see it, labels as text.
pub fn svg(picture: &Picture, about: &About<'_>, label: impl Fn(LabelText) -> Vec<Line>) -> String {
    let plain = picture.drawing.svg(about.title);
    // A file by itself says its language, and describes itself after its title.
    let plain = plain.replacen("<svg ", &format!("<svg xml:lang=\"{}\" ", escape(about.language)), 1);
    let plain = plain.replacen("</title>", &format!("</title><desc>{}</desc>", escape(about.text)), 1);
    let families: Vec<String> = about.families.iter().map(|family| format!("'{family}', ")).collect();
    lettered(picture, &plain, &format!("{}sans-serif", families.concat()), label) + "\n"
}

/// The SVG of a picture with its labels as text, in the fonts of a list.
pub fn lettered(picture: &Picture, svg: &str, fonts: &str, label: impl Fn(LabelText) -> Vec<Line>) -> String {
    let mut text = svg.trim_end_matches("</svg>").to_owned();
    let fonts = escape(fonts);
    for one in &picture.labels {
        let lines = label(one.text);
        let high: f64 = lines.iter().map(|line| line.size * LEADING).sum();
        let wide = one.wide / 2.0;
        let (x, anchor) = match one.even {
            Even::Neither => (one.at.x, "middle"),
            Even::Left => (one.at.x - wide, "start"),
            Even::Right => (one.at.x + wide, "end"),
        };
        let mut top = one.at.y - high * Drawing::UNIT / 2.0;
        for line in lines {
            let size = line.size * Drawing::UNIT;
            let y = top + size * (LEADING / 2.0 + 0.36);
            top += size * LEADING;
            let weight = if line.bold { "bold" } else { "normal" };
            let _ = write!(
                text,
                "<text x=\"{}\" y=\"{}\" font-family=\"{fonts}\" font-size=\"{size}\" font-weight=\"{weight}\" text-anchor=\"{anchor}\" fill=\"#111\">{}</text>",
                libm::round(x),
                libm::round(y),
                escape(&line.text)
            );
        }
    }
    text.push_str("</svg>");
    text
}
