//! Lines on a surface along which a value is zero.

use std::collections::HashMap;

use crate::picture::solid::Mesh;
use crate::picture::space::Vector;

/// A line on a surface, point by point, with the direction out of the surface at each.
#[derive(Clone, Debug)]
pub struct Chain {
    pub points: Vec<Vector>,
    pub normals: Vec<Vector>,
    pub closed: bool,
}

/// The lines along which a value given at each point of a mesh is zero. Only faces that `which` takes are looked at.
pub fn isolines(mesh: &Mesh, value: &[f64], which: impl Fn(&[u32; 3]) -> bool) -> Vec<Chain> {
    let positive = |i: u32| value[i as usize] > 0.0;
    let mut nodes: Vec<(Vector, Vector)> = Vec::new();
    let mut numbers: HashMap<(u32, u32), usize> = HashMap::new();
    let mut neighbours: Vec<[usize; 2]> = Vec::new();
    const NONE: usize = usize::MAX;
    for face in &mesh.faces {
        let signs = face.map(positive);
        if signs[0] == signs[1] && signs[1] == signs[2] || !which(face) {
            continue;
        }
        let mut ends = [NONE; 2];
        for (a, b) in [(0, 1), (1, 2), (2, 0)] {
            if signs[a] == signs[b] {
                continue;
            }
            let key = (face[a].min(face[b]), face[a].max(face[b]));
            let number = *numbers.entry(key).or_insert_with(|| {
                let (u, v) = (key.0 as usize, key.1 as usize);
                let share = value[u] / (value[u] - value[v]);
                nodes.push((
                    mesh.points[u].towards(mesh.points[v], share),
                    mesh.normals[u].towards(mesh.normals[v], share).unit(),
                ));
                neighbours.push([NONE; 2]);
                nodes.len() - 1
            });
            let slot = if ends[0] == NONE { 0 } else { 1 };
            ends[slot] = number;
        }
        let [a, b] = ends;
        for (one, other) in [(a, b), (b, a)] {
            if let Some(free) = neighbours[one].iter_mut().find(|n| **n == NONE) {
                *free = other;
            }
        }
    }
    chain(&nodes, &neighbours, NONE)
}

fn chain(nodes: &[(Vector, Vector)], neighbours: &[[usize; 2]], none: usize) -> Vec<Chain> {
    let mut seen = vec![false; nodes.len()];
    let mut chains = Vec::new();
    let ends = (0..nodes.len()).filter(|i| neighbours[*i].contains(&none));
    let starts: Vec<usize> = ends.chain(0..nodes.len()).collect();
    for start in starts {
        if seen[start] {
            continue;
        }
        let mut line = vec![start];
        seen[start] = true;
        let mut at = start;
        while let Some(next) = neighbours[at].iter().copied().find(|n| *n != none && !seen[*n]) {
            seen[next] = true;
            line.push(next);
            at = next;
        }
        let closed = line.len() > 3 && neighbours[at].contains(&start);
        if closed {
            line.push(start);
        }
        if line.len() > 2 {
            chains.push(Chain {
                points: line.iter().map(|i| nodes[*i].0).collect(),
                normals: line.iter().map(|i| nodes[*i].1).collect(),
                closed,
            });
        }
    }
    chains
}
