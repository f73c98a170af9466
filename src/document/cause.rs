//! What led to a sentence: lines of the case and rules of the content.
//!
//! Causes ride on messages and are said to nobody: two messages that say the same are equal, whatever led to them.

use super::component::{CalendarKey, Component, ExerciseRow};
use super::figures::Figure;
use super::message::Message;
use super::section::Section;
use crate::case::Case;
use crate::content::SheetArea;
use crate::ids::MessageId;
use crate::plan::{Plan, PlannedPhase};
use crate::source::Step;

/// Something that led to a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Cause {
    /// A line of the case. Where the case does not have it, what holds then, or what the clinic's file says.
    Case(Vec<Step>),
    /// A line of a file of the content.
    Rule { file: String, way: Vec<Step> },
}

impl Cause {
    /// A field of the case.
    pub fn case(field: &str) -> Self {
        Self::Case(vec![Step::field(field)])
    }

    /// An item of a list of the case.
    pub fn item(list: &str, id: &str) -> Self {
        Self::Case(vec![Step::field(list), Step::item(id)])
    }

    /// One of the clinic's lines.
    pub fn clinic(line: &str) -> Self {
        Self::Case(vec![Step::field("clinic"), Step::field(line)])
    }

    /// A rule of one thing of the content, such as a field of an orthosis.
    pub fn rule(folder: &str, id: &str, way: &[Step]) -> Self {
        Self::Rule { file: format!("content/{folder}/{id}.yaml"), way: way.to_vec() }
    }

    /// A rule of a file that holds many.
    pub fn listed(file: &str, way: &[Step]) -> Self {
        Self::Rule { file: format!("content/{file}.yaml"), way: way.to_vec() }
    }
}

/// The orthosis as the case names it, and a field of its file.
pub fn orthosis(case: &Case<'_>, way: &[Step]) -> Vec<Cause> {
    vec![Cause::case("orthosis"), Cause::rule("orthoses", case.file.orthosis.as_str(), way)]
}

/// Where the case names a condition: the main one, or another.
pub fn condition(case: &Case<'_>, id: &str) -> Cause {
    if case.file.condition.as_str() == id { Cause::case("condition") } else { Cause::item("other_conditions", id) }
}

/// The phases that a dated phase is made of: what rule of each, and what the therapist or the protocol set instead.
pub fn phase(case: &Case<'_>, phase: &PlannedPhase, field: &str) -> Vec<Cause> {
    let mut causes = Vec::new();
    for (own, id) in &phase.of {
        causes.push(condition(case, own.as_str()));
        let way = [Step::field("phases"), Step::item(id.as_str()), Step::field(field)];
        causes.push(Cause::rule("conditions", own.as_str(), &way));
        if field == "wear" && phase.wear.because.is_some() {
            causes.push(Cause::item("overrides", id.as_str()));
        }
        let ruled = case.conditions.iter().find(|treated| treated.id == *own).and_then(|own| own.protocol.as_ref());
        if ruled.is_some_and(|(_, set)| field == "lasts" && set.contains(id)) {
            causes.push(Cause::Case(vec![Step::field("protocol"), Step::field("lengths"), Step::item(id.as_str())]));
        }
    }
    causes
}

/// When it is worn in a phase, and how long that lasts from the fitting on.
pub fn hours(case: &Case<'_>, of: &PlannedPhase) -> Vec<Cause> {
    let mut causes = phase(case, of, "wear");
    causes.extend(phase(case, of, "lasts").into_iter().filter(|cause| matches!(cause, Cause::Rule { .. })));
    causes.extend([Cause::case("fitted"), Cause::case("day")]);
    if let Some(pattern) = &of.rules.weaning {
        causes.push(Cause::rule("wear", pattern.as_str(), &[Step::field("weaning")]));
    }
    if of.until_review {
        causes.push(Cause::case("review"));
    }
    causes
}

/// The same of every dated phase.
pub fn all_hours(case: &Case<'_>, plan: &Plan) -> Vec<Cause> {
    once(plan.phases.iter().flat_map(|phase| hours(case, phase)))
}

/// A field of the first phase, which is the one that the person is in.
pub fn first(case: &Case<'_>, plan: &Plan, field: &str) -> Vec<Cause> {
    plan.phases.first().map(|of| phase(case, of, field)).unwrap_or_default()
}

/// The days of breaking in.
pub fn breaking_in(case: &Case<'_>, plan: &Plan) -> Vec<Cause> {
    let pattern = &plan.break_in.pattern;
    let mut causes = vec![Cause::case("fitted"), Cause::rule("wear", pattern.as_str(), &[Step::field("break_in")])];
    let gentler = case.factors.iter().filter(|(_, factor)| factor.break_in.as_ref() == Some(pattern));
    causes.extend(gentler.flat_map(|(id, _)| factor(id.as_str(), &[Step::field("break_in")])));
    if let Some(treated) = case.conditions.iter().find(|treated| treated.condition.break_in.as_ref() == Some(pattern)) {
        causes.push(condition(case, treated.id.as_str()));
    }
    causes
}

/// Something particular about the person, and a field of its file.
pub fn factor(id: &str, way: &[Step]) -> [Cause; 2] {
    [Cause::item("factors", id), Cause::rule("factors", id, way)]
}

/// Advice of a factor for one part of the sheet.
pub fn advised(id: &str, area: SheetArea) -> [Cause; 2] {
    factor(id, &[Step::field("advice"), Step::field(area.word())])
}

/// A sign to watch for, and the conditions that name it.
pub fn sign(id: &MessageId) -> Cause {
    Cause::listed("signs", &[Step::item(id.as_str())])
}

/// How long a mark may stay, and how often the skin is looked at.
pub fn skin(case: &Case<'_>, plan: &Plan) -> Vec<Cause> {
    let limit = plan.skin.mark_limit.value;
    let mut causes: Vec<Cause> = Vec::new();
    for (id, _) in case.factors.iter().filter(|(_, factor)| factor.mark_limit == Some(limit)) {
        causes.extend(factor(id.as_str(), &[Step::field("mark_limit")]));
    }
    if plan.skin.mark_limit.because.is_some() {
        causes.push(Cause::case("overrides"));
    }
    if causes.is_empty() {
        causes.push(Cause::listed("general", &[Step::field("mark_limit")]));
    }
    causes
}

/// Each once, in their order.
pub fn once(causes: impl IntoIterator<Item = Cause>) -> Vec<Cause> {
    let mut all: Vec<Cause> = Vec::new();
    for cause in causes {
        if !all.contains(&cause) {
            all.push(cause);
        }
    }
    all
}

impl Component {
    /// The same with what led to every message of it that does not say so itself.
    #[must_use]
    pub fn because(mut self, causes: impl IntoIterator<Item = Cause>) -> Self {
        let causes = once(causes);
        self.each_message(&mut |message| {
            if message.causes.is_empty() {
                message.causes.clone_from(&causes);
            }
        });
        self
    }

    /// Visits every message, those of pictures among them.
    pub fn each_message(&mut self, visit: &mut dyn FnMut(&mut Message)) {
        match self {
            Self::Hand { finger, alt, figures, .. } => {
                finger.iter_mut().chain([alt]).for_each(&mut *visit);
                pictures(figures, visit);
            }
            Self::Facts(rows) => {
                for row in rows {
                    [&mut row.label, &mut row.value].into_iter().chain(&mut row.more).for_each(&mut *visit);
                }
            }
            Self::Strips { key, rows } => {
                key.iter_mut().for_each(|entry| visit(&mut entry.say));
                for row in rows {
                    [&mut row.label, &mut row.dates, &mut row.say].into_iter().for_each(&mut *visit);
                }
            }
            Self::Schedule { rows, note } => {
                rows.iter_mut().filter_map(|row| row.all.as_mut()).chain([note]).for_each(visit);
            }
            Self::Calendar { what, key, .. } => {
                what.iter_mut().for_each(|(_, say)| visit(say));
                for entry in key {
                    let (CalendarKey::State(_, say) | CalendarKey::Flag(_, say)) = entry;
                    visit(say);
                }
            }
            Self::Steps { title, items, .. } => {
                visit(title);
                for item in items {
                    visit(&mut item.say);
                    pictures(&mut item.figure, visit);
                }
            }
            Self::Spots { items, figures } => {
                items.iter_mut().for_each(&mut *visit);
                pictures(figures, visit);
            }
            Self::Checks { fine, not, act } => fine.iter_mut().chain(not).chain([act]).for_each(visit),
            Self::Activities(rows) => {
                for row in rows {
                    [&mut row.name].into_iter().chain(&mut row.how).chain(&mut row.why).for_each(&mut *visit);
                }
            }
            Self::Joints(rows) => {
                for row in rows {
                    [&mut row.word, &mut row.joints].into_iter().chain(&mut row.why).for_each(&mut *visit);
                }
            }
            Self::Plates(plates) => {
                for plate in plates {
                    plate.name.iter_mut().chain(&mut plate.say).for_each(&mut *visit);
                    pictures([&mut plate.figure], visit);
                }
            }
            Self::Exercises { rows, avoid, stop } => {
                rows.iter_mut().for_each(|row| row.each_message(visit));
                avoid.iter_mut().chain([stop]).for_each(visit);
            }
            Self::Care(items) => items.iter_mut().for_each(|item| visit(&mut item.say)),
            Self::Warning { title, signs, act, emergency, .. } => {
                [title, act].into_iter().chain(signs).for_each(&mut *visit);
                if let Some((title, signs)) = emergency {
                    [title].into_iter().chain(signs).for_each(&mut *visit);
                }
            }
            Self::Ladder(levels) => {
                for level in levels {
                    [&mut level.title]
                        .into_iter()
                        .chain(&mut level.place)
                        .chain(&mut level.items)
                        .for_each(&mut *visit);
                }
            }
            Self::Diary { days, .. } => days.iter_mut().filter_map(|day| day.wear.as_mut()).for_each(visit),
            Self::Later(items) => items.iter_mut().for_each(|item| {
                visit(&mut item.label);
                visit(&mut item.say);
            }),
            Self::Advice(list) => list.iter_mut().for_each(visit),
            Self::Note(_) | Self::Initial => {}
        }
    }
}

fn pictures<'f>(figures: impl IntoIterator<Item = &'f mut Figure>, visit: &mut dyn FnMut(&mut Message)) {
    for figure in figures {
        let names = figure.names.iter_mut().flat_map(|name| std::iter::once(&mut name.plain).chain(&mut name.term));
        figure.alt.iter_mut().chain(names).for_each(&mut *visit);
    }
}

impl ExerciseRow {
    fn each_message(&mut self, visit: &mut dyn FnMut(&mut Message)) {
        let lines = [&mut self.name, &mut self.start, &mut self.place].into_iter().chain(&mut self.steps);
        lines.chain(&mut self.later).for_each(&mut *visit);
        self.dose.iter_mut().for_each(|dose| visit(&mut dose.say));
        pictures(&mut self.figures, visit);
    }

    /// The same with what led to every message of it.
    #[must_use]
    pub fn because(mut self, causes: &[Cause]) -> Self {
        self.each_message(&mut |message| message.causes.extend_from_slice(causes));
        self
    }
}

impl Section {
    /// The same with what led to every message of it that does not say so itself.
    #[must_use]
    pub fn because(mut self, causes: impl IntoIterator<Item = Cause>) -> Self {
        let causes = once(causes);
        let components = std::mem::take(&mut self.components);
        self.components =
            components.into_iter().map(|(name, component)| (name, component.because(causes.clone()))).collect();
        self
    }
}
