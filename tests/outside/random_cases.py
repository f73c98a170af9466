"""Random cases for the calendar checks, and what the content's rules make of each: worked out anew, from the YAML alone."""

import dataclasses
import datetime
import random

from content import clock, days, folder, general, minutes

SEED = 20270301
COUNT = 2000
DAY = datetime.timedelta(days=1)


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


def as_clock(minute: int) -> str:
    return f"{minute // 60:02}:{minute % 60:02}"


@dataclasses.dataclass
class Case:
    condition: str
    orthosis: str
    fitted: datetime.date
    fitted_at: str
    review: datetime.date
    up: str
    bed: str
    factors: list[str]
    begun: list[tuple[str, datetime.date]]

    def text(self) -> str:
        lines = [
            "palmleaf: 1", "hand: right", f"condition: {self.condition}", f"orthosis: {self.orthosis}",
            f"fitted: {self.fitted}", f'fitted_at: "{self.fitted_at}"', f"review: {self.review}", "language: en",
            f'day: {{up: "{self.up}", bed: "{self.bed}"}}', f"factors: [{', '.join(self.factors)}]",
        ]
        if self.begun:
            lines += ["begun:", *(f"  - {{phase: {phase}, on: {on}}}" for phase, on in self.begun)]
        return "\n".join(lines) + "\n"

    # ---- what the rules make of it ----------------------------------------------------------

    def rules(self) -> dict:
        return folder("conditions")[self.condition]

    def awake(self) -> int:
        return (clock(self.bed) - clock(self.up)) % 1440

    def phases(self) -> list[tuple[str, datetime.date, datetime.date]]:
        """Name, first and last day of every dated phase."""
        begun, made, start = dict(self.begun), [], self.fitted
        phases = self.rules()["phases"]
        for index, phase in enumerate(phases):
            if phase["begins"] == "after-review" and index > 0:
                if phase["id"] not in begun:
                    break
                start = begun[phase["id"]]
                made[-1] = (made[-1][0], made[-1][1], start - DAY)
            length = self.length(phase)
            following = phases[index + 1] if index + 1 < len(phases) else None
            waits = following is not None and following["begins"] == "after-review" and following["id"] not in begun
            if length is None:
                last = max(self.review, start)
            else:
                last = start + DAY * (length - 1)
                last = max(last, self.review) if waits else last
            made.append((phase["id"], start, last))
            start = last + DAY
        return made

    @staticmethod
    def length(phase: dict) -> int | None:
        if "lasts" in phase:
            return days(phase["lasts"])
        if "weaning" in phase:
            return sum(days(step["lasts"]) for step in folder("wear")[phase["weaning"]]["weaning"])
        return None

    def pattern(self) -> str:
        """The gentlest pattern of breaking in that applies; a piece that protects healing tissue is worn at once all the same."""
        patterns = folder("wear")
        usual = self.rules().get("break_in", general()["break_in"])
        protective = self.rules()["phases"][0].get("protective") == "true"
        if protective and patterns[usual].get("at_once") == "true":
            return usual
        asked = [folder("factors")[name].get("break_in") for name in self.factors]
        return max([usual, *filter(None, asked)], key=lambda name: patterns[name]["gentleness"])

    def steps(self) -> list[tuple[int, int]]:
        """Times and minutes of each step of breaking in."""
        return [(step["times"], minutes(step["each"])) for step in folder("wear")[self.pattern()].get("break_in", [])]

    def break_in_begins(self) -> int:
        """0 when the day of the fitting has room for the first step and half an hour of rest around each wear, else 1."""
        if not self.steps():
            return 0
        times, each = self.steps()[0]
        since_up = (clock(self.fitted_at) - clock(self.up)) % 1440
        room = self.awake() - since_up
        return 0 if since_up < self.awake() and room >= times * (each + 30) + minutes(general()["settling"]) else 1

    def has_room(self, times: int, each: int) -> bool:
        """Whether a whole waking day has room for a step with half an hour of rest after each wear."""
        room = self.awake() - 2 * minutes(general()["settling"])
        return each <= room // times - 30


def random_cases(pairs: list[tuple[str, str, int]], count: int = COUNT, seed: int = SEED) -> list[Case]:
    """`pairs` are a condition, an orthosis that fits it, and how many of its later phases it may have begun."""
    dice, made = random.Random(seed), []
    # An allergy rules materials out; the other factors leave every orthosis fitting.
    factors = [name for name, factor in folder("factors").items() if "excludes" not in factor]
    while len(made) < count:
        condition, orthosis, later = dice.choice(pairs)
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
        waiting = [phase["id"] for phase in folder("conditions")[condition]["phases"] if phase["begins"] == "after-review"]
        for phase in waiting[: dice.choice([0, 0, later])]:
            at += DAY * dice.randint(1, 60)
            begun.append((phase, at))
        made.append(Case(
            condition, orthosis, fitted, as_clock(dice.randrange(0, 1440, step)), review, as_clock(up), as_clock(bed),
            dice.sample(factors, dice.choice([0, 0, 1, 2])), begun,
        ))
    return made
