//! The questions in the order in which a therapist thinks.

use super::ask::{Ask, COLUMNS, Choice, Stop, line, one_line};
use super::draft::{Clinic, Draft};
use super::names::Names;
use crate::body::{Direction, Finger, Joint, Side, norms};
use crate::case::Case;
use crate::content::{Begins, Condition, Library, Measured, Phase, PrintSize, Regime};
use crate::ids::{ActivityId, ConditionId, FactorId};
use crate::language::LanguageTag;
use crate::pipeline::Workshop;
use crate::units::{Date, Degrees};

/// Days to the review where the content gives the phase no length.
const UNTIL_REVIEW: i32 = 14;

pub struct Interview<'a> {
    pub ask: &'a mut dyn Ask,
    pub workshop: &'a Workshop,
    pub names: Names<'a>,
    /// The day that the fitting is taken to be on.
    pub today: Date,
    /// The file that says whom to call, when there is one.
    pub lent: Option<String>,
}

impl Interview<'_> {
    pub(super) fn library(&self) -> &Library {
        &self.workshop.library
    }

    /// Asks everything.
    ///
    /// # Errors
    /// When the person stops, or the answers do.
    pub fn run(mut self) -> Result<Draft, Stop> {
        let condition = self.condition()?;
        let rules = self.library().conditions.get(&condition).cloned();
        let Some(rules) = rules else { return Err(Stop::Outside(format!("{condition} is not there"))) };
        let hand = [Side::Right, Side::Left][self.words("Which hand?", &["right", "left"], None)?];
        let finger = if rules.needs_finger() { Some(self.finger(&rules)?) } else { None };
        let mut rules = finger.map_or_else(|| rules.clone(), |finger| rules.for_finger(finger));
        let from = self.phase(&rules)?;
        let begun = rules.phases.get(from).filter(|_| from > 0).map(|phase| phase.id.clone());
        rules.phases.drain(..from);
        let findings = self.findings(&rules)?;
        let mut chosen = self.orthosis(&rules, finger, &findings, &[])?;
        let protocol = self.protocol(&rules)?;
        let fitted = self.date("Fitted on which day?", self.today, None)?;
        let review = self.review(&rules, protocol.as_ref(), fitted)?;
        let clinic = self.clinic()?;
        let activities = self.activities()?;
        let factors = self.factors()?;
        chosen = self.still_fits(&rules, finger, &findings, &factors, chosen)?;
        let language = self.language()?;
        let print = self.print(&factors)?;
        let reference = self.ask.text(
            "The clinic's own number for this case, for names of files (may be left empty)",
            "",
            &line,
        )?;
        let name = self.ask.text("Name to print on the guide (may be left empty)", "", &line)?;
        // The protocol says the angles of its own joints.
        let ruled: Vec<Joint> =
            protocol.iter().flat_map(|protocol| &protocol.angles).flat_map(|(joint, _)| joint.joints()).collect();
        chosen.angles.retain(|angle| !angle.joint.joints().iter().any(|joint| ruled.contains(joint)));
        Ok(Draft {
            condition,
            hand,
            finger,
            begun,
            findings,
            orthosis: chosen.id,
            also_fit: chosen.also_fit,
            angles: chosen.angles,
            protocol,
            fitted,
            review,
            clinic,
            activities,
            factors,
            language,
            print,
            name,
            reference,
        })
    }

    /// One of a few words.
    pub(super) fn words(&mut self, question: &str, words: &[&str], usual: Option<usize>) -> Result<usize, Stop> {
        let choices: Vec<Choice> = words.iter().map(|word| Choice::new(*word, "", Vec::new())).collect();
        self.ask.one(question, &choices, usual)
    }

    fn condition(&mut self) -> Result<ConditionId, Stop> {
        let mut entries: Vec<(ConditionId, Choice)> = Vec::new();
        for id in self.library().conditions.keys() {
            let term = self.names.plain(&format!("condition-{id}-term"));
            let name = self.names.plain(&format!("condition-{id}-name"));
            let all = self.names.all(&format!("condition-{id}-name"));
            let label = if term.is_empty() { name.clone() } else { format!("{term}: {name}") };
            let choice = Choice {
                id: id.to_string(),
                find: all.into_iter().chain([term]).collect(),
                label: one_line(&label, COLUMNS),
            };
            entries.push((id.clone(), choice));
        }
        entries.sort_by(|(_, one), (_, other)| one.label.cmp(&other.label));
        let choices: Vec<Choice> = entries.iter().map(|(_, choice)| choice.clone()).collect();
        let place = self.ask.one("What is the orthosis for?", &choices, None)?;
        Ok(entries.swap_remove(place).0)
    }

    fn finger(&mut self, rules: &Condition) -> Result<Finger, Stop> {
        let words: Vec<&str> = Finger::ALL.iter().map(|finger| finger.word()).collect();
        let usual = rules.finger.and_then(|own| Finger::ALL.iter().position(|finger| *finger == own));
        Ok(Finger::ALL[self.words("Which finger?", &words, usual)?])
    }

    /// The place of the phase that begins with the fitting: the first, or one that waited for somebody's word.
    fn phase(&mut self, rules: &Condition) -> Result<usize, Stop> {
        let can = |place: usize, phase: &Phase| {
            place == 0 || (phase.begins == Begins::AfterReview && phase.wear != Regime::Off)
        };
        let places: Vec<usize> = rules
            .phases
            .iter()
            .enumerate()
            .filter(|(place, phase)| can(*place, phase))
            .map(|(place, _)| place)
            .collect();
        if places.len() < 2 {
            return Ok(0);
        }
        let choices: Vec<Choice> = places
            .iter()
            .map(|&place| {
                let phase = &rules.phases[place];
                let lasts = phase.lasts.map_or_else(|| "no fixed length".to_owned(), |days| days.to_string());
                let start = if place == 0 { ", from the start" } else { "" };
                Choice::new(phase.id.to_string(), &format!("(worn {}, {lasts}{start})", phase.wear), Vec::new())
            })
            .collect();
        Ok(places[self.ask.one("Which phase begins with this fitting?", &choices, Some(0))?])
    }

    /// What the condition asks for, and nothing else.
    fn findings(&mut self, rules: &Condition) -> Result<Vec<Measured>, Stop> {
        let mut asked: Vec<(Joint, Direction, Degrees)> = Vec::new();
        for test in rules.phases.iter().flat_map(Phase::all_requirements).filter_map(|need| need.when.as_ref()) {
            for joint in test.joint.joints() {
                match asked.iter_mut().find(|(known, motion, _)| *known == joint && *motion == test.motion) {
                    Some((.., least)) => *least = (*least).min(test.at_least),
                    None => asked.push((joint, test.motion, test.at_least)),
                }
            }
        }
        let mut found = Vec::new();
        for (joint, motion, least) in asked {
            let question = format!(
                "Measured: {motion} at {joint}, in degrees; from {least} on it changes what is needed (may be left empty)"
            );
            let judge = |typed: &str| {
                if typed.is_empty() {
                    return Ok(());
                }
                degrees(typed)
                    .and_then(|angle| norms::check(joint, motion, angle).map_err(|misread| misread.to_string()))
            };
            let typed = self.ask.text(&question, "", &judge)?;
            found.extend(degrees(&typed).ok().map(|angle| Measured { joint, motion, angle }));
        }
        Ok(found)
    }

    pub(super) fn date(&mut self, question: &str, usual: Date, after: Option<Date>) -> Result<Date, Stop> {
        let judge = |typed: &str| {
            let date: Date = typed.parse().map_err(|misread: crate::units::Misread| misread.to_string())?;
            match after.map(|first| date.days_since(first)) {
                Some(days) if days <= 0 => Err("it is not after the fitting".to_owned()),
                Some(days) if days > Case::MOST_DAYS => Err("it is more than two years after the fitting".to_owned()),
                _ => Ok(()),
            }
        };
        let typed = self.ask.text(question, &usual.to_string(), &judge)?;
        Ok(typed.parse().unwrap_or(usual))
    }

    /// The end of the first phase, when it has one.
    fn review(
        &mut self,
        rules: &Condition,
        protocol: Option<&super::draft::Protocol>,
        fitted: Date,
    ) -> Result<Date, Stop> {
        let first = rules.phases.first();
        let ruled = protocol.iter().flat_map(|protocol| &protocol.lengths);
        let set = ruled.filter(|(id, _)| first.is_some_and(|phase| phase.id == *id)).map(|(_, days)| *days).next();
        let lasts = set.or_else(|| first.and_then(|phase| phase.lasts));
        let days = lasts.map_or(UNTIL_REVIEW, |days| i32::from(days.days()));
        let why = match (first, lasts) {
            (Some(phase), Some(days)) => format!("phase {} lasts {days}", phase.id),
            _ => "the content gives no length; two weeks are only a proposal".to_owned(),
        };
        self.date(&format!("Next visit on which day? ({why})"), fitted.offset(days), Some(fitted))
    }

    fn clinic(&mut self) -> Result<Option<Clinic>, Stop> {
        if let Some(file) = &self.lent {
            self.ask.tell(&format!("Whom to call stands in {file}."));
            return Ok(None);
        }
        let name = self.ask.text("Name of the clinic (may be left empty)", "", &line)?;
        let telephone = self.ask.text("Telephone of the clinic (may be left empty)", "", &line)?;
        let emergency = self.ask.text("Emergency number where the person lives (may be left empty)", "", &line)?;
        let empty = name.is_empty() && telephone.is_empty() && emergency.is_empty();
        Ok((!empty).then_some(Clinic { name, telephone, emergency }))
    }

    fn activities(&mut self) -> Result<Vec<ActivityId>, Stop> {
        let ids: Vec<ActivityId> = self.library().activities.keys().cloned().collect();
        let choices: Vec<Choice> = ids
            .iter()
            .map(|id| {
                let key = format!("activity-{id}-name");
                let group = self.library().activities.get(id).map(|known| known.group.word()).unwrap_or_default();
                Choice::new(
                    id.to_string(),
                    &self.names.plain(&key),
                    self.names.all(&key).into_iter().chain([group.to_owned()]).collect(),
                )
            })
            .collect();
        Ok(picked(self.ask.several("What does this person do all day?", &choices)?, &ids))
    }

    fn factors(&mut self) -> Result<Vec<FactorId>, Stop> {
        let known = self.library().factors.iter();
        let (ids, choices): (Vec<FactorId>, Vec<Choice>) = known
            .map(|(id, factor)| {
                (id.clone(), Choice::new(id.to_string(), &factor.because, vec![factor.because.clone()]))
            })
            .unzip();
        Ok(picked(self.ask.several("What is particular about this person?", &choices)?, &ids))
    }

    fn language(&mut self) -> Result<LanguageTag, Stop> {
        let entries: Vec<_> = self.workshop.languages.iter().collect();
        let choices: Vec<Choice> = entries
            .iter()
            // The name in its own script stands last, so that its direction turns nothing else.
            .map(|entry| {
                Choice::new(
                    entry.tag.to_string(),
                    &format!("{}  {}", entry.english, entry.name),
                    vec![entry.english.clone(), entry.name.clone()],
                )
            })
            .collect();
        let place = self.ask.one("In which language does the person read?", &choices, None)?;
        Ok(entries[place].tag.clone())
    }

    fn print(&mut self, factors: &[FactorId]) -> Result<PrintSize, Stop> {
        let asked = factors.iter().filter_map(|id| self.library().factors.get(id)?.print).max();
        let usual = asked.unwrap_or(PrintSize::Standard);
        let place = PrintSize::ALL.iter().position(|size| *size == usual).unwrap_or(0);
        let points = ["(12 point)", "(18 point)", "(24 point)"];
        let choices: Vec<Choice> = PrintSize::ALL
            .iter()
            .zip(points)
            .map(|(size, points)| Choice::new(size.word(), points, Vec::new()))
            .collect();
        Ok(PrintSize::ALL[self.ask.one("How large is the print?", &choices, Some(place))?])
    }
}

fn picked<T: Clone>(places: Vec<usize>, all: &[T]) -> Vec<T> {
    places.into_iter().filter_map(|place| all.get(place).cloned()).collect()
}

/// "25" or "25 deg".
fn degrees(typed: &str) -> Result<Degrees, String> {
    let bare = !typed.is_empty() && typed.chars().all(|c| c.is_ascii_digit() || c == '.');
    let text = if bare { format!("{typed} deg") } else { typed.to_owned() };
    text.parse().map_err(|misread: crate::units::Misread| misread.to_string())
}
