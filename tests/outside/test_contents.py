"""The line of contents of a long guide: every page that it names holds the section of that name, and its links lead there.

Common practice, no source. A guide of four pages or fewer has no such line. A link is ISO 32000-1:2008, 12.5.6.5, its
destination 12.3.2. In a line from right to left words come in the order in which they are drawn, so letters are compared
as a set with counts.
"""

import dataclasses
import functools
import re
from collections import Counter

import pikepdf

import program
import structure
from readers import page_text, squeezed

LONG = 4


@dataclasses.dataclass(frozen=True)
class Entry:
    letters: Counter
    numbers: tuple[str, ...]
    # Counted from 1: where it stands, and where its link leads.
    at: int
    to: int


def letters(text: str) -> Counter:
    return Counter(c for c in squeezed(text) if c.isalpha())


@functools.cache
def page_word(language: str) -> str:
    """What "page" is in the line of contents."""
    words = (program.ROOT / "locales" / language / "guide.ftl").read_text(encoding="utf-8")
    return re.sub(r"\{.*?\}", "", re.search(r"^contents-page = (.*)$", words, re.MULTILINE).group(1))


def entries(guide) -> list[Entry]:
    """The links of the line of contents: those that lead into the guide."""
    pages = {page.objgen: number for number, page in enumerate(guide.pdf.pages, 1)}
    found = []
    for link in guide.tree.all("Link"):
        for annotation in link.objects:
            to = annotation.get("/Dest", annotation.get("/A", {}).get("/D"))
            if isinstance(to, pikepdf.String):
                to = named(guide, str(to))
            if not isinstance(to, pikepdf.Array):
                continue
            text = link.text()
            at = next(element.page for element in link.walk() if element.page is not None)
            found.append(Entry(letters(text) - letters(page_word(guide.language)), tuple(sorted(re.findall(r"\d+", text))), pages[at.objgen], pages[to[0].objgen]))
            break
    return found


def named(guide, name: str):
    """ISO 32000-1:2008, 12.3.2.3."""
    tree = pikepdf.NameTree(guide.pdf.Root.Names.Dests)
    found = tree[name]
    return found.get("/D") if isinstance(found, pikepdf.Dictionary) else found


def sections(guide) -> list[tuple[str, int]]:
    """Titles of sections with the page that they stand on."""
    pages = {page.objgen: number for number, page in enumerate(guide.pdf.pages, 1)}
    of = lambda heading: pages[next(element.page for element in heading.walk() if element.page is not None).objgen]
    return [(heading.text(), of(heading)) for heading in guide.tree.all("H2")]


def test_every_page_that_is_named_holds_that_section(guide):
    titles = sections(guide)
    starts = [index for index, page in enumerate(guide.pdf.pages, 1) if page.objgen in {part.first_page().objgen for part in structure.parts(guide.tree)}]
    for entry in entries(guide):
        assert str(entry.to) in entry.numbers, entry
        here = [title for title, page in titles if page == entry.to]
        if len(entry.numbers) == 1:
            # The other hand: its part begins there.
            assert entry.to in starts[1:]
        else:
            assert any(letters(title) == entry.letters for title in here), (entry, here)
            # Another reader finds the letters of that title on that page too.
            assert not entry.letters - letters(page_text(guide.path, entry.to, entry.to))


def test_a_short_guide_has_no_line_and_a_long_one_names_every_section(guide):
    found, count = entries(guide), len(guide.pdf.pages)
    if count <= LONG:
        assert not found
    numbers = {page.objgen: number for number, page in enumerate(guide.pdf.pages, 1)}
    for at in {entry.at for entry in found}:
        part = [part for part in structure.parts(guide.tree) if numbers[part.first_page().objgen] <= at][-1]
        # Big print has room for little on a page: there the line may stand at the foot of the second one.
        assert at - numbers[part.first_page().objgen] <= (0 if guide.printed == "standard" else 1)
        own = [entry for entry in found if entry.at == at and len(entry.numbers) > 1]
        # All but the first section, which stands on that page.
        assert len(own) == len(part.all("H2")) - 1


def test_most_long_guides_have_the_line(guides):
    """It is left out only where the first page has no room."""
    long = [guide for guide in guides.values() if len(guide.pdf.pages) > LONG]
    having = [guide for guide in long if entries(guide)]
    assert len(having) * 2 > len(long), f"{len(having)} of {len(long)}"
