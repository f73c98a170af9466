//! A case held against the content: ids exist, dates are in order, findings are possible.

use std::collections::{BTreeMap, BTreeSet};

use super::angles::set_angle;
use super::file::{CaseFile, Clinic, DayTimes, LetterDetail, LetterReader, Paper};
use super::overridden::Overridden;
use super::text::Text;
use super::treated::{self, Treated};
use crate::body::{Finger, JointName, norms};
use crate::content::{Condition, Exercise, Factor, Library, Measured, Orthosis, PrintSize, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::{ConditionId, ExerciseId, FactorId};
use crate::language::{Language, Languages};
use crate::source::{At, Place, SourceText, Span};
use crate::units::TimeOfDay;

/// A case whose every id leads to content.
#[derive(Clone, Debug)]
pub struct Case<'a> {
    pub file: CaseFile,
    pub source: SourceText,
    pub library: &'a Library,
    /// What is treated; the first is the main one, and there is always one.
    pub conditions: Vec<Treated>,
    /// The other hand is treated too.
    pub both_hands: bool,
    /// The affected finger.
    pub finger: Option<Finger>,
    /// The exercises of the catalogue that can be given to this person, with the finger filled in.
    pub exercises: BTreeMap<ExerciseId, Exercise>,
    /// The orthosis as it was set for this person.
    pub orthosis: Orthosis,
    pub language: Language,
    pub factors: Vec<(FactorId, &'a Factor)>,
    pub overrides: Vec<Overridden>,
}

/// Who reads the letter, and how much it tells.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LetterChoice {
    pub to: LetterReader,
    pub detail: LetterDetail,
}

impl Case<'_> {
    /// Days from the fitting to the review: about two years. More is a slip of the pen.
    pub const MOST_DAYS: i32 = 732;

    /// The letter as the case wants it: to a carer, telling nothing of the person's health, when it does not say.
    pub fn letter(&self) -> LetterChoice {
        let asked = self.file.letter.as_ref();
        LetterChoice {
            to: asked.and_then(|letter| letter.to).unwrap_or(LetterReader::Carer),
            detail: asked.and_then(|letter| letter.detail).unwrap_or(LetterDetail::None),
        }
    }

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

    /// The print size: what the case says, and never smaller than a factor asks for.
    pub fn print(&self) -> PrintSize {
        let asked = self.file.print.unwrap_or(PrintSize::Standard);
        self.factors.iter().filter_map(|(_, factor)| factor.print).fold(asked, std::cmp::Ord::max)
    }

    /// Whether some factor says so.
    pub fn any_factor(&self, says: fn(&Factor) -> bool) -> bool {
        self.factors.iter().any(|(_, factor)| says(factor))
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
}

/// Holds a case against the content and the languages.
///
/// # Errors
/// All faults at once.
pub fn resolve<'a>(
    mut file: CaseFile,
    source: SourceText,
    library: &'a Library,
    languages: &Languages,
) -> Result<Case<'a>, Findings> {
    file.name_finger();
    let mut check = Check { source: &source, library, findings: Findings::default() };
    let orthosis = check.known("orthosis", &file.orthosis, &library.orthoses);
    let named: Vec<&At<ConditionId>> =
        std::iter::once(&file.condition).chain(file.other_conditions.iter().map(|other| &other.condition)).collect();
    let known: Vec<Option<&Condition>> =
        named.iter().map(|id| check.known("condition", id, &library.conditions)).collect();
    check.repeated("condition", named.iter().copied());
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
    let finger = file.finger.as_ref().map(|finger| finger.value);
    let complete: Option<Vec<&Condition>> = known.into_iter().collect();
    let mut conditions = Vec::new();
    let mut set = None;
    if let (Some(complete), Some(orthosis)) = (&complete, orthosis) {
        check.finger(&file, complete, orthosis);
        let whole = match finger {
            Some(finger) => orthosis.for_finger(finger),
            None => orthosis.clone(),
        };
        let mut own = check.set_angles(&file.angles, whole);
        conditions = check.treated(&file, complete, &mut own);
        check.findings_concern(&file, &conditions, &own);
        set = Some(own);
    }
    let overrides = check.overrides(&file, &conditions);
    let exercises = library.exercises_for(finger).map(|(id, exercise)| (id.clone(), exercise)).collect();
    let findings = check.findings;
    match (set, language) {
        (Some(orthosis), Some(language)) if !findings.has_errors() && !conditions.is_empty() => {
            let both_hands = file.other_hand.is_some();
            Ok(Case {
                both_hands,
                file,
                source,
                library,
                conditions,
                finger,
                exercises,
                orthosis,
                language,
                factors,
                overrides,
            })
        }
        _ => Err(findings),
    }
}

/// A case while it is checked.
pub(super) struct Check<'s, 'a> {
    source: &'s SourceText,
    pub(super) library: &'a Library,
    findings: Findings,
}

impl<'a> Check<'_, 'a> {
    fn place(&self, span: &Span) -> Place {
        Place { source: self.source.clone(), span: span.clone() }
    }

    pub(super) fn error(&mut self, code: Code, span: &Span, message: impl Into<String>, help: Option<String>) {
        let mut diagnostic = Diagnostic::error(code, self.place(span), message);
        diagnostic.help = help;
        self.findings.push(diagnostic);
    }

    pub(super) fn known<I: Ord + std::fmt::Display, T>(
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

    fn repeated<'i, I: Ord + std::fmt::Display + 'i>(&mut self, what: &str, ids: impl IntoIterator<Item = &'i At<I>>) {
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
        } else if days > Case::MOST_DAYS {
            Some(format!("the review is {} after the fitting, more than two years", days_in_words(days)))
        } else {
            None
        };
        if let Some(fault) = fault {
            let help = if days <= 0 {
                format!("give a review date after {}", fitted.value)
            } else {
                format!("give a review date before {}", fitted.value.offset(Case::MOST_DAYS + 1))
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
            if let Err(misread) = norms::check(finding.joint, finding.motion, finding.angle) {
                let help = misread.help();
                self.error(Code::CASE_FINDING, &finding.span, misread.wrong, help);
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

    /// A finger is named when something is about one finger, and only then.
    fn finger(&mut self, file: &CaseFile, conditions: &[&Condition], orthosis: &Orthosis) {
        let needed = orthosis.needs_finger() || conditions.iter().any(|condition| condition.needs_finger());
        match (&file.finger, needed) {
            (None, true) => self.error(
                Code::CASE_FINGER,
                &file.condition.span,
                "this is about one finger, and the case does not say which",
                Some("add `finger: index`, `middle`, `ring` or `little`".to_owned()),
            ),
            (Some(finger), false) => self.error(
                Code::CASE_FINGER,
                &finger.span,
                format!("nothing in this case is about one finger, yet it names the {} finger", finger.value),
                Some("take the line out, or name the condition of the finger".to_owned()),
            ),
            _ => {}
        }
    }

    /// The conditions as this case has them: finger filled in, protocol applied.
    fn treated(&mut self, file: &CaseFile, conditions: &[&Condition], orthosis: &mut Orthosis) -> Vec<Treated> {
        let finger = file.finger.as_ref().map(|finger| finger.value);
        let own = std::iter::once((&file.condition, file.protocol.as_ref(), &file.begun));
        let others =
            file.other_conditions.iter().map(|other| (&other.condition, other.protocol.as_ref(), &other.begun));
        let asked: Vec<JointName> = file.angles.iter().map(|angle| angle.joint).collect();
        own.chain(others)
            .zip(conditions)
            .map(|((id, protocol, begun), condition)| {
                let whole = finger.map_or_else(|| (*condition).clone(), |finger| condition.for_finger(finger));
                treated::begun_in_order(file, begun, &whole, self.source, &mut self.findings);
                let asked = treated::Asked {
                    id,
                    protocol,
                    begun,
                    fitted: file.fitted.value,
                    angles: &asked,
                    source: self.source,
                };
                treated::treat(&asked, whole, orthosis, &mut self.findings)
            })
            .collect()
    }

    /// A finding at a joint that nothing here is about is a finding for another hand or another finger.
    fn findings_concern(&mut self, file: &CaseFile, conditions: &[Treated], orthosis: &Orthosis) {
        for finding in &file.findings {
            let held = orthosis.joints.keys().any(|name| name.joints().contains(&finding.joint));
            let asked = conditions.iter().any(|treated| treated.concerns(finding.joint));
            if !held && !asked {
                let message =
                    format!("nothing in this case is about {}: neither the condition nor the orthosis", finding.joint);
                let help = "give the finding of the joint that is treated, or take the line out";
                self.error(Code::CASE_FINDING, &finding.span, message, Some(help.to_owned()));
            }
        }
    }

    fn set_angles(&mut self, angles: &[At<super::file::JointAngle>], mut set: Orthosis) -> Orthosis {
        for angle in angles {
            if let Err((fault, help)) = set_angle(&mut set, angle) {
                self.error(Code::CASE_ANGLE, &angle.span, fault, Some(help));
            }
        }
        set
    }
}

fn days_in_words(days: i32) -> String {
    if days == 1 { "1 day".to_owned() } else { format!("{days} days") }
}
