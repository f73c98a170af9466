//! What an override is about.

use super::file::{Override, Use};
use crate::content::{BreakInStep, Regime};
use crate::ids::{ExerciseId, PhaseId, StepId, WearPatternId};
use crate::units::{DayCount, Minutes, Misread, Repetitions, Seconds, TimesPerDay};

/// The one thing an override changes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Subject {
    Lasts(PhaseId, DayCount),
    Wear(PhaseId, Regime),
    BreakIn(WearPatternId),
    Wears(Vec<BreakInStep>),
    AddExercise(ExerciseId),
    LeaveOutExercise(ExerciseId),
    Dose {
        exercise: ExerciseId,
        repetitions: Option<Repetitions>,
        hold: Option<Seconds>,
        times_a_day: Option<TimesPerDay>,
    },
    Donning(Vec<StepId>),
    Doffing(Vec<StepId>),
    MarkLimit(Minutes),
}

impl Subject {
    /// Whether it changes this exercise.
    pub fn is_about(&self, id: &ExerciseId) -> bool {
        match self {
            Self::AddExercise(own) | Self::LeaveOutExercise(own) | Self::Dose { exercise: own, .. } => own == id,
            _ => false,
        }
    }

    /// How the record names it.
    pub fn describe(&self) -> String {
        match self {
            Self::Lasts(phase, days) => format!("phase `{phase}` lasts {days}"),
            Self::Wear(phase, regime) => format!("phase `{phase}` is worn {regime}"),
            Self::BreakIn(pattern) => format!("breaking in follows `{pattern}`"),
            Self::Wears(_) => "the days of breaking in are set".to_owned(),
            Self::AddExercise(exercise) => format!("exercise `{exercise}` is added"),
            Self::LeaveOutExercise(exercise) => format!("exercise `{exercise}` is left out"),
            Self::Dose { exercise, .. } => format!("the dose of exercise `{exercise}` is set"),
            Self::Donning(_) => "the steps of putting it on are set".to_owned(),
            Self::Doffing(_) => "the steps of taking it off are set".to_owned(),
            Self::MarkLimit(limit) => format!("a mark may stay {limit}"),
        }
    }
}

impl Override {
    /// The things it changes: at least one, all about one subject.
    ///
    /// # Errors
    /// When it names no subject, several, or values that belong to another subject.
    pub fn subjects(&self) -> Result<Vec<Subject>, Misread> {
        let dosed = self.repetitions.is_some() || self.hold.is_some() || self.times_a_day.is_some();
        let named = [
            self.phase.is_some(),
            self.break_in.is_some(),
            !self.wears.is_empty(),
            self.exercise.is_some(),
            !self.donning.is_empty(),
            !self.doffing.is_empty(),
            self.mark_limit.is_some(),
        ];
        if named.iter().filter(|&&named| named).count() != 1 {
            return Err(Misread::new(
                "an override is about one thing",
                "one of `phase`, `break_in`, `wears`, `exercise`, `donning`, `doffing`, `mark_limit` in each",
            ));
        }
        if (self.lasts.is_some() || self.wear.is_some()) && self.phase.is_none() {
            return Err(Misread::new("`lasts` and `wear` belong to a phase", "`phase: …` beside them"));
        }
        if (dosed || self.r#use.is_some()) && self.exercise.is_none() {
            return Err(Misread::new("a dose and `use` belong to an exercise", "`exercise: …` beside them"));
        }
        let mut subjects = Vec::new();
        if let Some(phase) = &self.phase {
            subjects.extend(self.lasts.map(|days| Subject::Lasts(phase.value.clone(), days)));
            subjects.extend(self.wear.map(|regime| Subject::Wear(phase.value.clone(), regime)));
            if subjects.is_empty() {
                return Err(Misread::new("nothing is said about the phase", "`lasts: …` or `wear: …` beside it"));
            }
        }
        if let Some(exercise) = &self.exercise {
            let id = exercise.value.clone();
            match self.r#use {
                Some(Use::LeaveOut) if dosed => {
                    return Err(Misread::plain("an exercise that is left out has no dose"));
                }
                Some(Use::LeaveOut) => subjects.push(Subject::LeaveOutExercise(id.clone())),
                Some(Use::Add) => subjects.push(Subject::AddExercise(id.clone())),
                None if !dosed => {
                    return Err(Misread::new(
                        "nothing is said about the exercise",
                        "`use: add`, `use: leave-out` or a dose",
                    ));
                }
                None => {}
            }
            if dosed {
                let (repetitions, hold, times_a_day) = (self.repetitions, self.hold, self.times_a_day);
                subjects.push(Subject::Dose { exercise: id, repetitions, hold, times_a_day });
            }
        }
        subjects.extend(self.break_in.as_ref().map(|pattern| Subject::BreakIn(pattern.value.clone())));
        if !self.wears.is_empty() {
            if BreakInStep::shrink(&self.wears) {
                return Err(Misread::new("breaking in shrinks from one day to the next", "days that stay or grow"));
            }
            subjects.push(Subject::Wears(self.wears.clone()));
        }
        if !self.donning.is_empty() {
            subjects.push(Subject::Donning(self.donning.iter().map(|step| step.value.clone()).collect()));
        }
        if !self.doffing.is_empty() {
            subjects.push(Subject::Doffing(self.doffing.iter().map(|step| step.value.clone()).collect()));
        }
        subjects.extend(self.mark_limit.map(Subject::MarkLimit));
        Ok(subjects)
    }
}
