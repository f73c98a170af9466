//! Nails, wrinkles and creases as curves on the skin.
//!
//! Each curve is given inside a segment and cast outwards on to the skin, so it stays where it belongs in every posture.

use crate::body::{Axis, Finger, Joint};
use crate::picture::limb::{Row, Segment, Skeleton};
use crate::picture::solid::{Field, outwards};
use crate::picture::space::{Frame, Vector, turn};

use super::palm;

/// What a curve on the skin stands for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum MarkKind {
    /// The edge of a nail.
    Nail,
    /// The moon of a nail.
    Moon,
    /// A wrinkle over a joint or a crease under it.
    Crease,
    /// The long lines of the palm and the wrist.
    PalmLine,
    /// A knuckle, a tendon, the head of a bone: left out of small pictures.
    Relief,
}

/// A curve on the skin.
#[derive(Clone, Debug)]
pub struct Mark {
    pub kind: MarkKind,
    pub segment: Segment,
    pub points: Vec<Vector>,
    /// Directions out of the skin.
    pub normals: Vec<Vector>,
    pub closed: bool,
    /// How squarely the skin must face the eye for the mark to show: 0 at the edge of sight, 1 straight on.
    pub facing: f64,
}

/// A ray: from inside the limb outwards.
#[derive(Clone, Copy)]
pub struct Ray {
    pub from: Vector,
    pub out: Vector,
}

/// Casts curves on to the skin.
pub struct Caster<'a> {
    pub skeleton: &'a Skeleton,
    field: &'a Field,
    /// Whether a segment is shown.
    which: &'a dyn Fn(Segment) -> bool,
    pub marks: Vec<Mark>,
}

impl Caster<'_> {
    /// Adds a curve; parts that meet no skin break it.
    pub fn cast(&mut self, kind: MarkKind, segment: Segment, rays: &[Ray], closed: bool, facing: f64) {
        let Some(first) = rays.first().filter(|_| (self.which)(segment)) else { return };
        let reach = rays.iter().map(|ray| (ray.from - first.from).length()).fold(0.0, f64::max) + 30.0;
        let near = self.field.near(first.from, reach);
        // A ray out of a finger that meets no skin of its own must not mark its neighbour.
        let furthest = match segment {
            Segment::Finger(..) => 14.0,
            _ => 40.0,
        };
        let skin = |ray: &Ray| -> Option<(Vector, Vector)> {
            let near = near.near(ray.from + ray.out * 10.0, 12.0);
            let mut way = 0.0;
            for _ in 0..48 {
                let distance = near.distance(ray.from + ray.out * way);
                if distance.abs() < 0.02 {
                    break;
                }
                way -= distance * 0.95;
                if !(-12.0..furthest).contains(&way) {
                    return None;
                }
            }
            let point = ray.from + ray.out * way;
            (near.distance(point).abs() < 0.3).then(|| (point, outwards(|points| near.distances(points), point, 0.5)))
        };
        let found: Vec<Option<(Vector, Vector)>> = rays.iter().map(skin).collect();
        let whole = found.iter().all(Option::is_some);
        for run in found.split(Option::is_none).filter(|run| run.len() > 3) {
            let (points, normals) = run.iter().flatten().copied().unzip();
            self.marks.push(Mark { kind, segment, points, normals, closed: closed && whole, facing });
        }
    }

    /// A curve round a digit: places along it and angles round it, 0 at the back, 90 on the thumb side.
    pub fn round(&mut self, kind: MarkKind, segment: Segment, curve: &[(f64, f64)], facing: f64) {
        let frame = *self.skeleton.frame(segment);
        let rays: Vec<Ray> = curve.iter().map(|(y, angle)| around(&frame, *y, *angle)).collect();
        self.cast(kind, segment, &rays, false, facing);
    }

    /// An arc across a digit.
    fn arc(&mut self, kind: MarkKind, segment: Segment, y: f64, (from, to): (f64, f64), bow: f64, facing: f64) {
        let curve: Vec<(f64, f64)> = (0..=20)
            .map(|i| {
                let t = f64::from(i) / 20.0;
                (y + bow * 4.0 * t * (1.0 - t), from + (to - from) * t)
            })
            .collect();
        self.round(kind, segment, &curve, facing);
    }

    fn bent(&self, joint: Joint) -> f64 {
        self.skeleton.posture.degrees(joint, Axis::Flexion)
    }

    /// A nail: wide, with a rounded free edge and a rounder root.
    fn nail(&mut self, segment: Segment, from: f64, to: f64, half: f64) {
        let frame = *self.skeleton.frame(segment);
        let (tip, root) = (to - half * 0.5, from + half * 0.75);
        let mut outline = Vec::new();
        let corner = |sweep: f64, power: f64| {
            let (s, c) = turn(sweep);
            let side = if c < 0.0 { -libm::pow(-c, power) } else { libm::pow(c, power) };
            (side, libm::pow(s.max(0.0), 0.9))
        };
        for i in 0..=14 {
            let (x, y) = corner(180.0 - 180.0 * f64::from(i) / 14.0, 0.8);
            outline.push((half * x, tip + half * 0.5 * y));
        }
        for i in 1..8 {
            let t = f64::from(i) / 8.0;
            outline.push((half * (1.0 - 0.04 * t), tip + (root - tip) * t));
        }
        for i in 0..=14 {
            let (x, y) = corner(180.0 * f64::from(i) / 14.0, 0.75);
            outline.push((0.96 * half * x, root - half * 0.75 * y));
        }
        for i in 1..8 {
            let t = f64::from(i) / 8.0;
            outline.push((-half * (0.96 + 0.04 * t), root + (tip - root) * t));
        }
        outline.push(outline[0]);
        let up = |(x, y): &(f64, f64)| Ray { from: frame.point(*x * 0.8, *y, 0.0), out: lean(&frame, *x) };
        let rays: Vec<Ray> = outline.iter().map(up).collect();
        self.cast(MarkKind::Nail, segment, &rays, true, 0.02);
        let moon: Vec<(f64, f64)> = (0..=16)
            .map(|i| {
                let (s, c) = turn(171.0 - 162.0 * f64::from(i) / 16.0);
                (half * 0.6 * c, from + half * 0.14 + half * 0.42 * s)
            })
            .collect();
        let rays: Vec<Ray> = moon.iter().map(up).collect();
        self.cast(MarkKind::Moon, segment, &rays, false, 0.3);
    }
}

/// Outwards from the back of a digit, leaning to the side with the nail's curve.
fn lean(frame: &Frame, x: f64) -> Vector {
    frame.axes.apply(Vector::new(x * 0.045, 0.0, 1.0)).unit()
}

/// A ray out of the axis of a segment.
pub fn around(frame: &Frame, y: f64, angle: f64) -> Ray {
    let (s, c) = turn(angle);
    Ray { from: frame.point(0.0, y, 0.0), out: frame.axes.apply(Vector::new(-s, 0.0, c)) }
}

/// Half widths of the fingers' nails, index to little, mm; drawn by eye.
const NAIL: [f64; 4] = [4.95, 5.05, 4.8, 4.2];

/// All marks of a limb.
pub fn marks(skeleton: &Skeleton, field: &Field, which: impl Fn(Segment) -> bool) -> Vec<Mark> {
    let mut caster = Caster { skeleton, field, which: &which, marks: Vec::new() };
    for finger in Finger::ALL.iter().copied() {
        digit(&mut caster, finger);
    }
    thumb(&mut caster);
    palm::lines(&mut caster);
    caster.marks
}

fn digit(caster: &mut Caster<'_>, finger: Finger) {
    let [first, second, _] = caster.skeleton.lengths.finger(finger);
    let last = caster.skeleton.lengths.tip(finger);
    let [proximal, middle, distal] = Row::ALL.map(|row| Segment::Finger(finger, row));
    let (mcp, pip, dip) =
        (caster.bent(Joint::Mcp(finger)), caster.bent(Joint::Pip(finger)), caster.bent(Joint::Dip(finger)));
    caster.nail(distal, last * 0.36, last - 2.3, NAIL[finger as usize]);
    if pip < 45.0 {
        caster.arc(MarkKind::Crease, proximal, first - 3.6, (-36.0, 36.0), -1.3, 0.25);
        caster.arc(MarkKind::Crease, proximal, first - 0.4, (-44.0, 44.0), -0.5, 0.25);
        caster.arc(MarkKind::Crease, middle, 2.6, (-36.0, 36.0), 1.2, 0.25);
    }
    if dip < 40.0 {
        caster.arc(MarkKind::Crease, middle, second - 1.6, (-34.0, 34.0), -0.7, 0.25);
        caster.arc(MarkKind::Crease, distal, 0.7, (-34.0, 34.0), 0.7, 0.25);
    }
    if pip < 60.0 {
        caster.arc(MarkKind::Crease, proximal, first - 1.0, (114.0, 246.0), -0.8, 0.15);
        caster.arc(MarkKind::Crease, middle, 0.9, (128.0, 232.0), 0.6, 0.15);
    }
    if dip < 50.0 {
        caster.arc(MarkKind::Crease, middle, second - 0.2, (122.0, 238.0), -0.5, 0.15);
    }
    if mcp < 60.0 {
        caster.arc(MarkKind::Crease, proximal, first * 0.36, (122.0, 238.0), -1.2, 0.15);
        // The knuckle, as two short bows beside it.
        caster.arc(MarkKind::Relief, proximal, -4.0, (-46.0, -14.0), 2.6, 0.3);
        caster.arc(MarkKind::Relief, proximal, -4.0, (14.0, 46.0), 2.6, 0.3);
    }
}

fn thumb(caster: &mut Caster<'_>) {
    let first = caster.skeleton.lengths.thumb[1];
    let last = caster.skeleton.lengths.thumb_tip();
    caster.nail(Segment::ThumbDistal, last * 0.36, last - 2.4, 6.5);
    if caster.bent(Joint::ThumbIp) < 45.0 {
        caster.arc(MarkKind::Crease, Segment::ThumbProximal, first - 3.4, (-34.0, 34.0), -1.3, 0.25);
        caster.arc(MarkKind::Crease, Segment::ThumbProximal, first - 0.4, (-42.0, 42.0), -0.5, 0.25);
        caster.arc(MarkKind::Crease, Segment::ThumbDistal, 2.4, (-34.0, 34.0), 1.2, 0.25);
        caster.arc(MarkKind::Crease, Segment::ThumbDistal, -0.6, (118.0, 242.0), -0.5, 0.15);
    }
    if caster.bent(Joint::ThumbMcp) < 40.0 {
        caster.arc(MarkKind::Relief, Segment::ThumbProximal, 1.0, (-34.0, 34.0), 0.8, 0.3);
    }
}
