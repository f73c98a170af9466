//! A bare embed: what anybody would write who sets this look from Rust, with nothing else around it.

use std::collections::HashMap;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Features, Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

/// Fonts, look and options, loaded once.
pub struct Bare {
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

/// The files of a folder that end so, in order.
pub fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("a folder")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.to_string_lossy().ends_with(ending))
        .collect();
    found.sort();
    found
}

fn inside(folder: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(folder)
}

impl Bare {
    pub fn new() -> Self {
        let fonts: Vec<Font> = [".otf", ".ttf"]
            .iter()
            .flat_map(|ending| files(&inside("content/fonts"), ending))
            .flat_map(|path| Font::iter(Bytes::new(std::fs::read(path).expect("a font"))))
            .collect();
        let sources = files(&inside("src/typeset/look"), ".typ")
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

    pub fn pdf(&self, json: String) -> Vec<u8> {
        let desk = Desk(self, Bytes::from_string(json));
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

    /// Sets the data in one file as the pages in another.
    pub fn set(&self, data: &Path, out: &Path) {
        let json = std::fs::read_to_string(data).expect("data");
        std::fs::write(out, self.pdf(json)).expect("a file");
    }

    /// Sets every file of data in a folder on so many threads, each of which takes the next when it has finished one.
    pub fn set_all(&self, folder: &Path, out: &Path, threads: usize) {
        let data = files(folder, ".json");
        let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).stack_size(16 << 20).build().expect("threads");
        let next = AtomicUsize::new(0);
        pool.broadcast(|_| {
            while let Some(path) = data.get(next.fetch_add(1, Ordering::Relaxed)) {
                self.set(path, &out.join(path.file_name().expect("a name")).with_extension("pdf"));
            }
        });
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
