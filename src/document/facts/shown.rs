//! The pictures of a fact sheet: the inside of the limb with names, and the orthoses that fit.

use super::Topic;
use crate::body::{Build, Finger, Joint, Knuckle};
use crate::checks::Fit;
use crate::choose::Ranked;
use crate::content::PrintSize;
use crate::document::component::Plate;
use crate::document::figures::{Figure, StructureName, covers};
use crate::document::glance::free_joints;
use crate::document::message::{Arg, Message};
use crate::picture::asks::{self, Sitter};
use crate::picture::inside::{self as anatomy, Inside};
use crate::picture::scene::Worn;

/// The widest and highest that a picture is asked for, mm: the inside with its names, and an orthosis. Pages of large
/// print show a picture larger than that, so that its lines and letters grow with the words.
const INSIDE: (u16, u16) = (88, 76);
/// The same where there is one picture, in the smallest print: it has the line to itself.
const INSIDE_ALONE: (u16, u16) = (112, 80);
const ORTHOSIS: (u16, u16) = (52, 40);

impl Topic<'_> {
    fn sitter(&self, (width, height): (u16, u16)) -> Sitter {
        let finger = self.finger.unwrap_or(Finger::Index);
        Sitter { side: self.side, finger, build: Build::Adult, width, height }
    }

    /// The pictures of the structures. `learned`: with the names that students learn below the plain ones.
    pub fn structures(&self, learned: bool) -> Vec<Plate> {
        let unmeasured = (1, 1);
        let seen = |size| {
            let sitter = self.sitter(size);
            anatomy::condition(&sitter, self.library, &self.condition, &|_| unmeasured, unmeasured, None)
        };
        let mut pictures = seen(INSIDE);
        if pictures.len() == 1 && self.print == PrintSize::Standard {
            pictures = seen(INSIDE_ALONE);
        }
        let name = |key: String| Message::new(key);
        let plate = |one: Inside| {
            let structures = one.structures.iter().map(|id| StructureName {
                plain: name(format!("structure-{id}")),
                term: learned.then(|| name(format!("structure-{id}-term"))),
            });
            let held = StructureName { plain: name("picture-held-mark".to_owned()), term: None };
            let names: Vec<StructureName> = structures.chain([held]).collect();
            let says = inside(&one);
            Plate { figure: Figure { names, ..Figure::new(one.request, says) }, name: None, say: Vec::new() }
        };
        pictures.into_iter().map(plate).collect()
    }

    /// An orthosis as it would be set, with what a caption says; nothing when nobody has described its look.
    pub fn orthosis(&self, ranked: &Ranked, name: Message, say: Vec<Message>) -> Option<Plate> {
        let shape = self.library.shapes.get(&ranked.id)?.clone();
        let worn = Worn { orthosis: ranked.orthosis.for_finger(self.finger.unwrap_or(Finger::Index)), shape };
        let mut alt = vec![covers(&ranked.id, &worn.orthosis)];
        alt.extend(free_joints(&worn.orthosis));
        let size = match self.print {
            PrintSize::Standard => ORTHOSIS,
            PrintSize::Large | PrintSize::Giant => (ORTHOSIS.0, ORTHOSIS.1 - 4),
        };
        let request = asks::orthosis(&self.sitter(size), &worn, None);
        Some(Plate { figure: Figure::new(request, alt), name: Some(name), say })
    }
}

/// Those of a ranking that fit, in its order.
pub fn fitting(ranked: &[Ranked]) -> Vec<&Ranked> {
    ranked.iter().filter(|one| one.order.safety == Fit::Fits).collect()
}

/// What a picture of a condition shows, in sentences.
pub fn inside(one: &Inside) -> Vec<Message> {
    let mut said = vec![Message::new("picture-inside")];
    let structures = one.structures.iter().map(|id| Message::new(format!("structure-{id}"))).collect();
    said.push(Message::new("picture-structures").with("structures", Arg::List(structures)));
    if !one.held.is_empty() {
        said.push(Message::new("picture-held-joints").with("joints", Arg::List(named(&one.held))));
    }
    said
}

/// Joints by name: a row of knuckles in one word, a single one with its finger.
fn named(held: &[Joint]) -> Vec<Message> {
    let mut found: Vec<Message> = Vec::new();
    for joint in held {
        let row =
            Knuckle::ALL.into_iter().find(|knuckle| Finger::ALL.iter().any(|finger| knuckle.of(*finger) == *joint));
        let count = |row: Knuckle| Finger::ALL.iter().filter(|finger| held.contains(&row.of(**finger))).count();
        let key = match row {
            Some(row) if count(row) == Finger::ALL.len() => match row {
                Knuckle::Mcp => "held-knuckles".to_owned(),
                Knuckle::Pip => "held-middle-joints".to_owned(),
                Knuckle::Dip => "held-end-joints".to_owned(),
            },
            _ => format!("joint-{joint}"),
        };
        if found.iter().all(|message| *message.key != key) {
            found.push(Message::new(key));
        }
    }
    found
}
