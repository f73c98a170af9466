//! Puts drawn pictures where a sheet names them.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use crate::diag::Diagnostic;
use crate::picture::album::Album;
use crate::picture::lettering::{Lettering, Letters};
use crate::picture::plate::Drawing;
use crate::picture::scene::{Even, Label, LabelText, Picture};
use crate::picture::standalone::{Line, lettered};
use crate::words::Sheet;

/// Height of a label's letters, mm of the picture.
const LETTER: f64 = 3.6;

/// The data of a sheet with every picture in it. Pictures are drawn side by side, each once.
///
/// # Errors
/// A picture that cannot be drawn, by what is wrong with it.
pub fn illustrated(sheet: &Sheet, album: &Album, measure: Measure<'_>) -> Result<Value, Diagnostic> {
    let mut data = sheet.data.clone();
    // Names take room in their picture, and how much only the fonts tell.
    let mut names = BTreeMap::new();
    gather(&data, measure, &mut names);
    let mut keys = BTreeMap::new();
    let mut requests = BTreeMap::new();
    for (key, request) in &sheet.pictures {
        let (own, request) = match names.get(key) {
            None => (key.clone(), request.clone()),
            Some(names) => {
                let sizes: Vec<(u16, u16)> = names.iter().map(Lettering::size).collect();
                let request = request.lettered(&sizes);
                (request.key(), request)
            }
        };
        keys.insert(key.as_str(), own.clone());
        requests.insert(own, request);
    }
    let drawn = album.all(&requests).map_err(|why| Diagnostic::undrawn(&why))?;
    let families = data["meta"]["font"].clone();
    place(&mut data, &|named| {
        let key = named["picture"].as_str()?;
        let picture = drawn.get(keys.get(key)?)?;
        let letters = named["letters"].as_array()?;
        let names = names.get(key).map(Vec::as_slice).unwrap_or_default();
        let lines = |text| match text {
            LabelText::Structure(number) => names.get(number).map_or_else(Vec::new, |name| name.lines.clone()),
            LabelText::Letter(_) | LabelText::Number(_) => said(letters, text),
        };
        let labels: Vec<Value> = match names {
            [] => Vec::new(),
            _ => picture.labels.iter().map(|label| label_row(label, lines(label.text))).collect(),
        };
        Some(json!({
            "svg": if names.is_empty() { svg(picture, letters, &families) } else { picture.drawing.svg("") },
            "alt": named["alt"],
            "width": picture.drawing.width / Drawing::UNIT,
            "height": picture.drawing.height / Drawing::UNIT,
            "labels": labels,
        }))
    });
    Ok(data)
}

/// How wide a line is, bold or not, of the size of its letters.
pub type Measure<'a> = &'a dyn Fn(&str, bool) -> f64;

/// Letters the names of every picture that has some.
fn gather(value: &Value, measure: Measure<'_>, found: &mut BTreeMap<String, Vec<Lettering>>) {
    if let (Some(key), Some(names)) = (value["picture"].as_str(), value["names"].as_array()) {
        let words = |name: &Value, part: &str| name[part].as_str().unwrap_or_default().to_owned();
        let set = |name: &Value| {
            let (plain, term) = (words(name, "plain"), words(name, "term"));
            let term = if term == plain { String::new() } else { term };
            Lettering::set(Letters::PAGE, measure, &plain, &term)
        };
        found.insert(key.to_owned(), names.iter().map(set).collect());
        return;
    }
    match value {
        Value::Array(items) => items.iter().for_each(|item| gather(item, measure, found)),
        Value::Object(fields) => fields.values().for_each(|field| gather(field, measure, found)),
        _ => {}
    }
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

/// A label as the look of the pages sets it: names are words of the page, since scripts whose letters join or move need
/// the shaping of the page. Places and sizes in millimetres of the picture.
pub fn label_row(label: &Label, lines: Vec<Line>) -> Value {
    let mm = |units: f64| units / Drawing::UNIT;
    let even = match label.even {
        Even::Neither => "center",
        Even::Left => "left",
        Even::Right => "right",
    };
    let lines: Vec<Value> =
        lines.into_iter().map(|line| json!({"text": line.text, "size": line.size, "bold": line.bold})).collect();
    json!({"lines": lines, "x": mm(label.at.x), "y": mm(label.at.y), "wide": mm(label.wide), "even": even})
}

/// A letter or a number.
fn said(letters: &[Value], text: LabelText) -> Vec<Line> {
    let letter = |number: usize| letters.get(number)?.as_str().map(str::to_owned);
    vec![Line { text: text.said(letter), size: LETTER, bold: true }]
}

/// The picture with its letters, which stand by themselves, as text in the fonts of the page.
fn svg(picture: &Picture, letters: &[Value], families: &Value) -> String {
    let names: Vec<&str> = families.as_array().into_iter().flatten().filter_map(Value::as_str).collect();
    lettered(picture, &picture.drawing.svg(""), &names.join(", "), |text| said(letters, text))
}
