"""Random cases for the calendar checks: any date, any day, any condition with an orthosis that fits it."""

import datetime
import random

from cases import DAY, Case, as_clock, tolerates
from content import days, folder

SEED = 20270301
COUNT = 2000


def last_sunday(year: int, month: int) -> datetime.date:
    last = datetime.date(year, month + 1, 1) - DAY
    return last - DAY * ((last.weekday() + 1) % 7)


def nth_sunday(year: int, month: int, nth: int) -> datetime.date:
    first = datetime.date(year, month, 1)
    return first + DAY * ((6 - first.weekday()) % 7 + 7 * (nth - 1))


def awkward_days(year: int) -> list[datetime.date]:
    """Days on which calendars and clocks go wrong: year ends, leap days, and changes to and from summer time (last Sundays
    of March and October in Europe; second Sunday of March, first of November in North America)."""
    february = [datetime.date(year, 3, 1) - DAY, datetime.date(year, 3, 1)]
    clocks = [last_sunday(year, 3), last_sunday(year, 10), nth_sunday(year, 3, 2), nth_sunday(year, 11, 1)]
    return [datetime.date(year, 1, 1), datetime.date(year, 12, 31), *february, *clocks]


def waiting(condition: str) -> list[str]:
    """The phases that wait for the therapist's word, in their order."""
    return [phase["id"] for phase in folder("conditions")[condition]["phases"] if phase["begins"] == "after-review"]


def lengths(condition: str, choose) -> dict[str, int]:
    """The lengths that a surgeon's protocol gives, each chosen between the shortest and the longest."""
    needs = folder("conditions")[condition].get("protocol", {}).get("lengths", [])
    return {length["phase"]: choose(days(length["at_least"]), days(length["at_most"])) for length in needs}


def plain_case(condition: str, orthosis: str, finger: str | None, later: int = 0, **more) -> Case:
    """A case without anything particular, with so many of its later phases begun."""
    fitted = datetime.date(2027, 3, 1)
    begun = [(phase, fitted + DAY * 40 * (index + 1)) for index, phase in enumerate(waiting(condition)[:later])]
    settings = {"fitted": fitted, "review": fitted + DAY * 28, "finger": finger, "begun": begun, "lengths": lengths(condition, max), **more}
    return Case(condition, orthosis, **settings)


def random_cases(pairs: list[tuple[str, str, str | None, int]], count: int = COUNT, seed: int = SEED) -> list[Case]:
    """`pairs` are a condition, an orthosis that fits it, the finger where one is meant, and how many of its later phases it
    may have begun."""
    dice, made = random.Random(seed), []
    # As many cases of one condition as of another, however many orthoses fit it.
    fitting: dict[str, list[tuple[str, str | None, int]]] = {}
    for condition, *rest in pairs:
        fitting.setdefault(condition, []).append(tuple(rest))
    while len(made) < count:
        condition = dice.choice(list(fitting))
        orthosis, finger, later = dice.choice(fitting[condition])
        year = dice.randint(2024, 2099)
        if dice.random() < 0.4:
            fitted = dice.choice(awkward_days(year)) - DAY * dice.choice([0, 0, 1, 2, 5, 20])
        else:
            fitted = datetime.date(year, 1, 1) + DAY * dice.randrange(365)
        fitted = max(fitted, datetime.date(2024, 1, 1))
        review = fitted + DAY * (dice.randint(1, 90) if dice.random() < 0.9 else dice.randint(91, 732))
        step = dice.choice([1, 5, 15, 30])
        up = dice.randrange(0, 1440, step) if dice.random() < 0.3 else dice.randrange(300, 600, step)
        bed = (up + dice.randrange(480, 1261, step)) % 1440
        asleep = (up - bed) % 1440
        if not 180 <= asleep <= 960:
            continue
        begun, at = [], fitted
        for phase in waiting(condition)[: dice.choice([0, 0, later])]:
            at += DAY * dice.randint(1, 60)
            begun.append((phase, at))
        factors = [factor for factor in folder("factors") if tolerates(factor, orthosis)]
        made.append(Case(
            condition, orthosis, fitted, review, as_clock(dice.randrange(0, 1440, step)), as_clock(up), as_clock(bed),
            finger, dice.sample(factors, dice.choice([0, 0, 1, 2])), begun, lengths(condition, dice.randint),
        ))
    return made
