//! From where something shows: which places face the eye with nothing before them.

use crate::body::View;
use crate::content::{Band, Base};
use crate::picture::solid::Near;
use crate::picture::space::Vector;
use crate::picture::view::Camera;
use crate::picture::wear::{Limb, Moulded, Strap, StrapState, sheets};

use super::known::Known;
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

/// No view shows a larger share than this: what nothing stood before.
fn most(places: &[(Vector, Vector)], thin: bool, view: View) -> f64 {
    let eye = Camera::of(view).eye;
    let facing =
        places.iter().map(|(_, out)| out.dot(eye)).map(|facing| if thin { facing.abs() } else { facing.max(0.0) });
    facing.sum::<f64>() / places.len().max(1) as f64
}

/// The views that a strap may be shown from, the wonted one first.
fn views(request: &Request, worn: &Worn) -> Vec<View> {
    let order: &[View] = match worn.orthosis.base {
        // A bent elbow points at the eye from anywhere else.
        Base::Arm => &[View::Dorsal, View::Palmar],
        _ => &[View::Turned, View::Dorsal, View::Palmar, View::Radial, View::Ulnar, View::Own],
    };
    let mut views = vec![request.view];
    views.extend(order.iter().copied().filter(|view| *view != request.view));
    views
}

/// Works with what shows of a strap in each view, and with the most that could.
fn seen<T>(
    request: &Request,
    worn: &Worn,
    band: &Band,
    state: StrapState,
    work: impl FnOnce(&dyn Fn(View) -> f64, &dyn Fn(View) -> f64) -> T,
) -> T {
    // No surface of the limb is needed to know which way a strap faces.
    let (which, _) = shown(request.extent, request.finger);
    let (skeleton, flesh, skin) = bare(&worn_posture(worn, request.finger), request.build, which);
    let limb = Limb { skeleton: &skeleton, flesh: &flesh, skin: &skin, finger: request.finger };
    let sheets = sheets(&limb, &worn.orthosis, &worn.shape);
    let before = Before::new(skin.all(), &sheets);
    let places = Strap::new(&limb, band, &sheets).places(state);
    let thin = matches!(state, StrapState::Open | StrapState::OpenNow);
    work(&|view| share(&places, thin, &before, view), &|view| most(&places, thin, view))
}

/// The share of a strap that each view shows, the wonted view first.
pub fn strap_shares(request: &Request, worn: &Worn, band: &Band, state: StrapState) -> Vec<(View, f64)> {
    let views = views(request, worn);
    seen(request, worn, band, state, |share, _| views.into_iter().map(|view| (view, share(view))).collect())
}

/// The view for a step with a strap: the one of the request, unless another shows the strap much better.
pub fn strap_view(request: &Request, worn: &Worn, band: &Band, state: StrapState) -> View {
    static KNOWN: Known<View> = Known::new();
    let wonted = request.view;
    let question = (wonted, request.extent, request.finger, request.build, worn, band, state);
    KNOWN.answer(&question, || {
        seen(request, worn, band, state, |share, most| {
            let views = views(request, worn);
            let own = share(wonted);
            let keeps = |best: f64| own >= best * ENOUGH;
            // To look from where nothing could be gained takes most of the time.
            if keeps(views.iter().map(|view| most(*view)).fold(own, f64::max)) {
                return wonted;
            }
            let shares: Vec<f64> = views.iter().map(|view| if *view == wonted { own } else { share(*view) }).collect();
            let best = shares.iter().copied().fold(0.0, f64::max);
            if keeps(best) {
                return wonted;
            }
            let found = views.iter().zip(&shares).find(|(_, share)| **share >= best * 0.85);
            found.map_or(wonted, |(view, _)| *view)
        })
    })
}
