//! The segments of the limb.

use std::fmt;
use std::str::FromStr;

use super::Finger;
use crate::ids::one_of;
use crate::source::text_value;
use crate::units::Misread;

/// A bone's row in a finger, from the knuckle to the tip.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Row {
    Proximal,
    Middle,
    Distal,
}

impl Row {
    pub const ALL: [Self; 3] = [Self::Proximal, Self::Middle, Self::Distal];

    const fn word(self) -> &'static str {
        match self {
            Self::Proximal => "proximal",
            Self::Middle => "middle",
            Self::Distal => "distal",
        }
    }
}

/// One segment of the limb, from the shoulder to the fingertips.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Segment {
    UpperArm,
    Forearm,
    /// Carpus and the four metacarpals of the fingers.
    Hand,
    ThumbMetacarpal,
    ThumbProximal,
    ThumbDistal,
    Finger(Finger, Row),
}

impl Segment {
    pub const COUNT: usize = 18;

    /// Every segment, in order.
    pub fn all() -> impl Iterator<Item = Self> {
        let fingers = Finger::ALL.iter().flat_map(|&finger| Row::ALL.map(move |row| Self::Finger(finger, row)));
        [Self::UpperArm, Self::Forearm, Self::Hand, Self::ThumbMetacarpal, Self::ThumbProximal, Self::ThumbDistal]
            .into_iter()
            .chain(fingers)
    }

    /// Its place in the order.
    pub const fn index(self) -> usize {
        match self {
            Self::UpperArm => 0,
            Self::Forearm => 1,
            Self::Hand => 2,
            Self::ThumbMetacarpal => 3,
            Self::ThumbProximal => 4,
            Self::ThumbDistal => 5,
            Self::Finger(finger, row) => 6 + 3 * finger as usize + row as usize,
        }
    }

    /// The finger it belongs to.
    pub const fn finger(self) -> Option<Finger> {
        match self {
            Self::Finger(finger, _) => Some(finger),
            _ => None,
        }
    }

    /// Whether it belongs to the thumb.
    pub const fn is_thumb(self) -> bool {
        matches!(self, Self::ThumbMetacarpal | Self::ThumbProximal | Self::ThumbDistal)
    }
}

impl fmt::Display for Segment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::UpperArm => f.write_str("upper-arm"),
            Self::Forearm => f.write_str("forearm"),
            Self::Hand => f.write_str("hand"),
            Self::ThumbMetacarpal => f.write_str("thumb-metacarpal"),
            Self::ThumbProximal => f.write_str("thumb-proximal"),
            Self::ThumbDistal => f.write_str("thumb-distal"),
            Self::Finger(finger, row) => {
                write!(f, "{}-{}", finger.word(), row.word())
            }
        }
    }
}

/// A segment, or the same one of several fingers.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum SegmentName {
    One(Segment),
    Fingers(Row),
    /// Of the affected finger.
    Affected(Row),
    /// Of the three fingers that are not affected.
    Others(Row),
    /// Of the finger beside the affected one.
    Neighbour(Row),
}

impl SegmentName {
    /// The segments it stands for, once it is known which finger is affected.
    pub fn segments(self, affected: Finger) -> Vec<Segment> {
        let of = |row, take: &dyn Fn(Finger) -> bool| {
            Finger::ALL.iter().copied().filter(|f| take(*f)).map(|f| Segment::Finger(f, row)).collect()
        };
        match self {
            Self::One(segment) => vec![segment],
            Self::Fingers(row) => of(row, &|_| true),
            Self::Affected(row) => of(row, &|finger| finger == affected),
            Self::Others(row) => of(row, &|finger| finger != affected),
            Self::Neighbour(row) => of(row, &|finger| finger == affected.beside()),
        }
    }

    /// Every name there is.
    pub fn all() -> impl Iterator<Item = Self> {
        let groups = Row::ALL
            .into_iter()
            .flat_map(|row| [Self::Fingers(row), Self::Affected(row), Self::Others(row), Self::Neighbour(row)]);
        Segment::all().map(Self::One).chain(groups)
    }
}

impl fmt::Display for SegmentName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::One(segment) => segment.fmt(f),
            Self::Fingers(row) => write!(f, "fingers-{}", row.word()),
            Self::Affected(row) => write!(f, "finger-{}", row.word()),
            Self::Others(row) => write!(f, "other-fingers-{}", row.word()),
            Self::Neighbour(row) => write!(f, "neighbour-{}", row.word()),
        }
    }
}

impl FromStr for SegmentName {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let such = "such as `forearm`, `hand`, `thumb-proximal`, `index-middle`, `finger-distal`";
        one_of(text, Self::all(), "segment of the limb", such)
    }
}

text_value!(
    SegmentName,
    "a segment of the limb",
    "A segment: `forearm`, `hand`, `thumb-proximal`; `finger-middle` of the affected finger; `fingers-proximal` of all four.",
    r"^[a-z]+(-[a-z]+){0,2}$",
    "thumb-proximal"
);
