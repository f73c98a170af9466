//! Lists of cases: what is read from them, and what is refused, each with its place.

use std::io::Write as _;
use std::path::Path;

use palmleaf::batch::{Draft, List};
use palmleaf::case::CaseFile;
use palmleaf::diag::Findings;
use zip::write::SimpleFileOptions;

use crate::support::{CASE, WORKSHOP, text};

pub const MAPPING: &str = "\
columns:
  Ref: person.reference
  Name: person.name
  Hand: {field: hand, values: {R: right, L: left}}
  Splint: orthosis
  Condition: condition
  Fitted: fitted
  Review: review
  Jobs: activities
defaults:
  language: en
  clinic: {name: Harbour Row Hand Clinic}
";
pub const HEADS: &str = "Ref,Name,Hand,Splint,Condition,Fitted,Review,Jobs\n";
pub const ROW: &str = "HR-1,Ana Vale,R,forearm-thumb-spica,de-quervain,2027-03-01,2027-03-29,\"open-jar, lift-baby\"\n";

/// A list with its mapping, laid out in a folder.
fn open(name: &str, bytes: &[u8], mapping: Option<&str>) -> Result<List, Findings> {
    let folder = tempfile::tempdir().expect("a folder");
    let (list, map) = (folder.path().join(name), folder.path().join("mapping.yaml"));
    std::fs::write(&list, bytes).expect("a list");
    std::fs::write(&map, mapping.unwrap_or_default()).expect("a mapping");
    List::open(&list, mapping.is_some().then_some(map.as_path()))
}

fn csv(body: &str) -> List {
    open("cases.csv", body.as_bytes(), Some(MAPPING)).unwrap_or_else(|faults| panic!("{}", text(&faults)))
}

/// What is wrong with a list, without the folder it lay in.
fn refusal(name: &str, bytes: &[u8], mapping: &str) -> String {
    open(name, bytes, Some(mapping)).err().map_or_else(String::new, |faults| plain(&faults))
}

fn plain(faults: &Findings) -> String {
    assert!(faults.sorted().iter().all(|fault| fault.help.is_some()), "without help: {}", text(faults));
    let mut lines = text(faults);
    let folder = format!("{}/.tmp", std::env::temp_dir().display());
    while let Some(at) = lines.find(&folder) {
        let end = lines[at + folder.len()..].find('/').map_or(lines.len(), |length| at + folder.len() + length + 1);
        lines.replace_range(at..end, "");
    }
    lines
}

fn draft(list: &List, index: usize) -> Draft {
    list.draft(index).unwrap_or_else(|faults| panic!("{}", text(&faults)))
}

fn case(list: &List, index: usize) -> CaseFile {
    let draft = draft(list, index);
    assert!(!draft.faults.has_errors(), "{}", text(&draft.faults));
    WORKSHOP.read_source(draft.source).unwrap_or_else(|faults| panic!("{}", text(&faults))).0
}

/// Everything wrong with a row, at its cells.
fn faults(list: &List, index: usize) -> String {
    let draft = draft(list, index);
    let mut all = draft.faults.clone();
    match WORKSHOP.read_source(draft.source.clone()) {
        Err(found) => all.extend(draft.at_origin(found)),
        Ok((file, source)) => {
            if let Err(found) = WORKSHOP.judge(file, source).and_then(palmleaf::pipeline::Judged::plans).map(drop) {
                all.extend(draft.at_origin(found));
            }
        }
    }
    plain(&all)
}

#[test]
fn a_row_is_a_case() {
    let case = case(&csv(&format!("{HEADS}{ROW}")), 0);
    let person = case.person.expect("a person");
    assert_eq!(person.reference.expect("a reference").as_str(), "HR-1");
    assert_eq!(case.hand.word(), "right");
    assert_eq!(case.fitted.value.to_string(), "2027-03-01");
    assert_eq!(case.activities.len(), 2);
    assert_eq!(case.clinic.expect("a clinic").name.expect("a name").as_str(), "Harbour Row Hand Clinic");
}

#[test]
fn a_fault_stands_at_the_cell_it_came_from() {
    let list = csv(&format!("{HEADS}{ROW}{}", ROW.replace("spica", "spika").replace("HR-1", "HR-2")));
    let found = faults(&list, 1);
    assert!(found.contains("cases.csv:3:17: error[id/unknown]"), "{found}");
    assert!(found.contains("write `forearm-thumb-spica`"), "{found}");
    // What only judging finds is led back as well: the review before the fitting.
    let list = csv(&format!("{HEADS}{}", ROW.replace("2027-03-29", "2027-02-01")));
    let found = faults(&list, 0);
    assert!(found.contains("cases.csv:2:60: error[case/dates-out-of-order]"), "{found}");
    // A default that is wrong is wrong in the mapping.
    let mapping = MAPPING.replace("language: en", "language: xx");
    let list =
        open("cases.csv", format!("{HEADS}{ROW}").as_bytes(), Some(&mapping)).unwrap_or_else(|_| panic!("a list"));
    let found = faults(&list, 0);
    assert!(found.contains("mapping.yaml:11:13: error[id/unknown]"), "{found}");
    // What no cell says is missing in the row.
    let list = csv(&format!("{HEADS}{}", ROW.replace("2027-03-29", "")));
    assert!(faults(&list, 0).contains("cases.csv:2:1: error[field/missing]: a case lacks `review`"));
}

#[test]
fn a_row_with_a_line_break_in_a_cell_does_not_shift_the_lines_after_it() {
    let first = ROW.replace("Ana Vale", "\"Ana\nVale\"");
    let list = csv(&format!("{HEADS}{first}\n{}", ROW.replace("right", "").replace(",R,", ",Q,")));
    assert!(faults(&list, 0).contains("cases.csv:2:6"), "{}", faults(&list, 0));
    assert!(faults(&list, 1).contains("cases.csv:5:15: error[field/wrong-value]"), "{}", faults(&list, 1));
}

#[test]
fn a_byte_order_mark_semicolons_and_tabs_are_read_as_they_come() {
    for (delimiter, mark) in [(";", "\u{FEFF}"), ("\t", ""), (",", "\u{FEFF}"), ("|", "")] {
        let row = ROW.replace("open-jar, lift-baby", "open-jar").replace(',', delimiter);
        let list = csv(&format!("{mark}{}{}", HEADS.replace(',', delimiter), row.replace('\n', "\r\n")));
        assert_eq!(case(&list, 0).hand.word(), "right", "{delimiter:?}");
    }
    // What is stated is taken, and nothing else.
    let stated = format!("{MAPPING}delimiter: comma\n");
    let found = refusal("cases.csv", format!("{HEADS}{ROW}").replace(',', ";").as_bytes(), &stated);
    assert!(found.contains("batch/mapping") && found.contains("no column `Ref`"), "{found}");
}

#[test]
fn letters_that_are_not_utf_8_have_to_be_stated() {
    let mut bytes = HEADS.as_bytes().to_vec();
    bytes.extend(ROW.replace("Ana", "Zo\u{1}").bytes().map(|byte| if byte == 1 { 0xEB } else { byte }));
    let found = refusal("cases.csv", &bytes, MAPPING);
    assert!(found.contains("cases.csv:2:8") && found.contains("encoding: windows-1252"), "{found}");
    let stated = format!("{MAPPING}encoding: windows-1252\n");
    let list = open("cases.csv", &bytes, Some(&stated)).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    assert_eq!(case(&list, 0).person.expect("a person").name.expect("a name").as_str(), "Zoë Vale");
    // UTF-8 that is said to be something else would spoil every name.
    let found = refusal("cases.csv", format!("{HEADS}{}", ROW.replace("Ana", "Zoë")).as_bytes(), &stated);
    assert!(found.contains("cases.csv is UTF-8, not windows-1252"), "{found}");
    let found = refusal("cases.csv", &bytes, &format!("{MAPPING}encoding: latin-thirteen\n"));
    assert!(found.contains("no way to store letters"), "{found}");
    // UTF-16 says what it is by its byte order mark.
    let wide: Vec<u8> = format!("\u{FEFF}{HEADS}{ROW}").encode_utf16().flat_map(u16::to_le_bytes).collect();
    let list = open("cases.csv", &wide, Some(MAPPING)).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    assert_eq!(list.len(), 1);
}

#[test]
fn a_date_that_can_be_two_days_needs_a_stated_order() {
    let row = ROW.replace("2027-03-01", "2/3/2027");
    let list = csv(&format!("{HEADS}{row}"));
    let found = faults(&list, 0);
    assert!(
        found.contains("cases.csv:2:49: error[batch/cell]: `2/3/2027` can be read as more than one day"),
        "{found}"
    );
    assert!(!found.contains("lacks `fitted`"), "what cannot be read is not missing: {found}");
    for (form, wanted) in [("d/m/y", "2027-03-02"), ("m/d/y", "2027-02-03")] {
        let mapping = format!("{MAPPING}dates: {form}\n");
        let list =
            open("cases.csv", format!("{HEADS}{row}").as_bytes(), Some(&mapping)).unwrap_or_else(|_| panic!("a list"));
        assert_eq!(case(&list, 0).fitted.value.to_string(), wanted);
        // The one that cannot be mistaken is read beside it.
        assert_eq!(case(&list, 0).review.value.to_string(), "2027-03-29");
    }
    let mapping = format!("{MAPPING}dates: m/d/y\n");
    for (wrong, why) in
        [("13/3/2027", "there is no such day"), ("2/3/27", "the year needs four figures"), ("2.3/2027", "is no date")]
    {
        let list = open("cases.csv", format!("{HEADS}{}", row.replace("2/3/2027", wrong)).as_bytes(), Some(&mapping))
            .unwrap_or_else(|_| panic!("a list"));
        assert!(faults(&list, 0).contains(why), "{wrong}: {}", faults(&list, 0));
    }
}

/// A CSV holds text. What a spreadsheet would take for a formula is printed as it stands, and nothing works it out.
#[test]
fn what_looks_like_a_formula_in_a_csv_is_text() {
    for name in ["=SUM(A1)", "+44 Lane", "-1", "@home", "=cmd|' /C calc'!A0"] {
        let case = case(&csv(&format!("{HEADS}{}", ROW.replace("Ana Vale", name))), 0);
        assert_eq!(case.person.expect("a person").name.expect("a name").as_str(), name);
    }
}

/// What a cell holds is one value, whatever marks stand in it: it ends no line and opens no field.
#[test]
fn a_cell_cannot_write_into_the_case() {
    for name in
        ["a\"\"}, hand: left, x: {\"\"", "a: [b] # c", "{{ name }} ${x} %s &a *a !tag", "a\\\"\"b", "'", "null", "~"]
    {
        let list = csv(&format!("{HEADS}{}", ROW.replace("Ana Vale", &format!("\"{name}\""))));
        let case = case(&list, 0);
        assert_eq!(case.person.expect("a person").name.expect("a name").as_str(), name.replace("\"\"", "\""));
        assert_eq!(case.hand.word(), "right");
    }
    for hidden in ["a\u{202E}b", "a\u{0007}b", "a\u{0085}b", "a\u{200B}b", "a\u{FEFF}b"] {
        let found = faults(&csv(&format!("{HEADS}{}", ROW.replace("Ana Vale", hidden))), 0);
        assert!(found.contains("cases.csv:2:6: error[field/wrong-value]"), "{hidden:?}: {found}");
    }
}

#[test]
fn a_hundred_columns_are_fine_and_a_head_twice_is_not() {
    let more: String = (0..100).map(|number| format!(",more{number}")).collect();
    let list = csv(&format!("{}{more}\n{}{}\n", HEADS.trim_end(), ROW.trim_end(), ",x".repeat(100)));
    assert_eq!(case(&list, 0).hand.word(), "right");
    let found = refusal("cases.csv", format!("Ref,{HEADS}x,{ROW}").as_bytes(), MAPPING);
    assert!(found.contains("has the head `Ref` twice: columns 1 and 2"), "{found}");
    let found = faults(&csv(&format!("{HEADS}{HEADS}{ROW}")), 0);
    assert!(
        found.contains("cases.csv:2:1: error[batch/list]: the heads of the columns stand here a second time"),
        "{found}"
    );
    let found = faults(&csv(&format!("{HEADS}{},a,b\n", ROW.trim_end())), 0);
    assert!(found.contains("the row has 10 cells, and there are 8 heads"), "{found}");
}

#[test]
fn a_mapping_that_does_not_suit_the_table_says_where() {
    let with =
        |from: &str, to: &str| refusal("cases.csv", format!("{HEADS}{ROW}").as_bytes(), &MAPPING.replace(from, to));
    assert!(
        with("  Splint:", "  Splnt:").contains("mapping.yaml:5:10: error[batch/mapping]"),
        "{}",
        with("  Splint:", "  Splnt:")
    );
    assert!(with("Splint: orthosis", "Splint: orthoses").contains("there is no `orthoses`; write `orthosis`"));
    assert!(with("Splint: orthosis", "Splint: clinic").contains("which of them, such as `clinic."));
    assert!(with("Splint: orthosis", "Splint: findings").contains("items hold several fields"));
    assert!(with("Splint: orthosis", "Splint: findings.0.angle").contains("is no item of a list"));
    assert!(with("Splint: orthosis", "Splint: hand").contains("`hand` is fed by two columns"));
    assert!(with("columns:", "colums:").contains("write `columns`"));
    assert_eq!(with("Splint: orthosis", "Splint: findings.1.joint"), "");
    assert!(refusal("cases.csv", b"", MAPPING).contains("is empty"));
    assert!(refusal("cases.csv", b"\n\n", MAPPING).contains("holds no heads"));
    assert!(refusal("cases.csv", HEADS.as_bytes(), MAPPING).contains("holds no case"));
    assert!(refusal("cases.docx", b"x", MAPPING).contains("is no list"));
    assert!(
        open("cases.csv", HEADS.as_bytes(), None)
            .is_err_and(|faults| plain(&faults).contains("--mapping mapping.yaml"))
    );
}

#[test]
fn columns_can_feed_items_of_a_list() {
    let mapping = MAPPING.replace(
        "  Jobs: activities\n",
        "  Joint: findings.1.joint\n  Way: findings.1.motion\n  Angle: findings.1.angle\n",
    );
    let body = "Ref,Name,Hand,Splint,Condition,Fitted,Review,Joint,Way,Angle\nHR-1,,R,forearm-thumb-spica,de-quervain,2027-03-01,2027-03-29,thumb-mcp,extension,20 deg\nHR-2,,R,forearm-thumb-spica,de-quervain,2027-03-01,2027-03-29,,,\n";
    let list = open("cases.csv", body.as_bytes(), Some(&mapping)).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    assert_eq!(case(&list, 0).findings.len(), 1);
    assert_eq!(case(&list, 1).findings.len(), 0, "empty cells say nothing");
}

/// An editor that reads the schema takes the example's mapping and marks a slip.
#[test]
fn the_schema_of_the_mapping_says_what_the_reader_says() {
    let schema = palmleaf::cli::mapping_schema();
    let validator = jsonschema::validator_for(&schema).expect("a schema");
    let good = serde_json::json!({"columns": {"Ref": "person.reference", "Hand": {"field": "hand", "values": {"R": "right"}}}, "dates": "d/m/y"});
    assert!(validator.is_valid(&good));
    for (key, value) in [("dates", "dmy"), ("colums", "x"), ("delimiter", ";")] {
        let mut bad = good.clone();
        bad[key] = value.into();
        assert!(!validator.is_valid(&bad), "{key}");
    }
    let text = crate::support::file("examples/morning-list/mapping.yaml");
    let list = open("cases.csv", crate::support::file("examples/morning-list/cases.csv").as_bytes(), Some(&text));
    assert_eq!(list.map_or(0, |list| list.len()), 4);
}

// ---- YAML -----------------------------------------------------------------------------------------------

#[test]
fn documents_of_a_stream_are_cases_with_their_own_lines() {
    let body = format!("# A list.\n---\n{CASE}---\n# nothing\n---\n{}", CASE.replace("right", "rihgt"));
    let list = open("cases.yaml", body.as_bytes(), None).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    assert_eq!(list.len(), 2);
    assert_eq!(draft(&list, 0).source.text(), CASE);
    let found = faults(&list, 1);
    assert!(found.contains("cases.yaml:14:7: error[field/wrong-value]"), "{found}");
}

#[test]
fn a_folder_gives_its_case_files_in_the_order_of_their_names() {
    let folder = tempfile::tempdir().expect("a folder");
    for (name, body) in [
        ("b.yaml", "hand: left\n"),
        ("a.yml", CASE),
        ("clinic.yaml", "name: x\n"),
        (".hidden.yaml", "x"),
        ("notes.txt", "x"),
    ] {
        std::fs::write(folder.path().join(name), body).expect("a file");
    }
    let list = List::open(folder.path(), None).unwrap_or_else(|faults| panic!("{}", text(&faults)));
    assert_eq!(list.len(), 2);
    assert!(draft(&list, 0).source.name().ends_with("a.yml"));
    std::fs::remove_file(folder.path().join("b.yaml")).expect("it goes");
    assert!(list.draft(1).is_err_and(|faults| faults.codes() == ["file/unreadable"]), "a file that vanished");
}

// ---- workbooks ------------------------------------------------------------------------------------------

/// A workbook by hand: what a library would write, and what none would.
pub fn workbook(sheets: &[(&str, &str, &str)]) -> Vec<u8> {
    let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    let mut part = |name: &str, text: &str| {
        zip.start_file(name, SimpleFileOptions::default()).expect("a part");
        zip.write_all(format!("<?xml version=\"1.0\" encoding=\"UTF-8\"?>{text}").as_bytes()).expect("a part");
    };
    let relation = |id: usize, kind: &str, target: &str| {
        format!(
            "<Relationship Id=\"rId{id}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/{kind}\" Target=\"{target}\"/>"
        )
    };
    let relations = |inside: &str| {
        format!(
            "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">{inside}</Relationships>"
        )
    };
    part("_rels/.rels", &relations(&relation(1, "officeDocument", "xl/workbook.xml")));
    let main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    let mut list = String::new();
    let mut links = relation(99, "styles", "styles.xml");
    for (number, (name, state, body)) in sheets.iter().enumerate() {
        let id = number + 1;
        list.push_str(&format!("<sheet name=\"{name}\" sheetId=\"{id}\" state=\"{state}\" r:id=\"rId{id}\"/>"));
        links.push_str(&relation(id, "worksheet", &format!("worksheets/sheet{id}.xml")));
        part(&format!("xl/worksheets/sheet{id}.xml"), &format!("<worksheet xmlns=\"{main}\">{body}</worksheet>"));
    }
    part(
        "xl/workbook.xml",
        &format!(
            "<workbook xmlns=\"{main}\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets>{list}</sheets></workbook>"
        ),
    );
    part("xl/_rels/workbook.xml.rels", &relations(&links));
    part(
        "xl/styles.xml",
        &format!(
            "<styleSheet xmlns=\"{main}\"><cellXfs count=\"3\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"20\"/></cellXfs></styleSheet>"
        ),
    );
    zip.finish().expect("a workbook").into_inner()
}

fn inline(cell: &str, value: &str) -> String {
    format!("<c r=\"{cell}\" t=\"inlineStr\"><is><t>{value}</t></is></c>")
}

pub fn sheet(second: &str) -> String {
    let heads: String =
        HEADS.trim().split(',').zip('A'..).map(|(head, letter)| inline(&format!("{letter}1"), head)).collect();
    let cells = ["HR-1", "Ana Vale", "R", "forearm-thumb-spica", "de-quervain"];
    let cells: String = cells.iter().zip('A'..).map(|(value, letter)| inline(&format!("{letter}2"), value)).collect();
    format!("<sheetData><row r=\"1\">{heads}</row><row r=\"2\">{cells}{second}</row></sheetData>")
}

/// 1 and 29 March 2027 as a spreadsheet counts days.
pub const DATES: &str = "<c r=\"F2\" s=\"1\"><v>46447</v></c><c r=\"G2\" s=\"1\"><v>46475</v></c>";

fn book(second: &str) -> List {
    let bytes = workbook(&[("Cases", "visible", &sheet(second))]);
    open("cases.xlsx", &bytes, Some(MAPPING)).unwrap_or_else(|faults| panic!("{}", text(&faults)))
}

#[test]
fn real_dates_of_a_workbook_are_read_and_guessed_ones_refused() {
    let list = book(DATES);
    assert_eq!(case(&list, 0).fitted.value.to_string(), "2027-03-01");
    assert_eq!(case(&list, 0).review.value.to_string(), "2027-03-29");
    let found = faults(&book(&DATES.replace("<c r=\"G2\" s=\"1\"><v>46475</v></c>", &inline("G2", "2/3/2027"))), 0);
    assert!(found.contains("`2/3/2027` can be read as more than one day"), "{found}");
    let found = faults(&book(&DATES.replace("G2\" s=\"1\"", "G2\"")), 0);
    assert!(found.contains("`46475` is a number where a date is wanted"), "{found}");
    // A spreadsheet makes a date of `3-1`; it can no longer be told what was meant.
    let found = faults(&book(&format!("{DATES}<c r=\"H2\" s=\"1\"><v>46447</v></c>")), 0);
    assert!(found.contains("holds a date here") && found.contains("cases.xlsx:2:"), "{found}");
}

#[test]
fn the_value_of_a_formula_is_taken_and_one_without_is_refused() {
    let good = DATES.replace("<v>46475</v>", "<f>F2+28</f><v>46475</v>");
    assert_eq!(case(&book(&good), 0).review.value.to_string(), "2027-03-29");
    for empty in ["<f>F2+28</f>", "<f>F2+28</f><v></v>", "<f>F2+28</f><v/>"] {
        let found = faults(&book(&DATES.replace("<v>46475</v>", empty)), 0);
        assert!(found.contains("a formula whose value was not saved"), "{empty}: {found}");
        assert!(!found.contains("lacks `review`"), "{found}");
    }
    let found = faults(
        &book(&DATES.replace("<c r=\"G2\" s=\"1\"><v>46475</v></c>", "<c r=\"G2\" t=\"e\"><v>#REF!</v></c>")),
        0,
    );
    assert!(found.contains("the error #REF!"), "{found}");
}

#[test]
fn merged_cells_and_hidden_sheets_are_named() {
    let merged = sheet(DATES) + "<mergeCells count=\"1\"><mergeCell ref=\"B2:C2\"/></mergeCells>";
    let found = refusal("cases.xlsx", &workbook(&[("Cases", "visible", &merged)]), MAPPING);
    assert!(found.contains("sheet `Cases`: the cells B2 to C2 are merged"), "{found}");
    // The only sheet that can be seen is read, whatever lies hidden beside it.
    let beside = workbook(&[
        ("Old", "hidden", "<sheetData/>"),
        ("Cases", "visible", &sheet(DATES)),
        ("Older", "veryHidden", "<sheetData/>"),
    ]);
    assert_eq!(open("cases.xlsx", &beside, Some(MAPPING)).map_or(0, |list| list.len()), 1);
    let found = refusal("cases.xlsx", &workbook(&[("Old", "hidden", &sheet(DATES))]), MAPPING);
    assert!(found.contains("has no sheet that can be seen"), "{found}");
    let two = workbook(&[("One", "visible", &sheet(DATES)), ("Two", "visible", &sheet(DATES))]);
    assert!(refusal("cases.xlsx", &two, MAPPING).contains("has several sheets: One, Two"));
    assert_eq!(refusal("cases.xlsx", &two, &format!("{MAPPING}sheet: Two\n")), "");
    assert!(refusal("cases.xlsx", &two, &format!("{MAPPING}sheet: Tow\n")).contains("write `Two`"));
}

#[test]
fn a_workbook_that_unpacks_to_a_heap_is_stopped_while_it_is_read() {
    let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    zip.start_file("xl/worksheets/sheet1.xml", SimpleFileOptions::default()).expect("a part");
    let block = vec![b' '; 1 << 20];
    for _ in 0..200 {
        zip.write_all(&block).expect("a block");
    }
    let bytes = zip.finish().expect("a workbook").into_inner();
    assert!(bytes.len() < 1 << 20, "it is small before it is unpacked");
    assert!(refusal("cases.xlsx", &bytes, MAPPING).contains("unpacks to more than 192 MB"));
    // Cells far apart cost no more than cells side by side.
    let far = sheet(&format!("{DATES}{}", inline("XFD2", "x")));
    assert!(
        refusal("cases.xlsx", &workbook(&[("Cases", "visible", &far)]), MAPPING)
            .contains("XFD2 has a value; more than 1000 columns")
    );
    for broken in [&b"PK\x03\x04 and nothing else"[..], b"no zip at all", b""] {
        let found = refusal("cases.xlsx", broken, MAPPING);
        assert!(found.contains("cannot be read as a workbook") || found.contains("is empty"), "{found}");
    }
}

#[test]
fn a_path_that_leads_nowhere_is_named() {
    let found =
        List::open(Path::new("nowhere/cases.csv"), None).err().map_or_else(String::new, |faults| plain(&faults));
    assert!(found.contains("nowhere/cases.csv cannot be read"), "{found}");
}
