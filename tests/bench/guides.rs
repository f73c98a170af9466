//! How long guides take, against the same Typst sources set with nothing else around them.
//!
//! `cargo bench` prints, from one run and side by side: the time of each guide over 200 cases on two threads, the floor
//! (a bare world with the same look, fonts and data, same options, same threads), and one `build` in a fresh process
//! against a bare embed in a fresh process. Ratios are what counts: machines differ.

#![allow(clippy::disallowed_methods, reason = "a bench takes times")]

use std::collections::HashMap;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, Instant};

use palmleaf::case;
use palmleaf::document::{self, SheetKind};
use palmleaf::pipeline::Workshop;
use palmleaf::source::SourceText;
use palmleaf::words::{self, Sheet};
use rayon::prelude::*;
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Features, Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

const CASES: usize = 200;
const THREADS: usize = 2;

fn root(inside: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(inside)
}

/// A bare embed: what anybody would write who sets this look from Rust.
struct Bare {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    sources: HashMap<FileId, Source>,
    main: FileId,
    data: FileId,
}

struct Desk<'b>(&'b Bare, Bytes);

fn id(path: &str) -> FileId {
    RootedPath::new(VirtualRoot::Project, VirtualPath::new(path).expect("a path")).intern()
}

fn files(folder: &str, ending: &str) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = std::fs::read_dir(root(folder))
        .expect("a folder")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.to_string_lossy().ends_with(ending))
        .collect();
    found.sort();
    found
}

impl Bare {
    fn new() -> Self {
        let fonts: Vec<Font> = files("content/fonts", ".ttf")
            .iter()
            .flat_map(|path| Font::iter(Bytes::new(std::fs::read(path).expect("a font"))))
            .collect();
        let sources = files("src/typeset/look", ".typ")
            .iter()
            .map(|path| {
                let id = id(&format!("/{}", path.file_name().expect("a name").to_string_lossy()));
                (id, Source::new(id, std::fs::read_to_string(path).expect("a look file")))
            })
            .collect();
        let features: Features = [Feature::A11yExtras].into_iter().collect();
        Self {
            library: LazyHash::new(Library::builder().with_features(features).build()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
            sources,
            main: id("/guide.typ"),
            data: id("/data.json"),
        }
    }

    fn pdf(&self, json: &str) -> Vec<u8> {
        let desk = Desk(self, Bytes::from_string(json.to_owned()));
        let document = typst::compile::<PagedDocument>(&desk).output.expect("pages");
        let options = PdfOptions {
            ident: Smart::Custom("bench".to_owned()),
            standards: PdfStandards::new(&[PdfStandard::Ua_1, PdfStandard::A_2a]).expect("standards"),
            ..PdfOptions::default()
        };
        let pdf = typst_pdf::pdf(&document, &options).expect("a PDF");
        typst::comemo::evict(0);
        pdf
    }
}

impl World for Desk<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.0.library
    }
    fn book(&self) -> &LazyHash<FontBook> {
        &self.0.book
    }
    fn main(&self) -> FileId {
        self.0.main
    }
    fn source(&self, id: FileId) -> FileResult<Source> {
        self.0.sources.get(&id).cloned().ok_or(FileError::AccessDenied)
    }
    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if id == self.0.data { Ok(self.1.clone()) } else { Err(FileError::AccessDenied) }
    }
    fn font(&self, index: usize) -> Option<Font> {
        self.0.fonts.get(index).cloned()
    }
    fn today(&self, _: Option<typst::foundations::Duration>) -> Option<Datetime> {
        None
    }
}

/// Two hundred cases that differ in dates, side, language and activities.
fn cases() -> Vec<String> {
    let languages = ["en", "es", "ar"];
    (0..CASES)
        .map(|number| {
            format!(
                "palmleaf: 1\nhand: {}\ncondition: de-quervain\northosis: forearm-thumb-spica\nfitted: 2027-{:02}-{:02}\nreview: 2027-{:02}-28\nlanguage: {}\nperson: {{name: \"Person {number}\"}}\nactivities: [open-jar, {}]\nclinic: {{telephone: \"01632 960 {number:03}\"}}\n",
                if number % 2 == 0 { "right" } else { "left" },
                1 + number % 10,
                1 + number % 27,
                2 + number % 10,
                languages[number % 3],
                ["turn-key", "lift-baby", "knit", "write-by-hand"][number % 4],
            )
        })
        .collect()
}

fn sheet(workshop: &Workshop, text: &str) -> Sheet {
    let source = SourceText::new("case.yaml", text);
    let file = case::read_text(&source).expect("a case");
    let planned = workshop.judge(file, source).expect("a case").planned.expect("a plan");
    words::localise(&workshop.words, &document::sheet(SheetKind::Guide, &planned, &[]).expect("a guide"))
        .expect("a sheet")
}

fn guide(workshop: &Workshop, text: &str) -> usize {
    let source = SourceText::new("case.yaml", text);
    let file = case::read_text(&source).expect("a case");
    let planned = workshop.judge(file, source).expect("a case").planned.expect("a plan");
    workshop.guide(&[planned]).expect("a guide").pdf.len()
}

fn median(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn timed(work: impl FnOnce()) -> Duration {
    let started = Instant::now();
    work();
    started.elapsed()
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    if let [_, mode, data, out] = args.as_slice()
        && mode == "bare"
    {
        let json = std::fs::read_to_string(data).expect("data");
        std::fs::write(out, Bare::new().pdf(&json)).expect("a file");
        return;
    }
    let workshop = Workshop::load(None).unwrap_or_else(|_| panic!("the content does not load"));
    let bare = Bare::new();
    let cases = cases();
    let json: Vec<String> = cases.iter().map(|case| sheet(&workshop, case).data.to_string()).collect();
    let pool = rayon::ThreadPoolBuilder::new().num_threads(THREADS).stack_size(16 << 20).build().expect("threads");
    // Warm both once, then in turn, so that a drifting machine hurts both alike.
    guide(&workshop, &cases[0]);
    bare.pdf(&json[0]);
    let (mut whole, mut floor) = (Vec::new(), Vec::new());
    for _ in 0..3 {
        let time = timed(|| pool.install(|| cases.par_iter().for_each(|case| assert!(guide(&workshop, case) > 1000))));
        whole.push(time.as_secs_f64() * 1000.0 / CASES as f64);
        let time = timed(|| pool.install(|| json.par_iter().for_each(|json| assert!(bare.pdf(json).len() > 1000))));
        floor.push(time.as_secs_f64() * 1000.0 / CASES as f64);
    }
    let (whole, floor) = (median(whole), median(floor));
    println!("{CASES} guides on {THREADS} threads, median of 3 runs in turn");
    println!("  palmleaf   {whole:8.2} ms a guide");
    println!("  floor      {floor:8.2} ms a guide");
    println!("  ratio      {:8.2}", whole / floor);

    let folder = tempfile::tempdir().expect("a folder");
    let (data, case) = (folder.path().join("data.json"), folder.path().join("case.yaml"));
    std::fs::write(&data, &json[0]).expect("data");
    std::fs::write(&case, &cases[0]).expect("a case");
    let this = std::env::current_exe().expect("this bench");
    let (mut built, mut embedded) = (Vec::new(), Vec::new());
    for _ in 0..9 {
        let time = timed(|| {
            let done = Command::new(env!("CARGO_BIN_EXE_palmleaf"))
                .arg("build")
                .arg(&case)
                .arg("--out")
                .arg(folder.path())
                .output();
            assert!(done.is_ok_and(|done| done.status.success()));
        });
        built.push(time.as_secs_f64() * 1000.0);
        let time = timed(|| {
            let done = Command::new(&this).arg("bare").arg(&data).arg(folder.path().join("bare.pdf")).output();
            assert!(done.is_ok_and(|done| done.status.success()));
        });
        embedded.push(time.as_secs_f64() * 1000.0);
    }
    let (built, embedded) = (median(built), median(embedded));
    println!("one guide in a fresh process, median of 9 in turn");
    println!("  palmleaf build  {built:8.1} ms");
    println!("  bare embed      {embedded:8.1} ms");
    println!("  ratio           {:8.2}", built / embedded);
    let size = std::fs::metadata(env!("CARGO_BIN_EXE_palmleaf")).map(|meta| meta.len()).unwrap_or(0);
    println!("binary {:.1} MB", size as f64 / 1e6);
}
