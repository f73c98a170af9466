"""A person's name stands on the pages and nowhere beside them: not in metadata, outlines, alternative texts or file names."""

import re

import pikepdf
import pytest

import program
import readers

CASE = """\
palmleaf: 1
person: {name: Quillon Abernethy-Zed, reference: K-7}
hand: right
condition: de-quervain
orthosis: forearm-thumb-spica
fitted: 2027-03-01
review: 2027-03-29
language: en
activities: [open-jar]
letter: {to: employer, detail: full}
"""
PARTS = ("quillon", "abernethy")


def named(text: str) -> bool:
    return any(part in text.lower() for part in PARTS)


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    folder = tmp_path_factory.mktemp("names")
    case = folder / "quillon.yaml"
    case.write_text(CASE, encoding="utf-8")
    for out, more in (("with", []), ("without", ["--without-name"])):
        program.run("build", case, "--sheets", "all", "--out", folder / out, *more)
    return folder


def texts_beside_pages(pdf: pikepdf.Pdf):
    """Every string and name of a file that is no drawing on a page, and its metadata: ISO 32000-1, 14.3 and 14.9."""
    if "/Metadata" in pdf.Root:
        yield pdf.Root.Metadata.read_bytes().decode("utf-8")
    seen = set()
    pending = [pdf.trailer]
    while pending:
        here = pending.pop()
        if isinstance(here, pikepdf.Object) and here.is_indirect:
            if here.objgen in seen:
                continue
            seen.add(here.objgen)
        match here:
            case pikepdf.String() | pikepdf.Name():
                yield str(here)
            case pikepdf.Array():
                pending.extend(here)
            case pikepdf.Dictionary() | pikepdf.Stream():
                pending.extend(here[key] for key in here.keys())


def test_the_walk_finds_what_stands_beside_a_page(built):
    """The check can fail: the title, and a name put where a reader would show it."""
    path = next((built / "with").glob("guide-*.pdf"))
    with pikepdf.open(path) as pdf:
        assert any("splint" in text for text in texts_beside_pages(pdf))
        pdf.docinfo["/Subject"] = "For Quillon"
        assert any(map(named, texts_beside_pages(pdf)))


def test_no_name_beside_the_pages(built):
    pdfs = sorted((built / "with").glob("*.pdf"))
    assert len(pdfs) >= 5
    for path in pdfs:
        with pikepdf.open(path) as pdf:
            found = [text for text in texts_beside_pages(pdf) if named(text)]
            assert not found, f"{path.name}: {found[:3]}"


def test_no_name_in_the_head_of_the_page_for_a_telephone_or_in_a_calendar(built):
    page = next((built / "with").glob("*.html")).read_text(encoding="utf-8")
    assert named(page) and not named(page.split("<body")[0])
    assert not named(next((built / "with").glob("*.ics")).read_text(encoding="utf-8"))


def test_no_name_in_the_name_of_a_file(built):
    assert not any(named(path.name) for out in ("with", "without") for path in (built / out).iterdir())


def test_without_the_name_it_is_nowhere_and_there_is_room_to_write_it(built):
    """Pages are read as their text; everything else as it is on disk."""
    for path in sorted((built / "without").iterdir()):
        if path.suffix == ".pdf":
            with pikepdf.open(path) as pdf:
                assert not any(map(named, texts_beside_pages(pdf)))
            text = readers.page_text(path, 1)
        else:
            text = path.read_text(encoding="utf-8")
        assert not named(text), path.name
    guides = {out: readers.page_text(next((built / out).glob("guide-*.pdf")), 1) for out in ("with", "without")}
    assert named(guides["with"])
    assert re.search(r"\bName\b", guides["without"]), "no line to write the name on"
