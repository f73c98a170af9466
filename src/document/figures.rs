//! The pictures of a guide: what each shows, and the sentences that say so to who cannot see it.

use super::message::{Arg, Message};
use super::section::side;
use crate::body::{Build, Finger, Joint, Knuckle, View};
use crate::case::Case;
use crate::content::{Extent, Hold, Orthosis, PrintSize};
use crate::ids::{ExerciseId, OrthosisId, StepId};
use crate::picture::asks::{self, Sitter, Way};
use crate::picture::scene::{Request, Worn};

/// A picture to be drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    pub request: Request,
    /// The name of what is drawn.
    pub key: String,
    /// What it shows, sentence by sentence.
    pub alt: Vec<Message>,
    /// The names of the structures that it labels, by the numbers of its labels; their sizes are known only to who sets
    /// the page.
    pub names: Vec<StructureName>,
}

/// What a structure is called: the plain name, and the learned one for who learns it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StructureName {
    pub plain: Message,
    pub term: Option<Message>,
}

impl Figure {
    /// A picture, said from where it is seen and then what it shows.
    pub fn new(request: Request, says: Vec<Message>) -> Self {
        let mut alt = vec![seen(&request)];
        alt.extend(says);
        Self { key: request.key(), request, alt, names: Vec::new() }
    }
}

/// Makes the pictures of one case.
pub struct Figures<'c> {
    case: &'c Case<'c>,
    /// The case's own orthosis, with the angles it is set to; nothing when nobody has described its look.
    worn: Option<Worn>,
    finger: Finger,
}

/// The widest and highest that a picture is asked for at each print size, mm. Pages of large print show it larger than
/// that, so that lines and letters grow with the words.
#[derive(Clone, Copy)]
struct Size {
    standard: (u16, u16),
    large: (u16, u16),
    giant: (u16, u16),
}

const HAND: Size = Size { standard: (48, 62), large: (42, 52), giant: (42, 52) };
const STEP: Size = Size { standard: (46, 46), large: (48, 44), giant: (48, 44) };
/// Letters keep the size that they are made for: large print shows a map half as large again, giant print twice.
const MAP: Size = Size { standard: (58, 66), large: (44, 50), giant: (40, 44) };
const MOVE: Size = Size { standard: (76, 46), large: (60, 42), giant: (60, 42) };

impl<'c> Figures<'c> {
    pub fn of(case: &'c Case<'c>) -> Self {
        let finger = case.finger.unwrap_or(Finger::Index);
        let worn = case
            .library
            .shapes
            .get(&case.file.orthosis.value)
            .map(|shape| Worn { orthosis: case.orthosis.for_finger(finger), shape: shape.clone() });
        Self { case, worn, finger }
    }

    fn sitter(&self, size: Size) -> Sitter {
        let (width, height) = match self.case.print() {
            PrintSize::Standard => size.standard,
            PrintSize::Large => size.large,
            PrintSize::Giant => size.giant,
        };
        Sitter {
            side: self.case.file.hand,
            finger: self.finger,
            build: self.case.factors.iter().find_map(|(_, factor)| factor.build).unwrap_or(Build::Adult),
            width,
            height,
        }
    }

    /// Which splint on which hand: twice, so that it is known from either side.
    pub fn hand(&self) -> Vec<Figure> {
        let Some(worn) = &self.worn else { return Vec::new() };
        let sitter = self.sitter(HAND);
        let mut second = asks::orthosis(&sitter, worn, None);
        let mut first = asks::orthosis(&sitter, worn, Some(View::Dorsal));
        if second.extent == Extent::Finger {
            // A piece on one finger: where it is on the hand, and what it looks like close by.
            first.extent = Extent::Hand;
            second.view = View::Radial;
        } else if second.view == first.view {
            second.view = View::Turned;
        }
        let says = || {
            let mut says = vec![covers(&self.case.file.orthosis.value, &worn.orthosis)];
            says.extend(super::glance::free_joints(&self.case.orthosis));
            says
        };
        vec![Figure::new(first, says()), Figure::new(second, says())]
    }

    /// The pictures of steps: one for each step, or none.
    pub fn steps(&self, steps: &[StepId], off: bool) -> Vec<Option<Request>> {
        let mut found = vec![None; steps.len()];
        let Some(worn) = &self.worn else { return found };
        let sitter = self.sitter(STEP);
        let way = if off { Way::Off } else { Way::On };
        for step in asks::steps_of(&sitter, self.case.library, worn, steps, way, None) {
            found[step.number] = Some(step.request);
        }
        found
    }

    /// A step's picture, described by its own sentence.
    pub fn step(&self, request: Request, sentence: &Message) -> Figure {
        Figure::new(request, vec![sentence.clone()])
    }

    /// Where to look in the skin check.
    pub fn spots(&self) -> Vec<Figure> {
        let Some(worn) = &self.worn else { return Vec::new() };
        let places = asks::places(self.case.library, &self.case.file.orthosis.value);
        asks::spots(&self.sitter(MAP), worn, &places, None)
            .into_iter()
            .map(|request| Figure::new(request, vec![Message::new("picture-spots")]))
            .collect()
    }

    /// The movements of an exercise.
    pub fn exercise(&self, id: &ExerciseId, in_splint: bool) -> Vec<Figure> {
        let Some(motion) = self.case.library.motions.get(id) else { return Vec::new() };
        let worn = self.worn.as_ref().filter(|_| in_splint);
        let requests = asks::exercise(&self.sitter(MOVE), motion, worn, None);
        let count = requests.len();
        let moved = if motion.then.is_empty() { "picture-held" } else { "picture-moved" };
        let say = Message::new(moved).with("exercise", Message::new(format!("exercise-{id}-name")));
        (1_i64..)
            .zip(requests)
            .map(|(number, request)| {
                let part = Message::new("picture-part")
                    .with("number", number)
                    .with("count", i64::try_from(count).unwrap_or(i64::MAX));
                let says = if count > 1 { vec![part, say.clone()] } else { vec![say.clone()] };
                Figure::new(request, says)
            })
            .collect()
    }
}

/// From where to where a splint reaches.
pub fn covers(id: &OrthosisId, orthosis: &Orthosis) -> Message {
    Message::new("picture-covers")
        .with("splint", Message::new(format!("orthosis-{id}-short")))
        .with("from", Arg::Keyword(orthosis.base.word()))
        .with("to", Arg::Keyword(furthest(orthosis)))
}

/// What a picture is of, and from where it is seen.
pub fn seen(request: &Request) -> Message {
    let what = match request.extent {
        Extent::Finger => "finger",
        Extent::Hand | Extent::Forearm | Extent::Elbow => "hand",
    };
    Message::new("picture-seen")
        .with("side", side(request.side))
        .with("view", Arg::Keyword(request.view.word()))
        .with("what", Arg::Keyword(what))
        .with("finger", Arg::Keyword(request.finger.word()))
}

/// The word for the furthest part that a splint acts on.
fn furthest(orthosis: &Orthosis) -> &'static str {
    let acts = |test: &dyn Fn(Joint) -> bool| {
        orthosis.joints.iter().any(|(name, hold)| !matches!(hold, Hold::Free) && name.joints().into_iter().any(test))
    };
    let finger = |knuckle: Knuckle| acts(&|joint| Finger::ALL.iter().any(|finger| knuckle.of(*finger) == joint));
    let single = orthosis.needs_finger();
    match () {
        () if finger(Knuckle::Dip) => {
            if single {
                "fingertip"
            } else {
                "fingertips"
            }
        }
        () if finger(Knuckle::Pip) || finger(Knuckle::Mcp) => {
            if single {
                "finger"
            } else {
                "fingers"
            }
        }
        () if acts(&|joint| joint == Joint::ThumbIp) => "thumb-tip",
        () if acts(&|joint| matches!(joint, Joint::ThumbMcp | Joint::ThumbCmc)) => "thumb",
        () if acts(&|joint| joint == Joint::Wrist) => "palm",
        () => "none",
    }
}
