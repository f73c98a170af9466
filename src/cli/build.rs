//! `palmleaf build`.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use rayon::prelude::*;
use serde_json::{Value, json};

use super::Ended;
use super::args::BuildArgs;
use super::check::{keeping, workshop_of};
use super::terminal::{Terminal, ended};
use crate::case::{self, Case, CaseFile};
use crate::diag::{Code, Diagnostic, Findings, render};
use crate::output::naming::{self, NameBy};
use crate::output::store;
use crate::pipeline::Workshop;
use crate::source::SourceText;

/// The typesetter nests deeply; a worker's stack has room for it.
pub(super) const STACK: usize = 16 * 1024 * 1024;

pub fn run(args: &BuildArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    let jobs = jobs(args);
    let bar = terminal.progress(jobs.len());
    let pool = pool(args.threads);
    let taken = taken(&workshop, args, &jobs);
    let one = |(number, (path, language)): (usize, &(&Path, Option<&str>))| {
        let result = match &taken[number] {
            Some(findings) => Err(findings.clone()),
            None => job(&workshop, args, path, *language),
        };
        bar.inc(1);
        result
    };
    let results: Vec<Result<Written, Findings>> = match pool {
        Ok(pool) => pool.install(|| jobs.par_iter().enumerate().map(one).collect()),
        Err(_) => jobs.iter().enumerate().map(one).collect(),
    };
    bar.finish_and_clear();
    report(&jobs, &results, terminal)
}

/// Every case in every language asked for.
pub(super) fn jobs(args: &BuildArgs) -> Vec<(&Path, Option<&str>)> {
    let languages = args.papers.languages();
    args.cases.iter().flat_map(|case| languages.iter().map(|language| (case.as_path(), *language)).collect::<Vec<_>>()).collect()
}

/// Threads with room for the typesetter on their stacks.
pub(super) fn pool(threads: Option<u8>) -> Result<rayon::ThreadPool, rayon::ThreadPoolBuildError> {
    rayon::ThreadPoolBuilder::new().num_threads(threads.map_or(0, usize::from)).stack_size(STACK).build()
}

fn report(jobs: &[(&Path, Option<&str>)], results: &[Result<Written, Findings>], terminal: &Terminal) -> Ended {
    let mut worst = Ended::Well;
    let mut all: Vec<Value> = Vec::new();
    for ((path, _), result) in jobs.iter().zip(results) {
        match result {
            Ok((files, findings)) => {
                terminal.findings(findings);
                let files: Vec<String> = files.iter().map(|file| file.display().to_string()).collect();
                if terminal.is_json() {
                    all.push(
                        json!({"case": path.display().to_string(), "files": files, "findings": render::json(findings)}),
                    );
                } else {
                    files.iter().for_each(|file| terminal.say(file));
                }
            }
            Err(findings) => {
                worst = worst.max(ended(findings));
                terminal.findings(findings);
                if terminal.is_json() {
                    all.push(
                        json!({"case": path.display().to_string(), "files": [], "findings": render::json(findings)}),
                    );
                }
            }
        }
    }
    if terminal.is_json() {
        terminal.say_json(&json!(all));
    }
    worst
}

/// For each job the fault that an earlier one writes files of the same name, whichever would be finished first.
pub(super) fn taken(workshop: &Workshop, args: &BuildArgs, jobs: &[(&Path, Option<&str>)]) -> Vec<Option<Findings>> {
    // A single guide shares its name with none: its case is not read twice.
    if jobs.len() < 2 {
        return vec![None; jobs.len()];
    }
    let mut first: BTreeMap<String, &Path> = BTreeMap::new();
    jobs.iter()
        .map(|(path, language)| {
            // A case that cannot be read is reported by its own job.
            let (file, source) = open(workshop, args, path, *language).ok()?;
            let case = case::resolve(file, source, &workshop.library, &workshop.languages).ok()?;
            let stem = stem(&case, args, path);
            let Some(before) = first.get(&stem) else {
                first.insert(stem, path);
                return None;
            };
            let message = format!(
                "{} would overwrite the guide of {}: both are called `{stem}`",
                path.display(),
                before.display()
            );
            let help = "give each person a `reference` of their own, or name files with `--name-by-case`";
            Some(Diagnostic::outside(Code::OUTPUT_SAME_NAME, message).help(help).into())
        })
        .collect()
}

fn open(
    workshop: &Workshop,
    args: &BuildArgs,
    path: &Path,
    language: Option<&str>,
) -> Result<(CaseFile, SourceText), Findings> {
    let (mut file, source) = workshop.read(path)?;
    args.papers.instead(&mut file, &source, language)?;
    Ok((file, source))
}

fn stem(case: &Case<'_>, args: &BuildArgs, path: &Path) -> String {
    let by = if args.name_by_case { NameBy::CaseFile } else { NameBy::Reference };
    let own = path.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
    naming::stem(case, by, &own)
}

/// The files of a job that were written, and what is to be said about them.
type Written = (Vec<PathBuf>, Findings);

/// The files of a job by their names, and what is to be said about them.
pub(super) type Made = (Vec<(String, Vec<u8>)>, Findings);

fn job(workshop: &Workshop, args: &BuildArgs, path: &Path, language: Option<&str>) -> Result<Written, Findings> {
    let (files, findings) = make(workshop, args, path, language)?;
    Ok((store::write_all(&args.out, &files)?, findings))
}

/// The files of a job by their names, before any is written.
pub(super) fn make(
    workshop: &Workshop,
    args: &BuildArgs,
    path: &Path,
    language: Option<&str>,
) -> Result<Made, Findings> {
    let (file, source) = open(workshop, args, path, language)?;
    let name = path.display().to_string();
    args.papers.made(workshop, file, source, &name, |case| stem(case, args, path))
}
