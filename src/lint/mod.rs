//! `content check`: proofs over all of the content together with the words of every language.

mod listed;
mod looks;
mod needed;
mod staff;
mod walk;

pub use listed::SHEET;
pub use needed::needed;
pub use staff::SHELF;

use std::collections::BTreeSet;

use crate::content;
use crate::diag::{Code, Diagnostic, Findings};
use crate::pipeline::Workshop;
use crate::readability;
use crate::words;

/// What the check found, and how much it looked at.
pub struct Report {
    pub findings: Findings,
    /// What there is of each kind.
    pub counts: Vec<(&'static str, usize)>,
    /// Combinations of condition, phase, orthosis, factor, exercise and activity that were walked.
    pub walked: usize,
}

/// Checks everything.
pub fn check(workshop: &Workshop) -> Report {
    let library = &workshop.library;
    let mut findings = workshop.warnings.clone();
    let needed: BTreeSet<String> = needed(workshop);
    findings.extend(workshop.words.faults());
    findings.extend(words::lint::check(&workshop.words, &needed));
    findings.extend(words::sense::check(&workshop.words));
    if let Some(first) = workshop.words.catalogue(words::lint::FIRST) {
        findings.extend(words::lint::unused(first, &needed));
    }
    findings.extend(hard_words(workshop));
    findings.extend(walk::glyphs(workshop));
    let laid = looks::check(library, &mut findings);
    let walked = walk::combinations(library, &mut findings);
    let bases = content::lint::bases::bases(library);
    let counts = vec![
        ("conditions", library.conditions.len()),
        ("phases", library.conditions.values().map(|condition| condition.phases.len()).sum()),
        ("orthoses", library.orthoses.len()),
        ("of these with a look", laid),
        ("activities", library.activities.len()),
        ("exercises", library.exercises.len()),
        ("of these with a look", library.motions.len()),
        ("factors", library.factors.len()),
        ("wear patterns", library.patterns.len()),
        ("signs", library.signs.len()),
        ("sources", library.sources.len()),
        ("needs", library.needs.len()),
        ("rules", bases.rules()),
        ("of these with a published source", bases.published),
        ("of these common practice", bases.common_practice),
        ("of these from memory", bases.from_memory),
        ("languages", workshop.languages.iter().count()),
        ("messages in each language", needed.len()),
    ];
    Report { findings, counts, walked }
}

/// Warnings for words that have plainer ones on offer, in what patients read.
fn hard_words(workshop: &Workshop) -> Findings {
    let mut findings = Findings::default();
    for (_, catalogue) in workshop.words.catalogues() {
        for (id, place, word, instead) in readability::hard_words(catalogue, &workshop.yardsticks) {
            let message = format!("the message `{id}` says `{word}`, which has plainer words");
            let diagnostic = Diagnostic::error(Code::WORDS_HARD, place, message);
            findings.push(diagnostic.help(format!("say {}", instead.join(" or "))).as_warning());
        }
    }
    findings
}
