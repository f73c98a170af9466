//! A case held against the content: ids exist, dates are in order, findings are possible.

use std::collections::BTreeSet;

use super::file::{CaseFile, Clinic, DayTimes, Paper, PrintSize};
use super::overrides::Subject;
use super::text::{Reason, Text};
use crate::body::norms;
use crate::content::{Begins, Condition, Factor, Hold, Library, Measured, Orthosis, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{FactorId, PhaseId};
use crate::language::{Language, Languages};
use crate::source::{At, Place, SourceText, Span};
use crate::units::{Date, TimeOfDay};

/// A case whose every id leads to content.
#[derive(Clone, Debug)]
pub struct Case<'a> {
    pub file: CaseFile,
    pub source: SourceText,
    pub library: &'a Library,
    pub condition: &'a Condition,
    /// The orthosis as it was set for this person.
    pub orthosis: Orthosis,
    pub language: Language,
    pub factors: Vec<(FactorId, &'a Factor)>,
    pub overrides: Vec<Overridden>,
}

/// One changed value with its reason.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Overridden {
    pub subject: Subject,
    pub because: Reason,
    pub accept_risk: bool,
    pub span: Span,
}

impl Case<'_> {
    pub fn day(&self) -> DayTimes {
        self.file
            .day
            .as_ref()
            .map_or(DayTimes { up: TimeOfDay::from_minutes(7 * 60), bed: TimeOfDay::from_minutes(23 * 60) }, |day| {
                day.value.clone()
            })
    }

    pub fn fitted_at(&self) -> TimeOfDay {
        self.file.fitted_at.unwrap_or(TimeOfDay::from_minutes(12 * 60))
    }

    pub fn print(&self) -> PrintSize {
        self.file.print.unwrap_or(PrintSize::Standard)
    }

    pub fn paper(&self) -> Paper {
        self.file.paper.unwrap_or(Paper::A4)
    }

    /// One of the clinic's lines, when the case has it.
    pub fn clinic(&self, line: fn(&Clinic) -> Option<&Text>) -> Option<String> {
        self.file.clinic.as_ref().and_then(line).map(|text| text.as_str().to_owned())
    }

    /// What was measured.
    pub fn measured(&self) -> Vec<Measured> {
        let finding = |at: &At<super::file::Finding>| Measured { joint: at.joint, motion: at.motion, angle: at.angle };
        self.file.findings.iter().map(finding).collect()
    }

    pub fn place(&self, span: &Span) -> Place {
        Place { source: self.source.clone(), span: span.clone() }
    }

    /// The day a phase that waits for the therapist's word began.
    pub fn begun(&self, phase: &PhaseId) -> Option<Date> {
        self.file.begun.iter().find(|begun| begun.phase.value == *phase).map(|begun| begun.on.value)
    }
}

/// Holds a case against the content and the languages.
///
/// # Errors
/// All faults at once.
pub fn resolve<'a>(
    file: CaseFile,
    source: SourceText,
    library: &'a Library,
    languages: &Languages,
) -> Result<Case<'a>, Findings> {
    let mut check = Check { source: &source, library, findings: Findings::default() };
    let condition = check.known("condition", &file.condition, &library.conditions);
    let orthosis = check.known("orthosis", &file.orthosis, &library.orthoses);
    for activity in &file.activities {
        check.known("activity", activity, &library.activities);
    }
    check.repeated("activity", &file.activities);
    check.repeated("factor", &file.factors);
    let factors = file
        .factors
        .iter()
        .filter_map(|id| check.known("factor", id, &library.factors).map(|factor| (id.value.clone(), factor)))
        .collect();
    let language = languages.find(&file.language);
    if language.is_none() {
        let (message, help) = unknown("language", file.language.as_str(), languages.tags());
        check.error(Code::ID_UNKNOWN, &file.language.span, message, Some(help));
    }
    check.dates(&file);
    check.day(&file);
    check.findings_possible(&file);
    if let Some(condition) = condition {
        check.begun(&file, condition);
    }
    let orthosis = orthosis.map(|orthosis| check.set_angles(&file, orthosis));
    let overrides = check.overrides(&file, condition);
    let findings = check.findings;
    match (condition, orthosis, language) {
        (Some(condition), Some(orthosis), Some(language)) if !findings.has_errors() => {
            Ok(Case { file, source, library, condition, orthosis, language, factors, overrides })
        }
        _ => Err(findings),
    }
}

struct Check<'s, 'a> {
    source: &'s SourceText,
    library: &'a Library,
    findings: Findings,
}

impl<'a> Check<'_, 'a> {
    fn place(&self, span: &Span) -> Place {
        Place { source: self.source.clone(), span: span.clone() }
    }

    fn error(&mut self, code: Code, span: &Span, message: impl Into<String>, help: Option<String>) {
        let mut diagnostic = Diagnostic::error(code, self.place(span), message);
        diagnostic.help = help;
        self.findings.push(diagnostic);
    }

    fn known<I: Ord + std::fmt::Display, T>(
        &mut self,
        what: &str,
        id: &At<I>,
        map: &'a std::collections::BTreeMap<I, T>,
    ) -> Option<&'a T> {
        let found = map.get(&id.value);
        if found.is_none() {
            let known: Vec<String> = map.keys().map(ToString::to_string).collect();
            let (message, help) = unknown(what, &id.value.to_string(), known.iter().map(String::as_str));
            self.error(Code::ID_UNKNOWN, &id.span, message, Some(help));
        }
        found
    }

    fn repeated<I: Ord + std::fmt::Display>(&mut self, what: &str, ids: &[At<I>]) {
        let mut seen = BTreeSet::new();
        for id in ids {
            if !seen.insert(&id.value) {
                let message = format!("the {what} `{}` stands here a second time", id.value);
                self.error(Code::CASE_REPEATED, &id.span, message, Some("take one of the two out".to_owned()));
            }
        }
    }

    fn dates(&mut self, file: &CaseFile) {
        let (fitted, review) = (&file.fitted, &file.review);
        let days = review.days_since(fitted.value);
        let fault = if days < 0 {
            Some(format!("the review is {} before the fitting", days_in_words(-days)))
        } else if days == 0 {
            Some("the review is on the day of the fitting".to_owned())
        } else if days > 732 {
            Some(format!("the review is {} after the fitting, more than two years", days_in_words(days)))
        } else {
            None
        };
        if let Some(fault) = fault {
            let help = if days <= 0 {
                format!("give a review date after {}", fitted.value)
            } else {
                format!("give a review date before {}", fitted.value.offset(733))
            };
            self.findings.push(
                Diagnostic::error(Code::CASE_ORDER, self.place(&review.span), fault)
                    .label("reviewed on this day")
                    .also(self.place(&fitted.span), "fitted on this day")
                    .help(help),
            );
        }
    }

    fn day(&mut self, file: &CaseFile) {
        let Some(day) = &file.day else { return };
        let asleep = day.bed.until(day.up);
        if !(180..=960).contains(&asleep) {
            self.error(
                Code::CASE_ORDER,
                &day.span,
                format!(
                    "from bed at {} to up at {} is a night of {} h {} min",
                    day.bed,
                    day.up,
                    asleep / 60,
                    asleep % 60
                ),
                Some(
                    "give times that leave between 3 and 16 hours of sleep, such as `{up: \"07:00\", bed: \"23:00\"}`"
                        .to_owned(),
                ),
            );
        }
    }

    fn findings_possible(&mut self, file: &CaseFile) {
        for finding in &file.findings {
            match norms::most_possible(finding.joint, finding.motion) {
                None => self.error(
                    Code::CASE_FINDING,
                    &finding.span,
                    format!("the joint {} does not move in {}", finding.joint, finding.motion),
                    Some(format!("use one of: {}", directions_of(finding.joint))),
                ),
                Some(most) if finding.angle > most => self.error(
                    Code::CASE_FINDING,
                    &finding.span,
                    format!("{} of {} at {} is more than any joint does", finding.motion, finding.angle, finding.joint),
                    Some(format!("give at most `{most}`")),
                ),
                Some(_) => {}
            }
        }
        let mut seen = BTreeSet::new();
        for finding in &file.findings {
            if !seen.insert((finding.joint, finding.motion)) {
                self.error(
                    Code::CASE_REPEATED,
                    &finding.span,
                    format!("{} at {} is measured twice", finding.motion, finding.joint),
                    Some("keep the figure measured in a pinch".to_owned()),
                );
            }
        }
    }

    fn begun(&mut self, file: &CaseFile, condition: &Condition) {
        let mut last = (None, file.fitted.value, &file.fitted.span);
        for begun in &file.begun {
            let Some(index) = condition.phases.iter().position(|phase| phase.id == begun.phase.value) else {
                let names: Vec<&str> = condition.phases.iter().map(|phase| phase.id.as_str()).collect();
                let (message, help) = unknown("phase", begun.phase.as_str(), names);
                self.error(Code::ID_UNKNOWN, &begun.phase.span, message, Some(help));
                continue;
            };
            if condition.phases[index].begins != Begins::AfterReview {
                self.error(
                    Code::CASE_ORDER,
                    &begun.phase.span,
                    format!("the phase `{}` begins by date and waits for nobody's word", begun.phase.value),
                    Some("take the line out, or change the length of the phase before it in `overrides`".to_owned()),
                );
            }
            if begun.on.value <= last.1 || last.0.is_some_and(|before| index <= before) {
                self.findings.push(
                    Diagnostic::error(
                        Code::CASE_ORDER,
                        self.place(&begun.on.span),
                        "this phase begins before the one before it",
                    )
                    .also(self.place(last.2), "the one before begins here")
                    .help("give the phases in their order, each with a later date"),
                );
            }
            last = (Some(index), begun.on.value, &begun.on.span);
        }
    }

    fn set_angles(&mut self, file: &CaseFile, orthosis: &Orthosis) -> Orthosis {
        let mut set = orthosis.clone();
        for angle in &file.angles {
            let name = set.joints.keys().copied().find(|name| name.joints().contains(&angle.joint));
            let range = crate::body::MotionRange::at(angle.at);
            let (fault, help) = match name.and_then(|name| set.joints.get_mut(&name)) {
                Some(Hold::Immobilised { at, adjustable }) => {
                    match adjustable.iter().find(|can| can.axis() == angle.at.axis()) {
                        Some(can) if can.contains(range) => {
                            at.retain(|old| old.axis() != range.axis());
                            at.push(range);
                            continue;
                        }
                        Some(can) => (
                            format!("{} cannot be set to {} in this orthosis", angle.joint, angle.at),
                            format!("give an angle within {can}"),
                        ),
                        None => (
                            format!("this orthosis sets no {} at {}", angle.at.axis(), angle.joint),
                            "take the line out".to_owned(),
                        ),
                    }
                }
                _ => {
                    (format!("this orthosis does not hold {} at an angle", angle.joint), "take the line out".to_owned())
                }
            };
            self.error(Code::CASE_ANGLE, &angle.span, fault, Some(help));
        }
        set
    }

    fn overrides(&mut self, file: &CaseFile, condition: Option<&Condition>) -> Vec<Overridden> {
        let mut all: Vec<Overridden> = Vec::new();
        for entry in &file.overrides {
            if let (Some(phase), Some(condition)) = (&entry.phase, condition)
                && !condition.phases.iter().any(|known| known.id == phase.value)
            {
                let names: Vec<&str> = condition.phases.iter().map(|phase| phase.id.as_str()).collect();
                let (message, help) = unknown("phase", phase.as_str(), names);
                self.error(Code::ID_UNKNOWN, &phase.span, message, Some(help));
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
                    let help = misread.write.map(|write| format!("write {write}"));
                    self.error(Code::CASE_OVERRIDE, &entry.span, misread.wrong, help);
                }
            }
        }
        all
    }
}

fn days_in_words(days: i32) -> String {
    if days == 1 { "1 day".to_owned() } else { format!("{days} days") }
}

fn directions_of(joint: crate::body::Joint) -> String {
    use crate::body::Direction;
    let names: Vec<&str> = Direction::ALL
        .iter()
        .filter(|direction| norms::range(joint, direction.axis()).is_some())
        .map(|direction| direction.word())
        .collect();
    names.join(", ")
}
