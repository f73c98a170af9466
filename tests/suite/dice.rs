//! Chance that can be thrown again: the same seed gives the same throws (xorshift, Marsaglia 2003).

pub struct Dice(u64);

impl Dice {
    /// Seeds that are near each other give throws that are not.
    pub fn new(seed: u64) -> Self {
        let mut dice = Self((seed ^ 0x9E37_79B9_7F4A_7C15).wrapping_mul(0xBF58_476D_1CE4_E5B9) | 1);
        dice.throw();
        dice.throw();
        dice
    }

    pub fn throw(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    /// A number below `end`; nought when `end` is nought.
    pub fn below(&mut self, end: usize) -> usize {
        (self.throw() >> 11) as usize % end.max(1)
    }

    pub fn one<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())]
    }
}

/// How often something that takes long is done: what the environment says, else a number for every day.
pub fn times(variable: &str, usual: usize) -> usize {
    std::env::var(variable).ok().and_then(|count| count.parse().ok()).unwrap_or(usual)
}
