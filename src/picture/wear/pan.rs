//! Sheets that span all four fingers: a pan under them or a roof over them is one sheet, not one for each finger.

use crate::body::{Finger, Row, Segment};
use crate::content::Cover;
use crate::picture::limb::{Ball, Flesh, Skeleton, Tube};
use crate::picture::solid::{Blends, Field};
use crate::picture::space::turn;

/// In how many steps the places along a bone of a finger are bridged to the next finger.
const COUNT: usize = 9;
/// How far past its edge a sheet goes on, so that the edge is cut out of it, mm.
const MORE: f64 = 16.0;
/// How far towards the sheet the middle of a bridge lies, mm: pads are on that side.
const TOWARDS: f64 = 1.5;

/// The row of the fingers that a cover spans.
pub fn row(cover: &Cover) -> Option<Row> {
    match cover.on {
        crate::body::SegmentName::Fingers(row) => Some(row),
        _ => None,
    }
}

/// The flesh with the gaps between the fingers filled where covers span them, and the fingers lengthened to past the
/// edge: what a sheet of one piece is moulded on.
pub fn bridged(skeleton: &Skeleton, flesh: &Flesh, covers: &[Cover]) -> Flesh {
    let mut found = flesh.clone();
    for cover in covers {
        let Some(row) = row(cover) else { continue };
        let middle = cover.around.map_or(180.0, |arc| arc.from.degrees() + arc.sweep() / 2.0);
        let side = turn(middle).1.signum() * TOWARDS;
        let to = cover.span.map_or(1.0, |span| span.to.share());
        let lines: Vec<Vec<Ball>> =
            Finger::ALL.iter().map(|finger| line(skeleton, flesh, *finger, row, to, side)).collect();
        for (finger, pair) in Finger::ALL.iter().zip(lines.windows(2)) {
            // There and back from finger to finger in one tube: inside a tube nothing swells where parts overlap.
            let balls = pair[0].iter().zip(&pair[1]).enumerate();
            let balls = balls.flat_map(|(i, (a, b))| if i % 2 == 0 { [*a, *b] } else { [*b, *a] }).collect();
            found.tubes.push(Tube { segment: Segment::Finger(*finger, row), balls });
        }
    }
    found.tubes.sort_by_key(|tube| tube.segment);
    found
}

/// Balls inside one bone of a finger, as many for every finger; past its tip they go on as far as the sheet does.
fn line(skeleton: &Skeleton, flesh: &Flesh, finger: Finger, row: Row, to: f64, side: f64) -> Vec<Ball> {
    let segment = Segment::Finger(finger, row);
    let frame = skeleton.frame(segment);
    let length = skeleton.length(segment);
    let skin = Field::new(flesh, Blends::SKIN, |own| own == segment);
    let depth = |y: f64| {
        let point = frame.point(0.0, y, side);
        (-skin.near(point, 1.0).distance(point)).max(2.0)
    };
    let (first, last) = match row {
        // The web is flesh of the palm.
        Row::Proximal => (length * 0.3, length),
        Row::Middle => (0.0, length),
        Row::Distal => (0.0, length * to.max(1.0) + MORE),
    };
    // Behind the rounding of the tip the pad is as deep as anywhere.
    let pad = if row == Row::Distal { length * 0.6 } else { length };
    (0..=COUNT)
        .map(|i| {
            let y = first + (last - first) * i as f64 / COUNT as f64;
            Ball { at: frame.point(0.0, y, side), radius: depth(y.min(pad)) }
        })
        .collect()
}
