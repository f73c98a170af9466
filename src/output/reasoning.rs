//! The whole reasoning of a case as data: verdict, plan rules, overrides, sources. Text and JSON are two views of it.

use serde_json::{Value, json};

use crate::checks::{Verdict, VerdictLine};
use crate::content::{Basis, Library};
use crate::plan::{ActivityAdvice, Plan, RuleLine, WearState};

/// The verdicts as JSON: the phases of every condition.
pub fn verdicts(library: &Library, verdicts: &[Verdict]) -> Value {
    let line = |line: &VerdictLine| {
        json!({
            "joint": line.joint.map(|joint| joint.to_string()),
            "wanted": line.wanted,
            "offered": line.offered,
            "result": line.result.word(),
            "because": line.because,
            "structures": line.structures.iter().map(|id| library.structures.get(id).map_or(id.as_str(), |known| known.name.as_str())).collect::<Vec<_>>(),
            "source": library.cite(&line.basis),
        })
    };
    let phases =
        verdicts.iter().flat_map(|verdict| verdict.phases.iter().map(move |phase| (&verdict.condition, phase)));
    phases
        .map(|(condition, phase)| json!({"condition": condition.as_str(), "phase": phase.phase.as_str(), "fit": phase.fit.word(), "lines": phase.lines.iter().map(line).collect::<Vec<_>>()}))
        .collect()
}

/// The plan as JSON.
pub fn plan(library: &Library, plan: &Plan) -> Value {
    let rule = |rule: &RuleLine| {
        json!({
            "subject": rule.subject,
            "value": rule.value,
            "source": library.cite(&rule.basis),
            "instead-of": rule.instead_of,
            "because": rule.because.as_ref().map(|reason| reason.as_str()),
            "risk-accepted": rule.risk_accepted,
        })
    };
    let phases: Vec<Value> = plan
        .phases
        .iter()
        .zip(&plan.programmes)
        .map(|(phase, programme)| {
            let exercises: Vec<Value> = programme
                .exercises
                .iter()
                .map(|exercise| {
                    json!({
                        "id": exercise.id.as_str(),
                        "orthosis": if exercise.worn { "on" } else { "off" },
                        "repetitions": exercise.dose.repetitions.get(),
                        "hold": exercise.dose.hold.to_string(),
                        "times-a-day": exercise.dose.times_a_day.get(),
                        "up-to": exercise.dose.up_to.map(|most| most.get()),
                    })
                })
                .collect();
            json!({
                "phase": phase.id.as_str(),
                "first": phase.first.to_string(),
                "last": phase.last.to_string(),
                "wear": phase.wear.value.word(),
                "until-review": phase.until_review,
                "exercises": exercises,
            })
        })
        .collect();
    json!({
        "phases": phases,
        "later": plan.later.iter().map(|phase| json!({"phase": phase.id.as_str(), "wear": phase.wear.word(), "decided-by": phase.decided_by.word()})).collect::<Vec<_>>(),
        "break-in": {
            "pattern": plan.break_in.pattern.as_str(),
            "steps": plan.break_in.steps.iter().map(|step| format!("{} x {}", step.times, step.each)).collect::<Vec<_>>(),
        },
        "days": plan.days.iter().map(day).collect::<Vec<_>>(),
        "skin": {"mark-limit": plan.skin.mark_limit.value.to_string(), "checks-a-day": plan.skin.checks.get()},
        "activities": plan.activities.iter().map(activity).collect::<Vec<_>>(),
        "review": plan.review.to_string(),
        "rules": plan.rules.iter().map(rule).collect::<Vec<_>>(),
    })
}

fn day(day: &crate::plan::DayPlan) -> Value {
    let worn: Vec<String> = day
        .segments
        .iter()
        .filter(|segment| segment.state != WearState::Off)
        .map(|segment| {
            format!(
                "{:02}:{:02}-{:02}:{:02} {}",
                segment.span.from() / 60,
                segment.span.from() % 60,
                segment.span.to() / 60,
                segment.span.to() % 60,
                segment.state
            )
        })
        .collect();
    json!({"date": day.date.to_string(), "kind": day.kind.word(), "hours": worn})
}

fn activity(advice: &ActivityAdvice) -> Value {
    let phases: Vec<Value> = advice
        .phases
        .iter()
        .map(|phase| {
            json!({
                "verdict": phase.verdict.word(),
                "ways": phase.ways.iter().map(|way| way.as_str()).collect::<Vec<_>>(),
                "over": phase.over.iter().map(|demand| demand.word()).collect::<Vec<_>>(),
                "too-heavy": phase.too_heavy,
                "in-the-way": phase.in_the_way,
                "waits": phase.waits.map(|gate| gate.word()),
            })
        })
        .collect();
    json!({"id": advice.id.as_str(), "phases": phases})
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
