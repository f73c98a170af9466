//! The folder of kept pictures: written whole, swept now and then.

use std::fs::{self, File};
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, SystemTime, UNIX_EPOCH};

const DAY: Duration = Duration::from_hours(24);
/// How long a picture is kept that nobody asks for.
const KEPT: Duration = Duration::from_hours(60 * 24);
/// How much is kept in all, bytes.
const ROOM: u64 = 64 * 1024 * 1024;
/// After so many new bytes the folder is swept although it was today.
const MUCH: u64 = 16 * 1024 * 1024;
const ENDING: &str = "picture";
/// The file whose age says when the folder was last swept.
const SWEPT: &str = "swept";

/// Which program draws. Another build may draw another picture for the same request, and a picture of yesterday's
/// engine under today's sheet would be a lie that nobody sees.
static ENGINE: LazyLock<String> = LazyLock::new(|| {
    let program = std::env::current_exe().and_then(fs::metadata);
    let (size, made) = program.map_or((0, None), |meta| (meta.len(), meta.modified().ok()));
    let made = made.and_then(|made| made.duration_since(UNIX_EPOCH).ok()).map_or(0, |since| since.as_nanos());
    format!("{} {size} {made}", env!("CARGO_PKG_VERSION"))
});

/// What the answer to a request is kept by.
pub fn name(key: &str) -> String {
    blake3::hash(format!("{} {key}", *ENGINE).as_bytes()).to_hex().to_string()
}

/// The time of the file system; it only decides what is thrown away.
#[expect(clippy::disallowed_methods, reason = "no picture depends on it, only how long it is kept")]
fn now() -> SystemTime {
    SystemTime::now()
}

/// How long ago a file was last used. One from the future is as good as new.
fn age(modified: SystemTime) -> Duration {
    now().duration_since(modified).unwrap_or_default()
}

/// The folder of kept pictures.
pub struct Shelf {
    folder: PathBuf,
    written: AtomicU64,
}

impl Shelf {
    pub const fn new(folder: PathBuf) -> Self {
        Self { folder, written: AtomicU64::new(0) }
    }

    /// The file of an entry.
    pub fn file(&self, name: &str) -> PathBuf {
        self.folder.join(format!("{name}.{ENDING}"))
    }

    /// What is kept by a name.
    pub fn get(&self, name: &str) -> Option<String> {
        let path = self.file(name);
        let text = fs::read_to_string(&path).ok()?;
        // Using an entry makes it young again; once a day is enough.
        let old = fs::metadata(&path).and_then(|meta| meta.modified()).is_ok_and(|modified| age(modified) > DAY);
        if old && let Ok(file) = File::options().append(true).open(&path) {
            let _unchanged = file.set_modified(now());
        }
        Some(text)
    }

    /// Keeps a text by a name. A second process that keeps the same one at the same time does no harm: each writes a
    /// file of its own and renames it, and both hold the same bytes.
    pub fn put(&self, name: &str, bytes: &[u8]) {
        if self.write(name, bytes).is_ok() {
            let before = self.written.fetch_add(bytes.len() as u64, Ordering::Relaxed);
            let much = (before + bytes.len() as u64) / MUCH > before / MUCH;
            self.sweep(much);
        }
    }

    fn write(&self, name: &str, bytes: &[u8]) -> std::io::Result<()> {
        fs::create_dir_all(&self.folder)?;
        let mut temporary = tempfile::Builder::new().prefix(".palmleaf-").suffix(".part").tempfile_in(&self.folder)?;
        temporary.write_all(bytes)?;
        temporary.persist(self.file(name)).map_err(|why| why.error)?;
        Ok(())
    }

    /// Throws away what is old or too much, when it was not done today.
    fn sweep(&self, much: bool) {
        let mark = self.folder.join(SWEPT);
        let today = fs::metadata(&mark).and_then(|meta| meta.modified()).is_ok_and(|modified| age(modified) < DAY);
        if today && !much {
            return;
        }
        let marked = File::options().create(true).append(true).open(&mark).and_then(|file| file.set_modified(now()));
        if marked.is_ok() {
            sweep(&self.folder, ROOM);
        }
    }
}

/// Throws away entries that were not used for a long time, then the oldest until the rest has room; and what a process
/// that was cut off has left.
pub fn sweep(folder: &Path, room: u64) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    let mut kept: Vec<(SystemTime, u64, PathBuf)> = Vec::new();
    for entry in entries.flatten() {
        let path = entry.path();
        let Ok(meta) = entry.metadata() else { continue };
        let Ok(modified) = meta.modified() else { continue };
        // Whatever else lies in the folder is not ours.
        let left = path.file_name().is_some_and(|name| {
            let name = name.to_string_lossy();
            name.starts_with(".palmleaf-") && name.ends_with(".part")
        });
        let ours = path.extension().is_some_and(|ending| ending == ENDING);
        if (left && age(modified) > DAY) || (ours && age(modified) > KEPT) {
            let _gone = fs::remove_file(path);
        } else if ours {
            kept.push((modified, meta.len(), path));
        }
    }
    let mut size: u64 = kept.iter().map(|(_, size, _)| size).sum();
    kept.sort();
    for (_, bytes, path) in kept {
        if size <= room {
            break;
        }
        if fs::remove_file(path).is_ok() {
            size -= bytes;
        }
    }
}
