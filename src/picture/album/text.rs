//! A picture as lines of text, sealed so that no altered one is read.

use std::fmt::Write as _;

use crate::picture::ink::PathText;
use crate::picture::plate::{Drawing, Part, Style, Tone};
use crate::picture::scene::{Even, Label, LabelText, Picture};
use crate::picture::view::Dot;

const HEAD: &str = "palmleaf picture 2";

const TONES: [(Tone, &str); 7] = [
    (Tone::Paper, "paper"),
    (Tone::Shell, "shell"),
    (Tone::Strap, "strap"),
    (Tone::Dark, "dark"),
    (Tone::Faint, "faint"),
    (Tone::Soft, "soft"),
    (Tone::Ink, "ink"),
];

const EVEN: [(Even, &str); 3] = [(Even::Neither, "neither"), (Even::Left, "left"), (Even::Right, "right")];

fn seal(name: &str, body: &str) -> String {
    let mut hasher = blake3::Hasher::new();
    hasher.update(name.as_bytes());
    hasher.update(b"\n");
    hasher.update(body.as_bytes());
    hasher.finalize().to_hex().to_string()
}

/// A picture as text, under the name that it is kept by.
pub fn write(name: &str, picture: &Picture) -> String {
    let mut body = String::new();
    let drawing = &picture.drawing;
    // A number is written with as many digits as give the very same one back.
    let _ = writeln!(body, "size {} {}", drawing.width, drawing.height);
    for label in &picture.labels {
        let (kind, number) = match label.text {
            LabelText::Letter(number) => ("letter", number),
            LabelText::Number(number) => ("number", number),
            LabelText::Structure(number) => ("structure", number),
        };
        let even = EVEN.iter().find(|(known, _)| *known == label.even).map_or("neither", |(_, word)| word);
        let _ = writeln!(body, "{kind} {number} {} {} {} {even}", label.at.x, label.at.y, label.wide);
    }
    for part in &drawing.parts {
        let tone = |tone: Tone| TONES.iter().find(|(known, _)| *known == tone).map_or("ink", |(_, word)| word);
        let style = match part.style {
            Style::Fill(fill) => format!("fill {}", tone(fill)),
            Style::Stroke { tone: ink, width, dash } => {
                let (on, off) = dash.unwrap_or((0.0, 0.0));
                format!("{} {} {width} {on} {off}", if dash.is_some() { "dash" } else { "line" }, tone(ink))
            }
        };
        let _ = writeln!(body, "{style} {} {}\n{}", part.path.nodes, part.name, part.path.text());
    }
    format!("{HEAD}\n{}\n{body}", seal(name, &body))
}

/// The picture that a text holds, when it is whole and was kept by this name.
pub fn read(name: &str, text: &str) -> Option<Picture> {
    let (sealed, body) = text.strip_prefix(HEAD)?.strip_prefix('\n')?.split_once('\n')?;
    if sealed != seal(name, body) {
        return None;
    }
    let mut picture = Picture::default();
    let mut lines = body.lines();
    while let Some(line) = lines.next() {
        let words: Vec<&str> = line.split(' ').collect();
        let number = |i: usize| words.get(i)?.parse::<f64>().ok();
        match *words.first()? {
            "size" => {
                picture.drawing = Drawing { width: number(1)?, height: number(2)?, ..picture.drawing };
            }
            kind @ ("letter" | "number" | "structure") => {
                let value = words.get(1)?.parse().ok()?;
                let text = match kind {
                    "letter" => LabelText::Letter(value),
                    "number" => LabelText::Number(value),
                    _ => LabelText::Structure(value),
                };
                let even = EVEN.iter().find(|(_, word)| Some(word) == words.get(5)).map(|(even, _)| *even)?;
                let at = Dot::new(number(2)?, number(3)?);
                picture.labels.push(Label { at, text, even, wide: number(4)? });
            }
            kind @ ("fill" | "line" | "dash") => {
                let tone = TONES.iter().find(|(_, word)| Some(word) == words.get(1)).map(|(tone, _)| *tone)?;
                let style = match kind {
                    "fill" => Style::Fill(tone),
                    "line" => Style::Stroke { tone, width: number(2)?, dash: None },
                    _ => Style::Stroke { tone, width: number(2)?, dash: Some((number(3)?, number(4)?)) },
                };
                let [.., nodes, name] = words[..] else { return None };
                let path = PathText::known(lines.next()?, nodes.parse().ok()?);
                picture.drawing.parts.push(Part { name: name.to_owned(), style, path });
            }
            _ => return None,
        }
    }
    Some(picture)
}
