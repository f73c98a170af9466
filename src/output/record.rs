//! The clinician's record beside a guide: what was given, from which content, and why.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use super::{naming, reasoning};
use crate::checks::Admitted;
use crate::content::Basis;
use crate::language::WordState;
use crate::plan::Plan;
use crate::standing::{self, Standing};

/// A sheet that was given, and how much of what it has: pages, or events of a calendar.
pub struct Given {
    pub sheet: &'static str,
    pub counted: &'static str,
    pub count: usize,
}

/// The record as JSON. It names the person only when the case does. `clinic` is the name of the clinic's file, and a hash
/// of it and of all that it names.
pub fn record(
    hands: &[(Admitted<'_>, Plan)],
    standing: &Standing,
    content: &str,
    clinic: Option<(String, &str)>,
    given: &[Given],
    state: WordState,
) -> Value {
    let Some((first, _)) = hands.first() else { return Value::Null };
    let case = first.case();
    let person = case.file.person.as_ref();
    let text = |text: Option<&crate::case::Text>| text.map(|text| text.as_str().to_owned());
    let hands: Vec<Value> = hands.iter().map(|(admitted, plan)| hand(admitted, plan, standing)).collect();
    let mut record = json!({
        "palmleaf": env!("CARGO_PKG_VERSION"),
        "caution": "Not medical advice: the treating clinician decides, and local protocol wins.",
        "content": content,
        "case": naming::fingerprint(case),
        "person": text(person.and_then(|person| person.name.as_ref())),
        "reference": text(person.and_then(|person| person.reference.as_ref())),
        "fitted": case.file.fitted.value.to_string(),
        "language": case.language.tag.as_str(),
        "translation": state.word(),
        "sheets": given.iter().map(|given| (given.sheet, json!({given.counted: given.count}))).collect::<BTreeMap<_, _>>(),
        "hands": hands,
    });
    if let Some((file, hash)) = clinic {
        record["clinic"] = json!({"file": file, "hash": hash});
    }
    record
}

fn hand(admitted: &Admitted<'_>, plan: &Plan, standing: &Standing) -> Value {
    let case = admitted.case();
    let library = case.library;
    let side = case.file.hand;
    let conditions: Vec<Value> = case
        .conditions
        .iter()
        .map(|treated| {
            let condition = &treated.condition;
            let cited: Vec<String> =
                condition.evidence_from.iter().map(|key| library.cite(&Basis::Published(key.clone()))).collect();
            json!({
                "id": treated.id.as_str(),
                "icd-10-cm": condition.icd10cm.of(side, case.finger),
                "evidence": condition.evidence,
                "evidence-from": cited,
                "confidence": condition.confidence,
                "protocol": treated.protocol.as_ref().map(|(name, _)| name),
            })
        })
        .collect();
    let not_confirmed: BTreeMap<String, &str> = standing::used([(case, plan)])
        .into_iter()
        .map(|item| (item.to_string(), standing.state(&item)))
        .filter(|(_, state)| !state.is_confirmed())
        .map(|(item, state)| (item, state.word()))
        .collect();
    json!({
        "hand": side.word(),
        "finger": case.finger.map(|finger| finger.word()),
        "conditions": conditions,
        "orthosis": case.file.orthosis.value.as_str(),
        "verdict": reasoning::verdicts(library, admitted.verdicts()),
        "plan": reasoning::plan(library, plan),
        "not-confirmed": not_confirmed,
        "from-memory": reasoning::from_memory(library, admitted.verdicts(), plan),
    })
}
