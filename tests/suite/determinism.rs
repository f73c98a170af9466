//! Same input, same bytes: on any number of threads, in any order, in any zone.

use std::collections::BTreeMap;

use crate::support::{CASE, WORKSHOP, command, planned, stderr, text};

fn pdf(case: &str) -> Vec<u8> {
    let (admitted, plan) = planned(case);
    WORKSHOP.guide(&[(admitted.clone(), plan.clone())]).unwrap_or_else(|findings| panic!("{}", text(&findings))).pdf
}

#[test]
fn the_same_case_gives_the_same_bytes_whatever_was_set_before() {
    let first = pdf(CASE);
    for other in ["2027-04-05", "2027-04-12", "2027-04-19"] {
        pdf(&CASE.replace("2027-03-29", other));
    }
    assert_eq!(first, pdf(CASE));
}

#[test]
fn the_order_of_keys_changes_no_byte_of_the_guide() {
    let mut lines: Vec<&str> = CASE.lines().collect();
    lines.reverse();
    let other = lines.join("\n") + "\n";
    assert_eq!(pdf(CASE), pdf(&other));
}

fn built(threads: &str, zone: &str) -> BTreeMap<String, Vec<u8>> {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().to_string_lossy().into_owned();
    let args = [
        "build",
        "examples/right-thumb.yaml",
        "examples/thumb-base.yaml",
        "examples/left-thumb-ligament.yaml",
        "--language",
        "en,es,ar",
        "--threads",
        threads,
        "--out",
        &out,
    ];
    let output = command(&args).env("TZ", zone).env("LANG", "tr_TR.UTF-8").output().expect("it starts");
    assert!(output.status.success(), "{}", stderr(&output));
    std::fs::read_dir(folder.path())
        .expect("the folder")
        .map(|entry| entry.expect("an entry").path())
        .map(|path| {
            (path.file_name().expect("a name").to_string_lossy().into_owned(), std::fs::read(&path).expect("a file"))
        })
        .collect()
}

#[test]
fn threads_and_zones_change_nothing() {
    let one = built("1", "UTC");
    assert_eq!(one.len(), 18);
    assert!(one == built("4", "Pacific/Kiritimati"), "bytes differ between one thread and four");
}
