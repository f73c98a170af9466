"""The record as a page: its text is the facts of its JSON, its questions are in two languages, its tags are whole.

ISO 14289-1:2014 for the tags; that a chart says what was given is common practice, no source.
"""

import json
from collections import Counter
from pathlib import Path

import pikepdf
import pytest

import pdfua_report
import program
import structure
from readers import page_text, squeezed

# Said in other words on the page: results by their marks, days that are alike by the first and the last of them, and
# words that choose a sentence.
RIGHT_TO_LEFT = {"ar", "ur"}
ELSEWHERE = {"result", "translation", "hand", "date", "topic", "decided-by"}


@pytest.fixture(scope="module", params=[
    (example, language) for example in program.EXAMPLES for language in (*program.THOROUGH, "ru", "zh-Hans", "hi")
    if program.is_read(example.stem, language)
], ids=lambda key: f"{key[0].stem}-{key[1]}")
def record(request, tmp_path_factory):
    """The record of an example in a language: its JSON, and the page."""
    example, language = request.param
    out = tmp_path_factory.mktemp("record")
    done = program.run("build", example, "--language", language, "--sheets", "record,reminders", "--out", out, "--format", "json")
    files = [Path(name) for name in json.loads(done.stdout)[0]["files"]]
    page = next(path for path in files if path.suffix == ".pdf")
    data = json.loads(page.with_suffix(".json").read_text(encoding="utf-8"))
    return language, data, page, structure.tree(pikepdf.open(page))


# A line from right to left has its words in the order in which they are drawn, some without their spaces: so a whole
# paragraph is compared by its letters with counts.
def is_said(fact: str, text: str, parts: list[str], backwards: bool) -> bool:
    return squeezed(fact) in text or (backwards and any(Counter(squeezed(fact)) == Counter(squeezed(part)) for part in parts))


def leaves(value, name=""):
    if isinstance(value, dict):
        for key, field in value.items():
            yield from leaves(field, key)
    elif isinstance(value, list):
        for item in value:
            yield from leaves(item, name)
    elif value is not None and not isinstance(value, bool):
        yield name, str(value)


def test_every_fact_is_on_the_page(record):
    language, data, _, tree = record
    text, parts = squeezed(tree.text()), [element.text() for element in tree.all("P")]
    backwards = language in RIGHT_TO_LEFT
    wanted = [(name, fact) for name, fact in leaves(data) if name not in ELSEWHERE]
    assert not [fact for name, fact in wanted if not is_said(fact, text, parts, backwards and name == "asked")]


def test_first_and_last_day_of_the_plan_are_on_the_page(record):
    _, data, page, _ = record
    text = page_text(page, 1)
    for hand in data["hands"]:
        days = hand["plan"]["days"]
        assert days[0]["date"] in text and days[-1]["date"] in text


def test_questions_are_tagged_in_the_language_of_the_person(record):
    language, data, _, tree = record
    if language == "en":
        return
    texts = [element.text() for element in tree.walk() if (element.language or "").split("-")[0] == language.split("-")[0]]
    backwards = language in RIGHT_TO_LEFT
    for question in (question for hand in data["hands"] for question in hand["teach-back"]):
        assert any(is_said(question["asked"], squeezed(text), [text], backwards) for text in texts), question["asked"]


def test_tables_have_heads_and_the_page_its_headings(record):
    _, data, _, tree = record
    tables = tree.all("Table")
    assert len(tables) > 4
    assert all(table.all("TH") for table in tables)
    assert len(tree.all("H1")) == 1


def test_the_page_keeps_pdf_ua(record):
    *_, page, _ = record
    assert pdfua_report.check([page])[str(page)]["findings"] == []


def test_usually_two_to_four_pages(record):
    _, data, page, _ = record
    pages = len(pikepdf.open(page).pages)
    assert 2 <= pages <= 3 + 3 * len(data["hands"])


def test_names_of_files_say_nothing_of_the_chart(record):
    _, data, page, _ = record
    for hand in data["hands"]:
        for word in (hand["orthosis"], *(condition["id"] for condition in hand["conditions"]), data["person"] or "-"):
            assert word == "-" or word.lower() not in page.name
