//! A posture file.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use crate::body::{Finger, JointName, Position, norms};
use crate::case;
use crate::diag::{Code, Diagnostic, Findings};
use crate::picture::limb::Posture;
use crate::source::{At, FromNode, Limits, Place, Reader, parse, record};

record! {
    /// The posture of a hand.
    pub struct PostureFile ("a posture") {
        /// How joints stand: `wrist: [extension 30 deg]`. What is not named rests.
        pub joints: BTreeMap<JointName, Vec<At<Position>>>,
    }
}

/// Reads a posture.
///
/// # Errors
/// All faults of the file at once: what is no joint or no position, and what no joint reaches.
pub fn read(path: &Path, finger: Finger) -> Result<Posture, Findings> {
    let source = case::load(path)?;
    let node = parse(&source, Limits::CASE)?;
    let mut reader = Reader::new(&source);
    let file = PostureFile::from_node(&node, &mut reader);
    let mut findings = reader.finish();
    let Some(file) = file.filter(|_| !findings.has_errors()) else { return Err(findings) };
    let mut posture = Posture::flat();
    for (name, positions) in JointName::general_first(&file.joints) {
        let name = name.for_finger(finger);
        let mut axes = BTreeSet::new();
        for position in positions {
            let place = Place { source: source.clone(), span: position.span.clone() };
            if !axes.insert(position.axis()) {
                let message = format!("the joint {name} is said twice to stand on one axis");
                findings
                    .push(Diagnostic::error(Code::DRAW_IMPOSSIBLE, place.clone(), message).help("keep one of them"));
            }
            let wrong =
                name.joints().into_iter().find_map(|joint| Some((joint, norms::beyond(joint, position.value)?)));
            if let Some((joint, message)) = wrong {
                let axes = norms::axes(joint).filter_map(|axis| norms::range(joint, axis));
                let help = match norms::range(joint, position.axis()) {
                    Some(_) => "write an angle that the joint reaches".to_owned(),
                    None => {
                        format!("use one of: {}", axes.map(|range| range.to_string()).collect::<Vec<_>>().join(", "))
                    }
                };
                findings.push(Diagnostic::error(Code::DRAW_IMPOSSIBLE, place, message).help(help));
            }
            posture.set(name, position.value);
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(posture) }
}
