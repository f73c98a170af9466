//! The fact sheet for students: joint by joint with reasons and sources, in learned words. English.

use std::collections::BTreeSet;

use super::shown::fitting;
use super::{Topic, joints, patients};
use crate::body::{Joint, JointName};
use crate::checks::{Fit, wanted};
use crate::choose::Ranked;
use crate::content::{Banned, Basis, Forbidden, Phase, Regime, Requirement};
use crate::document::component::{Component, FactRow, JointRow, JointState, LaterItem, Plate};
use crate::document::glance;
use crate::document::message::{Arg, Message};
use crate::document::section::{Section, filled, sentences};
use crate::ids::SourceKey;

/// Orthoses that are shown: those that come first in the order.
const SHOWN: usize = 6;

/// English text of the content, as it stands there.
fn literal(text: impl Into<String>) -> Message {
    Message::new("students-text").with("text", Arg::Literal(text.into()))
}

pub fn sections(topic: &Topic<'_>) -> Vec<Option<Section>> {
    let mut all = vec![what(topic)];
    let worn = || topic.condition.phases.iter().filter(|phase| phase.wear != Regime::Off);
    all.extend((1_i64..).zip(worn()).map(|(number, phase)| phase_joints(topic, number, phase)));
    all.push(never(topic));
    all.push(topic.first_worn().and_then(|phase| fits(topic, phase)));
    all.push(filled("students-course", vec![("course", Some(Component::Later(course(topic))))]));
    all.push(exercises(topic));
    all.push(varies(topic));
    all.push(evidence(topic));
    all.push(patients::help(topic));
    all
}

fn what(topic: &Topic<'_>) -> Option<Section> {
    let condition = &topic.condition;
    let fact = |label: &str, value: Message, more: Option<Message>| FactRow {
        label: Message::new(label.to_owned()),
        value,
        more,
    };
    let own = Message::new("students-code-shown")
        .with("code", Arg::Literal(condition.icd10cm.of(topic.side, topic.finger).to_owned()));
    let terms = condition.structures.iter().map(|id| Message::new(format!("structure-{id}-term"))).collect();
    let code = Message::new("students-code").with("system", Arg::Literal("ICD-10-CM".to_owned()));
    let rows = vec![
        FactRow { label: code, value: literal(condition.icd10cm.unspecified.clone()), more: Some(own) },
        fact("students-structures", Message::new("students-list").with("items", Arg::List(terms)), None),
        fact("students-aim", Message::new("students-aim-is").with("aim", Arg::Keyword(condition.aim.word())), None),
    ];
    let pictures = Component::Plates(topic.structures(true));
    let section = filled("students-what", vec![("facts", Some(Component::Facts(rows))), ("pictures", Some(pictures))]);
    section.map(|section| patients::with(section, "what", topic.said("what")))
}

/// The joints of a phase, requirement by requirement.
fn phase_joints(topic: &Topic<'_>, number: i64, phase: &Phase) -> Option<Section> {
    let row = |one: &Requirement| JointRow {
        state: joints::state(one).unwrap_or(JointState::Varies),
        word: literal(wanted(one)),
        joints: Message::new(format!("students-joint-{}", one.joint)),
        why: why(topic, one),
    };
    let mut rows: Vec<JointRow> = phase.requires.iter().map(row).collect();
    for one in &phase.one_of {
        let count = i64::try_from(one.ways.len()).unwrap_or(i64::MAX);
        rows.push(JointRow {
            state: JointState::Varies,
            word: Message::new("students-ways").with("count", count),
            joints: Message::new("students-one-of"),
            why: vec![because(topic, &one.because, &one.source)],
        });
        for (way, number) in one.ways.iter().zip(1_i64..) {
            let own = way.requires.iter().map(|one| {
                let joint = Message::new(format!("students-joint-{}", one.joint));
                let joints = Message::new("students-way").with("number", number).with("joint", joint);
                JointRow { joints, ..row(one) }
            });
            rows.extend(own);
            rows.extend(way.presses.map(|segment| JointRow {
                state: JointState::Varies,
                word: Message::new("students-no-joint"),
                joints:
                    Message::new("students-way").with("number", number).with("joint", literal(spaced(segment.word()))),
                why: Vec::new(),
            }));
        }
    }
    let mut section = filled("students-joints", vec![("joints", Some(Component::Joints(rows)))])?;
    section.args = vec![("number", number.into()), ("phase", Arg::Literal(spaced(phase.id.as_str())))];
    Some(section)
}

/// A word of the content with spaces between its parts.
fn spaced(word: &str) -> String {
    word.replace('-', " ")
}

fn why(topic: &Topic<'_>, one: &Requirement) -> Vec<Message> {
    let mut why = vec![because(topic, &one.because, &one.source)];
    why.extend(one.when.as_ref().map(|test| {
        let below = test.below.map_or_else(String::new, |below| format!(" and below {below}"));
        let found = format!(
            "{} {} at least {}{below}",
            spaced(&test.joint.to_string()),
            spaced(test.motion.word()),
            test.at_least
        );
        Message::new("students-when").with("finding", Arg::Literal(found))
    }));
    if !one.moved_in_exercise.is_empty() {
        let directions: Vec<String> = one.moved_in_exercise.iter().map(|direction| spaced(direction.word())).collect();
        why.push(Message::new("students-moved").with("directions", Arg::Literal(directions.join(", "))));
    }
    why
}

/// A reason with what it rests on.
fn because(topic: &Topic<'_>, because: &str, basis: &Basis) -> Message {
    Message::new("students-because")
        .with("text", Arg::Literal(because.to_owned()))
        .with("source", Arg::Literal(short(topic, basis)))
}

/// What a rule rests on in a few words: first author and year.
fn short(topic: &Topic<'_>, basis: &Basis) -> String {
    match basis {
        Basis::Published(key) => match topic.library.sources.get(key) {
            Some(source) => {
                let first = source.authors.split(',').next().unwrap_or_default();
                let more = if source.authors.contains(',') { " et al." } else { "" };
                format!("{first}{more} {}", source.year)
            }
            None => key.to_string(),
        },
        Basis::CommonPractice | Basis::FromMemory => basis.to_string(),
    }
}

/// Positions that must be impossible, once for all phases that forbid them.
fn never(topic: &Topic<'_>) -> Option<Section> {
    let mut found: Vec<&Forbidden> = Vec::new();
    for one in topic.condition.phases.iter().flat_map(|phase| &phase.never) {
        if !found.iter().any(|known| known.positions == one.positions) {
            found.push(one);
        }
    }
    let say = |one: &Forbidden| {
        let positions: Vec<String> = one
            .positions
            .iter()
            .map(|position| format!("{} in {}", spaced(&position.joint.to_string()), position.range))
            .collect();
        Message::new("students-never")
            .with("position", Arg::Literal(positions.join(" with ")))
            .with("why", because(topic, &one.because, &one.source))
    };
    filled("students-never", vec![("positions", sentences(found.into_iter().map(say).collect()))])
}

/// The orthoses that fit, in order, and what the next best lacks.
fn fits(topic: &Topic<'_>, phase: &Phase) -> Option<Section> {
    let ranked = topic.ranked(phase);
    let fit = fitting(&ranked);
    let plates: Vec<Plate> = (1_i64..)
        .zip(&fit)
        .filter_map(|(place, one)| {
            let name = Message::new("students-place")
                .with("number", place)
                .with("name", Message::new(format!("orthosis-{}-name", one.id)));
            topic.orthosis(one, name, about(one))
        })
        .take(SHOWN)
        .collect();
    let mut more = Vec::new();
    if fit.len() > plates.len() {
        let count = i64::try_from(fit.len() - plates.len()).unwrap_or(0);
        more.push(Message::new("students-more").with("count", count));
    }
    more.extend(ranked.iter().find(|one| one.order.safety > Fit::FitsWithRemarks).map(lacks));
    filled(
        "students-fit",
        vec![("orthoses", (!plates.is_empty()).then_some(Component::Plates(plates))), ("advice", sentences(more))],
    )
}

/// The systematic name, the angles that it has to be set to, and what it does less well.
fn about(one: &Ranked) -> Vec<Message> {
    let mut say = vec![literal(one.name.to_string())];
    if !one.set.is_empty() {
        let set: Vec<String> = one.set.iter().map(ToString::to_string).collect();
        say.push(Message::new("students-set").with("angles", Arg::Literal(set.join(", "))));
    }
    if one.order.remarks > 0 {
        let better = one.better.join("; ");
        say.push(Message::new("students-better").with("better", Arg::Literal(better)));
    }
    say
}

/// Faults of the next best orthosis that are named; the rest would only repeat them.
const NAMED: usize = 4;

/// Why the best of those that do not fit does not: joints of which the same is true are said together.
fn lacks(one: &Ranked) -> Message {
    let mut groups: Vec<(String, Vec<Joint>)> = Vec::new();
    for line in one.verdict.deciding() {
        let said = format!("{}, but {}", line.wanted, line.offered);
        match groups.iter_mut().find(|(known, _)| *known == said) {
            Some((_, joints)) => joints.extend(line.joint),
            None => groups.push((said, line.joint.into_iter().collect())),
        }
    }
    let lines: Vec<String> =
        groups.iter().take(NAMED).map(|(said, joints)| format!("{}: {said}", together(joints))).collect();
    Message::new("students-lacks")
        .with("name", Message::new(format!("orthosis-{}-name", one.id)))
        .with("fit", Arg::Literal(spaced(one.verdict.fit.word())))
        .with("lacks", Arg::Literal(lines.join("; ")))
}

/// Joints in one phrase: a knuckle of all fingers by the name of its row.
fn together(joints: &[Joint]) -> String {
    let row = JointName::all().find(|name| name.joints().len() > 1 && name.joints() == joints);
    let names = match row {
        Some(row) => vec![row.to_string()],
        None if joints.is_empty() => vec!["the whole".to_owned()],
        None => joints.iter().map(ToString::to_string).collect(),
    };
    names.iter().map(|name| spaced(name)).collect::<Vec<_>>().join(", ")
}

/// The phases: how long, how it is worn, who decides.
fn course(topic: &Topic<'_>) -> Vec<LaterItem> {
    (1_i64..)
        .zip(&topic.condition.phases)
        .map(|(number, phase)| {
            let wear = Message::new(format!("later-{}", glance::word(phase.wear, phase.protective)));
            let mut say = Message::new("students-step")
                .with("wear", wear)
                .with("washing", Arg::Keyword(super::washing(phase.washing)))
                .with("decider", Arg::Keyword(phase.decided_by.word()))
                .with("begins", Arg::Keyword(phase.begins.word()))
                .with("guards", Arg::Keyword(if phase.protective { "yes" } else { "no" }))
                .with("weans", Arg::Keyword(if phase.weaning.is_some() { "yes" } else { "no" }))
                .with("source", Arg::Literal(short(topic, &phase.source)));
            say = say.with("load", Arg::Literal(spaced(phase.exercises.most.word())));
            let label = Message::new("students-step-label")
                .with("number", number)
                .with("phase", Arg::Literal(spaced(phase.id.as_str())))
                .with("length", patients::length(topic, phase, "students-length-protocol"));
            LaterItem { label, say }
        })
        .collect()
}

/// What exercises may not do, phase by phase.
fn exercises(topic: &Topic<'_>) -> Option<Section> {
    let banned = |one: &Banned| {
        let directions: Vec<String> = one.directions.iter().map(|direction| spaced(direction.word())).collect();
        let what = if directions.is_empty() { "any movement".to_owned() } else { directions.join(", ") };
        let from = one.from_load.map_or_else(String::new, |load| format!(" from {} on", spaced(load.word())));
        format!("{}: {what}{from}", spaced(&one.joint.to_string()))
    };
    let items = (1_i64..)
        .zip(&topic.condition.phases)
        .filter(|(_, phase)| !phase.exercises.bans.is_empty())
        .map(|(number, phase)| {
            let bans: Vec<String> = phase.exercises.bans.iter().map(banned).collect();
            LaterItem {
                label: Message::new("students-phase").with("number", number),
                say: Message::new("students-bans")
                    .with("bans", Arg::Literal(bans.join("; ")))
                    .with("source", Arg::Literal(short(topic, &phase.exercises.source))),
            }
        })
        .collect::<Vec<_>>();
    filled("students-exercises", vec![("bans", (!items.is_empty()).then_some(Component::Later(items)))])
}

/// What differs between protocols, and how sure the content is.
fn varies(topic: &Topic<'_>) -> Option<Section> {
    let condition = &topic.condition;
    let mut list: Vec<Message> = condition.confidence.iter().map(|text| literal(text.clone())).collect();
    if let Some(protocol) = &condition.protocol {
        list.push(because(topic, &protocol.because, &protocol.source));
        list.extend(protocol.angles.iter().map(|angle| {
            let within: Vec<String> = angle.within.iter().map(ToString::to_string).collect();
            Message::new("students-protocol-angle")
                .with("joint", Message::new(format!("students-joint-{}", angle.joint)))
                .with("within", Arg::Literal(within.join(" or ")))
        }));
    }
    list.push(Message::new("facts-clinics-differ"));
    filled("students-varies", vec![("varies", sentences(list))])
}

/// How strong the evidence is, and every publication that the sheet names.
fn evidence(topic: &Topic<'_>) -> Option<Section> {
    let condition = &topic.condition;
    let requirements = condition.phases.iter().flat_map(|phase| phase.all_requirements()).map(|one| &one.source);
    let phases = condition.phases.iter().flat_map(|phase| [&phase.source, &phase.exercises.source]);
    let never = condition.phases.iter().flat_map(|phase| &phase.never).map(|one| &one.source);
    let ways = condition.phases.iter().flat_map(|phase| &phase.one_of).map(|one| &one.source);
    let protocol = condition.protocol.iter().map(|protocol| &protocol.source);
    let bases = requirements.chain(phases).chain(never).chain(ways).chain(protocol).chain([&condition.source]);
    let published = bases.filter_map(|basis| match basis {
        Basis::Published(key) => Some(key),
        Basis::CommonPractice | Basis::FromMemory => None,
    });
    let keys: BTreeSet<&SourceKey> = published.chain(&condition.evidence_from).collect();
    let cited = keys.into_iter().filter_map(|key| topic.library.sources.get(key)).map(|source| {
        let read = if source.read { "read" } else { "recalled" };
        let work = format!("{} ({}). {}. {}.", source.authors, source.year, source.title, source.published);
        Message::new("students-cited").with("work", Arg::Literal(work)).with("read", Arg::Keyword(read))
    });
    let mut list = vec![literal(condition.evidence.clone())];
    list.extend(cited);
    list.push(Message::new("students-bases"));
    filled("students-evidence", vec![("evidence", sentences(list))])
}
