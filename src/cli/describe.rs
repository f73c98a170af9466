//! Commands that describe the program: schema, completions, manual page.

use clap::CommandFactory;
use schemars::generate::SchemaSettings;

use super::args::{Cli, CompletionArgs, SchemaArgs};
use super::terminal::Terminal;
use super::Ended;
use crate::case::CaseFile;

/// The example case that `schema --example` prints.
pub const EXAMPLE: &str = include_str!("../../examples/right-thumb.yaml");

/// The JSON Schema of case files.
pub fn case_schema() -> serde_json::Value {
    let schema = SchemaSettings::draft2020_12().into_generator().into_root_schema_for::<CaseFile>();
    let mut value = schema.to_value();
    if let Some(object) = value.as_object_mut() {
        object.insert("title".to_owned(), "Palmleaf case, version 1".into());
    }
    value
}

pub fn schema(args: &SchemaArgs, terminal: &Terminal) -> Ended {
    if args.example {
        terminal.say(EXAMPLE);
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
