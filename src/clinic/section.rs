//! A clinic's own words: one section from a Markdown file, in one language.

use std::ops::Range;

use crate::case::hidden;
use crate::diag::{Code, Diagnostic, Findings};
use crate::markdown::{self, Block, Dialect, Inline};
use crate::source::{Place, SourceText, Span};

/// Characters of one section in one language: as many as a therapist's note may have.
const MOST: usize = 4000;
/// Characters of its title.
const MOST_TITLE: usize = 80;

/// The words of a section in one language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OwnWords {
    pub title: String,
    /// Paragraphs, lists and smaller headings.
    pub blocks: Vec<Block>,
}

/// Reads the Markdown of a section: a title, then paragraphs, bold, lists and smaller headings.
///
/// # Errors
/// Everything that may not stand in it, with its place.
pub fn read(source: &SourceText) -> Result<OwnWords, Findings> {
    let mut findings = Findings::default();
    let mut fault = |range: Range<usize>, wrong: String, help: &str| {
        let place = Place { source: source.clone(), span: Span::new(range) };
        findings.push(Diagnostic::error(Code::CLINIC_SECTION, place, wrong).help(help));
    };
    let text = source.text();
    let count = text.trim().chars().count();
    if count > MOST {
        fault(0..0, format!("the section has {count} characters"), &format!("write at most {MOST}"));
    }
    if let Some((range, wrong)) = hidden(text, true) {
        fault(range, wrong, "write the text without it");
    }
    let blocks = match markdown::parse(text, Dialect::Own) {
        Ok(blocks) => blocks,
        Err(faults) => {
            for found in faults {
                let line = text.get(found.range.clone()).and_then(|marked| marked.lines().next()).map_or(0, str::len);
                let range = found.range.start..found.range.start + line;
                fault(
                    range,
                    found.message,
                    "write paragraphs, **bold** and lists only; put a backslash before a mark that is meant as it stands",
                );
            }
            return Err(findings);
        }
    };
    let mut blocks = blocks.into_iter();
    let title = match blocks.next() {
        Some(Block::Heading(1, inlines)) => plain(&inlines),
        _ => String::new(),
    };
    let rest: Vec<Block> = blocks.collect();
    if title.trim().is_empty() {
        fault(0..0, "the section does not begin with its title".to_owned(), "begin with a line such as `# Parking`");
    } else if title.chars().count() > MOST_TITLE {
        fault(
            0..0,
            format!("the title has {} characters", title.chars().count()),
            &format!("write at most {MOST_TITLE}"),
        );
    }
    if rest.iter().any(|block| matches!(block, Block::Heading(1, _))) {
        fault(
            0..0,
            "the section has two titles".to_owned(),
            "make smaller headings of all but the first, such as `## By bus`",
        );
    }
    if !rest.iter().any(|block| !matches!(block, Block::Heading(..))) {
        fault(0..0, "the section says nothing below its title".to_owned(), "write a sentence, or take the section out");
    }
    if findings.has_errors() { Err(findings) } else { Ok(OwnWords { title, blocks: rest }) }
}

fn plain(inlines: &[Inline]) -> String {
    let text = |inline: &Inline| match inline {
        Inline::Text(text) => text.clone(),
        Inline::Strong(inner) | Inline::Link { content: inner, .. } => plain(inner),
    };
    inlines.iter().map(text).collect()
}
