//! Closed outlines of what shows.

use std::collections::HashMap;

use super::{Dot, Raster};

/// Closed outlines round spots, soft at the corners of single spots. Rings that enclose less than `least` square
/// millimetres are left out.
pub fn outlines(raster: &Raster, mask: &[bool], least: f64) -> Vec<Vec<Dot>> {
    let (width, height) = (raster.width + 2, raster.height + 2);
    let mut soft = vec![0.0f32; width * height];
    for j in 0..raster.height {
        for i in 0..raster.width {
            if mask[j * raster.width + i] {
                soft[(j + 1) * width + i + 1] = 1.0;
            }
        }
    }
    for _ in 0..2 {
        soften(&mut soft, width, height);
    }
    let mut rings = trace(&soft, width, height);
    for ring in &mut rings {
        for dot in ring.iter_mut() {
            *dot = raster.point(dot.x - 0.5, dot.y - 0.5);
        }
    }
    rings.retain(|ring| area(ring).abs() >= least);
    rings
}

/// The area inside a closed ring, positive when it runs to the left.
pub fn area(ring: &[Dot]) -> f64 {
    ring.windows(2).map(|pair| pair[0].turn(pair[1])).sum::<f64>() / 2.0
}

/// One pass of a blur of 1 2 1 along both axes.
fn soften(values: &mut [f32], width: usize, height: usize) {
    let pass =
        |values: &[f32], step: usize, inner: &dyn Fn(usize) -> bool| -> Vec<f32> {
            (0..values.len())
                .map(|i| {
                    if inner(i) {
                        (values[i - step] + 2.0 * values[i] + values[i + step]) / 4.0
                    } else {
                        values[i] / 2.0
                    }
                })
                .collect()
        };
    let across = pass(values, 1, &|i| i % width > 0 && i % width < width - 1);
    let down = pass(&across, width, &|i| i / width > 0 && i / width < height - 1);
    values.copy_from_slice(&down);
}

/// The lines of the value one half, as closed rings in lattice places.
fn trace(values: &[f32], width: usize, height: usize) -> Vec<Vec<Dot>> {
    // Each crossed lattice edge is a node; each cell joins its nodes in pairs.
    let mut nodes: Vec<Dot> = Vec::new();
    let mut numbers: HashMap<usize, usize> = HashMap::new();
    let mut links: Vec<[usize; 2]> = Vec::new();
    const NONE: usize = usize::MAX;
    let at = |i: usize, j: usize| values[j * width + i];
    let inside = |v: f32| v > 0.5;
    for j in 0..height - 1 {
        for i in 0..width - 1 {
            let corners = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
            let signs = corners.map(inside);
            if signs.iter().all(|s| *s == signs[0]) {
                continue;
            }
            let places = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)];
            let mut crossed = Vec::with_capacity(4);
            for edge in 0..4 {
                let next = (edge + 1) % 4;
                if signs[edge] == signs[next] {
                    continue;
                }
                let (a, b) = (places[edge].min(places[next]), places[edge].max(places[next]));
                let key = (a.1 * width + a.0) * 2 + usize::from(a.0 == b.0);
                let number = *numbers.entry(key).or_insert_with(|| {
                    let (u, v) = (f64::from(at(a.0, a.1)), f64::from(at(b.0, b.1)));
                    let (p, q) = (Dot::new(a.0 as f64, a.1 as f64), Dot::new(b.0 as f64, b.1 as f64));
                    nodes.push(p.towards(q, (0.5 - u) / (v - u)));
                    links.push([NONE; 2]);
                    nodes.len() - 1
                });
                crossed.push(number);
            }
            // In a saddle the two inside corners stay apart.
            let pairs: &[(usize, usize)] = match (crossed.len(), signs[0]) {
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
