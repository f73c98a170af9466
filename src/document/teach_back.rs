//! What the person shows or says back before they go home: the plan's riskiest points as questions, worst first.
//!
//! That people are asked to say or show in their own words what they were told: common practice, no source.

use super::component::{Component, StepItem, StepKind};
use super::glance;
use super::message::{Arg, Message};
use super::section::{orthosis_name, side};
use super::sheets::{Hand, args};
use super::{card, dates, handling, moves};
use crate::body::Side;
use crate::case::Case;
use crate::content::Washing;
use crate::plan::{ActivityVerdict, DayKind, Plan};
use crate::source::choice;

choice! {
    /// What a question is about.
    pub enum TeachTopic ("topic of a question") {
        /// Which splint is for which hand, where both are treated.
        Hands = "hands",
        /// Signs that cannot wait for the clinic.
        Emergency = "emergency",
        /// It stays on.
        KeepOn = "keep-on",
        /// How the hand is held while it is off.
        Support = "support",
        On = "on",
        Off = "off",
        /// Movements that the phase bans.
        Bans = "bans",
        /// What on the skin means stop.
        Skin = "skin",
        /// Which other signs mean stop.
        Stop = "stop",
        Call = "call",
        Hours = "hours",
        /// Breaking in.
        Build = "build",
        /// Jobs that wait.
        Jobs = "jobs",
        Exercises = "exercises",
    }
}

impl TeachTopic {
    /// Whether the answer is about the person rather than about one hand: where it is the same for both hands, it is
    /// asked once.
    pub const fn of_person(self) -> bool {
        matches!(self, Self::Emergency | Self::Skin | Self::Stop | Self::Call)
    }

    /// What harm a misunderstanding does, the worst first. Where healing tissue is guarded, a splint that comes off or a
    /// movement too early undoes the repair; elsewhere skin and blood flow come before handling.
    const fn rank(self, guarded: bool) -> u8 {
        match self {
            Self::Hands => 0,
            Self::Emergency => 1,
            Self::KeepOn => 2,
            Self::Support => 3,
            Self::Skin => {
                if guarded {
                    7
                } else {
                    4
                }
            }
            Self::Stop => {
                if guarded {
                    8
                } else {
                    5
                }
            }
            Self::Call => {
                if guarded {
                    9
                } else {
                    6
                }
            }
            Self::On => {
                if guarded {
                    4
                } else {
                    7
                }
            }
            Self::Off => {
                if guarded {
                    5
                } else {
                    8
                }
            }
            Self::Bans => {
                if guarded {
                    6
                } else {
                    9
                }
            }
            Self::Hours => 10,
            Self::Build => 11,
            Self::Jobs => 12,
            Self::Exercises => 13,
        }
    }
}

/// A question, and what a right answer holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    pub topic: TeachTopic,
    /// Said to the person in their own language.
    pub ask: Message,
    /// What the clinician ticks.
    pub points: Vec<Message>,
}

/// The questions about one hand.
#[derive(Clone, Debug)]
pub struct TeachBack {
    pub side: Side,
    /// What is to be known worst first.
    pub questions: Vec<Question>,
    /// Arguments that every message may use.
    pub args: Vec<(&'static str, Arg)>,
}

/// The questions of each hand. What concerns all hands is asked with the first.
pub fn teach_back(hands: &[Hand<'_>]) -> Vec<TeachBack> {
    hands
        .iter()
        .enumerate()
        .map(|(number, (admitted, plan))| {
            let case = admitted.case();
            let mut questions: Vec<Question> = of_hand(case, plan);
            if number == 0 && hands.len() > 1 {
                questions.push(which(hands));
            }
            let guarded = plan.phases.first().is_some_and(|phase| phase.rules.protective);
            questions.retain(|question| !question.points.is_empty());
            questions.sort_by_key(|question| question.topic.rank(guarded));
            TeachBack { side: case.file.hand, questions, args: args(case, plan) }
        })
        .collect()
}

fn which(hands: &[Hand<'_>]) -> Question {
    let point = |(admitted, _): &Hand<'_>| {
        let case = admitted.case();
        Message::new("record-point-hand").with("side", side(case.file.hand)).with("splint", orthosis_name(case))
    };
    Question { topic: TeachTopic::Hands, ask: Message::new("teach-hands"), points: hands.iter().map(point).collect() }
}

fn of_hand(case: &Case<'_>, plan: &Plan) -> Vec<Question> {
    let question = |topic: TeachTopic, points: Vec<Message>| Question {
        topic,
        ask: Message::new(format!("teach-{topic}")),
        points,
    };
    let off = if plan.washing() == Washing::Never { TeachTopic::KeepOn } else { TeachTopic::Support };
    let mut list = vec![
        question(TeachTopic::Emergency, signs(&plan.signs.emergency)),
        question(off, handling::cautions(plan)),
        question(TeachTopic::Bans, moves::avoid(plan)),
        question(TeachTopic::Skin, skin(plan)),
        question(TeachTopic::Stop, stop(case, plan)),
        question(TeachTopic::Call, call(case, plan)),
        question(TeachTopic::Hours, hours(case, plan)),
        question(TeachTopic::Build, build(case, plan)),
        question(TeachTopic::Jobs, jobs(plan)),
        question(TeachTopic::Exercises, exercises(plan)),
    ];
    // A splint that only the clinic takes off has no steps for the person.
    if plan.washing() != Washing::Never {
        list.push(question(TeachTopic::On, steps(card::items(case, StepKind::On, &plan.donning.value))));
        list.push(question(TeachTopic::Off, steps(card::items(case, StepKind::Off, &plan.doffing.value))));
    }
    list
}

fn signs(ids: &[crate::ids::MessageId]) -> Vec<Message> {
    ids.iter().map(|id| Message::new(format!("sign-{id}"))).collect()
}

fn steps(items: Vec<StepItem>) -> Vec<Message> {
    items.into_iter().map(|item| item.say).collect()
}

fn skin(plan: &Plan) -> Vec<Message> {
    let (_, mut points) = handling::marks(plan);
    points.push(handling::act(plan));
    points
}

/// The signs of the stop box, and what to do then.
fn stop(case: &Case<'_>, plan: &Plan) -> Vec<Message> {
    let Component::Warning { mut signs, act, .. } = glance::warning(case, plan) else { return Vec::new() };
    signs.push(act);
    signs
}

fn call(case: &Case<'_>, plan: &Plan) -> Vec<Message> {
    let literal = |key: &'static str, number: String| Message::new(key).with("number", Arg::Literal(number));
    let mut points = vec![match case.clinic(|clinic| clinic.telephone.as_ref()) {
        Some(number) => literal("record-point-clinic", number),
        None => Message::new("record-point-no-number"),
    }];
    points.extend(
        case.clinic(|clinic| clinic.emergency.as_ref()).map(|number| literal("record-point-emergency", number)),
    );
    points.push(Message::new("record-point-visit").with("visit", glance::visit(case, plan)));
    points
}

/// Today's clock while it is broken in, and what holds from phase to phase.
fn hours(case: &Case<'_>, plan: &Plan) -> Vec<Message> {
    let today = plan.days.first().filter(|day| day.kind == DayKind::Build).map(|day| {
        let worn: Vec<Message> = dates::worn(day)
            .iter()
            .map(|span| {
                let time = |minute| Arg::Time(crate::units::TimeOfDay::from_minutes(minute));
                Message::new("time-range").with("from", time(span.from())).with("to", time(span.to()))
            })
            .collect();
        if worn.is_empty() {
            Message::new("record-point-not-today")
        } else {
            Message::new("record-point-today").with("times", Arg::List(worn))
        }
    });
    let Component::Strips { rows, .. } = glance::strips(case, plan) else { return Vec::new() };
    let rows =
        rows.into_iter().map(|row| Message::new("record-point-row").with("label", row.label).with("say", row.say));
    today.into_iter().chain(rows).collect()
}

/// What the second day asks, and the day of full wear.
fn build(case: &Case<'_>, plan: &Plan) -> Vec<Message> {
    if plan.break_in.days() == 0 {
        return Vec::new();
    }
    let tomorrow = plan.days.get(1).and_then(|day| {
        let (bouts, each) = day.wears?;
        let say = Message::new("diary-wears").with("bouts", i64::from(bouts)).with("each", each);
        Some(Message::new("record-point-day").with("date", day.date).with("say", say))
    });
    let full = Message::new("record-point-full").with("date", glance::full_wear(case, plan));
    tomorrow.into_iter().chain([full]).collect()
}

/// The jobs that wait in the first phase.
fn jobs(plan: &Plan) -> Vec<Message> {
    let left = plan
        .activities
        .iter()
        .filter(|advice| advice.phases.first().is_some_and(|phase| phase.verdict == ActivityVerdict::Leave));
    left.map(|advice| Message::new(format!("activity-{}-name", advice.id))).collect()
}

fn exercises(plan: &Plan) -> Vec<Message> {
    let first = plan.programmes.first().map(|programme| programme.exercises.as_slice()).unwrap_or_default();
    let place = |worn: bool| Message::new(if worn { "move-splint-on" } else { "move-splint-off" });
    first
        .iter()
        .map(|planned| {
            Message::new("record-point-exercise")
                .with("name", Message::new(format!("exercise-{}-name", planned.id)))
                .with("place", place(planned.worn))
                .with("count", i64::from(planned.dose.times_a_day.get()))
        })
        .collect()
}
