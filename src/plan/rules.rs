//! Applies overrides, guards safety, and keeps the list of rules that shaped the plan.

use std::fmt::Display;

use super::chosen::{Chosen, RuleLine};
use crate::case::{Case, Subject};
use crate::content::Basis;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::StepId;

/// The running account while a plan is made.
pub struct Rules<'c, 'a> {
    case: &'c Case<'a>,
    lines: Vec<RuleLine>,
    findings: Findings,
    used: Vec<bool>,
}

impl<'c, 'a> Rules<'c, 'a> {
    pub fn new(case: &'c Case<'a>) -> Self {
        Self { case, lines: Vec::new(), findings: Findings::default(), used: vec![false; case.overrides.len()] }
    }

    /// Records a value that a rule gave.
    pub fn rule(&mut self, subject: impl Into<String>, value: impl Display, basis: &Basis) {
        self.lines.push(RuleLine {
            subject: subject.into(),
            value: value.to_string(),
            basis: basis.clone(),
            instead_of: None,
            because: None,
            risk_accepted: false,
        });
    }

    /// A value that the therapist may have set. `pick` finds it among the overrides; `danger` says what rule of safety
    /// the new value breaks, if any.
    pub fn choose<T: Display>(
        &mut self,
        subject: impl Into<String>,
        ruled: T,
        basis: &Basis,
        pick: impl Fn(&Subject) -> Option<T>,
        danger: impl Fn(&T) -> Option<String>,
    ) -> Chosen<T> {
        let subject = subject.into();
        let found = self.case.overrides.iter().enumerate().find_map(|(at, entry)| Some((at, pick(&entry.subject)?)));
        let Some((at, value)) = found else {
            self.rule(subject, &ruled, basis);
            return Chosen::by_rule(ruled);
        };
        self.used[at] = true;
        let entry = &self.case.overrides[at];
        let danger = danger(&value);
        self.lines.push(RuleLine {
            subject,
            value: value.to_string(),
            basis: basis.clone(),
            instead_of: Some(ruled.to_string()),
            because: Some(entry.because.clone()),
            risk_accepted: danger.is_some() && entry.accept_risk,
        });
        if let Some(danger) = danger
            && !entry.accept_risk
        {
            self.refuse(at, danger, basis);
        }
        Chosen::by_therapist(value, entry.because.clone())
    }

    /// An override that adds or takes away instead of replacing.
    pub fn overridden(
        &mut self,
        subject: impl Into<String>,
        value: impl Into<String>,
        basis: &Basis,
        wanted: &Subject,
        danger: Option<String>,
    ) {
        let Some(at) = self.case.overrides.iter().position(|entry| entry.subject == *wanted) else { return };
        let first = !std::mem::replace(&mut self.used[at], true);
        let entry = &self.case.overrides[at];
        if let Some(danger) = &danger
            && !entry.accept_risk
        {
            self.refuse(at, danger.clone(), basis);
        }
        if first || danger.is_some() {
            self.lines.push(RuleLine {
                subject: subject.into(),
                value: value.into(),
                basis: basis.clone(),
                instead_of: None,
                because: Some(entry.because.clone()),
                risk_accepted: danger.is_some() && entry.accept_risk,
            });
        }
    }

    fn refuse(&mut self, at: usize, danger: String, basis: &Basis) {
        let entry = &self.case.overrides[at];
        self.findings.push(
            Diagnostic::error(Code::SAFETY_OVERRIDE, self.case.place(&entry.span), danger)
                .note(format!("the rule: {}", self.case.library.cite(basis)))
                .help("take it back, or add `accept_risk: true` beside `because:` to answer for it"),
        );
    }

    /// A fault that is not about an override.
    pub fn fault(&mut self, diagnostic: Diagnostic) {
        self.findings.push(diagnostic);
    }

    /// The steps of putting on and taking off.
    pub fn steps(&mut self) -> (Chosen<Vec<StepId>>, Chosen<Vec<StepId>>) {
        let orthosis = &self.case.orthosis;
        let alone = self.case.both_hands || self.case.any_factor(|factor| factor.one_handed || factor.no_other_hand);
        let helped = self.case.any_factor(|factor| factor.helper);
        let one_handed = alone && !helped && !orthosis.one_handed.is_empty();
        let on = if one_handed { orthosis.one_handed.clone() } else { orthosis.donning.clone() };
        let (off, source) = (orthosis.doffing.clone(), orthosis.source.clone());
        let donning = self.choose(
            "steps of putting it on",
            Steps(on),
            &source,
            |subject| match subject {
                Subject::Donning(steps) => Some(Steps(steps.clone())),
                _ => None,
            },
            |_| None,
        );
        let doffing = self.choose(
            "steps of taking it off",
            Steps(off),
            &source,
            |subject| match subject {
                Subject::Doffing(steps) => Some(Steps(steps.clone())),
                _ => None,
            },
            |_| None,
        );
        let open = |chosen: Chosen<Steps>| Chosen { value: chosen.value.0, because: chosen.because };
        (open(donning), open(doffing))
    }

    /// The lines and faults; an override that nothing took up is a fault.
    pub fn finish(mut self) -> (Vec<RuleLine>, Findings) {
        for (entry, used) in self.case.overrides.iter().zip(&self.used) {
            if !used {
                self.findings.push(
                    Diagnostic::error(
                        Code::CASE_OVERRIDE,
                        self.case.place(&entry.span),
                        format!("nothing in this plan takes up that {}", entry.subject.describe()),
                    )
                    .help("take the override out, or name a phase or exercise of this plan"),
                );
            }
        }
        (self.lines, self.findings)
    }
}

struct Steps(Vec<StepId>);

impl Display for Steps {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let names: Vec<&str> = self.0.iter().map(StepId::as_str).collect();
        f.write_str(&names.join(", "))
    }
}
