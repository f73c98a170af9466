//! What has to be there at once while somebody types: `choose` and `check`, after the content is loaded.

use std::time::Instant;

use palmleaf::body::Finger;
use palmleaf::case;
use palmleaf::choose::{Ask, rank};
use palmleaf::pipeline::Workshop;
use palmleaf::source::SourceText;

use crate::sheets;

/// How often each is done.
const TIMES: usize = 25;

fn median(work: impl Fn()) -> f64 {
    let mut times: Vec<f64> = (0..TIMES)
        .map(|_| {
            let started = Instant::now();
            work();
            started.elapsed().as_secs_f64() * 1000.0
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

/// The middle and the largest of some times.
fn spread(mut times: Vec<f64>) -> serde_json::Value {
    times.sort_by(f64::total_cmp);
    serde_json::json!({"median": times[times.len() / 2], "worst": times.last(), "of": times.len()})
}

/// As JSON, ms: `choose` over all orthoses for every condition, and `check` of every kind of case that is measured.
pub fn report() -> serde_json::Value {
    let workshop = Workshop::load(None).unwrap_or_else(|_| panic!("the content does not load"));
    let choose = workshop
        .library
        .conditions
        .values()
        .map(|condition| {
            let finger = condition.needs_finger().then_some(Finger::Ring);
            median(|| {
                let condition = finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
                let phase = condition.phases.first().expect("a phase");
                let ranked = rank(&workshop.library, Ask { phase, finger, findings: &[], factors: &[], needs: &[] });
                assert!(!ranked.is_empty());
            })
        })
        .collect();
    let check = (0..12)
        .map(|number| {
            let text = sheets::case(number);
            median(|| {
                let source = SourceText::new("case.yaml", text.as_str());
                let file = case::read_text(&source).expect("a case");
                let judged = workshop.judge(file, source).expect("a case");
                assert!(!judged.faults().has_errors());
            })
        })
        .collect();
    serde_json::json!({"choose": spread(choose), "check": spread(check), "orthoses": workshop.library.orthoses.len()})
}
