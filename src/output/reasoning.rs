//! The whole reasoning of a case as data: verdict, plan rules, overrides, sources. Text and JSON are two views of it.

use serde::Serialize;

use crate::checks::{Verdict, VerdictLine};
use crate::content::{Basis, Library};
use crate::plan::{ActivityAdvice, DayPlan, Plan, Programme, RuleLine, WearState};

/// A joint of a phase: what is wanted, what is offered.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct LineFacts {
    /// None for the orthosis as a whole.
    pub joint: Option<String>,
    pub wanted: String,
    pub offered: String,
    pub result: &'static str,
    pub because: String,
    pub structures: Vec<String>,
    pub source: String,
}

/// The verdict of a phase.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct VerdictFacts {
    pub condition: String,
    pub phase: String,
    pub fit: &'static str,
    pub lines: Vec<LineFacts>,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct ExerciseFacts {
    pub id: String,
    /// `on` or `off`.
    pub orthosis: &'static str,
    pub repetitions: u8,
    pub hold: String,
    pub times_a_day: u8,
    /// Repetitions it may grow to.
    pub up_to: Option<u8>,
}

/// A phase with dates.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct PhaseFacts {
    pub phase: String,
    pub first: String,
    pub last: String,
    pub wear: &'static str,
    pub until_review: bool,
    pub exercises: Vec<ExerciseFacts>,
}

/// A phase that waits for somebody's word.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct LaterFacts {
    pub phase: String,
    pub wear: &'static str,
    pub decided_by: &'static str,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct BreakInFacts {
    pub pattern: String,
    /// One for each day, such as `2 x 30 min`.
    pub steps: Vec<String>,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct DayFacts {
    pub date: String,
    pub kind: &'static str,
    /// Such as `07:00-09:00 on`; what is off is left out.
    pub hours: Vec<String>,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct SkinFacts {
    pub mark_limit: String,
    pub checks_a_day: u8,
}

/// What was advised of a job in one phase.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct AdviceFacts {
    pub verdict: &'static str,
    pub ways: Vec<String>,
    pub over: Vec<&'static str>,
    pub too_heavy: bool,
    pub in_the_way: bool,
    pub waits: Option<&'static str>,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct ActivityFacts {
    pub id: String,
    /// One for each dated phase.
    pub phases: Vec<AdviceFacts>,
}

/// A rule that shaped the plan, with what the therapist set instead.
#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct RuleFacts {
    pub subject: String,
    pub value: String,
    pub source: String,
    pub instead_of: Option<String>,
    pub because: Option<String>,
    pub risk_accepted: bool,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct PlanFacts {
    pub phases: Vec<PhaseFacts>,
    pub later: Vec<LaterFacts>,
    pub break_in: BreakInFacts,
    pub days: Vec<DayFacts>,
    pub skin: SkinFacts,
    pub activities: Vec<ActivityFacts>,
    pub review: String,
    pub rules: Vec<RuleFacts>,
}

/// The verdicts as data: the phases of every condition.
pub fn verdicts(library: &Library, verdicts: &[Verdict]) -> Vec<VerdictFacts> {
    let named = |id: &crate::ids::StructureId| {
        library.structures.get(id).map_or_else(|| id.to_string(), |known| known.name.clone())
    };
    let line = |line: &VerdictLine| LineFacts {
        joint: line.joint.map(|joint| joint.to_string()),
        wanted: line.wanted.clone(),
        offered: line.offered.clone(),
        result: line.result.word(),
        because: line.because.clone(),
        structures: line.structures.iter().map(named).collect(),
        source: library.cite(&line.basis),
    };
    let phases =
        verdicts.iter().flat_map(|verdict| verdict.phases.iter().map(move |phase| (&verdict.condition, phase)));
    phases
        .map(|(condition, phase)| VerdictFacts {
            condition: condition.to_string(),
            phase: phase.phase.to_string(),
            fit: phase.fit.word(),
            lines: phase.lines.iter().map(line).collect(),
        })
        .collect()
}

/// The plan as data.
pub fn plan(library: &Library, plan: &Plan) -> PlanFacts {
    let rule = |rule: &RuleLine| RuleFacts {
        subject: rule.subject.clone(),
        value: rule.value.clone(),
        source: library.cite(&rule.basis),
        instead_of: rule.instead_of.clone(),
        because: rule.because.as_ref().map(|reason| reason.as_str().to_owned()),
        risk_accepted: rule.risk_accepted,
    };
    PlanFacts {
        phases: plan
            .phases
            .iter()
            .zip(&plan.programmes)
            .map(|(phase, programme)| PhaseFacts {
                phase: phase.id.to_string(),
                first: phase.first.to_string(),
                last: phase.last.to_string(),
                wear: phase.wear.value.word(),
                until_review: phase.until_review,
                exercises: exercises(programme),
            })
            .collect(),
        later: plan
            .later
            .iter()
            .map(|phase| LaterFacts {
                phase: phase.id.to_string(),
                wear: phase.wear.word(),
                decided_by: phase.decided_by.word(),
            })
            .collect(),
        break_in: BreakInFacts {
            pattern: plan.break_in.pattern.to_string(),
            steps: plan.break_in.steps.iter().map(|step| format!("{} x {}", step.times, step.each)).collect(),
        },
        days: plan.days.iter().map(day).collect(),
        skin: SkinFacts { mark_limit: plan.skin.mark_limit.value.to_string(), checks_a_day: plan.skin.checks.get() },
        activities: plan.activities.iter().map(activity).collect(),
        review: plan.review.to_string(),
        rules: plan.rules.iter().map(rule).collect(),
    }
}

fn exercises(programme: &Programme) -> Vec<ExerciseFacts> {
    let of = |exercise: &crate::plan::PlannedExercise| ExerciseFacts {
        id: exercise.id.to_string(),
        orthosis: if exercise.worn { "on" } else { "off" },
        repetitions: exercise.dose.repetitions.get(),
        hold: exercise.dose.hold.to_string(),
        times_a_day: exercise.dose.times_a_day.get(),
        up_to: exercise.dose.up_to.map(|most| most.get()),
    };
    programme.exercises.iter().map(of).collect()
}

fn day(day: &DayPlan) -> DayFacts {
    let clock = |minute: u16| format!("{:02}:{:02}", minute / 60, minute % 60);
    let hours = day
        .segments
        .iter()
        .filter(|segment| segment.state != WearState::Off)
        .map(|segment| format!("{}-{} {}", clock(segment.span.from()), clock(segment.span.to()), segment.state));
    DayFacts { date: day.date.to_string(), kind: day.kind.word(), hours: hours.collect() }
}

fn activity(advice: &ActivityAdvice) -> ActivityFacts {
    let phases = advice.phases.iter().map(|phase| AdviceFacts {
        verdict: phase.verdict.word(),
        ways: phase.ways.iter().map(ToString::to_string).collect(),
        over: phase.over.iter().map(|demand| demand.word()).collect(),
        too_heavy: phase.too_heavy,
        in_the_way: phase.in_the_way,
        waits: phase.waits.map(|gate| gate.word()),
    });
    ActivityFacts { id: advice.id.to_string(), phases: phases.collect() }
}

/// Rules the case used that are believed and still to be confirmed.
pub fn from_memory(library: &Library, verdicts: &[Verdict], plan: &Plan) -> Vec<String> {
    let mut list: Vec<String> = Vec::new();
    let lines = verdicts
        .iter()
        .flat_map(|verdict| &verdict.phases)
        .flat_map(|phase| phase.lines.iter().map(move |line| (phase, line)));
    for (phase, line) in lines.filter(|(_, line)| line.basis == Basis::FromMemory) {
        list.push(format!("phase `{}`: {}", phase.phase, line.wanted));
    }
    list.extend(plan.rules.iter().filter(|rule| rule.basis == Basis::FromMemory).map(|rule| rule.subject.clone()));
    for phase in &plan.phases {
        if phase.rules.activities.source == Basis::FromMemory {
            list.push(format!("activity limits of phase `{}`", phase.id));
        }
        if phase.rules.exercises.source == Basis::FromMemory {
            list.push(format!("exercise rules of phase `{}`", phase.id));
        }
    }
    for advice in &plan.activities {
        if library.activities.get(&advice.id).is_some_and(|activity| activity.source == Basis::FromMemory) {
            list.push(format!("demands of `{}`", advice.id));
        }
    }
    for exercise in plan.programmes.iter().flat_map(|programme| &programme.exercises) {
        if library.exercises.get(&exercise.id).is_some_and(|known| known.source == Basis::FromMemory) {
            list.push(format!("exercise `{}`", exercise.id));
        }
    }
    list.dedup();
    let mut once = Vec::new();
    for line in list {
        if !once.contains(&line) {
            once.push(line);
        }
    }
    once
}

/// The reasoning as text for a terminal.
pub fn text(case: &crate::case::Case<'_>, found: &[Verdict], plan: Option<&Plan>) -> String {
    let library = case.library;
    let mut out = String::new();
    let mut line = |text: String| {
        out.push_str(&crate::diag::render::visible(&text));
        out.push('\n');
    };
    let ids: Vec<&str> = case.conditions.iter().map(|treated| treated.id.as_str()).collect();
    line(format!("{} for {}, {} hand", case.file.orthosis.value, ids.join(" and "), case.file.hand));
    for treated in &case.conditions {
        line(format!("evidence: {}", treated.condition.evidence));
        for key in &treated.condition.evidence_from {
            line(format!("  {}", library.cite(&Basis::Published(key.clone()))));
        }
        if let Some(confidence) = &treated.condition.confidence {
            line(format!("confidence: {confidence}"));
        }
        if let Some((name, _)) = &treated.protocol {
            line(format!("protocol: {name}"));
        }
    }
    for (condition, phase) in found.iter().flat_map(|own| own.phases.iter().map(move |phase| (&own.condition, phase))) {
        line(String::new());
        line(format!("{condition}, phase {}: {}", phase.phase, phase.fit));
        for entry in &phase.lines {
            let joint = entry.joint.map_or_else(|| "orthosis".to_owned(), |joint| joint.to_string());
            line(format!("  {:<12} {:<7} {}; offered {}", joint, entry.result.word(), entry.wanted, entry.offered));
            line(format!("  {:<20} {} [{}]", "", entry.because, library.cite(&entry.basis)));
        }
    }
    let Some(plan) = plan else { return out };
    line(String::new());
    line("Plan".to_owned());
    for phase in &plan.phases {
        let end = if phase.until_review { " (until the review)" } else { "" };
        line(format!("  {} to {}{end}: {}, {}", phase.first, phase.last, phase.id, phase.wear.value));
    }
    for phase in &plan.later {
        line(format!("  after the review: {}, {} (decided by {})", phase.id, phase.wear, phase.decided_by));
    }
    for (phase, programme) in plan.phases.iter().zip(&plan.programmes) {
        for exercise in &programme.exercises {
            let dose = &exercise.dose;
            line(format!(
                "  {}: exercise {}, {} times, hold {}, {} times a day, orthosis {}",
                phase.id,
                exercise.id,
                dose.repetitions,
                dose.hold,
                dose.times_a_day,
                if exercise.worn { "on" } else { "off" }
            ));
        }
    }
    for advice in &plan.activities {
        for (phase, given) in plan.phases.iter().zip(&advice.phases) {
            let over: Vec<&str> = given.over.iter().map(|demand| demand.word()).collect();
            let ways: Vec<&str> = given.ways.iter().map(|way| way.as_str()).collect();
            line(format!(
                "  {}: {} {}; over: [{}]; ways: [{}]",
                phase.id,
                advice.id,
                given.verdict,
                over.join(", "),
                ways.join(", ")
            ));
        }
    }
    line(String::new());
    line("Rules".to_owned());
    for rule in &plan.rules {
        line(format!("  {}: {} [{}]", rule.subject, rule.value, library.cite(&rule.basis)));
        if let Some(because) = &rule.because {
            let instead = rule.instead_of.as_ref().map(|old| format!(" instead of {old}")).unwrap_or_default();
            let risk = if rule.risk_accepted { "; RISK ACCEPTED by the therapist" } else { "" };
            line(format!("    set by the therapist{instead}: {}{risk}", because.as_str()));
        }
    }
    let memory = from_memory(library, found, plan);
    if !memory.is_empty() {
        line(String::new());
        line("From memory, to be confirmed".to_owned());
        for entry in memory {
            line(format!("  {entry}"));
        }
    }
    out
}
