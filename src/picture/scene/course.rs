//! Structures along their courses: tendons, ligaments, pulleys, nerves, muscles.

use crate::body::{Axis, BoneName, Finger, Joint, Row, Segment, SegmentName};
use crate::content::{Course, CourseKind, SkinPoint};
use crate::picture::bone::{Bone, Flat};
use crate::picture::ink::{PathText, Taper, length, resample, ribbon, smooth};
use crate::picture::limb::Flesh;
use crate::picture::plate::{Drawing, Paper, Pen, Style, Tone};
use crate::picture::solid::{Blends, Field};
use crate::picture::space::{Frame, Vector, turn};
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

/// The limb that courses run in.
pub struct Inside<'a> {
    pub limb: Limb<'a>,
    pub bones: &'a [Bone],
}

impl Inside<'_> {
    /// A place of a course and the direction out of the limb there. On a digit it is measured from the bone, so that no
    /// web or pad of flesh moves it; below 0 % of a finger it lies on the finger's metacarpal, whose base is at -100 %.
    fn place(&self, finger: Finger, point: &SkinPoint) -> Option<(Vector, Vector)> {
        let segment = point.on.segments(finger).first().copied()?;
        let share = point.at.share();
        match segment {
            Segment::UpperArm | Segment::Forearm | Segment::Hand => {
                let mut round = point.round.degrees();
                if segment == Segment::Forearm {
                    // What lies at the elbow stays with the upper arm when the forearm turns.
                    let near = 1.0 - share.clamp(0.0, 1.0);
                    let turned = self.limb.skeleton.posture.degrees(Joint::Forearm, Axis::Rotation);
                    round += turned * near * near;
                }
                let limb = Limb { finger, ..self.limb };
                resolve_at(&limb, point, round).first().map(|place| (place.at, place.out))
            }
            Segment::Finger(of, Row::Proximal) if share < 0.0 => {
                let bone = self
                    .bones
                    .iter()
                    .find(|bone| bone.name == BoneName::FingerMetacarpal && bone.finger == Some(of))?;
                let frame = bone.frame(self.limb.skeleton.frame(Segment::Hand).axes.z);
                Some(on_bone(bone, &frame, bone.length() * (1.0 + share), point))
            }
            _ => {
                let bone = self.bones.iter().find(|bone| bone.segment == segment)?;
                let skeleton = self.limb.skeleton;
                Some(on_bone(bone, skeleton.frame(segment), skeleton.length(segment) * share, point))
            }
        }
    }
}

/// A point over a bone at a place along it and an angle round it.
fn on_bone(bone: &Bone, frame: &Frame, y: f64, point: &SkinPoint) -> (Vector, Vector) {
    let (s, c) = turn(point.round.degrees());
    let out = frame.axes.apply(Vector::new(-s, 0.0, c));
    // Past the ends of the bone its ends' girth goes on.
    let ends = [bone.axis.0, bone.axis.1].map(|end| frame.local(end).y);
    let along = y.clamp(ends[0] + 2.0, ends[1] - 2.5);
    let from = frame.point(0.0, along, 0.6);
    let field = Field::new(&Flesh { tubes: bone.tubes.clone() }, Blends::SKIN, |_| true).all();
    let mut way = 0.0;
    for _ in 0..40 {
        let distance = field.distance(from + out * way);
        if distance.abs() < 0.02 {
            break;
        }
        way = (way - distance * 0.9).clamp(0.0, 14.0);
    }
    (from + out * (way + point.out.get()) + frame.axes.y * (y - along), out)
}

/// The course in a limb; nothing when it does not run there.
fn line(inside: &Inside<'_>, finger: Finger, course: &Course, shows: impl Fn(Vector) -> bool) -> Option<Line> {
    let places: Vec<(Vector, Vector)> = course.through.iter().filter_map(|point| inside.place(finger, point)).collect();
    if places.len() < 2 {
        return None;
    }
    let closed = course.kind == CourseKind::Skin;
    let points = curve(&places.iter().map(|place| place.0).collect::<Vec<_>>(), closed);
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
    if closed {
        return Some(Line { kind: course.kind, points, outs });
    }
    // What runs out of the picture is cut there.
    let first = points.iter().position(|point| shows(*point))?;
    let count = points[first..].iter().take_while(|point| shows(**point)).count();
    (count >= 2).then(|| Line {
        kind: course.kind,
        points: points[first..first + count].to_vec(),
        outs: outs[first..first + count].to_vec(),
    })
}

/// All lines of a course in a limb, finger by finger.
pub fn lines(inside: &Inside<'_>, fingers: &[Finger], course: &Course, shows: impl Fn(Vector) -> bool) -> Vec<Line> {
    let of_finger = |name: SegmentName| matches!(name, SegmentName::Affected(_) | SegmentName::Neighbour(_));
    let each: &[Finger] = if course.through.iter().any(|point| of_finger(point.on)) { fingers } else { &fingers[..1] };
    each.iter().filter_map(|finger| line(inside, *finger, course, &shows)).collect()
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
        if self.kind == CourseKind::Skin {
            // A patch is on one side as a whole.
            let away = self.outs.iter().map(|out| out.dot(camera.eye)).sum::<f64>() < 0.0;
            return vec![Stretch { dots, hidden: away }];
        }
        if self.kind == CourseKind::Joint {
            // The surfaces of a joint lie between bones: from either side they show in the gap.
            hidden.fill(false);
        }
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

/// Lays a stretch of a structure on a drawing.
pub fn paint(drawing: &mut Drawing, paper: &Paper, name: &str, kind: CourseKind, stretch: &Stretch) {
    let pen = Pen::new(paper);
    let stroke = |tone, width, dash| Style::Stroke { tone, width, dash };
    let placed = paper.places(&stretch.dots);
    let step = (length(&placed) / 12.0).clamp(1.0, 6.0);
    let even = smooth(&resample(&placed, step), 1.5, false);
    let mut path = PathText::default();
    path.curve(&even, false, 1.0);
    if kind == CourseKind::Skin {
        let mut patch = PathText::default();
        patch.curve(&even, true, 1.0);
        if !stretch.hidden {
            drawing.add(name, Style::Fill(Tone::Shell), patch.clone());
        }
        drawing.add(name, stroke(Tone::Soft, pen.fine, Some((pen.fine * 5.0, pen.fine * 4.0))), patch);
        return;
    }
    let mut add = |tone, width, dash| drawing.add(name, stroke(tone, width, dash), path.clone());
    let bold = pen.outline * 1.25;
    if stretch.hidden {
        let width = bold * 0.62;
        add(Tone::Paper, width * 2.0, None);
        add(Tone::Ink, width, Some((0.1, width * 1.9)));
        return;
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
        CourseKind::Muscle | CourseKind::Bone | CourseKind::Skin => {
            let wide = (paper.scale * 7.0).min(length(&even) * 0.34);
            let mut belly = PathText::default();
            let over = length(&even) * 0.5;
            ribbon(&mut belly, &even, Taper { width: wide, start: over, end: over }, 1.0);
            drawing.add(name, Style::Fill(Tone::Shell), belly.clone());
            drawing.add(name, stroke(Tone::Ink, pen.fine * 1.1, None), belly);
        }
    }
}
