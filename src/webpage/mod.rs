//! The guide as one page for a telephone: a single HTML file, with no script and nothing fetched.
//!
//! It is made from the same localised tree as the pages on paper, so it says the same words in the same order. Pictures
//! stand in it as SVG, and the style in `look.css`. Sides are physical: a left hand stays on the left in every script.

mod blocks;
mod boxes;
mod frame;
mod hand;
mod hours;
mod html;
mod month;
mod moves;
mod plates;
mod signs;
mod telephone;

pub use html::escape;

use crate::diag::Diagnostic;
use crate::picture::album::Album;
use crate::words::Sheet;

/// What pages are made with besides their sheet: another one, other pages. The figure is raised with every change in
/// Rust that changes a page.
pub const ENGINE: &str = concat!("1", include_str!("look.css"), include_str!("accent.css"), include_str!("signs.svg"));

/// The page of a sheet.
///
/// # Errors
/// A picture that cannot be drawn, or a block that has no form here.
pub fn page(sheet: &Sheet, album: &Album) -> Result<String, Diagnostic> {
    let plates = plates::Plates::draw(sheet, album)?;
    frame::frame(sheet, &plates)
}
