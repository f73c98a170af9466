//! Packs what the program carries beside its code into one archive: content, words, fonts and the look of the pages. The
//! large fonts stay as they are, because every start looks into every font and these would hardly become smaller.

use std::error::Error;
use std::path::{Path, PathBuf};
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
    let mut archive = ZipWriter::new(std::io::Cursor::new(Vec::new()));
    let mut content = blake3::Hasher::new();
    for path in &paths {
        let bytes = fs::read(root.join(path))?;
        let is_large = path.ends_with(".otf");
        let method = if is_large { CompressionMethod::Stored } else { CompressionMethod::Deflated };
        let level = if is_large { None } else { Some(9) };
        archive.start_file(path, SimpleFileOptions::default().compression_method(method).compression_level(level))?;
        std::io::Write::write_all(&mut archive, &bytes)?;
        if path.starts_with("content/") || path.starts_with("locales/") {
            for part in [path.as_bytes(), &bytes] {
                content.update(&(part.len() as u64).to_le_bytes()).update(part);
            }
        }
    }
    fs::write(Path::new(&env::var("OUT_DIR")?).join("carried.zip"), archive.finish()?.into_inner())?;
    println!("cargo::rustc-env=PALMLEAF_CONTENT={}", content.finalize().to_hex());
    println!("cargo::rustc-env=PALMLEAF_LOCK={}", blake3::hash(&fs::read(root.join("Cargo.lock"))?).to_hex());
    Ok(())
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
