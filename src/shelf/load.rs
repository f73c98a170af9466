//! A shelf's folder to its items: every file that it names is read once, and none outside it.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use super::file::{CaseItem, ConditionItem, ItemKind, ItemName, ListFile, OrthosisItem, Review, ShelfFile, Which};
use crate::body::{Finger, Side};
use crate::clinic::FileName;
use crate::clinic::folder::Folder;
use crate::source::read_bytes;
use crate::content::{Library, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::SheetKind;
use crate::ids::{ConditionId, OrthosisId};
use crate::language::{Language, Languages};
use crate::source::{At, FromNode, Limits, Place, Reader, SourceText, Span, decode, parse};

/// What describes a shelf, in its folder.
pub const FILE: &str = "shelf.yaml";
/// Lists that may include each other, one in the other.
const DEEPEST: usize = 16;

/// What a handout is made from.
#[derive(Clone, Debug)]
pub enum What {
    Condition { id: ConditionId, side: Side, finger: Finger },
    Orthosis { id: OrthosisId, side: Side, finger: Finger },
    Case { source: SourceText, sheets: Vec<SheetKind> },
}

/// An item of the shelf.
#[derive(Clone, Debug)]
pub struct Item {
    pub name: ItemName,
    /// What its files are called after.
    pub stem: String,
    pub what: What,
    /// Where the shelf names it.
    pub place: Place,
}

/// A file of the shelf and everything it names, read but not yet held against the content.
pub struct Loaded {
    pub file: ShelfFile,
    pub source: SourceText,
    pub folder: PathBuf,
    /// The clinic's file, when the shelf has one.
    pub clinic: Option<PathBuf>,
    lists: Vec<List>,
    cases: Vec<ReadCase>,
    reviewed: BTreeMap<ItemName, (Review, Place)>,
    /// A hash of the shelf's file and of every list and case.
    pub hash: String,
}

/// What one file lists of the content.
struct List {
    conditions: Option<Which<ConditionItem>>,
    orthoses: Option<Which<OrthosisItem>>,
    place: Place,
    source: SourceText,
}

/// A case with its text.
struct ReadCase {
    name: ItemName,
    text: SourceText,
    sheets: Vec<SheetKind>,
    place: Place,
}

impl Loaded {
    /// Reads the folder of a shelf.
    ///
    /// # Errors
    /// All faults of the shelf's file, its lists and the files that it names, at once.
    pub fn of(folder: &Path) -> Result<Self, Findings> {
        let path = folder.join(FILE);
        let name = path.display().to_string();
        let unreadable = |why: &dyn std::fmt::Display| {
            let message = format!("{name} {why}");
            Findings::from(
                Diagnostic::outside(Code::FILE_UNREADABLE, message)
                    .help(format!("give a folder that holds a `{FILE}`")),
            )
        };
        let bytes = read_bytes(&path, Limits::CASE.bytes as u64).map_err(|why| unreadable(&why))?;
        let real = path.canonicalize().map_err(|why| unreadable(&format!("cannot be read: {why}")))?;
        let beside = Folder::of(&path).map_err(|why| unreadable(&format!("cannot be read: {why}")))?;
        let mut hash = blake3::Hasher::new();
        add(&mut hash, FILE, &bytes);
        let source = decode(&name, bytes)?;
        let (file, findings) = read::<ShelfFile>(&source);
        let Some(file) = file.filter(|_| !findings.has_errors()) else { return Err(findings) };
        let usual = file.sheets.iter().map(|sheet| sheet.value).collect();
        let mut loading = Loading {
            hash,
            usual,
            lists: Vec::new(),
            cases: Vec::new(),
            reviewed: BTreeMap::new(),
            findings,
            within: vec![real],
        };
        let list = ListFile {
            conditions: file.conditions.clone(),
            orthoses: file.orthoses.clone(),
            cases: file.cases.clone(),
            include: file.include.clone(),
            reviewed: file.reviewed.clone(),
        };
        loading.list(list, &source, &path, &beside);
        let clinic = file.clinic.as_ref().and_then(|name| {
            let found = beside.path(&name.value).map(|_| folder.join(name.as_str()));
            let help = "give a clinic's file in the folder of the shelf";
            found.map_err(|why| loading.fault(&source, Code::SHELF_FILE, name, &why, help)).ok()
        });
        if loading.findings.has_errors() {
            return Err(loading.findings);
        }
        let Loading { hash, lists, cases, reviewed, .. } = loading;
        let hash = hash.finalize().to_hex().to_string();
        Ok(Self { file, source, folder: folder.to_path_buf(), clinic, lists, cases, reviewed, hash })
    }

    /// The folder that everything is written to.
    pub fn out(&self) -> PathBuf {
        self.folder.join(self.file.out.as_ref().map_or("handouts", |out| out.as_str()))
    }

    /// When an item was last looked at, and by whom.
    pub fn review(&self, name: &ItemName) -> Option<&Review> {
        self.reviewed.get(name).map(|(review, _)| review)
    }

    /// The languages of the handouts, each once.
    ///
    /// # Errors
    /// Languages that there are no words for.
    pub fn languages(&self, languages: &Languages) -> Result<Vec<Language>, Findings> {
        if self.file.languages.is_empty() {
            let of = |entry: &crate::language::LanguageEntry| languages.find(&entry.tag);
            return Ok(languages.iter().filter_map(of).collect());
        }
        let mut findings = Findings::default();
        let mut found: Vec<Language> = Vec::new();
        for tag in &self.file.languages {
            match languages.find(&tag.value) {
                Some(language) if found.iter().any(|known| known.tag == language.tag) => {}
                Some(language) => found.push(language),
                None => {
                    let (message, help) = unknown("language", tag.as_str(), languages.tags());
                    findings.push(Diagnostic::error(Code::ID_UNKNOWN, self.place(&tag.span), message).help(help));
                }
            }
        }
        if findings.has_errors() { Err(findings) } else { Ok(found) }
    }

    fn place(&self, span: &Span) -> Place {
        Place { source: self.source.clone(), span: span.clone() }
    }

    /// Its items, held against the content.
    ///
    /// # Errors
    /// Conditions and orthoses that there are none of, two items whose files would have one name, and reviews of what is
    /// not on the shelf.
    pub fn items(&self, library: &Library) -> Result<Vec<Item>, Findings> {
        let mut findings = Findings::default();
        let mut items: Vec<Item> = Vec::new();
        for list in &self.lists {
            let place = |span: &Span| Place { source: list.source.clone(), span: span.clone() };
            let wanted: Vec<(ConditionItem, Place)> = match &list.conditions {
                None => Vec::new(),
                Some(Which::All(_)) => {
                    library.conditions.keys().map(|id| (ConditionItem::Plain(id.clone()), list.place.clone())).collect()
                }
                Some(Which::These(all)) => all.iter().map(|one| (one.value.clone(), place(&one.span))).collect(),
            };
            for (one, place) in wanted {
                let (id, side, finger) = one.parts();
                if !library.conditions.contains_key(id) {
                    let names = library.conditions.keys().map(|id| id.as_str());
                    let (message, help) = unknown("condition", id.as_str(), names);
                    findings.push(Diagnostic::error(Code::ID_UNKNOWN, place, message).help(help));
                    continue;
                }
                let (side_shown, finger_shown) = (side.unwrap_or(Side::Right), finger.unwrap_or(Finger::Index));
                items.push(Item {
                    name: named(ItemKind::Conditions, id.as_str()),
                    stem: stem(id.as_str(), side, finger),
                    what: What::Condition { id: id.clone(), side: side_shown, finger: finger_shown },
                    place,
                });
            }
            let wanted: Vec<(OrthosisItem, Place)> = match &list.orthoses {
                None => Vec::new(),
                Some(Which::All(_)) => {
                    library.orthoses.keys().map(|id| (OrthosisItem::Plain(id.clone()), list.place.clone())).collect()
                }
                Some(Which::These(all)) => all.iter().map(|one| (one.value.clone(), place(&one.span))).collect(),
            };
            for (one, place) in wanted {
                let (id, side, finger) = one.parts();
                if !library.orthoses.contains_key(id) {
                    let names = library.orthoses.keys().map(|id| id.as_str());
                    let (message, help) = unknown("orthosis", id.as_str(), names);
                    findings.push(Diagnostic::error(Code::ID_UNKNOWN, place, message).help(help));
                    continue;
                }
                let (side_shown, finger_shown) = (side.unwrap_or(Side::Right), finger.unwrap_or(Finger::Index));
                items.push(Item {
                    name: named(ItemKind::Orthoses, id.as_str()),
                    stem: stem(id.as_str(), side, finger),
                    what: What::Orthosis { id: id.clone(), side: side_shown, finger: finger_shown },
                    place,
                });
            }
        }
        items.extend(self.cases.iter().map(|case| Item {
            name: case.name.clone(),
            stem: case.name.id.clone(),
            what: What::Case { source: case.text.clone(), sheets: case.sheets.clone() },
            place: case.place.clone(),
        }));
        twice(&items, &mut findings);
        for (name, (_, place)) in &self.reviewed {
            if items.iter().all(|item| item.name != *name) {
                let names: Vec<String> = items.iter().map(|item| item.name.to_string()).collect();
                let (message, help) =
                    unknown("item of this shelf", &name.to_string(), names.iter().map(String::as_str));
                findings.push(Diagnostic::error(Code::ID_UNKNOWN, place.clone(), message).help(help));
            }
        }
        if findings.has_errors() { Err(findings) } else { Ok(items) }
    }
}

/// Two items whose files would overwrite each other's.
fn twice(items: &[Item], findings: &mut Findings) {
    let mut first: BTreeMap<(ItemKind, &str), &Item> = BTreeMap::new();
    for item in items {
        if let Some(before) = first.insert((item.name.kind, &item.stem), item) {
            let message = format!("two items of the shelf give files of one name: `{}`", item.stem);
            let help = match item.what {
                What::Case { .. } => "give one of the cases another `name`",
                _ => "name it once, or give the two another `finger` or `side`",
            };
            findings.push(
                Diagnostic::error(Code::OUTPUT_SAME_NAME, item.place.clone(), message)
                    .also(before.place.clone(), "the first one")
                    .help(help),
            );
        }
    }
}

fn named(kind: ItemKind, id: &str) -> ItemName {
    ItemName { kind, id: id.to_owned() }
}

/// What the files are called after: the name, with the hand and finger that were said.
fn stem(id: &str, side: Option<Side>, finger: Option<Finger>) -> String {
    let words = [side.map(Side::word), finger.map(Finger::word)];
    words.into_iter().flatten().fold(id.to_owned(), |stem, word| format!("{stem}-{word}"))
}

fn add(hash: &mut blake3::Hasher, name: &str, bytes: &[u8]) {
    for part in [name.as_bytes(), bytes] {
        hash.update(&(part.len() as u64).to_le_bytes()).update(part);
    }
}

fn read<T: FromNode>(source: &SourceText) -> (Option<T>, Findings) {
    match parse(source, Limits::CONTENT) {
        Ok(node) => {
            let mut reader = Reader::new(source);
            let file = T::from_node(&node, &mut reader);
            (file, reader.finish())
        }
        Err(diagnostic) => (None, diagnostic.into()),
    }
}

/// A shelf while the files it names are read.
struct Loading {
    hash: blake3::Hasher,
    /// Sheets of a case that does not say its own.
    usual: Vec<SheetKind>,
    lists: Vec<List>,
    cases: Vec<ReadCase>,
    reviewed: BTreeMap<ItemName, (Review, Place)>,
    findings: Findings,
    /// The lists that are being read, each within the one before it, as the disk knows them.
    within: Vec<PathBuf>,
}

impl Loading {
    fn fault(&mut self, source: &SourceText, code: Code, name: &At<FileName>, why: &str, help: &str) {
        let place = Place { source: source.clone(), span: name.span.clone() };
        self.findings.push(Diagnostic::error(code, place, format!("`{}` {why}", name.as_str())).help(help));
    }

    fn list(&mut self, list: ListFile, source: &SourceText, path: &Path, folder: &Folder) {
        let place = |span: &Span| Place { source: source.clone(), span: span.clone() };
        for (name, review) in list.reviewed.into_iter().flatten() {
            let here = place(&review.span);
            self.reviewed.entry(name).or_insert((review.value, here));
        }
        self.lists.push(List {
            conditions: list.conditions,
            orthoses: list.orthoses,
            place: place(&Span::new(0..0)),
            source: source.clone(),
        });
        for case in list.cases {
            self.case(case, source, path, folder);
        }
        for name in &list.include {
            self.include(name, source, path, folder);
        }
    }

    fn case(&mut self, item: At<CaseItem>, source: &SourceText, path: &Path, folder: &Folder) {
        let CaseItem { name, case, sheets } = item.value;
        let itself = folder.path(&case.value).is_ok_and(|real| self.within.contains(&real));
        if itself {
            self.fault(source, Code::SHELF_CYCLE, &case, "is the shelf itself, and no case", "give a case file");
            return;
        }
        let help = "give a case file in the folder of this file, such as `cases/wrist.yaml`";
        let bytes = match folder.read(&case.value, Limits::CASE.bytes as u64) {
            Ok(bytes) => bytes,
            Err(why) => return self.fault(source, Code::SHELF_FILE, &case, &why, help),
        };
        add(&mut self.hash, case.as_str(), &bytes);
        let shown = path.with_file_name(case.as_str()).display().to_string();
        let text = match decode(&shown, bytes) {
            Ok(text) => text,
            Err(diagnostic) => return self.findings.push(diagnostic),
        };
        let mut sheets: Vec<SheetKind> = sheets.iter().map(|sheet| sheet.value).collect();
        if sheets.is_empty() {
            sheets = if self.usual.is_empty() { vec![SheetKind::Guide] } else { self.usual.clone() };
        }
        sheets.sort_unstable();
        sheets.dedup();
        let place = Place { source: source.clone(), span: item.span };
        self.cases.push(ReadCase { name: named(ItemKind::Cases, name.as_str()), text, sheets, place });
    }

    fn include(&mut self, name: &At<FileName>, source: &SourceText, path: &Path, folder: &Folder) {
        let help = "give a list in the folder of this file, such as `lists/thumb.yaml`";
        let real = match folder.path(&name.value) {
            Ok(real) => real,
            Err(why) => return self.fault(source, Code::SHELF_FILE, name, &why, help),
        };
        if self.within.contains(&real) || self.within.len() > DEEPEST {
            let why = "includes itself, by this line or through other lists";
            return self.fault(source, Code::SHELF_CYCLE, name, why, "leave this line out");
        }
        let bytes = match read_bytes(&real, Limits::CASE.bytes as u64) {
            Ok(bytes) => bytes,
            Err(why) => return self.fault(source, Code::SHELF_FILE, name, &why, help),
        };
        add(&mut self.hash, name.as_str(), &bytes);
        let shown = path.with_file_name(name.as_str());
        let text = match decode(&shown.display().to_string(), bytes) {
            Ok(text) => text,
            Err(diagnostic) => return self.findings.push(diagnostic),
        };
        let (list, findings) = read::<ListFile>(&text);
        self.findings.extend(findings);
        let (Some(list), Ok(folder)) = (list, Folder::of(&real)) else { return };
        self.within.push(real);
        self.list(list, &text, &shown, &folder);
        self.within.pop();
    }
}
