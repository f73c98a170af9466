//! The cases that are measured, and what others are given to set the same sheets from.

use std::path::Path;

use palmleaf::case;
use palmleaf::document::SheetKind;
use palmleaf::pipeline::Workshop;
use palmleaf::source::SourceText;
use palmleaf::webpage;
use palmleaf::words::Sheet;
use serde_json::Value;

/// A case; no two in a row are alike in side, dates, language or activity.
pub fn case(number: usize) -> String {
    format!(
        "palmleaf: 1\nhand: {}\ncondition: hypermobile-thumb\northosis: thumb-mcp-ring\nfitted: 2027-{:02}-{:02}\nreview: 2027-{:02}-28\nlanguage: {}\nperson: {{name: \"Person {number}\", reference: \"P-{number:05}\"}}\nactivities: [{}]\nclinic: {{telephone: \"01632 960 {:03}\"}}\n",
        if number.is_multiple_of(2) { "right" } else { "left" },
        1 + number % 10,
        1 + number % 27,
        2 + number % 10,
        ["en", "es", "ar"][number % 3],
        ["turn-key", "open-jar", "knit", "write-by-hand"][number % 4],
        number % 1000,
    )
}

fn said(workshop: &Workshop, text: &str, kind: SheetKind) -> Sheet {
    let source = SourceText::new("case.yaml", text);
    let file = case::read_text(&source).expect("a case");
    let plans = workshop.judge(file, source).expect("a case").plans().expect("a plan");
    workshop.say(kind, &plans).expect("words").expect("a sheet")
}

/// The data of a sheet as it would be if it named no picture.
fn without_pictures(data: Value) -> Value {
    let is_picture = |value: &Value| value.get("picture").is_some_and(Value::is_string);
    match data {
        Value::Array(items) => items.into_iter().filter(|item| !is_picture(item)).map(without_pictures).collect(),
        Value::Object(fields) => {
            let kept = fields.into_iter().filter(|(_, value)| !is_picture(value));
            Value::Object(kept.map(|(name, value)| (name, without_pictures(value))).collect())
        }
        other => other,
    }
}

/// Makes the guide of a case as the program does, with its pictures or without any.
pub fn guide(case: &Path, pictures: bool, out: &Path) {
    let workshop = Workshop::load(None).unwrap_or_else(|_| panic!("the content does not load")).keep_pictures();
    let text = std::fs::read_to_string(case).expect("a case");
    let mut sheet = said(&workshop, &text, SheetKind::Guide);
    if !pictures {
        sheet.data = without_pictures(sheet.data);
        sheet.pictures.clear();
    }
    let pages = workshop.typesetter.set(&sheet, &workshop.album).unwrap_or_else(|_| panic!("no pages"));
    std::fs::write(out, pages.pdf().unwrap_or_else(|_| panic!("no PDF"))).expect("a file");
}

/// Writes of each case in a range what is asked for: `case` the file of the case, `data` what the look is set with,
/// pictures and all, `page` the guide as HTML.
pub fn lay(folder: &Path, range: std::ops::Range<usize>, what: &str) {
    let workshop = Workshop::load(None).unwrap_or_else(|_| panic!("the content does not load")).keep_pictures();
    for number in range {
        let case = case(number);
        let (text, ending) = match what {
            "case" => (case, "yaml"),
            "data" => {
                let sheet = said(&workshop, &case, SheetKind::Guide);
                let leaf = workshop.typesetter.leaf(&sheet, &workshop.album).unwrap_or_else(|_| panic!("no pictures"));
                (leaf.data.to_string(), "json")
            }
            "page" => {
                let sheet = said(&workshop, &case, SheetKind::Phone);
                (webpage::page(&sheet, &workshop.album).unwrap_or_else(|_| panic!("no pictures")), "html")
            }
            other => panic!("`{other}` is none of case, data, page"),
        };
        std::fs::write(folder.join(format!("{number:05}.{ending}")), text).expect("a file");
    }
}
