//! The map of the skin check.

use std::sync::Arc;

use crate::body::View;
use crate::content::SkinPoint;
use crate::picture::plate::{Kind, Surface};
use crate::picture::view::Camera;
use crate::picture::wear::{Limb, Place, StrapState, resolve};

use super::anchor::letter;
use super::known::Known;
use super::request::{Picture, Request};
use super::sight::Before;
use super::stage::{Cast, Stage, bare, shown};
use super::studio::Studio;
use super::{Undrawable, Worn, worn_posture};

/// How squarely a spot must face the eye.
const FACING: f64 = 0.3;

/// How squarely a place faces the eye; below -1 when flesh stands before it.
fn faces(skin: &Before<'_>, place: &Place, view: View) -> f64 {
    let eye = Camera::of(view).eye;
    let facing = place.out.dot(eye);
    if facing > 0.0 && skin.hides(place.at, place.out, eye) { facing - 3.0 } else { facing }
}

/// Views, each with the spots that it shows.
type SpotViews = Vec<(View, Vec<(usize, SkinPoint)>)>;

/// The views that together show every spot, at most three, each with the spots that it shows best.
pub fn spot_views(request: &Request, worn: &Worn, spots: &[(usize, SkinPoint)]) -> SpotViews {
    static KNOWN: Known<SpotViews> = Known::new();
    let question = (request.extent, request.finger, request.build, worn, spots);
    KNOWN.answer(&question, || views_of(request, worn, spots))
}

fn views_of(request: &Request, worn: &Worn, spots: &[(usize, SkinPoint)]) -> SpotViews {
    // No surface is needed to know which way a place faces.
    let (which, _) = shown(request.extent, request.finger);
    let (skeleton, flesh, skin) = bare(&worn_posture(worn, request.finger), request.build, which);
    let near = Before::new(&skin, &[]);
    let limb = Limb { skeleton: &skeleton, flesh: &flesh, skin: &skin, finger: request.finger };
    let placed: Vec<(usize, SkinPoint, Place)> = spots
        .iter()
        .filter_map(|(number, point)| resolve(&limb, point).first().map(|place| (*number, *point, *place)))
        .collect();
    let order = [View::Dorsal, View::Palmar, View::Radial, View::Ulnar];
    let mut left: Vec<usize> = (0..placed.len()).collect();
    let mut chosen: Vec<View> = Vec::new();
    while !left.is_empty() && chosen.len() < 3 {
        let count = |view: View| left.iter().filter(|i| faces(&near, &placed[**i].2, view) > FACING).count();
        let Some(best) =
            order.into_iter().filter(|v| !chosen.contains(v)).max_by_key(|v| (count(*v), std::cmp::Reverse(*v)))
        else {
            break;
        };
        if count(best) == 0 {
            break;
        }
        left.retain(|i| faces(&near, &placed[*i].2, best) <= FACING);
        chosen.push(best);
    }
    chosen.sort();
    let mut shown: Vec<(View, Vec<(usize, SkinPoint)>)> = chosen.iter().map(|view| (*view, Vec::new())).collect();
    for (number, point, place) in &placed {
        let best = shown.iter_mut().max_by(|a, b| faces(&near, place, a.0).total_cmp(&faces(&near, place, b.0)));
        if let Some((_, list)) = best {
            list.push((*number, *point));
        }
    }
    shown.retain(|(_, list)| !list.is_empty());
    shown
}

/// The bare limb with its spots ringed, over the light outline of the orthosis.
pub fn draw(
    studio: &Studio,
    request: &Request,
    worn: &Worn,
    places: &[(usize, SkinPoint)],
) -> Result<Picture, Undrawable> {
    let posture = worn_posture(worn, request.finger);
    let cast = Cast::new(studio, request, &posture, None, &[])?;
    let states = vec![StrapState::Closed; worn.orthosis.straps.len()];
    let worn = Cast::new(studio, request, &posture, Some(worn), &states)?;
    let camera = Camera::of(request.view);
    let spots: Vec<_> = places
        .iter()
        .filter_map(|(number, point)| Some((*number, camera.flat(resolve(&cast.limb(), point).first()?.at))))
        .collect();
    let mut stage = Stage::new(request, vec![cast]);
    // Where the sheets end; of a piece without sheets, where its straps do.
    let is_sheet = |surface: &&Arc<Surface>| matches!(surface.kind, Kind::Shell | Kind::Wrap | Kind::Cast);
    stage.edges = worn.surfaces.iter().filter(is_sheet).cloned().collect();
    if stage.edges.is_empty() {
        stage.edges = worn.surfaces.into_iter().filter(|surface| surface.kind == Kind::Strap).collect();
    }
    // Room for letters beside the limb.
    let (low, high) = stage.casts[0].extent(&camera);
    let room = (high.x - low.x).max(high.y - low.y) * 0.09;
    stage.reach.push(crate::picture::view::Dot::new(low.x - room, low.y));
    stage.reach.push(crate::picture::view::Dot::new(high.x + room, high.y));
    let mut scene = stage.scene();
    letter(&mut scene.picture, &scene.pressed, &scene.paper, &spots);
    Ok(scene.picture)
}
