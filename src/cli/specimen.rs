//! `palmleaf specimen`.

use std::path::PathBuf;

use clap::Args;
use serde_json::{Map, Value, json};

use super::Ended;
use super::args::{Cache, Overlay};
use super::check::{keeping, refused, workshop};
use super::describe::EXAMPLE;
use super::draw::language;
use super::terminal::Terminal;
use crate::body::Finger;
use crate::case::{self, Paper};
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{FactsAsk, FactsFor, Message, SheetKind};
use crate::language::Language;
use crate::output::store;
use crate::pipeline::Workshop;
use crate::source::SourceText;
use crate::typeset::{Leaf, Look};
use crate::words::{self, About, Speaker};

/// The kinds of blocks that a sheet is made of, in the order of the page. `ul` is advice.
const COMPONENTS: [&str; 19] = [
    "hand",
    "facts",
    "strips",
    "schedule",
    "calendar",
    "steps",
    "spots",
    "checks",
    "exercises",
    "activities",
    "care",
    "warning",
    "ladder",
    "diary",
    "note",
    "later",
    "joints",
    "plates",
    "ul",
];
/// What closes a sheet.
const CLOSING: &str = "initial";
/// What is told of letters, lines, distances and signs.
const WORDS: [&str; 37] = [
    "intro",
    "letters",
    "title-name",
    "section",
    "panel",
    "body",
    "small",
    "big",
    "lines",
    "hair",
    "rule",
    "bar",
    "heavy",
    "spaces",
    "unit",
    "item-gap",
    "section-gap",
    "margin",
    "hang",
    "signs",
    "sign-tile",
    "sign-off",
    "sign-stop",
    "sign-notice",
    "sign-telephone",
    "sign-fine",
    "sign-wrong",
    "sign-change",
    "sign-visit",
    "sign-fitting",
    "sign-turn",
    "sign-letter",
    "sign-sun",
    "sign-moon",
    "components",
    "head-name",
    "head-use",
];
/// Days of the diary that are shown.
const DAYS: usize = 2;

#[derive(Args, Debug)]
pub struct SpecimenArgs {
    /// The language of the components.
    #[arg(long, value_name = "TAG", default_value = "en")]
    pub language: String,
    /// The file to write.
    #[arg(long, short, value_name = "FILE", default_value = "specimen.pdf")]
    pub out: PathBuf,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub overlay: Overlay,
}

pub fn run(args: &SpecimenArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    match make(&workshop, args) {
        Ok(file) if terminal.is_json() => {
            terminal.say_json(&json!({"files": [file]}));
            Ended::Well
        }
        Ok(file) => {
            terminal.say(&file);
            Ended::Well
        }
        Err(findings) => refused(&findings, terminal),
    }
}

fn make(workshop: &Workshop, args: &SpecimenArgs) -> Result<String, Findings> {
    let language = language(workshop, &args.language)?;
    let first = self::language(workshop, words::lint::FIRST)?;
    let english = workshop.words.speaker(&first)?;
    let leaves: Vec<Leaf> = [PrintSize::Standard, PrintSize::Large, PrintSize::Giant]
        .into_iter()
        .map(|print| leaf(workshop, &language, &english, print))
        .collect::<Result<_, _>>()?;
    let title = english.plain("specimen-title", &[])?;
    let about = About { sheet: "booklet", description: &title, ..about(&title, PrintSize::Standard) };
    let mut cover = words::bare(&workshop.words, &first, &about, "booklet-caution")?;
    cover["contents"] = english.plain("booklet-contents", &[])?.into();
    let pdf = workshop.typesetter.bind(cover, leaves)?.undated_pdf()?;
    Ok(store::write_one(&args.out, pdf)?.display().to_string())
}

fn about(title: &str, print: PrintSize) -> About<'_> {
    About { sheet: "guide", half: false, title, author: None, description: title, paper: Paper::A4, print, date: None }
}

/// The whole system in one size of print.
fn leaf(workshop: &Workshop, language: &Language, english: &Speaker<'_>, print: PrintSize) -> Result<Leaf, Findings> {
    let blocks = blocks(workshop, language, print)?;
    let told = |what: &str| english.plain(&format!("specimen-{what}"), &[]);
    let mut components = Vec::new();
    for kind in COMPONENTS.into_iter().chain([CLOSING]) {
        let Some(block) = blocks.get(kind) else {
            let message = format!("the built-in case has no component `{kind}` to show");
            return Err(Diagnostic::outside(Code::TYPESET_FAILED, message).help("report this").into());
        };
        components.push(json!({
            "name": told(&format!("{kind}-name"))?,
            "use": told(&format!("{kind}-use"))?,
            "blocks": [block],
        }));
    }
    let mut said = Map::new();
    for what in WORDS {
        said.insert(what.to_owned(), told(what)?.into());
    }
    let title = english.plain(&format!("specimen-print-{}", print.word()), &[])?;
    let mut data = words::bare(&workshop.words, language, &about(&title, print), "booklet-caution")?;
    data["line"] = language.entry.english.clone().into();
    data["words"] = said.into();
    data["sample"] = workshop.words.speaker(language)?.say(&Message::new("skin-title"), &[])?.into();
    data["components"] = components.into();
    Ok(Leaf { look: Look::Specimen, data, logo: None })
}

/// The first block of each kind that the sheets of the built-in case and the fact sheet of its condition have.
fn blocks(workshop: &Workshop, language: &Language, print: PrintSize) -> Result<Map<String, Value>, Findings> {
    let source = SourceText::new("the built-in case", EXAMPLE);
    let mut file = case::read_text(&source)?;
    file.language.value = language.tag.clone();
    file.print = Some(print);
    let side = file.hand;
    let id = file.condition.value.clone();
    let hands = workshop.judge(file, source)?.plans()?;
    let mut leaves = Vec::new();
    for kind in [SheetKind::Guide, SheetKind::Diary] {
        leaves.extend(workshop.leaf(kind, &hands)?);
    }
    if let Some(condition) = workshop.library.conditions.get(&id) {
        leaves.push(workshop.facts_leaf(FactsAsk {
            library: &workshop.library,
            id: &id,
            condition,
            reader: FactsFor::Patients,
            language: language.clone(),
            side,
            finger: Finger::Index,
            paper: Paper::A4,
            print,
        })?);
    }
    let mut found = Map::new();
    for leaf in leaves {
        let sections = leaf.data["parts"][0]["sections"].as_array().cloned().unwrap_or_default();
        for block in sections.iter().filter_map(|section| section["blocks"].as_array()).flatten() {
            if let Some(kind) = block["t"].as_str()
                && !found.contains_key(kind)
            {
                found.insert(kind.to_owned(), block.clone());
            }
        }
    }
    if let Some(days) = found.get_mut("diary").and_then(|diary| diary["days"].as_array_mut()) {
        days.truncate(DAYS);
    }
    Ok(found)
}
