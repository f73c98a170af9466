//! Pictures to files.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use serde_json::{Value, json};

use crate::diag::{Code, Diagnostic, Findings};
use crate::language::Language;
use crate::output::store;
use crate::picture::plate::Drawing;
use crate::picture::scene::Picture;
use crate::picture::standalone::{self, About};
use crate::pipeline::Workshop;
use crate::typeset::label_row;

use super::caption::label;
use super::wanted::Wanted;

/// Pixels for each point of a picture: 300 dots to the inch.
const DOTS: f64 = 300.0 / 72.0;

/// A drawn picture with its words.
pub struct Shown {
    pub wanted: Wanted,
    pub picture: Arc<Picture>,
}

/// What kind of file is written.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Kind {
    Svg,
    Pdf,
    Png,
}

impl Kind {
    /// By the ending of the name.
    ///
    /// # Errors
    /// When the ending is none of the three, or a sheet is no PDF.
    pub fn of(path: &Path, sheet: bool) -> Result<Self, Diagnostic> {
        let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
        let fault = |message: String, help: &str| Err(Diagnostic::outside(Code::DRAW_FILE_TYPE, message).help(help));
        let kind = match ending.as_str() {
            "svg" => Self::Svg,
            "pdf" => Self::Pdf,
            "png" => Self::Png,
            _ => {
                let message = format!("no picture can be written as {}", path.display());
                return fault(message, "let the name end in `.svg`, `.pdf` or `.png`");
            }
        };
        match kind {
            Self::Svg if sheet => fault(
                format!("a sheet of pictures has pages, which {} cannot have", path.display()),
                "let the name end in `.pdf`, or in `.png` for a file each page",
            ),
            _ => Ok(kind),
        }
    }
}

/// Writes pictures: one file, or numbered ones where a file holds only one.
///
/// # Errors
/// When a page cannot be set or a file not be written.
pub fn write(
    workshop: &Workshop,
    language: &Language,
    path: &Path,
    kind: Kind,
    pictures: &[Shown],
    sheet: bool,
) -> Result<Vec<String>, Findings> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or_else(|| Path::new("."));
    let stem = path.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
    let ending = path.extension().map(|ending| ending.to_string_lossy().into_owned()).unwrap_or_default();
    let numbered = |files: Vec<Vec<u8>>| -> Vec<(String, Vec<u8>)> {
        let several = files.len() > 1;
        let name = |i: usize| if several { format!("{stem}-{}.{ending}", i + 1) } else { format!("{stem}.{ending}") };
        files.into_iter().enumerate().map(|(i, bytes)| (name(i), bytes)).collect()
    };
    let files = match kind {
        Kind::Svg => numbered(pictures.iter().map(|one| svg(one, language).into_bytes()).collect()),
        Kind::Pdf => {
            let data = data(pictures, sheet || pictures.len() > 1);
            numbered(vec![workshop.pictures(data, language)?.undated_pdf()?])
        }
        Kind::Png => {
            let pages = workshop.pictures(data(pictures, sheet), language)?;
            let pages = (0..pages.count()).map(|page| pages.png(page, DOTS)).collect::<Result<Vec<_>, _>>()?;
            numbered(pages)
        }
    };
    let written: Vec<PathBuf> = store::write_all(folder, &files)?;
    Ok(written.iter().map(|file| file.display().to_string()).collect())
}

fn svg(shown: &Shown, language: &Language) -> String {
    let Wanted { title, about, names, .. } = &shown.wanted;
    let families = &language.entry.fonts;
    let about = About { language: language.tag.as_str(), families, title, text: about };
    standalone::svg(&shown.picture, &about, |text| label(text, names))
}

/// A picture with its words for the look of the pages.
pub fn picture(one: &Shown) -> Value {
    let Shown { wanted, picture } = one;
    let mm = |units: f64| units / Drawing::UNIT;
    let labels: Vec<Value> = picture.labels.iter().map(|one| label_row(one, label(one.text, &wanted.names))).collect();
    let drawing = &picture.drawing;
    json!({
        "svg": drawing.svg(&wanted.title),
        "width": mm(libm::ceil(drawing.width)),
        "height": mm(libm::ceil(drawing.height)),
        "labels": labels,
        "id": wanted.id,
        "caption": wanted.caption,
        "alt": wanted.about,
        "group": wanted.group,
    })
}

/// What the look of the pages is given.
fn data(pictures: &[Shown], sheet: bool) -> Value {
    let rows: Vec<Value> = pictures.iter().map(picture).collect();
    let title = pictures.first().map_or("", |one| if sheet { "Pictures" } else { one.wanted.title.as_str() });
    json!({"sheet": sheet, "title": title, "pictures": rows})
}
