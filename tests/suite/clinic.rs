//! A clinic's own file: what it lends to a case, its colour, its sections, and what it is refused for.

use std::path::Path;
use std::sync::LazyLock;

use palmleaf::clinic::{Accent, Clinic, Colour, LEAST};
use palmleaf::diag::Findings;
use palmleaf::document::SheetKind;
use palmleaf::pipeline::{Form, Planned, Workshop};

use crate::support::{CASE, file, files, path, read, run, source, stderr, text};

/// The workshop of the invented clinic in `examples`.
static HARBOUR: LazyLock<Workshop> = LazyLock::new(|| {
    let clinic =
        Clinic::load(&path("examples/harbour-row/clinic.yaml")).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    dressed(clinic)
});

fn dressed(clinic: Clinic) -> Workshop {
    let workshop = Workshop::load(None).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    workshop.for_clinic(clinic).unwrap_or_else(|faults| panic!("{}", text(&faults)))
}

/// Lays files out in a folder and reads the clinic in it.
pub fn clinic(yaml: &str, beside: &[(&str, &[u8])]) -> Result<Clinic, Findings> {
    let folder = tempfile::tempdir().expect("a folder");
    for (name, bytes) in beside {
        std::fs::write(folder.path().join(name), bytes).expect("a file");
    }
    let file = folder.path().join("clinic.yaml");
    std::fs::write(&file, yaml).expect("a file");
    Clinic::load(&file)
}

/// What is wrong with a clinic, in words; empty when nothing is.
pub fn faults(yaml: &str, beside: &[(&str, &[u8])]) -> String {
    clinic(yaml, beside).err().map_or_else(String::new, |findings| {
        let all = findings.sorted();
        assert!(all.iter().all(|one| one.help.is_some()), "without help: {}", text(&findings));
        all.iter()
            .map(|one| format!("{} | {} | {}\n", one.code.name(), one.message, one.help.clone().unwrap_or_default()))
            .collect()
    })
}

fn hands<'w>(workshop: &'w Workshop, case: &str) -> Vec<Planned<'w>> {
    let judged = workshop.judge(read(case).expect("a case"), source(case));
    judged.and_then(palmleaf::pipeline::Judged::plans).unwrap_or_else(|faults| panic!("{}\n{case}", text(&faults)))
}

/// The pages of a sheet, as a PDF, and how many there are.
fn pages(workshop: &Workshop, kind: SheetKind, case: &str) -> (Vec<u8>, usize) {
    let printed =
        workshop.print(kind, &hands(workshop, case)).unwrap_or_else(|faults| panic!("{}\n{case}", text(&faults)));
    match printed.expect("a sheet").form {
        Form::Pages(pages) => (pages.pdf().unwrap_or_else(|fault| panic!("{fault:?}")), pages.count()),
        Form::Page(_) => panic!("{kind} is printed"),
    }
}

fn phone(workshop: &Workshop, case: &str) -> String {
    let printed =
        workshop.print(SheetKind::Phone, &hands(workshop, case)).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    match printed.expect("a page").form {
        Form::Page(page) => page,
        Form::Pages(_) => panic!("the page for a telephone is no paper"),
    }
}

fn case(lines: &str) -> String {
    format!("{CASE}{lines}\n")
}

const SECTION: &str = "sections:\n  - {sheet: guide, after: care, text: {en: a.md}}\n";

#[test]
fn every_sheet_of_the_invented_clinic_sets_in_every_language_and_size() {
    let own = file("examples/harbour-row/case.yaml").replace("language: en\n", "");
    for language in ["en", "es", "ar"] {
        for print in ["standard", "large"] {
            let case = format!("{own}language: {language}\nprint: {print}\n");
            for &kind in SheetKind::ALL.iter().filter(|&&kind| kind != SheetKind::Phone) {
                let (pdf, count) = pages(&HARBOUR, kind, &case);
                assert!(pdf.starts_with(b"%PDF"));
                if kind == SheetKind::Card && print == "standard" {
                    assert_eq!(count, 1, "{language}: the card is one side");
                }
            }
        }
    }
}

/// The same clinic in another folder, on another day: the same bytes.
#[test]
fn the_same_clinic_gives_the_same_bytes_from_any_folder() {
    let folder = tempfile::tempdir().expect("a folder");
    let from = path("examples/harbour-row");
    for one in files("examples/harbour-row", "") {
        let to = folder.path().join(one.strip_prefix(&from).expect("below"));
        std::fs::create_dir_all(to.parent().expect("a folder")).expect("a folder");
        std::fs::copy(&one, to).expect("a copy");
    }
    let there = dressed(Clinic::load(&folder.path().join("clinic.yaml")).expect("a clinic"));
    assert!(pages(&HARBOUR, SheetKind::Letter, CASE).0 == pages(&there, SheetKind::Letter, CASE).0);
    let record = |workshop: &Workshop| {
        let made = workshop.guide(&hands(workshop, CASE)).expect("a guide");
        serde_json::to_value(&made.record).expect("JSON")
    };
    assert_eq!(record(&HARBOUR), record(&there));
    assert_eq!(record(&there)["clinic-file"]["file"], "clinic.yaml");
    let before = record(&there)["clinic-file"]["hash"].clone();
    // Any file that it names is part of it.
    let words = folder.path().join("words/questions.es.md");
    std::fs::write(&words, "# Preguntas\n\nLlame.\n").expect("a file");
    let changed = dressed(Clinic::load(&folder.path().join("clinic.yaml")).expect("a clinic"));
    assert_ne!(record(&changed)["clinic-file"]["hash"], before);
}

#[test]
fn a_case_wins_line_by_line() {
    let clinic = clinic(
        "name: North Quay\ntelephone: 01632 960 000\nemergency: \"112\"\nhours: {en: Mornings, ar: صباحا}\n",
        &[],
    )
    .expect("a clinic");
    let lent = |lines: &str| {
        let mut case = read(&case(lines)).expect("a case");
        clinic.lend(&mut case).expect("all it needs");
        let own = case.clinic.expect("a clinic");
        [own.name, own.telephone, own.hours, own.emergency]
            .map(|line| line.map(|line| line.as_str().to_owned()).unwrap_or_default())
    };
    assert_eq!(lent(""), ["North Quay", "01632 960 000", "Mornings", "112"]);
    assert_eq!(lent("clinic: {telephone: 01632 960 111}"), ["North Quay", "01632 960 111", "Mornings", "112"]);
    assert_eq!(lent("clinic: {name: Ward B, hours: Nights}"), ["Ward B", "01632 960 000", "Nights", "112"]);
}

#[test]
fn a_language_that_the_clinic_lacks_is_named_with_file_and_section() {
    let clinic = clinic(&format!("hours: {{en: Mornings}}\n{SECTION}"), &[("a.md", b"# Parking\n\nBy the door.\n")])
        .expect("a clinic");
    let mut spanish = read(&CASE.replace("language: en", "language: es")).expect("a case");
    let lacks = text(&clinic.lend(&mut spanish).expect_err("it lacks Spanish"));
    for word in [
        "clinic.yaml:1:",
        "clinic.yaml:3:",
        "has no hours in `es`",
        "text of the section after `care` of the sheet `guide` in `es`",
        "clinic/language",
    ] {
        assert!(lacks.contains(word), "{word} is not in:\n{lacks}");
    }
    // Words for a language serve all its regions.
    let mut american = read(&CASE.replace("language: en", "language: en-US")).expect("a case");
    assert!(clinic.lend(&mut american).is_ok());
}

#[test]
fn an_own_section_stands_where_it_is_put_numbered_and_on_the_telephone_too() {
    let yaml = "sections:\n  - {sheet: guide, before: care, text: {en: a.md}}\n  - {sheet: guide, after: care, text: {en: b.md}}\n";
    let own = clinic(
        yaml,
        &[("a.md", b"# Parking\n\nBy **the** door.\n"), ("b.md", b"# Buses\n\n1. Get on.\n2. Get off.\n")],
    )
    .expect("a clinic");
    let page = phone(&dressed(own), &case("activities: [open-jar]"));
    let at = |word: &str| page.rfind(word).unwrap_or_else(|| panic!("{word} is not there"));
    assert!(at("<span>Parking</span>") < at("<span>Look after the splint</span>"));
    assert!(at("<span>Look after the splint</span>") < at("<span>Buses</span>"));
    assert!(page.contains("<strong>the</strong> door") && page.contains("<ol><li><p>Get on.</p></li>"));
    let tile = |title: &str| {
        page[..at(title)].rsplit_once("</span>").expect("a tile").0.rsplit_once('>').expect("a number").1.to_owned()
    };
    let numbers: Vec<u8> = ["<span>Parking<", "<span>Look after", "<span>Buses<"]
        .iter()
        .map(|title| tile(title).parse().expect("a number"))
        .collect();
    assert_eq!(numbers, [numbers[0], numbers[0] + 1, numbers[0] + 2]);
}

/// A section after one that this case does not have still stands there.
#[test]
fn an_own_section_does_not_hang_on_its_neighbour() {
    let own = clinic(&SECTION.replace("care", "note"), &[("a.md", b"# Parking\n\nBy the door.\n")]).expect("a clinic");
    assert!(phone(&dressed(own), CASE).contains("<span>Parking</span>"));
}

#[test]
fn what_a_section_may_not_hold_is_refused_with_its_place() {
    for (markdown, wrong, line) in [
        ("# A\n\n<b>x</b>\n", "HTML", 3),
        ("# A\n\n<script>alert(1)</script>\n", "HTML", 3),
        ("# A\n\nx ![](https://example.org/a.png)\n", "an image", 3),
        ("# A\n\nx [map](https://example.org)\n", "a link, which nobody can follow on paper", 3),
        ("# A\n\n[x](javascript:alert(1))\n", "a link", 3),
        ("# A\n\n`x`\n", "code marks", 3),
        ("# A\n\n```component\nwarning\n```\n", "a code block", 3),
        ("# A\n\n> x\n", "a quotation mark", 3),
        ("# A\n\n---\n\nx\n", "a dividing line", 3),
        ("# A\n\nx \u{202E}y\n", "U+202E turns the direction", 3),
        ("# A\n\nx \u{7}y\n", "U+0007 prints nothing", 3),
        ("Words only.\n", "does not begin with its title", 1),
        ("# A\n\nx\n\n# B\n\ny\n", "two titles", 1),
        ("# A\n", "says nothing below its title", 1),
        ("", "does not begin with its title", 1),
    ] {
        let faults = clinic(SECTION, &[("a.md", markdown.as_bytes())]).expect_err(markdown);
        let all = text(&faults);
        assert!(
            all.contains(wrong) && all.contains(&format!("a.md:{line}:")) && all.contains("clinic/section"),
            "{markdown:?}: {all}"
        );
    }
    let long = format!("# A\n\n{}\n", "word ".repeat(900));
    assert!(faults(SECTION, &[("a.md", long.as_bytes())]).contains("characters"));
    assert!(faults(SECTION, &[("a.md", b"# A\n\n\xFF\n")]).contains("file/not-utf-8"));
    assert!(faults(SECTION, &[]).contains("cannot be read"));
}

#[test]
fn a_section_has_one_place_that_there_is() {
    let words: &[(&str, &[u8])] = &[("a.md", b"# A\n\nx\n")];
    for place in ["", ", after: care, before: care"] {
        let yaml = SECTION.replace(", after: care", place);
        assert!(faults(&yaml, words).contains("a section needs one place"), "{yaml}");
    }
    for sheet in ["card", "diary", "phone", "poster"] {
        assert!(faults(&SECTION.replace("guide", sheet), words).contains("no sheet that takes sections"), "{sheet}");
    }
    let suits = |yaml: &str| {
        let clinic = clinic(yaml, words).unwrap_or_else(|faults| panic!("{}", text(&faults)));
        let workshop = Workshop::load(None).expect("the content");
        workshop.for_clinic(clinic).err().map(|faults| text(&faults)).unwrap_or_default()
    };
    assert_eq!(suits(SECTION), "");
    assert!(suits(&SECTION.replace("care", "caer")).contains("write `care`"));
    assert!(suits(&SECTION.replace("after: care", "before: glance")).contains("write `after: glance`"));
    assert!(suits(&SECTION.replace("en:", "tlh:")).contains("id/unknown"));
    let many = format!("sections:\n{}", SECTION.replace("sections:\n", "").repeat(13));
    assert!(faults(&many, words).contains("13 sections"));
}

/// Contrast by the formula of WCAG 2.2, against figures that others publish: black and white 21 (its own definition);
/// #777777 4.48, not rounded up (consensus of its working group of 27 October 2016, davidmacd.com/test/check-color.html);
/// #767676 4.54 (kreshikhin/ColorfulSwift, wiki "Contrast"); blue 8.59 (Manning liveBook, "Contrast ratio").
#[test]
fn contrast_is_that_of_the_standard() {
    for (colour, published) in [
        (Colour::BLACK, 21.0),
        (Colour::WHITE, 1.0),
        (Colour::new(0x77, 0x77, 0x77), 4.48),
        (Colour::new(0x76, 0x76, 0x76), 4.54),
        (Colour::new(0, 0, 255), 8.59),
    ] {
        assert!((colour.contrast(Colour::WHITE) - published).abs() < 0.005, "{colour}");
        assert!((Colour::WHITE.contrast(colour) - published).abs() < 0.005, "{colour}");
    }
}

#[test]
fn a_pale_accent_is_refused_with_its_contrast_and_a_darker_one() {
    assert_eq!(faults("accent: \"#767676\"", &[]), "");
    let pale = faults("accent: \"#777777\"", &[]);
    assert!(pale.contains("4.47 to 1") && pale.contains("write `\"#767676\"`"), "{pale}");
    assert!(faults("accent: \"#ffcc00\"", &[]).contains("1.5"));
    for wrong in ["red", "#fff", "#12345g", "#+12345", "rgb(0,0,0)", "#1234567"] {
        assert!(faults(&format!("accent: \"{wrong}\""), &[]).contains("is no colour"), "{wrong}");
    }
}

/// Every accent there can be: readable on the dark page, and dark enough that a copy in black and white shows it black.
/// Grey by Rec. ITU-R BT.601, as copiers and `pdftoppm -gray` do it; 128 is the middle.
#[test]
fn every_accent_passes_by_night_and_is_dark_on_a_copy() {
    let mut seen = 0;
    let night = file("src/webpage/look.css");
    assert!(night.contains(&format!("--paper:{}", Colour::NIGHT)), "the dark page has another ground");
    for red in (0..=255u8).step_by(15) {
        for green in (0..=255u8).step_by(15) {
            for blue in (0..=255u8).step_by(15) {
                let Ok(accent) = Colour::new(red, green, blue).to_string().parse::<Accent>() else { continue };
                seen += 1;
                assert!(accent.by_day().contrast(Colour::WHITE) >= LEAST);
                assert!(accent.by_night().contrast(Colour::NIGHT) >= LEAST, "{}", accent.by_day());
                let grey = 0.299 * f64::from(red) + 0.587 * f64::from(green) + 0.114 * f64::from(blue);
                assert!(grey < 128.0, "{} is grey {grey}", accent.by_day());
            }
        }
    }
    assert!(seen > 1000, "{seen} accents");
}

#[test]
fn the_accent_is_on_the_page_by_day_and_by_night_and_only_where_a_clinic_has_one() {
    let page = phone(&HARBOUR, CASE);
    let accent: Accent = "#1f5f7a".parse().expect("a colour");
    assert!(
        page.contains(&format!(":root{{--accent:{}}}", accent.by_day()))
            && page.contains(&accent.by_night().to_string())
    );
    let plain = phone(&dressed(clinic("name: North Quay", &[]).expect("a clinic")), CASE);
    assert!(!plain.contains("--accent") && !plain.contains("<img") && !plain.contains("img-src"));
}

/// Telephone numbers in any script, with plus signs and extensions, on every sheet and in every language.
#[test]
fn a_telephone_in_any_script_is_printed() {
    for number in [
        "٠١٦٣٢ ٩٦٠ ١٤٢",
        "۰۱۶۳۲ ۹۶۰ ۱۴۲",
        "+44 (0)1632 960142 ext. 7",
        "+44 1632 960 142;ext=7",
        "01632/960-142",
        "०१६३२ ९६०",
        "𝟘𝟙𝟞𝟛𝟚",
    ] {
        let own = dressed(
            clinic(&format!("name: North Quay\ntelephone: \"{number}\"\nemergency: \"{number}\""), &[])
                .expect("a clinic"),
        );
        for language in ["en", "es", "ar"] {
            let case = CASE.replace("language: en", &format!("language: {language}"));
            for kind in [SheetKind::Card, SheetKind::Letter] {
                pages(&own, kind, &case);
            }
            let page = phone(&own, &case);
            assert!(!page.contains("href=\"tel:\""), "{number}");
            assert!(page.contains("1632"), "{number}");
        }
    }
}

/// A name as wide as the page and wider, with spaces or without, and hostile ones: they print as they stand.
#[test]
fn any_name_is_printed_as_it_stands() {
    let names = [
        "W".repeat(120),
        "Royal Northquay and District Hand, Wrist and Elbow Clinic of the Harbour Towns".to_owned(),
        "<script>alert(1)</script> #let x = 1; $x^2$ *y* [z](w) \\\\".to_owned(),
        "{{ say(id=\\\"x\\\") }} & \\\"q\\\" 'r'".to_owned(),
    ];
    let logo = std::fs::read(path("examples/harbour-row/logo.svg")).expect("a logo");
    for name in names {
        let yaml = format!("name: \"{name}\"\naddress: \"{name}\"\nlogo: logo.svg\naccent: \"#7a1f3d\"\n");
        let own = dressed(clinic(&yaml, &[("logo.svg", &logo)]).unwrap_or_else(|faults| panic!("{}", text(&faults))));
        for kind in [SheetKind::Guide, SheetKind::Card, SheetKind::Letter] {
            for print in ["standard", "large"] {
                pages(&own, kind, &case(&format!("print: {print}")));
            }
        }
        let page = phone(&own, CASE);
        assert!(!page.contains("<script>alert") && !page.contains("alt=\"\""), "{name}");
    }
    for turned in ["a\u{202E}b", "a\u{7}b", "a\u{200B}b", "a\u{E000}b"] {
        assert!(
            faults(&format!("name: {turned}"), &[])
                .contains(&format!("U+{:04X}", u32::from(turned.chars().nth(1).expect("a mark"))))
        );
    }
    assert!(faults(&format!("name: {}", "x".repeat(121)), &[]).contains("121 characters"));
}

#[test]
fn a_plan_of_a_day_and_one_of_two_years_take_the_clinics_look() {
    for review in ["2027-03-02", "2029-03-01"] {
        let case = CASE.replace("2027-03-29", review);
        for kind in [SheetKind::Guide, SheetKind::Letter] {
            pages(&HARBOUR, kind, &case);
        }
    }
    // No telephone: lines to write on. No review: the case says so itself.
    let silent = dressed(clinic("name: North Quay\naccent: \"#1f5f7a\"", &[]).expect("a clinic"));
    pages(&silent, SheetKind::Guide, CASE);
    let unreviewed = text(&read(&CASE.replace("review: 2027-03-29\n", "")).expect_err("no review"));
    assert!(unreviewed.contains("lacks `review`"), "{unreviewed}");
}

/// All faults of the file are told at once, each with its place.
#[test]
fn all_faults_of_a_clinic_are_told_at_once() {
    let yaml =
        "nmae: North Quay\naccent: pink\nlogo: ../logo.svg\nhours: Mornings\nsections: [{sheet: card, text: {}}]\n";
    let all = text(&clinic(yaml, &[]).expect_err("faults"));
    for word in ["1:1", "write `name`", "2:9", "3:7", "stays in it", "4:8", "5:20"] {
        assert!(all.contains(word), "{word} is not in:\n{all}");
    }
}

#[test]
fn the_command_takes_a_clinic_by_name_or_from_the_content_folder() {
    let out = tempfile::tempdir().expect("a folder");
    let built = |more: &[&str]| {
        let mut args = vec![
            "build",
            "examples/harbour-row/case.yaml",
            "--sheets",
            "letter",
            "--out",
            out.path().to_str().expect("a path"),
        ];
        args.extend(more);
        let output = run(&args);
        assert!(output.status.success(), "{}", stderr(&output));
        let record = std::fs::read_to_string(out.path().join("record-hr-2077-left-en.json")).expect("a record");
        serde_json::from_str::<serde_json::Value>(&record).expect("JSON")["clinic-file"].clone()
    };
    assert!(built(&[]).is_null());
    let named = built(&["--clinic", "examples/harbour-row/clinic.yaml"]);
    assert_eq!(named, built(&["--content", "examples/harbour-row"]));
    assert_eq!(named["file"], "clinic.yaml");
    let missing = run(&["check", "examples/right-thumb.yaml", "--clinic", "no/such.yaml"]);
    assert!(
        stderr(&missing).contains("no/such.yaml cannot be read") && missing.status.code() == Some(3),
        "{}",
        stderr(&missing)
    );
    let schema = run(&["schema", "--clinic"]);
    let schema: serde_json::Value = serde_json::from_slice(&schema.stdout).expect("JSON");
    let validator = jsonschema::validator_for(&schema).expect("a schema");
    let own: serde_json::Value = serde_yaml::from_str(&file("examples/harbour-row/clinic.yaml")).expect("YAML");
    assert!(
        validator.is_valid(&own),
        "{:?}",
        validator.iter_errors(&own).map(|fault| fault.to_string()).collect::<Vec<_>>()
    );
    assert!(!validator.is_valid(&serde_json::json!({"accent": "pink"})));
    assert!(Path::new(&path("examples/harbour-row/case.yaml")).is_file());
}

#[test]
fn papers_for_the_class_room_take_the_look_of_the_clinic_too() {
    let out = tempfile::tempdir().expect("a folder");
    let list = out.path().join("class.yaml");
    std::fs::write(&list, "title: Fingers that catch\nlanguage: en\nitems:\n  - facts: trigger-finger\n")
        .expect("a file");
    let (folder, list) = (out.path().to_str().expect("a path"), list.to_str().expect("a path"));
    let book = out.path().join("class.pdf");
    let facts = ["teach", "facts", "trigger-finger", "--out", folder];
    let booklet = ["teach", "booklet", list, "--out", book.to_str().expect("a path")];
    for (args, made) in [(&facts[..], "facts-trigger-finger-en.pdf"), (&booklet[..], "class.pdf")] {
        let named = |more: &[&str]| {
            let output = run(&[args, more].concat());
            assert!(output.status.success(), "{}", stderr(&output));
            let pdf = std::fs::read(out.path().join(made)).expect("a file");
            // the metadata of an archival file are plain text
            String::from_utf8_lossy(&pdf).contains("Harbour Row Hand Clinic")
        };
        assert!(!named(&[]), "{made} names a clinic that nobody gave");
        assert!(named(&["--clinic", "examples/harbour-row/clinic.yaml"]), "{made}");
        assert!(named(&["--content", "examples/harbour-row"]), "{made}");
    }
}

#[test]
fn a_fact_sheet_names_whom_to_call_at_the_clinic_and_leaves_a_line_where_there_is_none() {
    let id = "trigger-finger".parse().expect("an id");
    for (workshop, number) in [(&*HARBOUR, Some("01632 960 142")), (&*crate::support::WORKSHOP, None)] {
        for (tag, answered) in [("en", "Weekdays, mornings"), ("es", "De lunes a viernes, por la mañana")] {
            let language = workshop.languages.find(&tag.parse().expect("a tag")).expect("a language");
            let sheet = workshop
                .say_facts(palmleaf::document::FactsAsk {
                    library: &workshop.library,
                    id: &id,
                    condition: &workshop.library.conditions[&id],
                    reader: palmleaf::document::FactsFor::Patients,
                    language,
                    side: palmleaf::body::Side::Right,
                    finger: palmleaf::body::Finger::Index,
                    paper: palmleaf::case::Paper::A4,
                    print: palmleaf::content::PrintSize::Standard,
                })
                .unwrap_or_else(|faults| panic!("{}", text(&faults)));
            let sections = sheet.data["parts"][0]["sections"].as_array().expect("sections");
            let stop = sections
                .iter()
                .flat_map(|section| section["blocks"].as_array().expect("blocks"))
                .find(|block| block["t"] == "warning")
                .expect("a stop box");
            assert_eq!(stop["telephone"].as_str(), number, "{tag}");
            assert_eq!(stop["hours"].as_str(), number.map(|_| answered), "{tag}");
            let urgent = stop["emergency"].to_string();
            assert_eq!(urgent.contains("999"), number.is_some(), "{tag}: {urgent}");
        }
    }
}
