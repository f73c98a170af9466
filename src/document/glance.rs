//! The first page: which hand, when on, when off, when to call.

use super::cause::{self, Cause};
use super::component::{Component, FactRow, LaterItem, Strip, StripKey, StripRow, StripState};
use super::figures::{Figure, Figures};
use super::message::{Arg, Message};
use super::section::{Section, advice, filled, sentences, side};
use crate::body::{Joint, JointName};
use crate::case::Case;
use crate::content::{Decider, Hold, Orthosis, Regime, SheetArea, Washing, WeaningStep};
use crate::ids::MessageId;
use crate::plan::{DayKind, DayPlan, Plan, PlannedPhase, Signs, WearState};
use crate::source::Step;
use crate::units::{ClockSpan, Date, Minutes};

pub fn section(case: &Case<'_>, plan: &Plan, figures: &Figures<'_>) -> Option<Section> {
    filled(
        "glance",
        vec![
            ("hand", Some(hand(case, figures.hand()))),
            ("facts", Some(Component::Facts(facts(case, plan)))),
            ("strips", Some(strips(case, plan))),
            ("later", later(case, plan)),
            ("advice", sentences(advice(case, SheetArea::Wear))),
            ("warning", Some(warning(case, plan))),
        ],
    )
}

/// Which hand, with pictures of it or without.
pub fn hand(case: &Case<'_>, figures: Vec<Figure>) -> Component {
    Component::Hand {
        side: case.file.hand,
        finger: case.finger.map(|_| Message::new("finger-name").because([Cause::case("finger")])),
        alt: Message::new("hand-alt").with("side", side(case.file.hand)).because([Cause::case("hand")]),
        figures,
    }
    .because(cause::orthosis(case, &[Step::field("joints")]))
}

fn facts(case: &Case<'_>, plan: &Plan) -> Vec<FactRow> {
    let fact = |label: &str, value: Message, more: Option<Message>, causes: &[Cause]| FactRow {
        label: Message::new(label.to_owned()).because(causes.to_vec()),
        value: value.because(causes.to_vec()),
        more: more.map(|more| more.because(causes.to_vec())),
    };
    let held = cause::orthosis(case, &[Step::field("joints")]);
    let fitted = [Cause::case("fitted")];
    let short = Message::new(format!("orthosis-{}-short", case.file.orthosis.value));
    let mut rows = vec![
        fact("fact-splint", short, free_joints(&case.orthosis), &held),
        fact("fact-fitted", Message::new("say-date").with("date", case.file.fitted.value), None, &fitted),
    ];
    let named = case.conditions.iter().map(|treated| {
        let said = |part: &str| Message::new(format!("condition-{}-{part}", treated.id));
        let id = treated.id.as_str();
        let causes = [cause::condition(case, id), Cause::rule("conditions", id, &[Step::field("structures")])];
        fact("fact-for", said("name"), Some(said("what")), &causes)
    });
    rows.splice(1..1, named);
    if plan.break_in.days() > 0 {
        let full = Message::new("say-date").with("date", full_wear(case, plan));
        let causes = cause::breaking_in(case, plan);
        rows.push(fact("fact-full", full, Some(Message::new("fact-full-more")), &causes));
    }
    let at = case.file.review_at.map(|_| Cause::case("review_at"));
    let review: Vec<Cause> = std::iter::once(Cause::case("review")).chain(at).collect();
    rows.push(fact("fact-review", visit(case, plan), None, &review));
    rows
}

/// The day on which full wear begins.
pub fn full_wear(case: &Case<'_>, plan: &Plan) -> Date {
    case.file.fitted.value.offset(i32::from(plan.break_in.days()))
}

/// When the next visit is.
pub fn visit(case: &Case<'_>, plan: &Plan) -> Message {
    match case.file.review_at {
        Some(at) => Message::new("say-date-time").with("date", plan.review).with("time", Arg::Time(at)),
        None => Message::new("say-date").with("date", plan.review),
    }
}

/// The joints that stay free although the splint comes near them.
pub fn free_joints(orthosis: &Orthosis) -> Option<Message> {
    let free: Vec<Message> = orthosis
        .joints
        .iter()
        .filter(|(joint, hold)| matches!(hold, Hold::Free) && near_the_hand(**joint))
        .map(|(joint, _)| Message::new(format!("joint-{joint}")))
        .collect();
    (!free.is_empty()).then(|| {
        let count = i64::try_from(free.len()).unwrap_or(i64::MAX);
        Message::new("fact-free").with("joints", Arg::List(free)).with("count", count)
    })
}

/// Nobody expects a hand splint to hold the elbow, so its freedom is no news.
fn near_the_hand(joint: JointName) -> bool {
    !matches!(joint, JointName::One(Joint::Elbow | Joint::Forearm))
}

/// The state a minute shows on a strip: exercise and washing are off or on like any other minute.
fn shown(state: WearState) -> StripState {
    match state {
        WearState::Before => StripState::Before,
        WearState::On | WearState::OnExercise => StripState::On,
        WearState::OffExercise | WearState::OffWash | WearState::Off => StripState::Off,
        WearState::Needed => StripState::Needed,
    }
}

/// A day as a strip: neighbouring stretches that show the same are one.
pub fn strip(day: &DayPlan) -> Strip {
    let mut strip: Strip = Vec::new();
    for segment in &day.segments {
        let state = shown(segment.state);
        match strip.last_mut() {
            Some((span, last)) if *last == state => {
                if let Some(longer) = ClockSpan::new(span.from(), segment.span.to()) {
                    *span = longer;
                }
            }
            _ => strip.push((segment.span, state)),
        }
    }
    strip
}

/// When it is on and off, phase by phase.
pub fn strips(case: &Case<'_>, plan: &Plan) -> Component {
    let breaking_in = cause::breaking_in(case, plan);
    let mut rows = Vec::new();
    let first = plan.days.first().map(|day| day.date);
    let build: Vec<&DayPlan> = plan.days.iter().filter(|day| day.kind == DayKind::Build).collect();
    if let (Some(first), Some(last_day)) = (first, build.last()) {
        let count = last_day.date.days_since(first) + 1;
        rows.push(StripRow {
            label: Message::new("strip-days").with("from", 1).with("to", i64::from(count)).because(breaking_in.clone()),
            dates: date_range(first, last_day.date).because(breaking_in.clone()),
            say: Message::new("strip-build").with("days", i64::from(count)).because(breaking_in),
            days: build.iter().map(|day| strip(day)).collect(),
        });
    }
    for (index, phase) in plan.phases.iter().enumerate() {
        let causes = cause::hours(case, phase);
        rows.extend(phase_rows(plan, index, phase).into_iter().map(|row| StripRow {
            label: row.label.because(causes.clone()),
            dates: row.dates.because(causes.clone()),
            say: row.say.because(causes.clone()),
            ..row
        }));
    }
    let states = [StripState::On, StripState::Off, StripState::Needed];
    let used = |state: StripState| rows.iter().any(|row| row.days.iter().flatten().any(|(_, shown)| *shown == state));
    let key = states
        .into_iter()
        .filter(|&state| used(state))
        .map(|state| StripKey { state, say: Message::new(key_of(plan, state)) })
        .collect();
    Component::Strips { key, rows }.because(cause::all_hours(case, plan))
}

/// The key of a state. What is on for part of the day is on for tasks, or for rest, or for both in turn.
fn key_of(plan: &Plan, state: StripState) -> String {
    let rest = plan.phases.iter().any(|phase| phase.wear.value == Regime::NightAndRest);
    let tasks = plan.phases.iter().any(|phase| phase.wear.value.is_for_tasks());
    let guards = plan.phases.iter().any(|phase| guards(phase.wear.value, phase.rules.protective));
    match state {
        StripState::Needed if guards => "strip-key-guard".to_owned(),
        StripState::Needed if rest && tasks => "strip-key-part".to_owned(),
        StripState::Needed if rest => "strip-key-rest".to_owned(),
        state => format!("strip-key-{state}"),
    }
}

/// The row of a phase after breaking in; a weaning phase has one for each step.
fn phase_rows(plan: &Plan, index: usize, phase: &PlannedPhase) -> Vec<StripRow> {
    let days: Vec<&DayPlan> = plan.days.iter().filter(|day| day.phase == index && day.kind != DayKind::Build).collect();
    let (Some(first), Some(last)) = (days.first(), days.last()) else { return Vec::new() };
    if phase.weaning.is_empty() {
        // The first day may still carry the night before; the second is a whole one.
        let typical = days.get(1).unwrap_or(first);
        return vec![StripRow {
            label: label(plan, first.date, last.date, phase),
            dates: if phase.until_review {
                date_until_review(first.date, plan.review)
            } else {
                date_range(first.date, last.date)
            },
            say: regime_message(phase, typical),
            days: vec![strip(typical)],
        }];
    }
    (0..phase.weaning.len())
        .filter_map(|step| {
            let own: Vec<&&DayPlan> = days.iter().filter(|day| day.weaning == Some(step)).collect();
            let (first, last) = (own.first()?, own.last()?);
            let typical = own.get(1).unwrap_or(first);
            let say = wean_message(&phase.weaning[step]);
            Some(StripRow {
                label: label(plan, first.date, last.date, phase),
                dates: date_range(first.date, last.date),
                say,
                days: vec![strip(typical)],
            })
        })
        .collect()
}

/// What a step of weaning says.
pub fn wean_message(rule: &WeaningStep) -> Message {
    if rule.awake.get() == 0 && rule.night {
        return Message::new("wear-night");
    }
    Message::new(if rule.night { "wear-wean-night" } else { "wear-wean-day" }).with("length", rule.awake)
}

/// "From day 5", "Weeks 5 to 8": counted from the fitting.
fn label(plan: &Plan, first: Date, last: Date, phase: &PlannedPhase) -> Message {
    let start = plan.days.first().map_or(first, |day| day.date);
    let (from, to) = (first.days_since(start), last.days_since(start));
    if phase.until_review || to > 730 {
        return Message::new("strip-from-day").with("from", i64::from(from + 1));
    }
    if from % 7 == 0 && (to + 1) % 7 == 0 {
        return Message::new("strip-weeks").with("from", i64::from(from / 7 + 1)).with("to", i64::from((to + 1) / 7));
    }
    Message::new("strip-days").with("from", i64::from(from + 1)).with("to", i64::from(to + 1))
}

pub fn date_range(from: Date, to: Date) -> Message {
    if from == to {
        return Message::new("say-short-date").with("date", Arg::ShortDate(from));
    }
    Message::new("date-range").with("from", Arg::ShortDate(from)).with("to", Arg::ShortDate(to))
}

fn date_until_review(from: Date, review: Date) -> Message {
    Message::new("date-until-visit").with("from", Arg::ShortDate(from)).with("to", Arg::ShortDate(review))
}

/// What a regime says, with the number of times it comes off.
pub fn regime_message(phase: &PlannedPhase, day: &DayPlan) -> Message {
    let regime = said(phase);
    let off = day
        .segments
        .iter()
        .filter(|segment| matches!(segment.state, WearState::OffExercise | WearState::OffWash))
        .count();
    let (bouts, each) = day.wears.unwrap_or((0, Minutes::new(0)));
    Message::new(format!("wear-{regime}"))
        .with("times", i64::try_from(off).unwrap_or(0))
        .with("bouts", i64::from(bouts))
        .with("each", each)
}

/// Healing tissue is guarded where knocks come from, not in hard tasks: those wait.
fn guards(regime: Regime, protective: bool) -> bool {
    protective && regime.is_for_tasks()
}

/// The word of a phase's regime in messages.
pub fn said(phase: &PlannedPhase) -> String {
    word(phase.wear.value, phase.rules.protective)
}

/// The same for a regime by itself.
pub fn word(regime: Regime, protective: bool) -> String {
    if guards(regime, protective) { format!("{regime}-guard") } else { regime.to_string() }
}

fn later(case: &Case<'_>, plan: &Plan) -> Option<Component> {
    let items: Vec<LaterItem> = plan
        .later
        .iter()
        .map(|phase| {
            let who = match phase.decided_by {
                Decider::Surgeon => "later-label-surgeon",
                Decider::Time | Decider::Person | Decider::Therapist => "later-label",
            };
            let say = match (phase.suits, phase.weans) {
                (false, _) => "later-other".to_owned(),
                (true, true) => "later-wean".to_owned(),
                (true, false) => format!("later-{}", word(phase.wear, phase.protective)),
            };
            let own = phase.of.as_str();
            let way = |field| [Step::field("phases"), Step::item(phase.id.as_str()), Step::field(field)];
            let causes = ["wear", "decided_by"].map(|field| Cause::rule("conditions", own, &way(field))).into_iter();
            let causes = cause::once([cause::condition(case, own)].into_iter().chain(causes));
            LaterItem { label: Message::new(who).because(causes.clone()), say: Message::new(say).because(causes) }
        })
        .collect();
    // Phases that say the same are said once, and the same label is not printed twice.
    let mut once: Vec<LaterItem> = Vec::new();
    for mut item in items {
        if !once.iter().any(|known| known.say == item.say) {
            if once.iter().any(|known| known.label == item.label) {
                item.label = Message::new("later-label-next").because(item.label.causes);
            }
            once.push(item);
        }
    }
    (!once.is_empty()).then_some(Component::Later(once))
}

/// When to stop, and whom to call.
pub fn warning(case: &Case<'_>, plan: &Plan) -> Component {
    let contact = Contact {
        emergency: case.clinic(|clinic| clinic.emergency.as_ref()),
        telephone: case.clinic(|clinic| clinic.telephone.as_ref()),
        hours: case.clinic(|clinic| clinic.hours.as_ref()),
    };
    stop_box(plan.washing(), &plan.signs, contact).because(cause::first(case, plan, "washing"))
}

/// Whom to call, as far as anybody has said.
#[derive(Clone, Default)]
pub struct Contact {
    pub emergency: Option<String>,
    pub telephone: Option<String>,
    /// When the telephone is answered, in the language of the sheet.
    pub hours: Option<String>,
}

/// The box with the signs of the first page, for a splint that comes off in this way.
pub fn stop_box(washing: Washing, known: &Signs, contact: Contact) -> Component {
    let how = match washing {
        Washing::Freely => "take-off",
        Washing::Supported => "supported",
        Washing::Never => "keep-on",
    };
    let signs = |wanted: &dyn Fn(&MessageId) -> bool| -> Vec<Message> {
        let said = |id: &MessageId| Message::new(format!("sign-{id}")).because([cause::sign(id)]);
        known.first_page.iter().filter(|id| wanted(id)).map(said).collect()
    };
    let urgent = signs(&|id| known.emergency.contains(id));
    let heading = match contact.emergency {
        Some(number) => {
            Message::new("warning-emergency").with("number", Arg::Literal(number)).because([Cause::clinic("emergency")])
        }
        None => Message::new("warning-emergency-no-number"),
    };
    Component::Warning {
        title: Message::new(format!("warning-title-{how}")),
        signs: signs(&|id| !known.emergency.contains(id)),
        emergency: (!urgent.is_empty()).then_some((heading, urgent)),
        act: Message::new(format!("warning-act-{how}")),
        telephone: contact.telephone,
        hours: contact.hours,
    }
}
