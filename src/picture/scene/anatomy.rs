//! The limb as if its skin were glass: bones, joints that are held, structures with their names.

use std::sync::Arc;

use crate::body::{BoneName, Finger, Joint, Row, Segment};
use crate::content::{Course, CourseKind, Extent};
use crate::picture::bone::{Bone, Flat, Socket, bones, order, socket};
use crate::picture::ink::{PathText, opened, resample, smooth};
use crate::picture::limb::Posture;
use crate::picture::plate::{Drawing, End, Manner, Paper, Pen, Style, Tone};
use crate::picture::solid::{Blends, Field};
use crate::picture::space::Vector;
use crate::picture::view::{Camera, Dot};
use crate::picture::wear::Limb;

use super::Undrawable;
use super::caption::{Caption, Room, letter};
use super::course::{Inside, Stretch, lines, paint};
use super::held::mark;
use super::request::{Named, Picture, Request};
use super::stage::{Cast, Stage, shown};
use super::studio::Studio;

/// How far a fitted outline may be from its points, units of the picture.
const ERROR: f64 = 1.0;

/// What a structure shows of itself.
struct Found<'a> {
    named: &'a Named,
    stretches: Vec<(CourseKind, Vec<Stretch>)>,
    /// Bones that are toned, each with how much of it.
    toned: Vec<(usize, Option<(f64, f64)>)>,
}

/// What is asked to show inside a limb.
pub struct Shown<'a> {
    pub structures: &'a [Named],
    pub held: &'a [Joint],
    pub fingers: &'a [Finger],
    /// The size of the words for the mark on held joints.
    pub legend: Option<(u16, u16)>,
}

/// Draws the inside of a limb.
pub fn draw(studio: &Studio, request: &Request, posture: &Posture, inside: &Shown<'_>) -> Result<Picture, Undrawable> {
    let Shown { structures, held, fingers, legend } = *inside;
    let mut cast = Cast::new(studio, request, posture, None, &[])?;
    if request.extent == Extent::Finger {
        open(&mut cast, request.finger);
    }
    let camera = Camera::of(request.view);
    let body = Arc::clone(&cast.body);
    let (which, end) = shown(request.extent, request.finger);
    let cut = cast.surfaces.iter().find_map(|surface| surface.end);
    let all = bones(&body.skeleton, request.build);
    let bones: Vec<Bone> = all.iter().filter(|bone| which(bone.segment)).cloned().collect();
    let flats: Vec<Flat<'_>> = bones.iter().map(|bone| Flat::new(&camera, bone)).collect();
    // Courses lie in the whole limb, whatever flesh of the thumb is before it, and are cut where the picture ends.
    let trunk =
        Field::new(&body.flesh, Blends::SKIN, |s| matches!(s, Segment::UpperArm | Segment::Forearm | Segment::Hand));
    let limb = Limb { skeleton: &body.skeleton, flesh: &body.flesh, skin: &trunk, finger: request.finger };
    let inside = Inside { limb, bones: &all };
    let near = body.skin.all();
    let shows = |point: Vector| cut.is_none_or(|cut| cut.beyond(point) < -1.0) && near.distance(point) < 2.0;
    let own = [request.finger];
    let fingers = if fingers.is_empty() { &own[..] } else { fingers };
    let found: Vec<Found<'_>> = structures
        .iter()
        .map(|named| Found {
            named,
            stretches: named
                .courses
                .iter()
                .flat_map(|course| lines(&inside, fingers, course, shows))
                .map(|line| (line.kind, line.stretches(&camera, &flats)))
                .collect(),
            toned: named.courses.iter().flat_map(|course| toned(&bones, fingers, course)).collect(),
        })
        .collect();
    let mut captions: Vec<Caption> = found.iter().filter_map(|found| caption(found, &flats)).collect();
    let mut marked = held.to_vec();
    marked.sort();
    marked.dedup();
    let sockets: Vec<(Joint, Socket)> = marked
        .into_iter()
        .map(|joint| (joint, socket(&body.skeleton, joint, end)))
        .filter(|(_, socket)| which(socket.segment) && cut.is_none_or(|cut| cut.beyond(socket.at) < 0.0))
        .collect();
    // The mark is explained where it is furthest from what is named.
    let apart = |at: Dot| captions.iter().map(|one| one.at.distance(at)).fold(1e3, f64::min);
    let rings = sockets.iter().map(|(_, socket)| camera.flat(socket.at));
    let plain = rings.max_by(|a, b| apart(*a).total_cmp(&apart(*b)));
    if let (Some((wide, high)), Some(at)) = (legend, plain) {
        captions.push(Caption { number: structures.len(), wide: f64::from(wide), high: f64::from(high), at });
    }
    let mut stage = Stage::new(request, vec![cast]);
    stage.manner = Manner::Glass;
    let room = Room::new(&stage, &captions);
    stage.reach.extend(room.corners());
    let mut scene = stage.scene();
    let (drawing, paper) = (&mut scene.picture.drawing, &scene.paper);
    for found in &found {
        let name = format!("structure-{}", found.named.number);
        for (kind, stretches) in found.stretches.iter().filter(|(kind, _)| *kind == CourseKind::Skin) {
            stretches.iter().for_each(|stretch| paint(drawing, paper, &name, *kind, stretch));
        }
    }
    for i in order(&flats) {
        bone(drawing, paper, &camera, &flats[i], cut, &found, i);
    }
    for (joint, socket) in &sockets {
        mark(drawing, paper, &format!("held-{joint}"), socket.flat(&camera));
    }
    // What lies on the far side comes first; bands lie over what they hold down.
    for (hidden, bands) in [(true, false), (true, true), (false, false), (false, true)] {
        for found in &found {
            let name = format!("structure-{}", found.named.number);
            let now = |kind: CourseKind| kind != CourseKind::Skin && (kind == CourseKind::Pulley) == bands;
            for (kind, stretches) in found.stretches.iter().filter(|(kind, _)| now(*kind)) {
                for stretch in stretches.iter().filter(|stretch| stretch.hidden == hidden) {
                    paint(drawing, paper, &name, *kind, stretch);
                }
            }
        }
    }
    letter(&mut scene.picture, &scene.paper, &room);
    Ok(scene.picture)
}

/// Cuts a finger by itself off through the shaft of its first bone, so that it is seen to go on.
fn open(cast: &mut Cast, finger: Finger) {
    let segment = Segment::Finger(finger, Row::Proximal);
    let skeleton = &cast.body.skeleton;
    let frame = skeleton.frame(segment);
    let end = End {
        at: frame.point(0.0, skeleton.length(segment) * 0.16, 0.0),
        out: frame.axes.y * -1.0,
        reach: 60.0,
        keeps: None,
    };
    for surface in &mut cast.surfaces {
        let surface = Arc::make_mut(surface);
        surface.cut = surface.mesh.points.iter().map(|point| end.beyond(*point)).collect();
        surface.edge = surface.cut.clone();
        surface.end = Some(end);
    }
}

/// Bones that a course is about.
fn toned(bones: &[Bone], fingers: &[Finger], course: &Course) -> Vec<(usize, Option<(f64, f64)>)> {
    let span = course.span.map(|span| (span.from.share(), span.to.share()));
    let meant =
        |bone: &Bone| Some(bone.name) == course.bone && bone.finger.is_none_or(|finger| fingers.contains(&finger));
    (0..bones.len()).filter(|i| meant(&bones[*i])).map(|i| (i, span)).collect()
}

/// Where a structure's name points: the middle of its longest stretch on the near side, or of one on the far side.
fn caption(found: &Found<'_>, flats: &[Flat<'_>]) -> Option<Caption> {
    let all = || found.stretches.iter().flat_map(|(_, stretches)| stretches);
    let longest = |hidden: bool| {
        all()
            .filter(|stretch| stretch.hidden == hidden)
            .max_by(|a, b| crate::picture::ink::length(&a.dots).total_cmp(&crate::picture::ink::length(&b.dots)))
    };
    let skin = found.stretches.iter().any(|(kind, _)| *kind == CourseKind::Skin);
    let line = longest(false).or_else(|| longest(true)).map(|stretch| {
        let even = resample(&stretch.dots, 1.0);
        // A patch of skin is pointed to inside its border.
        let sum = even.iter().fold(Dot::new(0.0, 0.0), |sum, dot| sum + *dot);
        if skin { sum * (1.0 / even.len() as f64) } else { even[even.len() / 2] }
    });
    let bone = || {
        let (i, span) = found.toned.first()?;
        let (from, to) = span.unwrap_or((0.0, 1.0));
        let axis = flats[*i].axis;
        Some(axis.0.towards(axis.1, f64::midpoint(from, to.min(1.0))))
    };
    let at = line.or_else(bone)?;
    let named = found.named;
    Some(Caption { number: named.number, wide: f64::from(named.wide), high: f64::from(named.high), at })
}

/// One bone: paper, tone where a structure is that bone, and its outline, open where the picture ends.
fn bone(
    drawing: &mut Drawing,
    paper: &Paper,
    camera: &Camera,
    flat: &Flat<'_>,
    cut: Option<End>,
    found: &[Found<'_>],
    number: usize,
) {
    let pen = Pen::new(paper);
    let name = name_of(flat.bone);
    // An end that faces the eye cuts nothing.
    let cut = cut.filter(|cut| cut.out.dot(camera.eye).abs() < 0.75);
    let beyond = |p: Dot| {
        let point = camera.right * p.x + camera.up * p.y + camera.eye * flat.middle;
        cut.map_or(-1e3, |cut| cut.beyond(point))
    };
    let soft = |ring: &[Dot]| smooth(&resample(ring, 0.4), 1.2, true);
    let rings: Vec<Vec<Dot>> = flat.outlines(beyond).iter().map(|ring| soft(ring)).collect();
    let mut ground = PathText::default();
    for ring in &rings {
        ground.curve(&paper.places(ring), true, ERROR);
    }
    drawing.add(&name, Style::Fill(Tone::Paper), ground.clone());
    let mut bold = false;
    for found in found {
        for (_, span) in found.toned.iter().filter(|(i, _)| *i == number) {
            let (from, to) = flat.axis;
            let way = (to - from).unit();
            let total = from.distance(to).max(1.0);
            let within = |p: Dot| match span {
                // A bone's end goes on past its axis.
                Some((low, high)) => {
                    let share = (p - from).dot(way) / total;
                    let below = if *low <= 0.0 { -1e3 } else { (low - share) * total };
                    let above = if *high >= 1.0 { -1e3 } else { (share - high) * total };
                    below.max(above).max(beyond(p))
                }
                None => beyond(p),
            };
            let mut tone = PathText::default();
            for ring in flat.outlines(within) {
                tone.curve(&paper.places(&soft(&ring)), true, ERROR);
            }
            drawing.add(&format!("structure-{}", found.named.number), Style::Fill(Tone::Dark), tone);
            bold = true;
        }
    }
    let width = if bold { pen.outline } else { pen.fine * 1.35 };
    let style = Style::Stroke { tone: Tone::Ink, width, dash: None };
    let mut edge = PathText::default();
    for ring in &rings {
        match opened(ring, |dot| beyond(dot) > -0.9, 4) {
            None => edge.curve(&paper.places(ring), true, ERROR),
            Some(runs) => runs.iter().for_each(|run| edge.curve(&paper.places(run), false, ERROR)),
        }
    }
    drawing.add(&format!("{name}-edge"), style, edge);
}

/// What a bone's paths are called.
fn name_of(bone: &Bone) -> String {
    match bone.finger {
        Some(finger) => {
            let row = match bone.name {
                BoneName::FingerProximal => "proximal",
                BoneName::FingerMiddle => "middle",
                BoneName::FingerDistal => "distal",
                _ => "metacarpal",
            };
            format!("bone-{}-{row}", finger.word())
        }
        None => format!("bone-{}", bone.name),
    }
}
