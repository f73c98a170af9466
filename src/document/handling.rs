//! Putting on and taking off, the skin check, looking after the splint.

use super::cause::{self, Cause};
use super::component::{CareItem, Component, StepItem, StepKind};
use super::figures::Figures;
use super::message::Message;
use super::section::{Section, advice, filled, sentences, side};
use crate::case::{Case, Subject};
use crate::content::{Material, SheetArea, Washing, Water};
use crate::ids::{MessageId, StepId};
use crate::plan::Plan;
use crate::source::Step;

/// The steps that stand once for each strap.
pub const CLOSE: &str = "close-strap";
pub const UNDO: &str = "undo-strap";

pub fn on_off(case: &Case<'_>, plan: &Plan, figures: &Figures<'_>) -> Option<Section> {
    let straps = &case.orthosis.straps;
    let undone: Vec<&MessageId> = straps.iter().rev().collect();
    let never_off = plan.washing() == Washing::Never;
    let on = steps(case, &plan.donning.value, &straps.iter().collect::<Vec<_>>(), CLOSE, figures);
    let off = steps(case, &plan.doffing.value, &undone, UNDO, figures);
    let mut more: Vec<Message> = cautions(plan)
        .into_iter()
        .map(|say| {
            say.because(cause::first(case, plan, "washing").into_iter().chain(cause::first(case, plan, "support")))
        })
        .collect();
    if !never_off {
        more.extend(advice(case, SheetArea::OnOff));
    }
    let shown = |kind: StepKind, items: Vec<StepItem>| if never_off { None } else { component(kind, items) };
    let section = filled(
        "on-off",
        vec![("on", shown(StepKind::On, on)), ("off", shown(StepKind::Off, off)), ("advice", sentences(more))],
    );
    section.map(|section| section.because(cause::first(case, plan, "washing")))
}

/// What must be known before the splint comes off, if it may.
pub fn cautions(plan: &Plan) -> Vec<Message> {
    let support = plan.phases.first().and_then(|phase| phase.rules.support.as_ref());
    let mut more: Vec<Message> =
        support.map(|support| Message::new(format!("support-{support}"))).into_iter().collect();
    if plan.washing() == Washing::Never {
        more.insert(0, Message::new("steps-never"));
    }
    more
}

pub fn component(kind: StepKind, items: Vec<StepItem>) -> Option<Component> {
    (!items.is_empty()).then(|| Component::Steps { kind, title: Message::new(format!("steps-{kind}")), items })
}

/// The names of the straps in the order in which they are closed, or undone.
pub fn straps(case: &Case<'_>, kind: StepKind) -> Vec<Message> {
    let named = case.orthosis.straps.iter().map(|strap| Message::new(format!("strap-{strap}")));
    match kind {
        StepKind::On => named.collect(),
        StepKind::Off => named.rev().collect(),
    }
}

/// Steps as messages; a strap step takes the next strap in order.
fn steps(
    case: &Case<'_>,
    steps: &[StepId],
    straps: &[&MessageId],
    strap_step: &str,
    figures: &Figures<'_>,
) -> Vec<StepItem> {
    let mut straps = straps.iter();
    steps
        .iter()
        .zip(figures.steps(steps, strap_step == UNDO))
        .map(|(step, request)| {
            let strap = if step.as_str() == strap_step { straps.next() } else { None };
            let list = if strap_step == UNDO { "doffing" } else { "donning" };
            let say = self::step(case, step, strap.map(|strap| Message::new(format!("strap-{strap}"))))
                .because(steps_rule(case, list, step));
            let figure = request.map(|request| figures.step(request, &say));
            StepItem { say, figure }
        })
        .collect()
}

/// Where a step stands: in the orthosis, or in what the therapist set instead.
fn steps_rule(case: &Case<'_>, list: &str, step: &StepId) -> Vec<Cause> {
    let own = |wanted: &Subject| {
        matches!((wanted, list), (Subject::Donning(_), "donning") | (Subject::Doffing(_), "doffing"))
    };
    if case.overrides.iter().any(|entry| own(&entry.subject)) {
        return vec![Cause::case("overrides")];
    }
    let one_handed = list == "donning" && case.any_factor(|factor| factor.one_handed);
    let list = if one_handed { "one_handed" } else { list };
    let mut causes = cause::orthosis(case, &[Step::field(list), Step::item(step.as_str())]);
    if one_handed {
        let helped = case.factors.iter().filter(|(_, factor)| factor.one_handed);
        causes.extend(helped.flat_map(|(id, _)| cause::factor(id.as_str(), &[Step::field("one_handed")])));
    }
    causes
}

/// A step as a message; a strap step names its strap.
pub fn step(case: &Case<'_>, step: &StepId, strap: Option<Message>) -> Message {
    let message = Message::new(format!("step-{step}")).with("side", side(case.file.hand));
    if matches!(step.as_str(), CLOSE | UNDO) {
        return message.with("strap", strap.unwrap_or_else(|| Message::new("strap-next")));
    }
    message
}

pub fn skin(case: &Case<'_>, plan: &Plan, figures: &Figures<'_>) -> Option<Section> {
    let spot = |spot: &MessageId| {
        let way = [Step::field("pressure_spots"), Step::item(spot.as_str())];
        Message::new(format!("spot-{spot}")).because(cause::orthosis(case, &way))
    };
    let spots = case.orthosis.pressure_spots.iter().map(spot).collect();
    let (mut fine, not) = marks(plan);
    if !case.orthosis.straps.is_empty() {
        fine.insert(1, Message::new("skin-fine-lines"));
    }
    let act = act(plan).because(cause::first(case, plan, "washing"));
    let checks = Component::Checks { fine, not, act }.because(cause::skin(case, plan));
    let section = filled(
        "skin",
        vec![
            ("spots", Some(Component::Spots { items: spots, figures: figures.spots() })),
            ("checks", Some(checks)),
            ("advice", sentences(advice(case, SheetArea::Skin))),
        ],
    );
    section.map(|section| section.because(cause::orthosis(case, &[Step::field("pressure_spots")])))
}

/// What on the skin is fine, and what is not.
pub fn marks(plan: &Plan) -> (Vec<Message>, Vec<Message>) {
    let limit = plan.skin.mark_limit.value;
    let fine = vec![Message::new("skin-fine-mark").with("limit", limit), Message::new("skin-fine-damp")];
    let not = vec![
        Message::new("skin-not-mark").with("limit", limit),
        Message::new("skin-not-dark").with("limit", limit),
        Message::new("skin-not-blister"),
        Message::new("skin-not-rash"),
        Message::new("skin-not-wet"),
    ];
    (fine, not)
}

/// What to do when something on the skin is not fine.
pub fn act(plan: &Plan) -> Message {
    let freely = plan.washing() == Washing::Freely;
    Message::new(if freely { "skin-act-take-off" } else { "skin-act-keep" })
}

pub fn care(case: &Case<'_>, plan: &Plan) -> Option<Section> {
    let orthosis = &case.orthosis;
    let plastic = matches!(orthosis.material, Material::Rigid | Material::Flexible);
    let soft = matches!(orthosis.material, Material::Soft | Material::SoftWithStay);
    let item = |never: bool, key: &str| CareItem { never, say: Message::new(key.to_owned()) };
    let mut items = Vec::new();
    let never_off = plan.washing() == Washing::Never;
    if plastic && !never_off && orthosis.water != Water::No {
        items.extend([item(false, "care-wash-plastic"), item(false, "care-dry-plastic")]);
    }
    if plastic {
        items.push(item(true, "care-heat"));
    }
    if soft && !never_off {
        items.extend([item(false, "care-wash-soft"), item(false, "care-dry-soft"), item(true, "care-machine")]);
    }
    if orthosis.material == Material::Metal {
        items.push(item(false, "care-metal"));
    }
    if never_off || orthosis.material == Material::Cast || orthosis.water == Water::No {
        items.push(item(false, "care-keep-dry"));
    }
    if !orthosis.straps.is_empty() && !never_off {
        items.push(item(false, "care-straps"));
    }
    items.extend([item(true, "care-change"), item(true, "care-share"), item(false, "care-bring")]);
    let made = ["material", "water"].map(|field| cause::orthosis(case, &[Step::field(field)]));
    let care = Component::Care(items).because(made.into_iter().flatten().chain(cause::first(case, plan, "washing")));
    filled("care", vec![("care", Some(care)), ("advice", sentences(advice(case, SheetArea::Care)))])
}
