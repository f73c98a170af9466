"""A sheet in two languages beside each other: each column says what the sheet says by itself in that language.

Text and its language from the tag tree: ISO 32000-1:2008, 14.7 and 14.9.2 (natural language specification).
"""

import re
from collections import Counter

import pikepdf
import pytest

import program
import structure

SHEETS = ("guide", "card", "exercises", "letter")
CASES = [("right-thumb", "de"), ("both-hands", "zh-Hans"), ("right-thumb", "ar"), ("both-hands", "es"), ("both-hands", "en-XA")]


@pytest.fixture(scope="module", params=CASES, ids=lambda case: "-".join(case))
def made(request, tmp_path_factory):
    """Where the sheets of a case are, and the tag of the person's language."""
    example, tag = request.param
    out = tmp_path_factory.mktemp(f"{example}-{tag}")
    program.run(
        "build", program.ROOT / "examples" / f"{example}.yaml", "--language", f"{tag},en", "--print", "standard",
        "--sheets", ",".join(SHEETS), "--out", out,
    )
    program.run(
        "build", program.ROOT / "examples" / f"{example}.yaml", "--language", tag, "--with", "en", "--print", "standard",
        "--sheets", ",".join(SHEETS), "--out", out,
    )
    return out, tag


def column(element: structure.Element, language: str, under: str, found: list[str]) -> list[str]:
    """Texts and descriptions below an element that are in a language; `under` is the language that it stands in."""
    if element.role == "THead" or element.role == "TR" and all(cell.role == "TH" for cell in element.elements()):
        # Said again wherever a table goes on overleaf.
        return found
    under = element.language or under
    if under == language:
        found.append(element.alt or "")
        found.extend(child for child in element.children if isinstance(child, str))
    for child in element.elements():
        column(child, language, under, found)
    return found


def letters(texts: list[str]) -> Counter:
    """Letters and figures, however lines and words are divided."""
    return Counter(character for character in "".join(texts) if character.isalnum())


@pytest.mark.parametrize("sheet", SHEETS)
def test_each_column_says_what_its_sheet_says_by_itself(made, sheet):
    out, tag = made
    found = sorted(out.glob(f"{sheet}-*-{tag}-en.pdf"))
    if not found:
        assert sheet == "exercises", "only exercises may be missing: where none are allowed"
        return
    with pikepdf.open(found[0]) as pdf:
        root, whole = structure.tree(pdf), str(pdf.Root.Lang)
        note = root.all("P")[0].text()
        for own in (tag, "en"):
            alone = next(path for path in out.glob(f"{sheet}-*-{own}.pdf") if f"-{tag}-{own}" not in path.name)
            with pikepdf.open(alone) as by_itself:
                language = str(by_itself.Root.Lang)
                wanted = letters(column(structure.tree(by_itself), language, language, []))
            # The line for the clinician stands in no sheet by itself.
            said = letters(column(root, language, whole, [])) - (letters([note] * (len(root.all("H1")) // 2)) if own == "en" else Counter())
            missing, surplus = wanted - said, said - wanted
            # By itself a long guide has a line of contents on its first page.
            assert not surplus and (sheet == "guide" or not missing), (own, missing, surplus)
            assert sum(missing.values()) < 0.06 * sum(wanted.values()), (own, missing)


def test_the_columns_are_as_many_and_as_long_on_every_page(made):
    """Where one column has a heading, the other has one at the same height: the page is one, and so is its turning."""
    out, tag = made
    for path in out.glob(f"*-{tag}-en.pdf"):
        with pikepdf.open(path) as pdf:
            headings = [one for one in structure.tree(pdf).walk() if re.fullmatch("H[12]", one.role)]
            page = lambda one: next(part.page for part in one.walk() if part.page is not None).objgen
            assert len(headings) % 2 == 0 and headings
            for own, other in zip(headings[::2], headings[1::2]):
                assert own.role == other.role and page(own) == page(other), (path.name, own.text(), other.text())
