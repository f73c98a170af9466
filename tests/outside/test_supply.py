"""The bill of materials against the published schema of its standard: CycloneDX 1.6 (ECMA-424), as its own library has it."""

import json
import platform
import re

import program
import pytest
from cyclonedx.model.bom import Bom
from cyclonedx.schema import SchemaVersion
from cyclonedx.validation.json import JsonStrictValidator

BILL = program.ROOT / "dist" / "palmleaf.cdx.json"


def test_the_bill_obeys_the_published_schema():
    text = BILL.read_text(encoding="utf-8")
    assert JsonStrictValidator(SchemaVersion.V1_6).validate_str(text) is None
    # The check can fail: a licence that is none, a component without a name.
    for wrong in (text.replace('"expression": "', '"expresion": "', 1), text.replace('"name": "annotate-snippets"', '"nam": ""', 1)):
        assert wrong != text and JsonStrictValidator(SchemaVersion.V1_6).validate_str(wrong) is not None


def test_another_reader_finds_every_crate_of_the_lock_file_that_is_in_the_program():
    bom = Bom.from_json(json.loads(BILL.read_text(encoding="utf-8")))
    named = {(component.name, component.version) for component in bom.components}
    locked = set(re.findall(r'name = "([^"]+)"\nversion = "([^"]+)"\nsource', (program.ROOT / "Cargo.lock").read_text()))
    crates = {(c.name, c.version) for c in bom.components if str(c.purl).startswith("pkg:cargo/")}
    assert crates and crates <= locked
    # What Cargo.toml asks for itself is in it.
    text = (program.ROOT / "Cargo.toml").read_text()
    asked = re.findall(r"^([a-z0-9_-]+) = ", text.split("[dependencies]")[1].split("[dev-dependencies]")[0], re.M)
    renamed = {"serde_yaml": "serde-saphyr"}
    assert {renamed.get(name, name) for name in asked} <= {name for name, _ in named}


def test_the_bill_holds_no_date_and_no_chance():
    """Reproducible Builds: the same tree gives the same bill."""
    bill = json.loads(BILL.read_text(encoding="utf-8"))
    assert "serialNumber" not in bill and "timestamp" not in bill["metadata"]


def test_the_program_prints_the_bill_it_was_built_with():
    assert json.loads(program.run("licences", "--format", "json").stdout) == json.loads(BILL.read_text(encoding="utf-8"))


def test_the_program_with_all_its_fonts_is_small_enough_to_send():
    """60 MB: what a clinic's mail and memory sticks take without a thought (common practice, no source)."""
    whole = program.binary().read_bytes()
    if b"\0.symtab\0" in whole:
        pytest.skip("built with its symbols, for development: not what is released")
    # C libraries before 2.36 read no packed relocations (release notes of glibc 2.36), which are 3 MB of such a program.
    version = tuple(int(part) for part in platform.libc_ver()[1].split(".")[:2] if part.isdigit())
    packed = platform.libc_ver()[0] == "glibc" and version >= (2, 36)
    assert 20_000_000 < len(whole) < (60_000_000 if packed else 64_000_000)
