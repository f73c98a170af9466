//! The home programme of a phase: what it allows, ranked by aim, no more than a person will do.

use super::phases::PlannedPhase;
use super::rules::Rules;
use crate::body::{Direction, Joint};
use crate::case::{Case, Subject};
use crate::content::Measured;
use crate::content::{Dose, Exercise, Hold, Need, Orthosis, Phase, Regime, Requirement, Wanted, Worn};
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

/// Whether an exercise may be done in a phase: `Ok(true)` in the orthosis, `Ok(false)` without it.
///
/// # Errors
/// The rule that forbids it, in words for the clinician.
pub fn allowed(
    exercise: &Exercise,
    phase: &Phase,
    wear: Regime,
    orthosis: &Orthosis,
    findings: &[Measured],
) -> Result<bool, String> {
    let rules = &phase.exercises;
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
                    phase.requires.iter().find(|requirement| keeps_still(requirement, joint, direction, findings))
                {
                    return Err(format!("it moves {joint} in {direction}, and the phase holds {}", requirement.joint));
                }
            }
        }
    }
    let held = exercise.moves.iter().flat_map(|movement| movement.joint.joints()).any(|joint| is_held(orthosis, joint));
    let may_come_off = !matches!(wear, Regime::NeverRemove | Regime::OffToWash);
    let is_worn = !matches!(wear, Regime::Off | Regime::Night);
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

/// Whether a phase's requirement keeps a joint from moving in a direction, even in an exercise.
pub fn keeps_still(requirement: &Requirement, joint: Joint, direction: Direction, findings: &[Measured]) -> bool {
    if !matches!(requirement.need, Need::Must | Need::Should)
        || requirement.when.as_ref().is_some_and(|test| !test.holds(findings))
        || !requirement.joint.joints().contains(&joint)
        || requirement.moved_in_exercise.contains(&direction)
    {
        return false;
    }
    match requirement.hold {
        Some(Wanted::Still) => true,
        Some(Wanted::Stopped) => requirement.stops.iter().any(|stop| stop.direction == direction),
        Some(Wanted::Steady) | None => false,
    }
}

fn is_held(orthosis: &Orthosis, joint: Joint) -> bool {
    orthosis.joints.iter().any(|(name, hold)| {
        name.joints().contains(&joint) && matches!(hold, Hold::Immobilised { .. } | Hold::Limited(_) | Hold::Blocked(_))
    })
}

/// How much an exercise matters in a phase: its best aim, then its best joint; None when it serves no aim of the phase.
pub fn rank(exercise: &Exercise, phase: &Phase) -> Option<(usize, usize)> {
    let rules = &phase.exercises;
    let aim = rules.aims.iter().position(|aim| exercise.aims.contains(aim))?;
    let joint = rules
        .joints
        .iter()
        .position(|name| {
            let joints = name.joints();
            exercise.moves.iter().flat_map(|movement| movement.joint.joints()).any(|joint| joints.contains(&joint))
        })
        .unwrap_or(rules.joints.len());
    Some((aim, joint))
}

/// Works out the programme of a phase.
pub fn plan(case: &Case<'_>, phase: &PlannedPhase, rules: &mut Rules<'_, '_>) -> Programme {
    let library = case.library;
    let wear = phase.wear.value;
    let findings = case.measured();
    let left_out =
        |id: &ExerciseId| case.overrides.iter().any(|entry| entry.subject == Subject::LeaveOutExercise(id.clone()));
    let mut ranked: Vec<((usize, usize), &ExerciseId, bool)> = library
        .exercises
        .iter()
        .filter_map(|(id, exercise)| {
            let worn = allowed(exercise, &phase.rules, wear, &case.orthosis, &findings).ok()?;
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
    let mut chosen: Vec<(ExerciseId, bool)> = Vec::new();
    for (_, id, worn) in &ranked {
        if left_out(id) {
            let source = &library.exercises[*id].source;
            rules.overridden(
                format!("exercise `{id}`"),
                "left out",
                source,
                &Subject::LeaveOutExercise((*id).clone()),
                None,
            );
        } else if chosen.len() < usize::from(most.get()) {
            chosen.push(((*id).clone(), *worn));
        }
    }
    for entry in &case.overrides {
        let Subject::AddExercise(id) = &entry.subject else { continue };
        let Some(exercise) = library.exercises.get(id) else { continue };
        let verdict = allowed(exercise, &phase.rules, wear, &case.orthosis, &findings);
        // An exercise that a later phase allows is simply not part of this one.
        let sometime = case
            .condition
            .phases
            .iter()
            .any(|other| allowed(exercise, other, other.wear, &case.orthosis, &findings).is_ok());
        let worn = match verdict {
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
                Some(matches!(wear, Regime::NeverRemove | Regime::OffToWash) || exercise.orthosis == Worn::On)
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
