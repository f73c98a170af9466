//! Structures along their courses: tendons, ligaments, pulleys, nerves, muscles.

use crate::body::{Axis, Finger, Joint, Segment, SegmentName};
use crate::content::{Course, CourseKind};
use crate::picture::bone::Flat;
use crate::picture::ink::{PathText, Taper, length, resample, ribbon, smooth};
use crate::picture::plate::{Drawing, Paper, Pen, Style, Tone};
use crate::picture::space::Vector;
use crate::picture::view::{Camera, Dot};
use crate::picture::wear::{Limb, curve, resolve_at};

/// How squarely a course must face away to lie on the far side, and when nothing but another bone far before it hides it.
const AWAY: f64 = -0.3;
const TOWARDS: f64 = 0.2;

/// A course in space, with the direction out of the limb at each point.
#[derive(Clone, Debug)]
pub struct Line {
    pub kind: CourseKind,
    points: Vec<Vector>,
    outs: Vec<Vector>,
}

/// A stretch of a course on the picture plane, on one side of the bones.
#[derive(Clone, Debug)]
pub struct Stretch {
    pub dots: Vec<Dot>,
    pub hidden: bool,
}

/// The course in a limb; nothing when it does not run there.
pub fn line(limb: &Limb<'_>, course: &Course, shows: impl Fn(Vector) -> bool) -> Option<Line> {
    let mut places = Vec::new();
    for point in &course.through {
        let mut round = point.round.degrees();
        if point.on == SegmentName::One(Segment::Forearm) {
            // What lies at the elbow stays with the upper arm when the forearm turns.
            let share = 1.0 - point.at.share().clamp(0.0, 1.0);
            round += limb.skeleton.posture.degrees(Joint::Forearm, Axis::Rotation) * share * share;
        }
        places.extend(resolve_at(limb, point, round).into_iter().next().map(|place| (place.at, place.out)));
    }
    if places.len() < 2 {
        return None;
    }
    let points = curve(&places.iter().map(|place| place.0).collect::<Vec<_>>(), false);
    let outs: Vec<Vector> = points
        .iter()
        .map(|point| {
            let mut sum = Vector::ZERO;
            for (at, out) in &places {
                let off = (*point - *at).length() + 0.5;
                sum = sum + *out * (1.0 / (off * off));
            }
            sum.unit()
        })
        .collect();
    // What runs out of the picture is cut there.
    let first = points.iter().position(|point| shows(*point))?;
    let count = points[first..].iter().take_while(|point| shows(**point)).count();
    (count >= 2).then(|| Line {
        kind: course.kind,
        points: points[first..first + count].to_vec(),
        outs: outs[first..first + count].to_vec(),
    })
}

/// All courses of a structure in a limb, finger by finger.
pub fn lines(limb: &Limb<'_>, fingers: &[Finger], course: &Course, shows: impl Fn(Vector) -> bool) -> Vec<Line> {
    let of_finger = |name: SegmentName| matches!(name, SegmentName::Affected(_) | SegmentName::Neighbour(_));
    let each: &[Finger] = if course.through.iter().any(|point| of_finger(point.on)) { fingers } else { &fingers[..1] };
    each.iter().filter_map(|finger| line(&Limb { finger: *finger, ..*limb }, course, &shows)).collect()
}

impl Line {
    /// The course on the picture plane, cut where it passes from one side of the bones to the other.
    pub fn stretches(&self, camera: &Camera, bones: &[Flat<'_>]) -> Vec<Stretch> {
        let dots: Vec<Dot> = self.points.iter().map(|point| camera.flat(*point)).collect();
        let mut hidden: Vec<bool> = self
            .points
            .iter()
            .zip(&self.outs)
            .map(|(point, out)| {
                let facing = out.dot(camera.eye);
                let (dot, depth) = (camera.flat(*point), camera.depth(*point));
                let gap = if facing > TOWARDS { 11.0 } else { 1.0 };
                facing < AWAY || bones.iter().any(|bone| bone.covers(dot) && bone.depth(dot) > depth + gap)
            })
            .collect();
        settle(&dots, &mut hidden);
        let mut found = Vec::new();
        let mut start = 0;
        while start + 1 < dots.len() {
            let mut end = start + 1;
            while end + 1 < dots.len() && hidden[end] == hidden[start] {
                end += 1;
            }
            found.push(Stretch { dots: dots[start..=end].to_vec(), hidden: hidden[start] });
            start = end;
        }
        found
    }
}

/// A course does not flicker: a stretch shorter than 5 mm between two of the other kind goes with them.
fn settle(dots: &[Dot], hidden: &mut [bool]) {
    let n = hidden.len();
    let mut start = 0;
    while start < n {
        let mut end = start;
        while end + 1 < n && hidden[end + 1] == hidden[start] {
            end += 1;
        }
        let inner = start > 0 && end + 1 < n;
        if inner && length(&dots[start - 1..=end + 1]) < 5.0 {
            let value = hidden[start - 1];
            hidden[start..=end].fill(value);
        }
        start = end + 1;
    }
}

/// Lays stretches of one structure on a drawing.
pub fn paint(drawing: &mut Drawing, paper: &Paper, name: &str, kind: CourseKind, stretches: &[Stretch]) {
    let pen = Pen::new(paper);
    let stroke = |tone, width, dash| Style::Stroke { tone, width, dash };
    for stretch in stretches.iter().filter(|stretch| stretch.dots.len() > 1) {
        let placed = paper.places(&stretch.dots);
        let step = (length(&placed) / 12.0).clamp(1.0, 6.0);
        let even = smooth(&resample(&placed, step), 1.5, false);
        let mut path = PathText::default();
        path.curve(&even, false, 1.0);
        let mut add = |tone, width, dash| drawing.add(name, stroke(tone, width, dash), path.clone());
        let bold = pen.outline * 1.25;
        if stretch.hidden {
            let width = bold * 0.62;
            add(Tone::Paper, width * 2.0, None);
            add(Tone::Ink, width, Some((0.1, width * 1.9)));
            continue;
        }
        match kind {
            CourseKind::Tendon => {
                add(Tone::Paper, bold * 2.0, None);
                add(Tone::Ink, bold, None);
            }
            CourseKind::Nerve => {
                add(Tone::Paper, bold * 2.2, None);
                add(Tone::Ink, bold * 1.15, Some((bold * 3.0, bold * 2.3)));
            }
            CourseKind::Ligament => {
                add(Tone::Paper, bold * 2.9, None);
                add(Tone::Ink, bold * 2.1, None);
            }
            CourseKind::Pulley => {
                add(Tone::Paper, bold * 3.9, None);
                add(Tone::Ink, bold * 3.2, None);
                add(Tone::Paper, bold * 1.9, None);
            }
            CourseKind::Joint => {
                add(Tone::Ink, bold * 2.6, None);
                add(Tone::Shell, bold * 1.5, None);
            }
            CourseKind::Muscle | CourseKind::Bone => {
                let wide = (paper.scale * 7.0).min(length(&even) * 0.34);
                let mut belly = PathText::default();
                let over = length(&even) * 0.5;
                ribbon(&mut belly, &even, Taper { width: wide, start: over, end: over }, 1.0);
                drawing.add(name, Style::Fill(Tone::Shell), belly.clone());
                drawing.add(name, stroke(Tone::Ink, pen.fine * 1.1, None), belly);
            }
        }
    }
}
