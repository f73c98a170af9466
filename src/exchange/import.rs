//! Putting back what a translator returned, message by message.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast;
use fluent_syntax::{parser, serializer};

use super::branches::{Branch, Piece, codes, whole};
use super::package::{Package, Packed, Unit};
use super::read::{Returned, Returns};
use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::Place;
use crate::words::Letters;
use crate::words::escapes::cut_short;

/// What came of an import.
#[derive(Clone, Debug, Default)]
pub struct Imported {
    /// The files that changed, by their path in the folder of words: `pl/guide.ftl`.
    pub files: BTreeMap<String, String>,
    /// The messages whose words changed.
    pub changed: Vec<String>,
    /// The messages that the file calls checked for good, changed or not.
    pub finals: Vec<String>,
    /// Why the others did not go in.
    pub refused: Findings,
}

/// Puts a returned file into the words of a language.
///
/// A message goes in whole or not at all: it is refused when its English was changed since it went out, when a variable
/// or a branch was lost, when a figure was typed, or when a letter is none of the language's. What did not change is not
/// touched, to the byte.
pub fn import(returns: &Returns, package: &Package, assets: &Assets, letters: &Letters) -> Imported {
    let mut imported = Imported::default();
    let mut returned: BTreeMap<&str, &Returned> = BTreeMap::new();
    let known: BTreeSet<&str> =
        package.messages().flat_map(|message| &message.units).map(|unit| unit.id.as_str()).collect();
    let mut twice = BTreeSet::new();
    for unit in &returns.units {
        if !known.contains(unit.id.as_str()) {
            let message = format!("there is no message or branch `{}`", unit.id);
            imported.refused.push(refused(&unit.place, message, "leave it out"));
        } else if returned.insert(&unit.id, unit).is_some() {
            twice.insert(unit.id.as_str());
            let message = format!("`{}` stands here a second time", unit.id);
            imported.refused.push(refused(&unit.place, message, "keep one of them"));
        }
    }
    // Which of the two was meant nobody knows.
    returned.retain(|id, _| !twice.contains(id));
    for (area, messages) in &package.areas {
        let path = format!("{}/{area}.ftl", package.language);
        for message in messages {
            let found: Vec<(&Unit, Option<&Returned>)> =
                message.units.iter().map(|unit| (unit, returned.get(unit.id.as_str()).copied())).collect();
            let Some(first) = found.iter().find_map(|(_, returned)| *returned) else { continue };
            match judged(message, &found, letters) {
                Err((message, help)) => {
                    imported.refused.push(refused(&first.place, message, &help));
                    continue;
                }
                Ok(None) => {}
                Ok(Some(new)) => {
                    let old = imported.files.get(&path).cloned().unwrap_or_else(|| {
                        assets.text(&format!("locales/{path}")).map(|file| file.text().to_owned()).unwrap_or_default()
                    });
                    match replaced(&old, &message.id, &new) {
                        Some(text) => {
                            imported.changed.push(message.id.clone());
                            imported.files.insert(path.clone(), text);
                        }
                        None => {
                            let what = format!("`{}` cannot be written as a message", message.id);
                            imported.refused.push(refused(&first.place, what, "write it in plain words"));
                            continue;
                        }
                    }
                }
            }
            if found.iter().all(|(_, returned)| returned.is_some_and(|one| one.is_final && one.target.is_some())) {
                imported.finals.push(message.id.clone());
            }
        }
    }
    imported
}

fn refused(place: &Place, message: String, help: &str) -> Diagnostic {
    Diagnostic::error(Code::EXCHANGE_REFUSED, place.clone(), message).help(help)
}

type Judged = Result<Option<ast::Pattern<String>>, (String, String)>;

/// The new words of a message; none when they are the old ones.
fn judged(message: &Packed, found: &[(&Unit, Option<&Returned>)], letters: &Letters) -> Judged {
    let id = &message.id;
    let mut branches = Vec::new();
    let mut changed = false;
    let translated = found.iter().any(|(_, returned)| returned.is_some_and(|returned| returned.target.is_some()));
    if !translated && found.iter().all(|(unit, _)| unit.target.is_none()) {
        return Ok(None);
    }
    for (unit, returned) in found {
        let lost = || (format!("the branch `{}` of `{id}` is missing", unit.id), "send back every branch".to_owned());
        let returned = returned.ok_or_else(lost)?;
        if let Some(source) = &returned.source
            && !same(source, &unit.source)
        {
            let help = "export the words again, and translate what was changed";
            return Err((format!("the English of `{id}` is another one than when it went out"), help.to_owned()));
        }
        let target = returned.target.as_ref().ok_or_else(lost)?;
        if unit.target.as_ref().is_some_and(|old| same(old, target)) {
            branches.push(unit.target.clone().unwrap_or_default());
            continue;
        }
        changed = true;
        sound(message, unit, target, letters)?;
        branches.push(target.clone());
    }
    if !changed {
        return Ok(None);
    }
    let keys = |unit: &Unit| -> Vec<(String, String)> {
        let path = unit.id.split_once(':').map_or("", |(_, path)| path);
        path.split(':').filter_map(|step| step.split_once('.')).map(|(a, b)| (a.to_owned(), b.to_owned())).collect()
    };
    let branches: Vec<Branch> =
        found.iter().zip(branches).map(|((unit, _), pieces)| Branch { keys: keys(unit), pieces }).collect();
    Ok(Some(whole(&message.choices, &branches)))
}

/// What a changed sentence must have kept.
fn sound(message: &Packed, unit: &Unit, target: &[Piece], letters: &Letters) -> Result<(), (String, String)> {
    let (wanted, given) = (codes(&unit.source), codes(target));
    let old = unit.target.as_deref().map(codes);
    // "One day" has no figure in it: a branch of one or two may spell its number out.
    let spelt = |name: &str| ["zero", "one", "two"].iter().any(|key| unit.id.contains(&format!("{name}.{key}")));
    let lost = wanted
        .iter()
        .find(|name| !given.contains(name) && !spelt(name) && old.as_ref().is_none_or(|old| old.contains(name)));
    if let Some(name) = lost {
        let help = format!("keep the code `{{ ${name} }}`");
        return Err((format!("`{}` lost the variable `{name}`", unit.id), help));
    }
    let surplus = given.iter().find(|name| {
        !wanted.contains(name)
            && old.as_ref().is_none_or(|old| !old.contains(name))
            && message.choices.iter().all(|choice| choice.variable != **name)
    });
    if let Some(name) = surplus {
        return Err((format!("`{}` has no variable `{name}`", unit.id), "take the code out".to_owned()));
    }
    let text: String = target
        .iter()
        .map(|piece| match piece {
            Piece::Text(text) => text.as_str(),
            Piece::Code(_) => " ",
        })
        .collect();
    if text.trim().is_empty()
        && unit.source.iter().any(|piece| matches!(piece, Piece::Text(text) if !text.trim().is_empty()))
    {
        return Err((format!("`{}` says nothing", unit.id), "translate it".to_owned()));
    }
    if text.chars().any(char::is_numeric) {
        let help = "take the figure from a code, or spell it out".to_owned();
        return Err((format!("a figure is typed in `{}`", unit.id), help));
    }
    let source: String = unit
        .source
        .iter()
        .filter_map(|piece| match piece {
            Piece::Text(text) => Some(text.as_str()),
            Piece::Code(_) => None,
        })
        .collect();
    match letters.fault(&text, &source) {
        Some(fault) => Err((format!("`{}` {fault}", unit.id), "write it in the letters of the language".to_owned())),
        None => Ok(()),
    }
}

/// Whether two sentences are the same to a reader: a tool may break lines.
fn same(a: &[Piece], b: &[Piece]) -> bool {
    let plain = |pieces: &[Piece]| -> Vec<Piece> {
        pieces
            .iter()
            .map(|piece| match piece {
                Piece::Text(text) if text.contains(['\n', '\t', '\r']) => {
                    let ends = |space: bool| if space { " " } else { "" };
                    let words = text.split_whitespace().collect::<Vec<_>>().join(" ");
                    let (head, tail) = (text.starts_with(char::is_whitespace), text.ends_with(char::is_whitespace));
                    Piece::Text(format!("{}{words}{}", ends(head), ends(tail)))
                }
                piece => piece.clone(),
            })
            .collect()
    };
    plain(a) == plain(b)
}

/// A file with one message replaced, or added at its end; all else stays to the byte. None when it would not be read
/// back as it was meant.
fn replaced(file: &str, id: &str, pattern: &ast::Pattern<String>) -> Option<String> {
    let message = ast::Message {
        id: ast::Identifier { name: id.to_owned() },
        value: Some(pattern.clone()),
        attributes: Vec::new(),
        comment: None,
    };
    let written = serializer::serialize(&ast::Resource { body: vec![ast::Entry::Message(message)] });
    let new = match range(file, id) {
        Some(range) => format!("{}{}{}", &file[..range.start], written, &file[range.end..]),
        None => {
            let gap = if file.is_empty() || file.ends_with('\n') { "" } else { "\n" };
            format!("{file}{gap}{written}")
        }
    };
    let (before, after) = (messages(file)?, messages(&new)?);
    let kept = before.iter().filter(|(name, _)| *name != id).all(|(name, value)| after.get(name) == Some(value));
    let meant = messages(&written)?;
    (kept && after.get(id) == meant.get(id) && after.len() <= before.len() + 1).then_some(new)
}

fn messages(file: &str) -> Option<BTreeMap<String, ast::Pattern<String>>> {
    if cut_short(file).is_some() {
        return None;
    }
    let resource = parser::parse(file.to_owned()).ok()?;
    let all = resource.body.into_iter().filter_map(|entry| match entry {
        ast::Entry::Message(message) => Some((message.id.name, message.value?)),
        _ => None,
    });
    Some(all.collect())
}

/// Where a message stands in its file, from its name to the end of its last line.
fn range(file: &str, id: &str) -> Option<std::ops::Range<usize>> {
    let mut at = 0;
    let mut found: Option<(usize, usize)> = None;
    for line in file.split_inclusive('\n') {
        let begins = line.starts_with(|c: char| c.is_ascii_alphabetic() || c == '-' || c == '#');
        match &mut found {
            None if begins && line.split_once('=').is_some_and(|(name, _)| name.trim_end() == id) => {
                found = Some((at, at + line.len()));
            }
            Some(_) if begins => break,
            Some((_, end)) if !line.trim().is_empty() => *end = at + line.len(),
            _ => {}
        }
        at += line.len();
    }
    found.map(|(start, end)| start..end)
}
