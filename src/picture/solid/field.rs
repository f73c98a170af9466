//! The distance to the skin: tubes by their cones, segments by their tubes, the limb by its segments.

use fearless_simd::{Level, Simd, SimdBase as _, SimdMask as _, dispatch};

use crate::body::Finger;
use crate::picture::limb::{Flesh, Row, Segment};
use crate::picture::space::{Points, Vector};

use super::cone::Cone;
use super::lanes::{LANES, Lanes, Places, all, least, smooth_mins};

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
    #[inline(always)]
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

/// A cone whose distance to one place is known.
#[derive(Clone, Copy, Debug)]
struct Kept {
    /// The distance from the centre of the place.
    off: f64,
    cone: Cone,
}

/// Cones of one tube.
#[derive(Clone, Copy, Debug)]
struct Run {
    segment: Segment,
    tube: u32,
    /// Where the next run starts.
    end: usize,
}

/// A field with only the cones that matter near one place.
#[derive(Clone, Debug)]
pub struct Near {
    centre: Vector,
    /// Run by run, in each the nearest to the centre first.
    cones: Vec<Kept>,
    runs: Vec<Run>,
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

/// Smooth unions lie below the lesser distance by at most this, mm.
const DIP: f64 = 5.0;

/// More than what rounding can do to a distance, mm.
const SLACK: f64 = 1e-6;

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

/// Chooses the cones that can change the distance anywhere in a ball, tube by tube.
struct Sieve<'a> {
    radius: f64,
    /// Distances from the centre of the ball.
    cones: Vec<(f64, &'a Cone)>,
    /// Tubes, each with the distance of its nearest cone.
    runs: Vec<(Run, f64)>,
    segments: [f64; Segment::COUNT],
}

impl<'a> Sieve<'a> {
    fn new(radius: f64, runs: usize, cones: usize) -> Self {
        let (runs, cones) = (Vec::with_capacity(runs), Vec::with_capacity(cones));
        Self { radius, cones, runs, segments: [FAR; Segment::COUNT] }
    }

    /// What follows is of this tube.
    #[inline]
    fn run(&mut self, segment: Segment, tube: u32) {
        if self.runs.last().is_none_or(|(run, _)| run.tube != tube) {
            self.runs.push((Run { segment, tube, end: self.cones.len() }, FAR));
        }
    }

    /// How far from the centre a cone of this tube matters at most.
    #[inline]
    fn reach(&self) -> f64 {
        self.runs.last().map_or(FAR, |(_, nearest)| *nearest) + 2.0 * self.radius + SLACK
    }

    #[inline]
    fn cone(&mut self, off: f64, cone: &'a Cone) {
        self.cones.push((off, cone));
        if let Some((run, nearest)) = self.runs.last_mut() {
            run.end = self.cones.len();
            *nearest = nearest.min(off);
            let own = &mut self.segments[run.segment.index()];
            *own = own.min(off);
        }
    }

    /// What is left.
    ///
    /// Inside a tube only the nearest cones count. A tube counts when it is nearer than the nearest of its segment and the
    /// width over which tubes flow together, and a segment when it is nearer than the nearest of all and the width over
    /// which segments do: smooth unions are exact past their width.
    fn near(mut self, blends: Blends, centre: Vector) -> Near {
        let least = self.segments.iter().copied().fold(FAR, f64::min);
        let over = 2.0 * self.radius;
        let mut cones = Vec::with_capacity(self.cones.len());
        let mut runs = Vec::with_capacity(self.runs.len());
        let mut start = 0;
        for (run, nearest) in self.runs {
            let few = &mut self.cones[start..run.end];
            start = run.end;
            let own = self.segments[run.segment.index()];
            let far_tube = nearest > own + over + blends.within(run.segment) + DIP;
            let far_segment = own > least + over + blends.around(run.segment) + DIP;
            if far_tube || far_segment {
                continue;
            }
            let reach = nearest + over + SLACK;
            few.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
            let kept = few.iter().take_while(|(off, _)| *off <= reach);
            cones.extend(kept.map(|(off, cone)| Kept { off: *off, cone: **cone }));
            runs.push(Run { end: cones.len(), ..run });
        }
        Near { centre, cones, runs, blends }
    }
}

impl Near {
    /// The cones that can change the distance anywhere in a ball.
    fn of<'a>(
        parts: impl Iterator<Item = (Segment, u32, &'a Cone)>,
        blends: Blends,
        centre: Vector,
        radius: f64,
    ) -> Self {
        let mut sieve = Sieve::new(radius, 16, 64);
        for (segment, tube, cone) in parts {
            sieve.run(segment, tube);
            sieve.cone(cone.distance(centre), cone);
        }
        sieve.near(blends, centre)
    }

    /// Its cones, run by run.
    #[inline(always)]
    fn cones(&self) -> impl Iterator<Item = (&Run, &[Kept])> {
        let mut start = 0;
        self.runs.iter().map(move |run| {
            let cones = &self.cones[start..run.end];
            start = run.end;
            (run, cones)
        })
    }

    /// What matters within a smaller ball.
    pub fn near(&self, centre: Vector, radius: f64) -> Self {
        let way = (centre - self.centre).length() + SLACK;
        let mut sieve = Sieve::new(radius, self.runs.len(), self.cones.len());
        for (run, cones) in self.cones() {
            sieve.run(run.segment, run.tube);
            for kept in cones {
                // The others of this tube are farther still.
                if kept.off - way > sieve.reach() {
                    break;
                }
                sieve.cone(kept.cone.distance(centre), &kept.cone);
            }
        }
        sieve.near(self.blends, centre)
    }

    /// The distances to each segment by itself.
    fn segments(&self, points: &Points<LANES>) -> [[f64; LANES]; Segment::COUNT] {
        dispatch!(Level::new(), simd => self.single(simd, points))
    }

    #[inline(always)]
    fn single<S: Simd>(&self, simd: S, points: &Points<LANES>) -> [[f64; LANES]; Segment::COUNT] {
        self.by_segment(simd, &Places::of(simd, points, 0)).0.map(Into::into)
    }

    /// The distances to its segments, and one bit for each segment that is near.
    #[inline(always)]
    fn by_segment<S: Simd>(&self, simd: S, places: &Places<S>) -> ([Lanes<S>; Segment::COUNT], u32) {
        let mut found = [all(simd, FAR); Segment::COUNT];
        let mut present = 0;
        // No distance differs by more from the one to the centre.
        let off = places.from(self.centre);
        let way = most(off.dot(&off)).sqrt() + SLACK;
        for (run, cones) in self.cones() {
            let width = self.blends.within(run.segment);
            let slot = &mut found[run.segment.index()];
            let is_first = present & bit(run.segment) == 0;
            present |= bit(run.segment);
            // Past this a tube changes nothing.
            let limit = most(*slot) + width;
            let mut nearest = all(simd, FAR);
            for kept in cones {
                let least_off = kept.off - way;
                if least_off >= limit || nearest.simd_gt(least_off).to_bitmask() == 0 {
                    break;
                }
                nearest = least(nearest, kept.cone.distances(places));
            }
            *slot = if is_first { nearest } else { smooth_mins(*slot, nearest, width) };
        }
        (found, present)
    }

    /// The distance to the whole, from the distances to its segments. What is not near is left out: with it nothing would
    /// flow together.
    #[inline(always)]
    fn whole<S: Simd>(&self, simd: S, (by, present): &([Lanes<S>; Segment::COUNT], u32)) -> Lanes<S> {
        let blends = &self.blends;
        let at = |segment: Segment| (present & bit(segment) != 0).then(|| by[segment.index()]);
        let arm = joined(at(Segment::UpperArm), at(Segment::Forearm), 14.0);
        let core = joined(arm, at(Segment::Hand), 14.0);
        let core = joined(core, at(Segment::ThumbMetacarpal), blends.thumb);
        let mut whole = joined(core, at(Segment::ThumbProximal), blends.root);
        let (proximal, distal) = (at(Segment::ThumbProximal), at(Segment::ThumbDistal));
        if distal.is_some() {
            whole = nearer(whole, joined(proximal, distal, blends.joint));
        }
        if present & FINGERS == 0 {
            return whole.unwrap_or(all(simd, FAR));
        }
        let mut row_before = None;
        for finger in Finger::ALL.iter().copied() {
            let [proximal, middle, distal] = Row::ALL.map(|row| at(Segment::Finger(finger, row)));
            let own = nearer(nearer(proximal, middle), distal);
            if own.is_some() {
                if proximal.is_some() {
                    whole = nearer(whole, joined(core, proximal, blends.root));
                }
                if middle.is_some() {
                    whole = nearer(whole, joined(proximal, middle, blends.joint));
                }
                if distal.is_some() {
                    whole = nearer(whole, joined(middle, distal, blends.joint));
                }
                if blends.neighbours > 0.0 && row_before.is_some() {
                    whole = nearer(whole, joined(row_before, own, blends.neighbours));
                }
            }
            row_before = own;
        }
        whole.unwrap_or(all(simd, FAR))
    }

    /// The distances to the whole.
    pub fn distances<const N: usize>(&self, points: &Points<N>) -> [f64; N] {
        dispatch!(Level::new(), simd => self.in_lanes(simd, points))
    }

    #[inline(always)]
    fn in_lanes<S: Simd, const N: usize>(&self, simd: S, points: &Points<N>) -> [f64; N] {
        let mut found = [0.0; N];
        for (number, some) in found.chunks_mut(LANES).enumerate() {
            let places = Places::of(simd, points, number * LANES);
            let distances: [f64; LANES] = self.whole(simd, &self.by_segment(simd, &places)).into();
            some.copy_from_slice(&distances[..some.len()]);
        }
        found
    }

    /// The distance to the whole.
    pub fn distance(&self, p: Vector) -> f64 {
        let [distance] = self.distances(&Points::of([p]));
        distance
    }
}

/// The bit of a segment.
const fn bit(segment: Segment) -> u32 {
    1 << segment.index()
}

/// The bits of all fingers' bones.
const FINGERS: u32 = !(bit(Segment::ThumbDistal) | (bit(Segment::ThumbDistal) - 1));

/// Two distances that flow together, where there are two.
#[inline(always)]
fn joined<S: Simd>(a: Option<Lanes<S>>, b: Option<Lanes<S>>, width: f64) -> Option<Lanes<S>> {
    match (a, b) {
        (Some(a), Some(b)) => Some(smooth_mins(a, b, width)),
        (one, other) => one.or(other),
    }
}

/// The lesser of two distances, where there are two.
#[inline(always)]
fn nearer<S: Simd>(a: Option<Lanes<S>>, b: Option<Lanes<S>>) -> Option<Lanes<S>> {
    match (a, b) {
        (Some(a), Some(b)) => Some(least(a, b)),
        (one, other) => one.or(other),
    }
}

/// The greatest of four.
#[inline(always)]
fn most<S: Simd>(values: Lanes<S>) -> f64 {
    let [a, b, c, d]: [f64; LANES] = values.into();
    let greater = |a: f64, b: f64| if b > a { b } else { a };
    greater(greater(a, b), greater(c, d))
}
