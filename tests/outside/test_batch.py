"""Lists of cases as other people's programs write them, and the joined PDF as other people's programs read it.

`openpyxl` writes workbooks (ECMA-376), `pikepdf` and `qpdf` read the PDF (ISO 32000-1), `pdfua` holds it against ISO 14289-1.
Each joined guide is laid beside the same guide by itself: words, tags and pixels.
"""

import datetime
import json
import zipfile
from collections import Counter

import openpyxl
import pikepdf
import pytest

import pdfua_report
import program
import structure
from readers import ask, page_text

MORNING = program.ROOT / "examples" / "morning-list"
HEADS = ("Ref", "Name", "Hand", "Splint", "For", "Fitted", "Review", "Language", "Day", "Night")
MAPPING = """
columns:
  Ref: person.reference
  Name: person.name
  Hand: hand
  Splint: orthosis
  For: condition
  Fitted: fitted
  Review: review
  Language: language
  Day: day.up
  Night: day.bed
"""
DAY, MONTH = datetime.date(2027, 3, 1), datetime.date(2027, 3, 29)
ROW = ["HR-1", "Ana Vale", "right", "forearm-thumb-spica", "de-quervain", DAY, MONTH, "en", datetime.time(7, 0), datetime.time(22, 30)]


def run(folder, book, mapping=MAPPING, *more):
    """The report of a workbook's rows, and how the run ended."""
    path, columns, out = folder / "cases.xlsx", folder / "mapping.yaml", folder / "out"
    book.save(path)
    columns.write_text(mapping, encoding="utf-8")
    done = program.run("batch", path, "--mapping", columns, "--out", out, "--sheets", "card", *more, check=False)
    report = out / "batch.jsonl"
    lines = report.read_text(encoding="utf-8").splitlines() if report.exists() else []
    return done, [json.loads(line) for line in lines][1:]


def workbook(*rows):
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Cases"
    sheet.append(HEADS)
    for row in rows:
        sheet.append(row)
    return book


def faults(entry) -> str:
    return " ".join(f"{finding['message']} {' '.join(finding['notes'])}" for finding in entry["findings"])


def test_dates_and_times_of_a_workbook_arrive_as_they_are(tmp_path):
    done, rows = run(tmp_path, workbook(ROW))
    assert done.returncode == 0, done.stderr + done.stdout
    record = json.loads(next((tmp_path / "out").glob("record-*.json")).read_text(encoding="utf-8"))
    text = json.dumps(record)
    assert rows[0]["state"] == "built" and rows[0]["id"] == "hr-1"
    assert "2027-03-01" in text and "2027-03-29" in text


def test_each_bad_row_is_refused_for_its_own_cell(tmp_path):
    rows = [list(ROW) for _ in range(6)]
    for number, row in enumerate(rows):
        row[0] = f"HR-{number}"
    rows[1][5] = "2/3/2026"
    rows[2][5] = "=TODAY()"
    rows[3][6] = datetime.datetime(2027, 3, 29, 9, 30)
    rows[4][2] = "rihgt"
    rows[5][0] = datetime.date(2027, 3, 1)
    done, report = run(tmp_path, workbook(*rows))
    assert done.returncode == 1
    assert [row["state"] for row in report] == ["built"] + ["refused"] * 5
    for row, (said, cell) in zip(report[1:], [
        ("can be read as more than one day", "F3"), ("a formula whose value was not saved", "F4"),
        ("a date and a time at once", "G5"), ("`rihgt` is no", "C6"), ("holds a date here", "A7"),
    ]):
        assert said in faults(row) and f"cell {cell}" in faults(row), faults(row)
        assert row["findings"][0]["place"]["line"] == int(cell[1:])


def test_merged_cells_a_hidden_sheet_and_two_sheets(tmp_path):
    book = workbook(ROW)
    book.active.merge_cells("B2:C2")
    done, _ = run(tmp_path, book)
    assert done.returncode == 1 and "B2 to C2 are merged" in done.stderr
    book = workbook(ROW)
    book.create_sheet("Old").sheet_state = "hidden"
    assert run(tmp_path, book)[0].returncode == 0
    book["Old"].sheet_state = "visible"
    done, _ = run(tmp_path, book)
    assert done.returncode == 1 and "several sheets: Cases, Old" in done.stderr
    assert run(tmp_path, book, MAPPING + "sheet: Cases\n")[0].returncode == 0


def test_heads_further_down_and_a_hundred_columns(tmp_path):
    book = workbook(ROW)
    for column in range(11, 111):
        book.active.cell(1, column, f"more {column}")
        book.active.cell(2, column, column)
    book.active.insert_rows(1, 2)
    book.active["A1"] = "The list of today"
    done, rows = run(tmp_path, book, MAPPING + "header_row: 3\n")
    assert done.returncode == 0 and rows[0]["place"].endswith("cases.xlsx:4"), done.stderr


def test_a_bomb_is_stopped(tmp_path):
    """A part that says it is small and unpacks to a gigabyte is not unpacked to its end."""
    book = workbook(ROW)
    run(tmp_path, book)
    with zipfile.ZipFile(tmp_path / "cases.xlsx", "a", zipfile.ZIP_DEFLATED) as bomb, bomb.open("xl/media/image1.png", "w", force_zip64=True) as part:
        for _ in range(1024):
            part.write(bytes(1 << 20))
    done = program.run("batch", tmp_path / "cases.xlsx", "--mapping", tmp_path / "mapping.yaml", "--out", tmp_path / "bomb", check=False)
    assert done.returncode == 1 and "unpacks to more than" in done.stderr
    assert not (tmp_path / "bomb").exists()


# ---- the joined PDF -----------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def morning(tmp_path_factory):
    """The folder of the example's guides, and all of them in one PDF."""
    out = tmp_path_factory.mktemp("morning")
    program.run("batch", MORNING / "cases.csv", "--mapping", MORNING / "mapping.yaml", "--out", out, "--merged", out / "all.pdf")
    rows = [json.loads(line) for line in (out / "batch.jsonl").read_text(encoding="utf-8").splitlines()][1:]
    guides = [out / next(file["name"] for file in row["files"] if file["name"].startswith("guide-")) for row in rows]
    assert len(guides) == 4
    return guides, out / "all.pdf"


def beginnings(guides) -> list[tuple[int, int]]:
    """The page each guide begins on, from 0, and how many it has."""
    found, at = [], 0
    for guide in guides:
        with pikepdf.open(guide) as pdf:
            count = len(pdf.pages)
        found.append((at, count))
        at += count + count % 2
    return found


def test_the_joined_file_is_sound_and_claims_what_it_is(morning):
    """ISO 32000-1, 7; ISO 14289-1, 5 and 7.1; ISO 19005-2, 6.6.4."""
    done = ask("qpdf", "--check", morning[1])
    assert done.returncode == 0 and "WARNING" not in done.stdout + done.stderr, done.stdout + done.stderr
    report = pdfua_report.check([morning[1]])[str(morning[1])]
    assert report["findings"] == []
    assert {entry["rule_id"] for entry in report["skipped"]} <= set(pdfua_report.INSTEAD)
    with pikepdf.open(morning[1]) as pdf:
        assert pdf.check_pdf_syntax() == [] if hasattr(pdf, "check_pdf_syntax") else pdf.check() == []
        metadata = pdf.Root.Metadata.read_bytes().decode("utf-8")
        assert "<pdfuaid:part>1</pdfuaid:part>" in metadata and "<pdfaid:part>2</pdfaid:part>" in metadata
        assert pdf.Root.MarkInfo.Marked is True and pdf.Root.ViewerPreferences.DisplayDocTitle is True
        assert str(pdf.docinfo["/Title"]) == "all"
        assert len(pdf.Root.OutputIntents) == 1


def test_every_guide_begins_on_a_right_hand_page_with_a_bookmark(morning):
    guides, joined = morning
    places = beginnings(guides)
    with pikepdf.open(joined) as pdf:
        number = {page.objgen: place for place, page in enumerate(pdf.pages)}
        assert len(pdf.pages) == sum(count + count % 2 for _, count in places)
        with pdf.open_outline() as outline:
            assert [str(item.title).split(",")[0] for item in outline.root] == ["hr-3101", "hr-3102", "hr-3103", "hr-3104"]
            assert [number[item.destination[0].objgen] for item in outline.root] == [at for at, _ in places]
            assert all(item.children for item in outline.root), "the bookmarks of each guide stand below its own"
        assert all(at % 2 == 0 for at, _ in places)
        for at, count in places:
            if count % 2:
                blank = pdf.pages[at + count]
                assert "/Contents" not in blank and blank.MediaBox == pdf.pages[at].MediaBox


def test_every_guide_is_in_it_word_by_word_tag_by_tag_and_pixel_by_pixel(morning, tmp_path):
    guides, joined = morning
    with pikepdf.open(joined) as whole:
        parts = [element for element in structure.tree(whole).walk() if element.role == "Part" and element.language]
        assert [part.language for part in parts] == ["en", "es", "ar", "en"]
        seen = [number for part in parts for number in [next(e.page for e in part.walk() if e.page is not None).objgen]]
        assert seen == [whole.pages[at].objgen for at, _ in beginnings(guides)]
        for guide, part, (at, count) in zip(guides, parts, beginnings(guides)):
            with pikepdf.open(guide) as alone:
                own = structure.tree(alone)
                roles = lambda elements: Counter(element.role for element in elements)
                below = roles(part.walk())
                wanted = roles(own.walk())
                wanted["Part"] += wanted.pop("Document")
                below.pop("StructTreeRoot", None), wanted.pop("StructTreeRoot", None)
                assert below == wanted
                assert part.text() == own.text()
            for page in range(1, count + 1):
                assert page_text(joined, at + page, at + page) == page_text(guide, page, page)
            for name, file, first in (("joined", joined, at + 1), ("alone", guide, 1)):
                ask("pdftoppm", "-r", "40", "-png", "-singlefile", "-f", first, "-l", first, file, tmp_path / name)
            assert (tmp_path / "joined.png").read_bytes() == (tmp_path / "alone.png").read_bytes()


def test_names_in_the_tree_of_tags_are_those_of_one_guide(morning):
    """ISO 32000-1, 7.9.6 and 14.7.2: names come in order, each once, and headers of cells lead to heads of their own guide."""
    with pikepdf.open(morning[1]) as pdf:
        root = pdf.Root.StructTreeRoot
        names = []
        for leaf in root.IDTree.Kids:
            own = [bytes(name) for name in list(leaf.Names)[::2]]
            assert own == sorted(own) and [bytes(limit) for limit in leaf.Limits] == [own[0], own[-1]]
            names += own
        assert names == sorted(set(names))
        keys = [int(key) for leaf in root.ParentTree.Kids for key in list(leaf.Nums)[::2]]
        assert keys == list(range(len(keys))) and int(root.ParentTreeNextKey) == len(keys)
        held = {int(key): value for leaf in root.ParentTree.Kids for key, value in zip(list(leaf.Nums)[::2], list(leaf.Nums)[1::2])}
        given = []
        for page in pdf.pages:
            given += [int(annotation.StructParent) for annotation in page.get("/Annots", [])]
            if "/StructParents" in page:
                given.append(int(page.StructParents))
                # What a page leads to is what stands on that page (14.7.4.4).
                assert all(element.Pg.objgen == page.objgen for element in held[given[-1]] if "/Pg" in element)
        assert sorted(given) == keys
        for element in structure.tree(pdf).walk():
            for header in element.attributes.get("/Headers", []):
                assert bytes(header) in names


def test_two_printers_get_the_same_bytes(morning, tmp_path):
    program.run("batch", MORNING / "cases.csv", "--mapping", MORNING / "mapping.yaml", "--out", tmp_path, "--merged", tmp_path / "all.pdf", "--threads", 2)
    assert (tmp_path / "all.pdf").read_bytes() == morning[1].read_bytes()
