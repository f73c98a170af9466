//! The joints that a splint can hold.

use std::fmt;
use std::str::FromStr;

use crate::ids::nearest;
use crate::source::text_value;
use crate::units::Misread;

/// A finger; the thumb is not one.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Finger {
    Index,
    Middle,
    Ring,
    Little,
}

impl Finger {
    pub const ALL: [Self; 4] = [Self::Index, Self::Middle, Self::Ring, Self::Little];

    const fn word(self) -> &'static str {
        match self {
            Self::Index => "index",
            Self::Middle => "middle",
            Self::Ring => "ring",
            Self::Little => "little",
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
        [Self::Elbow, Self::Forearm, Self::Wrist, Self::ThumbCmc, Self::ThumbMcp, Self::ThumbIp]
            .into_iter()
            .chain(Finger::ALL.map(Self::Mcp))
            .chain(Finger::ALL.map(Self::Pip))
            .chain(Finger::ALL.map(Self::Dip))
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
        if let Some(joint) = Self::all().find(|joint| joint.to_string() == text) {
            return Ok(joint);
        }
        let names: Vec<String> = Self::all().map(|joint| joint.to_string()).collect();
        let write = match nearest(text, names.iter().map(String::as_str)) {
            Some(near) => format!("`{near}`"),
            None => "such as `wrist`, `thumb-cmc`, `thumb-mcp`, `index-pip`".to_owned(),
        };
        Err(Misread::new(format!("`{text}` is no joint"), write))
    }
}

/// A joint, or the same joint of all four fingers: `fingers-mcp`.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum JointName {
    One(Joint),
    FingersMcp,
    FingersPip,
    FingersDip,
}

impl JointName {
    /// The joints it stands for.
    pub fn joints(self) -> Vec<Joint> {
        match self {
            Self::One(joint) => vec![joint],
            Self::FingersMcp => Finger::ALL.map(Joint::Mcp).to_vec(),
            Self::FingersPip => Finger::ALL.map(Joint::Pip).to_vec(),
            Self::FingersDip => Finger::ALL.map(Joint::Dip).to_vec(),
        }
    }
}

impl fmt::Display for JointName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::One(joint) => joint.fmt(f),
            Self::FingersMcp => f.write_str("fingers-mcp"),
            Self::FingersPip => f.write_str("fingers-pip"),
            Self::FingersDip => f.write_str("fingers-dip"),
        }
    }
}

impl FromStr for JointName {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        match text {
            "fingers-mcp" => Ok(Self::FingersMcp),
            "fingers-pip" => Ok(Self::FingersPip),
            "fingers-dip" => Ok(Self::FingersDip),
            _ => text.parse().map(Self::One),
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
    "A joint, or `fingers-mcp` for that joint of all four fingers.",
    r"^[a-z]+(-[a-z]+)?$",
    "fingers-mcp"
);
