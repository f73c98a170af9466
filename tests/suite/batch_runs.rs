//! Runs over a list: what they leave, whether they are cut off, divided, or done again.

use std::collections::BTreeMap;
use std::path::Path;
use std::process::{Command, Output};
use std::time::{Duration, Instant};

use palmleaf::printer::Joiner;
use serde_json::Value;

use crate::support::{CASE, WORKSHOP, command, hands, stderr, stdout, text};

const MAPPING: &str = "columns: {Ref: person.reference, Name: person.name, Hand: hand, Fitted: fitted}\ndefaults: {condition: de-quervain, orthosis: forearm-thumb-spica, review: 2027-06-01, language: en}\n";

/// A list of so many rows, with its mapping.
fn list(folder: &Path, rows: usize) -> (String, String) {
    let mut text = "Ref,Name,Hand,Fitted\n".to_owned();
    for row in 1..=rows {
        let hand = if row % 2 == 0 { "left" } else { "right" };
        text.push_str(&format!("HR-{row},Secret Person {row},{hand},2027-03-{:02}\n", row % 28 + 1));
    }
    let (cases, mapping) = (folder.join("cases.csv"), folder.join("mapping.yaml"));
    std::fs::write(&cases, text).expect("a list");
    std::fs::write(&mapping, MAPPING).expect("a mapping");
    (cases.display().to_string(), mapping.display().to_string())
}

fn batch(list: &(String, String), out: &Path, more: &[&str]) -> Command {
    let out = out.display().to_string();
    let mut args = vec!["batch", &list.0, "--mapping", &list.1, "--out", &out, "--sheets", "card"];
    args.extend(more);
    command(&args)
}

fn run(mut command: Command) -> Output {
    command.output().expect("it starts")
}

/// Every file of a folder, hidden ones and those in folders too.
fn held(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut found = BTreeMap::new();
    let mut pending = vec![folder.to_owned()];
    while let Some(here) = pending.pop() {
        for entry in std::fs::read_dir(&here).expect("a folder").flatten() {
            let path = entry.path();
            if path.is_dir() {
                pending.push(path);
            } else {
                let name = path.strip_prefix(folder).expect("inside").display().to_string();
                found.insert(name, std::fs::read(&path).expect("a file"));
            }
        }
    }
    found
}

fn same(one: &BTreeMap<String, Vec<u8>>, other: &BTreeMap<String, Vec<u8>>, why: &str) {
    let names = |held: &BTreeMap<String, Vec<u8>>| held.keys().cloned().collect::<Vec<_>>();
    assert_eq!(names(one), names(other), "{why}");
    for (name, bytes) in one {
        assert!(other[name] == *bytes, "{why}: {name} differs");
    }
}

#[test]
fn good_rows_are_built_and_the_others_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let cases = list(folder.path(), 3);
    let body = std::fs::read_to_string(&cases.0).expect("the list");
    std::fs::write(&cases.0, body.replace("HR-2,", "hr 1,") + "HR-9,Secret Person 9,left,2027-13-01\n")
        .expect("a list");
    let out = folder.path().join("out");
    let done = run(batch(&cases, &out, &["--threads", "2"]));
    assert_eq!(done.status.code(), Some(1), "{}", stderr(&done));
    assert!(stdout(&done).contains("1 built, 3 refused, 0 failed"), "{}", stdout(&done));
    let names: Vec<String> = held(&out).into_keys().collect();
    assert_eq!(names, ["batch.jsonl", "batch.txt", "card-hr-3-right-en.pdf", "record-hr-3-right-en.json"]);
    let report = std::fs::read_to_string(out.join("batch.jsonl")).expect("a report");
    let rows: Vec<Value> = report.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect();
    assert_eq!(rows[0]["rows"], 4);
    let message = |row: usize| rows[row]["findings"][0]["message"].as_str().expect("a message").to_owned();
    assert!(
        message(1).ends_with("cases.csv:3") && message(2).ends_with("cases.csv:2"),
        "{} {}",
        message(1),
        message(2)
    );
    assert_eq!(
        (rows[4]["findings"][0]["place"]["line"].as_u64(), rows[4]["findings"][0]["place"]["column"].as_u64()),
        (Some(5), Some(28))
    );
    let file = &rows[3]["files"][0];
    let bytes = std::fs::read(out.join(file["name"].as_str().expect("a name"))).expect("a file");
    assert_eq!(file["blake3"], blake3::hash(&bytes).to_hex().as_str());
    assert!(!report.contains("Secret") && !stdout(&done).contains("Secret"), "a name stands in the report");
    // JSON says nothing but JSON.
    let done = run(batch(&cases, &out, &["--format", "json"]));
    let told: Value = serde_json::from_slice(&done.stdout).expect("JSON");
    assert_eq!((told["built"].as_u64(), told["refused"].as_u64()), (Some(1), Some(3)));
    assert_eq!(stderr(&done), "");
}

#[test]
fn a_batch_makes_the_very_files_that_build_makes() {
    let folder = tempfile::tempdir().expect("a folder");
    let case = format!("{CASE}person: {{reference: HR-7}}\n");
    std::fs::write(folder.path().join("one.yaml"), &case).expect("a case");
    let (built, listed) = (folder.path().join("built"), folder.path().join("listed"));
    let path = |path: &Path| path.display().to_string();
    let one = path(&folder.path().join("one.yaml"));
    assert!(run(command(&["build", &one, "--out", &path(&built), "--sheets", "card"])).status.success());
    assert!(run(command(&["batch", &one, "--out", &path(&listed), "--sheets", "card"])).status.success());
    let mut listed = held(&listed);
    listed.retain(|name, _| !name.starts_with("batch."));
    same(&held(&built), &listed, "build and batch");
}

#[test]
fn shards_joined_are_the_whole_and_what_lacks_is_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let cases = list(folder.path(), 7);
    let (whole, parts, joined) =
        (folder.path().join("whole"), folder.path().join("parts"), folder.path().join("joined"));
    let all = whole.join("all.pdf").display().to_string();
    assert!(run(batch(&cases, &whole, &["--merged", &all])).status.success());
    for shard in ["1/3", "2/3", "3/3"] {
        let done = run(batch(&cases, &parts, &["--shard", shard]));
        assert!(done.status.success(), "{}", stderr(&done));
    }
    let report = |number: usize| parts.join(format!("batch-{number}-of-3.jsonl")).display().to_string();
    let (out, merged) = (joined.display().to_string(), joined.join("all.pdf").display().to_string());
    let done =
        run(command(&["batch", "merge", &report(1), &report(2), &report(3), "--out", &out, "--merged", &merged]));
    assert!(done.status.success(), "{}", stderr(&done));
    let mut together = held(&parts);
    together.retain(|name, _| !name.starts_with("batch-"));
    together.extend(held(&joined));
    same(&held(&whole), &together, "shards");
    // One is missing.
    let done = run(command(&["batch", "merge", &report(1), &report(3), "--out", &out]));
    assert_eq!(done.status.code(), Some(1));
    assert!(
        stderr(&done).contains("of 7 rows are in no report") && stderr(&done).contains("no report of part 2/3"),
        "{}",
        stderr(&done)
    );
    // One came twice: alike it is told, otherwise refused.
    let done = run(command(&["batch", "merge", &report(1), &report(2), &report(3), &report(2), "--out", &out]));
    assert!(done.status.success() && stderr(&done).contains("built twice, alike"), "{}", stderr(&done));
    let changed = folder.path().join("changed.jsonl");
    let text = std::fs::read_to_string(report(2)).expect("a report").replace("\"blake3\":\"", "\"blake3\":\"0");
    std::fs::write(&changed, text).expect("a report");
    let done = run(command(&[
        "batch",
        "merge",
        &report(1),
        &report(2),
        &report(3),
        &changed.display().to_string(),
        "--out",
        &out,
    ]));
    assert!(
        done.status.code() == Some(1) && stderr(&done).contains("was built twice, and not alike"),
        "{}",
        stderr(&done)
    );
    // Another list has other rows.
    let other = folder.path().join("other");
    assert!(run(batch(&cases, &other, &["--shard", "2/3", "--print", "large"])).status.success());
    let other = other.join("batch-2-of-3.jsonl").display().to_string();
    let done = run(command(&["batch", "merge", &report(1), &other, &report(3), "--out", &out]));
    assert!(done.status.code() == Some(1) && stderr(&done).contains("not of one list"), "{}", stderr(&done));
}

#[test]
fn resume_keeps_what_is_whole_and_from_the_same_case() {
    let folder = tempfile::tempdir().expect("a folder");
    let (cases, out) = (list(folder.path(), 4), folder.path().join("out"));
    assert!(run(batch(&cases, &out, &[])).status.success());
    let first = held(&out);
    let age = |name: &str| std::fs::metadata(out.join(name)).and_then(|meta| meta.modified()).expect("a time");
    let name = |row: usize| format!("card-hr-{row}-{}-en.pdf", if row.is_multiple_of(2) { "left" } else { "right" });
    let before: Vec<_> = (1..=4).map(|row| age(&name(row))).collect();
    std::fs::write(out.join(name(1)), b"torn").expect("a torn file");
    std::fs::remove_file(out.join(name(2))).expect("it goes");
    let text = std::fs::read_to_string(&cases.0).expect("a list");
    std::fs::write(&cases.0, text.replace("Secret Person 3", "Other Person 3")).expect("a list");
    let done = run(batch(&cases, &out, &["--resume"]));
    assert!(done.status.success(), "{}", stderr(&done));
    let after: Vec<_> = (1..=4).map(|row| age(&name(row))).collect();
    assert!(after[0] != before[0] && after[1] != before[1] && after[2] != before[2], "three were made anew");
    assert_eq!(after[3], before[3], "the fourth was kept");
    let second = held(&out);
    assert!(
        first[&name(1)] == second[&name(1)]
            && first[&name(2)] == second[&name(2)]
            && first[&name(3)] != second[&name(3)]
    );
    // Other options are another input.
    let done = run(batch(&cases, &out, &["--resume", "--paper", "letter"]));
    assert!(done.status.success() && held(&out)[&name(4)] != second[&name(4)]);
}

#[test]
fn two_runs_do_not_work_in_one_folder() {
    let folder = tempfile::tempdir().expect("a folder");
    let (cases, out) = (list(folder.path(), 1), folder.path().join("out"));
    let (room, _) =
        palmleaf::output::room::Room::enter(&out, "batch", false).unwrap_or_else(|fault| panic!("{fault:?}"));
    let done = run(batch(&cases, &out, &[]));
    assert!(done.status.code() == Some(1) && stderr(&done).contains("another run is at work"), "{}", stderr(&done));
    // A part of the list has a room of its own, and what a run that died has left blocks nobody.
    assert!(run(batch(&cases, &out, &["--shard", "1/1"])).status.success());
    drop(room);
    assert!(out.join(".palmleaf-batch").is_dir());
    assert!(run(batch(&cases, &out, &[])).status.success());
    assert!(!out.join(".palmleaf-batch").exists());
}

/// A file system that takes no more: what was made stays, no half file is left, and the next run ends it.
#[cfg(unix)]
#[test]
fn a_disk_that_takes_no_more_loses_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let (cases, out, good) = (list(folder.path(), 3), folder.path().join("out"), folder.path().join("good"));
    assert!(run(batch(&cases, &good, &[])).status.success());
    let program = env!("CARGO_BIN_EXE_palmleaf");
    let script = format!(
        "trap '' XFSZ; ulimit -f 40; exec {program} batch {} --mapping {} --out {} --sheets card --no-cache",
        cases.0,
        cases.1,
        out.display()
    );
    let done = run({
        let mut shell = Command::new("sh");
        shell.args(["-c", &script]);
        shell
    });
    assert_eq!(done.status.code(), Some(3), "{}", stderr(&done));
    assert!(stderr(&done).contains("card-hr-") && stderr(&done).contains("go on with `--resume`"), "{}", stderr(&done));
    let all = held(&good);
    for (name, bytes) in held(&out).iter().filter(|(name, _)| !name.starts_with('.')) {
        assert!(all.get(name) == Some(bytes), "{name} is no whole file");
    }
    assert!(run(batch(&cases, &out, &["--resume"])).status.success());
    same(&all, &held(&out), "after the disk had room again");
}

/// SIGKILL at any moment. `PALMLEAF_KILLS=200` kills as often as is asked for.
#[test]
fn a_run_that_is_killed_at_any_moment_is_ended_by_the_next() {
    let kills: usize = std::env::var("PALMLEAF_KILLS").ok().and_then(|count| count.parse().ok()).unwrap_or(20);
    let folder = tempfile::tempdir().expect("a folder");
    let (cases, good) = (list(folder.path(), 6), folder.path().join("good"));
    let begin = |out: &Path| {
        batch(&cases, out, &["--resume", "--threads", "2", "--merged", &out.join("all.pdf").display().to_string()])
    };
    let started = Instant::now();
    assert!(run(begin(&good)).status.success());
    let took = started.elapsed();
    let all = held(&good);
    let mut dice = 0x9E37_79B9_7F4A_7C15_u64;
    let (mut killed, mut ended, mut out) = (0, 0, folder.path().join("out-0"));
    while killed < kills {
        dice = dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let mut child = begin(&out)
            .stdout(std::process::Stdio::null())
            .stderr(std::process::Stdio::null())
            .spawn()
            .expect("it starts");
        std::thread::sleep(Duration::from_micros(
            u64::try_from(took.as_micros()).unwrap_or(0) * (dice >> 44) / (1 << 20),
        ));
        if child.try_wait().expect("a state").is_none() {
            child.kill().expect("it is killed");
            killed += 1;
        }
        let done = child.wait().expect("it ends");
        let now = if out.exists() { held(&out) } else { BTreeMap::new() };
        for (name, bytes) in now.iter().filter(|(name, _)| !name.starts_with('.')) {
            assert!(all.get(name) == Some(bytes), "{name} is torn after {killed} kills");
        }
        if done.success() {
            same(&all, &held(&out), "after kills");
            ended += 1;
            out = folder.path().join(format!("out-{ended}"));
        }
    }
    assert!(run(begin(&out)).status.success());
    same(&all, &held(&out), "after the last kill");
}

// ---- one file for the printer -----------------------------------------------------------------------------

#[test]
fn every_guide_begins_on_a_right_hand_page_and_keeps_its_tags() {
    let card = |case: &str| {
        let printed = WORKSHOP
            .print(palmleaf::document::SheetKind::Card, &hands(case))
            .unwrap_or_else(|faults| panic!("{}", text(&faults)));
        printed.expect("a card").bytes().unwrap_or_else(|fault| panic!("{fault:?}"))
    };
    let one = card(CASE);
    let two = card(&CASE.replace("language: en", "language: ar"));
    let join = |files: &[&[u8]]| {
        let mut joiner = Joiner::new(Vec::new()).expect("memory");
        files
            .iter()
            .enumerate()
            .for_each(|(number, file)| joiner.add(&format!("hr-{number}"), file.to_vec()).expect("a file"));
        joiner.finish("All of today").expect("a file")
    };
    let all = join(&[&one, &two, &one]);
    assert!(all == join(&[&one, &two, &one]), "the same files give the same bytes");
    assert!(all.len() < one.len() * 2 + two.len(), "what two files share is written once");
    let pdf = hayro_syntax::Pdf::new(all.clone()).unwrap_or_else(|_| panic!("a PDF"));
    assert_eq!(pdf.pages().len(), 6, "a card has one page, and an empty one after it");
    let text = String::from_utf8_lossy(&all);
    for mark in [
        "/S/Part/Lang(ar)",
        "/S/Part/Lang(en)",
        "<pdfuaid:part>1",
        "<pdfaid:part>2",
        "/DuplexFlipLongEdge",
        "(hr-2)",
        "/Marked true",
    ] {
        assert!(text.contains(mark), "{mark}");
    }
    // Nothing but a PDF of this program is joined.
    let mut joiner = Joiner::new(Vec::new()).expect("memory");
    assert!(joiner.add("x", b"no PDF".to_vec()).is_err());
    assert!(joiner.finish("x").is_err(), "there is nothing in it");
}
