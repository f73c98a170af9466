//! The distance to the skin near a place: tubes by their cones, segments by their tubes, the limb by its segments.

use fearless_simd::{Level, Simd, SimdBase as _, SimdMask as _, dispatch};

use crate::body::Finger;
use crate::picture::limb::{Row, Segment};
use crate::picture::space::{Points, Vector};

use super::cone::Cone;
use super::field::Blends;
use super::lanes::{LANES, Lanes, Places, all, least, smooth_mins};

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

/// Smooth unions lie below the lesser distance by at most this, mm.
pub const DIP: f64 = 5.0;

/// More than what rounding can do to a distance, mm.
pub const SLACK: f64 = 1e-6;

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
    pub fn of<'a>(
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
    pub fn segments(&self, points: &Points<LANES>) -> [[f64; LANES]; Segment::COUNT] {
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
