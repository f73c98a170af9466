//! Wanted verdicts, row by row, each with its source.

use palmleaf::body::{Direction, Joint};
use palmleaf::checks::{Fit, Question, judge_phase};
use palmleaf::content::{Basis, Measured};
use palmleaf::source::{FromNode, Limits, Node, NodeKind, Reader, SourceText, parse};
use palmleaf::units::Degrees;

use crate::support::{WORKSHOP, files};

fn field<'n>(node: &'n Node, name: &str) -> Option<&'n Node> {
    match &node.kind {
        NodeKind::Mapping(entries) => entries.iter().find(|entry| entry.key == name).map(|entry| &entry.value),
        _ => None,
    }
}

fn word<T: std::str::FromStr>(node: &Node, name: &str) -> Option<T> {
    match &field(node, name)?.kind {
        NodeKind::Scalar(text) => text.parse().ok(),
        _ => None,
    }
}

fn findings(node: &Node) -> Vec<Measured> {
    let Some(Node { kind: NodeKind::List(items), .. }) = field(node, "findings") else { return Vec::new() };
    let measured = |item: &Node| {
        Some(Measured {
            joint: word::<Joint>(item, "joint")?,
            motion: word::<Direction>(item, "motion")?,
            angle: word::<Degrees>(item, "angle")?,
        })
    };
    items.iter().map(|item| measured(item).expect("a finding has joint, motion and angle")).collect()
}

#[test]
fn every_verdict_is_the_wanted_one() {
    let mut rows = 0;
    for path in files("tests/verdicts", ".yaml") {
        let name = path.file_name().expect("a name").to_string_lossy().into_owned();
        let text = std::fs::read_to_string(&path).expect("a verdict file");
        let source = SourceText::new(name.clone(), text);
        let node = parse(&source, Limits::CONTENT).unwrap_or_else(|fault| panic!("{fault:?}"));
        let NodeKind::List(list) = &node.kind else { panic!("{name} is a list") };
        for row in list {
            rows += 1;
            let (line, _) = source.line_and_column(row.span.start);
            let at = format!("{name}:{line}");
            let condition_id: palmleaf::ids::ConditionId =
                word(row, "condition").unwrap_or_else(|| panic!("{at}: condition"));
            let orthosis_id: palmleaf::ids::OrthosisId =
                word(row, "orthosis").unwrap_or_else(|| panic!("{at}: orthosis"));
            let condition = &WORKSHOP.library.conditions[&condition_id];
            let phase_name: String = word(row, "phase").unwrap_or_else(|| "first".to_owned());
            let phase = condition
                .phases
                .iter()
                .find(|phase| phase_name == "first" || phase.id.as_str() == phase_name)
                .unwrap_or_else(|| panic!("{at}: no phase {phase_name}"));
            let measured = findings(row);
            let orthosis = &WORKSHOP.library.orthoses[&orthosis_id];
            let verdict = judge_phase(Question { condition, orthosis, findings: &measured, factors: &[] }, phase);
            let wanted: Fit = word(row, "verdict").unwrap_or_else(|| panic!("{at}: verdict"));
            let table = palmleaf::checks::table(&verdict).join("\n");
            assert_eq!(verdict.fit, wanted, "{at}: {condition_id} with {orthosis_id} in {phase_name}\n{table}");
            if let Some(because) = word::<Joint>(row, "because")
                && wanted >= Fit::DoesNotFit
            {
                let decided: Vec<String> =
                    verdict.deciding().filter_map(|line| line.joint).map(|joint| joint.to_string()).collect();
                assert!(
                    decided.contains(&because.to_string()),
                    "{at}: decided at {decided:?}, not at {because}\n{table}"
                );
            }
            let mut reader = Reader::new(&source);
            let basis = field(row, "source").and_then(|node| Basis::from_node(node, &mut reader));
            match basis {
                Some(Basis::Published(key)) => {
                    assert!(WORKSHOP.library.sources.contains_key(&key), "{at}: no source {key}")
                }
                Some(_) => {}
                None => panic!("{at}: a wanted verdict names its source"),
            }
        }
    }
    assert!(rows >= 24, "{rows} rows");
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
        let question = Question { condition, orthosis, findings: &findings, factors: &[] };
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
