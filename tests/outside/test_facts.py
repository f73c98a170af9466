"""Fact sheets on paper: names, durations and orthoses as the content has them, read back by another PDF reader.

PDF/UA-1 is ISO 14289-1:2014. Durations are read from the YAML a second time; plurals are not compared, only their numbers.
"""

import re

import pikepdf
import pytest

import cldr
import pdfua_report
import program
import structure
from content import Words, days, folder
from readers import page_text, squeezed

CONDITIONS = ("de-quervain", "flexor-zone-two-repair", "trigger-finger", "fifth-metacarpal-neck-fracture", "tfcc-injury")
LANGUAGES = ("en", "es", "ar")
SETTINGS = (("standard", "a4", "right"), ("large", "letter", "left"), ("giant", "a4", "left"))


@pytest.fixture(scope="module")
def sheets(tmp_path_factory):
    """Every sheet by reader, condition, language and print size."""
    built = {}
    for size, paper, side in SETTINGS:
        out = tmp_path_factory.mktemp(f"facts-{size}")
        common = ("--print", size, "--paper", paper, "--side", side, "--out", out)
        program.run("teach", "facts", *CONDITIONS, "--language", "en,es,ar", *common)
        program.run("teach", "facts", *CONDITIONS, "--for", "students", *common)
        ending = "" if size == "standard" else f"-{size}"
        for condition in CONDITIONS:
            built["students", condition, "en", size] = out / f"students-{condition}-en{ending}.pdf"
            for tag in LANGUAGES:
                built["facts", condition, tag, size] = out / f"facts-{condition}-{tag}{ending}.pdf"
    return built


@pytest.fixture(scope="module")
def standard(sheets):
    return {key[:3]: path for key, path in sheets.items() if key[3] == "standard"}


def whole(path) -> str:
    with pikepdf.open(path) as pdf:
        count = len(pdf.pages)
    return " ".join(page_text(path, number, number) for number in range(1, count + 1))


def in_order(path) -> str:
    """Its text in the order of its tags: columns stand after one another."""
    with pikepdf.open(path) as pdf:
        return squeezed(structure.tree(pdf).text())


def lengths(condition: dict, phase: dict) -> list[int]:
    """The numbers of weeks that a sheet gives for a phase; none where nothing is said."""
    for given in condition.get("protocol", {}).get("lengths", []):
        if given["phase"] == phase["id"]:
            return [days(given["at_least"]) // 7, days(given["at_most"]) // 7]
    return [days(phase[key]) // 7 for key in ("lasts", "lasts_up_to") if key in phase]


def test_pdfua_finds_nothing(sheets):
    reports = pdfua_report.check(sheets.values())
    assert len(reports) == len(sheets)
    for path, report in reports.items():
        assert report["findings"] == [] and report["exit_code"] == 0, path


def test_patients_read_the_words_of_their_language(standard):
    for (reader, condition, tag), path in standard.items():
        if reader != "facts" or tag == "ar":
            continue
        text = squeezed(whole(path))
        words = Words(tag, cldr.LOCALES[tag])
        for part in ("name", "what", "aim"):
            assert squeezed(words.say(f"condition-{condition}-{part}")) in text, (condition, tag, part)
        assert squeezed(words.say("facts-own-guide")) in text, (condition, tag)


def test_durations_are_those_of_the_content(standard):
    for (reader, condition, tag), path in standard.items():
        if reader != "facts" or tag != "en":
            continue
        text = whole(path)
        content = folder("conditions")[condition]
        steps = re.findall(r"Step (\d+), ([^:]*):", re.sub(r"\s+", " ", text))
        assert len(steps) == len(content["phases"]), (condition, steps)
        for (_, said), phase in zip(steps, content["phases"]):
            assert [int(number) for number in re.findall(r"\d+", said)] == lengths(content, phase), (condition, phase["id"], said)


def test_the_picture_says_every_structure(standard):
    for (reader, condition, tag), path in standard.items():
        words = Words(tag, cldr.LOCALES[tag])
        with pikepdf.open(path) as pdf:
            alts = " ".join(str(thing.get("/Alt", "")) for thing in pdf.objects if isinstance(thing, pikepdf.Dictionary))
        for name in folder("conditions")[condition]["structures"]:
            assert words.say(f"structure-{name}") in alts, (reader, condition, tag, name)


def test_students_read_reasons_codes_and_sources(standard):
    for (reader, condition, _), path in standard.items():
        if reader != "students":
            continue
        text = in_order(path)
        content = folder("conditions")[condition]
        assert squeezed(content["icd10cm"]["unspecified"]) in text
        for phase in content["phases"]:
            for requirement in phase.get("requires", []) if phase["wear"] != "off" else []:
                assert squeezed(requirement["because"]) in text, (condition, phase["id"], requirement["joint"])
        assert squeezed(content["evidence"]) in text, condition


def test_the_side_is_the_one_asked_for(sheets):
    for (reader, condition, tag, size), path in sheets.items():
        if tag != "en":
            continue
        text = squeezed(whole(path))
        wanted, other = ("right", "left") if size == "standard" else ("left", "right")
        assert squeezed(f"The pictures show the {wanted} hand") in text, (reader, condition)
        assert squeezed(f"The pictures show the {other} hand") not in text, (reader, condition)
