//! The home programme of a phase: what it allows, ranked by aim, no more than a person will do.

use super::phases::PlannedPhase;
use super::rules::Rules;
use crate::body::{Direction, Joint};
use crate::case::{Case, Subject};
use crate::checks::{Question, in_force};
use crate::content::Measured;
use crate::content::{Dose, Exercise, Orthosis, Phase, Regime, Requirement, Wanted, Worn};
use crate::ids::ExerciseId;

/// One exercise of a programme.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlannedExercise {
    pub id: ExerciseId,
    /// Done in the orthosis.
    pub worn: bool,
    pub dose: Dose,
}

/// The exercises of one dated phase, first the most important.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Programme {
    pub exercises: Vec<PlannedExercise>,
}

/// What exercises are held against in a phase: its rules, its regime, and how the orthosis meets its needs.
pub struct Bounds<'p> {
    phase: &'p Phase,
    wear: Regime,
    orthosis: &'p Orthosis,
    in_force: Vec<&'p Requirement>,
}

impl<'p> Bounds<'p> {
    pub fn of(phase: &'p Phase, wear: Regime, orthosis: &'p Orthosis, findings: &[Measured]) -> Self {
        let in_force = in_force(Question { orthosis, findings, factors: &[] }, phase);
        Self { phase, wear, orthosis, in_force }
    }

    /// Whether an exercise may be done: `Ok(true)` in the orthosis, `Ok(false)` without it.
    ///
    /// # Errors
    /// The rule that forbids it, in words for the clinician.
    pub fn allow(&self, id: &ExerciseId, exercise: &Exercise) -> Result<bool, String> {
        // What the phase names as the clinician's to order is the healing tissue's own movement: only the orthosis
        // limits it.
        if !self.phase.exercises.on_order.contains(id) {
            self.permit(exercise)?;
        }
        let held = exercise
            .moves
            .iter()
            .flat_map(|movement| movement.joint.joints())
            .any(|joint| self.orthosis.hold_of(joint).covers());
        let (may_come_off, is_worn) = (self.wear.comes_off_to_exercise(), self.wear.is_worn_in_use());
        match exercise.orthosis {
            Worn::On if held => Err("the splint holds a joint that it moves".to_owned()),
            Worn::On if !is_worn => Err("it is done in the splint, which is not worn by day".to_owned()),
            Worn::On => Ok(true),
            Worn::Off if may_come_off => Ok(false),
            Worn::Off => Err("the splint may not come off for it".to_owned()),
            Worn::Either if !held && is_worn => Ok(true),
            Worn::Either if may_come_off => Ok(false),
            Worn::Either => Err("the splint holds a joint that it moves and may not come off".to_owned()),
        }
    }

    /// Whether the rules of the phase permit it.
    fn permit(&self, exercise: &Exercise) -> Result<(), String> {
        let rules = &self.phase.exercises;
        if exercise.load > rules.most {
            return Err(format!("its load ({}) is above the phase's most ({})", exercise.load, rules.most));
        }
        if let Some(structure) = exercise.stresses.iter().find(|structure| rules.protects.contains(structure)) {
            return Err(format!("it stresses `{structure}`, which the phase protects"));
        }
        for movement in &exercise.moves {
            if let Some(banned) = rules.bans.iter().find(|banned| banned.forbids(movement, exercise.load)) {
                return Err(format!("it moves {} in a way the phase bans", banned.joint));
            }
            for joint in movement.joint.joints() {
                for &direction in &movement.directions {
                    if let Some(requirement) =
                        self.in_force.iter().find(|requirement| keeps_still(requirement, joint, direction))
                    {
                        let held = requirement.joint;
                        return Err(format!("it moves {joint} in {direction}, and the phase holds {held}"));
                    }
                }
            }
        }
        Ok(())
    }
}

/// Whether a requirement in force keeps a joint from moving in a direction, even in an exercise.
pub fn keeps_still(requirement: &Requirement, joint: Joint, direction: Direction) -> bool {
    if !requirement.need.asks()
        || !requirement.joint.joints().contains(&joint)
        || requirement.moved_in_exercise.contains(&direction)
    {
        return false;
    }
    match requirement.hold {
        Some(Wanted::Still) => true,
        Some(Wanted::Stopped) => requirement.stops.iter().any(|stop| stop.direction == direction),
        // Moved inside what holds them, or by what pulls them.
        Some(Wanted::Relative | Wanted::Coupled | Wanted::Mobilised | Wanted::Steady) | None => false,
    }
}

/// How much an exercise matters in a phase, least first: the place of its best aim, then of its best joint.
pub type Rank = (usize, usize);

/// The rank of an exercise; None when it serves no aim of the phase.
pub fn rank(exercise: &Exercise, phase: &Phase) -> Option<Rank> {
    let rules = &phase.exercises;
    let aim = rules.aims.iter().position(|aim| exercise.aims.contains(aim))?;
    let moved: Vec<Joint> = exercise.moves.iter().flat_map(|movement| movement.joint.joints()).collect();
    let joint = rules.joints.iter().position(|name| name.joints().iter().any(|joint| moved.contains(joint)));
    Some((aim, joint.unwrap_or(rules.joints.len())))
}

/// The best of a ranked list, one for each aim and joint before a second for any: a person who does five exercises
/// gains more from five different ones.
fn varied<T>(mut ranked: Vec<(Rank, T, bool)>, most: usize) -> Vec<(T, bool)> {
    let mut chosen: Vec<(Rank, T, bool)> = Vec::new();
    while chosen.len() < most && !ranked.is_empty() {
        let times = |rank: &Rank| chosen.iter().filter(|(known, ..)| known == rank).count();
        let at = (0..ranked.len()).min_by_key(|&at| (times(&ranked[at].0), at)).unwrap_or(0);
        chosen.push(ranked.remove(at));
    }
    chosen.sort_by_key(|(rank, ..)| *rank);
    chosen.into_iter().map(|(_, item, worn)| (item, worn)).collect()
}

/// Works out the programme of a phase.
pub fn plan(case: &Case<'_>, phase: &PlannedPhase, rules: &mut Rules<'_, '_>) -> Programme {
    let library = case.library;
    let wear = phase.wear.value;
    let findings = case.measured();
    let left_out =
        |id: &ExerciseId| case.overrides.iter().any(|entry| entry.subject == Subject::LeaveOutExercise(id.clone()));
    let bounds = Bounds::of(&phase.rules, wear, &case.orthosis, &findings);
    let mut ranked: Vec<(Rank, &ExerciseId, bool)> = case
        .exercises
        .iter()
        .filter(|(_, exercise)| !exercise.by_order)
        .filter_map(|(id, exercise)| {
            let worn = bounds.allow(id, exercise).ok()?;
            Some((rank(exercise, &phase.rules)?, id, worn))
        })
        .collect();
    ranked.sort();
    let most = case
        .factors
        .iter()
        .filter_map(|(_, factor)| factor.exercises)
        .fold(library.general.exercises, std::cmp::Ord::min);
    rules.rule(format!("most exercises in phase `{}`", phase.id), most, &library.general.source);
    for (_, id, _) in ranked.iter().filter(|(_, id, _)| left_out(id)) {
        let source = &library.exercises[*id].source;
        let subject = Subject::LeaveOutExercise((*id).clone());
        rules.overridden(format!("exercise `{id}`"), "left out", source, &subject, None);
    }
    ranked.retain(|(_, id, _)| !left_out(id));
    let mut chosen: Vec<(ExerciseId, bool)> =
        varied(ranked, usize::from(most.get())).into_iter().map(|(id, worn)| (id.clone(), worn)).collect();
    for entry in &case.overrides {
        let Subject::AddExercise(id) = &entry.subject else { continue };
        let Some(exercise) = case.exercises.get(id) else { continue };
        // An exercise that a later phase allows is simply not part of this one.
        let sometime = case
            .conditions
            .iter()
            .flat_map(|treated| &treated.condition.phases)
            .any(|other| Bounds::of(other, other.wear, &case.orthosis, &findings).allow(id, exercise).is_ok());
        let worn = match bounds.allow(id, exercise) {
            Ok(worn) => {
                rules.overridden(
                    format!("exercise `{id}`"),
                    format!("added in phase `{}`", phase.id),
                    &exercise.source,
                    &entry.subject,
                    None,
                );
                Some(worn)
            }
            Err(_) if sometime && !phase.rules.protective && phase.index > 0 => None,
            Err(why) => {
                let danger = format!("`{id}` is not for phase `{}`: {why}", phase.id);
                rules.overridden(
                    format!("exercise `{id}`"),
                    format!("added in phase `{}`", phase.id),
                    &phase.rules.exercises.source,
                    &entry.subject,
                    Some(danger),
                );
                // With the risk accepted it is done where the regime lets it: in the splint unless that may come off.
                Some(!wear.comes_off_to_exercise() || exercise.orthosis == Worn::On)
            }
        };
        if let Some(worn) = worn
            && !chosen.iter().any(|(known, _)| known == id)
        {
            chosen.push((id.clone(), worn));
        }
    }
    let exercises = chosen
        .into_iter()
        .map(|(id, worn)| {
            let dose = dose(case, &id, rules);
            PlannedExercise { id, worn, dose }
        })
        .collect();
    Programme { exercises }
}

fn dose(case: &Case<'_>, id: &ExerciseId, rules: &mut Rules<'_, '_>) -> Dose {
    let exercise = &case.library.exercises[id];
    let mut dose = exercise.dose.clone();
    for entry in &case.overrides {
        if let Subject::Dose { exercise: wanted, repetitions, hold, times_a_day } = &entry.subject
            && wanted == id
        {
            dose.repetitions = repetitions.unwrap_or(dose.repetitions);
            dose.hold = hold.unwrap_or(dose.hold);
            dose.times_a_day = times_a_day.unwrap_or(dose.times_a_day);
            let value = format!("{} times, hold {}, {} times a day", dose.repetitions, dose.hold, dose.times_a_day);
            rules.overridden(format!("dose of `{id}`"), value, &exercise.source, &entry.subject, None);
        }
    }
    dose
}
