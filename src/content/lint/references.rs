//! Every id used exists, and every id that exists is used.

use std::collections::BTreeSet;

use super::super::library::unknown;
use super::super::{
    Basis, BreakInStep, Condition, Exercise, Hold, Library, LoadClass, Need, Orthosis, Requirement, Wanted, WeaningStep,
};
use crate::body::{Finger, JointName, MotionRange, norms};
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
            let path = format!("content/activities/{id}.yaml");
            self.source(&path, &activity.source);
            let mut ways = BTreeSet::new();
            for way in activity.adaptations.iter().filter(|way| !ways.insert(&way.id)) {
                self.rule(&path, way.id.as_str(), "this way stands here a second time");
            }
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
            self.stresses(&path, exercise);
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
        for confirmation in &library.confirmed {
            let known = confirmation
                .item
                .split_once('/')
                .is_some_and(|(kind, id)| self.library.files.contains_key(&format!("content/{kind}/{id}.yaml")));
            if !known {
                self.rule("content/confirmed.yaml", &confirmation.item, "what is confirmed here is not in the content");
            }
        }
        for need in library.needs.values() {
            self.source("content/needs.yaml", &need.source);
        }
        self.source("content/general.yaml", &library.general.source);
        self.pattern("content/general.yaml", Some(&library.general.break_in));
    }

    /// An exercise says of every structure that its movements load that it does.
    fn stresses(&mut self, path: &str, exercise: &Exercise) {
        if exercise.load < LoadClass::FreeActive {
            return;
        }
        let library = self.library;
        for structure in library.structures.values().filter(|structure| !exercise.stresses.contains(&structure.id)) {
            let loads = structure.stressed_by.iter().find(|loading| {
                // Any finger may be the affected one; what matters is whether the exercise moves that one or the others.
                let joints = loading.joint.for_finger(Finger::Index).joints();
                exercise.moves.iter().any(|movement| {
                    movement.joint.for_finger(Finger::Index).joints().iter().any(|joint| joints.contains(joint))
                        && movement.directions.iter().any(|direction| loading.directions.contains(direction))
                })
            });
            if let Some(loading) = loads {
                let message =
                    format!("it moves {}, which loads `{}`, and does not say so", loading.joint, structure.id);
                self.rule(path, "stresses", &message);
            }
        }
    }

    fn protocol(&mut self, path: &str, condition: &Condition) {
        let Some(protocol) = &condition.protocol else { return };
        self.source(path, &protocol.source);
        for length in &protocol.lengths {
            if !condition.phases.iter().any(|phase| phase.id == length.phase) {
                let known: Vec<&str> = condition.phases.iter().map(|phase| phase.id.as_str()).collect();
                self.unknown(path, "phase", length.phase.as_str(), &known);
            }
            if length.at_most < length.at_least {
                self.rule(path, length.phase.as_str(), "the protocol's longest is shorter than its shortest");
            }
        }
        for angle in &protocol.angles {
            for &range in &angle.within {
                self.range(path, angle.joint, range);
            }
        }
    }

    fn condition(&mut self, path: &str, condition: &Condition) {
        self.protocol(path, condition);
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
            for id in &phase.exercises.on_order {
                match self.library.exercises.get(id) {
                    Some(exercise) if exercise.by_order => {}
                    Some(_) => self.rule(path, id.as_str(), "only an exercise with `by_order: true` is ordered"),
                    None => {
                        let known: Vec<String> = self.library.exercises.keys().map(ToString::to_string).collect();
                        let known: Vec<&str> = known.iter().map(String::as_str).collect();
                        self.unknown(path, "exercise", id.as_str(), &known);
                    }
                }
            }
            self.pattern(path, phase.weaning.as_ref());
            if phase.lasts_up_to.is_some_and(|late| phase.lasts.is_none_or(|usual| late < usual)) {
                self.rule(path, phase.id.as_str(), "the late end of a window is no earlier than its usual length");
            }
            for one in &phase.one_of {
                self.source(path, &one.source);
                if one.ways.len() < 2 || one.ways.iter().any(|way| way.requires.is_empty() && way.presses.is_none()) {
                    self.rule(path, "one_of", "a choice has two ways or more, and each of them asks for something");
                }
            }
            for requirement in phase.all_requirements() {
                self.requirement(path, requirement);
            }
            for forbidden in &phase.never {
                self.source(path, &forbidden.source);
                self.structures(path, &forbidden.structures);
                if forbidden.positions.is_empty() {
                    self.rule(path, "never", "a forbidden position names its joints");
                }
                for position in &forbidden.positions {
                    self.range(path, position.joint, position.range);
                }
            }
        }
    }

    fn requirement(&mut self, path: &str, requirement: &Requirement) {
        self.source(path, &requirement.source);
        self.structures(path, &requirement.structures);
        // How far a joint is held off its neighbours is no position of the joint.
        for &range in requirement.within.iter().filter(|_| requirement.hold != Some(Wanted::Relative)) {
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
            Some(Wanted::Relative) if requirement.within.is_empty() => {
                self.rule(path, &shown, "`hold: relative` needs `within`, such as `[extension 15 to 25 deg]`");
            }
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
        for (steps, strap_step) in [
            (&orthosis.donning, "close-strap"),
            (&orthosis.doffing, "undo-strap"),
            (&orthosis.one_handed, "close-strap"),
        ] {
            let count = steps.iter().filter(|step| step.as_str() == strap_step).count();
            // A piece that is put on by others may leave its straps out of the one-handed way.
            let helped = std::ptr::eq(steps, &orthosis.one_handed) && count == 0;
            if count != orthosis.straps.len() && !helped {
                let message = format!("`{strap_step}` stands {count} times for {} straps", orthosis.straps.len());
                self.rule(path, strap_step, &message);
            }
        }
        if orthosis.donning.is_empty() || orthosis.doffing.is_empty() {
            self.rule(path, "donning", "an orthosis says how it is put on and taken off");
        }
        let acts = orthosis.joints.values().any(Hold::acts);
        if acts == orthosis.acts_on.is_some() || acts == orthosis.primary.is_empty() {
            self.rule(path, "joints", "an orthosis has joints that its purpose is about, or a segment that it acts on");
        }
        for name in &orthosis.primary {
            if !name.joints().iter().all(|&joint| orthosis.hold_of(joint).acts()) {
                self.rule(path, &name.to_string(), "its purpose is about a joint that it does not act on");
            }
        }
        let mut seen = BTreeSet::new();
        for (&name, hold) in &orthosis.joints {
            // Which finger is affected does not matter here; that it is another than the rest does.
            for joint in name.for_finger(Finger::Index).joints() {
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
                Hold::Blocked { stops, adjustable } => {
                    for stop in stops {
                        self.axis(path, name, stop.at.axis(), &stop.to_string());
                        let can = adjustable.iter().find(|can| can.axis() == stop.at.axis());
                        if can.is_some_and(|can| !can.contains(MotionRange::at(stop.at))) {
                            self.rule(path, &name.to_string(), "the stop is set outside the range it can be set in");
                        }
                    }
                }
                Hold::Mobilised { towards, at, .. } => {
                    self.axis(path, name, towards.axis(), towards.word());
                    at.iter().for_each(|&range| self.range(path, name, range));
                }
                Hold::Relative { .. } | Hold::Coupled | Hold::Supported | Hold::Free => {}
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
