//! The clinic's logo: what it is by its bytes, and whether it may stand on a page.

use super::{raster, vector};

/// Bytes of a logo file. More is a photograph or a mistake.
pub const MOST_BYTES: u64 = 1024 * 1024;
/// How many times as wide as high a logo may be, or as high as wide.
const WIDEST: f64 = 8.0;
const HIGHEST: f64 = 2.0;
const PNG: &[u8] = b"\x89PNG\r\n\x1a\n";
/// How other files begin that people take for a logo.
const OTHERS: &[(&[u8], &str)] = &[
    (b"\xFF\xD8\xFF", "a JPEG"),
    (b"GIF8", "a GIF"),
    (b"RIFF", "a WebP picture"),
    (b"II*\0", "a TIFF"),
    (b"MM\0*", "a TIFF"),
    (b"%PDF", "a PDF"),
    (b"%!PS", "PostScript"),
    (b"8BPS", "a layered picture of an editor"),
    (b"PK", "a packed file"),
    (b"\x1F\x8B", "a compressed file (such as SVGZ)"),
    (b"BM", "a bitmap"),
];

/// Why a file is no logo, and what to do instead. Both begin in lower case and end without a full stop.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unfit {
    pub why: String,
    pub instead: String,
}

impl Unfit {
    pub(super) fn new(why: impl Into<String>, instead: impl Into<String>) -> Self {
        Self { why: why.into(), instead: instead.into() }
    }
}

/// What a logo is written as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LogoKind {
    Svg,
    Png,
}

/// A logo, read and written anew: shapes or pixels, and nothing else of the file it came from.
#[derive(Clone, Debug, PartialEq)]
pub struct Logo {
    pub kind: LogoKind,
    pub bytes: Vec<u8>,
    /// How many times as wide as high.
    pub shape: f64,
}

impl LogoKind {
    /// The word in the tree that pages are made from, and the ending of a file.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Svg => "svg",
            Self::Png => "png",
        }
    }

    /// The media type (RFC 6838).
    pub const fn media_type(self) -> &'static str {
        match self {
            Self::Svg => "image/svg+xml",
            Self::Png => "image/png",
        }
    }
}

impl Logo {
    /// Reads a logo by its bytes, whatever its file is called.
    ///
    /// # Errors
    /// What is wrong with it, and what to do instead.
    pub fn read(bytes: &[u8]) -> Result<Self, Unfit> {
        let (kind, bytes, width, height) = if bytes.starts_with(PNG) {
            let (written, width, height) = raster::read(bytes)?;
            (LogoKind::Png, written, f64::from(width), f64::from(height))
        } else if let Some((_, what)) = OTHERS.iter().find(|(begins, _)| bytes.starts_with(begins)) {
            return Err(Unfit::new(format!("it is {what}"), "save it as SVG or PNG"));
        } else {
            let text = std::str::from_utf8(bytes).map_err(|_| {
                Unfit::new("it is neither SVG nor PNG by its bytes", "save it as SVG (in UTF-8) or PNG")
            })?;
            let text = text.strip_prefix('\u{FEFF}').unwrap_or(text);
            if !text.trim_start().starts_with('<') {
                return Err(Unfit::new("it is neither SVG nor PNG by its bytes", "save it as SVG or PNG"));
            }
            let (written, width, height) = vector::read(text)?;
            (LogoKind::Svg, written.into_bytes(), width, height)
        };
        let shape = width / height;
        if !(1.0 / HIGHEST..=WIDEST).contains(&shape) {
            let why = format!("it is {width:.0} wide and {height:.0} high");
            return Err(Unfit::new(
                why,
                format!("crop it: at most {WIDEST:.0} times as wide as high, or {HIGHEST:.0} times as high as wide"),
            ));
        }
        Ok(Self { kind, bytes, shape })
    }
}
