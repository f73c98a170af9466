//! The teach-back list said twice: for the clinician who ticks, and for the person who is asked.

use super::Words;
use crate::body::Side;
use crate::diag::Diagnostic;
use crate::document::{TeachBack, TeachTopic};
use crate::language::Language;

/// The questions about one hand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SaidTeachBack {
    pub side: Side,
    pub questions: Vec<SaidQuestion>,
}

/// A question in both languages, and what a right answer holds in the clinician's.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SaidQuestion {
    pub topic: TeachTopic,
    pub ask: String,
    /// The same in the person's language.
    pub asked: String,
    pub points: Vec<String>,
}

/// Says the questions of each hand. What is about the person and the same for both hands is asked once.
///
/// # Errors
/// When one of them cannot be said in one of the languages.
pub fn ask_back(
    words: &Words,
    clinician: &Language,
    person: &Language,
    list: &[TeachBack],
) -> Result<Vec<SaidTeachBack>, Diagnostic> {
    let (own, theirs) = (words.speaker(clinician)?, words.speaker(person)?);
    let mut hands: Vec<SaidTeachBack> = Vec::new();
    for hand in list {
        let mut questions = Vec::new();
        for question in &hand.questions {
            let points: Result<Vec<String>, Diagnostic> =
                question.points.iter().map(|point| own.say(point, &hand.args)).collect();
            let said = SaidQuestion {
                topic: question.topic,
                ask: own.say(&question.ask, &hand.args)?,
                asked: theirs.say(&question.ask, &hand.args)?,
                points: points?,
            };
            let known = question.topic.of_person() && hands.iter().any(|before| before.questions.contains(&said));
            if !known {
                questions.push(said);
            }
        }
        hands.push(SaidTeachBack { side: hand.side, questions });
    }
    Ok(hands)
}
