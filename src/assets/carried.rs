//! The archive in the binary: content, words and look, unpacked file by file when they are first asked for.

use std::collections::BTreeMap;
use std::io::{Cursor, Read};
use std::sync::{LazyLock, OnceLock};

use zip::{CompressionMethod, ZipArchive};

/// Made by `src/build.rs`.
static BYTES: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/carried.zip"));
static ARCHIVE: LazyLock<Option<ZipArchive<Cursor<&'static [u8]>>>> =
    LazyLock::new(|| ZipArchive::new(Cursor::new(BYTES)).ok());
static FILES: LazyLock<BTreeMap<String, Carried>> = LazyLock::new(|| {
    let Some(mut archive) = ARCHIVE.clone() else { return BTreeMap::new() };
    (0..archive.len())
        .filter_map(|number| {
            let file = archive.by_index_raw(number).ok()?;
            let plain = match file.compression() {
                CompressionMethod::Stored => {
                    let from = usize::try_from(file.data_start()?).ok()?;
                    BYTES.get(from..from + usize::try_from(file.size()).ok()?)
                }
                _ => None,
            };
            Some((file.name().ok()?.into_owned(), Carried { number, plain, unpacked: OnceLock::new() }))
        })
        .collect()
});

/// One file of the archive.
pub struct Carried {
    number: usize,
    /// The file itself, where it is not packed.
    plain: Option<&'static [u8]>,
    unpacked: OnceLock<Vec<u8>>,
}

impl Carried {
    /// What is in it; unpacked once.
    pub fn bytes(&'static self) -> &'static [u8] {
        self.plain.unwrap_or_else(|| {
            self.unpacked.get_or_init(|| {
                let mut bytes = Vec::new();
                if let Some(mut file) = ARCHIVE.clone().as_mut().and_then(|archive| archive.by_index(self.number).ok())
                {
                    bytes.reserve(usize::try_from(file.size()).unwrap_or_default());
                    // Nothing in the binary is out of order; if it were, a file cut short would be told by its reader.
                    let _in_order = file.read_to_end(&mut bytes);
                }
                bytes
            })
        })
    }
}

/// All files below a folder (`content/`), by their whole path, in order.
pub fn below(folder: &str) -> impl Iterator<Item = (&'static str, &'static Carried)> {
    FILES.iter().map(|(path, file)| (path.as_str(), file)).filter(move |(path, _)| path.starts_with(folder))
}

/// A file's text; empty when the program carries no such file.
pub fn text(path: &str) -> &'static str {
    FILES.get(path).and_then(|file| std::str::from_utf8(file.bytes()).ok()).unwrap_or_default()
}
