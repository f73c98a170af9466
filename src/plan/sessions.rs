//! Where washing and exercise fall in a waking day.
//!
//! Times are minutes since getting up, so that a person who works nights has a day like any other.

use super::programme::Programme;
use crate::case::Case;
use crate::content::Regime;

/// One session: first what is done in the orthosis, then what is done without it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Session {
    /// Place of its programme among the dated phases: a session after midnight belongs to the day before.
    pub phase: usize,
    /// Minutes after getting up.
    pub starts: u16,
    /// Minutes of exercise in the orthosis.
    pub worn: u16,
    /// Minutes without the orthosis, taking off and putting on included.
    pub off: u16,
    /// The hand is washed in this session.
    pub washes: bool,
    /// Places in the programme of the exercises done.
    pub exercises: Vec<usize>,
}

impl Session {
    pub fn length(&self) -> u16 {
        self.worn + self.off
    }
}

/// Lays out the sessions of a day under a regime. `awake` is the length of the waking day.
pub fn plan(case: &Case<'_>, wear: Regime, (phase, programme): (usize, &Programme), awake: u16) -> Vec<Session> {
    let general = &case.library.general;
    let each = general.exercise.get();
    let comes_off = !matches!(wear, Regime::NeverRemove);
    let worn_by_day = matches!(wear, Regime::NeverRemove | Regime::OffToWash | Regime::OffToExercise | Regime::Day);
    // Washing needs a place of its own only where the orthosis would otherwise be on.
    let washes = u8::from(comes_off && worn_by_day);
    let exercised = programme.exercises.iter().map(|exercise| exercise.dose.times_a_day.get()).max().unwrap_or(0);
    let count = exercised.max(washes);
    let mut sessions: Vec<Session> = (0..count)
        .map(|index| {
            let here: Vec<usize> = programme
                .exercises
                .iter()
                .enumerate()
                .filter(|(_, exercise)| index < exercise.dose.times_a_day.get())
                .map(|(at, _)| at)
                .collect();
            let worn = minutes(here.iter().filter(|&&at| programme.exercises[at].worn).count(), each);
            let bare = minutes(here.iter().filter(|&&at| !programme.exercises[at].worn).count(), each);
            let washes = index < washes;
            let wash = if washes { general.washing.get() } else { 0 };
            let off = if bare + wash > 0 {
                let change = if worn_by_day { general.doffing.get() + general.donning.get() } else { 0 };
                round_up(bare + wash + change)
            } else {
                0
            };
            Session { phase, starts: 0, worn: round_up(worn), off, washes, exercises: here }
        })
        .collect();
    place(&mut sessions, general.settling.get(), awake);
    sessions
}

/// Spreads sessions evenly from soon after getting up to some time before bed, on quarter hours.
fn place(sessions: &mut [Session], settling: u16, awake: u16) {
    let count = u16::try_from(sessions.len()).unwrap_or(u16::MAX);
    let longest = sessions.iter().map(Session::length).max().unwrap_or(0);
    let room = awake.saturating_sub(2 * settling + longest);
    for (index, session) in sessions.iter_mut().enumerate() {
        let index = u16::try_from(index).unwrap_or(0);
        let offset = if count > 1 { u32::from(room) * u32::from(index) / u32::from(count - 1) } else { 0 };
        let offset = u16::try_from(offset).unwrap_or(0);
        session.starts = settling + offset / 15 * 15;
    }
}

fn minutes(count: usize, each: u16) -> u16 {
    u16::try_from(count).unwrap_or(0).saturating_mul(each)
}

fn round_up(minutes: u16) -> u16 {
    minutes.div_ceil(5) * 5
}
