//! Study cards: questions and answers that the content itself gives.

use std::collections::BTreeSet;

use super::group::{Group, groups};
use super::readable::readable;
use crate::body::{Finger, Joint, JointName};
use crate::checks::{Fit, Question, judge_phase, offered, wanted};
use crate::choose::best_setting;
use crate::classify;
use crate::content::{
    Basis, Condition, Hold, Library, Need, Orthosis, Phase, Regime, Requirement, Sign, Structure, TriageLevel,
};
use crate::document::{Arg, Message};
use crate::ids::{ConditionId, MessageId, OrthosisId, StructureId};
use crate::picture::asks::{self, Sitter};
use crate::picture::limb::Posture;
use crate::picture::scene::{Named, Request, Subject};
use crate::source::choice;

choice! {
    /// What a card asks about.
    pub enum Topic ("topic of a card") {
        /// Condition: the joints to hold, and why.
        Hold = "hold",
        /// Condition: the position that is never safe, and why.
        Forbidden = "forbidden",
        /// Orthosis: the joints it holds and leaves free.
        Joints = "joints",
        /// Picture of an orthosis: its name.
        Name = "name",
        /// Picture of a structure: its name and what loads it.
        Structure = "structure",
        /// Sign: what to do.
        Sign = "sign",
    }
}

/// A card. The picture, if any, is on the side of the question.
#[derive(Clone, Debug)]
pub struct Card {
    /// `TOPIC/ID` of the content: stays the same whatever else is added.
    pub id: String,
    pub topic: Topic,
    pub question: Message,
    pub answer: Vec<Message>,
    pub sources: Vec<Basis>,
    pub picture: Option<Request>,
}

/// What cards are made about.
#[derive(Clone, Debug, Default)]
pub struct Picked {
    pub conditions: BTreeSet<ConditionId>,
    pub orthoses: BTreeSet<OrthosisId>,
    /// Signs that are watched for on every sheet; others come with their conditions.
    pub general_signs: bool,
}

impl Picked {
    /// All of the content, or what belongs to the groups, conditions and orthoses named: with a condition come the
    /// orthoses that fit it as it begins, its structures and its own signs.
    pub fn of(
        library: &Library,
        group: Option<Group>,
        conditions: &[ConditionId],
        orthoses: &[OrthosisId],
        finger: Finger,
    ) -> Self {
        if group.is_none() && conditions.is_empty() && orthoses.is_empty() {
            return Self {
                conditions: library.conditions.keys().cloned().collect(),
                orthoses: library.orthoses.keys().cloned().collect(),
                general_signs: true,
            };
        }
        let in_group = |condition: &Condition| group.is_some_and(|group| groups(library, condition).contains(&group));
        let all = library.conditions.iter();
        let picked: BTreeSet<ConditionId> = all
            .filter(|(id, condition)| conditions.contains(id) || in_group(condition))
            .map(|(id, _)| id.clone())
            .collect();
        let mut worn: BTreeSet<OrthosisId> = orthoses.iter().cloned().collect();
        for condition in picked.iter().filter_map(|id| library.conditions.get(id)) {
            let own = condition.for_finger(finger);
            let Some(phase) = first_worn(&own) else { continue };
            for (id, orthosis) in library.orthoses_for(Some(finger)) {
                let (set, _) = best_setting(&orthosis, phase, &[], &[]);
                let verdict = judge_phase(Question { orthosis: &set, findings: &[], factors: &[] }, phase);
                if verdict.fit <= Fit::FitsWithRemarks && group.is_none_or(|group| group.acts(&orthosis)) {
                    worn.insert(id.clone());
                }
            }
        }
        Self { conditions: picked, orthoses: worn, general_signs: false }
    }
}

/// The cards, topic by topic, in the order of ids.
pub fn cards(library: &Library, picked: &Picked, sitter: &Sitter) -> Vec<Card> {
    let conditions: Vec<(&ConditionId, &Condition)> =
        library.conditions.iter().filter(|(id, _)| picked.conditions.contains(id)).collect();
    let orthoses: Vec<(&OrthosisId, &Orthosis)> =
        library.orthoses.iter().filter(|(id, _)| picked.orthoses.contains(id)).collect();
    let structures: BTreeSet<&StructureId> =
        conditions.iter().flat_map(|(_, condition)| &condition.structures).collect();
    let signs: BTreeSet<&MessageId> = conditions.iter().flat_map(|(_, condition)| &condition.signs).collect();
    let mut all: Vec<Card> = Vec::new();
    all.extend(conditions.iter().filter_map(|(id, condition)| hold(id, condition)));
    all.extend(conditions.iter().filter_map(|(id, condition)| forbidden(id, condition)));
    all.extend(orthoses.iter().map(|(id, orthosis)| joints(library, id, orthosis, sitter)));
    all.extend(orthoses.iter().filter_map(|(id, orthosis)| name(library, id, orthosis, sitter)));
    all.extend(
        structures
            .into_iter()
            .filter_map(|id| library.structures.get(id))
            .map(|structure| about_structure(library, structure, sitter)),
    );
    all.extend(
        library
            .sign_order
            .iter()
            .filter_map(|id| library.signs.get(id))
            .filter(|sign| (sign.always && picked.general_signs) || signs.contains(&sign.id))
            .map(|sign| about_sign(library, sign)),
    );
    all
}

fn first_worn(condition: &Condition) -> Option<&Phase> {
    condition.phases.iter().find(|phase| phase.wear != Regime::Off)
}

fn literal(text: impl std::fmt::Display) -> Arg {
    Arg::Literal(readable(&text.to_string()))
}

/// The name of a joint for students.
fn joint(name: JointName) -> Message {
    Message::new(format!("study-joint-{name}"))
}

fn term(id: &ConditionId) -> Message {
    Message::new(format!("condition-{id}-term"))
}

fn hold(id: &ConditionId, condition: &Condition) -> Option<Card> {
    let phase = first_worn(condition)?;
    let must = |one: &&Requirement| matches!(one.need, Need::Must) && one.hold.is_some() && one.when.is_none();
    let line = |one: &Requirement| {
        Message::new("study-card-hold-line")
            .with("joint", joint(one.joint))
            .with("wanted", literal(wanted(one).trim_start_matches("must be ")))
            .with("because", literal(&one.because))
    };
    let held: Vec<&Requirement> = phase.requires.iter().filter(must).collect();
    let mut answer: Vec<Message> = held.iter().map(|one| line(one)).collect();
    let mut sources: Vec<Basis> = held.iter().map(|one| one.source.clone()).collect();
    for one in &phase.one_of {
        let ways = one.ways.iter().map(|way| {
            let mut parts: Vec<Message> = way
                .requires
                .iter()
                .map(|one| {
                    Message::new("study-card-way-joint")
                        .with("joint", joint(one.joint))
                        .with("wanted", literal(wanted(one)))
                })
                .collect();
            parts.extend(way.presses.map(|segment| {
                Message::new("study-card-way-presses").with("segment", literal(segment.word().replace('-', " ")))
            }));
            Message::new("study-card-way").with("parts", Arg::List(parts))
        });
        answer.push(Message::new("study-card-ways").with("because", literal(&one.because)));
        answer.extend(ways);
        sources.push(one.source.clone());
    }
    if answer.is_empty() {
        return None;
    }
    let free: Vec<Message> =
        phase.requires.iter().filter(|one| one.need == Need::MustBeFree).map(|one| joint(one.joint)).collect();
    if !free.is_empty() {
        answer.push(Message::new("study-card-free").with("joints", Arg::List(free)));
    }
    Some(Card {
        id: format!("{}/{id}", Topic::Hold),
        topic: Topic::Hold,
        question: Message::new("study-ask-hold").with("condition", term(id)).with("phase", literal(&phase.id)),
        answer,
        sources,
        picture: None,
    })
}

fn forbidden(id: &ConditionId, condition: &Condition) -> Option<Card> {
    let phase = condition.phases.iter().find(|phase| !phase.never.is_empty())?;
    let answer = phase.never.iter().map(|never| {
        let positions = never
            .positions
            .iter()
            .map(|one| {
                Message::new("study-card-position").with("joint", joint(one.joint)).with("range", literal(one.range))
            })
            .collect();
        Message::new("study-card-never")
            .with("positions", Arg::List(positions))
            .with("because", literal(&never.because))
    });
    Some(Card {
        id: format!("{}/{id}", Topic::Forbidden),
        topic: Topic::Forbidden,
        question: Message::new("study-ask-forbidden").with("condition", term(id)).with("phase", literal(&phase.id)),
        answer: answer.collect(),
        sources: phase.never.iter().map(|never| never.source.clone()).collect(),
        picture: None,
    })
}

/// An orthosis as it is seen in its place.
fn picture(library: &Library, id: &OrthosisId, sitter: &Sitter) -> Option<Request> {
    let worn = asks::worn(library, id, sitter.finger)?;
    Some(asks::orthosis(sitter, &worn, None))
}

fn joints(library: &Library, id: &OrthosisId, orthosis: &Orthosis, sitter: &Sitter) -> Card {
    let mut rows: Vec<(&JointName, &Hold)> = orthosis.joints.iter().collect();
    rows.sort_by_key(|(name, _)| name.joints().first().copied());
    let mut answer: Vec<Message> = rows
        .iter()
        .filter(|(_, hold)| hold.acts())
        .map(|(name, hold)| {
            Message::new("study-card-holds").with("joint", joint(**name)).with("offered", literal(offered(hold)))
        })
        .collect();
    if let Some(segment) = orthosis.acts_on {
        answer.push(Message::new("study-card-presses").with("segment", literal(segment.word().replace('-', " "))));
    }
    let free: Vec<Message> = rows.iter().filter(|(_, hold)| !hold.acts()).map(|(name, _)| joint(**name)).collect();
    if !free.is_empty() {
        answer.push(Message::new("study-card-free").with("joints", Arg::List(free)));
    }
    Card {
        id: format!("{}/{id}", Topic::Joints),
        topic: Topic::Joints,
        question: Message::new("study-ask-joints").with("orthosis", Message::new(format!("orthosis-{id}-name"))),
        answer,
        sources: vec![orthosis.source.clone()],
        picture: picture(library, id, sitter),
    }
}

fn name(library: &Library, id: &OrthosisId, orthosis: &Orthosis, sitter: &Sitter) -> Option<Card> {
    let picture = picture(library, id, sitter)?;
    let systematic = literal(classify::name(orthosis, None));
    let answer = vec![
        Message::new("study-card-name").with("name", Message::new(format!("orthosis-{id}-name"))),
        Message::new("study-card-systematic").with("name", systematic),
    ];
    Some(Card {
        id: format!("{}/{id}", Topic::Name),
        topic: Topic::Name,
        question: Message::new("study-ask-name"),
        answer,
        sources: vec![orthosis.source.clone()],
        picture: Some(picture),
    })
}

fn about_structure(library: &Library, structure: &Structure, sitter: &Sitter) -> Card {
    let id = &structure.id;
    let mut answer = vec![
        Message::new("study-card-structure")
            .with("term", Message::new(format!("structure-{id}-term")))
            .with("plain", Message::new(format!("structure-{id}"))),
    ];
    for movement in &structure.stressed_by {
        let directions: Vec<String> = movement.directions.iter().map(ToString::to_string).collect();
        let directions = if directions.is_empty() { "every movement".to_owned() } else { directions.join(", ") };
        answer.push(
            Message::new("study-card-loaded")
                .with("joint", joint(movement.joint))
                .with("directions", literal(directions.replace('-', " "))),
        );
    }
    if structure.stressed_by.is_empty() {
        answer.push(Message::new("study-card-loaded-none"));
    }
    let concerned: Vec<Message> = library
        .conditions
        .iter()
        .filter(|(_, condition)| condition.structures.contains(id))
        .map(|(id, _)| term(id))
        .collect();
    if !concerned.is_empty() {
        answer.push(Message::new("study-card-concerns").with("conditions", Arg::List(concerned)));
    }
    let courses = library.courses_of(id, true);
    let subject = Subject::Anatomy {
        posture: Posture::flat(),
        structures: vec![Named { number: 0, courses, wide: MARK, high: MARK }],
        held: Vec::<Joint>::new(),
        fingers: vec![sitter.finger],
        legend: None,
    };
    Card {
        id: format!("{}/{id}", Topic::Structure),
        topic: Topic::Structure,
        question: Message::new("study-ask-structure"),
        answer,
        // What a structure crosses and resists is textbook anatomy: the content names no single source for it.
        sources: vec![Basis::CommonPractice],
        picture: Some(sitter.request(subject, structure.view, structure.shows)),
    }
}

/// The room for the question mark beside a structure, units of a picture.
const MARK: u16 = 80;

fn about_sign(library: &Library, sign: &Sign) -> Card {
    let id = &sign.id;
    let general = &library.general;
    let said = Message::new(format!("sign-{id}"))
        .with("limit", general.mark_limit)
        .with("loosen", general.loosen_limit)
        .with("straps", Arg::Keyword("with"));
    let what = match sign.level {
        TriageLevel::Emergency => "study-card-emergency",
        TriageLevel::Today => "study-card-today",
        TriageLevel::Visit => "study-card-visit",
    };
    let mut answer = vec![Message::new(what)];
    let own: Vec<Message> = library
        .conditions
        .iter()
        .filter(|(_, condition)| condition.signs.contains(id))
        .map(|(id, _)| term(id))
        .collect();
    answer.push(if sign.always || own.is_empty() {
        Message::new("study-card-always")
    } else {
        Message::new("study-card-watched").with("conditions", Arg::List(own))
    });
    Card {
        id: format!("{}/{id}", Topic::Sign),
        topic: Topic::Sign,
        question: Message::new("study-ask-sign").with("sign", said),
        answer,
        sources: vec![sign.source.clone()],
        picture: None,
    }
}
