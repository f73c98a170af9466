//! The distance to the skin: which cones there are, and which of them are near a place.

use crate::picture::limb::{Flesh, Segment};
use crate::picture::space::{Points, Vector};

use super::cone::Cone;
use super::lanes::LANES;
use super::near::{BySegment, DIP, FAR, Near, SLACK};

/// How widely flesh flows together where parts meet, mm. A splint bridges hollows that skin follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blends {
    /// Between the tubes of one finger bone.
    digit: f64,
    /// Between the metacarpals, and between a digit and the palm.
    pub palm: f64,
    pub root: f64,
    /// Between one bone of a finger and the next.
    pub joint: f64,
    /// Between neighbouring fingers; 0 leaves a cleft.
    pub neighbours: f64,
    /// Between the thumb and the palm.
    pub thumb: f64,
}

impl Blends {
    /// Skin.
    pub const SKIN: Self = Self { digit: 4.0, palm: 10.0, root: 8.0, joint: 1.6, neighbours: 0.0, thumb: 24.0 };
    /// A sheet that was moulded over the limb: it spans hollows, and lies over neighbouring fingers as one.
    pub const SHEET: Self = Self { digit: 6.0, palm: 16.0, root: 18.0, joint: 7.0, neighbours: 9.0, thumb: 28.0 };
    /// Fabric: it follows the limb but closes clefts.
    pub const WRAP: Self = Self { digit: 5.0, palm: 12.0, root: 11.0, joint: 4.0, neighbours: 5.0, thumb: 26.0 };
    /// How widely the tubes of a segment flow together.
    #[inline(always)]
    pub const fn within(&self, segment: Segment) -> f64 {
        match segment {
            Segment::UpperArm | Segment::Forearm => 16.0,
            Segment::Hand => self.palm,
            Segment::ThumbMetacarpal => self.palm * 1.4,
            Segment::ThumbProximal | Segment::ThumbDistal => self.digit + 1.0,
            Segment::Finger(..) => self.digit,
        }
    }

    /// How widely a segment flows together with others.
    pub const fn around(&self, segment: Segment) -> f64 {
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

/// A few cones of one tube that follow each other, in a ball.
#[derive(Clone, Copy, Debug)]
struct Cluster {
    /// A point inside one of them, and how deep it is.
    at: Vector,
    depth: f64,
    /// How far round that point the cones reach.
    reach: f64,
    start: u32,
    end: u32,
}

/// The distance to the skin of some segments.
#[derive(Clone, Debug)]
pub struct Field {
    parts: Vec<Part>,
    clusters: Vec<Cluster>,
    blends: Blends,
    low: Vector,
    high: Vector,
}

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
        Self { clusters: clusters(&parts), parts, blends, low, high }
    }

    /// The box that holds it.
    pub fn bounds(&self) -> (Vector, Vector) {
        (self.low, self.high)
    }

    /// What matters within a ball.
    pub fn near(&self, centre: Vector, radius: f64) -> Near {
        Near::of(self.candidates(centre, radius), self.blends, centre, radius)
    }

    /// The parts that can be relevant within a ball, by the balls round their clusters.
    ///
    /// A superset of what `Near::of` keeps of all: it takes the least distances from above and each cluster's from below.
    fn candidates(&self, centre: Vector, radius: f64) -> impl Iterator<Item = (Segment, u32, &Cone)> {
        let mut tubes: Vec<f64> = Vec::new();
        let mut segments = [(FAR, FAR); Segment::COUNT];
        let mut bounds: Vec<(f64, usize)> = Vec::with_capacity(self.clusters.len());
        let mut tube = None;
        for cluster in &self.clusters {
            let part = &self.parts[cluster.start as usize];
            let off = (centre - cluster.at).length();
            let (least, most) = (off - cluster.reach, off - cluster.depth);
            if tube != Some(part.tube) {
                tube = Some(part.tube);
                tubes.push(FAR);
            }
            let number = tubes.len() - 1;
            tubes[number] = tubes[number].min(most);
            let own = &mut segments[part.segment.index()];
            *own = (own.0.min(least), own.1.min(most));
            bounds.push((least, number));
        }
        let nearest = segments.iter().map(|(_, most)| *most).fold(FAR, f64::min);
        let (parts, blends) = (&self.parts, self.blends);
        let matters = move |(cluster, (least, tube)): (&Cluster, (f64, usize))| {
            let segment = parts[cluster.start as usize].segment;
            let (first, own) = segments[segment.index()];
            let over = 2.0 * radius + SLACK;
            let wanted = least <= tubes[tube] + over
                && least <= own + over + blends.within(segment) + DIP
                && first <= nearest + over + blends.around(segment) + DIP;
            wanted.then(|| &parts[cluster.start as usize..cluster.end as usize])
        };
        let near = self.clusters.iter().zip(bounds).filter_map(matters).flatten();
        near.map(|part| (part.segment, part.tube, &part.cone))
    }

    /// What matters within `reach` mm of points that come one after the other.
    pub fn walk(&self, reach: f64) -> Walk<'_> {
        Walk { field: self, reach, centre: Vector::ZERO, near: None }
    }

    /// Everything.
    pub fn all(&self) -> Near {
        let centre = self.low.towards(self.high, 0.5);
        let radius = (self.high - self.low).length() / 2.0;
        let parts = self.parts.iter().map(|part| (part.segment, part.tube, &part.cone));
        Near::of(parts, self.blends, centre, radius + FAR)
    }
}

/// Parts in clusters.
fn clusters(parts: &[Part]) -> Vec<Cluster> {
    /// So many cones at most are in one.
    const MOST: usize = 6;
    let mut found = Vec::new();
    let mut start = 0;
    for tube in parts.chunk_by(|a, b| a.tube == b.tube) {
        for few in tube.chunks(MOST) {
            let (at, depth) = few[few.len() / 2].cone.first();
            let reach = few.iter().map(|part| part.cone.farthest(at)).fold(0.0, f64::max);
            let end = start + few.len();
            found.push(Cluster { at, depth, reach, start: start as u32, end: end as u32 });
            start = end;
        }
    }
    found
}

/// A field along a way: neighbours share what matters near them.
pub struct Walk<'a> {
    field: &'a Field,
    reach: f64,
    centre: Vector,
    near: Option<Near>,
}

/// How far a point may be from the one before it to share what is near, mm.
const STRIDE: f64 = 6.0;

impl Walk<'_> {
    /// The distances to each segment by itself, from points that come one after the other.
    pub fn segments(&mut self, points: &[Vector]) -> Vec<BySegment> {
        let mut found = Vec::with_capacity(points.len());
        while let Some(first) = points.get(found.len()) {
            self.at(*first);
            let rest = &points[found.len()..];
            let few = rest.iter().take(LANES).take_while(|p| (**p - self.centre).length() <= STRIDE).count().max(1);
            let together = Points::of(std::array::from_fn::<_, LANES, _>(|i| rest[i.min(few - 1)]));
            let by = self.at(*first).segments(&together);
            found.extend((0..few).map(|i| by.map(|distances| distances[i])));
        }
        found
    }

    /// What matters within reach of the next point.
    pub fn at(&mut self, point: Vector) -> &Near {
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
