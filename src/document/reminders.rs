//! The reminders of a plan as a tree of events, language-free.
//!
//! Whatever is due at one minute is one event with several sentences. The same sentences at the same time on days that
//! follow each other are one event that repeats; another dose or another programme begins a new one.

use std::collections::BTreeMap;
use std::path::Path;

use super::dates::changed;
use super::glance::{regime_message, wean_message};
use super::message::{Arg, Message};
use super::moments::{Moment, MomentKind, moments};
use super::section::{orthosis_name, side};
use crate::body::Side;
use crate::case::{Case, ReminderDetail};
use crate::checks::Admitted;
use crate::language::Language;
use crate::plan::{Plan, PlannedExercise};
use crate::source::choice;
use crate::units::{Date, Minutes, TimeOfDay};

choice! {
    /// Which hand a sentence is about, where both are treated; `only` where one is, and no sentence says which.
    pub enum ReminderHand ("hand of a reminder") {
        Only = "only",
        Left = "left",
        Right = "right",
        Both = "both",
    }
}

/// When an event is. Times are the person's own clock, wherever they are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    Day(Date),
    Time {
        first: Date,
        at: TimeOfDay,
        /// Minutes.
        length: u16,
        /// Days in a row, the first included.
        days: u16,
    },
}

/// When the alarm of an event sounds, from its beginning; whole days before it and minutes before or after that.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Alarm {
    pub days_before: u16,
    /// Negative before.
    pub minutes: i32,
}

/// One event.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Event {
    /// What it is, whatever its date and its words: the case, the orthosis, the hand, the kind and its number.
    pub identity: String,
    pub kinds: Vec<MomentKind>,
    pub when: When,
    pub title: Vec<Message>,
    pub note: Vec<Message>,
    pub alarm: Alarm,
    /// What the alarm says; the title when empty.
    pub alarm_says: Vec<Message>,
}

/// The reminders of a case.
#[derive(Clone, Debug)]
pub struct Reminders {
    /// The day of the fitting: the date of the file, so that no clock is read.
    pub date: Date,
    pub revision: u8,
    pub events: Vec<Event>,
    /// Stands at the end of every note.
    pub caution: Message,
    pub telephone: Option<String>,
    /// When the telephone is answered.
    pub hours: Option<String>,
    /// The language asked for; carried, never looked at.
    pub language: Language,
    /// Arguments that every message may use.
    pub args: Vec<(&'static str, Arg)>,
}

/// Minutes that an event without a length of its own takes in the calendar. Common practice, no source.
const BRIEF: u16 = 5;

/// One thing that is due, with its words.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Fact {
    kind: MomentKind,
    hand: ReminderHand,
    length: u16,
    /// Exercises with their doses: another dose is another fact, also where no sentence says it.
    exercises: Vec<PlannedExercise>,
    back_on: bool,
    /// How long a wear lasts that begins: somebody who begins it later ends it later.
    wear: Option<Minutes>,
    /// What is said where the case asks for detail.
    detail: Vec<Message>,
}

/// The same facts at the same time on days in a row.
struct Series {
    first: Date,
    minute: u16,
    days: u16,
    facts: Vec<Fact>,
}

/// Lays out the reminders of an admitted case, for all its hands together.
pub fn reminders((admitted, plan): &(Admitted<'_>, Plan), others: &[(Admitted<'_>, Plan)]) -> Reminders {
    let case = admitted.case();
    let hands: Vec<(&Case<'_>, &Plan)> =
        std::iter::once((case, plan)).chain(others.iter().map(|(admitted, plan)| (admitted.case(), plan))).collect();
    let wishes = case.file.reminders.as_ref();
    let full = wishes.and_then(|wishes| wishes.detail) == Some(ReminderDetail::Full);
    let mut due: BTreeMap<(u16, Date), Vec<Fact>> = BTreeMap::new();
    for (case, plan) in &hands {
        for moment in moments(case, plan) {
            let fact = fact(case, plan, &moment, full);
            due.entry((moment.minute, moment.date)).or_default().push(fact);
        }
    }
    let mut numbers = Numbers { case, hands: &hands, given: BTreeMap::new() };
    let mut events: Vec<Event> =
        series(due).into_iter().map(|series| event(case, &mut numbers, series, full)).collect();
    events.push(visit(case, plan, &mut numbers));
    Reminders {
        date: case.file.fitted.value,
        revision: wishes.and_then(|wishes| wishes.revision).map_or(0, |revision| revision.get()),
        events,
        caution: Message::new("reminder-caution"),
        telephone: case.clinic(|clinic| clinic.telephone.as_ref()),
        hours: case.clinic(|clinic| clinic.hours.as_ref()),
        language: case.language.clone(),
        args: vec![("side", side(case.file.hand)), ("review", plan.review.into())],
    }
}

fn fact(case: &Case<'_>, plan: &Plan, moment: &Moment, full: bool) -> Fact {
    let session = moment.session.as_ref();
    let programme = session.and_then(|session| plan.programmes.get(session.phase));
    let exercises: Vec<PlannedExercise> = session
        .iter()
        .flat_map(|session| &session.exercises)
        .filter_map(|&at| programme?.exercises.get(at).cloned())
        .collect();
    let detail = match moment.kind {
        MomentKind::Change => hours(plan, moment.date).into_iter().collect(),
        MomentKind::Exercise => exercises.iter().map(dose).collect(),
        MomentKind::Visit | MomentKind::Skin | MomentKind::On | MomentKind::Off => Vec::new(),
    };
    Fact {
        kind: moment.kind,
        hand: hand(case),
        length: session.map_or(BRIEF, |session| session.length().max(BRIEF)),
        exercises,
        back_on: moment.back_on,
        wear: moment.wear,
        detail: if full { detail } else { Vec::new() },
    }
}

fn hand(case: &Case<'_>) -> ReminderHand {
    match (case.both_hands, case.file.hand) {
        (false, _) => ReminderHand::Only,
        (true, Side::Left) => ReminderHand::Left,
        (true, Side::Right) => ReminderHand::Right,
    }
}

/// The hours that hold from a day on.
fn hours(plan: &Plan, date: Date) -> Option<Message> {
    let at = plan.days.iter().position(|day| day.date == date)?;
    let (day, phase) = (&plan.days[at], &plan.phases[plan.days[at].phase]);
    if let Some(step) = day.weaning.and_then(|step| phase.weaning.get(step)) {
        return Some(wean_message(step));
    }
    // The first day still begins with the night before; the next is a whole one.
    let whole = plan.days.get(at + 1).filter(|next| !changed(day, next)).unwrap_or(day);
    Some(regime_message(phase, whole))
}

fn dose(planned: &PlannedExercise) -> Message {
    Message::new("reminder-dose")
        .with("exercise", Message::new(format!("exercise-{}-name", planned.id)))
        .with("place", Message::new(if planned.worn { "move-splint-on" } else { "move-splint-off" }))
        .with("count", i64::from(planned.dose.repetitions.get()))
}

/// Facts of one minute are one event, and of days in a row that are alike one series. A change is never repeated.
fn series(due: BTreeMap<(u16, Date), Vec<Fact>>) -> Vec<Series> {
    let mut all: Vec<Series> = Vec::new();
    for ((minute, date), mut facts) in due {
        facts.sort_by_key(|fact| (fact.kind, fact.hand));
        let once = facts.iter().any(|fact| fact.kind == MomentKind::Change);
        let follows = |last: &&mut Series| {
            let next = last.first.offset(i32::from(last.days));
            !once && last.minute == minute && next == date && last.facts == facts
        };
        match all.last_mut().filter(follows) {
            Some(last) => last.days += 1,
            None => all.push(Series { first: date, minute, days: 1, facts }),
        }
    }
    all.sort_by_key(|series| (series.first, series.minute));
    all
}

/// Numbers events of a kind in the order of their beginnings. A review that moves makes a series longer or shorter and
/// leaves its number.
struct Numbers<'n, 'c> {
    case: &'n Case<'c>,
    hands: &'n [(&'n Case<'c>, &'n Plan)],
    given: BTreeMap<(ReminderHand, MomentKind), u32>,
}

impl Numbers<'_, '_> {
    /// The clinic's reference, else the name of the case file; then orthoses, hand, kind and number. The orthosis is in it
    /// since one person may have one for the day and another for the night.
    fn identity(&mut self, hand: ReminderHand, kind: MomentKind) -> String {
        let number = self.given.entry((hand, kind)).or_insert(0);
        *number += 1;
        let reference = self.case.file.person.as_ref().and_then(|person| person.reference.as_ref());
        let owner = match reference {
            Some(reference) => format!("reference {}", reference.as_str()),
            None => {
                let stem = Path::new(self.case.source.name()).file_stem().unwrap_or_default();
                format!("file {}", stem.to_string_lossy())
            }
        };
        let orthoses: Vec<String> =
            self.hands.iter().map(|(case, _)| format!("{} {}", case.file.hand, case.file.orthosis.value)).collect();
        format!("{owner}\n{}\n{hand}\n{kind}\n{number}", orthoses.join("\n"))
    }
}

fn event(case: &Case<'_>, numbers: &mut Numbers<'_, '_>, series: Series, full: bool) -> Event {
    let facts = &series.facts;
    let mut kinds: Vec<MomentKind> = facts.iter().map(|fact| fact.kind).collect();
    kinds.dedup();
    let first = kinds.first().copied().unwrap_or(MomentKind::Change);
    let of = |kind: MomentKind| whose(facts.iter().filter(|fact| fact.kind == kind).map(|fact| fact.hand));
    let mut title: Vec<Message> = kinds
        .iter()
        .map(|&kind| Message::new(format!("reminder-{kind}")).with("hand", Arg::Keyword(of(kind).word())))
        .collect();
    if full {
        let mut hands: Vec<ReminderHand> = facts.iter().map(|fact| fact.hand).collect();
        hands.dedup();
        title.extend(about(numbers.hands, whose(hands.into_iter())));
    }
    let mut note = details(facts);
    note.extend(facts.iter().filter_map(|fact| {
        let hand = Arg::Keyword(fact.hand.word());
        Some(Message::new("reminder-wear").with("hand", hand).with("length", fact.wear?))
    }));
    note.extend(kinds.iter().flat_map(|&kind| more(kind, numbers.hands)));
    if facts.iter().any(|fact| fact.back_on) {
        let back = whose(facts.iter().filter(|fact| fact.back_on).map(|fact| fact.hand));
        note.push(Message::new("reminder-back-on").with("hand", Arg::Keyword(back.word())));
    }
    if kinds != [MomentKind::Change] {
        note.push(Message::new("reminder-times"));
    }
    if full {
        note.extend(person(case));
    }
    Event {
        identity: numbers.identity(of(first), first),
        when: When::Time {
            first: series.first,
            at: TimeOfDay::from_minutes(series.minute),
            length: facts.iter().map(|fact| fact.length).max().unwrap_or(BRIEF),
            days: series.days,
        },
        kinds,
        title,
        note,
        alarm: Alarm { days_before: 0, minutes: 0 },
        alarm_says: Vec::new(),
    }
}

/// What is said in detail, hand by hand where there are two: the same exercise may be one for each.
fn details(facts: &[Fact]) -> Vec<Message> {
    let mut lines = Vec::new();
    for &hand in ReminderHand::ALL {
        let own: Vec<Message> =
            facts.iter().filter(|fact| fact.hand == hand).flat_map(|fact| fact.detail.clone()).collect();
        let heading = match hand {
            ReminderHand::Left | ReminderHand::Right if !own.is_empty() => Some(Message::new(format!("hand-{hand}"))),
            _ => None,
        };
        lines.extend(heading.into_iter().chain(own));
    }
    lines
}

/// The hand of several facts together.
fn whose(mut hands: impl Iterator<Item = ReminderHand>) -> ReminderHand {
    let first = hands.next().unwrap_or(ReminderHand::Only);
    if hands.all(|hand| hand == first) { first } else { ReminderHand::Both }
}

/// What the note says of a kind: how often, and where the sheet says more.
fn more(kind: MomentKind, hands: &[(&Case<'_>, &Plan)]) -> Vec<Message> {
    match kind {
        MomentKind::Change => vec![Message::new("reminder-change-sheet")],
        MomentKind::Skin => {
            let checks = hands.iter().map(|(_, plan)| plan.skin.checks.get()).max().unwrap_or(1);
            let often = Message::new("reminder-checks").with("checks", i64::from(checks));
            vec![often, Message::new("reminder-skin-again")]
        }
        MomentKind::Exercise => vec![Message::new("reminder-exercise-sheet")],
        MomentKind::Visit | MomentKind::On | MomentKind::Off => Vec::new(),
    }
}

/// Which orthosis on which hand.
fn about(hands: &[(&Case<'_>, &Plan)], whose: ReminderHand) -> Vec<Message> {
    hands
        .iter()
        .filter(|(case, _)| matches!(whose, ReminderHand::Only | ReminderHand::Both) || hand(case) == whose)
        .map(|(case, _)| {
            Message::new("reminder-about")
                .with("orthosis", orthosis_name(case))
                .with("where", Message::new(format!("hand-{}", case.file.hand)))
        })
        .collect()
}

fn person(case: &Case<'_>) -> Option<Message> {
    let name = case.file.person.as_ref()?.name.as_ref()?;
    Some(Message::new("reminder-person").with("name", Arg::Literal(name.as_str().to_owned())))
}

/// The next visit: a whole day, or a time where the case gives one. Its alarm sounds when the person gets up on the day
/// before, or on the day itself where they were not fitted yet by then.
fn visit(case: &Case<'_>, plan: &Plan, numbers: &mut Numbers<'_, '_>) -> Event {
    let day = i32::from(TimeOfDay::DAY);
    let up = i32::from(case.day().up.minutes());
    let eve = (plan.review.offset(-1), case.day().up) > (case.file.fitted.value, case.fitted_at());
    let date = Arg::Date(plan.review);
    // A whole day begins at midnight, and its alarm is counted from there.
    let begins = case.file.review_at.map_or(0, |at| i32::from(at.minutes()));
    let alarm = match (eve, up - begins) {
        (true, later) if later > 0 => Alarm { days_before: 0, minutes: later - day },
        (true, earlier) => Alarm { days_before: 1, minutes: earlier },
        (false, later) if case.file.review_at.is_some() => Alarm { days_before: 0, minutes: later.min(0) },
        (false, later) => Alarm { days_before: 0, minutes: later },
    };
    let (when, on) = match case.file.review_at {
        Some(at) => {
            let says = Message::new("say-date-time").with("date", date).with("time", Arg::Time(at));
            (When::Time { first: plan.review, at, length: BRIEF, days: 1 }, says)
        }
        None => (When::Day(plan.review), Message::new("say-date").with("date", date)),
    };
    let hand = if case.both_hands { ReminderHand::Both } else { ReminderHand::Only };
    Event {
        identity: numbers.identity(hand, MomentKind::Visit),
        kinds: vec![MomentKind::Visit],
        when,
        title: vec![Message::new("reminder-visit")],
        note: Vec::new(),
        alarm,
        alarm_says: vec![Message::new("reminder-visit"), on],
    }
}
