//! Comparison charts: conditions by orthoses, or the orthoses of one condition by its joints.

use std::collections::{BTreeMap, BTreeSet};

use super::place::{Place, by_place};
use crate::body::{Finger, JointName};
use crate::checks::{Fit, Grade, PhaseVerdict, Question, VerdictLine, judge_phase, offered, wanted};
use crate::choose::{Ranked, best_setting};
use crate::content::{Condition, Library, Need, Orthosis, Phase, Regime};
use crate::ids::{ConditionId, OrthosisId, PhaseId};

/// A chart: heads of columns, and rows with as many cells as there are columns.
#[derive(Clone, Debug)]
pub struct Chart {
    pub columns: Vec<Head>,
    pub rows: Vec<Row>,
}

#[derive(Clone, Debug)]
pub struct Row {
    pub head: Head,
    pub cells: Vec<Cell>,
}

/// What a row or a column is about. Notes are English, from the checks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Head {
    Orthosis {
        id: OrthosisId,
        /// Its place in the order of a choice, from 1.
        place: Option<usize>,
        fit: Option<Fit>,
        /// The systematic name, the angles it has to be set to, what would make it better.
        notes: Vec<String>,
    },
    Phase {
        condition: ConditionId,
        phase: PhaseId,
        /// The places that it asks something of, by how strongly; one that is a choice of ways stands apart.
        needs: BTreeMap<Need, BTreeSet<Place>>,
        ways: BTreeSet<Place>,
        never: BTreeSet<Place>,
    },
    Joint {
        name: JointName,
        wanted: Vec<String>,
    },
    /// What no requirement speaks of: joints held without need, and the orthosis as a whole.
    Rest,
}

/// What an orthosis does at a joint, or for a condition.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Cell {
    /// The verdict of the whole.
    pub fit: Option<Fit>,
    /// Joint by joint; without a place where the head names the joint.
    pub marks: Vec<(Option<Place>, Grade)>,
    /// What the orthosis offers. English.
    pub text: String,
}

/// The joints that a phase says something of, with what it says of each.
fn asked(phase: &Phase) -> Vec<(JointName, Vec<String>)> {
    let mut all: BTreeMap<JointName, Vec<String>> = BTreeMap::new();
    let mut add = |name: JointName, text: String| {
        let texts = all.entry(name).or_default();
        if !texts.contains(&text) {
            texts.push(text);
        }
    };
    for requirement in &phase.requires {
        let when = requirement.when.as_ref().map(|test| {
            let below = test.below.map(|below| format!(" and below {below}")).unwrap_or_default();
            format!(", only with {} {} from {}{below}", test.joint, test.motion, test.at_least)
        });
        add(requirement.joint, wanted(requirement) + &when.unwrap_or_default());
    }
    for one in &phase.one_of {
        for requirement in one.ways.iter().flat_map(|way| &way.requires) {
            add(requirement.joint, format!("{}, as one of {} ways", wanted(requirement), one.ways.len()));
        }
    }
    for forbidden in &phase.never {
        let all: Vec<String> =
            forbidden.positions.iter().map(|position| format!("{} in {}", position.joint, position.range)).collect();
        if let Some(position) = forbidden.positions.first() {
            add(position.joint, format!("never {}", all.join(" with ")));
        }
    }
    let mut all: Vec<_> = all.into_iter().collect();
    all.sort_by_key(|(name, _)| name.joints().first().copied());
    all
}

/// The orthoses of a ranking, one a row, by the joints of the phase.
pub fn of_ranking(phase: &Phase, ranked: &[Ranked]) -> Chart {
    let asked = asked(phase);
    let columns: Vec<Head> = asked
        .iter()
        .map(|(name, wanted)| Head::Joint { name: *name, wanted: wanted.clone() })
        .chain([Head::Rest])
        .collect();
    let rows = ranked
        .iter()
        .enumerate()
        .map(|(place, one)| {
            let set: Vec<String> = one.set.iter().map(ToString::to_string).collect();
            let mut notes = vec![one.name.to_string()];
            notes.extend((!set.is_empty()).then(|| format!("set: {}", set.join(", "))));
            notes.extend(one.better.first().map(|better| format!("better: {better}")));
            let cells = asked.iter().map(|(name, _)| at(one, *name)).chain([rest(one, &asked)]).collect();
            let fit = Some(one.verdict.fit);
            Row { head: Head::Orthosis { id: one.id.clone(), place: Some(place + 1), fit, notes }, cells }
        })
        .collect();
    Chart { columns, rows }
}

/// What an orthosis does at a joint that is asked for.
fn at(one: &Ranked, name: JointName) -> Cell {
    let joints = name.joints();
    let own: Vec<&VerdictLine> =
        one.verdict.lines.iter().filter(|line| line.joint.is_some_and(|joint| joints.contains(&joint))).collect();
    let worst = own.iter().max_by_key(|line| line.result);
    let joint = worst.and_then(|line| line.joint).or(joints.first().copied());
    let offers = joint.map(|joint| offered(one.orthosis.hold_of(joint))).unwrap_or_default();
    Cell { fit: None, marks: vec![(None, worst.map_or(Grade::Met, |line| line.result))], text: offers }
}

/// What an orthosis does besides.
fn rest(one: &Ranked, asked: &[(JointName, Vec<String>)]) -> Cell {
    let known = |line: &&VerdictLine| {
        line.joint.is_none_or(|joint| asked.iter().all(|(name, _)| !name.joints().contains(&joint)))
    };
    let lines: Vec<&VerdictLine> = one.verdict.lines.iter().filter(known).collect();
    let Some(worst) = lines.iter().map(|line| line.result).max() else { return Cell::default() };
    let mut texts: Vec<String> = Vec::new();
    for line in lines.iter().filter(|line| line.result > Grade::Met) {
        let joint = line.joint.and_then(|joint| {
            one.orthosis.joints.keys().find(|name| name.joints().contains(&joint)).map(ToString::to_string)
        });
        let text = joint.map_or_else(|| line.offered.clone(), |joint| format!("{joint} {}", line.offered));
        if !texts.contains(&text) {
            texts.push(text);
        }
    }
    Cell { fit: None, marks: vec![(None, worst)], text: texts.join("; ") }
}

/// Conditions, one phase a row, by the orthoses that fit at least one of them. What concerns one finger is judged on the
/// finger given. Second: how many orthoses fit none of the rows.
pub fn of_group(library: &Library, conditions: &[(&ConditionId, &Condition)], finger: Finger) -> (Chart, usize) {
    let phases: Vec<(&ConditionId, Phase)> = conditions
        .iter()
        .filter_map(|(id, condition)| {
            let own = condition.for_finger(finger);
            let worn = own.phases.iter().find(|phase| phase.wear != Regime::Off)?;
            Some((*id, worn.clone()))
        })
        .collect();
    let mut columns: Vec<(&OrthosisId, Orthosis, Vec<PhaseVerdict>)> = Vec::new();
    let mut none = 0;
    for (id, orthosis) in library.orthoses_for(Some(finger)).filter(|(_, orthosis)| !orthosis.by_order) {
        let verdicts: Vec<PhaseVerdict> = phases
            .iter()
            .map(|(_, phase)| {
                let (set, _) = best_setting(&orthosis, phase, &[], &[]);
                judge_phase(Question { orthosis: &set, findings: &[], factors: &[] }, phase)
            })
            .collect();
        if verdicts.iter().any(|verdict| verdict.fit <= Fit::FitsWithRemarks) {
            columns.push((id, orthosis, verdicts));
        } else {
            none += 1;
        }
    }
    // What fits most of the rows comes first.
    columns.sort_by_key(|(id, _, verdicts)| {
        let fitting = verdicts.iter().filter(|verdict| verdict.fit <= Fit::FitsWithRemarks).count();
        (std::cmp::Reverse(fitting), (*id).clone())
    });
    let rows = phases
        .iter()
        .enumerate()
        .map(|(row, (condition, phase))| Row {
            head: of_phase(condition, phase),
            cells: columns.iter().filter_map(|(.., verdicts)| verdicts.get(row)).map(of_verdict).collect(),
        })
        .collect();
    let columns = columns
        .iter()
        .map(|(id, orthosis, _)| Head::Orthosis {
            id: (*id).clone(),
            place: None,
            fit: None,
            notes: vec![crate::classify::name(orthosis, None).to_string()],
        })
        .collect();
    (Chart { columns, rows }, none)
}

fn of_phase(condition: &ConditionId, phase: &Phase) -> Head {
    let places = |name: JointName| name.joints().into_iter().map(|joint| Place::of(Some(joint)));
    let mut needs: BTreeMap<Need, BTreeSet<Place>> = BTreeMap::new();
    // What depends on a finding is not asked of everybody.
    for requirement in phase.requires.iter().filter(|requirement| requirement.when.is_none()) {
        needs.entry(requirement.need).or_default().extend(places(requirement.joint));
    }
    let ways = phase.one_of.iter().flat_map(|one| &one.ways);
    Head::Phase {
        condition: condition.clone(),
        phase: phase.id.clone(),
        needs,
        ways: ways.flat_map(|way| &way.requires).flat_map(|requirement| places(requirement.joint)).collect(),
        never: phase.never.iter().flat_map(|never| &never.positions).flat_map(|one| places(one.joint)).collect(),
    }
}

fn of_verdict(verdict: &PhaseVerdict) -> Cell {
    let marks = by_place(&verdict.lines).into_iter().map(|(place, line)| (Some(place), line.result)).collect();
    Cell { fit: Some(verdict.fit), marks, text: String::new() }
}
