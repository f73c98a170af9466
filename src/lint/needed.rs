//! Which messages the sheets can ask for.

use std::collections::BTreeSet;

use super::listed::SHEET;
use super::staff::SHELF;
use crate::body::JointName;
use crate::case::LetterReader;
use crate::checks::Grade;
use crate::content::{Demand, Gate, Regime};
use crate::document::{CalendarState, JointState, MomentKind, SheetKind, StepKind, StripState, TeachTopic, avoid_keys};
use crate::pipeline::Workshop;
use crate::plan::ActivityVerdict;

/// Every message that some sheet of this content can ask for.
pub fn needed(workshop: &Workshop) -> BTreeSet<String> {
    let library = &workshop.library;
    let mut ids: BTreeSet<String> = SHEET.iter().chain(SHELF).map(|id| (*id).to_owned()).collect();
    // The guide's description is the aim of its condition, and the letter's title is in the list.
    for kind in SheetKind::ALL.iter().filter(|kind| !kind.is_guide()) {
        ids.extend(["title", "description"].map(|part| format!("{kind}-{part}")));
    }
    ids.extend(StepKind::ALL.iter().map(|kind| format!("card-straps-{kind}")));
    ids.extend(LetterReader::ALL.iter().map(|reader| format!("letter-help-{reader}")));
    for regime in Regime::ALL {
        ids.extend([format!("wear-{regime}"), format!("later-{regime}"), format!("calendar-{regime}")]);
    }
    for regime in [Regime::NightAndTasks, Regime::Tasks] {
        ids.extend(["wear", "later", "calendar"].map(|part| format!("{part}-{regime}-guard")));
    }
    ids.extend(Demand::ALL.iter().map(|demand| format!("why-{demand}")));
    ids.extend(Gate::ALL.iter().map(|gate| format!("why-{gate}")));
    ids.extend(TeachTopic::ALL.iter().flat_map(|topic| [format!("teach-{topic}"), format!("record-teach-{topic}")]));
    ids.extend(Grade::ALL.iter().map(|grade| format!("record-mark-{grade}")));
    ids.extend(MomentKind::ALL.iter().map(|kind| format!("reminder-{kind}")));
    ids.extend(StepKind::ALL.iter().map(|kind| format!("steps-{kind}")));
    ids.extend(["weeks", "weeks-range", "days", "days-range"].map(|unit| format!("facts-{unit}")));
    ids.extend(JointState::ALL.iter().map(|state| format!("facts-joint-{state}")));
    ids.extend(JointName::all().map(|joint| format!("students-joint-{joint}")));
    // The names of all joints, so that a clinic's own orthosis can be spoken of.
    ids.extend(JointName::all().map(|joint| format!("joint-{joint}")));
    let strips = [StripState::On, StripState::Off, StripState::Needed];
    ids.extend(strips.iter().map(|state| format!("strip-key-{state}")));
    let states =
        [CalendarState::Build, CalendarState::On, CalendarState::Night, CalendarState::Needed, CalendarState::Off];
    ids.extend(states.iter().map(|state| format!("calendar-key-{state}")));
    let eased = [ActivityVerdict::Keep, ActivityVerdict::Change];
    ids.extend(eased.iter().map(|verdict| format!("daily-from-{verdict}")));
    for (id, condition) in &library.conditions {
        ids.extend(["name", "what", "aim"].map(|part| format!("condition-{id}-{part}")));
        for phase in &condition.phases {
            ids.extend(phase.support.iter().map(|support| format!("support-{support}")));
            ids.extend(phase.exercises.bans.iter().flat_map(avoid_keys));
        }
    }
    for (id, orthosis) in &library.orthoses {
        ids.extend(["name", "short"].map(|part| format!("orthosis-{id}-{part}")));
        ids.extend(orthosis.straps.iter().map(|strap| format!("strap-{strap}")));
        ids.extend(orthosis.pressure_spots.iter().map(|spot| format!("spot-{spot}")));
        let steps = orthosis.donning.iter().chain(&orthosis.doffing).chain(&orthosis.one_handed);
        ids.extend(steps.map(|step| format!("step-{step}")));
    }
    for (id, activity) in &library.activities {
        ids.insert(format!("activity-{id}-name"));
        ids.extend(activity.adaptations.iter().map(|way| format!("activity-{id}-{}", way.id)));
    }
    for (id, exercise) in &library.exercises {
        ids.extend(["name", "start"].map(|part| format!("exercise-{id}-{part}")));
        ids.extend((1..=exercise.steps.get()).map(|step| format!("exercise-{id}-step-{step}")));
    }
    ids.extend(library.factors.values().flat_map(|factor| factor.advice.values()).map(|id| format!("factor-{id}")));
    ids.extend(library.structures.keys().flat_map(|id| [format!("structure-{id}"), format!("structure-{id}-term")]));
    let faults = library.shapes.values().flat_map(|shape| &shape.faults);
    ids.extend(faults.map(|fault| format!("fault-{}", fault.id)));
    ids.extend(library.signs.keys().map(|id| format!("sign-{id}")));
    ids.extend(workshop.words.templates().says());
    ids
}
