//! Places on the skin.

use crate::body::Segment;
use crate::content::SkinPoint;
use crate::picture::solid::outwards;
use crate::picture::space::Vector;

use super::Limb;
use super::clip::ray;

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
    let (from, out) = ray(limb.skeleton, segment, point.at.share(), round);
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
    let normal = outwards(|points| near.distances(points), at, 0.6);
    Some(Place { segment, at: at + normal * point.out.get(), out: normal })
}
