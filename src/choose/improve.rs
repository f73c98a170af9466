//! What would make an orthosis better for a phase.

use crate::checks::{PhaseVerdict, Question, in_force};
use crate::content::{Hold, Need, Phase, Wanted};

/// Changes, one for each fault, first the faults that weigh most.
pub fn suggestions(verdict: &PhaseVerdict, phase: &Phase, question: Question<'_>) -> Vec<String> {
    let requirements = in_force(question, phase);
    let ways = phase.one_of.iter().flat_map(|one| &one.ways).flat_map(|way| &way.requires);
    let all: Vec<_> = requirements.into_iter().chain(ways).collect();
    let mut out: Vec<String> = Vec::new();
    for line in verdict.faults() {
        let Some(joint) = line.joint else {
            out.push(format!("choose another piece: {}", line.wanted));
            continue;
        };
        let hold = question.orthosis.hold_of(joint);
        let requirement = all
            .iter()
            .find(|requirement| requirement.joint.joints().contains(&joint) && line.because == requirement.because);
        let text = match requirement.map(|requirement| (requirement.need, requirement.hold, *requirement)) {
            Some((Need::MustBeFree | Need::ShouldBeFree, ..)) => format!("leave {joint} free"),
            Some((_, Some(Wanted::Stopped), requirement)) => {
                let stops: Vec<String> = requirement.stops.iter().map(ToString::to_string).collect();
                format!("add a block at {joint}: {}", stops.join(", "))
            }
            Some((_, Some(wanted), requirement)) => {
                let within: Vec<String> = requirement.within.iter().map(ToString::to_string).collect();
                let range = if within.is_empty() { String::new() } else { format!(" within {}", within.join(", ")) };
                match (hold, wanted) {
                    (Hold::Immobilised { .. } | Hold::Limited(_), Wanted::Still | Wanted::Steady) => {
                        format!("set {joint}{range}")
                    }
                    (_, wanted) => format!("hold {joint} {wanted}{range}"),
                }
            }
            Some((_, None, _)) | None if line.wanted.starts_with("must be impossible") => {
                format!("stop what is still possible: {}", line.wanted.trim_start_matches("must be impossible: "))
            }
            Some((_, None, _)) | None => format!("leave {joint} free, or say why it is held"),
        };
        if !out.contains(&text) {
            out.push(text);
        }
    }
    out
}
