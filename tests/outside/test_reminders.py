"""The reminders as other people's calendar readers see them, held against the plan of `palmleaf explain`.

`icalendar` reads the file and `recurring-ical-events` lays out its repetitions, by RFC 5545. Each test names the section
it holds. The plans lie over changes of the clock in late March and late October, for times that float stay the same on
the clock there (3.3.5, form 1).
"""

import datetime
import json
import re
import zoneinfo
from pathlib import Path

import icalendar
import pytest
import recurring_ical_events

import program
from cases import DAY, Case
from content import clock, minutes
from planned import WORN, Planned, explain, plan_of
from random_cases import last_sunday, plain_case

# Clocks change in the night to the last Sunday of March and of October.
ZONE = zoneinfo.ZoneInfo("Europe/London")
YEAR = 2027
# Of all pairs of a condition with an orthosis, every so many.
STRIDE = 9
DAYS_TO_RUN = 45
OCTETS = 75
BOUTS = ("build", "stretch")
EXERCISE = ("on-exercise", "off-exercise", "off-wash")


class Reminded(Planned):
    """A planned case with its reminders."""

    def __init__(self, case: Case, plan: dict, path: Path):
        super().__init__(case, plan)
        self.octets = path.read_bytes()
        self.calendar = icalendar.Calendar.from_ical(self.octets)
        self.events = list(self.calendar.walk("VEVENT"))

    def occurrences(self, word: str | None = None) -> list[tuple[datetime.date | datetime.datetime, str]]:
        """Beginning and title of each repetition, in order; only of those whose title has the word."""
        end = self.days[-1][0] + DAY * 800
        found = recurring_ical_events.of(self.calendar).between(self.case.fitted - DAY, end)
        all_ = [(event["DTSTART"].dt, str(event["SUMMARY"])) for event in found]
        return sorted(((start, title) for start, title in all_ if word is None or word in title.lower()), key=lambda one: str(one[0]))

    def moments(self, word: str) -> set[datetime.datetime]:
        return {start for start, _ in self.occurrences(word)}

    # ---- what the plan makes due --------------------------------------------------------------

    def states(self) -> list[str]:
        """The state of every minute from the midnight before the fitting."""
        made = []
        for date, _ in self.days:
            day = ["off"] * 1440
            for start, end, state in self.hours[date]:
                day[start:end] = [state] * (end - start)
            made += day
        return made

    def at(self, minute: int) -> datetime.datetime:
        return datetime.datetime.combine(self.days[0][0], datetime.time()) + datetime.timedelta(minutes=minute)

    def kind(self, minute: int) -> str:
        """Of the day on which the person got up before a minute."""
        date = self.days[0][0] + DAY * (minute // 1440)
        if minute % 1440 < clock(self.case.up):
            date = max(date - DAY, self.days[0][0])
        return self.kinds[date]

    def edges(self, on: bool) -> set[datetime.datetime]:
        """Where it is put on, or taken off, on days of short wears."""
        states = self.states()
        found = set()
        for minute in range(1, len(states)):
            before, now = states[minute - 1], states[minute]
            if (now in WORN) == on and (before in WORN) != on and before != "before" and self.kind(minute) in BOUTS:
                found.add(self.at(minute))
        return found

    def sessions(self) -> set[datetime.datetime]:
        """Where exercises begin. A session is first what is done in the orthosis, then what is done without it; where wears
        are short these are two."""
        states, found = self.states(), set()
        phases = [(first, last, phase["exercises"]) for (_, first, last), phase in zip(self.phases(), self.plan["phases"])]
        for minute in range(1, len(states)):
            before, now = states[minute - 1], states[minute]
            if now not in EXERCISE or now == before:
                continue
            if before == "on-exercise" and self.kind(minute) not in BOUTS:
                continue
            got_up = self.days[0][0] + DAY * ((minute - clock(self.case.up)) // 1440)
            got_up = max(got_up, self.case.fitted)
            if any(first <= got_up <= last and exercises for first, last, exercises in phases):
                found.add(self.at(minute))
        return found


@pytest.fixture(scope="session")
def reminded(pairs, tmp_path_factory) -> list[Reminded]:
    """Plans over both changes of the clock, of people with ordinary days and with days that end after midnight."""
    cases = []
    for number, (condition, orthosis, finger, later) in enumerate(pairs[::STRIDE]):
        month = (3, 10)[number % 2]
        fitted = last_sunday(YEAR, month) - DAY * (number % 9)
        up, bed = (("07:00", "23:00"), ("06:30", "22:45"), ("15:00", "07:00"), ("09:00", "01:30"))[number % 4]
        at = ("12:00", "16:00", "09:10", "10:45")[number % 4]
        more = {"fitted": fitted, "review": fitted + DAY * DAYS_TO_RUN, "up": up, "bed": bed, "fitted_at": at}
        begun = [(phase, fitted + DAY * 12 * (place + 1)) for place, (phase, _) in enumerate(plain_case(condition, orthosis, finger, later).begun)]
        cases.append(plain_case(condition, orthosis, finger, later, **{**more, "begun": begun}))
    where = tmp_path_factory.mktemp("reminded")
    plans = [(case, plan, where / f"case-{number:05}.yaml") for number, (case, answer) in enumerate(zip(cases, explain(cases, where))) if (plan := plan_of(answer))]
    done = program.run("build", *(path for *_, path in plans), "--sheets", "reminders", "--name-by-case", "--out", where / "out", "--format", "json")
    files = {result["case"]: [name for name in result["files"] if name.endswith(".ics")] for result in json.loads(done.stdout)}
    assert len(plans) > 20
    return [Reminded(case, plan, *map(Path, files[str(path)])) for case, plan, path in plans]


def every(reminded: list[Reminded], holds) -> None:
    wrong = [(one, said) for one in reminded if (said := holds(one))]
    assert not wrong, f"{len(wrong)} of {len(reminded)} cases, such as: {wrong[0][1]}\n{wrong[0][0].case.text()}"


def differ(found: set, wanted: set) -> str | None:
    return f"surplus {sorted(found - wanted)[:3]}, missing {sorted(wanted - found)[:3]}" if found != wanted else None


def test_some_plans_lie_over_each_change_of_the_clock(reminded):
    for month in (3, 10):
        change = last_sunday(YEAR, month)
        over = [one for one in reminded if one.days[0][0] < change < one.days[-1][0]]
        repeated = [event for one in over for event in one.events if "RRULE" in event]
        assert len(over) > 5 and repeated


def test_lines_are_folded_and_ended(reminded):
    """RFC 5545 3.1: CR LF ends a line, of at most 75 octets before it; a folded line goes on with a space."""
    for one in reminded:
        assert one.octets.endswith(b"\r\n")
        for line in one.octets[:-2].split(b"\r\n"):
            assert len(line) <= OCTETS and b"\r" not in line and b"\n" not in line
            line.decode("utf-8")


def test_readers_find_nothing_wrong(reminded):
    """RFC 5545 3.4, 3.6: one calendar, and of its components and properties none that the reader cannot take in."""
    for one in reminded:
        assert one.calendar.errors == [] and not any(part.errors for part in one.calendar.walk())
        assert {part.name for part in one.calendar.walk()} == {"VCALENDAR", "VEVENT", "VALARM"}
        assert str(one.calendar["VERSION"]) == "2.0" and "PRODID" in one.calendar and "METHOD" not in one.calendar


def test_what_is_read_writes_itself_the_same(reminded):
    """RFC 5545 3.3.11: a text escaped, read, and escaped again by the reader is the same text."""
    for one in reminded:
        again = icalendar.Calendar.from_ical(one.calendar.to_ical())
        assert [str(event["DESCRIPTION"]) for event in again.walk("VEVENT")] == [str(event["DESCRIPTION"]) for event in one.events]


def test_every_event_has_what_it_must_have(reminded):
    """RFC 5545 3.6.1: one UID and one DTSTAMP in UTC, one DTSTART, an end that is later; 3.8.7.4: a SEQUENCE."""
    for one in reminded:
        uids = [str(event["UID"]) for event in one.events]
        assert len(set(uids)) == len(uids)
        for event in one.events:
            stamp = event["DTSTAMP"].dt
            assert stamp.utcoffset() == datetime.timedelta() and stamp.date() == one.case.fitted
            assert event["SEQUENCE"] == 0
            if "DTEND" in event:
                assert event["DTEND"].dt > event["DTSTART"].dt


def test_every_event_has_an_alarm_that_shows(reminded):
    """RFC 5545 3.6.6: a DISPLAY alarm has a DESCRIPTION and a TRIGGER."""
    for one in reminded:
        for event in one.events:
            (alarm,) = event.walk("VALARM")
            assert str(alarm["ACTION"]) == "DISPLAY" and str(alarm["DESCRIPTION"]) and "TRIGGER" in alarm


def test_times_float(reminded):
    """RFC 5545 3.3.5, form 1: neither a zone nor UTC."""
    for one in reminded:
        for event in one.events:
            start = event["DTSTART"]
            assert "TZID" not in start.params
            if isinstance(start.dt, datetime.datetime):
                assert start.dt.tzinfo is None and event["DTEND"].dt.tzinfo is None
        assert not one.calendar.walk("VTIMEZONE")


def test_a_repetition_keeps_its_time_over_a_change_of_the_clock(reminded):
    """RFC 5545 3.3.10: each repetition is at the time of the first, on a clock that was put forward or back between them."""
    seen = {3: 0, 10: 0}
    for one in reminded:
        for event in one.events:
            if "RRULE" not in event:
                continue
            start, count = event["DTSTART"].dt, event["RRULE"]["COUNT"][0]
            repeated = [begin for begin, title in one.occurrences() if title == str(event["SUMMARY"]) and begin.time() == start.time()]
            assert [start + DAY * number for number in range(count)] == [begin for begin in repeated if start <= begin < start + DAY * count]
            offsets = {begin.replace(tzinfo=ZONE).utcoffset() for begin in repeated}
            seen[start.month] = seen.get(start.month, 0) + (len(offsets) > 1)
    assert seen[3] and seen[10], "no series lies over a change of the clock"


def test_exercises_are_called_when_they_are_planned(reminded):
    every(reminded, lambda one: differ(one.moments("exercises"), one.sessions()))


def test_short_wears_are_called_on_and_off(reminded):
    def holds(one):
        wean = {begin for begin in one.moments("take it off") if one.kinds[begin.date()] == "wean"}
        return differ(one.moments("put it on"), one.edges(True)) or differ(one.moments("take it off") - wean, one.edges(False))

    every(reminded, holds)


def test_a_weaning_day_is_called_off_when_its_hours_end(reminded):
    def holds(one):
        states = one.states()
        for begin in one.moments("take it off"):
            minute = int((begin - one.at(0)).total_seconds()) // 60
            if one.kind(minute) == "wean" and not (states[minute - 1] in WORN and states[minute] == "off"):
                return f"{begin}: {states[minute - 1]}, {states[minute]}"
        return None

    every(reminded, holds)


def test_the_skin_is_looked_at_after_each_wear_of_breaking_in(reminded):
    def holds(one):
        checks = one.moments("skin")
        minute = lambda moment: int((moment - one.at(0)).total_seconds()) // 60
        ends = {moment for moment in one.edges(False) if one.kind(minute(moment)) == "build"}
        if stray := [check for check in checks if one.kind(minute(check)) != "build"]:
            return f"looked at on {stray[0]}"
        return f"not looked at {sorted(ends - checks)[0]}" if ends - checks else None

    every(reminded, holds)


def test_other_hours_are_called_on_their_first_day(reminded):
    """Each phase after the first, and full wear after breaking in; on weaning days also each step, which the plan's days do
    not tell apart."""

    def holds(one):
        called = one.moments("new hours")
        dates = [date for date, _ in one.days]
        kinds = {today for before, today in zip(dates, dates[1:]) if one.kinds[before] != one.kinds[today]}
        wanted = kinds | {first for _, first, _ in one.phases()[1:]}
        got = {moment.date() for moment in called}
        if missing := wanted - got:
            return f"not called: {sorted(missing)[0]}"
        if stray := [date for date in got - wanted if one.kinds[date] not in ("wean", "off")]:
            return f"called for nothing: {stray[0]}"
        return next((f"{moment} is not when they get up" for moment in called if moment.strftime("%H:%M") != one.case.up), None)

    every(reminded, holds)


def test_the_visit_is_a_day(reminded):
    """RFC 5545 3.6.1: a DTSTART of type DATE alone is one day."""
    for one in reminded:
        visits = [event for event in one.events if "visit" in str(event["SUMMARY"]).lower()]
        (visit,) = visits
        assert type(visit["DTSTART"].dt) is datetime.date and visit["DTSTART"].dt == one.case.review and "DTEND" not in visit


def test_one_event_a_moment_and_none_in_sleep(reminded):
    def holds(one):
        starts = [begin for begin, _ in one.occurrences() if isinstance(begin, datetime.datetime)]
        if len(set(starts)) != len(starts):
            return f"two at {next(begin for begin in starts if starts.count(begin) > 1)}"
        fitting = datetime.datetime.combine(one.case.fitted, datetime.time.fromisoformat(one.case.fitted_at))
        if early := [begin for begin in starts if begin < fitting]:
            return f"{early[0]} is before the fitting"
        asleep = [begin for begin in starts if one.case.asleep(begin.hour * 60 + begin.minute)]
        return f"{asleep[0]} is in sleep" if asleep else None

    every(reminded, holds)


def test_alarms_do_not_wake(reminded):
    """RFC 5545 3.8.6.3: a trigger counts from the start of its event."""

    def holds(one):
        for event in one.events:
            start = event["DTSTART"].dt
            if not isinstance(start, datetime.datetime):
                start = datetime.datetime.combine(start, datetime.time())
            (alarm,) = event.walk("VALARM")
            called = start + alarm["TRIGGER"].dt
            if one.case.asleep(called.hour * 60 + called.minute):
                return f"{event['SUMMARY']} calls at {called}"
        return None

    every(reminded, holds)


@pytest.mark.parametrize("example", program.EXAMPLES, ids=lambda path: path.stem)
def test_a_changed_plan_changes_its_events(example, tmp_path):
    """RFC 5545 3.8.4.7: a UID stays with its event, in every language, when the review moves."""
    text = example.read_text(encoding="utf-8")
    review = re.search(r"(?m)^review: (\S+)$", text).group(1)
    later = datetime.date.fromisoformat(review) + DAY * 14

    def uids(text, tag, out):
        path = tmp_path / example.name
        path.write_text(text, encoding="utf-8")
        done = program.run("build", path, "--sheets", "reminders", "--language", tag, "--out", tmp_path / out, "--format", "json")
        (name,) = [name for name in json.loads(done.stdout)[0]["files"] if name.endswith(".ics")]
        calendar = icalendar.Calendar.from_ical(Path(name).read_bytes())
        return {str(event["UID"]) for event in calendar.walk("VEVENT")}

    first, *others = (uids(text, tag, tag) for tag in program.languages())
    assert all(other == first for other in others)
    assert first <= uids(text.replace(f"review: {review}", f"review: {later}"), "en", "later")


def test_hours_of_the_skin_checks_are_of_the_day(reminded):
    """No look at the skin falls further from a wear than the mark may stay, but for the one on getting up."""
    def holds(one):
        limit = datetime.timedelta(minutes=minutes(one.plan["skin"]["mark-limit"]))
        edges = one.edges(True) | one.edges(False)
        for check in one.moments("skin"):
            near = any(datetime.timedelta() <= check - edge <= limit for edge in edges)
            if not near and check.strftime("%H:%M") != one.case.up:
                return f"{check} follows no wear"
        return None

    every(reminded, holds)
