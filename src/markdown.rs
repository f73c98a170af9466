//! The Markdown that guide sections and therapists' notes may use, as a small tree.
//!
//! Allowed are paragraphs, bold, links, lists, and in section templates also headings and fenced blocks. Raw HTML,
//! images, code, tables and quotes are faults, not text that quietly disappears. A clinic's own section has headings and
//! no links: most of it is printed.

use std::ops::Range;

use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, Options, Parser, Tag, TagEnd};

/// A block of text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Block {
    Paragraph(Vec<Inline>),
    /// Level 1 to 6.
    Heading(u8, Vec<Inline>),
    List {
        ordered: bool,
        items: Vec<Vec<Block>>,
    },
    /// A fenced block: its info string and its text.
    Fence(String, String),
}

/// A piece of running text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Inline {
    Text(String),
    Strong(Vec<Inline>),
    Link { href: String, content: Vec<Inline> },
}

/// What is allowed besides paragraphs, bold, lists and links.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dialect {
    /// A therapist's note: nothing else.
    Note,
    /// A section template: headings and fenced blocks too.
    Section,
    /// A clinic's own section: headings too, and no links.
    Own,
}

/// Something that may not stand there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Bytes of the Markdown.
    pub range: Range<usize>,
    pub message: String,
}

/// Lists in lists deeper than this are refused.
const DEEPEST: usize = 4;

/// Parses Markdown.
///
/// # Errors
/// Every construct that the dialect does not have.
pub fn parse(text: &str, dialect: Dialect) -> Result<Vec<Block>, Vec<Fault>> {
    let mut builder = Builder { dialect, faults: Vec::new(), stack: vec![Open::Blocks(Vec::new())], depth: 0 };
    for (event, range) in Parser::new_ext(text, Options::empty()).into_offset_iter() {
        builder.event(event, range);
    }
    if !builder.faults.is_empty() {
        return Err(builder.faults);
    }
    match builder.stack.pop() {
        Some(Open::Blocks(blocks)) => Ok(blocks),
        _ => Ok(Vec::new()),
    }
}

enum Open {
    Blocks(Vec<Block>),
    Inlines(Vec<Inline>),
    Items { ordered: bool, items: Vec<Vec<Block>> },
    Fence(String, String),
}

struct Builder {
    dialect: Dialect,
    faults: Vec<Fault>,
    stack: Vec<Open>,
    depth: usize,
}

impl Builder {
    fn event(&mut self, event: Event<'_>, range: Range<usize>) {
        match event {
            Event::Start(tag) => self.start(tag, range),
            Event::End(tag) => self.end(tag),
            Event::Text(text) => self.text(&text),
            Event::SoftBreak => self.text(" "),
            Event::HardBreak => self.text("\n"),
            Event::Code(_) => self.fault(range, "code marks (backticks)"),
            Event::Html(_) | Event::InlineHtml(_) => self.fault(range, "HTML"),
            Event::Rule => self.fault(range, "a dividing line"),
            _ => self.fault(range, "this mark"),
        }
    }

    fn fault(&mut self, range: Range<usize>, what: &str) {
        self.faults.push(Fault { range, message: format!("{what} may not stand here") });
    }

    fn start(&mut self, tag: Tag<'_>, range: Range<usize>) {
        match tag {
            Tag::Paragraph | Tag::Strong => self.stack.push(Open::Inlines(Vec::new())),
            Tag::Heading { .. } => {
                if self.dialect == Dialect::Note {
                    self.fault(range, "a heading");
                }
                self.stack.push(Open::Inlines(Vec::new()));
            }
            Tag::List(first) => {
                self.depth += 1;
                if self.depth > DEEPEST {
                    self.fault(range, "a list this deep inside other lists");
                }
                self.stack.push(Open::Items { ordered: first.is_some(), items: Vec::new() });
            }
            Tag::Item => self.stack.push(Open::Blocks(Vec::new())),
            Tag::Link { dest_url, .. } => {
                if self.dialect == Dialect::Own {
                    self.fault(range.clone(), "a link, which nobody can follow on paper,");
                }
                let plain =
                    ["https://", "http://", "tel:", "mailto:"].iter().any(|scheme| dest_url.starts_with(scheme));
                if !plain || dest_url.chars().any(char::is_control) {
                    self.fault(range, "a link to anything but https:, http:, tel: or mailto:");
                }
                self.stack.push(Open::Fence(dest_url.to_string(), String::new()));
                self.stack.push(Open::Inlines(Vec::new()));
            }
            Tag::CodeBlock(kind) => {
                let info = match kind {
                    CodeBlockKind::Fenced(info) => info.to_string(),
                    CodeBlockKind::Indented => String::new(),
                };
                if self.dialect != Dialect::Section || info.is_empty() {
                    self.fault(range, "a code block");
                }
                self.stack.push(Open::Fence(info, String::new()));
            }
            Tag::Emphasis => {
                self.fault(range, "slanted text (single stars or underscores)");
                self.stack.push(Open::Inlines(Vec::new()));
            }
            Tag::Image { .. } => {
                self.fault(range, "an image");
                self.stack.push(Open::Inlines(Vec::new()));
            }
            Tag::BlockQuote(_) => {
                self.fault(range, "a quotation mark `>`");
                self.stack.push(Open::Blocks(Vec::new()));
            }
            _ => {
                self.fault(range, "this mark");
                self.stack.push(Open::Blocks(Vec::new()));
            }
        }
    }

    fn end(&mut self, tag: TagEnd) {
        let Some(open) = self.stack.pop() else { return };
        match (tag, open) {
            (TagEnd::Paragraph, Open::Inlines(inlines)) => self.block(Block::Paragraph(inlines)),
            (TagEnd::Heading(level), Open::Inlines(inlines)) => self.block(Block::Heading(number(level), inlines)),
            (TagEnd::Strong, Open::Inlines(inlines)) => self.inline(Inline::Strong(inlines)),
            (TagEnd::Link, Open::Inlines(content)) => {
                if let Some(Open::Fence(href, _)) = self.stack.pop() {
                    self.inline(Inline::Link { href, content });
                }
            }
            (TagEnd::List(_), Open::Items { ordered, items }) => {
                self.depth -= 1;
                self.block(Block::List { ordered, items });
            }
            (TagEnd::Item, Open::Blocks(blocks)) => {
                if let Some(Open::Items { items, .. }) = self.stack.last_mut() {
                    items.push(blocks);
                }
            }
            (TagEnd::CodeBlock, Open::Fence(info, text)) => self.block(Block::Fence(info, text)),
            _ => {}
        }
    }

    fn block(&mut self, block: Block) {
        if let Some(Open::Blocks(blocks)) = self.stack.last_mut() {
            blocks.push(block);
        }
    }

    fn inline(&mut self, inline: Inline) {
        match self.stack.last_mut() {
            Some(Open::Inlines(inlines)) => inlines.push(inline),
            // A tight list item holds its text without a paragraph.
            Some(Open::Blocks(blocks)) => match blocks.last_mut() {
                Some(Block::Paragraph(inlines)) => inlines.push(inline),
                _ => blocks.push(Block::Paragraph(vec![inline])),
            },
            _ => {}
        }
    }

    fn text(&mut self, text: &str) {
        if let Some(Open::Fence(_, held)) = self.stack.last_mut() {
            held.push_str(text);
            return;
        }
        let run = match self.stack.last_mut() {
            Some(Open::Inlines(inlines)) => Some(inlines),
            Some(Open::Blocks(blocks)) => match blocks.last_mut() {
                Some(Block::Paragraph(inlines)) => Some(inlines),
                _ => None,
            },
            _ => None,
        };
        match run.and_then(|inlines| inlines.last_mut()) {
            Some(Inline::Text(held)) => held.push_str(text),
            _ => self.inline(Inline::Text(text.to_owned())),
        }
    }
}

fn number(level: HeadingLevel) -> u8 {
    match level {
        HeadingLevel::H1 => 1,
        HeadingLevel::H2 => 2,
        HeadingLevel::H3 => 3,
        HeadingLevel::H4 => 4,
        HeadingLevel::H5 => 5,
        HeadingLevel::H6 => 6,
    }
}

/// Text with every character that Markdown could take for a mark escaped, so that it prints as it stands.
pub fn escape(text: &str) -> String {
    // Four spaces before a line would make it code.
    let begun = text.trim_start_matches([' ', '\n', '\r', '\t']);
    let mut escaped = String::with_capacity(text.len());
    if begun.len() < text.len() {
        escaped.push(' ');
    }
    for c in begun.chars() {
        match c {
            '\n' | '\r' | '\t' => escaped.push(' '),
            c if c.is_ascii_punctuation() => {
                escaped.push('\\');
                escaped.push(c);
            }
            c => escaped.push(c),
        }
    }
    escaped
}
