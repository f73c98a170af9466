//! An orthosis on the limb: sheets, straps, wires, from their description in content.

mod band;
mod clip;
mod pan;
mod place;
mod sheet;
mod tail;
mod taut;
mod wire;

pub use band::{Strap, StrapState};
pub use clip::Clip;
pub use place::{Place, resolve, resolve_at};
pub use sheet::Moulded;
pub use tail::OPEN;
pub use wire::{curve, strand};

use crate::body::{Finger, Segment};
use crate::content::{Band, Orthosis, Shape};
use crate::picture::limb::{Flesh, Skeleton};
use crate::picture::plate::Surface;
use crate::picture::solid::{Blends, Field};

/// The limb that an orthosis is put on.
#[derive(Clone, Copy)]
pub struct Limb<'a> {
    pub skeleton: &'a Skeleton,
    pub flesh: &'a Flesh,
    pub skin: &'a Field,
    /// Which finger the orthosis is on, when its description leaves that open.
    pub finger: Finger,
}

/// The sheets of an orthosis on a limb.
pub fn sheets(limb: &Limb<'_>, orthosis: &Orthosis, shape: &Shape) -> Vec<Moulded> {
    shape.sheets.iter().map(|sheet| Moulded::new(limb, orthosis, sheet)).collect()
}

/// Bands that are never opened, and wires.
pub fn trimmings(limb: &Limb<'_>, shape: &Shape, sheets: &[Moulded]) -> Vec<Surface> {
    let mut surfaces = Vec::new();
    for (i, band) in shape.bands.iter().enumerate() {
        surfaces.extend(strap(limb, band, sheets, &format!("band-{}", i + 1), StrapState::Closed));
    }
    for (i, wire) in shape.wires.iter().enumerate() {
        surfaces.extend(strand(limb, wire, sheets, &format!("wire-{}", i + 1)));
    }
    surfaces
}

/// A strap in a state.
pub fn strap(limb: &Limb<'_>, band: &Band, sheets: &[Moulded], name: &str, state: StrapState) -> Vec<Surface> {
    Strap::new(limb, band, sheets).surfaces(name, state)
}

/// The field that a sheet over these segments is moulded on: they and what their skin flows into.
fn moulded_on(flesh: &Flesh, blends: Blends, covered: &[Segment]) -> Field {
    use crate::body::Row;
    let beside = |segment: Segment| {
        covered.iter().any(|own| {
            *own == segment
                || match (*own, segment) {
                    (Segment::Hand, Segment::Forearm)
                    | (Segment::Forearm, Segment::Hand)
                    | (Segment::UpperArm, Segment::Forearm)
                    | (Segment::ThumbMetacarpal, Segment::Hand | Segment::Forearm)
                    | (Segment::ThumbProximal, Segment::ThumbMetacarpal | Segment::ThumbDistal)
                    | (Segment::ThumbDistal, Segment::ThumbProximal) => true,
                    (Segment::Finger(a, row), Segment::Finger(b, other)) => {
                        a == b
                            && matches!(
                                (row, other),
                                (Row::Proximal, Row::Middle) | (Row::Middle, _) | (Row::Distal, Row::Middle)
                            )
                    }
                    _ => false,
                }
        })
    };
    Field::new(flesh, blends, beside)
}
