//! What every rule of the content rests on.

use super::super::{Basis, Library, Phase};

/// How many rules there are, and what they rest on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Bases {
    pub published: usize,
    pub common_practice: usize,
    pub from_memory: usize,
}

impl Bases {
    pub fn rules(&self) -> usize {
        self.published + self.common_practice + self.from_memory
    }

    fn count(&mut self, basis: &Basis) {
        match basis {
            Basis::Published(_) => self.published += 1,
            Basis::CommonPractice => self.common_practice += 1,
            Basis::FromMemory => self.from_memory += 1,
        }
    }
}

/// Counts the bases of all rules.
pub fn bases(library: &Library) -> Bases {
    let mut all = Bases::default();
    for condition in library.conditions.values() {
        all.count(&condition.source);
        condition.protocol.iter().for_each(|protocol| all.count(&protocol.source));
        condition.phases.iter().flat_map(of_phase).for_each(|basis| all.count(basis));
    }
    let files = library
        .orthoses
        .values()
        .map(|orthosis| &orthosis.source)
        .chain(library.activities.values().map(|activity| &activity.source))
        .chain(library.exercises.values().map(|exercise| &exercise.source))
        .chain(library.factors.values().map(|factor| &factor.source))
        .chain(library.patterns.values().map(|pattern| &pattern.source))
        .chain(library.needs.values().map(|need| &need.source))
        .chain(library.signs.values().map(|sign| &sign.source))
        .chain([&library.general.source]);
    files.for_each(|basis| all.count(basis));
    all
}

fn of_phase(phase: &Phase) -> impl Iterator<Item = &Basis> {
    phase
        .all_requirements()
        .map(|requirement| &requirement.source)
        .chain(phase.one_of.iter().map(|one| &one.source))
        .chain(phase.never.iter().map(|never| &never.source))
        .chain([&phase.source, &phase.exercises.source, &phase.activities.source])
}
