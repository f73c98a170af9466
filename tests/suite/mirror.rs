//! The left hand is the right one in a mirror, to the last unit; only what is read stays upright.

use palmleaf::body::{Finger, Side, View};
use palmleaf::content::Extent;
use palmleaf::picture::album::Album;
use palmleaf::picture::asks;
use palmleaf::picture::ink::PathText;
use palmleaf::picture::inside;
use palmleaf::picture::limb::Posture;
use palmleaf::picture::scene::{Even, Picture, Request, Studio};
use palmleaf::picture::view::Dot;
use rayon::prelude::*;

use crate::pictures::{RIGHT, subpaths};
use crate::support::WORKSHOP;

/// A picture of everything that has a look.
fn everything() -> Vec<(String, Request)> {
    let library = &WORKSHOP.library;
    let mut found = Vec::new();
    for id in library.shapes.keys() {
        let worn = asks::worn(library, id, Finger::Index).expect("a look");
        found.push((id.to_string(), asks::orthosis(&RIGHT, &worn, None)));
        let places = asks::places(library, id);
        // Steps and spots are drawn by the same engine for all: some of them show whether it mirrors.
        if found.len() % 5 > 0 {
            continue;
        }
        let spots = asks::spots(&RIGHT, &worn, &places, None);
        found.extend(spots.into_iter().take(1).map(|request| (format!("{id} spots"), request)));
        let steps = asks::steps(&RIGHT, library, &worn, asks::Way::On, None);
        found.extend(steps.into_iter().take(1).map(|step| (format!("{id} {}", step.id), step.request)));
        let pairs = worn.shape.faults.iter().take(1).flat_map(|fault| asks::pair(&RIGHT, &worn, fault, None));
        found.extend(pairs.map(|(wrong, request)| (format!("{id} fault {wrong}"), request)));
    }
    for (id, condition) in library.conditions.iter().step_by(9) {
        let all = inside::condition(&RIGHT, library, condition, &|_| (300, 90), (400, 60), None);
        found.extend(all.into_iter().map(|one| (id.to_string(), one.request)));
    }
    for (id, motion) in library.motions.iter().step_by(4) {
        let requests = asks::exercise(&RIGHT, motion, None, None);
        found.extend(requests.into_iter().map(|request| (id.to_string(), request)));
    }
    found
}

#[test]
fn a_path_in_a_mirror_is_written_as_any_path() {
    let drawn = |points: &[(f64, f64)]| {
        let mut path = PathText::default();
        path.polygon(&points.iter().map(|(x, y)| Dot::new(*x, *y)).collect::<Vec<_>>());
        path.polyline(&points.iter().map(|(x, y)| Dot::new(*x, *y)).collect::<Vec<_>>());
        path
    };
    let path = drawn(&[(10.0, -5.0), (130.0, 20.0), (-4.0, 20.0)]);
    let mirror = drawn(&[(90.0, -5.0), (-30.0, 20.0), (104.0, 20.0)]);
    assert_eq!(path.mirrored(100).text(), mirror.text());
    assert_eq!(path.mirrored(100).mirrored(100).text(), path.text());
    assert_eq!(path.mirrored(100).nodes, path.nodes);
    // From -4 to 130 it is as wide as from -30 to 104.
    assert_eq!(path.moved(100).text(), drawn(&[(-16.0, -5.0), (104.0, 20.0), (-30.0, 20.0)]).text());
}

#[test]
fn kept_pictures_serve_both_hands() {
    let folder = tempfile::tempdir().expect("a folder");
    let right = asks::posture(&RIGHT, Posture::flat(), View::Turned, Extent::Hand);
    let left = Request { side: Side::Left, ..right.clone() };
    let album = Album::new(Some(folder.path().to_owned()));
    let (one, other) = (album.get(&right).expect("right"), album.get(&left).expect("left"));
    assert_eq!(mirrored(&one, &other), Ok(()));
    let kept = std::fs::read_dir(folder.path()).expect("a folder").flatten();
    let kept = kept.filter(|file| file.path().extension().is_some_and(|ending| ending == "picture"));
    assert_eq!(kept.count(), 1);
}

#[test]
fn the_left_is_the_right_in_a_mirror() {
    let wrong: Vec<String> = everything()
        .par_iter()
        .filter_map(|(name, right)| {
            let left = Request { side: Side::Left, ..right.clone() };
            let studio = Studio::default();
            let (right, left) = (studio.draw(right).expect("right"), studio.draw(&left).expect("left"));
            mirrored(&right, &left).err().map(|why| format!("{name}: {why}"))
        })
        .collect();
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), everything().len(), wrong.join("\n"));
}

/// The points of a path, in a mirror when a width is given.
fn ways(text: &str, mirror: Option<i64>) -> Vec<(Vec<(i64, i64)>, bool)> {
    let mut all = subpaths(text);
    for (x, _) in all.iter_mut().flat_map(|(points, _)| points) {
        *x = mirror.map_or(*x, |width| width - *x);
    }
    all
}

/// A tick or a cross stands where its mirror image would, but is not turned round.
fn upright(text: &str, width: i64) -> Vec<(Vec<(i64, i64)>, bool)> {
    let mut all = subpaths(text);
    let xs = all.iter().flat_map(|(points, _)| points).map(|(x, _)| *x);
    let (low, high) = (xs.clone().min().expect("a point"), xs.max().expect("a point"));
    all.iter_mut().flat_map(|(points, _)| points).for_each(|(x, _)| *x += width - low - high);
    all
}

/// What keeps the left picture from being the right one in a mirror, to the last unit.
fn mirrored(right: &Picture, left: &Picture) -> Result<(), String> {
    if right.drawing.width.fract() != 0.0 {
        return Err(format!("{} units are no whole breadth", right.drawing.width));
    }
    if right.drawing.width != left.drawing.width || right.drawing.height != left.drawing.height {
        return Err("the sizes differ".to_owned());
    }
    if right.drawing.parts.len() != left.drawing.parts.len() {
        return Err("the parts differ".to_owned());
    }
    for (one, other) in right.drawing.parts.iter().zip(&left.drawing.parts) {
        if one.name != other.name || one.style != other.style {
            return Err(format!("{} is not {}", one.name, other.name));
        }
        let width = right.drawing.width as i64;
        let (own, other) = (one.path.text(), other.path.text());
        let wanted = if one.name.starts_with("sign-") { upright(own, width) } else { ways(own, Some(width)) };
        if wanted != ways(other, None) {
            return Err(format!("{} is not mirrored", one.name));
        }
    }
    if right.labels.len() != left.labels.len() {
        return Err("the labels differ".to_owned());
    }
    for (one, other) in right.labels.iter().zip(&left.labels) {
        let faces = match one.even {
            Even::Left => Even::Right,
            Even::Right => Even::Left,
            Even::Neither => Even::Neither,
        };
        let at = (right.drawing.width - one.at.x, one.at.y);
        if one.text != other.text || at != (other.at.x, other.at.y) || faces != other.even || one.wide != other.wide {
            return Err(format!("the label {:?} is not mirrored", one.text));
        }
    }
    Ok(())
}
