//! Few curves through many points.
//!
//! Method: P. J. Schneider, *An Algorithm for Automatically Fitting Digitized Curves*, Graphics Gems, 1990. Written out
//! here with square roots as its only irrational step, so that it gives the same curves on every machine.

use crate::picture::view::Dot;

/// A cubic curve: start, two handles, end.
pub type Cubic = [Dot; 4];

/// Curves that stay within `error` of the points. At corners sharper than about 60 degrees the line is broken.
pub fn fit(points: &[Dot], error: f64) -> Vec<Cubic> {
    let mut clean: Vec<Dot> = Vec::with_capacity(points.len());
    for point in points {
        if clean.last().is_none_or(|last| last.distance(*point) > 1e-6) {
            clean.push(*point);
        }
    }
    let mut curves = Vec::new();
    if clean.len() < 2 {
        return curves;
    }
    let mut start = 0;
    let reach = 3;
    let mut i = reach;
    while i + reach < clean.len() {
        let (before, after) = (clean[i] - clean[i - reach], clean[i + reach] - clean[i]);
        let cosine = before.unit().dot(after.unit());
        if cosine < 0.45 && i > start + 4 && is_sharpest(&clean, i, reach) {
            piece(&clean[start..=i], error, &mut curves);
            start = i;
            i += reach;
        }
        i += 1;
    }
    piece(&clean[start..], error, &mut curves);
    curves
}

fn is_sharpest(points: &[Dot], i: usize, reach: usize) -> bool {
    let cosine = |k: usize| {
        let before = points[k] - points[k.saturating_sub(reach)];
        let after = points[(k + reach).min(points.len() - 1)] - points[k];
        before.unit().dot(after.unit())
    };
    let here = cosine(i);
    (i.saturating_sub(2)..=(i + 2).min(points.len() - 1)).all(|k| here <= cosine(k) + 1e-12)
}

fn piece(points: &[Dot], error: f64, curves: &mut Vec<Cubic>) {
    let n = points.len();
    let start = (points[2.min(n - 1)] - points[0]).unit();
    let end = (points[n.saturating_sub(3)] - points[n - 1]).unit();
    split(points, error, start, end, curves, 0);
}

fn split(points: &[Dot], error: f64, start: Dot, end: Dot, curves: &mut Vec<Cubic>, depth: usize) {
    let n = points.len();
    let (first, last) = (points[0], points[n - 1]);
    if n <= 2 || depth > 14 {
        let third = first.distance(last) / 3.0;
        curves.push([first, first + start * third, last + end * third, last]);
        return;
    }
    let mut places = vec![0.0];
    for pair in points.windows(2) {
        let walked = places.last().copied().unwrap_or_default();
        places.push(walked + pair[0].distance(pair[1]));
    }
    let total = places[n - 1];
    places.iter_mut().for_each(|p| *p /= total);
    let mut worst = n / 2;
    for _ in 0..5 {
        let curve = best(points, &places, start, end);
        let mut most = 0.0;
        for (point, place) in points.iter().zip(&places) {
            let off = at(&curve, *place).distance(*point);
            if off > most {
                most = off;
                worst = places.iter().position(|p| p == place).unwrap_or(worst);
            }
        }
        if most < error {
            curves.push(curve);
            return;
        }
        if most > error * 16.0 {
            break;
        }
        reparametrise(points, &mut places, &curve);
    }
    let middle = worst.clamp(1, n - 2);
    let direction = (points[middle.saturating_sub(2)] - points[(middle + 2).min(n - 1)]).unit();
    split(&points[..=middle], error, start, direction, curves, depth + 1);
    split(&points[middle..], error, direction * -1.0, end, curves, depth + 1);
}

/// The curve with these end directions that lies nearest to the points at their places.
fn best(points: &[Dot], places: &[f64], start: Dot, end: Dot) -> Cubic {
    let (first, last) = (points[0], points[points.len() - 1]);
    let chord = first.distance(last);
    let (mut c00, mut c01, mut c11, mut x0, mut x1) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (point, u) in points.iter().zip(places) {
        let v = 1.0 - u;
        let (b0, b1, b2, b3) = (v * v * v, 3.0 * u * v * v, 3.0 * u * u * v, u * u * u);
        let (a1, a2) = (start * b1, end * b2);
        let rest = *point - first * (b0 + b1) - last * (b2 + b3);
        c00 += a1.dot(a1);
        c01 += a1.dot(a2);
        c11 += a2.dot(a2);
        x0 += a1.dot(rest);
        x1 += a2.dot(rest);
    }
    let determinant = c00 * c11 - c01 * c01;
    let (mut left, mut right) = (chord / 3.0, chord / 3.0);
    if determinant.abs() > 1e-12 {
        let (l, r) = ((x0 * c11 - x1 * c01) / determinant, (c00 * x1 - c01 * x0) / determinant);
        if l > chord * 1e-3 && r > chord * 1e-3 && l.max(r) < 3.0 * chord {
            (left, right) = (l, r);
        }
    }
    [first, first + start * left, last + end * right, last]
}

fn at(curve: &Cubic, u: f64) -> Dot {
    let v = 1.0 - u;
    curve[0] * (v * v * v) + curve[1] * (3.0 * u * v * v) + curve[2] * (3.0 * u * u * v) + curve[3] * (u * u * u)
}

/// One step of Newton's method for each point towards the place on the curve that is nearest to it.
fn reparametrise(points: &[Dot], places: &mut [f64], curve: &Cubic) {
    let [p0, p1, p2, p3] = *curve;
    let (d0, d1, d2) = ((p1 - p0) * 3.0, (p2 - p1) * 3.0, (p3 - p2) * 3.0);
    let (e0, e1) = ((d1 - d0) * 2.0, (d2 - d1) * 2.0);
    let mut before = 0.0;
    for (point, place) in points.iter().zip(places.iter_mut()) {
        let (u, v) = (*place, 1.0 - *place);
        let off = at(curve, u) - *point;
        let slope = d0 * (v * v) + d1 * (2.0 * u * v) + d2 * (u * u);
        let bend = e0 * v + e1 * u;
        let below = slope.dot(slope) + off.dot(bend);
        if below.abs() > 1e-9 {
            *place = (u - off.dot(slope) / below).clamp(before, 1.0);
        }
        before = *place;
    }
}
