//! The typesetter's whole world: the look, the fonts, and the data of one sheet.

use std::cell::Cell;
use std::collections::HashMap;
use std::sync::LazyLock;
use std::sync::atomic::{AtomicUsize, Ordering};

use serde_json::Value;
use typst::diag::{FileError, FileResult, SourceDiagnostic, SourceResult};
use typst::engine::Engine;
use typst::foundations::{Bytes, Content, Datetime, Duration, Output, StyleChain, Target};
use typst::introspection::Introspector;
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Features, Library, LibraryExt, World, WorldExt};
use typst_layout::PagedDocument;

use super::binding::{Binding, Leaf, Look as Entry};
use super::illustrate::illustrated;
use super::{Pages, glyphs, measure};
use crate::assets::{Assets, carried};
use crate::diag::{Code, Diagnostic};
use crate::picture::album::Album;
use crate::words::Sheet;

/// Where the look lies in what the program carries.
const LOOKS: &str = "src/typeset/look/";

/// Rounds of the typesetter, two for each document, that its cache may go without using a result before it is dropped. What
/// two people's sheets say alike is worked out once that way: a guide in a row of many takes two fifths of the time that it
/// takes alone. What is kept grows with the number, about 15 MB for each document, and twice the number gains nothing that
/// can be measured; without forgetting, memory would grow with every case.
const CACHE_AGE: usize = 16;

/// Documents that are being set at this moment. The cache belongs to the process, and who forgets, forgets for all: what
/// the others have worked out for theirs has to outlive this one's rounds, or they work it out twice. On two threads that
/// costs a seventh of the time.
static ON_THE_DESKS: AtomicUsize = AtomicUsize::new(0);

thread_local! {
    /// Rounds of the document that this thread is setting.
    static ROUNDS: Cell<usize> = const { Cell::new(0) };
}

static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| {
    // Row headers and header cells of tables are behind this feature.
    let features: Features = [Feature::A11yExtras].into_iter().collect();
    LazyHash::new(Library::builder().with_features(features).build())
});

/// File ids are 16 bits wide and kept for the life of the process: each of these is made once and used for every sheet.
static GUIDE: LazyLock<Option<FileId>> = LazyLock::new(|| id("/guide.typ"));
static CHART: LazyLock<Option<FileId>> = LazyLock::new(|| id("/chart.typ"));
static RECORD: LazyLock<Option<FileId>> = LazyLock::new(|| id("/record.typ"));
static DECK: LazyLock<Option<FileId>> = LazyLock::new(|| id("/deck.typ"));
static QUIZ: LazyLock<Option<FileId>> = LazyLock::new(|| id("/quiz.typ"));
static PICTURES: LazyLock<Option<FileId>> = LazyLock::new(|| id("/pictures.typ"));
static GALLERY: LazyLock<Option<FileId>> = LazyLock::new(|| id("/gallery.typ"));
static BOOKLET: LazyLock<Option<FileId>> = LazyLock::new(|| id("/booklet.typ"));
static BESIDE: LazyLock<Option<FileId>> = LazyLock::new(|| id("/beside.typ"));
static DATA: LazyLock<Option<FileId>> = LazyLock::new(|| id("/data.json"));
static LOGO_SVG: LazyLock<Option<FileId>> = LazyLock::new(|| id("/logo.svg"));
static LOGO_PNG: LazyLock<Option<FileId>> = LazyLock::new(|| id("/logo.png"));
static LOOK: LazyLock<HashMap<FileId, Source>> = LazyLock::new(|| {
    carried::below(LOOKS)
        .filter_map(|(path, file)| {
            let id = id(&path[LOOKS.len() - 1..])?;
            let text = std::str::from_utf8(file.bytes()).ok()?;
            Some((id, Source::new(id, text.to_owned())))
        })
        .collect()
});

fn id(path: &str) -> Option<FileId> {
    Some(RootedPath::new(VirtualRoot::Project, VirtualPath::new(path).ok()?).intern())
}

/// Fonts loaded once, ready to set any number of sheets on any number of threads.
pub struct Typesetter {
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
}

impl Typesetter {
    /// Loads the fonts of the content.
    ///
    /// # Errors
    /// When there is none, or one is no font.
    pub fn load(assets: &Assets) -> Result<Self, Diagnostic> {
        let mut fonts = Vec::new();
        let paths = assets.below("content/fonts/").filter(|path| path.ends_with(".ttf") || path.ends_with(".otf"));
        for path in paths {
            let Some(bytes) = assets.bytes(path) else { continue };
            let before = fonts.len();
            match bytes {
                std::borrow::Cow::Borrowed(bytes) => fonts.extend(Font::iter(Bytes::new(bytes))),
                std::borrow::Cow::Owned(bytes) => fonts.extend(Font::iter(Bytes::new(bytes))),
            }
            if fonts.len() == before {
                return Err(Diagnostic::outside(Code::TYPESET_FAILED, format!("{path} is no font")));
            }
        }
        if fonts.is_empty() {
            return Err(Diagnostic::outside(Code::TYPESET_FAILED, "there is no font in content/fonts"));
        }
        Ok(Self { book: LazyHash::new(FontBook::from_fonts(&fonts)), fonts })
    }

    /// The first character of a text that none of the families can draw.
    pub fn undrawn(&self, text: &str, families: &[String]) -> Option<char> {
        glyphs::undrawn(text, &glyphs::of(&self.fonts, families))
    }

    /// How wide a line is in these families, of the size of its letters.
    pub fn width(&self, text: &str, families: &[String], bold: bool) -> f64 {
        measure::width(text, &self.fonts, families, bold)
    }

    /// Sets a sheet.
    ///
    /// # Errors
    /// A character without a glyph, or any warning or error of the typesetter.
    pub fn set(&self, sheet: &Sheet, album: &Album) -> Result<Pages, Diagnostic> {
        let logo = sheet.logo.as_ref().map_or(&[][..], |logo| logo.bytes.as_slice());
        self.set_with(*GUIDE, &self.illustrated(sheet, album)?, logo)
    }

    /// Sets a chart.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn set_chart(&self, chart: &Value) -> Result<Pages, Diagnostic> {
        self.set_with(*CHART, chart, &[])
    }

    /// Sets a record.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn set_record(&self, record: &Value) -> Result<Pages, Diagnostic> {
        self.set_with(*RECORD, record, &[])
    }

    /// Sets study cards, fronts and backs by turns.
    ///
    /// # Errors
    /// As [`Self::set`]; also when a text is too long for its card.
    pub fn set_deck(&self, deck: &Value) -> Result<Pages, Diagnostic> {
        self.set_with(*DECK, deck, &[])
    }

    /// Sets questions on cases, or the key to them.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn set_quiz(&self, quiz: &Value) -> Result<Pages, Diagnostic> {
        self.set_with(*QUIZ, quiz, &[])
    }

    /// Sets pictures: each on a page of its own size, or with captions on sheets.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn set_pictures(&self, pictures: &Value) -> Result<Pages, Diagnostic> {
        self.set_with(*PICTURES, pictures, &[])
    }

    /// Sets pictures with their captions as a sheet of its own; `logo` is the clinic's, where there is one.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn set_gallery(&self, gallery: &Value, logo: &[u8]) -> Result<Pages, Diagnostic> {
        self.set_with(*GALLERY, gallery, logo)
    }

    /// A hash of all that pages are made with besides their data: the look, the fonts, and the versions of this program
    /// and of every library. Another build of the same version makes the same pages.
    pub fn engine(&self) -> String {
        /// Raised with every change in Rust that changes a page and none of the rest.
        const ENGINE: &str = "1";
        let mut hash = blake3::Hasher::new();
        hash.update(ENGINE.as_bytes()).update(env!("PALMLEAF_LOCK").as_bytes());
        let mut look: Vec<(&str, &str)> =
            LOOK.iter().map(|(id, source)| (id.vpath().get_with_slash(), source.text())).collect();
        look.sort_unstable();
        for (name, text) in look {
            hash.update(&(name.len() as u64).to_le_bytes()).update(name.as_bytes());
            hash.update(&(text.len() as u64).to_le_bytes()).update(text.as_bytes());
        }
        for font in &self.fonts {
            hash.update(&(font.data().len() as u64).to_le_bytes()).update(font.data());
        }
        hash.finalize().to_hex().to_string()
    }

    /// The data of a sheet with every picture in it.
    fn illustrated(&self, sheet: &Sheet, album: &Album) -> Result<Value, Diagnostic> {
        let families = families(&sheet.data);
        illustrated(sheet, album, &|text, bold| self.width(text, &families, bold))
    }

    /// A sheet of a case, ready to be bound with others.
    ///
    /// # Errors
    /// A picture that cannot be drawn.
    pub fn leaf(&self, sheet: &Sheet, album: &Album) -> Result<Leaf, Diagnostic> {
        let logo = sheet.logo.as_ref();
        let logo = logo.map(|logo| (format!("/logo.{}", logo.kind.word()), Bytes::new(logo.bytes.clone())));
        Ok(Leaf { look: Entry::Sheet, data: self.illustrated(sheet, album)?, logo })
    }

    /// Sets sheets as one document behind a cover, all in its direction of reading.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn bind(&self, mut cover: Value, mut leaves: Vec<Leaf>) -> Result<Pages, Diagnostic> {
        let spine = if cover["meta"]["dir"] == "rtl" { "right" } else { "left" };
        cover["sheets"] = leaves.len().into();
        for data in std::iter::once(&mut cover).chain(leaves.iter_mut().map(|leaf| &mut leaf.data)) {
            data["meta"]["bound"] = spine.into();
            self.drawable(data)?;
        }
        self.compile(*BOOKLET, &cover, &[], &leaves)
    }

    /// Sets a sheet and the same one in another language beside each other, on a page in the direction of the first.
    ///
    /// # Errors
    /// As [`Self::set`].
    pub fn set_beside(&self, mut page: Value, [mut first, mut second]: [Leaf; 2]) -> Result<Pages, Diagnostic> {
        let fonts = [&first, &second].map(|leaf| families(&leaf.data));
        let lent = |to: usize, from: usize| -> Vec<&String> {
            fonts[from].iter().filter(|font| !fonts[to].contains(font)).collect()
        };
        for (data, place, lent) in [
            (&mut page, "page", lent(0, 1)),
            (&mut first.data, "first", lent(0, 1)),
            (&mut second.data, "second", lent(1, 0)),
        ] {
            data["meta"]["facing"] = place.into();
            data["meta"]["lent"] = serde_json::json!(lent);
            self.drawable(data)?;
        }
        let leaves = [first, second].map(|leaf| Leaf { look: Entry::Column, ..leaf });
        self.compile(*BESIDE, &page, &[], &leaves)
    }

    fn set_with(&self, main: Option<FileId>, data: &Value, logo: &[u8]) -> Result<Pages, Diagnostic> {
        self.drawable(data)?;
        self.compile(main, data, logo, &[])
    }

    /// # Errors
    /// The first character that the fonts of a sheet cannot draw.
    fn drawable(&self, data: &Value) -> Result<(), Diagnostic> {
        let families = families(data);
        let language = data["meta"]["language"].as_str().unwrap_or_default();
        glyphs::check(data, &self.fonts, &families, language)
    }

    fn compile(&self, main: Option<FileId>, data: &Value, logo: &[u8], leaves: &[Leaf]) -> Result<Pages, Diagnostic> {
        let json = data.to_string();
        let mut hash = blake3::Hasher::new();
        hash.update(json.as_bytes()).update(logo);
        for leaf in leaves {
            hash.update(leaf.data.to_string().as_bytes());
            hash.update(leaf.logo.as_ref().map_or(&[], |(_, bytes)| bytes.as_slice()));
        }
        let ident = hash.finalize().to_hex().to_string();
        let look: Vec<(String, &str)> =
            LOOK.iter().map(|(id, source)| (id.vpath().get_with_slash().to_owned(), source.text())).collect();
        let binding = Binding::of(leaves, look.iter().map(|(name, text)| (name.as_str(), *text)));
        let desk =
            Desk { typesetter: self, main, data: Bytes::from_string(json), logo: Bytes::new(logo.to_vec()), binding };
        ON_THE_DESKS.fetch_add(1, Ordering::Relaxed);
        ROUNDS.set(0);
        let done = typst::compile::<Round>(&desk);
        let pages = match done.output {
            Ok(Round(document)) if done.warnings.is_empty() => Ok(Pages { document, ident }),
            Ok(_) => Err(failed(&desk, &done.warnings)),
            Err(errors) => Err(failed(&desk, &errors)),
        };
        ON_THE_DESKS.fetch_sub(1, Ordering::Relaxed);
        if ROUNDS.get() < 2 {
            forget();
        }
        pages
    }
}

/// Goes through the cache.
fn forget() {
    typst::comemo::evict(CACHE_AGE.max(2 * ON_THE_DESKS.load(Ordering::Relaxed)));
}

/// What one round of the typesetter makes: pages, from what the round before knew of places.
///
/// The cache is gone through when a round begins, just after the places of the round before have got their number in the
/// library of the cache. It keeps a table of a thousand answers for the number of each such list, and the room of the table
/// for ever; but none for a number from before the last time. On two threads numbers fall anywhere, and without this a long
/// run would grow by 35 KB a guide. Places are looked up in no time, so nothing is lost.
struct Round(PagedDocument);

impl Output for Round {
    fn target() -> Target {
        PagedDocument::target()
    }

    fn create(engine: &mut Engine<'_>, content: &Content, styles: StyleChain<'_>) -> SourceResult<Self> {
        // Knows of no places yet, and asks next to nothing.
        let is_first = ROUNDS.replace(ROUNDS.get() + 1) == 0;
        if !is_first {
            forget();
        }
        PagedDocument::create(engine, content, styles).map(Self)
    }

    fn introspector(&self) -> &dyn Introspector {
        Output::introspector(&self.0)
    }
}

/// The families that the data of a page names, those it borrows last.
fn families(data: &Value) -> Vec<String> {
    let names = ["font", "lent"].into_iter().filter_map(|which| data["meta"][which].as_array()).flatten();
    names.filter_map(|name| name.as_str().map(str::to_owned)).collect()
}

fn failed(desk: &Desk<'_>, list: &[SourceDiagnostic]) -> Diagnostic {
    let lines: Vec<String> = list
        .iter()
        .map(|one| {
            let place = one.span.id().map(|id| {
                let line = desk
                    .range(one.span)
                    .and_then(|range| Some(desk.source(id).ok()?.lines().byte_to_line(range.start)? + 1));
                format!("{}:{} ", id.vpath().get_with_slash(), line.unwrap_or(0))
            });
            format!("{}{}", place.unwrap_or_default(), one.message)
        })
        .collect();
    let mut diagnostic = Diagnostic::outside(
        Code::TYPESET_FAILED,
        format!("the page cannot be set: {}", lines.first().cloned().unwrap_or_default()),
    )
    .help("report this case; nothing was written");
    for line in lines.into_iter().skip(1) {
        diagnostic = diagnostic.note(line);
    }
    diagnostic
}

/// One sheet on the typesetter's desk.
struct Desk<'t> {
    typesetter: &'t Typesetter,
    main: Option<FileId>,
    data: Bytes,
    /// The clinic's logo; empty where there is none.
    logo: Bytes,
    binding: Binding,
}

impl World for Desk<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.typesetter.book
    }

    fn main(&self) -> FileId {
        match self.main {
            Some(id) => id,
            None => unreachable!("the path of the look is a constant and valid"),
        }
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        LOOK.get(&id).or_else(|| self.binding.sources.get(&id)).cloned().ok_or(FileError::AccessDenied)
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if Some(id) == *DATA {
            return Ok(self.data.clone());
        }
        if Some(id) == *LOGO_SVG || Some(id) == *LOGO_PNG {
            return Ok(self.logo.clone());
        }
        if let Some(bytes) = self.binding.files.get(&id) {
            return Ok(bytes.clone());
        }
        LOOK.get(&id).map(|source| Bytes::from_string(source.text().to_owned())).ok_or(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.typesetter.fonts.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
