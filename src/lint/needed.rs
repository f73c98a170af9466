//! Which messages the sheets can ask for.

use std::collections::BTreeSet;

use crate::body::JointName;
use crate::case::LetterReader;
use crate::content::{Demand, Gate, Regime};
use crate::document::{CalendarState, JointState, MomentKind, SheetKind, StepKind, StripState, avoid_keys};
use crate::pipeline::Workshop;
use crate::plan::ActivityVerdict;

/// Messages that the code names one by one. A test holds this list against the code.
pub const SHEET: &[&str] = &[
    "axis-midnight",
    "axis-noon",
    "calendar-and-so-on",
    "calendar-build",
    "calendar-key-review",
    "calendar-review",
    "calendar-wean",
    "calendar-week",
    "calendar-what",
    "call-emergency",
    "call-emergency-number",
    "call-telephone",
    "call-today",
    "call-visit",
    "card-caution",
    "care-bring",
    "care-change",
    "care-dry-plastic",
    "care-dry-soft",
    "care-heat",
    "care-keep-dry",
    "care-machine",
    "care-metal",
    "care-share",
    "care-straps",
    "care-wash-plastic",
    "care-wash-soft",
    "daily-ask",
    "daily-driving",
    "daily-helper",
    "daily-how",
    "daily-job",
    "daily-keep",
    "daily-keep-dry",
    "daily-other-hand",
    "daily-pauses",
    "daily-what",
    "daily-word-change",
    "daily-word-keep",
    "daily-word-leave",
    "date-range",
    "date-until-visit",
    "diary-exercises",
    "diary-hours",
    "diary-note",
    "diary-pain",
    "diary-skin",
    "diary-stop",
    "diary-stop-no-number",
    "diary-visit",
    "diary-visit-time",
    "diary-wears",
    "diary-worn",
    "dose-a-day",
    "dose-times",
    "fact-fitted",
    "fact-for",
    "fact-free",
    "fact-full",
    "fact-full-more",
    "fact-review",
    "fact-splint",
    "facts-aim",
    "facts-caution",
    "facts-clinics-differ",
    "facts-ends-person",
    "facts-ends-surgeon",
    "facts-ends-therapist",
    "facts-ends-time",
    "facts-joints",
    "facts-length-open",
    "facts-length-protocol",
    "facts-length-usual",
    "facts-line",
    "facts-own-guide",
    "facts-step",
    "facts-step-label",
    "facts-surgeon-sets",
    "facts-visit",
    "facts-what",
    "finger-name",
    "guide-caution",
    "guide-drafted",
    "guide-made-for",
    "guide-made-for-nobody",
    "guide-page",
    "guide-title",
    "hand-alt",
    "hand-left",
    "hand-right",
    "held-end-joints",
    "held-knuckles",
    "held-middle-joints",
    "initial-date",
    "initial-name",
    "initial-say",
    "later-label",
    "later-label-next",
    "later-label-surgeon",
    "later-other",
    "later-wean",
    "length-hours",
    "length-hours-minutes",
    "length-minutes",
    "length-seconds",
    "letter-about",
    "letter-about-nobody",
    "letter-for",
    "letter-from",
    "letter-hand",
    "letter-leave-on",
    "letter-never-off",
    "letter-other-jobs",
    "letter-title",
    "letter-until",
    "letter-urgent",
    "letter-urgent-no-number",
    "move-avoid",
    "move-splint-off",
    "move-splint-on",
    "move-stop",
    "move-up-to",
    "moves-after-review",
    "moves-later",
    "note-from",
    "phone-contents",
    "picture-covers",
    "picture-held",
    "picture-held-joints",
    "picture-held-mark",
    "picture-inside",
    "picture-moved",
    "picture-part",
    "picture-right",
    "picture-seen",
    "picture-spots",
    "picture-structures",
    "picture-wrong",
    "reminder-about",
    "reminder-back-on",
    "reminder-call",
    "reminder-call-hours",
    "reminder-caution",
    "reminder-change-sheet",
    "reminder-checks",
    "reminder-dose",
    "reminder-exercise-sheet",
    "reminder-person",
    "reminder-skin-again",
    "reminder-times",
    "reminder-visit",
    "reminder-wear",
    "say-date",
    "say-date-time",
    "say-short-date",
    "schedule-clock",
    "schedule-day",
    "schedule-hours",
    "schedule-long",
    "schedule-minutes",
    "schedule-not-yet",
    "schedule-note",
    "schedule-note-late",
    "schedule-times",
    "sheet-caution",
    "skin-act-keep",
    "skin-act-take-off",
    "skin-fine",
    "skin-fine-damp",
    "skin-fine-lines",
    "skin-fine-mark",
    "skin-not",
    "skin-not-blister",
    "skin-not-dark",
    "skin-not-mark",
    "skin-not-rash",
    "skin-not-wet",
    "spot-letters",
    "steps-never",
    "strap-next",
    "strip-alt",
    "strip-alt-none",
    "strip-build",
    "strip-days",
    "strip-from-day",
    "strip-key-guard",
    "strip-key-part",
    "strip-key-rest",
    "strip-weeks",
    "students-aim",
    "students-aim-is",
    "students-bans",
    "students-bases",
    "students-because",
    "students-better",
    "students-cited",
    "students-code",
    "students-code-shown",
    "students-lacks",
    "students-length-protocol",
    "students-list",
    "students-more",
    "students-moved",
    "students-never",
    "students-no-joint",
    "students-one-of",
    "students-phase",
    "students-place",
    "students-protocol-angle",
    "students-set",
    "students-step",
    "students-step-label",
    "students-structures",
    "students-text",
    "students-title",
    "students-way",
    "students-ways",
    "students-when",
    "time-range",
    "warning-act-keep-on",
    "warning-act-supported",
    "warning-act-take-off",
    "warning-emergency",
    "warning-emergency-no-number",
    "warning-title-keep-on",
    "warning-title-supported",
    "warning-title-take-off",
    "wear-night",
    "wear-wean-day",
    "wear-wean-night",
    "why-heavy",
    "why-in-the-way",
];

/// Every message that some sheet of this content can ask for.
pub fn needed(workshop: &Workshop) -> BTreeSet<String> {
    let library = &workshop.library;
    let mut ids: BTreeSet<String> = SHEET.iter().map(|id| (*id).to_owned()).collect();
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
