//! The inside of the limb as requests: which structures a condition concerns, and which joints it needs held.

use std::collections::BTreeMap;

use super::asks::Sitter;
use super::limb::Posture;
use super::scene::{Named, Request, Subject};
use crate::body::{Finger, Joint, View};
use crate::content::{Condition, Extent, Library, Need, OneOf, Requirement};
use crate::ids::StructureId;

/// A picture of what a condition concerns.
#[derive(Clone, Debug)]
pub struct Inside {
    pub request: Request,
    /// The structures in the picture, each by the number that its label has.
    pub structures: Vec<StructureId>,
    /// The joints that are marked as held.
    pub held: Vec<Joint>,
}

/// How wide and high the name of a structure is, units of a picture.
pub type Measure<'a> = &'a dyn Fn(&StructureId) -> (u16, u16);

/// How wide and high the words are that say what the mark on held joints means, units of a picture.
pub type Legend = (u16, u16);

/// The pictures of a condition: one for each view from which some of its structures show best, or the one that is given.
pub fn condition(
    sitter: &Sitter,
    library: &Library,
    condition: &Condition,
    measure: Measure<'_>,
    legend: Legend,
    seen: Option<View>,
) -> Vec<Inside> {
    let sitter = Sitter { finger: condition.finger.unwrap_or(sitter.finger), ..*sitter };
    let single = condition.needs_finger();
    let own = condition.for_finger(sitter.finger);
    let held = held(&own);
    let fingers = fingers(&own, sitter.finger, single, &held);
    let mut views: BTreeMap<View, (Extent, Vec<StructureId>)> = BTreeMap::new();
    for id in &condition.structures {
        let Some(structure) = library.structures.get(id) else { continue };
        let place =
            views.entry(seen.or(condition.view).unwrap_or(structure.view)).or_insert((structure.shows, Vec::new()));
        place.0 = place.0.max(structure.shows);
        place.1.push(id.clone());
    }
    let picture = |(view, (shows, structures)): (View, (Extent, Vec<StructureId>))| {
        let named = structures.iter().enumerate().map(|(number, id)| {
            let (wide, high) = measure(id);
            // What fingers and thumb both have is the thumb's where no finger is named.
            Named { number, courses: library.courses_of(id, !single), wide, high }
        });
        let subject = Subject::Anatomy {
            posture: Posture::flat(),
            structures: named.collect(),
            held: held.clone(),
            fingers: fingers.clone(),
            legend: Some(legend),
        };
        // The picture is as large as the held joints ask for, too.
        let shows = held.iter().copied().map(at_least).fold(shows, Extent::max);
        Inside { request: sitter.request(subject, view, shows), structures, held: held.clone() }
    };
    views.into_iter().map(picture).collect()
}

/// How much of the limb a joint is seen in.
const fn at_least(joint: Joint) -> Extent {
    match joint {
        Joint::Elbow => Extent::Elbow,
        Joint::Forearm => Extent::Forearm,
        _ => Extent::Finger,
    }
}

/// The joints that must be held when a condition begins. Of several ways to meet a need it is the first that is shown;
/// where one of the ways holds nothing, none has to be.
fn held(condition: &Condition) -> Vec<Joint> {
    let Some(phase) = condition.phases.first() else { return Vec::new() };
    let must = |requirement: &&Requirement| {
        requirement.need == Need::Must && requirement.hold.is_some() && requirement.when.is_none()
    };
    let first = |one: &OneOf| {
        let needed = one.ways.iter().all(|way| !way.requires.is_empty());
        one.ways.first().filter(|_| needed).map(|way| way.requires.clone()).unwrap_or_default()
    };
    let ways: Vec<Requirement> = phase.one_of.iter().flat_map(first).collect();
    let mut held: Vec<Joint> =
        phase.requires.iter().chain(&ways).filter(must).flat_map(|requirement| requirement.joint.joints()).collect();
    held.sort();
    held.dedup();
    held
}

/// The fingers whose structures are shown: the affected one, or those that are held, or all.
fn fingers(condition: &Condition, finger: Finger, single: bool, held: &[Joint]) -> Vec<Finger> {
    if single || condition.finger.is_some() {
        return vec![finger];
    }
    let of = |own: &Finger| {
        held.iter().any(|joint| matches!(joint, Joint::Mcp(of) | Joint::Pip(of) | Joint::Dip(of) if of == own))
    };
    let some: Vec<Finger> = Finger::ALL.iter().copied().filter(of).collect();
    if some.is_empty() { Finger::ALL.to_vec() } else { some }
}
