//! Fact sheets: a condition by itself, for patients or for students. No case, no person, no hours.

mod joints;
mod patients;
mod shown;
mod students;

use super::glance::Contact;
use super::kind::{DocumentKind, FactsFor};
use super::message::{Arg, Message};
use super::section::side;
use super::sheets::{Document, Furniture, Meta, Part, finger, washing};
use crate::body::{Finger, Side};
use crate::case::Paper;
use crate::choose::{Ask, Ranked, rank};
use crate::clinic::Clinic;
use crate::content::{Condition, Library, Phase, PrintSize, Regime, Washing};
use crate::ids::ConditionId;
use crate::language::Language;
use crate::plan::{Signs, signs_of};

pub use shown::inside;

/// What a fact sheet is asked for.
#[derive(Clone)]
pub struct FactsAsk<'l> {
    pub library: &'l Library,
    pub id: &'l ConditionId,
    pub condition: &'l Condition,
    pub reader: FactsFor,
    /// Students' words are there in the first language only.
    pub language: Language,
    /// The hand that is shown.
    pub side: Side,
    /// The finger that is shown, where the condition concerns one finger and does not say which.
    pub finger: Finger,
    pub paper: Paper,
    pub print: PrintSize,
}

/// What both readers are told about.
struct Topic<'l> {
    library: &'l Library,
    id: &'l ConditionId,
    /// Of the finger that is shown.
    condition: Condition,
    /// The finger that it is about, where it is about one.
    finger: Option<Finger>,
    side: Side,
    print: PrintSize,
    contact: Contact,
}

impl Topic<'_> {
    /// A message of the condition.
    fn said(&self, part: &str) -> Message {
        Message::new(format!("condition-{}-{part}", self.id))
    }

    /// The first phase in which an orthosis is worn.
    fn first_worn(&self) -> Option<&Phase> {
        self.condition.phases.iter().find(|phase| phase.wear != Regime::Off)
    }

    /// All orthoses in order for a phase, of anybody in whom nothing particular was found.
    fn ranked(&self, phase: &Phase) -> Vec<Ranked> {
        rank(self.library, Ask { phase, finger: self.finger, findings: &[], factors: &[], needs: &[] })
    }

    fn washing(&self) -> Washing {
        self.first_worn().map_or(Washing::Freely, |phase| phase.washing)
    }

    /// The signs that every sheet names and those of this condition; what cannot wait is all in the stop box.
    fn signs(&self) -> Signs {
        let mut signs = signs_of(self.library, &[&self.condition]);
        let own = |id: &&_| self.condition.signs.contains(id) && !signs.visit.contains(id);
        let urgent: Vec<_> = self.library.sign_order.iter().filter(own).cloned().collect();
        signs.first_page.extend(urgent);
        signs
    }
}

/// Makes the fact sheet of a condition.
pub fn facts(ask: FactsAsk<'_>) -> Document {
    facts_of(ask, Contact::default())
}

/// The same as a clinic gives it out: in its look, and with its numbers to call.
pub fn clinic_facts(ask: FactsAsk<'_>, clinic: &Clinic) -> Document {
    let contact = Contact {
        emergency: clinic.emergency().map(|number| number.as_str().to_owned()),
        telephone: clinic.telephone().map(|number| number.as_str().to_owned()),
        hours: clinic.hours(&ask.language.tag).map(str::to_owned),
    };
    let mut document = facts_of(ask, contact).dressed(clinic);
    document.furniture.clinic = clinic.name().map(str::to_owned);
    document.furniture.address = clinic.address().map(str::to_owned);
    document
}

fn facts_of(ask: FactsAsk<'_>, contact: Contact) -> Document {
    let about = ask.condition.finger.or_else(|| ask.condition.needs_finger().then_some(ask.finger));
    let topic = Topic {
        library: ask.library,
        id: ask.id,
        condition: about.map_or_else(|| ask.condition.clone(), |finger| ask.condition.for_finger(finger)),
        finger: about,
        side: ask.side,
        print: ask.print,
        contact,
    };
    let (sections, title) = match ask.reader {
        FactsFor::Patients => (patients::sections(&topic), topic.said("name")),
        FactsFor::Students => {
            (students::sections(&topic), Message::new("students-title").with("condition", topic.said("name")))
        }
    };
    Document {
        kind: DocumentKind::Facts(ask.reader),
        meta: Meta { paper: ask.paper, half: false, print: ask.print, date: None, description: topic.said("aim") },
        furniture: Furniture {
            clinic: None,
            address: None,
            logo: None,
            accent: None,
            person: None,
            caution: Message::new("facts-caution"),
        },
        main: Part {
            side: ask.side,
            title,
            line: Message::new("facts-line"),
            sections: sections.into_iter().flatten().collect(),
            args: args(&topic),
        },
        others: Vec::new(),
        own: Vec::new(),
        language: ask.language,
    }
}

fn args(topic: &Topic<'_>) -> Vec<(&'static str, Arg)> {
    let general = &topic.library.general;
    let straps = |one: &Ranked| !one.orthosis.straps.is_empty();
    let closed =
        topic.first_worn().is_some_and(|phase| shown::fitting(&topic.ranked(phase)).iter().any(|one| straps(one)));
    vec![
        ("side", side(topic.side)),
        ("finger", finger(topic.finger)),
        ("limit", general.mark_limit.into()),
        ("loosen", general.loosen_limit.into()),
        ("checks", Arg::Number(i64::from(general.skin_checks.get()))),
        ("washing", Arg::Keyword(washing(topic.washing()))),
        ("straps", Arg::Keyword(if closed { "with" } else { "without" })),
    ]
}
