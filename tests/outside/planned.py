"""The program's plans of the random cases, and what is read out of one."""

import datetime
import itertools
from pathlib import Path

import program
from cases import DAY, Case, needs_finger
from content import clock, folder
from joints import FINGERS
from random_cases import plain_case, random_cases, waiting

CHUNK = 250
WORN = ("on", "on-exercise")


class Planned:
    """A case with the program's plan of it."""

    def __init__(self, case: Case, plan: dict):
        self.case, self.plan = case, plan
        self.days = [(datetime.date.fromisoformat(day["date"]), day) for day in plan["days"]]
        self.hours = {date: [self.span(text) for text in day["hours"]] for date, day in self.days}
        self.kinds = {date: day["kind"] for date, day in self.days}

    @staticmethod
    def span(text: str) -> tuple[int, int, str]:
        """"09:00-09:30 on" as minutes and state."""
        times, state = text.split(" ", 1)
        start, end = times.split("-")
        return clock(start), clock(end), state

    def phases(self):
        parse = datetime.date.fromisoformat
        return [(phase["phase"], parse(phase["first"]), parse(phase["last"])) for phase in self.plan["phases"]]

    def settled(self):
        """Every phase with its rules and those of its days that are neither its first, which still begins with the night
        before, nor days of breaking in or the one after them."""
        for name, first, last in self.phases():
            built = self.case.fitted + DAY * self.case.build_days()
            yield name, self.case.phase_rules(name), [date for date in self.hours if max(first, built) < date <= last]

    def stretches(self, date) -> list[int] | None:
        """Minutes of each stretch of wear in the waking day that begins on a date and, for somebody who works nights, may
        end on the next; None when the plan ends first."""
        up, end = clock(self.case.up), clock(self.case.up) + self.case.awake()
        spans = list(self.hours[date])
        if end > 1440:
            if date + DAY not in self.hours:
                return None
            spans += [(start + 1440, to + 1440, state) for start, to, state in self.hours[date + DAY]]
        worn = [(max(start, up), min(to, end)) for start, to, state in spans if state in WORN and start < end and to > up]
        joined: list[list[int]] = []
        for start, to in worn:
            if joined and joined[-1][1] == start:
                joined[-1][1] = to
            else:
                joined.append([start, to])
        return [to - start for start, to in joined]


def explain(cases: list[Case], where: Path) -> list[dict]:
    """What the program makes of cases; each has one hand, and its plan is missing when it is refused."""
    made = []
    for start in range(0, len(cases), CHUNK):
        paths = []
        for index, case in enumerate(cases[start : start + CHUNK], start):
            paths.append(where / f"case-{index:05}.yaml")
            paths[-1].write_text(case.text(), encoding="utf-8")
        answers = program.explain(paths)
        assert [answer["case"] for answer in answers] == [str(path) for path in paths]
        made += answers
    return made


def plan_of(answer: dict) -> dict | None:
    """The plan of a case of one hand."""
    if not answer.get("hands"):
        return None
    (hand,) = answer["hands"]
    return hand["plan"]


def fitting_pairs(where: Path) -> list[tuple[str, str, str | None, int]]:
    """Every condition with every orthosis that fits it, the finger where one is meant, and how many of the later phases the
    orthosis fits too."""
    fitting: dict[tuple[str, str, str | None], int] = {}
    pairs = itertools.product(folder("conditions"), folder("orthoses"))
    asked = [(*pair, finger) for pair in pairs for finger in (FINGERS if needs_finger(*pair) else [None])]
    later = 0
    while asked:
        answers = explain([plain_case(*pair, later) for pair in asked], where)
        good = [pair for pair, answer in zip(asked, answers, strict=True) if plan_of(answer)]
        fitting |= {pair: later for pair in good}
        later += 1
        asked = [pair for pair in good if len(waiting(pair[0])) >= later]
    return [(*pair, later) for pair, later in fitting.items()]


def answer_random_cases(pairs: list[tuple[str, str, str | None, int]], where: Path) -> list[tuple[Case, dict]]:
    """Every random case with what the program makes of it."""
    cases = random_cases(pairs)
    return list(zip(cases, explain(cases, where), strict=True))


def every(planned: list[Planned], holds) -> None:
    """Fails with the first cases for which something does not hold, as YAML to try again."""
    wrong = [(one, said) for one in planned if (said := holds(one))]
    assert not wrong, f"{len(wrong)} of {len(planned)} cases, such as: {wrong[0][1]}\n{wrong[0][0].case.text()}"
