//! What a hand holds: a ball, or a roll of something soft.

use crate::content::{Held, Millimetres};
use crate::picture::limb::{Ball, Flesh, Tube};
use crate::picture::plate::{Kind, Surface};
use crate::picture::solid::{Blends, EVERYWHERE, Field, surface as meshed};
use crate::picture::wear::{Limb, resolve};

/// The surface of what is held; nothing when a place of it is not on the limb.
pub fn surface(limb: &Limb<'_>, held: &Held) -> Option<Surface> {
    let from = resolve(limb, &held.from).first().copied()?;
    let to = held.to.as_ref().map_or(Some(from), |to| resolve(limb, to).first().copied())?;
    let radius = held.across.get() / 2.0;
    let beyond = (to.at - from.at).unit() * held.beyond.map_or(0.0, Millimetres::get);
    // A tube has a length, if only a hair's breadth.
    let balls = vec![Ball { at: from.at - beyond, radius }, Ball { at: to.at + to.out * 0.1 + beyond, radius }];
    let solid = Flesh { tubes: vec![Tube { segment: from.segment, balls }] };
    let mesh = meshed(&Field::new(&solid, Blends::SKIN, |_| true), EVERYWHERE, 1.6);
    let whole = vec![-1.0; mesh.points.len()];
    Some(Surface::new(Kind::Held, "held", mesh, whole))
}
