//! Lines of the palm, the wrist and the back of the hand.

use crate::picture::limb::{METACARPAL_BASE, METACARPAL_HEAD, Segment, Spline};
use crate::picture::space::{Frame, Vector};

use super::marks::{Caster, MarkKind, Ray};

/// A smooth curve through points of a plane across the hand, cast to one side of it.
fn sheet(frame: &Frame, through: &[(f64, f64)], start: f64, out: f64) -> Vec<Ray> {
    let mut places = vec![0.0];
    for pair in through.windows(2) {
        let (dx, dy) = (pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
        let walked = places.last().copied().unwrap_or_default();
        places.push(walked + (dx * dx + dy * dy).sqrt());
    }
    let x = Spline::new(&places, through.iter().map(|p| p.0).collect());
    let y = Spline::new(&places, through.iter().map(|p| p.1).collect());
    let total = places.last().copied().unwrap_or_default();
    let direction = frame.axes.apply(Vector::new(0.0, 0.0, out));
    (0..=36)
        .map(|i| total * f64::from(i) / 36.0)
        .map(|u| Ray { from: frame.point(x.at(u), y.at(u), start), out: direction })
        .collect()
}

/// The long lines of the palm, the knuckles' tendons, the wrist's creases and the head of the ulna.
pub fn lines(caster: &mut Caster<'_>) {
    let hand = *caster.skeleton.frame(Segment::Hand);
    let arm = *caster.skeleton.frame(Segment::Forearm);
    let palm: [&[(f64, f64)]; 3] = [
        &[(33.0, 71.0), (20.0, 74.0), (4.0, 79.0), (-6.0, 87.0), (-11.0, 95.0)],
        &[(-38.0, 82.0), (-24.0, 80.0), (-6.0, 73.0), (10.0, 62.0), (20.0, 54.0)],
        &[(-38.0, 80.0), (-26.0, 74.0), (-12.0, 62.0), (-3.0, 46.0), (-1.0, 28.0), (-3.0, 12.0)],
    ];
    for line in palm {
        let rays = sheet(&hand, line, -3.0, -1.0);
        caster.cast(MarkKind::PalmLine, Segment::Hand, &rays, false, 0.35);
    }
    for i in 0..4 {
        let (base, head) = (METACARPAL_BASE[i], METACARPAL_HEAD[i]);
        let tendon: Vec<(f64, f64)> =
            [0.14, 0.26, 0.42].iter().map(|share| head.towards(base, *share)).map(|p| (p.x, p.y)).collect();
        let rays = sheet(&hand, &tendon, 0.0, 1.0);
        caster.cast(MarkKind::Relief, Segment::Hand, &rays, false, 0.45);
    }
    let ulna = sheet(&arm, &[(17.0, -6.0), (14.0, -10.0), (13.6, -16.0), (16.0, -21.0)], 0.0, 1.0);
    caster.cast(MarkKind::Relief, Segment::Forearm, &ulna, false, 0.3);
    for line in
        [&[(-20.0, 0.0), (-8.0, -2.0), (8.0, -2.0), (20.0, 0.0)][..], &[(-16.0, -6.0), (0.0, -8.0), (16.0, -6.0)]]
    {
        let rays = sheet(&arm, line, -3.0, -1.0);
        caster.cast(MarkKind::PalmLine, Segment::Forearm, &rays, false, 0.35);
    }
}
