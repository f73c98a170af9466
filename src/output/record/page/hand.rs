//! What the page says of one hand.

use serde_json::{Value, json};

use super::super::{HandFacts, Record};
use super::{Clerk, Said, facts};
use crate::diag::Diagnostic;
use crate::document::{Arg, Message};
use crate::output::reasoning::{ActivityFacts, AdviceFacts, DayFacts, ExerciseFacts, LineFacts, PlanFacts, RuleFacts};

type Blocks = Result<Vec<Value>, Diagnostic>;

/// Publications, numbered in the order in which they are first named.
#[derive(Default)]
pub struct Sources {
    list: Vec<String>,
}

impl Sources {
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// Each with its number.
    pub fn list(&self) -> Vec<Value> {
        self.list.iter().enumerate().map(|(number, text)| json!([format!("[{}]", number + 1), text])).collect()
    }

    /// `[3]` for a publication; `common practice` and `from memory` stay words.
    fn cite(&mut self, source: &str) -> String {
        if ["common practice", "from memory"].iter().any(|plain| source.starts_with(plain)) {
            return source.to_owned();
        }
        let at = self.list.iter().position(|known| known == source).unwrap_or_else(|| {
            self.list.push(source.to_owned());
            self.list.len() - 1
        });
        format!("[{}]", at + 1)
    }
}

/// Everything but the questions.
pub fn reasoning(clerk: &Clerk<'_>, hand: &HandFacts, sources: &mut Sources) -> Blocks {
    let mut blocks = vec![side(clerk, 2, hand)?, what(clerk, hand, sources)?];
    blocks.push(clerk.heading(3, "record-overrides")?);
    blocks.push(overrides(clerk, &hand.plan.rules)?);
    blocks.push(clerk.heading(3, "record-verdict")?);
    for phase in &hand.verdict {
        let texts = [("condition", phase.condition.as_str()), ("phase", &phase.phase), ("fit", phase.fit)];
        blocks.push(json!({"t": "lead", "say": clerk.with("record-phase-fit", &texts)?}));
        let mut alike: Vec<Vec<&LineFacts>> = Vec::new();
        for line in &phase.lines {
            match alike.iter_mut().find(|lines| lines.first().is_some_and(|first| same(first, line))) {
                Some(lines) => lines.push(line),
                None => alike.push(vec![line]),
            }
        }
        let rows: Result<Vec<Value>, Diagnostic> =
            alike.iter().filter_map(|lines| row(clerk, lines, sources)).collect();
        let head = ["record-joint", "record-result", "record-wanted", "record-offered", "record-why", "record-source"];
        blocks.push(clerk.table(&head, &[5, 0, 8, 8, 14, 4], rows?)?);
    }
    blocks.extend(plan(clerk, &hand.plan)?);
    blocks.push(clerk.heading(3, "record-rules")?);
    let rules = hand.plan.rules.iter().map(|rule| json!([rule.subject, rule.value, sources.cite(&rule.source)]));
    let rules: Vec<Value> = rules.collect();
    blocks.push(clerk.table(&["record-rule", "record-value", "record-source"], &[2, 3, 0], rules)?);
    blocks.push(clerk.heading(3, "record-open")?);
    if hand.not_confirmed.is_empty() {
        blocks.push(clerk.paragraph("record-all-confirmed")?);
    } else {
        blocks.push(json!({"t": "list", "items": by_state(hand)}));
    }
    blocks.push(clerk.heading(3, "record-memory")?);
    blocks.push(clerk.list(&hand.from_memory, "record-no-memory")?);
    Ok(blocks)
}

/// One line for each state: the items in it.
fn by_state(hand: &HandFacts) -> Vec<String> {
    let mut states: Vec<&str> = hand.not_confirmed.values().copied().collect();
    states.sort_unstable();
    states.dedup();
    let of = |state: &str| {
        let items: Vec<&str> =
            hand.not_confirmed.iter().filter(|(_, own)| **own == state).map(|(item, _)| item.as_str()).collect();
        format!("{state}: {}", items.join(", "))
    };
    states.into_iter().map(of).collect()
}

fn side(clerk: &Clerk<'_>, level: u8, hand: &HandFacts) -> Said {
    let say = Message::new("record-hand").with("side", Arg::Keyword(hand.hand));
    Ok(json!({"t": "h", "level": level, "say": clerk.text(&say)?}))
}

fn what(clerk: &Clerk<'_>, hand: &HandFacts, sources: &mut Sources) -> Said {
    let mut rows: Vec<(&str, String)> = Vec::new();
    rows.extend(hand.finger.map(|finger| ("record-finger", finger.to_owned())));
    rows.push(("record-orthosis", hand.orthosis.clone()));
    rows.push(("record-systematic", hand.systematic_name.clone()));
    for condition in &hand.conditions {
        let mut lines = vec![
            condition.id.clone(),
            clerk.with("record-code", &[("system", "ICD-10-CM"), ("code", &condition.icd_10_cm)])?,
        ];
        if let Some(name) = &condition.protocol {
            lines.push(clerk.with("record-protocol", &[("name", name)])?);
        }
        let cited: Vec<String> = condition.evidence_from.iter().map(|source| sources.cite(source)).collect();
        let evidence = format!("{} {}", condition.evidence, cited.join(" "));
        lines.push(clerk.with("record-evidence", &[("evidence", evidence.trim())])?);
        if let Some(confidence) = &condition.confidence {
            lines.push(clerk.with("record-confidence", &[("confidence", confidence)])?);
        }
        rows.push(("record-condition", lines.join("\n")));
    }
    facts(clerk, &rows)
}

fn overrides(clerk: &Clerk<'_>, rules: &[RuleFacts]) -> Said {
    let set: Vec<&RuleFacts> = rules.iter().filter(|rule| rule.because.is_some()).collect();
    if set.is_empty() {
        return clerk.paragraph("record-no-overrides");
    }
    let mut rows = Vec::new();
    for rule in set {
        let risk = if rule.risk_accepted {
            json!({"mark": "unsafe", "say": clerk.plain("record-risk-accepted")?})
        } else {
            json!(clerk.plain("record-risk-none")?)
        };
        rows.push(json!([rule.subject, rule.value, rule.instead_of, rule.because, risk]));
    }
    let head = ["record-subject", "record-set", "record-instead", "record-because", "record-risk"];
    clerk.table(&head, &[3, 2, 2, 4, 2], rows)
}

/// Whether two joints are judged in the same words.
fn same(a: &LineFacts, b: &LineFacts) -> bool {
    let said = |line: &LineFacts| (line.joint.is_some(), line.result, line.wanted.clone(), line.offered.clone());
    said(a) == said(b) && (&a.because, &a.structures, &a.source) == (&b.because, &b.structures, &b.source)
}

/// The row of joints that are judged in the same words.
fn row(clerk: &Clerk<'_>, lines: &[&LineFacts], sources: &mut Sources) -> Option<Said> {
    let line = lines.first()?;
    let joints: Vec<&str> = lines.iter().filter_map(|line| line.joint.as_deref()).collect();
    let mut why = line.because.clone();
    if !line.structures.is_empty() {
        why = format!("{why} ({})", line.structures.join(", "));
    }
    let source = sources.cite(&line.source);
    let cells = || {
        let joints = if joints.is_empty() { clerk.plain("record-whole")? } else { joints.join(", ") };
        let mark = json!({"mark": line.result, "say": clerk.plain(&format!("record-mark-{}", line.result))?});
        Ok(json!([joints, mark, line.wanted, line.offered, why, source]))
    };
    Some(cells())
}

fn plan(clerk: &Clerk<'_>, plan: &PlanFacts) -> Blocks {
    let mut blocks = vec![clerk.heading(3, "record-plan")?];
    let mut rows = Vec::new();
    for phase in &plan.phases {
        let mut dates = format!("{} to {}", phase.first, phase.last);
        if phase.until_review {
            dates = format!("{dates}, {}", clerk.plain("record-until-review")?);
        }
        let exercises: Result<Vec<String>, Diagnostic> =
            phase.exercises.iter().map(|one| exercise(clerk, one)).collect();
        rows.push(json!([phase.phase, dates, phase.wear, exercises?.join("\n")]));
    }
    for phase in &plan.later {
        rows.push(json!([phase.phase, clerk.with("record-later", &[("who", phase.decided_by)])?, phase.wear, ""]));
    }
    blocks.push(clerk.table(
        &["record-phase", "record-dates", "record-wear", "record-exercises"],
        &[0, 2, 2, 5],
        rows,
    )?);
    let steps =
        if plan.break_in.steps.is_empty() { clerk.plain("record-at-once")? } else { plan.break_in.steps.join(", ") };
    let checks = plan.skin.checks_a_day.to_string();
    let skin = [("limit", plan.skin.mark_limit.as_str()), ("checks", checks.as_str())];
    blocks.push(facts(
        clerk,
        &[
            ("record-break-in", format!("{}: {steps}", plan.break_in.pattern)),
            ("record-skin", clerk.with("record-skin-is", &skin)?),
        ],
    )?);
    blocks.push(clerk.heading(3, "record-days")?);
    blocks.push(clerk.table(&["record-dates", "record-kind", "record-hours"], &[2, 1, 5], days(clerk, &plan.days)?)?);
    if !plan.activities.is_empty() {
        blocks.push(clerk.heading(3, "record-jobs")?);
        let rows: Result<Vec<Value>, Diagnostic> =
            plan.activities.iter().map(|job| activity(clerk, job, plan)).collect();
        blocks.push(clerk.table(&["record-job", "record-value"], &[1, 4], rows?)?);
    }
    Ok(blocks)
}

fn exercise(clerk: &Clerk<'_>, one: &ExerciseFacts) -> Result<String, Diagnostic> {
    let number = |count: u8| count.to_string();
    let texts = [
        ("id", one.id.as_str()),
        ("place", one.orthosis),
        ("repetitions", &number(one.repetitions)),
        ("hold", &one.hold),
        ("times", &number(one.times_a_day)),
    ];
    let said = clerk.with("record-exercise", &texts)?;
    match one.up_to {
        Some(most) => clerk.with("record-exercise-up-to", &[("exercise", &said), ("most", &number(most))]),
        None => Ok(said),
    }
}

/// Days that are alike in one row.
fn days(clerk: &Clerk<'_>, days: &[DayFacts]) -> Result<Vec<Value>, Diagnostic> {
    let off = clerk.plain("record-all-off")?;
    let alike = |a: &DayFacts, b: &DayFacts| a.kind == b.kind && a.hours == b.hours;
    Ok(days
        .chunk_by(alike)
        .filter_map(|same| Some((same.first()?, same.last()?)))
        .map(|(first, last)| {
            let dates =
                if first.date == last.date { first.date.clone() } else { format!("{} to {}", first.date, last.date) };
            json!([dates, first.kind, if first.hours.is_empty() { off.clone() } else { first.hours.join(", ") }])
        })
        .collect())
}

fn activity(clerk: &Clerk<'_>, job: &ActivityFacts, plan: &PlanFacts) -> Said {
    let lines: Result<Vec<String>, Diagnostic> = plan
        .phases
        .iter()
        .zip(&job.phases)
        .map(|(phase, advice)| Ok(format!("{}: {}", phase.phase, advised(clerk, advice)?)))
        .collect();
    Ok(json!([job.id, lines?.join("\n")]))
}

fn advised(clerk: &Clerk<'_>, advice: &AdviceFacts) -> Result<String, Diagnostic> {
    let mut parts = vec![advice.verdict.to_owned()];
    if !advice.ways.is_empty() {
        parts.push(clerk.with("record-ways", &[("ways", &advice.ways.join(", "))])?);
    }
    if !advice.over.is_empty() {
        parts.push(clerk.with("record-over", &[("over", &advice.over.join(", "))])?);
    }
    if advice.too_heavy {
        parts.push(clerk.plain("record-heavy")?);
    }
    if advice.in_the_way {
        parts.push(clerk.plain("record-in-the-way")?);
    }
    if let Some(gate) = advice.waits {
        parts.push(clerk.with("record-waits", &[("gate", gate)])?);
    }
    Ok(parts.join("; "))
}

/// The questions, worst first.
pub fn teach_back(clerk: &Clerk<'_>, record: &Record, hand: &HandFacts, same: bool) -> Blocks {
    let mut blocks = Vec::new();
    if record.hands.len() > 1 {
        blocks.push(side(clerk, 3, hand)?);
    }
    let mut rows = Vec::new();
    for question in &hand.teach_back {
        rows.push(json!({
            "goal": clerk.plain(&format!("record-teach-{}", question.topic))?,
            "ask": question.ask,
            "asked": if same { None } else { Some(&question.asked) },
            "points": question.points,
        }));
    }
    blocks.push(json!({"t": "asks", "head": clerk.all(&["record-ask", "record-tick"])?, "rows": rows}));
    Ok(blocks)
}
