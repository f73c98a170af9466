//! Every day of the plan, minute by minute.

use super::break_in::BreakIn;
use super::phases::PlannedPhase;
use super::programme::Programme;
use super::sessions::{self, Session};
use crate::case::Case;
use crate::content::{BreakInStep, Regime, WeaningStep};
use crate::source::choice;
use crate::units::{ClockSpan, Date, Minutes, TimeOfDay};

choice! {
    /// What a minute is.
    pub enum WearState ("state of a minute") {
        /// Before the fitting.
        Before = "before",
        /// Worn.
        On = "on",
        /// Worn, with exercises done in it.
        OnExercise = "on-exercise",
        /// Off for exercises.
        OffExercise = "off-exercise",
        /// Off for washing, the skin check and what exercises go with it.
        OffWash = "off-wash",
        /// Off.
        Off = "off",
        /// On for part of the time: for tasks that strain the hand, or while it rests.
        Needed = "needed",
    }
}

impl WearState {
    pub const fn is_worn(self) -> bool {
        matches!(self, Self::On | Self::OnExercise)
    }
}

choice! {
    /// What kind of day it is, for the calendar.
    pub enum DayKind ("kind of day") {
        /// Breaking in.
        Build = "build",
        /// Day and night, or all of the waking day.
        On = "on",
        /// At night, and for part of the day.
        NightAndTasks = "night-and-tasks",
        /// In bouts.
        Stretch = "stretch",
        Night = "night",
        Tasks = "tasks",
        /// Weaning.
        Wean = "wean",
        Off = "off",
    }
}

/// A stretch of a day in one state.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Segment {
    pub span: ClockSpan,
    pub state: WearState,
}

/// One calendar day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DayPlan {
    pub date: Date,
    /// Place among the dated phases.
    pub phase: usize,
    pub kind: DayKind,
    /// The step of breaking in, from 0.
    pub break_in: Option<usize>,
    /// How often and how long it is worn in the waking day that begins on this date, while breaking in. For somebody
    /// who is up past midnight a part of it falls on the next date.
    pub wears: Option<(u16, Minutes)>,
    /// The weaning step, from 0.
    pub weaning: Option<usize>,
    /// Tile the day from 0 to 1440.
    pub segments: Vec<Segment>,
    /// Sessions that begin on this date, by minutes after midnight, in order of their times.
    pub sessions: Vec<(TimeOfDay, Session)>,
}

impl DayPlan {
    pub fn worn_minutes(&self) -> u16 {
        self.segments.iter().filter(|segment| segment.state.is_worn()).map(|segment| segment.span.minutes()).sum()
    }
}

/// One waking day with the sleep after it, in minutes since getting up.
struct PersonDay {
    states: Vec<(u16, u16, WearState)>,
    fill_awake: WearState,
    fill_asleep: WearState,
    awake: u16,
    sessions: Vec<Session>,
    kind: DayKind,
    phase: usize,
    break_in: Option<usize>,
    wears: Option<(u16, Minutes)>,
    weaning: Option<usize>,
}

impl PersonDay {
    fn at(&self, minute: u16) -> WearState {
        let special = self.states.iter().find(|(from, to, _)| (*from..*to).contains(&minute));
        special.map_or(if minute < self.awake { self.fill_awake } else { self.fill_asleep }, |(.., state)| *state)
    }
}

/// Lays out all days. The night belongs to the day on which it begins: the last night of a phase ends when the person
/// gets up, not at midnight.
pub fn plan(case: &Case<'_>, phases: &[PlannedPhase], break_in: &BreakIn, programmes: &[Programme]) -> Vec<DayPlan> {
    let fitted = case.file.fitted.value;
    let Some(last) = phases.last().map(|phase| phase.last) else { return Vec::new() };
    let day = case.day();
    let since_up = day.up.until(case.fitted_at());
    // Somebody fitted between midnight and getting up is still in the waking day before.
    let early = case.fitted_at() < day.up;
    let count = last.days_since(fitted) + 1;
    let person: Vec<PersonDay> = (-1..count)
        .map(|offset| {
            person_day(case, phases, break_in, programmes, offset.max(0), if offset == 0 { since_up } else { 0 })
        })
        .collect();
    (0..count)
        .map(|offset| {
            let date = fitted.offset(offset);
            let index = usize::try_from(offset).unwrap_or(0);
            let (today, yesterday) = (&person[index + 1], &person[index]);
            let up = day.up.minutes();
            let state = |minute: u16| {
                if offset == 0 && minute < case.fitted_at().minutes() {
                    WearState::Before
                } else if minute >= up {
                    today.at(minute - up)
                } else if offset == 0 {
                    if early { today.fill_awake } else { WearState::Before }
                } else {
                    yesterday.at(minute + TimeOfDay::DAY - up)
                }
            };
            let sessions = day_sessions(today, yesterday, up, offset, case.fitted_at().minutes());
            DayPlan {
                date,
                phase: today.phase,
                kind: today.kind,
                break_in: today.break_in,
                wears: today.wears,
                weaning: today.weaning,
                segments: merge(state),
                sessions,
            }
        })
        .collect()
}

fn day_sessions(
    today: &PersonDay,
    yesterday: &PersonDay,
    up: u16,
    offset: i32,
    fitted_at: u16,
) -> Vec<(TimeOfDay, Session)> {
    let of_today = today
        .sessions
        .iter()
        .filter(|session| session.starts + up < TimeOfDay::DAY)
        .map(|session| (session.starts + up, session.clone()))
        .filter(|(at, _)| offset > 0 || *at >= fitted_at);
    let of_yesterday = yesterday
        .sessions
        .iter()
        .filter(|session| offset > 0 && session.starts + up >= TimeOfDay::DAY)
        .map(|session| (session.starts + up - TimeOfDay::DAY, session.clone()));
    let mut all: Vec<(u16, Session)> = of_today.chain(of_yesterday).collect();
    all.sort_by_key(|(at, _)| *at);
    all.into_iter().map(|(at, session)| (TimeOfDay::from_minutes(at), session)).collect()
}

fn merge(state: impl Fn(u16) -> WearState) -> Vec<Segment> {
    let mut segments = Vec::new();
    let (mut from, mut current) = (0, state(0));
    for minute in 1..=TimeOfDay::DAY {
        let next = if minute < TimeOfDay::DAY { Some(state(minute)) } else { None };
        if next != Some(current) {
            if let Some(span) = ClockSpan::new(from, minute) {
                segments.push(Segment { span, state: current });
            }
            from = minute;
            current = next.unwrap_or(current);
        }
    }
    segments
}

fn person_day(
    case: &Case<'_>,
    phases: &[PlannedPhase],
    break_in: &BreakIn,
    programmes: &[Programme],
    offset: i32,
    busy_until: u16,
) -> PersonDay {
    let date = case.file.fitted.value.offset(offset);
    let index = phases.iter().position(|phase| phase.holds(date)).unwrap_or(phases.len() - 1);
    let phase = &phases[index];
    let awake = case.day().up.until(case.day().bed);
    let day_number = u16::try_from(offset).unwrap_or(u16::MAX);
    let settling = case.library.general.settling.get();
    if day_number < break_in.days() {
        let step = break_in.step(day_number);
        let hours = (awake, busy_until.max(settling), settling);
        return in_bouts(case, step, &programmes[index], hours, index, DayKind::Build);
    }
    if let (Regime::Stretch, Some(dose)) = (phase.wear.value, &phase.rules.stretch) {
        let step = BreakInStep { times: dose.bouts, each: dose.each };
        let hours = (awake, busy_until.max(settling), settling);
        let day = in_bouts(case, Some((0, step)), &programmes[index], hours, index, DayKind::Stretch);
        return PersonDay { break_in: None, ..day };
    }
    let (fill_awake, fill_asleep, kind) = regime(phase.wear.value);
    let mut day = PersonDay {
        states: Vec::new(),
        fill_awake,
        fill_asleep,
        awake,
        sessions: sessions::plan(case, phase.wear.value, (index, &programmes[index]), awake),
        kind,
        phase: index,
        break_in: None,
        wears: None,
        weaning: None,
    };
    if let Some((number, step)) = WeaningStep::on_day(&phase.weaning, date.days_since(phase.first)) {
        let worn = step.awake.get().min(awake);
        day.kind = if worn == 0 && !step.night { DayKind::Off } else { DayKind::Wean };
        day.weaning = Some(number);
        day.fill_awake = WearState::Off;
        day.fill_asleep = if step.night { WearState::On } else { WearState::Off };
        if worn > 0 {
            day.states.push((0, worn, WearState::On));
        }
    }
    let mut marked = Vec::new();
    for session in &day.sessions {
        let (start, middle, end) = (session.starts, session.starts + session.worn, session.starts + session.length());
        if session.worn > 0 {
            marked.push((start, middle, WearState::OnExercise));
        }
        if session.off > 0 {
            marked.push((middle, end, if session.washes { WearState::OffWash } else { WearState::OffExercise }));
        }
    }
    marked.append(&mut day.states);
    day.states = marked;
    day
}

fn regime(wear: Regime) -> (WearState, WearState, DayKind) {
    match wear {
        Regime::NeverRemove | Regime::OffToWash | Regime::OffToExercise => (WearState::On, WearState::On, DayKind::On),
        Regime::NightAndTasks | Regime::NightAndRest => (WearState::Needed, WearState::On, DayKind::NightAndTasks),
        Regime::Day => (WearState::On, WearState::Off, DayKind::On),
        Regime::Night => (WearState::Off, WearState::On, DayKind::Night),
        Regime::Tasks => (WearState::Needed, WearState::Off, DayKind::Tasks),
        Regime::Stretch => (WearState::Off, WearState::Off, DayKind::Stretch),
        Regime::Off => (WearState::Off, WearState::Off, DayKind::Off),
    }
}

/// A day of short wears spread over the waking day: breaking in, or stretching. Nothing at night, exercises where they
/// fall.
fn in_bouts(
    case: &Case<'_>,
    step: Option<(usize, BreakInStep)>,
    programme: &Programme,
    (awake, start, settling): (u16, u16, u16),
    phase: usize,
    kind: DayKind,
) -> PersonDay {
    let wears = step.as_ref().map(|(_, step)| wears(step, start, awake.saturating_sub(settling))).unwrap_or_default();
    let mut states: Vec<(u16, u16, WearState)> = wears.iter().map(|&(from, to)| (from, to, WearState::On)).collect();
    let mut sessions = Vec::new();
    if step.is_some() {
        // Exercises begin with the first wear: one session after each, in what time is left before the next.
        for (index, &(_, to)) in wears.iter().enumerate() {
            let next = wears.get(index + 1).map_or(awake, |&(from, _)| from);
            let number = u8::try_from(index).unwrap_or(u8::MAX);
            let here: Vec<usize> = (0..programme.exercises.len())
                .filter(|&at| number < programme.exercises[at].dose.times_a_day.get() && !programme.exercises[at].worn)
                .collect();
            let minutes = u16::try_from(here.len()).unwrap_or(0) * case.library.general.exercise.get();
            let minutes = minutes.div_ceil(5) * 5;
            if minutes > 0 && to + minutes <= next {
                states.push((to, to + minutes, WearState::OffExercise));
                sessions.push(Session { phase, starts: to, worn: 0, off: minutes, washes: false, exercises: here });
            }
            let worn: Vec<usize> = (0..programme.exercises.len())
                .filter(|&at| number < programme.exercises[at].dose.times_a_day.get() && programme.exercises[at].worn)
                .collect();
            let (from, length) = (wears[index].0, to - wears[index].0);
            let minutes = u16::try_from(worn.len()).unwrap_or(0) * case.library.general.exercise.get();
            let minutes = (minutes.div_ceil(5) * 5).min(length);
            if !worn.is_empty() && minutes > 0 {
                states.insert(0, (from, from + minutes, WearState::OnExercise));
                sessions.push(Session { phase, starts: from, worn: minutes, off: 0, washes: false, exercises: worn });
            }
        }
    }
    sessions.sort_by_key(|session| session.starts);
    PersonDay {
        states,
        fill_awake: WearState::Off,
        fill_asleep: WearState::Off,
        awake,
        sessions,
        kind,
        phase,
        break_in: step.map(|(index, _)| index),
        wears: wears.first().map(|(from, to)| (u16::try_from(wears.len()).unwrap_or(0), Minutes::new(to - from))),
        weaning: None,
    }
}

/// Minutes of rest after each wear, so that marks can fade before the next. Common practice, no source.
pub const REST: u16 = 30;

/// Spreads the wears of a step over `start..end` with equal rests around them, on multiples of five minutes. A wear
/// is cut when the day is too short for it.
fn wears(step: &BreakInStep, start: u16, end: u16) -> Vec<(u16, u16)> {
    let times = u16::from(step.times.get());
    let room = end.saturating_sub(start);
    let share = room / times;
    let each = step.each.get().min(share.saturating_sub(REST)) / 5 * 5;
    if each == 0 {
        return Vec::new();
    }
    // Equal rests before, between and after; on a short day those between come first.
    let rest = ((room - each * times) / (times + 1) / 5 * 5).max(REST);
    let before = rest.min(room.saturating_sub(times * (each + rest)));
    let first = (start + before).div_ceil(5) * 5;
    (0..times)
        .map(|index| first + index * (each + rest))
        .map(|from| (from, from + each))
        .filter(|&(_, to)| to <= end)
        .collect()
}
