//! Every orthosis that has a look can be drawn: found out without drawing.

use rayon::prelude::*;

use crate::body::Finger;
use crate::content::Library;
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::OrthosisId;
use crate::picture::asks;
use crate::picture::scene::Fitted;

/// Lays every orthosis that has a look on a limb, on each finger that it can be on. Returns how many were laid.
pub fn check(library: &Library, findings: &mut Findings) -> usize {
    let ids: Vec<&OrthosisId> = library.shapes.keys().filter(|id| library.orthoses.contains_key(id)).collect();
    let faults: Vec<Option<Diagnostic>> = ids.par_iter().map(|id| fault(library, id)).collect();
    faults.into_iter().flatten().for_each(|fault| findings.push(fault));
    ids.len()
}

fn fault(library: &Library, id: &OrthosisId) -> Option<Diagnostic> {
    let needs_finger = library.orthoses.get(id)?.needs_finger();
    let fingers = if needs_finger { Finger::ALL } else { &Finger::ALL[..1] };
    let wrong = fingers.iter().find_map(|&finger| {
        let worn = asks::worn(library, id, finger)?;
        let on = if needs_finger { format!(" on the {finger} finger") } else { String::new() };
        match Fitted::new(&worn, finger) {
            Err(why) => Some(format!("it cannot be drawn{on}: {why}")),
            Ok(fitted) => fitted.astray().map(|part| format!("{part} touches no part of the limb{on}")),
        }
    })?;
    let place = library.place(&format!("content/shapes/{id}.yaml"), "");
    Some(Diagnostic::error(Code::CONTENT_RULE, place, wrong))
}
