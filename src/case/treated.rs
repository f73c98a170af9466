//! A condition as one case has it: the finger filled in, the surgeon's protocol applied.

use super::angles::set_angle;
use super::file::{Begun, CaseFile, JointAngle, Protocol};
use crate::body::{Joint, JointName, MotionRange, Stop};
use crate::content::{Begins, Condition, Orthosis, ProtocolNeeds, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{ConditionId, PhaseId};
use crate::source::{At, Place, SourceText, Span};
use crate::units::{Date, Degrees};

/// How far a protocol's angle may be missed when a piece is moulded. Common practice, no source.
const MOULDING: Degrees = Degrees::whole(5);

/// One condition of a case.
#[derive(Clone, Debug)]
pub struct Treated {
    pub id: ConditionId,
    /// Without the phases that were over on the day of the fitting.
    pub condition: Condition,
    /// The days on which phases began that waited for the therapist's word.
    pub begun: Vec<(PhaseId, Date)>,
    /// The surgeon's protocol, and the phases whose length it sets.
    pub protocol: Option<(String, Vec<PhaseId>)>,
}

impl Treated {
    /// The day a phase that waits for the therapist's word began.
    pub fn begun(&self, phase: &PhaseId) -> Option<Date> {
        self.begun.iter().find(|(id, _)| id == phase).map(|(_, on)| *on)
    }

    /// Whether any rule of it is about a joint.
    pub fn concerns(&self, joint: Joint) -> bool {
        self.condition.phases.iter().any(|phase| {
            phase.all_requirements().any(|requirement| requirement.joint.joints().contains(&joint))
                || phase
                    .never
                    .iter()
                    .flat_map(|never| &never.positions)
                    .any(|position| position.joint.joints().contains(&joint))
        })
    }
}

/// What the case says about a condition.
pub struct Asked<'f> {
    pub id: &'f At<ConditionId>,
    pub protocol: Option<&'f At<Protocol>>,
    pub begun: &'f [Begun],
    pub fitted: Date,
    /// Joints whose angle the case sets itself.
    pub angles: &'f [JointName],
    pub source: &'f SourceText,
}

impl Asked<'_> {
    fn error(&self, findings: &mut Findings, code: Code, span: &Span, message: String, help: String) {
        let place = Place { source: self.source.clone(), span: span.clone() };
        findings.push(Diagnostic::error(code, place, message).help(help));
    }
}

/// Applies the protocol to a condition and to the orthosis, and reports what it fails to say.
pub fn treat(asked: &Asked<'_>, mut condition: Condition, orthosis: &mut Orthosis, findings: &mut Findings) -> Treated {
    let mut protocol = None;
    match (condition.protocol.clone(), asked.protocol) {
        (Some(needs), Some(given)) => {
            lengths(asked, given, &needs, &mut condition, findings);
            angles(asked, given, &needs, &mut condition, orthosis, findings);
            let set = given.lengths.iter().map(|length| length.phase.value.clone()).collect();
            protocol = Some((given.name.as_str().to_owned(), set));
        }
        (Some(needs), None) => {
            let message = format!(
                "`{}` follows the surgeon's protocol, and the case does not name it: {}",
                asked.id.value,
                needs.because.trim_end_matches('.')
            );
            asked.error(findings, Code::CASE_PROTOCOL, &asked.id.span, message, template(&needs));
        }
        (None, Some(given)) => {
            let message = format!("no protocol rules `{}`; nothing would take up its numbers", asked.id.value);
            asked.error(
                findings,
                Code::CASE_PROTOCOL,
                &given.span,
                message,
                "use `overrides` with a reason".to_owned(),
            );
        }
        (None, None) => {}
    }
    begin_with_fitting(asked, &mut condition);
    Treated {
        id: asked.id.value.clone(),
        condition,
        begun: asked.begun.iter().map(|begun| (begun.phase.value.clone(), begun.on.value)).collect(),
        protocol,
    }
}

/// Phases that were over when this orthosis was fitted are no part of the case: it is judged by what follows.
fn begin_with_fitting(asked: &Asked<'_>, condition: &mut Condition) {
    let first = asked.begun.iter().find(|begun| begun.on.value == asked.fitted);
    let at = first.and_then(|begun| condition.phases.iter().position(|phase| phase.id == begun.phase.value));
    condition.phases.drain(..at.unwrap_or(0));
}

/// What to write into the case.
fn template(needs: &ProtocolNeeds) -> String {
    let lengths: Vec<String> =
        needs.lengths.iter().map(|length| format!("{{phase: {}, lasts: …}}", length.phase)).collect();
    let angles: Vec<String> = needs.angles.iter().map(|angle| format!("{{joint: {}, at: …}}", angle.joint)).collect();
    let mut text = "add `protocol: {name: …".to_owned();
    for (field, list) in [("lengths", lengths), ("angles", angles)] {
        if !list.is_empty() {
            text.push_str(&format!(", {field}: [{}]", list.join(", ")));
        }
    }
    text + "}`"
}

fn lengths(
    asked: &Asked<'_>,
    given: &At<Protocol>,
    needs: &ProtocolNeeds,
    condition: &mut Condition,
    findings: &mut Findings,
) {
    for length in &given.lengths {
        let Some(need) = needs.lengths.iter().find(|need| need.phase == length.phase.value) else {
            let known: Vec<&str> = needs.lengths.iter().map(|need| need.phase.as_str()).collect();
            let (message, help) = unknown("phase that a protocol sets", length.phase.as_str(), known);
            asked.error(findings, Code::ID_UNKNOWN, &length.phase.span, message, help);
            continue;
        };
        let days = length.lasts.value;
        if days < need.at_least || days > need.at_most {
            let message = format!(
                "{days} for phase `{}` is outside what protocols give ({} to {})",
                need.phase, need.at_least, need.at_most
            );
            let help = "check the figure; what the surgeon orders beyond it goes into `overrides` with a reason";
            asked.error(findings, Code::CASE_PROTOCOL, &length.lasts.span, message, help.to_owned());
        }
        for phase in condition.phases.iter_mut().filter(|phase| phase.id == need.phase) {
            phase.lasts = Some(days);
            phase.lasts_up_to = None;
        }
    }
    for need in &needs.lengths {
        if !given.lengths.iter().any(|length| length.phase.value == need.phase) {
            let message = format!("the protocol does not say how long phase `{}` lasts", need.phase);
            let help = format!("add `{{phase: {}, lasts: …}}` to its `lengths`", need.phase);
            asked.error(findings, Code::CASE_PROTOCOL, &given.span, message, help);
        }
    }
}

fn angles(
    asked: &Asked<'_>,
    given: &At<Protocol>,
    needs: &ProtocolNeeds,
    condition: &mut Condition,
    orthosis: &mut Orthosis,
    findings: &mut Findings,
) {
    for angle in &given.angles {
        let Some(need) = needs.angles.iter().find(|need| need.joint.is_within(angle.joint)) else {
            let known: Vec<String> = needs.angles.iter().map(|need| need.joint.to_string()).collect();
            let joint = angle.joint.to_string();
            let (message, help) = unknown("joint that the protocol sets", &joint, known.iter().map(String::as_str));
            asked.error(findings, Code::ID_UNKNOWN, &angle.span, message, help);
            continue;
        };
        let at = MotionRange::at(angle.at);
        if !need.within.is_empty() && !need.within.iter().any(|range| range.contains(at)) {
            let ranges: Vec<String> = need.within.iter().map(ToString::to_string).collect();
            let message =
                format!("{} at {} is outside what protocols give ({})", angle.joint, angle.at, ranges.join(", "));
            asked.error(findings, Code::CASE_PROTOCOL, &angle.span, message, "check the figure".to_owned());
            continue;
        }
        narrow(condition, &angle.value);
        // The piece is set as the protocol says, unless the case says what it was really set to.
        let wanted = angle.joint.joints();
        if !asked.angles.iter().any(|own| own.joints().iter().any(|joint| wanted.contains(joint))) {
            // A piece that cannot be set so is refused by the table of joints, with the reason.
            let _ = set_angle(orthosis, &angle.value);
        }
    }
    for need in &needs.angles {
        if !given.angles.iter().any(|angle| need.joint.is_within(angle.joint)) {
            let message = format!("the protocol does not say the angle of {}", need.joint);
            let help = format!("add `{{joint: {}, at: …}}` to its `angles`", need.joint);
            asked.error(findings, Code::CASE_PROTOCOL, &given.span, message, help);
        }
    }
}

/// What must be held at that joint is held at the protocol's angle.
fn narrow(condition: &mut Condition, angle: &JointAngle) {
    let axis = angle.at.axis();
    let around =
        MotionRange::between(axis, angle.at.angle().plus(MOULDING.reversed()), angle.at.angle().plus(MOULDING));
    for phase in condition.phases.iter_mut().filter(|phase| phase.begins == Begins::ByDate) {
        let ways = phase.one_of.iter_mut().flat_map(|one| &mut one.ways).flat_map(|way| &mut way.requires);
        for requirement in phase
            .requires
            .iter_mut()
            .chain(ways)
            .filter(|requirement| requirement.need.asks() && requirement.joint.is_within(angle.joint))
        {
            for range in requirement.within.iter_mut().filter(|range| range.axis() == axis) {
                *range = around;
            }
            for stop in requirement.stops.iter_mut().filter(|stop| stop.at.axis() == axis) {
                let slack = if stop.direction.is_positive() { MOULDING } else { MOULDING.reversed() };
                *stop = Stop { direction: stop.direction, at: angle.at.plus(slack) };
            }
        }
    }
}

/// Phases that have begun: each waits for the therapist's word, and they stand in order.
pub fn begun_in_order(
    file: &CaseFile,
    begun: &[Begun],
    condition: &Condition,
    source: &SourceText,
    findings: &mut Findings,
) {
    let place = |span: &Span| Place { source: source.clone(), span: span.clone() };
    let mut last = (None, file.fitted.value, &file.fitted.span);
    for begun in begun {
        let Some(index) = condition.phases.iter().position(|phase| phase.id == begun.phase.value) else {
            let names: Vec<&str> = condition.phases.iter().map(|phase| phase.id.as_str()).collect();
            let (message, help) = unknown("phase", begun.phase.as_str(), names);
            findings.push(Diagnostic::error(Code::ID_UNKNOWN, place(&begun.phase.span), message).help(help));
            continue;
        };
        if condition.phases[index].begins != Begins::AfterReview {
            findings.push(
                Diagnostic::error(
                    Code::CASE_ORDER,
                    place(&begun.phase.span),
                    format!("the phase `{}` begins by date and waits for nobody's word", begun.phase.value),
                )
                .help("take the line out, or change the length of the phase before it in `overrides`"),
            );
        }
        // A phase may begin with the fitting: a second orthosis, fitted for the phase it is meant for.
        let early = if last.0.is_none() { begun.on.value < last.1 } else { begun.on.value <= last.1 };
        if early || last.0.is_some_and(|before| index <= before) {
            findings.push(
                Diagnostic::error(
                    Code::CASE_ORDER,
                    place(&begun.on.span),
                    "this phase begins before the one before it",
                )
                .also(place(last.2), "the one before begins here")
                .help("give the phases in their order, each with a later date"),
            );
        }
        last = (Some(index), begun.on.value, &begun.on.span);
    }
}
