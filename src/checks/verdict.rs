//! Verdicts as data.

use crate::body::Joint;
use crate::content::Basis;
use crate::ids::{ConditionId, PhaseId, StructureId};
use crate::source::choice;

choice! {
    /// How an orthosis suits a condition, best first.
    pub enum Fit ("verdict") {
        Fits = "fits",
        FitsWithRemarks = "fits-with-remarks",
        DoesNotFit = "does-not-fit",
        Unsafe = "unsafe",
    }
}

choice! {
    /// How one line of the table came out, best first.
    pub enum Grade ("result of a line") {
        Met = "met",
        Remark = "remark",
        Misfit = "misfit",
        Unsafe = "unsafe",
    }
}

/// One line of the table: a joint, what is wanted, what is offered, and why it matters. English, for the clinician.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct VerdictLine {
    /// None for what concerns the orthosis as a whole.
    pub joint: Option<Joint>,
    pub wanted: String,
    pub offered: String,
    pub result: Grade,
    pub because: String,
    pub structures: Vec<StructureId>,
    pub basis: Basis,
}

/// The table of one phase.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PhaseVerdict {
    pub phase: PhaseId,
    pub fit: Fit,
    /// In the order of the joints, from the elbow to the fingertips.
    pub lines: Vec<VerdictLine>,
}

impl PhaseVerdict {
    pub fn new(phase: PhaseId, mut lines: Vec<VerdictLine>) -> Self {
        lines.sort_by_key(|line| (line.joint.is_none(), line.joint));
        let worst = lines.iter().map(|line| line.result).max().unwrap_or(Grade::Met);
        let fit = match worst {
            Grade::Met => Fit::Fits,
            Grade::Remark => Fit::FitsWithRemarks,
            Grade::Misfit => Fit::DoesNotFit,
            Grade::Unsafe => Fit::Unsafe,
        };
        Self { phase, fit, lines }
    }

    /// Every line that is not met, the worst first, whatever the joint.
    pub fn faults(&self) -> Vec<&VerdictLine> {
        let mut lines: Vec<_> = self.lines.iter().filter(|line| line.result > Grade::Met).collect();
        lines.sort_by_key(|line| std::cmp::Reverse(line.result));
        lines
    }

    /// How many lines came out so.
    pub fn count(&self, grade: Grade) -> usize {
        self.lines.iter().filter(|line| line.result == grade).count()
    }

    /// The lines that made the verdict what it is.
    pub fn deciding(&self) -> impl Iterator<Item = &VerdictLine> {
        let worst = self.lines.iter().map(|line| line.result).max().unwrap_or(Grade::Met);
        self.lines.iter().filter(move |line| line.result == worst && line.result > Grade::Met)
    }
}

/// The tables of all phases of a condition in which the orthosis is worn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Verdict {
    pub condition: ConditionId,
    pub phases: Vec<PhaseVerdict>,
}

impl Verdict {
    pub fn phase(&self, id: &PhaseId) -> Option<&PhaseVerdict> {
        self.phases.iter().find(|phase| phase.phase == *id)
    }
}
