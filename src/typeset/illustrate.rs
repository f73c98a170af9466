//! Puts drawn pictures where a sheet names them.

use serde_json::{Value, json};

use crate::diag::Diagnostic;
use crate::picture::album::Album;
use crate::picture::plate::Drawing;
use crate::picture::scene::Picture;
use crate::picture::standalone::{Line, lettered};
use crate::words::Sheet;

/// Height of a label's letters, mm of the picture.
const LETTER: f64 = 3.6;

/// The data of a sheet with every picture in it. Pictures are drawn side by side, each once.
///
/// # Errors
/// A picture that cannot be drawn, by what is wrong with it.
pub fn illustrated(sheet: &Sheet, album: &Album) -> Result<Value, Diagnostic> {
    let drawn = album.all(&sheet.pictures).map_err(|why| Diagnostic::undrawn(&why))?;
    let mut data = sheet.data.clone();
    let families = data["meta"]["font"].clone();
    place(&mut data, &|named| {
        let picture = drawn.get(named["picture"].as_str()?)?;
        let letters = named["letters"].as_array()?;
        Some(json!({
            "svg": svg(picture, letters, &families),
            "alt": named["alt"],
            "width": picture.drawing.width / Drawing::UNIT,
            "height": picture.drawing.height / Drawing::UNIT,
        }))
    });
    Ok(data)
}

/// Replaces every object that names a picture.
fn place(value: &mut Value, with: &impl Fn(&Value) -> Option<Value>) {
    if value.get("picture").is_some_and(Value::is_string) {
        if let Some(picture) = with(value) {
            *value = picture;
        }
        return;
    }
    match value {
        Value::Array(items) => items.iter_mut().for_each(|item| place(item, with)),
        Value::Object(fields) => fields.values_mut().for_each(|field| place(field, with)),
        _ => {}
    }
}

/// The picture with its labels as text in the fonts of the page.
fn svg(picture: &Picture, letters: &[Value], families: &Value) -> String {
    let names: Vec<&str> = families.as_array().into_iter().flatten().filter_map(Value::as_str).collect();
    let letter = |number: usize| letters.get(number)?.as_str().map(str::to_owned);
    lettered(picture, &picture.drawing.svg(""), &names.join(", "), |text| {
        vec![Line { text: text.said(letter), size: LETTER, bold: true }]
    })
}
