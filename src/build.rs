//! Packs what the program carries beside its code into one archive: content, words, fonts and the look of the pages.
//! What is read together is packed together, as it repeats itself; each font is by itself. The large fonts stay as they
//! are, because every start looks into every font and these would hardly become smaller.

use std::collections::BTreeMap;
use std::error::Error;
use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::{env, fs};

use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

/// The folders that are carried whole; what lies in the first two is the content that records name by its hash.
const FOLDERS: [&str; 3] = ["content", "locales", "src/typeset/look"];
/// Files that are carried by themselves.
const FILES: [&str; 1] = ["dist/palmleaf.cdx.json"];

#[expect(clippy::disallowed_methods, reason = "it writes for the compiler, before there is a program")]
fn main() -> Result<(), Box<dyn Error>> {
    let root = PathBuf::from(env::var("CARGO_MANIFEST_DIR")?);
    let mut paths: Vec<String> = FILES.map(str::to_owned).to_vec();
    for folder in FOLDERS {
        below(&root, folder, &mut paths)?;
    }
    paths.sort();
    for watched in FOLDERS.iter().chain(&FILES).chain(&["Cargo.lock"]) {
        println!("cargo::rerun-if-changed={watched}");
    }
    // A line for each file: its part, where it lies in it, its path.
    let mut index = String::new();
    let mut parts: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    let mut content = blake3::Hasher::new();
    for path in &paths {
        let bytes = fs::read(root.join(path))?;
        if path.starts_with("content/") || path.starts_with("locales/") {
            for part in [path.as_bytes(), &bytes] {
                content.update(&(part.len() as u64).to_le_bytes()).update(part);
            }
        }
        let name = part_of(path);
        let part = parts.entry(name.clone()).or_default();
        writeln!(index, "{name}\t{}\t{}\t{path}", part.len(), part.len() + bytes.len())?;
        part.extend(bytes);
    }
    parts.insert("index".to_owned(), index.into_bytes());
    let mut archive = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in parts {
        let options = if name.ends_with(".otf") {
            SimpleFileOptions::default().compression_method(CompressionMethod::Stored)
        } else {
            SimpleFileOptions::default().compression_method(CompressionMethod::Deflated).compression_level(Some(9))
        };
        archive.start_file(name, options)?;
        archive.write_all(&bytes)?;
    }
    fs::write(Path::new(&env::var("OUT_DIR")?).join("carried.zip"), archive.finish()?.into_inner())?;
    if packs_relocations() {
        println!("cargo::rustc-link-arg-bins=-Wl,-z,pack-relative-relocs");
    }
    println!("cargo::rustc-env=PALMLEAF_CONTENT={}", content.finalize().to_hex());
    println!("cargo::rustc-env=PALMLEAF_LOCK={}", blake3::hash(&fs::read(root.join("Cargo.lock"))?).to_hex());
    Ok(())
}

/// Whether what loads the program can read its places that move with it from a packed list, which takes 3 MB less: the GNU
/// C library since 2.36. A program for another machine goes without.
fn packs_relocations() -> bool {
    let is_own = env::var("HOST").is_ok_and(|host| env::var("TARGET").is_ok_and(|target| host == target));
    if !is_own || env::var("CARGO_CFG_TARGET_ENV").as_deref() != Ok("gnu") {
        return false;
    }
    let Ok(told) = Command::new("getconf").arg("GNU_LIBC_VERSION").output() else { return false };
    let told = String::from_utf8_lossy(&told.stdout);
    let mut numbers = told.trim().trim_start_matches("glibc ").split('.').map_while(|part| part.parse::<u32>().ok());
    (numbers.next(), numbers.next()) >= (Some(2), Some(36))
}

/// What a file is packed with: a font with nothing, words with those of their language, the rest with its folder.
fn part_of(path: &str) -> String {
    if path.ends_with(".otf") || path.ends_with(".ttf") {
        return path.to_owned();
    }
    let depth = if path.starts_with("locales/") { 2 } else { 1 };
    path.split('/').take(depth).collect::<Vec<_>>().join("/")
}

/// The files below a folder, by their path from the root, whatever the platform divides paths by.
fn below(root: &Path, folder: &str, paths: &mut Vec<String>) -> Result<(), Box<dyn Error>> {
    for entry in fs::read_dir(root.join(folder))? {
        let entry = entry?;
        let name = entry.file_name().into_string().map_err(|name| format!("{folder}: {name:?} is not Unicode"))?;
        // What editors and desktops leave behind.
        if name.starts_with('.') {
            continue;
        }
        let path = format!("{folder}/{name}");
        if entry.file_type()?.is_dir() { below(root, &path, paths)? } else { paths.push(path) }
    }
    Ok(())
}
