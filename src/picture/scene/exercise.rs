//! Exercises: where a movement starts, where it ends, and the way between.

use std::collections::BTreeSet;

use crate::body::{Axis, Finger, Joint, Segment, SegmentName, View};
use crate::content::{Extent, Flank, Lie, Millimetres, Motion, Percent, Round, SkinPoint, Strand, Wire};
use crate::picture::limb::{Posture, Row, Skeleton, met};
use crate::picture::space::{Frame, Vector};
use crate::picture::view::{Camera, Dot};
use crate::picture::wear::{Limb, StrapState, resolve, strand};
use crate::units::Degrees;

use super::arrow::arrow;
use super::clear::cleared;
use super::pose::lay;
use super::request::{Picture, Request};
use super::stage::{Cast, Stage};
use super::studio::Studio;
use super::{Undrawable, Worn, grasp, helper, table, worn_posture};

/// The posture of an exercise before its first movement, or after its `step`th.
fn stand(motion: &Motion, step: Option<usize>, base: &Posture, finger: Finger) -> Posture {
    let mut posture = base.clone();
    lay(&mut posture, &motion.start, finger);
    if let Some(stand) = step.and_then(|step| motion.then.get(step)) {
        lay(&mut posture, &stand.joints, finger);
        let meeting = stand.meets.as_ref().and_then(|m| Some((m.on.segments(finger).first().copied()?, m)));
        if let Some((segment, meeting)) = meeting {
            posture = met(&posture, segment, meeting.at, meeting.apart.map_or(0.0, Millimetres::get));
        }
    }
    posture
}

/// A posture so far along the way from one to another.
fn between(from: &Posture, to: &Posture, share: f64) -> Posture {
    let mut found = from.clone();
    let both: Vec<_> = from.angles().chain(to.angles()).map(|(joint, axis, _)| (joint, axis)).collect();
    for (joint, axis) in both {
        let (start, end) = (from.stands(joint, axis), to.stands(joint, axis));
        let degrees = start + (end - start) * share;
        found.turn(joint, axis, Degrees::whole(libm::round(degrees) as i16));
    }
    found
}

/// The segment whose end travels furthest.
pub fn furthest(from: &Skeleton, to: &Skeleton) -> Segment {
    let tips = Finger::ALL
        .iter()
        .map(|finger| Segment::Finger(*finger, Row::Distal))
        .chain([Segment::ThumbDistal, Segment::Hand]);
    tips.max_by(|a, b| {
        let way = |s: &Segment| (from.end(*s) - to.end(*s)).length();
        way(a).total_cmp(&way(b))
    })
    .unwrap_or(Segment::Hand)
}

/// The way of a segment's end from one posture to another, a little outside of the limb, while an anchor stays where it
/// is at the end.
pub fn travel(from: &Posture, to: &Posture, segment: Segment, anchor: Segment) -> Vec<Vector> {
    let home = *Skeleton::new(to.clone()).frame(anchor);
    let count = 14;
    (0..=count)
        .map(|i| {
            // The arrow leaves out the ends, so that it touches neither limb.
            let share = 0.08 + 0.84 * f64::from(i) / f64::from(count);
            let skeleton = Skeleton::new(between(from, to, share));
            let end = skeleton.frame(segment).point(0.0, skeleton.length(segment) + 8.0, 0.0);
            let local = skeleton.frame(anchor).local(end);
            home.point(local.x, local.y, local.z)
        })
        .collect()
}

/// A way in space as a line of the picture. A turn that is seen from its edge would be a straight line: it is drawn as
/// seen a little from above.
fn traced_line(path: &[Vector], camera: &Camera) -> Vec<Dot> {
    /// A bow counts from this share of its chord on.
    const BOWED: f64 = 0.12;
    let straight: Vec<Dot> = path.iter().map(|p| camera.flat(*p)).collect();
    let (Some(first), Some(last)) = (path.first(), path.last()) else { return straight };
    let chord = *last - *first;
    let off = |p: &Vector| {
        let way = *p - *first;
        (way - chord.unit() * way.dot(chord.unit())).length()
    };
    let across = (straight[straight.len() - 1] - straight[0]).unit().left();
    let seen = |dot: &Dot| ((*dot - straight[0]).x * across.x + (*dot - straight[0]).y * across.y).abs();
    let bow = path.iter().map(off).fold(0.0, f64::max);
    let shown = straight.iter().map(seen).fold(0.0, f64::max);
    if shown > BOWED * chord.length() || bow < BOWED * chord.length() {
        return straight;
    }
    let nodded = camera.nodded(NOD);
    let middle = path.len() / 2;
    let shift = straight[middle] - nodded.flat(path[middle]);
    path.iter().map(|p| nodded.flat(*p) + shift).collect()
}

/// From how far above a turn is seen, degrees.
const NOD: f64 = 28.0;

/// How wide a scar is drawn.
const SCAR: Millimetres = Millimetres::tenths(14);

/// Whether a joint lies nearer to the body than all that is covered on its way there, so that its movement takes the
/// whole splint along. The elbow and the turning forearm do not: the limb hangs on the forearm.
fn carries(joint: Joint, covered: &BTreeSet<Segment>) -> bool {
    let held = |segments: &[Segment]| segments.iter().any(|segment| covered.contains(segment));
    let arm = [Segment::UpperArm, Segment::Forearm];
    let digit: &[Segment] = match joint {
        Joint::Elbow | Joint::Forearm => return false,
        Joint::Wrist => return !held(&arm),
        Joint::ThumbCmc | Joint::Mcp(_) => &[],
        Joint::ThumbMcp => &[Segment::ThumbMetacarpal],
        Joint::ThumbIp => &[Segment::ThumbMetacarpal, Segment::ThumbProximal],
        Joint::Pip(finger) => &[Segment::Finger(finger, Row::Proximal)],
        Joint::Dip(finger) => &[Segment::Finger(finger, Row::Proximal), Segment::Finger(finger, Row::Middle)],
    };
    !held(&arm) && !held(&[Segment::Hand]) && !held(digit)
}

/// The straps of a splint during an exercise: those over segments that move in it are undone, and left out.
fn straps(worn: &Worn, motion: &Motion, finger: Finger, covered: &BTreeSet<Segment>) -> Vec<StrapState> {
    let stands = std::iter::once(&motion.start).chain(motion.then.iter().map(|stand| &stand.joints));
    let moved: Vec<_> = stands
        .flat_map(|joints| joints.keys())
        .flat_map(|name| name.for_finger(finger).joints())
        .filter(|joint| !carries(*joint, covered))
        .collect();
    let moves = |segment: Segment| match segment {
        Segment::Finger(of, row) => {
            let nearer = Row::ALL.into_iter().filter(move |other| *other <= row);
            nearer.map(|row| Skeleton::joint(Segment::Finger(of, row))).any(|joint| moved.contains(&joint))
        }
        other => moved.contains(&Skeleton::joint(other)) && other != Segment::Forearm,
    };
    worn.orthosis
        .straps
        .iter()
        .map(|id| match worn.shape.straps.get(id) {
            Some(band) if band.on.segments(finger).into_iter().any(moves) => StrapState::Away,
            _ => StrapState::Closed,
        })
        .collect()
}

/// The camera for a turn of the forearm: it stays with the elbow, as a view is meant of a forearm with its thumb up, and
/// looks from the elbow along the forearm, where the turn is a turn in the picture.
fn with_arm(posture: &Posture, view: View) -> Camera {
    let mut level = posture.clone();
    level.turn(Joint::Forearm, Axis::Rotation, Degrees::whole(0));
    let arm = |posture: &Posture| Skeleton::new(posture.clone()).frame(Segment::UpperArm).axes;
    let (from, to) = (arm(&level), arm(posture));
    let camera = Camera::of(view).nodded(-ALONG);
    let carried = |v: Vector| to.apply(from.undo(v));
    Camera { right: carried(camera.right), up: carried(camera.up), eye: carried(camera.eye) }
}

/// How far the camera goes down towards the elbow to see a turn of the forearm, degrees.
const ALONG: f64 = 50.0;

/// The camera with the picture turned as a motion says.
fn upright(camera: Camera, motion: &Motion, limb: &Limb<'_>) -> Camera {
    let level = motion.lies.as_ref().and_then(|lie| over(limb, lie));
    let up = |name: SegmentName| name.segments(limb.finger).first().map(|segment| limb.skeleton.frame(*segment).axes.y);
    let top = level.or_else(|| motion.up.and_then(up));
    top.map_or(camera, |top| camera.rolled(top))
}

/// The direction over a segment that lies level: square to the skin of its underside, which it rests on.
fn over(limb: &Limb<'_>, lie: &Lie) -> Option<Vector> {
    /// Between which shares of a segment, per cent, its underside is level.
    const RESTS: [i16; 2] = [40, 92];
    let axes = limb.skeleton.frame(lie.on.segments(limb.finger).first().copied()?).axes;
    let (up, round) = match lie.below {
        Flank::Palm => (axes.z, 180),
        Flank::Back => (-axes.z, 0),
        Flank::ThumbSide => (axes.x, 90),
        Flank::LittleFingerSide => (-axes.x, 270),
    };
    let mut ends = RESTS.iter().filter_map(|percent| {
        let (at, round) = (Percent::whole(*percent), Round::whole(round));
        let point = SkinPoint { on: lie.on, at, round, out: Millimetres::tenths(0) };
        resolve(limb, &point).first().map(|place| place.at)
    });
    let along = match (ends.next(), ends.next()) {
        (Some(near), Some(far)) => (far - near).unit(),
        _ => axes.y,
    };
    Some(up - along * up.dot(along))
}

/// The movement into the `step`th posture: the end in full, the start as a light outline, an arrow along the way.
pub fn draw(
    studio: &Studio,
    request: &Request,
    motion: &Motion,
    step: usize,
    worn: Option<&Worn>,
) -> Result<Picture, Undrawable> {
    let base = worn.map_or_else(Posture::flat, |worn| worn_posture(worn, request.finger));
    let earlier = step.checked_sub(1).filter(|_| !motion.afresh);
    let before = stand(motion, earlier, &base, request.finger);
    let still = motion.then.is_empty();
    let after = if still { before.clone() } else { stand(motion, Some(step), &base, request.finger) };
    let mut main = Cast::new(studio, request, &after, None, &[])?;
    if let Some(worn) = worn {
        // The splint goes with the limb it sits on, and stays as it was made whatever moves inside it.
        let covered = worn.shape.segments(request.finger);
        let straps = straps(worn, motion, request.finger, &covered);
        let mut made = base.clone();
        for (joint, axis, angle) in after.angles().filter(|(joint, ..)| carries(*joint, &covered)) {
            made.turn(joint, axis, angle);
        }
        let seat = Cast::new(studio, request, &made, Some(worn), &straps)?;
        main.surfaces.extend(seat.surfaces.into_iter().filter(|surface| surface.kind.is_thing()));
    }
    let turning = before.degrees(Joint::Forearm, Axis::Rotation) != after.degrees(Joint::Forearm, Axis::Rotation);
    let camera = if turning { with_arm(&after, request.view) } else { Camera::of(request.view) };
    let camera = upright(camera, motion, &main.limb());
    let mut casts = Vec::new();
    let mut line = Vec::new();
    if !still && before != after {
        let traced = motion.traced.and_then(|name| name.segments(request.finger).first().copied());
        let mut ghost = Cast::new(studio, request, &before, None, &[])?;
        let path = if let Some(sinks) = motion.sinks {
            // The hand keeps its direction, so the forearm is what turns.
            let hand = |posture: &Posture| *Skeleton::new(posture.clone()).frame(Segment::Hand);
            let (from, to) = (hand(&before), hand(&after));
            let high = to.axes.y * sinks.get();
            ghost.carry(&from, &Frame { origin: to.origin + high, ..to });
            let tip = main.body.skeleton.end(traced.unwrap_or(Segment::Hand));
            (0..=8).map(|i| tip + high * (1.0 - f64::from(i) / 8.0)).collect()
        } else if turning || motion.shows == Extent::Elbow {
            // The upper arm stays where it is and the forearm moves, as it does on a person.
            let arm = |posture: &Posture| *Skeleton::new(posture.clone()).frame(Segment::UpperArm);
            ghost.carry(&arm(&before), &arm(&after));
            travel(&before, &after, traced.unwrap_or(Segment::Hand), Segment::UpperArm)
        } else {
            let tip = || furthest(&ghost.body.skeleton, &Skeleton::new(after.clone()));
            travel(&before, &after, traced.unwrap_or_else(tip), Segment::Forearm)
        };
        line = traced_line(&path, &camera);
        casts.push(ghost);
    }
    if let Some(held) = &motion.holds {
        let drawn = grasp::surface(&main.limb(), held).map(std::sync::Arc::new);
        main.surfaces.extend(drawn);
    }
    if let Some(help) = &motion.helper {
        let scar = Wire { through: motion.scar.clone(), width: SCAR, kind: Strand::Cord, closed: false };
        let drawn = strand(&main.limb(), &scar, &[], "scar").map(std::sync::Arc::new);
        main.surfaces.extend(drawn);
        let places = resolve(&main.limb(), &help.at);
        if let Some(place) = places.first() {
            let stroke = helper::stroke(&main.limb(), help, place);
            if !stroke.is_empty() {
                line = stroke.iter().map(|p| camera.flat(*p)).collect();
            }
            helper::lend(&mut main, request, help.grip, place, &camera);
        }
    }
    // What strokes the skin runs along it; what moves has its arrow beside it.
    if !motion.helper.as_ref().is_some_and(|help| help.circles || help.strokes.is_some()) {
        line = cleared(&line, &main, &camera);
    }
    let table = motion.lies.as_ref().map_or_else(Vec::new, |lie| table::corners(&main, &camera, lie));
    casts.insert(0, main);
    let mut stage = Stage::new(request, casts);
    stage.camera = camera;
    stage.reach.extend(line.iter().chain(&table).copied());
    let mut scene = stage.scene();
    table::lay_under(&mut scene.picture.drawing, &scene.paper, &table);
    arrow(&mut scene.picture, &scene.paper, &line);
    Ok(scene.picture)
}
