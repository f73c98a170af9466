//! Which orthosis: each says while it is chosen whether it fits and, if not, at which joint; and the surgeon's protocol.

use super::ask::{Choice, Stop, line};
use super::draft::Protocol;
use super::interview::Interview;
use crate::body::{Finger, MotionRange, Position};
use crate::checks::Fit;
use crate::choose::{Ask, Ranked, SetAngle, rank};
use crate::content::{Condition, Factor, Measured};
use crate::ids::{FactorId, OrthosisId};
use crate::units::{DayCount, Misread};

/// The orthosis that was taken.
#[derive(Clone, Debug)]
pub struct Chosen {
    pub id: OrthosisId,
    pub angles: Vec<SetAngle>,
    pub also_fit: Vec<OrthosisId>,
    /// Whether it was said to fit.
    fits: bool,
}

impl Interview<'_> {
    /// Every orthosis in the order of `choose`.
    fn ranked(
        &self,
        rules: &Condition,
        finger: Option<Finger>,
        findings: &[Measured],
        factors: &[FactorId],
    ) -> Vec<Ranked> {
        let known = |id: &FactorId| self.library().factors.get(id).map(|factor| (id.clone(), factor));
        let factors: Vec<(FactorId, &Factor)> = factors.iter().filter_map(known).collect();
        let Some(phase) = rules.phases.first() else { return Vec::new() };
        rank(self.library(), Ask { phase, finger, findings, factors: &factors, needs: &[] })
    }

    pub(super) fn orthosis(
        &mut self,
        rules: &Condition,
        finger: Option<Finger>,
        findings: &[Measured],
        factors: &[FactorId],
    ) -> Result<Chosen, Stop> {
        let ranked = self.ranked(rules, finger, findings, factors);
        let wide = ranked.iter().map(|one| one.id.as_str().len()).max().unwrap_or(0);
        let choices: Vec<Choice> = ranked
            .iter()
            .map(|one| {
                let key = format!("orthosis-{}-short", one.id);
                let about = format!("{}; {}", word(one), self.names.plain(&key));
                let gap = " ".repeat(wide - one.id.as_str().len());
                let names = self.names.all(&format!("orthosis-{}-name", one.id));
                let find = self.names.all(&key).into_iter().chain(names).collect();
                let label = super::ask::one_line(&format!("{}{gap}", one.id), wide) + &gap;
                let about = super::ask::one_line(&about, super::ask::COLUMNS - wide - 2);
                Choice { id: one.id.to_string(), label: format!("{label}  {about}"), find }
            })
            .collect();
        loop {
            let place = self.ask.one("Which orthosis was fitted?", &choices, None)?;
            let one = &ranked[place];
            let fits = one.order.safety == Fit::Fits;
            if !fits {
                self.ask.tell(&format!("{} {}:", one.id, one.verdict.fit.word().replace('-', " ")));
                why(one).iter().for_each(|why| self.ask.tell(&format!("  {why}")));
                if !self.ask.agree("`check` will refuse this. Take it all the same?", false)? {
                    continue;
                }
            }
            let mut angles = Vec::new();
            if fits && !one.set.is_empty() {
                let set: Vec<String> = one.set.iter().map(ToString::to_string).collect();
                if self.ask.agree(&format!("It fits when set: {}. Was it set so?", set.join(", ")), true)? {
                    angles.clone_from(&one.set);
                }
            }
            let others = ranked.iter().filter(|other| other.order.safety == Fit::Fits && other.id != one.id);
            return Ok(Chosen {
                id: one.id.clone(),
                angles,
                also_fit: others.take(3).map(|other| other.id.clone()).collect(),
                fits,
            });
        }
    }

    /// What is particular about the person may speak against the orthosis.
    pub(super) fn still_fits(
        &mut self,
        rules: &Condition,
        finger: Option<Finger>,
        findings: &[Measured],
        factors: &[FactorId],
        chosen: Chosen,
    ) -> Result<Chosen, Stop> {
        if factors.is_empty() || !chosen.fits {
            return Ok(chosen);
        }
        let ranked = self.ranked(rules, finger, findings, factors);
        let Some(one) = ranked.iter().find(|one| one.id == chosen.id && one.order.safety != Fit::Fits) else {
            return Ok(chosen);
        };
        self.ask.tell(&format!("For this person {} {}:", one.id, one.verdict.fit.word().replace('-', " ")));
        why(one).iter().for_each(|why| self.ask.tell(&format!("  {why}")));
        if self.ask.agree("Choose another?", true)? {
            return self.orthosis(rules, finger, findings, factors);
        }
        Ok(chosen)
    }

    /// Surgeons' protocols differ, so nothing is offered: the numbers are those on paper.
    pub(super) fn protocol(&mut self, rules: &Condition) -> Result<Option<Protocol>, Stop> {
        let Some(needs) = rules.protocol.clone() else { return Ok(None) };
        self.ask.tell(&format!("The surgeon's protocol rules here. {}", needs.because));
        let given = |typed: &str| if typed.is_empty() { Err("it has to be named".to_owned()) } else { line(typed) };
        let name = self.ask.text("What is the protocol called, or whose orders are they?", "", &given)?;
        let mut lengths = Vec::new();
        for need in &needs.lengths {
            let question = format!(
                "How long does phase {} last by the protocol? (protocols give {} to {})",
                need.phase, need.at_least, need.at_most
            );
            let judge = |typed: &str| {
                let days: DayCount = read(typed)?;
                let within = days >= need.at_least && days <= need.at_most;
                if within { Ok(()) } else { Err(format!("{days} is outside what protocols give")) }
            };
            let typed = self.ask.text(&question, "", &judge)?;
            lengths.extend(read(&typed).ok().map(|days| (need.phase.clone(), days)));
        }
        let mut angles = Vec::new();
        for need in &needs.angles {
            let ranges: Vec<String> = need.within.iter().map(ToString::to_string).collect();
            let question = format!(
                "At which angle does the protocol hold {}? (protocols give {})",
                need.joint,
                ranges.join(" or ")
            );
            let judge = |typed: &str| {
                let at: Position = read(typed)?;
                let within =
                    need.within.is_empty() || need.within.iter().any(|range| range.contains(MotionRange::at(at)));
                if within { Ok(()) } else { Err(format!("{at} is outside what protocols give")) }
            };
            let typed = self.ask.text(&question, "", &judge)?;
            angles.extend(read(&typed).ok().map(|at| (need.joint, at)));
        }
        Ok(Some(Protocol { name, lengths, angles }))
    }
}

fn read<T: std::str::FromStr<Err = Misread>>(typed: &str) -> Result<T, String> {
    typed.parse().map_err(|misread: Misread| misread.to_string())
}

/// Whether it fits, in a word, and where it does not.
fn word(one: &Ranked) -> String {
    let mut joints: Vec<String> = Vec::new();
    for line in one.verdict.deciding() {
        let joint = line.joint.map_or_else(|| "the whole piece".to_owned(), |joint| joint.to_string());
        if !joints.contains(&joint) {
            joints.push(joint);
        }
    }
    let at = joints.join(", ");
    let set: Vec<String> = one.set.iter().map(ToString::to_string).collect();
    let set = if set.is_empty() { String::new() } else { format!(" when set {}", set.join(", ")) };
    match one.verdict.fit {
        Fit::Fits => format!("fits{set}"),
        Fit::FitsWithRemarks => format!("fits{set}, remark: {at}"),
        Fit::DoesNotFit => format!("DOES NOT FIT: {at}"),
        Fit::Unsafe => format!("UNSAFE: {at}"),
    }
}

fn why(one: &Ranked) -> Vec<String> {
    let mut why: Vec<String> = Vec::new();
    for line in one.verdict.deciding() {
        let joint = line.joint.map_or_else(|| "the whole piece".to_owned(), |joint| joint.to_string());
        why.push(format!("{joint} {}, but {}: {}", line.wanted, line.offered, line.because));
    }
    why
}
