//! Cut off at any moment, short of room, without the right to write: no torn file, no lost good file, and the next run
//! makes exactly what an undisturbed run makes.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;

use crate::dice::{Dice, times};
use crate::support::{CASE, command, path, stderr};

/// Commands that write. `IN` stands for the folder of their input, `OUT` for the one they write to.
const COMMANDS: &[&[&str]] = &[&["build", "IN/case.yaml", "--sheets", "guide,card,reminders,record", "--out", "OUT"]];

/// What a folder of input holds before and after somebody changed it: names of files stay as they are.
fn input(folder: &Path, note: &str) {
    let case = format!("{CASE}person: {{name: Ana Lima, reference: K-7}}\nnote: {note}\n");
    std::fs::write(folder.join("case.yaml"), case).expect("a case");
}

type Held = BTreeMap<String, Vec<u8>>;

fn held(folder: &Path) -> Held {
    let Ok(entries) = std::fs::read_dir(folder) else { return Held::new() };
    entries
        .map(|entry| entry.expect("an entry").path())
        .map(|path| (path.file_name().expect("a name").to_string_lossy().into_owned(), std::fs::read(&path).expect("a file")))
        .collect()
}

/// A command with folders of its own, and a cache that is warm after the first run.
struct Desk {
    args: &'static [&'static str],
    folder: tempfile::TempDir,
}

impl Desk {
    fn new(args: &'static [&'static str]) -> Self {
        let desk = Self { args, folder: tempfile::tempdir().expect("a folder") };
        std::fs::create_dir(desk.inside("in")).expect("a folder");
        desk
    }

    fn inside(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn command(&self, out: &str) -> Command {
        let (from, to) = (self.inside("in"), self.inside(out));
        let args: Vec<String> = self
            .args
            .iter()
            .map(|arg| arg.replace("IN", &from.to_string_lossy()).replace("OUT", &to.to_string_lossy()))
            .collect();
        let mut command = command(&args.iter().map(String::as_str).collect::<Vec<_>>());
        command.env("XDG_CACHE_HOME", self.inside("cache")).stdout(Stdio::null());
        command
    }

    fn run(&self, out: &str) -> Held {
        let done = self.command(out).stderr(Stdio::piped()).output().expect("it starts");
        assert!(done.status.success(), "{}", stderr(&done));
        held(&self.inside(out))
    }

    /// What undisturbed runs make of the input before and after its change.
    fn both(&self) -> (Held, Held) {
        input(&self.inside("in"), "Before.");
        let before = self.run("first");
        input(&self.inside("in"), "After.");
        let after = self.run("second");
        assert_eq!(before.keys().collect::<Vec<_>>(), after.keys().collect::<Vec<_>>());
        assert!(before.len() >= 4 && before != after);
        (before, after)
    }

    /// Puts good files of an earlier run where the next one writes.
    fn lay(&self, out: &str, files: &Held) {
        let folder = self.inside(out);
        let _none = std::fs::remove_dir_all(&folder);
        std::fs::create_dir(&folder).expect("a folder");
        for (name, bytes) in files {
            std::fs::write(folder.join(name), bytes).expect("a file");
        }
    }
}

fn is_unfinished(name: &str) -> bool {
    name.starts_with(".palmleaf-") && name.ends_with(".part")
}

/// Every good file is there as it was or as it is to be, and what is unfinished is nobody else's to read.
fn whole(folder: &Path, before: &Held, after: &Held, what: &str) {
    let now = held(folder);
    for (name, bytes) in &now {
        if is_unfinished(name) {
            #[cfg(unix)]
            {
                use std::os::unix::fs::PermissionsExt;
                let mode = std::fs::metadata(folder.join(name)).expect("a file").permissions().mode() & 0o777;
                assert!(mode == 0o600 || bytes.is_empty() || after.values().any(|good| good == bytes), "{what}: {name} {mode:o}");
            }
            continue;
        }
        assert!(before.get(name) == Some(bytes) || after.get(name) == Some(bytes), "{what}: {name} is torn");
    }
    for name in before.keys() {
        assert!(now.contains_key(name), "{what}: {name} is lost");
    }
}

/// `PALMLEAF_KILLS=200` for as many as are asked for.
#[test]
fn killed_at_any_moment_nothing_is_torn_or_lost() {
    let kills = times("PALMLEAF_KILLS", 20);
    for args in COMMANDS {
        let desk = Desk::new(args);
        let (before, after) = desk.both();
        let started = Instant::now();
        desk.run("second");
        let whole_run = started.elapsed();
        let mut dice = Dice::new(1);
        let (mut cut, mut mixed) = (0, 0);
        for kill in 0..kills {
            desk.lay("out", &before);
            let moment = whole_run.mul_f64(dice.below(1100) as f64 / 1000.0);
            let mut child = desk.command("out").stderr(Stdio::null()).spawn().expect("it starts");
            std::thread::sleep(moment);
            // SIGKILL on unix: nothing is left to the program.
            child.kill().expect("a kill");
            cut += usize::from(!child.wait().expect("an end").success());
            let what = format!("{} killed after {moment:?} (kill {kill})", args[0]);
            whole(&desk.inside("out"), &before, &after, &what);
            mixed += usize::from(held(&desk.inside("out")) != before);
            assert_eq!(desk.run("out"), after, "{what}: the next run makes other files");
        }
        println!("{}: {cut} of {kills} runs cut off, {mixed} after something was written, a run takes {whole_run:?}", args[0]);
        assert!(cut * 2 > kills, "only {cut} of {kills} came in time");
    }
}

/// What a run that was cut off has left is cleared away by the next; a file of a run that is at work is not.
#[test]
fn leftovers_are_cleared_and_files_at_work_are_not() {
    let desk = Desk::new(COMMANDS[0]);
    let (_, after) = desk.both();
    desk.lay("out", &after);
    let (left, busy) = (desk.inside("out/.palmleaf-left.part"), desk.inside("out/.palmleaf-busy.part"));
    std::fs::write(&left, "half a guide").expect("a file");
    std::fs::write(&busy, "half a guide").expect("a file");
    std::fs::write(desk.inside("out/.palmleaf-mine.txt"), "mine").expect("a file");
    let open = std::fs::File::open(&busy).expect("a file");
    open.lock().expect("a lock");
    let now = desk.run("out");
    assert!(!left.exists(), "a leftover stays");
    assert!(now.contains_key(".palmleaf-busy.part") && now.contains_key(".palmleaf-mine.txt"));
    drop(open);
    assert!(!desk.run("out").contains_key(".palmleaf-busy.part"));
}

/// Two runs at once on one folder: both end well, and the files are whole.
#[test]
fn two_runs_at_once_leave_whole_files() {
    for args in COMMANDS {
        let desk = Desk::new(args);
        let (before, after) = desk.both();
        for _ in 0..3 {
            desk.lay("out", &before);
            let mut one = desk.command("out").spawn().expect("it starts");
            let mut other = desk.command("out").spawn().expect("it starts");
            assert!(one.wait().expect("an end").success() && other.wait().expect("an end").success());
            assert_eq!(held(&desk.inside("out")), after);
        }
    }
}

/// A file may not grow beyond a few blocks: what a full disk does to a write. The good files stay, the fault is named.
#[cfg(unix)]
#[test]
fn without_room_the_good_files_stay_and_the_fault_says_where() {
    for args in COMMANDS {
        let desk = Desk::new(args);
        let (before, _) = desk.both();
        desk.lay("out", &before);
        let usual = desk.command("out");
        let mut script = Command::new("bash");
        script.args(["-c", "trap '' XFSZ; ulimit -f 8; exec \"$@\"", "limited"]).arg(usual.get_program()).args(usual.get_args());
        let done = script.env("XDG_CACHE_HOME", desk.inside("cache")).current_dir(path("")).output().expect("it starts");
        assert_eq!(done.status.code(), Some(3), "{}", stderr(&done));
        let error = stderr(&done);
        assert!(error.contains("output/unwritable") && error.contains("/out/") && error.contains("File too large"), "{error}");
        assert_eq!(held(&desk.inside("out")), before, "good files changed");
    }
}

/// A folder that may be read and not written.
#[cfg(unix)]
#[test]
fn in_a_folder_without_the_right_to_write_nothing_changes() {
    use std::os::unix::fs::{MetadataExt, PermissionsExt};
    let allow = |path: &Path, mode: u32| std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode)).expect("a mode");
    for args in COMMANDS {
        let desk = Desk::new(args);
        let (before, _) = desk.both();
        desk.lay("out", &before);
        allow(&desk.inside("out"), 0o555);
        allow(desk.folder.path(), 0o755);
        let usual = desk.command("out");
        // The superuser may write anywhere, so somebody else runs it then.
        let is_root = std::fs::metadata("/proc/self").is_ok_and(|meta| meta.uid() == 0);
        let mut asked = match is_root {
            true => {
                let mut other = Command::new("setpriv");
                other.args(["--reuid=65534", "--regid=65534", "--clear-groups"]).arg(usual.get_program());
                other
            }
            false => Command::new(usual.get_program()),
        };
        let done = asked.args(usual.get_args()).current_dir(path("")).output().expect("it starts");
        allow(&desk.inside("out"), 0o755);
        assert_eq!(done.status.code(), Some(3), "{}", stderr(&done));
        assert!(stderr(&done).contains("output/unwritable") && stderr(&done).contains("Permission denied"), "{}", stderr(&done));
        assert_eq!(held(&desk.inside("out")), before);
    }
}

/// A name that is taken by a folder: said before any file of the case takes its name.
#[test]
fn a_name_taken_by_a_folder_stops_the_whole_case() {
    let desk = Desk::new(COMMANDS[0]);
    let (before, _) = desk.both();
    desk.lay("out", &before);
    let (last, _) = before.last_key_value().expect("files");
    std::fs::remove_file(desk.inside("out").join(last)).expect("a file");
    std::fs::create_dir(desk.inside("out").join(last)).expect("a folder");
    let done = desk.command("out").stderr(Stdio::piped()).output().expect("it starts");
    assert_eq!(done.status.code(), Some(3));
    assert!(stderr(&done).contains(last.as_str()) && stderr(&done).contains("it is a folder"), "{}", stderr(&done));
    for (name, bytes) in before.iter().filter(|(name, _)| *name != last) {
        assert_eq!(&std::fs::read(desk.inside("out").join(name)).expect("a file"), bytes, "{name}");
    }
}

/// Finished files are open to whom the umask opens them, although unfinished ones are not.
#[cfg(unix)]
#[test]
fn finished_files_follow_the_umask() {
    use std::os::unix::fs::PermissionsExt;
    let desk = Desk::new(COMMANDS[0]);
    input(&desk.inside("in"), "One.");
    for (umask, wanted) in [("022", 0o644), ("007", 0o660), ("077", 0o600)] {
        let usual = desk.command(umask);
        let mut script = Command::new("bash");
        script.args(["-c", "umask $0; exec \"$@\"", umask]).arg(usual.get_program()).args(usual.get_args());
        let done = script.env("XDG_CACHE_HOME", desk.inside("cache")).current_dir(path("")).output().expect("it starts");
        assert!(done.status.success(), "{}", stderr(&done));
        for name in held(&desk.inside(umask)).keys() {
            let mode = std::fs::metadata(desk.inside(umask).join(name)).expect("a file").permissions().mode() & 0o777;
            assert_eq!(mode, wanted, "{umask}: {name} {mode:o}");
        }
    }
}
