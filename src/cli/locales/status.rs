//! `palmleaf locales status`.

use std::collections::BTreeMap;

use clap::Args;
use serde_json::{Value, json};

use super::{Folder, area, languages, texts, workshop};
use crate::cli::terminal::Terminal;
use crate::diag::Findings;
use crate::language::WordState;

#[derive(Args, Debug)]
pub struct StatusArgs {
    /// The languages, divided by commas; all that are translated when not said.
    #[arg(long, value_name = "TAG", value_delimiter = ',')]
    pub language: Vec<String>,
    /// Also name every message that is not signed off.
    #[arg(long)]
    pub messages: bool,
    #[command(flatten)]
    pub folder: Folder,
}

const COLUMNS: [WordState; 3] = [WordState::SignedOff, WordState::Drafted, WordState::Outdated];

/// Counts by language and area.
pub fn run(args: &StatusArgs, terminal: &Terminal) -> Result<(), Findings> {
    let workshop = workshop(args.folder.folder.as_ref())?;
    let mut all: Vec<Value> = Vec::new();
    for language in languages(&workshop, &args.language)? {
        let tag = language.entry.tag.as_str();
        let (own, ..) = texts(&workshop, tag)?;
        let said = workshop.words.whole(tag)?;
        let mut areas: BTreeMap<String, BTreeMap<WordState, usize>> = BTreeMap::new();
        for (id, state) in &said.messages {
            *areas.entry(area(own, id)).or_default().entry(*state).or_default() += 1;
        }
        if terminal.is_json() {
            all.push(json!({
                "language": tag,
                "state": said.state().word(),
                "areas": areas.iter().map(|(area, counts)| (area.clone(), counted(counts))).collect::<BTreeMap<_, _>>(),
                "open": args.messages.then(|| {
                    said.open().map(|(id, state)| (id.to_owned(), state.word())).collect::<BTreeMap<_, _>>()
                }),
            }));
            continue;
        }
        let head = COLUMNS.map(|state| format!("{:>11}", state.word())).concat();
        terminal.say(&format!("{:<22}{head}", format!("{tag} ({})", language.entry.english)));
        let mut total: BTreeMap<WordState, usize> = BTreeMap::new();
        for (area, counts) in &areas {
            terminal.say(&row(area, counts));
            counts.iter().for_each(|(state, count)| *total.entry(*state).or_default() += count);
        }
        terminal.say(&row("all", &total));
        if args.messages {
            said.open().for_each(|(id, state)| terminal.say(&format!("  {state:<10} {id}")));
        }
        terminal.say("");
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    Ok(())
}

fn row(name: &str, counts: &BTreeMap<WordState, usize>) -> String {
    let columns = COLUMNS.map(|state| format!("{:>11}", counts.get(&state).copied().unwrap_or(0))).concat();
    format!("  {name:<20}{columns}")
}

fn counted(counts: &BTreeMap<WordState, usize>) -> BTreeMap<&'static str, usize> {
    COLUMNS.iter().map(|state| (state.word(), counts.get(state).copied().unwrap_or(0))).collect()
}
