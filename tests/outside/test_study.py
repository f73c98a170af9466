"""Study cards as a printer and a card program see them; charts and questions as other readers do.

Positions come from `pdftotext -bbox` (Poppler). CSV is RFC 4180. PDF/UA-1 is ISO 14289-1:2014.
"""

import csv
import io
import re
import subprocess
import xml.etree.ElementTree as xml
from collections import Counter

import pikepdf
import pytest

import program

MM = 72 / 25.4
WIDE, HIGH, COLUMNS, ROWS = 96 * MM, 66 * MM, 2, 4
PAPERS = {"a4": (210 * MM, 297 * MM), "letter": (215.9 * MM, 279.4 * MM)}


def teach(folder, *args):
    done = subprocess.run(
        [program.binary(), "teach", *args, "--out", folder], cwd=program.ROOT, capture_output=True, text=True
    )
    assert done.returncode == 0, done.stderr
    return folder


def pages(path):
    """Each page as its width, height and words with the place of their upper left corner, in points."""
    text = subprocess.run(
        [program.tool("pdftotext"), "-bbox", str(path), "-"], capture_output=True, check=True
    ).stdout.decode("utf-8")
    text = re.sub(r"<!DOCTYPE[^>]*>", "", text)
    found = []
    for page in xml.fromstring(text).iter("{http://www.w3.org/1999/xhtml}page"):
        words = [
            (word.text, float(word.get("xMin")), float(word.get("yMin")))
            for word in page.iter("{http://www.w3.org/1999/xhtml}word")
        ]
        found.append((float(page.get("width")), float(page.get("height")), words))
    return found


def cells(page):
    """The words of each card of a page, by column and row on the paper."""
    width, height, words = page
    left, top = (width - COLUMNS * WIDE) / 2, (height - ROWS * HIGH) / 2
    found = {}
    for text, x, y in words:
        column, row = (x - left) // WIDE, (y - top) // HIGH
        if 0 <= column < COLUMNS and 0 <= row < ROWS:
            found.setdefault((int(column), int(row)), []).append(text)
    return found


def behind(column, row, flip):
    """Where the back of a card is printed: over the long edge of upright paper columns change places, over the short
    edge rows."""
    return (COLUMNS - 1 - column, row) if flip == "long" else (column, ROWS - 1 - row)


def matching(pdf, rows, flip):
    """What does not lie behind its front, card by card."""
    sheets = pages(pdf)
    wrong = []
    for first, (front, back) in enumerate(zip(sheets[::2], sheets[1::2])):
        fronts, backs = cells(front), cells(back)
        for place in range(COLUMNS * ROWS):
            number = first * COLUMNS * ROWS + place
            if number >= len(rows):
                continue
            column, row = place % COLUMNS, place // COLUMNS
            card = rows[number]
            head = f"{card['topic']} {number + 1} "
            asked = Counter((head + card["question"]).split()) - Counter(fronts.get((column, row), []))
            told = Counter((head + card["answer"]).split()) - Counter(backs.get(behind(column, row, flip), []))
            wrong.extend((number + 1, side) for side, lost in (("front", asked), ("back", told)) if lost)
    return wrong


@pytest.fixture(scope="module")
def decks(tmp_path_factory):
    made = {}
    for paper in PAPERS:
        for flip in ("long", "short"):
            folder = tmp_path_factory.mktemp(f"{paper}-{flip}")
            made[paper, flip] = teach(
                folder, "cards", "--condition", "de-quervain,mallet-tendon", "--flip", flip, "--paper", paper
            )
    return made


def read(folder):
    text = (folder / "cards.csv").read_bytes().decode("utf-8")
    return text, list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


def test_backs_lie_behind_their_fronts_whichever_edge_the_paper_is_turned_over(decks):
    for (paper, flip), folder in decks.items():
        _, rows = read(folder)
        sheets = pages(folder / "cards.pdf")
        assert len(sheets) == 2 * -(-len(rows) // 8), "fronts and backs by turns"
        for width, height, _ in sheets:
            assert abs(width - PAPERS[paper][0]) < 0.5 and abs(height - PAPERS[paper][1]) < 0.5
        assert matching(folder / "cards.pdf", rows, flip) == [], (paper, flip)
        # The check sees a deck that was made for the other edge.
        other = "short" if flip == "long" else "long"
        assert matching(folder / "cards.pdf", rows, other) != []


def test_cards_as_values_are_what_a_card_program_reads(decks):
    texts = set()
    for folder in decks.values():
        text, rows = read(folder)
        texts.add(text)
        assert text.startswith("question,answer,topic,source,id\r\n") and text.endswith("\r\n")
        assert "\n" not in re.sub(r'"(?:[^"]|"")*"', "", text).replace("\r\n", ""), "lines end with CR LF"
        assert len({row["id"] for row in rows}) == len(rows)
        assert all(row[key] for row in rows for key in row)
    assert len(texts) == 1, "paper and edge change no card"


def test_papers_for_students_are_tagged(decks, tmp_path):
    teach(tmp_path, "chart", "--group", "elbow")
    teach(tmp_path, "chart", "--condition", "de-quervain", "--paper", "letter")
    teach(tmp_path, "questions", "--count", "2", "--seed", "3")
    files = sorted(tmp_path.glob("*.pdf")) + [decks["a4", "long"] / "cards.pdf"]
    assert len(files) == 5
    for file in files:
        with pikepdf.open(file) as pdf:
            assert bool(pdf.Root.MarkInfo.Marked), file
            assert str(pdf.Root.Lang).startswith("en"), file
            assert b"pdfuaid:part" in pdf.Root.Metadata.read_bytes(), file
            figures = [one for one in pdf.objects if isinstance(one, pikepdf.Dictionary) and one.get("/S") == "/Figure"]
            assert all(str(one.get("/Alt", "")) for one in figures), file
            if file.name.startswith("chart"):
                assert figures, "marks say what they mean"


def test_one_seed_says_the_same_on_sheet_and_key(tmp_path):
    teach(tmp_path, "questions", "--count", "6", "--seed", "11", "--group", "thumb")
    text = {
        name: subprocess.run(
            [program.tool("pdftotext"), "-layout", str(tmp_path / f"{name}-thumb-11.pdf"), "-"],
            capture_output=True, check=True, text=True,
        ).stdout.replace("\f", "\n")
        for name in ("questions", "answers")
    }
    assert all("Seed 11" in one for one in text.values())
    asked = re.findall(r"^ *(\d+)\. (.+?)$", text["questions"], re.M)
    keyed = re.findall(r"^ *(\d+)\. (.+?): ([A-D])$", text["answers"], re.M)
    assert [one[0] for one in asked] == [one[0] for one in keyed] and len(keyed) == 6
    letters = [one[2] for one in keyed]
    assert max(map(letters.count, "ABCD")) - min(map(letters.count, "ABCD")) <= 1
