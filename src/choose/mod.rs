//! Which orthosis for this condition, and why; and which conditions for this orthosis.
//!
//! Orthoses stand in an order that a therapist can follow step by step, each step deciding only what the ones before it
//! left open: first safety, then the fit by joint, then the person's needs, then bulk.

mod improve;
mod need;
mod reverse;
mod setting;

pub use need::{NeedMatch, contradiction};
pub use reverse::{Suits, conditions_for};
pub use setting::{SetAngle, best_setting};

use crate::body::Finger;
use crate::checks::{Fit, Grade, PhaseVerdict, Question, VerdictLine, in_force, judge_phase};
use crate::classify::{SystematicName, name_for};
use crate::content::{Factor, Library, Measured, NeedRule, Orthosis, Phase};
use crate::ids::{FactorId, NeedId, OrthosisId};

/// What is asked.
#[derive(Clone, Copy)]
pub struct Ask<'a> {
    pub phase: &'a Phase,
    pub finger: Option<Finger>,
    pub findings: &'a [Measured],
    pub factors: &'a [(FactorId, &'a Factor)],
    pub needs: &'a [(NeedId, &'a NeedRule)],
}

/// One orthosis in the order.
#[derive(Clone, Debug)]
pub struct Ranked {
    pub id: OrthosisId,
    /// As it would be set for this condition.
    pub orthosis: Orthosis,
    /// The angles that differ from its usual ones.
    pub set: Vec<SetAngle>,
    pub verdict: PhaseVerdict,
    pub needs: Vec<NeedMatch>,
    /// Why it stands where it stands, first what weighs most. English.
    pub why: Vec<String>,
    /// What would make it better. English.
    pub better: Vec<String>,
    /// Its systematic name for this purpose.
    pub name: SystematicName,
    pub order: Order,
}

/// What the order goes by, first what weighs most; less is better.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Order {
    /// Unsafe, misfit, or neither.
    pub safety: Fit,
    /// Joints that come out with a remark.
    pub remarks: usize,
    /// Needs that it goes against.
    pub against: usize,
    /// Needs that it does nothing for.
    pub unmet: usize,
    pub bulk: u8,
    /// How much it restrains: joints it holds count double, joints it only stops or steadies once.
    pub restraint: usize,
}

/// All orthoses in order, best first.
pub fn rank(library: &Library, ask: Ask<'_>) -> Vec<Ranked> {
    let mut all: Vec<Ranked> = library
        .orthoses_for(ask.finger)
        .filter(|(_, orthosis)| !orthosis.by_order)
        .map(|(id, orthosis)| ranked(id, orthosis, ask))
        .collect();
    all.sort_by(|one, other| (one.order, &one.id).cmp(&(other.order, &other.id)));
    all
}

fn ranked(id: &OrthosisId, orthosis: Orthosis, ask: Ask<'_>) -> Ranked {
    let (orthosis, set) = best_setting(&orthosis, ask.phase, ask.findings, ask.factors);
    let question = Question { orthosis: &orthosis, findings: ask.findings, factors: ask.factors };
    let verdict = judge_phase(question, ask.phase);
    let needs: Vec<NeedMatch> = ask.needs.iter().map(|(need, rule)| need::look(need, rule, &orthosis)).collect();
    // A misfit that is a hair from fitting is still a misfit: fits with and without remarks are told apart by the
    // remarks, so that they count as one step here.
    let safety = if verdict.fit <= Fit::FitsWithRemarks { Fit::Fits } else { verdict.fit };
    let order = Order {
        safety,
        remarks: verdict.count(Grade::Remark),
        against: needs.iter().filter(|need| need.against.is_some()).count(),
        unmet: needs.iter().filter(|need| need.against.is_none() && need.met.is_none()).count(),
        bulk: orthosis.bulk.get(),
        restraint: orthosis
            .joints
            .iter()
            .map(|(name, hold)| (usize::from(hold.acts()) + usize::from(hold.covers())) * name.joints().len())
            .sum(),
    };
    let name = name_for(&orthosis, ask.finger, &in_force(question, ask.phase));
    let why = why(&verdict, &needs, &orthosis);
    let better = improve::suggestions(&verdict, ask.phase, question);
    Ranked { id: id.clone(), orthosis, set, verdict, needs, why, better, name, order }
}

fn why(verdict: &PhaseVerdict, needs: &[NeedMatch], orthosis: &Orthosis) -> Vec<String> {
    let said = |line: &VerdictLine| {
        let joint = line.joint.map_or_else(|| "whole".to_owned(), |joint| joint.to_string());
        format!("{}: {joint} {}, but {}: {}", line.result, line.wanted, line.offered, line.because)
    };
    let mut why: Vec<String> = verdict.faults().into_iter().map(said).collect();
    if why.is_empty() {
        why.push("every joint is as the condition needs it".to_owned());
    }
    why.extend(needs.iter().filter_map(|need| need.against.as_ref()).map(|text| format!("against the need: {text}")));
    why.extend(needs.iter().filter_map(|need| need.met.as_ref()).map(|text| format!("meets the need: {text}")));
    why.push(format!("bulk {}", orthosis.bulk));
    why
}
