//! Watching: a save becomes a guide, a fault is shown in its place, and Ctrl-C ends it.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Stdio};
use std::sync::mpsc::{Receiver, channel};
use std::time::{Duration, Instant};

use crate::support::{CASE, command};

/// Longer than a laden machine takes for anything here.
const PATIENCE: Duration = Duration::from_secs(60);
/// Two pipes are read by two threads: so long one may be behind the other.
const SETTLED: Duration = Duration::from_millis(300);

struct Watched {
    child: Child,
    lines: Receiver<String>,
    _folder: tempfile::TempDir,
    case: PathBuf,
}

impl Watched {
    fn new(text: &str, more: &[&str]) -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        Self::begin(folder, text, more)
    }

    fn begin(folder: tempfile::TempDir, text: &str, more: &[&str]) -> Self {
        let case = folder.path().join("case.yaml");
        std::fs::write(&case, text).expect("a case");
        let out = folder.path().join("out").to_string_lossy().into_owned();
        let named = case.to_string_lossy().into_owned();
        let mut args = vec!["watch", &named, "--out", &out];
        args.extend(more);
        let mut child =
            command(&args).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().expect("the binary starts");
        let (send, lines) = channel();
        let pipes: [Box<dyn std::io::Read + Send>; 2] =
            [Box::new(child.stdout.take().expect("a pipe")), Box::new(child.stderr.take().expect("a pipe"))];
        for pipe in pipes {
            let send = send.clone();
            std::thread::spawn(move || {
                for line in BufReader::new(pipe).lines().map_while(Result::ok) {
                    let _ended = send.send(line);
                }
            });
        }
        let watched = Self { child, lines, _folder: folder, case };
        watched.until("watching");
        watched
    }

    /// Everything that is said up to a line that holds this, and what the other pipe still had to say by then.
    fn until(&self, wanted: &str) -> String {
        let end = Instant::now() + PATIENCE;
        let mut said = String::new();
        loop {
            let left = end.saturating_duration_since(Instant::now());
            let line = self.lines.recv_timeout(left).unwrap_or_else(|_| panic!("{wanted} is never said:\n{said}"));
            said.push_str(&line);
            said.push('\n');
            if line.contains(wanted) {
                while let Ok(line) = self.lines.recv_timeout(SETTLED) {
                    said.push_str(&line);
                    said.push('\n');
                }
                return said;
            }
        }
    }

    /// Nothing is said for a while.
    fn is_quiet(&self) {
        if let Ok(line) = self.lines.recv_timeout(Duration::from_millis(700)) {
            panic!("it says: {line}");
        }
    }

    fn save(&self, text: &str) {
        std::fs::write(&self.case, text).expect("a save");
    }

    /// As an editor saves that writes another file and gives it the name.
    fn save_by_rename(&self, text: &str) {
        let beside = self.case.with_extension("new");
        std::fs::write(&beside, text).expect("a save");
        std::fs::rename(&beside, &self.case).expect("a rename");
    }

    fn guide(&self) -> Vec<u8> {
        let out = self.case.with_file_name("out");
        let pdf = files(&out).into_iter().find(|file| file.extension().is_some_and(|end| end == "pdf"));
        std::fs::read(pdf.expect("a guide")).expect("a guide")
    }
}

impl Drop for Watched {
    fn drop(&mut self) {
        let _ended = self.child.kill();
        let _ended = self.child.wait();
    }
}

fn files(folder: &Path) -> Vec<PathBuf> {
    std::fs::read_dir(folder).into_iter().flatten().map(|entry| entry.expect("an entry").path()).collect()
}

/// One name for all guides of the case, whatever else it says.
fn case() -> String {
    format!("{CASE}person: {{reference: W-1}}\n")
}

#[test]
fn a_save_becomes_a_guide_whichever_way_it_is_saved() {
    let watched = Watched::new(&case(), &[]);
    let first = watched.guide();
    watched.save(&case().replace("review: 2027-03-29", "review: 2027-04-05"));
    let said = watched.until("after the save");
    assert!(said.contains("guide-w-1-right-en.pdf"), "{said}");
    let second = watched.guide();
    assert_ne!(first, second);
    watched.save_by_rename(&case());
    watched.until("after the save");
    assert_eq!(watched.guide(), first, "the same case is the same guide");
    watched.is_quiet();
}

#[test]
fn a_fault_is_shown_in_its_place_and_the_last_good_guide_stays() {
    let watched = Watched::new(&case(), &[]);
    let good = watched.guide();
    watched.save(&case().replace("forearm-thumb-spica", "wrist-only"));
    let said = watched.until("not built");
    assert!(said.contains("checks/does-not-fit") && said.contains("case.yaml:4:11"), "{said}");
    assert_eq!(watched.guide(), good);
    watched.save(&case());
    watched.until("after the save");
}

#[test]
fn half_a_file_is_waited_for_and_a_file_that_is_gone_is_told() {
    let watched = Watched::new(&case(), &[]);
    let text = case().replace("review: 2027-03-29", "review: 2027-04-05");
    // An editor that empties the file first and takes its time to fill it.
    watched.save("");
    std::thread::sleep(Duration::from_millis(120));
    watched.save(&text);
    let said = watched.until("after the save");
    assert!(!said.contains("error") && !said.contains("empty"), "{said}");
    std::fs::remove_file(&watched.case).expect("it goes");
    watched.until("is gone; waiting for it");
    watched.save(&case());
    let said = watched.until("after the save");
    assert!(said.contains("guide-w-1-right-en.pdf"), "{said}");
}

#[test]
fn a_change_of_the_clinics_file_or_of_the_content_builds_again() {
    let folder = tempfile::tempdir().expect("a folder");
    let content = folder.path().join("ours");
    std::fs::create_dir_all(content.join("locales/en")).expect("folders");
    let clinic = content.join("clinic.yaml");
    std::fs::write(&clinic, "name: First Clinic\n").expect("a file");
    let named = content.to_string_lossy().into_owned();
    let watched = Watched::begin(folder, &case(), &["--content", &named]);
    let first = watched.guide();
    std::fs::write(&clinic, "name: Second Clinic\n").expect("a save");
    watched.until("after the save");
    let second = watched.guide();
    assert_ne!(first, second);
    std::fs::write(&clinic, "nme: Third Clinic\n").expect("a save");
    let said = watched.until("after the save");
    assert!(said.contains("field/unknown") && said.contains("write `name`"), "{said}");
    assert_eq!(watched.guide(), second);
}

#[cfg(unix)]
#[test]
fn an_interrupt_ends_it_well_and_leaves_no_half_file() {
    let mut watched = Watched::new(&case(), &[]);
    let asked = std::process::Command::new("kill").args(["-INT", &watched.child.id().to_string()]).status();
    assert!(asked.expect("kill").success());
    let ended = watched.child.wait().expect("it ends");
    assert_eq!(ended.code(), Some(0));
    let left = files(&watched.case.with_file_name("out"));
    assert!(left.iter().all(|file| !file.to_string_lossy().contains(".part")), "{left:?}");
}

#[test]
fn several_cases_are_each_built_by_themselves() {
    let folder = tempfile::tempdir().expect("a folder");
    let other = folder.path().join("other.yaml");
    std::fs::write(&other, case().replace("W-1", "W-2")).expect("a case");
    let named = other.to_string_lossy().into_owned();
    let watched = Watched::begin(folder, &case(), &[&named]);
    watched.save(&case().replace("review: 2027-03-29", "review: 2027-04-05"));
    let said = watched.until("after the save");
    assert!(said.contains("guide-w-1") && !said.contains("guide-w-2"), "{said}");
}
