//! A limb with what it wears, and the picture of one or several of them.

use std::sync::Arc;

use crate::body::{Axis, Finger, Segment, SegmentName};
use crate::content::Extent;
use crate::picture::detail::{Mark, marks};
use crate::picture::limb::{Build, Flesh, Posture, Row, Skeleton, flesh, pressed};
use crate::picture::plate::{Drawing, End, Kind, Manner, Paper, Plate, Pressed, Surface, press};
use crate::picture::solid::{Blends, EVERYWHERE, Field, surface};
use crate::picture::space::{Frame, Vector};
use crate::picture::view::{Camera, Dot, Frame2};
use crate::picture::wear::{Limb, StrapState};

use super::request::{Picture, Request, Subject};
use super::studio::Studio;
use super::{Undrawable, Worn, possible};

/// A bare limb in a posture: what every picture of that posture shares.
pub struct Body {
    pub skeleton: Skeleton,
    pub flesh: Flesh,
    pub skin: Field,
    pub marks: Vec<Mark>,
    surface: Arc<Surface>,
}

/// Bones, flesh and skin of those segments of a limb that `which` takes, with the fingers stopped where they meet flesh.
pub fn bare(posture: &Posture, build: Build, which: impl Fn(Segment) -> bool) -> (Skeleton, Flesh, Field) {
    let skeleton = Skeleton::new(pressed(posture, build));
    let flesh = flesh(&skeleton, build);
    let skin = Field::new(&flesh, Blends::SKIN, which);
    (skeleton, flesh, skin)
}

/// A limb in a posture, with surfaces.
#[derive(Clone)]
pub struct Cast {
    pub body: Arc<Body>,
    pub surfaces: Vec<Arc<Surface>>,
    /// Marks of the helping hand.
    pub marks: Vec<Mark>,
    pub finger: Finger,
}

/// Which segments a picture shows, and where the limb ends: y along the forearm.
pub fn shown(extent: Extent, finger: Finger) -> (impl Fn(Segment) -> bool + Copy, f64) {
    let which = move |segment: Segment| match extent {
        Extent::Finger => segment.finger() == Some(finger),
        Extent::Hand | Extent::Forearm => segment != Segment::UpperArm,
        Extent::Elbow => true,
    };
    let end = match extent {
        Extent::Finger => -400.0,
        Extent::Hand => -46.0,
        Extent::Forearm => -165.0,
        Extent::Elbow => -600.0,
    };
    (which, end)
}

/// Where the limb of a picture ends: past all that is worn on the forearm, so that nothing is worn by no limb.
pub fn end_of(request: &Request) -> f64 {
    /// How much of the limb shows past an orthosis, mm.
    const PAST: f64 = 14.0;
    let (_, end) = shown(request.extent, request.finger);
    let (worn, fault) = match &request.subject {
        Subject::Worn(worn) | Subject::Step { worn, .. } | Subject::Spots { worn, .. } => (Some(worn), None),
        Subject::Pair { worn, fault, .. } => (Some(worn), Some(fault)),
        Subject::Exercise { worn, .. } => (worn.as_ref(), None),
        Subject::Bare(_) | Subject::Anatomy { .. } => (None, None),
    };
    if request.extent != Extent::Forearm {
        return end;
    }
    let forearm = SegmentName::One(Segment::Forearm);
    let skeleton = Skeleton::new(Posture::flat());
    let sheets = worn.iter().flat_map(|worn| &worn.shape.sheets).chain(fault.iter().flat_map(|fault| &fault.sheets));
    let covers = sheets.flat_map(|sheet| &sheet.covers).filter(|cover| cover.on == forearm);
    let edges = covers.filter_map(|cover| cover.span).map(|span| skeleton.along(Segment::Forearm, span.from.share()));
    edges.map(|edge| edge - PAST).fold(end, f64::min)
}

impl Body {
    /// A limb in a posture, as much of it as a picture shows; `end` is the y along the forearm at which it is cut off.
    pub fn new(posture: &Posture, build: Build, (extent, end): (Extent, f64), finger: Finger) -> Self {
        let skeleton = Skeleton::new(pressed(posture, build));
        let flesh = flesh(&skeleton, build);
        let (which, _) = shown(extent, finger);
        let skin = Field::new(&flesh, Blends::SKIN, which);
        let cell = if extent == Extent::Finger { 1.1 } else { 1.9 };
        // A hand that hangs down beside the forearm is not cut off with that.
        let digits =
            Finger::ALL.iter().map(|finger| Segment::Finger(*finger, Row::Distal)).chain([Segment::ThumbDistal]);
        let hangs = digits.map(|tip| skeleton.end(tip).y - 12.0).fold(end, f64::min);
        let lowest = if extent == Extent::Finger { end } else { hangs };
        let mesh = surface(&skin, (Vector { y: lowest - 6.0, ..EVERYWHERE.0 }, EVERYWHERE.1), cell);
        let end = match extent {
            Extent::Elbow => {
                let arm = skeleton.frame(Segment::UpperArm);
                let elbow = Vector::new(0.0, -skeleton.length(Segment::Forearm), 0.0);
                End { at: arm.point(0.0, 112.0, 0.0), out: arm.axes.y, reach: 70.0, keeps: Some((Vector::ZERO, elbow)) }
            }
            Extent::Finger | Extent::Hand | Extent::Forearm => {
                let reach = if extent == Extent::Finger { 160.0 } else { 64.0 };
                End { at: Vector::new(0.0, end, 0.0), out: Vector::new(0.0, -1.0, 0.0), reach, keeps: None }
            }
        };
        let cut: Vec<f64> = mesh.points.iter().map(|p| end.beyond(*p)).collect();
        let surface = Surface { end: Some(end), ..Surface::new(Kind::Skin, "skin", mesh, cut) };
        let marks = marks(&skeleton, &skin, which);
        Self { skeleton, flesh, skin, marks, surface: Arc::new(surface) }
    }

    pub fn limb(&self, finger: Finger) -> Limb<'_> {
        Limb { skeleton: &self.skeleton, flesh: &self.flesh, skin: &self.skin, finger }
    }
}

impl Cast {
    /// A limb in a posture, with an orthosis when one is given.
    pub fn new(
        studio: &Studio,
        request: &Request,
        posture: &Posture,
        worn: Option<&Worn>,
        straps: &[StrapState],
    ) -> Result<Self, Undrawable> {
        possible(posture)?;
        let body = studio.body(posture, request);
        let mut surfaces = vec![Arc::clone(&body.surface)];
        if let Some(worn) = worn {
            let dressed = studio.dressed(&body, request, posture, worn, straps);
            if dressed.iter().all(|surface| surface.cut.iter().all(|c| *c >= 0.0)) {
                return Err(Undrawable::Untouched);
            }
            surfaces.extend(dressed);
        }
        Ok(Self { body, surfaces, marks: Vec::new(), finger: request.finger })
    }

    pub fn limb(&self) -> Limb<'_> {
        self.body.limb(self.finger)
    }

    /// Moves what is worn.
    pub fn shift(&mut self, by: Vector) {
        for surface in self.surfaces.iter_mut().filter(|surface| surface.kind.is_thing()) {
            for point in &mut Arc::make_mut(surface).mesh.points {
                *point = *point + by;
            }
        }
    }

    /// Moves everything as one, so that one frame comes to lie on another.
    pub fn carry(&mut self, from: &Frame, to: &Frame) {
        let point = |p: Vector| {
            let local = from.local(p);
            to.point(local.x, local.y, local.z)
        };
        let turn = |v: Vector| to.axes.apply(from.axes.undo(v));
        for surface in &mut self.surfaces {
            let surface = Arc::make_mut(surface);
            surface.mesh.points.iter_mut().for_each(|p| *p = point(*p));
            surface.mesh.normals.iter_mut().for_each(|n| *n = turn(*n));
            if let Some(end) = &mut surface.end {
                (end.at, end.out) = (point(end.at), turn(end.out));
                end.keeps = end.keeps.map(|(a, b)| (point(a), point(b)));
            }
        }
    }

    /// The middle of what is worn, without straps.
    pub fn middle(&self) -> Option<Vector> {
        let points = self
            .surfaces
            .iter()
            .filter(|s| matches!(s.kind, Kind::Shell | Kind::Wrap | Kind::Cast | Kind::Wire))
            .flat_map(|s| s.mesh.points.iter().zip(&s.cut))
            .filter(|(_, cut)| **cut < 0.0)
            .map(|(point, _)| *point);
        let (mut sum, mut count) = (Vector::ZERO, 0.0);
        for point in points {
            sum = sum + point;
            count += 1.0;
        }
        (count > 0.0).then(|| sum * (1.0 / count))
    }

    /// The corners of everything that shows.
    pub fn extent(&self, camera: &Camera) -> (Dot, Dot) {
        let (mut low, mut high) = (Dot::new(1e9, 1e9), Dot::new(-1e9, -1e9));
        for surface in &self.surfaces {
            for (point, cut) in surface.mesh.points.iter().zip(&surface.cut) {
                if *cut < 0.0 {
                    let dot = camera.flat(*point);
                    low = Dot::new(low.x.min(dot.x), low.y.min(dot.y));
                    high = Dot::new(high.x.max(dot.x), high.y.max(dot.y));
                }
            }
        }
        (low, high)
    }
}

/// Limbs on one piece of paper: the first in full, the others as light outlines under it.
pub struct Stage {
    pub camera: Camera,
    pub casts: Vec<Cast>,
    /// Points that must be inside the picture too.
    pub reach: Vec<Dot>,
    /// Surfaces of which only the edges are drawn, lightly, on the first limb.
    pub edges: Vec<Arc<Surface>>,
    /// How the first limb is drawn.
    pub manner: Manner,
    size: (f64, f64),
}

/// What a stage has drawn, for labels and arrows to be laid over.
pub struct Scene {
    pub picture: Picture,
    pub pressed: Pressed,
    pub paper: Paper,
}

impl Stage {
    pub fn new(request: &Request, casts: Vec<Cast>) -> Self {
        Self {
            camera: Camera::of(request.view),
            casts,
            reach: Vec::new(),
            edges: Vec::new(),
            manner: Manner::Full,
            size: (f64::from(request.width), f64::from(request.height)),
        }
    }

    fn frame(&self) -> Frame2 {
        let (mut low, mut high) = (Dot::new(1e9, 1e9), Dot::new(-1e9, -1e9));
        let bounds = self.casts.iter().map(|cast| cast.extent(&self.camera));
        let points = self.reach.iter().map(|dot| (*dot, *dot));
        for (l, h) in bounds.chain(points) {
            low = Dot::new(low.x.min(l.x), low.y.min(l.y));
            high = Dot::new(high.x.max(h.x), high.y.max(h.y));
        }
        if low.x > high.x {
            (low, high) = (Dot::new(0.0, 0.0), Dot::new(10.0, 10.0));
        }
        let (low, high) = with_margin(low, high);
        let longest = (high.x - low.x).max(high.y - low.y);
        Frame2 { low, high, fine: (820.0 / longest).clamp(2.0, 9.0) }
    }

    /// The units for each millimetre of the limb at which a part of the picture plane fills the paper.
    pub fn scale_of(&self, low: Dot, high: Dot) -> f64 {
        let (low, high) = with_margin(low, high);
        Drawing::UNIT * (self.size.0 / (high.x - low.x)).min(self.size.1 / (high.y - low.y))
    }

    /// Where on paper everything goes.
    pub fn paper(&self) -> Paper {
        self.paper_of(self.frame())
    }

    fn paper_of(&self, frame: Frame2) -> Paper {
        let (width, height) = (frame.high.x - frame.low.x, frame.high.y - frame.low.y);
        let scale = (self.size.0 / width).min(self.size.1 / height);
        Paper::new(frame, width * scale)
    }

    /// Draws everything.
    pub fn scene(&self) -> Scene {
        let frame = self.frame();
        let paper = self.paper_of(frame);
        let mut drawing = Drawing { width: paper.width, height: paper.height, parts: Vec::new() };
        let mut first = None;
        for (i, cast) in self.casts.iter().enumerate().rev() {
            let manner = if i == 0 { self.manner } else { Manner::Ghost };
            let body = &cast.body;
            let bent = |segment: Segment| body.skeleton.posture.degrees(Skeleton::joint(segment), Axis::Flexion);
            let marks: Vec<&Mark> = body.marks.iter().chain(&cast.marks).collect();
            let plate = Plate {
                camera: self.camera,
                frame,
                surfaces: &cast.surfaces,
                edges: if i == 0 { &self.edges } else { &[] },
                bent: &bent,
                field: &body.skin,
                marks: &marks,
                manner,
            };
            let (drawn, pressed) = press(&plate, paper);
            drawing.parts.extend(drawn.parts);
            first = Some(pressed);
        }
        let pressed = first.unwrap_or_default();
        Scene { picture: Picture { drawing, labels: Vec::new() }, pressed, paper }
    }

    /// Draws everything, with nothing laid over it.
    pub fn picture(&self) -> Picture {
        self.scene().picture
    }
}

/// A part of the picture plane with a little paper round it.
fn with_margin(low: Dot, high: Dot) -> (Dot, Dot) {
    let margin = ((high.x - low.x).max(high.y - low.y) * 0.02).clamp(1.2, 5.0);
    (low - Dot::new(margin, margin), high + Dot::new(margin, margin))
}
