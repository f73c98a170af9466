//! `palmleaf batch merge`: the reports of shards as one, with nothing but the reports to go by.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use super::report::{Entry, Head, Report};
use super::{Ended, MergeArgs, Shard, merged, name, told};
use crate::cli::check::refused;
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::output::store;

/// Rows that a message names one by one.
const NAMED: usize = 20;

pub fn run(args: &MergeArgs, terminal: &Terminal) -> Ended {
    match merge(args, terminal) {
        Ok((report, files, findings)) => {
            terminal.findings(&findings);
            told(&report, &files, terminal)
        }
        Err(findings) => refused(&findings, terminal),
    }
}

fn merge(args: &MergeArgs, terminal: &Terminal) -> Result<(Report, Vec<PathBuf>, Findings), Findings> {
    let mut loaded = Vec::new();
    let mut findings = Findings::default();
    for path in &args.reports {
        match Report::load(path) {
            Ok(report) => loaded.push((path.as_path(), report)),
            Err(fault) => findings.push(fault),
        }
    }
    if findings.has_errors() {
        return Err(findings);
    }
    let report = joined(&loaded, &mut findings)?;
    let base = name(None);
    let files = [
        (format!("{base}.jsonl"), report.lines().into_bytes()),
        (format!("{base}.txt"), report.summary(usize::MAX).into_bytes()),
    ];
    let mut written = store::write_all(&args.out, &files)?;
    if let Some(target) = &args.merged {
        let folders: Vec<(PathBuf, &Report)> =
            loaded.iter().map(|(path, report)| (path.parent().unwrap_or(Path::new("")).to_owned(), report)).collect();
        written.extend(merged::merged(target, &folders, terminal)?);
    }
    Ok((report, written, findings))
}

/// One report out of several. Rows that were made twice alike are told as warnings.
fn joined(reports: &[(&Path, Report)], findings: &mut Findings) -> Result<Report, Findings> {
    let Some((first, one)) = reports.first() else { return Err(Findings::default()) };
    let whole = |head: &Head| Head { shard: None, ..head.clone() };
    let head = whole(&one.head);
    for (path, other) in &reports[1..] {
        if whole(&other.head) != head {
            let message = format!(
                "{} and {} are not of one list: rows, content or options differ",
                first.display(),
                path.display()
            );
            findings.push(
                Diagnostic::outside(Code::BATCH_REPORT, message)
                    .help("make all shards with the same list, content, clinic and options"),
            );
        }
    }
    let mut entries: BTreeMap<usize, (&Path, &Entry)> = BTreeMap::new();
    let (mut alike, mut unlike) = (Vec::new(), Vec::new());
    for (path, report) in reports {
        for (index, entry) in &report.entries {
            match entries.get(index) {
                None => {
                    entries.insert(*index, (path, entry));
                }
                Some((_, other)) if *other == entry => alike.push(entry.row),
                Some((before, _)) => {
                    unlike.push(entry.row);
                    let message = format!(
                        "row {}, id {}, was built twice, and not alike: {} and {}",
                        entry.row,
                        entry.id,
                        before.display(),
                        path.display()
                    );
                    if unlike.len() <= NAMED {
                        findings.push(
                            Diagnostic::outside(Code::BATCH_REPORT, message).help("keep the report of one of the two"),
                        );
                    }
                }
            }
        }
    }
    let absent: Vec<usize> = (1..=head.rows).filter(|row| !entries.contains_key(row)).collect();
    if !absent.is_empty() {
        let message = format!("{} of {} rows are in no report: {}", absent.len(), head.rows, some(&absent));
        let mut fault = Diagnostic::outside(Code::BATCH_REPORT, message);
        for shard in missing(reports) {
            fault = fault.note(format!("there is no report of part {shard}"));
        }
        findings.push(fault.help("make the shards that are missing, or go on with them by `--resume`"));
    }
    if findings.has_errors() {
        return Err(std::mem::take(findings));
    }
    if !alike.is_empty() {
        let message = format!("{} rows were built twice, alike: {}", alike.len(), some(&alike));
        findings.push(Diagnostic::outside(Code::BATCH_REPORT, message).as_warning());
    }
    let entries = entries.into_iter().map(|(index, (_, entry))| (index, entry.clone())).collect();
    Ok(Report { head, entries })
}

/// The parts that no report is of, where all reports divide the list alike.
fn missing(reports: &[(&Path, Report)]) -> Vec<Shard> {
    let parts: Vec<Shard> = reports.iter().filter_map(|(_, report)| report.head.shard.as_ref()?.parse().ok()).collect();
    let Some(of) = parts.first().map(|shard| shard.of).filter(|of| parts.iter().all(|shard| shard.of == *of)) else {
        return Vec::new();
    };
    (1..=of).map(|number| Shard { number, of }).filter(|shard| !parts.contains(shard)).take(NAMED).collect()
}

fn some(rows: &[usize]) -> String {
    let mut text = rows.iter().take(NAMED).map(ToString::to_string).collect::<Vec<_>>().join(", ");
    if rows.len() > NAMED {
        text.push_str(" and more");
    }
    text
}
