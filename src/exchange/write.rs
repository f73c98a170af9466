//! XLIFF 2.1 (OASIS standard, 13 February 2018): a unit for each sentence, its variables as codes.

use std::io;

use quick_xml::Writer;
use quick_xml::events::{BytesDecl, BytesEnd, BytesStart, BytesText, Event};

use super::branches::Piece;
use super::codes::{self, Code};
use super::package::{Package, Packed, Unit};
use crate::language::WordState;

const NAMESPACE: &str = "urn:oasis:names:tc:xliff:document:2.0";

/// How the standard calls a state (clause 4.3.1.19, `state`): a sentence that has to be translated again is `initial`.
const fn state(state: WordState, translated: bool) -> &'static str {
    match (state, translated) {
        (_, false) | (WordState::Outdated, _) => "initial",
        (WordState::Drafted, _) => "translated",
        (WordState::SignedOff | WordState::Original, _) => "final",
    }
}

/// A package as XLIFF.
pub fn xliff(package: &Package) -> String {
    let mut out = Out(Writer::new(Vec::new()));
    // Writing to memory does not fail.
    let _never_fails = out.document(package);
    String::from_utf8(out.0.into_inner()).unwrap_or_default()
}

struct Out(Writer<Vec<u8>>);

impl Out {
    fn document(&mut self, package: &Package) -> io::Result<()> {
        self.0.write_event(Event::Decl(BytesDecl::new("1.0", Some("UTF-8"), None)))?;
        self.line(0)?;
        let attributes = [
            ("xmlns", NAMESPACE),
            ("version", "2.1"),
            ("srcLang", package.from.as_str()),
            ("trgLang", package.language.as_str()),
            ("xml:space", "preserve"),
        ];
        self.open("xliff", &attributes)?;
        for (area, messages) in &package.areas {
            self.line(1)?;
            self.open("file", &[("id", area)])?;
            for message in messages {
                self.message(message)?;
            }
            self.line(1)?;
            self.close("file")?;
        }
        self.line(0)?;
        self.close("xliff")?;
        self.line(0)
    }

    fn message(&mut self, message: &Packed) -> io::Result<()> {
        let grouped = message.units.len() > 1;
        if grouped {
            self.line(2)?;
            self.open("group", &[("id", &message.id)])?;
            self.notes(3, &message.notes())?;
        }
        for unit in &message.units {
            let notes = if grouped { Vec::new() } else { message.notes() };
            self.unit(unit, state(message.state, unit.target.is_some()), &notes)?;
        }
        if grouped {
            self.line(2)?;
            self.close("group")?;
        }
        Ok(())
    }

    fn unit(&mut self, unit: &Unit, state: &str, notes: &[(&str, String)]) -> io::Result<()> {
        self.line(3)?;
        self.open("unit", &[("id", &unit.id)])?;
        self.notes(4, notes)?;
        let source = codes::of_source(&unit.source);
        let target = unit.target.as_ref().map(|pieces| codes::of_target(&source, pieces));
        let mut data: Vec<&Code> = source.iter().chain(target.iter().flatten()).collect();
        data.sort_by_key(|code| code.number);
        data.dedup();
        if !data.is_empty() {
            self.line(4)?;
            self.open("originalData", &[])?;
            for code in data {
                self.open("data", &[("id", &format!("d{}", code.number))])?;
                self.text(&fluent(code))?;
                self.close("data")?;
            }
            self.close("originalData")?;
        }
        self.line(4)?;
        self.open("segment", &[("state", state)])?;
        self.open("source", &[])?;
        self.pieces(&unit.source, &source)?;
        self.close("source")?;
        if let (Some(pieces), Some(codes)) = (&unit.target, &target) {
            self.open("target", &[])?;
            self.pieces(pieces, codes)?;
            self.close("target")?;
        }
        self.close("segment")?;
        self.line(3)?;
        self.close("unit")
    }

    fn notes(&mut self, depth: usize, notes: &[(&str, String)]) -> io::Result<()> {
        if notes.is_empty() {
            return Ok(());
        }
        self.line(depth)?;
        self.open("notes", &[])?;
        for (category, text) in notes {
            self.open("note", &[("category", category)])?;
            self.text(text)?;
            self.close("note")?;
        }
        self.close("notes")
    }

    fn pieces(&mut self, pieces: &[Piece], codes: &[Code]) -> io::Result<()> {
        let mut codes = codes.iter();
        for piece in pieces {
            match piece {
                Piece::Text(text) => self.text(text)?,
                Piece::Code(_) => {
                    let Some(code) = codes.next() else { continue };
                    let (id, data, shown) = (code.number.to_string(), format!("d{}", code.number), fluent(code));
                    let attributes = [
                        ("id", id.as_str()),
                        ("dataRef", data.as_str()),
                        ("equiv", code.variable.as_str()),
                        ("disp", shown.as_str()),
                        ("canDelete", "no"),
                    ];
                    let ph = BytesStart::new("ph").with_attributes(attributes);
                    self.0.write_event(Event::Empty(ph))?;
                }
            }
        }
        Ok(())
    }

    fn open(&mut self, name: &str, attributes: &[(&str, &str)]) -> io::Result<()> {
        self.0.write_event(Event::Start(BytesStart::new(name).with_attributes(attributes.iter().copied())))
    }

    fn close(&mut self, name: &str) -> io::Result<()> {
        self.0.write_event(Event::End(BytesEnd::new(name)))
    }

    fn text(&mut self, text: &str) -> io::Result<()> {
        self.0.write_event(Event::Text(BytesText::new(text)))
    }

    fn line(&mut self, depth: usize) -> io::Result<()> {
        self.text(&format!("\n{}", "  ".repeat(depth)))
    }
}

fn fluent(code: &Code) -> String {
    format!("{{ ${} }}", code.variable)
}

impl Packed {
    /// What a translator is told: category and text.
    pub fn notes(&self) -> Vec<(&'static str, String)> {
        let mut notes = Vec::new();
        if !self.hint.sheets.is_empty() {
            notes.push(("where", format!("Said on: {}.", self.hint.sheets.join(", "))));
        }
        notes.extend(self.hint.sample.iter().map(|sample| ("sample", sample.clone())));
        notes.extend(
            self.room.map(|room| ("length", format!("At most {room} characters: it stands in a narrow place."))),
        );
        if self.state == WordState::Outdated {
            notes.push(("state", "The English was changed since this was written.".to_owned()));
        }
        notes
    }
}
