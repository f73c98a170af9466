//! Smooth unions and cuts of distances.

/// The lesser of two distances, rounded where they meet. `width` is how near they must be to flow together, mm; past it
/// the result is exactly the lesser one, so that what is far away need not be known.
pub fn smooth_min(a: f64, b: f64, width: f64) -> f64 {
    let [found] = smooth_mins([a], [b], width);
    found
}

/// The greater of two distances, rounded where they meet.
pub fn smooth_max(a: f64, b: f64, width: f64) -> f64 {
    -smooth_min(-a, -b, width)
}

/// The lesser of each two.
pub fn least<const N: usize>(a: [f64; N], b: [f64; N]) -> [f64; N] {
    let mut found = a;
    for i in 0..N {
        found[i] = if b[i] < a[i] { b[i] } else { a[i] };
    }
    found
}

/// [`smooth_min`] of each two.
pub fn smooth_mins<const N: usize>(a: [f64; N], b: [f64; N], width: f64) -> [f64; N] {
    let mut apart = true;
    for i in 0..N {
        apart &= (a[i] - b[i]).abs() >= width;
    }
    let mut found = least(a, b);
    if !apart {
        for i in 0..N {
            let short = width - (a[i] - b[i]).abs();
            let h = (if short > 0.0 { short } else { 0.0 }) / width;
            found[i] -= h * h * h * width / 6.0;
        }
    }
    found
}
