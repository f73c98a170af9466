//! How wide words are, before a page is made.

use rustybuzz::UnicodeBuffer;
use typst::layout::Abs;
use typst::text::{Font, FontInstance, FontVariations};

use super::glyphs;

/// What a character without a glyph is taken to be wide, of the size of the letters.
const UNKNOWN: f64 = 0.6;

/// How wide a line is, of the size of its letters, in the first of the families that can draw all of it.
pub fn width(text: &str, fonts: &[Font], families: &[String], bold: bool) -> f64 {
    let weighs = |font: &Font| (font.info().variant.weight.to_number() >= 600) == bold;
    let able = |font: &&Font| weighs(font) && glyphs::undrawn(text, &[font]).is_none();
    let whole =
        families.iter().find_map(|family| glyphs::of(fonts, std::slice::from_ref(family)).into_iter().find(able));
    match whole {
        Some(font) => shaped(text, &instance(font)),
        None => UNKNOWN * text.chars().count() as f64,
    }
}

/// How wide a line is when its letters have joined.
fn shaped(text: &str, font: &FontInstance) -> f64 {
    let mut buffer = UnicodeBuffer::new();
    buffer.push_str(text);
    buffer.guess_segment_properties();
    let glyphs = rustybuzz::shape(font.rusty(), &[], buffer);
    let units: i32 = glyphs.glyph_positions().iter().map(|glyph| glyph.x_advance).sum();
    font.to_em(units).get()
}

fn instance(font: &Font) -> FontInstance {
    font.clone().instantiate(font.info().variant, Abs::pt(10.0), &FontVariations::default())
}
