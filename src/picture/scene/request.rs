//! The question and the answer.

use crate::body::{Finger, Joint, Side, View};
use crate::content::{Course, Extent, Fault, Handling, Motion, Orthosis, Shape, SkinPoint};
use crate::picture::limb::{Build, Posture};
use crate::picture::plate::Drawing;
use crate::picture::view::Dot;
use crate::picture::wear::StrapState;

/// An orthosis as it is drawn: its joint table and its look.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Worn {
    pub orthosis: Orthosis,
    pub shape: Shape,
}

/// What is shown.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Subject {
    /// A bare limb in a posture.
    Bare(Posture),
    /// An orthosis in its place, closed.
    Worn(Box<Worn>),
    /// A step of putting it on, or of taking it off.
    Step { worn: Box<Worn>, handling: Handling, straps: Vec<StrapState>, off: bool },
    /// The spots of the skin check on the bare limb, with the edges of the orthosis's sheets lightly drawn. Each spot with its
    /// number in the list of the text.
    Spots { worn: Box<Worn>, places: Vec<(usize, SkinPoint)> },
    /// An exercise: the movement into its `step`th posture, 0 for the first.
    Exercise { motion: Motion, step: usize, worn: Option<Box<Worn>> },
    /// An orthosis in its place, marked as right, or with a typical fault, marked as wrong; both in the same frame.
    Pair { worn: Box<Worn>, fault: Fault, wrong: bool },
    /// The inside of the limb: bones, structures with their names, and the joints that are held. A structure of a finger
    /// is shown in each of `fingers`, or in the finger of the request when none is named. `legend` is the size of the
    /// words for the mark on held joints; their label has the number after those of all structures.
    Anatomy {
        posture: Posture,
        structures: Vec<Named>,
        held: Vec<Joint>,
        fingers: Vec<Finger>,
        legend: Option<(u16, u16)>,
    },
}

impl Subject {
    /// A number for pictures that are likely to show the same limb in the same posture.
    pub const fn kind(&self) -> u8 {
        match self {
            Self::Worn(_) => 0,
            Self::Step { .. } => 1,
            Self::Pair { .. } => 2,
            Self::Spots { .. } => 3,
            Self::Anatomy { .. } => 4,
            Self::Exercise { .. } => 5,
            Self::Bare(_) => 6,
        }
    }
}

/// A structure with its number in the text, its courses, and the size of its name in units of the picture.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Named {
    pub number: usize,
    pub courses: Vec<Course>,
    pub wide: u16,
    pub high: u16,
}

/// A picture that is wanted. Two equal requests give the same bytes.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Request {
    pub subject: Subject,
    pub side: Side,
    /// The finger that is meant where content says `finger`.
    pub finger: Finger,
    pub view: View,
    pub extent: Extent,
    pub build: Build,
    /// The widest and highest it may be on paper, mm.
    pub width: u16,
    pub height: u16,
}

impl Request {
    /// A name for the answer: the same for equal requests, another one for others and for another engine.
    pub fn key(&self) -> String {
        /// Raised with every change that changes a picture.
        const ENGINE: &str = "4";
        blake3::hash(format!("{ENGINE} {self:?}").as_bytes()).to_hex().to_string()
    }
}

impl Request {
    /// The same with the sizes of its names, in units of the picture, in the order of their numbers; the last is that of
    /// the words for held joints.
    #[must_use]
    pub fn lettered(&self, sizes: &[(u16, u16)]) -> Self {
        let mut own = self.clone();
        if let Subject::Anatomy { structures, legend, .. } = &mut own.subject {
            for one in structures.iter_mut() {
                (one.wide, one.high) = sizes.get(one.number).copied().unwrap_or((one.wide, one.high));
            }
            *legend = sizes.last().copied();
        }
        own
    }
}

/// What a label says; the words are put in by whoever sets the page.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LabelText {
    /// A letter of the list of spots, by its number from 0.
    Letter(usize),
    /// A number, such as a strap's.
    Number(usize),
    /// The name of a structure, by its number.
    Structure(usize),
}

impl LabelText {
    /// As text, with letters as a language writes them; a number, from 1, where it has no such letter.
    pub fn said(self, letter: impl FnOnce(usize) -> Option<String>) -> String {
        match self {
            Self::Letter(number) => letter(number).unwrap_or_else(|| (number + 1).to_string()),
            Self::Number(number) | Self::Structure(number) => number.to_string(),
        }
    }
}

/// On which side the lines of a label are even: on the one that faces what it names.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Even {
    Neither,
    Left,
    Right,
}

/// A label and where its middle stands, in units of the picture.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Label {
    pub at: Dot,
    pub text: LabelText,
    pub even: Even,
    /// How wide it is; 0 where its middle is enough.
    pub wide: f64,
}

/// A picture without words.
#[derive(Clone, Debug, Default)]
pub struct Picture {
    pub drawing: Drawing,
    pub labels: Vec<Label>,
}
