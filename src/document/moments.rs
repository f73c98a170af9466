//! The moments of a plan that a reminder can call: worked out of its days for one hand.
//!
//! A moment is something that the person could not know from getting up and going to bed: wear that begins or ends in
//! between, a session of exercises, a look at the skin while breaking in, the first day on which other hours hold.
//! Nothing falls into the person's sleep, and nothing on the fitting itself, which the clinic does.

use std::collections::BTreeMap;

use super::dates::changed;
use crate::case::Case;
use crate::plan::{DayKind, DayPlan, Plan, Session, WearState};
use crate::source::choice;
use crate::units::{Date, Minutes, TimeOfDay};

choice! {
    /// What a moment is about, in the order in which the sentences of one moment stand.
    pub enum MomentKind ("kind of moment") {
        Visit = "visit",
        Change = "change",
        Off = "off",
        Skin = "skin",
        On = "on",
        Exercise = "exercise",
    }
}

/// Something that is due at a minute of a date.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Moment {
    pub date: Date,
    /// Minutes after midnight.
    pub minute: u16,
    pub kind: MomentKind,
    /// The session that begins, for exercises.
    pub session: Option<Session>,
    /// The orthosis goes back on when the session is over.
    pub back_on: bool,
    /// How long it is worn from here on, where its end is called too.
    pub wear: Option<Minutes>,
}

/// Everything that is due in a plan, in no order.
pub fn moments(case: &Case<'_>, plan: &Plan) -> Vec<Moment> {
    let clock = Clock::of(case, plan);
    let mut all = changes(case, plan);
    let wears = clock.wears(plan);
    for &(from, to) in &wears {
        let wear = from.zip(to).and_then(|(from, to)| u16::try_from(to - from).ok()).map(Minutes::new);
        all.extend(from.map(|minute| Moment { wear, ..clock.moment(minute, MomentKind::On) }));
        all.extend(to.map(|minute| clock.moment(minute, MomentKind::Off)));
    }
    all.extend(clock.checks(plan, &wears).into_iter().map(|minute| clock.moment(minute, MomentKind::Skin)));
    all.extend(sessions(&clock, plan));
    all
}

/// The first day of other hours, when the person gets up: a night still belongs to the day before it.
fn changes(case: &Case<'_>, plan: &Plan) -> Vec<Moment> {
    plan.days
        .windows(2)
        .filter(|pair| changed(&pair[0], &pair[1]))
        .map(|pair| Moment {
            date: pair[1].date,
            minute: case.day().up.minutes(),
            kind: MomentKind::Change,
            session: None,
            back_on: false,
            wear: None,
        })
        .collect()
}

fn sessions(clock: &Clock, plan: &Plan) -> Vec<Moment> {
    let mut all = Vec::new();
    for day in &plan.days {
        for (at, session) in day.sessions.iter().filter(|(_, session)| !session.exercises.is_empty()) {
            let start = clock.minute(day.date, at.minutes());
            if !clock.awake(start) {
                continue;
            }
            let end = start + u32::from(session.length());
            let worn = |minute: u32| state(plan, minute).is_some_and(WearState::is_worn);
            let back_on = session.off > 0
                && start > 0
                && worn(start - 1)
                && worn(end)
                && clock.waking_day(plan, start).is_some_and(|day| !in_bouts(day));
            all.push(Moment { session: Some(session.clone()), back_on, ..clock.moment(start, MomentKind::Exercise) });
        }
    }
    all
}

/// Worn for short times spread over the day, whose hours only the plan knows.
fn in_bouts(day: &DayPlan) -> bool {
    matches!(day.kind, DayKind::Build | DayKind::Stretch)
}

/// The state of a minute, counted from the midnight before the fitting; None after the last day.
fn state(plan: &Plan, minute: u32) -> Option<WearState> {
    let day = plan.days.get(usize::try_from(minute / DAY).ok()?)?;
    let at = u16::try_from(minute % DAY).ok()?;
    day.segments.iter().find(|segment| (segment.span.from()..segment.span.to()).contains(&at)).map(|found| found.state)
}

const DAY: u32 = TimeOfDay::DAY as u32;

/// The person's day, and minutes counted through the whole plan from the midnight before the fitting.
struct Clock {
    first: Date,
    up: u32,
    /// Minutes from getting up to going to bed.
    awake: u32,
    /// How long a mark may stay.
    limit: u32,
}

/// When a wear begins and when it ends, where a reminder is due.
type Wear = (Option<u32>, Option<u32>);

impl Clock {
    fn of(case: &Case<'_>, plan: &Plan) -> Self {
        let day = case.day();
        Self {
            first: case.file.fitted.value,
            up: u32::from(day.up.minutes()),
            awake: u32::from(day.up.until(day.bed)),
            limit: u32::from(plan.skin.mark_limit.value.get()),
        }
    }

    fn minute(&self, date: Date, at: u16) -> u32 {
        u32::try_from(date.days_since(self.first)).unwrap_or(0) * DAY + u32::from(at)
    }

    fn since_up(&self, minute: u32) -> u32 {
        (minute + DAY - self.up) % DAY
    }

    fn awake(&self, minute: u32) -> bool {
        self.since_up(minute) < self.awake
    }

    /// The day on which the person got up before a minute.
    fn waking_day<'p>(&self, plan: &'p Plan, minute: u32) -> Option<&'p DayPlan> {
        let day = if minute % DAY < self.up { (minute / DAY).saturating_sub(1) } else { minute / DAY };
        plan.days.get(usize::try_from(day).ok()?)
    }

    fn moment(&self, minute: u32, kind: MomentKind) -> Moment {
        Moment {
            date: self.first.offset(i32::try_from(minute / DAY).unwrap_or(i32::MAX)),
            minute: u16::try_from(minute % DAY).unwrap_or(0),
            kind,
            session: None,
            back_on: false,
            wear: None,
        }
    }

    /// Every wear whose beginning or end the person cannot know from the hours of getting up and of going to bed, nor
    /// from a session of exercises.
    fn wears(&self, plan: &Plan) -> Vec<Wear> {
        let mut all: Vec<Wear> = Vec::new();
        let mut begun: Option<u32> = None;
        let mut before: Option<WearState> = None;
        // Worn for its own sake since it was last put on, not only for an exercise.
        let mut own = false;
        for (start, now) in runs(plan) {
            let due = self.awake(start) && self.since_up(start) > 0;
            let bouts = self.waking_day(plan, start).is_some_and(in_bouts);
            let was = before.is_some_and(WearState::is_worn);
            if now.is_worn() && !was {
                own = false;
                let of_session =
                    matches!(before, Some(WearState::OffExercise | WearState::OffWash)) || now == WearState::OnExercise;
                let fitting = matches!(before, None | Some(WearState::Before));
                begun = (due && !fitting && (bouts || !of_session)).then_some(start);
            }
            if !now.is_worn() && was {
                let of_session = matches!(now, WearState::OffExercise | WearState::OffWash) || !own;
                let ended = (due && (bouts || !of_session)).then_some(start);
                all.push((begun.take(), ended));
            }
            own = own && now.is_worn() || now == WearState::On;
            before = Some(now);
        }
        all.push((begun, None));
        all.retain(|wear| *wear != (None, None));
        all
    }

    /// When the skin is looked at on each day of breaking in: after each wear, and as often as the plan asks in all, as
    /// far as the day has moments for it: when a mark should have gone, before the next wear, on getting up.
    fn checks(&self, plan: &Plan, wears: &[Wear]) -> Vec<u32> {
        let mut days: BTreeMap<Date, Vec<Wear>> = BTreeMap::new();
        for wear in wears {
            let day = wear.1.or(wear.0).and_then(|minute| self.waking_day(plan, minute));
            if let Some(day) = day.filter(|day| day.kind == DayKind::Build) {
                days.entry(day.date).or_default().push(*wear);
            }
        }
        days.into_iter().flat_map(|(date, wears)| self.checks_of(plan, date, &wears)).collect()
    }

    fn checks_of(&self, plan: &Plan, date: Date, wears: &[Wear]) -> Vec<u32> {
        let up = u32::try_from(date.days_since(self.first)).unwrap_or(0) * DAY + self.up;
        let after = wears.iter().filter_map(|wear| wear.1);
        let faded = wears.iter().enumerate().filter_map(|(at, wear)| {
            let minute = wear.1? + self.limit;
            let next = wears.get(at + 1).and_then(|next| next.0);
            next.is_none_or(|next| minute <= next).then_some(minute)
        });
        let before = wears.iter().filter_map(|wear| wear.0);
        let woken = (date > self.first).then_some(up);
        let mut all: Vec<u32> = after.collect();
        let wanted = usize::from(plan.skin.checks.get()).max(all.len());
        for minute in faded.chain(before).chain(woken) {
            if all.len() < wanted && self.awake(minute) && !all.contains(&minute) {
                all.push(minute);
            }
        }
        all
    }
}

/// Every change of state from the midnight before the fitting on: its minute and the new state.
fn runs(plan: &Plan) -> Vec<(u32, WearState)> {
    let mut all: Vec<(u32, WearState)> = Vec::new();
    for (number, day) in (0u32..).zip(&plan.days) {
        for segment in &day.segments {
            if all.last().is_none_or(|(_, state)| *state != segment.state) {
                all.push((number * DAY + u32::from(segment.span.from()), segment.state));
            }
        }
    }
    all
}
