//! Where the joints of a picture are, for those who measure it.

use crate::body::{Segment, Side};
use crate::picture::view::Dot;

use super::request::{Request, Subject};
use super::stage::{Cast, Stage};
use super::studio::Studio;
use super::{Undrawable, worn_posture};

/// A bone of a picture.
#[derive(Clone, Copy, Debug)]
pub struct Bone {
    pub segment: Segment,
    /// Its ends in units of the picture: the joint nearer to the body and the other one, or the tip.
    pub from: Dot,
    pub to: Dot,
}

/// The bones of a picture, and its units for each millimetre of the limb. Only a hand that stands still can be measured:
/// in a posture, or in an orthosis.
///
/// # Errors
/// As [`super::draw`].
pub fn bones(request: &Request) -> Result<Option<(f64, Vec<Bone>)>, Undrawable> {
    let posture = match &request.subject {
        Subject::Bare(posture) => posture.clone(),
        // Names beside a limb change its place on the paper.
        Subject::Anatomy { posture, structures, .. } if structures.is_empty() => posture.clone(),
        Subject::Worn(worn) => worn_posture(worn, request.finger),
        Subject::Step { .. }
        | Subject::Spots { .. }
        | Subject::Pair { .. }
        | Subject::Exercise { .. }
        | Subject::Anatomy { .. } => return Ok(None),
    };
    let worn = match &request.subject {
        Subject::Worn(worn) => Some(&**worn),
        _ => None,
    };
    let cast = Cast::new(&Studio::default(), request, &posture, worn, &[])?;
    let stage = Stage::new(request, vec![cast]);
    let paper = stage.paper();
    let skeleton = &stage.casts[0].body.skeleton;
    let place = |p| {
        let dot = paper.place(stage.camera.flat(p));
        if request.side == Side::Left { Dot::new(paper.width - dot.x, dot.y) } else { dot }
    };
    let bones = Segment::all()
        .map(|segment| {
            let frame = skeleton.frame(segment);
            let from = match segment {
                Segment::Forearm => frame.point(0.0, -skeleton.length(segment), 0.0),
                _ => frame.origin,
            };
            Bone { segment, from: place(from), to: place(skeleton.end(segment)) }
        })
        .collect();
    Ok(Some((paper.scale, bones)))
}
