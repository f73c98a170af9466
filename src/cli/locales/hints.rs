//! Where each message is heard: what the translator is told beside it.

use std::collections::BTreeMap;

use rayon::prelude::*;

use crate::body::Finger;
use crate::case;
use crate::document::{SheetKind, sheet};
use crate::exchange::Hint;
use crate::pipeline::Workshop;
use crate::source::SourceText;
use crate::words;

/// The sheets of one case for each condition, with every activity and factor shared out among them, in English. A condition
/// that wants more than such a case tells, such as a surgeon's protocol, is passed over: hints need not be whole.
pub fn hints(workshop: &Workshop) -> BTreeMap<String, Hint> {
    let library = &workshop.library;
    let count = library.conditions.len().max(1);
    let share = |ids: Vec<String>, number: usize| {
        let own: Vec<String> =
            ids.into_iter().enumerate().filter(|(at, _)| at % count == number).map(|(_, id)| id).collect();
        own.join(", ")
    };
    let cases: Vec<(usize, String, bool)> = library
        .conditions
        .iter()
        .enumerate()
        .map(|(number, (id, condition))| (number, id.to_string(), condition.needs_finger()))
        .collect();
    let heard: Vec<Vec<(SheetKind, String, String)>> = cases
        .par_iter()
        .map(|(number, condition, needs_finger)| {
            let activities = share(library.activities.keys().map(ToString::to_string).collect(), *number);
            let factors = share(library.factors.keys().map(ToString::to_string).collect(), *number);
            let finger = Finger::ALL[number % Finger::ALL.len()];
            let finger = if *needs_finger { format!("finger: {finger}\n") } else { String::new() };
            let side = if number % 2 == 0 { "right" } else { "left" };
            let mut said = Vec::new();
            for orthosis in library.orthoses.keys() {
                let text = format!(
                    "palmleaf: 1\nhand: {side}\n{finger}condition: {condition}\northosis: {orthosis}\nfitted: 2027-03-01\n\
                     review: 2027-03-29\nlanguage: en\nactivities: [{activities}]\nfactors: [{factors}]\n\
                     letter: {{to: employer, detail: full}}\n\
                     clinic: {{name: Harbour Row Hand Clinic, telephone: 01632 960 142, emergency: \"999\"}}\n"
                );
                if heard_in(workshop, text, &mut said) {
                    break;
                }
            }
            said
        })
        .collect();
    let mut hints: BTreeMap<String, Hint> = BTreeMap::new();
    for (kind, id, text) in heard.into_iter().flatten() {
        let hint = hints.entry(id).or_default();
        if hint.sheets.iter().all(|sheet| sheet != kind.word()) {
            hint.sheets.push(kind.word().to_owned());
        }
        if hint.sample.is_none() {
            // a number that only the typesetter knows stands as a control
            hint.sample = Some(text.replace(char::is_control, "1"));
        }
    }
    hints
}

/// Adds what the sheets of a case say; whether there is such a case.
fn heard_in(workshop: &Workshop, text: String, said: &mut Vec<(SheetKind, String, String)>) -> bool {
    let source = SourceText::new("sample.yaml", text);
    let judged = case::read_text(&source).and_then(|file| workshop.judge(file, source));
    let Ok(Ok(hands)) = judged.map(crate::pipeline::Judged::plans) else { return false };
    let Some((first, others)) = hands.split_first() else { return false };
    for &kind in SheetKind::ALL {
        let Some(document) = sheet(kind, first, others) else { continue };
        let Ok(localised) = words::localise(&workshop.words, &document) else { continue };
        said.extend(localised.heard.into_iter().map(|(id, text)| (kind, id.to_string(), text)));
    }
    true
}
