//! The rows made, one after the other on each thread, and what became of them noted at once.

use std::collections::{BTreeMap, HashMap};
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};

use super::report::{Entry, FileFacts, Head, Report, State, line, part};
use super::survey::{Row, Survey};
use super::{MakeArgs, merged, name, state};
use crate::batch::List;
use crate::cli::build::STACK;
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::output::naming::{self, NameBy};
use crate::output::room::Room;
use crate::pipeline::Workshop;

/// Makes the rows of a list, and gives the report and what else was written for the whole list.
///
/// # Errors
/// When nothing can be written any more: what was made stays, and the next run goes on from there.
pub fn work(
    workshop: &Workshop,
    list: &List,
    args: &MakeArgs,
    terminal: &Terminal,
) -> Result<(Report, Vec<PathBuf>), Findings> {
    let threads = args.threads.map_or(0, usize::from);
    let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).stack_size(STACK).build().map_err(|why| {
        Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("no threads can be begun: {why}"))
            .help("give fewer with `--threads`")
    })?;
    let survey = pool.install(|| Survey::of(workshop, list, args));
    let rows = survey.part(args.shard);
    let report_name = name(args.shard);
    let (room, journal) = Room::enter(&args.out, &report_name, args.resume)?;
    let before = if args.resume { earlier(args, &report_name, &journal) } else { HashMap::new() };
    let bar = terminal.progress(rows.len());
    let next = AtomicUsize::new(0);
    let done: Mutex<BTreeMap<usize, Entry>> = Mutex::default();
    let stopped: Mutex<Option<Findings>> = Mutex::default();
    // Each thread takes the next row when it has finished one. Rows are no tasks of the pool: a thread that waits for a
    // picture would begin another row meanwhile, on the same stack.
    pool.broadcast(|_| {
        while let Some(row) = rows.get(next.fetch_add(1, Ordering::Relaxed)) {
            if stopped.lock().unwrap_or_else(PoisonError::into_inner).is_some() {
                break;
            }
            let kept = before.get(&(row.index + 1)).filter(|entry| is_same(entry, row) && is_whole(entry, args));
            let entry = match kept {
                Some(entry) => Ok(entry.clone()),
                None => make(workshop, list, args, row, &room).and_then(|entry| {
                    room.note(&line(&entry))?;
                    Ok(entry)
                }),
            };
            match entry {
                Ok(entry) => {
                    done.lock().unwrap_or_else(PoisonError::into_inner).insert(entry.row, entry);
                }
                Err(findings) => {
                    stopped.lock().unwrap_or_else(PoisonError::into_inner).get_or_insert(findings);
                    break;
                }
            }
            bar.inc(1);
        }
    });
    bar.finish_and_clear();
    if let Some(findings) = stopped.into_inner().unwrap_or_else(PoisonError::into_inner) {
        return Err(findings.map(|diagnostic| diagnostic.note("what was made so far stays; go on with `--resume`")));
    }
    let head = Head {
        palmleaf: env!("CARGO_PKG_VERSION").to_owned(),
        list: args.list.as_ref().map(|list| list.display().to_string()).unwrap_or_default(),
        rows: survey.rows.len(),
        input: survey.input.clone(),
        shard: part(args.shard),
    };
    let report = Report { head, entries: done.into_inner().unwrap_or_else(PoisonError::into_inner) };
    let files = [
        (format!("{report_name}.jsonl"), report.lines().into_bytes()),
        (format!("{report_name}.txt"), report.summary(usize::MAX).into_bytes()),
    ];
    let mut written = room.write_all(&files)?;
    if let Some(target) = &args.merged {
        written.extend(merged::merged(target, &[(args.out.clone(), &report)], terminal)?);
    }
    room.leave();
    Ok((report, written))
}

/// What earlier runs have made: the report of one that ended, and the journal of one that was cut off.
fn earlier(args: &MakeArgs, name: &str, journal: &str) -> HashMap<usize, Entry> {
    let report = Report::load(&args.out.join(format!("{name}.jsonl"))).map(|report| report.entries).unwrap_or_default();
    let noted = journal.lines().filter_map(|line| serde_json::from_str::<Entry>(line).ok());
    report.into_values().chain(noted).map(|entry| (entry.row, entry)).collect()
}

fn is_same(entry: &Entry, row: &Row) -> bool {
    entry.state == State::Built
        && entry.id == row.id
        && entry.input == row.input
        && entry.place == row.place
        && !row.faults.has_errors()
}

fn is_whole(entry: &Entry, args: &MakeArgs) -> bool {
    entry.files.iter().all(|file| file.held(&args.out).is_some())
}

/// Makes one row.
///
/// # Errors
/// Only when nothing can be written: every other fault is the row's own, and stands in its entry.
fn make(workshop: &Workshop, list: &List, args: &MakeArgs, row: &Row, room: &Room) -> Result<Entry, Findings> {
    let entry = |state: State, files: Vec<FileFacts>, findings: &Findings| Entry {
        row: row.index + 1,
        id: row.id.clone(),
        place: row.place.clone(),
        state,
        input: row.input.clone(),
        files,
        findings: render::json(findings),
    };
    match papers(workshop, list, args, row) {
        Ok((files, findings)) => {
            room.write_all(&files)?;
            let facts = files.iter().map(|(name, bytes)| FileFacts::of(name, bytes)).collect();
            Ok(entry(State::Built, facts, &findings))
        }
        Err(findings) => Ok(entry(state(&findings), Vec::new(), &findings)),
    }
}

type Files = Vec<(String, Vec<u8>)>;

/// All files of a row, in every language asked for.
fn papers(workshop: &Workshop, list: &List, args: &MakeArgs, row: &Row) -> Result<(Files, Findings), Findings> {
    let draft = list.draft(row.index)?;
    let mut faults = row.faults.clone();
    faults.extend(draft.faults.clone());
    let read = workshop.read_source(draft.source.clone()).map_err(|findings| draft.at_origin(findings));
    if let Err(findings) = &read {
        faults.extend(findings.clone());
    }
    let (file, source) = match read {
        Ok(read) if !faults.has_errors() => read,
        _ => return Err(faults),
    };
    let mut files = Vec::new();
    let mut findings = Findings::default();
    for language in args.papers.languages() {
        let mut file = file.clone();
        let made = args.papers.instead(&mut file, &source, language).and_then(|()| {
            args.papers
                .made(workshop, file, source.clone(), &row.place, |case| naming::stem(case, NameBy::Row, &row.id))
        });
        match made {
            Ok((made, said)) => {
                files.extend(made);
                findings.extend(said);
            }
            Err(faults) => return Err(draft.at_origin(faults)),
        }
    }
    Ok((files, draft.at_origin(findings)))
}
