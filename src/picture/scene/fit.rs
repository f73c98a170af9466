//! How an orthosis lies on the limb, found out without drawing it.

use crate::body::{Finger, Segment, SegmentName};
use crate::content::{Band, SkinPoint};
use crate::picture::limb::{Build, Flesh, Skeleton};
use crate::picture::plate::Surface;
use crate::picture::solid::Field;
use crate::picture::wear::{Limb, Moulded, Place, StrapState, resolve, sheets, strap, trimmings};

use super::stage::bare;
use super::{Undrawable, Worn, possible, worn_posture};

/// A limb in the posture of its orthosis, with the sheets of that laid on.
pub struct Fitted<'a> {
    worn: &'a Worn,
    finger: Finger,
    pub skeleton: Skeleton,
    flesh: Flesh,
    skin: Field,
    sheets: Vec<Moulded>,
}

impl<'a> Fitted<'a> {
    /// Lays an orthosis on an adult limb.
    ///
    /// # Errors
    /// When a joint would stand where no joint does.
    pub fn new(worn: &'a Worn, finger: Finger) -> Result<Self, Undrawable> {
        let posture = worn_posture(worn, finger);
        possible(&posture)?;
        let (skeleton, flesh, skin) = bare(&posture, Build::Adult, |_| true);
        let mut fitted = Self { worn, finger, skeleton, flesh, skin, sheets: Vec::new() };
        fitted.sheets = sheets(&fitted.limb(), &worn.orthosis, &worn.shape);
        Ok(fitted)
    }

    fn limb(&self) -> Limb<'_> {
        Limb { skeleton: &self.skeleton, flesh: &self.flesh, skin: &self.skin, finger: self.finger }
    }

    /// A place on the skin: how far along a segment in per cent, and at which angle round it.
    pub fn place(&self, segment: Segment, percent: i16, round: i16) -> Option<Place> {
        let point: SkinPoint = format!("{} {percent} % {round} deg", SegmentName::One(segment)).parse().ok()?;
        resolve(&self.limb(), &point).first().copied()
    }

    /// Whether a sheet lies over a place on the skin.
    pub fn is_under_sheet(&self, place: &Place) -> bool {
        self.sheets.iter().any(|sheet| lies_over(sheet, place))
    }

    /// What lies round the limb besides sheets: straps, bands and wires as surfaces.
    pub fn trimmings(&self) -> Vec<Surface> {
        let limb = self.limb();
        let mut found = trimmings(&limb, &self.worn.shape, &self.sheets);
        for (i, id) in self.worn.orthosis.straps.iter().enumerate() {
            if let Some(band) = self.worn.shape.straps.get(id) {
                found.extend(strap(&limb, band, &self.sheets, &format!("strap-{}", i + 1), StrapState::Closed));
            }
        }
        found
    }

    /// The first part that lies on no skin, in words; nothing when all do.
    pub fn astray(&self) -> Option<String> {
        let (shape, limb) = (&self.worn.shape, self.limb());
        for (i, (sheet, moulded)) in shape.sheets.iter().zip(&self.sheets).enumerate() {
            let touches = sheet.covers.iter().any(|cover| {
                let (from, to) = cover.span.map_or((0.0, 1.0), |span| (span.from.share(), span.to.share()));
                cover.on.segments(self.finger).into_iter().any(|segment| {
                    (1..10).any(|step| {
                        let percent = libm::round((from + (to - from) * f64::from(step) / 10.0) * 100.0) as i16;
                        (0..12).any(|turn| {
                            self.place(segment, percent, turn * 30).is_some_and(|place| lies_over(moulded, &place))
                        })
                    })
                })
            });
            if !touches {
                return Some(format!("the {} sheet", ordinal(i)));
            }
        }
        let lies = |band: &Band| {
            band.on.segments(self.finger).into_iter().any(|segment| {
                let percent = libm::round(band.at.share() * 100.0) as i16;
                (0..12).any(|turn| self.place(segment, percent, turn * 30).is_some())
            })
        };
        if let Some((id, _)) = shape.straps.iter().find(|(_, band)| !lies(band)) {
            return Some(format!("the strap `{id}`"));
        }
        if let Some(i) = shape.bands.iter().position(|band| !lies(band)) {
            return Some(format!("the {} band", ordinal(i)));
        }
        let strung =
            |through: &[SkinPoint]| through.len() > 1 && through.iter().all(|point| !resolve(&limb, point).is_empty());
        shape.wires.iter().position(|wire| !strung(&wire.through)).map(|i| format!("the {} wire", ordinal(i)))
    }
}

/// Whether a sheet lies over a place: its outside is there, and inside its edge.
fn lies_over(sheet: &Moulded, place: &Place) -> bool {
    let over = place.at + place.out * sheet.thickness;
    sheet.clip.distance(over) < 0.0 && (sheet.field.near(over, 2.0).distance(over) - sheet.thickness).abs() < 2.0
}

fn ordinal(i: usize) -> String {
    match i {
        0 => "first".to_owned(),
        1 => "second".to_owned(),
        2 => "third".to_owned(),
        _ => format!("{}th", i + 1),
    }
}
