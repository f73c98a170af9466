//! Every id used exists, and every id that exists is used.

use std::collections::BTreeSet;

use super::super::library::unknown;
use super::super::{Basis, BreakInStep, Condition, Hold, Library, Orthosis, Requirement, WeaningStep};
use crate::body::{JointName, MotionRange, norms};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{MessageId, SourceKey, StructureId, WearPatternId};

struct Walk<'a> {
    library: &'a Library,
    findings: &'a mut Findings,
    sources: BTreeSet<SourceKey>,
    structures: BTreeSet<StructureId>,
    signs: BTreeSet<MessageId>,
    patterns: BTreeSet<WearPatternId>,
}

/// Reports ids that lead nowhere as errors, and ids that nothing uses as warnings.
pub fn check(library: &Library, findings: &mut Findings) {
    let mut walk = Walk {
        library,
        findings,
        sources: BTreeSet::new(),
        structures: BTreeSet::new(),
        signs: library
            .signs
            .values()
            .filter(|sign| sign.always || sign.first_page)
            .map(|sign| sign.id.clone())
            .collect(),
        patterns: BTreeSet::new(),
    };
    walk.all();
    walk.unused();
}

impl Walk<'_> {
    fn all(&mut self) {
        let library = self.library;
        for (id, condition) in &library.conditions {
            self.condition(&format!("content/conditions/{id}.yaml"), condition);
        }
        for (id, orthosis) in &library.orthoses {
            self.orthosis(&format!("content/orthoses/{id}.yaml"), orthosis);
        }
        for (id, activity) in &library.activities {
            self.source(&format!("content/activities/{id}.yaml"), &activity.source);
        }
        for (id, exercise) in &library.exercises {
            let path = format!("content/exercises/{id}.yaml");
            self.source(&path, &exercise.source);
            self.structures(&path, &exercise.stresses);
            for movement in &exercise.moves {
                for direction in &movement.directions {
                    self.axis(&path, movement.joint, direction.axis(), direction.word());
                }
            }
        }
        for (id, factor) in &library.factors {
            let path = format!("content/factors/{id}.yaml");
            self.source(&path, &factor.source);
            self.pattern(&path, factor.break_in.as_ref());
        }
        for (id, pattern) in &library.patterns {
            let path = format!("content/wear/{id}.yaml");
            self.source(&path, &pattern.source);
            let kinds = [!pattern.break_in.is_empty(), !pattern.weaning.is_empty(), pattern.at_once];
            if kinds.iter().filter(|&&kind| kind).count() != 1 {
                self.rule(&path, "break_in", "a pattern is one of `break_in`, `weaning` and `at_once`");
            }
            if BreakInStep::shrink(&pattern.break_in) {
                self.rule(&path, "break_in", "breaking in shrinks from one day to the next");
            }
            if WeaningStep::grow(&pattern.weaning) {
                self.rule(&path, "weaning", "weaning grows from one step to the next");
            }
        }
        for sign in library.signs.values() {
            self.source("content/signs.yaml", &sign.source);
        }
        self.source("content/general.yaml", &library.general.source);
        self.pattern("content/general.yaml", Some(&library.general.break_in));
    }

    fn condition(&mut self, path: &str, condition: &Condition) {
        self.source(path, &condition.source);
        for key in &condition.evidence_from {
            self.source(path, &Basis::Published(key.clone()));
        }
        self.structures(path, &condition.structures);
        self.pattern(path, condition.break_in.as_ref());
        for sign in &condition.signs {
            if !self.library.signs.contains_key(sign) {
                let known: Vec<&str> = self.library.signs.keys().map(MessageId::as_str).collect();
                self.unknown(path, "sign", sign.as_str(), &known);
            }
            self.signs.insert(sign.clone());
        }
        if condition.phases.is_empty() {
            self.rule(path, "phases", "a condition has at least one phase");
        }
        let mut names = BTreeSet::new();
        for (index, phase) in condition.phases.iter().enumerate() {
            if !names.insert(&phase.id) {
                self.rule(path, phase.id.as_str(), "this phase stands here a second time");
            }
            if phase.lasts.is_none() && index + 1 < condition.phases.len() {
                self.rule(path, phase.id.as_str(), "only the last phase can be open-ended; give `lasts`");
            }
            self.source(path, &phase.source);
            self.source(path, &phase.exercises.source);
            self.source(path, &phase.activities.source);
            self.structures(path, &phase.exercises.protects);
            self.pattern(path, phase.weaning.as_ref());
            for requirement in &phase.requires {
                self.requirement(path, requirement);
            }
            for forbidden in &phase.never {
                self.source(path, &forbidden.source);
                self.structures(path, &forbidden.structures);
                for position in &forbidden.positions {
                    self.range(path, JointName::One(position.joint), position.range);
                }
            }
        }
    }

    fn requirement(&mut self, path: &str, requirement: &Requirement) {
        use super::super::{Need, Wanted};
        self.source(path, &requirement.source);
        self.structures(path, &requirement.structures);
        for &range in &requirement.within {
            self.range(path, requirement.joint, range);
        }
        for stop in &requirement.stops {
            self.axis(path, requirement.joint, stop.at.axis(), &stop.to_string());
        }
        let holds = matches!(requirement.need, Need::Must | Need::Should | Need::May);
        let shown = requirement.joint.to_string();
        match requirement.hold {
            None if holds => self.rule(path, &shown, "a joint to be held needs `hold: still`, `steady` or `stopped`"),
            Some(_) if !holds => self.rule(path, &shown, "a joint to be free has no `hold`"),
            Some(Wanted::Stopped) if requirement.stops.is_empty() => {
                self.rule(path, &shown, "`hold: stopped` needs `stops`, such as `[extension at flexion 10 deg]`");
            }
            _ => {}
        }
    }

    fn orthosis(&mut self, path: &str, orthosis: &Orthosis) {
        self.source(path, &orthosis.source);
        if orthosis.joints.is_empty() {
            self.rule(path, "joints", "an orthosis says of at least one joint how it is held");
        }
        let mut seen = BTreeSet::new();
        for (&name, hold) in &orthosis.joints {
            for joint in name.joints() {
                if !seen.insert(joint) {
                    self.rule(path, &name.to_string(), "this joint is described twice");
                }
            }
            match hold {
                Hold::Immobilised { at, adjustable } => {
                    for &range in at.iter().chain(adjustable) {
                        self.range(path, name, range);
                    }
                    let outside = at
                        .iter()
                        .any(|set| adjustable.iter().any(|can| can.axis() == set.axis() && !can.contains(*set)));
                    if outside {
                        self.rule(path, &name.to_string(), "the joint is set outside the range it can be set in");
                    }
                }
                Hold::Limited(ranges) => ranges.iter().for_each(|&range| self.range(path, name, range)),
                Hold::Blocked(stops) => {
                    for stop in stops {
                        self.axis(path, name, stop.at.axis(), &stop.to_string());
                    }
                }
                Hold::Supported | Hold::Free => {}
            }
        }
    }

    fn range(&mut self, path: &str, joint: JointName, range: MotionRange) {
        let shown = range.to_string();
        self.axis(path, joint, range.axis(), &shown);
        for joint in joint.joints() {
            if norms::range(joint, range.axis()).is_some_and(|norm| !norm.meets(range)) {
                self.rule(path, &shown, &format!("no healthy {joint} reaches {shown}"));
            }
        }
    }

    fn axis(&mut self, path: &str, joint: JointName, axis: crate::body::Axis, word: &str) {
        if joint.joints().iter().any(|&joint| norms::range(joint, axis).is_none()) {
            self.rule(path, word, &format!("the joint `{joint}` does not move that way"));
        }
    }

    fn source(&mut self, path: &str, basis: &Basis) {
        if let Basis::Published(key) = basis {
            if !self.library.sources.contains_key(key) {
                let known: Vec<&str> = self.library.sources.keys().map(SourceKey::as_str).collect();
                self.unknown(path, "source", key.as_str(), &known);
            }
            self.sources.insert(key.clone());
        }
    }

    fn structures(&mut self, path: &str, ids: &[StructureId]) {
        for id in ids {
            if !self.library.structures.contains_key(id) {
                let known: Vec<&str> = self.library.structures.keys().map(StructureId::as_str).collect();
                self.unknown(path, "structure", id.as_str(), &known);
            }
            self.structures.insert(id.clone());
        }
    }

    fn pattern(&mut self, path: &str, id: Option<&WearPatternId>) {
        let Some(id) = id else { return };
        if !self.library.patterns.contains_key(id) {
            let known: Vec<&str> = self.library.patterns.keys().map(WearPatternId::as_str).collect();
            self.unknown(path, "wear pattern", id.as_str(), &known);
        }
        self.patterns.insert(id.clone());
    }

    fn unknown(&mut self, path: &str, what: &str, id: &str, known: &[&str]) {
        let (message, help) = unknown(what, id, known.iter().copied());
        self.findings.push(Diagnostic::error(Code::ID_UNKNOWN, self.library.place(path, id), message).help(help));
    }

    fn rule(&mut self, path: &str, word: &str, message: &str) {
        self.findings.push(Diagnostic::error(Code::CONTENT_RULE, self.library.place(path, word), message));
    }

    fn unused(&mut self) {
        let library = self.library;
        let mut report = |path: &str, what: &str, id: &str| {
            self.findings.push(
                Diagnostic::error(
                    Code::CONTENT_UNUSED,
                    library.place(path, id),
                    format!("nothing uses the {what} `{id}`"),
                )
                .help("use it or take it out")
                .as_warning(),
            );
        };
        for id in library.sources.keys().filter(|id| !self.sources.contains(*id)) {
            report("content/sources.yaml", "source", id.as_str());
        }
        for id in library.structures.keys().filter(|id| !self.structures.contains(*id)) {
            report("content/structures.yaml", "structure", id.as_str());
        }
        for id in library.signs.keys().filter(|id| !self.signs.contains(*id)) {
            report("content/signs.yaml", "sign", id.as_str());
        }
        for id in library.patterns.keys().filter(|id| !self.patterns.contains(*id)) {
            report(&format!("content/wear/{id}.yaml"), "wear pattern", id.as_str());
        }
    }
}
