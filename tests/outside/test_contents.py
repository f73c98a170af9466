"""The line of contents of a long guide: every page that it names holds the section of that name.

Common practice, no source. A guide of four pages or fewer has no such line.
"""

import re

import structure
from readers import page_text, squeezed

LONG = 4


def entries(guide) -> list[tuple[str, int, int]]:
    """The links inside the guide on the first page of each part: what an entry says, the page it names, where it stands."""
    pages = list(guide.pdf.pages)
    index = {page.objgen: number for number, page in enumerate(pages)}
    found = []
    for part in structure.parts(guide.tree):
        at = index[part.first_page().objgen]
        for link in part.all("Link"):
            own = next((element.page for element in link.walk() if element.page is not None), None)
            text = link.text()
            number = re.search(r"(\d+)\s*$", text)
            if own is not None and own.objgen == pages[at].objgen and number and not text.startswith("http"):
                found.append((re.split(r"[,،]", text)[0], int(number.group(1)), at + 1))
    return found


def sections(guide) -> list[tuple[str, int]]:
    """Titles of sections and parts with the page that they stand on."""
    index = {page.objgen: number + 1 for number, page in enumerate(guide.pdf.pages)}
    of = lambda heading: index[next(element.page for element in heading.walk() if element.page is not None).objgen]
    return [(heading.text(), of(heading)) for heading in guide.tree.all("H2")]


def test_every_page_that_is_named_holds_that_section(guide):
    titles = sections(guide)
    for text, page, at in entries(guide):
        number = re.match(r"\s*(\d+)\s+(.*)", text)
        if number is None:
            # The other hand: its part begins there.
            firsts = [part.first_page().objgen for part in structure.parts(guide.tree)]
            assert list(guide.pdf.pages)[page - 1].objgen in firsts[1:]
            continue
        title = number.group(2)
        later = [where for known, where in titles if squeezed(known) == squeezed(title) and where >= at]
        assert page == min(later), (text, titles)
        assert squeezed(title) in squeezed(page_text(guide.path, page, page))


def test_a_short_guide_has_no_line_and_a_long_one_names_its_sections(guide):
    named, count = entries(guide), len(guide.pdf.pages)
    if count <= LONG:
        assert not named
    elif named:
        first = [text for text, _, at in named if at == 1]
        # Every section after the first, and the other hand.
        own = [title for title, page in sections(guide)]
        wanted = len(own) // len(guide.hands) if len(guide.hands) > 1 else len(own)
        assert len(first) >= wanted - 2 and len(first) >= 3


def test_most_long_guides_have_the_line(guides):
    """Only where the first page has no room is it left out."""
    long = [guide for guide in guides.values() if len(guide.pdf.pages) > LONG]
    having = [guide for guide in long if entries(guide)]
    assert len(having) * 2 > len(long), f"{len(having)} of {len(long)}"
