//! Two pictures of one orthosis: how it sits, and a typical way in which it does not.

use crate::content::Fault;
use crate::picture::ink::PathText;
use crate::picture::plate::{Drawing, Paper, Pen, Style, Surface, Tone};
use crate::picture::solid::{Field, lifted};
use crate::picture::space::Vector;
use crate::picture::view::{Camera, Dot};
use crate::picture::wear::StrapState;

use super::pose::lay;
use super::request::{Picture, Request, Worn};
use super::stage::{Cast, Stage};
use super::studio::Studio;
use super::{Undrawable, worn_posture};

/// Side of the sign in a corner, units of the picture.
const SIGN: f64 = 150.0;

/// How near to the skin what is worn may come, mm.
const OVER: f64 = 0.7;

const RIGHT: &str = "sign-right";
const WRONG: &str = "sign-wrong";

/// Whether a part of a drawing is a sign, which is read and so is never turned round.
pub fn is_sign(part: &str) -> bool {
    [RIGHT, WRONG].contains(&part)
}

/// Draws one of the two. Both have the same frame.
pub fn draw(
    studio: &Studio,
    request: &Request,
    worn: &Worn,
    fault: &Fault,
    wrong: bool,
) -> Result<Picture, Undrawable> {
    let posture = worn_posture(worn, request.finger);
    let states = vec![StrapState::Closed; worn.orthosis.straps.len()];
    let right = Cast::new(studio, request, &posture, Some(worn), &states)?;
    let mut stands = posture;
    lay(&mut stands, &fault.joints, request.finger);
    let other = if fault.sheets.is_empty() && fault.straps.is_empty() {
        // As it was moulded, with a limb that stands differently in it.
        let mut other = Cast::new(studio, request, &stands, None, &[])?;
        for surface in right.surfaces.iter().filter(|surface| surface.kind.is_thing()) {
            let mut surface = Surface::clone(surface);
            drape(&mut surface, &other.body.skin);
            other.surfaces.push(std::sync::Arc::new(surface));
        }
        other
    } else {
        Cast::new(studio, request, &stands, Some(&misplaced(worn, fault)), &states)?
    };
    let camera = Camera::of(request.view);
    let corners = [right.extent(&camera), other.extent(&camera)];
    let both = |dot: Dot, half: f64| [&right, &other].iter().any(|cast| meets(cast, &camera, dot, half));
    let (mut low, mut high) = corners.iter().fold((Dot::new(1e9, 1e9), Dot::new(-1e9, -1e9)), |(l, h), (a, b)| {
        (Dot::new(l.x.min(a.x), l.y.min(a.y)), Dot::new(h.x.max(b.x), h.y.max(b.y)))
    });
    let probe = Stage::new(request, Vec::new());
    // The sign stands in a free corner, the same in both; where there is none, above the limb.
    let half = SIGN * 0.6 / probe.scale_of(low, high);
    let places = |low: Dot, high: Dot| {
        let (l, h) = (low + Dot::new(half, half), high - Dot::new(half, half));
        [Dot::new(l.x, h.y), Dot::new(h.x, h.y), Dot::new(l.x, l.y), Dot::new(h.x, l.y)]
    };
    let mut at = places(low, high).into_iter().find(|dot| !both(*dot, half));
    if at.is_none() {
        high.y += half * 2.4;
        at = places(low, high).into_iter().find(|dot| !both(*dot, half));
    }
    let at = at.unwrap_or(low);
    low = Dot::new(low.x.min(at.x - half), low.y.min(at.y - half));
    let mut stage = Stage::new(request, vec![if wrong { other } else { right }]);
    stage.reach.extend([low, high]);
    let mut scene = stage.scene();
    sign(&mut scene.picture.drawing, &scene.paper, at, wrong);
    Ok(scene.picture)
}

/// An orthosis that lies where a fault has it.
fn misplaced(worn: &Worn, fault: &Fault) -> Worn {
    let mut wrong = worn.clone();
    if !fault.sheets.is_empty() {
        wrong.shape.sheets.clone_from(&fault.sheets);
    }
    wrong.shape.straps.extend(fault.straps.clone());
    wrong
}

/// Lifts what would sink into the skin on to it: flesh gives way, but a shell is never under it.
fn drape(surface: &mut Surface, skin: &Field) {
    let mut walk = skin.walk(18.5);
    for point in &mut surface.mesh.points {
        let near = walk.at(*point);
        let depth = |p: Vector| near.distance(p);
        *point = lifted(*point, OVER, 0.02, depth, depth);
    }
}

/// Whether anything of a limb shows in a square of the picture plane.
fn meets(cast: &Cast, camera: &Camera, at: Dot, half: f64) -> bool {
    cast.surfaces.iter().any(|surface| {
        surface.mesh.points.iter().zip(&surface.cut).any(|(point, cut)| {
            let off = camera.flat(*point) - at;
            *cut < 0.0 && off.x.abs() < half && off.y.abs() < half
        })
    })
}

/// A tick or a cross, by its shape and not by a colour.
fn sign(drawing: &mut Drawing, paper: &Paper, at: Dot, wrong: bool) {
    let pen = Pen::new(paper);
    let centre = paper.place(at);
    let point = |x: f64, y: f64| centre + Dot::new(x, y) * (SIGN / 2.0);
    let mut path = PathText::default();
    if wrong {
        path.polyline(&[point(-0.7, -0.7), point(0.7, 0.7)]);
        path.polyline(&[point(0.7, -0.7), point(-0.7, 0.7)]);
    } else {
        path.polyline(&[point(-0.8, 0.05), point(-0.25, 0.7), point(0.8, -0.75)]);
    }
    let width = (pen.outline * 1.8).max(22.0);
    let name = if wrong { WRONG } else { RIGHT };
    drawing.add(name, Style::Stroke { tone: Tone::Ink, width, dash: None }, path);
}
