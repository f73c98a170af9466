//! Bad cases state their errors in place: `line  # error: code`. Missing and surplus ones both fail.

use std::collections::BTreeSet;

use palmleaf::diag::Findings;

use crate::support::{WORKSHOP, files, text};

fn findings(path: &std::path::Path) -> Findings {
    let judged = WORKSHOP.read(path).and_then(|(file, source)| WORKSHOP.judge(file, source));
    match judged {
        Ok(judged) => judged.faults(),
        Err(findings) => findings,
    }
}

#[test]
fn every_bad_case_shows_the_errors_it_notes() {
    let mut seen = BTreeSet::new();
    let mut count = 0;
    for path in files("tests/cases", ".yaml") {
        count += 1;
        let content = std::fs::read_to_string(&path).expect("a case");
        let wanted: BTreeSet<(usize, String)> = content
            .lines()
            .enumerate()
            .filter_map(|(number, line)| {
                let (_, codes) = line.split_once("# error: ")?;
                Some(codes.split(", ").map(move |code| (number + 1, code.trim().to_owned())).collect::<Vec<_>>())
            })
            .flatten()
            .collect();
        let found = findings(&path);
        let got: BTreeSet<(usize, String)> = found
            .sorted()
            .iter()
            .map(|one| {
                let line = one.primary.as_ref().map_or(0, |label| label.place.line_and_column().0);
                (line, one.code.name().to_owned())
            })
            .collect();
        assert_eq!(got, wanted, "{}\n{}", path.display(), text(&found));
        for one in found.sorted() {
            assert!(one.help.is_some() || !one.notes.is_empty(), "{}: {} gives no help", path.display(), one.message);
            assert!(!one.message.ends_with('.') && !one.message.is_empty());
        }
        seen.extend(found.codes());
    }
    assert!(count >= 24, "{count} cases");
    for code in [
        "field/unknown",
        "field/missing",
        "field/wrong-value",
        "id/unknown",
        "case/dates-out-of-order",
        "case/said-twice",
        "case/impossible-finding",
        "case/override",
        "case/angle-not-adjustable",
        "plan/safety-override",
        "checks/does-not-fit",
        "checks/unsafe",
        "case/finger",
        "case/protocol",
        "case/conditions-contradict",
        "plan/phase-unreachable",
    ] {
        assert!(seen.contains(code), "no case shows {code}");
    }
}
