//! The clinician's record beside a guide: what was given, from which content, and why.

use serde_json::{Value, json};

use super::{naming, reasoning};
use crate::checks::Admitted;
use crate::content::Basis;
use crate::language::WordState;
use crate::plan::Plan;

/// The record as JSON. It names the person only when the case does.
pub fn record(admitted: &Admitted<'_>, plan: &Plan, content: &str, pages: usize, state: WordState) -> Value {
    let case = admitted.case();
    let library = case.library;
    let person = case.file.person.as_ref();
    let text = |text: Option<&crate::case::Text>| text.map(|text| text.as_str().to_owned());
    let side = case.file.hand;
    let codes = &case.condition.icd10cm;
    json!({
        "palmleaf": env!("CARGO_PKG_VERSION"),
        "caution": "Not medical advice: the treating clinician decides, and local protocol wins. No clinician has confirmed this content.",
        "content": content,
        "case": naming::fingerprint(case),
        "person": text(person.and_then(|person| person.name.as_ref())),
        "reference": text(person.and_then(|person| person.reference.as_ref())),
        "hand": side.word(),
        "condition": case.file.condition.value.as_str(),
        "icd-10-cm": match side { crate::body::Side::Right => &codes.right, crate::body::Side::Left => &codes.left },
        "orthosis": case.file.orthosis.value.as_str(),
        "fitted": case.file.fitted.value.to_string(),
        "language": case.language.tag.as_str(),
        "translation": state.word(),
        "pages": pages,
        "evidence": case.condition.evidence,
        "evidence-from": case.condition.evidence_from.iter().map(|key| library.cite(&Basis::Published(key.clone()))).collect::<Vec<_>>(),
        "confidence": case.condition.confidence,
        "verdict": reasoning::verdict(library, admitted.verdict()),
        "plan": reasoning::plan(library, plan),
        "from-memory": reasoning::from_memory(library, admitted.verdict(), plan),
    })
}
