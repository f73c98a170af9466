//! Where a label stands: near what it names, clear of every line.

use crate::picture::ink::PathText;
use crate::picture::plate::{Paper, Pen, Pressed, Style, Tone};
use crate::picture::space::turn;
use crate::picture::view::Dot;

use super::request::{Even, Label, LabelText, Picture};

/// Half the side of a label, units of the picture: letters are set about 3.5 mm high.
pub const HALF: f64 = 40.0;

/// A letter names a second spot of its kind when that is no further off, units of the picture.
const SHARED: f64 = 230.0;

/// A letter in its place, and whether it names one spot only.
struct Shared {
    number: usize,
    at: Dot,
    single: bool,
}

/// Puts labels beside spots: a ring round each spot, a line to its label. Two spots of one kind
/// that lie close together share theirs.
pub fn letter(picture: &mut Picture, pressed: &Pressed, paper: &Paper, spots: &[(usize, Dot)]) {
    let pen = Pen::new(paper);
    let ring = pen.outline * 2.6;
    let mut taken: Vec<Dot> = spots.iter().map(|(_, dot)| paper.place(*dot)).collect();
    let (mut rings, mut leaders) = (PathText::default(), PathText::default());
    let centres = taken.clone();
    let mut letters: Vec<Shared> = Vec::new();
    for (number, dot) in spots {
        let centre = paper.place(*dot);
        let open = |at: Dot| centres.iter().all(|other| *other == centre || other.off(at, centre) > ring * 1.4);
        let near = |one: &&mut Shared| one.number == *number && one.single && centre.distance(one.at) < SHARED;
        let shared = letters.iter_mut().filter(near).find(|one| open(one.at));
        let own = shared.is_none();
        let at = if let Some(one) = shared {
            one.single = false;
            one.at
        } else {
            let at = free(pressed, paper, *dot, &taken, ring).unwrap_or(centre + Dot::new(HALF * 2.5, 0.0));
            taken.push(at);
            letters.push(Shared { number: *number, at, single: true });
            at
        };
        let circle: Vec<Dot> = (0..=40)
            .map(|i| {
                let (s, c) = turn(f64::from(i) * 9.0);
                centre + Dot::new(c, s) * ring
            })
            .collect();
        rings.curve(&circle, true, 0.8);
        let way = (at - centre).unit();
        if centre.distance(at) > ring + HALF + 6.0 {
            leaders.polyline(&[centre + way * ring, at - way * (HALF * 0.95)]);
        }
        if own {
            picture.labels.push(Label { at, text: LabelText::Letter(*number), even: Even::Neither, wide: 0.0 });
        }
    }
    let stroke = |tone, width| Style::Stroke { tone, width, dash: None };
    picture.drawing.add("spots", stroke(Tone::Paper, pen.inner * 2.6), rings.clone());
    picture.drawing.add("leaders", stroke(Tone::Paper, pen.fine * 3.0), leaders.clone());
    picture.drawing.add("leaders", stroke(Tone::Ink, pen.fine), leaders);
    picture.drawing.add("spots", stroke(Tone::Ink, pen.inner * 1.3), rings);
}

/// The nearest place for a label that no line crosses and no other label takes.
fn free(pressed: &Pressed, paper: &Paper, spot: Dot, taken: &[Dot], ring: f64) -> Option<Dot> {
    let centre = paper.place(spot);
    let half = HALF / paper.scale;
    let mut distance = ring + HALF + 8.0;
    while distance < 700.0 {
        let mut best: Option<(f64, Dot)> = None;
        for i in 0..24 {
            let (s, c) = turn(f64::from(i) * 15.0 + 7.0);
            let flat = spot + Dot::new(c, s) * (distance / paper.scale);
            let at = paper.place(flat);
            let inside = at.x > HALF && at.y > HALF && at.x < paper.width - HALF && at.y < paper.height - HALF;
            let apart = taken.iter().all(|other| *other == centre || other.distance(at) > 2.2 * HALF);
            let own = centre.distance(at) >= ring + HALF * 0.9;
            if inside && apart && own && pressed.is_clear(flat, half) {
                // Off the hand is better than on it: a letter on skin reads as a mark on skin.
                let cost = if pressed.is_bare(flat) { 0.0 } else { 60.0 };
                if best.is_none_or(|(least, _)| cost < least) {
                    best = Some((cost, at));
                }
            }
        }
        match best {
            Some((cost, at)) if cost == 0.0 || distance > 160.0 => return Some(at),
            _ => distance += 14.0,
        }
    }
    None
}
