//! `palmleaf choose`.

use serde_json::{Value, json};

use super::Ended;
use super::args::ChooseArgs;
use super::check::{refused, workshop};
use super::teach::{Teacher, chart_page};
use super::terminal::Terminal;
use crate::body::{Finger, norms};
use crate::case::Paper;
use crate::checks::Fit;
use crate::choose::{Ask, Ranked, SetAngle, Suits, conditions_for, contradiction, rank};
use crate::classify;
use crate::content::{Condition, Factor, Library, Measured, NeedRule, Phase, Regime, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{ConditionId, FactorId, NeedId, OrthosisId};
use crate::output::store;
use crate::pipeline::Workshop;
use crate::study;
use crate::units::Misread;

pub fn run(args: &ChooseArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop(&args.overlay, terminal) {
        Ok(workshop) => workshop,
        Err(ended) => return ended,
    };
    let done = match &args.orthosis {
        Some(orthosis) => reverse(&workshop.library, orthosis, args, terminal),
        None => forward(&workshop, args, terminal),
    };
    match done {
        Ok(()) => Ended::Well,
        Err(findings) => refused(&findings, terminal),
    }
}

/// A question as it was asked, held against the content.
struct Asked<'a> {
    id: ConditionId,
    condition: Condition,
    finger: Option<Finger>,
    findings: Vec<Measured>,
    factors: Vec<(FactorId, &'a Factor)>,
    needs: Vec<(NeedId, &'a NeedRule)>,
}

fn forward(workshop: &Workshop, args: &ChooseArgs, terminal: &Terminal) -> Result<(), Findings> {
    let asked = asked(&workshop.library, args)?;
    let phase = phase(&asked, args)?;
    let ask =
        Ask { phase, finger: asked.finger, findings: &asked.findings, factors: &asked.factors, needs: &asked.needs };
    if phase.wear == Regime::Off {
        let message = format!("no orthosis is worn in phase `{}` of `{}`", phase.id, asked.id);
        let worn = asked.condition.phases.iter().filter(|phase| phase.wear != Regime::Off);
        let names: Vec<String> = worn.map(|phase| format!("`{}`", phase.id)).collect();
        let mut findings = Findings::default();
        findings.push(
            Diagnostic::outside(Code::CHOOSE_ASK, message).help(format!("ask for another phase: {}", names.join(", "))),
        );
        return Err(findings);
    }
    let ranked = rank(&workshop.library, ask);
    let fitting = ranked.iter().filter(|one| one.order.safety == Fit::Fits).count();
    let shown = if args.all { ranked.len() } else { fitting.clamp(3, 8).min(ranked.len()) };
    if let Some(path) = &args.chart {
        let teacher = Teacher::new(workshop)?;
        let chart = study::of_ranking(phase, &ranked[..shown]);
        let title = teacher.condition(&asked.id)?;
        let page = chart_page(&teacher, &chart, &title, &[about(&asked, phase)], Paper::A4)?;
        let page = workshop.chart(page)?.undated_pdf()?;
        store::write_one(path, page)?;
    }
    if terminal.is_json() {
        let rows: Vec<Value> = ranked.iter().enumerate().map(|(place, one)| row(place, one)).collect();
        terminal.say_json(&json!({"condition": asked.id.as_str(), "phase": phase.id.as_str(), "orthoses": rows}));
        return Ok(());
    }
    terminal.say(&about(&asked, phase));
    if let Some(protocol) = &asked.condition.protocol {
        terminal.say(&format!("the surgeon's protocol rules here: {}", protocol.because));
    }
    for (place, one) in ranked.iter().take(shown).enumerate() {
        terminal.say(&text(place, one));
    }
    let count = |fit: Fit| ranked.iter().skip(shown).filter(|one| one.order.safety == fit).count();
    let (fit, misfit, dangerous) = (count(Fit::Fits), count(Fit::DoesNotFit), count(Fit::Unsafe));
    if fit + misfit + dangerous > 0 {
        terminal
            .say(&format!("and {fit} more that fit, {misfit} that do not, {dangerous} that are unsafe (see `--all`)"));
    }
    Ok(())
}

fn about(asked: &Asked<'_>, phase: &Phase) -> String {
    let mut parts = vec![format!("{}, phase {} ({})", asked.id, phase.id, phase.wear)];
    parts.extend(asked.finger.map(|finger| format!("{finger} finger")));
    let measured = |finding: &Measured| format!("{} {} {}", finding.joint, finding.motion, finding.angle);
    parts.extend(asked.findings.iter().map(measured));
    parts.extend(asked.needs.iter().map(|(_, need)| need.name.clone()));
    parts.extend(asked.factors.iter().map(|(id, _)| id.to_string()));
    parts.join("; ")
}

fn angles(set: &[SetAngle]) -> Vec<String> {
    set.iter().map(ToString::to_string).collect()
}

fn text(place: usize, one: &Ranked) -> String {
    let mut out = format!("\n{:>2}  {}  {}\n      {}", place + 1, one.id, one.verdict.fit, one.name);
    if !one.set.is_empty() {
        out.push_str(&format!("\n      when set: {}", angles(&one.set).join(", ")));
    }
    for why in &one.why {
        out.push_str(&format!("\n      - {why}"));
    }
    for better in &one.better {
        out.push_str(&format!("\n      + better: {better}"));
    }
    out
}

fn row(place: usize, one: &Ranked) -> Value {
    json!({
        "place": place + 1,
        "id": one.id.as_str(),
        "fit": one.verdict.fit.word(),
        "name": one.name.to_string(),
        "set": angles(&one.set),
        "why": one.why,
        "better": one.better,
        "needs": one.needs.iter().map(|need| json!({"id": need.id.as_str(), "met": need.met, "against": need.against})).collect::<Vec<_>>(),
        "remarks": one.order.remarks,
        "bulk": one.order.bulk,
    })
}

fn reverse(library: &Library, id: &str, args: &ChooseArgs, terminal: &Terminal) -> Result<(), Findings> {
    let mut findings = Findings::default();
    let finger = finger(args, &mut findings);
    let id = known::<OrthosisId, _>("orthosis", id, &library.orthoses, &mut findings);
    let Some((id, orthosis)) = id.filter(|_| !findings.has_errors()) else { return Err(findings) };
    let all = conditions_for(library, orthosis, finger);
    let name = classify::name(orthosis, finger).to_string();
    if terminal.is_json() {
        let rows: Vec<Value> = all.iter().map(suits).collect();
        terminal.say_json(&json!({"orthosis": id.as_str(), "name": name, "conditions": rows}));
        return Ok(());
    }
    terminal.say(&format!("{id}: {name}"));
    for one in &all {
        let protocol = if one.protocol { ", only as the surgeon's protocol says" } else { "" };
        let set = angles(&one.set).join(", ");
        let set = if set.is_empty() { set } else { format!(", set: {set}") };
        terminal.say(&format!("{}  {}, phase {}{set}{protocol}", one.verdict.fit, one.condition, one.phase));
        for line in one.verdict.deciding() {
            let joint = line.joint.map_or_else(|| "whole".to_owned(), |joint| joint.to_string());
            terminal.say(&format!("      {joint} {}, but {}: {}", line.wanted, line.offered, line.because));
        }
    }
    Ok(())
}

fn suits(one: &Suits) -> Value {
    let why: Vec<Value> = one
        .verdict
        .deciding()
        .map(|line| json!({"joint": line.joint.map(|joint| joint.to_string()), "wanted": line.wanted, "offered": line.offered, "because": line.because}))
        .collect();
    json!({
        "condition": one.condition.as_str(),
        "phase": one.phase.as_str(),
        "fit": one.verdict.fit.word(),
        "set": angles(&one.set),
        "protocol": one.protocol,
        "why": why,
    })
}

fn ask(misread: Misread) -> Diagnostic {
    let help = misread.help();
    let mut diagnostic = Diagnostic::outside(Code::CHOOSE_ASK, misread.wrong);
    diagnostic.help = help;
    diagnostic
}

fn known<'a, I, T>(
    what: &str,
    text: &str,
    map: &'a std::collections::BTreeMap<I, T>,
    findings: &mut Findings,
) -> Option<(I, &'a T)>
where
    I: Ord + Clone + std::fmt::Display + std::str::FromStr<Err = Misread>,
{
    let found = text.parse::<I>().ok().and_then(|id| map.get(&id).map(|value| (id, value)));
    if found.is_none() {
        let names: Vec<String> = map.keys().map(ToString::to_string).collect();
        let (message, help) = unknown(what, text, names.iter().map(String::as_str));
        findings.push(Diagnostic::outside(Code::ID_UNKNOWN, message).help(help));
    }
    found
}

fn finger(args: &ChooseArgs, findings: &mut Findings) -> Option<Finger> {
    let text = args.finger.as_ref()?;
    text.parse().map_err(|misread| findings.push(ask(misread))).ok()
}

fn asked<'a>(library: &'a Library, args: &ChooseArgs) -> Result<Asked<'a>, Findings> {
    let mut findings = Findings::default();
    let finger = finger(args, &mut findings);
    let condition = known::<ConditionId, _>(
        "condition",
        args.condition.as_deref().unwrap_or_default(),
        &library.conditions,
        &mut findings,
    );
    let mut factors = Vec::new();
    for text in &args.factor {
        factors.extend(known::<FactorId, _>("factor", text, &library.factors, &mut findings));
    }
    let mut needs = Vec::new();
    for text in &args.need {
        needs.extend(known::<NeedId, _>("need", text, &library.needs, &mut findings));
    }
    if let Some((one, other, why)) = contradiction(&needs) {
        let place = Diagnostic::outside(
            Code::CHOOSE_ASK,
            format!("the needs `{one}` and `{other}` contradict each other: {why}"),
        );
        let cited = |id: &NeedId| library.needs.get(id).map(|need| library.cite(&need.source)).unwrap_or_default();
        findings.push(
            place
                .note(format!("`{one}` rests on {}, `{other}` on {}", cited(&one), cited(&other)))
                .help("keep the one that matters more"),
        );
    }
    let measured =
        args.finding.iter().filter_map(|text| measured(text).map_err(|misread| findings.push(ask(misread))).ok());
    let measured: Vec<Measured> = measured.collect();
    if let Some((id, condition)) = &condition
        && condition.needs_finger()
        && args.finger.is_none()
    {
        let message = format!("`{id}` is about one finger");
        findings.push(
            Diagnostic::outside(Code::CASE_FINGER, message).help("add `--finger index`, `middle`, `ring` or `little`"),
        );
    }
    match condition {
        Some((id, condition)) if !findings.has_errors() => {
            let condition = finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
            Ok(Asked { id, condition, finger, findings: measured, factors, needs })
        }
        _ => Err(findings),
    }
}

fn phase<'p>(asked: &'p Asked<'_>, args: &ChooseArgs) -> Result<&'p Phase, Findings> {
    let phases = &asked.condition.phases;
    let found = match &args.phase {
        None => phases.first(),
        Some(wanted) => phases.iter().find(|phase| phase.id.as_str() == wanted),
    };
    found.ok_or_else(|| {
        let names: Vec<&str> = phases.iter().map(|phase| phase.id.as_str()).collect();
        let (message, help) = unknown("phase", args.phase.as_deref().unwrap_or_default(), names);
        Diagnostic::outside(Code::ID_UNKNOWN, message).help(help).into()
    })
}

/// "thumb-mcp extension 25 deg".
fn measured(text: &str) -> Result<Measured, Misread> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let shape =
        || Misread::new(format!("`{text}` is no finding"), "joint, direction and angle: `thumb-mcp extension 25 deg`");
    let [joint, motion, angle @ ..] = words.as_slice() else { return Err(shape()) };
    let angle = angle.join(" ");
    let finding = Measured { joint: joint.parse()?, motion: motion.parse()?, angle: angle.parse()? };
    norms::check(finding.joint, finding.motion, finding.angle)?;
    Ok(finding)
}
