//! The localised tree to pages, in memory: no disk, network or clock.

mod binding;
mod glyphs;
mod illustrate;
mod measure;
mod world;

pub use binding::{Leaf, Look};
pub use illustrate::label_row;
pub use world::Typesetter;

use typst::foundations::Smart;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::diag::{Code, Diagnostic};

/// Pages of one sheet.
pub struct Pages {
    document: PagedDocument,
    /// Hashed into the file's identity; the same input gives the same bytes.
    ident: String,
}

impl Pages {
    pub fn count(&self) -> usize {
        self.document.pages().len()
    }

    /// The pages as PDF 1.7 that claims and keeps PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2).
    ///
    /// # Errors
    /// When the pages break one of the two standards.
    pub fn pdf(&self) -> Result<Vec<u8>, Diagnostic> {
        self.export(&[PdfStandard::Ua_1, PdfStandard::A_2a])
    }

    /// The pages as PDF 1.7 that keeps PDF/UA-1: what has no date of its own cannot be archived as PDF/A, and no clock is
    /// read for one.
    ///
    /// # Errors
    /// When the pages break the standard.
    pub fn undated_pdf(&self) -> Result<Vec<u8>, Diagnostic> {
        self.export(&[PdfStandard::Ua_1])
    }

    fn export(&self, standards: &[PdfStandard]) -> Result<Vec<u8>, Diagnostic> {
        let fault = |what: String| {
            Diagnostic::outside(Code::TYPESET_FAILED, format!("the PDF cannot be made: {what}"))
                .help("report this case; nothing was written")
        };
        let standards = PdfStandards::new(standards).map_err(|error| fault(error.message().to_string()))?;
        let options = PdfOptions {
            ident: Smart::Custom(self.ident.clone()),
            creator: Smart::Custom(Some("Palmleaf".to_owned())),
            standards,
            ..PdfOptions::default()
        };
        typst_pdf::pdf(&self.document, &options).map_err(|errors| {
            let all: Vec<String> = errors.iter().map(|error| error.message.to_string()).collect();
            fault(all.join("; "))
        })
    }

    /// One page as PNG; pages count from 0.
    ///
    /// # Errors
    /// When there is no such page.
    pub fn png(&self, page: usize, pixels_per_point: f64) -> Result<Vec<u8>, Diagnostic> {
        let fault = || Diagnostic::outside(Code::TYPESET_FAILED, format!("page {} cannot be drawn", page + 1));
        let page = self.document.pages().get(page).ok_or_else(fault)?;
        let options = typst_render::RenderOptions { pixel_per_pt: pixels_per_point.into(), ..Default::default() };
        typst_render::render(page, &options).encode_png().map_err(|_| fault())
    }
}
