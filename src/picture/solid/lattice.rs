//! Values at the points of a lattice.

use crate::picture::space::Vector;

/// No point in this cell, no such brick.
pub(super) const NONE: u32 = u32::MAX;

/// Values at lattice points, and the points of the surface in the cells that begin there. Only bricks of the lattice that
/// the surface comes near to take memory.
pub(super) struct Lattice {
    low: Vector,
    pub(super) cell: f64,
    /// Bricks along each axis.
    size: [usize; 3],
    /// The number of each brick.
    bricks: Vec<u32>,
    pub(super) values: Vec<f32>,
    pub(super) points: Vec<u32>,
}

/// Lattice points along an edge of a brick.
const BRICK: usize = 8;

impl Lattice {
    pub(super) fn new(low: Vector, cell: f64, points: [usize; 3]) -> Self {
        let size = points.map(|n| n.div_ceil(BRICK));
        let bricks = vec![NONE; size[0] * size[1] * size[2]];
        Self { low, cell, size, bricks, values: Vec::new(), points: Vec::new() }
    }

    fn brick(&self, [i, j, k]: [usize; 3]) -> usize {
        (i / BRICK * self.size[1] + j / BRICK) * self.size[2] + k / BRICK
    }

    const fn inside([i, j, k]: [usize; 3]) -> usize {
        (i % BRICK * BRICK + j % BRICK) * BRICK + k % BRICK
    }

    /// Where a lattice point is kept, when its brick is there.
    fn known(&self, at: [usize; 3]) -> Option<usize> {
        let brick = self.bricks[self.brick(at)];
        (brick != NONE).then(|| brick as usize * BRICK.pow(3) + Self::inside(at))
    }

    /// Where a lattice point is kept.
    pub(super) fn index(&mut self, at: [usize; 3]) -> usize {
        self.start(self.brick(at)) + Self::inside(at)
    }

    /// Where the values of a brick begin.
    fn start(&mut self, place: usize) -> usize {
        if self.bricks[place] == NONE {
            self.bricks[place] = (self.values.len() / BRICK.pow(3)) as u32;
            self.values.resize(self.values.len() + BRICK.pow(3), f32::NAN);
            self.points.resize(self.points.len() + BRICK.pow(3), NONE);
        }
        self.bricks[place] as usize * BRICK.pow(3)
    }

    /// The value at a lattice point; not a number where none was asked for.
    pub(super) fn value(&self, at: [usize; 3]) -> f32 {
        self.known(at).map_or(f32::NAN, |at| self.values[at])
    }

    /// The point of the surface in a cell, or `NONE`.
    pub(super) fn point(&self, at: [usize; 3]) -> u32 {
        self.known(at).map_or(NONE, |at| self.points[at])
    }

    pub(super) fn place(&self, [i, j, k]: [usize; 3]) -> Vector {
        self.low + Vector::new(i as f64, j as f64, k as f64) * self.cell
    }

    /// Takes over what another one of the same box knows; its points get numbers from `first` on.
    pub(super) fn take(&mut self, other: &Self, first: u32) {
        const WHOLE: usize = BRICK.pow(3);
        for place in 0..other.bricks.len() {
            if other.bricks[place] == NONE {
                continue;
            }
            let (mine, theirs) = (self.start(place), other.bricks[place] as usize * WHOLE);
            for i in 0..WHOLE {
                let (value, point) = (other.values[theirs + i], other.points[theirs + i]);
                if !value.is_nan() {
                    self.values[mine + i] = value;
                }
                if point != NONE {
                    self.points[mine + i] = point + first;
                }
            }
        }
    }
}
