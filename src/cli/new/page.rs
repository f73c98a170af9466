//! The answers as a case file with comments: what each line is, and what else it could say.

use std::collections::BTreeSet;

use serde_json::Value;

use super::ask::one_line;
use super::draft::{Draft, Protocol};
use super::names::Names;
use crate::body::{Finger, Side};
use crate::cli::describe::case_schema;
use crate::content::PrintSize;
use crate::pipeline::Workshop;

/// Columns of a comment.
const WIDE: usize = 96;

/// Writes the file. Every field is described by its own words in the schema.
pub fn page(draft: &Draft, workshop: &Workshop, names: &Names<'_>) -> String {
    let mut page = Page { out: String::new(), schema: case_schema(), written: BTreeSet::new() };
    page.note("A case for Palmleaf. `palmleaf check` reads it, `palmleaf build` makes the guide, `palmleaf watch` makes it anew on every save. A line that begins with # is a remark.");
    page.field("palmleaf", "1", &[]);
    person(&mut page, draft);
    page.field("hand", draft.hand.word(), &[choices(Side::ALL.iter().map(|side| side.word()))]);
    let what = names.plain(&format!("condition-{}-name", draft.condition));
    let rules = workshop.library.conditions.get(&draft.condition);
    page.field("condition", draft.condition.as_str(), &[what]);
    if let Some(finger) = draft.finger {
        page.field("finger", finger.word(), &[choices(Finger::ALL.iter().map(|finger| finger.word()))]);
    }
    if let Some(given) = &draft.protocol {
        protocol(&mut page, given);
    }
    let short = names.plain(&format!("orthosis-{}-short", draft.orthosis));
    let others: Vec<&str> = draft.also_fit.iter().map(|id| id.as_str()).collect();
    let also = if others.is_empty() { String::new() } else { format!("Also fit: {}.", others.join(", ")) };
    page.field("orthosis", draft.orthosis.as_str(), &[short, also]);
    let angles: Vec<(String, String)> = draft
        .angles
        .iter()
        .map(|angle| (format!("{{joint: {}, at: {}}}", angle.joint, angle.at), String::new()))
        .collect();
    page.list("angles", &angles, &[]);
    page.field("fitted", &draft.fitted.to_string(), &[]);
    page.field("review", &draft.review.to_string(), &[]);
    if let Some(phase) = &draft.begun {
        let waiting = rules.into_iter().flat_map(|rules| &rules.phases).map(|phase| phase.id.as_str()).skip(1);
        page.list(
            "begun",
            &[(format!("{{phase: {phase}, on: {}}}", draft.fitted), String::new())],
            &[choices(waiting)],
        );
    }
    page.field("language", draft.language.as_str(), &[choices(workshop.languages.tags())]);
    page.field("print", draft.print.word(), &[choices(PrintSize::ALL.iter().map(|size| size.word()))]);
    let activities: Vec<(String, String)> =
        draft.activities.iter().map(|id| (id.to_string(), names.plain(&format!("activity-{id}-name")))).collect();
    page.list("activities", &activities, &[]);
    let findings: Vec<(String, String)> = draft
        .findings
        .iter()
        .map(|one| (format!("{{joint: {}, motion: {}, angle: {}}}", one.joint, one.motion, one.angle), String::new()))
        .collect();
    page.list("findings", &findings, &[]);
    let because = |id| workshop.library.factors.get(id).map(|factor| factor.because.clone()).unwrap_or_default();
    let factors: Vec<(String, String)> = draft.factors.iter().map(|id| (id.to_string(), because(id))).collect();
    page.list("factors", &factors, &[]);
    clinic(&mut page, draft);
    page.rest();
    page.out
}

fn person(page: &mut Page, draft: &Draft) {
    let lines = [("name", &draft.name), ("reference", &draft.reference)];
    page.block("person", &lines.map(|(name, text)| (name, text.as_str())));
}

fn clinic(page: &mut Page, draft: &Draft) {
    if let Some(clinic) = &draft.clinic {
        page.block(
            "clinic",
            &[("name", &clinic.name), ("telephone", &clinic.telephone), ("emergency", &clinic.emergency)],
        );
    }
}

fn protocol(page: &mut Page, given: &Protocol) {
    page.heading("protocol", &[]);
    page.line(&format!("protocol:\n  name: {}", quoted(&given.name)));
    if !given.lengths.is_empty() {
        page.line("  lengths:");
        given.lengths.iter().for_each(|(phase, days)| page.line(&format!("    - {{phase: {phase}, lasts: {days}}}")));
    }
    if !given.angles.is_empty() {
        page.line("  angles:");
        given.angles.iter().for_each(|(joint, at)| page.line(&format!("    - {{joint: {joint}, at: {at}}}")));
    }
}

fn choices<'w>(words: impl IntoIterator<Item = &'w str>) -> String {
    format!("Choices: {}.", words.into_iter().collect::<Vec<_>>().join(", "))
}

/// A text as YAML takes it whatever it holds: a string of JSON is one of YAML (YAML 1.2, 1.2).
fn quoted(text: &str) -> String {
    Value::String(text.to_owned()).to_string()
}

struct Page {
    out: String,
    schema: Value,
    written: BTreeSet<String>,
}

impl Page {
    fn line(&mut self, text: &str) {
        self.out.push_str(text);
        self.out.push('\n');
    }

    /// A remark, on as many lines as it takes.
    fn note(&mut self, text: &str) {
        let text = one_line(text, usize::MAX);
        let mut line = String::from("#");
        for word in text.split(' ').filter(|word| !word.is_empty()) {
            if line.chars().count() + word.chars().count() > WIDE && line.len() > 1 {
                self.line(&std::mem::replace(&mut line, String::from("#")));
            }
            line.push(' ');
            line.push_str(word);
        }
        if line.len() > 1 {
            self.line(&line);
        }
    }

    fn about(&self, name: &str) -> String {
        let field = &self.schema["properties"][name];
        let own = field["description"].as_str();
        // What a record is, where its field has no words of its own.
        let named = field["$ref"].as_str().or_else(|| field["anyOf"][0]["$ref"].as_str());
        let record = named.and_then(|path| self.schema.pointer(path.trim_start_matches('#')));
        own.or_else(|| record?["description"].as_str()).unwrap_or_default().to_owned()
    }

    fn heading(&mut self, name: &str, notes: &[String]) {
        self.written.insert(name.to_owned());
        self.line("");
        let about = self.about(name);
        for note in std::iter::once(&about).chain(notes) {
            self.note(note);
        }
    }

    fn field(&mut self, name: &str, value: &str, notes: &[String]) {
        self.heading(name, notes);
        self.line(&format!("{name}: {value}"));
    }

    fn list(&mut self, name: &str, items: &[(String, String)], notes: &[String]) {
        if items.is_empty() {
            return;
        }
        self.heading(name, notes);
        self.line(&format!("{name}:"));
        for (item, about) in items {
            let about = if about.is_empty() { String::new() } else { format!("  # {}", one_line(about, WIDE)) };
            self.line(&format!("  - {item}{about}"));
        }
    }

    /// Lines of text under a name; empty ones are left out.
    fn block(&mut self, name: &str, lines: &[(&str, &str)]) {
        let given: Vec<&(&str, &str)> = lines.iter().filter(|(_, text)| !text.is_empty()).collect();
        if given.is_empty() {
            return;
        }
        self.heading(name, &[]);
        self.line(&format!("{name}:"));
        given.iter().for_each(|(field, text)| self.line(&format!("  {field}: {}", quoted(text))));
    }

    /// What a case may say besides.
    fn rest(&mut self) {
        let properties = self.schema["properties"].as_object().cloned().unwrap_or_default();
        self.line("");
        self.note("Not used here, and may be added:");
        for name in properties.keys().filter(|name| !self.written.contains(*name)).cloned().collect::<Vec<_>>() {
            let about = self.about(&name);
            self.note(&format!("- {name}: {about}"));
        }
    }
}
