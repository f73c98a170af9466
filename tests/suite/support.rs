//! What the tests share: one workshop, and cases as text.

use std::path::PathBuf;
use std::process::{Command, Output};
use std::sync::LazyLock;

use palmleaf::case::{self, CaseFile};
use palmleaf::checks::Admitted;
use palmleaf::diag::Findings;
use palmleaf::document::{Document, SheetKind};
use palmleaf::pipeline::{Judged, Workshop};
use palmleaf::plan::Plan;
use palmleaf::source::SourceText;

/// The embedded content, loaded once.
pub static WORKSHOP: LazyLock<Workshop> = LazyLock::new(|| match Workshop::load(None) {
    Ok(workshop) => workshop,
    Err(findings) => panic!("the content does not load:\n{}", text(&findings)),
});

pub fn text(findings: &Findings) -> String {
    palmleaf::diag::render::text(findings, palmleaf::diag::render::Style::Short)
}

/// A file of the repository.
pub fn path(inside: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(inside)
}

pub fn file(inside: &str) -> String {
    std::fs::read_to_string(path(inside)).unwrap_or_else(|why| panic!("{inside}: {why}"))
}

/// All files below a folder, in order.
pub fn files(inside: &str, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut pending = vec![path(inside)];
    while let Some(dir) = pending.pop() {
        for entry in std::fs::read_dir(&dir).unwrap_or_else(|why| panic!("{}: {why}", dir.display())) {
            let entry = entry.expect("a folder entry").path();
            if entry.is_dir() {
                pending.push(entry);
            } else if entry.to_string_lossy().ends_with(ending) {
                found.push(entry);
            }
        }
    }
    found.sort();
    found
}

/// The cases in `examples`; a clinic's folder there has files of its own.
pub fn examples() -> Vec<PathBuf> {
    let folder = path("examples");
    files("examples", ".yaml").into_iter().filter(|file| file.parent() == Some(folder.as_path())).collect()
}

/// A good case that tests change line by line.
pub const CASE: &str = "\
palmleaf: 1
hand: right
condition: de-quervain
orthosis: forearm-thumb-spica
fitted: 2027-03-01
review: 2027-03-29
language: en
";

pub fn source(text: &str) -> SourceText {
    SourceText::new("case.yaml", text)
}

pub fn read(text: &str) -> Result<CaseFile, Findings> {
    case::read_text(&source(text))
}

/// Reads and judges a case.
pub fn judge(text: &str) -> Result<Judged<'static>, Findings> {
    WORKSHOP.judge(read(text)?, source(text))
}

/// Reads, judges and plans a case that must be good.
pub fn planned(text: &str) -> (Admitted<'static>, Plan) {
    let judged = judge(text).unwrap_or_else(|findings| panic!("{}\n{text}", self::text(&findings)));
    judged.planned.unwrap_or_else(|findings| panic!("{}\n{text}", self::text(&findings)))
}

/// Reads, judges and plans every hand of a case that must be good.
pub fn hands(text: &str) -> Vec<(Admitted<'static>, Plan)> {
    let judged = judge(text).unwrap_or_else(|findings| panic!("{}\n{text}", self::text(&findings)));
    judged.plans().unwrap_or_else(|findings| panic!("{}\n{text}", self::text(&findings)))
}

/// The guide of plans as a tree.
pub fn guide(hands: &[(Admitted<'static>, Plan)]) -> Document {
    palmleaf::document::sheet(SheetKind::Guide, &hands[0], &hands[1..]).expect("every case has a guide")
}

/// The guide of a case that must be good, in its language.
pub fn sheet(text: &str) -> palmleaf::words::Sheet {
    said(&guide(&hands(text)))
}

/// A document in its language.
pub fn said(document: &Document) -> palmleaf::words::Sheet {
    palmleaf::words::localise(&WORKSHOP.words, document).unwrap_or_else(|fault| panic!("{fault:?}"))
}

/// The codes of everything wrong with a case, whatever stage finds it.
pub fn codes(text: &str) -> Vec<&'static str> {
    match judge(text) {
        Ok(judged) => judged.faults().codes(),
        Err(findings) => findings.codes(),
    }
}

/// Runs the binary.
pub fn run(args: &[&str]) -> Output {
    command(args).output().expect("the binary starts")
}

pub fn command(args: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_palmleaf"));
    command.args(args).current_dir(path("")).env_remove("NO_COLOR");
    command
}

pub fn stdout(output: &Output) -> String {
    String::from_utf8_lossy(&output.stdout).into_owned()
}

pub fn stderr(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// A good case for a condition with an orthosis, whatever these ask for: finger, protocol and its numbers.
pub fn case_for(condition: &str, orthosis: &str) -> String {
    use palmleaf::content::Hold;
    let library = &WORKSHOP.library;
    let rules = &library.conditions[&condition.parse().expect("an id")];
    let piece = &library.orthoses[&orthosis.parse().expect("an id")];
    let mut case = CASE.replace("de-quervain", condition).replace("forearm-thumb-spica", orthosis);
    if rules.needs_finger() || piece.needs_finger() {
        case.push_str("finger: ring\n");
    }
    let Some(protocol) = &rules.protocol else { return case };
    case.push_str("protocol:\n  name: North Quay protocol\n");
    if !protocol.lengths.is_empty() {
        case.push_str("  lengths:\n");
    }
    for length in &protocol.lengths {
        case.push_str(&format!("    - {{phase: {}, lasts: {}}}\n", length.phase, length.at_most));
    }
    if !protocol.angles.is_empty() {
        case.push_str("  angles:\n");
    }
    for angle in &protocol.angles {
        // The angle that the piece stands at, when protocols give it; else the first that they give.
        let joint = angle.joint.joints()[0];
        let stands: Vec<palmleaf::body::MotionRange> = match piece.hold_of(joint) {
            Hold::Immobilised { at, .. } | Hold::Relative { at, .. } | Hold::Limited(at) => at.clone(),
            Hold::Blocked { stops, .. } => stops.iter().map(|stop| palmleaf::body::MotionRange::at(stop.at)).collect(),
            _ => Vec::new(),
        };
        let given = stands.iter().find(|own| angle.within.iter().any(|range| range.contains(**own)));
        let range = given.copied().unwrap_or(angle.within[0]);
        let at = palmleaf::body::Position::signed(range.axis(), range.from());
        case.push_str(&format!("    - {{joint: {}, at: {at}}}\n", angle.joint));
    }
    case
}
