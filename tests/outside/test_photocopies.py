"""Sheets stay readable on a bad copy: 150 dots to the inch, black or white and nothing between, also blurred and askew.

The limits are what these sheets reach with some room below, not a standard. Words are read by Tesseract (`apt install
tesseract-ocr`), which knows English here; a person reads more than it does, above all white letters on black.
"""

import html
import re
import subprocess
from collections import Counter
from pathlib import Path

import pytest
from PIL import Image, ImageFilter

import program
from readers import ask, page_text

DOTS = 150
# The least share of the words of a sheet that is read again from a plain copy and from a bad one.
PLAIN, BAD = 0.9, 0.8
SHEETS = ("guide", "card", "diary", "exercises", "letter")
CASES = ("both-hands", "right-thumb")


@pytest.fixture(scope="session")
def sheets(tmp_path_factory) -> dict[tuple[str, str], Path]:
    made = {}
    for case in CASES:
        out = tmp_path_factory.mktemp(case)
        program.run("build", program.ROOT / "examples" / f"{case}.yaml", "--language", "en", "--print", "standard", "--sheets", ",".join(SHEETS), "--out", out)
        for sheet in SHEETS:
            made[case, sheet] = next(out.glob(f"{sheet}-*.pdf"))
    return made


def plain(page: Image.Image) -> Image.Image:
    return page.point(lambda value: 255 if value >= 128 else 0)


def bad(page: Image.Image) -> Image.Image:
    """A copy of a copy: blurred, a degree askew, and too dark."""
    turned = page.filter(ImageFilter.GaussianBlur(0.9)).rotate(0.8, resample=Image.BICUBIC, fillcolor=255)
    return turned.point(lambda value: 255 if value >= 150 else 0)


def scanned(path: Path, folder: Path) -> list[Image.Image]:
    done = ask("pdftoppm", "-r", DOTS, "-gray", path, folder / path.stem)
    assert done.returncode == 0, done.stderr
    return [Image.open(page) for page in sorted(folder.glob(f"{path.stem}-*.pgm"))]


def words(text: str) -> Counter:
    return Counter(word for word in re.findall(r"[a-z]+", text.lower()) if len(word) > 3)


def read(page: Image.Image, folder: Path) -> Counter:
    """The words of a picture. Twice as large, as the reader is used to; once as it is and once with black and white
    changed, since it takes no notice of white letters on black."""
    found = Counter()
    for picture in (page, page.point(lambda value: 255 - value)):
        file = folder / "page.png"
        picture.resize((picture.width * 2, picture.height * 2), Image.BICUBIC).save(file)
        done = subprocess.run(
            [program.tool("tesseract"), str(file), "-", "-l", "eng", "--psm", "11", "--dpi", "300"],
            capture_output=True, text=True, encoding="utf-8", check=True, env={"OMP_THREAD_LIMIT": "1", "PATH": "/usr/bin:/bin:/usr/local/bin"},
        )
        found |= words(done.stdout)
    return found


def recall(path: Path, copied, folder: Path, most: int) -> float:
    wanted, met = 0, 0
    for number, page in enumerate(scanned(path, folder)[:most], 1):
        on_page = words(page_text(path, number, number))
        wanted += on_page.total()
        met += (on_page & read(copied(page), folder)).total()
    return met / wanted


# Reading takes seconds a page: each sheet once, and those with the smallest letters also from a bad copy.
@pytest.mark.parametrize(
    ("sheet", "copied", "least"),
    [*((sheet, plain, PLAIN) for sheet in SHEETS), *((sheet, bad, BAD) for sheet in ("guide", "card", "letter"))],
)
def test_words_are_read_from_a_copy(sheet, copied, least, sheets, tmp_path):
    share = recall(sheets["right-thumb", sheet], copied, tmp_path, most=2)
    print(f"{sheet} {copied.__name__}: {share:.3f}")
    assert share >= least, f"{share:.3f}"


# ---- patterns -----------------------------------------------------------------------------------------

# What stands beside each sample in the keys of strips and calendars, by the page of the guide of both hands.
# The keys of strips and of calendars: patterns stand beside those of their own key.
KEYS = (("Splint on", "Splint off", "On for hard tasks"), ("Build up.", "Nights.", "Nights and hard"))
SAMPLES = tuple(sample for key in KEYS for sample in key)
# How far two patterns are apart on a copy at least: the mean difference of ink over the parts of a sample.
APART = 0.12


def places(path: Path, page: int, wanted: str) -> list[tuple[float, float]]:
    """Where words stand on a page: left edge and middle, points from the top left."""
    text = ask("pdftotext", "-bbox", "-f", page, "-l", page, path, "-").stdout
    boxes = [
        (html.unescape(word), float(x), (float(top) + float(bottom)) / 2)
        for x, top, bottom, word in re.findall(r'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*?)</word>', text)
    ]
    pieces = wanted.split()
    return [
        (boxes[at][1], boxes[at][2])
        for at in range(len(boxes) - len(pieces) + 1)
        if [box[0] for box in boxes[at : at + len(pieces)]] == pieces and abs(boxes[at][2] - boxes[at + len(pieces) - 1][2]) < 3
    ]


def ink(page: Image.Image, left: float, middle: float) -> tuple[float, ...]:
    """How black the parts of a sample are: it stands before its words, 26 points wide and 12 high."""
    scale = DOTS / 72
    x0, x1, y0, y1 = left - 30, left - 7, middle - 4.5, middle + 4.5
    parts = []
    for row in range(3):
        for column in range(4):
            box = (
                x0 + (x1 - x0) * column / 4, y0 + (y1 - y0) * row / 3, x0 + (x1 - x0) * (column + 1) / 4, y0 + (y1 - y0) * (row + 1) / 3,
            )
            part = page.crop(tuple(round(edge * scale) for edge in box))
            parts.append(1 - sum(part.tobytes()) / (255 * part.width * part.height))
    return tuple(parts)


def difference(one, other) -> float:
    return sum(abs(a - b) for a, b in zip(one, other)) / len(one)


def samples(pages: list[Image.Image], path: Path) -> dict[str, tuple[float, ...]]:
    """The samples of the keys. A key begins at the edge of its column, 40 mm from that of the paper; the same words elsewhere
    have no sample before them."""
    found = {}
    for number, page in enumerate(pages, 1):
        words = [(wanted, *place) for wanted in SAMPLES for place in places(path, number, wanted)]
        for wanted, left, middle in words:
            first = min(x for _, x, y in words if abs(y - middle) < 2)
            if first < 40 / 25.4 * 72:
                found.setdefault(wanted, ink(page, left, middle))
    return found


@pytest.mark.parametrize("copied", [plain, lambda page: page.filter(ImageFilter.GaussianBlur(0.9)).point(lambda value: 255 if value >= 150 else 0)], ids=["plain", "blurred"])
def test_patterns_of_strips_and_calendars_stay_apart_on_a_copy(copied, sheets, tmp_path):
    """On, off, only for hard tasks; building up, nights: told apart by pattern, so also where every grey is lost."""
    path = sheets["both-hands", "guide"]
    found = samples([copied(page) for page in scanned(path, tmp_path)], path)
    assert set(found) == set(SAMPLES)
    near = {(a, b): difference(found[a], found[b]) for key in KEYS for a in key for b in key if a < b}
    print({key: round(value, 2) for key, value in near.items()})
    assert all(value > APART for key, value in near.items()), {key: round(value, 3) for key, value in near.items() if value <= APART}
