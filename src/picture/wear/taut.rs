//! A strap over several fingers is drawn tight: it spans from one to the next and dips into no gap between them.

use crate::body::{Finger, Segment};
use crate::content::Band;
use crate::picture::limb::{Ball, Flesh, Tube};
use crate::picture::solid::{Blends, Field};
use crate::picture::space::Vector;

use super::Limb;
use super::clip::section;

/// The flesh with all that lies between the fingers under a band filled: what a tight band lies on. Nothing when it runs
/// over one finger alone.
pub fn spanned(limb: &Limb<'_>, band: &Band) -> Option<Flesh> {
    let [first] = band.on.segments(limb.finger)[..] else { return None };
    let over = band.over.iter().flat_map(|name| name.segments(limb.finger));
    let fingers: Vec<Segment> =
        std::iter::once(first).chain(over).filter(|segment| segment.finger().is_some()).collect();
    let meant = |finger: &Finger| fingers.iter().any(|segment| segment.finger() == Some(*finger));
    if first.finger().is_none() || Finger::ALL.iter().filter(|finger| meant(finger)).count() < 2 {
        return None;
    }
    let half = band.width.get() / 2.0;
    let mut balls = Vec::new();
    for across in [-half, 0.0, half] {
        let cut: Vec<Ball> = fingers.iter().map(|segment| crossed(limb, band, first, *segment, across)).collect();
        // Every pair of fingers is joined, so that what they enclose is filled and its outside is the tightest line.
        for (i, from) in cut.iter().enumerate() {
            for to in &cut[i + 1..] {
                balls.extend([*from, *to]);
            }
        }
    }
    let mut flesh = limb.flesh.clone();
    // One tube: inside a tube nothing swells where parts overlap.
    flesh.tubes.push(Tube { segment: first, balls });
    flesh.tubes.sort_by_key(|tube| tube.segment);
    Some(flesh)
}

/// The greatest ball inside a bone's flesh where a line along the band, so far from its middle, crosses it.
fn crossed(limb: &Limb<'_>, band: &Band, first: Segment, segment: Segment, across: f64) -> Ball {
    let skeleton = limb.skeleton;
    let home = skeleton.frame(first);
    let slope = band.slant.map_or(0.0, |slant| slant.get() / (2.0 * section(first).0.0));
    let past = |p: Vector| {
        let q = home.local(p);
        q.y + slope * q.x - skeleton.along(first, band.at.share()) - across
    };
    let (frame, length) = (skeleton.frame(segment), skeleton.length(segment));
    let middle = |share: f64| frame.point(0.0, share * length, section(segment).1.1);
    let (near, far) = (past(middle(0.0)), past(middle(1.0)));
    let share = if (far - near).abs() > 1e-6 { (-near / (far - near)).clamp(0.0, 1.0) } else { 0.5 };
    let at = middle(share);
    let skin = Field::new(limb.flesh, Blends::SKIN, |own| own == segment);
    Ball { at, radius: (-skin.near(at, 1.0).distance(at)).max(2.0) }
}
