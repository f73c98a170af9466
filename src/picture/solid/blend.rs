//! Smooth unions and cuts of distances.

/// The lesser of two distances, rounded where they meet. `width` is how near they must be to flow together, mm; past it
/// the result is exactly the lesser one, so that what is far away need not be known.
pub fn smooth_min(a: f64, b: f64, width: f64) -> f64 {
    let found = if b < a { b } else { a };
    let short = width - (a - b).abs();
    if short <= 0.0 {
        return found;
    }
    let h = short / width;
    found - h * h * h * width / 6.0
}

/// The greater of two distances, rounded where they meet.
pub fn smooth_max(a: f64, b: f64, width: f64) -> f64 {
    -smooth_min(-a, -b, width)
}
