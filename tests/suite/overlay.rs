//! A clinic adds its own condition, orthosis and words without compiling.

use crate::support::{file, run, stderr, stdout};

#[test]
fn a_folder_over_the_content_adds_and_replaces() {
    let folder = tempfile::tempdir().expect("a folder");
    let dir = folder.path();
    for sub in ["conditions", "orthoses", "locales/en", "locales/es", "locales/ar"] {
        std::fs::create_dir_all(dir.join(sub)).expect("a folder");
    }
    let condition = file("content/conditions/de-quervain.yaml").replace("4 weeks", "3 weeks");
    std::fs::write(dir.join("conditions/our-tendon.yaml"), condition).expect("a condition");
    std::fs::write(dir.join("orthoses/our-splint.yaml"), file("content/orthoses/forearm-thumb-spica.yaml"))
        .expect("an orthosis");
    for (language, words) in [
        ("en", ["our sore tendon", "It is sore.", "It rests.", "our splint", "Ours"]),
        ("es", ["nuestro tendón", "Duele.", "Descansa.", "nuestra férula", "Nuestra"]),
        ("ar", ["وترنا", "يؤلم.", "يرتاح.", "جبيرة لنا", "جبيرة لنا"]),
    ] {
        let ftl = format!(
            "condition-our-tendon-name = {}\ncondition-our-tendon-what = {}\ncondition-our-tendon-aim = {}\northosis-our-splint-name = {}\northosis-our-splint-short = {}\n",
            words[0], words[1], words[2], words[3], words[4]
        );
        std::fs::write(dir.join(format!("locales/{language}/ours.ftl")), ftl).expect("words");
    }
    let overlay = dir.to_string_lossy().into_owned();
    let check = run(&["content", "check", "--content", &overlay]);
    assert_eq!(check.status.code(), Some(0), "{}", stderr(&check));
    // Words are wanted in the languages that the folder speaks; the others are told, and refused when they are asked for.
    assert!(stderr(&check).contains("`de` lacks 5 messages that the folder adds"), "{}", stderr(&check));
    assert!(!stderr(&check).contains("`es`") && !stderr(&check).contains("`ar`"), "{}", stderr(&check));
    let list = run(&["list", "conditions", "--content", &overlay]);
    assert!(stdout(&list).contains("our-tendon"), "{}", stdout(&list));
    let case = dir.join("case.yaml");
    let text = crate::support::CASE.replace("de-quervain", "our-tendon").replace("forearm-thumb-spica", "our-splint");
    std::fs::write(&case, text).expect("a case");
    let out = dir.join("out").to_string_lossy().into_owned();
    let built =
        run(&["build", &case.to_string_lossy(), "--content", &overlay, "--language", "en,es,ar", "--out", &out]);
    assert_eq!(built.status.code(), Some(0), "{}", stderr(&built));
    assert_eq!(stdout(&built).lines().count(), 6);
    let refused = run(&["build", &case.to_string_lossy(), "--content", &overlay, "--language", "de", "--out", &out]);
    // A fault of the content.
    assert_eq!(refused.status.code(), Some(4));
    assert!(stderr(&refused).contains("`de` has no message `"), "{}", stderr(&refused));
    // Without the folder the id is unknown.
    assert_eq!(run(&["check", &case.to_string_lossy()]).status.code(), Some(1));
}

#[test]
fn a_folder_that_is_not_there_is_named() {
    let output = run(&["list", "conditions", "--content", "no/such/folder"]);
    assert_eq!(output.status.code(), Some(3));
    assert!(stderr(&output).contains("no/such/folder"));
}
