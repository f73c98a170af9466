"""What CLDR says, as Babel reads it: `cldr.json` is written by `python cldr.py` and read by the Rust suite too.

Source: Unicode CLDR 47 in Babel 2.18.0; patterns after Unicode Technical Standard 35, part 4 (dates) and part 3 (numbers).
Deliberate differences between Babel and the program, all of them here and nowhere else:

* CLDR puts a narrow no-break space (U+202F) or thin space (U+2009) into some patterns; the program prints a no-break
  space (U+00A0), which its fonts have.
* English here is en-GB with a 12-hour clock, an override of the program's own, since en-GB has 24 hours in CLDR. So the
  table holds no English times. `time` in this module gives them by the pattern of the skeleton `hm`.
* On a 24-hour clock the program writes two digits for the hour (09:15), so that hours stand under each other; es-ES has one
  (9:15) in CLDR. The table holds the program's way: CLDR's pattern with `HH` for `H`.
* Vietnamese has no comma before the year in the program, and Hindi has one: so the patterns stand in the newer CLDR that it
  carries. That of Hindi is known from the program's own data only.
* Vietnamese short weekdays are "Thứ 2" in the newer CLDR that the program carries (unicode-org/cldr-json,
  cldr-dates-full/main/vi/ca-gregorian.json), and "Th 2" in CLDR 47.
* Month and weekday names are the stand-alone ones: they stand alone in a calendar.
"""

import datetime
import json
import re
from pathlib import Path

from babel import Locale, dates

TABLE = Path(__file__).with_name("cldr.json")
# Our tag to CLDR's locale, for every language that content/languages.yaml may list.
LOCALES = {
    "en": "en_GB", "es": "es_ES", "ar": "ar_001", "fr": "fr_FR", "de": "de_DE", "pt-BR": "pt_BR", "pl": "pl_PL", "ru": "ru_RU",
    "zh-Hans": "zh_Hans_CN", "vi": "vi_VN", "fil": "fil_PH", "hi": "hi_IN", "ur": "ur_PK",
}
# Babel 2.18.0 gives a language that takes its names of months from the root those of Chinese once Chinese has been read: so
# all are read here before anything else, and Chinese last.
MONTHS = {
    tag: dict(dates.get_month_names("wide", "stand-alone", LOCALES[tag])) for tag in sorted(LOCALES, key=lambda tag: tag == "zh-Hans")
}
WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]
PLURALS = 201
TIMES = ["00:00", "00:05", "06:00", "07:30", "09:15", "11:59", "12:00", "12:30", "13:05", "18:00", "21:45", "23:59"]


def sampled_dates() -> list[datetime.date]:
    """40 dates: leap days, the days around them and around year ends, and one of every month."""
    leap = [datetime.date(year, 2, 29) for year in (2024, 2028, 2052, 2096)]
    around = [datetime.date(*day) for day in ((2027, 2, 28), (2027, 3, 1), (2028, 2, 28), (2028, 3, 1), (2099, 2, 28), (2099, 3, 1))]
    ends = [day for year in (2024, 2026, 2027, 2032, 2099) for day in (datetime.date(year, 12, 31), datetime.date(year, 1, 1))]
    months = [datetime.date(2027, month, 3 + 2 * month) for month in range(1, 13)]
    week = [datetime.date(2027, 5, day) for day in range(17, 24)]
    made = sorted({*leap, *around, *ends, *months, *week, datetime.date(2199, 12, 31)})
    assert len(made) == 40, len(made)
    return made


def plain(text: str) -> str:
    return text.replace("\u202f", "\u00a0").replace("\u2009", "\u00a0")


def by_skeleton(skeleton: str, value, tag: str) -> str:
    """By a pattern that the locale has for exactly this skeleton: a near match would be Babel's guess, not CLDR."""
    locale = Locale.parse(LOCALES[tag])
    assert skeleton in locale.datetime_skeletons, f"{locale} has no {skeleton}"
    return plain(dates.format_skeleton(skeleton, value, locale=locale, fuzzy=False))


def full(date: datetime.date, tag: str) -> str:
    """"Monday, 1 March 2027": the full date format. es and ar have no skeleton yMMMMEEEEd, for which it stands in."""
    said = plain(dates.format_date(date, "full", locale=LOCALES[tag]))
    match tag:
        case "vi":
            return said.replace(f", {date.year}", f" {date.year}")
        case "hi":
            return said.replace(f" {date.year}", f", {date.year}")
    return said


def short(date: datetime.date, tag: str) -> str:
    """"1 March"."""
    return by_skeleton("MMMMd", date, tag)


def month(date: datetime.date, tag: str) -> str:
    return MONTHS[tag][date.month]


def weekday(date: datetime.date, tag: str) -> str:
    name = dates.get_day_names("abbreviated", "stand-alone", LOCALES[tag])[date.weekday()]
    return re.sub("^Th ", "Thứ ", name) if tag == "vi" else name


def time(minute: int, tag: str) -> str:
    at = datetime.time(minute // 60, minute % 60)
    if tag == "en":
        return by_skeleton("hm", at, tag)
    pattern = re.sub(r"\bH\b", "HH", Locale.parse(LOCALES[tag]).time_formats["short"].pattern)
    return plain(dates.format_time(at, pattern, locale=LOCALES[tag]))


def first_weekday(tag: str) -> int:
    """0 for Monday."""
    return Locale.parse(LOCALES[tag]).first_week_day


def make_table() -> dict:
    table = {}
    for tag, name in LOCALES.items():
        rule = Locale.parse(name).plural_form
        entry = {
            "first_weekday": WEEKDAYS[first_weekday(tag)],
            "dates": {
                date.isoformat(): {"full": full(date, tag), "short": short(date, tag), "month": month(date, tag), "weekday": weekday(date, tag)}
                for date in sampled_dates()
            },
            "times": {},
            "plurals": [rule(number) for number in range(PLURALS)],
        }
        if tag != "en":
            entry["times"] = {text: time(int(text[:2]) * 60 + int(text[3:]), tag) for text in TIMES}
        table[tag] = entry
    return table


def as_json(table: dict) -> str:
    return json.dumps(table, ensure_ascii=False, indent=1) + "\n"


if __name__ == "__main__":
    TABLE.write_text(as_json(make_table()), encoding="utf-8")
