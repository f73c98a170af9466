//! How an orthosis holds one joint.

use crate::body::{MotionRange, Stop};
use crate::source::{FromNode, Node, Reader, choice, record};
use crate::units::Misread;

/// How a joint is held. "Free" is said, never implied by absence, for every joint the orthosis comes near.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Hold {
    /// Does not move on any axis. `at` are the positions it is set to, `adjustable` the ranges it can be set in.
    Immobilised { at: Vec<MotionRange>, adjustable: Vec<MotionRange> },
    /// Moves, but only inside these ranges; axes not named stay free.
    Limited(Vec<MotionRange>),
    /// Moves, but not past these stops.
    Blocked(Vec<Stop>),
    /// Steadied by something that gives way: eases movement, prevents none.
    Supported,
    /// Moves as it will.
    Free,
}

choice! {
    /// The word for a way of holding.
    pub enum HoldWord ("way of holding a joint") {
        Immobilised = "immobilised",
        Limited = "limited",
        Blocked = "blocked",
        Supported = "supported",
        Free = "free",
    }
}

record! {
    /// How one joint is held, as the file writes it.
    pub struct JointHold ("the hold of a joint") {
        /// `immobilised`, `limited`, `blocked`, `supported` or `free`.
        pub hold: HoldWord,
        /// For `immobilised`: the positions it is set to. For `limited`: the ranges it may move in.
        pub at: Vec<MotionRange>,
        /// For `immobilised`: the ranges it can be set in by the therapist.
        pub adjustable: Vec<MotionRange>,
        /// For `blocked`: the directions that are stopped, and where.
        pub stops: Vec<Stop>,
    }
}

impl JointHold {
    /// The hold that the fields describe.
    ///
    /// # Errors
    /// When fields stand there that this way of holding does not have.
    pub fn hold(&self) -> Result<Hold, Misread> {
        let none = |list: bool, field: &str| {
            if list {
                Ok(())
            } else {
                Err(Misread::plain(format!("`{field}` has no meaning with `hold: {}`", self.hold)))
            }
        };
        match self.hold {
            HoldWord::Immobilised => {
                none(self.stops.is_empty(), "stops")?;
                if self.at.is_empty() {
                    return Err(Misread::new("an immobilised joint needs a position", "`at: [extension 15 deg]`"));
                }
                Ok(Hold::Immobilised { at: self.at.clone(), adjustable: self.adjustable.clone() })
            }
            HoldWord::Limited => {
                none(self.stops.is_empty(), "stops")?;
                none(self.adjustable.is_empty(), "adjustable")?;
                if self.at.is_empty() {
                    return Err(Misread::new("a limited joint needs its ranges", "`at: [flexion 0 to 30 deg]`"));
                }
                Ok(Hold::Limited(self.at.clone()))
            }
            HoldWord::Blocked => {
                none(self.at.is_empty(), "at")?;
                none(self.adjustable.is_empty(), "adjustable")?;
                if self.stops.is_empty() {
                    return Err(Misread::new(
                        "a blocked joint needs its stops",
                        "`stops: [extension at flexion 10 deg]`",
                    ));
                }
                Ok(Hold::Blocked(self.stops.clone()))
            }
            HoldWord::Supported | HoldWord::Free => {
                none(self.at.is_empty(), "at")?;
                none(self.adjustable.is_empty(), "adjustable")?;
                none(self.stops.is_empty(), "stops")?;
                Ok(if self.hold == HoldWord::Free { Hold::Free } else { Hold::Supported })
            }
        }
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
