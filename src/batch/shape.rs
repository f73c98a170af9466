//! What a case looks like: which fields there are, and what each takes. Read from the schema of the case, so that no
//! field is listed twice.

use std::str::FromStr;
use std::sync::LazyLock;

use serde_json::Value;

use crate::case::CaseFile;
use crate::ids::nearest;
use crate::source::text_value;
use crate::units::{Date, Misread, TimeOfDay};

/// The most items of a list that columns feed one by one.
const MOST_ITEMS: usize = 20;

/// A step into the case.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    Field(String),
    /// An item of a list, from 0.
    Item(usize),
}

/// What a field takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Takes {
    Text,
    Date,
    Time,
    /// Several values; in a cell they are divided by commas, semicolons or line breaks.
    List,
}

/// A field of the case that takes a value.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct FieldPath {
    written: String,
    pub steps: Vec<Step>,
    pub takes: Takes,
}

impl FieldPath {
    pub fn as_str(&self) -> &str {
        &self.written
    }
}

static CASE: LazyLock<Value> = LazyLock::new(|| schemars::schema_for!(CaseFile).to_value());
static DATE: LazyLock<Value> = LazyLock::new(|| schemars::schema_for!(Date).to_value());
static TIME: LazyLock<Value> = LazyLock::new(|| schemars::schema_for!(TimeOfDay).to_value());

impl FromStr for FieldPath {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        let mut here = settled(&CASE);
        let mut steps = Vec::new();
        for word in text.split('.') {
            let (step, next) = match (here.get("properties"), here.get("items")) {
                (Some(fields), _) => {
                    let names = || fields.as_object().into_iter().flat_map(|fields| fields.keys().map(String::as_str));
                    let Some(next) = fields.get(word) else {
                        let write = match nearest(word, names()) {
                            Some(near) => format!("`{near}`"),
                            None => format!("one of: {}", names().collect::<Vec<_>>().join(", ")),
                        };
                        return Err(Misread::new(
                            format!("`{text}` is no field of a case: there is no `{word}`"),
                            write,
                        ));
                    };
                    (Step::Field(word.to_owned()), next)
                }
                (None, Some(items)) => {
                    let number = word.parse::<usize>().ok().filter(|number| (1..=MOST_ITEMS).contains(number));
                    let Some(number) = number else {
                        let wrong = format!("`{word}` in `{text}` is no item of a list");
                        return Err(Misread::new(wrong, format!("a number from 1 to {MOST_ITEMS}")));
                    };
                    (Step::Item(number - 1), items)
                }
                (None, None) => {
                    return Err(Misread::new(
                        format!("`{text}` goes on after a field that takes a value"),
                        "the field alone",
                    ));
                }
            };
            steps.push(step);
            here = settled(next);
        }
        let same = |known: &Value| known.get("pattern").is_some() && here.get("pattern") == known.get("pattern");
        let takes = if let Some(fields) = here.get("properties") {
            let first = fields.as_object().and_then(|fields| fields.keys().next()).cloned().unwrap_or_default();
            return Err(Misread::new(
                format!("`{text}` holds several fields"),
                format!("which of them, such as `{text}.{first}`"),
            ));
        } else if let Some(items) = here.get("items") {
            if settled(items).get("properties").is_some() {
                return Err(Misread::new(
                    format!("`{text}` is a list whose items hold several fields"),
                    format!("which item and which of them, such as `{text}.1.…`"),
                ));
            }
            Takes::List
        } else if same(&DATE) {
            Takes::Date
        } else if same(&TIME) {
            Takes::Time
        } else {
            Takes::Text
        };
        Ok(Self { written: text.to_owned(), steps, takes })
    }
}

/// A schema with its references followed and `null` left out.
fn settled(mut schema: &'static Value) -> &'static Value {
    for _ in 0..8 {
        let of = schema.get("$ref").and_then(Value::as_str).and_then(|path| CASE.pointer(path.strip_prefix('#')?));
        let choices = ["anyOf", "oneOf"].into_iter().find_map(|key| schema.get(key)?.as_array());
        let other = || choices?.iter().find(|one| one.get("type").and_then(Value::as_str) != Some("null"));
        match of.or_else(other) {
            Some(next) => schema = next,
            None => break,
        }
    }
    schema
}

text_value!(
    FieldPath,
    "a field of a case",
    "A field of a case, with dots: `hand`, `clinic.telephone`, `findings.1.angle`.",
    r"^[a-z_]+(\.[a-z0-9_]+)*$",
    "fitted",
    "person.reference"
);
