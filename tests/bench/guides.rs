//! How long guides take, against the same Typst sources set with nothing else around them.
//!
//! Prints the time of each guide over 200 cases on two threads, and of the floor in the same run.

fn main() {}
