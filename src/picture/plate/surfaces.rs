//! The surfaces of a picture.

use crate::picture::solid::Mesh;
use crate::picture::space::Vector;

/// What a surface is of.
#[derive(Clone, Copy, PartialEq, Eq, Debug, PartialOrd, Ord)]
pub enum Kind {
    /// The limb that is treated.
    Skin,
    /// The other hand, where it helps.
    Helper,
    /// What a hand holds.
    Held,
    /// Firm material.
    Shell,
    /// Fabric.
    Wrap,
    /// Plaster or casting tape.
    Cast,
    /// The patch that a strap's end is pressed on.
    Patch,
    Strap,
    /// The strap that a step is about.
    StrapNow,
    /// Metal wire.
    Wire,
    /// Cord or rubber.
    Cord,
}

impl Kind {
    /// Whether it is no flesh: part of an orthosis, or something in the hand.
    pub const fn is_thing(self) -> bool {
        !matches!(self, Self::Skin | Self::Helper)
    }
}

/// A surface, drawn where `cut` is below zero.
#[derive(Clone, Debug)]
pub struct Surface {
    pub kind: Kind,
    pub name: String,
    pub mesh: Mesh,
    /// At each point: how far past the edge of what is drawn, mm; below zero inside.
    pub cut: Vec<f64>,
    /// At each point: the same without the end of the picture, for lines that run beside an edge.
    pub edge: Vec<f64>,
    /// For fabric and plaster: where each point lies along the limb, mm, for lines across it.
    pub along: Vec<f64>,
    /// Where the limb leaves the picture; its outline is left open there.
    pub end: Option<End>,
}

impl Surface {
    /// A surface drawn where `cut` is below zero, with its edge there.
    pub fn new(kind: Kind, name: &str, mesh: Mesh, cut: Vec<f64>) -> Self {
        Self { kind, name: name.to_owned(), mesh, edge: cut.clone(), cut, along: Vec::new(), end: None }
    }
}

/// The plane at which a limb leaves the picture.
#[derive(Clone, Copy, Debug)]
pub struct End {
    pub at: Vector,
    /// Away from what is drawn.
    pub out: Vector,
    /// How far from `at` across the limb the plane reaches, mm.
    pub reach: f64,
    /// The two ends of a bone: what is nearer to it than to the line through `at` is not cut off.
    pub keeps: Option<(Vector, Vector)>,
}

impl End {
    /// How far past the end a point is, mm; below zero inside.
    pub fn beyond(&self, p: Vector) -> f64 {
        let way = (p - self.at).dot(self.out);
        let across = p - self.at - self.out * way;
        let spared = || self.keeps.is_some_and(|(from, to)| p.off(from, to) < across.length());
        if across.length() > self.reach || way > 0.0 && spared() { -self.reach } else { way }
    }
}
