//! The distance to the skin: tubes by their cones, segments by their tubes, the limb by its segments.

use crate::body::Finger;
use crate::picture::limb::{Flesh, Row, Segment};
use crate::picture::space::Vector;

use super::blend::smooth_min;
use super::cone::Cone;

/// How widely flesh flows together where parts meet, mm. A splint bridges hollows that skin follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blends {
    /// Between the tubes of one finger bone.
    digit: f64,
    /// Between the metacarpals, and between a digit and the palm.
    palm: f64,
    root: f64,
    /// Between one bone of a finger and the next.
    joint: f64,
    /// Between neighbouring fingers; 0 leaves a cleft.
    neighbours: f64,
    /// Between the thumb and the palm.
    thumb: f64,
}

impl Blends {
    /// Skin.
    pub const SKIN: Self = Self { digit: 4.0, palm: 10.0, root: 8.0, joint: 1.6, neighbours: 0.0, thumb: 24.0 };
    /// A sheet that was moulded over the limb: it spans hollows, and lies over neighbouring fingers as one.
    pub const SHEET: Self = Self { digit: 6.0, palm: 16.0, root: 18.0, joint: 7.0, neighbours: 9.0, thumb: 28.0 };
    /// Fabric: it follows the limb but closes clefts.
    pub const WRAP: Self = Self { digit: 5.0, palm: 12.0, root: 11.0, joint: 4.0, neighbours: 5.0, thumb: 26.0 };
    /// How widely the tubes of a segment flow together.
    const fn within(&self, segment: Segment) -> f64 {
        match segment {
            Segment::UpperArm | Segment::Forearm => 16.0,
            Segment::Hand => self.palm,
            Segment::ThumbMetacarpal => self.palm * 1.4,
            Segment::ThumbProximal | Segment::ThumbDistal => self.digit + 1.0,
            Segment::Finger(..) => self.digit,
        }
    }

    /// How widely a segment flows together with others.
    const fn around(&self, segment: Segment) -> f64 {
        match segment {
            Segment::UpperArm | Segment::Forearm => 14.0,
            Segment::Hand | Segment::ThumbMetacarpal => self.thumb,
            Segment::ThumbProximal | Segment::ThumbDistal | Segment::Finger(..) => {
                let widest = if self.root > self.joint { self.root } else { self.joint };
                if widest > self.neighbours { widest } else { self.neighbours }
            }
        }
    }
}

/// A segment's cones, tube by tube.
#[derive(Clone, Copy, Debug)]
struct Part {
    cone: Cone,
    segment: Segment,
    /// Number of its tube.
    tube: u32,
}

/// The distance to the skin of some segments.
#[derive(Clone, Debug)]
pub struct Field {
    parts: Vec<Part>,
    blends: Blends,
    low: Vector,
    high: Vector,
}

/// A field with only the cones that matter near one place.
#[derive(Clone, Debug)]
pub struct Near {
    parts: Vec<Part>,
    blends: Blends,
}

/// Distances to the single segments; far ones are `FAR`.
pub type BySegment = [f64; Segment::COUNT];

/// A distance past which nothing matters.
pub const FAR: f64 = 1e3;

impl Field {
    /// The field of those segments that `which` takes.
    pub fn new(flesh: &Flesh, blends: Blends, which: impl Fn(Segment) -> bool) -> Self {
        let mut parts = Vec::new();
        for (number, tube) in flesh.tubes.iter().enumerate().filter(|(_, tube)| which(tube.segment)) {
            for pair in tube.balls.windows(2) {
                parts.push(Part { cone: Cone::new(pair[0], pair[1]), segment: tube.segment, tube: number as u32 });
            }
        }
        let mut low = Vector::new(FAR, FAR, FAR);
        let mut high = -low;
        for part in &parts {
            let (a, b) = part.cone.corners();
            low = low.min(a);
            high = high.max(b);
        }
        Self { parts, blends, low, high }
    }

    /// The box that holds it.
    pub fn bounds(&self) -> (Vector, Vector) {
        (self.low, self.high)
    }

    /// What matters within a ball.
    pub fn near(&self, centre: Vector, radius: f64) -> Near {
        Near { parts: relevant(&self.parts, &self.blends, centre, radius), blends: self.blends }
    }

    /// What matters within `reach` mm of points that come one after the other.
    pub fn walk(&self, reach: f64) -> Walk<'_> {
        Walk { field: self, reach, centre: Vector::ZERO, near: None }
    }

    /// Everything, for a single question.
    pub fn all(&self) -> Near {
        Near { parts: self.parts.clone(), blends: self.blends }
    }
}

/// The cones that can change the distance anywhere in a ball.
///
/// Inside a tube only the nearest cones count. A tube counts when it is nearer than the nearest of its segment and the
/// width over which tubes flow together, and a segment when it is nearer than the nearest of all and the width over which
/// segments do: smooth unions are exact past their width.
fn relevant(parts: &[Part], blends: &Blends, centre: Vector, radius: f64) -> Vec<Part> {
    /// Smooth unions lie below the lesser distance by at most this, mm.
    const DIP: f64 = 3.0;
    let distances: Vec<f64> = parts.iter().map(|part| part.cone.distance(centre)).collect();
    let mut tubes: Vec<(usize, usize, f64)> = Vec::new();
    let mut segments = [FAR; Segment::COUNT];
    let mut at = 0;
    while at < parts.len() {
        let start = at;
        let mut nearest = FAR;
        while at < parts.len() && parts[at].tube == parts[start].tube {
            nearest = nearest.min(distances[at]);
            at += 1;
        }
        tubes.push((start, at, nearest));
        let own = &mut segments[parts[start].segment.index()];
        *own = own.min(nearest);
    }
    let least = segments.iter().copied().fold(FAR, f64::min);
    let mut kept = Vec::new();
    for (start, end, nearest) in tubes {
        let segment = parts[start].segment;
        let own = segments[segment.index()];
        let far_tube = nearest > own + 2.0 * radius + blends.within(segment) + DIP;
        let far_segment = own > least + 2.0 * radius + blends.around(segment) + DIP;
        if far_tube || far_segment {
            continue;
        }
        let reach = nearest + 2.0 * radius + 1e-6;
        kept.extend((start..end).filter(|i| distances[*i] <= reach).map(|i| parts[i]));
    }
    kept
}

/// A field along a way: neighbours share what matters near them.
pub struct Walk<'a> {
    field: &'a Field,
    reach: f64,
    centre: Vector,
    near: Option<Near>,
}

impl Walk<'_> {
    /// What matters within reach of the next point.
    pub fn at(&mut self, point: Vector) -> &Near {
        /// How far a point may be from the one before it to share what is near, mm.
        const STRIDE: f64 = 6.0;
        if (point - self.centre).length() > STRIDE {
            self.near = None;
        }
        let (field, reach) = (self.field, self.reach);
        if self.near.is_none() {
            self.centre = point;
        }
        self.near.get_or_insert_with(|| field.near(point, STRIDE + reach))
    }
}

impl Near {
    /// What matters within a smaller ball.
    pub fn near(&self, centre: Vector, radius: f64) -> Self {
        Self { parts: relevant(&self.parts, &self.blends, centre, radius), blends: self.blends }
    }

    /// The distance to each segment by itself.
    pub fn segments(&self, p: Vector) -> BySegment {
        let mut found = [FAR; Segment::COUNT];
        for run in self.parts.chunk_by(|a, b| a.tube == b.tube) {
            let segment = run[0].segment;
            let width = self.blends.within(segment);
            let slot = &mut found[segment.index()];
            // Past this a tube changes nothing.
            let limit = *slot + width;
            let mut nearest = FAR;
            for part in run {
                if part.cone.is_nearer(p, nearest.min(limit)) {
                    nearest = nearest.min(part.cone.distance(p));
                }
            }
            if nearest < limit {
                *slot = if *slot >= FAR { nearest } else { smooth_min(*slot, nearest, width) };
            }
        }
        found
    }

    /// The distance to the whole, from the distances to its segments.
    pub fn whole(&self, by: &BySegment) -> f64 {
        let blends = &self.blends;
        let at = |segment: Segment| by[segment.index()];
        let arm = smooth_min(at(Segment::UpperArm), at(Segment::Forearm), 14.0);
        let core = smooth_min(smooth_min(arm, at(Segment::Hand), 14.0), at(Segment::ThumbMetacarpal), blends.thumb);
        let mut whole = core.min(smooth_min(core, at(Segment::ThumbProximal), blends.root));
        whole = whole.min(smooth_min(at(Segment::ThumbProximal), at(Segment::ThumbDistal), blends.joint));
        let mut row_before = FAR;
        for finger in Finger::ALL.iter().copied() {
            let [proximal, middle, distal] = Row::ALL.map(|row| at(Segment::Finger(finger, row)));
            let mut digit = smooth_min(core, proximal, blends.root).min(smooth_min(proximal, middle, blends.joint));
            digit = digit.min(smooth_min(middle, distal, blends.joint));
            if blends.neighbours > 0.0 {
                let own = proximal.min(middle).min(distal);
                digit = digit.min(smooth_min(row_before, own, blends.neighbours));
                row_before = own;
            }
            whole = whole.min(digit);
        }
        whole
    }

    /// The distance to the whole.
    pub fn distance(&self, p: Vector) -> f64 {
        self.whole(&self.segments(p))
    }
}
