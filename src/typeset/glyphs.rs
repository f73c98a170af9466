//! A character without a glyph is an error that names it, before a page is made.

use serde_json::Value;
use typst::text::Font;

use crate::diag::{Code, Diagnostic};

/// Characters that shape text and print nothing: fonts need no glyph for them.
fn prints_nothing(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{2069}' | '\u{FE00}'..='\u{FE0F}')
}

/// The fonts of some families.
pub fn of<'f>(fonts: &'f [Font], families: &[String]) -> Vec<&'f Font> {
    fonts
        .iter()
        .filter(|font| families.iter().any(|family| family.eq_ignore_ascii_case(font.info().family.as_str())))
        .collect()
}

/// The first character of a text that none of the fonts can draw.
pub fn undrawn(text: &str, fonts: &[&Font]) -> Option<char> {
    let drawn =
        |c: char| prints_nothing(c) || c == ' ' || fonts.iter().any(|font| font.info().coverage.contains(u32::from(c)));
    text.chars().find(|&c| !drawn(c))
}

/// Looks for a character that none of the families can draw.
///
/// # Errors
/// The first such character with the text it stands in.
pub fn check(data: &Value, fonts: &[Font], families: &[String], language: &str) -> Result<(), Diagnostic> {
    let fonts = of(fonts, families);
    let mut faults = Vec::new();
    texts(data, &mut |text| {
        if let Some(c) = undrawn(text, &fonts) {
            faults.push((c, text.chars().take_while(|other| *other != c).count() + 1, text.chars().count()));
        }
    });
    match faults.first() {
        None => Ok(()),
        Some((c, at, length)) => Err(Diagnostic::outside(
            Code::TYPESET_GLYPH,
            format!(
                "none of the fonts for `{language}` can draw U+{:04X} «{c}», letter {at} of a text of {length}",
                u32::from(*c)
            ),
        )
        .help("write it another way, or add a font to content/fonts and its family to content/languages.yaml")),
    }
}

fn texts(value: &Value, visit: &mut impl FnMut(&str)) {
    match value {
        Value::String(text) => visit(text),
        Value::Array(items) => items.iter().for_each(|item| texts(item, visit)),
        Value::Object(fields) => fields.values().for_each(|field| texts(field, visit)),
        _ => {}
    }
}
