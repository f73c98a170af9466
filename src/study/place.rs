//! The joints of the limb as rows to compare: what is alike in four fingers is one place.

use std::collections::BTreeMap;

use crate::body::Joint;
use crate::checks::{Grade, VerdictLine};
use crate::source::choice;

choice! {
    /// A joint, that joint of all fingers, or the orthosis as a whole; from the elbow to the fingertips.
    pub enum Place ("place of the limb") {
        Elbow = "elbow",
        Forearm = "forearm",
        Wrist = "wrist",
        ThumbCmc = "thumb-cmc",
        ThumbMcp = "thumb-mcp",
        ThumbIp = "thumb-ip",
        Mcp = "mcp",
        Pip = "pip",
        Dip = "dip",
        /// What is judged of the orthosis and of no joint.
        Whole = "whole",
    }
}

impl Place {
    pub const fn of(joint: Option<Joint>) -> Self {
        match joint {
            Some(Joint::Elbow) => Self::Elbow,
            Some(Joint::Forearm) => Self::Forearm,
            Some(Joint::Wrist) => Self::Wrist,
            Some(Joint::ThumbCmc) => Self::ThumbCmc,
            Some(Joint::ThumbMcp) => Self::ThumbMcp,
            Some(Joint::ThumbIp) => Self::ThumbIp,
            Some(Joint::Mcp(_)) => Self::Mcp,
            Some(Joint::Pip(_)) => Self::Pip,
            Some(Joint::Dip(_)) => Self::Dip,
            None => Self::Whole,
        }
    }

    /// The letter beside its mark in a chart.
    pub const fn letter(self) -> char {
        match self {
            Self::Elbow => 'E',
            Self::Forearm => 'R',
            Self::Wrist => 'W',
            Self::ThumbCmc => 'C',
            Self::ThumbMcp => 'T',
            Self::ThumbIp => 'I',
            Self::Mcp => 'M',
            Self::Pip => 'P',
            Self::Dip => 'D',
            Self::Whole => 'O',
        }
    }
}

/// The worst line of each place.
pub fn by_place<'a>(lines: impl IntoIterator<Item = &'a VerdictLine>) -> BTreeMap<Place, &'a VerdictLine> {
    let mut worst: BTreeMap<Place, &VerdictLine> = BTreeMap::new();
    for line in lines {
        let held = worst.entry(Place::of(line.joint)).or_insert(line);
        if line.result > held.result {
            *held = line;
        }
    }
    worst
}

/// How many places fail.
pub fn failing<'a>(lines: impl IntoIterator<Item = &'a VerdictLine>) -> usize {
    by_place(lines).values().filter(|line| line.result > Grade::Remark).count()
}
