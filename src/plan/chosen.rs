//! Values together with who chose them, and why.

use crate::case::Reason;
use crate::content::Basis;

/// What the plan would choose, or what the therapist chose.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Chosen<T> {
    pub value: T,
    /// Present when the therapist set it.
    pub because: Option<Reason>,
}

impl<T> Chosen<T> {
    pub fn by_rule(value: T) -> Self {
        Self { value, because: None }
    }

    pub fn by_therapist(value: T, because: Reason) -> Self {
        Self { value, because: Some(because) }
    }
}

/// One line of the reasoning: what was decided, what it rests on, and what the therapist changed. English.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RuleLine {
    pub subject: String,
    pub value: String,
    pub basis: Basis,
    /// What the rule alone would have given, when the therapist set something else.
    pub instead_of: Option<String>,
    pub because: Option<Reason>,
    /// The therapist answers for breaking a rule of safety.
    pub risk_accepted: bool,
}
