//! `palmleaf draw`.

mod caption;
mod files;
mod inside;
mod lettering;
mod posture;
mod postures;
mod wanted;

use rayon::prelude::*;
use serde_json::{Value, json};

use super::Ended;
use super::args::DrawArgs;
use super::check::{keeping, refused, workshop};
use super::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::OrthosisId;
use crate::language::{Language, LanguageTag};
use crate::picture::asks::Sitter;
use crate::picture::plate::Drawing;
use crate::picture::scene::{LabelText, Picture, bones};
use crate::picture::standalone::LEADING;
use crate::pipeline::Workshop;
use crate::units::Misread;
use caption::label;
use files::{Kind, Shown};
pub use wanted::Group;
use wanted::Wanted;

pub fn run(args: &DrawArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    match draw(&workshop, args, terminal) {
        Ok(()) => Ended::Well,
        Err(findings) => refused(&findings, terminal),
    }
}

fn draw(workshop: &Workshop, args: &DrawArgs, terminal: &Terminal) -> Result<(), Findings> {
    // What is wrong with the command line is said before anything is drawn.
    let kind = match &args.out {
        Some(path) => Some((path.as_path(), Kind::of(path, args.sheet.is_some())?)),
        None if terminal.is_json() => None,
        None => {
            let message = "no file is named that the picture goes to";
            return Err(Diagnostic::outside(Code::DRAW_FILE_TYPE, message)
                .help("add `--out FILE.svg`, `--out FILE.pdf` or `--out FILE.png`")
                .into());
        }
    };
    let language = language(workshop, &args.language)?;
    let wanted = wanted::wanted(workshop, args, &language)?;
    let drawn: Vec<Result<Shown, Diagnostic>> = wanted.into_par_iter().map(|one| shown(workshop, one)).collect();
    let mut findings = Findings::default();
    let mut pictures = Vec::new();
    for one in drawn {
        match one {
            Ok(one) => pictures.push(one),
            Err(fault) => findings.push(fault),
        }
    }
    if findings.has_errors() {
        return Err(findings);
    }
    let files = match kind {
        Some((path, kind)) => files::write(workshop, &language, path, kind, &pictures, args.sheet.is_some())?,
        None => Vec::new(),
    };
    if terminal.is_json() {
        let rows = pictures.iter().map(row).collect::<Result<Vec<Value>, Diagnostic>>()?;
        let unit = format!("1/{} mm", Drawing::UNIT);
        terminal.say_json(&json!({"unit": unit, "files": files, "pictures": rows}));
    } else {
        files.iter().for_each(|file| terminal.say(file));
    }
    Ok(())
}

/// The pictures of an orthosis in groups, each with its caption, for the look of a gallery. Where they are not `drawn`,
/// each is told by its request: enough to know whether it would be another picture.
///
/// # Errors
/// An orthosis that is not known, has no look or cannot be drawn.
pub fn gallery(
    workshop: &Workshop,
    language: &Language,
    sitter: Sitter,
    id: &OrthosisId,
    drawn: bool,
) -> Result<Vec<(Group, Vec<Value>)>, Findings> {
    let groups = wanted::of_orthosis(workshop, language, sitter, id)?;
    if !drawn {
        let told = |one: &Wanted| {
            let names: Vec<String> = one.names.iter().map(|name| format!("{name:?}")).collect();
            let words = [&one.id, &one.title, &one.caption, &one.about];
            json!({"request": one.request.key(), "words": words, "group": one.group, "names": names})
        };
        return Ok(groups.into_iter().map(|(group, wanted)| (group, wanted.iter().map(told).collect())).collect());
    }
    let drawn = groups.into_iter().map(|(group, wanted)| {
        let shown = wanted.into_iter().map(|one| shown(workshop, one)).collect::<Result<Vec<Shown>, Diagnostic>>()?;
        Ok((group, shown.iter().map(files::picture).collect()))
    });
    drawn.collect()
}

/// A language that there are words for.
///
/// # Errors
/// When there are none.
pub fn language(workshop: &Workshop, tag: &str) -> Result<Language, Findings> {
    let known = || {
        let diagnostic = Diagnostic::outside(Code::ID_UNKNOWN, format!("there are no words in the language `{tag}`"));
        diagnostic.help(format!("use one of: {}", workshop.languages.tags().join(", ")))
    };
    let tag: LanguageTag = tag.parse().map_err(|_: Misread| known())?;
    Ok(workshop.languages.find(&tag).ok_or_else(known)?)
}

fn shown(workshop: &Workshop, wanted: Wanted) -> Result<Shown, Diagnostic> {
    match workshop.album.get(&wanted.request) {
        Ok(picture) => Ok(Shown { wanted, picture }),
        Err(why) => {
            let Wanted { id, .. } = &wanted;
            let diagnostic = Diagnostic::outside(Code::DRAW_IMPOSSIBLE, format!("{id} cannot be drawn: {why}"));
            Err(diagnostic.help("correct its look in the content, or ask for another finger"))
        }
    }
}

fn row(shown: &Shown) -> Result<Value, Diagnostic> {
    let Shown { wanted, picture } = shown;
    let Picture { drawing, labels } = &**picture;
    let labels: Vec<Value> = labels
        .iter()
        .map(|one| {
            let lines = label(one.text, &wanted.names);
            let high: f64 = lines.iter().map(|line| line.size * LEADING * Drawing::UNIT).sum();
            let words: Vec<String> = lines.into_iter().map(|line| line.text).collect();
            let kind = match one.text {
                LabelText::Letter(_) => "letter",
                LabelText::Number(_) => "number",
                LabelText::Structure(_) => "structure",
            };
            json!({"text": words.join(" "), "x": one.at.x, "y": one.at.y, "wide": one.wide, "high": high, "kind": kind})
        })
        .collect();
    let bones = bones(&wanted.request).map_err(|why| Diagnostic::outside(Code::DRAW_IMPOSSIBLE, why.to_string()))?;
    let skeleton = bones.map(|(scale, bones)| {
        let rows: Vec<Value> = bones
            .iter()
            .map(|bone| json!({"segment": bone.segment.to_string(), "from": [bone.from.x, bone.from.y], "to": [bone.to.x, bone.to.y]}))
            .collect();
        json!({"units-for-each-mm-of-the-limb": scale, "bones": rows})
    });
    Ok(json!({
        "id": wanted.id,
        "title": wanted.title,
        "about": wanted.about,
        "view": wanted.request.view.word(),
        "side": wanted.request.side.word(),
        "width": drawing.width,
        "height": drawing.height,
        "paths": drawing.parts.len(),
        "curves-and-lines": drawing.nodes(),
        "labels": labels,
        "skeleton": skeleton,
    }))
}
