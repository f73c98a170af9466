//! A sheet moulded to the limb: an offset of the skin inside an edge.

use crate::body::Segment;
use crate::content::{Look, Material, Orthosis, Sheet};
use crate::picture::plate::{Kind, Surface};
use crate::picture::solid::{BESIDE, Blends, EVERYWHERE, Field, Near, NearSolid, Solid, surface};
use crate::picture::space::{Points, Vector};

use super::clip::Clip;
use super::{Limb, moulded_on, pan};

/// A sheet on a limb.
#[derive(Clone, Debug)]
pub struct Moulded {
    pub field: Field,
    pub clip: Clip,
    /// mm.
    pub thickness: f64,
    pub kind: Kind,
    axis: (Vector, Vector),
    /// Only fingers and thumb: looked at more closely.
    small: bool,
}

impl Moulded {
    pub fn new(limb: &Limb<'_>, orthosis: &Orthosis, sheet: &Sheet) -> Self {
        let covered: Vec<Segment> = sheet.covers.iter().flat_map(|cover| cover.on.segments(limb.finger)).collect();
        let small = covered.iter().all(|s| matches!(s, Segment::Finger(..) | Segment::ThumbDistal));
        let blends = if sheet.clings { Blends::WRAP } else { Blends::SHEET };
        let look = sheet.look.unwrap_or(match orthosis.material {
            Material::Rigid | Material::Flexible | Material::Metal => Look::Firm,
            Material::Soft | Material::SoftWithStay => Look::Fabric,
            Material::Cast => Look::Cast,
        });
        let kind = match look {
            Look::Firm => Kind::Shell,
            Look::Fabric => Kind::Wrap,
            Look::Cast => Kind::Cast,
        };
        let corners = sheet.corners.map_or(if small { 6.0 } else { 14.0 }, |corners| corners.get().max(0.5));
        // A thin wrap has fingers of its own; a firm sheet spans them.
        let spans = !sheet.clings && sheet.covers.iter().any(|cover| pan::row(cover).is_some());
        let flesh = spans.then(|| pan::bridged(limb.skeleton, limb.flesh, &sheet.covers));
        let first = covered.first().copied().unwrap_or(Segment::Hand);
        let frame = limb.skeleton.frame(first);
        Self {
            field: moulded_on(flesh.as_ref().unwrap_or(limb.flesh), blends, &covered),
            clip: Clip::new(limb.skeleton, limb.finger, sheet, corners),
            thickness: sheet.thickness.map_or(if small { 2.0 } else { 3.2 }, |thickness| thickness.get()),
            kind,
            axis: (frame.origin, frame.axes.y),
            small,
        }
    }

    /// The distance to the sheet itself, up to its edge.
    pub fn distance(&self, p: Vector) -> f64 {
        (self.field.near(p, 4.0).distance(p) - self.thickness).max(self.clip.distance(p))
    }

    /// The outer surface.
    pub fn surface(&self, name: &str) -> Surface {
        let cell = if self.small { 1.0 } else { 1.9 };
        let mesh = surface(self, EVERYWHERE, cell);
        let cut: Vec<f64> = mesh.points.iter().map(|p| self.clip.distance(*p)).collect();
        let along = mesh.points.iter().map(|p| (*p - self.axis.0).dot(self.axis.1)).collect();
        Surface { along, ..Surface::new(self.kind, name, mesh, cut) }
    }
}

/// A sheet near a place.
#[derive(Clone, Debug)]
pub struct NearSheet {
    near: Near,
    thickness: f64,
}

impl Solid for Moulded {
    type Near = NearSheet;
    fn bounds(&self) -> (Vector, Vector) {
        let (low, high) = self.field.bounds();
        let more = Vector::new(1.0, 1.0, 1.0) * (self.thickness + 2.0);
        (low - more, high + more)
    }
    fn near(&self, centre: Vector, radius: f64) -> NearSheet {
        NearSheet { near: self.field.near(centre, radius + BESIDE), thickness: self.thickness }
    }
    fn is_wanted(&self, centre: Vector, radius: f64) -> bool {
        self.clip.distance(centre) < radius + 3.0
    }
}

impl NearSolid for NearSheet {
    fn distances<const N: usize>(&self, points: &Points<N>) -> [f64; N] {
        self.near.distances(points).map(|distance| distance - self.thickness)
    }
    fn nearer(&self, centre: Vector, radius: f64) -> Self {
        Self { near: self.near.near(centre, radius + BESIDE), thickness: self.thickness }
    }
}
