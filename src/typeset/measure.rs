//! How wide words are, before a page is made.

use typst::layout::Abs;
use typst::text::{Font, FontInstance, FontVariations};

use super::glyphs;

/// What a character without a glyph is taken to be wide, of the size of the letters.
const UNKNOWN: f64 = 0.6;

/// How wide a line is, of the size of its letters. Letters that join are counted as if they stood alone, which is never
/// narrower.
pub fn width(text: &str, fonts: &[Font], families: &[String], bold: bool) -> f64 {
    let fonts = glyphs::of(fonts, families);
    let weighs = |font: &&&Font| (font.info().variant.weight.to_number() >= 600) == bold;
    let (own, others): (Vec<&Font>, Vec<&Font>) = fonts.iter().copied().partition(|font| weighs(&font));
    let faces: Vec<FontInstance> = own.into_iter().chain(others).map(instance).collect();
    let of = |c: char| faces.iter().find_map(|face| Some(face.x_advance(face.ttf().glyph_index(c)?.0)?.get()));
    text.chars().map(|c| of(c).unwrap_or(UNKNOWN)).sum()
}

fn instance(font: &Font) -> FontInstance {
    font.clone().instantiate(font.info().variant, Abs::pt(10.0), &FontVariations::default())
}
