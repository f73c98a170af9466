//! From where something shows: which places face the eye with nothing before them.

use crate::body::View;
use crate::content::{Band, Base};
use crate::picture::solid::Near;
use crate::picture::space::Vector;
use crate::picture::view::Camera;
use crate::picture::wear::{Limb, Moulded, Strap, StrapState, sheets};

use super::request::{Request, Worn};
use super::stage::{bare, shown};
use super::worn_posture;

/// How much better another view must show something before the wonted one is left: below this share of the best.
const ENOUGH: f64 = 0.6;

/// What stands in the way: skin, and the sheets of an orthosis.
pub struct Before<'a> {
    skin: Near,
    sheets: Vec<(Near, &'a Moulded)>,
}

impl<'a> Before<'a> {
    pub fn new(skin: Near, sheets: &'a [Moulded]) -> Self {
        Self { skin, sheets: sheets.iter().map(|sheet| (sheet.field.all(), sheet)).collect() }
    }

    fn distance(&self, p: Vector) -> f64 {
        self.sheets.iter().fold(self.skin.distance(p), |least, (field, sheet)| {
            let shell = field.distance(p) - sheet.thickness;
            if shell < least { least.min(shell.max(sheet.clip.distance(p))) } else { least }
        })
    }

    /// Whether something stands between a place and the eye.
    pub fn hides(&self, at: Vector, out: Vector, eye: Vector) -> bool {
        /// Past this there is no limb, mm.
        const FAR: f64 = 200.0;
        let start = at + out * 1.5;
        let mut way = 0.0;
        while way < FAR {
            let distance = self.distance(start + eye * way);
            if distance < -0.5 {
                return true;
            }
            way += distance.max(1.0);
        }
        false
    }
}

/// Of the surface round some places, the share that a view shows, foreshortened as it is seen: 0 to 1, and about 0.3 for
/// a ring seen from any side. `thin` places are seen from both sides.
fn share(places: &[(Vector, Vector)], thin: bool, before: &Before<'_>, view: View) -> f64 {
    let eye = Camera::of(view).eye;
    let seen = |(at, out): &(Vector, Vector)| {
        let facing = out.dot(eye);
        let (facing, out) = if thin && facing < 0.0 { (-facing, -*out) } else { (facing, *out) };
        if facing > 0.08 && !before.hides(*at, out, eye) { facing } else { 0.0 }
    };
    places.iter().map(seen).sum::<f64>() / places.len().max(1) as f64
}

/// The share of a strap that each view shows, the wonted view first.
pub fn strap_shares(request: &Request, worn: &Worn, band: &Band, state: StrapState) -> Vec<(View, f64)> {
    // No surface of the limb is needed to know which way a strap faces.
    let (which, _) = shown(request.extent, request.finger);
    let (skeleton, flesh, skin) = bare(&worn_posture(worn, request.finger), request.build, which);
    let limb = Limb { skeleton: &skeleton, flesh: &flesh, skin: &skin, finger: request.finger };
    let sheets = sheets(&limb, &worn.orthosis, &worn.shape);
    let before = Before::new(skin.all(), &sheets);
    let places = Strap::new(&limb, band, &sheets).places(state);
    let thin = matches!(state, StrapState::Open | StrapState::OpenNow);
    let order: &[View] = match worn.orthosis.base {
        // A bent elbow points at the eye from anywhere else.
        Base::Arm => &[View::Dorsal, View::Palmar],
        _ => &[View::Turned, View::Dorsal, View::Palmar, View::Radial, View::Ulnar],
    };
    let mut found: Vec<(View, f64)> = Vec::new();
    for view in std::iter::once(request.view).chain(order.iter().copied()) {
        if found.iter().all(|(other, _)| *other != view) {
            found.push((view, share(&places, thin, &before, view)));
        }
    }
    found
}

/// The view for a step with a strap: the one of the request, unless another shows the strap much better.
pub fn strap_view(request: &Request, worn: &Worn, band: &Band, state: StrapState) -> View {
    let shares = strap_shares(request, worn, band, state);
    let best = shares.iter().map(|(_, share)| *share).fold(0.0, f64::max);
    let good = |least: f64| shares.iter().find(|(_, share)| *share >= best * least).map(|(view, _)| *view);
    if shares.first().is_some_and(|(_, share)| *share >= best * ENOUGH) {
        return request.view;
    }
    good(0.85).unwrap_or(request.view)
}
