"""What stands on the page is what was planned: dates, hours and amounts, taken back out of the PDF.

The plan is that of `palmleaf explain`; dates and clock times are worded by Unicode CLDR 47 as read by Babel, and amounts
by the program's own messages as read by another Fluent reader. A wrong date or hour is the worst fault there is, so each
is looked for in the cell or picture where a reader looks for it.
"""

import datetime
import re

import pytest

import cldr
import program
import structure
from content import Words, clock, date
from joints import FINGERS
from readers import page_text, squeezed

RIGHT_TO_LEFT = {"ar", "ur"}
# The Nastaliq face draws a letter as a stroke and its dots, and the file names both: letters cannot be counted.
UNCOUNTED = {"ur"}
WORN = ("on", "on-exercise")


@pytest.fixture(scope="module")
def plans(tmp_path_factory) -> dict[str, list[dict]]:
    """The plans of each example, one for each hand, whatever language its file asks for: a plan sees no language."""
    where, paths = tmp_path_factory.mktemp("plans"), []
    for example in program.EXAMPLES:
        paths.append(where / example.name)
        paths[-1].write_text(re.sub(r"(?m)^language: .*$", "language: en", example.read_text(encoding="utf-8")), encoding="utf-8")
    answers = zip(paths, program.explain(paths), strict=True)
    return {path.stem: [hand["plan"] for hand in answer["hands"]] for path, answer in answers}


class Page:
    """The part of a guide for one hand beside its plan."""

    def __init__(self, guide, number, plans):
        self.guide, self.plan, self.tag = guide, plans[number], guide.language
        self.case = guide.hands[number]
        self.words = Words(self.tag, cldr.LOCALES[self.tag])
        parts = structure.parts(guide.tree)
        assert len(parts) == len(plans) == len(guide.hands)
        self.tree = parts[number]
        starts = [self.number_of(part.first_page()) for part in parts] + [len(guide.pdf.pages) + 1]
        self.numbers = range(starts[number], starts[number + 1])

    def number_of(self, page) -> int:
        return [own.objgen for own in self.guide.pdf.pages].index(page.objgen) + 1

    def first_page(self) -> list[structure.Element]:
        """The elements of the first section, which has the first page to itself."""
        elements, titles = [], 0
        for element in self.tree.walk():
            titles += element.role == "H2"
            if titles == 2:
                break
            elements.append(element)
        return elements

    def says(self, given: str, wanted: str) -> bool:
        """Whether a text is the wanted one. The pieces of a line from right to left may stand in the order of the paper, so
        there its letters are compared as a set with counts, and its numbers as they stand."""
        given, wanted = squeezed(given), squeezed(wanted)
        if self.tag not in RIGHT_TO_LEFT:
            return given == wanted
        numbers = re.findall(r"\d+", wanted)
        if self.tag in UNCOUNTED:
            return sorted(re.findall(r"\d+", given)) == sorted(numbers)
        return sorted(given) == sorted(wanted) and sorted(re.findall(r"\d+", given)) == sorted(numbers)

    def schedule(self) -> list[list[structure.Element]]:
        """The rows of the schedule, without its heads: where it goes on overleaf it is a table anew. In large print how long
        it is worn stands above the hours and not beside them."""
        day, long = (self.words.say(key) for key in ("schedule-day", "schedule-long"))
        found = []
        for table in self.tree.all("Table"):
            head, *rows = [row.elements() for row in table.all("TR")]
            if self.says(head[0].text(), day) and squeezed(head[-1].text()).startswith(squeezed(long)):
                found += rows
        return found

    def calendar(self) -> list[list[structure.Element]]:
        """The rows of the calendar below its head: of seven days and a first column, with or without a last. Where it goes on
        overleaf it is a table anew, under the same head."""
        tables = [[row.elements() for row in table.all("TR")] for table in self.tree.all("Table")]
        tables = [rows for rows in tables if len(rows[0]) in (8, 9)]
        assert len({squeezed("".join(cell.text() for cell in rows[0])) for rows in tables}) == 1
        head = tables[0][0]
        return [head, *(row for rows in tables for row in rows[1:])]

    def build(self) -> list[dict]:
        return [day for day in self.plan["days"] if day["kind"] == "build"]

    def full_wear(self) -> datetime.date | None:
        return date(self.build()[-1]["date"]) + datetime.timedelta(days=1) if self.build() else None


def wears(day: dict) -> list[tuple[int, int]]:
    """The stretches of wear of a day, neighbours joined."""
    joined: list[tuple[int, int]] = []
    for text in day["hours"]:
        times, state = text.split(" ", 1)
        start, end = map(clock, times.split("-"))
        if state not in WORN:
            continue
        if joined and joined[-1][1] == start:
            joined[-1] = (joined[-1][0], end)
        else:
            joined.append((start, end))
    return joined


@pytest.fixture
def page(hand, plans) -> Page:
    guide, number = hand
    return Page(guide, number, plans[guide.example.stem])


@program.by_letters
def test_first_page_has_the_dates(page):
    """The day of the fitting, the first day of full wear where there is breaking in, and the next visit with its time."""
    case, tag = page.case, page.tag
    visit = cldr.full(date(page.plan["review"]), tag)
    if "review_at" in case:
        visit = page.words.say("say-date-time", date=visit, time=cldr.time(clock(case["review_at"]), tag))
    facts = {"fact-fitted": cldr.full(date(case["fitted"]), tag), "fact-review": visit}
    if page.full_wear():
        facts["fact-full"] = cldr.full(page.full_wear(), tag)
    lines = [element.text() for element in page.first_page() if element.role == "P"]
    for label, wanted in facts.items():
        at = [index for index, line in enumerate(lines) if page.says(line, page.words.say(label))]
        assert len(at) == 1, page.words.say(label)
        assert page.says(lines[at[0] + 1], wanted), f"{lines[at[0] + 1]!r} instead of {wanted!r}"
    if not page.full_wear():
        assert not any(page.says(line, page.words.say("fact-full")) for line in lines)


@program.by_letters
def test_first_page_has_the_hand_and_the_telephone(page):
    """The telephone on the first page, or in large print in the first section; the hand, with the finger where one is meant,
    at the foot of every page, and neither the other hand nor another finger there."""
    case, name = page.case, page.case.get("person", {}).get("name")
    first = page.numbers[0]
    section = " ".join(element.text() for element in page.first_page() if element.role == "P")
    text = page_text(page.guide.path, first, first) if page.guide.printed == "standard" else section
    assert squeezed(case["clinic"]["telephone"]) in squeezed(text)
    about = {"finger": case.get("finger", "none"), **({"name": name} if name else {})}
    message = "guide-made-for" if name else "guide-made-for-nobody"
    fingers = FINGERS if "finger" in case else ("none",)
    lines = {(side, finger): page.words.say(message, **{**about, "side": side, "finger": finger}) for side in ("left", "right") for finger in fingers}
    for number in page.numbers:
        text = squeezed(page_text(page.guide.path, number, number))
        # The number of the page stands beside the line, and between its parts where it takes two.
        text = text.replace(squeezed(page.words.say("guide-page", page=number, pages=len(page.guide.pdf.pages))), "")
        met = {key for key, line in lines.items() if squeezed(line) in text}
        assert met == {(case["hand"], about["finger"])}, f"page {number}: {met}"


@program.by_letters
def test_schedule_has_every_day_of_breaking_in(page):
    """Number, weekday and date of each day, and how long it is worn how often: longest stretch times stretches, which
    are the content's steps; and the first day of full wear after them."""
    rows, build = page.schedule(), page.build()
    assert len(rows) == (len(build) + 1 if build else 0)
    first = date(page.plan["days"][0]["date"])
    for number, (row, day) in enumerate(zip(rows, build), 1):
        on = first + datetime.timedelta(days=number - 1)
        assert on.isoformat() == day["date"]
        assert page.says(row[0].text(), f"{number}{cldr.weekday(on, page.tag)}{cldr.short(on, page.tag)}"), row[0].text()
        lengths = [end - start for start, end in wears(day)]
        if not lengths:
            assert page.says(row[-1].text(), page.words.say("schedule-not-yet"))
            continue
        assert len(set(lengths)) == 1
        count, unit = (lengths[0] // 60, "schedule-hours") if lengths[0] % 60 == 0 else (lengths[0], "schedule-minutes")
        wanted = f"{count}{page.words.say(unit, count=count)}{page.words.say('schedule-times', count=len(lengths))}"
        assert page.says(row[-1].text(), wanted), f"{row[-1].text()!r} instead of {wanted!r}"
    if build:
        on = page.full_wear()
        assert page.says(rows[-1][0].text(), f"{len(build) + 1}{cldr.weekday(on, page.tag)}{cldr.short(on, page.tag)}")


def test_amounts_are_the_steps_of_the_plan(page):
    """The amounts of test_schedule_has_every_day_of_breaking_in are those of the pattern, day after day."""
    said = []
    for day in page.build():
        lengths = [end - start for start, end in wears(day)]
        if lengths:
            hours, minutes = divmod(lengths[0], 60)
            each = " ".join([*([f"{hours} h"] if hours else []), *([f"{minutes} min"] if minutes else [])])
            said.append(f"{len(lengths)} x {each}")
    assert said == page.plan["break-in"]["steps"]


@program.by_letters
def test_hours_are_said_to_a_reader_who_sees_no_picture(page):
    """ISO 14289-1:2014, 7.3: each strip of hours has an alternative; it has the clock times of the plan, in their order."""
    days = page.build() + [day for day in page.plan["days"] if page.full_wear() and day["date"] == page.full_wear().isoformat()]
    rows = page.schedule()
    assert len(rows) == len(days)
    for row, day in zip(rows, days):
        (strip,) = [figure for cell in row for figure in cell.all("Figure")]
        times = [squeezed(cldr.time(minute % 1440, page.tag)) for span in wears(day) for minute in span]
        alt, at = squeezed(strip.alt), 0
        for time in times:
            found = re.compile(r"(?<!\d)" + re.escape(time)).search(alt, at)
            assert found, f"{day['date']}: {time!r} is missing in {strip.alt!r}"
            at = found.end()
        figures = re.compile(r"\d{1,2}:\d{2}")
        assert figures.findall(alt) == [figures.search(time).group() for time in times], strip.alt


def test_calendar_begins_with_the_first_day_of_the_week(page):
    """Unicode CLDR 47, week data: the first day of the week of the language's region; abbreviated stand-alone day names."""
    names = [cell.text() for cell in page.calendar()[0][1:8]]
    monday = datetime.date(2027, 3, 1)
    for offset, name in enumerate(names):
        assert page.says(name, cldr.weekday(monday + datetime.timedelta(days=cldr.first_weekday(page.tag) + offset), page.tag))


def test_calendar_puts_every_day_under_its_weekday(page):
    """Day after day from the fitting; the row of the first week begins with as many empty cells as its weekday wants."""
    fitted, last = date(page.plan["days"][0]["date"]), date(page.plan["days"][-1]["date"])
    lead = (fitted.weekday() - cldr.first_weekday(page.tag)) % 7
    cells = [squeezed(cell.text()) for row in page.calendar()[1:] for cell in row[1:8]]
    for index, text in enumerate(cells):
        on = fitted + datetime.timedelta(days=index - lead)
        shown = str(on.day) if fitted <= on <= max(last, date(page.plan["review"])) else ""
        assert text in (shown, ""), f"{text!r} where {on} is"
    assert cells[lead] == str(fitted.day)
    assert squeezed(str(date(page.plan["review"]).day)) in cells


def test_calendar_names_the_month_of_its_days(page):
    """A row is read under the last month named beside it or above it; that must be the month of one of the days it shows."""
    fitted, named = date(page.plan["days"][0]["date"]), None
    start = fitted - datetime.timedelta(days=(fitted.weekday() - cldr.first_weekday(page.tag)) % 7)
    for number, row in enumerate(page.calendar()[1:]):
        named = row[0].text() or named
        shown = [start + datetime.timedelta(days=7 * number + index) for index, cell in enumerate(row[1:8]) if cell.text()]
        months = {cldr.month(day, page.tag) for day in shown}
        fits = any(month in named or page.says(named, month) for month in months)
        assert fits or not shown, f"{shown[0]} to {shown[-1]} stand under {named!r}"
