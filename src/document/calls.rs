//! Whom to call, and the therapist's own words.

use super::cause::{self, Cause};
use super::component::{Component, LadderLevel};
use super::message::Message;
use super::section::{Section, filled, typed};
use crate::case::Case;
use crate::content::TriageLevel;
use crate::ids::MessageId;
use crate::plan::Plan;
use crate::source::Step;

pub fn note(case: &Case<'_>) -> Option<Section> {
    let blocks = case.file.note.as_ref().map(|note| Component::Note(note.blocks().to_vec()));
    filled("note", vec![("note", blocks)])
}

pub fn section(case: &Case<'_>, plan: &Plan) -> Option<Section> {
    let named = |id: &MessageId| {
        let own = case.conditions.iter().filter(|treated| treated.condition.signs.contains(id));
        let own = own.flat_map(|treated| {
            let rule = Cause::rule("conditions", treated.id.as_str(), &[Step::field("signs"), Step::item(id.as_str())]);
            [cause::condition(case, treated.id.as_str()), rule]
        });
        Message::new(format!("sign-{id}")).because(std::iter::once(cause::sign(id)).chain(own))
    };
    let signs = |ids: &[MessageId]| -> Vec<Message> { ids.iter().map(named).collect() };
    let levels = vec![
        LadderLevel {
            level: TriageLevel::Emergency,
            title: Message::new("call-emergency"),
            telephone: case.clinic(|clinic| clinic.emergency.as_ref()),
            date: None,
            place: None,
            items: signs(&plan.signs.emergency),
        },
        LadderLevel {
            level: TriageLevel::Today,
            title: Message::new("call-today"),
            telephone: case.clinic(|clinic| clinic.telephone.as_ref()),
            date: None,
            place: None,
            items: signs(&plan.signs.today),
        },
        LadderLevel {
            level: TriageLevel::Visit,
            title: Message::new("call-visit"),
            telephone: None,
            date: Some(plan.review),
            place: case.clinic(|clinic| clinic.address.as_ref()).map(|address| {
                Message::new("call-where").with("address", typed(&address)).because([Cause::clinic("address")])
            }),
            items: signs(&plan.signs.visit),
        },
    ];
    let ladder = Component::Ladder(levels).because([Cause::listed("signs", &[])]);
    filled("call", vec![("ladder", Some(ladder)), ("initial", Some(Component::Initial))])
}
