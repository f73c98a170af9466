//! All of the content, loaded and cross-checked.

use std::collections::BTreeMap;

use super::{
    Activity, Basis, Condition, Confirmation, Course, Exercise, Factor, General, Handling, Motion, NeedRule, Orthosis,
    Shape, Sign, Source, Spot, StepWeights, Structure, WearPattern,
};
use crate::body::Finger;
use crate::ids::{
    ActivityId, ConditionId, ExerciseId, FactorId, MessageId, NeedId, OrthosisId, SourceKey, StepId, StructureId,
    WearPatternId, nearest,
};
use crate::source::{SourceText, Span};

/// Everything in `content/` that is not words, fonts or templates. Maps are in the order of ids.
#[derive(Clone, Debug)]
pub struct Library {
    pub conditions: BTreeMap<ConditionId, Condition>,
    pub orthoses: BTreeMap<OrthosisId, Orthosis>,
    pub activities: BTreeMap<ActivityId, Activity>,
    pub exercises: BTreeMap<ExerciseId, Exercise>,
    pub factors: BTreeMap<FactorId, Factor>,
    pub patterns: BTreeMap<WearPatternId, WearPattern>,
    /// What orthoses look like.
    pub shapes: BTreeMap<OrthosisId, Shape>,
    /// What exercises look like.
    pub motions: BTreeMap<ExerciseId, Motion>,
    /// What steps of putting on and taking off look like.
    pub handling: BTreeMap<StepId, Handling>,
    /// What steps count for where there is room for few.
    pub steps: StepWeights,
    /// Where the spots of the skin check lie.
    pub spots: BTreeMap<MessageId, Spot>,
    pub needs: BTreeMap<NeedId, NeedRule>,
    pub signs: BTreeMap<MessageId, Sign>,
    /// Signs in the order of the file, which is the order on the sheet.
    pub sign_order: Vec<MessageId>,
    pub structures: BTreeMap<StructureId, Structure>,
    /// Where structures run.
    pub courses: Vec<Course>,
    pub sources: BTreeMap<SourceKey, Source>,
    pub general: General,
    /// What clinicians have confirmed.
    pub confirmed: Vec<Confirmation>,
    pub(super) files: BTreeMap<String, SourceText>,
}

impl Library {
    /// The orthoses that can be meant when this finger, or no single one, is treated, with the finger filled in.
    pub fn orthoses_for(&self, finger: Option<Finger>) -> impl Iterator<Item = (&OrthosisId, Orthosis)> {
        self.orthoses.iter().filter_map(move |(id, orthosis)| match finger {
            Some(finger) => Some((id, orthosis.for_finger(finger))),
            None if orthosis.needs_finger() => None,
            None => Some((id, orthosis.clone())),
        })
    }

    /// The exercises that can be given when this finger, or no single one, is treated, with the finger filled in.
    pub fn exercises_for(&self, finger: Option<Finger>) -> impl Iterator<Item = (&ExerciseId, Exercise)> {
        self.exercises.iter().filter_map(move |(id, exercise)| match finger {
            Some(finger) => Some((id, exercise.for_finger(finger))),
            None if exercise.needs_finger() => None,
            None => Some((id, exercise.clone())),
        })
    }

    /// The courses of a structure, in the thumb or in a finger when it is one that both have.
    pub fn courses_of(&self, structure: &StructureId, thumb: bool) -> Vec<Course> {
        let all = || self.courses.iter().filter(|course| course.id == *structure);
        let split = all().any(|course| course.thumb);
        all().filter(|course| !split || course.thumb == thumb).cloned().collect()
    }

    /// The text of a content file and the place of the first line that holds a word, for messages about it.
    pub fn place(&self, path: &str, word: &str) -> crate::source::Place {
        let source = self.files.get(path).cloned().unwrap_or_else(|| SourceText::new(path, ""));
        let at = source.text().find(word).unwrap_or(0);
        let end = if source.text().is_empty() { 0 } else { at + word.len().min(source.text().len() - at) };
        crate::source::Place { span: Span::new(at..end), source }
    }

    /// The text of a content file.
    pub fn file(&self, path: &str) -> Option<&SourceText> {
        self.files.get(path)
    }

    /// Whether the basis is a publication that was read, and how it is shown in a record.
    pub fn cite(&self, basis: &Basis) -> String {
        match basis {
            Basis::Published(key) => self.sources.get(key).map_or_else(
                || key.to_string(),
                |source| {
                    let read = if source.read { "" } else { " (figures recalled, not read again)" };
                    format!("{} {}, {}{read}", source.authors, source.year, source.published)
                },
            ),
            Basis::CommonPractice | Basis::FromMemory => basis.to_string(),
        }
    }
}

/// The "no such id" fault, with the nearest one that exists.
pub fn unknown<'a>(what: &str, id: &str, known: impl IntoIterator<Item = &'a str> + Clone) -> (String, String) {
    let help = match nearest(id, known.clone()) {
        Some(near) => format!("write `{near}`"),
        None => {
            let names: Vec<&str> = known.into_iter().take(12).collect();
            format!("use one of: {}", names.join(", "))
        }
    };
    (format!("no {what} is called `{id}`"), help)
}
