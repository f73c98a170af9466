//! What pictures there are of an orthosis or an exercise, as requests.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::limb::{Build, Posture};
use super::scene::{Request, Subject, Worn, spot_views, strap_states, strap_view};
use crate::body::{Finger, SegmentName, Side, View};
use crate::content::Segment as ActsOn;
use crate::content::{Base, Extent, Fault, Handling, Library, Motion, Orthosis, Shape, SkinPoint, Surface};
use crate::ids::{OrthosisId, StepId};

/// Whose hand is shown, and how large.
#[derive(Clone, Copy, Debug)]
pub struct Sitter {
    pub side: Side,
    /// The affected finger.
    pub finger: Finger,
    pub build: Build,
    /// The widest and highest that a picture may be on paper, mm.
    pub width: u16,
    pub height: u16,
}

impl Sitter {
    pub fn request(&self, subject: Subject, view: View, extent: Extent) -> Request {
        let Self { side, finger, build, width, height } = *self;
        Request { subject, side, finger, view, extent, build, width, height }
    }
}

/// An orthosis of the library with its look on a finger; nothing when it has no look.
pub fn worn(library: &Library, id: &OrthosisId, finger: Finger) -> Option<Worn> {
    let orthosis = library.orthoses.get(id)?.for_finger(finger);
    Some(Worn { orthosis, shape: library.shapes.get(id)?.clone() })
}

/// How much of the limb shows an orthosis: one finger by itself when it touches no other part.
pub fn extent(worn: &Worn) -> Extent {
    match worn.orthosis.base {
        Base::Arm => Extent::Elbow,
        Base::Forearm if worn.orthosis.acts_on == Some(ActsOn::ProximalForearm) => Extent::Elbow,
        Base::Forearm => Extent::Forearm,
        Base::Hand | Base::Digit if is_on_finger(&worn.shape) => Extent::Finger,
        // A thumb without its hand is a lump that nobody knows for a thumb.
        Base::Hand | Base::Digit => Extent::Hand,
    }
}

/// Whether a shape lies on nothing but the affected finger.
fn is_on_finger(shape: &Shape) -> bool {
    let covers = shape.sheets.iter().flat_map(|sheet| &sheet.covers).map(|cover| cover.on);
    let bands = shape
        .straps
        .values()
        .chain(&shape.bands)
        .flat_map(|band| std::iter::once(band.on).chain(band.over.iter().copied()));
    let wires = shape.wires.iter().flat_map(|wire| &wire.through).map(|point| point.on);
    let mut all = covers.chain(bands).chain(wires).peekable();
    all.peek().is_some() && all.all(|name| matches!(name, SegmentName::Affected(_)))
}

/// From where an orthosis is best seen, when nothing else is asked for: as its shape says, or from the side that it covers.
fn view(worn: &Worn) -> View {
    worn.shape.view.unwrap_or_else(|| side(&worn.orthosis))
}

/// From where the side that an orthosis covers is seen.
const fn side(orthosis: &Orthosis) -> View {
    match (orthosis.base, orthosis.surface) {
        // A bent elbow points at the eye from anywhere else.
        (Base::Arm, _) => View::Dorsal,
        (_, Surface::Ulnar) => View::Ulnar,
        (_, Surface::Palmar | Surface::Dorsal | Surface::AllRound | Surface::Radial) => View::Turned,
    }
}

/// An orthosis in its place.
pub fn orthosis(sitter: &Sitter, worn: &Worn, seen: Option<View>) -> Request {
    let view = seen.unwrap_or_else(|| view(worn));
    sitter.request(Subject::Worn(Box::new(worn.clone())), view, extent(worn))
}

/// A list of steps of an orthosis.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Way {
    On,
    OneHanded,
    Off,
}

impl Way {
    pub const ALL: [Self; 3] = [Self::On, Self::OneHanded, Self::Off];

    pub const fn word(self) -> &'static str {
        match self {
            Self::On => "on",
            Self::OneHanded => "one-handed",
            Self::Off => "off",
        }
    }

    /// The steps of an orthosis.
    pub fn steps(self, orthosis: &Orthosis) -> &[StepId] {
        match self {
            Self::On => &orthosis.donning,
            Self::OneHanded => &orthosis.one_handed,
            Self::Off => &orthosis.doffing,
        }
    }
}

/// A step with its picture.
#[derive(Clone, Debug)]
pub struct Step {
    /// Its place in its list, from 0.
    pub number: usize,
    pub id: StepId,
    /// The strap that it is about, by its place in the order of closing.
    pub strap: Option<usize>,
    pub request: Request,
}

/// The steps of putting an orthosis on or taking it off, as many of them as have a look.
pub fn steps(sitter: &Sitter, library: &Library, worn: &Worn, way: Way, seen: Option<View>) -> Vec<Step> {
    steps_of(sitter, library, worn, way.steps(&worn.orthosis), way, seen)
}

/// The steps of a list, as many of them as have a look.
pub fn steps_of(
    sitter: &Sitter,
    library: &Library,
    worn: &Worn,
    list: &[StepId],
    way: Way,
    seen: Option<View>,
) -> Vec<Step> {
    let orthosis = &worn.orthosis;
    let count = orthosis.straps.len();
    let mut closed = if way == Way::Off { count } else { 0 };
    let mut shown = Vec::new();
    for (number, id) in list.iter().enumerate() {
        // The straps are closed in their order and opened the other way round.
        let strap = match id.as_str() {
            "close-strap" if closed < count => {
                closed += 1;
                Some(closed - 1)
            }
            "undo-strap" if closed > 0 => {
                closed -= 1;
                Some(closed)
            }
            _ => None,
        };
        let Some(handling) = library.handling.get(id) else { continue };
        shown.push((number, id, handling, closed, strap));
    }
    // To find the view of a step takes time.
    let each = |(number, id, handling, closed, strap): (usize, &StepId, &Handling, usize, Option<usize>)| {
        let request = step(sitter, worn, handling, closed, strap, way == Way::Off, seen);
        Step { number, id: id.clone(), strap, request }
    };
    shown.into_par_iter().map(each).collect()
}

fn step(
    sitter: &Sitter,
    worn: &Worn,
    handling: &Handling,
    closed: usize,
    now: Option<usize>,
    off: bool,
    seen: Option<View>,
) -> Request {
    let straps = strap_states(&worn.orthosis, closed, now);
    let wonted = handling.view.and_then(|view| match (worn.orthosis.base, view) {
        // A bent elbow points at the eye from the side: fingers that move are seen from the palm.
        (Base::Arm, View::Radial | View::Ulnar) if !handling.before.is_empty() => Some(View::Palmar),
        (Base::Arm, View::Radial | View::Ulnar | View::Turned) => None,
        (_, view) => Some(view),
    });
    let wonted = wonted.map(|view| beside(view, sitter.finger, worn.orthosis.needs_finger()));
    let view = seen.or(wonted).unwrap_or_else(|| side(&worn.orthosis));
    let band = now.and_then(|now| Some((worn.shape.straps.get(worn.orthosis.straps.get(now)?)?, *straps.get(now)?)));
    let subject = Subject::Step { worn: Box::new(worn.clone()), handling: handling.clone(), straps, off };
    let mut request = sitter.request(subject, view, extent(worn));
    if let (Some((band, state)), None) = (band, seen) {
        request.view = strap_view(&request, worn, band, state);
    }
    request
}

/// Where the spots of the skin check of an orthosis lie, each with its number in the list.
pub fn places(library: &Library, id: &OrthosisId) -> Vec<(usize, SkinPoint)> {
    let Some(orthosis) = library.orthoses.get(id) else { return Vec::new() };
    let own = library.shapes.get(id).map(|shape| &shape.spots);
    let at = |spot: &_| match own.and_then(|own| own.get(spot)) {
        Some(point) => vec![*point],
        None => library.spots.get(spot).map_or_else(Vec::new, |spot| spot.at.clone()),
    };
    let spots = orthosis.pressure_spots.iter().enumerate();
    spots.flat_map(|(number, spot)| at(spot).into_iter().map(move |point| (number, point))).collect()
}

/// The maps of the skin check, one for each view that is needed; with a view given, only that one.
pub fn spots(sitter: &Sitter, worn: &Worn, places: &[(usize, SkinPoint)], seen: Option<View>) -> Vec<Request> {
    if places.is_empty() {
        return Vec::new();
    }
    let subject = |places: Vec<(usize, SkinPoint)>| Subject::Spots { worn: Box::new(worn.clone()), places };
    let first = sitter.request(subject(places.to_vec()), seen.unwrap_or(View::Dorsal), extent(worn));
    if seen.is_some() {
        return vec![first];
    }
    let views = spot_views(&first, worn, places);
    views.into_iter().map(|(view, places)| Request { view, subject: subject(places), ..first.clone() }).collect()
}

/// How an orthosis sits and a typical way in which it does not: the right picture first, then the wrong one.
pub fn pair(sitter: &Sitter, worn: &Worn, fault: &Fault, seen: Option<View>) -> [(bool, Request); 2] {
    let view = seen.or(fault.view).unwrap_or_else(|| side(&worn.orthosis));
    [false, true].map(|wrong| {
        let subject = Subject::Pair { worn: Box::new(worn.clone()), fault: fault.clone(), wrong };
        (wrong, sitter.request(subject, view, extent(worn)))
    })
}

/// The pictures of an exercise, one for each movement.
pub fn exercise(sitter: &Sitter, motion: &Motion, worn: Option<&Worn>, seen: Option<View>) -> Vec<Request> {
    (0..motion.then.len().max(1))
        .map(|step| {
            // What is worn is shown whole: a splint cut off at the wrist is no splint.
            let shows = worn.map_or(motion.shows, |worn| motion.shows.max(extent(worn)));
            let worn = worn.map(|worn| Box::new(worn.clone()));
            let subject = Subject::Exercise { motion: motion.clone(), step, worn };
            let view = seen.unwrap_or_else(|| beside(motion.view, sitter.finger, is_of_finger(motion)));
            sitter.request(subject, view, shows)
        })
        .collect()
}

/// Whether it is the affected finger that a motion moves.
fn is_of_finger(motion: &Motion) -> bool {
    let stands = std::iter::once(&motion.start).chain(motion.then.iter().map(|stand| &stand.joints));
    stands.flat_map(BTreeMap::keys).any(|name| name.needs_finger())
}

/// The view for one finger: from the side, the ring and little finger are seen from theirs.
const fn beside(view: View, finger: Finger, of_finger: bool) -> View {
    match (view, finger) {
        (View::Radial, Finger::Ring | Finger::Little) if of_finger => View::Ulnar,
        _ => view,
    }
}

/// A bare hand in a posture.
pub fn posture(sitter: &Sitter, posture: Posture, view: View, extent: Extent) -> Request {
    sitter.request(Subject::Bare(posture), view, extent)
}
