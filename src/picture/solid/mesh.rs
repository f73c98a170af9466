//! The surface as triangles.
//!
//! A sparse narrow band: blocks that the surface cannot reach are skipped by their middle, and the others halved until
//! they are small. In each cell that the surface crosses lies one point, moved on to the surface; cells that share a crossed
//! edge are joined.

use std::sync::atomic::{AtomicUsize, Ordering};

use crate::picture::space::{Points, Vector};

use super::lattice::{Lattice, NONE};
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

/// So many distances are worked out together.
const TOGETHER: usize = 4;

/// A box that holds any limb.
pub const EVERYWHERE: (Vector, Vector) = (Vector::new(-1e4, -1e4, -1e4), Vector::new(1e4, 1e4, 1e4));

/// The surface of a solid inside a box, in cells of a size in millimetres.
///
/// Worked out slab by slab, by two threads where there may be more than one: others often wait for this very surface. A
/// slab knows nothing of its neighbours, so who does which cannot be seen in what comes of it.
pub fn surface<S: Solid + Sync>(solid: &S, clip: (Vector, Vector), cell: f64) -> Mesh {
    let (low, high) = solid.bounds();
    let margin = Vector::new(1.0, 1.0, 1.0) * (2.0 * cell);
    let low = (low - margin).max(clip.0);
    let high = (high + margin).min(clip.1);
    let blocks = |length: f64| ((length / (cell * WIDE as f64)).ceil().max(0.0)) as usize;
    let wide = [blocks(high.x - low.x), blocks(high.y - low.y), blocks(high.z - low.z)];
    if wide.contains(&0) {
        return Mesh::default();
    }
    let points = wide.map(|n| n * WIDE + 1);
    let slabs = slabs(wide[0], |x| {
        let mut slab = Slab::new(Lattice::new(low, cell, points));
        for y in 0..wide[1] {
            for z in 0..wide[2] {
                slab.wide_block(solid, [x, y, z].map(|n| n * WIDE));
            }
        }
        slab
    });
    let mut whole = Slab::new(Lattice::new(low, cell, points));
    slabs.into_iter().for_each(|slab| whole.take(slab));
    whole.joined()
}

/// What each number below a count gives, in order.
fn slabs<T: Send>(count: usize, make: impl Fn(usize) -> T + Sync) -> Vec<T> {
    let next = AtomicUsize::new(0);
    let some = || {
        let numbers =
            std::iter::repeat_with(|| next.fetch_add(1, Ordering::Relaxed)).take_while(|number| *number < count);
        numbers.map(|number| (number, make(number))).collect::<Vec<_>>()
    };
    // No task of the pool: a thread that waits for one takes up another picture, and may need what it is just making.
    let mut found = if count < 2 || rayon::current_num_threads() < 2 {
        some()
    } else {
        std::thread::scope(|scope| {
            let helper = std::thread::Builder::new().spawn_scoped(scope, some);
            let mut found = some();
            match helper.map(std::thread::ScopedJoinHandle::join) {
                Ok(Ok(others)) => found.extend(others),
                Ok(Err(panic)) => std::panic::resume_unwind(panic),
                // No thread could be begun: everything is done already.
                Err(_) => {}
            }
            found
        })
    };
    found.sort_by_key(|(number, _)| *number);
    found.into_iter().map(|(_, made)| made).collect()
}

/// Half the diagonal of a cube of edge 1.
const HALF_DIAGONAL: f64 = 0.866_025_403_784_438_6;

/// A part of the surface, and what was worked out for it.
struct Slab {
    lattice: Lattice,
    mesh: Mesh,
    cells: Vec<[usize; 3]>,
}

impl Slab {
    fn new(lattice: Lattice) -> Self {
        Self { lattice, mesh: Mesh::default(), cells: Vec::new() }
    }

    /// The middle of a block of so many cells an edge, and the radius of the ball round it.
    fn ball(&self, corner: [usize; 3], size: usize) -> (Vector, f64) {
        let edge = self.lattice.cell * size as f64;
        (self.lattice.place(corner) + Vector::new(0.5, 0.5, 0.5) * edge, edge * HALF_DIAGONAL)
    }

    fn wide_block<S: Solid>(&mut self, solid: &S, corner: [usize; 3]) {
        let (centre, radius) = self.ball(corner, WIDE);
        if !solid.is_wanted(centre, radius) {
            return;
        }
        let near = solid.near(centre, radius);
        let wanted = |centre: Vector, radius: f64| solid.is_wanted(centre, radius);
        self.block(&near, &wanted, corner, WIDE);
    }

    /// Looks at a block of so many cells an edge: leaves it, halves it, or samples it.
    fn block<N: NearSolid>(&mut self, near: &N, wanted: &dyn Fn(Vector, f64) -> bool, corner: [usize; 3], size: usize) {
        let (centre, radius) = self.ball(corner, size);
        if near.distance(centre).abs() > radius || !wanted(centre, radius) {
            return;
        }
        // The first block has been given what is near it.
        let nearer = (size < WIDE).then(|| near.nearer(centre, radius));
        let near = nearer.as_ref().unwrap_or(near);
        if size <= SMALL {
            self.small_block(near, corner);
            return;
        }
        let half = size / 2;
        for octant in 0..8usize {
            let at = |axis: usize| corner[axis] + if octant >> axis & 1 == 1 { half } else { 0 };
            self.block(near, wanted, [at(0), at(1), at(2)], half);
        }
    }

    fn small_block<N: NearSolid>(&mut self, near: &N, start: [usize; 3]) {
        let Self { lattice, mesh, cells } = self;
        let mut missing = Vec::with_capacity((SMALL + 1).pow(3));
        let corners = cells_of(start, SMALL + 1);
        for at in corners {
            let kept = lattice.index(at);
            if lattice.values[kept].is_nan() {
                missing.push((kept, lattice.place(at)));
            }
        }
        for few in missing.chunks(TOGETHER) {
            let points = std::array::from_fn::<_, TOGETHER, _>(|i| few[i.min(few.len() - 1)].1);
            for ((kept, _), distance) in few.iter().zip(near.distances(&Points::of(points))) {
                lattice.values[*kept] = distance as f32;
            }
        }
        for cell in cells_of(start, SMALL) {
            let value = |c: usize| {
                f64::from(lattice.value([cell[0] + (c & 1), cell[1] + (c >> 1 & 1), cell[2] + (c >> 2 & 1)]))
            };
            let Some((sum, count)) = crossing(&std::array::from_fn(value)) else { continue };
            let guess = lattice.place(cell) + sum * (lattice.cell / count);
            let (point, normal) = settle(near, guess, lattice.cell);
            let at = lattice.index(cell);
            lattice.points[at] = mesh.points.len() as u32;
            mesh.points.push(point);
            mesh.normals.push(normal);
            cells.push(cell);
        }
    }

    /// Takes over what comes after it.
    fn take(&mut self, next: Self) {
        self.lattice.take(&next.lattice, self.mesh.points.len() as u32);
        self.mesh.points.extend(next.mesh.points);
        self.mesh.normals.extend(next.mesh.normals);
        self.cells.extend(next.cells);
    }

    fn joined(mut self) -> Mesh {
        join(&self.lattice, &self.cells, &mut self.mesh);
        self.mesh
    }
}

/// The cells of a cube of so many an edge.
fn cells_of([i, j, k]: [usize; 3], edge: usize) -> impl Iterator<Item = [usize; 3]> {
    (0..edge.pow(3)).map(move |n| [i + n / (edge * edge), j + n / edge % edge, k + n % edge])
}

/// The sum of the places where the surface crosses the edges of a cell, and their count, from the values at its corners.
fn crossing(values: &[f64; 8]) -> Option<(Vector, f64)> {
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
    Some((sum, count))
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
    let values = near.distances(&Points::of(CORNERS.map(|corner| guess + corner * reach)));
    for (corner, value) in CORNERS.into_iter().zip(values) {
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
        let here = lattice.value([i, j, k]);
        let steps: [[usize; 3]; 3] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];
        for (axis, d) in steps.into_iter().enumerate() {
            let (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
            let cell = [i, j, k];
            if cell[u] == 0 || cell[v] == 0 {
                continue;
            }
            let there = lattice.value([i + d[0], j + d[1], k + d[2]]);
            if (here < 0.0) == (there < 0.0) || there.is_nan() {
                continue;
            }
            let at = |du: usize, dv: usize| {
                let mut c = cell;
                c[u] -= du;
                c[v] -= dv;
                lattice.point(c)
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
