//! `--merged`: one PDF for the printer out of the papers of a report.

use std::path::{Path, PathBuf};

use super::report::{Report, State};
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::output::record::RECORD;
use crate::output::growing::Growing;
use crate::printer::Joiner;

/// Joins the papers of reports, each with the folder its files stand in, in the order of the list. Records go into a
/// chart and to no patient: they stay out. Where one file would become larger than the format or printers allow, a
/// second one is begun.
///
/// # Errors
/// A file that is gone or was changed, or one that cannot be written.
pub fn merged(target: &Path, reports: &[(PathBuf, &Report)], terminal: &Terminal) -> Result<Vec<PathBuf>, Findings> {
    let mut leaves: Vec<(usize, PathBuf, &str, &super::report::FileFacts)> = Vec::new();
    for (folder, report) in reports {
        for entry in report.entries.values().filter(|entry| entry.state == State::Built) {
            let papers =
                entry.files.iter().filter(|file| file.name.ends_with(".pdf") && !file.name.starts_with(RECORD));
            leaves.extend(papers.map(|file| (entry.row, folder.clone(), entry.id.as_str(), file)));
        }
    }
    leaves.sort_by_key(|(row, ..)| *row);
    let fault = |what: &str, why: &dyn std::fmt::Display| {
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("{what} cannot go into {}: {why}", target.display()))
            .help("make it anew with `--resume`")
    };
    if leaves.is_empty() {
        return Err(Diagnostic::outside(
            Code::OUTPUT_NOTHING,
            format!("there is nothing to put into {}", target.display()),
        )
        .help("make sheets that have pages, such as `--sheets guide`")
        .into());
    }
    let title = |part: usize| {
        let name = target.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
        if part > 1 { format!("{name} {part}") } else { name }
    };
    let bar = terminal.progress(leaves.len());
    let mut written = Vec::new();
    let mut joiner: Option<Joiner<Growing>> = None;
    let close = |joiner: Joiner<Growing>, part: usize| -> Result<PathBuf, Findings> {
        let growing = joiner.finish(&title(part)).map_err(|why| fault("the end", &why))?;
        growing.finish().map_err(Findings::from)
    };
    for (_, folder, id, file) in leaves {
        if let Some(full) = joiner.take_if(|joiner| joiner.is_full()) {
            let part = written.len() + 1;
            written.push(close(full, part)?);
        }
        let open = match &mut joiner {
            Some(open) => open,
            none => {
                let growing = Growing::begin(&part_of(target, written.len() + 1))?;
                none.insert(Joiner::new(growing).map_err(|why| fault("the beginning", &why))?)
            }
        };
        let bytes =
            file.held(&folder).ok_or_else(|| fault(&file.name, &"it is gone, or is not the file that was made"))?;
        open.add(&bookmark(id, &file.name), bytes).map_err(|why| fault(&file.name, &why))?;
        bar.inc(1);
    }
    if let Some(last) = joiner {
        let part = written.len() + 1;
        written.push(close(last, part)?);
    }
    bar.finish_and_clear();
    Ok(written)
}

/// What the bookmark of a file says: its id first, then what tells it from the others of this id.
fn bookmark(id: &str, name: &str) -> String {
    let stem = name.trim_end_matches(".pdf");
    let (sheet, rest) = stem.split_once('-').unwrap_or((stem, ""));
    let rest = rest.strip_prefix(id).unwrap_or(rest).trim_start_matches('-');
    format!("{id}, {sheet}, {}", rest.replace('-', ", "))
}

/// The name of a part: `all.pdf`, then `all-2.pdf`.
fn part_of(target: &Path, part: usize) -> PathBuf {
    if part < 2 {
        return target.to_owned();
    }
    let stem = target.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
    target.with_file_name(format!("{stem}-{part}.pdf"))
}
