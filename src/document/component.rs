//! What a section can hold besides running text.

use super::figures::Figure;
use super::message::Message;
use crate::body::Side;
use crate::content::TriageLevel;
use crate::markdown::Block;
use crate::plan::ActivityVerdict;
use crate::source::choice;
use crate::units::{ClockSpan, Date};

choice! {
    /// How a stretch of a 24-hour strip is drawn.
    pub enum StripState ("state of a strip") {
        Before = "before",
        On = "on",
        Off = "off",
        Needed = "needed",
    }
}

choice! {
    /// Putting on or taking off.
    pub enum StepKind ("kind of steps") {
        On = "on",
        Off = "off",
    }
}

choice! {
    /// How a day of the calendar is drawn.
    pub enum CalendarState ("state of a calendar day") {
        Build = "build",
        On = "on",
        Night = "night",
        Needed = "needed",
        Off = "off",
        None = "none",
    }
}

choice! {
    /// What happens on a day of the calendar.
    pub enum CalendarFlag ("flag of a calendar day") {
        Fitting = "fitting",
        Review = "review",
        Change = "change",
    }
}

choice! {
    /// What becomes of a joint in the orthoses for a condition.
    pub enum JointState ("state of a joint") {
        Still = "still",
        Steady = "steady",
        Stopped = "stopped",
        Relative = "relative",
        Coupled = "coupled",
        Mobilised = "mobilised",
        /// It depends on the orthosis or on what was found in the person.
        Varies = "varies",
        Free = "free",
    }
}

/// One day as stretches that tile it.
pub type Strip = Vec<(ClockSpan, StripState)>;

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StripKey {
    pub state: StripState,
    pub say: Message,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StripRow {
    pub label: Message,
    pub dates: Message,
    pub say: Message,
    /// One strip, or several for days that differ.
    pub days: Vec<Strip>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FactRow {
    pub label: Message,
    pub value: Message,
    pub more: Option<Message>,
}

/// How long, in figures large enough to read across a room.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Amount {
    pub minutes: crate::units::Minutes,
    pub times: i64,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ScheduleRow {
    pub number: i64,
    pub date: Date,
    pub strip: Strip,
    /// None when it is worn in full from then on.
    pub amount: Option<Amount>,
    /// Said instead of an amount.
    pub all: Option<Message>,
    /// The clock times of each wear, for the alternative text.
    pub worn: Vec<ClockSpan>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CalendarDay {
    pub date: Date,
    pub state: CalendarState,
    pub flag: Option<CalendarFlag>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CalendarKey {
    State(CalendarState, Message),
    Flag(CalendarFlag, Message),
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ActivityRow {
    pub name: Message,
    pub verdict: ActivityVerdict,
    pub how: Vec<Message>,
    pub why: Option<Message>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DoseRow {
    pub number: i64,
    pub say: Message,
}

/// A step of putting on or taking off.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepItem {
    pub say: Message,
    pub figure: Option<Figure>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ExerciseRow {
    pub name: Message,
    pub start: Message,
    pub steps: Vec<Message>,
    /// Done in the orthosis.
    pub place: Message,
    pub dose: Vec<DoseRow>,
    /// What changes after the first week.
    pub later: Option<Message>,
    pub figures: Vec<Figure>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CareItem {
    pub never: bool,
    pub say: Message,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LadderLevel {
    pub level: TriageLevel,
    pub title: Message,
    pub telephone: Option<String>,
    pub date: Option<Date>,
    /// Where to come.
    pub place: Option<Message>,
    pub items: Vec<Message>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LaterItem {
    pub label: Message,
    pub say: Message,
}

/// A row of the diary.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DiaryDay {
    pub date: Date,
    /// Days since the fitting, which is day 1.
    pub number: i64,
    /// What the plan says of this day; nothing after its end.
    pub wear: Option<Message>,
    /// Wears to tick, where the day has a number of them.
    pub wears: Option<usize>,
    /// Hours worn are written down.
    pub hours: bool,
    /// Skin checks to tick.
    pub checks: usize,
    /// Sessions of exercise to tick.
    pub sessions: usize,
}

/// Joints of which the same is true.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JointRow {
    pub state: JointState,
    /// The state in words, so that its mark needs no key.
    pub word: Message,
    pub joints: Message,
    /// The reasons, for those who ask for them.
    pub why: Vec<Message>,
}

/// A picture by itself, or one with its name and what there is to say of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plate {
    pub figure: Figure,
    pub name: Option<Message>,
    pub say: Vec<Message>,
}

/// A component of a section, placed by the section's template.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Component {
    /// Which hand.
    Hand {
        side: Side,
        /// The affected finger, when the guide is about one.
        finger: Option<Message>,
        alt: Message,
        figures: Vec<Figure>,
    },
    Facts(Vec<FactRow>),
    Strips {
        key: Vec<StripKey>,
        rows: Vec<StripRow>,
    },
    Schedule {
        rows: Vec<ScheduleRow>,
        note: Message,
    },
    /// Days from the fitting to the last that is shown; cut into weeks when the first day of the week is known.
    Calendar {
        days: Vec<CalendarDay>,
        what: Vec<(Date, Message)>,
        key: Vec<CalendarKey>,
    },
    Steps {
        kind: StepKind,
        title: Message,
        items: Vec<StepItem>,
    },
    Spots {
        items: Vec<Message>,
        figures: Vec<Figure>,
    },
    Checks {
        fine: Vec<Message>,
        not: Vec<Message>,
        act: Message,
    },
    Activities(Vec<ActivityRow>),
    /// What is held and what moves, row by row.
    Joints(Vec<JointRow>),
    /// Pictures beside each other.
    Plates(Vec<Plate>),
    Exercises {
        rows: Vec<ExerciseRow>,
        avoid: Vec<Message>,
        stop: Message,
    },
    Care(Vec<CareItem>),
    Warning {
        title: Message,
        signs: Vec<Message>,
        act: Message,
        telephone: Option<String>,
        hours: Option<String>,
        /// What cannot wait for a call to the clinic: a heading and its signs.
        emergency: Option<(Message, Vec<Message>)>,
    },
    Ladder(Vec<LadderLevel>),
    /// Days of one week, to tick, each with a scale for pain.
    Diary {
        days: Vec<DiaryDay>,
        /// The highest number of the scale, whose lowest is 0.
        most: i64,
    },
    Note(Vec<Block>),
    Later(Vec<LaterItem>),
    /// Sentences as a list.
    Advice(Vec<Message>),
    Initial,
}
