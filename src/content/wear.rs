//! Wear regimes, and patterns of breaking in and weaning.

use super::basis::Basis;
use crate::source::{choice, record};
use crate::units::{DayCount, Minutes, TimesPerDay};

choice! {
    /// When an orthosis is worn once the skin is used to it, strictest first.
    pub enum Regime ("wear regime") {
        /// Day and night without any break.
        NeverRemove = "never-remove",
        /// Day and night; off only for washing and the skin check.
        OffToWash = "off-to-wash",
        /// Day and night; off for washing and for exercise.
        OffToExercise = "off-to-exercise",
        /// All night, and by day for tasks that strain the hand.
        NightAndTasks = "night-and-tasks",
        /// All night, and by day while the hand rests; off for use.
        NightAndRest = "night-and-rest",
        /// While awake.
        Day = "day",
        /// During the main sleep.
        Night = "night",
        /// In bouts that stretch a stiff joint; off in between.
        Stretch = "stretch",
        /// Only for tasks that strain the hand.
        Tasks = "tasks",
        /// Not worn.
        Off = "off",
    }
}

impl Regime {
    /// Worn day and night, and off at most to wash or exercise.
    pub const fn is_full_time(self) -> bool {
        matches!(self, Self::NeverRemove | Self::OffToWash | Self::OffToExercise)
    }

    /// Whether it may come off for an exercise.
    pub const fn comes_off_to_exercise(self) -> bool {
        !matches!(self, Self::NeverRemove | Self::OffToWash)
    }

    /// Whether it is worn while the hand is used.
    pub const fn is_worn_in_use(self) -> bool {
        !matches!(self, Self::NightAndRest | Self::Night | Self::Stretch | Self::Off)
    }

    /// Whether it is put on by day for what strains the hand.
    pub const fn is_for_tasks(self) -> bool {
        matches!(self, Self::NightAndTasks | Self::Tasks)
    }
}

choice! {
    /// Whether it may come off to wash.
    pub enum Washing ("way of washing") {
        Freely = "remove-freely",
        /// Only with the part supported in the held position.
        Supported = "remove-supported",
        Never = "never-remove",
    }
}

record! {
    /// How long a stiff joint is held at the end of its range each day: bouts of wear, spread over the waking day.
    pub struct StretchDose ("a stretch dose") {
        pub bouts: TimesPerDay,
        pub each: Minutes,
    }
}

impl StretchDose {
    /// The total end range time of a day.
    pub fn minutes(&self) -> u16 {
        u16::from(self.bouts.get()) * self.each.get()
    }
}

record! {
    /// One day of breaking in.
    pub struct BreakInStep ("a break-in step") {
        /// How many times that day.
        pub times: TimesPerDay,
        /// How long each time.
        pub each: Minutes,
    }
}

record! {
    /// One step of weaning.
    pub struct WeaningStep ("a weaning step") {
        pub lasts: DayCount,
        /// Worn while awake, from getting up.
        pub awake: Minutes,
        /// Whether it is worn during the main sleep.
        pub night: bool,
    }
}

impl BreakInStep {
    /// Minutes worn that day.
    pub fn minutes(&self) -> u16 {
        u16::from(self.times.get()) * self.each.get()
    }

    /// Whether some day wears less, or for shorter at a time, than the day before it.
    pub fn shrink(steps: &[Self]) -> bool {
        steps.windows(2).any(|pair| pair[1].each < pair[0].each || pair[1].minutes() < pair[0].minutes())
    }
}

impl WeaningStep {
    /// The step of a day of weaning, from 0, and its place; the last step goes on.
    pub fn on_day(steps: &[Self], day: i32) -> Option<(usize, &Self)> {
        let mut left = day;
        for (index, step) in steps.iter().enumerate() {
            if left < i32::from(step.lasts.days()) {
                return Some((index, step));
            }
            left -= i32::from(step.lasts.days());
        }
        Some((steps.len().checked_sub(1)?, steps.last()?))
    }

    /// Whether some step wears more than the one before it.
    pub fn grow(steps: &[Self]) -> bool {
        steps.windows(2).any(|pair| pair[1].awake > pair[0].awake || (pair[1].night && !pair[0].night))
    }
}

record! {
    /// A pattern of breaking in (`break_in`, one step a day) or of weaning (`weaning`). Exactly one of the two is given.
    pub struct WearPattern ("a wear pattern") {
        pub break_in: Vec<BreakInStep>,
        pub weaning: Vec<WeaningStep>,
        /// Worn in full from the fitting: no steps.
        pub at_once: bool,
        /// How gentle it is on skin, 1 (quick) to 9 (slow): of two patterns the gentler wins.
        pub gentleness: TimesPerDay,
        pub source: Basis,
    }
}
