//! What steps of putting on and taking off count for, where there is room for few of them.

use crate::ids::StepId;
use crate::source::{At, record};

record! {
    /// Steps by what they count for; a step in none of the lists prepares or finishes.
    pub struct StepWeights ("the weights of steps") {
        /// Never left out: it keeps healing tissue safe, or forbids doing the thing alone.
        pub vital: Vec<At<StepId>>,
        /// Brings the orthosis to its place, or away from it.
        pub place: Vec<At<StepId>>,
        /// Proves that it sits, or that the skin is well.
        pub check: Vec<At<StepId>>,
    }
}

impl StepWeights {
    pub fn is_vital(&self, step: &StepId) -> bool {
        lists(&self.vital, step)
    }

    pub fn places(&self, step: &StepId) -> bool {
        lists(&self.place, step)
    }

    pub fn checks(&self, step: &StepId) -> bool {
        lists(&self.check, step)
    }
}

fn lists(list: &[At<StepId>], step: &StepId) -> bool {
    list.iter().any(|known| known.value == *step)
}
