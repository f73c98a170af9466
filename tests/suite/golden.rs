//! The plan and the words of the examples as text, reviewed by eye before they are blessed.
//!
//! A changed rule shows here as three lines. A failing run leaves the new text beside the old one with the ending
//! `.new`; `tests/run --bless NAME` takes it over.

use std::collections::BTreeSet;

use serde_json::Value;

use palmleaf::document::SheetKind;

use crate::support::{WORKSHOP, examples, file, files, hands, path, said, sheet};

/// The sheet as plain lines: every text in reading order.
fn lines(value: &Value, depth: usize, out: &mut String) {
    let pad = "  ".repeat(depth.min(6));
    match value {
        Value::String(text) => out.push_str(&format!("{pad}{text}\n")),
        Value::Number(number) => out.push_str(&format!("{pad}{number}\n")),
        Value::Array(items) => items.iter().for_each(|item| lines(item, depth, out)),
        // A picture stands here by what it shows; which drawing it is changes with every stroke of the pen.
        Value::Object(fields) if fields.get("picture").is_some_and(Value::is_string) => {
            out.push_str(&format!("{pad}[picture] {}\n", fields["alt"].as_str().unwrap_or_default()));
        }
        Value::Object(fields) => {
            if let (Some(from), Some(to), Some(state)) = (fields.get("from"), fields.get("to"), fields.get("state")) {
                let clock = |value: &Value| {
                    value.as_u64().map(|minutes| format!("{:02}:{:02}", minutes / 60, minutes % 60)).unwrap_or_default()
                };
                out.push_str(&format!("{pad}{}-{} {}\n", clock(from), clock(to), state.as_str().unwrap_or_default()));
                return;
            }
            if let Some(kind) = fields.get("t").and_then(Value::as_str) {
                out.push_str(&format!("{pad}[{kind}]\n"));
            }
            for (name, field) in fields {
                if name != "t" && !field.is_null() {
                    lines(field, depth + 1, out);
                }
            }
        }
        _ => {}
    }
}

fn golden(name: &str, got: &str, used: &mut BTreeSet<String>) -> Option<String> {
    used.insert(format!("{name}.txt"));
    let target = path(&format!("tests/golden/{name}.txt"));
    let held = std::fs::read_to_string(&target).unwrap_or_default();
    let fresh = target.with_extension("new");
    if held == got {
        let _gone = std::fs::remove_file(&fresh);
        return None;
    }
    std::fs::create_dir_all(target.parent().expect("a folder")).expect("a folder");
    std::fs::write(&fresh, got).expect("the new text");
    let first = held.lines().zip(got.lines()).enumerate().find(|(_, (old, new))| old != new);
    Some(match first {
        Some((number, (old, new))) => format!("{name}:{}: was «{old}», is «{new}»", number + 1),
        None => format!("{name}: {} lines, now {}", held.lines().count(), got.lines().count()),
    })
}

#[test]
fn plans_and_words_are_the_blessed_ones() {
    let mut used = BTreeSet::new();
    let mut changed = Vec::new();
    for example in examples() {
        let name = example.file_stem().expect("a name").to_string_lossy().into_owned();
        let case = file(&format!("examples/{name}.yaml"));
        let mut reasoning = String::new();
        let mut days = String::new();
        let hands = hands(&case);
        for (admitted, plan) in &hands {
            reasoning.push_str(&palmleaf::output::reasoning::text(admitted.case(), admitted.verdicts(), Some(plan)));
        }
        for day in hands.iter().flat_map(|(_, plan)| plan.days.iter().take(16)) {
            days.push_str(&format!("{} {}:", day.date, day.kind));
            for segment in &day.segments {
                days.push_str(&format!(
                    " {:02}:{:02} {}",
                    segment.span.from() / 60,
                    segment.span.from() % 60,
                    segment.state
                ));
            }
            days.push('\n');
        }
        changed.extend(golden(&format!("{name}-plan"), &format!("{reasoning}\nDays\n{days}"), &mut used));
        // Every case in three languages, and every language in two cases: `languages.rs` holds the facts of them all.
        for language in WORKSHOP.languages.tags() {
            if !["en", "es", "ar"].contains(&language)
                && !["right-thumb", "mallet-ring-finger"].contains(&name.as_str())
            {
                continue;
            }
            let kept: String =
                case.lines().filter(|line| !line.starts_with("language:")).map(|line| format!("{line}\n")).collect();
            let sheet = sheet(&format!("{kept}language: {language}\n"));
            let mut text = String::new();
            lines(&sheet.data["furniture"], 0, &mut text);
            lines(&sheet.data["parts"], 0, &mut text);
            changed.extend(golden(&format!("{name}-{language}"), &text, &mut used));
        }
    }
    // The papers beside the guide say little that the guide does not: two cases, one language.
    for name in ["right-thumb", "mallet-ring-finger"] {
        let hands = hands(&file(&format!("examples/{name}.yaml")).replace("language: ar", "language: en"));
        for &kind in SheetKind::ALL.iter().filter(|kind| !kind.is_guide()) {
            let Some(document) = palmleaf::document::sheet(kind, &hands[0], &hands[1..]) else { continue };
            let mut text = String::new();
            lines(&said(&document).data["parts"], 0, &mut text);
            changed.extend(golden(&format!("{name}-{kind}"), &text, &mut used));
        }
    }
    assert!(changed.is_empty(), "look at the .new files, then bless them by name:\n{}", changed.join("\n"));
    for held in files("tests/golden", ".txt") {
        let name = held.file_name().expect("a name").to_string_lossy().into_owned();
        assert!(used.contains(&name), "no test uses tests/golden/{name}");
    }
}
