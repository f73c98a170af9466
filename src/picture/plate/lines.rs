//! The lines of surfaces: where they turn away from the eye, where they end, where flesh meets flesh.

use crate::body::{Finger, Row, Segment};
use crate::picture::solid::{Field, Near};
use crate::picture::space::Vector;
use crate::picture::view::{Camera, Chain, Dot, Raster, isolines};

use super::surfaces::{Kind, Surface};

/// A visible line on the picture plane.
#[derive(Clone, Debug)]
pub struct Line {
    pub dots: Vec<Dot>,
    pub closed: bool,
}

/// The runs of a chain where `shows` holds, as flat lines of at least `least` mm. Gaps shorter than 1.5 mm are closed.
pub fn runs(camera: &Camera, chain: &Chain, shows: &[bool], least: f64) -> Vec<Line> {
    let flat: Vec<Dot> = chain.points.iter().map(|p| camera.flat(*p)).collect();
    let n = flat.len();
    let mut shows = shows.to_vec();
    let length = |a: usize, b: usize| flat[a..=b].windows(2).map(|pair| pair[0].distance(pair[1])).sum::<f64>();
    let mut start = 0;
    while start < n {
        let mut end = start;
        while end + 1 < n && shows[end + 1] == shows[start] {
            end += 1;
        }
        if !shows[start] && start > 0 && end + 1 < n && length(start - 1, end + 1) < 1.5 {
            shows[start..=end].fill(true);
        }
        start = end + 1;
    }
    if chain.closed && shows.iter().all(|s| *s) {
        return if length(0, n - 1) >= least { vec![Line { dots: flat, closed: true }] } else { Vec::new() };
    }
    // A closed chain that is partly hidden begins where it is hidden.
    let (flat, shows) = match (chain.closed, shows.iter().position(|s| !s)) {
        (true, Some(hidden)) => {
            let turn = |v: &[Dot]| [&v[hidden..n - 1], &v[..=hidden]].concat();
            let turned = [&shows[hidden..n - 1], &shows[..=hidden]].concat();
            (turn(&flat), turned)
        }
        _ => (flat, shows),
    };
    let mut lines = Vec::new();
    let mut at = 0;
    while at < flat.len() {
        let start = at;
        while at < flat.len() && shows[at] {
            at += 1;
        }
        if at > start + 2 {
            let dots = flat[start..at].to_vec();
            if crate::picture::ink::length(&dots) >= least {
                lines.push(Line { dots, closed: false });
            }
        }
        at += 1;
    }
    lines
}

/// Where a surface turns away from the eye and something lies behind the turn.
pub fn turns(camera: &Camera, raster: &Raster, surface: &Surface) -> Vec<Line> {
    let facing: Vec<f64> = surface.mesh.normals.iter().map(|n| n.dot(camera.eye)).collect();
    let drawn = |face: &[u32; 3]| face.iter().any(|i| surface.cut[*i as usize] < 0.0);
    let (least, drop) = match surface.kind {
        // Webbing bends over the edge of a sheet: what lies just behind that bend is the same strap.
        Kind::Strap | Kind::StrapNow => (2.6, 4.0),
        kind if kind.is_thing() => (2.6, 1.0),
        _ => (6.0, 2.6),
    };
    let mut lines = Vec::new();
    for chain in isolines(&surface.mesh, &facing, drawn) {
        let shows: Vec<bool> = chain
            .points
            .iter()
            .zip(&chain.normals)
            .map(|(p, n)| {
                raster.sees(camera, *p, *n) && raster.drop_behind(camera, *p, *n).is_some_and(|behind| behind > drop)
            })
            .collect();
        lines.extend(runs(camera, &chain, &shows, least));
    }
    lines
}

/// Visible parts of the line along which a value on a surface is zero.
pub fn levels(camera: &Camera, raster: &Raster, surface: &Surface, value: &[f64], least: f64) -> Vec<Line> {
    let drawn = |face: &[u32; 3]| face.iter().any(|i| surface.cut[*i as usize] < 0.5);
    levels_where(camera, raster, surface, value, least, drawn)
}

/// The same, and none of it past the edge of the surface.
pub fn levels_inside(camera: &Camera, raster: &Raster, surface: &Surface, value: &[f64], least: f64) -> Vec<Line> {
    let inside = |face: &[u32; 3]| face.iter().all(|i| surface.cut[*i as usize] < 0.0);
    levels_where(camera, raster, surface, value, least, inside)
}

fn levels_where(
    camera: &Camera,
    raster: &Raster,
    surface: &Surface,
    value: &[f64],
    least: f64,
    drawn: impl Fn(&[u32; 3]) -> bool,
) -> Vec<Line> {
    let mut lines = Vec::new();
    for chain in isolines(&surface.mesh, value, drawn) {
        let shows: Vec<bool> = chain
            .points
            .iter()
            .zip(&chain.normals)
            .map(|(p, n)| n.dot(camera.eye) > -0.05 && raster.sees(camera, *p, *n))
            .collect();
        lines.extend(runs(camera, &chain, &shows, least));
    }
    lines
}

/// Groups of segments whose skin can touch: the four fingers, the thumb, the palm; and the bones of one finger.
fn meetings(bent: impl Fn(Segment) -> f64) -> Vec<(Vec<Segment>, Vec<Segment>, bool)> {
    let finger = |f: Finger| Row::ALL.map(|row| Segment::Finger(f, row)).to_vec();
    let thumb = vec![Segment::ThumbProximal, Segment::ThumbDistal];
    let palm = vec![Segment::Forearm, Segment::Hand, Segment::ThumbMetacarpal];
    let mut pairs = Vec::new();
    for (i, one) in Finger::ALL.iter().copied().enumerate() {
        for other in Finger::ALL.iter().copied().skip(i + 1) {
            pairs.push((finger(one), finger(other), true));
        }
        pairs.push((finger(one), thumb.clone(), false));
        let [proximal, middle, distal] = Row::ALL.map(|row| Segment::Finger(one, row));
        pairs.push((vec![middle, distal], palm.clone(), false));
        pairs.push((vec![distal], vec![proximal], false));
        if bent(middle) > 45.0 {
            pairs.push((vec![middle], vec![proximal], false));
        }
        if bent(distal) > 40.0 {
            pairs.push((vec![distal], vec![middle], false));
        }
    }
    pairs.push((vec![Segment::ThumbDistal], palm, false));
    pairs
}

/// How near skin is to skin that it may touch, mm.
const CLOSE: f64 = 3.0;

/// Where flesh meets flesh.
pub fn contacts(
    camera: &Camera,
    raster: &Raster,
    skin: &Surface,
    field: &Field,
    bent: impl Fn(Segment) -> f64,
) -> Vec<Line> {
    // Points come block by block.
    let by = field.walk(0.0).segments(&skin.mesh.points);
    let group = |segments: &[Segment]| -> Vec<f64> {
        by.iter().map(|d| segments.iter().map(|s| d[s.index()]).fold(f64::INFINITY, f64::min)).collect()
    };
    let palm = group(&[Segment::Forearm, Segment::Hand, Segment::ThumbMetacarpal]);
    let roots = group(&Finger::ALL.iter().map(|f| Segment::Finger(*f, Row::Proximal)).collect::<Vec<_>>());
    let ends = group(
        &Finger::ALL
            .iter()
            .flat_map(|f| [Segment::Finger(*f, Row::Middle), Segment::Finger(*f, Row::Distal)])
            .collect::<Vec<_>>(),
    );
    // In the web between the first bones skin flows from finger to finger without a fold.
    let in_web = |i: usize| palm[i] < 2.5 && roots[i] < ends[i];
    // Of each point, a bit for each segment whose skin is near.
    let close: Vec<u32> = by
        .iter()
        .map(|d| d.iter().enumerate().filter(|(_, d)| **d < CLOSE).fold(0, |bits, (number, _)| bits | 1 << number))
        .collect();
    let bits = |segments: &[Segment]| segments.iter().fold(0, |bits: u32, segment| bits | 1 << segment.index());
    let mut walk = field.walk(3.0);
    let mut lines = Vec::new();
    for (one, other, fingers) in meetings(bent) {
        let own = (bits(&one), bits(&other));
        if !close.iter().any(|close| close & own.0 != 0 && close & own.1 != 0) {
            continue;
        }
        let (a, b) = (group(&one), group(&other));
        let near = |i: usize| a[i] < CLOSE && b[i] < CLOSE && !(fingers && in_web(i));
        if !(0..a.len()).any(near) {
            continue;
        }
        let difference: Vec<f64> = a.iter().zip(&b).map(|(x, y)| x - y).collect();
        let which = |face: &[u32; 3]| {
            face.iter().any(|i| near(*i as usize)) && face.iter().any(|i| skin.cut[*i as usize] < 0.0)
        };
        for chain in isolines(&skin.mesh, &difference, which) {
            let shows: Vec<bool> = chain
                .points
                .iter()
                .zip(&chain.normals)
                .map(|(p, n)| is_fold(walk.at(*p), *p, *n) && raster.sees(camera, *p + *n * 0.8, *n))
                .collect();
            lines.extend(runs(camera, &chain, &shows, if fingers { 9.0 } else { 5.0 }));
        }
    }
    lines
}

/// Whether the skin is hollow here: two millimetres out, the surface is nearer than that.
fn is_fold(near: &Near, p: Vector, out: Vector) -> bool {
    near.distance(p + out * 2.0) < 1.84
}
