//! Everything that reads a file, on files that chance has changed: words come of each, or findings, and never a panic.
//!
//! The seeds are good files of the repository and those kept in `tests/fuzz/corpus`. Run number N of a target is the
//! same everywhere; `PALMLEAF_FUZZ=1000000` makes that many of each, `tests/fuzz/run` says more. An input that panics is
//! written to `target/fuzz`; keep it in the corpus when the fault is mended.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::time::{Duration, Instant};

use palmleaf::assets::Assets;
use palmleaf::batch::List;
use palmleaf::clinic::ClinicFile;
use palmleaf::content::{
    Condition, Course, Exercise, Factor, General, Handling, Motion, NeedRule, Orthosis, Sign, Source, Spot,
    StepWeights, Structure, WearPattern,
};
use palmleaf::diag::Findings;
use palmleaf::diag::render::{self, Style};
use palmleaf::exchange::{from_csv, from_xliff};
use palmleaf::markdown::{self, Dialect};
use palmleaf::source::{At, FromNode, Limits, Reader, SourceText, parse};
use palmleaf::words::{Catalogue, Letters};
use rayon::prelude::*;

use crate::batch;
use crate::dice::{Dice, times};
use crate::hostile::strings;
use crate::support::{WORKSHOP, files, path};

/// What chance puts in: marks that mean something to one of the readers.
const TOKENS: &[&str] = &[
    "\n",
    "  ",
    "\t",
    ":",
    ": ",
    "- ",
    "? ",
    "[",
    "]",
    "{",
    "}",
    "&a ",
    "*a",
    "!!str ",
    "|",
    ">",
    "'",
    "\"",
    "#",
    "%",
    "---\n",
    "...\n",
    "<<: ",
    "null",
    "~",
    "0",
    "-1",
    "1e309",
    "9999999999999999999",
    "2027-02-30",
    "25:00",
    "360 deg",
    "**",
    "__",
    "](",
    "![",
    "<b>",
    "</",
    "/>",
    "<!--",
    "<![CDATA[",
    "<!DOCTYPE",
    "&amp;",
    "&#0;",
    "<pc id=\"1\">",
    "<ph id=\"1\"/>",
    "xml:lang",
    "{ $",
    "{ -",
    " -> ",
    "*[other]",
    "[one]",
    ".attr = ",
    "= ",
    "\r",
    "\u{feff}",
    "\u{0}",
    "\u{202e}",
    "\u{301}",
    "é",
    "手",
    "👩\u{200d}⚕",
    "=cmd",
    ",",
    ";",
    "\"\"",
    "\u{a0}",
    "\u{2028}",
];

/// Where to cut: any number, moved to the start of a character.
fn cut(text: &str, mut at: usize) -> usize {
    at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

/// A seed, changed in a few places.
fn changed(seeds: &[String], dice: &mut Dice) -> String {
    let mut text = seeds[dice.below(seeds.len())].clone();
    for _ in 0..=dice.below(6) {
        let from = cut(&text, dice.below(text.len() + 1));
        let long = if dice.below(8) == 0 { 400 } else { 12 };
        let to = cut(&text, from + dice.below(long)).max(from);
        match dice.below(9) {
            0 => text.truncate(from),
            1 => text.replace_range(from..to, ""),
            2 => {
                let again = text[from..to].to_owned();
                text.insert_str(from, &again);
            }
            3 | 4 => text.replace_range(from..to, dice.one(TOKENS)),
            5 => text.insert_str(from, dice.one(TOKENS)),
            6 => text.insert_str(from, &dice.one(TOKENS).repeat(dice.below(200))),
            7 => {
                // Lines of one seed in another.
                let other = &seeds[dice.below(seeds.len())];
                let start = cut(other, dice.below(other.len() + 1));
                let end = cut(other, start + dice.below(300)).max(start);
                text.replace_range(from..to, &other[start..end]);
            }
            _ => {
                let letter = char::from_u32(dice.below(0x3000) as u32).unwrap_or('\u{fffd}');
                text.replace_range(from..to, &letter.to_string());
            }
        }
    }
    text
}

/// What a target found; it has to be sayable.
fn said(findings: &Findings) {
    for style in [Style::Short, Style::Full { colour: false }] {
        assert!(!render::text(findings, style).is_empty());
    }
}

fn case(text: &str) {
    let source = SourceText::new("case.yaml", text);
    match palmleaf::case::read_text(&source) {
        Ok(file) => match WORKSHOP.judge(file, source) {
            Ok(judged) => drop(judged.faults()),
            Err(findings) => said(&findings),
        },
        Err(mut findings) => {
            findings.extend(palmleaf::case::known_ids(&source, &WORKSHOP.library, &WORKSHOP.languages));
            said(&findings);
        }
    }
}

fn content(text: &str) {
    fn as_a<T: FromNode>(text: &str) {
        let source = SourceText::new("content.yaml", text);
        match parse(&source, Limits::CONTENT) {
            Ok(node) => {
                let mut reader = Reader::new(&source);
                let value = T::from_node(&node, &mut reader);
                let findings = reader.finish();
                assert!(value.is_some() || findings.has_errors(), "nothing read and nothing said");
                if findings.has_errors() {
                    said(&findings);
                }
            }
            Err(fault) => said(&fault.into()),
        }
    }
    // The first line of a seed says what it is; what is no comment any more is read as each in turn.
    match text.lines().next().unwrap_or_default() {
        "# conditions" => as_a::<Condition>(text),
        "# orthoses" => as_a::<Orthosis>(text),
        "# exercises" => as_a::<Exercise>(text),
        "# factors" => as_a::<Factor>(text),
        "# wear" => as_a::<WearPattern>(text),
        "# motions" => as_a::<Motion>(text),
        "# shapes" => as_a::<palmleaf::content::Shape>(text),
        "# activities" => as_a::<palmleaf::content::Activity>(text),
        "# structures.yaml" => as_a::<Vec<At<Structure>>>(text),
        "# sources.yaml" => as_a::<Vec<At<Source>>>(text),
        "# signs.yaml" => as_a::<Vec<At<Sign>>>(text),
        "# spots.yaml" => as_a::<Vec<At<Spot>>>(text),
        "# handling.yaml" => as_a::<Vec<At<Handling>>>(text),
        "# courses.yaml" => as_a::<Vec<Course>>(text),
        "# needs.yaml" => as_a::<Vec<At<NeedRule>>>(text),
        "# general.yaml" => as_a::<General>(text),
        "# steps.yaml" => as_a::<StepWeights>(text),
        "# clinic.yaml" => as_a::<ClinicFile>(text),
        _ => as_a::<Condition>(text),
    }
}

fn note(text: &str) {
    for dialect in [Dialect::Note, Dialect::Own, Dialect::Section] {
        match markdown::parse(text, dialect) {
            Ok(_) => {}
            Err(faults) => {
                for fault in faults {
                    // The place is shown, so it has to be one.
                    assert!(text.get(fault.range.clone()).is_some(), "{:?}", fault.range);
                }
            }
        }
    }
    let escaped = markdown::escape(text);
    assert!(markdown::parse(&escaped, Dialect::Note).is_ok(), "escaped text is markup: {escaped}");
}

fn xliff(text: &str) {
    if let Err(findings) = from_xliff(&SourceText::new("back.xlf", text)) {
        said(&findings);
    }
}

fn csv(text: &str) {
    if let Err(findings) = from_csv(&SourceText::new("back.csv", text), "es") {
        said(&findings);
    }
}

fn fluent(text: &str) {
    let entry = &WORKSHOP.languages.find(&"en".parse().expect("a tag")).expect("a language").entry;
    let assets = Assets::default().with("locales/en/guide.ftl", text);
    match Catalogue::load(&assets, entry) {
        Ok(catalogue) => {
            for (id, _) in catalogue.messages() {
                let _unsaid = catalogue.speak(id, &fluent_bundle::FluentArgs::new());
            }
        }
        Err(findings) => said(&findings),
    }
    let _fault = Letters::of(entry).fault(text, "");
}

/// A list of cases with its mapping, in files of the thread's own; of each row a case, or what is wrong with its cells.
fn list(name: &str, bytes: &[u8], mapping: &str) {
    /// Rows that are looked at; the others come from the same changes.
    const ROWS: usize = 4;
    let thread = rayon::current_thread_index().map_or_else(|| "seed".to_owned(), |number| number.to_string());
    let folder = path("target/fuzz/lists").join(thread);
    std::fs::create_dir_all(&folder).expect("a folder");
    let (list, map) = (folder.join(name), folder.join("mapping.yaml"));
    std::fs::write(&list, bytes).expect("a list");
    std::fs::write(&map, mapping).expect("a mapping");
    let list = match List::open(&list, Some(&map)) {
        Ok(list) => list,
        Err(findings) => return said(&findings),
    };
    for row in 0..list.len().min(ROWS) {
        let draft = match list.draft(row) {
            Ok(draft) => draft,
            Err(findings) => {
                said(&findings);
                continue;
            }
        };
        if draft.faults.has_errors() {
            said(&draft.faults);
        }
        let read = WORKSHOP.read_source(draft.source.clone());
        let judged = read.and_then(|(file, source)| Ok(WORKSHOP.judge(file, source)?.faults()));
        let found = draft.at_origin(judged.unwrap_or_else(|findings| findings));
        if found.has_errors() {
            said(&found);
        }
    }
}

/// Between a mapping and its list in a seed.
const LIST: &str = "\n# the list\n";

fn rows(text: &str) {
    let (mapping, body) = text.split_once(LIST).unwrap_or((batch::MAPPING, text));
    list("cases.csv", body.as_bytes(), mapping);
}

/// The sheet of a workbook: what packs it is another's work, and stays as it is.
fn workbook(text: &str) {
    list("cases.xlsx", &batch::workbook(&[("Cases", "visible", text)]), batch::MAPPING);
}

/// Good files below folders of the repository, none of them long.
fn below(folders: &[&str], ending: &str) -> Vec<(PathBuf, String)> {
    folders
        .iter()
        .flat_map(|folder| files(folder, ending))
        .map(|file| (file.clone(), std::fs::read_to_string(&file).expect("a seed")))
        .collect()
}

/// A piece of a long file: whole lines, so that runs stay quick.
fn pieces(text: &str) -> Vec<String> {
    let lines: Vec<&str> = text.split_inclusive('\n').collect();
    lines.chunks(60).map(|chunk| chunk.concat()).collect()
}

fn seeds(target: &str) -> Vec<String> {
    let mut seeds: Vec<String> =
        below(&[&format!("tests/fuzz/corpus/{target}")], "").into_iter().map(|(_, text)| text).collect();
    let own = |folders: &[&str], ending: &str| below(folders, ending).into_iter().map(|(_, text)| text);
    match target {
        "case" => seeds.extend(own(&["examples", "tests/cases"], ".yaml")),
        "content" => {
            for (file, text) in below(&["content"], ".yaml") {
                let inside = file.strip_prefix(path("content")).expect("below");
                let kind = inside.components().next().expect("a name").as_os_str().to_string_lossy().into_owned();
                seeds.push(format!("# {kind}\n{}", pieces(&text).swap_remove(0)));
            }
            seeds.push(format!("# clinic.yaml\n{}", crate::support::file("examples/harbour-row/clinic.yaml")));
        }
        "note" => {
            seeds.extend(own(&["examples", "content/sections"], ".md"));
            seeds.extend(strings::all().into_iter().filter(|text| text.len() < 700));
        }
        "rows" => {
            let heads = format!("{}{}", batch::HEADS, batch::ROW);
            seeds.push(heads.clone());
            seeds.push(heads.replace(',', ";").replace('-', "/"));
            seeds.push(format!("{}{LIST}{heads}", batch::MAPPING));
            let file = |name: &str| crate::support::file(&format!("examples/morning-list/{name}"));
            seeds.push(format!("{}{LIST}{}", file("mapping.yaml"), file("cases.csv")));
        }
        "workbook" => {
            seeds.push(batch::sheet(batch::DATES));
            seeds.push(batch::sheet(
                "<c r=\"F2\"><f>TODAY()</f><v>46447</v></c><c r=\"G2\" t=\"str\"><v>2027-03-29</v></c>",
            ));
            seeds.push(format!(
                "{}<mergeCells count=\"1\"><mergeCell ref=\"A2:B2\"/></mergeCells>",
                batch::sheet(batch::DATES)
            ));
        }
        "fluent" => {
            let all: Vec<String> = own(&["locales/en", "locales/es", "locales/ar"], ".ftl").collect();
            seeds.extend(all.iter().flat_map(|text| pieces(text).into_iter().take(2)));
        }
        _ => {}
    }
    seeds.retain(|seed| !seed.is_empty());
    seeds
}

/// Nothing that was made so takes longer than this; a machine under load is slow too.
const LONGEST: Duration = Duration::from_secs(10);

fn fuzzed(target: &str, run: fn(&str)) {
    let seeds = seeds(target);
    assert!(seeds.len() >= 2, "{target} has no seeds");
    // Each as it stands first: what once was a fault.
    seeds.iter().for_each(|seed| run(seed));
    let count = times("PALMLEAF_FUZZ", 2_000);
    let started = Instant::now();
    let faults: Vec<usize> = (0..count)
        .into_par_iter()
        .filter(|number| {
            let text = changed(&seeds, &mut Dice::new(*number as u64));
            let begun = Instant::now();
            let done = catch_unwind(AssertUnwindSafe(|| run(&text)));
            let is_fault = done.is_err() || begun.elapsed() > LONGEST;
            if is_fault {
                let folder = path("target/fuzz");
                std::fs::create_dir_all(&folder).expect("a folder");
                std::fs::write(folder.join(format!("{target}-{number}")), &text).expect("a file");
            }
            is_fault
        })
        .collect();
    println!("{target}: {count} runs from {} seeds in {:.0?}", seeds.len(), started.elapsed());
    assert!(faults.is_empty(), "{target}: runs {faults:?} failed; they are in target/fuzz");
}

#[test]
fn case_files() {
    fuzzed("case", case);
}

#[test]
fn content_files() {
    fuzzed("content", content);
}

#[test]
fn notes() {
    fuzzed("note", note);
}

#[test]
fn xliff_files() {
    fuzzed("xliff", xliff);
}

#[test]
fn csv_files() {
    fuzzed("csv", csv);
}

#[test]
fn rows_of_lists() {
    fuzzed("rows", rows);
}

#[test]
fn sheets_of_workbooks() {
    fuzzed("workbook", workbook);
}

#[test]
fn fluent_files() {
    fuzzed("fluent", fluent);
}
