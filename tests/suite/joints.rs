//! What each orthosis does to each joint, held against a table that was written from the trade's catalogue by somebody who
//! had not seen the content.

use palmleaf::body::{Direction, Finger, JointName, MotionRange, Position};
use palmleaf::content::{Hold, Orthosis};
use palmleaf::ids::OrthosisId;
use palmleaf::source::Node;

use crate::support::{WORKSHOP, path};
use crate::tables::{rows, scalar, word, words};

/// One row of the table.
pub struct JointRow {
    pub id: OrthosisId,
    row: Node,
    at: String,
}

pub fn table() -> Vec<JointRow> {
    let (source, list) = rows(&path("tests/verdicts/orthosis-joints.yaml"));
    list.into_iter()
        .map(|row| {
            let at = format!("orthosis-joints.yaml:{}", source.line_and_column(row.span.start).0);
            JointRow { id: word(&row, "orthosis").unwrap_or_else(|| panic!("{at}: orthosis")), row, at }
        })
        .collect()
}

fn hold_word(hold: &Hold) -> &'static str {
    match hold {
        Hold::Immobilised { .. } => "immobilised",
        Hold::Limited(_) => "limited",
        Hold::Blocked { .. } => "blocked",
        Hold::Relative { .. } => "relative",
        Hold::Coupled => "coupled",
        Hold::Mobilised { .. } => "mobilised",
        Hold::Supported => "supported",
        Hold::Free => "free",
    }
}

/// Whether a setting lies in the band of the row, on its axis.
fn in_band(row: &Node, hold: &Hold) -> bool {
    let (Some(from), Some(to)) = (word::<Position>(row, "from"), word::<Position>(row, "to")) else { return true };
    let band = MotionRange::between(from.axis(), from.angle(), to.angle());
    let inside = |angle: palmleaf::units::Degrees| band.from() <= angle && angle <= band.to();
    match hold {
        Hold::Immobilised { at, .. } | Hold::Relative { at, .. } => {
            at.iter().any(|set| set.axis() == band.axis() && inside(set.from()) && inside(set.to()))
        }
        // The far end of what is left free.
        Hold::Limited(ranges) => ranges.iter().any(|range| range.axis() == band.axis() && inside(range.to())),
        Hold::Blocked { stops, .. } => {
            stops.iter().any(|stop| stop.at.axis() == band.axis() && inside(stop.at.angle()))
        }
        Hold::Mobilised { at, .. } => {
            at.is_empty() || at.iter().any(|set| set.axis() == band.axis() && inside(set.to()))
        }
        Hold::Coupled | Hold::Supported | Hold::Free => true,
    }
}

/// The faults of one row against an orthosis, which may be the content's or a mutant.
pub fn faults(line: &JointRow, orthosis: &Orthosis) -> Vec<String> {
    let JointRow { id, row, at } = line;
    // A finger that is not named stands for any: the ring finger is as good as another.
    let whole = orthosis.for_finger(Finger::Ring);
    let mut faults = Vec::new();
    for name in words::<JointName>(row, "free") {
        for joint in name.for_finger(Finger::Ring).joints().into_iter().filter(|joint| whole.hold_of(*joint).acts()) {
            faults.push(format!("{at}: {id} leaves {joint} free in the table, and acts on it in the content"));
        }
    }
    let Some(name) = word::<JointName>(row, "joint") else { return faults };
    let wanted = scalar(row, "hold").unwrap_or_else(|| panic!("{at}: hold"));
    for joint in name.for_finger(Finger::Ring).joints() {
        let hold = whole.hold_of(joint);
        if hold_word(hold) != wanted {
            faults.push(format!("{at}: {id} holds {joint} {}, the table says {wanted}", hold_word(hold)));
        } else if !in_band(row, hold) {
            faults.push(format!("{at}: {id} sets {joint} outside the band of the table: {hold:?}"));
        }
        if let (Some(direction), Hold::Blocked { stops, .. }) = (word::<Direction>(row, "stops"), hold)
            && !stops.iter().any(|stop| stop.direction == direction)
        {
            faults.push(format!("{at}: {id} does not stop {direction} at {joint}"));
        }
    }
    faults
}

#[test]
fn each_orthosis_acts_on_its_joints_as_the_catalogue_says() {
    let table = table();
    let library = &WORKSHOP.library;
    let known: std::collections::BTreeSet<&OrthosisId> = table.iter().map(|row| &row.id).collect();
    for id in library.orthoses.keys() {
        assert!(known.contains(id), "the table has no row for {id}");
    }
    let faults: Vec<String> = table
        .iter()
        .flat_map(|row| match library.orthoses.get(&row.id) {
            Some(orthosis) => faults(row, orthosis),
            None => vec![format!("{}: no orthosis {}", row.at, row.id)],
        })
        .collect();
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}
