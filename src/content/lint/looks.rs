//! What is said about looks agrees with what is said about orthoses, exercises and steps.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Display;

use super::super::Library;
use super::super::library::unknown;
use crate::body::{JointName, Position, norms};
use crate::diag::{Code, Diagnostic, Findings};

/// Reports looks of what does not exist, straps without a look, and joints that stand where no joint does.
pub fn check(library: &Library, findings: &mut Findings) {
    let mut walk = Walk { library, findings };
    for (id, shape) in &library.shapes {
        let path = format!("content/shapes/{id}.yaml");
        let Some(orthosis) = library.orthoses.get(id) else {
            walk.unknown(&path, "orthosis", id, library.orthoses.keys());
            continue;
        };
        for strap in shape.straps.keys().filter(|strap| !orthosis.straps.contains(strap)) {
            walk.unknown(&path, "strap of this orthosis", strap, &orthosis.straps);
        }
        // A piece of wire or fabric alone may close in ways that are no band round the limb.
        for strap in
            orthosis.straps.iter().filter(|strap| !shape.sheets.is_empty() && !shape.straps.contains_key(strap))
        {
            walk.rule(&path, "straps:", &format!("the strap `{strap}` of this orthosis has no band"));
        }
        for spot in shape.spots.keys().filter(|spot| !orthosis.pressure_spots.contains(spot)) {
            walk.unknown(&path, "spot of this orthosis", spot, &orthosis.pressure_spots);
        }
        if shape.sheets.is_empty() && shape.straps.is_empty() && shape.bands.is_empty() && shape.wires.is_empty() {
            walk.rule(&path, "", "a look has a sheet, a strap, a band or a wire");
        }
        walk.posture(&path, &shape.posture);
    }
    for (id, motion) in &library.motions {
        let path = format!("content/motions/{id}.yaml");
        if !library.exercises.contains_key(id) {
            walk.unknown(&path, "exercise", id, library.exercises.keys());
        }
        walk.posture(&path, &motion.start);
        motion.then.iter().for_each(|stand| walk.posture(&path, &stand.joints));
    }
    let steps: BTreeSet<_> = library
        .orthoses
        .values()
        .flat_map(|orthosis| orthosis.donning.iter().chain(&orthosis.doffing).chain(&orthosis.one_handed))
        .collect();
    for (id, handling) in &library.handling {
        let path = "content/handling.yaml";
        if !steps.contains(id) {
            walk.unknown(path, "step of an orthosis", id, steps.iter().copied());
        }
        walk.posture(path, &handling.joints);
        walk.posture(path, &handling.before);
    }
    let weights = &library.steps;
    for id in weights.vital.iter().chain(&weights.place).chain(&weights.check).filter(|id| !steps.contains(&id.value)) {
        walk.unknown("content/steps.yaml", "step of an orthosis", &id.value, steps.iter().copied());
    }
    let spots: BTreeSet<_> = library.orthoses.values().flat_map(|orthosis| &orthosis.pressure_spots).collect();
    for id in library.spots.keys().filter(|id| !spots.contains(id)) {
        walk.unknown("content/spots.yaml", "spot of an orthosis", id, spots.iter().copied());
    }
}

struct Walk<'a> {
    library: &'a Library,
    findings: &'a mut Findings,
}

impl Walk<'_> {
    fn posture(&mut self, path: &str, joints: &BTreeMap<JointName, Vec<Position>>) {
        for (name, positions) in joints {
            for position in positions {
                let wrong = name.joints().into_iter().find_map(|joint| norms::beyond(joint, *position));
                if let Some(wrong) = wrong {
                    self.rule(path, &position.to_string(), &wrong);
                }
            }
        }
    }

    fn unknown<I: Display>(&mut self, path: &str, what: &str, id: &impl Display, known: impl IntoIterator<Item = I>) {
        let (id, known) = (id.to_string(), known.into_iter().map(|id| id.to_string()).collect::<Vec<String>>());
        let (message, help) = unknown(what, &id, known.iter().map(String::as_str));
        self.findings.push(Diagnostic::error(Code::ID_UNKNOWN, self.library.place(path, &id), message).help(help));
    }

    fn rule(&mut self, path: &str, word: &str, message: &str) {
        self.findings.push(Diagnostic::error(Code::CONTENT_RULE, self.library.place(path, word), message));
    }
}
