//! Content lines of RFC 5545: values escaped, lines folded, each ended by CR and LF.

/// Octets of a line before its end (3.1).
const MOST: usize = 75;

/// Lines of a file.
#[derive(Default)]
pub struct Lines(String);

impl Lines {
    /// Adds a content line, folded: never within a character, and a line that goes on begins with a space.
    pub fn push(&mut self, line: &str) {
        let mut left = MOST;
        for c in line.chars() {
            if c.len_utf8() > left {
                self.0.push_str("\r\n ");
                left = MOST - 1;
            }
            self.0.push(c);
            left -= c.len_utf8();
        }
        self.0.push_str("\r\n");
    }

    pub fn finish(self) -> String {
        self.0
    }
}

/// A value of type TEXT (3.3.11). Controls, which no line may hold, are left out.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => out.extend(['\\', c]),
            '\n' => out.push_str("\\n"),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}
