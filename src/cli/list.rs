//! `palmleaf list`.

use serde_json::{Value, json};

use super::Ended;
use super::args::{Kind, ListArgs};
use super::check::refused;
use super::terminal::{Terminal, ended};
use crate::classify;
use crate::diag::Findings;
use crate::document::{Arg, Message};
use crate::language::Language;
use crate::language::WordState;
use crate::pipeline::Workshop;
use crate::words::Speaker;
use crate::words::lint::FIRST;

pub fn run(args: &ListArgs, terminal: &Terminal) -> Ended {
    match load(args) {
        Ok(rows) => {
            if terminal.is_json() {
                let rows: Vec<Value> =
                    rows.iter().map(|(id, name, more)| json!({"id": id, "name": name, "more": more})).collect();
                terminal.say_json(&json!(rows));
            } else {
                let width = rows.iter().map(|(id, ..)| id.chars().count()).max().unwrap_or(0);
                for (id, name, more) in rows {
                    let more = if more.is_empty() { String::new() } else { format!(" ({more})") };
                    terminal.say(&format!("{id:<width$}  {name}{more}"));
                }
            }
            Ended::Well
        }
        Err(findings) => {
            let ended = ended(&findings);
            refused(&findings, terminal);
            ended
        }
    }
}

type Row = (String, String, String);

fn load(args: &ListArgs) -> Result<Vec<Row>, Findings> {
    let workshop = Workshop::load(args.overlay.folder.as_deref())?;
    let library = &workshop.library;
    let speaker = english(&workshop)?;
    let row =
        |id: &str, prefix: &str, more: String| Ok((id.to_owned(), say(&speaker, format!("{prefix}-{id}-name"))?, more));
    match args.kind {
        Kind::Conditions => library
            .conditions
            .iter()
            .map(|(id, condition)| {
                row(
                    id.as_str(),
                    "condition",
                    format!("aim: {}, ICD-10-CM {}", condition.aim, condition.icd10cm.unspecified),
                )
            })
            .collect(),
        Kind::Orthoses => library
            .orthoses
            .iter()
            .map(|(id, orthosis)| {
                row(
                    id.as_str(),
                    "orthosis",
                    format!("{}-based, {}; {}", orthosis.base, orthosis.material, classify::name(orthosis, None)),
                )
            })
            .collect(),
        Kind::Activities => library
            .activities
            .iter()
            .map(|(id, activity)| row(id.as_str(), "activity", activity.group.to_string()))
            .collect(),
        Kind::Exercises => library
            .exercises
            .iter()
            .map(|(id, exercise)| row(id.as_str(), "exercise", exercise.load.to_string()))
            .collect(),
        Kind::Factors => Ok(library
            .factors
            .iter()
            .map(|(id, factor)| (id.to_string(), factor.because.clone(), String::new()))
            .collect()),
        Kind::Needs => Ok(library
            .needs
            .iter()
            .map(|(id, need)| (id.to_string(), need.name.clone(), need.because.clone()))
            .collect()),
        Kind::Languages => Ok(workshop
            .languages
            .iter()
            .map(|entry| {
                (
                    entry.tag.to_string(),
                    entry.name.clone(),
                    format!("{}, {}", entry.english, words_of(&workshop, entry.tag.as_str())),
                )
            })
            .collect()),
    }
}

/// How far the words of a language have been checked as a whole.
fn words_of(workshop: &Workshop, tag: &str) -> &'static str {
    workshop.words.whole(tag).map_or(WordState::Outdated, |said| said.state()).word()
}

/// Lists are in English: they are for the clinician.
fn english(workshop: &Workshop) -> Result<Speaker<'_>, Findings> {
    let language: Option<Language> = FIRST.parse().ok().and_then(|tag| workshop.languages.find(&tag));
    match language {
        Some(language) => Ok(workshop.words.speaker(&language)?),
        None => Err(Findings::default()),
    }
}

fn say(speaker: &Speaker<'_>, key: String) -> Result<String, Findings> {
    Ok(speaker.say(&Message::new(key), &[("side", Arg::Keyword("right"))])?)
}
