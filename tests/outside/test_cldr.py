"""The table that the Rust suite holds the program's dates, times and plurals against is what CLDR says.

Source: Unicode CLDR 47 as read by Babel 2.18.0. Differences that are chosen are listed in cldr.py.
"""

import datetime
import json

import pytest

import cldr
from content import CONTENT, Words, read
from program import languages


def test_the_committed_table_is_what_babel_gives():
    assert cldr.TABLE.read_text(encoding="utf-8") == cldr.as_json(cldr.make_table()), "run `python cldr.py` and look at what changed"


def test_every_language_of_the_content_is_in_the_table():
    """content/languages.yaml names a locale for each language; the table is made for the same one."""
    for entry in read(CONTENT / "languages.yaml"):
        # A BCP 47 extension (`-u-hc-h12`) sets the clock or the digits and no more.
        locale = entry["locale"].split("-u-")[0].replace("-", "_")
        assert cldr.LOCALES[entry["tag"]] == locale
    assert set(languages()) <= set(cldr.LOCALES)


def test_the_table_holds_what_can_go_wrong():
    table = json.loads(cldr.TABLE.read_text(encoding="utf-8"))
    for entry in table.values():
        days = {datetime.date.fromisoformat(text) for text in entry["dates"]}
        assert len(days) == 40
        assert {(day.month, day.day) for day in days} >= {(2, 29), (12, 31), (1, 1), (3, 1)}
        assert {day.month for day in days} == set(range(1, 13)) and {day.weekday() for day in days} == set(range(7))
        assert len(entry["plurals"]) == 201


# Unicode CLDR 47, supplemental/plurals.xml, written out by hand: Babel is checked too.
RULES = {
    "en": lambda n: "one" if n == 1 else "other",
    "es": lambda n: "one" if n == 1 else "other",
    "fr": lambda n: "one" if n < 2 else "other",
    "de": lambda n: "one" if n == 1 else "other",
    "pt-BR": lambda n: "one" if n < 2 else "other",
    "pl": lambda n: "one" if n == 1 else "few" if n % 10 in (2, 3, 4) and n % 100 not in (12, 13, 14) else "many",
    "ru": lambda n: (
        "one" if n % 10 == 1 and n % 100 != 11 else "few" if n % 10 in (2, 3, 4) and n % 100 not in (12, 13, 14) else "many"
    ),
    "zh-Hans": lambda n: "other",
    "vi": lambda n: "other",
    "fil": lambda n: "one" if n in (1, 2, 3) or n % 10 not in (4, 6, 9) else "other",
    "hi": lambda n: "one" if n < 2 else "other",
    "ur": lambda n: "one" if n == 1 else "other",
    "ar": lambda n: {0: "zero", 1: "one", 2: "two"}.get(n) or ("few" if 3 <= n % 100 <= 10 else "many" if n % 100 >= 11 else "other"),
}


@pytest.mark.parametrize("tag", cldr.LOCALES)
def test_plural_categories_follow_the_rules_of_the_language(tag):
    """Below a million, where Spanish, French and Portuguese have no "many"."""
    table = json.loads(cldr.TABLE.read_text(encoding="utf-8"))
    assert table[tag]["plurals"] == [RULES[tag](number) for number in range(cldr.PLURALS)]


@pytest.mark.parametrize("tag", languages())
def test_lengths_of_time_are_worded_for_every_plural_category(tag):
    """The words for minutes and hours differ between the categories of CLDR as the language's grammar wants: a count that
    is alone in its category has wording of its own, and the number itself is in the words wherever it is more than two."""
    words = Words(tag, cldr.LOCALES[tag])
    for message in ("length-minutes", "length-hours"):
        said = {number: words.say(message, count=number) for number in range(1, 61)}
        assert said[1] != said[5], message
        assert all(str(number) in said[number] for number in range(3, 61)), message
