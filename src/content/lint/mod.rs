//! Checks of the content as a whole: references that lead somewhere, rules that do not contradict each other.

pub mod bases;
pub mod courses;
pub mod looks;
pub mod references;
