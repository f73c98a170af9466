//! Places on the skin.

use crate::body::Segment;
use crate::content::SkinPoint;
use crate::picture::space::{Vector, turn};

use super::Limb;
use super::clip::section;

/// A point on the skin or above it, with the direction out of the skin.
#[derive(Clone, Copy, Debug)]
pub struct Place {
    pub segment: Segment,
    pub at: Vector,
    pub out: Vector,
}

/// Finds a place of content on the limb, on each segment that it names.
pub fn resolve(limb: &Limb<'_>, point: &SkinPoint) -> Vec<Place> {
    resolve_at(limb, point, point.round.degrees())
}

/// The same with another angle round the segment.
pub fn resolve_at(limb: &Limb<'_>, point: &SkinPoint, round: f64) -> Vec<Place> {
    point.on.segments(limb.finger).into_iter().filter_map(|segment| on(limb, segment, point, round)).collect()
}

fn on(limb: &Limb<'_>, segment: Segment, point: &SkinPoint, round: f64) -> Option<Place> {
    let frame = limb.skeleton.frame(segment);
    let length = limb.skeleton.length(segment);
    let y = point.at.share() * length - if segment == Segment::Forearm { length } else { 0.0 };
    let ((a, b), (x, z), _) = section(segment);
    let (s, c) = turn(round);
    // On a flat segment the ray starts between its middle and its border, so that it meets the skin squarely.
    let spread = (a - b).max(0.0);
    let from = frame.point(x - s * spread, y, z);
    let out = frame.axes.apply(Vector::new(-s * a, 0.0, c * a.min(b * 1.6))).unit();
    let near = limb.skin.near(from, 60.0);
    let mut way = 0.0;
    for _ in 0..60 {
        let distance = near.distance(from + out * way);
        if distance.abs() < 0.02 {
            break;
        }
        way -= distance * 0.9;
        if !(-40.0..70.0).contains(&way) {
            return None;
        }
    }
    let at = from + out * way;
    let slope = |axis: Vector| near.distance(at + axis) - near.distance(at - axis);
    let normal = Vector::new(
        slope(Vector::new(0.6, 0.0, 0.0)),
        slope(Vector::new(0.0, 0.6, 0.0)),
        slope(Vector::new(0.0, 0.0, 0.6)),
    )
    .unit();
    Some(Place { segment, at: at + normal * point.out.get(), out: normal })
}
