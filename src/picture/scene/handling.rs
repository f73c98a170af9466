//! Steps of putting an orthosis on and taking it off.

use crate::body::Segment;
use crate::content::{Away, Handling, Orthosis, Straps, Surface as Side};
use crate::picture::plate::{Kind, Surface};
use crate::picture::space::{Vector, turn};
use crate::picture::view::Camera;
use crate::picture::wear::{OPEN, StrapState, resolve};

use super::arrow::arrow;
use super::clear::cleared;
use super::exercise::{furthest, travel};
use super::pose::lay;
use super::request::{Picture, Request};
use super::stage::{Cast, Stage};
use super::studio::Studio;
use super::{Undrawable, Worn, worn_posture};

/// How each strap is at a step: `closed` of them are closed, in the order of closing, and `now` is the one that the step
/// is about.
pub fn strap_states(orthosis: &Orthosis, closed: usize, now: Option<usize>) -> Vec<StrapState> {
    (0..orthosis.straps.len())
        .map(|i| match (i < closed, now == Some(i)) {
            (true, true) => StrapState::ClosedNow,
            (true, false) => StrapState::Closed,
            (false, true) => StrapState::OpenNow,
            (false, false) => StrapState::Open,
        })
        .collect()
}

/// The side from which an orthosis comes to the limb, as an angle round it: the one that it covers.
const fn side_of(side: Side) -> f64 {
    match side {
        Side::Dorsal => 0.0,
        Side::Palmar => 180.0,
        Side::Radial | Side::AllRound => 90.0,
        Side::Ulnar => 270.0,
    }
}

/// A way of content in space.
pub fn shift(cast: &Cast, away: &Away, orthosis: &Orthosis) -> Option<Vector> {
    let segment = away.along.segments(cast.finger).first().copied()?;
    let frame = cast.body.skeleton.frame(segment);
    let (s, c) = turn(away.towards.map_or_else(|| side_of(orthosis.surface), |round| round.degrees()));
    let lift = away.lift.map_or(0.0, |lift| lift.get());
    Some(frame.axes.apply(Vector::new(-s * lift, away.by.get(), c * lift)))
}

/// Whether a surface is an open strap that the step is not about, seen on its edge: a line that says nothing.
fn is_on_edge(surface: &Surface, camera: &Camera) -> bool {
    /// The least mean share of its breadth that shows.
    const LEAST: f64 = 0.2;
    let normals = &surface.mesh.normals;
    let seen = normals.iter().map(|normal| normal.dot(camera.eye).abs()).sum::<f64>() / normals.len().max(1) as f64;
    surface.kind == Kind::Strap && surface.name.ends_with(OPEN) && seen < LEAST
}

/// The picture of one step.
pub fn draw(
    studio: &Studio,
    request: &Request,
    worn: &Worn,
    handling: &Handling,
    straps: &[StrapState],
    off: bool,
) -> Result<Picture, Undrawable> {
    let mut posture = worn_posture(worn, request.finger);
    lay(&mut posture, &handling.joints, request.finger);
    let states: Vec<StrapState> = straps
        .iter()
        .map(|state| match (handling.straps, state) {
            (Some(Straps::Open), StrapState::Closed | StrapState::ClosedNow) => StrapState::Open,
            (Some(Straps::Closed), StrapState::Open | StrapState::OpenNow) => StrapState::Closed,
            _ => *state,
        })
        .collect();
    let orthosis = handling.worn.then_some(worn);
    let mut main = Cast::new(studio, request, &posture, orthosis, &states)?;
    let camera = Camera::of(request.view);
    main.surfaces.retain(|surface| !is_on_edge(surface, &camera));
    let mut casts = Vec::new();
    let mut arrows: Vec<Vec<crate::picture::view::Dot>> = Vec::new();
    let away = handling.away.as_ref().filter(|_| handling.worn);
    if let Some(way) = away.and_then(|away| shift(&main, away, &worn.orthosis)) {
        let seat = main.middle();
        let mut other = main.clone();
        other.surfaces.retain(|surface| surface.kind.is_thing());
        if off {
            main.shift(way)
        } else {
            other.shift(way)
        }
        if let Some(seat) = seat {
            let (there, here) = (camera.flat(seat + way), camera.flat(seat));
            let (from, to) = if off { (here, there) } else { (there, here) };
            arrows.push(vec![from, from.towards(to, 0.5), to]);
        }
        casts.push(other);
    }
    if !handling.before.is_empty() {
        let mut before = posture;
        lay(&mut before, &handling.before, request.finger);
        let ghost = Cast::new(studio, request, &before, None, &[])?;
        let (from, to) = (&ghost.body.skeleton, &main.body.skeleton);
        let path = travel(&before, &to.posture, furthest(from, to), Segment::Forearm);
        let line: Vec<_> = path.iter().map(|p| camera.flat(*p)).collect();
        arrows.push(cleared(&line, &main, &camera));
        casts.push(ghost);
    }
    let touched: Vec<_> = handling.touch.iter().flat_map(|point| resolve(&main.limb(), point)).collect();
    for place in &touched {
        let (tip, tail) = (camera.flat(place.at + place.out * 5.0), camera.flat(place.at + place.out * 30.0));
        if tip.distance(tail) > 8.0 {
            arrows.push(vec![tail, tail.towards(tip, 0.5), tip]);
        }
    }
    casts.insert(0, main);
    let mut stage = Stage::new(request, casts);
    stage.reach.extend(arrows.iter().flatten().copied());
    let mut scene = stage.scene();
    for line in &arrows {
        arrow(&mut scene.picture, &scene.paper, line);
    }
    Ok(scene.picture)
}
