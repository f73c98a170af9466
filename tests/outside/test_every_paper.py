"""Every kind of PDF that the program makes, beside the guide: the same standards hold for all of them.

Standards as in test_pdf_ua.py. A chosen matrix: each kind in each language, and the sizes, papers and hands spread over it, so
that the checks stay quick.
"""

import re
from collections import Counter
import xml.etree.ElementTree as xml
from pathlib import Path

import pikepdf
import pytest

import pdfua_report
import program
import structure
from readers import ask, page_text
from test_pdf_ua import NAMES, rows

# Example, language, size, paper: each sheet of it is a file.
CASES = [
    ("right-thumb", "en", "standard", "a4"),
    ("left-thumb-ligament", "es", "large", "letter"),
    ("both-hands", "ar", "standard", "a4"),
    ("mallet-ring-finger", "ar", "giant", "a4"),
]
SHEETS = ("card", "diary", "exercises", "letter")
# What is made without a case: arguments before the name of the file, and the language.
OTHERS = {
    "chart": (["choose", "carpal-tunnel", "--chart"], "en"),
    "pictures": (["draw", "--steps", "forearm-thumb-spica", "--language", "ar", "--out"], "ar"),
    "inside": (["draw", "--condition", "de-quervain", "--out"], "en"),
    "specimen": (["specimen", "--language", "es", "--out"], "en"),
}
# Sheets in two languages beside each other: example, the person's language, the other one, paper.
BESIDE = {
    "beside-ar-en": ("both-hands", "ar", "en", "a4"),
    "beside-en-ar": ("right-thumb", "en", "ar", "letter"),
    "beside-es-en": ("mallet-ring-finger", "es", "en", "a4"),
}
FACING = ("guide", "card", "exercises", "letter")
BOOKLETS = {
    "booklet-en": "en",
    "booklet-ar": "ar",
}
LIST = """
title: Thumb splints for the class
by: North Quay School of Therapy
language: {language}
items:
  - {{case: {examples}/right-thumb.yaml, sheets: [guide, card]}}
  - {{orthosis: wrist-neutral, side: left}}
  - {{case: {examples}/both-hands.yaml, sheets: [letter, diary]}}
"""
# These are dated by the day of the fitting and claim PDF/A too; what no case has made has no date.
KEYS = [f"{case[0]}-{case[2]}-{sheet}" for case in CASES for sheet in SHEETS] + [f"{name}-{sheet}" for name in BESIDE for sheet in FACING] + [*OTHERS, *BOOKLETS]


def booklet(folder: Path, language: str) -> Path:
    """A list of sheets as a file."""
    path = folder / f"booklet-{language}.yaml"
    path.write_text(LIST.format(language=language, examples=program.ROOT / "examples"), encoding="utf-8")
    return path


@pytest.fixture(scope="session")
def papers(tmp_path_factory) -> dict[str, tuple[Path, str]]:
    """Every paper with its language."""
    made = {}
    for example, language, size, paper in CASES:
        out = tmp_path_factory.mktemp(example)
        program.run(
            "build", program.ROOT / "examples" / f"{example}.yaml", "--language", language, "--print", size, "--paper", paper,
            "--sheets", ",".join(SHEETS), "--out", out,
        )
        for sheet in SHEETS:
            found = sorted(out.glob(f"{sheet}-*.pdf"))
            if found:
                made[f"{example}-{size}-{sheet}"] = (found[0], language)
    for name, (example, language, other, paper) in BESIDE.items():
        out = tmp_path_factory.mktemp(name)
        program.run(
            "build", program.ROOT / "examples" / f"{example}.yaml", "--language", language, "--with", other, "--print", "standard",
            "--paper", paper, "--sheets", ",".join(FACING), "--out", out,
        )
        for sheet in FACING:
            found = sorted(out.glob(f"{sheet}-*-{language}-{other}.pdf"))
            if found:
                made[f"{name}-{sheet}"] = (found[0], language)
    out = tmp_path_factory.mktemp("others")
    for name, (arguments, language) in OTHERS.items():
        program.run(*arguments, out / f"{name}.pdf")
        made[name] = (out / f"{name}.pdf", language)
    for name, language in BOOKLETS.items():
        program.run("teach", "booklet", booklet(out, language), "--out", out / f"{name}.pdf")
        made[name] = (out / f"{name}.pdf", language)
    return made


@pytest.fixture(scope="session")
def reports(papers) -> dict[str, dict]:
    return pdfua_report.check([path for path, _ in papers.values()])


@pytest.fixture(params=KEYS)
def paper(request, papers):
    if request.param not in papers:
        assert request.param.endswith("exercises"), "only exercises may be missing: where none are allowed"
        pytest.skip("this case has no exercises")
    return (request.param, *papers[request.param])


def test_pdfua_finds_nothing(paper, reports):
    """pdfua 0.1.3 has nothing to say, and skips only the rule that is known to give up."""
    report = reports[str(paper[1])]
    assert report["findings"] == []
    assert {entry["rule_id"] for entry in report["skipped"]} <= set(pdfua_report.INSTEAD)


def test_qpdf_finds_the_syntax_sound(paper):
    """ISO 32000-1:2008, 7."""
    done = ask("qpdf", "--check", paper[1])
    assert done.returncode == 0 and "WARNING" not in done.stdout + done.stderr, done.stdout + done.stderr


def test_every_font_is_embedded_and_mapped(paper):
    """ISO 14289-1:2014, 7.21.4 and 7.21.7."""
    fonts = ask("pdffonts", paper[1]).stdout.splitlines()[2:]
    assert fonts
    assert all(row.split()[-5:-2][0] == "yes" and row.split()[-5:-2][2] == "yes" for row in fonts), fonts


def test_it_claims_what_it_is(paper):
    """ISO 14289-1:2014, 5 and 7.1: `pdfuaid:part`, a title that viewers show, a language, a direction, tags."""
    name, path, language = paper
    with pikepdf.open(path) as pdf:
        data = xml.fromstring(pdf.Root.Metadata.read_bytes().decode("utf-8"))
        assert [one.text for one in data.iterfind(".//pdfuaid:part", NAMES)] == ["1"]
        assert str(pdf.docinfo["/Title"]).strip()
        assert [one.text for one in data.iterfind(".//dc:title/rdf:Alt/rdf:li", NAMES)] == [str(pdf.docinfo["/Title"])]
        assert pdf.Root.ViewerPreferences.DisplayDocTitle is True
        assert pdf.Root.ViewerPreferences.get("/Direction", "/L2R") == ("/R2L" if language == "ar" else "/L2R")
        assert str(pdf.Root.Lang).split("-")[0] == language
        assert pdf.Root.MarkInfo.Marked is True
        archived = [one.text for one in data.iterfind(".//pdfaid:part", NAMES)]
        assert archived == ([] if name in OTHERS else ["2"])


def test_headings_begin_at_one_and_skip_no_level(paper):
    """ISO 14289-1:2014, 7.4.2. Pages of single pictures have none: a picture says itself what it is."""
    name, path, _ = paper
    with pikepdf.open(path) as pdf:
        headings = [element for element in structure.tree(pdf).walk() if re.fullmatch("H[1-6]", element.role)]
        if name in ("pictures", "inside") and not headings:
            return
        levels = [int(element.role[1]) for element in headings]
        assert levels and levels[0] == 1, levels
        assert all(after <= before + 1 for before, after in zip(levels, levels[1:])), levels
        assert all(element.text() for element in headings)


def test_figures_say_what_they_show_and_tables_have_heads(paper):
    """ISO 14289-1:2014, 7.3 and 7.5."""
    with pikepdf.open(paper[1]) as pdf:
        tree = structure.tree(pdf)
        assert all(str(figure.entry.get("/Alt", "")).strip() for figure in tree.all("Figure"))
        for table in tree.all("Table"):
            assert any(cell.role == "TH" for row in rows(table) for cell in row.elements())


def test_pages_come_in_the_order_of_reading(paper):
    """ISO 14289-1:2014, 7.2: going through the tree never leads back to an earlier page."""
    with pikepdf.open(paper[1]) as pdf:
        number = {page.objgen: place for place, page in enumerate(pdf.pages)}
        seen = [number[element.page.objgen] for element in structure.tree(pdf).walk() if element.page is not None and not element.elements()]
        assert seen
        assert seen == sorted(seen)
        assert set(seen) == set(range(len(pdf.pages))), "a page without a word in the tree"


# ---- booklets -----------------------------------------------------------------------------------------


def without_page_numbers(text: str) -> list[str]:
    """The words of pages, but for those of the line that counts pages."""
    western = str.maketrans("٠١٢٣٤٥٦٧٨٩", "0123456789")
    marks = {code: None for code in (0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A))}
    kept = re.sub(r"Page \d+ of \d+", "", text.translate(western).translate(marks))
    if "صفحة" in kept:
        # The pieces of this line come in any order: figures are compared in English.
        kept = re.sub(r"صفحة|من|\d+", " ", kept)
    # A reader orders columns by their places on the page, which are others on a larger one: all words, whatever their order.
    return sorted(kept.split())


@pytest.mark.parametrize("language", BOOKLETS.values())
def test_every_sheet_is_in_the_booklet_as_it_is_alone(language, papers, tmp_path):
    """Text page by page, in order; the pages of a sheet follow one another, and the contents name the page each begins on."""
    path, _ = papers[f"booklet-{language}"]
    with pikepdf.open(path) as pdf:
        tree = structure.tree(pdf)
        number = {page.objgen: place for place, page in enumerate(pdf.pages, 1)}
        begins = [(str(heading.title or heading.text()), number[next(e.page for e in heading.walk() if e.page is not None).objgen]) for heading in tree.all("H1")]
        entries = [entry.text() for entry in tree.all("TOCI")]
        labels = pdf.Root.PageLabels
        assert len(entries) == len(begins) - 1 and labels is not None
        western = str.maketrans("٠١٢٣٤٥٦٧٨٩", "0123456789")
        for entry, (title, page) in zip(entries, begins[1:]):
            assert re.search(rf"(?<!\d){page}(?!\d)", entry.translate(western)), (entry, title, page)
            assert any(word in entry for word in title.split()), (entry, title)
        with pdf.open_outline() as outline:
            assert [str(one.title) for one in outline.root] == [title for title, _ in begins]
    order = [("right-thumb", "guide"), ("right-thumb", "card"), None, ("both-hands", "letter"), ("both-hands", "diary")]
    at, starts = 2, [page for _, page in begins]
    for item in order:
        assert at in starts, "a sheet does not begin where the one before ends"
        if item is None:
            at = next(page for page in starts if page > at)
            continue
        example, sheet = item
        program.run("build", program.ROOT / "examples" / f"{example}.yaml", "--language", language, "--sheets", sheet, "--print", "standard", "--paper", "a4", "--out", tmp_path)
        alone = next(tmp_path.glob(f"{sheet}-*-{language}.pdf"))
        with pikepdf.open(alone) as pdf:
            count = len(pdf.pages)
        for page in range(1, count + 1):
            bound = Counter(without_page_numbers(page_text(path, at + page - 1, at + page - 1)))
            single = Counter(without_page_numbers(page_text(alone, page, page)))
            # By itself a guide has a line of contents on its first page; the booklet has contents of its own.
            assert not bound - single and (not single - bound or (sheet == "guide" and page == 1)), (item, page)
        alone.unlink()
        at += count
    with pikepdf.open(path) as pdf:
        assert at == len(pdf.pages) + 1
