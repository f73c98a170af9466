//! The joints that a splint can hold, and the names that stand for several of them.

use std::fmt;
use std::str::FromStr;

use crate::ids::one_of;
use crate::source::{choice, text_value};
use crate::units::Misread;

choice! {
    /// A finger; the thumb is not one.
    pub enum Finger ("finger") {
        Index = "index",
        Middle = "middle",
        Ring = "ring",
        Little = "little",
    }
}

impl Finger {
    /// The finger that it is strapped to or drawn beside, unless somebody says otherwise: the next one towards the
    /// middle of the hand, and for the middle finger the ring finger.
    pub const fn beside(self) -> Self {
        match self {
            Self::Index | Self::Ring => Self::Middle,
            Self::Middle | Self::Little => Self::Ring,
        }
    }
}

/// One joint, ordered from the elbow to the fingertips. A thumb has no PIP, so none can be written.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Joint {
    Elbow,
    Forearm,
    Wrist,
    ThumbCmc,
    ThumbMcp,
    ThumbIp,
    Mcp(Finger),
    Pip(Finger),
    Dip(Finger),
}

impl Joint {
    /// Every joint, from the elbow to the fingertips.
    pub fn all() -> impl Iterator<Item = Self> {
        let fingers = |knuckle: Knuckle| Finger::ALL.iter().map(move |&finger| knuckle.of(finger));
        [Self::Elbow, Self::Forearm, Self::Wrist, Self::ThumbCmc, Self::ThumbMcp, Self::ThumbIp]
            .into_iter()
            .chain(Knuckle::ALL.into_iter().flat_map(fingers))
    }
}

impl fmt::Display for Joint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Elbow => f.write_str("elbow"),
            Self::Forearm => f.write_str("forearm"),
            Self::Wrist => f.write_str("wrist"),
            Self::ThumbCmc => f.write_str("thumb-cmc"),
            Self::ThumbMcp => f.write_str("thumb-mcp"),
            Self::ThumbIp => f.write_str("thumb-ip"),
            Self::Mcp(finger) => write!(f, "{}-mcp", finger.word()),
            Self::Pip(finger) => write!(f, "{}-pip", finger.word()),
            Self::Dip(finger) => write!(f, "{}-dip", finger.word()),
        }
    }
}

impl FromStr for Joint {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        one_of(text, Self::all(), "joint", "such as `wrist`, `thumb-cmc`, `thumb-mcp`, `index-pip`")
    }
}

/// One of the three knuckles of a finger, from the palm to the tip.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Knuckle {
    Mcp,
    Pip,
    Dip,
}

impl Knuckle {
    pub const ALL: [Self; 3] = [Self::Mcp, Self::Pip, Self::Dip];

    const fn word(self) -> &'static str {
        match self {
            Self::Mcp => "mcp",
            Self::Pip => "pip",
            Self::Dip => "dip",
        }
    }

    /// That joint of a finger.
    pub const fn of(self, finger: Finger) -> Joint {
        match self {
            Self::Mcp => Joint::Mcp(finger),
            Self::Pip => Joint::Pip(finger),
            Self::Dip => Joint::Dip(finger),
        }
    }
}

/// A joint, or the same joint of several fingers. `finger-pip` is the affected finger's; which finger that is the case
/// says, and until it has said so the name stands for that joint of any finger.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum JointName {
    One(Joint),
    Fingers(Knuckle),
    Affected(Knuckle, Option<Finger>),
    /// That joint of the three fingers that are not affected.
    Others(Knuckle, Option<Finger>),
}

impl JointName {
    /// The joints it stands for.
    pub fn joints(self) -> Vec<Joint> {
        let all = |knuckle: Knuckle| Finger::ALL.iter().map(move |&finger| knuckle.of(finger));
        match self {
            Self::One(joint) => vec![joint],
            Self::Affected(knuckle, Some(finger)) => vec![knuckle.of(finger)],
            Self::Others(knuckle, Some(finger)) => all(knuckle).filter(|joint| *joint != knuckle.of(finger)).collect(),
            Self::Fingers(knuckle) | Self::Affected(knuckle, None) | Self::Others(knuckle, None) => {
                all(knuckle).collect()
            }
        }
    }

    /// Rows of a table in the order in which they are laid over each other: what is said of one joint, or of the
    /// affected finger, comes last and rules over what is said of all.
    pub fn general_first<'a, T>(rows: impl IntoIterator<Item = (&'a Self, T)>) -> Vec<(&'a Self, T)> {
        let mut rows: Vec<_> = rows.into_iter().collect();
        rows.sort_by_key(|(name, _)| matches!(name, Self::One(_) | Self::Affected(..)));
        rows
    }

    /// Whether every joint it stands for is one of another name's.
    pub fn is_within(self, other: Self) -> bool {
        let all = other.joints();
        self.joints().iter().all(|joint| all.contains(joint))
    }

    /// Whether it depends on which finger is affected.
    pub const fn needs_finger(self) -> bool {
        matches!(self, Self::Affected(..) | Self::Others(..))
    }

    /// The same name once it is known which finger is affected.
    #[must_use]
    pub const fn for_finger(self, finger: Finger) -> Self {
        match self {
            Self::Affected(knuckle, _) => Self::Affected(knuckle, Some(finger)),
            Self::Others(knuckle, _) => Self::Others(knuckle, Some(finger)),
            Self::One(_) | Self::Fingers(_) => self,
        }
    }

    /// Every name there is, before a finger is known.
    pub fn all() -> impl Iterator<Item = Self> {
        let groups = Knuckle::ALL
            .into_iter()
            .flat_map(|knuckle| [Self::Fingers(knuckle), Self::Affected(knuckle, None), Self::Others(knuckle, None)]);
        Joint::all().map(Self::One).chain(groups)
    }
}

impl fmt::Display for JointName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::One(joint) => joint.fmt(f),
            Self::Fingers(knuckle) => write!(f, "fingers-{}", knuckle.word()),
            Self::Affected(knuckle, _) => write!(f, "finger-{}", knuckle.word()),
            Self::Others(knuckle, _) => write!(f, "other-fingers-{}", knuckle.word()),
        }
    }
}

impl FromStr for JointName {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        match Self::all().find(|name| name.to_string() == text) {
            Some(name) => Ok(name),
            None => text.parse().map(Self::One),
        }
    }
}

text_value!(
    Joint,
    "a joint",
    "A joint, such as `wrist`, `thumb-cmc`, `thumb-mcp`, `index-pip`.",
    r"^[a-z]+(-[a-z]+)?$",
    "thumb-mcp"
);
text_value!(
    JointName,
    "a joint",
    "A joint; `fingers-mcp` for that joint of all four fingers; `finger-mcp` for the affected finger's; `other-fingers-mcp` for the rest.",
    r"^[a-z]+(-[a-z]+){0,2}$",
    "fingers-mcp"
);
