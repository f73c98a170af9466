//! The clinician's record beside a guide: what was given, to whom, from which content, and why. The facts stand here
//! once; the JSON file and the page are two views of them.

pub mod page;

use std::collections::BTreeMap;

use serde::Serialize;

use super::naming;
use super::reasoning::{self, PlanFacts, VerdictFacts};
use crate::case::Text;
use crate::checks::{Admitted, Question, in_force};
use crate::classify;
use crate::content::Basis;
use crate::language::WordState;
use crate::plan::Plan;
use crate::standing::{self, Standing};
use crate::words::{SaidQuestion, SaidTeachBack};

/// What the record is called: `record-STEM.json`, and `record-STEM.pdf` when it is asked for.
pub const RECORD: &str = "record";

/// How easily the words of a sheet read.
#[derive(Clone, Debug, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct Readability {
    /// The published formula, such as `Flesch-Kincaid grade`.
    pub formula: String,
    /// Its result, as it is printed.
    pub score: String,
}

/// A sheet that was given: how much of it there is, and the hash of its file.
#[derive(Clone, Debug, Default, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct GivenFacts {
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pages: Option<usize>,
    /// Events of a calendar.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub events: Option<usize>,
    /// BLAKE3 of the bytes of the file, in hexadecimal digits.
    pub blake3: String,
    /// Measured only where somebody measures it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub readability: Option<Readability>,
}

impl GivenFacts {
    /// Pages with the hash of their file.
    pub fn of_pages(pages: usize, bytes: &[u8]) -> Self {
        Self { pages: Some(pages), blake3: hash(bytes), ..Self::default() }
    }

    /// Events with the hash of their file.
    pub fn of_events(events: usize, bytes: &[u8]) -> Self {
        Self { events: Some(events), blake3: hash(bytes), ..Self::default() }
    }
}

fn hash(bytes: &[u8]) -> String {
    blake3::hash(bytes).to_hex().to_string()
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct ConditionFacts {
    pub id: String,
    pub icd_10_cm: String,
    pub evidence: String,
    /// Citations.
    pub evidence_from: Vec<String>,
    pub confidence: Option<String>,
    pub protocol: Option<String>,
}

/// A question of the teach-back list.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct QuestionFacts {
    pub topic: &'static str,
    pub ask: String,
    /// The same in the person's language.
    pub asked: String,
    pub points: Vec<String>,
}

/// What is recorded of one hand.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct HandFacts {
    pub hand: &'static str,
    pub finger: Option<&'static str>,
    pub conditions: Vec<ConditionFacts>,
    pub orthosis: String,
    pub systematic_name: String,
    pub verdict: Vec<VerdictFacts>,
    pub plan: PlanFacts,
    /// What was used that no clinician has confirmed, and its state.
    pub not_confirmed: BTreeMap<String, &'static str>,
    pub from_memory: Vec<String>,
    pub teach_back: Vec<QuestionFacts>,
}

/// The file of a clinic, with a hash of it and of all that it names.
#[derive(Clone, Debug, Serialize)]
pub struct ClinicFile {
    pub file: String,
    pub hash: String,
}

/// What the sheets were made from besides the case.
pub struct Sources<'a> {
    pub standing: &'a Standing,
    /// The hash of the content.
    pub content: &'a str,
    pub clinic: Option<ClinicFile>,
}

/// The sheets that were made in the person's language and another beside each other.
#[derive(Clone, Debug, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct BesideFacts {
    /// The other language.
    pub with: String,
    /// How far the words of both have been checked.
    pub translation: &'static str,
    pub sheets: BTreeMap<&'static str, GivenFacts>,
}

/// The record. It names the person only when the case does.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct Record {
    /// The version of the program.
    pub palmleaf: &'static str,
    pub caution: &'static str,
    /// The hash of the content.
    pub content: String,
    /// The hash of the case's text.
    pub case: String,
    pub person: Option<String>,
    pub reference: Option<String>,
    pub clinic: Option<String>,
    /// The clinic's own look and words, when there are any.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub clinic_file: Option<ClinicFile>,
    pub fitted: String,
    pub language: String,
    pub translation: &'static str,
    pub sheets: BTreeMap<&'static str, GivenFacts>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub beside: Option<BesideFacts>,
    pub hands: Vec<HandFacts>,
}

/// The facts of a case, unless it has no hand.
pub fn record(
    hands: &[(Admitted<'_>, Plan)],
    sources: Sources<'_>,
    sheets: BTreeMap<&'static str, GivenFacts>,
    (state, teach_back): (WordState, &[SaidTeachBack]),
) -> Option<Record> {
    let case = hands.first()?.0.case();
    let person = case.file.person.as_ref();
    let text = |text: Option<&Text>| text.map(|text| text.as_str().to_owned());
    let asked = |number: usize| teach_back.get(number).map(|hand| hand.questions.as_slice()).unwrap_or_default();
    Some(Record {
        palmleaf: env!("CARGO_PKG_VERSION"),
        caution: "Not medical advice: the treating clinician decides, and local protocol wins.",
        content: sources.content.to_owned(),
        case: naming::fingerprint(case),
        person: text(person.and_then(|person| person.name.as_ref())),
        reference: text(person.and_then(|person| person.reference.as_ref())),
        clinic: case.clinic(|clinic| clinic.name.as_ref()),
        clinic_file: sources.clinic,
        fitted: case.file.fitted.value.to_string(),
        language: case.language.tag.to_string(),
        translation: state.word(),
        sheets,
        beside: None,
        hands: hands
            .iter()
            .enumerate()
            .map(|(number, (admitted, plan))| hand(admitted, plan, sources.standing, asked(number)))
            .collect(),
    })
}

fn hand(admitted: &Admitted<'_>, plan: &Plan, standing: &Standing, asked: &[SaidQuestion]) -> HandFacts {
    let case = admitted.case();
    let library = case.library;
    let side = case.file.hand;
    let conditions = case.conditions.iter().map(|treated| {
        let condition = &treated.condition;
        ConditionFacts {
            id: treated.id.to_string(),
            icd_10_cm: condition.icd10cm.of(side, case.finger).to_string(),
            evidence: condition.evidence.clone(),
            evidence_from: condition
                .evidence_from
                .iter()
                .map(|key| library.cite(&Basis::Published(key.clone())))
                .collect(),
            confidence: condition.confidence.clone(),
            protocol: treated.protocol.as_ref().map(|(name, _)| name.clone()),
        }
    });
    let not_confirmed = standing::used([(case, plan)])
        .into_iter()
        .map(|item| (item.to_string(), standing.state(&item)))
        .filter(|(_, state)| !state.is_confirmed())
        .map(|(item, state)| (item, state.word()));
    let question = |question: &SaidQuestion| QuestionFacts {
        topic: question.topic.word(),
        ask: question.ask.clone(),
        asked: question.asked.clone(),
        points: question.points.clone(),
    };
    HandFacts {
        hand: side.word(),
        finger: case.finger.map(|finger| finger.word()),
        conditions: conditions.collect(),
        orthosis: case.file.orthosis.value.to_string(),
        systematic_name: systematic_name(admitted, plan),
        verdict: reasoning::verdicts(library, admitted.verdicts()),
        plan: reasoning::plan(library, plan),
        not_confirmed: not_confirmed.collect(),
        from_memory: reasoning::from_memory(library, admitted.verdicts(), plan),
        teach_back: asked.iter().map(question).collect(),
    }
}

/// The name of the orthosis for its purpose in the first phase.
fn systematic_name(admitted: &Admitted<'_>, plan: &Plan) -> String {
    let case = admitted.case();
    let findings = case.measured();
    let question = Question { orthosis: &case.orthosis, findings: &findings, factors: &[] };
    let name = match plan.phases.first() {
        Some(phase) => classify::name_for(&case.orthosis, case.finger, &in_force(question, &phase.rules)),
        None => classify::name(&case.orthosis, case.finger),
    };
    name.to_string()
}
