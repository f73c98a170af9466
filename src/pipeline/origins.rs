//! Where every sentence of a guide comes from: the lines of the case and the rules of the content that led to it.

use std::collections::BTreeMap;

use serde::Serialize;
use serde_json::Value;

use super::{Planned, Workshop};
use crate::content::Basis;
use crate::diag::Findings;
use crate::document::{Cause, SheetKind};
use crate::source::{Limits, Node, SourceText, Step, parse};
use crate::words::{self, Heard, Spoken};

/// Fields of a case that each hand has of its own.
const OWN: [&str; 9] =
    ["condition", "finger", "protocol", "other_conditions", "orthosis", "angles", "begun", "findings", "overrides"];

/// What a line is to a sentence.
#[derive(Serialize, Clone, Copy, PartialEq, Eq, Debug)]
#[serde(rename_all = "kebab-case")]
pub enum Led {
    /// A line of the case.
    Case,
    /// The clinic's own file, where the case does not say it.
    Clinic,
    /// The case does not say it: what holds then.
    Unsaid,
    /// A rule of the content.
    Rule,
    /// Said on every guide that has this part.
    Sheet,
}

/// One line that led to a sentence.
#[derive(Serialize, Clone, PartialEq, Eq, Debug)]
#[serde(rename_all = "kebab-case")]
pub struct Origin {
    pub kind: Led,
    /// `file:line:column`.
    pub place: String,
    /// The way to that line: `phases > irritable > wear`.
    pub what: String,
    /// What a rule rests on.
    pub source: Option<String>,
}

/// A sentence that the guide prints or that is read aloud for a picture.
#[derive(Serialize, Clone, Debug)]
#[serde(rename_all = "kebab-case")]
pub struct Sentence {
    /// The id of its message; none for words that somebody typed.
    pub message: Option<String>,
    pub text: String,
    pub origins: Vec<Origin>,
}

/// The sentences of one section.
#[derive(Serialize, Clone, Debug)]
#[serde(rename_all = "kebab-case")]
pub struct SectionOrigins {
    pub hand: &'static str,
    /// The name of its template; `page` for what stands round the sections.
    pub section: String,
    pub sentences: Vec<Sentence>,
}

/// Files that were read for their lines, each once.
struct Files<'w> {
    workshop: &'w Workshop,
    case: SourceText,
    trees: BTreeMap<String, Option<Node>>,
}

impl Workshop {
    /// Every sentence of the guide of these plans with what led to it.
    ///
    /// # Errors
    /// When something in the guide cannot be said.
    pub fn origins(&self, hands: &[Planned<'_>]) -> Result<Vec<SectionOrigins>, Findings> {
        let Some(((admitted, _), document)) = hands.first().zip(self.document(SheetKind::Guide, hands)) else {
            return Ok(Vec::new());
        };
        let (sheet, spoken) = words::overhear(&self.words, &document)?;
        let mut files = Files { workshop: self, case: admitted.case().source.clone(), trees: BTreeMap::new() };
        let mut all = Vec::new();
        for stretch in spoken.into_iter().filter(|stretch| !stretch.heard.is_empty()) {
            let part = document.parts().nth(stretch.part).unwrap_or(&document.main);
            let printed = printed(&sheet.data, &stretch);
            let sentences = sentences(&mut files, &stretch, &printed);
            let section = stretch.section.unwrap_or_else(|| "page".to_owned());
            if !sentences.is_empty() {
                all.push(SectionOrigins { hand: part.side.word(), section, sentences });
            }
        }
        if let Some(note) = typed(&mut files, &sheet.data) {
            all.push(note);
        }
        Ok(all)
    }
}

/// All strings of the stretch as it is printed.
fn printed(data: &Value, stretch: &Spoken) -> Vec<String> {
    let mut strings = Vec::new();
    match &stretch.section {
        Some(name) => {
            let sections = data["parts"][stretch.part]["sections"].as_array();
            let own = sections.into_iter().flatten().filter(|section| section["id"] == name.as_str());
            own.for_each(|section| leaves(section, &mut strings));
        }
        None => {
            leaves(&data["furniture"], &mut strings);
            leaves(&data["meta"], &mut strings);
            for part in data["parts"].as_array().into_iter().flatten() {
                ["title", "for", "hand"].iter().for_each(|field| leaves(&part[*field], &mut strings));
            }
        }
    }
    strings
}

fn leaves(value: &Value, strings: &mut Vec<String>) {
    match value {
        Value::String(text) => strings.push(text.clone()),
        Value::Array(items) => items.iter().for_each(|item| leaves(item, strings)),
        Value::Object(fields) => fields.values().for_each(|field| leaves(field, strings)),
        _ => {}
    }
}

/// What was heard and is printed, each once.
fn sentences(files: &mut Files<'_>, stretch: &Spoken, printed: &[String]) -> Vec<Sentence> {
    let mut all: Vec<Sentence> = Vec::new();
    for heard in &stretch.heard {
        // What the sheet's own words say only to put it into something longer is no sentence.
        let whole = heard.causes.is_empty() && stretch.section.is_some();
        let stands = |text: &String| if whole { text.trim() == heard.text.trim() } else { text.contains(&heard.text) };
        let known = all.iter().any(|known| known.text == heard.text && known.message.as_deref() == Some(&*heard.key));
        if known || heard.text.is_empty() || !printed.iter().any(stands) {
            continue;
        }
        let mut origins: Vec<Origin> = Vec::new();
        for cause in &heard.causes {
            let origin = files.origin(cause, stretch.part);
            if !origins.contains(&origin) {
                origins.push(origin);
            }
        }
        if origins.is_empty() {
            origins.push(files.sheet(heard, stretch.section.as_deref()));
        }
        all.push(Sentence { message: Some(heard.key.to_string()), text: heard.text.clone(), origins });
    }
    all
}

/// The therapist's own words.
fn typed(files: &mut Files<'_>, data: &Value) -> Option<SectionOrigins> {
    let sections = data["parts"][0]["sections"].as_array()?;
    let blocks = sections.iter().filter_map(|section| section["blocks"].as_array()).flatten();
    let mut texts = Vec::new();
    blocks.filter(|block| block["t"] == "note").for_each(|block| leaves(&block["blocks"], &mut texts));
    let origin = files.origin(&Cause::case("note"), 0);
    let text = texts.concat();
    let sentence = Sentence { message: None, text, origins: vec![origin] };
    let hand = if data["parts"][0]["side"] == "left" { "left" } else { "right" };
    (!sentence.text.is_empty()).then(|| SectionOrigins { hand, section: "note".to_owned(), sentences: vec![sentence] })
}

impl Files<'_> {
    fn origin(&mut self, cause: &Cause, part: usize) -> Origin {
        match cause {
            Cause::Case(way) => self.of_case(way, part),
            Cause::Rule { file, way } => {
                let source =
                    self.workshop.library.file(file).cloned().unwrap_or_else(|| SourceText::new(file.as_str(), ""));
                // A rule that is not written is said by what it would stand in, such as a phase without a length.
                let (place, steps, basis) = self.reach(&source, way);
                let basis = basis.and_then(|text| text.parse::<Basis>().ok());
                let source = basis.map(|basis| self.workshop.library.cite(&basis));
                Origin { kind: Led::Rule, place, what: shown(&way[..steps]), source }
            }
        }
    }

    fn of_case(&mut self, way: &[Step], part: usize) -> Origin {
        let other = Step::field("other_hand");
        let own = |field: &str| OWN.contains(&field);
        let way: Vec<Step> = match way.first() {
            Some(Step::Field(field)) if part > 0 && own(field) => std::iter::once(other).chain(way.to_vec()).collect(),
            Some(Step::Field(field)) if part > 0 && field == "hand" => vec![other],
            _ => way.to_vec(),
        };
        let case = self.case.clone();
        let (place, steps, _) = self.reach(&case, &way);
        if steps == way.len() {
            return Origin { kind: Led::Case, place, what: shown(&way), source: None };
        }
        let clinic = self.workshop.clinic.as_ref().filter(|_| way.first() == Some(&Step::field("clinic")));
        if let Some(source) = clinic.map(|clinic| clinic.source().clone()) {
            let (place, ..) = self.reach(&source, &way[1..]);
            return Origin { kind: Led::Clinic, place, what: shown(&way[1..]), source: None };
        }
        Origin { kind: Led::Unsaid, place, what: shown(&way), source: None }
    }

    /// The line of a section's template that says a message, or the template where its component says it.
    fn sheet(&self, heard: &Heard, section: Option<&str>) -> Origin {
        let source = section.and_then(|name| self.workshop.words.templates().source(name));
        let place = match source {
            Some(source) => {
                let at = source.text().find(&format!("\"{}\"", heard.key)).unwrap_or(0);
                let (line, column) = source.line_and_column(at);
                format!("{}:{line}:{column}", source.name())
            }
            None => "content/sheets.yaml:1:1".to_owned(),
        };
        Origin { kind: Led::Sheet, place, what: "the same on every guide".to_owned(), source: None }
    }

    fn reach(&mut self, source: &SourceText, way: &[Step]) -> (String, usize, Option<String>) {
        let tree = self.trees.entry(source.name().to_owned()).or_insert_with(|| parse(source, Limits::CONTENT).ok());
        let Some(reached) = tree.as_ref().map(|tree| tree.reach(way)) else {
            return (format!("{}:1:1", source.name()), 0, None);
        };
        let (line, column) = source.line_and_column(reached.span.start);
        (format!("{}:{line}:{column}", source.name()), reached.steps, reached.source)
    }
}

fn shown(way: &[Step]) -> String {
    let steps: Vec<&str> = way
        .iter()
        .map(|step| match step {
            Step::Field(text) | Step::Item(text) => text.as_str(),
        })
        .collect();
    steps.join(" > ")
}
