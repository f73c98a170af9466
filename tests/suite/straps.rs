//! Straps in pictures: they show where they are spoken of, they are tight, and they lie beside bones that stand out.

use palmleaf::body::{Finger, Row, Segment, SegmentName, Side, View};
use palmleaf::content::{Look, Material, Shape};
use palmleaf::ids::{ExerciseId, OrthosisId};
use palmleaf::picture::asks::{self, Sitter, Way};
use palmleaf::picture::limb::Build;
use palmleaf::picture::plate::{Kind, Surface};
use palmleaf::picture::scene::{Fitted, Request, Studio, Subject, Worn, draw, strap_shares};
use rayon::prelude::*;

use crate::support::WORKSHOP;

const SITTER: Sitter = Sitter { side: Side::Right, finger: Finger::Index, build: Build::Adult, width: 60, height: 600 };

/// The least share of a strap, foreshortened as it is seen, that the picture of its step shows. A ring that nothing covers
/// shows a third from any side; a band on two sides of a limb half of that.
const LEAST: f64 = 0.1;

/// The least share of what the best view shows.
const OF_BEST: f64 = 0.55;

/// A step's strap: the share that the view of its picture shows, and that of the best view.
fn shares(worn: &Worn, strap: usize, request: &Request) -> Option<(f64, f64)> {
    let Subject::Step { straps, .. } = &request.subject else { return None };
    let band = worn.shape.straps.get(worn.orthosis.straps.get(strap)?)?;
    let shares = strap_shares(request, worn, band, *straps.get(strap)?);
    let best = shares.iter().map(|(_, share)| *share).fold(0.0, f64::max);
    Some((shares.first()?.1, best))
}

/// Every step with a strap, in order, once for each way in which the strap is.
fn steps() -> Vec<(String, Worn, usize, Request)> {
    let library = &WORKSHOP.library;
    let mut found = Vec::new();
    for id in library.shapes.keys() {
        let fingers: &[Finger] = match library.orthoses.get(id) {
            Some(orthosis) if orthosis.needs_finger() => &[Finger::Index, Finger::Little],
            _ => &[Finger::Index],
        };
        for finger in fingers {
            let sitter = Sitter { finger: *finger, ..SITTER };
            let worn = asks::worn(library, id, *finger).expect("a look");
            for way in [Way::On, Way::Off] {
                for step in asks::steps(&sitter, library, &worn, way, None) {
                    if let Some(strap) = step.strap {
                        let name = format!("{id} on the {finger} finger, {} {}", way.word(), step.number + 1);
                        found.push((name, worn.clone(), strap, step.request));
                    }
                }
            }
        }
    }
    found
}

fn hidden(steps: &[(String, Worn, usize, Request)]) -> Vec<String> {
    steps
        .par_iter()
        .filter_map(|(name, worn, strap, request)| {
            let (seen, best) = shares(worn, *strap, request)?;
            let shows = seen >= LEAST && seen >= best * OF_BEST;
            (!shows).then(|| format!("{name}: {} shows {seen:.2}, the best view {best:.2}", request.view))
        })
        .collect()
}

#[test]
fn every_step_shows_the_strap_that_it_is_about() {
    let steps = steps();
    assert!(steps.len() > 150, "only {} steps", steps.len());
    let found = hidden(&steps);
    assert!(found.is_empty(), "{} of {}:\n{}", found.len(), steps.len(), found.join("\n"));
}

#[test]
fn a_strap_behind_the_limb_is_found() {
    let mut steps = steps();
    steps.retain(|(name, ..)| name.starts_with("dorsal-block-long"));
    for (.., request) in &mut steps {
        request.view = View::Dorsal;
    }
    assert!(hidden(&steps).len() >= 4, "straps in the palm show from the back: {:?}", hidden(&steps));
}

#[test]
fn the_drawing_has_the_strap_in_it() {
    let missing: Vec<String> = steps()
        .par_iter()
        .step_by(9)
        .filter_map(|(name, _, strap, request)| {
            let picture = draw(request).expect("a picture");
            let part = format!("strap-{}", strap + 1);
            let there = picture.drawing.parts.iter().any(|drawn| drawn.name.starts_with(&part));
            (!there).then(|| name.clone())
        })
        .collect();
    assert!(missing.is_empty(), "{missing:?}");
}

/// How deep a strap over the first bones of the fingers dips between them, mm, seen along the index finger.
fn dip(worn: &Worn) -> f64 {
    let fitted = Fitted::new(worn, Finger::Index).expect("it fits");
    let home = *fitted.skeleton.frame(Segment::Finger(Finger::Index, Row::Proximal));
    let is_row = |surface: &&Surface| surface.kind == Kind::Strap && surface.name == row_name(worn);
    let trimmings = fitted.trimmings();
    let strap = trimmings.iter().find(is_row).expect("the strap over the fingers");
    let inside = strap.mesh.points.iter().zip(&strap.cut).filter(|(_, cut)| **cut < -3.0);
    // The outside of the cross-section: the highest point of each two millimetres.
    let mut top: Vec<(f64, f64)> = Vec::new();
    let mut points: Vec<(f64, f64)> = inside.map(|(p, _)| home.local(*p)).map(|q| (q.x, q.z)).collect();
    points.sort_by(|a, b| a.0.total_cmp(&b.0));
    for (x, z) in points {
        match top.last_mut() {
            Some(last) if x - last.0 < 2.0 => last.1 = last.1.max(z),
            _ => top.push((x, z)),
        }
    }
    let mut deepest: f64 = 0.0;
    for (i, from) in top.iter().enumerate() {
        for (j, to) in top.iter().enumerate().skip(i + 2) {
            for between in &top[i + 1..j] {
                let share = (between.0 - from.0) / (to.0 - from.0);
                deepest = deepest.max(from.1 + (to.1 - from.1) * share - between.1);
            }
        }
    }
    deepest
}

fn row_name(worn: &Worn) -> String {
    let number = worn.orthosis.straps.iter().position(|id| id.as_str() == "across-fingers").expect("it has that strap");
    format!("strap-{}", number + 1)
}

#[test]
fn a_strap_over_the_fingers_is_tight() {
    let id: OrthosisId = "resting-hand".parse().expect("a name");
    let worn = asks::worn(&WORKSHOP.library, &id, Finger::Index).expect("a look");
    let tight = dip(&worn);
    // A loop round each finger follows each: the same measure finds how it dips.
    let mut loose = worn;
    for band in loose.shape.straps.values_mut().filter(|band| !band.over.is_empty()) {
        band.on = SegmentName::Fingers(Row::Proximal);
        band.around = None;
        band.over.clear();
    }
    let follows = dip(&loose);
    assert!(
        tight < 3.0 && follows > tight + 1.5,
        "tight it dips {tight:.1} mm, where it follows each finger {follows:.1} mm"
    );
}

/// How far the head of the ulna reaches from the wrist, mm: the strap of a firm splint lies beside it. Common practice.
const ULNAR_HEAD: f64 = 18.0;

/// How near to the wrist the nearest strap of a firm forearm piece comes, mm.
fn clearance(shape: &Shape, length: f64) -> Option<f64> {
    let forearm = SegmentName::One(Segment::Forearm);
    let near = |band: &palmleaf::content::Band| (1.0 - band.at.share()) * length - band.width.get() / 2.0;
    shape.straps.values().filter(|band| band.on == forearm).map(near).min_by(f64::total_cmp)
}

#[test]
fn straps_of_firm_splints_lie_short_of_the_head_of_the_ulna() {
    let library = &WORKSHOP.library;
    let worn = |id| asks::worn(library, id, Finger::Index).expect("a look");
    let length = |worn: &Worn| Fitted::new(worn, Finger::Index).expect("it fits").skeleton.length(Segment::Forearm);
    let mut seen = 0;
    let wrong: Vec<String> = library
        .shapes
        .iter()
        .filter(|(id, shape)| {
            let firm = !matches!(library.orthoses[*id].material, Material::Soft | Material::SoftWithStay);
            firm && shape.sheets.iter().all(|sheet| sheet.look != Some(Look::Fabric)) && !shape.sheets.is_empty()
        })
        .filter_map(|(id, shape)| {
            let near = clearance(shape, length(&worn(id)))?;
            seen += 1;
            (near < ULNAR_HEAD).then(|| format!("{id}: {near:.0} mm"))
        })
        .collect();
    assert!(seen > 12, "only {seen} splints have a strap on the forearm");
    assert!(wrong.is_empty(), "{wrong:?}");
}

#[test]
fn ring_and_little_finger_are_seen_from_their_side() {
    let id: ExerciseId = "knuckle-bent-straighten".parse().expect("a name");
    let motion = &WORKSHOP.library.motions[&id];
    let view = |finger, seen| asks::exercise(&Sitter { finger, ..SITTER }, motion, None, seen)[0].view;
    let views: Vec<View> = Finger::ALL.iter().map(|finger| view(*finger, None)).collect();
    assert_eq!(views, [View::Radial, View::Radial, View::Ulnar, View::Ulnar]);
    assert_eq!(view(Finger::Little, Some(View::Radial)), View::Radial, "what is asked for is drawn");
}

/// How far an arrow goes to the right, and how far it rises above where it begins, units of the picture.
fn arrow_of(request: &Request) -> (f64, f64) {
    let picture = Studio::default().draw(request).expect("a picture");
    let shaft = picture.drawing.parts.iter().find(|part| part.name == "arrow").expect("an arrow");
    let numbers: Vec<f64> = shaft
        .path
        .text()
        .replace('-', " -")
        .split(|c: char| c.is_whitespace() || c.is_ascii_alphabetic())
        .filter_map(|number| number.parse().ok())
        .collect();
    // After the start, steps to the right and down.
    let (mut x, mut y, mut highest) = (0.0_f64, 0.0_f64, 0.0_f64);
    for curve in numbers[2..].chunks_exact(6) {
        // A curve bows as far as half way to its handles, and more.
        highest = highest.max(-(y + curve[1].min(curve[3]) / 2.0)).max(-(y + curve[5]));
        (x, y) = (x + curve[4], y + curve[5]);
    }
    (x, highest)
}

#[test]
fn a_turn_of_the_forearm_shows_which_way_it_goes() {
    let id: ExerciseId = "forearm-turn".parse().expect("a name");
    let requests = asks::exercise(&SITTER, &WORKSHOP.library.motions[&id], None, None);
    let [up, down] = &requests[..] else { panic!("{} pictures", requests.len()) };
    let ((up, bow), (down, arch)) = (arrow_of(up), arrow_of(down));
    // Seen from the elbow, the thumb of a right hand goes out to the right when the palm turns up, and back over the top.
    assert!(up > 100.0 && down < -100.0, "palm up {up:.0}, palm down {down:.0} units to the right");
    assert!(bow > 4.0 && arch > 10.0, "the arrows rise {bow:.0} and {arch:.0} units");
}
