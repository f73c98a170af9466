//! Names beside a limb: each next to what it names, none over the limb or over another.

use crate::picture::ink::PathText;
use crate::picture::plate::{Drawing, Paper, Pen, Style, Tone};
use crate::picture::space::turn;
use crate::picture::view::Dot;

use super::request::{Even, Label, LabelText, Picture};
use super::stage::Stage;

/// Between a name and the limb or another name, units of the picture.
const GAP: f64 = 26.0;
/// How high the rows are in which the limb's breadth is kept, mm.
const ROW: f64 = 1.0;

/// A name: its number, its size in units of the picture, and what it points to.
#[derive(Clone, Copy, Debug)]
pub struct Caption {
    pub number: usize,
    pub wide: f64,
    pub high: f64,
    pub at: Dot,
}

/// A name in its place: middle and half size in millimetres of the limb.
#[derive(Clone, Copy, Debug)]
struct Box2 {
    caption: Caption,
    middle: Dot,
    half: Dot,
    right: bool,
}

/// The places of all names.
pub struct Room {
    boxes: Vec<Box2>,
}

/// How far the limb reaches to either side, row by row from `low`.
struct Breadth {
    low: f64,
    rows: Vec<(f64, f64)>,
}

impl Breadth {
    fn new(stage: &Stage) -> Option<Self> {
        let dots: Vec<Dot> = stage
            .casts
            .iter()
            .flat_map(|cast| &cast.surfaces)
            .flat_map(|surface| surface.mesh.points.iter().zip(&surface.cut))
            .filter(|(_, cut)| **cut < 0.0)
            .map(|(point, _)| stage.camera.flat(*point))
            .collect();
        let low = dots.iter().map(|dot| dot.y).fold(f64::INFINITY, f64::min);
        let high = dots.iter().map(|dot| dot.y).fold(f64::NEG_INFINITY, f64::max);
        if low > high {
            return None;
        }
        let row = |y: f64| ((y - low) / ROW) as usize;
        let mut rows = vec![(f64::INFINITY, f64::NEG_INFINITY); row(high) + 1];
        for dot in dots {
            let slot = &mut rows[row(dot.y)];
            *slot = (slot.0.min(dot.x), slot.1.max(dot.x));
        }
        Some(Self { low, rows })
    }

    /// Between which places the limb lies in a stretch of heights; nothing when it does not reach there.
    fn between(&self, from: f64, to: f64) -> Option<(f64, f64)> {
        let row = |y: f64| (((y - self.low) / ROW).max(0.0) as usize).min(self.rows.len() - 1);
        let found = self.rows[row(from)..=row(to)]
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), (a, b)| (low.min(*a), high.max(*b)));
        (found.0 <= found.1).then_some(found)
    }

    fn top(&self) -> f64 {
        self.low + ROW * self.rows.len() as f64
    }
}

impl Room {
    /// Places names so that limb and names together fill the paper.
    pub fn new(stage: &Stage, captions: &[Caption]) -> Self {
        let Some(breadth) = Breadth::new(stage).filter(|_| !captions.is_empty()) else {
            return Self { boxes: Vec::new() };
        };
        // Names on both sides of the limb, or all on one: whichever leaves the limb largest.
        let ways = [None, Some(false), Some(true)].map(|side| fitted(stage, captions, &breadth, side));
        let largest = ways.iter().map(|way| way.0).fold(0.0, f64::max);
        let chosen = ways.into_iter().find(|way| way.0 > largest * 0.8);
        Self { boxes: chosen.map_or_else(Vec::new, |way| way.1) }
    }

    /// Corners that must be inside the picture.
    pub fn corners(&self) -> Vec<Dot> {
        self.boxes.iter().flat_map(|one| [one.middle - one.half, one.middle + one.half]).collect()
    }
}

/// Names in their places at the scale at which limb and names fill the paper: they keep their size on paper, and the
/// limb shrinks to make room for them.
fn fitted(stage: &Stage, captions: &[Caption], breadth: &Breadth, side: Option<bool>) -> (f64, Vec<Box2>) {
    let (low, high) = stage.casts[0].extent(&stage.camera);
    let bare = stage.scale_of(low, high);
    let mut scale = bare;
    let mut boxes = place(captions, breadth, scale, side);
    for _ in 0..40 {
        let (mut l, mut h) = (low, high);
        for one in &boxes {
            let (a, b) = (one.middle - one.half, one.middle + one.half);
            l = Dot::new(l.x.min(a.x), l.y.min(a.y));
            h = Dot::new(h.x.max(b.x), h.y.max(b.y));
        }
        scale = stage.scale_of(l, h).max(bare * 0.2);
        boxes = place(captions, breadth, scale, side);
    }
    (scale, boxes)
}

/// Names to the left or right of what they point to, at a scale in units for each millimetre.
fn place(captions: &[Caption], breadth: &Breadth, scale: f64, all: Option<bool>) -> Vec<Box2> {
    let mut found = Vec::new();
    for right in [false, true] {
        let mut side: Vec<Caption> =
            captions.iter().copied().filter(|one| all.unwrap_or_else(|| is_right(one, breadth)) == right).collect();
        side.sort_by(|a, b| b.at.y.total_cmp(&a.at.y).then(a.number.cmp(&b.number)));
        let mut column = stack(&side, breadth, scale, right);
        // Two lines that cross change places.
        for _ in 0..side.len() {
            let crossed = (0..column.len().saturating_sub(1)).find(|i| crosses(&column[*i], &column[*i + 1]));
            let Some(i) = crossed else { break };
            side.swap(i, i + 1);
            column = stack(&side, breadth, scale, right);
        }
        found.extend(column);
    }
    found
}

/// On which side of the limb a name stands: on that to which it has the shorter way.
fn is_right(caption: &Caption, breadth: &Breadth) -> bool {
    breadth.between(caption.at.y - 2.0, caption.at.y + 2.0).is_none_or(|(l, r)| caption.at.x * 2.0 >= l + r)
}

/// Names of one side from above to below in the order given, each as near to the height of what it names as the others
/// let it.
fn stack(side: &[Caption], breadth: &Breadth, scale: f64, right: bool) -> Vec<Box2> {
    let gap = GAP / scale;
    let half = |one: &Caption| Dot::new(one.wide, one.high) * (0.5 / scale);
    // Runs of names that touch, with the height that suits them together.
    let mut runs: Vec<(f64, f64, Vec<usize>)> = Vec::new();
    for (i, one) in side.iter().enumerate() {
        let own = half(one).y * 2.0 + gap * 0.4;
        let mut run = (one.at.y.min(breadth.top()), own, vec![i]);
        while let Some(above) = runs.last() {
            if above.0 - above.1 / 2.0 >= run.0 + run.1 / 2.0 {
                break;
            }
            let Some(above) = runs.pop() else { break };
            let (m, n) = (above.2.len() as f64, run.2.len() as f64);
            // The middle of the joined run is the mean of what its members want.
            let middle = ((above.0 - run.1 / 2.0) * m + (run.0 + above.1 / 2.0) * n) / (m + n);
            run = (middle, above.1 + run.1, [above.2, run.2].concat());
        }
        runs.push(run);
    }
    let mut boxes = Vec::new();
    for (middle, total, members) in runs {
        let mut top = middle + total / 2.0;
        for i in members {
            let half = half(&side[i]);
            let y = top - half.y - gap * 0.2;
            top = y - half.y - gap * 0.2;
            boxes.push(Box2 { caption: side[i], middle: Dot::new(0.0, y), half, right });
        }
    }
    // One edge for the whole side: no line runs through a name.
    let edge = boxes
        .iter()
        .filter_map(|one| breadth.between(one.middle.y - one.half.y - gap, one.middle.y + one.half.y + gap));
    let edge =
        edge.fold(None, |edge: Option<(f64, f64)>, (l, r)| Some(edge.map_or((l, r), |e| (e.0.min(l), e.1.max(r)))));
    let edge = edge.unwrap_or_else(|| boxes.first().map_or((0.0, 0.0), |one| (one.caption.at.x, one.caption.at.x)));
    for one in &mut boxes {
        one.middle.x = if right { edge.1 + gap + one.half.x } else { edge.0 - gap - one.half.x };
    }
    boxes
}

impl Box2 {
    /// Where its line begins, on the edge that faces the limb.
    fn start(&self) -> Dot {
        let x = if self.right { self.middle.x - self.half.x } else { self.middle.x + self.half.x };
        Dot::new(x, self.middle.y)
    }
}

fn crosses(a: &Box2, b: &Box2) -> bool {
    let turn = |p: Dot, q: Dot, r: Dot| (q - p).turn(r - p);
    let (p, q, r, s) = (a.start(), a.caption.at, b.start(), b.caption.at);
    turn(p, q, r) * turn(p, q, s) < 0.0 && turn(r, s, p) * turn(r, s, q) < 0.0
}

/// Lays names with their lines over a picture.
pub fn letter(picture: &mut Picture, paper: &Paper, room: &Room) {
    let pen = Pen::new(paper);
    let (mut lines, mut points) = (PathText::default(), PathText::default());
    let radius = pen.outline * 0.75;
    for one in &room.boxes {
        let (from, to) = (paper.place(one.start()), paper.place(one.caption.at));
        let from = from + (to - from).unit() * (Drawing::UNIT * 0.6);
        lines.polyline(&[from, to]);
        let dot: Vec<Dot> = (0..=24)
            .map(|i| {
                let (s, c) = turn(f64::from(i) * 15.0);
                to + Dot::new(c, s) * radius
            })
            .collect();
        points.curve(&dot, true, 0.5);
        let at = paper.place(one.middle);
        let even = if to.x > at.x { Even::Right } else { Even::Left };
        let text = LabelText::Structure(one.caption.number);
        picture.labels.push(Label { at, text, even, wide: one.caption.wide });
    }
    let stroke = |tone, width| Style::Stroke { tone, width, dash: None };
    let drawing = &mut picture.drawing;
    drawing.add("leaders", stroke(Tone::Paper, pen.fine * 3.4), lines.clone());
    drawing.add("leaders", stroke(Tone::Paper, pen.outline * 1.1), points.clone());
    drawing.add("leaders", stroke(Tone::Ink, pen.fine), lines);
    drawing.add("leaders", Style::Fill(Tone::Ink), points);
}
