//! Which joints are held and which move, from the requirements of a phase.

use crate::body::JointName;
use crate::content::{Need, Phase, Requirement, Wanted};
use crate::document::component::{JointRow, JointState};
use crate::document::message::{Arg, Message};

/// What a requirement makes of its joint; nothing for a joint that may be covered or not.
pub fn state(requirement: &Requirement) -> Option<JointState> {
    match (requirement.need, requirement.hold) {
        (Need::MustBeFree | Need::ShouldBeFree, _) => Some(JointState::Free),
        (Need::May, _) => None,
        (Need::Must | Need::Should, Some(hold)) => Some(match hold {
            Wanted::Still => JointState::Still,
            Wanted::Steady => JointState::Steady,
            Wanted::Stopped => JointState::Stopped,
            Wanted::Relative => JointState::Relative,
            Wanted::Coupled => JointState::Coupled,
            Wanted::Mobilised => JointState::Mobilised,
        }),
        (Need::Must | Need::Should, None) => None,
    }
}

/// The joints of a phase in a few rows, for patients: a joint stands in one row only. What is asked of everybody comes
/// first; a joint that only some ways or some findings ask for depends on them.
pub fn rows(phase: &Phase) -> Vec<JointRow> {
    let mut rows: Vec<(JointState, Vec<JointName>)> = Vec::new();
    let mut placed: Vec<JointName> = Vec::new();
    let mut place = |state: JointState, joint: JointName| {
        if placed.contains(&joint) {
            return;
        }
        placed.push(joint);
        match rows.iter_mut().find(|(known, _)| *known == state) {
            Some((_, joints)) => joints.push(joint),
            None => rows.push((state, vec![joint])),
        }
    };
    // A joint that is stopped may be asked to be free as well: up to the stop it is.
    let asked = |free: bool| {
        let all = phase.requires.iter().filter(|requirement| requirement.when.is_none());
        all.filter_map(|one| Some((state(one)?, one.joint)))
            .filter(move |(state, _)| (*state == JointState::Free) == free)
    };
    asked(false).for_each(|(state, joint)| place(state, joint));
    let ways = phase.one_of.iter().flat_map(|one| &one.ways).flat_map(|way| &way.requires);
    let found = phase.requires.iter().filter(|requirement| requirement.when.is_some());
    let depends = ways.chain(found).filter(|one| one.need.asks()).map(|one| one.joint);
    depends.for_each(|joint| place(JointState::Varies, joint));
    asked(true).for_each(|(state, joint)| place(state, joint));
    rows.sort_by_key(|(state, _)| *state);
    rows.into_iter()
        .map(|(state, mut joints)| {
            joints.sort();
            let names = joints.iter().map(|joint| Message::new(format!("joint-{joint}"))).collect();
            JointRow {
                state,
                word: Message::new(format!("facts-joint-{state}")),
                joints: Message::new("facts-joints").with("joints", Arg::List(names)),
                why: Vec::new(),
            }
        })
        .collect()
}
