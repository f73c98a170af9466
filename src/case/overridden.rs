//! The overrides of a case held against its conditions and the content.

use super::file::CaseFile;
use super::overrides::Subject;
use super::resolve::Check;
use super::text::Reason;
use super::treated::Treated;
use crate::content::unknown;
use crate::diag::Code;
use crate::source::Span;

/// One changed value with its reason.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Overridden {
    pub subject: Subject,
    pub because: Reason,
    pub accept_risk: bool,
    pub span: Span,
}

impl Check<'_, '_> {
    pub fn overrides(&mut self, file: &CaseFile, conditions: &[Treated]) -> Vec<Overridden> {
        let mut all: Vec<Overridden> = Vec::new();
        for entry in &file.overrides {
            let phases: Vec<&str> = conditions
                .iter()
                .flat_map(|treated| &treated.condition.phases)
                .map(|phase| phase.id.as_str())
                .collect();
            if let Some(phase) = &entry.phase {
                match phases.iter().filter(|known| **known == phase.as_str()).count() {
                    0 if !phases.is_empty() => {
                        let (message, help) = unknown("phase", phase.as_str(), phases);
                        self.error(Code::ID_UNKNOWN, &phase.span, message, Some(help));
                    }
                    0 | 1 => {}
                    _ => self.error(
                        Code::CASE_OVERRIDE,
                        &phase.span,
                        format!("two conditions of this case have a phase `{}`", phase.value),
                        Some("make a case of each condition".to_owned()),
                    ),
                }
            }
            if let Some(pattern) = &entry.break_in
                && let Some(pattern_rule) = self.known("wear pattern", pattern, &self.library.patterns)
                && !pattern_rule.weaning.is_empty()
            {
                self.error(
                    Code::CASE_OVERRIDE,
                    &pattern.span,
                    format!("`{}` is a pattern of weaning, not of breaking in", pattern.value),
                    None,
                );
            }
            if let Some(exercise) = &entry.exercise {
                self.known("exercise", exercise, &self.library.exercises);
            }
            match entry.subjects() {
                Ok(subjects) => {
                    for subject in subjects {
                        if all.iter().any(|other| other.subject.describe() == subject.describe()) {
                            let message = format!("{} a second time", subject.describe());
                            self.error(
                                Code::CASE_REPEATED,
                                &entry.span,
                                message,
                                Some("keep one of the two".to_owned()),
                            );
                        }
                        all.push(Overridden {
                            subject,
                            because: entry.because.clone(),
                            accept_risk: entry.accept_risk,
                            span: entry.span.clone(),
                        });
                    }
                }
                Err(misread) => {
                    let help = misread.help();
                    self.error(Code::CASE_OVERRIDE, &entry.span, misread.wrong, help);
                }
            }
        }
        all
    }
}
