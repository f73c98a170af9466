//! What a person may need of an orthosis, and what answers it.

use std::fmt;

use super::basis::Basis;
use super::orthosis::{Action, Base, Glove, Made, Material, Orthosis, Substance, Water};
use crate::ids::NeedId;
use crate::source::record;
use crate::units::Level;

record! {
    /// Properties of an orthosis, all of which must hold. What is not named does not matter.
    pub struct Trait ("a trait") {
        /// Any of these.
        pub material: Vec<Material>,
        pub base: Vec<Base>,
        pub water: Vec<Water>,
        pub glove: Vec<Glove>,
        pub made: Vec<Made>,
        pub action: Vec<Action>,
        pub contains: Vec<Substance>,
        pub bulk_at_least: Option<Level>,
        pub bulk_at_most: Option<Level>,
        pub straps_at_least: Option<Level>,
        pub straps_at_most: Option<Level>,
    }
}

record! {
    /// A need, and the traits that answer it or go against it.
    pub struct NeedRule ("a need") {
        pub id: NeedId,
        /// English, for the clinician.
        pub name: String,
        /// Any of these answers it.
        pub prefers: Vec<Trait>,
        /// Any of these goes against it.
        pub avoids: Vec<Trait>,
        pub because: String,
        pub source: Basis,
    }
}

impl Trait {
    /// Whether an orthosis has it.
    pub fn holds(&self, orthosis: &Orthosis) -> bool {
        fn among<T: PartialEq>(list: &[T], own: &T) -> bool {
            list.is_empty() || list.contains(own)
        }
        let straps = u8::try_from(orthosis.straps.len()).unwrap_or(u8::MAX);
        let bulk = orthosis.bulk.get();
        let least = |level: Option<Level>, own: u8| level.is_none_or(|level| own >= level.get());
        let most = |level: Option<Level>, own: u8| level.is_none_or(|level| own <= level.get());
        among(&self.material, &orthosis.material)
            && among(&self.base, &orthosis.base)
            && among(&self.water, &orthosis.water)
            && among(&self.glove, &orthosis.glove)
            && among(&self.made, &orthosis.made)
            && among(&self.action, &orthosis.action)
            && (self.contains.is_empty() || self.contains.iter().any(|one| orthosis.contains.contains(one)))
            && least(self.bulk_at_least, bulk)
            && most(self.bulk_at_most, bulk)
            && least(self.straps_at_least, straps)
            && most(self.straps_at_most, straps)
    }
}

impl fmt::Display for Trait {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fn words<T: fmt::Display>(list: &[T]) -> Option<String> {
            (!list.is_empty()).then(|| list.iter().map(ToString::to_string).collect::<Vec<_>>().join(" or "))
        }
        let level = |what: &str, level: Option<Level>| level.map(|level| format!("{what} {level}"));
        let parts: Vec<String> = [
            words(&self.material),
            words(&self.base).map(|base| format!("{base}-based")),
            words(&self.water).map(|water| format!("wet: {water}")),
            words(&self.glove).map(|glove| format!("in a glove: {glove}")),
            words(&self.made),
            words(&self.action),
            words(&self.contains).map(|contains| format!("contains {contains}")),
            level("bulk at least", self.bulk_at_least),
            level("bulk at most", self.bulk_at_most),
            level("straps at least", self.straps_at_least),
            level("straps at most", self.straps_at_most),
        ]
        .into_iter()
        .flatten()
        .collect();
        f.write_str(&parts.join(", "))
    }
}
