//! The same as a table, for those without a translator's tool (RFC 4180, UTF-8).

use csv::{ReaderBuilder, WriterBuilder};

use super::branches::Piece;
use super::package::Package;
use super::read::{Returned, Returns, variable};
use crate::diag::{Code, Diagnostic, Findings};
use crate::source::{Place, SourceText, Span};

/// The columns, all of which have to come back, in any order; others are left unread.
const COLUMNS: [&str; 4] = ["id", "english", "text", "state"];
/// Columns that only tell the translator something.
const TELLING: [&str; 3] = ["where", "sample", "length"];
/// Columns of a table with more than this are refused.
const MOST_COLUMNS: usize = 40;

/// A package as a table. It begins with a byte order mark, so that a spreadsheet reads it as UTF-8.
pub fn csv(package: &Package) -> String {
    let mut out = WriterBuilder::new().from_writer(Vec::new());
    let head: Vec<&str> = COLUMNS.into_iter().chain(TELLING).collect();
    // Writing to memory does not fail.
    let _never_fails = out.write_record(&head);
    for message in package.messages() {
        let notes = message.notes();
        let note = |wanted: &str| notes.iter().find(|(category, _)| *category == wanted).map_or("", |(_, text)| text);
        for unit in &message.units {
            let english = written(&unit.source);
            let text = unit.target.as_deref().map(written).unwrap_or_default();
            let told = TELLING.map(note);
            let row = [unit.id.as_str(), &english, &text, message.state.word(), told[0], told[1], told[2]];
            let _never_fails = out.write_record(row);
        }
    }
    let text = out.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default();
    format!("\u{FEFF}{text}")
}

fn written(pieces: &[Piece]) -> String {
    pieces
        .iter()
        .map(|piece| match piece {
            Piece::Text(text) => text.clone(),
            Piece::Code(name) => format!("{{ ${name} }}"),
        })
        .collect()
}

/// Reads such a table back.
///
/// # Errors
/// Other columns, rows of other lengths, codes that are none: all at once, with their lines.
pub fn from_csv(source: &SourceText, language: &str) -> Result<Returns, Findings> {
    let body = source.text().trim_start_matches('\u{FEFF}');
    let start = source.text().len() - body.len();
    let mut reader = ReaderBuilder::new().flexible(false).from_reader(body.as_bytes());
    let at = |byte: u64| {
        let from = start + usize::try_from(byte).unwrap_or(body.len()).min(body.len());
        let end = source.text()[from..].find('\n').map_or(source.text().len(), |length| from + length);
        Place { source: source.clone(), span: Span::new(from..end) }
    };
    let head: Vec<String> = match reader.headers() {
        Ok(head) => head.iter().map(|name| name.trim().to_owned()).collect(),
        Err(why) => return Err(Diagnostic::error(Code::EXCHANGE_BROKEN, at(0), why.to_string()).into()),
    };
    let missing: Vec<&str> = COLUMNS.into_iter().filter(|name| !head.iter().any(|found| found == name)).collect();
    if !missing.is_empty() || head.len() > MOST_COLUMNS {
        let message = match missing.is_empty() {
            true => format!("the table has {} columns", head.len()),
            false => format!("the table has no column {}", missing.join(", ")),
        };
        let help = match head.len() == 1 && head[0].contains(';') {
            true => "save it with commas between the columns, as UTF-8".to_owned(),
            false => format!("keep the first line as it went out: {}", COLUMNS.join(",")),
        };
        return Err(Diagnostic::error(Code::EXCHANGE_BROKEN, at(0), message).help(help).into());
    }
    let column = |name: &str| head.iter().position(|found| found == name).unwrap_or(0);
    let [id, english, text, state] = COLUMNS.map(column);
    let mut findings = Findings::default();
    let mut units = Vec::new();
    for row in reader.records() {
        let row = match row {
            Ok(row) => row,
            Err(why) => {
                let byte = why.position().map_or(0, csv::Position::byte);
                findings.push(Diagnostic::error(Code::EXCHANGE_BROKEN, at(byte), why.to_string()));
                break;
            }
        };
        let place = at(row.position().map_or(0, csv::Position::byte));
        let cell = |column: usize| row.get(column).unwrap_or_default();
        let read = |column: usize| pieces(cell(column));
        match (read(english), read(text)) {
            (Ok(source), Ok(target)) => units.push(Returned {
                id: cell(id).trim().to_owned(),
                source: Some(source),
                target: (!target.is_empty()).then_some(target),
                is_final: matches!(cell(state).trim(), "final" | "signed-off"),
                place,
            }),
            (Err(message), _) | (_, Err(message)) => {
                findings.push(Diagnostic::error(Code::EXCHANGE_BROKEN, place, message).help("a code is `{ $name }`"));
            }
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(Returns { language: language.to_owned(), units }) }
}

fn pieces(text: &str) -> Result<Vec<Piece>, String> {
    let mut pieces = Vec::new();
    let mut open = text;
    while let Some(brace) = open.find(['{', '}']) {
        let end = open[brace..].find('}').map(|length| brace + length + 1);
        let name = end.and_then(|end| variable(&open[brace..end]));
        let (Some(end), Some(name)) = (end, name) else {
            return Err(format!("`{}` is no code", open[brace..].chars().take(20).collect::<String>()));
        };
        if brace > 0 {
            pieces.push(Piece::Text(open[..brace].to_owned()));
        }
        pieces.push(Piece::Code(name));
        open = &open[end..];
    }
    if !open.is_empty() {
        pieces.push(Piece::Text(open.to_owned()));
    }
    Ok(pieces)
}
