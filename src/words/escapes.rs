//! Escapes in Fluent files that the parser cannot be given.

use std::ops::Range;

/// The first `\u` or `\U` whose digits (four or six, Fluent 1.0, `unicode_escape`) end before a letter outside ASCII: the
/// parser cuts that letter in two to quote it, and panics.
pub fn cut_short(text: &str) -> Option<Range<usize>> {
    let mut from = 0;
    while let Some(found) = text[from..].find(['\\']) {
        let at = from + found;
        let wanted = match text[at + 1..].chars().next() {
            Some('u') => 4,
            Some('U') => 6,
            // The second of two backslashes begins nothing.
            Some('\\') => {
                from = at + 2;
                continue;
            }
            _ => {
                from = at + 1;
                continue;
            }
        };
        let digits = text[at + 2..].chars().take(wanted).take_while(char::is_ascii_hexdigit).count();
        let next = text[at + 2 + digits..].chars().next();
        if digits < wanted && next.is_some_and(|letter| !letter.is_ascii()) {
            return Some(at..at + 2 + digits);
        }
        from = at + 2 + digits;
    }
    None
}
