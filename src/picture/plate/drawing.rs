//! A finished picture: paths and how each is painted, back to front.

use std::fmt::Write as _;

use crate::picture::ink::PathText;

/// A tone of paint. Everything is told apart in black and white.
#[derive(Clone, Copy, PartialEq, Eq, Debug, PartialOrd, Ord)]
pub enum Tone {
    Paper,
    /// A splint of firm material.
    Shell,
    /// A strap.
    Strap,
    /// What holds a strap down; the strap that a step is about.
    Dark,
    /// A light line: where something was before.
    Faint,
    /// Fine lines.
    Soft,
    Ink,
}

impl Tone {
    /// As a colour. Lines on their ground reach 3:1 or more but for `Faint`, which always has a second sign beside it.
    pub const fn colour(self) -> &'static str {
        match self {
            Self::Paper => "#fff",
            Self::Shell => "#dadada",
            Self::Strap => "#f5f5f5",
            Self::Dark => "#8a8a8a",
            Self::Faint => "#8c8c8c",
            Self::Soft => "#4a4a4a",
            Self::Ink => "#111",
        }
    }
}

/// How a path is painted.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Style {
    Fill(Tone),
    /// A line of a width, in dashes and gaps when they are given; in units of the picture.
    Stroke {
        tone: Tone,
        width: f64,
        dash: Option<(f64, f64)>,
    },
}

/// A path and how it is painted.
#[derive(Clone, Debug)]
pub struct Part {
    /// What it stands for: `skin`, `shell`, `strap-wrist`; letters, digits and hyphens.
    pub name: String,
    pub style: Style,
    pub path: PathText,
}

/// A finished picture. Units are twentieths of a millimetre on paper.
#[derive(Clone, Debug, Default)]
pub struct Drawing {
    pub width: f64,
    pub height: f64,
    pub parts: Vec<Part>,
}

impl Drawing {
    /// Units of a millimetre on paper.
    pub const UNIT: f64 = 20.0;

    pub fn add(&mut self, name: &str, style: Style, path: PathText) {
        if !path.is_empty() {
            self.parts.push(Part { name: name.to_owned(), style, path });
        }
    }

    /// Curves and straight lines in it.
    pub fn nodes(&self) -> usize {
        self.parts.iter().map(|part| part.path.nodes).sum()
    }

    /// The picture as SVG, with a title for those who cannot see it.
    pub fn svg(&self, title: &str) -> String {
        let (w, h) = (libm::ceil(self.width), libm::ceil(self.height));
        let (mm_w, mm_h) = (w / Self::UNIT, h / Self::UNIT);
        let mut text = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {w} {h}\" width=\"{mm_w}mm\" height=\"{mm_h}mm\" role=\"img\"><title>{}</title>",
            escape(title)
        );
        for part in &self.parts {
            let _ = write!(text, "<path class=\"{}\" ", part.name);
            match part.style {
                Style::Fill(tone) => {
                    let _ = write!(text, "fill=\"{}\" fill-rule=\"evenodd\"", tone.colour());
                }
                Style::Stroke { tone, width, dash } => {
                    let _ = write!(
                        text,
                        "fill=\"none\" stroke=\"{}\" stroke-width=\"{}\" stroke-linecap=\"round\" stroke-linejoin=\"round\"",
                        tone.colour(),
                        libm::round(width * 10.0) / 10.0
                    );
                    if let Some((on, off)) = dash {
                        let _ = write!(text, " stroke-dasharray=\"{} {}\"", libm::round(on), libm::round(off));
                    }
                }
            }
            let _ = write!(text, " d=\"{}\"/>", part.path.text());
        }
        text.push_str("</svg>");
        text
    }
}

/// Text as it is written in an SVG file.
pub fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
