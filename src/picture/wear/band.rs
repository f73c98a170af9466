//! A strap: a band round the limb and over the sheets.

use crate::body::Segment;
use crate::content::{Band, Tab};
use crate::picture::plate::{Kind, Surface};
use crate::picture::solid::{
    BESIDE, Blends, EVERYWHERE, Field, Near, NearSolid, Solid, Walk, each, outwards, smooth_min, surface,
};
use crate::picture::space::{Frame, Points, Vector};

use super::clip::{Clip, ray, section};
use super::sheet::Moulded;
use super::tail::tail;
use super::{Limb, moulded_on, taut};

/// How a strap is in a picture.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum StrapState {
    Open,
    Closed,
    /// Closed, and the one that the step is about.
    ClosedNow,
    /// Open, and the one that the step is about.
    OpenNow,
    /// Out of the way: not drawn.
    Away,
}

impl StrapState {
    const fn kind(self) -> Kind {
        match self {
            Self::Open | Self::Closed | Self::Away => Kind::Strap,
            Self::ClosedNow | Self::OpenNow => Kind::StrapNow,
        }
    }
}

/// A strap on a limb.
pub struct Strap<'a> {
    field: Field,
    sheets: &'a [Moulded],
    band: Band,
    segment: Segment,
    /// The segments that it runs over, its own among them.
    over: Vec<Segment>,
    frame: Frame,
    limb: Limb<'a>,
    /// mm over skin and sheets.
    lift: f64,
    clip: Clip,
}

/// Thickness of strapping, mm.
const WEBBING: f64 = 1.4;

/// Over how many millimetres a strap bends over the edge of a sheet.
const OVER_EDGE: f64 = 5.0;

impl<'a> Strap<'a> {
    pub fn new(limb: &Limb<'a>, band: &Band, sheets: &'a [Moulded]) -> Self {
        let mut over: Vec<Segment> = band.on.segments(limb.finger);
        let segment = over.first().copied().unwrap_or(Segment::Hand);
        over.extend(band.over.iter().flat_map(|name| name.segments(limb.finger)));
        let clip = Self::clip(limb, band, 0.0, 0.0, band.width.get());
        let spanned = taut::spanned(limb, band);
        // One band for all fingers is a loop round each.
        let loops = band.on.segments(limb.finger).len() > 1;
        let blends = if loops { Blends::SKIN } else { Blends::SHEET };
        Self {
            field: moulded_on(spanned.as_ref().unwrap_or(limb.flesh), blends, &over),
            sheets,
            band: band.clone(),
            segment,
            over,
            frame: *limb.skeleton.frame(segment),
            limb: *limb,
            lift: WEBBING,
            clip,
        }
    }

    /// The band's edge: so wide, with its ends moved by so many degrees.
    fn clip(limb: &Limb<'_>, band: &Band, start: f64, end: f64, width: f64) -> Clip {
        let segments = band.on.segments(limb.finger);
        let reach = |segment: Segment| {
            band.reach.map_or_else(
                || {
                    if matches!(segment, Segment::Hand | Segment::Forearm | Segment::UpperArm) {
                        90.0
                    } else {
                        section(segment).2 + 6.0
                    }
                },
                |reach| reach.get(),
            )
        };
        Clip::of_band(limb.skeleton, &segments, band, (start, end), width, reach)
    }

    /// The surfaces of the strap in a state.
    pub fn surfaces(&self, name: &str, state: StrapState) -> Vec<Surface> {
        let mut found = Vec::new();
        if state == StrapState::Away {
            return found;
        }
        let tab = self.band.tab.unwrap_or(Tab::None);
        let small = matches!(self.segment, Segment::Finger(..) | Segment::ThumbDistal | Segment::ThumbProximal);
        let cell = if small { 1.0 } else { 1.9 };
        if let (Some(arc), true) = (self.band.around, tab != Tab::None) {
            let radius = f64::midpoint(section(self.segment).0.0, section(self.segment).0.1);
            let more = 6.0 / radius * 57.3;
            // What the free end is pressed on: it shows past the end, and whole when the strap is open.
            let shown = if matches!(state, StrapState::Open | StrapState::OpenNow) { 3.2 } else { 1.0 };
            let range = if tab == Tab::End {
                (arc.sweep() - more * shown, more)
            } else {
                (-more, -(arc.sweep() - more * shown))
            };
            let clip = Self::clip(&self.limb, &self.band, range.0, range.1, self.band.width.get() * 0.72);
            let patch = Layer { strap: self, lift: 0.5, clip: &clip };
            let mesh = surface(&patch, EVERYWHERE, cell);
            let band: Vec<f64> = mesh.points.iter().map(|p| clip.distance(*p)).collect();
            let off = self.off_sheets(&mesh.points);
            let cut: Vec<f64> = band.iter().zip(off).map(|(cut, off)| cut.max(off)).collect();
            let drawn = |cut: &[f64]| cut.iter().filter(|cut| **cut < 0.0).count();
            // A patch is fixed to a sheet: what would lie on skin is left out, and all of it when little is left.
            if drawn(&cut) * 2 > drawn(&band) {
                found.push(Surface::new(Kind::Patch, &format!("{name}-patch"), mesh, cut));
            }
        }
        match (state, self.band.around) {
            (StrapState::Open | StrapState::OpenNow, Some(arc)) => {
                found.push(tail(self, name, arc, tab, state.kind()));
            }
            _ => {
                let layer = Layer { strap: self, lift: self.lift, clip: &self.clip };
                let mesh = surface(&layer, EVERYWHERE, cell);
                let cut: Vec<f64> = mesh.points.iter().map(|p| self.clip.distance(*p)).collect();
                found.push(Surface::new(state.kind(), name, mesh, cut));
            }
        }
        found
    }

    /// Places spread evenly over the strap, each with the direction out of it.
    pub fn places(&self, state: StrapState) -> Vec<(Vector, Vector)> {
        let tab = self.band.tab.unwrap_or(Tab::None);
        if let (StrapState::Open | StrapState::OpenNow, Some(arc)) = (state, self.band.around) {
            let tail = tail(self, "", arc, tab, state.kind());
            return tail.mesh.points.into_iter().zip(tail.mesh.normals).step_by(4).collect();
        }
        let layer = Layer { strap: self, lift: self.lift, clip: &self.clip };
        let mesh = surface(&layer, EVERYWHERE, self.band.width.get() * 0.4);
        let places = mesh.points.into_iter().zip(mesh.normals);
        places.filter(|(point, _)| self.clip.distance(*point) < 0.0).collect()
    }

    /// The distance to skin and sheets together.
    fn ground(&self, near: &Near, p: Vector) -> f64 {
        let mut distance = near.distance(p);
        for sheet in self.sheets {
            distance = smooth_min(distance, sheet.distance(p), OVER_EDGE);
        }
        distance
    }

    /// How far points that lie on a sheet or on skin are from being on a sheet, mm; below zero inside its edge.
    fn off_sheets(&self, points: &[Vector]) -> Vec<f64> {
        let mut walks: Vec<_> = self.sheets.iter().map(|sheet| (sheet, sheet.field.walk(4.0))).collect();
        let mut off = |p: Vector| {
            let off = |(sheet, walk): &mut (&Moulded, Walk<'_>)| {
                (sheet.clip.distance(p) + 1.0).max((walk.at(p).distance(p) - sheet.thickness).abs() - 3.0)
            };
            walks.iter_mut().map(off).fold(1e3, f64::min)
        };
        points.iter().map(|p| off(*p)).collect()
    }

    /// Which segment an end of the strap lies at, by its angle: of several fingers the outermost on that side.
    pub fn segment_at(&self, degrees: f64) -> Segment {
        let fingers = self.fingers();
        let ulnar = degrees.rem_euclid(360.0) > 180.0;
        let outermost = if ulnar { fingers.max_by_key(|s| s.finger()) } else { fingers.min_by_key(|s| s.finger()) };
        outermost.unwrap_or(self.segment)
    }

    /// How many segments it runs over beside each other.
    pub fn breadth(&self) -> usize {
        self.fingers().count().max(1)
    }

    /// The segments of fingers that it runs over, as far out as its own.
    fn fingers(&self) -> impl Iterator<Item = Segment> + '_ {
        let is_beside = |one: &Segment| match (self.segment, *one) {
            (Segment::Finger(_, own), Segment::Finger(_, row)) => own == row,
            _ => false,
        };
        self.over.iter().copied().filter(is_beside)
    }

    /// A point on what the strap lies on, at an angle round a segment, with the direction out of it.
    pub fn foot(&self, segment: Segment, degrees: f64) -> (Vector, Vector) {
        let (from, out) = ray(self.limb.skeleton, segment, self.band.at.share(), degrees);
        let near = self.field.near(from, 60.0);
        let mut way = 0.0;
        for _ in 0..50 {
            let distance = self.ground(&near, from + out * way) - self.lift;
            way -= distance * 0.8;
            if distance.abs() < 0.05 || !(-40.0..80.0).contains(&way) {
                break;
            }
        }
        let at = from + out * way.clamp(-40.0, 80.0);
        (at, outwards(each(|p| self.ground(&near, p)), at, 0.8))
    }

    pub fn width(&self) -> f64 {
        self.band.width.get()
    }

    /// Along the limb, across the strap.
    pub fn across(&self) -> Vector {
        self.frame.axes.y
    }

    /// The half breadth of the limb here.
    pub fn girth(&self) -> f64 {
        let ((a, b), ..) = section(self.segment);
        f64::midpoint(a, b)
    }
}

/// A layer of a strap at a height over what it lies on.
struct Layer<'a> {
    strap: &'a Strap<'a>,
    lift: f64,
    clip: &'a Clip,
}

struct NearLayer<'a> {
    near: Near,
    sheets: Vec<(Near, &'a Moulded)>,
    lift: f64,
}

impl<'a> Solid for Layer<'a> {
    type Near = NearLayer<'a>;
    fn bounds(&self) -> (Vector, Vector) {
        let (mut low, mut high) = self.strap.field.bounds();
        for sheet in self.strap.sheets {
            let (l, h) = sheet.field.bounds();
            low = low.min(l);
            high = high.max(h);
        }
        let more = Vector::new(7.0, 7.0, 7.0);
        (low - more, high + more)
    }
    fn near(&self, centre: Vector, radius: f64) -> NearLayer<'a> {
        let radius = radius + BESIDE;
        let near = self.strap.field.near(centre, radius);
        let skin = near.distance(centre);
        let sheets = self.strap.sheets.iter().filter(|sheet| matters(sheet, skin, centre, radius));
        let sheets = sheets.map(|sheet| (sheet.field.near(centre, radius), sheet)).collect();
        NearLayer { near, sheets, lift: self.lift }
    }
    fn is_wanted(&self, centre: Vector, radius: f64) -> bool {
        self.clip.distance(centre) < radius + 2.0
    }
}

impl NearSolid for NearLayer<'_> {
    fn distances<const N: usize>(&self, points: &Points<N>) -> [f64; N] {
        let mut distances = self.near.distances(points);
        for (near, sheet) in &self.sheets {
            let shells = near.distances(points);
            for (i, (distance, shell)) in distances.iter_mut().zip(shells).enumerate() {
                let shell = shell - sheet.thickness;
                // Skin that is nearer by more than the blend needs no look at the sheet's edge.
                if shell < *distance + OVER_EDGE {
                    *distance = smooth_min(*distance, shell.max(sheet.clip.distance(points.at(i))), OVER_EDGE);
                }
            }
        }
        distances.map(|distance| distance - self.lift)
    }
    fn nearer(&self, centre: Vector, radius: f64) -> Self {
        let radius = radius + BESIDE;
        let near = self.near.near(centre, radius);
        let skin = near.distance(centre);
        let sheets = self.sheets.iter().filter(|(_, sheet)| matters(sheet, skin, centre, radius));
        let sheets = sheets.map(|(near, sheet)| (near.near(centre, radius), *sheet)).collect();
        Self { near, sheets, lift: self.lift }
    }
}

/// Whether a strap can lie on a sheet in a ball whose middle is so far from the skin: not where the sheet's edge is
/// farther by more than the blend.
fn matters(sheet: &Moulded, skin: f64, centre: Vector, radius: f64) -> bool {
    /// How much the distance to an edge changes at most with each millimetre, also where the edge passes from one finger
    /// to the next.
    const STEEP: f64 = 4.0;
    sheet.clip.distance(centre) - STEEP * radius < skin + radius + OVER_EDGE
}
