//! What the program is made of: no way out to a network, no licence that asks more than a notice, and a bill of
//! materials (CycloneDX 1.6) that says so and is current.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;
use std::sync::LazyLock;

use rustybuzz::ttf_parser::{Face, name_id};
use serde_json::{Value, json};

use crate::generated::current;
use crate::support::{file, files, path, run, stdout};

/// The bill is of the program for this platform, wherever it is written.
const PLATFORM: &str = "x86_64-unknown-linux-gnu";

/// The lists of `.ci/deny.toml`: each stands once, and is read from there.
fn listed(key: &str) -> BTreeSet<String> {
    let text = file(".ci/deny.toml");
    let (_, rest) = text.split_once(&format!("\n{key} = [\n")).unwrap_or_else(|| panic!("{key}"));
    let (list, _) = rest.split_once("\n]").expect("the end of the list");
    list.lines().map(|line| line.trim().trim_matches([',', '"']).to_owned()).collect()
}

/// Name and version of all packages in the lock file, with their checksums.
fn locked() -> BTreeMap<(String, String), Option<String>> {
    file("Cargo.lock")
        .split("[[package]]")
        .skip(1)
        .map(|entry| {
            let value = |key: &str| {
                let start = format!("{key} = \"");
                let line = entry.lines().find_map(|line| line.strip_prefix(&start));
                line.map(|rest| rest.trim_end_matches('"').to_owned())
            };
            ((value("name").expect("a name"), value("version").expect("a version")), value("checksum"))
        })
        .collect()
}

/// The dependency tree, as Cargo resolves it.
static TREE: LazyLock<Value> = LazyLock::new(|| {
    let done = Command::new(env!("CARGO"))
        .args(["metadata", "--format-version", "1", "--locked", "--filter-platform", PLATFORM])
        .current_dir(path(""))
        .output()
        .expect("cargo starts");
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    serde_json::from_slice(&done.stdout).expect("JSON")
});

fn list(value: &Value) -> &[Value] {
    value.as_array().map(Vec::as_slice).unwrap_or_default()
}

fn word(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}

/// An SPDX expression; a slash is how it was once written.
fn expression(package: &Value) -> String {
    word(&package["license"]).replace(" / ", " OR ").replace('/', " OR ")
}

/// Whether every part of an expression can be had on a licence of the list.
fn allowed(expression: &str, list: &BTreeSet<String>) -> bool {
    expression
        .split(" AND ")
        .all(|part| part.split(" OR ").any(|licence| list.contains(licence.trim_matches(['(', ')', ' ']))))
}

#[test]
fn no_crate_opens_a_way_out() {
    let banned = listed("deny");
    assert!(banned.len() > 40 && banned.contains("reqwest") && banned.contains("rustls"));
    let locked = locked();
    assert!(locked.len() > 200);
    let found: Vec<&String> = locked.keys().map(|(name, _)| name).filter(|name| banned.contains(*name)).collect();
    assert!(found.is_empty(), "a network client in the lock file: {found:?}");
}

/// What the standard library itself has to reach a network or another program stands nowhere in our code.
#[test]
fn no_line_of_ours_opens_a_way_out() {
    for file in files("src", ".rs") {
        let text = std::fs::read_to_string(&file).expect("a source file");
        // What builds the program asks the machine for the version of its C library, and is no part of the program.
        let starts = if file.ends_with("src/build.rs") { None } else { Some("process::Command") };
        let words = ["std::net", "TcpListener", "TcpStream", "UdpSocket", "UnixStream", "ToSocketAddrs"];
        for word in words.into_iter().chain(starts) {
            assert!(!text.contains(word), "{} names {word}", file.display());
        }
    }
    for root in ["src/lib.rs", "src/main.rs"] {
        assert!(file(root).contains("#![forbid(unsafe_code)]"), "{root}");
    }
}

#[test]
fn every_crate_is_from_the_registry_under_a_licence_that_asks_no_more_than_a_notice() {
    let list_of_licences = listed("allow");
    assert!(!allowed("GPL-3.0-only", &list_of_licences) && !allowed("MIT AND AGPL-3.0-only", &list_of_licences));
    assert!(allowed("(MIT OR GPL-3.0-only) AND Unicode-3.0", &list_of_licences));
    for package in list(&TREE["packages"]).iter().filter(|package| package["name"] != "palmleaf") {
        let name = format!("{} {}", word(&package["name"]), word(&package["version"]));
        assert!(
            word(&package["source"]).starts_with("registry+https://github.com/rust-lang/crates.io-index"),
            "{name}"
        );
        assert!(allowed(&expression(package), &list_of_licences), "{name}: {}", expression(package));
    }
}

/// A font as a component, from what the font says of itself.
fn font(path: &std::path::Path) -> Value {
    let bytes = std::fs::read(path).expect("a font");
    let face = Face::parse(&bytes, 0).expect("a font");
    let said = |id: u16| {
        let names = face.names();
        names.into_iter().filter(|name| name.name_id == id).find_map(|name| name.to_string()).unwrap_or_default()
    };
    let licence = format!("{} {}", said(name_id::LICENSE), said(name_id::LICENSE_URL));
    let file = path.file_name().expect("a name").to_string_lossy();
    assert!(licence.contains("SIL Open Font License") || licence.contains("OFL"), "{file}: {licence}");
    let version =
        said(name_id::VERSION).trim_start_matches("Version ").split([';', ' ']).next().unwrap_or_default().to_owned();
    json!({
        "type": "file",
        "bom-ref": format!("font:{file}"),
        "name": said(name_id::FULL_NAME),
        "version": version,
        "scope": "required",
        "copyright": said(name_id::COPYRIGHT_NOTICE),
        "hashes": [{"alg": "BLAKE3", "content": blake3::hash(&bytes).to_hex().to_string()}],
        "licenses": [{"license": {"id": "OFL-1.1"}}],
        "properties": [{"name": "palmleaf:file", "value": format!("content/fonts/{file}")}],
    })
}

fn purl(package: &Value) -> String {
    format!("pkg:cargo/{}@{}", word(&package["name"]), word(&package["version"]).replace('+', "%2B"))
}

/// Packages by id that are linked into the program; the others only build it.
fn linked<'t>(
    nodes: &BTreeMap<&'t str, &'t Value>,
    packages: &BTreeMap<&'t str, &'t Value>,
    root: &'t str,
) -> BTreeSet<&'t str> {
    let is_macro = |id: &str| {
        list(&packages[id]["targets"])
            .iter()
            .any(|target| list(&target["kind"]).iter().any(|kind| kind == "proc-macro"))
    };
    let mut found = BTreeSet::new();
    let mut pending = vec![root];
    while let Some(id) = pending.pop() {
        if is_macro(id) || !found.insert(id) {
            continue;
        }
        pending.extend(needed(nodes[id], |kind| kind.is_null()));
    }
    found
}

/// The dependencies of a package of some kinds: null is the usual one.
fn needed(node: &Value, wanted: impl Fn(&Value) -> bool) -> Vec<&str> {
    list(&node["deps"])
        .iter()
        .filter(|dep| list(&dep["dep_kinds"]).iter().any(|kind| wanted(&kind["kind"])))
        .map(|dep| word(&dep["pkg"]))
        .collect()
}

/// The bill of materials. No date and no chance in it: the same tree gives the same bytes.
fn bill() -> String {
    let packages: BTreeMap<&str, &Value> =
        list(&TREE["packages"]).iter().map(|package| (word(&package["id"]), package)).collect();
    let nodes: BTreeMap<&str, &Value> =
        list(&TREE["resolve"]["nodes"]).iter().map(|node| (word(&node["id"]), node)).collect();
    let root = word(&TREE["resolve"]["root"]);
    let locked = locked();
    let in_program = linked(&nodes, &packages, root);
    let usual = |kind: &Value| kind.is_null() || kind == "build";
    let mut reached = BTreeSet::new();
    let mut pending = vec![root];
    while let Some(id) = pending.pop() {
        if reached.insert(id) {
            pending.extend(needed(nodes[id], usual));
        }
    }
    let mut components = BTreeMap::new();
    let mut tree = BTreeMap::new();
    for id in &reached {
        let package = packages[id];
        let on: BTreeSet<String> = needed(nodes[id], usual).into_iter().map(|id| purl(packages[id])).collect();
        tree.insert(purl(package), on);
        if *id == root {
            continue;
        }
        let (name, version) = (word(&package["name"]).to_owned(), word(&package["version"]).to_owned());
        let mut component = json!({
            "type": "library",
            "bom-ref": purl(package),
            "name": name,
            "version": version,
            "scope": if in_program.contains(id) { "required" } else { "excluded" },
            "licenses": [{"expression": expression(package)}],
            "purl": purl(package),
        });
        if let Some(sum) = locked.get(&(name, version)).and_then(Option::as_ref) {
            component["hashes"] = json!([{"alg": "SHA-256", "content": sum}]);
        }
        if let Some(place) = package["repository"].as_str() {
            component["externalReferences"] = json!([{"type": "vcs", "url": place}]);
        }
        components.insert(purl(package), component);
    }
    let own = packages[root];
    let fonts = files("content/fonts", "tf").iter().map(|path| font(path)).collect::<Vec<_>>();
    assert!(!fonts.is_empty());
    let bill = json!({
        "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": {
            "component": {
                "type": "application",
                "bom-ref": purl(own),
                "name": "palmleaf",
                "version": own["version"],
                "licenses": [{"expression": expression(own)}],
            },
            "properties": [{"name": "palmleaf:platform", "value": PLATFORM}],
        },
        "components": fonts.into_iter().chain(components.into_values()).collect::<Vec<_>>(),
        "dependencies": tree.into_iter().map(|(of, on)| json!({"ref": of, "dependsOn": on})).collect::<Vec<_>>(),
    });
    serde_json::to_string_pretty(&bill).expect("JSON") + "\n"
}

#[test]
fn the_bill_of_materials_is_current() {
    current("dist/palmleaf.cdx.json", bill().as_bytes());
}

#[test]
fn licences_names_every_font_and_every_crate_in_the_program() {
    let shown = stdout(&run(&["licences"]));
    let bill: Value = serde_json::from_str(&file("dist/palmleaf.cdx.json")).expect("JSON");
    for part in list(&bill["components"]) {
        let line = format!("  {} {} ", word(&part["name"]), word(&part["version"]));
        assert_eq!(shown.contains(&line), part["scope"] == "required", "{line}");
    }
    assert!(!shown.contains("none named"), "{shown}");
    for font in files("content/fonts", "tf") {
        let name = font.file_name().expect("a name").to_string_lossy().into_owned();
        assert!(stdout(&run(&["licences", "--format", "json"])).contains(&name), "{name}");
    }
}
