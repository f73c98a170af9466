//! A list of cases: YAML documents in one file, a folder of case files, a CSV, or a workbook. Each row becomes the text
//! of a case, and a fault found in that text is led back to the cell, the line or the default that it came from.

mod cell;
mod delimited;
mod draft;
mod list;
mod mapping;
mod shape;
mod table;
mod workbook;

pub use draft::Draft;
pub use list::List;
pub use mapping::{DateForm, Delimiter, MappingFile};
pub use shape::{FieldPath, Step, Takes};
