//! Paths that are written already, in a mirror. All coordinates are whole, so nothing is rounded a second time.

use super::PathText;

/// A letter of a path with its numbers, as they stand there.
struct Step {
    letter: char,
    numbers: Vec<i64>,
}

fn steps(text: &str) -> Vec<Step> {
    let mut found: Vec<Step> = Vec::new();
    let mut number = String::new();
    // A number ends where a letter, a blank or a minus stands; the letter at the end closes the last one.
    for letter in text.chars().chain(['z']) {
        if !letter.is_ascii_digit() {
            if let (Some(step), Ok(value)) = (found.last_mut(), number.parse()) {
                step.numbers.push(value);
            }
            number.clear();
        }
        match letter {
            'a'..='z' | 'A'..='Z' => found.push(Step { letter, numbers: Vec::new() }),
            '-' | '0'..='9' => number.push(letter),
            _ => {}
        }
    }
    found.pop();
    found
}

fn written(steps: &[Step], nodes: usize) -> PathText {
    let mut text = String::new();
    for step in steps {
        text.push(step.letter);
        for (i, value) in step.numbers.iter().enumerate() {
            // As the path was written: after a start every number has its blank.
            if i > 0 && (*value >= 0 || step.letter == 'M') {
                text.push(' ');
            }
            text.push_str(&value.to_string());
        }
    }
    PathText::known(&text, nodes)
}

impl PathText {
    /// The mirror image of the path on paper that is so many units wide.
    #[must_use]
    pub fn mirrored(&self, width: i64) -> Self {
        let mut steps = steps(self.text());
        for step in &mut steps {
            let start = if step.letter == 'M' { width } else { 0 };
            step.numbers.iter_mut().step_by(2).for_each(|x| *x = start - *x);
        }
        written(&steps, self.nodes)
    }

    /// The path where its mirror image would stand, itself not turned round.
    #[must_use]
    pub fn moved(&self, width: i64) -> Self {
        let mut steps = steps(self.text());
        let Some((low, high)) = breadth(&steps) else { return self.clone() };
        let shift = width - low - high;
        for step in steps.iter_mut().filter(|step| step.letter == 'M') {
            step.numbers.iter_mut().take(1).for_each(|x| *x += shift);
        }
        written(&steps, self.nodes)
    }
}

/// The least and greatest x of a path and of the handles of its curves.
fn breadth(steps: &[Step]) -> Option<(i64, i64)> {
    let (mut at, mut start) = (0, 0);
    let mut found: Option<(i64, i64)> = None;
    for step in steps {
        let from = if step.letter == 'M' { 0 } else { at };
        for x in step.numbers.iter().step_by(2) {
            at = from + x;
            found = Some(found.map_or((at, at), |(low, high)| (low.min(at), high.max(at))));
        }
        match step.letter {
            'M' => start = at,
            'z' => at = start,
            _ => {}
        }
    }
    found
}
