//! What a clinician answers for in a handout, as plain facts that two builds can be compared by: hours, days, joints,
//! steps, stop signs, exercises, doses. No language and no date: days are counted from the fitting.

use std::collections::BTreeMap;

use crate::checks::{Admitted, Fit};
use crate::choose::{Ask, rank};
use crate::content::{Condition, Dose, Hold, Library, Orthosis, Phase, WearPattern};
use crate::ids::StepId;
use crate::plan::{Plan, Signs, signs_of};
use crate::source::choice;
use crate::units::{Date, Minutes};

choice! {
    /// What a fact is about.
    pub enum FactKind ("kind of fact") {
        Condition = "condition",
        Orthosis = "orthosis",
        Fits = "fits",
        Hand = "hand",
        Wear = "wear",
        Hours = "hours",
        Clock = "clock",
        BreakingIn = "breaking-in",
        Weaning = "weaning",
        Length = "length",
        Days = "days",
        Begins = "begins",
        Ends = "ends",
        Review = "review",
        Washing = "washing",
        Joint = "joint",
        Never = "never",
        StepsOn = "steps-on",
        StepsOff = "steps-off",
        Straps = "straps",
        Spots = "spots",
        Exercise = "exercise",
        MostLoad = "most-load",
        Avoid = "avoid",
        Activity = "activity",
        StopSign = "stop-sign",
        SkinMark = "skin-mark",
        SkinChecks = "skin-checks",
    }
}

/// Facts by kind and what they are of: `hours/night-wear` is `8 h`.
pub type Facts = BTreeMap<String, String>;

/// A file of facts being written.
#[derive(Default)]
struct Sheet(Facts);

impl Sheet {
    fn put(&mut self, kind: FactKind, of: &[&str], value: impl ToString) {
        let value = value.to_string();
        if value.is_empty() {
            return;
        }
        let key = std::iter::once(kind.word()).chain(of.iter().copied().filter(|of| !of.is_empty()));
        self.0.insert(key.collect::<Vec<_>>().join("/"), value);
    }

    fn signs(&mut self, signs: &Signs) {
        let levels = [("emergency", &signs.emergency), ("today", &signs.today), ("visit", &signs.visit)];
        for (level, ids) in levels {
            for id in ids {
                self.put(FactKind::StopSign, &[id.as_str()], level);
            }
        }
    }

    fn orthosis(&mut self, hand: &str, orthosis: &Orthosis) {
        for (joint, hold) in &orthosis.joints {
            self.put(FactKind::Joint, &[hand, &joint.to_string()], said(hold));
        }
        self.put(FactKind::Straps, &[hand], list(orthosis.straps.iter()));
        self.put(FactKind::Spots, &[hand], list(orthosis.pressure_spots.iter()));
    }
}

fn list<T: ToString>(all: impl Iterator<Item = T>) -> String {
    all.map(|one| one.to_string()).collect::<Vec<_>>().join(", ")
}

fn steps(steps: &[StepId]) -> String {
    list(steps.iter())
}

/// How a joint is held, in words.
fn said(hold: &Hold) -> String {
    match hold {
        Hold::Immobilised { at, .. } => format!("held at {}", list(at.iter())),
        Hold::Limited(ranges) => format!("limited to {}", list(ranges.iter())),
        Hold::Blocked { stops, .. } => format!("stopped: {}", list(stops.iter())),
        Hold::Relative { at, .. } => format!("held against its neighbours at {}", list(at.iter())),
        Hold::Coupled => "coupled".to_owned(),
        Hold::Mobilised { towards, by, at } => format!("pulled to {towards}, {by} {}", list(at.iter())),
        Hold::Supported => "supported".to_owned(),
        Hold::Free => "free".to_owned(),
    }
}

fn dose(dose: &Dose) -> String {
    let more = dose.up_to.map(|most| format!(", up to {most}")).unwrap_or_default();
    format!("{} times{more}, hold {}, {} times a day", dose.repetitions, dose.hold, dose.times_a_day)
}

fn breaking_in(pattern: &WearPattern) -> String {
    if pattern.at_once {
        return "worn in full at once".to_owned();
    }
    list(pattern.break_in.iter().map(|step| format!("{} x {}", step.times, step.each)))
}

fn weaning(pattern: &WearPattern) -> String {
    list(pattern.weaning.iter().map(|step| {
        let night = if step.night { " and the night" } else { "" };
        format!("{} of {}{night}", step.lasts, step.awake)
    }))
}

/// The facts of a condition's fact sheet.
pub fn of_condition(library: &Library, condition: &Condition) -> Facts {
    let mut sheet = Sheet::default();
    let usual = condition.break_in.as_ref().unwrap_or(&library.general.break_in);
    let pattern = library.patterns.get(usual);
    sheet.put(FactKind::BreakingIn, &[], pattern.map(breaking_in).unwrap_or_default());
    for phase in &condition.phases {
        phase_of(&mut sheet, library, condition, phase);
    }
    if let Some(phase) = condition.phases.iter().find(|phase| phase.wear != crate::content::Regime::Off) {
        let ask = Ask { phase, finger: condition.finger, findings: &[], factors: &[], needs: &[] };
        let fits = rank(library, ask).into_iter().filter(|one| one.verdict.fit <= Fit::FitsWithRemarks);
        sheet.put(FactKind::Fits, &[], list(fits.take(3).map(|one| one.id)));
    }
    sheet.signs(&signs_of(library, &[condition]));
    sheet.0
}

fn phase_of(sheet: &mut Sheet, library: &Library, condition: &Condition, phase: &Phase) {
    let of = phase.id.as_str();
    sheet.put(FactKind::Wear, &[of], phase.wear);
    if let Some(stretch) = &phase.stretch {
        let hours = Minutes::new(stretch.minutes());
        sheet.put(FactKind::Hours, &[of], format!("{hours} ({} x {})", stretch.bouts, stretch.each));
    }
    let pattern = phase.weaning.as_ref().and_then(|id| library.patterns.get(id));
    sheet.put(FactKind::Weaning, &[of], pattern.map(weaning).unwrap_or_default());
    let set = condition.protocol.iter().flat_map(|protocol| &protocol.lengths).find(|set| set.phase == phase.id);
    let length = match (set, phase.lasts, phase.lasts_up_to) {
        (Some(set), ..) => format!("{} to {}, set by the protocol", set.at_least, set.at_most),
        (None, Some(from), Some(to)) => format!("{from} to {to}"),
        (None, Some(length), None) => length.to_string(),
        (None, None, _) => "open".to_owned(),
    };
    sheet.put(FactKind::Length, &[of], length);
    sheet.put(FactKind::Begins, &[of], phase.begins);
    sheet.put(FactKind::Ends, &[of], phase.decided_by);
    sheet.put(FactKind::Washing, &[of], phase.washing);
    for wanted in phase.all_requirements() {
        let hold = wanted.hold.map(|hold| format!(" {hold}")).unwrap_or_default();
        let within =
            list(wanted.within.iter().map(ToString::to_string).chain(wanted.stops.iter().map(ToString::to_string)));
        let when = if wanted.when.is_some() { " (when found)" } else { "" };
        let joint = format!("{}{when}", wanted.joint);
        sheet.put(FactKind::Joint, &[of, &joint], format!("{}{hold} {within}", wanted.need).trim());
    }
    let never = phase.never.iter().map(|never| {
        let positions = never.positions.iter().map(|one| format!("{} {}", one.joint, one.range));
        positions.collect::<Vec<_>>().join(" with ")
    });
    sheet.put(FactKind::Never, &[of], list(never));
    sheet.put(FactKind::MostLoad, &[of], phase.exercises.most);
    let bans = phase.exercises.bans.iter().map(|ban| {
        let load = ban.from_load.map(|load| format!(" from {load}")).unwrap_or_default();
        format!("{} {}{load}", ban.joint, list(ban.directions.iter())).trim_end().to_owned()
    });
    sheet.put(FactKind::Avoid, &[of], list(bans));
}

/// The facts of an orthosis's sheet of pictures.
pub fn of_orthosis(orthosis: &Orthosis) -> Facts {
    let mut sheet = Sheet::default();
    sheet.orthosis("", orthosis);
    sheet.put(FactKind::StepsOn, &[], steps(&orthosis.donning));
    sheet.put(FactKind::StepsOff, &[], steps(&orthosis.doffing));
    sheet.0
}

/// The facts of a case's sheets, hand by hand.
pub fn of_case(hands: &[(Admitted<'_>, Plan)]) -> Facts {
    let mut sheet = Sheet::default();
    for (admitted, plan) in hands {
        let case = admitted.case();
        let fitted = case.file.fitted.value;
        let side = case.file.hand.word();
        // A word about the hand only where there are two.
        let hand = if hands.len() > 1 { side } else { "" };
        sheet.put(FactKind::Hand, &[hand], side);
        sheet.put(FactKind::Condition, &[hand], list(case.conditions.iter().map(|treated| treated.id.clone())));
        sheet.put(FactKind::Orthosis, &[hand], &case.file.orthosis.value);
        sheet.orthosis(hand, &case.orthosis);
        phases(&mut sheet, hand, fitted, plan);
        let steps_in = plan.break_in.steps.iter().map(|step| format!("{} x {}", step.times, step.each));
        sheet.put(FactKind::BreakingIn, &[hand], list(steps_in));
        sheet.put(FactKind::StepsOn, &[hand], steps(&plan.donning.value));
        sheet.put(FactKind::StepsOff, &[hand], steps(&plan.doffing.value));
        sheet.put(FactKind::SkinMark, &[hand], plan.skin.mark_limit.value);
        sheet.put(FactKind::SkinChecks, &[hand], plan.skin.checks);
        sheet.put(FactKind::Review, &[hand], format!("day {}", plan.review.days_since(fitted) + 1));
        sheet.signs(&plan.signs);
    }
    sheet.0
}

fn phases(sheet: &mut Sheet, hand: &str, fitted: Date, plan: &Plan) {
    for (index, (phase, programme)) in plan.phases.iter().zip(&plan.programmes).enumerate() {
        let of = [hand, phase.id.as_str()];
        let day = |date: Date| date.days_since(fitted) + 1;
        sheet.put(FactKind::Wear, &of, phase.wear.value);
        sheet.put(FactKind::Days, &of, format!("day {} to day {}", day(phase.first), day(phase.last)));
        sheet.put(FactKind::Washing, &of, phase.rules.washing);
        let (minutes, clock) = usual_day(plan, index);
        if minutes.get() > 0 {
            sheet.put(FactKind::Hours, &of, minutes);
        }
        sheet.put(FactKind::Clock, &of, clock);
        for exercise in &programme.exercises {
            let worn = if exercise.worn { "on" } else { "off" };
            let value = format!("{}, orthosis {worn}", dose(&exercise.dose));
            sheet.put(FactKind::Exercise, &[hand, phase.id.as_str(), exercise.id.as_str()], value);
        }
        for advice in &plan.activities {
            let Some(given) = advice.phases.get(index) else { continue };
            let ways = list(given.ways.iter());
            let value = if ways.is_empty() { given.verdict.to_string() } else { format!("{}: {ways}", given.verdict) };
            sheet.put(FactKind::Activity, &[hand, phase.id.as_str(), advice.id.as_str()], value);
        }
    }
    for phase in &plan.later {
        sheet.put(FactKind::Wear, &[hand, phase.id.as_str()], format!("{}, later", phase.wear));
    }
}

/// How long and when it is worn on most days of a phase, breaking in left out.
fn usual_day(plan: &Plan, phase: usize) -> (Minutes, String) {
    let mut seen: BTreeMap<(u16, String), usize> = BTreeMap::new();
    for day in plan.days.iter().filter(|day| day.phase == phase && day.break_in.is_none()) {
        let clock = |minute: u16| format!("{:02}:{:02}", minute / 60, minute % 60);
        let worn = day.segments.iter().filter(|segment| segment.state.is_worn());
        let hours = list(worn.map(|segment| format!("{}-{}", clock(segment.span.from()), clock(segment.span.to()))));
        *seen.entry((day.worn_minutes(), hours)).or_default() += 1;
    }
    let most = seen.into_iter().max_by(|(one, count), (other, more)| count.cmp(more).then(other.cmp(one)));
    most.map_or((Minutes::new(0), String::new()), |((minutes, hours), _)| (Minutes::new(minutes), hours))
}
