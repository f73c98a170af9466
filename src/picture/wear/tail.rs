//! The free end of a strap that is open: a strip that stands off the limb.

use crate::content::{Arc, Tab};
use crate::picture::plate::{Kind, Surface};
use crate::picture::solid::Mesh;

use super::band::Strap;

/// How the name of an open strap's surface ends.
pub const OPEN: &str = "-open";

/// A strip from where the strap is fixed, first along the limb's skin, then curving away from it.
pub fn tail(strap: &Strap<'_>, name: &str, arc: Arc, tab: Tab, kind: Kind) -> Surface {
    let (fixed, way) = match tab {
        Tab::Start => (arc.to.degrees(), -1.0),
        Tab::End | Tab::None => (arc.from.degrees(), 1.0),
    };
    let width = strap.width();
    let length = (arc.sweep() / 57.3 * strap.girth() * strap.breadth() as f64).clamp(18.0, 62.0);
    let segment = strap.segment_at(fixed);
    let hold = 12.0 / strap.girth() * 57.3;
    let (here, out) = strap.foot(segment, fixed);
    let (ahead, _) = strap.foot(segment, fixed + way * hold);
    let across = strap.across();
    let flat = ahead - here;
    let forward = (flat - out * flat.dot(out)).unit();
    let steps = 28usize;
    let mut spine = Vec::with_capacity(steps + 1);
    for i in 0..=steps {
        let s = i as f64 / steps as f64;
        let way_out = if s < 0.2 { 0.0 } else { (s - 0.2) / 0.8 };
        // It peels off the limb and falls outwards.
        let lift = length * (0.85 * way_out - 0.35 * way_out * way_out);
        let run = length * (0.2_f64.min(s) + 0.42 * way_out);
        spine.push(here + forward * run + out * (lift + 0.4));
    }
    let mut mesh = Mesh::default();
    let (mut edge, mut along) = (Vec::new(), Vec::new());
    let rows = 8usize;
    for (i, point) in spine.iter().enumerate() {
        let next = spine[(i + 1).min(steps)];
        let before = spine[i.saturating_sub(1)];
        let normal = across.cross((next - before).unit()).unit();
        for j in 0..=rows {
            let side = (j as f64 / rows as f64 - 0.5) * width;
            // Rounded free end.
            let end = (steps - i) as f64 / steps as f64 * length;
            let corner = 4.0_f64.min(width * 0.3);
            let pull = if end < corner && side.abs() > width / 2.0 - corner {
                let short = corner - end;
                let over = side.abs() - (width / 2.0 - corner);
                ((short * short + over * over).sqrt() - corner).max(0.0)
            } else {
                0.0
            };
            mesh.points.push(*point + across * side);
            mesh.normals.push(normal);
            edge.push((side.abs() - width / 2.0).max(-end).max(pull - corner));
            along.push(end);
        }
    }
    let row = rows + 1;
    for i in 0..steps {
        for j in 0..rows {
            let at = |a: usize, b: usize| (a * row + b) as u32;
            let quad = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
            mesh.faces.extend([[quad[0], quad[1], quad[2]], [quad[0], quad[2], quad[3]]]);
        }
    }
    let cut = vec![-1.0; mesh.points.len()];
    Surface { kind, name: format!("{name}{OPEN}"), mesh, cut, edge, along, end: None }
}
