//! Variables as codes that a translator can move and cannot edit.

use super::branches::Piece;

/// A code of a unit: each of the source has a number; one of the target is that of the same variable in the source, in
/// order, or has a number of its own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Code {
    pub number: usize,
    pub variable: String,
}

/// The codes of a source in order.
pub fn of_source(pieces: &[Piece]) -> Vec<Code> {
    let variables = pieces.iter().filter_map(variable);
    variables.enumerate().map(|(at, variable)| Code { number: at + 1, variable: variable.to_owned() }).collect()
}

/// The codes of a target in order.
pub fn of_target(source: &[Code], pieces: &[Piece]) -> Vec<Code> {
    let mut free: Vec<&Code> = source.iter().collect();
    let mut next = source.len();
    pieces
        .iter()
        .filter_map(variable)
        .map(|variable| match free.iter().position(|code| code.variable == variable) {
            Some(at) => free.remove(at).clone(),
            None => {
                next += 1;
                Code { number: next, variable: variable.to_owned() }
            }
        })
        .collect()
}

fn variable(piece: &Piece) -> Option<&str> {
    match piece {
        Piece::Code(name) => Some(name),
        Piece::Text(_) => None,
    }
}
