//! Commands that describe the program: schema, completions, manual page.

use clap::CommandFactory;
use schemars::generate::SchemaSettings;
use serde_json::Value;

use super::Ended;
use super::args::{Cli, CompletionArgs, SchemaArgs};
use super::terminal::Terminal;
use crate::case::CaseFile;
use crate::clinic::ClinicFile;
use crate::shelf::ShelfFile;

/// The example case that `schema --example` prints.
pub const EXAMPLE: &str = include_str!("../../examples/right-thumb.yaml");

/// The JSON Schema of case files.
pub fn case_schema() -> Value {
    schema_of::<CaseFile>("Palmleaf case, version 1")
}

/// The JSON Schema of a clinic's own file.
pub fn clinic_schema() -> Value {
    schema_of::<ClinicFile>("Palmleaf clinic")
}

/// The JSON Schema of a shelf.
pub fn shelf_schema() -> Value {
    schema_of::<ShelfFile>("Palmleaf shelf")
}

fn schema_of<T: schemars::JsonSchema>(title: &str) -> Value {
    let schema = SchemaSettings::draft2020_12().into_generator().into_root_schema_for::<T>();
    let mut value = schema.to_value();
    lists_may_be_absent(&mut value);
    if let Some(object) = value.as_object_mut() {
        object.insert("title".to_owned(), title.into());
    }
    value
}

/// Lists, maps and yes-or-no fields may be left out of a file: the reader takes them as empty or false.
fn lists_may_be_absent(schema: &mut Value) {
    let Some(object) = schema.as_object_mut() else { return };
    let optional: Vec<String> = object
        .get("properties")
        .and_then(Value::as_object)
        .map(|properties| {
            let absent =
                |property: &Value| matches!(property.get("type").and_then(Value::as_str), Some("array" | "boolean"));
            properties.iter().filter(|(_, property)| absent(property)).map(|(name, _)| name.clone()).collect()
        })
        .unwrap_or_default();
    if let Some(required) = object.get_mut("required").and_then(Value::as_array_mut) {
        required.retain(|name| !optional.iter().any(|known| name == known));
    }
    for inner in object.values_mut() {
        match inner {
            Value::Object(_) => lists_may_be_absent(inner),
            Value::Array(items) => items.iter_mut().for_each(lists_may_be_absent),
            _ => {}
        }
    }
}

pub fn schema(args: &SchemaArgs, terminal: &Terminal) -> Ended {
    if args.example {
        terminal.say(EXAMPLE);
    } else if args.clinic {
        terminal.say_json(&clinic_schema());
    } else if args.shelf {
        terminal.say_json(&shelf_schema());
    } else {
        terminal.say_json(&case_schema());
    }
    Ended::Well
}

/// A completion script as text.
pub fn completion_script(shell: clap_complete::Shell) -> String {
    let mut bytes = Vec::new();
    clap_complete::generate(shell, &mut Cli::command(), "palmleaf", &mut bytes);
    String::from_utf8_lossy(&bytes).into_owned()
}

pub fn completions(args: &CompletionArgs, terminal: &Terminal) -> Ended {
    terminal.say(&completion_script(args.shell));
    Ended::Well
}

/// The manual page as roff.
pub fn manual() -> String {
    let mut bytes = Vec::new();
    let written = clap_mangen::Man::new(Cli::command()).render(&mut bytes);
    if written.is_err() {
        bytes.clear();
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

pub fn man(terminal: &Terminal) -> Ended {
    terminal.say(&manual());
    Ended::Well
}
