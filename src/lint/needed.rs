//! Which messages the sheets can ask for.

use std::collections::BTreeSet;

use crate::body::JointName;
use crate::case::LetterReader;
use crate::checks::Grade;
use crate::content::{Demand, Gate, Regime};
use crate::document::{CalendarState, MomentKind, SheetKind, StepKind, StripState, TeachTopic, avoid_keys};
use crate::pipeline::Workshop;
use crate::plan::ActivityVerdict;

/// Messages that the code names one by one. A test holds this list against the code.
pub const SHEET: &[&str] = &[
    "axis-midnight",
    "axis-noon",
    "booklet-caution",
    "booklet-contents",
    "booklet-one-handed",
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
    "call-where",
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
    "contents-page",
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
    "diary-more",
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
    "finger-name",
    "guide-caution",
    "guide-drafted",
    "guide-outdated",
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
    "record-about",
    "record-all-confirmed",
    "record-all-off",
    "record-ask",
    "record-at-once",
    "record-because",
    "record-break-in",
    "record-case",
    "record-caution",
    "record-clinic",
    "record-code",
    "record-condition",
    "record-confidence",
    "record-content",
    "record-dates",
    "record-days",
    "record-ease",
    "record-events",
    "record-evidence",
    "record-exercise",
    "record-exercise-up-to",
    "record-exercises",
    "record-finger",
    "record-fingerprint",
    "record-fitted",
    "record-given",
    "record-hand",
    "record-hash",
    "record-heavy",
    "record-hours",
    "record-in-the-way",
    "record-instead",
    "record-job",
    "record-jobs",
    "record-joint",
    "record-kind",
    "record-language",
    "record-language-is",
    "record-later",
    "record-line",
    "record-memory",
    "record-no-ease",
    "record-no-memory",
    "record-no-overrides",
    "record-none-given",
    "record-not-named",
    "record-offered",
    "record-open",
    "record-orthosis",
    "record-over",
    "record-overrides",
    "record-pages",
    "record-person",
    "record-phase",
    "record-phase-fit",
    "record-plan",
    "record-point-clinic",
    "record-point-day",
    "record-point-emergency",
    "record-point-exercise",
    "record-point-full",
    "record-point-hand",
    "record-point-no-number",
    "record-point-not-today",
    "record-point-row",
    "record-point-today",
    "record-point-visit",
    "record-program",
    "record-protocol",
    "record-reference",
    "record-result",
    "record-review",
    "record-risk",
    "record-risk-accepted",
    "record-risk-none",
    "record-rule",
    "record-rules",
    "record-set",
    "record-sheet",
    "record-sign",
    "record-sign-date",
    "record-size",
    "record-skin",
    "record-skin-is",
    "record-source",
    "record-sources",
    "record-subject",
    "record-systematic",
    "record-teach",
    "record-teach-say",
    "record-tick",
    "record-title",
    "record-until-review",
    "record-value",
    "record-verdict",
    "record-waits",
    "record-wanted",
    "record-ways",
    "record-wear",
    "record-whole",
    "record-why",
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
    "teach-hands",
    "teach-intro",
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
    ids.extend(TeachTopic::ALL.iter().flat_map(|topic| [format!("teach-{topic}"), format!("record-teach-{topic}")]));
    ids.extend(Grade::ALL.iter().map(|grade| format!("record-mark-{grade}")));
    ids.extend(MomentKind::ALL.iter().map(|kind| format!("reminder-{kind}")));
    ids.extend(StepKind::ALL.iter().map(|kind| format!("steps-{kind}")));
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
