//! Arrows: which way something moves.

use crate::picture::ink::{PathText, length, resample, smooth};
use crate::picture::plate::{Paper, Pen, Style, Tone};
use crate::picture::view::Dot;

use super::request::Picture;

/// Lays an arrow along a line of the picture plane over a picture: black on a white seam, so that it stands out from
/// whatever it crosses.
pub fn arrow(picture: &mut Picture, paper: &Paper, line: &[Dot]) {
    let placed = paper.places(line);
    if placed.len() < 2 || length(&placed) < 30.0 {
        return;
    }
    let pen = Pen::new(paper);
    let even = smooth(&resample(&placed, 6.0), 4.0, false);
    let total = length(&even);
    let head = (pen.outline * 5.2).min(total * 0.45);
    let tip = even[even.len() - 1];
    // The shaft ends inside the head.
    let mut shaft = Vec::new();
    let mut walked = 0.0;
    for pair in even.windows(2) {
        shaft.push(pair[0]);
        walked += pair[0].distance(pair[1]);
        if walked > total - head * 0.8 {
            break;
        }
    }
    let Some(back) = shaft.last().copied() else { return };
    let way = (tip - back).unit();
    let side = way.left() * (head * 0.52);
    let (left, right) = (tip - way * head + side, tip - way * head - side);
    let notch = tip - way * (head * 0.78);
    let mut body = PathText::default();
    body.curve(&shaft, false, 1.0);
    let mut point = PathText::default();
    point.polygon(&[tip, left, notch, right]);
    let seam = pen.outline * 1.5;
    let stroke = |tone, width| Style::Stroke { tone, width, dash: None };
    let drawing = &mut picture.drawing;
    drawing.add("arrow-seam", stroke(Tone::Paper, pen.outline * 1.35 + 2.0 * seam), body.clone());
    drawing.add("arrow-seam", stroke(Tone::Paper, 2.0 * seam), point.clone());
    drawing.add("arrow", stroke(Tone::Ink, pen.outline * 1.35), body);
    drawing.add("arrow", Style::Fill(Tone::Ink), point);
}
