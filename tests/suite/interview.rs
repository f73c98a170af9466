//! The interview: plain lines in, a commented case file out that says what was answered.

use std::path::Path;
use std::process::Output;

use crate::support::{command, read, stderr, stdout};

/// Runs the interview with lines of answers, and gives what it said and the file, if it is there.
fn interview(folder: &Path, answers: &str, more: &[&str]) -> (Output, Option<String>) {
    let given = folder.join("answers.txt");
    std::fs::write(&given, answers).expect("the answers");
    let file = folder.join("case.yaml");
    let (given, path) = (given.to_string_lossy().into_owned(), file.to_string_lossy().into_owned());
    let mut args = vec!["new", &path, "--answers", &given, "--today", "2027-03-01"];
    args.extend(more);
    let output = command(&args).output().expect("the binary starts");
    (output, std::fs::read_to_string(file).ok())
}

fn folder() -> tempfile::TempDir {
    tempfile::tempdir().expect("a folder")
}

/// A condition of one side without finger, protocol or findings; two phases can begin with the fitting.
const PLAIN: &str = "\
# what for
de-quervain
right
1
forearm-thumb-spica


North Clinic
01632 960 142
999
open-jar, lift-baby
new-mother
ar
large
HR-7
Mara: \"Oduya\" # not a remark
";

#[test]
fn answers_become_a_case_that_checks_well() {
    let folder = folder();
    let (output, file) = interview(folder.path(), PLAIN, &[]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(stdout(&output).contains("good"), "{}", stdout(&output));
    let text = file.expect("the file");
    let case = read(&text).unwrap_or_else(|faults| panic!("{}\n{text}", crate::support::text(&faults)));
    assert_eq!(case.condition.as_str(), "de-quervain");
    assert_eq!(case.orthosis.as_str(), "forearm-thumb-spica");
    assert_eq!(case.hand.word(), "right");
    assert_eq!(case.fitted.value.to_string(), "2027-03-01");
    // The first phase lasts four weeks.
    assert_eq!(case.review.value.to_string(), "2027-03-29");
    assert_eq!(case.activities.iter().map(|id| id.as_str().to_owned()).collect::<Vec<_>>(), ["open-jar", "lift-baby"]);
    assert_eq!(case.factors.len(), 1);
    assert_eq!(case.language.as_str(), "ar");
    assert_eq!(case.print.map(|size| size.word()), Some("large"));
    let person = case.person.expect("a person");
    assert_eq!(person.name.expect("a name").as_str(), "Mara: \"Oduya\" # not a remark");
    assert_eq!(case.clinic.expect("a clinic").emergency.expect("a number").as_str(), "999");
    // A colleague reads what each line is and what else it may say.
    for said in ["# The hand that wears the orthosis.", "Choices: left, right.", "Also fit:", "# Not used here"] {
        assert!(text.contains(said), "{said} is missing:\n{text}");
    }
    assert!(text.lines().all(|line| line.chars().count() <= 130), "{text}");
}

#[test]
fn a_thing_is_found_by_its_name_in_any_language_and_its_term() {
    for name in
        ["De Quervain tenosynovitis", "de quervain TENOSYNOVITIS", "Sore thumb tendons at the wrist (de Quervain)"]
    {
        let folder = folder();
        let (output, file) = interview(folder.path(), &PLAIN.replacen("de-quervain", name, 1), &[]);
        assert_eq!(output.status.code(), Some(0), "{name}: {}", stderr(&output));
        assert!(file.expect("the file").contains("\ncondition: de-quervain\n"), "{name}");
    }
    // The whole name in Arabic, as the words have it.
    let arabic = crate::support::file("locales/ar/conditions.ftl");
    let name = arabic
        .lines()
        .find_map(|line| line.strip_prefix("condition-de-quervain-name = "))
        .expect("the Arabic name on one line");
    let folder = folder();
    let (output, file) = interview(folder.path(), &PLAIN.replacen("de-quervain", name, 1), &[]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(file.expect("the file").contains("\ncondition: de-quervain\n"));
}

#[test]
fn a_misfit_is_said_while_one_chooses_with_the_joint_that_fails() {
    let folder = folder();
    let answers = PLAIN.replacen("forearm-thumb-spica", "wrist-only\nno\nforearm-thumb-spica", 1);
    let (output, file) = interview(folder.path(), &answers, &[]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let said = stderr(&output);
    assert!(said.contains("wrist-only does not fit:") && said.contains("thumb-cmc must be held still"), "{said}");
    assert!(file.expect("the file").contains("\northosis: forearm-thumb-spica\n"));
}

#[test]
fn who_takes_a_misfit_all_the_same_gets_the_file_and_what_check_says() {
    let folder = folder();
    let answers = PLAIN.replacen("forearm-thumb-spica", "wrist-only\nyes", 1);
    let (output, file) = interview(folder.path(), &answers, &[]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("checks/does-not-fit"), "{}", stderr(&output));
    assert!(file.expect("the file").contains("\northosis: wrist-only\n"));
}

#[test]
fn finger_and_protocol_are_asked_for_where_the_condition_needs_them() {
    let folder = folder();
    let answers = "\
flexor-zone-two-repair
left
index
1
dorsal-block-long
North Quay protocol, second edition
5 weeks
2 weeks
flexion 20 deg
flexion 50 deg
2027-03-02
2027-04-06






en



";
    let (output, file) = interview(folder.path(), answers, &[]);
    let text = file.unwrap_or_else(|| panic!("{}", stderr(&output)));
    let case = read(&text).unwrap_or_else(|faults| panic!("{}\n{text}", crate::support::text(&faults)));
    assert_eq!(case.finger.expect("a finger").word(), "index");
    let protocol = case.protocol.expect("a protocol");
    assert_eq!((protocol.lengths.len(), protocol.angles.len()), (2, 2));
    assert_eq!(output.status.code(), Some(0), "{}\n{text}", stderr(&output));
}

#[test]
fn only_findings_that_the_condition_asks_for_are_asked() {
    let folder = folder();
    let answers = "thumb-cmc-osteoarthritis\nright\n1\n25\nshort-cmc\n";
    let (output, file) = interview(folder.path(), answers, &[]);
    let said = stderr(&output);
    assert!(said.contains("extension at thumb-mcp, in degrees; from 20 deg on"), "{said}");
    assert_eq!(said.matches("Measured:").count(), 1, "{said}");
    assert!(!stderr(&interview(folder.path(), PLAIN, &[]).0).contains("Measured:"));
    assert!(file.is_none());
}

#[test]
fn answers_that_end_or_are_none_are_told_with_their_line_and_leave_nothing() {
    let folder = folder();
    for (answers, told) in [
        ("de-quervain\nright\n", "the answers end before the question: Which phase"),
        ("de-quervain\nup\n", "line 2 of the answers does not answer the question: Which hand?"),
        ("thumb\n", "line 1 of the answers"),
        // Nobody gets a condition or a hand by pressing Enter.
        ("\n", "This has to be answered."),
        ("de-quervain\n\n", "line 2 of the answers"),
        (PLAIN.replacen("HR-7", "HR\u{1b}[31m7", 1).as_str(), "U+001B"),
        (PLAIN.replacen("HR-7", "HR\u{202e}7", 1).as_str(), "U+202E"),
    ] {
        let (output, file) = interview(folder.path(), answers, &[]);
        assert_eq!(output.status.code(), Some(1), "{answers}");
        assert!(stderr(&output).contains(told), "{told} is missing:\n{}", stderr(&output));
        assert!(!stderr(&output).contains('\u{1b}') && !stderr(&output).contains('\u{202e}'));
        assert!(file.is_none());
        let left: Vec<_> = std::fs::read_dir(folder.path()).expect("the folder").collect();
        assert_eq!(left.len(), 1, "only the answers: {left:?}");
    }
}

#[test]
fn a_file_is_written_over_only_when_the_person_agrees() {
    let folder = folder();
    let file = folder.path().join("case.yaml");
    std::fs::write(&file, "mine").expect("a file");
    let (output, kept) = interview(folder.path(), &format!("no\n{PLAIN}"), &[]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("is there already"), "{}", stderr(&output));
    assert_eq!(kept.as_deref(), Some("mine"));
    let (output, new) = interview(folder.path(), &format!("yes\n{PLAIN}"), &[]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(new.expect("a file").contains("palmleaf: 1"));
}

#[test]
fn whom_to_call_is_not_asked_where_a_clinic_file_says_it() {
    let folder = folder();
    let answers = PLAIN.replacen("North Clinic\n01632 960 142\n999\n", "", 1).replacen("\nar\n", "\nen\n", 1);
    let (output, file) = interview(folder.path(), &answers, &["--clinic", "examples/harbour-row/clinic.yaml"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(!file.expect("the file").contains("\nclinic:"));
}
