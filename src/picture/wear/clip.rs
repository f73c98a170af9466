//! The edge of what is covered, as a distance: below zero inside.

use crate::body::{Finger, Segment};
use crate::content::{Band, Cover, Sheet};
use crate::picture::limb::Skeleton;
use crate::picture::solid::{smooth_max, smooth_min};
use crate::picture::space::{Frame, Vector, turn};

use super::pan;

/// How far a sheet that spans the fingers may be from the bones of each, mm: as far as fingers are spread.
const SPANNED: f64 = 24.0;

/// One covered part of one segment.
#[derive(Clone, Debug)]
struct Patch {
    frame: Frame,
    length: f64,
    from: f64,
    to: f64,
    /// How much further the far edge reaches for each mm towards the thumb side.
    slope: f64,
    /// The middle of the cross-section.
    centre: (f64, f64),
    /// Normals of the two side planes, and whether the arc is wider than half a turn.
    sides: Option<([(f64, f64); 2], bool)>,
    reach: f64,
    /// Whether the near edge is slanted like the far one.
    slanted_both: bool,
    /// The number of its cover.
    cover: usize,
    /// Whether it is a part of one sheet that spans all fingers.
    spans: bool,
    /// Whether it is of the bones at the tips, where such a sheet ends.
    at_tips: bool,
}

/// The covered part of the limb.
#[derive(Clone, Debug)]
pub struct Clip {
    patches: Vec<Patch>,
    openings: Vec<Patch>,
    corners: f64,
}

/// Half breadth and half depth of a segment's cross-section, its middle, and how far its flesh reaches, mm.
pub fn section(segment: Segment) -> ((f64, f64), (f64, f64), f64) {
    match segment {
        Segment::UpperArm => ((44.0, 36.0), (0.0, 0.0), 80.0),
        Segment::Forearm => ((32.0, 24.0), (0.0, 0.0), 80.0),
        Segment::Hand => ((40.0, 15.0), (2.0, -3.0), 90.0),
        Segment::ThumbMetacarpal => ((12.0, 12.0), (0.0, -1.0), 22.0),
        Segment::ThumbProximal => ((10.5, 10.5), (0.0, -0.8), 18.5),
        Segment::ThumbDistal => ((10.0, 9.5), (0.0, -1.0), 17.0),
        Segment::Finger(_, crate::body::Row::Proximal) => ((9.5, 9.5), (0.0, -0.8), 16.5),
        Segment::Finger(..) => ((8.5, 8.5), (0.0, -0.8), 15.0),
    }
}

/// Where a ray that meets the skin squarely starts inside a segment, and its direction: at a share of its length and an
/// angle round it.
pub fn ray(skeleton: &Skeleton, segment: Segment, share: f64, round: f64) -> (Vector, Vector) {
    let frame = skeleton.frame(segment);
    let ((a, b), (x, z), _) = section(segment);
    let (s, c) = turn(round);
    // On a flat segment it starts between the middle and the border.
    let spread = (a - b).max(0.0);
    let from = frame.point(x - s * spread, skeleton.along(segment, share), z);
    (from, frame.axes.apply(Vector::new(-s * a, 0.0, c * a.min(b * 1.6))).unit())
}

/// The two side planes of an arc, and whether it is wider than half a turn.
fn sides(segment: Segment, from: f64, to: f64) -> ([(f64, f64); 2], bool) {
    let ((a, b), ..) = section(segment);
    let normal = |degrees: f64| {
        let (s, c) = turn(degrees);
        let (du, dw) = (a * s, b * c);
        let size = (du * du + dw * dw).sqrt();
        (dw / size, -du / size)
    };
    ([normal(from), normal(to)], to - from > 180.0)
}

impl Patch {
    fn new(skeleton: &Skeleton, segment: Segment, cover: &Cover) -> Self {
        let ((a, _), centre, reach) = section(segment);
        let (from, to) = cover.span.map_or((0.0, 1.0), |span| (span.from.share(), span.to.share()));
        let sides = cover
            .around
            .filter(|arc| arc.sweep() < 360.0)
            .map(|arc| sides(segment, arc.from.degrees(), arc.from.degrees() + arc.sweep()));
        let breadth = 2.0 * a;
        Self {
            frame: *skeleton.frame(segment),
            length: skeleton.length(segment),
            from: skeleton.along(segment, from),
            to: skeleton.along(segment, to),
            slope: cover.slant.map_or(0.0, |slant| slant.get() / breadth),
            centre,
            sides,
            reach: cover.reach.map_or(reach, |reach| reach.get()),
            slanted_both: false,
            cover: 0,
            spans: false,
            at_tips: matches!(segment, Segment::Finger(_, crate::body::Row::Distal)),
        }
    }

    /// How far past the far edge a point is, in the frame of the patch.
    fn far(&self, q: Vector) -> f64 {
        (q.y - self.to + self.slope * q.x) / self.tilt()
    }

    fn near(&self, q: Vector) -> f64 {
        if self.slanted_both { (self.from - q.y - self.slope * q.x) / self.tilt() } else { self.from - q.y }
    }

    fn tilt(&self) -> f64 {
        (1.0 + self.slope * self.slope).sqrt()
    }

    /// How far past its side planes a point is.
    fn side(&self, q: Vector) -> Option<f64> {
        let ([first, second], wide) = self.sides?;
        let (u, w) = (-(q.x - self.centre.0), q.z - self.centre.1);
        let (after, before) = (-(first.0 * u + first.1 * w), second.0 * u + second.1 * w);
        Some(if wide { after.min(before) } else { after.max(before) })
    }

    fn distance(&self, p: Vector, corners: f64) -> f64 {
        let q = self.frame.local(p);
        let cut = self.edge(self.near(q), self.far(q), self.side(q), corners);
        let share = if self.length > 0.0 { (q.y / self.length).clamp(0.0, 1.0) } else { 0.0 };
        let (low, high) = (self.from.min(0.0), self.to.max(0.0));
        let on_axis = if self.reach < 60.0 { (share * self.length).clamp(low, high.max(low)) } else { q.y };
        let off = Vector::new(q.x - self.centre.0, q.y - on_axis, q.z - self.centre.1).length() - self.reach;
        cut.max(off)
    }

    /// Ends and sides together, with rounded corners.
    fn edge(&self, near: f64, far: f64, side: Option<f64>, corners: f64) -> f64 {
        let cut = smooth_max(near, far, corners.min((self.to - self.from).abs()));
        side.map_or(cut, |side| smooth_max(cut, side, corners))
    }
}

/// The edge of a sheet across all fingers: its ends and sides are single lines, which pass each finger where that one's
/// own would be.
fn spanned(fingers: &[Patch], p: Vector, corners: f64) -> f64 {
    /// Over how many millimetres across the fingers a line goes from one to the next: ends slowly, sides at once.
    const EASE: (f64, f64) = (13.0, 5.0);
    let places: Vec<(&Patch, Vector, f64)> = fingers
        .iter()
        .map(|patch| {
            let q = patch.frame.local(p);
            let (x, z) = (q.x - patch.centre.0, q.z - patch.centre.1);
            (patch, q, x * x + z * z)
        })
        .collect();
    let blended = |ease: f64, value: &dyn Fn(&Patch, Vector) -> f64| {
        let weight = |square: f64| 1.0 / ((square + ease * ease) * (square + ease * ease));
        let total: f64 = places.iter().map(|(_, _, square)| weight(*square)).sum();
        places.iter().map(|(patch, q, square)| value(patch, *q) * weight(*square)).sum::<f64>() / total
    };
    let (near, far) = (blended(EASE.0, &|patch, q| patch.near(q)), blended(EASE.0, &|patch, q| patch.far(q)));
    let far = if fingers[0].at_tips { smooth_max(far, beside(&places), ROUND) } else { far };
    let side = fingers[0].sides.map(|_| blended(EASE.1, &|patch, q| patch.side(q).unwrap_or(-1e3)));
    let cut = fingers[0].edge(near, far, side, corners);
    let off = places.iter().map(|(patch, _, square)| square.sqrt() - patch.reach).fold(1e3, f64::min);
    cut.max(off)
}

/// Over how many millimetres the end of a sheet under the tips bends back to its borders, which stand up beside the
/// outer fingers: cut straight across, each border would end in a point.
const ROUND: f64 = 40.0;

/// How far a point is past the borders of a sheet that spans the fingers, thumb side and little finger's side; below zero
/// also on the border itself, which is no edge.
fn beside(places: &[(&Patch, Vector, f64)]) -> f64 {
    /// From the middle of an outer finger to past its border, mm.
    const BORDER: f64 = 18.0;
    let out = |place: Option<&(&Patch, Vector, f64)>| place.map_or(0.0, |(patch, q, _)| q.x - patch.centre.0);
    (-out(places.first())).max(out(places.last())) - BORDER
}

impl Clip {
    pub fn new(skeleton: &Skeleton, finger: Finger, sheet: &Sheet, corners: f64) -> Self {
        let patches = |covers: &[Cover], spans: bool| {
            let each = |(number, cover): (usize, &Cover)| -> Vec<Patch> {
                let spans = spans && pan::row(cover).is_some();
                let patch = |segment| {
                    let own = Patch::new(skeleton, segment, cover);
                    let reach = if spans { own.reach.max(SPANNED) } else { own.reach };
                    Patch { cover: number, spans, reach, ..own }
                };
                cover.on.segments(finger).into_iter().map(patch).collect()
            };
            covers.iter().enumerate().flat_map(each).collect()
        };
        Self { patches: patches(&sheet.covers, !sheet.clings), openings: patches(&sheet.leaves, false), corners }
    }

    /// The edge of a band: so wide, from `ends.0` degrees past its start to `ends.1` degrees past its end.
    pub fn of_band(
        skeleton: &Skeleton,
        segments: &[Segment],
        band: &Band,
        ends: (f64, f64),
        width: f64,
        reach: impl Fn(Segment) -> f64,
    ) -> Self {
        let patches = segments
            .iter()
            .map(|&segment| {
                let cover = Cover { on: band.on, span: None, around: None, slant: band.slant, reach: None };
                let mut patch = Patch::new(skeleton, segment, &cover);
                let middle = skeleton.along(segment, band.at.share());
                (patch.from, patch.to) = (middle - width / 2.0, middle + width / 2.0);
                patch.slanted_both = true;
                patch.reach = reach(segment);
                patch.sides = band
                    .around
                    .map(|arc| (arc.from.degrees() + ends.0, arc.from.degrees() + arc.sweep() + ends.1))
                    .filter(|(from, to)| to - from < 359.0)
                    .map(|(from, to)| sides(segment, from, to));
                patch
            })
            .collect();
        Self { patches, openings: Vec::new(), corners: 2.5 }
    }

    /// How far past the edge a point is; below zero inside.
    pub fn distance(&self, p: Vector) -> f64 {
        let mut cut = 1e3;
        for cover in self.patches.chunk_by(|a, b| a.spans && b.spans && a.cover == b.cover) {
            let own = match cover {
                [only] => only.distance(p, self.corners),
                fingers => spanned(fingers, p, self.corners),
            };
            cut = smooth_min(cut, own, self.corners * 1.3);
        }
        for opening in &self.openings {
            cut = smooth_max(cut, -opening.distance(p, self.corners * 0.6), 5.0);
        }
        cut
    }
}
