//! Axes, directions, positions and ranges, in the words clinicians write.
//!
//! Inside, an angle is signed along its axis: flexion, ulnar deviation, supination and abduction are positive.
//! Outside, people write a direction and a size: "extension 15 deg", "flexion 10 to 20 deg",
//! "extension 10 deg to flexion 20 deg".

use std::fmt;
use std::str::FromStr;

use crate::source::{choice, text_value};
use crate::units::{Degrees, Misread};

choice! {
    /// A line of movement of a joint.
    pub enum Axis ("axis") {
        /// Bending and straightening.
        Flexion = "flexion",
        /// Sideways: at the wrist and the finger and thumb knuckles.
        Deviation = "deviation",
        /// Turning the forearm.
        Rotation = "rotation",
        /// The thumb away from the palm, at right angles to it.
        PalmarAbduction = "palmar-abduction",
        /// The thumb away from the index finger, in the plane of the palm.
        RadialAbduction = "radial-abduction",
    }
}

choice! {
    /// A direction along an axis.
    pub enum Direction ("direction of movement") {
        /// Bending.
        Flexion = "flexion",
        /// Straightening, and past straight.
        Extension = "extension",
        /// Towards the little-finger side.
        UlnarDeviation = "ulnar-deviation",
        /// Towards the thumb side.
        RadialDeviation = "radial-deviation",
        /// Palm up.
        Supination = "supination",
        /// Palm down.
        Pronation = "pronation",
        /// The thumb away from the palm.
        PalmarAbduction = "palmar-abduction",
        /// The thumb back to the palm.
        PalmarAdduction = "palmar-adduction",
        /// The thumb away from the index finger.
        RadialAbduction = "radial-abduction",
        /// The thumb back to the index finger.
        RadialAdduction = "radial-adduction",
    }
}

impl Direction {
    pub const fn axis(self) -> Axis {
        match self {
            Self::Flexion | Self::Extension => Axis::Flexion,
            Self::UlnarDeviation | Self::RadialDeviation => Axis::Deviation,
            Self::Supination | Self::Pronation => Axis::Rotation,
            Self::PalmarAbduction | Self::PalmarAdduction => Axis::PalmarAbduction,
            Self::RadialAbduction | Self::RadialAdduction => Axis::RadialAbduction,
        }
    }

    /// Whether angles grow in this direction.
    pub const fn is_positive(self) -> bool {
        matches!(
            self,
            Self::Flexion | Self::UlnarDeviation | Self::Supination | Self::PalmarAbduction | Self::RadialAbduction
        )
    }

    /// The direction of a signed angle; straight counts as the positive one.
    pub const fn of(axis: Axis, positive: bool) -> Self {
        match (axis, positive) {
            (Axis::Flexion, true) => Self::Flexion,
            (Axis::Flexion, false) => Self::Extension,
            (Axis::Deviation, true) => Self::UlnarDeviation,
            (Axis::Deviation, false) => Self::RadialDeviation,
            (Axis::Rotation, true) => Self::Supination,
            (Axis::Rotation, false) => Self::Pronation,
            (Axis::PalmarAbduction, true) => Self::PalmarAbduction,
            (Axis::PalmarAbduction, false) => Self::PalmarAdduction,
            (Axis::RadialAbduction, true) => Self::RadialAbduction,
            (Axis::RadialAbduction, false) => Self::RadialAdduction,
        }
    }

    fn signed(self, size: Degrees) -> Degrees {
        if self.is_positive() { size } else { size.reversed() }
    }
}

/// One angle on one axis.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Position {
    axis: Axis,
    angle: Degrees,
}

impl Position {
    pub fn new(direction: Direction, size: Degrees) -> Self {
        Self { axis: direction.axis(), angle: direction.signed(size) }
    }

    /// A signed angle on an axis.
    pub fn signed(axis: Axis, angle: Degrees) -> Self {
        Self { axis, angle }
    }

    pub fn axis(self) -> Axis {
        self.axis
    }

    /// Signed along the axis.
    pub fn angle(self) -> Degrees {
        self.angle
    }

    /// The same axis, so much further along it.
    #[must_use]
    pub fn plus(self, angle: Degrees) -> Self {
        Self { angle: self.angle.plus(angle), ..self }
    }

    pub fn direction(self) -> Direction {
        Direction::of(self.axis, self.angle >= Degrees::ZERO)
    }
}

impl fmt::Display for Position {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.direction(), self.angle.size())
    }
}

impl FromStr for Position {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let (direction, size) = text.trim().split_once(' ').ok_or_else(|| {
            Misread::new(format!("`{}` is no position", text.trim()), "direction and size as `extension 15 deg`")
        })?;
        Ok(Self::new(direction.parse()?, size.parse()?))
    }
}

/// A stretch of one axis, both ends included, from <= to by construction.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct MotionRange {
    axis: Axis,
    from: Degrees,
    to: Degrees,
}

impl MotionRange {
    /// The stretch between two signed angles, in either order.
    pub fn between(axis: Axis, one: Degrees, other: Degrees) -> Self {
        Self { axis, from: one.min(other), to: one.max(other) }
    }

    /// A stretch of no width.
    pub fn at(position: Position) -> Self {
        Self { axis: position.axis, from: position.angle, to: position.angle }
    }

    pub fn axis(self) -> Axis {
        self.axis
    }

    /// Signed along the axis.
    pub fn from(self) -> Degrees {
        self.from
    }

    /// Signed along the axis.
    pub fn to(self) -> Degrees {
        self.to
    }

    /// Whether all of `other` lies inside; false on another axis.
    pub fn contains(self, other: Self) -> bool {
        self.axis == other.axis && self.from <= other.from && other.to <= self.to
    }

    /// Whether the two share an angle; false on another axis.
    pub fn meets(self, other: Self) -> bool {
        self.axis == other.axis && self.from <= other.to && other.from <= self.to
    }

    /// What is left of the range when one direction is stopped. Stops never leave less than one angle.
    pub fn stopped_by(self, stop: Stop) -> Self {
        if stop.at.axis != self.axis {
            return self;
        }
        let limit = stop.at.angle.clamp(self.from, self.to);
        if stop.direction.is_positive() { Self { to: limit, ..self } } else { Self { from: limit, ..self } }
    }
}

impl fmt::Display for MotionRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (from, to) = (self.from, self.to);
        if from == to {
            return Position { axis: self.axis, angle: from }.fmt(f);
        }
        if from >= Degrees::ZERO {
            write!(f, "{} {} to {}", Direction::of(self.axis, true), from.figure(), to)
        } else if to <= Degrees::ZERO {
            write!(f, "{} {} to {}", Direction::of(self.axis, false), to.figure(), from.size())
        } else {
            let (low, high) = (Direction::of(self.axis, false), Direction::of(self.axis, true));
            write!(f, "{low} {} to {high} {to}", from.size())
        }
    }
}

impl FromStr for MotionRange {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        let Some((first, second)) = text.split_once(" to ") else {
            return text.parse::<Position>().map(Self::at);
        };
        let shape = || {
            Misread::new(
                format!("`{text}` is no range of motion"),
                "such as `flexion 10 to 20 deg` or `extension 10 deg to flexion 20 deg`",
            )
        };
        let (direction, size) = first.split_once(' ').ok_or_else(shape)?;
        let direction: Direction = direction.parse()?;
        let starts_with_word = second.starts_with(|c: char| c.is_ascii_alphabetic());
        let (low, high) = if starts_with_word {
            let high: Position = second.parse()?;
            if high.axis != direction.axis() {
                return Err(Misread::plain(format!("`{text}` begins on one axis and ends on another")));
            }
            (direction.signed(size.parse()?), high.angle)
        } else {
            let high: Degrees = second.parse()?;
            let low: Degrees = format!("{size} deg").parse()?;
            (direction.signed(low), direction.signed(high))
        };
        Ok(Self::between(direction.axis(), low, high))
    }
}

/// A direction that is stopped at a position: "extension at flexion 10 deg" lets the joint straighten to 10 degrees
/// short of straight and no further.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Stop {
    pub direction: Direction,
    pub at: Position,
}

impl fmt::Display for Stop {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} at {}", self.direction, self.at)
    }
}

impl FromStr for Stop {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let (direction, at) = text.trim().split_once(" at ").ok_or_else(|| {
            Misread::new(
                format!("`{}` is no stop", text.trim()),
                "direction and position as `extension at flexion 10 deg`",
            )
        })?;
        let (direction, at): (Direction, Position) = (direction.parse()?, at.parse()?);
        if direction.axis() == at.axis {
            Ok(Self { direction, at })
        } else {
            Err(Misread::plain(format!("`{}` names a direction and a position of different axes", text.trim())))
        }
    }
}

text_value!(Position, "a position", "A direction and a size: `extension 15 deg`.", r"^[a-z-]+ \d", "extension 15 deg");
text_value!(
    MotionRange,
    "a range of motion",
    "A range: `flexion 10 to 20 deg`, `extension 10 deg to flexion 20 deg`.",
    r"^[a-z-]+ \d",
    "flexion 10 to 20 deg"
);
text_value!(
    Stop,
    "a stop",
    "A direction and where it is stopped: `extension at flexion 10 deg`.",
    r"^[a-z-]+ at [a-z-]+ \d",
    "extension at flexion 10 deg"
);
