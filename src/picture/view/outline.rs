//! Closed outlines of what shows.

use super::{Dot, Raster};

/// Closed outlines round spots, soft at the corners of single spots. Rings that enclose less than `least` square
/// millimetres are left out.
pub fn outlines(raster: &Raster, mask: &[bool], least: f64) -> Vec<Vec<Dot>> {
    /// Past this nothing is softened.
    const MARGIN: usize = 3;
    let rows = || mask.chunks(raster.width);
    let (mut left, mut right) = (usize::MAX, 0);
    let (mut top, mut bottom) = (usize::MAX, 0);
    for (j, row) in rows().enumerate() {
        if let Some(first) = row.iter().position(|set| *set) {
            let last = row.iter().rposition(|set| *set).unwrap_or(first);
            (left, right) = (left.min(first), right.max(last));
            (top, bottom) = (top.min(j), j);
        }
    }
    if left > right {
        return Vec::new();
    }
    // Only what lies about the spots is looked at; one spot of nothing is round the whole.
    let (low_x, low_y) = ((left + 1).saturating_sub(MARGIN), (top + 1).saturating_sub(MARGIN));
    let width = (right + 1 + MARGIN).min(raster.width + 1) + 1 - low_x;
    let height = (bottom + 1 + MARGIN).min(raster.height + 1) + 1 - low_y;
    let mut soft = vec![0.0f32; width * height];
    for (j, row) in rows().enumerate().take(bottom + 1).skip(top) {
        let to = &mut soft[(j + 1 - low_y) * width..][..width];
        for i in left..=right {
            if row[i] {
                to[i + 1 - low_x] = 1.0;
            }
        }
    }
    for _ in 0..2 {
        soften(&mut soft, width, height);
    }
    let mut rings = trace(&soft, width, height, (low_x, low_y));
    for ring in &mut rings {
        for dot in ring.iter_mut() {
            *dot = raster.point(dot.x - 0.5, dot.y - 0.5);
        }
    }
    rings.retain(|ring| area(ring).abs() >= least);
    rings
}

/// Closed outlines of what lies below zero in a box, from a value at each place.
pub fn contours(low: Dot, high: Dot, step: f64, value: impl Fn(Dot) -> f64) -> Vec<Vec<Dot>> {
    let low = low - Dot::new(2.0, 2.0) * step;
    let count = |length: f64| (length / step).ceil().max(1.0) as usize + 5;
    let (width, height) = (count(high.x - low.x), count(high.y - low.y));
    let place = |x: f64, y: f64| low + Dot::new(x, y) * step;
    let mut values = vec![0.0f32; width * height];
    for j in 1..height - 1 {
        for i in 1..width - 1 {
            values[j * width + i] = (0.5 - value(place(i as f64, j as f64))) as f32;
        }
    }
    let mut rings = trace(&values, width, height, (0, 0));
    for ring in &mut rings {
        for dot in ring.iter_mut() {
            *dot = place(dot.x, dot.y);
        }
    }
    rings
}

/// The area inside a closed ring, positive when it runs to the left.
pub fn area(ring: &[Dot]) -> f64 {
    ring.windows(2).map(|pair| pair[0].turn(pair[1])).sum::<f64>() / 2.0
}

/// One pass of a blur of 1 2 1 along both axes.
fn soften(values: &mut [f32], width: usize, height: usize) {
    let mut across = vec![0.0f32; values.len()];
    for (from, to) in values.chunks(width).zip(across.chunks_mut(width)) {
        for (to, three) in to[1..].iter_mut().zip(from.windows(3)) {
            *to = (three[0] + 2.0 * three[1] + three[2]) / 4.0;
        }
        (to[0], to[width - 1]) = (from[0] / 2.0, from[width - 1] / 2.0);
    }
    let row = |j: usize| &across[j * width..][..width];
    for (j, to) in values.chunks_mut(width).enumerate() {
        if j == 0 || j == height - 1 {
            to.iter_mut().zip(row(j)).for_each(|(to, from)| *to = from / 2.0);
            continue;
        }
        let rows = row(j - 1).iter().zip(row(j)).zip(row(j + 1));
        for (to, ((above, own), below)) in to.iter_mut().zip(rows) {
            *to = (above + 2.0 * own + below) / 4.0;
        }
    }
}

/// No node.
const NONE: usize = usize::MAX;

/// The lines of the value one half, as closed rings in lattice places; `low` is the place of the first value.
fn trace(values: &[f32], width: usize, height: usize, low: (usize, usize)) -> Vec<Vec<Dot>> {
    // Each crossed lattice edge is a node; each cell joins its nodes in pairs.
    let mut nodes: Vec<Dot> = Vec::new();
    // The nodes on the edges of this row of cells: those along it, below and above, and those across it.
    let (mut below, mut above, mut across) = (vec![NONE; width], vec![NONE; width], vec![NONE; width]);
    let mut links: Vec<[usize; 2]> = Vec::new();
    let at = |i: usize, j: usize| values[j * width + i];
    let inside = |v: f32| v > 0.5;
    for j in 0..height - 1 {
        std::mem::swap(&mut below, &mut above);
        for edges in [&mut above, &mut across] {
            edges.clear();
            edges.resize(width, NONE);
        }
        for i in 0..width - 1 {
            let corners = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
            let signs = corners.map(inside);
            if signs.iter().all(|s| *s == signs[0]) {
                continue;
            }
            let places = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)];
            let (mut crossed, mut count) = ([NONE; 4], 0);
            for edge in 0..4 {
                let next = (edge + 1) % 4;
                if signs[edge] == signs[next] {
                    continue;
                }
                let (a, b) = (places[edge].min(places[next]), places[edge].max(places[next]));
                let number = match (a.0 == b.0, a.1 == j) {
                    (true, _) => &mut across[a.0],
                    (false, true) => &mut below[a.0],
                    (false, false) => &mut above[a.0],
                };
                if *number == NONE {
                    let (u, v) = (f64::from(at(a.0, a.1)), f64::from(at(b.0, b.1)));
                    let place = |(x, y): (usize, usize)| Dot::new((x + low.0) as f64, (y + low.1) as f64);
                    nodes.push(place(a).towards(place(b), (0.5 - u) / (v - u)));
                    links.push([NONE; 2]);
                    *number = nodes.len() - 1;
                }
                crossed[count] = *number;
                count += 1;
            }
            // In a saddle the two inside corners stay apart.
            let pairs: &[(usize, usize)] = match (count, signs[0]) {
                (2, _) => &[(0, 1)],
                (_, true) => &[(0, 3), (1, 2)],
                (_, false) => &[(0, 1), (2, 3)],
            };
            for &(a, b) in pairs {
                let (a, b) = (crossed[a], crossed[b]);
                for (one, other) in [(a, b), (b, a)] {
                    if let Some(free) = links[one].iter_mut().find(|n| **n == NONE) {
                        *free = other;
                    }
                }
            }
        }
    }
    let mut seen = vec![false; nodes.len()];
    let mut rings = Vec::new();
    for start in 0..nodes.len() {
        if seen[start] {
            continue;
        }
        let mut ring = vec![nodes[start]];
        seen[start] = true;
        let mut here = start;
        while let Some(next) = links[here].iter().copied().find(|n| *n != NONE && !seen[*n]) {
            seen[next] = true;
            ring.push(nodes[next]);
            here = next;
        }
        if ring.len() > 3 {
            ring.push(nodes[start]);
            rings.push(ring);
        }
    }
    rings
}
