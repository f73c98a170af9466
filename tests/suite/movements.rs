//! Pictures of exercises: arrows run beside what moves, tables lie under the limb, what is pinched is pinched.

use palmleaf::body::{Finger, Row, Segment};
use palmleaf::content::Motion;
use palmleaf::ids::ExerciseId;
use palmleaf::picture::asks;
use palmleaf::picture::limb::{Skeleton, met};
use palmleaf::picture::plate::Part;
use palmleaf::picture::scene::{Picture, Studio};
use rayon::prelude::*;

use crate::pictures::{RIGHT, subpaths};
use crate::support::WORKSHOP;

/// The pictures of one exercise.
fn drawn(motion: &Motion) -> Vec<Picture> {
    let studio = Studio::default();
    let requests = asks::exercise(&RIGHT, motion, None, None);
    requests.iter().map(|request| studio.draw(request).expect("a picture")).collect()
}

fn part<'a>(picture: &'a Picture, name: &str) -> Option<&'a Part> {
    picture.drawing.parts.iter().find(|part| part.name == name)
}

/// Places along the lines or curves of a path, line by line.
fn lines(part: &Part) -> Vec<Vec<(f64, f64)>> {
    let text = part.path.text();
    let curved = text.contains('c');
    let places = |points: Vec<(i64, i64)>| -> Vec<(f64, f64)> {
        let points: Vec<(f64, f64)> = points.iter().map(|(x, y)| (*x as f64, *y as f64)).collect();
        if !curved {
            return points;
        }
        let curve = |p: &[(f64, f64)], t: f64| {
            let u = 1.0 - t;
            let mix = |a, b, c, d| u * u * u * a + 3.0 * u * u * t * b + 3.0 * u * t * t * c + t * t * t * d;
            (mix(p[0].0, p[1].0, p[2].0, p[3].0), mix(p[0].1, p[1].1, p[2].1, p[3].1))
        };
        let all = (0..points.len() / 3).flat_map(|i| (0..8).map(move |k| (i * 3, f64::from(k) / 8.0)));
        all.map(|(at, t)| curve(&points[at..at + 4], t)).collect()
    };
    subpaths(text).into_iter().map(|(points, _)| places(points)).collect()
}

/// Whether a point lies inside a filled path.
fn inside(rings: &[Vec<(f64, f64)>], (x, y): (f64, f64)) -> bool {
    let crossings = rings.iter().flat_map(|ring| (0..ring.len()).map(|i| (ring[i], ring[(i + 1) % ring.len()])));
    crossings
        .filter(|((_, ay), (_, by))| (*ay > y) != (*by > y))
        .filter(|((ax, ay), (bx, by))| x < (bx - ax) * (y - ay) / (by - ay) + ax)
        .count()
        % 2
        == 1
}

/// The share of an arrow's shaft that lies on the limb.
fn over(picture: &Picture) -> Option<f64> {
    let (arrow, ground) = (part(picture, "arrow")?, part(picture, "ground")?);
    let (shaft, ground) = (lines(arrow).swap_remove(0), lines(ground));
    Some(shaft.iter().filter(|dot| inside(&ground, **dot)).count() as f64 / shaft.len() as f64)
}

#[test]
fn arrows_run_beside_what_moves() {
    // What strokes the skin, and a thumb that crosses the palm, have their arrows there.
    let across = ["scar-massage", "stroke-towards-heart", "thumb-bend-across"];
    let library = &WORKSHOP.library;
    let checked: Vec<(String, f64)> = library
        .motions
        .par_iter()
        .filter(|(id, _)| !across.contains(&id.as_str()))
        .flat_map_iter(|(id, motion)| {
            let pictures = drawn(motion);
            let shares = pictures.iter().filter_map(over).collect::<Vec<_>>();
            assert!(motion.then.is_empty() || shares.len() == pictures.len(), "{id} has a movement without an arrow");
            shares.into_iter().enumerate().map(move |(i, share)| (format!("{id} {}", i + 1), share))
        })
        .collect();
    let wrong: Vec<_> = checked.iter().filter(|(_, share)| *share > 0.06).collect();
    assert!(checked.len() > 50 && wrong.is_empty(), "{} arrows; over the limb: {wrong:?}", checked.len());
}

#[test]
fn a_table_lies_under_the_limb() {
    let library = &WORKSHOP.library;
    let rests: Vec<_> = library
        .motions
        .iter()
        .filter(|(_, motion)| motion.lies.as_ref().is_some_and(|lie| lie.table.is_some()))
        .collect();
    assert!(rests.len() >= 6, "{} exercises at a table", rests.len());
    rests.par_iter().for_each(|(id, motion)| {
        for picture in drawn(motion) {
            let table = lines(part(&picture, "table").unwrap_or_else(|| panic!("{id} has no table"))).swap_remove(0);
            let ground = lines(part(&picture, "ground").expect("a limb"));
            let (from, to, top) = (table[0].0.min(table[1].0), table[0].0.max(table[1].0), table[0].1);
            assert!((table[0].1 - table[1].1).abs() < 1.5, "the table of {id} is not level");
            // A helping hand stands before a table.
            if motion.helper.is_some() {
                continue;
            }
            let over = ground.iter().flatten().filter(|(x, _)| (from..to).contains(x));
            let lowest = over.map(|(_, y)| *y).fold(f64::NEG_INFINITY, f64::max);
            let gap = top - lowest;
            assert!((-6.0..24.0).contains(&gap), "the limb of {id} lies {gap:.0} units over its table");
        }
    });
}

#[test]
fn a_pinch_leaves_room_for_what_is_held() {
    let mut checked = 0;
    for (id, motion) in &WORKSHOP.library.motions {
        let held = motion.then.iter().filter_map(|stand| stand.meets.as_ref()).any(|meeting| meeting.apart.is_some());
        if held {
            let across = motion.holds.as_ref().map(|held| held.across.get());
            let apart = motion.then.iter().filter_map(|stand| stand.meets.as_ref()?.apart);
            for apart in apart {
                // What is soft is pressed in by the fingers, and is not lost between them.
                assert!(across.is_some_and(|across| across > apart.get() && across < apart.get() * 2.5), "{id}");
                checked += 1;
            }
        }
    }
    assert!(checked >= 2);
    let id: ExerciseId = "key-pinch-putty".parse().expect("a name");
    let motion = &WORKSHOP.library.motions[&id];
    let meeting = motion.then[0].meets.as_ref().expect("a meeting");
    let segment = Segment::Finger(Finger::Index, Row::Middle);
    let posture = {
        let mut posture = palmleaf::picture::limb::Posture::flat();
        for joints in [&motion.start, &motion.then[0].joints] {
            for (name, positions) in joints {
                positions.iter().for_each(|position| posture.set(*name, *position));
            }
        }
        posture
    };
    let off = |gap: f64| {
        let skeleton = Skeleton::new(met(&posture, segment, meeting.at, gap));
        let bone = skeleton.frame(segment);
        let own = bone.local(skeleton.frame(Segment::ThumbDistal).point(0.0, 14.0, 0.0));
        -own.x
    };
    let (bare, with) = (off(0.0), off(9.0));
    assert!(with > bare + 5.0, "the thumb stands {bare:.1} mm off the bone, and {with:.1} with putty between");
}
