//! The files the program carries, and a clinic's folder laid over them.
//!
//! Everything that is not code comes through here: `content/` and `locales/` embedded in the binary, and the folder
//! given with `--content`, whose files replace those of the same path and add to the rest. Nothing else is read.

pub mod carried;

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use self::carried::Carried;
use crate::diag::{Code, Diagnostic};
use crate::source::SourceText;

/// A file, carried or brought.
#[derive(Clone)]
enum File {
    Carried(&'static Carried),
    Laid(Vec<u8>),
}

impl File {
    fn bytes(&self) -> &[u8] {
        match self {
            Self::Carried(file) => file.bytes(),
            Self::Laid(bytes) => bytes,
        }
    }
}

/// Bytes by path, such as `content/conditions/x.yaml` or `locales/en/guide.ftl`, in the order of their paths.
#[derive(Clone, Default)]
pub struct Assets {
    files: BTreeMap<String, File>,
    /// The paths that a folder brought.
    laid: BTreeSet<String>,
    /// Whether any file is not as the program carries it.
    changed: bool,
}

/// Digits of a hash that a record shows.
const SHOWN: usize = 16;
/// A file of an overlay larger than this is refused.
const MOST_BYTES: u64 = 16 * 1024 * 1024;
/// An overlay of more files than this is refused: it is the wrong folder.
const MOST_FILES: usize = 20_000;

impl Assets {
    /// What the binary carries.
    pub fn embedded() -> Self {
        let files = ["content/", "locales/"].into_iter().flat_map(carried::below);
        let files = files.map(|(path, file)| (path.to_owned(), File::Carried(file))).collect();
        Self { files, laid: BTreeSet::new(), changed: false }
    }

    /// The same with a folder laid over it. Its `locales` folder goes over the locales, all else over the content.
    ///
    /// # Errors
    /// When the folder or one of its files cannot be read.
    pub fn overlaid(self, folder: &Path) -> Result<Self, Diagnostic> {
        self.laid_over(folder, |inside| match inside.starts_with("locales/") {
            true => inside,
            false => format!("content/{inside}"),
        })
    }

    /// The same with a folder of words laid over the locales: it holds a folder for each language.
    ///
    /// # Errors
    /// When the folder or one of its files cannot be read.
    pub fn with_locales(self, folder: &Path) -> Result<Self, Diagnostic> {
        self.laid_over(folder, |inside| format!("locales/{inside}"))
    }

    fn laid_over(mut self, folder: &Path, named: impl Fn(String) -> String) -> Result<Self, Diagnostic> {
        let unreadable = |path: &Path, why: &dyn std::fmt::Display| {
            Diagnostic::outside(Code::FILE_UNREADABLE, format!("{} cannot be read: {why}", path.display()))
                .help("give a folder laid out like `content/`, such as `my-content/conditions/my-condition.yaml`")
        };
        let mut pending = vec![folder.to_path_buf()];
        let mut found = Vec::new();
        while let Some(dir) = pending.pop() {
            for entry in std::fs::read_dir(&dir).map_err(|why| unreadable(&dir, &why))? {
                let entry = entry.map_err(|why| unreadable(&dir, &why))?;
                let kind = entry.file_type().map_err(|why| unreadable(&entry.path(), &why))?;
                if entry.file_name().to_string_lossy().starts_with('.') {
                    continue;
                }
                if kind.is_dir() {
                    pending.push(entry.path());
                } else if kind.is_file() {
                    found.push(entry.path());
                }
            }
            if found.len() > MOST_FILES {
                return Err(unreadable(folder, &"it holds more files than any clinic's content"));
            }
        }
        found.sort();
        for path in found {
            let size = path.metadata().map_err(|why| unreadable(&path, &why))?.len();
            if size > MOST_BYTES {
                return Err(unreadable(&path, &"it is larger than any content file"));
            }
            let bytes = std::fs::read(&path).map_err(|why| unreadable(&path, &why))?;
            let inside = path.strip_prefix(folder).unwrap_or(&path).to_string_lossy().replace('\\', "/");
            let path = named(inside);
            self.laid.insert(path.clone());
            self.changed = true;
            self.files.insert(path, File::Laid(bytes));
        }
        Ok(self)
    }

    /// The same with one file replaced or added.
    #[must_use]
    pub fn with(mut self, path: impl Into<String>, bytes: impl Into<Vec<u8>>) -> Self {
        self.files.insert(path.into(), File::Laid(bytes.into()));
        self.changed = true;
        self
    }

    /// The same without one file.
    #[must_use]
    pub fn without(mut self, path: &str) -> Self {
        self.files.remove(path);
        self.changed = true;
        self
    }

    /// All paths below a folder, in order.
    pub fn below<'a>(&'a self, folder: &'a str) -> impl Iterator<Item = &'a str> {
        self.files.keys().map(String::as_str).filter(move |path| path.starts_with(folder))
    }

    /// Whether a file does not come with the program.
    pub fn is_laid(&self, path: &str) -> bool {
        self.laid.contains(path)
    }

    /// The paths below a folder that do not come with the program, in order.
    pub fn laid_below<'a>(&'a self, folder: &'a str) -> impl Iterator<Item = &'a str> {
        self.laid.iter().map(String::as_str).filter(move |path| path.starts_with(folder))
    }

    pub fn bytes(&self, path: &str) -> Option<Cow<'static, [u8]>> {
        Some(match self.files.get(path)? {
            File::Carried(file) => Cow::Borrowed(file.bytes()),
            File::Laid(bytes) => Cow::Owned(bytes.clone()),
        })
    }

    /// A file's text.
    ///
    /// # Errors
    /// When there is no such file or it is not UTF-8.
    pub fn text(&self, path: &str) -> Result<SourceText, Diagnostic> {
        let file = self.files.get(path).ok_or_else(|| {
            Diagnostic::outside(Code::FILE_UNREADABLE, format!("there is no file {path} in the content"))
        })?;
        let text = std::str::from_utf8(file.bytes()).map_err(|_| {
            Diagnostic::outside(Code::FILE_NOT_UTF8, format!("{path} is not UTF-8 text")).help("save it as UTF-8")
        })?;
        Ok(SourceText::new(path, text))
    }

    /// A hash of all content and locale files, for the record.
    pub fn fingerprint(&self) -> String {
        /// Of what the program carries, made with it in the same way.
        const CARRIED: &str = env!("PALMLEAF_CONTENT");
        if !self.changed {
            return CARRIED[..SHOWN].to_owned();
        }
        let mut hasher = blake3::Hasher::new();
        for (path, file) in &self.files {
            for part in [path.as_bytes(), file.bytes()] {
                hasher.update(&(part.len() as u64).to_le_bytes()).update(part);
            }
        }
        hasher.finalize().to_hex()[..SHOWN].to_owned()
    }
}
