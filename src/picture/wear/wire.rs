//! Wires and cords.

use crate::body::Segment;
use crate::content::{Strand, Wire};
use crate::picture::limb::{Ball, Flesh, Tube};
use crate::picture::plate::{Kind, Surface};
use crate::picture::solid::{Blends, EVERYWHERE, Field, lifted, surface};
use crate::picture::space::Vector;

use super::Limb;
use super::place::resolve;
use super::sheet::Moulded;

/// A wire through its places, lifted off the skin and the sheets where it would sink into them.
pub fn strand(limb: &Limb<'_>, wire: &Wire, sheets: &[Moulded], name: &str) -> Option<Surface> {
    let places: Vec<Vector> =
        wire.through.iter().filter_map(|point| resolve(limb, point).first().map(|place| place.at)).collect();
    if places.len() < 2 {
        return None;
    }
    let radius = wire.width.get() / 2.0;
    let mut points = curve(&places, wire.closed);
    for point in &mut points {
        let skin = |p: Vector| limb.skin.near(p, 4.0).distance(p);
        let ground = |p: Vector| sheets.iter().fold(skin(p), |ground, sheet| ground.min(sheet.distance(p)));
        *point = lifted(*point, radius * 0.7, 0.05, skin, ground);
    }
    let balls = points.into_iter().map(|at| Ball { at, radius }).collect();
    let flesh =
        Flesh { tubes: vec![Tube { segment: Segment::Finger(limb.finger, crate::body::Row::Proximal), balls }] };
    let field = Field::new(&flesh, Blends::SKIN, |_| true);
    let mesh = surface(&field, EVERYWHERE, (radius * 0.7).clamp(0.35, 1.2));
    let cut = vec![-1.0; mesh.points.len()];
    let kind = match wire.kind {
        Strand::Metal => Kind::Wire,
        Strand::Cord => Kind::Cord,
    };
    Some(Surface::new(kind, name, mesh, cut))
}

/// A smooth curve through points (Catmull and Rom, by chord length).
pub fn curve(points: &[Vector], closed: bool) -> Vec<Vector> {
    let n = points.len();
    let at = |i: isize| -> Vector {
        let n = n as isize;
        if closed {
            points[i.rem_euclid(n) as usize]
        } else if i < 0 {
            points[0] * 2.0 - points[1]
        } else if i >= n {
            points[n as usize - 1] * 2.0 - points[n as usize - 2]
        } else {
            points[i as usize]
        }
    };
    if n == 2 {
        let count = ((points[1] - points[0]).length() / 1.5).ceil().max(1.0) as usize;
        return (0..=count).map(|i| points[0].towards(points[1], i as f64 / count as f64)).collect();
    }
    let parts = if closed { n } else { n - 1 };
    let mut found = Vec::new();
    for i in 0..parts as isize {
        let (a, b, c, d) = (at(i - 1), at(i), at(i + 1), at(i + 2));
        let count = ((c - b).length() / 1.2).ceil().clamp(2.0, 60.0) as usize;
        for k in 0..count {
            let t = k as f64 / count as f64;
            let (t2, t3) = (t * t, t * t * t);
            let p = b * 2.0 + (c - a) * t + (a * 2.0 - b * 5.0 + c * 4.0 - d) * t2 + (b * 3.0 - a - c * 3.0 + d) * t3;
            found.push(p * 0.5);
        }
    }
    found.push(at(parts as isize));
    found
}
