//! What was worked out once in this run: a choice of view takes a tenth of a second, and every sheet of a person, and every
//! person with the same orthosis, asks for it again. Equal questions have equal answers, so nobody can tell.

use std::collections::HashMap;
use std::fmt::Debug;
use std::sync::{LazyLock, Mutex, PoisonError};

/// Answers of one kind, by a hash of all that the question says.
pub struct Known<T>(LazyLock<Mutex<HashMap<blake3::Hash, T>>>);

/// More than any clinic has of orthoses, fingers and steps; past it all is forgotten, and memory stays flat.
const MOST: usize = 20_000;

impl<T: Clone> Known<T> {
    pub const fn new() -> Self {
        Self(LazyLock::new(Mutex::default))
    }

    /// The answer to a question, worked out the first time. Two threads may work it out at once, to the same end.
    pub fn answer(&self, question: &impl Debug, work_out: impl FnOnce() -> T) -> T {
        let key = blake3::hash(format!("{question:?}").as_bytes());
        if let Some(known) = self.0.lock().unwrap_or_else(PoisonError::into_inner).get(&key) {
            return known.clone();
        }
        let found = work_out();
        let mut all = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if all.len() >= MOST {
            all.clear();
        }
        all.insert(key, found.clone());
        found
    }
}
