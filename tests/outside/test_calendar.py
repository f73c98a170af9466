"""Days, phases and hours of 2,000 random cases against Python's `datetime` and the content's own YAML.

Dates are counted in the proleptic Gregorian calendar of ISO 8601-1:2019, clause 4.2.1, as Python's `datetime.date` does.
How long phases last is the content's; that a plan is counted in the patient's own days and wall clock, without a time
zone, is common practice, no source.
"""

import itertools

from cases import DAY
from content import clock, folder
from joints import FINGERS
from planned import WORN, every, plan_of
from random_cases import COUNT, awkward_days


def test_every_condition_has_an_orthosis_that_fits(pairs):
    assert {condition for condition, *_ in pairs} == set(folder("conditions"))


def test_every_case_has_a_plan(answers):
    """All of them are good cases: an orthosis that fits, a review after the fitting, 3 to 16 hours of sleep, and the finger
    and the numbers of the protocol where they are asked for."""
    refused = [f"{answer['findings'][0]['message']}\n{case.text()}" for case, answer in answers if not plan_of(answer)]
    assert not refused, f"{len(refused)} of {len(answers)} are refused, such as: {refused[0]}"


def test_the_cases_cover_what_they_should(planned):
    """Leap days, changes of the clock, year ends, night workers, late fittings, all conditions, each finger and all factors
    are among the cases."""
    assert len(planned) > COUNT * 0.9
    met = set().union(*(one.hours for one in planned))
    for year in range(2024, 2100):
        wanted = [day for day in awkward_days(year) if day in met]
        assert len(wanted) >= 4, year
    assert any(day.month == 2 and day.day == 29 for day in met)
    assert any(clock(one.case.bed) < clock(one.case.up) - 240 for one in planned)
    assert {one.case.break_in_begins() for one in planned} == {0, 1}
    assert {one.case.pattern() for one in planned} == {name for name, pattern in folder("wear").items() if "weaning" not in pattern}
    assert {one.case.condition for one in planned} == set(folder("conditions"))
    assert {one.case.finger for one in planned} == {None, *FINGERS}
    assert set().union(*(one.case.factors for one in planned)) == set(folder("factors"))
    assert any(one.case.begun for one in planned)
    names = [{name for name, *_ in one.phases()} for one in planned]
    assert any(set(one.case.lengths) & met for one, met in zip(planned, names)), "no length is a protocol's"
    late = [one.case.phase_rules(name) for one, met in zip(planned, names) if "slow-healing" in one.case.factors for name in met]
    assert any("lasts_up_to" in phase for phase in late), "no phase lasts to its late end"


def test_phases_tile_the_days_from_the_fitting(planned):
    def holds(one):
        phases = one.phases()
        if phases[0][1] != one.case.fitted:
            return f"the first phase begins on {phases[0][1]}"
        for (_, first, last), (_, following, _) in itertools.pairwise(phases):
            if not first <= last or following - last != DAY:
                return f"{last} is followed by {following}"
        return phases[-1][1] > phases[-1][2] and "the last phase ends before it begins"
    every(planned, holds)


def test_phases_last_as_long_as_the_content_says(planned):
    """Weeks are seven days, both ends counted; a surgeon's protocol comes before the content's length; a phase before one
    that waits for the therapist's word lasts until the review at least; a phase without a length lasts until the review; a
    phase that has begun ends the one before it; where healing is slow the late end of the window counts."""
    every(planned, lambda one: one.phases() != one.case.phases() and f"{one.phases()} instead of {one.case.phases()}")


def test_the_review_is_the_day_given(planned):
    every(planned, lambda one: one.plan["review"] != one.case.review.isoformat() and one.plan["review"])


def test_every_date_stands_once_and_in_order(planned):
    def holds(one):
        last = one.case.phases()[-1][2]
        wanted = [one.case.fitted + DAY * offset for offset in range((last - one.case.fitted).days + 1)]
        return [date for date, _ in one.days] != wanted and f"{len(one.days)} days instead of {len(wanted)}"
    every(planned, holds)


def test_the_hours_of_a_day_do_not_overlap(planned):
    def holds(one):
        for date, spans in one.hours.items():
            at = 0
            for start, end, state in spans:
                if not at <= start < end <= 1440:
                    return f"{date}: {start} to {end} {state} after {at}"
                at = end
        return None
    every(planned, holds)


def test_nothing_is_planned_before_the_fitting(planned):
    """The hours before the fitting are marked as such, on its day and no other."""
    def holds(one):
        at = clock(one.case.fitted_at)
        for date, spans in one.hours.items():
            before = [span for span in spans if span[2] == "before"]
            if date != one.case.fitted and before or date == one.case.fitted and before != ([(0, at, "before")] if at else []):
                return f"{date}: {before}"
        return None
    every(planned, holds)


def test_breaking_in_follows_its_pattern(planned):
    """The pattern is the gentlest that the condition and the person's factors ask for; a piece that stretches is never
    broken in beyond its dose."""
    def length(text):
        """"1 h 30 min" as 90."""
        parts = text.split()
        return sum(int(number) * {"h": 60, "min": 1}[unit] for number, unit in zip(parts[::2], parts[1::2], strict=True))

    def holds(one):
        said = [text.split(" x ") for text in one.plan["break-in"]["steps"]]
        steps = [(int(times), length(each)) for times, each in said]
        if one.plan["break-in"]["pattern"] != one.case.pattern() or steps != one.case.steps():
            return f"{one.plan['break-in']} instead of {one.case.pattern()} {one.case.steps()}"
        return None
    every(planned, holds)


def test_breaking_in_takes_the_first_days_and_no_other(planned):
    """It begins on the day of the fitting, or on the next when too little of that day is left for its first step."""
    def holds(one):
        build = [date for date, day in one.days if day["kind"] == "build"]
        wanted = [date for date, _ in one.days][: one.case.build_days()] if one.case.steps() else []
        return build != wanted and f"{len(build)} days of breaking in instead of {len(wanted)}"
    every(planned, holds)


def test_break_in_minutes_are_times_by_length(planned):
    """On each day as many wears as its step says, each as long as it says; shorter only where the waking day has no room
    for them with half an hour of rest after each."""
    def holds(one):
        before = 0
        for offset in range(min(one.case.build_days(), len(one.days))):
            date = one.case.fitted + DAY * offset
            wears = one.stretches(date)
            if wears is None:
                continue
            index = offset - one.case.break_in_begins()
            if index < 0:
                if wears:
                    return f"{date} wears {wears} before its first step"
                continue
            times, each = one.case.steps()[index]
            if offset == 0 or one.case.has_room(times, each):
                if wears != [each] * times:
                    return f"{date} wears {wears} instead of {times} x {each}"
            elif len(wears) != times or len(set(wears)) != 1 or not 0 < wears[0] < each or sum(wears) < before:
                return f"{date}, a short day, wears {wears} instead of less than {times} x {each}"
            before = sum(wears)
        return None
    every(planned, holds)
    cut = [one for one in planned if any(not one.case.has_room(*step) for step in one.case.steps())]
    assert len(cut) >= 20, "no day among the cases is short"


def test_nobody_sleeps_in_it_while_it_is_broken_in(planned):
    """Common practice, no source: the first long wear is never asleep."""
    def holds(one):
        for date, spans in one.hours.items():
            if one.kinds[date] != "build":
                continue
            for start, end, state in spans:
                if state in WORN and (one.case.asleep(start) or one.case.asleep(end - 1)):
                    return f"{date}: {start} to {end}"
        return None
    every(planned, holds)


def test_days_when_the_clock_changes_are_days_like_others(planned):
    """All settled days of a phase have the same hours: the plan is on the wall clock, so a change to or from summer time
    moves nothing. Weaning changes hours by design and is left out."""
    met = 0
    def holds(one):
        nonlocal met
        for _, phase, settled in one.settled():
            if "weaning" in phase:
                continue
            met += sum(date in awkward_days(date.year) for date in settled)
            different = [date for date in settled if one.hours[date] != one.hours[settled[0]]]
            if different:
                return f"{different[0]}: {one.hours[different[0]]} instead of {one.hours[settled[0]]}"
        return None
    every(planned, holds)
    assert met > 1000
