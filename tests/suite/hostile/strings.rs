//! Five hundred strings that nobody types by mistake, made by rule from a seed.

use std::collections::BTreeSet;

use crate::dice::Dice;

pub const COUNT: usize = 500;

/// One line for each language that something between the case and the paper could take them for.
const PAYLOADS: &[&str] = &[
    // HTML, SVG, CSS
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "</title><script>fetch('//x.example')</script>",
    "\" onmouseover=\"alert(1)",
    "' autofocus onfocus='alert(1)",
    "</style><svg onload=alert(1)>",
    "<!--",
    "-->",
    "<![CDATA[x]]>",
    "<iframe srcdoc='x'>",
    "&lt;b&gt;&#x41;&NewLine;",
    "}</style>body{display:none}",
    "javascript:alert(1)",
    "data:text/html,x",
    // Typst
    "#set page(width: 1cm)",
    "#read(\"/etc/passwd\")",
    "#import \"@preview/x:1.0.0\": *",
    "#eval(\"1/0\")",
    "$ sum_0^oo $",
    "@label <label>",
    "#panic(\"x\")",
    "= heading",
    "\\u{202e} \\#",
    // Tera
    "{{ 7 * 7 }}",
    "{% for x in range(99999999) %}a{% endfor %}",
    "{% include \"/etc/passwd\" %}",
    "{{ get_env(name=\"HOME\") }}",
    "{{ now() }}",
    "{# gone #}",
    "{%- raw -%}",
    // Fluent
    "{ $side }",
    "{ -brand }",
    "{ \"{\" }",
    "{ DATETIME($x) }",
    "[other] x",
    // Markdown
    "**bold** _it_ ~~gone~~",
    "[x](http://x.example)",
    "![x](file:///etc/passwd)",
    "# title",
    "> quote",
    "```x```",
    "| a | b |",
    "<http://x.example>",
    "1. one",
    // YAML, JSON
    "!!python/object/apply:os.system [id]",
    "&anchor *anchor",
    "<<: {a: b}",
    "null",
    "yes",
    "012",
    "1e999",
    ".nan",
    "- - -",
    "? x",
    "{\"a\": [}",
    "\"; '",
    // Format strings, shells, tables
    "%s%n%x%p",
    "{0} {} {:?} {name}",
    "$(touch x)",
    "`touch x`",
    "; rm -rf .",
    "| cat /etc/passwd",
    "${HOME} $HOME %PATH%",
    "=HYPERLINK(\"http://x.example\")",
    "=cmd|'/c calc'!A0",
    "@SUM(1+1)",
    "' OR 1=1 --",
    // Paths
    "../../../../etc/passwd",
    "..\\..\\windows\\win.ini",
    "/etc/passwd",
    "C:\\con",
    "NUL",
    "file:///etc/passwd",
    "\\\\x.example\\share",
    "a/../../b",
    ".",
    "..",
    "~root",
    "-rf",
    "--out=/tmp/x",
    // iCalendar
    "END:VEVENT",
    "X\\nBEGIN:VALARM",
    "a;b,c:d\\",
    "ATTACH:file:///x",
    // PDF
    ") Tj ET (",
    "endobj 1 0 obj <<",
    "/JS (app.alert(1))",
    "%%EOF",
    "<</S/Launch>>",
    // Words that are no words
    "undefined",
    "NaN",
    "[object Object]",
    "None",
];

/// Characters that are not seen, or move what is.
const HIDDEN: &[&str] = &[
    "\0", "\u{1}", "\u{7}", "\u{8}", "\t", "\n", "\r\n", "\u{b}", "\u{1b}[2J", "\u{7f}", "\u{85}", "\u{9b}31m", "\u{ad}",
    "\u{61c}", "\u{180e}", "\u{200b}", "\u{200c}", "\u{200d}", "\u{200e}", "\u{200f}", "\u{2028}", "\u{2029}", "\u{202a}",
    "\u{202b}", "\u{202d}", "\u{202e}", "\u{2060}", "\u{2064}", "\u{2066}", "\u{2067}", "\u{2068}", "\u{2069}", "\u{3164}",
    "\u{fe0f}", "\u{feff}", "\u{fff9}", "\u{fffc}", "\u{fffd}", "\u{fffe}", "\u{e000}", "\u{e0041}", "\u{10ffff}",
];

/// Letters that a fitting name may well have, and some that no font here draws.
const LETTERS: &[&str] = &[
    "Ana", "Zoë", "Ѕара", "ﷺ", "ليلى", "李", "👩\u{200d}⚕\u{fe0f}", "ß", "İi", "ﬁ", "Å", "A\u{30a}", "ａ", "٠١٢", "क्ष", "𝕬", "ǅ",
];

const MARKS: &[char] = &['\u{300}', '\u{301}', '\u{327}', '\u{483}', '\u{5b0}', '\u{64b}', '\u{93c}', '\u{e31}', '\u{20dd}', '\u{1ab0}'];

/// All of them, each another one.
pub fn all() -> Vec<String> {
    let mut dice = Dice::new(8);
    let mut seen = BTreeSet::new();
    let mut strings = Vec::new();
    let keep = &mut |text: String| {
        if strings.len() < COUNT && seen.insert(text.clone()) {
            strings.push(text);
        }
        strings.len() < COUNT
    };
    for payload in PAYLOADS {
        keep((*payload).to_owned());
    }
    for hidden in HIDDEN {
        keep(format!("Ana{hidden}Lima"));
        keep(format!("{hidden}Ana"));
    }
    for letters in LETTERS {
        keep((*letters).to_owned());
    }
    for mark in MARKS {
        for count in [1, 3, 4, 60] {
            keep(format!("A{}na", mark.to_string().repeat(count)));
        }
    }
    for length in [119, 120, 121, 600, 601, 4_000, 4_001, 20_000] {
        for letter in ["a", "a ", "W", "\u{644}", "{", "<", "\\", "-"] {
            keep(letter.repeat(length / letter.chars().count()));
        }
    }
    loop {
        let mut text = String::new();
        for _ in 0..=dice.below(3) {
            match dice.below(8) {
                0..=3 => text.push_str(dice.one(PAYLOADS)),
                4 => text.push_str(dice.one(HIDDEN)),
                5 => (0..dice.below(6)).for_each(|_| text.push(dice.one(MARKS))),
                _ => text.push_str(dice.one(LETTERS)),
            }
            text.push_str(dice.one(&["", " ", "", "\"", "'", ": "]));
        }
        if !keep(text) {
            return strings;
        }
    }
}
