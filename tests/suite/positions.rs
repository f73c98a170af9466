//! Positions that a phase must accept and refuse, joint by joint, and the mutants that these tables catch.

use std::collections::BTreeMap;
use std::path::Path;

use palmleaf::body::{Finger, JointName, MotionRange, Position, Stop};
use palmleaf::checks::{Grade, Question, VerdictLine, judge_phase};
use palmleaf::content::{
    Action, Base, Basis, Condition, Glove, Hold, Made, Material, Need, Orthosis, Phase, Surface, Water, Way,
};
use palmleaf::ids::ConditionId;
use palmleaf::source::Node;
use palmleaf::units::Level;

use crate::support::{WORKSHOP, files};
use crate::tables::{condition, phase, rows, scalar, word, words};

/// An orthosis that acts on one joint and nothing else.
fn probe(joint: JointName, hold: Hold) -> Orthosis {
    Orthosis {
        base: Base::Forearm,
        surface: Surface::Palmar,
        material: Material::Rigid,
        made: Made::Custom,
        action: Action::Static,
        water: Water::Yes,
        glove: Glove::Yes,
        bulk: Level::clamped(0),
        primary: vec![joint],
        acts_on: None,
        contains: Vec::new(),
        joints: BTreeMap::from([(joint, hold)]),
        shields: BTreeMap::new(),
        blocks: Vec::new(),
        straps: Vec::new(),
        pressure_spots: Vec::new(),
        donning: Vec::new(),
        doffing: Vec::new(),
        one_handed: Vec::new(),
        by_order: false,
        confidence: None,
        remark: None,
        source: Basis::CommonPractice,
    }
}

/// What comes of holding this joint so: the worst grade of the rules about it. Positions of several joints at once count
/// only where this joint alone could prevent them. `whole` also asks that a choice of ways is met, and not just this
/// joint's part in it.
fn grade(phase: &Phase, joint: JointName, hold: Hold, whole: bool) -> Grade {
    let orthosis = probe(joint, hold);
    let question = Question { orthosis: &orthosis, findings: &[], factors: &[] };
    let own = joint.joints();
    let about_own = |line: &&VerdictLine| line.joint.is_none_or(|joint| own.contains(&joint));
    let mut alone = phase.clone();
    alone.never.retain(|never| {
        never.positions.iter().all(|position| position.joint.joints().iter().any(|joint| own.contains(joint)))
    });
    // Whether a joint is free enough depends on the ways too: a block that one of them asks for is no fault.
    let free_enough = |line: &&VerdictLine| line.wanted.ends_with("be free");
    let together = judge_phase(question, &alone);
    let ways = std::mem::take(&mut alone.one_of);
    let verdict = judge_phase(question, &alone);
    let lines = verdict.lines.iter().filter(|line| !free_enough(line)).chain(together.lines.iter().filter(free_enough));
    let mut worst = lines.filter(about_own).map(|line| line.result).max().unwrap_or(Grade::Met);
    let free = orthosis.hold_of(own[0]) == &Hold::Free;
    for one in ways {
        let about = |way: &Way| {
            way.requires.iter().any(|wanted| {
                wanted.need == Need::Must && wanted.joint.joints().iter().any(|joint| own.contains(joint))
            })
        };
        // Left free, another joint may be the one that meets the choice; a choice among other joints says nothing here.
        if (free && !one.ways.iter().all(about)) || !one.ways.iter().any(about) {
            continue;
        }
        let only = Phase { requires: Vec::new(), never: Vec::new(), one_of: vec![one], ..alone.clone() };
        let verdict = judge_phase(question, &only);
        let counted = verdict.lines.iter().filter(|line| {
            line.wanted != "nothing asked" && (whole || line.joint.is_some_and(|joint| own.contains(&joint)))
        });
        worst = worst.max(counted.map(|line| line.result).max().unwrap_or(Grade::Met));
    }
    worst
}

/// The words of a probe.
fn meets(wanted: &str, grade: Grade) -> bool {
    match wanted {
        "accepted" => grade <= Grade::Remark,
        "refused" => grade > Grade::Remark,
        "best" => grade == Grade::Met,
        "remarked" => grade == Grade::Remark,
        other => panic!("`{other}` is no word of a probe"),
    }
}

fn still(at: Position) -> Hold {
    Hold::Immobilised { at: vec![MotionRange::at(at)], adjustable: Vec::new() }
}

/// One row of the table.
pub struct Probe {
    row: Node,
    pub id: ConditionId,
    finger: Option<Finger>,
    at: String,
}

/// The faults of one row against a condition, which may be the content's or a mutant.
pub fn faults(probe: &Probe, condition: &Condition) -> Vec<String> {
    let Probe { row, finger, at, .. } = probe;
    let finger = *finger;
    let condition = &finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
    let phase = phase(row, condition, at);
    let name: JointName = word(row, "joint").unwrap_or_else(|| panic!("{at}: joint"));
    let joint = finger.map_or(name, |finger| name.for_finger(finger));
    let mut faults = Vec::new();
    let mut expect = |what: String, hold: Hold, wanted: &str| {
        let found = grade(phase, joint, hold, wanted == "refused");
        if !meets(wanted, found) {
            faults.push(format!("{at}: phase {}: {joint} {what} should be {wanted}, is {found}", phase.id));
        }
    };
    let fields = [("accepts", "accepted"), ("refuses", "refused"), ("best", "best"), ("remarked", "remarked")];
    for (field, wanted) in fields {
        for angle in words::<Position>(row, field) {
            expect(format!("held at {angle}"), still(angle), wanted);
        }
    }
    for (field, wanted) in [("stops_accepted", "accepted"), ("stops_refused", "refused")] {
        for stop in words::<Stop>(row, field) {
            expect(format!("stopped: {stop}"), Hold::Blocked { stops: vec![stop], adjustable: Vec::new() }, wanted);
        }
    }
    for (field, wanted) in [("relative_accepted", "accepted"), ("relative_refused", "refused")] {
        for by in words::<Position>(row, field) {
            let hold = Hold::Relative { at: vec![MotionRange::at(by)], adjustable: Vec::new() };
            expect(format!("held off its neighbours by {by}"), hold, wanted);
        }
    }
    if let Some(word) = scalar(row, "free") {
        expect("left free".to_owned(), Hold::Free, word);
    }
    if let Some(word) = scalar(row, "held") {
        let straight: Position = straight(joint).parse().expect("a position");
        expect("held straight".to_owned(), still(straight), word);
    }
    faults
}

fn straight(joint: JointName) -> &'static str {
    match joint.to_string().as_str() {
        "forearm" => "supination 0 deg",
        "thumb-cmc" => "palmar-abduction 0 deg",
        _ => "flexion 0 deg",
    }
}

/// Every row.
pub fn table() -> Vec<Probe> {
    let mut all = Vec::new();
    for path in files("tests/verdicts", ".yaml").iter().filter(|path| is_positions(path)) {
        let (source, list) = rows(path);
        all.extend(list.into_iter().map(|row| {
            let at = format!("{}:{}", source.name(), source.line_and_column(row.span.start).0);
            let finger: Option<Finger> = word(&row, "finger");
            let (id, _) = condition(&row, finger, &at);
            Probe { row, id, finger, at }
        }));
    }
    all
}

/// Whether a table holds probes of positions, not verdicts on orthoses.
pub fn is_positions(path: &Path) -> bool {
    path.file_stem().is_some_and(|stem| stem.to_string_lossy().contains("positions"))
}

/// The table was written from the trade's facts by somebody who had not seen the content: it is a second book.
#[test]
fn every_phase_accepts_and_refuses_the_positions_it_should() {
    let table = table();
    assert!(table.len() >= 250, "{} rows", table.len());
    let faults: Vec<String> =
        table.iter().flat_map(|probe| faults(probe, &WORKSHOP.library.conditions[&probe.id])).collect();
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}
