//! What an orthosis looks like: sheets on the skin, straps round it, wires beside it.
//!
//! Everything is said on the limb itself. A place is a segment, how far along it (0 % at the joint nearer to the body,
//! 100 % at the other), and an angle round it (0 at the back, 90 on the thumb side, 180 in the palm, 270 on the
//! little-finger side; for the thumb, 90 is the side away from the fingers). No view is named, so all views agree.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::str::FromStr;

use crate::body::{Finger, JointName, Position, Segment, SegmentName, View};
use crate::ids::MessageId;
use crate::source::{choice, record, text_value};
use crate::units::Misread;

/// How far along a segment, in per cent of its length; below 0 and past 100 it goes on beyond the joints.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Percent(i16);

impl Percent {
    pub const fn whole(percent: i16) -> Self {
        Self(percent)
    }

    /// As a share: 0 at the near joint, 1 at the far one.
    pub fn share(self) -> f64 {
        f64::from(self.0) / 100.0
    }
}

/// An angle round a segment, 0 to 360 degrees.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Round(i16);

impl Round {
    /// So many degrees: 0 at the back, 90 on the thumb side, 180 in the palm.
    pub const fn whole(degrees: i16) -> Self {
        Self(degrees)
    }

    pub fn degrees(self) -> f64 {
        f64::from(self.0)
    }
}

/// A length on or near the limb in tenths of a millimetre.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Millimetres(i16);

impl Millimetres {
    pub const fn tenths(tenths: i16) -> Self {
        Self(tenths)
    }

    pub fn get(self) -> f64 {
        f64::from(self.0) / 10.0
    }
}

/// A stretch of a segment.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Span {
    pub from: Percent,
    pub to: Percent,
}

/// A stretch round a segment, from one angle on to another in the direction back, thumb side, palm.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Arc {
    pub from: Round,
    pub to: Round,
}

impl Arc {
    /// How far it reaches, degrees, above 0 and at most 360.
    pub fn sweep(self) -> f64 {
        let sweep = f64::from(self.to.0 - self.from.0);
        if sweep <= 0.0 { sweep + 360.0 } else { sweep }
    }
}

/// A place on the skin or above it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct SkinPoint {
    pub on: SegmentName,
    pub at: Percent,
    pub round: Round,
    /// How far above the skin.
    pub out: Millimetres,
}

fn whole(text: &str, unit: &str, low: i16, high: i16, what: &str, example: &str) -> Result<i16, Misread> {
    let number = text.trim().strip_suffix(unit).map(str::trim);
    match number.map(str::parse::<i16>) {
        Some(Ok(value)) if (low..=high).contains(&value) => Ok(value),
        Some(Ok(_)) => Err(Misread::new(format!("`{}` is out of range", text.trim()), format!("from {low} to {high}"))),
        _ => Err(Misread::new(format!("`{}` is no {what}", text.trim()), format!("such as `{example}`"))),
    }
}

impl FromStr for Percent {
    type Err = Misread;
    fn from_str(text: &str) -> Result<Self, Misread> {
        whole(text, "%", -100, 300, "place along a segment", "60 %").map(Self)
    }
}

impl FromStr for Round {
    type Err = Misread;
    fn from_str(text: &str) -> Result<Self, Misread> {
        whole(text, "deg", 0, 360, "angle round a segment", "90 deg").map(Self)
    }
}

impl FromStr for Millimetres {
    type Err = Misread;
    fn from_str(text: &str) -> Result<Self, Misread> {
        let wrong = || Misread::new(format!("`{}` is no length", text.trim()), "such as `20 mm` or `2.5 mm`");
        let number = text.trim().strip_suffix("mm").map(str::trim).ok_or_else(wrong)?;
        let (sign, number) = number.strip_prefix('-').map_or((1, number), |rest| (-1, rest));
        match crate::units::tenths(number) {
            Some(tenths) if tenths <= 3000 => Ok(Self(sign * tenths as i16)),
            Some(_) => Err(Misread::new(format!("`{}` is longer than a limb", text.trim()), "at most `300 mm`")),
            None => Err(wrong()),
        }
    }
}

impl FromStr for Span {
    type Err = Misread;
    fn from_str(text: &str) -> Result<Self, Misread> {
        let wrong = || Misread::new(format!("`{}` is no stretch of a segment", text.trim()), "such as `35 to 100 %`");
        let (from, to) = text.split_once(" to ").ok_or_else(wrong)?;
        let (from, to): (Percent, Percent) = (format!("{from} %").parse()?, to.parse()?);
        if from < to { Ok(Self { from, to }) } else { Err(wrong()) }
    }
}

impl FromStr for Arc {
    type Err = Misread;
    fn from_str(text: &str) -> Result<Self, Misread> {
        let wrong =
            || Misread::new(format!("`{}` is no stretch round a segment", text.trim()), "such as `60 to 300 deg`");
        let (from, to) = text.split_once(" to ").ok_or_else(wrong)?;
        Ok(Self { from: format!("{from} deg").parse()?, to: to.parse()? })
    }
}

impl FromStr for SkinPoint {
    type Err = Misread;
    fn from_str(text: &str) -> Result<Self, Misread> {
        let wrong = || {
            Misread::new(
                format!("`{}` is no place on the limb", text.trim()),
                "segment, place and angle, such as `finger-proximal 70 % 180 deg` or `hand 50 % 0 deg out 30 mm`",
            )
        };
        let (on, rest) = text.trim().split_once(' ').ok_or_else(wrong)?;
        let (at, rest) = rest.split_once('%').ok_or_else(wrong)?;
        let (round, rest) = rest.split_once("deg").ok_or_else(wrong)?;
        let out = match rest.trim() {
            "" => Millimetres(0),
            rest => rest.strip_prefix("out ").ok_or_else(wrong)?.parse()?,
        };
        Ok(Self { on: on.parse()?, at: format!("{at}%").parse()?, round: format!("{round}deg").parse()?, out })
    }
}

impl fmt::Display for Percent {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} %", self.0)
    }
}

text_value!(Percent, "a place along a segment", "Per cent of a segment's length: `60 %`.", r"^-?\d+ ?%$", "60 %");
text_value!(Round, "an angle round a segment", "Degrees round a segment: `90 deg`.", r"^\d+ ?deg$", "90 deg");
text_value!(Millimetres, "a length", "Millimetres: `20 mm`.", r"^-?\d+(\.\d)? ?mm$", "20 mm");
text_value!(
    Span,
    "a stretch of a segment",
    "A stretch along a segment: `35 to 100 %`.",
    r"^-?\d+ to -?\d+ ?%$",
    "35 to 100 %"
);
text_value!(
    Arc,
    "a stretch round a segment",
    "A stretch round a segment: `60 to 300 deg`.",
    r"^\d+ to \d+ ?deg$",
    "60 to 300 deg"
);
text_value!(
    SkinPoint,
    "a place on the limb",
    "Segment, place along it, angle round it: `finger-proximal 70 % 180 deg`, also `… out 30 mm`.",
    r"^[a-z-]+ -?\d+ ?% \d+ ?deg( out -?\d+(\.\d)? ?mm)?$",
    "finger-proximal 70 % 180 deg"
);

choice! {
    /// What a sheet looks like.
    pub enum Look ("look of a sheet") {
        /// Smooth and firm.
        Firm = "firm",
        /// Woven or foam.
        Fabric = "fabric",
        /// Plaster or casting tape.
        Cast = "cast",
    }
}

record! {
    /// A part of the skin.
    pub struct Cover ("a covered part of the limb") {
        pub on: SegmentName,
        /// How far along; the whole segment when it is not said.
        pub span: Option<Span>,
        /// How far round; all round when it is not said.
        pub around: Option<Arc>,
        /// How far the far edge is higher on the thumb side than on the little-finger side, mm over the whole breadth.
        pub slant: Option<Millimetres>,
        /// The greatest distance from the middle of the segment; what lies further out is not meant.
        pub reach: Option<Millimetres>,
    }
}

record! {
    /// A sheet of material moulded to the limb.
    pub struct Sheet ("a sheet of an orthosis") {
        pub covers: Vec<Cover>,
        /// Openings: what is left out of the covers.
        pub leaves: Vec<Cover>,
        /// `firm` when it is not said, or what the material of the orthosis says.
        pub look: Option<Look>,
        /// 3.2 mm when it is not said.
        pub thickness: Option<Millimetres>,
        /// How round its corners are; 14 mm when it is not said.
        pub corners: Option<Millimetres>,
        /// Whether it follows every hollow, as a thin wrap does, instead of spanning them.
        pub clings: bool,
    }
}

choice! {
    /// Which end of a strap is pressed on last.
    pub enum Tab ("end of a strap") {
        Start = "start",
        End = "end",
        /// No end shows.
        None = "none",
    }
}

record! {
    /// A strap: a band round the limb and over the sheets.
    pub struct Band ("a strap of an orthosis") {
        pub on: SegmentName,
        /// The middle of the band.
        pub at: Percent,
        pub width: Millimetres,
        /// From where it is fixed to where its free end lies; all round when it is not said.
        pub around: Option<Arc>,
        /// How far it is higher on the thumb side than on the little-finger side, mm over the whole breadth.
        pub slant: Option<Millimetres>,
        /// Further segments that it lies over.
        pub over: Vec<SegmentName>,
        pub tab: Option<Tab>,
        pub reach: Option<Millimetres>,
    }
}

choice! {
    /// What a line in space is made of.
    pub enum Strand ("kind of wire") {
        Metal = "metal",
        /// Cord or rubber.
        Cord = "cord",
    }
}

record! {
    /// A wire or cord.
    pub struct Wire ("a wire of an orthosis") {
        pub through: Vec<SkinPoint>,
        pub width: Millimetres,
        pub kind: Strand,
        /// Whether its end meets its start.
        pub closed: bool,
    }
}

record! {
    /// The look of an orthosis, in `content/shapes`, by the orthosis's name.
    pub struct Shape ("the look of an orthosis") {
        pub sheets: Vec<Sheet>,
        /// Straps by their message, those of the orthosis.
        pub straps: BTreeMap<MessageId, Band>,
        /// Bands that are never opened: loops, rings of fabric.
        pub bands: Vec<Band>,
        pub wires: Vec<Wire>,
        /// How the joints stand that the orthosis leaves free; what it holds, its joint table says.
        pub posture: BTreeMap<JointName, Vec<Position>>,
        /// Where the spots of its skin check lie when they are not where `content/spots.yaml` has them.
        pub spots: BTreeMap<MessageId, SkinPoint>,
        /// From where it is known best, when that is not from the side that it covers.
        pub view: Option<View>,
        /// Typical ways in which it sits wrongly.
        pub faults: Vec<super::scene::Fault>,
    }
}

impl Shape {
    /// Every segment that some part of it lies on.
    pub fn segments(&self, finger: Finger) -> BTreeSet<Segment> {
        let sheets = self.sheets.iter().flat_map(|sheet| &sheet.covers).map(|cover| cover.on);
        let bands = self.straps.values().chain(&self.bands);
        let bands = bands.flat_map(|band| std::iter::once(band.on).chain(band.over.iter().copied()));
        let wires = self.wires.iter().flat_map(|wire| &wire.through).map(|point| point.on);
        sheets.chain(bands).chain(wires).flat_map(|name| name.segments(finger)).collect()
    }
}
