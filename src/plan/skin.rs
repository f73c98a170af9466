//! The skin check, and the signs that mean stop.

use super::chosen::Chosen;
use super::rules::Rules;
use crate::case::{Case, Subject};
use crate::content::{Condition, Library, TriageLevel};
use crate::ids::MessageId;
use crate::units::{Minutes, TimesPerDay};

/// How the skin is looked after.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SkinRules {
    /// How long a mark may stay.
    pub mark_limit: Chosen<Minutes>,
    /// Checks a day.
    pub checks: TimesPerDay,
    /// How long loosening may take to bring feeling or colour back.
    pub loosen_limit: Minutes,
}

/// Signs by urgency, in the order of the content.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Signs {
    pub first_page: Vec<MessageId>,
    pub emergency: Vec<MessageId>,
    pub today: Vec<MessageId>,
    pub visit: Vec<MessageId>,
}

/// The stricter of the general rule and the person's factors.
pub fn plan(case: &Case<'_>, rules: &mut Rules<'_, '_>) -> SkinRules {
    let general = &case.library.general;
    let mut limit = (general.mark_limit, general.source.clone());
    let mut checks = (general.skin_checks, general.source.clone());
    for (_, factor) in &case.factors {
        if let Some(stricter) = factor.mark_limit.filter(|minutes| *minutes < limit.0) {
            limit = (stricter, factor.source.clone());
        }
        if let Some(stricter) = factor.skin_checks.filter(|count| *count > checks.0) {
            checks = (stricter, factor.source.clone());
        }
    }
    rules.rule("skin checks a day", checks.0, &checks.1);
    let ruled = limit.0;
    let mark_limit = rules.choose(
        "how long a mark on the skin may stay",
        ruled,
        &limit.1,
        |subject| match subject {
            Subject::MarkLimit(minutes) => Some(*minutes),
            _ => None,
        },
        |minutes| {
            (*minutes > ruled)
                .then(|| format!("a mark that stays {minutes} is longer than the {ruled} this skin allows"))
        },
    );
    SkinRules { mark_limit, checks: checks.0, loosen_limit: general.loosen_limit }
}

/// The signs of this case.
pub fn signs(case: &Case<'_>) -> Signs {
    let own: Vec<&Condition> = case.conditions.iter().map(|treated| &treated.condition).collect();
    signs_of(case.library, &own)
}

/// The signs of anybody with these conditions.
pub fn signs_of(library: &Library, conditions: &[&Condition]) -> Signs {
    let applies = |id: &MessageId| {
        let own = conditions.iter().any(|condition| condition.signs.contains(id));
        own || library.signs.get(id).is_some_and(|sign| sign.always)
    };
    let at = |level: TriageLevel| -> Vec<MessageId> {
        library
            .sign_order
            .iter()
            .filter(|id| applies(id) && library.signs.get(*id).is_some_and(|sign| sign.level == level))
            .cloned()
            .collect()
    };
    Signs {
        first_page: library
            .sign_order
            .iter()
            .filter(|id| library.signs.get(*id).is_some_and(|sign| sign.first_page))
            .cloned()
            .collect(),
        emergency: at(TriageLevel::Emergency),
        today: at(TriageLevel::Today),
        visit: at(TriageLevel::Visit),
    }
}
