//! What the tests share: one workshop, and cases as text.

use std::path::PathBuf;
use std::process::{Command, Output};
use std::sync::LazyLock;

use palmleaf::case::{self, CaseFile};
use palmleaf::checks::Admitted;
use palmleaf::diag::Findings;
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
