//! Diagnostics as text for people, as one line each, and as JSON.

use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use serde_json::{Value, json};

use super::{Diagnostic, Findings, Severity};
use crate::source::Place;

/// How diagnostics are shown.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Style {
    /// With the source line underlined.
    Full { colour: bool },
    /// `file:line:column: error[code]: …`; quotes no source line, since a line may hold a person's name.
    Short,
}

/// All findings as text, one after the other.
pub fn text(findings: &Findings, style: Style) -> String {
    let mut out = String::new();
    for diagnostic in findings.sorted() {
        match style {
            Style::Full { colour } => full(diagnostic, colour, &mut out),
            Style::Short => short(diagnostic, &mut out),
        }
        out.push('\n');
    }
    out
}

/// All findings as a JSON array.
pub fn json(findings: &Findings) -> Value {
    findings
        .sorted()
        .iter()
        .map(|diagnostic| {
            let place = diagnostic.primary.as_ref().map(|label| {
                let (line, column) = label.place.line_and_column();
                json!({"file": label.place.source.name(), "line": line, "column": column, "label": label.text})
            });
            json!({
                "severity": severity(diagnostic.severity),
                "code": diagnostic.code.name(),
                "message": diagnostic.message,
                "place": place,
                "notes": diagnostic.notes,
                "help": diagnostic.help,
            })
        })
        .collect()
}

fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => "error",
        Severity::Warning => "warning",
    }
}

fn short(diagnostic: &Diagnostic, out: &mut String) {
    if let Some(label) = &diagnostic.primary {
        let (line, column) = label.place.line_and_column();
        out.push_str(&format!("{}:{line}:{column}: ", visible(label.place.source.name())));
    }
    out.push_str(&format!(
        "{}[{}]: {}",
        severity(diagnostic.severity),
        diagnostic.code.name(),
        visible(&diagnostic.message)
    ));
    if let Some(help) = &diagnostic.help {
        out.push_str(&format!("; {}", visible(help)));
    }
}

fn full(diagnostic: &Diagnostic, colour: bool, out: &mut String) {
    let level = match diagnostic.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
    };
    let message = visible(&diagnostic.message);
    let title = level.primary_title(message).id(diagnostic.code.name());
    let mut elements: Vec<annotate_snippets::Element<'_>> = Vec::new();
    if let Some(primary) = &diagnostic.primary {
        let here = diagnostic.more.iter().filter(|label| label.place.source == primary.place.source);
        let elsewhere: Vec<_> =
            diagnostic.more.iter().filter(|label| label.place.source != primary.place.source).collect();
        let mut snippet = Snippet::source(primary.place.source.text())
            .line_start(primary.place.source.first_line())
            .path(primary.place.source.name())
            .annotation(AnnotationKind::Primary.span(range(&primary.place)).label(visible(&primary.text)));
        for label in here {
            snippet = snippet.annotation(AnnotationKind::Context.span(range(&label.place)).label(visible(&label.text)));
        }
        elements.push(snippet.into());
        for label in elsewhere {
            elements.push(
                Snippet::source(label.place.source.text())
                    .line_start(label.place.source.first_line())
                    .path(label.place.source.name())
                    .annotation(AnnotationKind::Context.span(range(&label.place)).label(visible(&label.text)))
                    .into(),
            );
        }
    }
    for note in &diagnostic.notes {
        elements.push(Level::NOTE.message(visible(note)).into());
    }
    if let Some(help) = &diagnostic.help {
        elements.push(Level::HELP.message(visible(help)).into());
    }
    let group: Group<'_> = title.elements(elements);
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    out.push_str(&renderer.render(&[group]));
    out.push('\n');
}

/// The span on character boundaries and inside the text: the renderer panics on any other.
fn range(place: &Place) -> std::ops::Range<usize> {
    let text = place.source.text();
    let snap = |mut at: usize| {
        at = at.min(text.len());
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        at
    };
    let start = snap(place.span.start);
    let line_end = text[start..].find('\n').map_or(text.len(), |at| start + at);
    start..snap(place.span.end).clamp(start, line_end.max(start))
}

/// Control and direction-changing characters as their code points, so that a message cannot move the cursor.
pub fn visible(text: &str) -> String {
    let mut shown = String::with_capacity(text.len());
    for c in text.chars() {
        let hidden =
            matches!(c, '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{2069}' | '\u{FEFF}');
        if (c.is_control() && c != '\n') || hidden {
            shown.push_str(&format!("<U+{:04X}>", u32::from(c)));
        } else {
            shown.push(c);
        }
    }
    shown
}
