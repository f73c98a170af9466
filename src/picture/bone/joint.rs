//! Where a joint lies and how large it is.

use crate::body::{Joint, Knuckle, Row, Segment};
use crate::picture::limb::Skeleton;
use crate::picture::space::{Rotation, Vector};
use crate::picture::view::{Camera, Dot};

use super::arm;

/// A joint as a rounded body round its line.
#[derive(Clone, Copy, Debug)]
pub struct Socket {
    pub at: Vector,
    /// Its half axes: across, along the limb, and in depth.
    half: [Vector; 3],
    pub segment: Segment,
}

/// The joint of a skeleton. The turning of a forearm is shown between its bones, above the place where the picture ends
/// (y along the forearm).
pub fn socket(skeleton: &Skeleton, joint: Joint, end: f64) -> Socket {
    let segment = Segment::all().find(|segment| Skeleton::joint(*segment) == joint).unwrap_or(Segment::Hand);
    let frame = skeleton.frame(segment);
    let (at, axes, size): (Vector, Rotation, [f64; 3]) = match joint {
        Joint::Elbow => {
            let (at, turn) = arm::hinge(skeleton);
            (at + turn.y * 6.0, turn, [27.0, 13.0, 20.0])
        }
        Joint::Forearm => (Vector::new(1.0, (end * 0.62).max(-112.0), 0.0), frame.axes, [19.0, 6.5, 12.0]),
        Joint::Wrist => (frame.point(0.0, -1.5, 0.0), frame.axes, [21.0, 5.2, 11.0]),
        Joint::ThumbCmc => (frame.point(0.0, 5.5, 0.0), frame.axes, [9.5, 6.0, 9.0]),
        Joint::ThumbMcp => (frame.point(0.0, 2.2, 0.6), frame.axes, [9.6, 6.2, 9.0]),
        Joint::ThumbIp => (frame.point(0.0, 2.0, 0.6), frame.axes, [8.6, 5.6, 7.8]),
        Joint::Mcp(finger) | Joint::Pip(finger) | Joint::Dip(finger) => {
            let row = Row::ALL.into_iter().zip(Knuckle::ALL).find(|(_, knuckle)| knuckle.of(finger) == joint);
            let size = match row.map(|(row, _)| row) {
                Some(Row::Proximal) => [8.4, 5.6, 8.0],
                Some(Row::Middle) => [7.6, 5.0, 7.0],
                _ => [6.8, 4.6, 6.2],
            };
            (frame.point(0.0, 1.6, 0.6), frame.axes, size)
        }
    };
    Socket { at, half: [axes.x * size[0], axes.y * size[1], axes.z * size[2]], segment }
}

impl Socket {
    /// Its outline on the picture plane: middle, and two half axes at right angles, the first across the limb.
    pub fn flat(&self, camera: &Camera) -> (Dot, Dot, Dot) {
        let halves = self.half.map(|half| camera.flat(half));
        let along = halves[1];
        let way = if along.length() > 1.5 { along.unit() } else { Dot::new(0.0, 1.0) };
        let across = way.left();
        let reach =
            |direction: Dot| halves.iter().map(|half| half.dot(direction) * half.dot(direction)).sum::<f64>().sqrt();
        (camera.flat(self.at), across * reach(across), way * reach(way))
    }
}
