//! Invented cases: a condition with findings and needs, and four orthoses of which exactly one is the best.
//!
//! Right and wrong are what the checks and the order of a choice say, nothing else. The other three are near misses: they
//! fit and stand lower in the order for a reason that can be said, or they fail at one or two places.

use super::dice::Dice;
use super::group::{Group, groups};
use super::place::failing;
use crate::body::{Finger, Side};
use crate::checks::Fit;
use crate::choose::{Ask, Ranked, contradiction, rank};
use crate::content::{Condition, Library, Measured, NeedRule, Phase, Regime};
use crate::ids::{ConditionId, NeedId};
use crate::units::Degrees;

/// Orthoses to choose from.
pub const CHOICES: usize = 4;
/// How many of the nearest misses a choice is drawn from.
const NEAREST: usize = 8;
/// At how many places a near miss may fail.
const FAILS: usize = 2;
/// Draws for each question before fewer questions than asked for are given.
const DRAWS: usize = 40;

/// A question with its answer.
#[derive(Clone, Debug)]
pub struct QuizQuestion {
    pub condition: ConditionId,
    /// For the finger, when it is about one.
    pub phase: Phase,
    pub side: Side,
    pub finger: Option<Finger>,
    pub findings: Vec<Measured>,
    pub needs: Vec<NeedId>,
    /// A number that an invented person follows from.
    pub person: usize,
    pub choices: Vec<Ranked>,
    /// Which of them is the best.
    pub right: usize,
}

/// How one choice stands beside the best.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    Best,
    /// Fits, and more joints come out at a cost.
    MoreRemarks,
    /// Fits, and goes against a need that the best does not go against.
    AgainstNeed,
    /// Fits, and does nothing for a need.
    UnmetNeed,
    /// Fits, and is bulkier.
    Bulkier,
    DoesNotFit,
    Unsafe,
}

/// The steps of the order that a reason can be said for; how much it restrains besides is not asked of a student.
fn steps(one: &Ranked) -> (Fit, usize, usize, usize, u8) {
    (one.order.safety, one.order.remarks, one.order.against, one.order.unmet, one.order.bulk)
}

/// How a choice stands beside the best one: by the first step of the order at which they differ.
pub fn standing(best: &Ranked, one: &Ranked) -> Standing {
    let (own, other) = (&one.order, &best.order);
    match own.safety {
        Fit::DoesNotFit => Standing::DoesNotFit,
        Fit::Unsafe => Standing::Unsafe,
        Fit::Fits | Fit::FitsWithRemarks if own.remarks > other.remarks => Standing::MoreRemarks,
        _ if own.remarks == other.remarks && own.against > other.against => Standing::AgainstNeed,
        _ if own.remarks == other.remarks && own.against == other.against && own.unmet > other.unmet => {
            Standing::UnmetNeed
        }
        _ if steps(one) > steps(best) => Standing::Bulkier,
        _ => Standing::Best,
    }
}

/// Questions of a seed: the same seed gives the same ones. Fewer than asked for where the group has too few conditions
/// with near misses. Conditions that a surgeon's protocol rules are left out: there the protocol decides, not the content.
pub fn quiz(library: &Library, group: Option<Group>, seed: u64, count: usize) -> Vec<QuizQuestion> {
    let mut dice = Dice::new("palmleaf questions", seed);
    let mut letters: Vec<usize> = (0..count).map(|number| number % CHOICES).collect();
    dice.shuffle(&mut letters);
    let mut stock: Vec<(&ConditionId, usize)> = library
        .conditions
        .iter()
        .filter(|(_, condition)| condition.protocol.is_none())
        .filter(|(_, condition)| group.is_none_or(|group| groups(library, condition).contains(&group)))
        .flat_map(|(id, condition)| {
            let worn = condition.phases.iter().enumerate().filter(|(_, phase)| phase.wear != Regime::Off);
            worn.map(move |(number, _)| (id, number))
        })
        .collect();
    dice.shuffle(&mut stock);
    let mut questions: Vec<QuizQuestion> = Vec::new();
    // A phase comes again only when all others have been asked.
    for (draw, (id, phase)) in stock.iter().cycle().enumerate() {
        let Some(right) = letters.get(questions.len()) else { break };
        if draw >= count.saturating_mul(DRAWS) {
            break;
        }
        let made = library
            .conditions
            .get(*id)
            .and_then(|condition| drawn(library, &mut dice, (id, condition), *phase, *right));
        questions.extend(made);
    }
    questions
}

/// A question about a phase, or nothing where this draw gives no clear one.
fn drawn(
    library: &Library,
    dice: &mut Dice,
    (id, condition): (&ConditionId, &Condition),
    phase: usize,
    right: usize,
) -> Option<QuizQuestion> {
    let side = *dice.one(Side::ALL)?;
    let any = *dice.one(Finger::ALL)?;
    let finger = condition.needs_finger().then_some(condition.finger.unwrap_or(any));
    let own = finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
    let phase = own.phases.get(phase)?.clone();
    let findings = findings(dice, &phase, finger);
    let needs = needs(library, dice);
    let ask = Ask { phase: &phase, finger, findings: &findings, factors: &[], needs: &needs };
    let ranked = rank(library, ask);
    let best = ranked.first().filter(|best| best.order.safety == Fit::Fits)?;
    let worse: Vec<&Ranked> =
        ranked[1..].iter().filter(|one| one.order.safety == Fit::Fits && steps(one) > steps(best)).collect();
    let mut misses: Vec<(usize, &Ranked)> = ranked
        .iter()
        .filter(|one| one.order.safety > Fit::Fits)
        .map(|one| (failing(&one.verdict.lines), one))
        .filter(|(count, _)| (1..=FAILS).contains(count))
        .collect();
    misses.sort_by_key(|(count, one)| (*count, one.order, one.id.clone()));
    misses.truncate(NEAREST);
    dice.shuffle(&mut misses);
    // One or two that fit and are worse, as far as there are; the rest fail.
    let fitting = (1 + dice.below(2)).min(worse.len());
    let mut near: Vec<&Ranked> = worse.iter().take(NEAREST).copied().collect();
    dice.shuffle(&mut near);
    near.truncate(fitting);
    near.extend(misses.iter().map(|(_, one)| *one));
    near.truncate(CHOICES - 1);
    if near.len() < CHOICES - 1 || near.iter().all(|one| one.order.safety == Fit::Fits) {
        return None;
    }
    dice.shuffle(&mut near);
    let mut choices: Vec<Ranked> = near.into_iter().cloned().collect();
    choices.insert(right, best.clone());
    let needs = needs.into_iter().map(|(id, _)| id).collect();
    let person = dice.below(1 << 16);
    Some(QuizQuestion { condition: id.clone(), phase, side, finger, findings, needs, person, choices, right })
}

/// Where something depends on a finding, the finding is given: inside the range that is asked about, or well below it.
fn findings(dice: &mut Dice, phase: &Phase, finger: Option<Finger>) -> Vec<Measured> {
    let tests: Vec<_> = phase.all_requirements().filter_map(|requirement| requirement.when.as_ref()).collect();
    let Some(test) = dice.one(&tests) else { return Vec::new() };
    let Some(joint) = finger.map_or(test.joint, |finger| test.joint.for_finger(finger)).joints().first().copied()
    else {
        return Vec::new();
    };
    let least = test.at_least.tenths() / 10;
    let room = test.below.map_or(5, |below| (below.tenths() / 10 - least - 1).clamp(0, 5));
    let more = i16::try_from(dice.below(usize::try_from(room).unwrap_or(0) + 1)).unwrap_or(0);
    let angle = if dice.below(3) == 0 { Degrees::whole(5) } else { Degrees::whole(least + more) };
    vec![Measured { joint, motion: test.motion, angle }]
}

/// One or two needs that do not contradict each other.
fn needs<'a>(library: &'a Library, dice: &mut Dice) -> Vec<(NeedId, &'a NeedRule)> {
    let all: Vec<(&NeedId, &NeedRule)> = library.needs.iter().collect();
    let mut found: Vec<(NeedId, &NeedRule)> = Vec::new();
    for _ in 0..=dice.below(2) {
        let Some((id, rule)) = dice.one(&all) else { break };
        if found.iter().all(|(known, _)| known != *id) {
            found.push(((*id).clone(), rule));
        }
    }
    if contradiction(&found).is_some() {
        found.truncate(1);
    }
    found
}
