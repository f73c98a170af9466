//! Wanted verdicts, row by row, each with its source.

use palmleaf::body::{Direction, Finger, Joint};
use palmleaf::checks::{Fit, Question, judge_phase};
use palmleaf::content::{Basis, Measured};
use palmleaf::source::{Node, Reader, SourceText};
use palmleaf::units::Degrees;

use crate::support::{WORKSHOP, files};
use crate::tables::{condition, field, findings, orthosis, phase, rows, scalar, word};

/// What a row wants: one verdict, or one of two where colleagues differ by a remark.
fn wanted(row: &Node, at: &str) -> Vec<Fit> {
    match scalar(row, "verdict").unwrap_or_else(|| panic!("{at}: verdict")) {
        "at-most-remarks" => vec![Fit::Fits, Fit::FitsWithRemarks],
        "at-least-misfit" => vec![Fit::DoesNotFit, Fit::Unsafe],
        one => vec![one.parse().unwrap_or_else(|_| panic!("{at}: `{one}` is no verdict"))],
    }
}

fn source_is_known(source: &SourceText, row: &Node, at: &str) {
    let mut reader = Reader::new(source);
    let basis = field(row, "source")
        .and_then(|node| <Basis as palmleaf::source::FromNode>::from_node(node, &mut reader))
        .unwrap_or_else(|| panic!("{at}: a wanted verdict names its source"));
    if let Basis::Published(key) = basis {
        assert!(WORKSHOP.library.sources.contains_key(&key), "{at}: no source {key}");
    }
}

#[test]
fn every_verdict_is_the_wanted_one() {
    let mut count = 0;
    let mut dangerous = 0;
    let mut faults: Vec<String> = Vec::new();
    for path in files("tests/verdicts", ".yaml").iter().filter(|path| crate::tables::is_verdicts(path)) {
        let (source, list) = rows(path);
        for row in &list {
            count += 1;
            let (line, _) = source.line_and_column(row.span.start);
            let at = format!("{}:{line}", source.name());
            source_is_known(&source, row, &at);
            let finger: Option<Finger> = word(row, "finger");
            let (condition_id, condition) = condition(row, finger, &at);
            let (orthosis_id, orthosis) = orthosis(row, finger, &at);
            let phase = phase(row, &condition, &at);
            let measured = findings(row);
            let verdict = judge_phase(Question { orthosis: &orthosis, findings: &measured, factors: &[] }, phase);
            let wanted = wanted(row, &at);
            dangerous += usize::from(verdict.fit == Fit::Unsafe);
            let table = palmleaf::checks::table(&verdict).join("\n    ");
            if !wanted.contains(&verdict.fit) {
                faults.push(format!(
                    "{at}: {condition_id} with {orthosis_id} in {}: {} where {wanted:?} is wanted\n    {table}",
                    phase.id, verdict.fit
                ));
                continue;
            }
            if let Some(because) = word::<Joint>(row, "because")
                && wanted.iter().all(|fit| *fit >= Fit::DoesNotFit)
            {
                let failing = verdict.lines.iter().filter(|line| line.result > palmleaf::checks::Grade::Remark);
                let decided: Vec<String> =
                    failing.filter_map(|line| line.joint).map(|joint| joint.to_string()).collect();
                if !decided.contains(&because.to_string()) {
                    faults.push(format!(
                        "{at}: {condition_id} with {orthosis_id}: decided at {decided:?}, not at {because}\n    {table}"
                    ));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{} of {count} rows:\n{}", faults.len(), faults.join("\n"));
    assert!(count >= 400, "{count} rows");
    assert!(dangerous >= 80, "{dangerous} dangerous rows");
}

/// Common practice, no source: what every hand therapist is taught of these three thumbs.
#[test]
fn the_thumb_rules_follow_from_the_joint_tables_alone() {
    let fit = |condition: &str, orthosis: &str, hyperextension: Option<i16>| {
        let findings: Vec<Measured> = hyperextension
            .map(|degrees| Measured {
                joint: Joint::ThumbMcp,
                motion: Direction::Extension,
                angle: Degrees::whole(degrees),
            })
            .into_iter()
            .collect();
        let condition = &WORKSHOP.library.conditions[&condition.parse().expect("an id")];
        let orthosis = &WORKSHOP.library.orthoses[&orthosis.parse().expect("an id")];
        let question = Question { orthosis, findings: &findings, factors: &[] };
        let verdict = judge_phase(question, &condition.phases[0]);
        let decided: Vec<Joint> = verdict.deciding().filter_map(|line| line.joint).collect();
        (verdict.fit, decided)
    };
    // The wrist-only orthosis leaves the thumb base moving, the hand-based one the wrist.
    let (wrist_only, why) = fit("de-quervain", "wrist-only", None);
    assert!(wrist_only >= Fit::DoesNotFit && why.contains(&Joint::ThumbCmc));
    let (hand_based, why) = fit("de-quervain", "hand-thumb-spica", None);
    assert!(hand_based >= Fit::DoesNotFit && why.contains(&Joint::Wrist) && !why.contains(&Joint::ThumbCmc));
    assert!(fit("de-quervain", "forearm-thumb-spica", None).0 <= Fit::FitsWithRemarks);
    // The ligament wants the knuckle held against sideways force, and no wrist, fresh or old.
    for injury in ["thumb-ucl-acute", "thumb-ucl-chronic"] {
        assert!(fit(injury, "hand-thumb-spica", None).0 <= Fit::FitsWithRemarks, "{injury}");
        let (short, why) = fit(injury, "short-cmc", None);
        assert!(short >= Fit::DoesNotFit && why.contains(&Joint::ThumbMcp), "{injury}");
    }
    assert_eq!(fit("thumb-ucl-acute", "soft-thumb-wrap", None).0, Fit::Unsafe);
    // The worn base may leave the knuckle free, until it bends back far.
    assert_eq!(fit("thumb-cmc-osteoarthritis", "short-cmc", None).0, Fit::Fits);
    assert_eq!(fit("thumb-cmc-osteoarthritis", "short-cmc", Some(25)).0, Fit::FitsWithRemarks);
    let (far, why) = fit("thumb-cmc-osteoarthritis", "short-cmc", Some(35));
    assert!(far >= Fit::DoesNotFit && why == [Joint::ThumbMcp]);
    assert!(fit("thumb-cmc-osteoarthritis", "short-cmc-mcp-block", Some(35)).0 <= Fit::FitsWithRemarks);
}
