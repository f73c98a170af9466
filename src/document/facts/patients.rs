//! The fact sheet for patients: about two pages of plain words.

use super::shown::fitting;
use super::{Topic, joints};
use crate::content::{Begins, Decider, Phase, Regime};
use crate::document::component::{Component, LaterItem, Plate};
use crate::document::glance::{self, free_joints};
use crate::document::message::{Arg, Message};
use crate::document::section::{Section, filled, sentences};
use crate::units::DayCount;

/// Orthoses that are shown: those that come first in the order.
const SHOWN: usize = 3;
/// Joints that a caption under a picture has room for.
const CAPTION: usize = 4;

pub fn sections(topic: &Topic<'_>) -> Vec<Option<Section>> {
    let phase = topic.first_worn();
    let what = filled("facts-what", vec![("pictures", Some(Component::Plates(topic.structures(false))))]);
    let held = phase.map(joints::rows).filter(|rows| !rows.is_empty()).map(Component::Joints);
    let aim = filled("facts-aim", vec![("joints", held)]);
    let types = phase.map(|phase| types(topic, phase)).filter(|plates| !plates.is_empty()).map(Component::Plates);
    vec![
        what.map(|section| with(section, "what", topic.said("what"))),
        aim.map(|section| with(section, "aim", topic.said("aim"))),
        filled("facts-types", vec![("types", types)]),
        filled(
            "facts-course",
            vec![("course", Some(Component::Later(course(topic)))), ("advice", sentences(differs(topic)))],
        ),
        help(topic),
    ]
}

pub fn with(mut section: Section, name: &'static str, message: Message) -> Section {
    section.args.push((name, message.into()));
    section
}

/// The types of splint that come first in the order for the first phase.
fn types(topic: &Topic<'_>, phase: &Phase) -> Vec<Plate> {
    let ranked = topic.ranked(phase);
    let fits = fitting(&ranked).into_iter();
    let plate = |one| {
        let ranked: &crate::choose::Ranked = one;
        let name = Message::new(format!("orthosis-{}-short", ranked.id));
        topic.orthosis(ranked, name, free_joints(&ranked.orthosis).filter(is_short).into_iter().collect())
    };
    fits.filter_map(plate).take(SHOWN).collect()
}

/// Whether a caption has room for it: a long row of joints is what the table above says already.
fn is_short(free: &Message) -> bool {
    free.args.iter().all(|(_, arg)| !matches!(arg, Arg::List(joints) if joints.len() > CAPTION))
}

/// The usual course, a step for each phase, in the durations of the content.
fn course(topic: &Topic<'_>) -> Vec<LaterItem> {
    let phases = &topic.condition.phases;
    let nexts = phases.iter().skip(1).map(Some).chain([None]);
    (1_i64..)
        .zip(phases.iter().zip(nexts))
        .map(|(number, (phase, next))| {
            let wear = match (phase.wear, &phase.weaning) {
                (Regime::Off, _) | (_, None) => format!("later-{}", glance::word(phase.wear, phase.protective)),
                (_, Some(_)) => "later-wean".to_owned(),
            };
            let mut say = Message::new(wear);
            if let Some(ends) = ends(phase, next) {
                say = Message::new("facts-step").with("wear", say).with("ends", ends);
            }
            let label = Message::new("facts-step-label")
                .with("number", number)
                .with("length", length(topic, phase, "facts-length-protocol"));
            LaterItem { label, say }
        })
        .collect()
}

/// Who decides that a phase is over. Nothing after the last one, when nothing is left to decide.
fn ends(phase: &Phase, next: Option<&Phase>) -> Option<Message> {
    let waits = next.is_some_and(|next| next.begins == Begins::AfterReview);
    if next.is_none() && (phase.wear == Regime::Off || phase.decided_by == Decider::Time) {
        return None;
    }
    Some(Message::new(match phase.decided_by {
        Decider::Surgeon => "facts-ends-surgeon",
        Decider::Therapist => "facts-ends-therapist",
        // Whoever finds that it is over, the next one begins with the therapist's word.
        Decider::Person | Decider::Time if waits => "facts-ends-therapist",
        Decider::Person => "facts-ends-person",
        Decider::Time => "facts-ends-time",
    }))
}

/// How long a phase usually is. `set` is the message for a length that the surgeon's protocol sets.
pub fn length(topic: &Topic<'_>, phase: &Phase, set: &'static str) -> Message {
    let protocol = topic.condition.protocol.iter().flat_map(|protocol| &protocol.lengths);
    if let Some(length) = protocol.into_iter().find(|length| length.phase == phase.id) {
        return Message::new(set).with("length", span(length.at_least, length.at_most));
    }
    match (phase.lasts, phase.lasts_up_to) {
        (Some(from), Some(to)) => Message::new("facts-length-usual").with("length", span(from, to)),
        (Some(length), None) => Message::new("facts-length-usual").with("length", span(length, length)),
        (None, _) => Message::new("facts-length-open"),
    }
}

/// "4 weeks", "4 to 6 weeks".
fn span(from: DayCount, to: DayCount) -> Message {
    let (unit, from, to) = match (from.whole_weeks(), to.whole_weeks()) {
        (Some(from), Some(to)) => ("weeks", from, to),
        _ => ("days", from.days(), to.days()),
    };
    if from == to {
        return Message::new(format!("facts-{unit}")).with("count", i64::from(from));
    }
    Message::new(format!("facts-{unit}-range")).with("from", i64::from(from)).with("to", i64::from(to))
}

/// That clinics differ, and whose word counts.
fn differs(topic: &Topic<'_>) -> Vec<Message> {
    let mut list = vec![Message::new("facts-own-guide"), Message::new("facts-clinics-differ")];
    if topic.condition.protocol.is_some() {
        list.push(Message::new("facts-surgeon-sets"));
    }
    list
}

/// The signs to get help for.
pub fn help(topic: &Topic<'_>) -> Option<Section> {
    let signs = topic.signs();
    let own = signs.visit.iter().filter(|id| topic.condition.signs.contains(id));
    let visit = own.map(|id| Message::new("facts-visit").with("sign", Message::new(format!("sign-{id}")))).collect();
    let stop = glance::stop_box(topic.washing(), &signs, topic.contact.clone());
    filled("facts-help", vec![("warning", Some(stop)), ("advice", sentences(visit))])
}
