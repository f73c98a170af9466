//! The surface as triangles.
//!
//! A sparse narrow band: blocks that the surface cannot reach are skipped by their middle, and the others halved until
//! they are small. In each cell that the surface crosses lies one point, moved on to the surface; cells that share a crossed
//! edge are joined.

use crate::picture::space::Vector;

use super::sample::{NearSolid, Solid};

/// A surface of triangles with directions out of it.
#[derive(Clone, Debug, Default)]
pub struct Mesh {
    pub points: Vec<Vector>,
    pub normals: Vec<Vector>,
    pub faces: Vec<[u32; 3]>,
}

/// Cells along an edge of a block that is no longer halved, and of one that is looked at first.
const SMALL: usize = 2;
const WIDE: usize = 16;

/// A box that holds any limb.
pub const EVERYWHERE: (Vector, Vector) = (Vector::new(-1e4, -1e4, -1e4), Vector::new(1e4, 1e4, 1e4));

struct Lattice {
    low: Vector,
    cell: f64,
    /// Lattice points along each axis.
    size: [usize; 3],
    values: Vec<f32>,
    points: Vec<u32>,
}

impl Lattice {
    fn index(&self, i: usize, j: usize, k: usize) -> usize {
        (i * self.size[1] + j) * self.size[2] + k
    }

    fn place(&self, i: usize, j: usize, k: usize) -> Vector {
        self.low + Vector::new(i as f64, j as f64, k as f64) * self.cell
    }
}

/// No point in this cell.
const NONE: u32 = u32::MAX;

/// The surface of a solid inside a box, in cells of a size in millimetres.
pub fn surface<S: Solid>(solid: &S, clip: (Vector, Vector), cell: f64) -> Mesh {
    let (low, high) = solid.bounds();
    let margin = Vector::new(1.0, 1.0, 1.0) * (2.0 * cell);
    let low = (low - margin).max(clip.0);
    let high = (high + margin).min(clip.1);
    let block = WIDE;
    let blocks = |length: f64| ((length / (cell * block as f64)).ceil().max(0.0)) as usize;
    let wide = [blocks(high.x - low.x), blocks(high.y - low.y), blocks(high.z - low.z)];
    if wide.contains(&0) {
        return Mesh::default();
    }
    let size = wide.map(|n| n * block + 1);
    let total = size[0] * size[1] * size[2];
    let mut lattice = Lattice { low, cell, size, values: vec![f32::NAN; total], points: vec![NONE; total] };
    let mut mesh = Mesh::default();
    let mut cells = Vec::new();
    for x in 0..wide[0] {
        for y in 0..wide[1] {
            for z in 0..wide[2] {
                wide_block(solid, [x * block, y * block, z * block], &mut lattice, &mut mesh, &mut cells);
            }
        }
    }
    join(&lattice, &cells, &mut mesh);
    mesh
}

/// Half the diagonal of a cube of edge 1.
const HALF_DIAGONAL: f64 = 0.866_025_403_784_438_6;

fn wide_block<S: Solid>(
    solid: &S,
    corner: [usize; 3],
    lattice: &mut Lattice,
    mesh: &mut Mesh,
    cells: &mut Vec<[usize; 3]>,
) {
    let edge = lattice.cell * WIDE as f64;
    let centre = lattice.place(corner[0], corner[1], corner[2]) + Vector::new(0.5, 0.5, 0.5) * edge;
    let radius = edge * HALF_DIAGONAL;
    if !solid.is_wanted(centre, radius) {
        return;
    }
    let near = solid.near(centre, radius);
    let wanted = |centre: Vector, radius: f64| solid.is_wanted(centre, radius);
    block(&near, &wanted, corner, WIDE, lattice, mesh, cells);
}

/// Looks at a block of so many cells an edge: leaves it, halves it, or samples it.
fn block<N: NearSolid>(
    near: &N,
    wanted: &dyn Fn(Vector, f64) -> bool,
    corner: [usize; 3],
    size: usize,
    lattice: &mut Lattice,
    mesh: &mut Mesh,
    cells: &mut Vec<[usize; 3]>,
) {
    let edge = lattice.cell * size as f64;
    let centre = lattice.place(corner[0], corner[1], corner[2]) + Vector::new(0.5, 0.5, 0.5) * edge;
    let radius = edge * HALF_DIAGONAL;
    if near.distance(centre).abs() > radius || !wanted(centre, radius) {
        return;
    }
    let nearer = near.nearer(centre, radius);
    if size <= SMALL {
        small_block(&nearer, corner, lattice, mesh, cells);
        return;
    }
    let half = size / 2;
    for octant in 0..8usize {
        let at = |axis: usize| corner[axis] + if octant >> axis & 1 == 1 { half } else { 0 };
        block(&nearer, wanted, [at(0), at(1), at(2)], half, lattice, mesh, cells);
    }
}

fn small_block<N: NearSolid>(
    near: &N,
    start: [usize; 3],
    lattice: &mut Lattice,
    mesh: &mut Mesh,
    cells: &mut Vec<[usize; 3]>,
) {
    for i in start[0]..=start[0] + SMALL {
        for j in start[1]..=start[1] + SMALL {
            for k in start[2]..=start[2] + SMALL {
                let at = lattice.index(i, j, k);
                if lattice.values[at].is_nan() {
                    lattice.values[at] = near.distance(lattice.place(i, j, k)) as f32;
                }
            }
        }
    }
    for i in start[0]..start[0] + SMALL {
        for j in start[1]..start[1] + SMALL {
            for k in start[2]..start[2] + SMALL {
                if let Some(guess) = crossing(lattice, [i, j, k]) {
                    let (point, normal) = settle(near, guess, lattice.cell);
                    let at = lattice.index(i, j, k);
                    lattice.points[at] = mesh.points.len() as u32;
                    mesh.points.push(point);
                    mesh.normals.push(normal);
                    cells.push([i, j, k]);
                }
            }
        }
    }
}

/// The middle of the places where the surface crosses the edges of a cell.
fn crossing(lattice: &Lattice, [i, j, k]: [usize; 3]) -> Option<Vector> {
    let value = |c: usize| f64::from(lattice.values[lattice.index(i + (c & 1), j + (c >> 1 & 1), k + (c >> 2 & 1))]);
    let values: [f64; 8] = std::array::from_fn(value);
    let inside = values.iter().filter(|v| **v < 0.0).count();
    if inside == 0 || inside == 8 {
        return None;
    }
    let (mut sum, mut count) = (Vector::ZERO, 0.0);
    for a in 0..8usize {
        for bit in [1, 2, 4] {
            let b = a | bit;
            if a & bit == 0 && (values[a] < 0.0) != (values[b] < 0.0) {
                let share = values[a] / (values[a] - values[b]);
                let corner = |c: usize| Vector::new((c & 1) as f64, (c >> 1 & 1) as f64, (c >> 2 & 1) as f64);
                sum = sum + corner(a).towards(corner(b), share);
                count += 1.0;
            }
        }
    }
    Some(lattice.place(i, j, k) + sum * (lattice.cell / count))
}

/// Moves a point on to the surface; gives the direction out of it.
fn settle<N: NearSolid>(near: &N, guess: Vector, cell: f64) -> (Vector, Vector) {
    const CORNERS: [Vector; 4] = [
        Vector::new(1.0, -1.0, -1.0),
        Vector::new(-1.0, -1.0, 1.0),
        Vector::new(-1.0, 1.0, -1.0),
        Vector::new(1.0, 1.0, 1.0),
    ];
    let reach = 0.45;
    let (mut slope, mut mean) = (Vector::ZERO, 0.0);
    for corner in CORNERS {
        let value = near.distance(guess + corner * reach);
        slope = slope + corner * value;
        mean += value / 4.0;
    }
    let normal = slope.unit();
    let step = mean.clamp(-0.7 * cell, 0.7 * cell);
    (guess - normal * step, normal)
}

/// Joins the points of the four cells round each crossed edge.
fn join(lattice: &Lattice, cells: &[[usize; 3]], mesh: &mut Mesh) {
    for &[i, j, k] in cells {
        let here = lattice.values[lattice.index(i, j, k)];
        let steps: [[usize; 3]; 3] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];
        for (axis, d) in steps.into_iter().enumerate() {
            let (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
            let cell = [i, j, k];
            if cell[u] == 0 || cell[v] == 0 {
                continue;
            }
            let there = lattice.values[lattice.index(i + d[0], j + d[1], k + d[2])];
            if (here < 0.0) == (there < 0.0) || there.is_nan() {
                continue;
            }
            let at = |du: usize, dv: usize| {
                let mut c = cell;
                c[u] -= du;
                c[v] -= dv;
                lattice.points[lattice.index(c[0], c[1], c[2])]
            };
            let quad = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
            if quad.contains(&NONE) {
                continue;
            }
            let [a, b, c, e] = quad;
            let quad = if here < 0.0 { [a, b, c, e] } else { [a, e, c, b] };
            // The shorter diagonal gives the rounder triangles.
            let length = |p: u32, q: u32| (mesh.points[p as usize] - mesh.points[q as usize]).length();
            if length(quad[0], quad[2]) <= length(quad[1], quad[3]) {
                mesh.faces.extend([[quad[0], quad[1], quad[2]], [quad[0], quad[2], quad[3]]]);
            } else {
                mesh.faces.extend([[quad[0], quad[1], quad[3]], [quad[1], quad[2], quad[3]]]);
            }
        }
    }
}
