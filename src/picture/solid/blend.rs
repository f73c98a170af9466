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
    std::array::from_fn(|i| if b[i] < a[i] { b[i] } else { a[i] })
}

/// [`smooth_min`] of each two.
pub fn smooth_mins<const N: usize>(a: [f64; N], b: [f64; N], width: f64) -> [f64; N] {
    let found = least(a, b);
    let short: [f64; N] = std::array::from_fn(|i| width - (a[i] - b[i]).abs());
    if short.iter().all(|short| *short <= 0.0) {
        return found;
    }
    std::array::from_fn(|i| {
        let h = (if short[i] > 0.0 { short[i] } else { 0.0 }) / width;
        found[i] - h * h * h * width / 6.0
    })
}
