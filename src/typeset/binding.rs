//! Sheets set in one document: each is a package of its own, in which the look finds its data. So every sheet is set
//! by the same files as by itself, in its own size and kind, and one run makes one tree of tags and one count of pages.

use std::collections::HashMap;

use serde_json::Value;
use typst::foundations::Bytes;
use typst::syntax::package::{PackageSpec, PackageVersion};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};

/// Which file of the look sets a sheet that others are set with.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Look {
    /// A sheet of a case.
    Sheet,
    /// A sheet of a case as one of two columns.
    Column,
    /// Pictures with captions.
    Gallery,
    /// The system of signs and sizes itself.
    Specimen,
}

impl Look {
    const fn file(self) -> &'static str {
        match self {
            Self::Sheet => "guide.typ",
            Self::Column => "column.typ",
            Self::Gallery => "gallery.typ",
            Self::Specimen => "specimen.typ",
        }
    }
}

/// A sheet that is ready to be bound.
#[derive(Clone, Debug)]
pub struct Leaf {
    pub look: Look,
    pub data: Value,
    /// The clinic's logo, where there is one: where the look finds it, and its bytes.
    pub logo: Option<(String, Bytes)>,
}

/// The files that the bound sheets are set from.
#[derive(Default)]
pub struct Binding {
    pub sources: HashMap<FileId, Source>,
    pub files: HashMap<FileId, Bytes>,
}

impl Binding {
    /// `look` is every file of the look with its text. Sheets are numbered from 1.
    pub fn of<'l>(leaves: &[Leaf], look: impl Iterator<Item = (&'l str, &'l str)> + Clone) -> Self {
        let mut binding = Self::default();
        for (number, leaf) in (1u32..).zip(leaves) {
            let spec = PackageSpec {
                namespace: "bound".into(),
                name: "sheet".into(),
                version: PackageVersion { major: 0, minor: 0, patch: number },
            };
            let manifest = format!(
                "[package]\nname = \"sheet\"\nversion = \"0.0.{number}\"\nentrypoint = \"{}\"\n",
                leaf.look.file()
            );
            let id = |path: &str| {
                let path = VirtualPath::new(path).ok()?;
                Some(RootedPath::new(VirtualRoot::Package(spec.clone()), path).intern())
            };
            binding.files.extend(id("/typst.toml").map(|id| (id, Bytes::from_string(manifest))));
            binding.files.extend(id("/data.json").map(|id| (id, Bytes::from_string(leaf.data.to_string()))));
            if let Some((path, bytes)) = &leaf.logo {
                binding.files.extend(id(path).map(|id| (id, bytes.clone())));
            }
            for (name, text) in look.clone() {
                binding.sources.extend(id(name).map(|id| (id, Source::new(id, text.to_owned()))));
            }
        }
        binding
    }
}
