"""The record as a page: its text is the facts of its JSON, its questions are in two languages, its tags are whole.

ISO 14289-1:2014 for the tags; that a chart says what was given is common practice, no source.
"""

import json
from pathlib import Path

import pikepdf
import pytest

import pdfua_report
import program
import structure
from readers import page_text, squeezed

# Said in other words on the page: results by their marks, days that are alike by the first and the last of them, and
# words that choose a sentence.
ELSEWHERE = {"result", "translation", "hand", "date", "topic", "decided-by"}


@pytest.fixture(scope="module", params=[
    (example, language) for example in program.EXAMPLES for language in program.languages()
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
    _, data, _, tree = record
    text = squeezed(tree.text())
    lost = [(name, fact) for name, fact in leaves(data) if name not in ELSEWHERE and squeezed(fact) not in text]
    assert not lost


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
    said = [squeezed(element.text()) for element in tree.walk() if (element.language or "").startswith(language)]
    for question in (question for hand in data["hands"] for question in hand["teach-back"]):
        assert any(squeezed(question["asked"]) in text for text in said), question["asked"]


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
