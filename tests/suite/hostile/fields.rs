//! Every place of a case and of a clinic's file that takes text, found in the schema, so that a new one is found too.

use serde_json::{Value, json};

/// A way into a file: names of fields, and `0` for the first of a list.
pub type Way = Vec<String>;

/// A place that takes text.
pub struct Field {
    pub way: Way,
    /// Any text, and no id, date, angle or word of a list.
    pub is_free: bool,
}

/// All places of a schema that take text.
pub fn of(schema: &Value) -> Vec<Field> {
    let mut found = Vec::new();
    walk(schema, schema, &mut Vec::new(), &mut found);
    found.dedup_by(|one, other| one.way == other.way);
    found
}

fn walk(root: &Value, here: &Value, way: &mut Way, found: &mut Vec<Field>) {
    // A list of lists of itself has no end.
    if way.len() > 8 {
        return;
    }
    if let Some(name) = here["$ref"].as_str() {
        return walk(root, &root["$defs"][name.rsplit('/').next().unwrap_or_default()], way, found);
    }
    for key in ["anyOf", "oneOf", "allOf"] {
        for one in here[key].as_array().into_iter().flatten() {
            walk(root, one, way, found);
        }
    }
    let is_text = here["type"] == "string" || here["type"].as_array().is_some_and(|all| all.contains(&json!("string")));
    if is_text {
        let is_free = ["pattern", "enum", "const"].iter().all(|key| here.get(key).is_none());
        found.push(Field { way: way.clone(), is_free });
    }
    let mut deeper = |name: &str, inner: &Value| {
        way.push(name.to_owned());
        walk(root, inner, way, found);
        way.pop();
    };
    for (name, inner) in here["properties"].as_object().into_iter().flatten() {
        deeper(name, inner);
    }
    for (_, inner) in here["patternProperties"].as_object().into_iter().flatten() {
        deeper("en", inner);
    }
    for (key, name) in [("items", "0"), ("additionalProperties", "en")] {
        if here[key].is_object() {
            deeper(name, &here[key]);
        }
    }
}

/// A file with a text put in a place; what is missing on the way there is made.
pub fn with(file: &Value, way: &[String], text: &str) -> Value {
    let Some((name, rest)) = way.split_first() else { return json!(text) };
    let mut file = file.clone();
    if name == "0" {
        let mut list = file.as_array().cloned().unwrap_or_default();
        let first = list.first().cloned().unwrap_or(Value::Null);
        let first = with(&first, rest, text);
        if list.is_empty() { list.push(first) } else { list[0] = first }
        return json!(list);
    }
    if !file.is_object() {
        file = json!({});
    }
    file[name] = with(&file.get(name).cloned().unwrap_or(Value::Null), rest, text);
    file
}

/// What stands in a place.
pub fn at<'a>(file: &'a Value, way: &[String]) -> Option<&'a Value> {
    way.iter().try_fold(file, |here, name| match name.as_str() {
        "0" => here.get(0),
        name => here.get(name),
    })
}
