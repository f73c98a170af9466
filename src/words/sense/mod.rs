//! Whether every language says the same thing: it keeps each choice, each "not", and the word it has for each term.

mod bases;
mod branches;

pub use bases::{Negations, Term, Terms};

use std::collections::BTreeSet;

use fluent_syntax::ast::{InlineExpression, Pattern};

use super::lint::{FIRST, shape};
use super::{Catalogue, Words};
use crate::diag::{Code, Diagnostic, Findings};
use branches::{Leaves, leaves};

/// The categories of CLDR: a language is free to tell numbers apart otherwise than the first one.
const PLURALS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];
/// Ends the names of messages that are a clinician's word for a thing: no plain words are asked of them.
const TERM: &str = "-term";

/// Holds the sentences of every language against the first one's.
pub fn check(words: &Words) -> Findings {
    let mut findings = Findings::default();
    let Some(first) = words.catalogue(FIRST) else { return findings };
    let assets = &words.assets;
    let Some(denied) = Negations::load(assets, FIRST).map_err(|more| findings.extend(more)).ok() else {
        return findings;
    };
    for (tag, own) in words.catalogues().filter(|(tag, _)| *tag != FIRST) {
        kept(first, own, &mut findings);
        let unspaced = words.letters(tag).is_some_and(super::Letters::are_unspaced);
        match Negations::load(assets, tag) {
            Ok(denies) => denied_too((first, &denied), (own, &denies), unspaced, &mut findings),
            Err(more) => findings.extend(more),
        }
        match Terms::load(assets, tag) {
            Ok(terms) => strays(first, own, &terms, &mut findings),
            Err(more) => findings.extend(more),
        }
    }
    findings
}

/// A choice that is no matter of plural is made in every language, or its variable printed.
fn kept(first: &Catalogue, own: &Catalogue, findings: &mut Findings) {
    for (id, info) in first.messages() {
        let Some(said) = own.message(id) else { continue };
        let shape = shape(&said.entry);
        for name in chosen(&info.entry) {
            if !shape.chosen_by.contains(&name) && !shape.printed.contains(&name) {
                let message = format!("the message `{id}` of `{}` says the same whatever `${name}` is", own.tag);
                findings.push(
                    Diagnostic::error(Code::WORDS_CHOICE_LOST, said.place.clone(), message)
                        .help(format!("choose by `${name}` as `{FIRST}` does")),
                );
            }
        }
    }
}

/// The variables that a pattern makes a choice by which is none of plural.
fn chosen(pattern: &Pattern<String>) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    branches::each_choice(pattern, &mut |selector, keys| {
        if let InlineExpression::VariableReference { id } = selector
            && keys.iter().any(|key| !PLURALS.contains(&key.as_str()))
        {
            found.insert(id.name.clone());
        }
    });
    found
}

/// A sentence that says no says it in every language.
fn denied_too(
    (first, denied): (&Catalogue, &Negations),
    (own, denies): (&Catalogue, &Negations),
    unspaced: bool,
    findings: &mut Findings,
) {
    for (id, info) in first.messages().filter(|(id, _)| !denied.leaves_out(id) && !denies.leaves_out(id)) {
        let Some(said) = own.message(id) else { continue };
        let no = |text: &str| denies.not.iter().any(|word| bases::stands(text, word, !unspaced));
        let (english, said_leaves): (Leaves, Leaves) = (leaves(&info.entry), leaves(&said.entry));
        for (branch, text) in &english.branches {
            let negated = denied.not.iter().find(|word| bases::stands(text, word, true));
            let Some(word) = negated else { continue };
            // A branch that the other language has too is held against it; any other against all it says.
            let lost = match said_leaves.branches.iter().find(|(other, _)| other == branch) {
                Some((_, text)) => !no(text),
                None => !said_leaves.branches.iter().any(|(_, text)| no(text)),
            };
            if lost {
                let message = format!("the message `{id}` of `{}` has no word for «{word}»", own.tag);
                let help = format!(
                    "say no with one of the words in locales/{0}/negations.yaml, or name the message there under `apart`",
                    own.tag
                );
                findings.push(Diagnostic::error(Code::WORDS_NOT_LOST, said.place.clone(), message).help(help));
            }
        }
    }
}

/// Sentences that call a thing otherwise than the term base does.
fn strays(first: &Catalogue, own: &Catalogue, terms: &Terms, findings: &mut Findings) {
    for (id, info) in first.messages().filter(|(id, _)| !id.ends_with(TERM)) {
        let Some(said) = own.message(id) else { continue };
        let text = shape(&said.entry).text.to_lowercase();
        for term in terms.named(&shape(&info.entry).text) {
            if !term.apart.iter().any(|apart| apart.as_str() == id)
                && !term.say.iter().any(|form| text.contains(&form.to_lowercase()))
            {
                let (english, own_term) = (term.english.first(), term.say.first());
                let message = format!(
                    "the message `{id}` of `{}` does not call «{}» «{}»",
                    own.tag,
                    english.map_or("", String::as_str),
                    own_term.map_or("", String::as_str)
                );
                let help = format!(
                    "use the term, or add the form to locales/{}/terms.yaml, or name the message there under `apart`",
                    own.tag
                );
                findings.push(Diagnostic::error(Code::WORDS_TERM, said.place.clone(), message).help(help).as_warning());
            }
        }
    }
}
