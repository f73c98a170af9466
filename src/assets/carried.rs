//! The archive in the binary: content, words, fonts and look, each part unpacked when something of it is first asked for.

use std::collections::BTreeMap;
use std::io::{Cursor, Read};
use std::ops::Range;
use std::sync::{LazyLock, OnceLock};

use zip::{CompressionMethod, ZipArchive};

/// Made by `src/build.rs`.
static BYTES: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/carried.zip"));
static ARCHIVE: LazyLock<Option<ZipArchive<Cursor<&'static [u8]>>>> =
    LazyLock::new(|| ZipArchive::new(Cursor::new(BYTES)).ok());
static PARTS: LazyLock<BTreeMap<String, Part>> = LazyLock::new(|| {
    let Some(mut archive) = ARCHIVE.clone() else { return BTreeMap::new() };
    (0..archive.len())
        .filter_map(|number| {
            let part = archive.by_index_raw(number).ok()?;
            let plain = match part.compression() {
                CompressionMethod::Stored => {
                    let from = usize::try_from(part.data_start()?).ok()?;
                    BYTES.get(from..from + usize::try_from(part.size()).ok()?)
                }
                _ => None,
            };
            Some((part.name().ok()?.into_owned(), Part { number, plain, unpacked: OnceLock::new() }))
        })
        .collect()
});
static FILES: LazyLock<BTreeMap<&'static str, Carried>> = LazyLock::new(|| {
    let index = PARTS.get("index").and_then(|index| std::str::from_utf8(index.bytes()).ok()).unwrap_or_default();
    index
        .lines()
        .filter_map(|line| {
            let mut fields = line.split('\t');
            let part = PARTS.get(fields.next()?)?;
            let range = fields.next()?.parse().ok()?..fields.next()?.parse().ok()?;
            Some((fields.next()?, Carried { part, range }))
        })
        .collect()
});

/// Files that are packed together.
struct Part {
    number: usize,
    /// The part itself, where it is not packed.
    plain: Option<&'static [u8]>,
    unpacked: OnceLock<Vec<u8>>,
}

impl Part {
    fn bytes(&'static self) -> &'static [u8] {
        self.plain.unwrap_or_else(|| {
            self.unpacked.get_or_init(|| {
                let mut bytes = Vec::new();
                if let Some(mut part) = ARCHIVE.clone().as_mut().and_then(|archive| archive.by_index(self.number).ok())
                {
                    bytes.reserve(usize::try_from(part.size()).unwrap_or_default());
                    // Nothing in the binary is out of order; if it were, a file cut short would be told by its reader.
                    let _in_order = part.read_to_end(&mut bytes);
                }
                bytes
            })
        })
    }
}

/// One file.
pub struct Carried {
    part: &'static Part,
    range: Range<usize>,
}

impl Carried {
    /// What is in it.
    pub fn bytes(&self) -> &'static [u8] {
        self.part.bytes().get(self.range.clone()).unwrap_or_default()
    }
}

/// All files below a folder (`content/`), by their whole path, in order.
pub fn below(folder: &str) -> impl Iterator<Item = (&'static str, &'static Carried)> {
    FILES.iter().map(|(path, file)| (*path, file)).filter(move |(path, _)| path.starts_with(folder))
}

/// A file's text; empty when the program carries no such file.
pub fn text(path: &str) -> &'static str {
    FILES.get(path).and_then(|file| std::str::from_utf8(file.bytes()).ok()).unwrap_or_default()
}
