//! Which messages stand in narrow places.

use std::collections::BTreeMap;

use crate::assets::Assets;
use crate::diag::Findings;
use crate::ids::MessageId;
use crate::source::{FromNode, Limits, Reader, parse};
use crate::units::Characters;

/// Reads the most characters of each message in `content/narrow.yaml`.
pub fn load(assets: &Assets) -> Result<BTreeMap<String, usize>, Findings> {
    let source = assets.text("content/narrow.yaml")?;
    let node = parse(&source, Limits::CONTENT)?;
    let mut reader = Reader::new(&source);
    let rooms = BTreeMap::<MessageId, Characters>::from_node(&node, &mut reader);
    let findings = reader.finish();
    match rooms {
        Some(rooms) if !findings.has_errors() => {
            Ok(rooms.into_iter().map(|(id, room)| (id.to_string(), usize::from(room.get()))).collect())
        }
        _ => Err(findings),
    }
}
