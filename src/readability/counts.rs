//! What is counted in a text.

use std::ops::AddAssign;

/// The counts that formulas are made of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    pub sentences: usize,
    pub words: usize,
    /// Zero where the language has no rule for syllables.
    pub syllables: usize,
    /// Letters and figures.
    pub letters: usize,
    /// Everything but spaces, marks among it: the strokes of the ARI.
    pub characters: usize,
    pub one_syllable: usize,
    /// Words of three syllables or more.
    pub three_syllables: usize,
    /// Words of four syllables or more.
    pub four_syllables: usize,
    /// Words of more letters than the language's row says, six where it says nothing.
    pub long: usize,
    /// Words that the plain words of the language have others for.
    pub hard: usize,
}

impl AddAssign for Counts {
    fn add_assign(&mut self, other: Self) {
        self.sentences += other.sentences;
        self.words += other.words;
        self.syllables += other.syllables;
        self.letters += other.letters;
        self.characters += other.characters;
        self.one_syllable += other.one_syllable;
        self.three_syllables += other.three_syllables;
        self.four_syllables += other.four_syllables;
        self.long += other.long;
        self.hard += other.hard;
    }
}
