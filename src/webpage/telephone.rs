//! Telephone numbers as links that dial.

use super::html::escape;

/// The number to dial, or none when what is written is not plainly one number. Better no link than a wrong number.
pub fn dialled(written: &str) -> Option<String> {
    let mut number = String::new();
    // In an international number the trunk nought in brackets is not dialled.
    let written = match written.trim_start() {
        plain if plain.starts_with('+') => plain.replacen("(0)", "", 1),
        plain => plain.to_owned(),
    };
    for c in written.trim().chars() {
        match c {
            '+' if number.is_empty() => number.push('+'),
            ' ' | '\u{a0}' | '\u{202f}' | '-' | '\u{2011}' | '\u{2013}' | '.' | '(' | ')' => {}
            c => number.push(digit(c)?),
        }
    }
    let digits = number.trim_start_matches('+').len();
    (2..=15).contains(&digits).then_some(number)
}

/// A digit of any of the scripts that sheets are written in.
fn digit(c: char) -> Option<char> {
    let zero = match c {
        '0'..='9' => '0',
        '٠'..='٩' => '٠',
        '۰'..='۹' => '۰',
        _ => return None,
    };
    char::from_digit(u32::from(c) - u32::from(zero), 10)
}

/// A link that dials a number; the words alone when it cannot be dialled.
pub fn link(written: &str, said: &str) -> String {
    match dialled(written) {
        Some(number) => format!("<a class=\"dial\" href=\"tel:{number}\">{said}</a>"),
        None => said.to_owned(),
    }
}

/// A number as it is written, to be dialled. It never turns round in a right-to-left line.
pub fn number(written: &str) -> String {
    link(written, &format!("<bdi dir=\"ltr\">{}</bdi>", escape(written)))
}

#[cfg(test)]
mod tests {
    use super::{dialled, number};

    #[test]
    fn a_number_is_dialled_whole_or_not_at_all() {
        let plain = |written| dialled(written).unwrap_or_default();
        assert_eq!(plain("01632 960 142"), "01632960142");
        assert_eq!(plain("+44 (0)1632 960-142"), "+441632960142");
        assert_eq!(plain("(01632) 960.142"), "01632960142");
        assert_eq!(plain("٠١٦٣٢ ٩٦٠"), "01632960");
        assert_eq!(plain("112"), "112");
        for unclear in ["01632 960 142 ext 7", "01632 960 142 / 143", "1", "the desk", "", "+", "12+34"] {
            assert_eq!(dialled(unclear), None, "{unclear}");
        }
    }

    #[test]
    fn a_number_that_cannot_be_dialled_still_stands_there() {
        assert!(!number("01632 960 142 ext 7").contains("href"));
        assert!(number("01632 960 142 ext 7").contains("ext 7"));
    }
}
