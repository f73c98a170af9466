//! Files of `content/` to a library, with every fault of every file at once.

use std::collections::BTreeMap;
use std::str::FromStr;

use rayon::prelude::*;

use super::{
    Confirmation, Course, General, Handling, Library, NeedRule, Sign, Source, Spot, StepWeights, Structure, lint,
};
use crate::assets::Assets;
use crate::diag::{Code, Diagnostic, Findings, Outcome};
use crate::source::{At, FromNode, Limits, Node, Reader, SourceText, parse};
use crate::units::Misread;

impl Library {
    /// Loads and cross-checks all content.
    ///
    /// # Errors
    /// All faults of all files at once.
    pub fn load(assets: &Assets) -> Outcome<Self> {
        let mut findings = Findings::default();
        let mut files = BTreeMap::new();
        let mut load = Loading { assets, parsed: parsed(assets), findings: &mut findings, files: &mut files };
        let conditions = load.folder("conditions");
        let orthoses = load.folder("orthoses");
        let activities = load.folder("activities");
        let exercises = load.folder("exercises");
        let factors = load.folder("factors");
        let patterns = load.folder("wear");
        let shapes = load.folder("shapes");
        let motions = load.folder("motions");
        let handling: Vec<At<Handling>> = load.file("content/handling.yaml").unwrap_or_default();
        let spots: Vec<At<Spot>> = load.file("content/spots.yaml").unwrap_or_default();
        let signs: Vec<At<Sign>> = load.file("content/signs.yaml").unwrap_or_default();
        let structures: Vec<At<Structure>> = load.file("content/structures.yaml").unwrap_or_default();
        let courses: Vec<Course> = load.file("content/courses.yaml").unwrap_or_default();
        let sources: Vec<At<Source>> = load.file("content/sources.yaml").unwrap_or_default();
        let needs: Vec<At<NeedRule>> = load.file("content/needs.yaml").unwrap_or_default();
        let general: Option<General> = load.file("content/general.yaml");
        let steps: Option<StepWeights> = load.file("content/steps.yaml");
        let sign_order = signs.iter().map(|sign| sign.id.clone()).collect();
        let signs = load.unique("content/signs.yaml", signs, |sign| sign.id.clone());
        let structures = load.unique("content/structures.yaml", structures, |structure| structure.id.clone());
        let sources = load.unique("content/sources.yaml", sources, |source| source.id.clone());
        let handling = load.unique("content/handling.yaml", handling, |step| step.id.clone());
        let spots = load.unique("content/spots.yaml", spots, |spot| spot.id.clone());
        let confirmed: Vec<Confirmation> = load.file("content/confirmed.yaml").unwrap_or_default();
        let needs = load.unique("content/needs.yaml", needs, |need| need.id.clone());
        let (Some(general), Some(steps)) = (general, steps) else { return Err(findings) };
        let library = Self {
            conditions,
            orthoses,
            activities,
            exercises,
            factors,
            patterns,
            shapes,
            motions,
            handling,
            spots,
            steps,
            needs,
            signs,
            sign_order,
            structures,
            courses,
            sources,
            general,
            confirmed,
            files,
        };
        lint::references::check(&library, &mut findings);
        lint::courses::check(&library, &mut findings);
        lint::looks::check(&library, &mut findings);
        if findings.has_errors() { Err(findings) } else { Ok((library, findings)) }
    }
}

/// Every content file's tree. Reading them is most of the time that a single guide takes, so all processors read.
fn parsed(assets: &Assets) -> BTreeMap<String, Result<(SourceText, Node), Diagnostic>> {
    let paths: Vec<&str> = assets.below("content/").filter(|path| path.ends_with(".yaml")).collect();
    let read = |path: &&str| {
        let tree = assets.text(path).and_then(|source| {
            let node = parse(&source, Limits::CONTENT)?;
            Ok((source, node))
        });
        ((*path).to_owned(), tree)
    };
    paths.par_iter().map(read).collect::<Vec<_>>().into_iter().collect()
}

struct Loading<'a> {
    assets: &'a Assets,
    parsed: BTreeMap<String, Result<(SourceText, Node), Diagnostic>>,
    findings: &'a mut Findings,
    files: &'a mut BTreeMap<String, SourceText>,
}

impl Loading<'_> {
    fn file<T: FromNode>(&mut self, path: &str) -> Option<T> {
        // A file that is not there is reported by the assets.
        let tree = self.parsed.remove(path).unwrap_or_else(|| {
            let source = self.assets.text(path)?;
            let node = parse(&source, Limits::CONTENT)?;
            Ok((source, node))
        });
        match tree {
            Ok((source, node)) => {
                let mut reader = Reader::new(&source);
                let value = T::from_node(&node, &mut reader);
                self.findings.extend(reader.finish());
                self.files.insert(path.to_owned(), source);
                value
            }
            Err(diagnostic) => {
                if let Ok(source) = self.assets.text(path) {
                    self.files.insert(path.to_owned(), source);
                }
                self.findings.push(diagnostic);
                None
            }
        }
    }

    fn folder<I: FromStr<Err = Misread> + Ord, T: FromNode>(&mut self, folder: &str) -> BTreeMap<I, T> {
        let prefix = format!("content/{folder}/");
        let paths: Vec<String> = self.assets.below(&prefix).map(str::to_owned).collect();
        let mut all = BTreeMap::new();
        for path in paths {
            let Some(stem) = path[prefix.len()..].strip_suffix(".yaml") else {
                self.findings.push(
                    Diagnostic::outside(Code::CONTENT_RULE, format!("{path} is no content file"))
                        .help("name it after its id, with the ending `.yaml`"),
                );
                continue;
            };
            match stem.parse::<I>() {
                Ok(id) => {
                    if let Some(value) = self.file(&path) {
                        all.insert(id, value);
                    }
                }
                Err(misread) => {
                    let mut diagnostic = Diagnostic::outside(Code::CONTENT_RULE, format!("{path}: {}", misread.wrong));
                    diagnostic.help = misread.write.map(|write| format!("name the file with {write}"));
                    self.findings.push(diagnostic);
                }
            }
        }
        all
    }

    fn unique<K: Ord + std::fmt::Display, T>(
        &mut self,
        path: &str,
        list: Vec<At<T>>,
        key: impl Fn(&T) -> K,
    ) -> BTreeMap<K, T> {
        let mut map = BTreeMap::new();
        for item in list {
            let id = key(&item.value);
            let twice = format!("`{id}` stands here a second time");
            let span = item.span.clone();
            if map.insert(id, item.value).is_some() {
                let source = self.files.get(path).cloned().unwrap_or_else(|| SourceText::new(path, ""));
                let place = crate::source::Place { source, span };
                self.findings.push(Diagnostic::error(Code::CONTENT_RULE, place, twice));
            }
        }
        map
    }
}
