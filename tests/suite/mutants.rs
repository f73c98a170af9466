//! Mutants: a required angle shifted, a side swapped, a joint dropped. Each is one small lie in the content, and the tables
//! of wanted verdicts and positions, which were written without a look at the content, have to notice it.

use palmleaf::body::{Axis, Finger, MotionRange, Position, Stop};
use palmleaf::checks::{Fit, Question, judge_phase};
use palmleaf::content::{Condition, Hold, Need, Orthosis, Regime, Requirement, Wanted};
use palmleaf::ids::{ConditionId, OrthosisId};
use palmleaf::source::Node;
use palmleaf::units::Degrees;

use crate::joints;
use crate::positions;
use crate::support::{WORKSHOP, files};
use crate::tables::{findings, phase, rows, scalar, turn_all, word};

/// How far a mutant shifts an angle: a slip that a hurried eye passes over.
const SHIFT: i16 = 15;

/// One wanted verdict.
struct Wish {
    row: Node,
    at: String,
    condition: ConditionId,
    orthosis: OrthosisId,
    finger: Option<Finger>,
}

fn wishes() -> Vec<Wish> {
    let mut all = Vec::new();
    for path in files("tests/verdicts", ".yaml").iter().filter(|path| crate::tables::is_verdicts(path)) {
        let (source, list) = rows(path);
        for row in list {
            let at = format!("{}:{}", source.name(), source.line_and_column(row.span.start).0);
            all.push(Wish {
                condition: word(&row, "condition").expect("a condition"),
                orthosis: word(&row, "orthosis").expect("an orthosis"),
                finger: word(&row, "finger"),
                row,
                at,
            });
        }
    }
    all
}

fn allowed(row: &Node, fit: Fit) -> bool {
    match scalar(row, "verdict").expect("a verdict") {
        "at-most-remarks" => fit <= Fit::FitsWithRemarks,
        "at-least-misfit" => fit >= Fit::DoesNotFit,
        word => fit.word() == word,
    }
}

/// Whether a wanted verdict comes out for this condition and orthosis.
fn holds(wish: &Wish, condition: &Condition, orthosis: &Orthosis) -> bool {
    let condition = wish.finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
    let mut orthosis = wish.finger.map_or_else(|| orthosis.clone(), |finger| orthosis.for_finger(finger));
    // A mutant may have dropped the joint that a row sets: then nothing is set, and the verdict tells.
    turn_all(&mut orthosis, &wish.row);
    let measured = findings(&wish.row);
    let phase = phase(&wish.row, &condition, &wish.at);
    let question = Question { orthosis: &orthosis, findings: &measured, factors: &[] };
    allowed(&wish.row, judge_phase(question, phase).fit)
}

fn shifted(range: MotionRange, by: i16) -> MotionRange {
    let by = Degrees::whole(by);
    MotionRange::between(range.axis(), range.from().plus(by), range.to().plus(by))
}

fn mirrored(range: MotionRange) -> MotionRange {
    MotionRange::between(range.axis(), range.from().reversed(), range.to().reversed())
}

fn mirrored_stop(stop: Stop) -> Stop {
    let away = palmleaf::body::Direction::of(stop.at.axis(), !stop.direction.is_positive());
    Stop { direction: away, at: Position::signed(stop.at.axis(), stop.at.angle().reversed()) }
}

/// Every mutant of a requirement that says something: a joint that may be covered says nothing that could be wrong.
fn of_requirement(requirement: &Requirement) -> Vec<Requirement> {
    if requirement.need == Need::May {
        return Vec::new();
    }
    let mut all = Vec::new();
    for (index, range) in requirement.within.iter().enumerate() {
        let mut with = |range: MotionRange| {
            let mut mutant = requirement.clone();
            mutant.within[index] = range;
            all.push(mutant);
        };
        with(shifted(*range, SHIFT));
        with(shifted(*range, -SHIFT));
        // Straight to either side is its own mirror.
        if range.axis() != Axis::PalmarAbduction && mirrored(*range) != *range {
            with(mirrored(*range));
        }
    }
    for index in 0..requirement.stops.len() {
        let mut mutant = requirement.clone();
        mutant.stops[index] = mirrored_stop(mutant.stops[index]);
        all.push(mutant);
        let mut mutant = requirement.clone();
        // Looser by so much: a stop that lets the joint go further.
        let looser = if mutant.stops[index].direction.is_positive() { SHIFT } else { -SHIFT };
        mutant.stops[index].at = mutant.stops[index].at.plus(Degrees::whole(looser));
        all.push(mutant);
    }
    all
}

/// Every mutant of a condition, with what was done to it.
fn of_condition(condition: &Condition) -> Vec<(String, Condition)> {
    let mut all = Vec::new();
    for (place, phase) in condition.phases.iter().enumerate().filter(|(_, phase)| phase.wear != Regime::Off) {
        for (index, requirement) in phase.requires.iter().enumerate() {
            let name = |what: &str| format!("{}: {} {} {what}", phase.id, requirement.need, requirement.joint);
            for mutant in of_requirement(requirement) {
                let mut changed = condition.clone();
                changed.phases[place].requires[index] = mutant;
                all.push((name("changed"), changed));
            }
            // A joint that should be free and is not spoken of any more comes out with the same remark when it is held.
            let silent = matches!(requirement.need, Need::May | Need::ShouldBeFree);
            if !silent && requirement.when.is_none() {
                let mut changed = condition.clone();
                changed.phases[place].requires.remove(index);
                all.push((name("dropped"), changed));
            }
        }
        for (choice, one) in phase.one_of.iter().enumerate() {
            for (way, asked) in one.ways.iter().enumerate() {
                for (index, requirement) in asked.requires.iter().enumerate() {
                    for mutant in of_requirement(requirement) {
                        let mut changed = condition.clone();
                        changed.phases[place].one_of[choice].ways[way].requires[index] = mutant;
                        all.push((format!("{}: way {way} {} changed", phase.id, requirement.joint), changed));
                    }
                }
            }
        }
    }
    all
}

/// Every mutant of an orthosis.
fn of_orthosis(orthosis: &Orthosis) -> Vec<(String, Orthosis)> {
    let mut all = Vec::new();
    for (name, hold) in orthosis.joints.iter().filter(|(_, hold)| hold.acts()) {
        let mut with = |what: &str, hold: Hold| {
            let mut changed = orthosis.clone();
            changed.joints.insert(*name, hold);
            all.push((format!("{name} {what}"), changed));
        };
        with("dropped", Hold::Free);
        match hold {
            Hold::Immobilised { at, adjustable } => {
                for index in 0..at.len() {
                    // Sideways straight is a convention of the file; the main axis is the setting.
                    if at[index].axis() == Axis::Deviation {
                        continue;
                    }
                    for by in [2 * SHIFT, -2 * SHIFT] {
                        let mut moved = at.clone();
                        moved[index] = shifted(moved[index], by);
                        with("shifted", Hold::Immobilised { at: moved, adjustable: adjustable.clone() });
                    }
                }
            }
            Hold::Blocked { stops, adjustable } => {
                let turned = stops.iter().map(|stop| mirrored_stop(*stop)).collect();
                with("turned round", Hold::Blocked { stops: turned, adjustable: adjustable.clone() });
            }
            Hold::Relative { at, adjustable } => {
                let turned = at.iter().map(|range| mirrored(*range)).collect();
                with("turned round", Hold::Relative { at: turned, adjustable: adjustable.clone() });
            }
            _ => {}
        }
    }
    all
}

#[test]
fn small_lies_in_the_content_are_noticed() {
    let library = &WORKSHOP.library;
    let wishes = wishes();
    let probes = positions::table();
    let (mut caught, mut total) = (0usize, 0usize);
    let mut missed: Vec<String> = Vec::new();
    for (id, condition) in &library.conditions {
        let own: Vec<&Wish> = wishes.iter().filter(|wish| wish.condition == *id).collect();
        let probed: Vec<&positions::Probe> = probes.iter().filter(|probe| probe.id == *id).collect();
        for (what, mutant) in of_condition(condition) {
            total += 1;
            let by_verdict = own.iter().any(|wish| !holds(wish, &mutant, &library.orthoses[&wish.orthosis]));
            let by_position = || probed.iter().any(|probe| !positions::faults(probe, &mutant).is_empty());
            // The content check proves that every phase has an orthosis that fits.
            let by_check = || {
                let whole = mutant.for_finger(Finger::Ring);
                whole.phases.iter().filter(|phase| phase.wear != Regime::Off).any(|phase| {
                    !library.orthoses.values().any(|orthosis| {
                        let orthosis = orthosis.for_finger(Finger::Ring);
                        let question = Question { orthosis: &orthosis, findings: &[], factors: &[] };
                        judge_phase(question, phase).fit <= Fit::FitsWithRemarks
                    })
                })
            };
            if by_verdict || by_position() || by_check() {
                caught += 1;
            } else {
                missed.push(format!("{id}: {what}"));
            }
        }
    }
    let conditions = (caught, total);
    let joints = joints::table();
    for (id, orthosis) in &library.orthoses {
        let listed: Vec<&joints::JointRow> = joints.iter().filter(|row| row.id == *id).collect();
        let own: Vec<&Wish> = wishes.iter().filter(|wish| wish.orthosis == *id).collect();
        for (what, mutant) in of_orthosis(orthosis) {
            total += 1;
            let by_table = listed.iter().any(|row| !joints::faults(row, &mutant).is_empty());
            if by_table || own.iter().any(|wish| !holds(wish, &library.conditions[&wish.condition], &mutant)) {
                caught += 1;
            } else {
                missed.push(format!("{id}: {what}"));
            }
        }
    }
    let share = caught as f64 * 100.0 / total as f64;
    println!(
        "mutants caught: {caught} of {total} ({share:.1} %); of conditions {} of {}, of orthoses {} of {}",
        conditions.0,
        conditions.1,
        caught - conditions.0,
        total - conditions.1
    );
    assert!(total > 1000, "{total} mutants");
    assert!(share >= 95.0, "{share:.1} % of {total} caught; missed:\n{}", missed.join("\n"));
}

/// What a mutant is must itself be sound: it differs from what it was made of.
#[test]
fn a_mutant_differs_from_what_it_was_made_of() {
    for condition in WORKSHOP.library.conditions.values() {
        assert!(of_condition(condition).iter().all(|(_, mutant)| mutant != condition));
    }
    for orthosis in WORKSHOP.library.orthoses.values() {
        assert!(of_orthosis(orthosis).iter().all(|(_, mutant)| mutant != orthosis));
    }
    let still = |requirement: &&Requirement| requirement.hold == Some(Wanted::Still) && !requirement.within.is_empty();
    let all = WORKSHOP.library.conditions.values().flat_map(|condition| &condition.phases);
    let one = all.flat_map(|phase| &phase.requires).find(still).expect("a joint that is held still");
    assert!(of_requirement(one).len() >= 2);
}
