//! Chance that is the same on every machine and in every version: a stream of bytes that follows from a seed.

/// A stream of chance.
pub struct Dice(blake3::OutputReader);

impl Dice {
    /// The stream of a seed; the name keeps streams for different papers apart.
    pub fn new(name: &str, seed: u64) -> Self {
        let mut hasher = blake3::Hasher::new();
        hasher.update(name.as_bytes()).update(&seed.to_le_bytes());
        Self(hasher.finalize_xof())
    }

    /// From 0 to below `count`; 0 when there is none.
    pub fn below(&mut self, count: usize) -> usize {
        let mut bytes = [0; 8];
        self.0.fill(&mut bytes);
        let wide = u128::from(u64::from_le_bytes(bytes)) * count as u128;
        // The high half of the product lies below the count.
        usize::try_from(wide >> 64).unwrap_or(0)
    }

    /// One of a list.
    pub fn one<'a, T>(&mut self, list: &'a [T]) -> Option<&'a T> {
        list.get(self.below(list.len()))
    }

    /// Any order is as likely as any other.
    pub fn shuffle<T>(&mut self, list: &mut [T]) {
        for last in (1..list.len()).rev() {
            list.swap(last, self.below(last + 1));
        }
    }
}
