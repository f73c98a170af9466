"""The pseudo language (CLDR, pseudo-locales: en-XA): English with marks on its letters, longer, in brackets.

A word without a mark is a word that no translator would see. Names, notes and what CLDR says have none.
"""

import html
import re

import pikepdf
import pytest
from babel import Locale

import program
import structure
from readers import ask
from test_first_page import Picture

CASES = ("right-thumb", "both-hands")
PAPERS = ("guide", "card", "diary", "exercises", "letter")
# What the program calls itself, and the word between the last two of a list (CLDR, listPattern of en-GB).
OWN = {"palmleaf", "and"}


@pytest.fixture(scope="module", params=CASES)
def made(request, tmp_path_factory):
    """The folder of every sheet of a case, and the words that are the case's own."""
    out = tmp_path_factory.mktemp(request.param)
    case = program.ROOT / "examples" / f"{request.param}.yaml"
    program.run("build", case, "--language", "en-XA", "--print", "standard", "--sheets", "all", "--out", out)
    locale = Locale.parse("en_GB")
    dates = [*locale.months["stand-alone"]["wide"].values(), *locale.months["format"]["abbreviated"].values(), *locale.days["stand-alone"]["wide"].values(), *locale.days["format"]["abbreviated"].values()]
    own = set(re.findall(r"\w+", case.read_text(encoding="utf-8").lower()))
    return out, own | OWN | {word.lower() for word in dates}


def bare(text: str, known: set[str]) -> set[str]:
    """Words of three letters and more with no mark on any of them. The letters of spots in a picture stand beside each
    other without a space."""
    words = {word for word in re.findall(r"[^\W\d_]{3,}", text) if word.isascii() and word.lower() not in known}
    return {word for word in words if not (set(word) <= set("ABCDEFGHIJ") and sorted(set(word)) == list(word))}


def test_every_word_on_paper_comes_from_a_message(made):
    out, known = made
    papers = [path for kind in PAPERS for path in out.glob(f"{kind}-*-en-XA.pdf")]
    assert len(papers) >= 4
    for path in papers:
        with pikepdf.open(path) as pdf:
            tree = structure.tree(pdf)
            said = [tree.text(), *(element.alt or "" for element in tree.walk())]
        for words in said:
            assert not bare(words, known), path.name


def test_every_word_on_the_telephone_and_in_the_calendar_comes_from_a_message(made):
    out, known = made
    page = next(out.glob("phone-*.html")).read_text(encoding="utf-8")
    page = re.sub(r"<(style|script)\b.*?</\1>", " ", page, flags=re.S)
    shown = re.findall(r'(?:alt|aria-label|title)="([^"]*)"', page) + [re.sub(r"<[^>]*>", " ", page)]
    for words in shown:
        assert not bare(html.unescape(words), known)
    calendar = next(out.glob("reminders-*.ics")).read_text(encoding="utf-8").replace("\r\n ", "")
    for line in re.findall(r"^(?:SUMMARY|DESCRIPTION)[^:]*:(.*)$", calendar, flags=re.M):
        assert not bare(line.replace("\\n", " "), known)


def test_a_word_that_is_in_no_message_is_seen():
    assert bare("[šţöŕéðééð] stored", set()) == {"stored"}


def test_longer_words_stay_on_the_page_and_in_their_tile(made, tmp_path):
    """No word reaches into the margin of a page, and the topmost tile of the guide holds all of its ink."""
    out, _ = made
    for path in [path for kind in PAPERS for path in out.glob(f"{kind}-*-en-XA.pdf")]:
        boxes = ask("pdftotext", "-bbox", path, "-").stdout
        width = None
        for line in boxes.splitlines():
            if size := re.search(r'<page width="([\d.]+)" height="([\d.]+)"', line):
                width, height = map(float, size.groups())
            elif word := re.search(r'<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*)</word>', line):
                left, top, right, bottom = map(float, word.groups()[:4])
                # 8 mm is the narrowest margin that a sheet has at its sides; a foot of two lines stands lower.
                assert left > 22 and right < width - 22 and top > 14 and bottom < height - 5, (path.name, line)
    picture = Picture(next(out.glob("guide-*-en-XA.pdf")), tmp_path)
    left, top, right, bottom = picture.tile()
    for edge in (top, top + 1, bottom - 2, bottom - 1):
        assert not [x for x in range(left, right) if picture.at(x, edge) > 160], f"ink reaches row {edge} of {top} to {bottom}"
