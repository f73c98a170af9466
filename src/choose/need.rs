//! What a person needs of an orthosis besides its fit.

use crate::content::{NeedRule, Orthosis, Trait};
use crate::ids::NeedId;

/// How an orthosis meets one need.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NeedMatch {
    pub id: NeedId,
    /// What it has that the need asks for.
    pub met: Option<String>,
    /// What it has that the need forbids.
    pub against: Option<String>,
}

/// Looks at one orthosis.
pub fn look(id: &NeedId, rule: &NeedRule, orthosis: &Orthosis) -> NeedMatch {
    let has = |list: &[Trait]| {
        list.iter().find(|wanted| wanted.holds(orthosis)).map(|found| format!("{} ({found})", rule.name))
    };
    let against = has(&rule.avoids);
    NeedMatch { id: id.clone(), met: if against.is_some() { None } else { has(&rule.prefers) }, against }
}

/// Two needs that pull apart: what one prefers the other avoids, trait for trait.
pub fn contradiction(needs: &[(NeedId, &NeedRule)]) -> Option<(NeedId, NeedId, String)> {
    needs.iter().enumerate().find_map(|(index, (one, rule))| {
        needs[index + 1..].iter().find_map(|(other, second)| {
            let apart = |prefers: &[Trait], avoids: &[Trait]| {
                !prefers.is_empty() && prefers.iter().all(|wanted| avoids.contains(wanted))
            };
            (apart(&rule.prefers, &second.avoids) || apart(&second.prefers, &rule.avoids))
                .then(|| (one.clone(), other.clone(), format!("{} goes against {}", rule.name, second.name)))
        })
    })
}
