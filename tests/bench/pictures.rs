//! What each picture of the content costs when nothing is known yet: processor time, curves, size.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use palmleaf::body::{Finger, Side};
use palmleaf::picture::asks::{self, Sitter, Way};
use palmleaf::picture::inside;
use palmleaf::picture::limb::Build;
use palmleaf::picture::scene::{Request, draw};
use palmleaf::pipeline::Workshop;

/// Paper for a picture in a guide, mm.
const PAPER: (u16, u16) = (56, 52);
/// Paper for the name of a structure, units of a picture.
const NAME: (u16, u16) = (400, 80);

/// Every picture of the content, by name: orthoses, steps, spots, faults of fit, exercises, conditions.
fn all(workshop: &Workshop) -> BTreeMap<String, Request> {
    let library = &workshop.library;
    let (width, height) = PAPER;
    let sitter = Sitter { side: Side::Right, finger: Finger::Index, build: Build::Adult, width, height };
    let mut found = BTreeMap::new();
    for (id, shape) in &library.shapes {
        let Some(worn) = asks::worn(library, id, sitter.finger) else { continue };
        found.insert(format!("orthosis {id}"), asks::orthosis(&sitter, &worn, None));
        for way in Way::ALL {
            for step in asks::steps(&sitter, library, &worn, way, None) {
                found.insert(format!("step {id} {} {}", way.word(), step.number + 1), step.request);
            }
        }
        for request in asks::spots(&sitter, &worn, &asks::places(library, id), None) {
            found.insert(format!("spots {id} {}", request.view), request);
        }
        for fault in &shape.faults {
            for (wrong, request) in asks::pair(&sitter, &worn, fault, None) {
                let which = if wrong { "wrong" } else { "right" };
                found.insert(format!("fault {id} {} {which}", fault.id), request);
            }
        }
    }
    for (id, motion) in &library.motions {
        for (number, request) in asks::exercise(&sitter, motion, None, None).into_iter().enumerate() {
            found.insert(format!("exercise {id} {}", number + 1), request);
        }
    }
    for (id, condition) in &library.conditions {
        for one in inside::condition(&sitter, library, condition, &|_| NAME, NAME, None) {
            found.insert(format!("condition {id} {}", one.request.view), one.request);
        }
    }
    found
}

/// Processor time of this thread so far, ms.
fn spent() -> f64 {
    let text = fs::read_to_string("/proc/thread-self/schedstat").expect("Linux");
    let nanoseconds: f64 = text.split(' ').next().and_then(|first| first.parse().ok()).expect("a number");
    nanoseconds / 1e6
}

/// The middle and the largest of some figures, with the name of the largest.
fn spread(figures: &[(&String, f64)]) -> serde_json::Value {
    let mut sorted: Vec<_> = figures.to_vec();
    sorted.sort_by(|a, b| a.1.total_cmp(&b.1));
    let round = |figure: f64| (figure * 10.0).round() / 10.0;
    let mean = sorted.iter().map(|(_, figure)| figure).sum::<f64>() / sorted.len() as f64;
    let worst = sorted.last().expect("a picture");
    serde_json::json!({
        "median": round(sorted[sorted.len() / 2].1),
        "mean": round(mean),
        "worst": round(worst.1),
        "worst-is": worst.0,
    })
}

/// Draws each `every`th picture cold on one thread, and reports ms of processor time, curves and lines, and KB of SVG
/// as JSON. The pictures go into a folder when one is named.
pub fn report(every: usize, folder: Option<&Path>) -> serde_json::Value {
    // In a pool of one nobody helps, so all of the work is counted.
    rayon::ThreadPoolBuilder::new().num_threads(1).build().expect("a thread").install(|| measured(every, folder))
}

fn measured(every: usize, folder: Option<&Path>) -> serde_json::Value {
    let workshop = Workshop::load(None).unwrap_or_else(|_| panic!("the content does not load"));
    let all = all(&workshop);
    let (mut times, mut nodes, mut sizes) = (Vec::new(), Vec::new(), Vec::new());
    for (name, request) in all.iter().step_by(every) {
        let before = spent();
        let picture = draw(request).unwrap_or_else(|why| panic!("{name}: {why}"));
        times.push((name, spent() - before));
        let svg = picture.drawing.svg(name);
        nodes.push((name, picture.drawing.nodes() as f64));
        sizes.push((name, svg.len() as f64 / 1024.0));
        if let Some(folder) = folder {
            fs::write(folder.join(format!("{}.svg", name.replace(' ', "_"))), svg).expect("a folder to write to");
        }
    }
    serde_json::json!({"of": times.len(), "ms": spread(&times), "nodes": spread(&nodes), "kb": spread(&sizes)})
}
