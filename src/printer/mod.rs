//! PDF files joined into one for the printer, without setting any page again: every object is copied as it stands, tags
//! and all, and only what has to be one for the whole file is made new.
//!
//! Files come one by one and are written as they come; what stays in memory is the place of each object and a few lines
//! about each file. Only PDF files of this program are joined: what they never have (forms, encryption, classes of
//! attributes) is refused.

mod copy;
mod trees;
mod write;

use std::collections::{BTreeMap, HashMap};
use std::io::{Error, Result, Write};

use hayro_syntax::Pdf;
use hayro_syntax::object::{Dict, MaybeRef, ObjRef, Object};

use copy::Copier;
use trees::{names, numbers};
use write::{Sink, text_string};

/// Indirect objects that a PDF/A file may have (ISO 19005-2, 6.1.13).
pub const MOST_OBJECTS: u32 = 8_388_607;
/// Bytes after which no file is added: printers and viewers that count in 32 bits go no further than 2 GiB.
pub const MOST_BYTES: u64 = 1_900_000_000;

/// Objects that there is one of for the whole file.
const PAGES: u32 = 2;
const STRUCTURE: u32 = 3;
const DOCUMENT: u32 = 4;
const OUTLINES: u32 = 5;
const INFO: u32 = 6;
const METADATA: u32 = 7;
const FIRST_FREE: u32 = 8;

/// One file in the list of bookmarks.
struct Leaf {
    item: u32,
    title: String,
    /// What its own bookmarks say, as entries of a dictionary.
    inside: Vec<u8>,
    page: u32,
    /// Pages before it.
    before: usize,
    pages_node: u32,
    part: u32,
    parents: u32,
    ids: Option<u32>,
    destinations: Option<u32>,
    language: String,
}

/// Joins PDF files.
pub struct Joiner<W: Write> {
    sink: Sink<W>,
    leaves: Vec<Leaf>,
    pages: usize,
    parent_keys: i64,
    roles: BTreeMap<Vec<u8>, Vec<u8>>,
    /// Streams that were written, by their content: fonts and profiles that many files share are written once.
    streams: HashMap<[u8; 16], u32>,
    intents: Option<Vec<u8>>,
    archived: bool,
    accessible: bool,
    /// The latest day that a file was made on, as PDF writes it.
    made: Option<String>,
    hash: blake3::Hasher,
}

impl<W: Write> Joiner<W> {
    /// Begins a file.
    ///
    /// # Errors
    /// When nothing can be written.
    pub fn new(out: W) -> Result<Self> {
        Ok(Self {
            sink: Sink::new(out, FIRST_FREE)?,
            leaves: Vec::new(),
            pages: 0,
            parent_keys: 0,
            roles: BTreeMap::new(),
            streams: HashMap::new(),
            intents: None,
            archived: true,
            accessible: true,
            made: None,
            hash: blake3::Hasher::new(),
        })
    }

    /// Whether the next file should begin a new one: limits of the format are near.
    pub fn is_full(&self) -> bool {
        // A guide has one to three thousand objects.
        self.sink.next() > MOST_OBJECTS - 200_000 || self.sink.bytes() > MOST_BYTES
    }

    /// Files joined so far.
    pub fn count(&self) -> usize {
        self.leaves.len()
    }

    /// Adds a file. It begins on a right-hand page: one before it with an odd number of pages got an empty one.
    ///
    /// # Errors
    /// A file that is no PDF of this program, or one that cannot be written.
    pub fn add(&mut self, title: &str, bytes: Vec<u8>) -> Result<()> {
        self.hash.update(&bytes);
        let pdf = Pdf::new(bytes).map_err(|_| Error::other("it is no PDF"))?;
        let catalog: Dict<'_> = pdf.xref().get(pdf.xref().root_id()).ok_or_else(|| lacks("a catalog"))?;
        let need = |key: &str| catalog.get::<Dict<'_>>(key).ok_or_else(|| lacks(key));
        let reference = |key: &str| catalog.get_ref(key).ok_or_else(|| lacks(key));
        if ["AcroForm", "OCProperties", "Collection", "AF"].iter().any(|key| catalog.contains_key(key)) {
            return Err(Error::other("it has parts that this program never makes"));
        }
        self.claims(&pdf, &catalog);
        let (pages, structure) = (need("Pages")?, need("StructTreeRoot")?);
        if structure.contains_key("ClassMap") {
            return Err(Error::other("it has classes of attributes, which this program never makes"));
        }
        for (role, stands_for) in structure.get::<Dict<'_>>("RoleMap").iter().flat_map(Dict::entries) {
            if let MaybeRef::NotRef(Object::Name(name)) = stands_for {
                self.roles.insert(role.to_vec(), name.to_vec());
            }
        }
        let item = self.sink.reserve();
        let node = self.sink.reserve();
        let prefix = format!("g{:07}-", self.leaves.len()).into_bytes();
        let mut copier = Copier::new(&mut self.sink, &mut self.streams, pdf.xref(), prefix, self.parent_keys);
        copier.stands_for(reference("Pages")?, node);
        copier.stands_for(reference("StructTreeRoot")?, DOCUMENT);
        if let Some(outlines) = catalog.get_ref("Outlines") {
            copier.stands_for(outlines, item);
        }
        // What has no place in the joined file, should anything lead there.
        copier.stands_for(ObjRef::new(pdf.xref().root_id().obj_number, 0), 1);

        let kids = references(&pages, "Kids")?;
        let (Some(first), Some(last)) = (kids.first().copied(), kids.last().copied()) else {
            return Err(lacks("pages"));
        };
        let page = copier.id(first)?;
        let own: Vec<u32> = kids.iter().map(|kid| copier.id(*kid)).collect::<Result<_>>()?;
        let last: Dict<'_> = pdf.xref().get(last.into()).ok_or_else(|| lacks("a page"))?;
        if pages.get::<i32>("Count").and_then(|count| usize::try_from(count).ok()) != Some(kids.len()) {
            return Err(Error::other("its pages are no flat list"));
        }
        let size = last.get_raw::<Object<'_>>("MediaBox").ok_or_else(|| lacks("MediaBox"))?;
        let mut written_size = Vec::new();
        copier.value(&size, &mut written_size)?;

        // The whole of a file is a part of the joined one, in its own language.
        let language = catalog
            .get::<hayro_syntax::object::String<'_>>("Lang")
            .map(|text| String::from_utf8_lossy(text.as_bytes()).into_owned());
        let language = language.unwrap_or_default();
        let tops = match structure.get_raw::<Object<'_>>("K") {
            Some(MaybeRef::Ref(one)) => vec![one],
            _ => references(&structure, "K")?,
        };
        let [top] = tops[..] else { return Err(lacks("one root of its tags")) };
        let part = copier.part(top, &language)?;

        let parents: Vec<(i64, Vec<u8>)> = {
            let mut found = Vec::new();
            let base = copier.base;
            for (key, object) in numbers(&structure, "ParentTree") {
                let mut value = Vec::new();
                copier.value(&object, &mut value)?;
                found.push((key + base, value));
            }
            found
        };
        let mut ids = Vec::new();
        for (key, object) in names(&structure, "IDTree") {
            ids.push((copier.own(&key), copier.written(&object)?));
        }
        let mut destinations = Vec::new();
        for (key, object) in catalog.get::<Dict<'_>>("Names").iter().flat_map(|tree| names(tree, "Dests")) {
            destinations.push((copier.own(&key), copier.written(&object)?));
        }
        let mut inside = Vec::new();
        if let Some(outlines) = catalog.get::<Dict<'_>>("Outlines") {
            copier.outline(&outlines, &mut inside)?;
        }
        if self.intents.is_none()
            && let Some(intents) = catalog.get_raw::<Object<'_>>("OutputIntents")
        {
            self.intents = Some(copier.written(&intents)?);
        }
        copier.finish()?;

        let keys = structure.get::<i32>("ParentTreeNextKey").map_or(0, i64::from);
        let greatest = parents.iter().map(|(key, _)| key + 1 - self.parent_keys).max().unwrap_or(0);
        let base = self.parent_keys;
        self.parent_keys = base + keys.max(greatest);
        let parents = self.sink.number_leaf(&parents)?;
        let ids = self.sink.name_leaf(&ids)?;
        let destinations = self.sink.name_leaf(&destinations)?;

        let mut kids = own;
        let before = self.pages;
        if kids.len() % 2 == 1 {
            let blank = self.sink.reserve();
            let mut body = format!("<</Type/Page/Parent {node} 0 R/Resources<<>>/Tabs/S/MediaBox").into_bytes();
            body.extend(written_size);
            body.extend(b">>");
            self.sink.object(blank, &body)?;
            kids.push(blank);
        }
        self.pages += kids.len();
        let list: String = kids.iter().map(|id| format!("{id} 0 R ")).collect();
        self.sink.object(
            node,
            format!("<</Type/Pages/Parent {PAGES} 0 R/Count {}/Kids[{}]>>", kids.len(), list.trim_end()).as_bytes(),
        )?;
        self.leaves.push(Leaf {
            item,
            title: title.to_owned(),
            inside,
            page,
            before,
            pages_node: node,
            part,
            parents,
            ids,
            destinations,
            language,
        });
        Ok(())
    }

    /// What the file claims to be, and when it was made.
    fn claims(&mut self, pdf: &Pdf, catalog: &Dict<'_>) {
        let metadata = catalog.get::<hayro_syntax::object::Stream<'_>>("Metadata");
        let metadata = metadata
            .and_then(|stream| stream.decoded().ok())
            .map(|bytes| String::from_utf8_lossy(&bytes).into_owned())
            .unwrap_or_default();
        self.archived &= metadata.contains("<pdfaid:part>2</pdfaid:part>");
        self.accessible &= metadata.contains("<pdfuaid:part>1</pdfuaid:part>");
        if let Some(day) = pdf.metadata().creation_date {
            let day = format!("{:04}{:02}{:02}", day.year, day.month, day.day);
            self.made = self.made.take().max(Some(day));
        }
    }

    /// Writes what is one for all, and gives the file back.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn finish(mut self, title: &str) -> Result<W> {
        let leaves = std::mem::take(&mut self.leaves);
        let list = |ids: &mut dyn Iterator<Item = u32>| ids.map(|id| format!("{id} 0 R")).collect::<Vec<_>>().join(" ");
        let sink = &mut self.sink;
        let kids = list(&mut leaves.iter().map(|leaf| leaf.pages_node));
        sink.object(PAGES, format!("<</Type/Pages/Count {}/Kids[{kids}]>>", self.pages).as_bytes())?;
        let parts = list(&mut leaves.iter().map(|leaf| leaf.part));
        sink.object(DOCUMENT, format!("<</Type/StructElem/S/Document/P {STRUCTURE} 0 R/K[{parts}]>>").as_bytes())?;
        let mut tree = b"<</Type/StructTreeRoot/RoleMap<<".to_vec();
        for (role, stands_for) in &self.roles {
            write::name(role, &mut tree);
            write::name(stands_for, &mut tree);
        }
        let parents = list(&mut leaves.iter().map(|leaf| leaf.parents));
        tree.extend(
            format!(">>/K[{DOCUMENT} 0 R]/ParentTree<</Kids[{parents}]>>/ParentTreeNextKey {}", self.parent_keys)
                .bytes(),
        );
        let ids = list(&mut leaves.iter().filter_map(|leaf| leaf.ids));
        if !ids.is_empty() {
            tree.extend(format!("/IDTree<</Kids[{ids}]>>").bytes());
        }
        tree.extend(b">>");
        sink.object(STRUCTURE, &tree)?;
        for (number, leaf) in leaves.iter().enumerate() {
            let mut item = format!("<</Parent {OUTLINES} 0 R/Dest[{} 0 R/Fit]/Title", leaf.page).into_bytes();
            text_string(&leaf.title, &mut item);
            let beside = [("Prev", number.checked_sub(1)), ("Next", Some(number + 1))];
            for (key, at) in beside {
                if let Some(other) = at.and_then(|at| leaves.get(at)) {
                    item.extend(format!("/{key} {} 0 R", other.item).bytes());
                }
            }
            item.extend(&leaf.inside);
            item.extend(b">>");
            sink.object(leaf.item, &item)?;
        }
        let (Some(first), Some(last)) = (leaves.first(), leaves.last()) else {
            return Err(Error::other("there is nothing to join"));
        };
        sink.object(
            OUTLINES,
            format!("<</Type/Outlines/First {} 0 R/Last {} 0 R/Count {}>>", first.item, last.item, leaves.len())
                .as_bytes(),
        )?;
        let mut info = b"<</Title".to_vec();
        text_string(title, &mut info);
        info.extend(b"/Creator(Palmleaf)");
        if let Some(day) = &self.made {
            info.extend(format!("/CreationDate(D:{day}000000Z)/ModDate(D:{day}000000Z)").bytes());
        }
        info.extend(b">>");
        sink.object(INFO, &info)?;
        let mut languages: Vec<&str> = Vec::new();
        for leaf in &leaves {
            if !leaf.language.is_empty() && !languages.contains(&leaf.language.as_str()) {
                languages.push(&leaf.language);
            }
        }
        let facts = write::Facts {
            title,
            day: self.made.as_deref(),
            languages: &languages,
            pages: self.pages,
            archived: self.archived,
            accessible: self.accessible,
        };
        let metadata = write::metadata(&facts);
        sink.stream(METADATA, "/Type/Metadata/Subtype/XML", metadata.as_bytes())?;
        let mut catalog = format!(
            "<</Type/Catalog/Pages {PAGES} 0 R/StructTreeRoot {STRUCTURE} 0 R/MarkInfo<</Marked true/Suspects false>>/Outlines {OUTLINES} 0 R/Metadata {METADATA} 0 R/PageMode/UseOutlines/ViewerPreferences<</DisplayDocTitle true/Duplex/DuplexFlipLongEdge>>/PageLabels<</Nums["
        )
        .into_bytes();
        for leaf in &leaves {
            catalog.extend(format!("{}<</S/D/P", leaf.before).bytes());
            text_string(&format!("{} ", leaf.title), &mut catalog);
            catalog.extend(b">>");
        }
        catalog.extend(b"]>>");
        if let Some(language) = languages.first() {
            catalog.extend(b"/Lang");
            write::string(language.as_bytes(), &mut catalog);
        }
        if let Some(intents) = &self.intents {
            catalog.extend(b"/OutputIntents ");
            catalog.extend(intents);
        }
        let destinations = list(&mut leaves.iter().filter_map(|leaf| leaf.destinations));
        if !destinations.is_empty() {
            catalog.extend(format!("/Names<</Dests<</Kids[{destinations}]>>>>").bytes());
        }
        catalog.extend(b">>");
        sink.object(1, &catalog)?;
        let hash = self.hash.finalize().to_hex();
        self.sink.finish(&hash[..32], INFO)
    }
}

fn lacks(what: &str) -> Error {
    Error::other(format!("it lacks {what}"))
}

/// The references in an array of a dictionary.
fn references(dict: &Dict<'_>, key: &str) -> Result<Vec<ObjRef>> {
    let list = dict.get::<hayro_syntax::object::Array<'_>>(key).ok_or_else(|| lacks(key))?;
    list.raw_iter().map(|one| one.as_obj_ref().ok_or_else(|| lacks(key))).collect()
}
