//! A clinic's shelf: what is made, what is left alone, what is told, and what happens when it is cut off.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Output, Stdio};
use std::time::Duration;

use palmleaf::clinic::FileName;
use palmleaf::shelf::{Due, Review, due, overdue};
use palmleaf::units::{Date, Interval};
use serde_json::Value;
use tempfile::TempDir;

use crate::support::{CASE, command, file, path, stderr, stdout};

/// Pages for a telephone: the quickest handouts there are.
const QUICK: &str =
    "title: Handouts\nlanguages: [en, es]\ncases:\n  - {name: thumb, case: case.yaml, sheets: [phone]}\n";

fn shelf(text: &str) -> TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    fs::write(folder.path().join("shelf.yaml"), text).expect("a shelf");
    fs::write(folder.path().join("case.yaml"), CASE).expect("a case");
    folder
}

fn run(folder: &Path, more: &[&str]) -> Output {
    let shelf = folder.to_string_lossy().into_owned();
    let mut args = vec!["shelf", shelf.as_str(), "--today", "2027-03-01", "--format", "json"];
    args.extend(more);
    command(&args).output().expect("the binary starts")
}

/// A run that has to do well, and what it says.
fn built(folder: &Path, more: &[&str]) -> Value {
    let output = run(folder, more);
    assert_eq!(output.status.code(), Some(0), "{}{}", stdout(&output), stderr(&output));
    serde_json::from_str(&stdout(&output)).expect("JSON")
}

/// A run that has to end so, and what it says.
fn ended(folder: &Path, more: &[&str], code: i32) -> String {
    let output = run(folder, more);
    assert_eq!(output.status.code(), Some(code), "{}{}", stdout(&output), stderr(&output));
    stdout(&output)
}

fn strings(value: &Value) -> Vec<&str> {
    value.as_array().expect("a list").iter().map(|one| one.as_str().expect("text")).collect()
}

/// All files below a folder but the lock.
fn all(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut files = BTreeMap::new();
    let mut pending = vec![folder.to_path_buf()];
    while let Some(dir) = pending.pop() {
        for entry in fs::read_dir(&dir).into_iter().flatten() {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                pending.push(path);
            } else if !path.ends_with(".palmleaf-lock") {
                let name = path.strip_prefix(folder).expect("inside").to_string_lossy().into_owned();
                files.insert(name, fs::read(&path).expect("a file"));
            }
        }
    }
    files
}

fn copy(from: &Path, to: &Path) {
    for (name, bytes) in all(from) {
        let path = to.join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
        fs::write(path, bytes).expect("a file");
    }
}

#[test]
fn a_second_run_makes_nothing_and_leaves_every_byte() {
    let folder = shelf(QUICK);
    let first = built(folder.path(), &["--threads", "1"]);
    assert_eq!(first["made"].as_array().expect("a list").len(), 2, "{first}");
    assert_eq!(strings(&first["lines"]).len(), 1, "{first}");
    let out = folder.path().join("handouts");
    let before = all(&out);
    for name in ["en/phone-thumb-en.html", "es/phone-thumb-es.html", "catalogue.html", "changes.json", "changes.pdf"] {
        assert!(before.contains_key(name), "{name}");
    }
    let again = built(folder.path(), &[]);
    assert_eq!((again["made"].as_array().map(Vec::len), again["kept"].as_u64()), (Some(0), Some(2)), "{again}");
    assert_eq!(all(&out), before);
    // Another folder and other threads: the same bytes.
    let other = shelf(QUICK);
    built(other.path(), &["--threads", "2"]);
    assert_eq!(all(&other.path().join("handouts")), before);
    // A file that was lost is made anew, and it alone.
    fs::remove_file(out.join("es/phone-thumb-es.html")).expect("a file");
    let mended = built(folder.path(), &[]);
    assert_eq!(strings(&mended["made"]), ["es/phone-thumb-es.html"]);
    assert_eq!(all(&out), before);
}

/// A folder of content with the first of the hours of a pattern changed, and one Spanish word.
fn overlay() -> TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    fs::create_dir_all(folder.path().join("wear")).expect("a folder");
    fs::create_dir_all(folder.path().join("locales/es")).expect("a folder");
    let pattern = file("content/wear/by-day.yaml").replacen("each: 30 min", "each: 20 min", 1);
    fs::write(folder.path().join("wear/by-day.yaml"), pattern).expect("a pattern");
    let words = file("locales/es/phone.ftl");
    let line = words.lines().find(|line| line.starts_with("phone-contents = ")).expect("a message");
    fs::write(folder.path().join("locales/es/phone.ftl"), words.replace(line, "phone-contents = Lo que hay"))
        .expect("words");
    folder
}

#[test]
fn a_changed_hour_is_told_once_for_all_languages_and_a_word_touches_its_own_language_only() {
    let folder = shelf(&QUICK.replace("cases:", "conditions: [carpal-tunnel]\ncases:"));
    built(folder.path(), &[]);
    let changed = overlay();
    let content = changed.path().to_string_lossy().into_owned();
    fs::remove_dir_all(changed.path().join("wear")).expect("hours as before");
    let words = built(folder.path(), &["--content", &content]);
    assert_eq!(strings(&words["made"]), ["es/phone-thumb-es.html"], "a fact sheet does not say this word");
    assert_eq!(strings(&words["lines"]), ["Words of 1 message changed, in es"]);
    let changed = overlay();
    let content = changed.path().to_string_lossy().into_owned();
    let hours = built(folder.path(), &["--content", &content]);
    let made = strings(&hours["made"]);
    assert_eq!(made, ["en/phone-thumb-en.html", "es/phone-thumb-es.html"]);
    let lines = strings(&hours["lines"]);
    assert_eq!(lines.len(), 1, "{lines:?}");
    assert!(
        lines[0].starts_with("Hours of breaking in for Thumb: ") && lines[0].ends_with(", in 2 languages"),
        "{lines:?}"
    );
    assert!(lines[0].contains("2 x 30 min") && lines[0].contains("to 2 x 20 min"), "{lines:?}");
    let kept: Value =
        serde_json::from_str(&fs::read_to_string(folder.path().join("handouts/changes.json")).expect("a file"))
            .expect("JSON");
    assert_eq!(kept["lines"], hours["lines"]);
}

#[test]
fn what_the_shelf_made_and_nobody_wants_goes_and_what_somebody_changed_stays() {
    let folder = shelf(QUICK);
    built(folder.path(), &[]);
    let out = folder.path().join("handouts");
    fs::write(out.join("en/own.txt"), "the clinic's own").expect("a file");
    fs::write(out.join("es/phone-thumb-es.html"), "changed by hand").expect("a file");
    fs::write(folder.path().join("shelf.yaml"), QUICK.replace("name: thumb", "name: other")).expect("a shelf");
    let told = ended(folder.path(), &[], 1);
    assert!(told.contains("es/phone-thumb-es.html was changed by hand: it was not removed"), "{told}");
    let files = all(&out);
    assert!(!files.contains_key("en/phone-thumb-en.html"));
    assert_eq!(files["es/phone-thumb-es.html"], b"changed by hand");
    assert_eq!(files["en/own.txt"], b"the clinic's own");
    assert!(files.contains_key("en/phone-other-en.html") && files.contains_key("es/phone-other-es.html"));
    // It is told until somebody decides.
    assert!(ended(folder.path(), &[], 1).contains("changed by hand"));
    fs::remove_file(out.join("es/phone-thumb-es.html")).expect("a file");
    built(folder.path(), &[]);
    // A file that is wanted and was changed is not overwritten either; nor is one that was never the shelf's.
    fs::write(out.join("es/phone-other-es.html"), "changed by hand").expect("a file");
    assert!(ended(folder.path(), &[], 1).contains("was changed by hand: it was not overwritten"));
    fs::write(out.join("en/phone-third-en.html"), "somebody else's").expect("a file");
    fs::write(folder.path().join("shelf.yaml"), QUICK.replace("name: thumb", "name: third")).expect("a shelf");
    let told = ended(folder.path(), &[], 1);
    assert!(told.contains("en/phone-third-en.html was there before and is not the shelf's"), "{told}");
    assert_eq!(all(&out)["en/phone-third-en.html"], b"somebody else's");
}

#[test]
fn files_are_taken_over_when_the_state_is_lost_and_a_damaged_state_is_told() {
    let folder = shelf(QUICK);
    built(folder.path(), &[]);
    let out = folder.path().join("handouts");
    let before = all(&out);
    fs::remove_file(out.join("shelf-state.json")).expect("a state");
    built(folder.path(), &[]);
    assert_eq!(all(&out), before);
    fs::write(out.join("shelf-state.json"), "{").expect("a state");
    let told = ended(folder.path(), &[], 1);
    assert!(told.contains("shelf/state") && told.contains("shelf-state.json is damaged"), "{told}");
    // A state that names files outside the folder is none.
    let hash = blake3::hash(CASE.as_bytes()).to_hex().to_string();
    let state = String::from_utf8(before["shelf-state.json"].clone()).expect("text");
    let state = state.replacen("\"files\": {", &format!("\"files\": {{\"../case.yaml\": {{\"item\": \"\", \"language\": \"\", \"key\": \"\", \"blake3\": \"{hash}\"}},"), 1);
    fs::write(out.join("shelf-state.json"), state).expect("a state");
    assert!(ended(folder.path(), &[], 1).contains("is no file of this folder"));
    assert!(folder.path().join("case.yaml").exists());
}

#[test]
fn a_check_writes_nothing_and_its_status_says_whether_the_shelf_is_current() {
    let folder = shelf(QUICK);
    let told = ended(folder.path(), &["--check"], 1);
    assert!(told.contains("shelf/not-current") && told.contains("en/phone-thumb-en.html"), "{told}");
    assert!(!folder.path().join("handouts").exists());
    built(folder.path(), &[]);
    let before = all(folder.path());
    built(folder.path(), &["--check"]);
    fs::write(folder.path().join("case.yaml"), CASE.replace("2027-03-29", "2027-03-30")).expect("a case");
    let told: Value = serde_json::from_str(&ended(folder.path(), &["--check"], 1)).expect("JSON");
    assert_eq!(strings(&told["made"]).len(), 2);
    assert!(
        strings(&told["lines"]).iter().any(|line| line.contains("Next visit for Thumb: day 29 to day 30")),
        "{told}"
    );
    fs::write(folder.path().join("case.yaml"), CASE).expect("a case");
    assert_eq!(all(folder.path()), before);
}

#[test]
fn a_second_run_waits_for_the_first_and_says_so() {
    let folder = shelf(QUICK);
    built(folder.path(), &[]);
    let lock = fs::File::options().write(true).open(folder.path().join("handouts/.palmleaf-lock")).expect("a lock");
    lock.lock().expect("the lock");
    let told = ended(folder.path(), &["--wait", "0"], 3);
    assert!(told.contains("shelf/busy") && told.contains("another run is at work"), "{told}");
    built(folder.path(), &["--check"]);
    let shelf = folder.path().to_string_lossy().into_owned();
    let waiting = command(&["shelf", &shelf, "--wait", "60"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the binary starts");
    std::thread::sleep(Duration::from_millis(700));
    drop(lock);
    let output = waiting.wait_with_output().expect("an end");
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    assert!(stderr(&output).contains("waiting up to 60 s"), "{}", stderr(&output));
}

#[test]
fn every_fault_of_a_shelf_is_told_with_its_place_and_what_to_write() {
    let cases: &[(&str, &[&str])] = &[
        (
            "conditions: [carpal-tunel]",
            &["id/unknown", "no condition is called `carpal-tunel`", "write `carpal-tunnel`", "\"line\": 2"],
        ),
        ("orthoses: [wrist-neutrl]", &["write `wrist-neutral`"]),
        ("languages: [en, eo]\nconditions: [carpal-tunnel]", &["no language is called `eo`"]),
        ("languages: [spanish]", &["is no language tag"]),
        ("clinic: clinic.yaml", &["shelf/file", "`clinic.yaml` cannot be read"]),
        ("clinic: own.yaml", &["clinic/logo", "`lost.svg` cannot be read"]),
        ("out: ../elsewhere", &["is no file of this folder or below it"]),
        ("out: /tmp/elsewhere", &["is no file of this folder or below it"]),
        ("cases:\n  - {name: a, case: ../case.yaml}", &["is no file of this folder or below it"]),
        ("cases:\n  - {name: a, case: lost.yaml}", &["shelf/file", "`lost.yaml` cannot be read", "\"line\": 3"]),
        ("cases:\n  - {name: a, case: shelf.yaml}", &["shelf/cycle", "is the shelf itself"]),
        ("cases:\n  - {name: Jane Doe, case: case.yaml}", &["cannot be the name of a case on a shelf"]),
        ("cases:\n  - {name: a, case: case.yaml}\n  - {name: a, case: case.yaml}", &["output/same-name", "`a`"]),
        ("cases:\n  - {name: a, case: wrong.yaml}", &["checks/does-not-fit"]),
        ("conditions: [carpal-tunnel, carpal-tunnel]", &["output/same-name", "the first one"]),
        ("conditions: every", &["`every` is no `all`"]),
        ("include: [shelf.yaml]", &["shelf/cycle", "includes itself"]),
        ("include: [list.yaml]", &["shelf/cycle", "includes itself", "again.yaml"]),
        (
            "conditions: [carpal-tunnel]\nreviewed:\n  conditions/trigger-finger: {date: 2027-01-01, by: therapist}",
            &["no item of this shelf is called `conditions/trigger-finger`"],
        ),
        ("reviewed:\n  carpal-tunnel: {date: 2027-01-01, by: therapist}", &["names nothing on a shelf"]),
        ("review_every: 6", &["is no time between two reviews", "6 months"]),
        ("colour: red", &["field/unknown"]),
    ];
    for (text, wanted) in cases {
        let folder = shelf(&format!("title: Handouts\n{text}\n"));
        fs::write(folder.path().join("list.yaml"), "include: [again.yaml]\n").expect("a list");
        fs::write(folder.path().join("again.yaml"), "include: [list.yaml]\n").expect("a list");
        fs::write(folder.path().join("own.yaml"), "name: North Quay\nlogo: lost.svg\n").expect("a clinic");
        let wrong = CASE.replace("forearm-thumb-spica", "wrist-neutral");
        fs::write(folder.path().join("wrong.yaml"), wrong).expect("a case");
        let told = ended(folder.path(), &[], 1);
        for part in *wanted {
            assert!(told.contains(part), "{text}\n{part} is missing:\n{told}");
        }
        assert!(!folder.path().join("handouts").join("catalogue.html").exists(), "{text}");
    }
    let nowhere = tempfile::tempdir().expect("a folder");
    assert!(ended(nowhere.path(), &[], 3).contains("give a folder that holds a `shelf.yaml`"));
}

#[cfg(unix)]
#[test]
fn no_link_leads_out_of_the_folder() {
    let elsewhere = tempfile::tempdir().expect("a folder");
    fs::write(elsewhere.path().join("case.yaml"), CASE).expect("a case");
    let folder = shelf(QUICK);
    fs::remove_file(folder.path().join("case.yaml")).expect("a case");
    std::os::unix::fs::symlink(elsewhere.path().join("case.yaml"), folder.path().join("case.yaml")).expect("a link");
    assert!(ended(folder.path(), &[], 1).contains("lies outside the folder of the file that names it"));
    for link in ["handouts", "handouts/es"] {
        let folder = shelf(QUICK);
        let link = folder.path().join(link);
        fs::create_dir_all(link.parent().expect("a folder")).expect("a folder");
        std::os::unix::fs::symlink(elsewhere.path(), &link).expect("a link");
        assert!(ended(folder.path(), &[], 1).contains("leads out of the folder of the shelf"));
    }
    assert_eq!(all(elsewhere.path()).len(), 1, "nothing was written there");
}

#[test]
fn a_booklet_is_no_case_of_its_own() {
    let folder = tempfile::tempdir().expect("a folder");
    let list = folder.path().join("list.yaml");
    fs::write(&list, "title: Sheets\nlanguage: en\nitems:\n  - {case: list.yaml}\n").expect("a list");
    let output = command(&["teach", "booklet", &list.to_string_lossy()]).output().expect("the binary starts");
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("`list.yaml` is this booklet itself, and no case"), "{}", stderr(&output));
}

/// A file that is cut short by the disk leaves the old one whole, and the next run finishes.
#[cfg(unix)]
#[test]
fn a_disk_that_is_full_costs_no_good_file() {
    let folder = shelf(QUICK);
    built(folder.path(), &[]);
    let out = folder.path().join("handouts");
    let before = all(&out);
    fs::write(folder.path().join("case.yaml"), CASE.replace("2027-03-29", "2027-03-30")).expect("a case");
    let line = format!(
        "trap '' XFSZ; ulimit -f 16; exec '{}' shelf '{}' --no-cache",
        env!("CARGO_BIN_EXE_palmleaf"),
        folder.path().display()
    );
    let output = std::process::Command::new("sh").args(["-c", &line]).output().expect("a shell");
    assert_eq!(output.status.code(), Some(3), "{}", stderr(&output));
    let told = stderr(&output);
    assert!(told.contains("output/unwritable") && told.contains("phone-thumb-e"), "{told}");
    let now = all(&out);
    for (name, bytes) in &before {
        assert_eq!(now.get(name), Some(bytes), "{name}");
    }
    assert!(now.keys().all(|name| !name.ends_with(".part")), "{:?}", now.keys());
    let made = built(folder.path(), &[]);
    assert_eq!(strings(&made["made"]).len(), 2);
}

/// Where the rights of a folder bind the person who runs this; the superuser writes anywhere.
#[cfg(unix)]
#[test]
fn a_folder_that_cannot_be_written_is_named() {
    use std::os::unix::fs::PermissionsExt as _;
    let folder = shelf(QUICK);
    let set = |mode| fs::set_permissions(folder.path(), fs::Permissions::from_mode(mode)).expect("rights");
    set(0o555);
    if fs::write(folder.path().join("probe"), "").is_err() {
        assert!(ended(folder.path(), &[], 3).contains("cannot be written"));
        assert!(ended(folder.path(), &["--check"], 1).contains("shelf/not-current"));
    }
    set(0o755);
    // A file where the folder should be binds everybody.
    let _gone = fs::remove_file(folder.path().join("probe"));
    fs::write(folder.path().join("handouts"), "a file").expect("a file");
    let told = ended(folder.path(), &[], 3);
    assert!(told.contains("handouts") && told.contains("cannot be written"), "{told}");
}

/// Killed at random moments: 20 here, as many as `PALMLEAF_KILLS` says elsewhere.
#[test]
fn a_run_that_is_killed_leaves_whole_files_and_the_next_one_finishes() {
    let kills: u32 = std::env::var("PALMLEAF_KILLS").ok().and_then(|text| text.parse().ok()).unwrap_or(20);
    let before = shelf(QUICK);
    built(before.path(), &[]);
    let old = all(&before.path().join("handouts"));
    let change = |folder: &Path| {
        // Two handouts change, two are new, one language goes.
        let text = QUICK.replace("[en, es]", "[en, ar]").replace("sheets: [phone]", "sheets: [phone, card]");
        fs::write(folder.join("shelf.yaml"), text).expect("a shelf");
        fs::write(folder.join("case.yaml"), CASE.replace("2027-03-29", "2027-03-30")).expect("a case");
    };
    let after = shelf(QUICK);
    copy(before.path(), after.path());
    change(after.path());
    let begun = std::time::Instant::now();
    built(after.path(), &[]);
    let whole = begun.elapsed();
    let new = all(&after.path().join("handouts"));
    assert_eq!(new.keys().filter(|name| name.contains("thumb")).count(), 4, "{:?}", new.keys());
    let mut dice: u64 = 0x9E37_79B9_7F4A_7C15;
    let mut cut_short = 0;
    for number in 0..kills {
        let folder = shelf(QUICK);
        copy(before.path(), folder.path());
        change(folder.path());
        dice = dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let part = f64::from(u32::try_from(dice >> 33).expect("31 bits")) / f64::from(1_u32 << 31);
        let path = folder.path().to_string_lossy().into_owned();
        let mut child =
            command(&["shelf", &path]).stdout(Stdio::null()).stderr(Stdio::null()).spawn().expect("the binary starts");
        std::thread::sleep(whole.mul_f64(part * 1.05));
        child.kill().expect("a signal");
        let died = child.wait().expect("an end");
        cut_short += u32::from(!died.success());
        let out = folder.path().join("handouts");
        for (name, bytes) in all(&out) {
            let known = old.get(&name) == Some(&bytes) || new.get(&name) == Some(&bytes);
            let own = name.contains(".palmleaf-");
            assert!(known || own, "kill {number}: {name} is neither the old nor the new file");
        }
        for name in old.keys().filter(|name| new.contains_key(*name)) {
            assert!(out.join(name).exists(), "kill {number}: {name} is lost");
        }
        built(folder.path(), &[]);
        assert_eq!(all(&out), new, "kill {number}: the next run makes what an undisturbed one makes");
    }
    assert!(cut_short * 2 > kills, "only {cut_short} of {kills} runs were cut short: too few to tell");
}

#[test]
fn a_title_with_markup_is_printed_as_it_stands_and_no_name_of_a_person_is_told() {
    let folder = shelf(&QUICK.replace("title: Handouts", "title: '<script>alert(1)</script> & {{ x }}'"));
    let named = CASE.replace("hand: right", "person: {name: Ilka Morvan, reference: HR-1}\nhand: right");
    fs::write(folder.path().join("case.yaml"), named).expect("a case");
    built(folder.path(), &[]);
    let files = all(&folder.path().join("handouts"));
    let catalogue = String::from_utf8(files["catalogue.html"].clone()).expect("text");
    assert!(catalogue.contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; {{ x }}"));
    assert_eq!(catalogue.matches("<script").count(), 1, "its own");
    for (name, bytes) in &files {
        assert!(!name.to_lowercase().contains("morvan"), "{name}");
        let text = String::from_utf8_lossy(bytes);
        assert!(name.contains("phone-") || !text.contains("Morvan"), "{name}");
    }
    // Every link of the catalogue leads to a file.
    let links: Vec<&str> = catalogue.split("<a href=\"").skip(1).filter_map(|part| part.split('"').next()).collect();
    assert_eq!(links.len(), 2);
    for link in links {
        assert!(files.contains_key(link), "{link}");
    }
}

#[test]
fn reviews_are_due_by_the_calendar() {
    let date = |text: &str| text.parse::<Date>().expect("a date");
    let every = |text: &str| text.parse::<Interval>().expect("an interval");
    assert_eq!(date("2027-08-31").later(every("6 months")), date("2028-02-29"));
    assert_eq!(date("2026-08-31").later(every("6 months")), date("2027-02-28"));
    assert_eq!(date("2027-01-18").later(every("1 year")), date("2028-01-18"));
    assert_eq!(date("2199-12-01").later(every("10 years")), date("2199-12-31"));
    for (text, said) in
        [("1 month", "1 month"), ("12 months", "1 year"), ("2 years", "2 years"), ("18 months", "18 months")]
    {
        assert_eq!(every(text).to_string(), said);
    }
    for wrong in ["6", "six months", "0 months", "11 years", "6 weeks", "-1 year", "99999 years"] {
        assert!(wrong.parse::<Interval>().is_err(), "{wrong}");
    }
    let review = |text: &str| Review {
        date: date(text),
        by: palmleaf::case::read_text(&palmleaf::source::SourceText::new(
            "c",
            format!("{CASE}person: {{name: therapist}}\n"),
        ))
        .expect("a case")
        .person
        .and_then(|person| person.name)
        .expect("a text"),
    };
    let half = Some(every("6 months"));
    let today = date("2027-08-01");
    assert_eq!(due(None, None, today), None);
    assert_eq!(due(None, half, today), Some(Due::Never));
    assert_eq!(due(Some(&review("2027-02-01")), half, today), Some(Due::Since(today)), "on the day itself");
    assert_eq!(due(Some(&review("2027-02-02")), half, today), Some(Due::On(date("2027-08-02"))));
    let (one, two): (palmleaf::shelf::ItemName, palmleaf::shelf::ItemName) =
        ("cases/one".parse().expect("a name"), "cases/two".parse().expect("a name"));
    let (old, new) = (review("2026-01-01"), review("2027-07-01"));
    let items = [(&one, Some(&new)), (&two, Some(&old))];
    assert_eq!(overdue(items.into_iter(), half, today), [(Due::Since(date("2026-07-01")), &two)]);
}

#[test]
fn names_of_files_stay_in_their_folder() {
    for wrong in ["../x", "/x", "a/../b", "a//b", "", ".", "a\\b", "c:x"] {
        assert!(wrong.parse::<FileName>().is_err(), "{wrong}");
    }
}

/// The example is a good shelf by its own schema, and every file that it names is there.
#[test]
fn the_example_is_current_with_the_schema() {
    let schema = palmleaf::cli::shelf_schema();
    let validator = jsonschema::validator_for(&schema).expect("a schema");
    let text = file("examples/harbour-row/shelf.yaml");
    let value: Value = serde_yaml::from_str(&text).expect("YAML");
    let faults: Vec<String> = validator.iter_errors(&value).map(|fault| fault.to_string()).collect();
    assert!(faults.is_empty(), "{faults:?}");
    let loaded = palmleaf::shelf::Loaded::of(&path("examples/harbour-row"))
        .unwrap_or_else(|faults| panic!("{}", crate::support::text(&faults)));
    let items = loaded.items(&crate::support::WORKSHOP.library).expect("items");
    assert_eq!(items.len(), 8);
}
