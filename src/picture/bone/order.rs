//! Which bone is drawn before which: far ones first, wherever they cross.

use crate::picture::view::Dot;

use super::Flat;

/// By how much the first bone lies nearer where both show, summed; nothing when they do not cross.
fn nearer(a: &Flat<'_>, b: &Flat<'_>) -> Option<f64> {
    let low = Dot::new(a.low.x.max(b.low.x), a.low.y.max(b.low.y));
    let high = Dot::new(a.high.x.min(b.high.x), a.high.y.min(b.high.y));
    if low.x >= high.x || low.y >= high.y {
        return None;
    }
    let step = ((high.x - low.x).max(high.y - low.y) / 24.0).max(0.8);
    let (mut sum, mut met) = (0.0, false);
    let (columns, rows) = (((high.x - low.x) / step).ceil() as u32, ((high.y - low.y) / step).ceil() as u32);
    for j in 0..=rows {
        for i in 0..=columns {
            let p = low + Dot::new(f64::from(i), f64::from(j)) * step;
            if a.covers(p) && b.covers(p) {
                sum += a.depth(p) - b.depth(p);
                met = true;
            }
        }
    }
    met.then_some(sum)
}

/// The order in which bones are drawn.
pub fn order(bones: &[Flat<'_>]) -> Vec<usize> {
    let n = bones.len();
    // behind[i]: bones that lie behind bone i and must be drawn first.
    let mut behind: Vec<Vec<usize>> = vec![Vec::new(); n];
    for i in 0..n {
        for k in i + 1..n {
            match nearer(&bones[i], &bones[k]) {
                Some(sum) if sum >= 0.0 => behind[i].push(k),
                Some(_) => behind[k].push(i),
                None => {}
            }
        }
    }
    let mut left: Vec<usize> = (0..n).collect();
    left.sort_by(|a, b| bones[*a].middle.total_cmp(&bones[*b].middle));
    let mut found = Vec::with_capacity(n);
    while !left.is_empty() {
        // Bones that lie before each other in a ring go by their middles.
        let next = left.iter().position(|i| behind[*i].iter().all(|k| found.contains(k))).unwrap_or(0);
        found.push(left.remove(next));
    }
    found
}
