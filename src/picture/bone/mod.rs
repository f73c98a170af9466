//! Bones inside the limb, schematic: shafts with wider ends, wrist bones as rounded pieces.
//!
//! Shapes and places are drawn by eye from the trade's common plates; the skeleton's joints and lengths carry them.

mod arm;
mod digits;
mod flat;
mod joint;
mod order;
mod wrist;

pub use flat::Flat;
pub use joint::{Socket, socket};
pub use order::order;

use crate::body::{BoneName, Build, Finger, Segment};
use crate::picture::limb::{Ball, Skeleton, Tube, through};
use crate::picture::space::{Frame, Rotation, Vector};

/// A bone as tubes in space.
#[derive(Clone, Debug)]
pub struct Bone {
    pub name: BoneName,
    /// The finger that it belongs to.
    pub finger: Option<Finger>,
    pub segment: Segment,
    pub tubes: Vec<Tube>,
    /// From the end nearer to the body to the other one.
    pub axis: (Vector, Vector),
}

impl Bone {
    fn new(name: BoneName, finger: Option<Finger>, segment: Segment, axis: (Vector, Vector)) -> Self {
        Self { name, finger, segment, tubes: Vec::new(), axis }
    }

    /// From one end to the other, mm.
    pub fn length(&self) -> f64 {
        (self.axis.1 - self.axis.0).length()
    }

    /// Its frame, with its back where a direction points.
    pub fn frame(&self, back: Vector) -> Frame {
        between(self.axis.0, self.axis.1, back)
    }

    /// Adds a tube through (x, y, z, radius) in a frame.
    fn tube(mut self, frame: &Frame, balls: &[[f64; 4]]) -> Self {
        let balls: Vec<Ball> =
            balls.iter().map(|[x, y, z, r]| Ball { at: frame.point(*x, *y, *z), radius: *r }).collect();
        self.tubes.push(through(self.segment, &balls));
        self
    }
}

/// A frame at one point whose y points to another, with its back where a direction points.
fn between(from: Vector, to: Vector, back: Vector) -> Frame {
    let y = (to - from).unit();
    let z = (back - y * back.dot(y)).unit();
    Frame { origin: from, axes: Rotation { x: y.cross(z), y, z } }
}

/// The bones of a limb.
pub fn bones(skeleton: &Skeleton, build: Build) -> Vec<Bone> {
    let mut all = arm::bones(skeleton);
    all.extend(wrist::bones(skeleton));
    all.extend(digits::bones(skeleton));
    let girth = build.girth();
    for ball in all.iter_mut().flat_map(|bone| &mut bone.tubes).flat_map(|tube| &mut tube.balls) {
        ball.radius *= girth;
    }
    all
}
