//! How an orthosis holds one joint.

use crate::body::{Axis, Direction, MotionRange, Position, Stop};
use crate::source::{FromNode, Node, Reader, choice, record};
use crate::units::Misread;

choice! {
    /// What pulls a joint towards more movement.
    pub enum Traction ("way of pulling") {
        /// Rubber or a spring: it pulls on while the joint gives, and lets it be moved against the pull.
        Elastic = "elastic",
        /// Set step by step by the person: holds still in between.
        Stepped = "stepped",
        /// Made anew by the clinic: holds still in between.
        Serial = "serial",
    }
}

/// How a joint is held. "Free" is said, never implied by absence, for every joint the orthosis comes near.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Hold {
    /// Does not move on any axis. `at` are the positions it is set to, `adjustable` the ranges it can be set in.
    Immobilised { at: Vec<MotionRange>, adjustable: Vec<MotionRange> },
    /// Moves, but only inside these ranges; axes not named stay free.
    Limited(Vec<MotionRange>),
    /// Moves, but not past these stops, which can be set within `adjustable`.
    Blocked { stops: Vec<Stop>, adjustable: Vec<MotionRange> },
    /// Moves with its neighbours, but stays so much straighter or more bent than they are.
    Relative { at: Vec<MotionRange>, adjustable: Vec<MotionRange> },
    /// Moves together with a neighbour or through another joint; guarded sideways.
    Coupled,
    /// Pulled towards more movement in one direction. `at` is where it stands, where that is known.
    Mobilised { towards: Direction, by: Traction, at: Vec<MotionRange> },
    /// Steadied by something that gives way: eases movement, prevents none.
    Supported,
    /// Moves as it will.
    Free,
}

impl Hold {
    /// Whether the joint cannot be used as it is used bare: held still, or inside limits.
    pub fn covers(&self) -> bool {
        match self {
            Self::Immobilised { .. } => true,
            // Guided sideways only, a joint bends as it will.
            Self::Limited(ranges) => ranges.iter().any(|range| range.axis() != Axis::Deviation),
            Self::Mobilised { by, .. } => !matches!(by, Traction::Elastic),
            Self::Blocked { .. } | Self::Relative { .. } | Self::Coupled | Self::Supported | Self::Free => false,
        }
    }

    /// The ranges it can be set in; None for a hold that is set to no angle.
    pub fn adjustable(&self) -> Option<&[MotionRange]> {
        match self {
            Self::Immobilised { adjustable, .. }
            | Self::Blocked { adjustable, .. }
            | Self::Relative { adjustable, .. } => Some(adjustable),
            Self::Limited(_) | Self::Coupled | Self::Mobilised { .. } | Self::Supported | Self::Free => None,
        }
    }

    /// Sets it to a position on one axis; a block is moved there.
    pub fn set(&mut self, to: Position) {
        match self {
            Self::Immobilised { at, .. } | Self::Relative { at, .. } => {
                at.retain(|old| old.axis() != to.axis());
                at.push(MotionRange::at(to));
            }
            Self::Blocked { stops, .. } => {
                for stop in stops.iter_mut().filter(|stop| stop.at.axis() == to.axis()) {
                    stop.at = to;
                }
            }
            Self::Limited(_) | Self::Coupled | Self::Mobilised { .. } | Self::Supported | Self::Free => {}
        }
    }

    /// Whether it acts on the joint at all.
    pub const fn acts(&self) -> bool {
        !matches!(self, Self::Free)
    }
}

choice! {
    /// The word for a way of holding.
    pub enum HoldWord ("way of holding a joint") {
        Immobilised = "immobilised",
        Limited = "limited",
        Blocked = "blocked",
        Relative = "relative",
        Coupled = "coupled",
        Mobilised = "mobilised",
        Supported = "supported",
        Free = "free",
    }
}

record! {
    /// How one joint is held, as the file writes it.
    pub struct JointHold ("the hold of a joint") {
        /// `immobilised`, `limited`, `blocked`, `relative`, `coupled`, `mobilised`, `supported` or `free`.
        pub hold: HoldWord,
        /// For `immobilised`: the positions it is set to. For `limited`: the ranges it may move in. For `relative`: by
        /// how much it differs from its neighbours. For `mobilised`: where it stands.
        pub at: Vec<MotionRange>,
        /// For `immobilised`, `blocked` and `relative`: the ranges it can be set in by the therapist.
        pub adjustable: Vec<MotionRange>,
        /// For `blocked`: the directions that are stopped, and where.
        pub stops: Vec<Stop>,
        /// For `mobilised`: the direction it is pulled in.
        pub towards: Option<Direction>,
        /// For `mobilised`: what pulls.
        pub by: Option<Traction>,
    }
}

impl JointHold {
    /// The hold that the fields describe.
    ///
    /// # Errors
    /// When fields stand there that this way of holding does not have, or one that it needs is missing.
    pub fn hold(&self) -> Result<Hold, Misread> {
        use HoldWord as Word;
        let word = self.hold;
        let fields: [(&str, bool, &[Word]); 5] = [
            ("at", !self.at.is_empty(), &[Word::Immobilised, Word::Limited, Word::Relative, Word::Mobilised]),
            ("adjustable", !self.adjustable.is_empty(), &[Word::Immobilised, Word::Blocked, Word::Relative]),
            ("stops", !self.stops.is_empty(), &[Word::Blocked]),
            ("towards", self.towards.is_some(), &[Word::Mobilised]),
            ("by", self.by.is_some(), &[Word::Mobilised]),
        ];
        if let Some((field, ..)) = fields.iter().find(|(_, given, holds)| *given && !holds.contains(&word)) {
            return Err(Misread::plain(format!("`{field}` has no meaning with `hold: {word}`")));
        }
        let (at, adjustable, stops) = (self.at.clone(), self.adjustable.clone(), self.stops.clone());
        let lacks = |given: bool, what: &str, write: &str| {
            if given { Ok(()) } else { Err(Misread::new(format!("this joint lacks {what}"), write)) }
        };
        Ok(match word {
            Word::Immobilised => {
                lacks(!at.is_empty(), "the position it is immobilised in", "`at: [extension 15 deg]`")?;
                Hold::Immobilised { at, adjustable }
            }
            Word::Limited => {
                lacks(!at.is_empty(), "the ranges it is limited to", "`at: [flexion 0 to 30 deg]`")?;
                Hold::Limited(at)
            }
            Word::Blocked => {
                lacks(!stops.is_empty(), "the stops that block it", "`stops: [extension at flexion 10 deg]`")?;
                Hold::Blocked { stops, adjustable }
            }
            Word::Relative => {
                lacks(!at.is_empty(), "by how much it differs from its neighbours", "`at: [extension 15 deg]`")?;
                Hold::Relative { at, adjustable }
            }
            Word::Mobilised => match (self.towards, self.by) {
                (Some(towards), Some(by)) => Hold::Mobilised { towards, by, at },
                _ => {
                    return Err(Misread::new(
                        "a mobilised joint lacks its direction or what pulls it",
                        "`towards: extension, by: elastic`",
                    ));
                }
            },
            Word::Coupled => Hold::Coupled,
            Word::Supported => Hold::Supported,
            Word::Free => Hold::Free,
        })
    }
}

impl FromNode for Hold {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        let fields = JointHold::from_node(node, reader)?;
        fields.hold().map_err(|misread| reader.misread(node, &misread)).ok()
    }
}

impl schemars::JsonSchema for Hold {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "JointHold".into()
    }
    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        JointHold::json_schema(generator)
    }
}
