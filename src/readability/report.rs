//! A reading as text and as JSON.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use serde_json::{Value, json};

use super::{Answer, FilledPart, HardWord, Instrument, Readability, SectionReading, Yardstick};

/// How many hard words are shown of each section.
const HARDEST: usize = 8;

/// The reading of a sheet as text. `name` is the sheet.
pub fn text(name: &str, reading: &Readability) -> String {
    let mut out = String::new();
    let gate = &reading.gate;
    let _written = writeln!(out, "{name}: {}, {} ({})", gate.name(), gate.limit(), gate.source());
    for section in &reading.sections {
        let heading = if section.title.is_empty() { &section.id } else { &section.title };
        let grade = section.grade.map_or_else(|| "–".to_owned(), |grade| format!("{grade:.1}"));
        let word = match (section.grade, section.met) {
            (None, _) => "nothing to score",
            (_, true) => "kept",
            (_, false) => "MISSED",
        };
        let few = if section.grade.is_some() && section.low_confidence() { ", few words" } else { "" };
        let counts = &section.counts;
        let share = match reading.gate {
            super::Gate::Lengths { .. } if counts.words > 0 => {
                format!(", {} % long words", counts.long * 100 / counts.words)
            }
            _ => String::new(),
        };
        let scores: String = section.scores.iter().map(|(score, value)| format!(", {score} {value:.1}")).collect();
        let _written = writeln!(
            out,
            "  {grade:>5} {word:<16} {heading} ({} words, {} sentences{few}){share}{scores}",
            counts.words, counts.sentences
        );
        for sentence in &section.longest {
            let _written = writeln!(out, "          {:>3} long: {}", sentence.length, sentence.text);
        }
        let (offered, long): (Vec<&HardWord>, Vec<&HardWord>) =
            section.hardest.iter().partition(|hard| !hard.instead.is_empty());
        for hard in offered {
            let _written = writeln!(out, "          say instead of {}: {}", hard.word, hard.instead.join(", "));
        }
        if !long.is_empty() {
            let words: Vec<&str> = long.iter().take(HARDEST).map(|hard| hard.word.as_str()).collect();
            let _written = writeln!(out, "          hardest words: {}", words.join(", "));
        }
    }
    out
}

/// The reading of a sheet as JSON.
pub fn json(reading: &Readability) -> Value {
    let gate = &reading.gate;
    json!({
        "language": reading.language,
        "measure": gate.name(),
        "source": gate.source(),
        "limit": gate.limit(),
        "limit-from": match gate {
            super::Gate::Formula { from, .. } => from.as_str(),
            super::Gate::Lengths { .. } => gate.source(),
        },
        "grade": reading.grade,
        "met": reading.met(),
        "sections": reading.sections.iter().map(section).collect::<Vec<_>>(),
    })
}

fn section(section: &SectionReading) -> Value {
    let counts = &section.counts;
    let scored = section.sentences.iter().filter(|sentence| !sentence.label);
    json!({
        "part": section.part,
        "id": section.id,
        "title": section.title,
        "grade": section.grade,
        "met": section.met,
        "low-confidence": section.low_confidence(),
        "counts": {
            "sentences": counts.sentences,
            "words": counts.words,
            "syllables": counts.syllables,
            "letters": counts.letters,
            "characters": counts.characters,
            "one-syllable": counts.one_syllable,
            "three-syllables": counts.three_syllables,
            "four-syllables": counts.four_syllables,
            "long": counts.long,
            "hard": counts.hard,
        },
        "scores": section.scores.iter().map(|(score, value)| (score.word(), *value)).collect::<BTreeMap<_, _>>(),
        "longest": section
            .longest
            .iter()
            .map(|sentence| json!({"length": sentence.length, "text": sentence.text}))
            .collect::<Vec<_>>(),
        "hardest": section
            .hardest
            .iter()
            .map(|hard| {
                json!({"word": hard.word, "times": hard.times, "syllables": hard.syllables, "instead": hard.instead})
            })
            .collect::<Vec<_>>(),
        "sentences": scored.map(|sentence| sentence.text.as_str()).collect::<Vec<_>>(),
    })
}

/// The syllables of every word of a reading.
pub fn syllables(reading: &Readability, yardstick: &Yardstick) -> BTreeMap<String, usize> {
    let words = reading.sections.iter().flat_map(|section| &section.sentences).flat_map(|sentence| &sentence.words);
    words.map(|word| (word.clone(), yardstick.syllables(word))).collect()
}

/// A filled instrument as text.
pub fn filled_text(name: &str, instrument: &Instrument, parts: &[FilledPart]) -> String {
    let mut out = String::new();
    let _written = writeln!(out, "{name}: {} ({})", instrument.name, instrument.source);
    for part in parts {
        let of = |answer| part.count(answer);
        let _written = writeln!(
            out,
            "  {}: {} yes, {} no, {} do not apply, {} open for a person",
            part.name,
            of(Answer::Yes),
            of(Answer::No),
            of(Answer::DoesNotApply),
            of(Answer::Open)
        );
        for item in &part.items {
            let mark = match item.answer {
                Answer::Yes => "[yes] ",
                Answer::No => "[NO]  ",
                Answer::DoesNotApply => "[n/a] ",
                Answer::Open => "[    ]",
            };
            let seen = if item.seen.is_empty() { String::new() } else { format!(": {}", item.seen) };
            let _written = writeln!(out, "    {:>2} {mark} {}{seen}", item.number, item.asks);
        }
    }
    let _written = writeln!(out, "  {}", instrument.reading);
    out
}

/// A filled instrument as JSON.
pub fn filled_json(instrument: &Instrument, parts: &[FilledPart]) -> Value {
    let parts: Vec<Value> = parts
        .iter()
        .map(|part| {
            json!({
                "name": part.name,
                "yes": part.count(Answer::Yes),
                "no": part.count(Answer::No),
                "does-not-apply": part.count(Answer::DoesNotApply),
                "open": part.count(Answer::Open),
                "items": part
                    .items
                    .iter()
                    .map(|item| {
                        json!({
                            "number": item.number,
                            "asks": item.asks,
                            "answer": item.answer.word(),
                            "seen": item.seen,
                        })
                    })
                    .collect::<Vec<_>>(),
            })
        })
        .collect();
    json!({"instrument": instrument.name, "source": instrument.source, "reading": instrument.reading, "parts": parts})
}
