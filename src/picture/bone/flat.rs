//! A bone on the picture plane: its outline, and how near it is at each spot.

use crate::picture::limb::Ball;
use crate::picture::solid::{Cone, smooth_min};
use crate::picture::space::Vector;
use crate::picture::view::{Camera, Dot, contours};

use super::Bone;

/// How widely the parts of one bone flow together, mm.
const FLOW: f64 = 4.0;

/// The hull of two balls as the eye sees it: exactly the hull of two circles.
struct Piece {
    cone: Cone,
    ends: [(Dot, f64, f64); 2],
}

impl Piece {
    fn new(camera: &Camera, a: Ball, b: Ball) -> Self {
        let flat = |ball: Ball| {
            let dot = camera.flat(ball.at);
            Ball { at: Vector::new(dot.x, dot.y, 0.0), radius: ball.radius }
        };
        let end = |ball: Ball| (camera.flat(ball.at), camera.depth(ball.at), ball.radius);
        Self { cone: Cone::new(flat(a), flat(b)), ends: [end(a), end(b)] }
    }

    fn depth(&self, p: Dot) -> f64 {
        let [(a, near, wide), (b, far, narrow)] = self.ends;
        let along = b - a;
        let square = along.dot(along);
        let at = |share: f64| {
            let radius = wide + (narrow - wide) * share;
            let off = p.distance(a.towards(b, share));
            near + (far - near) * share + (radius * radius - off * off).max(0.0).sqrt()
        };
        if square < 0.25 { at(0.0).max(at(1.0)) } else { at(((p - a).dot(along) / square).clamp(0.0, 1.0)) }
    }
}

/// A bone on the picture plane.
pub struct Flat<'a> {
    pub bone: &'a Bone,
    tubes: Vec<Vec<Piece>>,
    pub low: Dot,
    pub high: Dot,
    pub axis: (Dot, Dot),
    /// The depth of its middle.
    pub middle: f64,
}

impl<'a> Flat<'a> {
    pub fn new(camera: &Camera, bone: &'a Bone) -> Self {
        let (mut low, mut high) = (Dot::new(1e9, 1e9), Dot::new(-1e9, -1e9));
        for ball in bone.tubes.iter().flat_map(|tube| &tube.balls) {
            let dot = camera.flat(ball.at);
            low = Dot::new(low.x.min(dot.x - ball.radius), low.y.min(dot.y - ball.radius));
            high = Dot::new(high.x.max(dot.x + ball.radius), high.y.max(dot.y + ball.radius));
        }
        let tubes = bone
            .tubes
            .iter()
            .map(|tube| match tube.balls[..] {
                [only] => vec![Piece::new(camera, only, only)],
                _ => tube.balls.windows(2).map(|pair| Piece::new(camera, pair[0], pair[1])).collect(),
            })
            .collect();
        let (from, to) = bone.axis;
        Self {
            bone,
            tubes,
            low,
            high,
            axis: (camera.flat(from), camera.flat(to)),
            middle: camera.depth(from.towards(to, 0.5)),
        }
    }

    /// The distance to the outline, below zero inside.
    pub fn distance(&self, p: Dot) -> f64 {
        let at = Vector::new(p.x, p.y, 0.0);
        let mut found = 1e3f64;
        for tube in &self.tubes {
            let own = tube.iter().map(|piece| piece.cone.distance(at)).fold(1e3, f64::min);
            found = smooth_min(found, own, FLOW);
        }
        found
    }

    /// How near the bone is at a dot that it covers.
    pub fn depth(&self, p: Dot) -> f64 {
        let pieces = self.tubes.iter().flatten();
        let inside = |piece: &&Piece| piece.cone.distance(Vector::new(p.x, p.y, 0.0)) < 0.2;
        let deepest = pieces.filter(inside).map(|piece| piece.depth(p)).fold(f64::MIN, f64::max);
        if deepest > f64::MIN { deepest } else { self.middle }
    }

    pub fn covers(&self, p: Dot) -> bool {
        p.x > self.low.x && p.x < self.high.x && p.y > self.low.y && p.y < self.high.y && self.distance(p) < 0.0
    }

    /// Outlines of the bone, or of the part of it where another distance is below zero too.
    pub fn outlines(&self, within: impl Fn(Dot) -> f64) -> Vec<Vec<Dot>> {
        let step = ((self.high.x - self.low.x).max(self.high.y - self.low.y) / 220.0).clamp(0.35, 0.8);
        contours(self.low, self.high, step, |p| self.distance(p).max(within(p)))
    }
}
