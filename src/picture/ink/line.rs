//! Polylines: length, even steps, smoothing along their length.

use crate::picture::view::Dot;

/// The length of a line.
pub fn length(line: &[Dot]) -> f64 {
    line.windows(2).map(|pair| pair[0].distance(pair[1])).sum()
}

/// The same line in even steps of about this length; both ends stay.
pub fn resample(line: &[Dot], step: f64) -> Vec<Dot> {
    let total = length(line);
    let count = (total / step).floor().max(2.0) as usize;
    let mut found = Vec::with_capacity(count + 1);
    let (mut at, mut walked) = (0, 0.0);
    for i in 0..=count {
        let want = total * i as f64 / count as f64;
        while at + 2 < line.len() && walked + line[at].distance(line[at + 1]) < want {
            walked += line[at].distance(line[at + 1]);
            at += 1;
        }
        let Some((a, b)) = line.get(at).zip(line.get(at + 1)) else { break };
        let part = a.distance(*b);
        let share = if part < 1e-12 { 0.0 } else { ((want - walked) / part).clamp(0.0, 1.0) };
        found.push(a.towards(*b, share));
    }
    found
}

/// A closed ring cut open where a part of it is gone: the runs of more than `least` points that are left. Nothing when all
/// of it stays.
pub fn opened(ring: &[Dot], gone: impl Fn(Dot) -> bool, least: usize) -> Option<Vec<Vec<Dot>>> {
    let gone: Vec<bool> = ring.iter().map(|dot| gone(*dot)).collect();
    let start = gone.iter().position(|gone| *gone)?;
    // The last point repeats the first.
    let n = ring.len() - 1;
    let turned: Vec<(Dot, bool)> = (0..=n).map(|i| (ring[(start + i) % n], gone[(start + i) % n])).collect();
    let runs = turned.split(|(_, gone)| *gone).filter(|run| run.len() > least);
    Some(runs.map(|run| run.iter().map(|(dot, _)| *dot).collect()).collect())
}

/// A line smoothed along its length by a bell curve of so many steps. An open line keeps its ends; a closed one, whose
/// last point repeats its first, has none.
pub fn smooth(line: &[Dot], steps: f64, closed: bool) -> Vec<Dot> {
    if line.len() < 4 || steps <= 0.0 {
        return line.to_vec();
    }
    let reach = (3.0 * steps).ceil() as usize;
    let bell: Vec<f64> = (0..=reach).map(|i| libm::exp(-0.5 * (i as f64 / steps) * (i as f64 / steps))).collect();
    let weight: f64 = bell[0] + 2.0 * bell[1..].iter().sum::<f64>();
    let n = if closed { line.len() - 1 } else { line.len() };
    let last = n - 1;
    let at = |i: isize| -> Dot {
        let n = n as isize;
        if closed {
            line[i.rem_euclid(n) as usize]
        } else if i < 0 {
            // Past an end the line goes on as its mirror image, so that the end stays.
            line[0] * 2.0 - line[(-i).min(n - 1) as usize]
        } else if i >= n {
            line[last] * 2.0 - line[(2 * (n - 1) - i).max(0) as usize]
        } else {
            line[i as usize]
        }
    };
    let mut found: Vec<Dot> = (0..n as isize)
        .map(|i| {
            let mut sum = at(i) * bell[0];
            for (k, share) in bell.iter().enumerate().skip(1) {
                sum = sum + (at(i - k as isize) + at(i + k as isize)) * *share;
            }
            sum * (1.0 / weight)
        })
        .collect();
    if closed {
        found.push(found[0]);
    } else {
        found[0] = line[0];
        found[last] = line[last];
    }
    found
}
