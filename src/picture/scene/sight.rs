//! From where something shows: which places face the eye with nothing before them.

use crate::body::View;
use crate::content::{Band, Base};
use crate::picture::solid::Field;
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
    skin: &'a Field,
    sheets: &'a [Moulded],
    /// A box outside of which nothing is.
    low: Vector,
    high: Vector,
}

impl<'a> Before<'a> {
    pub fn new(skin: &'a Field, sheets: &'a [Moulded]) -> Self {
        /// Where parts flow together, a surface stands over them by less, mm.
        const OVER: f64 = 8.0;
        let (mut low, mut high) = skin.bounds();
        let mut thickest: f64 = 0.0;
        for sheet in sheets {
            let (l, h) = sheet.field.bounds();
            (low, high) = (low.min(l), high.max(h));
            thickest = thickest.max(sheet.thickness);
        }
        let more = Vector::new(1.0, 1.0, 1.0) * (OVER + thickest);
        Self { skin, sheets, low: low - more, high: high + more }
    }

    /// How far a ray from a point is in the box at most.
    fn leaves(&self, from: Vector, eye: Vector) -> f64 {
        let side = |from: f64, way: f64, low: f64, high: f64| match way {
            way if way > 1e-9 => (high - from) / way,
            way if way < -1e-9 => (low - from) / way,
            _ => f64::INFINITY,
        };
        side(from.x, eye.x, self.low.x, self.high.x).min(side(from.y, eye.y, self.low.y, self.high.y)).min(side(
            from.z,
            eye.z,
            self.low.z,
            self.high.z,
        ))
    }

    /// Whether something stands between a place and the eye.
    pub fn hides(&self, at: Vector, out: Vector, eye: Vector) -> bool {
        /// Past this there is no limb, mm.
        const FAR: f64 = 200.0;
        let start = at + out * 1.5;
        let end = self.leaves(start, eye).min(FAR);
        let mut skin = self.skin.walk(0.0);
        let mut sheets: Vec<_> = self.sheets.iter().map(|sheet| (sheet.field.walk(0.0), sheet)).collect();
        let mut way = 0.0;
        while way < end {
            let p = start + eye * way;
            let mut distance = skin.at(p).distance(p);
            for (field, sheet) in &mut sheets {
                let shell = field.at(p).distance(p) - sheet.thickness;
                if shell < distance {
                    distance = distance.min(shell.max(sheet.clip.distance(p)));
                }
            }
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
    let before = Before::new(&skin, &sheets);
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
