//! Small marks, each drawn once and used by its name. All are decoration: a word beside them says the same.

/// Every mark as a symbol of a square of 100 units. `ink` and `paper` are the colours of where it is used.
pub const SYMBOLS: &str = include_str!("signs.svg");

/// A mark. What follows the reading direction turns with it.
pub fn sign(name: &str) -> String {
    let turns = if matches!(name, "review" | "change" | "build") { " turns" } else { "" };
    format!("<svg class=\"sign{turns}\" aria-hidden=\"true\" focusable=\"false\"><use href=\"#i-{name}\"/></svg>")
}

/// The shape of a whole hand as one's own lies on the table: the thumb points inward.
pub fn hand(side: &str) -> String {
    let name = if side == "left" { "hand-left" } else { "hand-right" };
    format!("<svg class=\"whole-hand\" aria-hidden=\"true\" focusable=\"false\"><use href=\"#i-{name}\"/></svg>")
}
